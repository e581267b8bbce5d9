"""How a runner of a given finish time gets along the course.

The time between two places is what the ground between them costs (`science.gradient_cost`,
surface included) over what the runner still gives after so many hours and in the dark. The
integral of that power over the running time is shared out by cost, so the finish is met
without searching for a speed. Model and parameters are an own fit to real runs.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime
from functools import lru_cache
from typing import Literal

import numpy as np

from ultraplanner_gui.engine.light import dark_share
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError, Quantity
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.science.gradient_cost import pace_cost

PaceShape = Literal["forecast", "target", "even"]

# How much of the runner's fade each shape has, and whether the night slows it.
_SHAPES: dict[PaceShape, tuple[float, bool]] = {
    "forecast": (1.0, True),
    "target": (0.5, True),
    "even": (0.0, False),
}

_CLOCK_STEP_S = 60.0
_MOST_CLOCK_STEPS = 4096


@dataclass(frozen=True, slots=True)
class Stop:
    """A planned stop of *stop_s* seconds at *at_m* metres."""

    at_m: float
    stop_s: float


@dataclass(frozen=True, slots=True, eq=False)
class PacePlan:
    """Race time along the course; arrays of shape (n,), not falling, read-only.

    `elapsed_s` includes the stops: at a stop's place it is the arrival, every point beyond
    has the stop in it. `distance_m` is the profile's, with the ends of sections put in
    where the runner fixed some (`engine.sections.shaped_target`).
    """

    distance_m: FloatArray
    elapsed_s: FloatArray
    stops: tuple[Stop, ...] = ()

    def __post_init__(self) -> None:
        self.distance_m.setflags(write=False)
        self.elapsed_s.setflags(write=False)

    @property
    def finish_s(self) -> float:
        """Race time at the finish."""
        return float(self.elapsed_s[-1])

    @property
    def moving_s(self) -> FloatArray:
        """Race time without the stops, per point."""
        return self.elapsed_s - stopped_before(self.stops, self.distance_m)

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
        at = np.asarray(at_m)
        k = np.clip(self.distance_m.searchsorted(at) - 1, 0, len(self.distance_m) - 2)
        x0, x1 = self.distance_m[k], self.distance_m[k + 1]
        t0 = self.elapsed_s[k] - stopped_before(self.stops, x0)
        t1 = self.elapsed_s[k + 1] - stopped_before(self.stops, x1)
        share = np.clip((at - x0) / (x1 - x0), 0.0, 1.0)
        arrivals_s: list[float] = (t0 + share * (t1 - t0) + stopped_before(self.stops, at)).tolist()
        return arrivals_s

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
        return _linear([*times, t1], [*places, x1], max(elapsed_s, t0))


def stopped_before(stops: Sequence[Stop], distance_m: FloatArray) -> FloatArray:
    """Return the time stopped before each place, seconds; both in course order."""
    return _by_stops_passed(stops, distance_m, np.cumsum([0.0, *(s.stop_s for s in stops)]))


def _by_stops_passed(
    stops: Sequence[Stop], distance_m: FloatArray, values: FloatArray
) -> FloatArray:
    """Return for each place that of the n + 1 *values* which counts the stops before it."""
    first = np.searchsorted(distance_m, [s.at_m for s in stops], side="right")
    return np.repeat(values, np.diff(first, prepend=0, append=len(distance_m)))


def pace_for_finish(
    profile: Profile,
    finish_s: float,
    runner: Runner | None = None,
    stops: Sequence[Stop] = (),
    shape: PaceShape = "forecast",
    start: datetime | None = None,
) -> PacePlan:
    """Return the pace plan that finishes at *finish_s* seconds, stops included.

    "forecast" fades as the runner does, "target" half as much, both slower in the dark;
    "even" spreads the effort evenly over the course. *start* is aware; without it all is by day.
    The clock of fade and darkness runs on through the stops. Stops at or beyond the finish do
    not count. PlanError if the stops leave no time to run.
    """
    planned = _in_course_order(stops, profile.length_m)
    _check_time_is_left(planned, finish_s)
    return _paced(profile, finish_s, runner or Runner(), planned, shape, start)


# A drag that leaves goal, stops and runner alone asks for the same two curves again and again.
@lru_cache(maxsize=4)
def _paced(
    profile: Profile,
    finish_s: float,
    runner: Runner,
    planned: tuple[Stop, ...],
    shape: PaceShape,
    start: datetime | None,
) -> PacePlan:
    stopped_s = sum(stop.stop_s for stop in planned)
    clock_s, given = _power_given(profile, finish_s + stopped_s, runner, shape, start)
    cost = _cost_so_far(profile, runner.uphill_share)
    share = cost / cost[-1]
    at = [float(np.interp(stop.at_m, profile.distance_m, share)) for stop in planned]
    used, lost = _power_used(clock_s, given, finish_s, at, [stop.stop_s for stop in planned])
    given_by_then = used * share + _by_stops_passed(planned, profile.distance_m, lost)
    elapsed_s = np.interp(given_by_then, given, clock_s)
    elapsed_s[-1] = finish_s
    return PacePlan(profile.distance_m, elapsed_s, planned)


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
    cost = pace_cost(profile.gradient[:-1], uphill_share) * profile.surface_cost[:-1]
    total = np.concatenate(([0.0], np.cumsum(cost * np.diff(profile.distance_m))))
    total.setflags(write=False)
    return total


def _power_given(
    profile: Profile,
    last_s: float,
    runner: Runner,
    shape: PaceShape,
    start: datetime | None,
) -> tuple[FloatArray, FloatArray]:
    """Return times up to *last_s* and the integral of power up to each, in fresh seconds."""
    steps = min(max(64, round(last_s / _CLOCK_STEP_S)), _MOST_CLOCK_STEPS)
    clock_s = np.linspace(0.0, last_s, steps + 1)
    fade_share, night_counts = _SHAPES[shape]
    power = (1.0 + clock_s / 3600.0 / runner.fade_onset_h) ** (-fade_share * runner.fade)
    if start is not None and night_counts and runner.night_loss:
        if start.tzinfo is None:
            raise ValueError("start must be aware")
        place = (profile.latitude_deg, profile.longitude_deg)
        power = power * (1.0 - runner.night_loss * dark_share(start, clock_s, *place))
    pieces = np.diff(clock_s) * (power[:-1] + power[1:]) / 2.0
    return clock_s, np.concatenate(([0.0], np.cumsum(pieces)))


def _power_used(
    clock_s: FloatArray,
    given: FloatArray,
    finish_s: float,
    at: Sequence[float],
    stop_s: Sequence[float],
) -> tuple[float, FloatArray]:
    """Return the power that goes into running, and what 0, 1, 2 ... stops have cost of it.

    *at* are the shares of the cost at which the stops lie. The times must reach beyond the
    finish by all stops, so that even a stop a step before it finds its place.
    """
    times, powers = clock_s.tolist(), given.tolist()
    to_finish = _linear(times, powers, finish_s)

    def lost_in_stops(used: float) -> list[float]:
        lost = [0.0]
        for share, stop in zip(at, stop_s, strict=True):
            arrival = min(used * share + lost[-1], powers[-1])
            leave_s = _linear(powers, times, arrival) + stop
            lost.append(lost[-1] + _linear(times, powers, leave_s) - arrival)
        return lost

    if not at:
        return to_finish, np.zeros(1)
    used = _rising_root(lambda e: e + lost_in_stops(e)[-1] - to_finish, to_finish)
    return used, np.array(lost_in_stops(used))


def _linear(xs: Sequence[float], ys: Sequence[float], x: float) -> float:
    """Return y at *x* on the line through ascending points, level beyond its ends."""
    if x >= xs[-1]:
        return ys[-1]
    k = max(bisect_right(xs, x) - 1, 0)
    return ys[k] + (x - xs[k]) / (xs[k + 1] - xs[k]) * (ys[k + 1] - ys[k])


def _rising_root(excess: Callable[[float], float], high: float) -> float:
    """Return where *excess* is zero between 0 and *high*, by false position (Illinois rule).

    Dowell & Jarratt 1971, BIT 11:168.
    """
    low, below, above = 0.0, excess(0.0), excess(high)
    side = 0
    root = high
    for _ in range(100):
        root = high - above * (high - low) / (above - below)
        value = excess(root)
        if abs(value) < 1e-9 or high - low < 1e-9:
            break
        if value > 0.0:
            high, above = root, value
            below = below / 2.0 if side > 0 else below
            side = 1
        else:
            low, below = root, value
            above = above / 2.0 if side < 0 else above
            side = -1
    return root
