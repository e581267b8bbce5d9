"""What can be done to a session from the day grid, its menu and the main menu."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from PySide6.QtCore import QObject, Signal

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.edits.block import AddSession, MarkDone, MarkMissed, RemoveSession
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.plan.project import Project

EASY_RUN_S = 2700.0
STEP_M = 500.0


class SessionDeeds(QObject):
    """Turn deeds on the selected session into edits."""

    editor_wanted = Signal(str)

    def __init__(
        self, document: Document, selection: Selection, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._selection = selection

    def chosen(self) -> Session | None:
        """Return the session selected; None if there is none."""
        if self._selection.kind != "session":
            return None
        sessions = self._document.before.project.block.sessions
        return next((s for s in sessions if s.key == self._selection.key), None)

    def add(self, day: date) -> None:
        """Put an easy run on *day* and select it."""
        project = self._document.before.project
        known = {s.key for s in project.block.sessions}
        if self._document.perform(AddSession(easy_run(project, day))):
            sessions = self._document.before.project.block.sessions
            new = next((s.key for s in sessions if s.key not in known), "")
            if new:
                self._selection.choose("session", new)

    def edit(self) -> None:
        """Ask for the editor of the selected session."""
        session = self.chosen()
        if session is not None:
            self.editor_wanted.emit(session.key)

    def remove(self) -> None:
        """Take the selected session out."""
        session = self.chosen()
        if session is not None and self._document.perform(RemoveSession(session.key)):
            self._selection.clear()

    def mark_done(self) -> None:
        """Mark the selected session done as planned; one already done keeps its record."""
        session = self.chosen()
        if session is not None and session.done is None:
            as_planned = replace(session, missed=False).actual
            self._document.perform(MarkDone(session.key, as_planned))

    def mark_missed(self) -> None:
        """Mark the selected session missed."""
        session = self.chosen()
        if session is not None and not session.missed:
            self._document.perform(MarkMissed(session.key))

    def unmark(self) -> None:
        """Take back that the selected session was done or missed."""
        session = self.chosen()
        if session is not None and not session.is_open:
            self._document.perform(MarkDone(session.key, None))


def easy_run(project: Project, day: date) -> Session:
    """Return an easy run of about three quarters of an hour at the runner's easy speed."""
    speed = project.runner.easy_mps
    distance_m = max(STEP_M, round(speed * EASY_RUN_S / STEP_M) * STEP_M)
    return Session("", day, Kind.EASY, distance_m, distance_m / speed)
