"""What the user has said of a course, laid onto the same course read another way."""

from __future__ import annotations

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.engine.course_scale import knots, line_distance, line_place
from ultraplanner_gui.engine.reshape import renumbered
from ultraplanner_gui.engine.surface_spans import merged
from ultraplanner_gui.plan.course import SHORTEST_SECTION_M, AidStation, Course, Section

#: Two lengths nearer than this are one.
SAME_M = 1.0


def carried_over(before: Course, read: Course) -> Course:
    """Return *read* with the stations, sections, surfaces and names of *before*.

    Each goes to the point of the file it lay by; what has none any more is left out. Sections
    of another length lose their targets. Official figures go; so do pins, for they count along
    the line as it was.
    """
    stations = _stations(before, read)
    return replace(
        read,
        name=before.name,
        stations=stations,
        sections=_sections(before, read, stations),
        surfaces=merged(
            replace(span, start_m=start_m, end_m=end_m)
            for span in before.surfaces
            if (start_m := _place(before, read, span.start_m)) is not None
            and (end_m := _place(before, read, span.end_m)) is not None
            and start_m < end_m
        ),
        surface_factors=before.surface_factors,
    )


def _place(before: Course, read: Course, at_m: float) -> float | None:
    """Return where the place *at_m* of *before* lies on *read*; None if nowhere.

    Both lines hold points of one file, so that a place is told by the point before it.
    """
    line_m = line_place(before, at_m)
    along = line_distance(before.line)
    after = int(np.searchsorted(along, line_m, side="right"))
    for point in (after - 1, after):
        if point >= len(along):
            continue
        off_m = line_m - float(along[point])
        is_there = (read.line.latitude_deg == before.line.latitude_deg[point]) & (
            read.line.longitude_deg == before.line.longitude_deg[point]
        )
        found = line_distance(read.line)[is_there] + off_m
        if len(found):
            places = np.interp(found, *knots(read))
            return float(places[np.argmin(np.abs(places - at_m))])
    return None


def _stations(before: Course, read: Course) -> tuple[AidStation, ...]:
    laid = [
        replace(station, at_m=at_m)
        for station in before.stations
        if (at_m := _place(before, read, station.at_m)) is not None
        and SHORTEST_SECTION_M <= at_m <= read.length_m - SHORTEST_SECTION_M
    ]
    return tuple(sorted(laid, key=lambda s: s.at_m))


def _sections(
    before: Course, read: Course, stations: tuple[AidStation, ...]
) -> tuple[Section, ...]:
    """Return the sections of *before* that still have an end, in course order."""
    at = {station.key: station.at_m for station in stations}
    ends: list[tuple[float, Section, float]] = []
    start_m = 0.0
    for section, end_m in zip(before.sections[:-1], before.section_ends()[:-1], strict=True):
        place_m = at.get(section.station) if section.station else _place(before, read, end_m)
        if place_m is not None:
            ends.append((place_m, section, end_m - start_m))
        start_m = end_m
    ends.sort(key=lambda end: end[0])
    ends.append((read.length_m, before.sections[-1], before.length_m - start_m))
    kept: list[Section] = []
    reached_m = 0.0
    for place_m, section, length_m in ends:
        is_last = section is before.sections[-1]
        room_m = min(place_m - reached_m, read.length_m - place_m if not is_last else place_m)
        if room_m < SHORTEST_SECTION_M and not is_last:
            continue
        is_same = abs(place_m - reached_m - length_m) <= SAME_M
        kept.append(
            replace(
                section,
                end_m=None if section.end_m is None else place_m,
                target_s=section.target_s if is_same else None,
            )
        )
        reached_m = place_m
    return renumbered(kept)
