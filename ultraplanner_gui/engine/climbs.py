"""Climbs and descents of a course, found in its profile, and sections cut at their ends.

The profile is parted at its turning points, heights from which it goes back by a threshold. Of
each part between two of them counts what rises (or falls) more than 2 % of its way, so that a
valley floor belongs to no climb, and 2 km that rise less than 1 % part two of them. (Rules and
limits: OWN.)
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from itertools import pairwise

import numpy as np

from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.engine.section_cuts import End, cut_at
from ultraplanner_gui.plan.course import Course, FloatArray, Section, Slope
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.elevation import turning_points

# OWN: on a course of 2,500 m of climb a rise of 100 m is a climb, on a flatter one a lower rise.
SHARE_OF_ASCENT = 1.0 / 25.0
LEAST_HEIGHT_M, MOST_HEIGHT_M = 30.0, 150.0
LEVEL_GRADIENT = 0.02
#: OWN: ground that rises less than that over so long a way parts a climb in two.
PLATEAU_GRADIENT, SHORTEST_PLATEAU_M = 0.01, 2_000.0
STEEPEST_OVER_M = 100.0
#: OWN: level ground up to here between a climb and a descent is no section of its own.
SHORTEST_LEVEL_M = 1_000.0
#: OWN: a climb that begins or ends so near an aid station begins or ends there.
NEAR_STATION_M = 500.0

CLIMB = QT_TRANSLATE_NOOP("Plan", "Climb {0}: {1}, {2}")
DESCENT = QT_TRANSLATE_NOOP("Plan", "Descent {0}: {1}, {2}")


class Hill(Value, frozen=True):
    """One climb or descent, the `number`th of its kind; places in metres from the start.

    `height_m` is the climb (or drop) counted in it, never negative; `gradient` its mean and
    `steepest` that of its steepest 100 m, rise over run, negative downhill.
    """

    slope: Slope
    number: int
    start_m: float
    end_m: float
    height_m: float
    gradient: float
    steepest: float

    @property
    def length_m(self) -> float:
        """Length of the climb or descent."""
        return self.end_m - self.start_m

    @property
    def rise_m(self) -> float:
        """Height gained; below zero in a descent."""
        return self.height_m if self.slope is Slope.CLIMB else -self.height_m

    @property
    def name(self) -> Message:
        """What it is called: "Climb 3: 5.1 km, 410 m"."""
        return slope_name(self.slope, self.number, self.length_m, self.height_m)


def slope_name(slope: Slope, number: int, length_m: float, height_m: float) -> Message:
    """Return what a climb or descent, or the section that is one, is called."""
    template = CLIMB if slope is Slope.CLIMB else DESCENT
    return message(template, number, Quantity(length_m, "m"), Quantity(height_m, "height_m"))


def least_height_m(profile: Profile) -> float:
    """Return from which height on a rise or fall of *profile* is a climb or descent, metres."""
    middle_m = (profile.ascent_m + profile.descent_m) / 2.0
    return min(max(middle_m * SHARE_OF_ASCENT, LEAST_HEIGHT_M), MOST_HEIGHT_M)


def hills(profile: Profile, least_m: float | None = None) -> tuple[Hill, ...]:
    """Return climbs and descents of at least *least_m* in course order; none overlap.

    Without *least_m* a 25th of the climb of the course, between 30 and 150 m.
    """
    threshold = least_height_m(profile) if least_m is None else least_m
    if profile.ascent_m + profile.descent_m < threshold:
        return ()
    found: list[tuple[int, int, Slope]] = []
    turns = turning_points(profile.elevation_m, threshold)
    for first, last in pairwise(turns):
        rises = profile.elevation_m[last] > profile.elevation_m[first]
        sign = 1.0 if rises else -1.0
        slope = Slope.CLIMB if rises else Slope.DESCENT
        height = sign * profile.elevation_m
        found += [(a, b, slope) for a, b in _steep(profile, height, first, last, threshold)]
    counts = dict.fromkeys(Slope, 0)
    result: list[Hill] = []
    for first, last, slope in found:
        counts[slope] += 1
        result.append(_hill(profile, first, last, slope, counts[slope]))
    return tuple(result)


@lru_cache(maxsize=4)
def hills_of(profile: Profile) -> tuple[Hill, ...]:
    """Return `hills` of *profile*, found when first asked for."""
    return hills(profile)


def sections_by_climbs(
    profile: Profile, course: Course, with_stations: bool = True
) -> tuple[Section, ...]:
    """Return the sections of *course* cut where climbs and descents begin and end.

    *with_stations* also at every aid station; without, only at those with a cutoff. Sections
    that stay as they were keep their targets.
    """
    return cut_at(course, _ends(hills_of(profile), course.length_m), with_stations, NEAR_STATION_M)


def _ends(found: Sequence[Hill], length_m: float) -> list[End]:
    """Return where sections end and what each is; short level ground goes to its neighbours."""
    ends: list[End] = []
    reached_m = 0.0
    for hill in found:
        level_m = hill.start_m - reached_m
        if level_m >= SHORTEST_LEVEL_M:
            ends.append(End(hill.start_m))
        elif ends and level_m > 0.0:
            ends[-1] = End(reached_m + level_m / 2.0, ends[-1].slope, ends[-1].number)
        ends.append(End(hill.end_m, hill.slope, hill.number))
        reached_m = hill.end_m
    if ends and length_m - reached_m < SHORTEST_LEVEL_M:
        ends[-1] = End(length_m, ends[-1].slope, ends[-1].number)
    else:
        ends.append(End(length_m))
    return ends


def _steep(
    profile: Profile, height: FloatArray, first: int, last: int, threshold: float
) -> list[tuple[int, int]]:
    """Return the stretches between two points that rise by *threshold* and more than 2 %."""
    found: list[tuple[int, int]] = []
    waiting = [(first, last)]
    while waiting:
        low, high = waiting.pop()
        start, end = _most(height - LEVEL_GRADIENT * profile.distance_m, low, high)
        if end <= start or height[end] - height[start] < threshold:
            continue
        level = _level(profile, height, start, end)
        halves = ((start, level[0]), (level[1], end)) if level is not None else ()
        if halves and all(height[b] - height[a] >= threshold for a, b in halves):
            waiting += halves
        else:
            found.append((start, end))
        waiting += [(low, start), (end, high)]
    return sorted(found)


def _most(values: FloatArray, low: int, high: int) -> tuple[int, int]:
    """Return the two points from *low* to *high* between which *values* grow most."""
    part = values[low : high + 1]
    end = int(np.argmax(part - np.minimum.accumulate(part)))
    return low + int(np.argmin(part[: end + 1])), low + end


def _level(profile: Profile, height: FloatArray, low: int, high: int) -> tuple[int, int] | None:
    """Return the longest stretch that hardly rises, if it is long enough to part a climb."""
    start, end = _most(PLATEAU_GRADIENT * profile.distance_m - height, low, high)
    is_long = profile.distance_m[end] - profile.distance_m[start] >= SHORTEST_PLATEAU_M
    return (start, end) if is_long else None


def _hill(profile: Profile, first: int, last: int, slope: Slope, number: int) -> Hill:
    distance = profile.distance_m
    start_m, end_m = float(distance[first]), float(distance[last])
    climb_m, drop_m = profile.climb_drop(start_m, end_m)
    net_m = float(profile.elevation_m[last] - profile.elevation_m[first])
    steps = max(1, min(round(STEEPEST_OVER_M / distance[1]), last - first))
    heights = profile.elevation_m[first : last + 1]
    gradients = (heights[steps:] - heights[:-steps]) / (steps * distance[1])
    return Hill(
        slope,
        number,
        start_m,
        end_m,
        climb_m if slope is Slope.CLIMB else drop_m,
        net_m / (end_m - start_m),
        float(gradients.max() if slope is Slope.CLIMB else gradients.min()),
    )
