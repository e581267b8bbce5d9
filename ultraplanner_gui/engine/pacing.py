"""How a runner of a given finish time gets along the course."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.runner import Runner

PaceShape = Literal["forecast", "target", "even"]


@dataclass(frozen=True, slots=True)
class Stop:
    """A planned stop of *stop_s* seconds at *at_m* metres."""

    at_m: float
    stop_s: float


@dataclass(frozen=True, slots=True, eq=False)
class PacePlan:
    """Race time along the course; arrays of shape (n,), not falling.

    `elapsed_s` includes the stops: at a stop's place it is the arrival, every point beyond
    has the stop in it.
    """

    distance_m: FloatArray
    elapsed_s: FloatArray
    stops: tuple[Stop, ...] = ()

    @property
    def finish_s(self) -> float:
        """Race time at the finish."""
        return float(self.elapsed_s[-1])

    def arrival_s(self, at_m: float) -> float:
        """Return the race time of arrival at a place (before any stop there)."""
        raise NotImplementedError

    def departure_s(self, at_m: float) -> float:
        """Return the race time of leaving a place (after any stop there)."""
        raise NotImplementedError

    def distance_at(self, elapsed_s: float) -> float:
        """Return how far one is after *elapsed_s* seconds, metres."""
        raise NotImplementedError


def pace_for_finish(
    profile: Profile,
    finish_s: float,
    runner: Runner | None = None,
    stops: Sequence[Stop] = (),
    shape: PaceShape = "forecast",
    start: datetime | None = None,
) -> PacePlan:
    """Return the pace plan that finishes at *finish_s* seconds, stops included.

    PlanError if the stops leave no time to run.
    """
    raise NotImplementedError
