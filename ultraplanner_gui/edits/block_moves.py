"""Edits of several sessions at once: moved, copied, pasted, repeated, swapped, locked, shifted."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from datetime import date, timedelta
from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.edits.block import (
    check_day,
    check_session,
    locked_stays,
    one_race,
    race_stays,
)
from ultraplanner_gui.edits.race import ChangeRace, ChangeSetup
from ultraplanner_gui.plan.block import Block, Kind, Session, week_start, weeks_to_go
from ultraplanner_gui.plan.course import fresh_key
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value

MOST_REPEATS = 52
FARTHEST_DAYS = 3660


class MoveSessions(Value, frozen=True):
    """The user moved some sessions by a number of days."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Move sessions")
    sessions: tuple[str, ...]
    days: int
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        _check_days(self.days)
        moved = [project.block.session(key) for key in self.sessions]
        for session in moved:
            check_movable(session)
        if not self.days:
            return project
        return _with(project, {s.key: _by(s, self.days) for s in moved})


class CopySessions(Value, frozen=True):
    """The user copied some sessions to days so many days further on."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Copy sessions")
    sessions: tuple[str, ...]
    days: int
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        _check_days(self.days)
        return _with_new(project, [_by(s, self.days) for s in _copied(project, self.sessions)])


class PasteSessions(Value, frozen=True):
    """The user pasted sessions, the first of them on *day*, the others as far from it as before."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Paste sessions")
    sessions: tuple[Session, ...]
    day: date
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        if not self.sessions:
            return project
        if any(s.kind is Kind.RACE for s in self.sessions):
            raise one_race()
        check_day(self.day)
        first = min(s.day for s in self.sessions)
        days = (self.day - first).days
        return _with_new(project, [_by(blank(s), days) for s in self.sessions])


class RepeatWeekly(Value, frozen=True):
    """The user repeated some sessions in the weeks that follow, as far as the race allows."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Repeat weekly")
    sessions: tuple[str, ...]
    times: int
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        if not 1 <= self.times <= MOST_REPEATS:
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "A session is repeated 1 to 52 times."))
        copies = _copied(project, self.sessions)
        new = [_by(s, 7 * week) for week in range(1, self.times + 1) for s in copies]
        new = [s for s in new if s.day < project.race.day]
        if copies and not new:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "The race comes before the next week; repeat none.")
            )
        return _with_new(project, new)


class LengthenSession(Value, frozen=True):
    """The user drew a session longer or shorter: climb, drop and the other figure follow.

    *to* is metres for a run that has a distance, else seconds.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Lengthen session")
    session: str
    to: float
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        session = project.block.session(self.session)
        if session.kind is Kind.RACE:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "The race is as long as its course; change that instead.")
            )
        if not session.is_open:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "Only a session that lies ahead can be drawn longer.")
            )
        before = length_of(session)
        if not (math.isfinite(self.to) and self.to > 0.0 and before > 0.0):
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "A session is longer than nothing."))
        if self.to == before:
            return project
        longer = _scaled(session, self.to / before)
        check_session(longer)
        return replace(project, block=project.block.with_session(longer))


class SwapSessions(Value, frozen=True):
    """The user let two sessions change places."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Swap sessions")
    first: str
    second: str
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        one, other = (project.block.session(key) for key in (self.first, self.second))
        for session in (one, other):
            check_movable(session)
        if one.day == other.day:
            return project
        return _with(
            project, {one.key: replace(one, day=other.day), other.key: replace(other, day=one.day)}
        )


class SwapWeeks(Value, frozen=True):
    """The user let two weeks, given by any day of theirs, change places.

    What is locked stays where it is; a cutback week stays one wherever it goes.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Swap weeks")
    first: date
    second: date
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        race_day, weekday = project.race.day, project.first_weekday
        starts = [week_start(day, weekday) for day in (self.first, self.second)]
        if starts[0] == starts[1]:
            return project
        weeks = [weeks_to_go(day, race_day, weekday) for day in starts]
        if min(weeks) < 1:
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "The race week stays the last one."))
        days = (starts[1] - starts[0]).days
        changed = {}
        for session in project.block.sessions:
            start = week_start(session.day, weekday)
            if start in starts and not session.locked:
                if not session.is_open:
                    raise PlanError(
                        QT_TRANSLATE_NOOP("Edit", "A week that is done in part stays in its place.")
                    )
                changed[session.key] = _by(session, days if start == starts[0] else -days)
        cutbacks = _swapped(project.block.cutbacks, weeks[0], weeks[1])
        if not changed and cutbacks == project.block.cutbacks:
            return project
        after = _with(project, changed)
        return replace(after, block=replace(after.block, cutbacks=cutbacks))


class LockSessions(Value, frozen=True):
    """The user locked sessions, so that no builder touches them, or unlocked them."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Lock or unlock")
    sessions: tuple[str, ...]
    is_locked: bool
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        chosen = [project.block.session(key) for key in self.sessions]
        changed = {
            s.key: replace(s, locked=self.is_locked) for s in chosen if s.locked != self.is_locked
        }
        return _with(project, changed) if changed else project


class RemoveSessions(Value, frozen=True):
    """The user took some sessions out."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Remove sessions")
    sessions: tuple[str, ...]
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        if any(project.block.session(key).kind is Kind.RACE for key in self.sessions):
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "The race itself cannot be removed from the build-up.")
            )
        gone = frozenset(self.sessions)
        rest = tuple(s for s in project.block.sessions if s.key not in gone)
        if not gone:
            return project
        return replace(project, block=replace(project.block, sessions=rest))


class ShiftWithRace(Value, frozen=True):
    """The user moved the race, and the build-up from *from_day* on with it, by whole weeks.

    Every session keeps its weekday and its weeks to go. What is done, missed or locked stays on
    its day; what would come to lie before *from_day* is left out.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Move race and build-up")
    change: ChangeRace | ChangeSetup
    from_day: date
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        check_day(self.from_day)
        after = self.change.apply(project)
        weeks = weeks_moved(project, after)
        if not weeks:
            return after
        block = _shifted(after, self.from_day, weeks)
        return replace(after, block=block)


class TakeRepair(Value, frozen=True):
    """The user took one of the ways to mend the build-up after missed days."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Mend after missed days")
    block: Block
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        for session in self.block.sessions:
            check_session(session)
        return project if self.block == project.block else replace(project, block=self.block)


def weeks_moved(before: Project, after: Project) -> int:
    """Return by how many weeks the race week of *after* lies behind that of *before*."""
    return weeks_to_go(before.race.day, after.race.day, after.first_weekday)


def length_of(session: Session) -> float:
    """Return what the edge of a tile draws out: metres of a run that has any, else seconds."""
    has_metres = session.kind.is_run and session.distance_m > 0.0
    return session.distance_m if has_metres else session.duration_s


def blank(session: Session) -> Session:
    """Return a copy of *session* that is planned only, and free to move."""
    return replace(session, done=None, missed=False, locked=False)


def check_movable(session: Session) -> None:
    """Raise PlanError if *session* has to stay on its day."""
    if session.kind is Kind.RACE:
        raise race_stays()
    if session.done is not None:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "This session is done; it stays on the day it was run.")
        )
    if session.locked:
        raise locked_stays()


def _check_days(days: int) -> None:
    if abs(days) > FARTHEST_DAYS:
        raise PlanError(QT_TRANSLATE_NOOP("Edit", "That is more than ten years away."))


def _by(session: Session, days: int) -> Session:
    day = session.day + timedelta(days=days)
    check_day(day)
    return replace(session, day=day)


def _scaled(session: Session, share: float) -> Session:
    return replace(
        session,
        distance_m=session.distance_m * share,
        duration_s=session.duration_s * share,
        climb_m=session.climb_m * share,
        drop_m=session.drop_m * share,
    )


def _copied(project: Project, keys: Iterable[str]) -> list[Session]:
    chosen = [project.block.session(key) for key in keys]
    if any(s.kind is Kind.RACE for s in chosen):
        raise one_race()
    return [blank(s) for s in chosen]


def _with(project: Project, changed: dict[str, Session]) -> Project:
    sessions = sorted((changed.get(s.key, s) for s in project.block.sessions), key=lambda s: s.day)
    return replace(project, block=replace(project.block, sessions=tuple(sessions)))


def _with_new(project: Project, new: Sequence[Session]) -> Project:
    if not new:
        return project
    keys = {s.key for s in project.block.sessions}
    added = []
    for session in new:
        check_session(session)
        key = fresh_key(session.key or "session", keys)
        keys.add(key)
        added.append(replace(session, key=key))
    sessions = sorted((*project.block.sessions, *added), key=lambda s: s.day)
    return replace(project, block=replace(project.block, sessions=tuple(sessions)))


def _swapped(cutbacks: tuple[int, ...], one: int, other: int) -> tuple[int, ...]:
    places = {one: other, other: one}
    after = sorted(places.get(week, week) for week in cutbacks)
    return cutbacks if sorted(cutbacks) == after else tuple(after)


def _shifted(project: Project, from_day: date, weeks: int) -> Block:
    """Return the block of *project* with what lies ahead moved by *weeks*."""
    block, days = project.block, 7 * weeks
    sessions = []
    for session in block.sessions:
        stays = session.kind is Kind.RACE or not session.is_open or session.locked
        if stays or session.day < from_day:
            sessions.append(session)
            continue
        moved = _by(session, days)
        if moved.day >= from_day:
            sessions.append(moved)
    # Weeks behind *from_day* keep their days, so that they lie so many weeks further back now.
    here = weeks_to_go(from_day, project.race.day, project.first_weekday) - weeks
    cutbacks = tuple(c + weeks if c > here else c for c in block.cutbacks)
    has_past = any(s.day < from_day for s in sessions)
    return replace(
        block,
        sessions=tuple(sorted(sessions, key=lambda s: s.day)),
        first_week=max(0, block.first_week + weeks) if has_past else block.first_week,
        cutbacks=tuple(sorted({c for c in cutbacks if c > 0})),
    )
