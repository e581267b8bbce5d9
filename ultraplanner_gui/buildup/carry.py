"""A session picked up: every place it passes is a trial, putting it down is one step."""

from __future__ import annotations

from datetime import date

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.block import MoveSession
from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.plan.project import Project


class SessionCarry:
    """Move one session about on trial; nothing is kept until `put_down`."""

    def __init__(self, document: Document, session: Session) -> None:
        self._document = document
        self.session = session
        self.day = session.day
        self._gesture = document.new_gesture()

    @property
    def key(self) -> str:
        """The key of the session in the hand."""
        return self.session.key

    @property
    def is_home(self) -> bool:
        """Whether it hovers over the day it came from."""
        return self.day == self.session.day

    def lift(self) -> bool:
        """Return whether it may be moved at all; the document says why not."""
        return self._document.try_edit(self._move(self.session.day))

    def over(self, day: date) -> bool:
        """Show the build-up as it would be with the session on *day*."""
        last, self.day = self.day, day
        if day == last:
            return True
        if self.is_home:
            self._document.drop_trial()
        elif not self._document.try_edit(self._move(day)):
            self.day = last
            return False
        return True

    def is_at(self, project: Project) -> bool:
        """Whether *project* has the session where the hand holds it."""
        return any(s.key == self.key and s.day == self.day for s in project.block.sessions)

    def put_down(self) -> bool:
        """Keep it where it is, as one step; back home is no step."""
        if self.is_home:
            self._document.drop_trial()
            return False
        return self._document.perform(self._move(self.day))

    def put_back(self) -> None:
        """Leave everything as it was."""
        self.day = self.session.day
        self._document.drop_trial()

    def _move(self, day: date) -> MoveSession:
        return MoveSession(self.session.key, day, self._gesture)
