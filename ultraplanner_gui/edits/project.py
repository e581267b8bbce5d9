"""Edits of the project as a whole: notes, week, earlier states."""

from __future__ import annotations

from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value


class WriteNotes(Value, frozen=True):
    """The user wrote in the project's notes."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Write notes")
    text: str
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        return replace(project, notes=self.text)


class SetFirstWeekday(Value, frozen=True):
    """The user chose the day a week begins on, Monday 0."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set first day of the week")
    weekday: int
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        if not 0 <= self.weekday <= 6:
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "A week begins on one of seven days."))
        return replace(project, first_weekday=self.weekday)


class GoBack(Value, frozen=True):
    """The user went back to an earlier state kept in the file."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Go back to an earlier state")
    earlier: Project
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        return self.earlier
