"""Edits of the course: stations, sections, cutoffs, stops."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import ClassVar

from ultraplanner_gui.plan.course import AidStation, Course, Offer, Section, fresh_key
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project

LONGEST_STOP_S = 24 * 3600.0
HIGHEST_CLIMB_M = 100_000.0
LONGEST_RACE_S = 240 * 3600.0
LONGEST_COURSE_M = 2_000_000.0


def _course(project: Project) -> Course:
    if project.course is None:
        raise PlanError(QT_TRANSLATE_NOOP("Edit", "There is no course yet. Open a GPX file first."))
    return project.course


@dataclass(frozen=True, slots=True)
class MoveSectionEnd:
    """The user moved the end of a section; where it ends at an aid station, the station moves."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Move section end")
    section: str
    end_m: float
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = _course(project)
        section = course.section(self.section)
        if not 0.0 < self.end_m < course.length_m:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "A section ends between the start and the finish.")
            )
        if section.station is not None:
            course = course.with_station(replace(course.station(section.station), at_m=self.end_m))
        elif section.end_m is None:
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "The finish stays where the course ends."))
        else:
            course = course.with_section(replace(section, end_m=self.end_m))
        return replace(project, course=course)


@dataclass(frozen=True, slots=True)
class SetSectionTarget:
    """The user fixed the running time of a section, or freed it (None)."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set section target")
    section: str
    target_s: float | None
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = _course(project)
        section = course.section(self.section)
        section = replace(section, target_s=self.target_s)
        _check_target(section)
        return replace(project, course=course.with_section(section))


@dataclass(frozen=True, slots=True)
class FreeAllTargets:
    """The user let every section follow the target curve again."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Free all section targets")
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = _course(project)
        if all(s.target_s is None for s in course.sections):
            return project
        sections = tuple(replace(s, target_s=None) for s in course.sections)
        return replace(project, course=replace(course, sections=sections))


@dataclass(frozen=True, slots=True)
class NoteHardStretch:
    """The user wrote what to do when it gets hard in a section."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Write section note")
    section: str
    text: str
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = _course(project)
        section = replace(course.section(self.section), hard_note=self.text)
        return replace(project, course=course.with_section(section))


@dataclass(frozen=True, slots=True)
class ChangeStation:
    """The user changed an aid station: name, place, cutoff, stop, what is there or the note."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change aid station")
    station: AidStation
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        station = self.station
        _check_station(station)
        return replace(project, course=_course(project).with_station(station))


@dataclass(frozen=True, slots=True)
class AddStation:
    """The user added an aid station; the section it lies in is split there."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Add aid station")
    name: str
    at_m: float
    cutoff_s: float | None = None
    stop_s: float = 0.0
    offers: tuple[Offer, ...] = ()
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = _course(project)
        key = fresh_key("station", {s.key for s in course.stations})
        station = AidStation(key, self.name, self.at_m, self.cutoff_s, self.stop_s, self.offers)
        _check_station(station)
        return replace(project, course=course.with_new_station(station))


@dataclass(frozen=True, slots=True)
class RemoveStation:
    """The user removed an aid station; its section joins the next."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Remove aid station")
    station: str
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        return replace(project, course=_course(project).without_station(self.station))


@dataclass(frozen=True, slots=True)
class ReplaceCourse:
    """The user opened another course for this project."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Open course")
    course: Course
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = self.course
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
        return replace(project, course=course)


def _is_in_order(course: Course) -> bool:
    ends_m = (0.0, *course.section_ends())
    places_m = (0.0, *(s.at_m for s in course.stations), course.length_m)
    spans = ((0.0, s.start_m, s.end_m, course.length_m) for s in course.surfaces)
    return (
        0.0 < course.length_m <= LONGEST_COURSE_M
        and all(s.station is None or s.end_m is None for s in course.sections)
        and ends_m[-1] == course.length_m
        and all(a < b for a, b in pairwise(ends_m))
        and all(a <= b for span in (places_m, *spans) for a, b in pairwise(span))
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
