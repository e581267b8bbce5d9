"""Sessions in the hand: every place they pass is a trial, putting them down is one step."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date

from msgspec.structs import replace

from ultraplanner_gui.buildup.nearest_day import Held
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.block import AddSession, MoveSession
from ultraplanner_gui.edits.block_moves import (
    CopySessions,
    LengthenSession,
    MoveSessions,
    SwapWeeks,
    length_of,
)
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.plan.project import Project


class SessionCarry:
    """Move sessions about on trial; nothing is kept until `put_down`.

    `session` is the one the hand holds, *others* come along; with `copies` they stay where they
    are and copies of them move.
    """

    def __init__(
        self,
        document: Document,
        session: Session,
        others: Sequence[str] = (),
        copies: bool = False,
    ) -> None:
        self._document = document
        self._base: Project = document.project
        self.session = session
        self.keys = tuple(dict.fromkeys((session.key, *others)))
        self.copies = copies
        self.day: date | None = session.day
        self._gesture = document.new_gesture()

    @property
    def is_home(self) -> bool:
        """Whether it hovers over the day it came from."""
        return self.day is None or self.day == self.session.day

    @property
    def landing_keys(self) -> frozenset[str]:
        """The keys of the sessions shown where they would come to lie."""
        if not self.copies:
            return frozenset(self.keys)
        kept = {s.key for s in self._base.block.sessions}
        shown = self._document.shown.project.block.sessions
        return frozenset(s.key for s in shown if s.key not in kept)

    @property
    def held(self) -> Held | None:
        """What the hand holds, for the one who looks for where it would hold."""
        keys = self.landing_keys
        key = self.session.key if self.session.key in keys else min(keys, default="")
        if not key:
            return None
        return Held(key, self._edit, swaps=not self.copies and len(self.keys) == 1)

    @property
    def origins(self) -> tuple[date, ...]:
        """The days they would leave."""
        if self.copies:
            return ()
        return tuple(s.day for s in self._base.block.sessions if s.key in self.keys)

    def lift(self) -> bool:
        """Return whether they may be moved at all; the document says why not."""
        return self._document.try_edit(self._edit(self.session.day))

    def over(self, day: date | None) -> bool:
        """Show the build-up as it would be with the session on *day*; None puts it back home."""
        day = self.session.day if day is None else day
        last, self.day = self.day, day
        if day == last:
            return True
        return self._show(last)

    def copy(self, copies: bool) -> bool:
        """Carry copies from now on, or the sessions themselves again; return whether it changed."""
        if copies == self.copies:
            return False
        self.copies = copies
        if not self.is_home and not self._document.try_edit(self._edit(self.day)):
            self.copies = not copies
        return True

    @property
    def is_valid(self) -> bool:
        """Whether nothing but the hand has changed the project since it was lifted."""
        return self._document.project is self._base

    def put_down(self) -> bool:
        """Keep it where it is, as one step; back home is no step."""
        if self.is_home:
            self._document.drop_trial()
            return False
        return self._document.perform(self._edit(self.day))

    def put_back(self) -> None:
        """Leave everything as it was."""
        self.day = self.session.day
        self._document.drop_trial()

    def _show(self, last: date | None) -> bool:
        if self.is_home:
            self._document.drop_trial()
        elif not self._document.try_edit(self._edit(self.day)):
            self.day = last
            return False
        return True

    def _edit(self, day: date | None) -> Edit:
        assert day is not None
        days = (day - self.session.day).days
        if self.copies:
            return CopySessions(self.keys, days, self._gesture)
        if len(self.keys) > 1:
            return MoveSessions(self.keys, days, self._gesture)
        return MoveSession(self.session.key, day, self._gesture)


class NewCarry(SessionCarry):
    """A session that is in no build-up yet: it comes in where it is put down."""

    def __init__(self, document: Document, session: Session) -> None:
        super().__init__(document, session, copies=True)
        self.day = None

    @property
    def is_home(self) -> bool:
        return self.day is None

    def lift(self) -> bool:
        return True

    def over(self, day: date | None) -> bool:
        last, self.day = self.day, day
        return True if day == last else self._show(last)

    def copy(self, copies: bool) -> bool:
        return False

    def put_back(self) -> None:
        self.day = None
        self._document.drop_trial()

    def _edit(self, day: date | None) -> Edit:
        assert day is not None
        return AddSession(replace(self.session, day=day), self._gesture)


class LengthCarry:
    """The edge of a tile in the hand: its session grows or shrinks on trial."""

    def __init__(self, document: Document, session: Session) -> None:
        self._document = document
        self._base = document.project
        self.session = session
        self.to = length_of(session)
        self._gesture = document.new_gesture()

    @property
    def is_valid(self) -> bool:
        """Whether nothing but the hand has changed the project since it took the edge."""
        return self._document.project is self._base

    def lift(self) -> bool:
        """Return whether it may be drawn longer at all; the document says why not."""
        return self._document.try_edit(self._edit(self.to))

    def draw(self, to: float) -> bool:
        """Show the build-up with the session *to* long: metres, or seconds without any."""
        if to == self.to:
            return True
        if to == length_of(self.session):
            self._document.drop_trial()
        elif not self._document.try_edit(self._edit(to)):
            return False
        self.to = to
        return True

    def held(self, snap: Callable[[float], float]) -> Held:
        """Return what the hand holds; *snap* gives the nearest length it may have."""
        key = self.session.key
        return Held(key, lambda day: MoveSession(key, day), snap=snap)

    def put_down(self) -> bool:
        """Keep the length, as one step."""
        if self.to == length_of(self.session):
            self._document.drop_trial()
            return False
        return self._document.perform(self._edit(self.to))

    def put_back(self) -> None:
        """Leave it as long as it was."""
        self._document.drop_trial()

    def _edit(self, to: float) -> LengthenSession:
        return LengthenSession(self.session.key, to, self._gesture)


class WeekCarry:
    """A week in the hand: it changes places with the week it hovers over."""

    def __init__(self, document: Document, start: date) -> None:
        self._document = document
        self._base = document.project
        self.start = self.over_week = start
        self._gesture = document.new_gesture()

    @property
    def is_valid(self) -> bool:
        """Whether nothing but the hand has changed the project since it was lifted."""
        return self._document.project is self._base

    def over(self, start: date) -> bool:
        """Show the build-up as it would be with the week in the place of that from *start* on."""
        if start == self.over_week:
            return True
        if start == self.start:
            self._document.drop_trial()
        elif not self._document.try_edit(self._edit(start)):
            return False
        self.over_week = start
        return True

    def put_down(self) -> bool:
        """Keep it where it is, as one step."""
        if self.over_week == self.start:
            self._document.drop_trial()
            return False
        return self._document.perform(self._edit(self.over_week))

    def put_back(self) -> None:
        """Leave everything as it was."""
        self.over_week = self.start
        self._document.drop_trial()

    def _edit(self, start: date) -> SwapWeeks:
        return SwapWeeks(self.start, start, self._gesture)
