"""From the strands of a file to one line in course order, mended where it can be."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from ultraplanner_gui.exchange.gpx_parse import GpxFile, Kind, Strand
from ultraplanner_gui.plan.course import FloatArray, Line
from ultraplanner_gui.plan.message import (
    QT_TRANSLATE_NOOP,
    CourseError,
    Message,
    Quantity,
    message,
)
from ultraplanner_gui.science.elevation import spikes, zero_fillers
from ultraplanner_gui.science.geodesy import distance_along, distance_between

# OWN limits. Tracks that continue one another seldom meet to the metre, so a short way between
# them is run ground; a long one is a piece that is missing.
LONGEST_BRIDGE_M = 2_000.0
BRIDGE_TO_MENTION_M = 50.0
LOWEST_M, HIGHEST_M = -1_000.0, 10_000.0
SPARSE_M = 100.0


@dataclass(frozen=True, slots=True, eq=False)
class Pieces:
    """The strands that make the line, as places in the arrays of the file.

    `points` are indices into those arrays in course order, `starts` the places in `points` at
    which a new segment begins.
    """

    kind: Kind
    strands: tuple[Strand, ...]
    points: npt.NDArray[np.intp]
    starts: tuple[int, ...]


def pieces_of(gpx: GpxFile) -> Pieces:
    """Return the tracks of *gpx*, its routes if it has no track; CourseError if neither has two
    points.
    """
    for kind in ("track", "route"):
        strands = tuple(
            s for s in gpx.strands if s.kind == kind and s.starts and s.end > s.starts[0]
        )
        points = [np.arange(s.starts[0], s.end) for s in strands]
        if sum(map(len, points)) >= 2:
            return Pieces(kind, strands, np.concatenate(points), _starts(strands))
    raise CourseError(
        QT_TRANSLATE_NOOP(
            "Course", "{0} holds no track and no route to run along. Export it with its track."
        ),
        gpx.file,
    )


def _starts(strands: tuple[Strand, ...]) -> tuple[int, ...]:
    starts: list[int] = []
    before = 0
    for strand in strands:
        first = strand.starts[0]
        inside = (s for s in strand.starts if s < strand.end)
        starts.extend(before + s - first for s in inside)
        before += strand.end - first
    return tuple(sorted({s for s in starts if s > 0}))


def line_of(gpx: GpxFile) -> tuple[Line, tuple[Message, ...]]:
    """Return the one line to run in *gpx* and what had to be mended to get it."""
    pieces = pieces_of(gpx)
    repairs = _said_of_pieces(gpx, pieces)
    kept, starts = _without_repeats(gpx, pieces)
    latitude, longitude = gpx.latitude_deg[kept], gpx.longitude_deg[kept]
    gaps, said = gaps_of(latitude, longitude, starts)
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
    elevation, said = mended_heights(distance, gpx.elevation_m[kept])
    return Line(latitude, longitude, elevation, gaps), tuple(repairs + said)


def _said_of_pieces(gpx: GpxFile, pieces: Pieces) -> list[Message]:
    repairs: list[Message] = []
    count = Quantity(len(pieces.strands), "count")
    if len(pieces.strands) > 1 and pieces.kind == "track":
        repairs.append(
            message(
                QT_TRANSLATE_NOOP("Course", "{0} tracks were joined in the order of the file."),
                count,
            )
        )
    elif len(pieces.strands) > 1:
        repairs.append(
            message(
                QT_TRANSLATE_NOOP("Course", "{0} routes were joined in the order of the file."),
                count,
            )
        )
    if pieces.kind == "track" and any(s.kind == "route" and s.starts for s in gpx.strands):
        repairs.append(
            message(
                QT_TRANSLATE_NOOP(
                    "Course", "The file holds a route as well; the course follows the track."
                )
            )
        )
    return repairs


def _without_repeats(gpx: GpxFile, pieces: Pieces) -> tuple[npt.NDArray[np.intp], tuple[int, ...]]:
    """Return the points that differ from the one before, and where segments start among them."""
    points = pieces.points
    differs = np.zeros(len(points), dtype=np.bool_)
    differs[0] = True
    for values in (gpx.latitude_deg, gpx.longitude_deg, gpx.elevation_m):
        v = values[points]
        differs[1:] |= (v[1:] != v[:-1]) & ~(np.isnan(v[1:]) & np.isnan(v[:-1]))
    place = np.cumsum(differs) - 1
    starts = {int(place[s]) + (0 if differs[s] else 1) for s in pieces.starts}
    kept = points[differs]
    return kept, tuple(sorted(s for s in starts if 0 < s < len(kept)))


def gaps_of(
    latitude: FloatArray, longitude: FloatArray, starts: tuple[int, ...]
) -> tuple[tuple[int, ...], list[Message]]:
    """Return which segment starts are gaps of the course; the others are bridged straight."""
    if not starts:
        return (), []
    at = np.array(starts)
    width = distance_between(latitude[at - 1], longitude[at - 1], latitude[at], longitude[at])
    is_gap = width > LONGEST_BRIDGE_M
    repairs: list[Message] = []
    bridged = float(width[~is_gap].sum())
    if bridged > BRIDGE_TO_MENTION_M:
        repairs.append(
            message(
                QT_TRANSLATE_NOOP(
                    "Course",
                    "Between pieces that do not quite meet, {0} in all were bridged straight.",
                ),
                Quantity(bridged, "m"),
            )
        )
    if is_gap.any():
        repairs.append(
            message(
                QT_TRANSLATE_NOOP(
                    "Course", "The line is broken: {0} in all are missing and not counted."
                ),
                Quantity(float(width[is_gap].sum()), "m"),
            )
        )
    return tuple(at[is_gap].tolist()), repairs


def mended_heights(distance: FloatArray, elevation: FloatArray) -> tuple[FloatArray, list[Message]]:
    """Return the heights with fillers and spikes made NaN, and what is to be said about them."""
    heights = elevation.copy()
    with np.errstate(invalid="ignore"):
        heights[(heights <= LOWEST_M) | (heights >= HIGHEST_M)] = np.nan
    known = np.isfinite(heights)
    if not known.any() or not heights[known].any():
        return np.full(len(heights), np.nan), [
            message(
                QT_TRANSLATE_NOOP(
                    "Course",
                    "The file has no heights: climb and drop are unknown, all counts as level.",
                )
            )
        ]
    heights[zero_fillers(distance, heights)] = np.nan
    missing = int(np.isnan(heights).sum())
    spiky = spikes(distance, heights) & np.isfinite(heights)
    heights[spiky] = np.nan
    repairs: list[Message] = []
    if missing:
        repairs.append(
            message(
                QT_TRANSLATE_NOOP(
                    "Course",
                    "Height missing at {0} of {1} points: taken from the points about them.",
                ),
                Quantity(missing, "count"),
                Quantity(len(heights), "count"),
            )
        )
    if spiky.any():
        repairs.append(
            message(
                QT_TRANSLATE_NOOP(
                    "Course",
                    "Heights that jump up or down and back were left out, at {0} of {1} points.",
                ),
                Quantity(int(spiky.sum()), "count"),
                Quantity(len(heights), "count"),
            )
        )
    return heights, repairs
