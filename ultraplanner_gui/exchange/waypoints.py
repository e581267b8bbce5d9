"""Aid stations proposed from the named places of a file."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from ultraplanner_gui.exchange.gpx_parse import Waypoint
from ultraplanner_gui.plan.course import (
    SHORTEST_SECTION_M,
    AidStation,
    FloatArray,
    Line,
    fresh_key,
)
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.geodesy import EQUATOR_RADIUS_M

# OWN limits.
FARTHEST_M = 300.0
ENDS_M = 200.0
PASS_M = 50.0
PASS_SHARE = 1.5
MOST_WAYPOINTS = 300

#: What the type of a waypoint says that is no aid station.
SECTION_END = "section end"
AID_STATION = "aid station"


class _Place(Value, frozen=True):
    name: str
    passes_m: tuple[float, ...]


def propose_stations(
    line: Line, along_m: FloatArray, waypoints: Sequence[Waypoint]
) -> tuple[tuple[AidStation, ...], tuple[Message, ...]]:
    """Return aid stations where waypoints lie by the line, in course order, and what was left out.

    A place the line passes more than once is taken in walking order: where the waypoints are
    listed in the order they are come by, each at its first pass after the one before; else each
    at its first pass. Start and finish are no aid stations.
    """
    if len(waypoints) > MOST_WAYPOINTS:
        return (), (
            message(
                QT_TRANSLATE_NOOP(
                    "Course", "{0} waypoints are too many for aid stations: none was taken over."
                ),
                Quantity(len(waypoints), "count"),
            ),
        )
    passes = [passes_of(line, along_m, w) for w in waypoints]
    far = sum(not p for p in passes)
    places = _between_ends(waypoints, passes, float(along_m[-1]))
    chosen = sorted(zip(_in_walking_order(places), places, strict=True), key=lambda c: c[0])
    stations, merged = _stations(chosen)
    return stations, _said(far, merged)


def passes_of(line: Line, along_m: FloatArray, waypoint: Waypoint) -> tuple[float, ...]:
    """Return where the line passes the waypoint, metres from the start; empty if it lies further
    off than 300 m.

    A pass is the nearest point of each stretch about as near as the nearest of all.
    """
    off, at = _offsets(line, along_m, waypoint)
    nearest = float(off.min())
    if nearest > FARTHEST_M:
        return ()
    is_near = off <= max(PASS_M, PASS_SHARE * nearest)
    edges = np.flatnonzero(np.diff(is_near, prepend=False, append=False))
    return tuple(
        float(at[first + int(np.argmin(off[first:end]))])
        for first, end in zip(edges[::2], edges[1::2], strict=True)
    )


def _offsets(line: Line, along_m: FloatArray, waypoint: Waypoint) -> tuple[FloatArray, FloatArray]:
    """Return per piece of the line how far the waypoint lies off it and where along the line.

    On the plane that touches the globe at the waypoint, which is exact enough where it matters.
    """
    turn = line.longitude_deg - waypoint.longitude_deg
    turn = (turn + 180.0) % 360.0 - 180.0
    x = np.radians(turn) * EQUATOR_RADIUS_M * np.cos(np.radians(waypoint.latitude_deg))
    y = np.radians(line.latitude_deg - waypoint.latitude_deg) * EQUATOR_RADIUS_M
    dx, dy = np.diff(x), np.diff(y)
    length = dx * dx + dy * dy
    share = -(x[:-1] * dx + y[:-1] * dy) / np.where(length > 0.0, length, 1.0)
    share = np.clip(share, 0.0, 1.0)
    off = np.hypot(x[:-1] + share * dx, y[:-1] + share * dy)
    off[np.asarray(line.gaps, dtype=np.intp) - 1] = np.inf  # nothing is run across a gap
    return off, along_m[:-1] + share * np.diff(along_m)


def _between_ends(
    waypoints: Sequence[Waypoint], passes: Sequence[tuple[float, ...]], length_m: float
) -> list[_Place]:
    places: list[_Place] = []
    for waypoint, at in zip(waypoints, passes, strict=True):
        inside = tuple(m for m in at if ENDS_M < m < length_m - ENDS_M)
        if inside:
            places.append(_Place(waypoint.name, inside))
    return places


def _in_walking_order(places: Sequence[_Place]) -> list[float]:
    """Return the pass to take at each place."""
    chosen: list[float] = []
    for place in places:
        earliest = chosen[-1] - SHORTEST_SECTION_M if chosen else 0.0
        later = [m for m in place.passes_m if m >= earliest]
        if not later:
            return [p.passes_m[0] for p in places]
        chosen.append(later[0])
    return chosen


def _stations(chosen: Sequence[tuple[float, _Place]]) -> tuple[tuple[AidStation, ...], int]:
    stations: list[AidStation] = []
    keys: set[str] = set()
    for at_m, place in chosen:
        if stations and at_m - stations[-1].at_m < SHORTEST_SECTION_M:
            continue
        key = fresh_key("station", keys)
        keys.add(key)
        name = place.name or f"Station {len(stations) + 1}"
        stations.append(AidStation(key, name, at_m))
    return tuple(stations), len(chosen) - len(stations)


def _said(far: int, merged: int) -> tuple[Message, ...]:
    repairs: list[Message] = []
    if far:
        repairs.append(
            message(
                QT_TRANSLATE_NOOP(
                    "Course", "Waypoints more than {1} off the line were left out: {0}."
                ),
                Quantity(far, "count"),
                Quantity(FARTHEST_M, "m"),
            )
        )
    if merged:
        repairs.append(
            message(
                QT_TRANSLATE_NOOP(
                    "Course", "Waypoints less than {1} after another were left out: {0}."
                ),
                Quantity(merged, "count"),
                Quantity(SHORTEST_SECTION_M, "m"),
            )
        )
    return tuple(repairs)
