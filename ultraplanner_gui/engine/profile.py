"""The course as arrays to compute with: distance, smoothed height, gradient, climb and drop."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from ultraplanner_gui.engine.course_scale import line_distance, places_of_points
from ultraplanner_gui.engine.surface_spans import surface_factors_of
from ultraplanner_gui.plan.course import Course, FloatArray, Line, Surface
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.science.elevation import climb_and_drop, filled, moving_mean

__all__ = ["Profile", "build_profile", "line_distance"]

# OWN choices; that height must be smoothed before it is counted, and that the sum hangs on how
# far: Rapaport 2010, arXiv 1011.4778.
GRID_M = 10.0
MOST_PIECES = 20_000
WINDOW_M = 70.0
THRESHOLD_M = 5.0
STEEPEST = 1.0


@dataclass(frozen=True, slots=True, eq=False)
class Profile:
    """The course on an even grid; arrays of shape (n,), read-only.

    `gradient[k]` is rise over run of the piece from point k to k + 1 (the last repeats);
    `climb_m` and `drop_m` are cumulative from the start by the same turning-point rule as the
    totals `ascent_m` and `descent_m`; `surface_cost[k]` is the cost factor of the piece.
    `latitude_deg`, `longitude_deg` are those of the start. `method` says how height was treated.
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
    """
    line = course.line
    along = places_of_points(course)
    pieces = max(1, min(MOST_PIECES, round(course.length_m / GRID_M)))
    distance = np.linspace(0.0, course.length_m, pieces + 1)
    elevation, gradient, climb, drop = _heights(line, along, distance)
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
        method=_method(line.has_elevation),
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


def _method(has_elevation: bool) -> Message:
    if not has_elevation:
        return message(QT_TRANSLATE_NOOP("Profile", "No heights in the file: taken as level."))
    return message(
        QT_TRANSLATE_NOOP(
            "Profile",
            "Height averaged over {0}; ups and downs of less than {1} not counted.",
        ),
        Quantity(WINDOW_M, "m"),
        Quantity(THRESHOLD_M, "height_m"),
    )
