"""The course: its line over the ground, aid stations, surfaces and sections."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from enum import StrEnum
from itertools import pairwise

import numpy as np
import numpy.typing as npt

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, PlanError, Quantity

FloatArray = npt.NDArray[np.float64]

SHORTEST_SECTION_M = 100.0


class Surface(StrEnum):
    """What is underfoot; unknown stays unknown."""

    UNKNOWN = "unknown"
    ROAD = "road"
    GRAVEL = "gravel"
    SMOOTH_TRAIL = "smooth trail"
    GRASS = "grass"
    TECHNICAL_TRAIL = "technical trail"
    ROCK = "rock"
    SAND = "sand"
    SNOW = "snow"


class Offer(StrEnum):
    """What there is at an aid station."""

    WATER = "water"
    FOOD = "food"
    DROP_BAG = "drop bag"
    CREW = "crew"
    MEDICAL = "medical"


@dataclass(frozen=True, slots=True, eq=False)
class Line:
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


@dataclass(frozen=True, slots=True)
class AidStation:
    """A place on the course where one may stop, `at_m` metres from the start along the line.

    `cutoff_s` is the latest arrival in seconds of race time, None where there is none;
    `stop_s` the planned stop.
    """

    key: str
    name: str
    at_m: float
    cutoff_s: float | None = None
    stop_s: float = 0.0
    offers: tuple[Offer, ...] = ()
    note: str = ""


@dataclass(frozen=True, slots=True)
class Section:
    """One leg of the course.

    It ends at the aid station `station`, or else at `end_m`, or, when both are None, at the
    finish. `target_s` is the moving time the runner has fixed for it (None: from the target
    curve); `hard_note` the runner's own words for when it gets hard there.
    """

    key: str
    station: str | None = None
    end_m: float | None = None
    target_s: float | None = None
    hard_note: str = ""


@dataclass(frozen=True, slots=True)
class SurfaceSpan:
    """A stretch of known surface, metres from the start."""

    start_m: float
    end_m: float
    surface: Surface


@dataclass(frozen=True, slots=True)
class Course:
    """Everything about the ground; `repairs` are what the reader had to mend, said to the user.

    `length_m` is the geodesic length of `line`. `stations` are in course order and none lies
    beyond the finish; `sections` are in course order and the last ends at the finish.
    """

    line: Line
    length_m: float
    stations: tuple[AidStation, ...] = ()
    sections: tuple[Section, ...] = (Section("finish"),)
    surfaces: tuple[SurfaceSpan, ...] = ()
    name: str = ""
    repairs: tuple[Message, ...] = ()

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

        Raises PlanError if it lies off the course or so near its neighbour that a section
        would have no length.
        """
        self.station(changed.key)
        if not (math.isfinite(changed.at_m) and 0.0 < changed.at_m < self.length_m):
            raise PlanError(
                QT_TRANSLATE_NOOP("Plan", "{0} must lie between the start and the finish."),
                changed.name,
            )
        stations = tuple(
            sorted(
                (changed if s.key == changed.key else s for s in self.stations),
                key=lambda s: s.at_m,
            )
        )
        return self._checked(replace(self, stations=stations))

    def with_section(self, changed: Section) -> Course:
        """Return a copy with the section of the same key replaced; PlanError if one vanished."""
        self.section(changed.key)
        return self._checked(
            replace(
                self, sections=tuple(changed if s.key == changed.key else s for s in self.sections)
            )
        )

    def with_new_station(self, station: AidStation) -> Course:
        """Return a copy with *station* added and the section it lies in split there."""
        if not (math.isfinite(station.at_m) and 0.0 < station.at_m < self.length_m):
            raise PlanError(
                QT_TRANSLATE_NOOP("Plan", "{0} must lie between the start and the finish."),
                station.name,
            )
        ends = self.section_ends()
        index = next(i for i, end in enumerate(ends) if station.at_m <= end)
        taken = {s.key for s in self.sections}
        section = Section(fresh_key(f"to-{station.key}", taken), station=station.key)
        after = replace(self.sections[index], target_s=None)
        sections = (*self.sections[:index], section, after, *self.sections[index + 1 :])
        stations = tuple(sorted((*self.stations, station), key=lambda s: s.at_m))
        return self._checked(replace(self, stations=stations, sections=sections))

    def without_station(self, key: str) -> Course:
        """Return a copy without the station *key*; the section that ended there joins the next."""
        self.station(key)
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
        )

    def _checked(self, course: Course) -> Course:
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
