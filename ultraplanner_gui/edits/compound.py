"""Many changes that were one deed of the user."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.project import Project


@dataclass(frozen=True, slots=True)
class PasteCells:
    """The user pasted cells into a table: all of *edits* in their order, or none of them."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Paste into a table")
    edits: tuple[Edit, ...]
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        return _in_order(self.edits, project)


@dataclass(frozen=True, slots=True)
class ImportSessions:
    """The user took sessions out of a calendar: all of *edits* in their order, or none of them."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Import sessions")
    edits: tuple[Edit, ...]
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        return _in_order(self.edits, project)


def _in_order(edits: tuple[Edit, ...], project: Project) -> Project:
    for edit in edits:
        project = edit.apply(project)
    return project
