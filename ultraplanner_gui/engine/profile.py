"""The course as arrays to compute with: distance, smoothed height, gradient, climb and drop."""

from __future__ import annotations

from itertools import pairwise

import numpy as np

from ultraplanner_gui.engine.course_scale import line_distance, places_of_points
from ultraplanner_gui.engine.surface_spans import surface_factors_of
from ultraplanner_gui.plan.course import Course, FloatArray, Line, Surface
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.elevation import climb_and_drop, filled, moving_mean

__all__ = ["Profile", "build_profile", "line_distance"]

# OWN choices; that height must be smoothed before it is counted, and that the sum hangs on how
# far: Rapaport 2010, arXiv 1011.4778.
GRID_M = 10.0
MOST_PIECES = 20_000
WINDOW_M = 70.0
THRESHOLD_M = 5.0
STEEPEST = 1.0


class Profile(Value, frozen=True, eq=False):
    """The course on an even grid; arrays of shape (n,), read-only.

    `gradient[k]` is rise over run of the piece from point k to k + 1 (the last repeats);
    `climb_m` and `drop_m` are cumulative from the start by the same turning-point rule as the
    totals `ascent_m` and `descent_m`; `surface_cost[k]` is the cost factor of the piece.
    `latitude_deg`, `longitude_deg` are those of the start. `method` says how height was treated;
    `measured_ascent_m`, `measured_descent_m` are the totals of the heights of the file before they
    were scaled to official ones, None without heights.
    """

    distance_m: FloatArray
    elevation_m: FloatArray
    gradient: FloatArray
    climb_m: FloatArray
    drop_m: FloatArray
    surface_cost: FloatArray
    ascent_m: float
    descent_m: float
    has_elevation: bool
    latitude_deg: float
    longitude_deg: float
    method: Message
    measured_ascent_m: float | None = None
    measured_descent_m: float | None = None

    @property
    def length_m(self) -> float:
        """Length of the course."""
        return float(self.distance_m[-1])

    def climb_drop(self, start_m: float, end_m: float) -> tuple[float, float]:
        """Return climb and drop between two places, metres."""
        ends = (start_m, end_m)
        climb = np.interp(ends, self.distance_m, self.climb_m)
        drop = np.interp(ends, self.distance_m, self.drop_m)
        return float(climb[1] - climb[0]), float(drop[1] - drop[0])

    def elevation_at(self, at_m: float) -> float:
        """Return the height at a place, metres."""
        return float(np.interp(at_m, self.distance_m, self.elevation_m))


def build_profile(course: Course) -> Profile:
    """Return the profile of *course*: height averaged over 70 m, turns of less than 5 m not
    counted as climb or drop, nothing counted across a gap of the line.

    Heights are scaled so that climb and drop come to the official ones, where there are any.
    """
    line = course.line
    along = places_of_points(course)
    pieces = max(1, min(MOST_PIECES, round(course.length_m / GRID_M)))
    distance = np.linspace(0.0, course.length_m, pieces + 1)
    elevation, gradient, climb, drop = _heights(line, along, distance)
    measured = float(climb[-1]), float(drop[-1])
    if line.has_elevation:
        elevation, gradient, climb, drop = _as_official(course, elevation, gradient, climb, drop)
    arrays = (
        distance,
        elevation,
        gradient,
        climb,
        drop,
        _cost(course, distance),
    )
    for array in arrays:
        array.setflags(write=False)
    return Profile(
        *arrays,
        ascent_m=float(climb[-1]),
        descent_m=float(drop[-1]),
        has_elevation=line.has_elevation,
        latitude_deg=float(line.latitude_deg[0]),
        longitude_deg=float(line.longitude_deg[0]),
        method=_method(course, *measured),
        measured_ascent_m=measured[0] if line.has_elevation else None,
        measured_descent_m=measured[1] if line.has_elevation else None,
    )


def _heights(
    line: Line, along: FloatArray, distance: FloatArray
) -> tuple[FloatArray, FloatArray, FloatArray, FloatArray]:
    """Return height, gradient, climb and drop on the grid; level where no height is known."""
    elevation, rise, fall = (np.zeros(len(distance)) for _ in range(3))
    gradient = np.zeros(len(distance))
    if not line.has_elevation:
        return elevation, gradient, rise, fall
    heights = filled(along, line.elevation_m)
    step = distance[1]
    for first, last in pairwise((0, *line.gaps, len(line))):
        start = 0 if first == 0 else int(np.searchsorted(distance, along[first], side="right"))
        end = int(np.searchsorted(distance, along[last - 1], side="right"))
        end = len(distance) if last == len(line) else end
        if end <= start:
            continue
        part = slice(start, end)
        elevation[part] = moving_mean(
            along[first:last], heights[first:last], distance[part], max(WINDOW_M, step)
        )
        climb, drop = climb_and_drop(elevation[part], THRESHOLD_M)
        rise[part], fall[part] = np.diff(climb, prepend=0.0), np.diff(drop, prepend=0.0)
        gradient[start : end - 1] = np.diff(elevation[part]) / step
    gradient[-1] = gradient[-2]
    return (
        elevation,
        np.clip(gradient, -STEEPEST, STEEPEST),
        np.cumsum(rise),
        np.cumsum(fall),
    )


def _cost(course: Course, distance: FloatArray) -> FloatArray:
    """Return the cost factor of each piece by what lies under its middle."""
    factors = surface_factors_of(course)
    cost = np.full(len(distance), factors[Surface.UNKNOWN].cost)
    middle = distance + distance[1] / 2.0
    for span in course.surfaces:
        cost[(middle >= span.start_m) & (middle < span.end_m)] = factors[span.surface].cost
    cost[-1] = cost[-2]
    return cost


def _as_official(
    course: Course,
    elevation: FloatArray,
    gradient: FloatArray,
    climb: FloatArray,
    drop: FloatArray,
) -> tuple[FloatArray, FloatArray, FloatArray, FloatArray]:
    """Return heights, gradients, climb and drop with the official totals.

    What is counted as climb grows by one factor, what is counted as drop by another; waves too
    small to count stay as they are.
    """
    up, down = _factors(course, float(climb[-1]), float(drop[-1]))
    if (up, down) == (1.0, 1.0):
        return elevation, gradient, climb, drop
    added = (up - 1.0) * climb - (down - 1.0) * drop
    steeper = gradient.copy()
    steeper[:-1] += np.diff(added) / course.length_m * (len(gradient) - 1)
    steeper[-1] = steeper[-2]
    return elevation + added, np.clip(steeper, -STEEPEST, STEEPEST), up * climb, down * drop


def _factors(course: Course, climb_m: float, drop_m: float) -> tuple[float, float]:
    """Return the factors on climb and drop.

    Of one alone the other follows, so that start and finish keep their heights; where that
    would change it by more than half, by the same factor. (OWN.)
    """
    up = _factor(course.official_climb_m, climb_m)
    down = _factor(course.official_drop_m, drop_m)
    if down is None and up is not None:
        down = _following(up, climb_m, drop_m)
    elif up is None and down is not None:
        up = _following(down, drop_m, climb_m)
    return (1.0 if up is None else up), (1.0 if down is None else down)


def _factor(official_m: float | None, measured_m: float) -> float | None:
    return official_m / measured_m if official_m is not None and measured_m > 0.0 else None


def _following(factor: float, leading_m: float, following_m: float) -> float:
    if following_m <= 0.0:
        return 1.0
    follows = 1.0 + (factor - 1.0) * leading_m / following_m
    return follows if 0.5 <= follows <= 1.5 else factor


def _method(course: Course, climb_m: float, drop_m: float) -> Message:
    if not course.line.has_elevation:
        return message(QT_TRANSLATE_NOOP("Profile", "No heights in the file: taken as level."))
    said = QT_TRANSLATE_NOOP(
        "Profile", "Height averaged over {0}; ups and downs of less than {1} not counted."
    )
    grain = Quantity(WINDOW_M, "m"), Quantity(THRESHOLD_M, "height_m")
    if _factors(course, climb_m, drop_m) == (1.0, 1.0):
        return message(said, *grain)
    return message(
        QT_TRANSLATE_NOOP(
            "Profile",
            "Height averaged over {0}; ups and downs of less than {1} not counted. Scaled to the "
            "official figures from {2} of climb and {3} of drop.",
        ),
        *grain,
        Quantity(climb_m, "height_m"),
        Quantity(drop_m, "height_m"),
    )
