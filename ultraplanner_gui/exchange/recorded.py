"""The points of a recording in the order of time."""

from __future__ import annotations

from bisect import bisect_right

import numpy as np
import numpy.typing as npt

from ultraplanner_gui.exchange.course_pieces import Pieces
from ultraplanner_gui.exchange.gpx_parse import GpxFile
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, CourseError

IndexArray = npt.NDArray[np.intp]

# OWN limits: a race lasts at most ten days, so a time further from the others than that is a
# clock that was not set; and a file of which so few points are in order is out of order.
LONGEST_S = 10 * 86_400.0
IN_ORDER_SHARE = 0.9
# OWN limits of times that come of drawing a line: points so evenly spaced in time, and some
# stretches run so many times faster than the usual, as no run is.
DRAWN_STEP_S, DRAWN_EVEN_SHARE, DRAWN_FAST, DRAWN_LEAST = 20.0, 0.99, 3.0, 50


def timed_points(gpx: GpxFile, pieces: Pieces) -> tuple[IndexArray, FloatArray, tuple[int, ...]]:
    """Return the usable points as indices into the arrays of *gpx*, their times, and the places
    among them where a new segment starts; times do not fall. CourseError if fewer than two.
    """
    segment = np.zeros(len(pieces.points), dtype=np.intp)
    segment[list(pieces.starts)] = 1
    segment = np.cumsum(segment)
    times = gpx.epoch_s[pieces.points]
    usable = np.flatnonzero(np.isfinite(times))
    if len(usable):
        middle = np.median(times[usable])
        usable = usable[np.abs(times[usable] - middle) <= LONGEST_S]
    order = _by_segment_start(usable, times, segment)
    kept = order[_longest_rise(times[order])]
    if len(kept) < IN_ORDER_SHARE * len(order):
        kept = usable[np.argsort(times[usable], kind="stable")]
    if len(kept) < 2 or times[kept[-1]] <= times[kept[0]]:
        raise CourseError(
            QT_TRANSLATE_NOOP(
                "Course",
                "{0} has no times, so nobody can tell how it was run. Export the recording.",
            ),
            gpx.file,
        )
    starts = np.flatnonzero(np.diff(segment[kept])) + 1
    return pieces.points[kept], times[kept], tuple(starts.tolist())


def check_is_run(file: str, along_m: FloatArray, elapsed_s: FloatArray) -> None:
    """Raise CourseError if the times are those a program gave to a line that was drawn.

    Such a program sets its points evenly in time, however far apart: in a run recorded once a
    minute hardly a minute is run three times as fast as the usual one.
    """
    steps_s = np.diff(elapsed_s)
    if len(steps_s) < DRAWN_LEAST:
        return
    usual_s = float(np.median(steps_s))
    is_even = np.abs(steps_s - usual_s) <= 0.01 * usual_s
    if usual_s < DRAWN_STEP_S or is_even.mean() < DRAWN_EVEN_SHARE:
        return
    speed_mps = np.diff(along_m)[is_even] / usual_s
    if float(np.quantile(speed_mps, 0.99)) > DRAWN_FAST * float(np.median(speed_mps)):
        raise CourseError(
            QT_TRANSLATE_NOOP(
                "Course",
                "The times in {0} come of drawing the line, not of running it. Open it as a course,"
                " or export the recording.",
            ),
            file,
        )


def _by_segment_start(usable: IndexArray, times: FloatArray, segment: IndexArray) -> IndexArray:
    """Return the usable points with whole segments in the order of their first times."""
    if len(usable) == 0:
        return usable
    own = segment[usable]
    first = np.full(int(segment[-1]) + 1, np.inf)
    np.minimum.at(first, own, times[usable])
    return usable[np.argsort(first[own], kind="stable")]


def _longest_rise(times: FloatArray) -> list[int]:
    """Return the indices of the longest subsequence that does not fall."""
    if len(times) == 0 or bool((np.diff(times) >= 0.0).all()):
        return list(range(len(times)))
    tails: list[float] = []
    ends: list[int] = []
    before: list[int] = []
    for i, time in enumerate(times.tolist()):
        k = bisect_right(tails, time)
        tails[k : k + 1] = [time]
        ends[k : k + 1] = [i]
        before.append(ends[k - 1] if k else -1)
    kept = [ends[-1]]
    while before[kept[-1]] >= 0:
        kept.append(before[kept[-1]])
    return kept[::-1]
