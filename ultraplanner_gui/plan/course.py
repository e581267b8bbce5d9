"""The course: its line over the ground, aid stations, surfaces and sections."""

from __future__ import annotations

import math
from enum import StrEnum
from itertools import pairwise

import numpy as np
import numpy.typing as npt
from msgspec.structs import replace

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, PlanError, Quantity
from ultraplanner_gui.plan.reading import Reading, Repair, RepairKind
from ultraplanner_gui.plan.station import (
    AidStation,
    CutoffKind,
    IfStop,
    Kit,
    Offer,
    StopKind,
)
from ultraplanner_gui.plan.surface import Surface, SurfaceFactors, SurfaceSpan
from ultraplanner_gui.plan.value import Kept, Number, Value, Whole

__all__ = [
    "SHORTEST_SECTION_M",
    "AidStation",
    "Course",
    "CutoffKind",
    "FloatArray",
    "IfStop",
    "Kit",
    "Line",
    "Offer",
    "Pin",
    "Reading",
    "Repair",
    "RepairKind",
    "Section",
    "Slope",
    "StopKind",
    "Surface",
    "SurfaceFactors",
    "SurfaceSpan",
    "fresh_key",
    "sections_between",
]

FloatArray = npt.NDArray[np.float64]

SHORTEST_SECTION_M = 100.0


class Line(Value, frozen=True, eq=False):
    """Points of the course in running order, as read; arrays of shape (n,), n >= 2, read-only.

    `elevation_m` is NaN where the file had none. `gaps` are the indices at which a new
    segment starts, so that nothing between index - 1 and index is taken as run ground.
    """

    latitude_deg: FloatArray
    longitude_deg: FloatArray
    elevation_m: FloatArray
    gaps: tuple[int, ...] = ()

    def __post_init__(self) -> None:
        for array in (self.latitude_deg, self.longitude_deg, self.elevation_m):
            array.setflags(write=False)

    def __len__(self) -> int:
        return len(self.latitude_deg)

    def __eq__(self, other: object) -> bool:
        if self is other:
            return True
        if not isinstance(other, Line):
            return NotImplemented
        return (
            self.gaps == other.gaps
            and np.array_equal(self.latitude_deg, other.latitude_deg)
            and np.array_equal(self.longitude_deg, other.longitude_deg)
            and np.array_equal(self.elevation_m, other.elevation_m, equal_nan=True)
        )

    __hash__ = None  # type: ignore[assignment]

    @property
    def has_elevation(self) -> bool:
        """Whether any point carries a height."""
        return bool(np.isfinite(self.elevation_m).any())


class Slope(StrEnum):
    """What a section found in the profile is: a climb or a descent."""

    CLIMB = "climb"
    DESCENT = "descent"


class Section(Kept, frozen=True):
    """One leg of the course.

    It ends at the aid station `station`, or else at `end_m`, or, when both are None, at the
    finish. `target_s` is the moving time the runner has fixed for it (None: from the target
    curve); `hard_note` the runner's own words for when it gets hard there. `name` is the
    runner's own; `slope` and `number` say that it is, say, the third climb.
    """

    key: str
    station: str | None = None
    end_m: Number | None = None
    target_s: Number | None = None
    hard_note: str = ""
    name: str = ""
    slope: Slope | None = None
    number: Whole = 0


class Pin(Kept, frozen=True):
    """A place of the line, `line_m` metres along it, that lies `at_m` metres from the start."""

    at_m: Number
    line_m: Number


class Course(Kept, frozen=True):
    """Everything about the ground, its places in metres from the start.

    `length_m` is the geodesic length of `line`, or else `official_m`; then the line is stretched
    to it, between two `pins` evenly (their places rise both ways and lie inside). `stations` are
    in course order and none lies beyond the finish; `sections` are in course order and the last
    ends at the finish. `official_climb_m`, `official_drop_m` are what the organiser says, None
    where the heights of the line count as they are. `surface_factors` are those the user has set
    for this course. `repairs` are what the reader had to mend, said to the user. `reading` is
    None once the line is no longer the one that was read.
    """

    line: Line
    length_m: Number
    stations: tuple[AidStation, ...] = ()
    sections: tuple[Section, ...] = (Section("finish"),)
    surfaces: tuple[SurfaceSpan, ...] = ()
    name: str = ""
    repairs: tuple[Message | Repair, ...] = ()
    official_m: Number | None = None
    official_climb_m: Number | None = None
    official_drop_m: Number | None = None
    pins: tuple[Pin, ...] = ()
    surface_factors: tuple[SurfaceFactors, ...] = ()
    reading: Reading | None = None

    def station(self, key: str) -> AidStation:
        """Return the station *key*; PlanError if there is none."""
        for station in self.stations:
            if station.key == key:
                return station
        raise PlanError(
            QT_TRANSLATE_NOOP("Plan", "There is no aid station {0} on this course."), key
        )

    def section(self, key: str) -> Section:
        """Return the section *key*; PlanError if there is none."""
        for section in self.sections:
            if section.key == key:
                return section
        raise PlanError(QT_TRANSLATE_NOOP("Plan", "There is no section {0} on this course."), key)

    def end_of(self, section: Section) -> float:
        """Return where *section* ends, metres from the start."""
        if section.station is not None:
            return self.station(section.station).at_m
        return self.length_m if section.end_m is None else section.end_m

    def section_ends(self) -> tuple[float, ...]:
        """Return the ends of all sections, metres from the start, ascending."""
        at = {station.key: station.at_m for station in self.stations}
        return tuple(
            at[s.station]
            if s.station is not None
            else self.length_m
            if s.end_m is None
            else s.end_m
            for s in self.sections
        )

    def with_station(self, changed: AidStation) -> Course:
        """Return a copy with the station of the same key replaced, in course order.

        A pinned station that is moved loses its pin. Raises PlanError if it lies off the course
        or so near its neighbour that a section would have no length.
        """
        before = self.station(changed.key)
        self._check_inside(changed)
        stations = tuple(
            sorted(
                (changed if s.key == changed.key else s for s in self.stations),
                key=lambda s: s.at_m,
            )
        )
        pins = self.pins if before.at_m == changed.at_m else self._pins_without(before)
        return self.checked(replace(self, stations=stations, pins=pins))

    def with_section(self, changed: Section) -> Course:
        """Return a copy with the section of the same key replaced; PlanError if one vanished."""
        self.section(changed.key)
        return self.checked(
            replace(
                self, sections=tuple(changed if s.key == changed.key else s for s in self.sections)
            )
        )

    def with_new_station(self, station: AidStation) -> Course:
        """Return a copy with *station* added and the section it lies in split there."""
        self._check_inside(station)
        ends = self.section_ends()
        index = next(i for i, end in enumerate(ends) if station.at_m <= end)
        taken = {s.key for s in self.sections}
        after = replace(self.sections[index], target_s=None)
        section = Section(
            fresh_key(f"to-{station.key}", taken),
            station=station.key,
            slope=after.slope,
            number=after.number,
        )
        sections = (*self.sections[:index], section, after, *self.sections[index + 1 :])
        stations = tuple(sorted((*self.stations, station), key=lambda s: s.at_m))
        return self.checked(replace(self, stations=stations, sections=sections))

    def without_station(self, key: str) -> Course:
        """Return a copy without the station *key*; the section that ended there joins the next."""
        gone = self.station(key)
        sections: list[Section] = []
        joins = False
        for section in self.sections:
            if section.station == key:
                joins = True
                continue
            sections.append(replace(section, target_s=None) if joins else section)
            joins = False
        return replace(
            self,
            stations=tuple(s for s in self.stations if s.key != key),
            sections=tuple(sections),
            pins=self._pins_without(gone),
        )

    def is_pinned(self, station: AidStation) -> bool:
        """Whether *station* lies at a place of the line that is pinned to its distance."""
        return any(pin.at_m == station.at_m for pin in self.pins)

    def checked(self, course: Course) -> Course:
        """Return *course*; PlanError if a section is too short that was not so already."""
        was = dict(zip((s.key for s in self.sections), _lengths(self), strict=True))
        for section, length_m in zip(course.sections, _lengths(course), strict=True):
            if length_m >= SHORTEST_SECTION_M or length_m == was.get(section.key):
                continue
            name = course.end_name(section)
            if name:
                raise PlanError(
                    QT_TRANSLATE_NOOP(
                        "Plan", "The section to {0} would have no length; leave at least 100 m."
                    ),
                    name,
                )
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "Plan", "The section that ends at {0} would have no length; leave 100 m."
                ),
                Quantity(course.end_of(section), "m"),
            )
        return course

    def end_name(self, section: Section) -> str:
        """Return the name of the place where *section* ends; empty for the finish."""
        return self.station(section.station).name if section.station is not None else ""

    def _pins_without(self, station: AidStation) -> tuple[Pin, ...]:
        return tuple(pin for pin in self.pins if pin.at_m != station.at_m)

    def _check_inside(self, station: AidStation) -> None:
        if not (math.isfinite(station.at_m) and 0.0 < station.at_m < self.length_m):
            raise PlanError(
                QT_TRANSLATE_NOOP("Plan", "{0} must lie between the start and the finish."),
                station.name,
            )


def _lengths(course: Course) -> list[float]:
    return [end - start for start, end in pairwise((0.0, *course.section_ends()))]


def fresh_key(wish: str, taken: set[str]) -> str:
    """Return *wish*, or *wish* with the smallest number behind it that is not in *taken*."""
    if wish not in taken:
        return wish
    number = 2
    while f"{wish}-{number}" in taken:
        number += 1
    return f"{wish}-{number}"


def sections_between(stations: tuple[AidStation, ...]) -> tuple[Section, ...]:
    """Return one section to each station and one to the finish, the usual way to split a course."""
    return (*(Section(f"to-{s.key}", station=s.key) for s in stations), Section("finish"))
