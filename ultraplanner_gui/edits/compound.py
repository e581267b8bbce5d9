"""Many changes that were one deed of the user."""

from __future__ import annotations

from typing import ClassVar

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value


class Together(Value, frozen=True):
    """All of *edits* in their order, or none of them; a subclass names the deed."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change several things")
    edits: tuple[Edit, ...]
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        for edit in self.edits:
            project = edit.apply(project)
        return project


class PasteCells(Together, frozen=True):
    """The user pasted cells into a table."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Paste into a table")


class ImportSessions(Together, frozen=True):
    """The user took sessions out of a calendar."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Import sessions")


class SetOfficialFigures(Together, frozen=True):
    """The user gave distance, climb and drop as the organiser has them."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set official figures")


class DescribeSection(Together, frozen=True):
    """The user named a section and wrote what to do when it gets hard there."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Describe section")


class SetSurfaceCosts(Together, frozen=True):
    """The user set what surfaces cost on this course."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set what surfaces cost")


class MoveSurface(Together, frozen=True):
    """The user put a stretch of surface elsewhere."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Move surface")


class ChangePinnedStation(Together, frozen=True):
    """The user changed an aid station and whether its distance is the handbook's."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Pin aid station or let it go")
