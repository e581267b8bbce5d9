"""The line of a course seen from above, thinned to pixels, with passes over one place parted."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import numpy.typing as npt

from ultraplanner_gui.engine.course_scale import places_of_points
from ultraplanner_gui.plan.course import Course, FloatArray
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.geodesy import local_plane

#: Two visits of one place this far apart along the drawn line are two passes over it.
PASS_PX = 40.0
CELL_PX = 6.0
#: A line no longer than this beside an earlier pass only crosses it.
CROSSING_PX = 20.0
#: Passes lie this far apart, all of them within `SPREAD_PX`.
PART_PX, SPREAD_PX = 4.5, 16.0
#: Points over which a pass moves aside and directions are taken.
SMOOTH = 9
#: Room between the outermost passes and the edge.
LEAST_SPAN_M = 50.0

Indices = npt.NDArray[np.intp]


class GroundPlan(Value, frozen=True, eq=False):
    """Points of the line on a plane, metres, and how far each lies along the course."""

    east_m: FloatArray
    north_m: FloatArray
    at_m: FloatArray
    gaps: tuple[int, ...]


class DrawnLine(Value, frozen=True, eq=False):
    """The line in pixels: `x`, `y` and `at_m` of the points kept, `passes` how often the course
    was there before, `starts` the indices at which a new piece begins, `px_per_m` the scale.
    """

    x: FloatArray
    y: FloatArray
    at_m: FloatArray
    passes: npt.NDArray[np.int64]
    starts: tuple[int, ...]
    px_per_m: float

    def place_of(self, at_m: float) -> tuple[float, float]:
        """Return x and y of a place of the course."""
        return float(np.interp(at_m, self.at_m, self.x)), float(np.interp(at_m, self.at_m, self.y))

    def nearest(self, x: float, y: float) -> tuple[float, float]:
        """Return the place of the course nearest to a point, and how many pixels off it is."""
        ax, ay, bx, by = self.x[:-1], self.y[:-1], self.x[1:], self.y[1:]
        dx, dy = bx - ax, by - ay
        along = ((x - ax) * dx + (y - ay) * dy) / np.maximum(dx * dx + dy * dy, 1e-9)
        share = np.clip(along, 0.0, 1.0)
        off = np.hypot(ax + share * dx - x, ay + share * dy - y)
        off[[start - 1 for start in self.starts[1:]]] = np.inf
        k = int(np.argmin(off))
        at_m = self.at_m[k] + share[k] * (self.at_m[k + 1] - self.at_m[k])
        return float(at_m), float(off[k])


def ground_plan(course: Course) -> GroundPlan:
    """Return the line of *course* laid out on a plane."""
    line = course.line
    east_m, north_m = local_plane(line.latitude_deg, line.longitude_deg)
    return GroundPlan(east_m, north_m, places_of_points(course), line.gaps)


def drawn_line(plan: GroundPlan, left: float, top: float, width: float, height: float) -> DrawnLine:
    """Return *plan* fitted into a rectangle, north up, no two points within one pixel."""
    low_e, high_e = float(plan.east_m.min()), float(plan.east_m.max())
    low_n, high_n = float(plan.north_m.min()), float(plan.north_m.max())
    span_e, span_n = max(high_e - low_e, LEAST_SPAN_M), max(high_n - low_n, LEAST_SPAN_M)
    scale = min(width / span_e, height / span_n)
    x = left + width / 2 + (plan.east_m - (low_e + high_e) / 2) * scale
    y = top + height / 2 - (plan.north_m - (low_n + high_n) / 2) * scale
    kept, starts = _thinned(x, y, plan.gaps)
    x, y, at_m = x[kept], y[kept], plan.at_m[kept]
    passes = _passes(x, y)
    x, y = _parted(x, y, passes, starts)
    return DrawnLine(x, y, at_m, passes, starts, scale)


def _thinned(
    x: FloatArray, y: FloatArray, gaps: tuple[int, ...]
) -> tuple[Indices, tuple[int, ...]]:
    """Return the indices of the points to keep and where pieces begin among them."""
    column, row = np.floor(x).astype(np.int64), np.floor(y).astype(np.int64)
    is_kept = np.ones(len(x), dtype=bool)
    is_kept[1:] = (np.diff(column) != 0) | (np.diff(row) != 0)
    ends = [edge for gap in gaps for edge in (gap - 1, gap)]
    is_kept[[*ends, len(x) - 1]] = True
    kept = np.flatnonzero(is_kept)
    return kept, (0, *np.searchsorted(kept, gaps).tolist())


def _passes(x: FloatArray, y: FloatArray) -> npt.NDArray[np.int64]:
    """Return how often the line was at each point before."""
    run = np.concatenate(([0.0], np.cumsum(np.hypot(np.diff(x), np.diff(y))))).tolist()
    columns = np.floor(x / CELL_PX).astype(int).tolist()
    rows = np.floor(y / CELL_PX).astype(int).tolist()
    seen: dict[tuple[int, int], tuple[int, float]] = {}
    around = [(i, j) for i in (-1, 0, 1) for j in (-1, 0, 1)]
    passes = np.zeros(len(x), dtype=np.int64)
    for k, (column, row, here) in enumerate(zip(columns, rows, run, strict=True)):
        most = 0
        for i, j in around:
            times, last = seen.get((column + i, row + j), (0, here))
            most = max(most, times if here - last > PASS_PX else times - 1)
        passes[k] = most
        times, last = seen.get((column, row), (0, -2 * PASS_PX))
        seen[column, row] = (times + 1 if here - last > PASS_PX else times, here)
    return _without_short_runs(passes, np.asarray(run))


def _without_short_runs(passes: npt.NDArray[np.int64], run: FloatArray) -> npt.NDArray[np.int64]:
    """Return *passes* without those of a moment, where the course only crosses itself."""
    edges = [0, *(np.flatnonzero(np.diff(passes)) + 1).tolist(), len(passes)]
    steady = passes.copy()
    for first, last in pairwise(edges):
        if run[last - 1] - run[first] < CROSSING_PX:
            steady[first:last] = steady[first - 1] if first else 0
    return steady


def _parted(
    x: FloatArray, y: FloatArray, passes: npt.NDArray[np.int64], starts: tuple[int, ...]
) -> tuple[FloatArray, FloatArray]:
    """Return the points with each later pass a little further to its right."""
    most = int(passes.max())
    if most == 0:
        return x, y
    x, y = x.copy(), y.copy()
    step = min(PART_PX, SPREAD_PX / most)
    for first, last in zip(starts, (*starts[1:], len(x)), strict=True):
        part = slice(first, last)
        if last - first < 3:
            continue
        aside = step * _smoothed(passes[part].astype(np.float64))
        dx, dy = _smoothed(np.gradient(x[part])), _smoothed(np.gradient(y[part]))
        length = np.maximum(np.hypot(dx, dy), 1e-6)
        # On a screen y runs down, so that right of the direction (dx, dy) is (-dy, dx).
        x[part] -= aside * dy / length
        y[part] += aside * dx / length
    return x, y


def _smoothed(values: FloatArray) -> FloatArray:
    if len(values) < SMOOTH:
        return values
    padded = np.pad(values, SMOOTH // 2, mode="edge")
    return np.convolve(padded, np.ones(SMOOTH) / SMOOTH, mode="valid")
