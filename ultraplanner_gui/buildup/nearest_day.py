"""The nearest day on which a session would break no rule, looked for while the hand rests."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from datetime import date, timedelta
from itertools import chain

from PySide6.QtCore import QObject, QTimer, Signal, Slot

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.block import MoveSession
from ultraplanner_gui.engine.outlook import Outlook, derive
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.plan.message import PlanError

#: So far around the day it is looked; so long the hand rests before.
FARTHEST_DAYS = 10
REST_MS = 250
_WEIGHT = {State.HOLDS: 0, State.STRAINS: 1, State.BREAKS: 100}


def breaks_something(outlook: Outlook, key: str) -> bool:
    """Whether a rule that concerns the session *key* is broken."""
    return any(c.state is State.BREAKS and key in c.sessions for c in outlook.checks)


def burden(outlook: Outlook) -> Counter[str]:
    """Return how much does not hold, by rule."""
    sums: Counter[str] = Counter()
    for check in outlook.checks:
        sums[check.rule] += _WEIGHT[check.state]
    return sums


def days_near(outlook: Outlook, session: Session, around: date) -> Iterator[date]:
    """Yield the days round *around* that may hold *session*, the nearest first, later before
    earlier: not past, before the race, with time free and no other run.
    """
    project = outlook.project
    busy = {s.day for s in project.block.sessions if s.key != session.key and s.kind.is_run}
    free_s = project.runner.available_s
    for distance in range(1, FARTHEST_DAYS + 1):
        for day in (around + timedelta(days=distance), around - timedelta(days=distance)):
            if not outlook.today <= day < project.race.day or day in busy or day == session.day:
                continue
            away = [a for a in project.runner.away if a.first <= day <= a.last]
            if free_s[day.weekday()] > 0.0 and not any(a.free_s <= 0.0 for a in away):
                yield day


class DaySeeker(QObject):
    """Looks for the nearest day one at a time, between events; `found` says that it is done."""

    found = Signal()

    def __init__(self, document: Document, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._document = document
        self._of: tuple[object, str] | None = None
        self._days: Iterator[date] = iter(())
        self._worst: Counter[str] = Counter()
        self._day: date | None = None
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self._on_time)

    def day_for(self, key: str) -> date | None:
        """Return the day found for the session *key* as it is shown; starts looking if need be."""
        shown = self._document.shown
        if self._of is not None and self._of[0] is shown and self._of[1] == key:
            return self._day
        self._of, self._day = (shown, key), None
        self._timer.stop()
        session = next((s for s in shown.project.block.sessions if s.key == key), None)
        if session is None or not _may_move(session) or not breaks_something(shown, key):
            return None
        base = self._document.before
        home = next((s for s in base.project.block.sessions if s.key == key), session)
        self._worst = burden(base)
        # Weeks full to their ceiling hold nothing more: then a day of the week it comes from.
        around = (session.day, home.day) if home.day != session.day else (session.day,)
        self._days = chain.from_iterable(days_near(base, home, day) for day in around)
        self._timer.start(REST_MS)
        return None

    @Slot()
    def _on_time(self) -> None:
        if self._of is None or self._of[0] is not self._document.shown:
            return
        day = next(self._days, None)
        if day is None:
            return
        if self._holds(self._of[1], day):
            self._day = day
            self.found.emit()
        else:
            self._timer.start(0)

    def _holds(self, key: str, day: date) -> bool:
        """Whether on *day* the session breaks nothing and no rule stands worse than before."""
        base = self._document.before
        try:
            project = MoveSession(key, day).apply(base.project)
        except PlanError:
            return False
        tried = derive(project, base, base.today)
        now = burden(tried)
        is_no_worse = all(weight <= self._worst[rule] for rule, weight in now.items())
        return is_no_worse and not breaks_something(tried, key)


def seeker_of(document: Document) -> DaySeeker:
    """Return the one seeker of *document*."""
    found = document.findChild(DaySeeker)
    return found if isinstance(found, DaySeeker) else DaySeeker(document, document)


def _may_move(session: Session) -> bool:
    return session.kind is not Kind.RACE and session.is_open and not session.locked
