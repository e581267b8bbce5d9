"""What is selected, shared by the storeys, the tables and the ledger."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QObject, Signal

from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.plan.course import AidStation, Section
from ultraplanner_gui.plan.fuel import FuelItem
from ultraplanner_gui.plan.project import Project


class Selection(QObject):
    """One selected thing: its `kind`, empty for none, and its `key`."""

    changed = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._kind: str = ""
        self._key = ""

    @property
    def kind(self) -> str:
        """What it is: "session", "week", "section", "station", "item", or "" for nothing."""
        return self._kind

    @property
    def key(self) -> str:
        """Its key in the project, of a week its first day; empty for nothing."""
        return self._key

    def choose(self, kind: str, key: str) -> None:
        """Select the *kind* of thing that has this *key*."""
        if (kind, key) != (self._kind, self._key):
            self._kind, self._key = kind, key
            self.changed.emit()

    def clear(self) -> None:
        """Select nothing."""
        self.choose("", "")

    def forget_missing(self, project: Project) -> None:
        """Select nothing if *project* no longer has what is selected."""
        course = project.course
        there: dict[str, Iterable[Session | Section | AidStation | FuelItem]] = {
            "session": project.block.sessions,
            "item": project.fuel.items,
            "section": course.sections if course is not None else (),
            "station": course.stations if course is not None else (),
        }
        if self._kind == "week" and project.block.sessions:
            return
        if all(thing.key != self._key for thing in there.get(self._kind, ())):
            self.clear()
