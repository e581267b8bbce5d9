"""Edits of what lies beside running: the crew, the way home, lists, who the runner is."""

from __future__ import annotations

from dataclasses import dataclass, fields, is_dataclass, replace
from typing import ClassVar

from ultraplanner_gui.edits.block import MarkDone, MarkMissed
from ultraplanner_gui.plan.block import Done
from ultraplanner_gui.plan.logistics import Logistics
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project

LONGEST_LINE = 300
MOST_LINES = 200


@dataclass(frozen=True, slots=True)
class ChangeLogistics:
    """The user changed what the crew does, a list, or who they are."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change crew and lists")
    logistics: Logistics
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        _check(self.logistics)
        if self.logistics == project.logistics:
            return project
        return replace(project, logistics=self.logistics)


@dataclass(frozen=True, slots=True)
class TypeWeekBack:
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
    elif is_dataclass(value):
        for field in fields(value):
            _check(getattr(value, field.name))
