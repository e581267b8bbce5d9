"""Lines cut, turned round and put behind one another."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

import numpy as np

from ultraplanner_gui.engine.course_scale import line_distance
from ultraplanner_gui.plan.course import FloatArray, Line
from ultraplanner_gui.science.geodesy import distance_between

#: OWN: a way between two ends up to here is run straight; a longer one is a piece that is missing.
LONGEST_BRIDGE_M = 2_000.0


def cut(line: Line, start_m: float, end_m: float) -> Line:
    """Return the part of *line* between two line places; the first lies before the second."""
    along = line_distance(line)
    first = int(np.searchsorted(along, start_m, side="right"))
    end = int(np.searchsorted(along, end_m, side="left"))
    head, tail = _point_at(line, along, start_m, first), _point_at(line, along, end_m, end)

    def part(values: FloatArray, ends: tuple[float, float]) -> FloatArray:
        return np.concatenate((ends[:1], values[first:end], ends[1:]))

    return Line(
        part(line.latitude_deg, (head[0], tail[0])),
        part(line.longitude_deg, (head[1], tail[1])),
        part(line.elevation_m, (head[2], tail[2])),
        tuple(g - first + 1 for g in line.gaps if first < g < end),
    )


def turned(line: Line) -> Line:
    """Return *line* in the other direction."""
    return Line(
        line.latitude_deg[::-1].copy(),
        line.longitude_deg[::-1].copy(),
        line.elevation_m[::-1].copy(),
        tuple(len(line) - g for g in reversed(line.gaps)),
    )


def way_between(before: Line, after: Line) -> float:
    """Return how far the end of one line lies from the start of the next, metres."""
    return float(
        distance_between(
            before.latitude_deg[-1],
            before.longitude_deg[-1],
            after.latitude_deg[0],
            after.longitude_deg[0],
        )
    )


def chained(lines: Sequence[Line]) -> Line:
    """Return *lines* as one; ways between them of more than 2 km are gaps."""
    parts = list(lines[:1])
    gaps = list(lines[0].gaps)
    points = len(lines[0])
    for before, after in pairwise(lines):
        meets = way_between(before, after) == 0.0
        shift = points - meets
        if way_between(before, after) > LONGEST_BRIDGE_M:
            gaps.append(points)
        gaps += [shift + g for g in after.gaps]
        parts.append(_without_first(after) if meets else after)
        points = shift + len(after)
    return Line(
        np.concatenate([p.latitude_deg for p in parts]),
        np.concatenate([p.longitude_deg for p in parts]),
        np.concatenate([p.elevation_m for p in parts]),
        tuple(gaps),
    )


def _without_first(line: Line) -> Line:
    return Line(line.latitude_deg[1:], line.longitude_deg[1:], line.elevation_m[1:])


def _point_at(line: Line, along: FloatArray, at_m: float, after: int) -> tuple[float, float, float]:
    """Return the point at a line place, which lies before the point *after* of the line."""
    after = min(max(after, 1), len(line) - 1)
    step = along[after] - along[after - 1]
    share = float((at_m - along[after - 1]) / step) if step > 0.0 else 1.0
    turn = line.longitude_deg[after] - line.longitude_deg[after - 1]
    turn = (turn + 180.0) % 360.0 - 180.0
    longitude = float(line.longitude_deg[after - 1] + share * turn)
    return (
        _between(line.latitude_deg, after, share),
        (longitude + 180.0) % 360.0 - 180.0 if abs(longitude) > 180.0 else longitude,
        _between(line.elevation_m, after, share),
    )


def _between(values: FloatArray, after: int, share: float) -> float:
    low, high = float(values[after - 1]), float(values[after])
    return low + share * (high - low)
