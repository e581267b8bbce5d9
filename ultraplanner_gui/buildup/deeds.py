"""What can be done to sessions from the day grid, its menu and the main menu."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta

from msgspec.structs import replace
from PySide6.QtCore import QObject, Signal

from ultraplanner_gui.buildup import clip
from ultraplanner_gui.buildup.lengths import next_length
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.edits.block import (
    AddSession,
    ChangeSession,
    MarkDone,
    MarkMissed,
    MoveSession,
    RemoveSession,
)
from ultraplanner_gui.edits.block_moves import (
    LengthenSession,
    LockSessions,
    MoveSessions,
    PasteSessions,
    RemoveSessions,
    RepeatWeekly,
    SwapSessions,
    SwapWeeks,
    blank,
)
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.wording.words import Words

EASY_RUN_S = 2700.0
STEP_M = 500.0
#: What presses of one key within this time come to is one step.
WEEK_DAYS = 7


class SessionDeeds(QObject):
    """Turn deeds on the selected sessions into edits."""

    editor_wanted = Signal(str)
    #: How it went is to be typed, for the session of this key.
    done_form_wanted = Signal(str)

    def __init__(
        self,
        document: Document,
        selection: Selection,
        parent: QObject | None = None,
        words: Callable[[], Words] = Words,
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._selection = selection
        self._words = words
        self._run: tuple[type, tuple[str, ...], int] | None = None

    # What is selected

    def chosen(self) -> Session | None:
        """Return the session selected, of several the one at the cursor; None if there is none."""
        if self._selection.kind != "session":
            return None
        sessions = self._document.before.project.block.sessions
        return next((s for s in sessions if s.key == self._selection.key), None)

    def all_chosen(self) -> tuple[Session, ...]:
        """Return every session selected, by day."""
        if self._selection.kind != "session":
            return ()
        keys = frozenset(self._selection.keys)
        return tuple(s for s in self._document.before.project.block.sessions if s.key in keys)

    def chosen_week(self) -> date | None:
        """Return the first day of the week selected, or of the week of what is selected."""
        if self._selection.kind == "week":
            return date.fromisoformat(self._selection.key)
        session = self.chosen()
        weeks = self._document.before.weeks
        if session is None:
            return None
        return next((w.start for w in weeks if 0 <= (session.day - w.start).days < 7), None)

    # One session

    def add(self, day: date, kind: Kind = Kind.EASY) -> None:
        """Put a session on *day*, an easy run unless told otherwise, and select it."""
        project = self._document.before.project
        known = {s.key for s in project.block.sessions}
        if self._document.perform(AddSession(usual(project, kind, day))):
            self._choose_new(known)

    def edit(self) -> None:
        """Ask for the editor of the selected session."""
        session = self.chosen()
        if session is not None:
            self.editor_wanted.emit(session.key)

    def edit_done(self) -> None:
        """Ask for the short form of how the selected session went."""
        session = self.chosen()
        if session is not None and session.kind is not Kind.RACE:
            self.done_form_wanted.emit(session.key)

    def retype(self, changed: Session) -> bool:
        """Take over a session typed anew; return whether it could be done."""
        return self._document.perform(ChangeSession(changed))

    def lengthen(self, steps: int) -> None:
        """Make the selected session longer by so many steps, or shorter."""
        session = self.chosen()
        if session is None:
            return
        to = next_length(session, steps, self._words())
        gesture = self._gesture(LengthenSession, (session.key,))
        self._document.perform(LengthenSession(session.key, to, gesture))

    # All that is selected

    def move_by(self, days: int) -> None:
        """Move what is selected by a number of days; presses one after another are one step."""
        keys = tuple(s.key for s in self.all_chosen())
        if len(keys) == 1:
            session = self.all_chosen()[0]
            gesture = self._gesture(MoveSession, keys)
            self._document.perform(
                MoveSession(keys[0], session.day + timedelta(days=days), gesture)
            )
        elif keys:
            self._document.perform(MoveSessions(keys, days))

    def remove(self) -> None:
        """Take out what is selected."""
        keys = tuple(s.key for s in self.all_chosen())
        edit: Edit | None = None
        if len(keys) == 1:
            edit = RemoveSession(keys[0])
        elif keys:
            edit = RemoveSessions(keys)
        if edit is not None and self._document.perform(edit):
            self._selection.clear()

    def copy(self) -> None:
        """Put what is selected on the clipboard."""
        chosen = [blank(s) for s in self.all_chosen() if s.kind is not Kind.RACE]
        if chosen:
            clip.put(chosen, self._words())

    def cut(self) -> None:
        """Put what is selected on the clipboard and take it out."""
        if any(s.kind is not Kind.RACE for s in self.all_chosen()):
            self.copy()
            self.remove()

    def paste(self, day: date) -> None:
        """Put in what is on the clipboard, from *day* on."""
        sessions = clip.taken()
        if not sessions:
            return
        known = {s.key for s in self._document.before.project.block.sessions}
        if self._document.perform(PasteSessions(sessions, day)):
            self._choose_new(known)

    def repeat(self, times: int) -> None:
        """Repeat what is selected in so many of the weeks that follow."""
        keys = tuple(s.key for s in self.all_chosen())
        if keys:
            self._document.perform(RepeatWeekly(keys, times))

    def swap(self) -> None:
        """Let the two sessions that are selected change places."""
        chosen = self.all_chosen()
        if len(chosen) == 2:
            self._document.perform(SwapSessions(chosen[0].key, chosen[1].key))

    def swap_weeks(self, by: int) -> None:
        """Let the selected week change places with the one *by* weeks later."""
        start = self.chosen_week()
        if start is None:
            return
        other = start + timedelta(days=WEEK_DAYS * by)
        is_done = self._document.perform(SwapWeeks(start, other))
        if is_done and self._selection.kind == "week":
            self._selection.choose("week", other.isoformat())

    def lock(self) -> None:
        """Lock what is selected, or unlock it if all of it is locked."""
        chosen = self.all_chosen()
        if chosen:
            keys = tuple(s.key for s in chosen)
            self._document.perform(LockSessions(keys, not all(s.locked for s in chosen)))

    def select_all(self) -> None:
        """Select every session that lies ahead, the race apart."""
        sessions = self._document.before.project.block.sessions
        keys = [s.key for s in sessions if s.is_open and s.kind is not Kind.RACE]
        self._selection.choose_all("session", keys, self._selection.key)

    # How it went

    def mark_done(self) -> None:
        """Mark what is selected done as planned; what is done already keeps its record."""
        for session in self.all_chosen():
            if session.done is None:
                as_planned = replace(session, missed=False).actual
                self._document.perform(MarkDone(session.key, as_planned))

    def mark_missed(self) -> None:
        """Mark what is selected missed."""
        for session in self.all_chosen():
            if not session.missed:
                self._document.perform(MarkMissed(session.key))

    def unmark(self) -> None:
        """Take back that what is selected was done or missed."""
        for session in self.all_chosen():
            if not session.is_open:
                self._document.perform(MarkDone(session.key, None))

    def _choose_new(self, known: set[str]) -> None:
        sessions = self._document.before.project.block.sessions
        new = [s.key for s in sessions if s.key not in known]
        if new:
            self._selection.choose_all("session", new, new[0])

    def _gesture(self, kind: type, keys: tuple[str, ...]) -> int:
        """Return the number of the run of key presses this one belongs to."""
        last = self._run
        stack = self._document.undo_stack
        if last is not None and last[:2] == (kind, keys) and self._is_last(stack.count(), last[2]):
            return last[2]
        gesture = self._document.new_gesture()
        self._run = (kind, keys, gesture)
        return gesture

    def _is_last(self, count: int, gesture: int) -> bool:
        step = self._document.undo_stack.command(count - 1) if count else None
        return getattr(getattr(step, "edit", None), "gesture", 0) == gesture


def easy_run(project: Project, day: date) -> Session:
    """Return an easy run of about three quarters of an hour at the runner's easy speed."""
    return usual(project, Kind.EASY, day)


def usual(project: Project, kind: Kind, day: date) -> Session:
    """Return a session of *kind* as it usually is: that of the build-up nearest before *day*.

    Without one, three quarters of an hour at the runner's easy speed.
    """
    like = [s for s in project.block.sessions if s.kind is kind and kind is not Kind.EASY]
    if like:
        nearest = min(like, key=lambda s: abs((s.day - day).days))
        return replace(blank(nearest), key="", day=day, note="")
    if not kind.is_run:
        return Session("", day, kind, 0.0, EASY_RUN_S)
    speed = project.runner.easy_mps
    distance_m = max(STEP_M, round(speed * EASY_RUN_S / STEP_M) * STEP_M)
    return Session("", day, kind, distance_m, distance_m / speed, effort=_effort(kind))


def _effort(kind: Kind) -> int:
    from ultraplanner_gui.engine.block_ground import EFFORT

    return EFFORT.get(kind, 3)
