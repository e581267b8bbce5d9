"""Courses cut, turned round and put behind one another, with all that lies along them."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.engine.course_lines import LONGEST_BRIDGE_M, chained, cut, turned, way_between
from ultraplanner_gui.engine.course_scale import knots, line_length_m, line_place
from ultraplanner_gui.engine.surface_spans import merged
from ultraplanner_gui.plan.course import (
    SHORTEST_SECTION_M,
    AidStation,
    Course,
    Pin,
    Section,
    Slope,
    SurfaceFactors,
    fresh_key,
)
from ultraplanner_gui.plan.value import Value

#: Two lengths nearer than this are one: rounding, not stretching.
SAME_M = 1e-3
SAME_STRETCH = 1e-9

_TURNED = {Slope.CLIMB: Slope.DESCENT, Slope.DESCENT: Slope.CLIMB}


def trimmed(course: Course, start_m: float, end_m: float) -> Course:
    """Return *course* between two places; stretched ground stays stretched.

    Stations nearer than 100 m to the new ends go with what is cut off. A section that was cut
    loses its target, the others keep theirs.
    """
    line = cut(course.line, line_place(course, start_m), line_place(course, end_m))
    shift = _Shift(course, start_m, end_m)
    cut_m = line_place(course, start_m)
    pins = tuple(
        Pin(pin.at_m - start_m, pin.line_m - cut_m)
        for pin in course.pins
        if start_m < pin.at_m < end_m
    )
    length_m, official_m = _length(line_length_m(line), end_m - start_m, pins)
    stations = tuple(
        replace(s, at_m=s.at_m - start_m)
        for s in course.stations
        if start_m + SHORTEST_SECTION_M <= s.at_m <= end_m - SHORTEST_SECTION_M
    )
    return replace(
        course,
        line=line,
        length_m=length_m,
        official_m=official_m,
        official_climb_m=None,
        official_drop_m=None,
        pins=pins,
        stations=stations,
        sections=renumbered(shift.sections({s.key for s in stations})),
        surfaces=merged(
            replace(
                s, start_m=max(s.start_m - start_m, 0.0), end_m=min(s.end_m - start_m, length_m)
            )
            for s in course.surfaces
            if s.end_m > start_m and s.start_m < end_m
        ),
        reading=None,
    )


def turned_round(course: Course) -> Course:
    """Return *course* in the other direction.

    Cutoffs and section targets are dropped, for they were those of the other direction; the
    words for a section stay with its ground, and climb and drop change places.
    """
    length_m, line_m = course.length_m, line_length_m(course.line)
    return replace(
        course,
        line=turned(course.line),
        stations=tuple(
            replace(s, at_m=length_m - s.at_m, cutoff_s=None) for s in reversed(course.stations)
        ),
        sections=_turned_sections(course),
        surfaces=tuple(
            replace(s, start_m=length_m - s.end_m, end_m=length_m - s.start_m)
            for s in reversed(course.surfaces)
        ),
        official_climb_m=course.official_drop_m,
        official_drop_m=course.official_climb_m,
        pins=tuple(Pin(length_m - p.at_m, line_m - p.line_m) for p in reversed(course.pins)),
        reading=None,
    )


def in_a_row(parts: Sequence[Course]) -> Course:
    """Return *parts* behind one another as one course, called as the first is.

    Ways between them of up to 2 km are run straight, longer ones are gaps that do not count.
    Sections end where parts do. Official climb and drop are the sums where every part has its
    own, else none.
    """
    line = chained([part.line for part in parts])
    places = _Knots()
    stations: list[AidStation] = []
    sections: list[Section] = []
    surfaces = []
    for number, part in enumerate(parts):
        if number:
            places.go_on(min_bridge(parts[number - 1], part))
        at_m = places.add(part)
        keys = _fresh_keys((s.key for s in part.stations), {s.key for s in stations})
        stations += [replace(s, key=keys[s.key], at_m=s.at_m + at_m) for s in part.stations]
        is_last = number == len(parts) - 1
        sections += _moved_sections(part, at_m, keys, {s.key for s in sections}, is_last)
        surfaces += [
            replace(s, start_m=s.start_m + at_m, end_m=s.end_m + at_m) for s in part.surfaces
        ]
    line_m = line_length_m(line)
    pins = places.pins()
    length_m, official_m = _length(line_m, places.length_m, pins)
    return replace(
        parts[0],
        line=line,
        length_m=length_m,
        official_m=official_m,
        official_climb_m=_sum(part.official_climb_m for part in parts),
        official_drop_m=_sum(part.official_drop_m for part in parts),
        pins=pins,
        stations=tuple(stations),
        sections=renumbered(_bridged(sections, parts)),
        surfaces=merged(replace(s, end_m=min(s.end_m, length_m)) for s in surfaces),
        surface_factors=_all_factors(parts),
        repairs=tuple(dict.fromkeys(r for part in parts for r in part.repairs)),
        reading=None,
    )


def min_bridge(before: Course, after: Course) -> float:
    """Return how much way is run between two parts, metres: none across a gap."""
    way_m = way_between(before.line, after.line)
    return way_m if way_m <= LONGEST_BRIDGE_M else 0.0


def renumbered(sections: Iterable[Section]) -> tuple[Section, ...]:
    """Return *sections* with their climbs and descents numbered anew in course order."""
    counts = dict.fromkeys(Slope, 0)
    last: tuple[Slope | None, int] = None, 0
    numbered: list[Section] = []
    for section in sections:
        slope = section.slope
        if slope is None:
            last = None, 0
            numbered.append(section if section.number == 0 else replace(section, number=0))
            continue
        if last != (slope, section.number):
            counts[slope] += 1
        last = slope, section.number
        number = counts[slope]
        numbered.append(section if section.number == number else replace(section, number=number))
    return tuple(numbered)


class _Knots:
    """Where places of the parts come to lie on the whole line, knot by knot."""

    def __init__(self) -> None:
        self._line_m: list[float] = [0.0]
        self._at_m: list[float] = [0.0]
        self._chosen: set[float] = set()

    @property
    def length_m(self) -> float:
        return self._at_m[-1]

    def go_on(self, way_m: float) -> None:
        """Go *way_m* that is not stretched."""
        if way_m > 0.0:
            self._line_m.append(self._line_m[-1] + way_m)
            self._at_m.append(self._at_m[-1] + way_m)

    def add(self, part: Course) -> float:
        """Add the knots of *part*; return the place at which it starts."""
        line_m, at_m = knots(part)
        start_line_m, start_m = self._line_m[-1], self._at_m[-1]
        self._line_m += [start_line_m + m for m in line_m[1:].tolist()]
        self._at_m += [start_m + m for m in at_m[1:].tolist()]
        self._chosen |= {start_m + pin.at_m for pin in part.pins}
        return start_m

    def pins(self) -> tuple[Pin, ...]:
        """Return the pins of the whole: those of the parts, and knots where the stretch changes."""
        line_m, at_m = np.array(self._line_m), np.array(self._at_m)
        stretch = np.diff(at_m) / np.diff(line_m)
        changes = np.abs(np.diff(stretch)) > SAME_STRETCH * stretch[1:]
        return tuple(
            Pin(at, line)
            for at, line, does_change in zip(
                self._at_m[1:-1], self._line_m[1:-1], changes, strict=True
            )
            if does_change or at in self._chosen
        )


class _Shift(Value, frozen=True):
    """The places of a course that is cut."""

    course: Course
    start_m: float
    end_m: float

    def sections(self, stations: set[str]) -> list[Section]:
        """Return what is left of the sections, each at least 100 m long."""
        ends_m = (0.0, *self.course.section_ends())
        kept: list[Section] = []
        reached_m = self.start_m
        for section, (low_m, high_m) in zip(self.course.sections, pairwise(ends_m), strict=True):
            if high_m <= self.start_m or low_m >= self.end_m:
                continue
            is_last = high_m > self.end_m - SHORTEST_SECTION_M
            is_cut = low_m < self.start_m or high_m > self.end_m or reached_m != low_m
            if not is_last and high_m - reached_m < SHORTEST_SECTION_M:
                continue
            kept.append(self._left_of(section, high_m, is_cut, is_last, stations))
            reached_m = high_m
            if is_last:
                break
        return kept

    def _left_of(
        self, section: Section, end_m: float, is_cut: bool, is_last: bool, stations: set[str]
    ) -> Section:
        target_s = None if is_cut or (is_last and end_m != self.end_m) else section.target_s
        if is_last:
            return replace(section, station=None, end_m=None, target_s=target_s)
        if section.station in stations:
            return replace(section, target_s=target_s)
        return replace(section, station=None, end_m=end_m - self.start_m, target_s=target_s)


def _turned_sections(course: Course) -> tuple[Section, ...]:
    """Return the sections backwards: each ground with its words, each end with its key."""
    last = course.sections[-1]
    before: list[Section | None] = [None, *course.sections[:-1]]
    turned_sections: list[Section] = []
    for section, end in zip(reversed(course.sections), reversed(before), strict=True):
        slope = None if section.slope is None else _TURNED[section.slope]
        place = (end or last).end_m
        turned_sections.append(
            replace(
                section,
                key=(end or last).key,
                station=end.station if end is not None else None,
                end_m=None if end is None or place is None else course.length_m - place,
                target_s=None,
                slope=slope,
            )
        )
    return renumbered(turned_sections)


def _moved_sections(
    part: Course, at_m: float, keys: dict[str, str], taken: set[str], is_last: bool
) -> list[Section]:
    moved: list[Section] = []
    fresh = _fresh_keys((s.key for s in part.sections), taken)
    for section in part.sections:
        end_m = None if section.end_m is None else section.end_m + at_m
        if section.station is None and section.end_m is None and not is_last:
            end_m = at_m + part.length_m
        station = None if section.station is None else keys[section.station]
        moved.append(replace(section, key=fresh[section.key], station=station, end_m=end_m))
    return moved


def _bridged(sections: list[Section], parts: Sequence[Course]) -> list[Section]:
    """Return *sections* without the targets of those that begin with a way between two parts."""
    first = 0
    changed = list(sections)
    for before, after in pairwise(parts):
        first += len(before.sections)
        if min_bridge(before, after) > SAME_M:
            changed[first] = replace(changed[first], target_s=None)
    return changed


def _fresh_keys(keys: Iterable[str], taken: set[str]) -> dict[str, str]:
    """Return for each of *keys* one that is not in *taken* nor given to another."""
    used = set(taken)
    fresh: dict[str, str] = {}
    for key in keys:
        fresh[key] = fresh_key(key, used)
        used.add(fresh[key])
    return fresh


def _length(line_m: float, wanted_m: float, pins: tuple[Pin, ...]) -> tuple[float, float | None]:
    """Return length and official length of a course whose line is *line_m* long."""
    last_m = pins[-1].at_m if pins else 0.0
    if abs(line_m - wanted_m) <= SAME_M and last_m < line_m:
        return line_m, None
    return wanted_m, wanted_m


def _sum(figures: Iterable[float | None]) -> float | None:
    known = list(figures)
    return None if None in known else sum(f for f in known if f is not None)


def _all_factors(parts: Sequence[Course]) -> tuple[SurfaceFactors, ...]:
    found: dict[str, SurfaceFactors] = {}
    for part in parts:
        for factors in part.surface_factors:
            found.setdefault(factors.surface, factors)
    return tuple(found.values())
