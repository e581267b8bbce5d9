"""What the fuel plan adds up to: by hour, by leg and as a rolling rate."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import numpy.typing as npt
from msgspec.structs import replace

from ultraplanner_gui.engine.fuel_checks import FuelCheck as FuelCheck
from ultraplanner_gui.engine.fuel_checks import Taken, fuel_checks
from ultraplanner_gui.engine.fuel_kit import fructose_g
from ultraplanner_gui.engine.fuel_placing import place_by_clock as place_by_clock
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.fuel import Food, FuelItem, FuelPlan
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.caffeine import in_body_mg
from ultraplanner_gui.science.fuelling import S_PER_H, carry_need, per_hour

_ROLLING_STEP_S = 300.0
_HALF_WINDOW_S = 1800.0
_BAND = (0.9, 1.1)


class Intake(Value, frozen=True):
    """Sums over some items."""

    carb_g: float = 0.0
    fluid_ml: float = 0.0
    sodium_mg: float = 0.0
    caffeine_mg: float = 0.0
    weight_g: float = 0.0
    energy_kcal: float = 0.0
    protein_g: float = 0.0


class HourFuel(Value, frozen=True):
    """One hour of the race, the last one shorter: `hours` long, from `start_s`."""

    start_s: float
    hours: float
    intake: Intake


class LegFuel(Value, frozen=True):
    """From leaving one aid station (or the start) to leaving the next (or the finish).

    `station` and `name` are those of its end, None and usually empty for the finish. An item
    taken on leaving belongs to the next leg. `counts` are (food key, servings) in the order of
    first use; `carry_carb_g` and `carry_fluid_ml` what to carry out with 15 % spare: what is
    asked or what is planned, the more of both.
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


class Eaten(Value, frozen=True, eq=False):
    """When what is taken, shape (n,), and what 0 to n items come to, shape (n + 1, figures).

    By whom and in how long a race they are reckoned, too.
    """

    runner: Runner
    finish_s: float
    at_s: FloatArray
    sums: FloatArray


class FuelFigures(Value, frozen=True, eq=False):
    """All fuel figures. `rolling_s` and `rolling_g_per_h`, shape (n,): carbohydrate of the
    hour centred on each time, per hour; so fluid and sodium. `caffeine_mg` is what is in the
    body at each time. `band_g_per_h` is the target band. `plan` has every item on the clock.
    """

    total: Intake
    hours: tuple[HourFuel, ...]
    legs: tuple[LegFuel, ...]
    rolling_s: FloatArray
    rolling_g_per_h: FloatArray
    band_g_per_h: tuple[float, float]
    checks: tuple[FuelCheck, ...]
    plan: FuelPlan
    rolling_ml_per_h: FloatArray
    rolling_mg_per_h: FloatArray
    caffeine_mg: FloatArray
    eaten: Eaten

    def has_same_clock(self, fuel: FuelPlan, finish_s: float, runner: Runner) -> bool:
        """Whether all but the legs would come out as it is here."""
        eaten = self.eaten
        return self.plan is fuel and eaten.runner is runner and eaten.finish_s == finish_s

    @property
    def sodium_mg_per_l(self) -> float:
        """Sodium over fluid of the whole race; 0 without fluid."""
        return 1000.0 * self.total.sodium_mg / self.total.fluid_ml if self.total.fluid_ml else 0.0


_FIGURES = Intake.__struct_fields__


def fuel_figures(
    fuel: FuelPlan,
    sections: Sequence[SectionFigures],
    finish_s: float,
    runner: Runner,
    before: FuelFigures | None = None,
) -> FuelFigures:
    """Return the fuel figures of a race of *finish_s* seconds.

    Items beyond the finish count for nothing but a check. What only hangs on the clock is taken
    over from *before* where nothing of it has changed.
    """
    if before is None or not before.has_same_clock(fuel, finish_s, runner):
        before = _by_clock(fuel, finish_s, runner)
    return replace(before, legs=_legs(fuel, before.eaten, sections))


def _by_clock(fuel: FuelPlan, finish_s: float, runner: Runner) -> FuelFigures:
    """Return the fuel figures without the legs."""
    items = tuple(item for item in fuel.items if item.at_s <= finish_s)
    at_s, taken_of = _taken(fuel, items)
    amounts = taken_of[:, :-1]
    sums = np.vstack((np.zeros(len(_FIGURES)), np.cumsum(amounts, axis=0)))
    rolling_s = np.linspace(0.0, finish_s, math.ceil(finish_s / _ROLLING_STEP_S) + 1)
    rolling = _rolling(at_s, sums, rolling_s, finish_s)
    taken = Taken(
        finish_s=finish_s,
        at_s=at_s,
        carb_g=amounts[:, _FIGURES.index("carb_g")],
        fluid_ml=amounts[:, _FIGURES.index("fluid_ml")],
        sodium_mg=amounts[:, _FIGURES.index("sodium_mg")],
        caffeine_mg=amounts[:, _FIGURES.index("caffeine_mg")],
        fructose_g=taken_of[:, -1],
        beyond=len(fuel.items) - len(items),
    )
    band = (_BAND[0] * fuel.carb_g_per_h, _BAND[1] * fuel.carb_g_per_h)
    return FuelFigures(
        total=Intake(*sums[-1].tolist()),
        hours=_hours(at_s, sums, finish_s),
        legs=(),
        rolling_s=rolling_s,
        rolling_g_per_h=rolling[:, _FIGURES.index("carb_g")],
        band_g_per_h=band,
        checks=fuel_checks(fuel, taken, band, runner),
        plan=fuel,
        rolling_ml_per_h=rolling[:, _FIGURES.index("fluid_ml")],
        rolling_mg_per_h=rolling[:, _FIGURES.index("sodium_mg")],
        caffeine_mg=in_body_mg(at_s, taken.caffeine_mg, rolling_s),
        eaten=Eaten(runner, finish_s, at_s, sums),
    )


_known: tuple[tuple[Food, ...], dict[str, tuple[float, ...]]] = ((), {})


def _per_serving(foods: tuple[Food, ...]) -> dict[str, tuple[float, ...]]:
    """Return the figures of each food and its fructose; those of the same foods once only."""
    global _known
    if _known[0] is not foods:
        figures = {f.key: (*(getattr(f, name) for name in _FIGURES), fructose_g(f)) for f in foods}
        _known = (foods, figures)
    return _known[1]


def _taken(fuel: FuelPlan, items: Sequence[FuelItem]) -> tuple[FloatArray, FloatArray]:
    """Return when each item is taken, shape (n,), and what is in it, shape (n, figures)."""
    per_serving = _per_serving(fuel.foods)
    at_s = np.array([item.at_s for item in items], dtype=np.float64)
    servings = np.array([item.servings for item in items], dtype=np.float64)
    amounts = np.array([per_serving[item.food] for item in items], dtype=np.float64)
    return at_s, amounts.reshape(len(items), len(_FIGURES) + 1) * servings[:, np.newaxis]


def _rolling(
    at_s: FloatArray, sums: FloatArray, times_s: FloatArray, finish_s: float
) -> FloatArray:
    """Return the hourly rates of the hour centred on each time, of its part inside the race."""
    starts = np.maximum(times_s - _HALF_WINDOW_S, 0.0)
    ends = np.minimum(times_s + _HALF_WINDOW_S, finish_s)
    taken = sums[_index(at_s, ends, finish_s)] - sums[np.searchsorted(at_s, starts)]
    length_s = np.maximum(ends - starts, 1.0)
    rates: FloatArray = taken * (S_PER_H / length_s)[:, np.newaxis]
    return rates


def _index(at_s: FloatArray, ends_s: FloatArray, finish_s: float) -> npt.NDArray[np.intp]:
    """Return how many items come before each end; one at the very finish belongs to the race."""
    return np.searchsorted(at_s, np.where(ends_s >= finish_s, np.inf, ends_s))


def _hours(at_s: FloatArray, sums: FloatArray, finish_s: float) -> tuple[HourFuel, ...]:
    starts = np.arange(0.0, finish_s, S_PER_H)
    ends = np.minimum(starts + S_PER_H, finish_s)
    rows = (sums[_index(at_s, ends, finish_s)] - sums[np.searchsorted(at_s, starts)]).tolist()
    return tuple(
        HourFuel(start, (end - start) / S_PER_H, Intake(*row))
        for start, end, row in zip(starts.tolist(), ends.tolist(), rows, strict=True)
    )


def _legs(fuel: FuelPlan, eaten: Eaten, sections: Sequence[SectionFigures]) -> tuple[LegFuel, ...]:
    ends: list[tuple[str | None, str, float]] = [
        (s.station, s.name, s.leave_s) for s in sections[:-1] if s.station is not None
    ]
    ends.append((None, sections[-1].name if sections else "", eaten.finish_s))
    cuts = _index(eaten.at_s, np.array([end_s for _, _, end_s in ends]), eaten.finish_s).tolist()
    sums = eaten.sums
    legs: list[LegFuel] = []
    start_s, first, spare = 0.0, 0, fuel.carrying.spare
    for (station, name, end_s), last in zip(ends, cuts, strict=True):
        items = fuel.items[first:last]
        intake = Intake(*(sums[last] - sums[first]).tolist())
        counts: dict[str, float] = {}
        for item in items:
            counts[item.food] = counts.get(item.food, 0.0) + item.servings
        legs.append(
            LegFuel(
                station=station,
                name=name,
                start_s=start_s,
                end_s=end_s,
                intake=intake,
                counts=tuple(counts.items()),
                items=tuple(item.key for item in items),
                carry_carb_g=_carry(fuel.carb_g_per_h, intake.carb_g, end_s - start_s, spare),
                carry_fluid_ml=_carry(fuel.fluid_ml_per_h, intake.fluid_ml, end_s - start_s, spare),
            )
        )
        start_s, first = end_s, last
    return tuple(legs)


def _carry(asked_per_h: float, planned: float, s: float, spare: float) -> float:
    return carry_need(max(asked_per_h, per_hour(planned, s)), s, spare)
