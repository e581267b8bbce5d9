"""What would put a session right that breaks a rule, looked for while the hand rests.

The nearest free day is tried first, then changing places with a run near by; a session drawn too
long is tried shorter. What is in the hand tells what it would do on another day.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator
from datetime import date, timedelta

from PySide6.QtCore import QObject, QTimer, Signal, Slot

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.block import MoveSession
from ultraplanner_gui.edits.block_moves import LengthenSession, SwapSessions, length_of
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.engine.outlook import Outlook, derive
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.value import Value

#: So far around the day it is looked; so long the hand rests before.
FARTHEST_DAYS = 10
REST_MS = 250
#: So many lengths between the one drawn and its own are tried.
LENGTHS = 12
_WEIGHT = {State.HOLDS: 0, State.STRAINS: 1, State.BREAKS: 100}
_TIED = (Kind.RACE, Kind.TUNE_UP)


class Offer(Value, frozen=True):
    """A day that would hold, with *other* a session to change places with, or a length there.

    `is_home` means that nothing but the place it came from holds.
    """

    day: date
    other: str = ""
    length: float | None = None
    is_home: bool = False


class Held(Value, frozen=True):
    """What the hand holds: the session it is about, and what it does on another day.

    `swaps` says whether it may change places with another, `snap` gives the lengths it may have
    where its edge is held.
    """

    key: str
    on_day: Callable[[date], Edit]
    swaps: bool = False
    snap: Callable[[float], float] | None = None


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
    for distance in range(1, FARTHEST_DAYS + 1):
        for day in (around + timedelta(days=distance), around - timedelta(days=distance)):
            if not outlook.today <= day < project.race.day or day in busy or day == session.day:
                continue
            if has_time(outlook, session, day):
                yield day


def has_time(outlook: Outlook, session: Session, day: date) -> bool:
    """Whether the runner has the time for *session* on *day*, or as much as on its own."""
    needed_s = min(session.duration_s, _free_s(outlook, session.day) or session.duration_s)
    return 0.0 < _free_s(outlook, day) >= needed_s


def _free_s(outlook: Outlook, day: date) -> float:
    runner = outlook.project.runner
    away = [a.free_s for a in runner.away if a.first <= day <= a.last]
    return min((runner.available_s[day.weekday()], *away))


def runs_near(outlook: Outlook, session: Session, around: date) -> Iterator[Session]:
    """Yield the runs *session* may change places with, the nearest to *around* first."""
    near = [
        s
        for s in outlook.project.block.sessions
        if s.kind.is_run
        and s.kind not in _TIED
        and _may_move(s)
        and s.day not in (session.day, outlook.project.race.day)
        and s.day >= outlook.today
        and abs((s.day - around).days) <= FARTHEST_DAYS
        and has_time(outlook, session, s.day)
        and has_time(outlook, s, session.day)
    ]
    yield from sorted(near, key=lambda s: abs((s.day - around).days))


class DaySeeker(QObject):
    """Tries one thing at a time, between events; `found` says that it is done."""

    found = Signal()

    def __init__(self, document: Document, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._document = document
        self._held: Held | None = None
        #: Session, what is shown and what is kept: of those the offer is.
        self._of: tuple[str, object, object] | None = None
        self._tries: Iterator[tuple[Offer, Edit | None]] = iter(())
        self._worst: Counter[str] = Counter()
        self._offer: Offer | None = None
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self._on_time)

    @property
    def held(self) -> str:
        """The key of the session in the hand; empty if nothing is."""
        return "" if self._held is None else self._held.key

    def hold(self, held: Held | None) -> None:
        """Take over what the hand holds; who shows it is told where that is another session."""
        key, self._held = self.held, held
        if key != self.held:
            self._of = None
            self.found.emit()

    @property
    def offer(self) -> Offer | None:
        """What has been found for what is in the hand, as it is shown."""
        return self._offer if self._is_of(self.held) else None

    def offer_for(self, key: str) -> Offer | None:
        """Return what was found for the session *key* as shown; starts looking if need be."""
        if self._is_of(key):
            return self._offer
        shown = self._document.shown
        self._of, self._offer = (key, shown, self._document.before), None
        self._timer.stop()
        session = next((s for s in shown.project.block.sessions if s.key == key), None)
        if session is None or not _may_move(session) or not breaks_something(shown, key):
            return None
        base = self._document.before
        self._worst = burden(base)
        self._tries = self._all_tries(base, session)
        self._timer.start(REST_MS)
        return None

    def _is_of(self, key: str) -> bool:
        of, document = self._of, self._document
        if of is None or of[0] != key:
            return False
        return of[1] is document.shown and of[2] is document.before

    def _all_tries(self, base: Outlook, session: Session) -> Iterator[tuple[Offer, Edit | None]]:
        key, held = session.key, self._held
        if held is None or held.key != key:
            held = Held(key, lambda day: MoveSession(key, day), swaps=True)
        home = next((s for s in base.project.block.sessions if s.key == key), None)
        if held.snap is not None and home is not None:
            yield from _shorter(home, session, held.snap)
            return
        # Weeks full to their ceiling hold nothing more: then a day of the week it comes from.
        around = [
            session.day,
            *([home.day] if home is not None and home.day != session.day else []),
        ]
        for middle in around:
            for day in days_near(base, home or session, middle):
                yield Offer(day), held.on_day(day)
        for middle in around if held.swaps and home is not None else []:
            for other in runs_near(base, home or session, middle):
                yield Offer(other.day, other.key), SwapSessions(key, other.key)
        if home is not None and home.day != session.day:
            yield Offer(home.day, is_home=True), MoveSession(key, home.day)
        elif home is None:
            yield Offer(session.day, is_home=True), None

    @Slot()
    def _on_time(self) -> None:
        if self._of is None or not self._is_of(self._of[0]):
            return
        tried = next(self._tries, None)
        if tried is None:
            return
        offer, edit = tried
        if self._holds(self._of[0], edit, offer):
            self._offer = offer
            self.found.emit()
        else:
            self._timer.start(0)

    def _holds(self, key: str, edit: Edit | None, offer: Offer) -> bool:
        """Whether after *edit* the session breaks nothing and no rule stands worse than before.

        None leaves out what is in no block yet, which always holds.
        """
        if edit is None:
            return True
        base = self._document.before
        try:
            project = edit.apply(base.project)
        except PlanError:
            return False
        tried = derive(project, base, base.today)
        now = burden(tried)
        is_no_worse = all(weight <= self._worst[rule] for rule, weight in now.items())
        keys = (key, offer.other)
        return is_no_worse and not any(k and breaks_something(tried, k) for k in keys)


def seeker_of(document: Document) -> DaySeeker:
    """Return the one seeker of *document*."""
    found = document.findChild(DaySeeker)
    return found if isinstance(found, DaySeeker) else DaySeeker(document, document)


def _shorter(
    home: Session, drawn: Session, snap: Callable[[float], float]
) -> Iterator[tuple[Offer, Edit | None]]:
    """Yield lengths from that *drawn* back to that at *home*, the nearest to the hand first."""
    first, last = length_of(drawn), length_of(home)
    lengths = (snap(first + (last - first) * k / LENGTHS) for k in range(1, LENGTHS))
    for length in dict.fromkeys(lengths):
        if length not in (first, last):
            yield Offer(home.day, length=length), LengthenSession(home.key, length)
    yield Offer(home.day, length=last, is_home=True), LengthenSession(home.key, last)


def _may_move(session: Session) -> bool:
    return session.kind is not Kind.RACE and session.is_open and not session.locked
