"""Walking the rest in: how late one may be and still make every cutoff on foot.

Only for those who are well: a tired walker goes at nine tenths of the median hiker.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property, lru_cache

import numpy as np

from ultraplanner_gui.engine.pacing import PacePlan, Stop, added_up, by_passed, stopped_before
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.course import Course, CutoffKind, FloatArray
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.walking import hiking_speed, walking_speed

# OWN: after many hours one walks at nine tenths of the speed of fresh hikers.
TIREDNESS = 0.9


class Cutoff(Value, frozen=True):
    """The latest race time at *at_m* metres: of arrival, or of leaving if `is_departure`."""

    at_m: float
    by_s: float
    is_departure: bool = False


class Walker(Value, frozen=True):
    """How the rest is walked: at *tiredness* of the speed of the median hiker, or, where
    `power_w_per_kg` is given, of the speed at that gross metabolic rate.
    """

    tiredness: float = TIREDNESS
    power_w_per_kg: float | None = None

    def speed_mps(self, gradient: FloatArray) -> FloatArray:
        """Return the walking speed along the slope.

        Median hiker: Campbell et al. 2022; from metabolic rate: Looney et al. 2019, see
        `science.walking`.
        """
        if self.power_w_per_kg is None:
            return self.tiredness * hiking_speed(gradient)
        return self.tiredness * walking_speed(self.power_w_per_kg, gradient)


class WalkIn(Value, frozen=True, eq=False, dict=True):
    """The walk-in limit along the course; arrays of shape (n,), read-only.

    `walked_s` is the walking time from the start to each point, stops left out. The latest time
    at a point is that from which walking the rest, planned stops included, still makes every
    cutoff from there on; infinite beyond the last one.
    """

    distance_m: FloatArray
    walked_s: FloatArray
    stops: tuple[Stop, ...]
    cutoffs: tuple[Cutoff, ...]

    def __post_init__(self) -> None:
        for array in (self.distance_m, self.walked_s):
            array.setflags(write=False)

    @cached_property
    def latest_s(self) -> FloatArray:
        """The latest arrival at each point from which the rest can still be walked in."""
        spare_s = by_passed(self._cutoffs_m, self._spare_s, self.distance_m)
        latest_s = spare_s + self.walked_s + stopped_before(self.stops, self.distance_m)
        latest_s.setflags(write=False)
        return latest_s

    def walk_s(self, from_m: float, to_m: float) -> float:
        """Return the walking time between two places, stops left out."""
        ends = np.interp((from_m, to_m), self.distance_m, self.walked_s)
        return float(ends[1] - ends[0])

    def latest_arrival_s(self, at_m: float) -> float:
        """Return the latest race time of arrival at a place."""
        return float(self.latest_at((at_m,))[0][0])

    def latest_departure_s(self, at_m: float) -> float:
        """Return the latest race time of leaving a place, its own cutoff for leaving counted.

        A cutoff for arriving there is over. May lie before the earliest anyone gets there:
        then the rest cannot be walked in from it.
        """
        own = [c.by_s for c in self.cutoffs if c.at_m == at_m and c.is_departure]
        later = [
            c.by_s - self.walk_s(at_m, c.at_m) - self._stopped(at_m, c)
            for c in self.cutoffs
            if c.at_m > at_m
        ]
        return min([*own, *later], default=np.inf)

    def latest_at(self, places_m: Sequence[float]) -> tuple[FloatArray, FloatArray]:
        """Return `latest_arrival_s` and `latest_departure_s` of many places in course order."""
        at_m = np.array(places_m, dtype=np.float64)
        walked_s = np.interp(at_m, self.distance_m, self.walked_s)
        stops_m, stopped_s = self._stopping
        cutoffs_m = self._cutoffs_m
        arrive_s = self._spare_s[cutoffs_m.searchsorted(at_m)] + walked_s
        arrive_s += stopped_s[stops_m.searchsorted(at_m)]
        leave_s = self._spare_s[cutoffs_m.searchsorted(at_m, side="right")] + walked_s
        # What has been stopped once one leaves a place, its own stop included.
        leave_s += stopped_s[stops_m.searchsorted(at_m, side="right")]
        for cutoff in self.cutoffs:
            if cutoff.is_departure:
                own = at_m == cutoff.at_m
                leave_s[own] = np.minimum(leave_s[own], cutoff.by_s)
        return arrive_s, leave_s

    def first_point_m(self, plan: PacePlan) -> float | None:
        """Return the place from which on *plan* is never later than the limit.

        From there to the finish the rest can be walked in at any time. None if that is so
        nowhere, or if there are no cutoffs.
        """
        if not self.cutoffs:
            return None
        arrival_s = plan.elapsed_s
        if plan.distance_m is not self.distance_m:
            arrival_s = np.interp(self.distance_m, plan.distance_m, plan.moving_s)
            arrival_s = arrival_s + stopped_before(plan.stops, self.distance_m)
        late_s = arrival_s - self.latest_s
        late = np.flatnonzero(late_s > 0.0)
        if len(late) == 0:
            return 0.0
        k = int(late[-1])
        if k == len(late_s) - 1:
            return None
        if not np.isfinite(late_s[k + 1]):
            return float(self.distance_m[k + 1])
        share = late_s[k] / (late_s[k] - late_s[k + 1])
        return float(self.distance_m[k] + share * (self.distance_m[k + 1] - self.distance_m[k]))

    def _stopped(self, after_m: float, cutoff: Cutoff) -> float:
        """Return the stops beyond *after_m* that end before *cutoff* is held against the clock."""
        return sum(
            s.stop_s
            for s in self.stops
            if after_m < s.at_m < cutoff.at_m or (cutoff.is_departure and s.at_m == cutoff.at_m)
        )

    @cached_property
    def _cutoffs_m(self) -> FloatArray:
        return np.array([cutoff.at_m for cutoff in self.cutoffs])

    @cached_property
    def _stopping(self) -> tuple[FloatArray, FloatArray]:
        return added_up(self.stops)

    @cached_property
    def _spare_s(self) -> FloatArray:
        """The least left at each cutoff and later ones, walking from 0 s; last beyond them all."""
        stops_m, stopped_s = self._stopping
        is_out = np.array([cutoff.is_departure for cutoff in self.cutoffs], dtype=np.bool_)
        before = stops_m.searchsorted(self._cutoffs_m)
        passed = np.where(is_out, stops_m.searchsorted(self._cutoffs_m, side="right"), before)
        walked_s = np.interp(self._cutoffs_m, self.distance_m, self.walked_s)
        by_s = np.array([cutoff.by_s for cutoff in self.cutoffs])
        left_s = np.append(by_s - walked_s - stopped_s[passed], np.inf)
        return np.asarray(np.minimum.accumulate(left_s[::-1])[::-1])


def course_cutoffs(course: Course, race: Race) -> tuple[Cutoff, ...]:
    """Return every cutoff of *course*, the finish included, in course order."""
    cutoffs = [
        Cutoff(s.at_m, s.cutoff_s, s.cutoff_kind is CutoffKind.DEPARTURE)
        for s in course.stations
        if s.cutoff_s is not None
    ]
    if race.limit_s is not None:
        cutoffs.append(Cutoff(course.length_m, race.limit_s))
    return tuple(cutoffs)


def walk_in(
    profile: Profile,
    cutoffs: Sequence[Cutoff],
    stops: Sequence[Stop] = (),
    walker: Walker | None = None,
) -> WalkIn:
    """Return the walk-in limit of a course, its cutoffs and planned stops."""
    walked_s = _walked(profile, walker or Walker())
    ordered = tuple(sorted(cutoffs, key=lambda c: c.at_m))
    planned = tuple(sorted(stops, key=lambda s: s.at_m))
    return WalkIn(profile.distance_m, walked_s, planned, ordered)


# A drag of a stop or a station leaves the ground as it was.
@lru_cache(maxsize=4)
def _walked(profile: Profile, walker: Walker) -> FloatArray:
    gradient = profile.gradient[:-1]
    along_m = np.diff(profile.distance_m) * np.hypot(1.0, gradient)
    walked_s = np.concatenate(([0.0], np.cumsum(along_m / walker.speed_mps(gradient))))
    walked_s.setflags(write=False)
    return walked_s
