"""Edits of how the course is cut into sections."""

from __future__ import annotations

from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.edits.course import course_of
from ultraplanner_gui.engine.climbs import sections_by_climbs
from ultraplanner_gui.engine.profile import build_profile
from ultraplanner_gui.engine.reshape import renumbered
from ultraplanner_gui.engine.section_cuts import CutBy, cut_at, ends_every, with_what_was
from ultraplanner_gui.plan.course import SHORTEST_SECTION_M, Course, Section, fresh_key
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value

SHORTEST_EVERY_M = 500.0
LONGEST_EVERY_M = 500_000.0
MOST_SECTIONS = 500
LONGEST_NAME = 60


class CutSections(Value, frozen=True):
    """The user cut all sections anew: by aid stations, by climbs and descents, or by distance.

    By climbs and by distance sections also end at aid stations, unless not *with_stations*; then
    only at those with a cutoff, which always end a section. Targets fixed stay where a section
    is what it was; words for when it gets hard stay with their ground.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Cut sections anew")
    by: CutBy
    every_m: float = 10_000.0
    with_stations: bool = True
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        if not SHORTEST_EVERY_M <= self.every_m <= LONGEST_EVERY_M:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "Sections are cut every 0.5 to 500 km. Choose between.")
            )
        sections = renumbered(self._cut(course))
        if sections == course.sections:
            return project
        return replace(project, course=replace(course, sections=sections))

    def _cut(self, course: Course) -> tuple[Section, ...]:
        if self.by is CutBy.CLIMBS:
            return sections_by_climbs(build_profile(course), course, self.with_stations)
        if self.by is CutBy.STATIONS:
            return cut_at(course, ends_every(course.length_m, course.length_m), True)
        if course.length_m / self.every_m > MOST_SECTIONS:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "That makes more than 500 sections. Cut them longer.")
            )
        return cut_at(course, ends_every(course.length_m, self.every_m), self.with_stations)


class SplitSection(Value, frozen=True):
    """The user split a section at a place; neither part keeps the target fixed for the whole."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Split section")
    at_m: float
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        if not 0.0 < self.at_m < course.length_m:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "A section ends between the start and the finish.")
            )
        ends_m = course.section_ends()
        index = next(n for n, end_m in enumerate(ends_m) if self.at_m <= end_m)
        whole = course.sections[index]
        start_m = ends_m[index - 1] if index else 0.0
        if min(self.at_m - start_m, ends_m[index] - self.at_m) < SHORTEST_SECTION_M:
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "Edit", "Split a section at least 100 m from where it begins and ends."
                )
            )
        key = fresh_key("section", {s.key for s in course.sections})
        first = Section(
            key, end_m=self.at_m, name=whole.name, slope=whole.slope, number=whole.number
        )
        second = replace(whole, target_s=None, hard_note="")
        parts = (*course.sections[:index], first, second, *course.sections[index + 1 :])
        return replace(project, course=replace(course, sections=with_what_was(course, parts)))


class MergeSections(Value, frozen=True):
    """The user joined a section with the next; an aid station between them stays where it is."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Join sections")
    section: str
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        first = course.section(self.section)
        index = course.sections.index(first)
        if index == len(course.sections) - 1:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "The last section has none after it to be joined with.")
            )
        if first.station is not None and course.station(first.station).cutoff_s is not None:
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "Edit", "A section ends where there is a cutoff. Take the cutoff at {0} away."
                ),
                course.station(first.station).name,
            )
        second = course.sections[index + 1]
        is_one_slope = first.slope is second.slope
        joined = replace(
            second,
            target_s=None,
            hard_note="",
            name=first.name or second.name,
            slope=second.slope if is_one_slope else None,
            number=second.number if is_one_slope else 0,
        )
        sections = (*course.sections[:index], joined, *course.sections[index + 2 :])
        sections = renumbered(with_what_was(course, sections))
        return replace(project, course=replace(course, sections=sections))


class RenameSection(Value, frozen=True):
    """The user gave a section a name, or took it away (empty)."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Rename section")
    section: str
    name: str
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = course_of(project)
        section = course.section(self.section)
        name = " ".join(self.name.split())
        if len(name) > LONGEST_NAME:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "The name of a section has at most 60 letters.")
            )
        if name == section.name:
            return project
        return replace(project, course=course.with_section(replace(section, name=name)))
