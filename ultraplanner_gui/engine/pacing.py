"""How a runner of a given finish time gets along the course.

The time between two places is what the ground between them costs (`science.gradient_cost`,
surface included) over what the runner still gives after so many hours and in the dark
(`engine.effort_clock`). The integral of that power over the running time is shared out by cost,
so the finish is met without searching for a speed. Heat, which hangs on place and hour, is
reckoned at the hour of passing and the sharing done again. Own fit to real runs.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from datetime import datetime, timedelta
from functools import cached_property, lru_cache
from itertools import accumulate
from typing import Literal

import numpy as np

from ultraplanner_gui.engine.effort_clock import EffortClock, Fading, effort_clock, linear
from ultraplanner_gui.engine.environment import PLAIN, Effects, hour_power, place_power
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.engine.slope import slope_felt
from ultraplanner_gui.plan.conditions import Effect
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError, Quantity
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.gradient_cost import pace_cost

PaceShape = Literal["forecast", "target", "even"]

# How much of the runner's fade each shape has, and whether the night slows it.
_SHAPES: dict[PaceShape, tuple[float, bool]] = {
    "forecast": (1.0, True),
    "target": (0.5, True),
    "even": (0.0, False),
}

_ROUNDS = 20
_SETTLED_S = 5.0


class Stop(Value, frozen=True):
    """A planned stop of *stop_s* seconds at *at_m* metres."""

    at_m: float
    stop_s: float


class PacePlan(Value, frozen=True, eq=False, dict=True):
    """Race time along the course; arrays of shape (n,), not falling, read-only.

    `elapsed_s` includes the stops: at a stop's place it is the arrival, every point beyond
    has the stop in it. `distance_m` is the profile's, with the ends of sections put in
    where the runner fixed some (`engine.sections.shaped_target`). `fresh_mps` is the speed on
    firm level ground, fresh and by day, that the plan takes; NaN where sections were fixed.
    """

    distance_m: FloatArray
    elapsed_s: FloatArray
    stops: tuple[Stop, ...] = ()
    fresh_mps: float = math.nan

    def __post_init__(self) -> None:
        self.distance_m.setflags(write=False)
        self.elapsed_s.setflags(write=False)

    @property
    def finish_s(self) -> float:
        """Race time at the finish."""
        return float(self.elapsed_s[-1])

    @cached_property
    def moving_s(self) -> FloatArray:
        """Race time without the stops, per point; read-only."""
        moving_s = self.elapsed_s - stopped_before(self.stops, self.distance_m)
        moving_s.setflags(write=False)
        return moving_s

    def arrival_s(self, at_m: float) -> float:
        """Return the race time of arrival at a place (before any stop there)."""
        k = int(self.distance_m.searchsorted(at_m)) - 1
        k = min(max(k, 0), len(self.distance_m) - 2)
        x0, x1 = self.distance_m[k : k + 2].tolist()
        t0, t1 = self.elapsed_s[k : k + 2].tolist()
        share = min(max((at_m - x0) / (x1 - x0), 0.0), 1.0)
        stopped_s = 0.0
        for stop in self.stops:
            if x0 <= stop.at_m < x1:
                t1 -= stop.stop_s
                stopped_s += stop.stop_s if stop.at_m < at_m else 0.0
        return float(t0 + share * (t1 - t0) + stopped_s)

    def arrivals_s(self, at_m: Sequence[float]) -> list[float]:
        """Return `arrival_s` of many places in course order."""
        at = np.asarray(at_m, dtype=np.float64)
        moving_s = np.interp(at, self.distance_m, self.moving_s)
        arrivals_s: list[float] = (moving_s + self.stopped_s(at)).tolist()
        return arrivals_s

    def stopped_s(self, at_m: FloatArray) -> FloatArray:
        """Return the time stopped before each of a few places, in any order."""
        stops_m, stopped_s = self._stopping
        return stopped_s[stops_m.searchsorted(at_m)]

    @cached_property
    def _stopping(self) -> tuple[FloatArray, FloatArray]:
        return added_up(self.stops)

    def departure_s(self, at_m: float) -> float:
        """Return the race time of leaving a place (after any stop there)."""
        return self.arrival_s(at_m) + sum(s.stop_s for s in self.stops if s.at_m == at_m)

    def distance_at(self, elapsed_s: float) -> float:
        """Return how far one is after *elapsed_s* seconds, metres."""
        k = int(self.elapsed_s.searchsorted(elapsed_s)) - 1
        k = min(max(k, 0), len(self.distance_m) - 2)
        x0, x1 = self.distance_m[k : k + 2].tolist()
        t0, t1 = self.elapsed_s[k : k + 2].tolist()
        places, times = [x0], [t0]
        for stop in self.stops:
            if x0 <= stop.at_m < x1:
                places += [stop.at_m, stop.at_m]
                times += [self.arrival_s(stop.at_m), self.departure_s(stop.at_m)]
        return linear([*times, t1], [*places, x1], max(elapsed_s, t0))


def stopped_before(stops: Sequence[Stop], distance_m: FloatArray) -> FloatArray:
    """Return the time stopped before each of many places, seconds; both in course order."""
    return by_passed(*added_up(stops), distance_m)


def added_up(stops: Sequence[Stop]) -> tuple[FloatArray, FloatArray]:
    """Return the places of *stops*, and the time stopped after 0, 1, 2 ... of them."""
    stopped_s = [0.0, *accumulate(stop.stop_s for stop in stops)]
    return np.array([stop.at_m for stop in stops]), np.array(stopped_s)


def by_passed(marks_m: FloatArray, values: FloatArray, distance_m: FloatArray) -> FloatArray:
    """Return for each of many places that of the n + 1 *values* which counts the marks before it.

    Marks and places are in course order.
    """
    ends = np.zeros(len(marks_m) + 2, dtype=np.intp)
    ends[1:-1] = distance_m.searchsorted(marks_m, side="right")
    ends[-1] = len(distance_m)
    return values.repeat(ends[1:] - ends[:-1])


def pace_for_finish(
    profile: Profile,
    finish_s: float,
    runner: Runner | None = None,
    stops: Sequence[Stop] = (),
    shape: PaceShape = "forecast",
    start: datetime | None = None,
    *,
    effects: Effects | None = None,
    fade_share: float | None = None,
) -> PacePlan:
    """Return the pace plan that finishes at *finish_s* seconds, stops included.

    "forecast" fades as the runner does, "target" half as much, both slower in the dark;
    "even" spreads the effort evenly over the course. *start* is aware; without it all is by day.
    The clock of fade and darkness runs on through the stops. Stops at or beyond the finish do
    not count. *effects* (default: the night alone) shape all but "even". *fade_share* is how
    much of the runner's fade stays in, instead of what the shape has. PlanError if the stops
    leave no time to run.
    """
    planned = _in_course_order(stops, profile.length_m)
    _check_time_is_left(planned, finish_s)
    plain = effects or PLAIN
    asked = _Asked(profile, runner or Runner(), planned, shape, start, plain, fade_share)
    return _paced(asked, _offset(start), finish_s, None)


def pace_at_effort(
    profile: Profile,
    fresh_mps: float,
    runner: Runner | None = None,
    stops: Sequence[Stop] = (),
    shape: PaceShape = "forecast",
    start: datetime | None = None,
    *,
    effects: Effects | None = None,
) -> PacePlan:
    """Return the pace plan of a runner who does *fresh_mps* on firm level ground when fresh.

    The way back of `pace_for_finish`: its `fresh_mps` gives its finish.
    """
    if not fresh_mps > 0.0:
        raise ValueError("fresh_mps must be above zero")
    planned = _in_course_order(stops, profile.length_m)
    asked = _Asked(profile, runner or Runner(), planned, shape, start, effects or PLAIN)
    return _paced(asked, _offset(start), None, fresh_mps)


class _Asked(Value, frozen=True):
    """A course, a runner and a day."""

    profile: Profile
    runner: Runner
    stops: tuple[Stop, ...]
    shape: PaceShape
    start: datetime | None
    effects: Effects
    fade_share: float | None = None

    @property
    def stopped_s(self) -> float:
        return sum(stop.stop_s for stop in self.stops)

    def fading(self) -> Fading:
        usual_share, night_counts = _SHAPES[self.shape]
        fade_share = usual_share if self.fade_share is None else self.fade_share
        is_dark = night_counts and self.effects.has(Effect.NIGHT)
        return Fading(
            fade=fade_share * self.runner.fade,
            onset_h=self.runner.fade_onset_h,
            night_loss=self.runner.night_loss if is_dark else 0.0,
            start=self.start,
            place_deg=(self.profile.latitude_deg, self.profile.longitude_deg),
        )


# A drag that leaves goal, stops and runner alone asks for the same two curves again and again.
# The offset is asked for because starts at one instant are equal whatever their clocks show.
@lru_cache(maxsize=4)
def _paced(
    asked: _Asked, offset: timedelta | None, finish_s: float | None, fresh_mps: float | None
) -> PacePlan:
    del offset
    if asked.shape == "even":
        cost = _cost_so_far(asked.profile, asked.runner.uphill_share)
    else:
        cost = _with_places(asked.profile, asked.runner.uphill_share, asked.effects)
    plan = _shared_out(asked, cost, finish_s, fresh_mps)
    if asked.start is None or asked.shape == "even" or not asked.effects.has(Effect.HEAT):
        return plan
    for _ in range(_ROUNDS):
        heat = hour_power(asked.profile, asked.effects, asked.start, plan.elapsed_s)
        hot = np.concatenate(([0.0], np.cumsum(np.diff(cost) / heat)))
        before, plan = plan, _shared_out(asked, hot, finish_s, fresh_mps)
        if np.abs(plan.elapsed_s - before.elapsed_s).max() < _SETTLED_S:
            break
    return plan


def _shared_out(
    asked: _Asked, cost: FloatArray, finish_s: float | None, fresh_mps: float | None
) -> PacePlan:
    """Return the plan that pays *cost* by the finish, or at the speed *fresh_mps* when fresh."""
    profile, stops = asked.profile, asked.stops
    share = cost / cost[-1]
    stops_m = np.array([stop.at_m for stop in stops])
    at = np.interp(stops_m, profile.distance_m, share).tolist()
    stop_s = [stop.stop_s for stop in stops]
    if finish_s is not None:
        clock = effort_clock(asked.fading(), finish_s + asked.stopped_s)
        used, lost = clock.used_by_finish(finish_s, at, stop_s)
    else:
        used = float(cost[-1]) / (fresh_mps or 1.0)
        clock = _long_enough(asked, used)
        lost = clock.lost_in_stops(used, at, stop_s)
    given_by_then = used * share + by_passed(stops_m, lost, profile.distance_m)
    elapsed_s = np.interp(given_by_then, clock.given, clock.clock_s)
    if finish_s is not None:
        elapsed_s[-1] = finish_s
    return PacePlan(profile.distance_m, elapsed_s, stops, float(cost[-1]) / used)


def _long_enough(asked: _Asked, used: float) -> EffortClock:
    """Return a clock on which *used* power can be given; a stop costs at most its time."""
    needed = last_s = used + asked.stopped_s + 60.0
    while True:
        clock = effort_clock(asked.fading(), last_s)
        if clock.given[-1] >= needed:
            return clock
        last_s *= 1.5


def _offset(start: datetime | None) -> timedelta | None:
    return None if start is None else start.utcoffset()


def flat_length_m(profile: Profile, runner: Runner | None = None) -> float:
    """Return the flat-equivalent distance of a course: firm level metres that take as long."""
    return float(_cost_so_far(profile, (runner or Runner()).uphill_share)[-1])


def _in_course_order(stops: Sequence[Stop], length_m: float) -> tuple[Stop, ...]:
    """Return the stops that take time, those at one place joined."""
    at: dict[float, float] = {}
    for stop in sorted(stops, key=lambda s: s.at_m):
        if stop.stop_s > 0.0 and stop.at_m < length_m:
            at[stop.at_m] = at.get(stop.at_m, 0.0) + stop.stop_s
    return tuple(Stop(at_m, stop_s) for at_m, stop_s in at.items())


def _check_time_is_left(stops: Sequence[Stop], finish_s: float) -> None:
    stopped_s = sum(stop.stop_s for stop in stops)
    if stopped_s >= finish_s:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Plan",
                "The stops take {0} of the {1} to the finish and leave no time to run; "
                "shorten them or allow more time.",
            ),
            Quantity(stopped_s, "s"),
            Quantity(finish_s, "s"),
        )


@lru_cache(maxsize=4)
def _cost_so_far(profile: Profile, uphill_share: float) -> FloatArray:
    """Return the cost from the start to each point, in metres of firm level ground."""
    cost = pace_cost(slope_felt(profile), uphill_share) * profile.surface_cost[:-1]
    total = np.concatenate(([0.0], np.cumsum(cost * np.diff(profile.distance_m))))
    total.setflags(write=False)
    return total


@lru_cache(maxsize=4)
def _with_places(profile: Profile, uphill_share: float, effects: Effects) -> FloatArray:
    """Return `_cost_so_far` made dearer where altitude or a rough descent takes power."""
    cost = _cost_so_far(profile, uphill_share)
    if effects == PLAIN:
        return cost
    dearer = np.diff(cost) / place_power(profile, effects)
    total = np.concatenate(([0.0], np.cumsum(dearer)))
    total.setflags(write=False)
    return total
