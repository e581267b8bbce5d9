"""Sections cut anew, so that what the runner wrote or fixed stays with its ground."""

from __future__ import annotations

from collections.abc import Sequence
from enum import StrEnum
from itertools import pairwise

from msgspec.structs import replace

from ultraplanner_gui.plan.course import (
    SHORTEST_SECTION_M,
    Course,
    Section,
    Slope,
    fresh_key,
)
from ultraplanner_gui.plan.value import Value


class CutBy(StrEnum):
    """Where all sections are cut anew."""

    STATIONS = "stations"
    CLIMBS = "climbs"
    DISTANCE = "distance"


class End(Value, frozen=True):
    """Where a section is to end, metres from the start, and what it is; `station` is a key."""

    at_m: float
    slope: Slope | None = None
    number: int = 0
    station: str | None = None


def cut_at(
    course: Course, ends: Sequence[End], with_stations: bool, near_m: float = SHORTEST_SECTION_M
) -> tuple[Section, ...]:
    """Return the sections of *course* that end at *ends*, the last of which is the finish.

    They also end at stations: at all *with_stations*, else at those with a cutoff. An end less
    than *near_m* from such a station gives way to it, one less than 100 m from another to that.
    """
    stations = [
        End(s.at_m, station=s.key)
        for s in course.stations
        if (with_stations or s.cutoff_s is not None)
        and SHORTEST_SECTION_M <= s.at_m <= course.length_m - SHORTEST_SECTION_M
    ]
    fixed = _apart(stations)
    free = [
        end
        for end in ends[:-1]
        if all(abs(end.at_m - s.at_m) >= near_m for s in fixed)
        and end.at_m <= course.length_m - SHORTEST_SECTION_M
    ]
    places = [*_apart(sorted((*free, *fixed), key=lambda e: e.at_m)), End(course.length_m)]
    made: list[Section] = []
    taken: set[str] = set()
    start_m = 0.0
    for end in places:
        what = _what_lies(ends, (start_m + end.at_m) / 2.0)
        section = _section(course, end, what, taken)
        taken.add(section.key)
        made.append(section)
        start_m = end.at_m
    return with_what_was(course, tuple(made))


def with_what_was(course: Course, sections: tuple[Section, ...]) -> tuple[Section, ...]:
    """Return *sections* with what the sections of *course* had.

    One on the ground of an old one keeps its key, target, name and words. Words of the others go
    to the section that holds the middle of the old one.
    """
    old = _spans(course, course.sections)
    new = _spans(course, sections)
    kept: list[Section] = []
    same = {span: section for section, span in zip(course.sections, old, strict=True)}
    taken = {same[span].key for span in new if span in same}
    for section, span in zip(sections, new, strict=True):
        was = same.get(span)
        if was is None:
            key = fresh_key(section.key, taken)
            notes = (
                s.hard_note
                for s, (low, high) in zip(course.sections, old, strict=True)
                if (low, high) not in new and span[0] < (low + high) / 2.0 <= span[1]
            )
            kept.append(replace(section, key=key, hard_note=" ".join(n for n in notes if n)))
        else:
            kept.append(
                replace(
                    section,
                    key=was.key,
                    target_s=was.target_s,
                    name=was.name,
                    hard_note=was.hard_note,
                )
            )
        taken.add(kept[-1].key)
    return tuple(kept)


def ends_every(length_m: float, every_m: float) -> list[End]:
    """Return ends each *every_m*; what is left over at the finish is at least half as long."""
    count = max(1, int(length_m / every_m + 0.5))
    return [*(End(n * every_m) for n in range(1, count)), End(length_m)]


def _what_lies(ends: Sequence[End], at_m: float) -> End:
    return next((end for end in ends if at_m <= end.at_m), ends[-1])


def _section(course: Course, end: End, what: End, taken: set[str]) -> Section:
    if end.at_m >= course.length_m:
        return Section(fresh_key("finish", taken), slope=what.slope, number=what.number)
    if end.station is not None:
        key = fresh_key(f"to-{end.station}", taken)
        return Section(key, station=end.station, slope=what.slope, number=what.number)
    key = fresh_key("section", taken)
    return Section(key, end_m=end.at_m, slope=what.slope, number=what.number)


def _apart(ends: Sequence[End]) -> list[End]:
    """Return *ends*, in order, without those less than 100 m after the one before.

    A station rather than a free end; of two stations the first, unless only the second has a
    section already.
    """
    kept: list[End] = []
    for end in ends:
        if end.at_m - (kept[-1].at_m if kept else 0.0) >= SHORTEST_SECTION_M:
            kept.append(end)
        elif kept and kept[-1].station is None and end.station is not None:
            kept[-1] = end
    return kept


def _spans(course: Course, sections: tuple[Section, ...]) -> list[tuple[float, float]]:
    ends_m = replace(course, sections=sections).section_ends()
    return list(pairwise((0.0, *ends_m)))
