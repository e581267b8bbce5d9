"""From the strands of a file to one line in course order, mended where it can be."""

from __future__ import annotations

from collections.abc import Collection
from itertools import pairwise

import numpy as np
import numpy.typing as npt

from ultraplanner_gui.exchange.course_heights import mended_heights
from ultraplanner_gui.exchange.course_pieces import LONGEST_BRIDGE_M, Pieces
from ultraplanner_gui.exchange.gpx_parse import GpxFile
from ultraplanner_gui.plan.course import FloatArray, Line
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.plan.reading import Repair, RepairKind
from ultraplanner_gui.science.geodesy import distance_along, distance_between

# OWN limits.
BRIDGE_TO_MENTION_M = 50.0
SPARSE_M = 100.0
#: A point is astray if the line jumps so far to it and back, and so much further than usual.
STRAY_M, STRAY_STEPS, STRAY_SHARE, MOST_STRAY = 500.0, 20.0, 0.25, 5
#: At the very start or end, where there is no way back, it is so far.
STRAY_END_M = 50_000.0


def line_of(
    gpx: GpxFile, pieces: Pieces, without: Collection[RepairKind] = ()
) -> tuple[Line, tuple[Message, ...]]:
    """Return the one line to run in *pieces* of *gpx* and what had to be mended to get it."""
    repairs: list[Message] = []
    kept, starts = _without_repeats(gpx, pieces)
    if RepairKind.STRAY not in without:
        kept, starts, said = _without_strays(gpx, kept, starts)
        repairs += said
    latitude, longitude = gpx.latitude_deg[kept], gpx.longitude_deg[kept]
    gaps, said = gaps_of(latitude, longitude, starts, without)
    repairs += said
    distance = distance_along(latitude, longitude, gaps)
    if distance[-1] / len(kept) > SPARSE_M:
        repairs.append(
            message(
                QT_TRANSLATE_NOOP(
                    "Course",
                    "The points lie {0} apart on average: distance, climb and drop come out short.",
                ),
                Quantity(float(distance[-1]) / len(kept), "m"),
            )
        )
    elevation, said = mended_heights(distance, gpx.elevation_m[kept], without)
    return Line(latitude, longitude, elevation, gaps), tuple(repairs + said)


IndexArray = npt.NDArray[np.intp]


def _without_repeats(gpx: GpxFile, pieces: Pieces) -> tuple[IndexArray, tuple[int, ...]]:
    """Return the points that differ from the one before, and where segments start among them."""
    points = pieces.points
    differs = np.zeros(len(points), dtype=np.bool_)
    differs[0] = True
    for values in (gpx.latitude_deg, gpx.longitude_deg, gpx.elevation_m):
        v = values[points]
        differs[1:] |= (v[1:] != v[:-1]) & ~(np.isnan(v[1:]) & np.isnan(v[:-1]))
    # A segment that starts where the one before ended goes on: nothing lies between them.
    starts = tuple(s for s in pieces.starts if differs[s])
    return points[differs], _starts_among(starts, differs)


def _starts_among(starts: tuple[int, ...], is_kept: npt.NDArray[np.bool_]) -> tuple[int, ...]:
    """Return where segments start among the points that are kept."""
    before = np.concatenate(([0], np.cumsum(is_kept)))
    kept = {int(before[s]) for s in starts}
    return tuple(sorted(s for s in kept if 0 < s < before[-1]))


def _without_strays(
    gpx: GpxFile, points: IndexArray, starts: tuple[int, ...]
) -> tuple[IndexArray, tuple[int, ...], list[Message]]:
    """Return the points without those the line jumps to and back from."""
    latitude, longitude = gpx.latitude_deg[points], gpx.longitude_deg[points]
    step = distance_between(latitude[:-1], longitude[:-1], latitude[1:], longitude[1:])
    if len(step) < 3:
        return points, starts, []
    far = max(STRAY_M, STRAY_STEPS * float(np.median(step)))
    jumps = np.flatnonzero(step > far).tolist()
    is_kept = np.ones(len(points), dtype=np.bool_)
    for out, back in pairwise(jumps):
        if back - out > MOST_STRAY or not is_kept[out]:
            continue
        way = distance_between(
            latitude[out], longitude[out], latitude[back + 1], longitude[back + 1]
        )
        if way <= STRAY_SHARE * min(step[out], step[back]):
            is_kept[out + 1 : back + 1] = False
    _mark_stray_ends(is_kept, step, jumps)
    strays = int(np.count_nonzero(~is_kept))
    if not strays:
        return points, starts, []
    said = Repair(
        QT_TRANSLATE_NOOP("Course", "Points far off the line were left out: {0}."),
        (Quantity(strays, "count"),),
        RepairKind.STRAY,
    )
    return points[is_kept], _starts_among(starts, is_kept), [said]


def _mark_stray_ends(is_kept: npt.NDArray[np.bool_], step: FloatArray, jumps: list[int]) -> None:
    if len(is_kept) <= 4 * MOST_STRAY or not jumps:
        return
    if jumps[0] < MOST_STRAY and step[jumps[0]] > STRAY_END_M:
        is_kept[: jumps[0] + 1] = False
    if jumps[-1] >= len(step) - MOST_STRAY and step[jumps[-1]] > STRAY_END_M:
        is_kept[jumps[-1] + 1 :] = False


def gaps_of(
    latitude: FloatArray,
    longitude: FloatArray,
    starts: tuple[int, ...],
    without: Collection[RepairKind] = (),
) -> tuple[tuple[int, ...], list[Message]]:
    """Return which segment starts are gaps of the course; the others are bridged straight.

    Without the one repair nothing is bridged, without the other all is.
    """
    if not starts:
        return (), []
    at = np.array(starts)
    width = distance_between(latitude[at - 1], longitude[at - 1], latitude[at], longitude[at])
    is_long = width > LONGEST_BRIDGE_M
    bridged, missing = float(width[~is_long].sum()), float(width[is_long].sum())
    is_gap = is_long & (RepairKind.BROKEN not in without)
    repairs: list[Message] = []
    if bridged > BRIDGE_TO_MENTION_M and RepairKind.BRIDGED in without:
        is_gap |= ~is_long & (width > 0.0)
    elif bridged > BRIDGE_TO_MENTION_M:
        said = QT_TRANSLATE_NOOP(
            "Course", "Between pieces that do not quite meet, {0} in all were bridged straight."
        )
        repairs.append(Repair(said, (Quantity(bridged, "m"),), RepairKind.BRIDGED))
    if missing and RepairKind.BROKEN not in without:
        said = QT_TRANSLATE_NOOP(
            "Course", "The line is broken: {0} in all are missing and not counted."
        )
        repairs.append(Repair(said, (Quantity(missing, "m"),), RepairKind.BROKEN))
    return tuple(at[is_gap].tolist()), repairs
