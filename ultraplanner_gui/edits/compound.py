"""Many changes that were one deed of the user."""

from __future__ import annotations

from typing import ClassVar

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import dataclass


@dataclass(frozen=True, slots=True)
class Together:
    """All of *edits* in their order, or none of them; a subclass names the deed."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change several things")
    edits: tuple[Edit, ...]
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        for edit in self.edits:
            project = edit.apply(project)
        return project


@dataclass(frozen=True, slots=True)
class PasteCells(Together):
    """The user pasted cells into a table."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Paste into a table")


@dataclass(frozen=True, slots=True)
class ImportSessions(Together):
    """The user took sessions out of a calendar."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Import sessions")


@dataclass(frozen=True, slots=True)
class SetOfficialFigures(Together):
    """The user gave distance, climb and drop as the organiser has them."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set official figures")


@dataclass(frozen=True, slots=True)
class DescribeSection(Together):
    """The user named a section and wrote what to do when it gets hard there."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Describe section")


@dataclass(frozen=True, slots=True)
class SetSurfaceCosts(Together):
    """The user set what surfaces cost on this course."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set what surfaces cost")


@dataclass(frozen=True, slots=True)
class MoveSurface(Together):
    """The user put a stretch of surface elsewhere."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Move surface")


@dataclass(frozen=True, slots=True)
class ChangePinnedStation(Together):
    """The user changed an aid station and whether its distance is the handbook's."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Pin aid station or let it go")
