"""Walking the rest in: how late one may be and still make every cutoff on foot.

Only for those who are well: a tired walker goes at nine tenths of the median hiker.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

import numpy as np

from ultraplanner_gui.engine.pacing import PacePlan, Stop, stopped_before
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.course import Course, CutoffKind, FloatArray
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.value import dataclass
from ultraplanner_gui.science.walking import hiking_speed, walking_speed

# OWN: after many hours one walks at nine tenths of the speed of fresh hikers.
TIREDNESS = 0.9


@dataclass(frozen=True, slots=True)
class Cutoff:
    """The latest race time at *at_m* metres: of arrival, or of leaving if `is_departure`."""

    at_m: float
    by_s: float
    is_departure: bool = False


@dataclass(frozen=True, slots=True)
class Walker:
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


@dataclass(frozen=True, slots=True, eq=False)
class WalkIn:
    """The walk-in limit along the course; arrays of shape (n,), read-only.

    `walked_s` is the walking time from the start to each point, stops left out. `latest_s` is
    the latest arrival at a point from which walking the rest, planned stops included, still
    makes every cutoff from there on; infinite beyond the last one.
    """

    distance_m: FloatArray
    walked_s: FloatArray
    latest_s: FloatArray
    stops: tuple[Stop, ...]
    cutoffs: tuple[Cutoff, ...]

    def __post_init__(self) -> None:
        for array in (self.distance_m, self.walked_s, self.latest_s):
            array.setflags(write=False)

    def walk_s(self, from_m: float, to_m: float) -> float:
        """Return the walking time between two places, stops left out."""
        ends = np.interp((from_m, to_m), self.distance_m, self.walked_s)
        return float(ends[1] - ends[0])

    def latest_arrival_s(self, at_m: float) -> float:
        """Return the latest race time of arrival at a place."""
        return float(_latest(self, np.array([at_m]))[0])

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
        leave_s = np.full(len(at_m), np.inf)
        if self.cutoffs and len(at_m):
            stopped_s = np.concatenate(([0.0], np.cumsum([s.stop_s for s in self.stops])))
            stops_m = np.array([s.at_m for s in self.stops])
            # What has been stopped once one leaves a place, its own stop included.
            left_s = stopped_s[np.searchsorted(stops_m, at_m, side="right")]
            walked_s = np.interp(at_m, self.distance_m, self.walked_s)
            first = np.searchsorted(_places(self), at_m, side="right")
            leave_s = np.append(_spare(self), np.inf)[first] + (walked_s + left_s)
            for cutoff in self.cutoffs:
                if cutoff.is_departure:
                    own = at_m == cutoff.at_m
                    leave_s[own] = np.minimum(leave_s[own], cutoff.by_s)
        return _latest(self, at_m), leave_s

    def first_point_m(self, plan: PacePlan) -> float | None:
        """Return the place from which on *plan* is never later than the limit.

        From there to the finish the rest can be walked in at any time. None if that is so
        nowhere, or if there are no cutoffs.
        """
        if not self.cutoffs:
            return None
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

    def stopped_by(self, cutoff: Cutoff) -> float:
        """Return all stops that end before *cutoff* is held against the clock."""
        return self._stopped(-1.0, cutoff)

    def _stopped(self, after_m: float, cutoff: Cutoff) -> float:
        """Return the stops beyond *after_m* that end before *cutoff* is held against the clock."""
        return sum(
            s.stop_s
            for s in self.stops
            if after_m < s.at_m < cutoff.at_m or (cutoff.is_departure and s.at_m == cutoff.at_m)
        )


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
    bare = WalkIn(profile.distance_m, walked_s, np.empty(0), planned, ordered)
    latest_s = _latest(bare, profile.distance_m)
    return WalkIn(profile.distance_m, walked_s, latest_s, planned, ordered)


# A drag of a stop or a station leaves the ground as it was.
@lru_cache(maxsize=4)
def _walked(profile: Profile, walker: Walker) -> FloatArray:
    gradient = profile.gradient[:-1]
    along_m = np.diff(profile.distance_m) * np.hypot(1.0, gradient)
    walked_s = np.concatenate(([0.0], np.cumsum(along_m / walker.speed_mps(gradient))))
    walked_s.setflags(write=False)
    return walked_s


def _latest(limit: WalkIn, at_m: FloatArray) -> FloatArray:
    """Return the latest arrival at places in course order."""
    walked_s = np.interp(at_m, limit.distance_m, limit.walked_s)
    spent_s = walked_s + stopped_before(limit.stops, at_m)
    first = np.searchsorted(_places(limit), at_m, side="left")
    return np.asarray(np.append(_spare(limit), np.inf)[first] + spent_s)


def _places(limit: WalkIn) -> FloatArray:
    return np.array([cutoff.at_m for cutoff in limit.cutoffs])


def _spare(limit: WalkIn) -> FloatArray:
    """Return for each cutoff the least that is left, of it and later ones, walking from 0 s on."""
    walked_s = np.interp(_places(limit), limit.distance_m, limit.walked_s).tolist()
    left_s = [
        cutoff.by_s - walked - limit.stopped_by(cutoff)
        for cutoff, walked in zip(limit.cutoffs, walked_s, strict=True)
    ]
    return np.asarray(np.minimum.accumulate(left_s[::-1])[::-1] if left_s else np.empty(0))
