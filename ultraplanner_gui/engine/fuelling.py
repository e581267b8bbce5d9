"""What the fuel plan adds up to: by hour, by leg and as a rolling rate; and placing it by rule."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.fuel import FuelItem, FuelPlan
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.plan.runner import Runner


@dataclass(frozen=True, slots=True)
class Intake:
    """Sums over some items."""

    carb_g: float = 0.0
    fluid_ml: float = 0.0
    sodium_mg: float = 0.0
    caffeine_mg: float = 0.0
    weight_g: float = 0.0
    energy_kcal: float = 0.0


@dataclass(frozen=True, slots=True)
class HourFuel:
    """One hour of the race, the last one shorter: `hours` long, from `start_s`."""

    start_s: float
    hours: float
    intake: Intake


@dataclass(frozen=True, slots=True)
class LegFuel:
    """From leaving one aid station (or the start) to leaving the next (or the finish).

    `counts` are (food key, servings) in the order of first use; `carry_carb_g` and
    `carry_fluid_ml` what to carry out with 15 % spare.
    """

    station: str | None
    name: str
    start_s: float
    end_s: float
    intake: Intake
    counts: tuple[tuple[str, float], ...]
    items: tuple[str, ...]
    carry_carb_g: float
    carry_fluid_ml: float

    @property
    def hours(self) -> float:
        """Length in hours."""
        return (self.end_s - self.start_s) / 3600.0

    @property
    def carb_g_per_h(self) -> float:
        """Carbohydrate per hour of the leg."""
        return self.intake.carb_g / self.hours if self.hours else 0.0


@dataclass(frozen=True, slots=True)
class FuelCheck:
    """A limit or habit the plan touches: state, sentence, source."""

    state: State
    text: Message
    source: Message


@dataclass(frozen=True, slots=True, eq=False)
class FuelFigures:
    """All fuel figures. `rolling_s` and `rolling_g_per_h`, shape (n,): carbohydrate of the
    hour centred on each time, per hour. `band_g_per_h` is the target band."""

    total: Intake
    hours: tuple[HourFuel, ...]
    legs: tuple[LegFuel, ...]
    rolling_s: FloatArray
    rolling_g_per_h: FloatArray
    band_g_per_h: tuple[float, float]
    checks: tuple[FuelCheck, ...]


def place_by_clock(fuel: FuelPlan, finish_s: float) -> tuple[FuelItem, ...]:
    """Return items placed every `every_s` from `first_s` to reach the asked rates with the foods
    at hand; none in the last 15 minutes. PlanError if there is no food with carbohydrate."""
    raise NotImplementedError


def fuel_figures(
    fuel: FuelPlan, sections: Sequence[SectionFigures], finish_s: float, runner: Runner
) -> FuelFigures:
    """Return the fuel figures of a race of *finish_s* seconds."""
    raise NotImplementedError
