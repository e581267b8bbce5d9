"""Edits of the course: stations, sections, cutoffs, stops.

How the line itself is changed is in `course_shape`, how it is cut into sections in `sections`,
what is underfoot in `surfaces`.
"""

from __future__ import annotations

import math
from itertools import pairwise
from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.engine.course_scale import without_pin
from ultraplanner_gui.plan.course import (
    AidStation,
    Course,
    Offer,
    Section,
    SurfaceFactors,
    fresh_key,
)
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value

LONGEST_STOP_S = 24 * 3600.0
HIGHEST_CLIMB_M = 100_000.0
LONGEST_RACE_S = 240 * 3600.0
LONGEST_COURSE_M = 2_000_000.0
LEAST_COST, MOST_COST = 0.5, 5.0
LEAST_DESCENT, MOST_DESCENT = 0.1, 2.0


def course_of(project: Project) -> Course:
    """Return the course of *project*; PlanError if there is none."""
    if project.course is None:
        raise PlanError(QT_TRANSLATE_NOOP("Edit", "There is no course yet. Open a GPX file first."))
    return project.course


class MoveSectionEnd(Value, frozen=True):
    """The user moved the end of a section; where it ends at an aid station, the station moves."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Move section end")
    section: str
    end_m: float
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        section = course.section(self.section)
        if not 0.0 < self.end_m < course.length_m:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "A section ends between the start and the finish.")
            )
        if section.station is not None:
            course = _moved(course, replace(course.station(section.station), at_m=self.end_m))
        elif section.end_m is None:
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "The finish stays where the course ends."))
        else:
            course = course.with_section(replace(section, end_m=self.end_m))
        return replace(project, course=course)


class SetSectionTarget(Value, frozen=True):
    """The user fixed the running time of a section, or freed it (None)."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set section target")
    section: str
    target_s: float | None
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        section = course.section(self.section)
        section = replace(section, target_s=self.target_s)
        _check_target(section)
        return replace(project, course=course.with_section(section))


class FreeAllTargets(Value, frozen=True):
    """The user let every section follow the target curve again."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Free all section targets")
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        if all(s.target_s is None for s in course.sections):
            return project
        sections = tuple(replace(s, target_s=None) for s in course.sections)
        return replace(project, course=replace(course, sections=sections))


class NoteHardStretch(Value, frozen=True):
    """The user wrote what to do when it gets hard in a section."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Write section note")
    section: str
    text: str
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        section = replace(course.section(self.section), hard_note=self.text)
        return replace(project, course=course.with_section(section))


class ChangeStation(Value, frozen=True):
    """The user changed what is to be said of an aid station, or where it lies.

    A section ends wherever there is a cutoff: where the station had neither, one is split there.
    A pinned station that is moved loses its pin, all else stays on its ground.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change aid station")
    station: AidStation
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course, station = course_of(project), self.station
        _check_station(station)
        if course.station(station.key) == station:
            return project
        return replace(project, course=_with_end_at_cutoff(_moved(course, station), station))


class AddStation(Value, frozen=True):
    """The user added an aid station; the section it lies in is split there."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Add aid station")
    name: str
    at_m: float
    cutoff_s: float | None = None
    stop_s: float = 0.0
    offers: tuple[Offer, ...] = ()
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        key = fresh_key("station", {s.key for s in course.stations})
        station = AidStation(key, self.name, self.at_m, self.cutoff_s, self.stop_s, self.offers)
        _check_station(station)
        return replace(project, course=course.with_new_station(station))


class RemoveStation(Value, frozen=True):
    """The user removed an aid station; its section joins the next."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Remove aid station")
    station: str
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        course = without_pin(course, course.station(self.station).at_m)
        return replace(project, course=course.without_station(self.station))


class ReplaceCourse(Value, frozen=True):
    """The user opened another course for this project."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Open course")
    course: Course
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        check_course(self.course)
        return replace(project, course=self.course)


def check_course(course: Course) -> None:
    """Raise PlanError if the places of *course* are not in order or a figure is out of range."""
    if not _is_in_order(course):
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Edit", "The places of this course are not in order; open its file again."
            )
        )
    _check_official(course)
    for station in course.stations:
        _check_station(station)
    for section in course.sections:
        _check_target(section)
    for factors in course.surface_factors:
        check_factors(factors)


def check_factors(factors: SurfaceFactors) -> None:
    """Raise PlanError if a factor of a surface is out of its range."""
    if not LEAST_COST <= factors.cost <= MOST_COST:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "A surface costs between {0} and {1} times firm ground."),
            f"{LEAST_COST:g}",
            f"{MOST_COST:g}",
        )
    if not LEAST_DESCENT <= factors.descent <= MOST_DESCENT:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Edit", "Speed downhill lies between {0} and {1} times that on firm ground."
            ),
            f"{LEAST_DESCENT:g}",
            f"{MOST_DESCENT:g}",
        )


def _moved(course: Course, station: AidStation) -> Course:
    """Return *course* with *station* as it is now; moved off its pin, the others stay put."""
    before = course.station(station.key)
    if before.at_m != station.at_m:
        course = without_pin(course, before.at_m)
    return course.with_station(station)


def _with_end_at_cutoff(course: Course, station: AidStation) -> Course:
    """Return *course* with a section that ends at *station* if it has a cutoff."""
    if station.cutoff_s is None or any(s.station == station.key for s in course.sections):
        return course
    others = tuple(s for s in course.stations if s.key != station.key)
    return replace(course, stations=others).with_new_station(station)


def _is_in_order(course: Course) -> bool:
    ends_m = (0.0, *course.section_ends())
    places_m = (0.0, *(s.at_m for s in course.stations), course.length_m)
    spans = ((0.0, s.start_m, s.end_m, course.length_m) for s in course.surfaces)
    pinned_m = (0.0, *(pin.at_m for pin in course.pins), course.length_m)
    pinned_line_m = (0.0, *(pin.line_m for pin in course.pins))
    return (
        0.0 < course.length_m <= LONGEST_COURSE_M
        and all(s.station is None or s.end_m is None for s in course.sections)
        and ends_m[-1] == course.length_m
        and all(a < b for a, b in pairwise(ends_m))
        and all(a <= b for span in (places_m, *spans) for a, b in pairwise(span))
        and all(a < b for pins in (pinned_m, pinned_line_m) for a, b in pairwise(pins))
        and pinned_line_m[-1] < LONGEST_COURSE_M
    )


def _check_official(course: Course) -> None:
    if course.official_m not in (None, course.length_m):
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "The official distance is the length of the course or none.")
        )
    for height_m in (course.official_climb_m, course.official_drop_m):
        if height_m is not None and not 0.0 <= height_m <= HIGHEST_CLIMB_M:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "Official climb and drop lie between 0 and 100,000 m.")
            )


def _check_target(section: Section) -> None:
    if section.target_s is not None and not 1.0 <= section.target_s <= LONGEST_RACE_S:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "A section takes between 1 second and 240 hours.")
        )


def _check_station(station: AidStation) -> None:
    if not station.name.strip():
        raise PlanError(QT_TRANSLATE_NOOP("Edit", "An aid station needs a name."))
    if not (math.isfinite(station.stop_s) and 0.0 <= station.stop_s <= LONGEST_STOP_S):
        raise PlanError(QT_TRANSLATE_NOOP("Edit", "A stop takes between 0 and 24 hours."))
    if station.cutoff_s is not None and not 0.0 < station.cutoff_s <= LONGEST_RACE_S:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "A cutoff lies after the start and within 240 hours.")
        )
    if station.latest_arrival_s is not None and station.latest_arrival_s <= 0.0:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Edit", "The stop is longer than the cutoff to leave allows. Shorten the stop."
            )
        )
