"""Strength and cross-training on the days of a built block that suit them.

Strength lies a day or more before what is hard (before the easy run of its day where that is
closer), not on the day after a run of over two and a half hours, and ends ten days before the race
(own rule). It comes on the days with time for running, beyond that time where a run fills it. Twice
a week for 8 to 12 weeks made running more economical (Blagrove et al. 2018, Sports Med
48:1117-1149); there is no trial with an ultramarathon at its end.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from ultraplanner_gui.engine.block_carry import EASY_KINDS, LONG_KINDS, by_week
from ultraplanner_gui.engine.block_request import LEAST_FREE_S, BlockRequest
from ultraplanner_gui.plan.block import HARD_KINDS, Kind, Session, week_start
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, message

EFFORT = {Kind.STRENGTH: 5, Kind.CROSS: 3}
SLUG = {Kind.STRENGTH: "strength", Kind.CROSS: "cross"}
LAST_STRENGTH_DAYS = 10
BEFORE_TUNE_UP_DAYS = 3
MOST_DAYS_USED = 6
SHARP_KINDS = (Kind.TEMPO, Kind.HILLS, Kind.INTERVALS)
TIRING_S = 2.5 * 3600.0
PAUSE_S = 900.0
STEP_S = 300.0
LATEST_S = 22 * 3600.0


def with_others(sessions: Sequence[Session], request: BlockRequest) -> list[Session]:
    """Return *sessions* with the strength and cross-training wished for, by day and hour."""
    wishes = request.runner.wishes
    added: list[Session] = []
    by_day: dict[date, list[Session]] = {}
    for session in sessions:
        by_day.setdefault(session.day, []).append(session)
    race_week = week_start(request.race_day, request.first_weekday)
    for to_go, places in by_week(sessions, request):
        start = race_week - timedelta(weeks=to_go)
        room = _Room(request, by_day, [start + timedelta(days=n) for n in range(7)])
        light = all(sessions[n].kind not in (*LONG_KINDS, Kind.TUNE_UP) for n in places)
        for day in room.strength_days(min(1, wishes.strength) if light else wishes.strength):
            added.append(_other(Kind.STRENGTH, day, wishes.strength_s, request, by_day))
        for day in room.cross_days(wishes.cross):
            time_s = min(wishes.cross_s, request.free_s(day))
            added.append(_other(Kind.CROSS, day, time_s // STEP_S * STEP_S, request, by_day))
    return sorted((*sessions, *added), key=_order)


def left_out(sessions: Sequence[Session], request: BlockRequest) -> list[Message]:
    """Return how much strength and cross-training found no day, where over a tenth did not."""
    first = sessions[0].day if sessions else request.race_day
    said: list[Message] = []
    for kind, wished, text in (
        (Kind.STRENGTH, request.runner.wishes.strength, STRENGTH_LEFT),
        (Kind.CROSS, request.runner.wishes.cross, CROSS_LEFT),
    ):
        weeks = ((request.race_day - first).days - LAST_STRENGTH_DAYS) // 7
        asked = wished * max(0, weeks)
        placed = sum(s.kind is kind for s in sessions)
        if 10 * placed < 9 * asked:
            said.append(message(text, placed, asked))
    return said


class _Room:
    """The days of one week and what may still be put on them."""

    def __init__(
        self, request: BlockRequest, by_day: dict[date, list[Session]], days: Sequence[date]
    ) -> None:
        self.request, self.by_day = request, by_day
        self.days = [d for d in days if request.first_day <= d < request.race_day]
        self.used = {d for d in self.days if d in by_day}
        self.strength: list[date] = []

    def strength_days(self, count: int) -> list[date]:
        """Return up to *count* days for strength, two days or more apart."""
        fitting = [d for d in self.days if self._suits_strength(d)]
        for day in sorted(fitting, key=self._rank):
            apart = all(abs((day - other).days) >= 2 for other in self.strength)
            if len(self.strength) < count and apart and self._leaves_a_rest(day):
                self.strength.append(day)
                self.used.add(day)
        return sorted(self.strength)

    def cross_days(self, count: int) -> list[date]:
        """Return up to *count* days without anything else for cross-training."""
        chosen: list[date] = []
        for day in self.days:
            free = day not in self.used and self.request.free_s(day) >= 2 * STEP_S
            near = (self.request.race_day - day).days <= 2
            if len(chosen) < count and free and not near and self._leaves_a_rest(day):
                chosen.append(day)
                self.used.add(day)
        return chosen

    def _suits_strength(self, day: date) -> bool:
        left = (self.request.race_day - day).days
        if left <= LAST_STRENGTH_DAYS or self.request.free_s(day) < LEAST_FREE_S:
            return False
        if any(s.duration_s > TIRING_S for s in self.by_day.get(day - timedelta(days=1), ())):
            return False
        if any(s.kind not in EASY_KINDS for s in self.by_day.get(day, ())):
            return False
        ahead = [day + timedelta(days=n) for n in range(1, BEFORE_TUNE_UP_DAYS + 1)]
        races = any(s.kind is Kind.TUNE_UP for d in ahead for s in self.by_day.get(d, ()))
        return not races and not self._is_heavy(ahead[0], SHARP_KINDS)

    def _is_heavy(self, day: date, but: tuple[Kind, ...] = ()) -> bool:
        hard = {*HARD_KINDS, Kind.SECOND_LONG} - {*but}
        return any(s.kind in hard for s in self.by_day.get(day, ()))

    def _rank(self, day: date) -> tuple[bool, bool, bool, bool, date]:
        """Rank days: no hard one beside, with time left, with an easy run, earlier ones first."""
        before, after = day - timedelta(days=1), day + timedelta(days=1)
        ran_s = sum(s.duration_s for s in self.by_day.get(day, ()))
        fits = ran_s + self.request.runner.wishes.strength_s <= self.request.free_s(day)
        beside = self._is_heavy(after), self._is_heavy(before)
        return *beside, not fits, day not in self.by_day, day

    def _leaves_a_rest(self, day: date) -> bool:
        return len(self.used | {day}) <= MOST_DAYS_USED


def _other(
    kind: Kind, day: date, time_s: float, request: BlockRequest, by_day: dict[date, list[Session]]
) -> Session:
    at_s = request.runner.start_s[day.weekday()]
    ahead = by_day.get(day + timedelta(days=1), ())
    before_hard = any(s.kind in SHARP_KINDS for s in ahead)
    for run in by_day.get(day, ()):
        after_s = (run.at_s or at_s) + run.duration_s + PAUSE_S
        before_s = (run.at_s or at_s) - time_s - PAUSE_S
        late = before_hard or after_s + time_s > LATEST_S
        at_s = max(0.0, before_s) if late else after_s
    at_s = at_s // STEP_S * STEP_S
    key = f"{day.isoformat()}-{SLUG[kind]}"
    return Session(key, day, kind, 0.0, time_s, effort=EFFORT[kind], at_s=at_s)


def _order(session: Session) -> tuple[int, bool, float]:
    return session.day.toordinal(), session.kind is Kind.RACE, session.at_s or 0.0


STRENGTH_LEFT = QT_TRANSLATE_NOOP(
    "Block",
    "{0} of {1} strength sessions found a day: the others would lie beside hard or very long runs.",
)
CROSS_LEFT = QT_TRANSLATE_NOOP(
    "Block",
    "{0} of {1} sessions of cross-training found a day: the others are run on or kept free.",
)
