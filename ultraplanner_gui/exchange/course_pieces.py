"""Which of the tracks and routes of a file make the course, and in what order."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from itertools import pairwise

import numpy as np
import numpy.typing as npt

from ultraplanner_gui.exchange.gpx_parse import GpxFile, Kind, Strand
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, CourseError, Quantity
from ultraplanner_gui.plan.reading import Repair, RepairKind
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.geodesy import EQUATOR_RADIUS_M, distance_along, distance_between

# OWN limits. Tracks that continue one another seldom meet to the metre, so a short way between
# them is run ground; a long one is a piece that is missing.
LONGEST_BRIDGE_M = 2_000.0
#: A line is there twice if so much of one lies so near the other and goes the same way.
SAME_GROUND_M, SAME_SHARE, SAME_WAY_SHARE = 75.0, 0.95, 0.8
#: Of a track and a route the track is followed, unless it is less than so much of the route.
LEAST_OF_OTHER = 0.5
#: Races of one event from one place share so much of their ground; loops from a base do not.
OTHER_WAY_SHARE, SAME_PLACE_M = 0.25, 500.0
MOST_COMPARED = 30
MOST_ORDERED = 60
SAMPLES, MOST_VERTICES = 60, 4_000

ALL: dict[Kind, str] = {"track": "tracks", "route": "routes"}


class Pieces(Value, frozen=True, eq=False):
    """The strands that make the line, as places in the arrays of the file.

    `points` are indices into those arrays in course order, `starts` the places in `points` at
    which a new segment begins.
    """

    strands: tuple[Strand, ...]
    points: npt.NDArray[np.intp]
    starts: tuple[int, ...]


def pieces_of(gpx: GpxFile) -> Pieces:
    """Return the tracks of *gpx*, its routes if it has no track, all in the order of the file."""
    tracks, routes = usable(gpx, "track"), usable(gpx, "route")
    return _together(tracks or routes or _none(gpx))


def chosen_pieces(
    gpx: GpxFile, choice: str, without: Collection[RepairKind]
) -> tuple[Pieces, list[Repair]]:
    """Return the strands that make the course, and what had to be decided about them.

    *choice* is the key of a line (see `keys_of`), empty for the most likely. CourseError if
    there is no line, or none of that key.
    """
    if choice:
        strands = keys_of(gpx).get(choice)
        if strands is None:
            raise CourseError(
                QT_TRANSLATE_NOOP(
                    "Course", "{0} no longer holds the line that was chosen. Open it anew."
                ),
                gpx.file,
            )
        return _together(strands), []
    strands, repairs = _of_one_kind(gpx, without)
    if len(strands) > 1:
        strands, said = _put_together(gpx, strands, without)
        repairs += said
    return _together(strands), repairs


def keys_of(gpx: GpxFile) -> dict[str, tuple[Strand, ...]]:
    """Return by key what can be read as the course: each track and route, all tracks, all routes.

    Those of several first; numbers count the tracks and routes of the file from 1.
    """
    several: dict[str, tuple[Strand, ...]] = {}
    single: dict[str, tuple[Strand, ...]] = {}
    kinds: tuple[Kind, ...] = ("track", "route")
    for kind in kinds:
        strands = usable(gpx, kind)
        if len(strands) > 1:
            several[ALL[kind]] = strands
        of_kind = [s for s in gpx.strands if s.kind == kind]
        single |= {f"{kind}-{n}": (s,) for n, s in enumerate(of_kind, 1) if s in strands}
    return several | single


def usable(gpx: GpxFile, kind: Kind) -> tuple[Strand, ...]:
    """Return the tracks or routes of *gpx* with a line; those of one point only if none has two
    and together they make one.
    """
    strands = tuple(s for s in gpx.strands if s.kind == kind and s.starts and s.end > s.starts[0])
    lines = tuple(s for s in strands if s.end - s.starts[0] >= 2)
    return lines or (strands if len(strands) >= 2 else ())


def length_of(gpx: GpxFile, strand: Strand) -> float:
    """Return the length of a strand, metres, ways between its segments counted."""
    return float(distance_along(*_places(gpx, strand))[-1])


def _of_one_kind(
    gpx: GpxFile, without: Collection[RepairKind]
) -> tuple[tuple[Strand, ...], list[Repair]]:
    """Return the tracks, or the routes where they tell more; said if there are both."""
    tracks, routes = usable(gpx, "track"), usable(gpx, "route")
    if not (tracks and routes):
        return tracks or routes or _none(gpx), []
    lengths = [sum(length_of(gpx, s) for s in strands) for strands in (tracks, routes)]
    is_track = lengths[0] >= LEAST_OF_OTHER * lengths[1]
    if RepairKind.ROUTE in without:
        return (routes if is_track else tracks), []
    if is_track:
        said = QT_TRANSLATE_NOOP(
            "Course", "The file holds a route as well; the course follows the track."
        )
    else:
        said = QT_TRANSLATE_NOOP(
            "Course", "The file holds a short track as well; the course follows the route."
        )
    return (tracks if is_track else routes), [Repair(said, (), RepairKind.ROUTE)]


def _put_together(
    gpx: GpxFile, strands: tuple[Strand, ...], without: Collection[RepairKind]
) -> tuple[tuple[Strand, ...], list[Repair]]:
    """Return the strands to join, in the order they are run, and what is said of it."""
    repairs: list[Repair] = []
    if RepairKind.DOUBLED not in without and len(strands) <= MOST_COMPARED:
        kept = _without_doubles(gpx, strands)
        if len(kept) < len(strands):
            repairs.append(
                Repair(
                    QT_TRANSLATE_NOOP(
                        "Course",
                        "Lines over ground another line already covers were left out: {0}.",
                    ),
                    (Quantity(len(strands) - len(kept), "count"),),
                    RepairKind.DOUBLED,
                )
            )
        strands = kept
        others = _without_other_ways(gpx, strands)
        if len(others) < len(strands):
            repairs.append(
                Repair(
                    QT_TRANSLATE_NOOP(
                        "Course",
                        "Shorter ways from the same start to the same finish were left out: {0}.",
                    ),
                    (Quantity(len(strands) - len(others), "count"),),
                    RepairKind.DOUBLED,
                )
            )
        strands = others
    if len(strands) == 1:
        return strands, repairs
    if RepairKind.JOINED in without:
        return (max(strands, key=lambda s: length_of(gpx, s)),), repairs
    if RepairKind.ORDER not in without:
        ordered = _in_order(gpx, strands)
        if ordered != strands:
            strands = ordered
            repairs.append(
                Repair(
                    QT_TRANSLATE_NOOP(
                        "Course", "Pieces were put in the order in which they meet, not the file's."
                    ),
                    (),
                    RepairKind.ORDER,
                )
            )
    count = Quantity(len(strands), "count")
    if strands[0].kind == "route":
        said = QT_TRANSLATE_NOOP("Course", "{0} routes were joined in the order of the file.")
    else:
        said = QT_TRANSLATE_NOOP("Course", "{0} tracks were joined in the order of the file.")
    if any(r.kind is RepairKind.ORDER for r in repairs):
        said = QT_TRANSLATE_NOOP("Course", "{0} tracks were joined.")
    return strands, [*repairs, Repair(said, (count,), RepairKind.JOINED)]


def _without_doubles(gpx: GpxFile, strands: tuple[Strand, ...]) -> tuple[Strand, ...]:
    """Return *strands* without those that go the way of a longer one, or of an equal one before."""
    by_length = sorted(strands, key=lambda s: -round(length_of(gpx, s), -1))
    kept: list[Strand] = []
    for strand in by_length:
        if not any(_covers(gpx, other, strand) for other in kept):
            kept.append(strand)
    return tuple(s for s in strands if s in kept)


def _without_other_ways(gpx: GpxFile, strands: tuple[Strand, ...]) -> tuple[Strand, ...]:
    """Return the longest of *strands* alone where they are races of one event: all from one start
    to one finish, those that come back to the start over much of the same ground. Else all.
    """
    if len(strands) < 2 or not _meet(gpx, [s.starts[0] for s in strands]):
        return strands
    if not _meet(gpx, [s.end - 1 for s in strands]):
        return strands
    longest = max(strands, key=lambda s: length_of(gpx, s))
    comes_back = _meet(gpx, [longest.starts[0], longest.end - 1], LONGEST_BRIDGE_M)
    others = [s for s in strands if s is not longest]
    if comes_back and any(_shared(gpx, longest, s)[0] < OTHER_WAY_SHARE for s in others):
        return strands
    return (longest,)


def _meet(gpx: GpxFile, points: list[int], within_m: float = SAME_PLACE_M) -> bool:
    """Whether all *points* lie near the first."""
    latitude, longitude = gpx.latitude_deg[points], gpx.longitude_deg[points]
    way = distance_between(latitude[0], longitude[0], latitude, longitude)
    return bool((way <= within_m).all())


def _covers(gpx: GpxFile, longer: Strand, strand: Strand) -> bool:
    """Whether *strand* goes the way of a part of *longer*."""
    near, same_way = _shared(gpx, longer, strand)
    return near >= SAME_SHARE and same_way >= SAME_WAY_SHARE


def _shared(gpx: GpxFile, longer: Strand, strand: Strand) -> tuple[float, float]:
    """Return what share of *strand* lies by *longer*, and what share of it goes its way."""
    latitude, longitude = _places(gpx, longer)
    step = max(1, len(latitude) // MOST_VERTICES)
    vertices = np.unique(np.append(np.arange(0, len(latitude), step), len(latitude) - 1))
    ground = _plane(latitude[vertices], longitude[vertices], gpx, longer)
    own = _places(gpx, strand)
    samples = np.linspace(0, len(own[0]) - 1, min(SAMPLES, len(own[0]))).astype(np.intp)
    points = _plane(own[0][samples], own[1][samples], gpx, longer)
    off, at = _nearest(ground, points)
    return float((off <= SAME_GROUND_M).mean()), float((np.diff(at) >= 0.0).mean())


def _nearest(
    ground: tuple[FloatArray, FloatArray], points: tuple[FloatArray, FloatArray]
) -> tuple[FloatArray, FloatArray]:
    """Return how far each point lies off a line on the plane, and where along it."""
    x, y = ground
    dx, dy = np.diff(x), np.diff(y)
    length = dx * dx + dy * dy
    px, py = (v[:, np.newaxis] for v in points)
    share = ((px - x[:-1]) * dx + (py - y[:-1]) * dy) / np.where(length > 0.0, length, 1.0)
    share = np.clip(share, 0.0, 1.0)
    off = np.hypot(x[:-1] + share * dx - px, y[:-1] + share * dy - py)
    nearest = np.argmin(off, axis=1)
    rows = np.arange(len(nearest))
    along = np.concatenate(([0.0], np.cumsum(np.sqrt(length))))
    at = along[nearest] + share[rows, nearest] * np.sqrt(length)[nearest]
    return off[rows, nearest], at


def _plane(
    latitude: FloatArray, longitude: FloatArray, gpx: GpxFile, about: Strand
) -> tuple[FloatArray, FloatArray]:
    """Return metres east and north on a plane, exact enough to compare lines of one race."""
    lat, lon = gpx.latitude_deg[about.starts[0]], gpx.longitude_deg[about.starts[0]]
    turn = (longitude - lon + 180.0) % 360.0 - 180.0
    east = np.radians(turn) * EQUATOR_RADIUS_M * np.cos(np.radians(lat))
    return east, np.radians(latitude - lat) * EQUATOR_RADIUS_M


def _in_order(gpx: GpxFile, strands: tuple[Strand, ...]) -> tuple[Strand, ...]:
    """Return *strands* in the order in which each begins where the one before ends; as they are
    if they do so already, or in no order.
    """
    first = np.array([s.starts[0] for s in strands])
    last = np.array([s.end - 1 for s in strands])
    latitude, longitude = gpx.latitude_deg, gpx.longitude_deg
    way = distance_between(
        latitude[last][:, np.newaxis],
        longitude[last][:, np.newaxis],
        latitude[first],
        longitude[first],
    )
    if len(strands) > MOST_ORDERED or _longest(way, range(len(strands))) <= LONGEST_BRIDGE_M:
        return strands
    orders = [_chain(way, start) for start in range(len(strands))]
    best = min(orders, key=lambda order: _longest(way, order))
    return tuple(strands[n] for n in best) if _longest(way, best) <= LONGEST_BRIDGE_M else strands


def _longest(way: FloatArray, order: Sequence[int]) -> float:
    return max(float(way[a, b]) for a, b in pairwise(order))


def _chain(way: FloatArray, start: int) -> list[int]:
    order, left = [start], set(range(len(way))) - {start}
    while left:
        order.append(min(left, key=lambda n: (way[order[-1], n], n)))
        left.remove(order[-1])
    return order


def _places(gpx: GpxFile, strand: Strand) -> tuple[FloatArray, FloatArray]:
    points = slice(strand.starts[0], strand.end)
    return gpx.latitude_deg[points], gpx.longitude_deg[points]


def _together(strands: tuple[Strand, ...]) -> Pieces:
    points = [np.arange(s.starts[0], s.end) for s in strands]
    starts: list[int] = []
    before = 0
    for strand in strands:
        first = strand.starts[0]
        starts.extend(before + s - first for s in strand.starts if s < strand.end)
        before += strand.end - first
    return Pieces(strands, np.concatenate(points), tuple(sorted({s for s in starts if s > 0})))


def _none(gpx: GpxFile) -> tuple[Strand, ...]:
    raise CourseError(
        QT_TRANSLATE_NOOP(
            "Course", "{0} holds no track and no route to run along. Export it with its track."
        ),
        gpx.file,
    )
