"""Edits of what lies beside running: the crew, the way home, lists, who the runner is."""

from __future__ import annotations

from typing import ClassVar, TypeVar

from msgspec.structs import replace

from ultraplanner_gui.edits.block import MarkDone, MarkMissed
from ultraplanner_gui.plan.block import Done
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.plan.logistics import Logistics, PlaceNotes
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value

LONGEST_LINE = 300
MOST_LINES = 200


class ChangeLogistics(Value, frozen=True):
    """The user changed what the crew does, a list, or who they are.

    With it go the kit the rules ask for and whom to call, None if they stay, and the notes on
    some stations.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change crew and lists")
    logistics: Logistics
    mandatory_kit: tuple[str, ...] | None = None
    emergency: str | None = None
    places: tuple[PlaceNotes, ...] = ()
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        for part in (self.logistics, self.mandatory_kit, self.emergency, self.places):
            _check(part)
        kit, call = self.mandatory_kit, self.emergency
        race = replace(
            project.race,
            mandatory_kit=project.race.mandatory_kit if kit is None else kit,
            emergency=project.race.emergency if call is None else call,
        )
        after = replace(
            project,
            logistics=_same_or(project.logistics, self.logistics),
            race=_same_or(project.race, race),
            course=_with_places(project.course, self.places),
        )
        return project if after == project else after


T = TypeVar("T")


def _same_or(before: T, after: T) -> T:
    """Return *before* itself where both are equal, so that what depends on it is not renewed."""
    return before if before == after else after


def _with_places(course: Course | None, places: tuple[PlaceNotes, ...]) -> Course | None:
    for place in places:
        if course is None:
            break
        station = course.station(place.station)
        changed = replace(station, access=place.access, if_stop=place.if_stop)
        if changed != station:
            course = course.with_station(changed)
    return course


class TypeWeekBack(Value, frozen=True):
    """The user typed a week sheet back in: what was done of each session, None if missed."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Type a week back in")
    marks: tuple[tuple[str, Done | None], ...]
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        for key, done in self.marks:
            edit = MarkMissed(key) if done is None else MarkDone(key, done)
            project = edit.apply(project)
        return project


def _check(value: object) -> None:
    if isinstance(value, str):
        if len(value) > LONGEST_LINE:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "A line has at most {0} letters. Make two of it."),
                LONGEST_LINE,
            )
    elif isinstance(value, tuple):
        if len(value) > MOST_LINES:
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "A list has at most {0} lines."), MOST_LINES)
        for item in value:
            _check(item)
    elif isinstance(value, Value):
        for name in value.__struct_fields__:
            _check(getattr(value, name))
