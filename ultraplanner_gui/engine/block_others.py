"""Strength and cross-training on the days of a built block that suit them.

Strength lies a day or more from what is hard and ends ten days before the race (own rule). Twice
a week for 8 to 12 weeks made running more economical (Blagrove et al. 2018, Sports Med
48:1117-1149); there is no trial with an ultramarathon at its end.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from ultraplanner_gui.engine.block_carry import EASY_KINDS, LONG_KINDS, by_week
from ultraplanner_gui.engine.block_request import BlockRequest
from ultraplanner_gui.plan.block import HARD_KINDS, Kind, Session, week_start

EFFORT = {Kind.STRENGTH: 5, Kind.CROSS: 3}
SLUG = {Kind.STRENGTH: "strength", Kind.CROSS: "cross"}
LAST_STRENGTH_DAYS = 10
BEFORE_TUNE_UP_DAYS = 3
MOST_DAYS_USED = 6
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
        if left <= LAST_STRENGTH_DAYS or self._is_away(day):
            return False
        if any(s.kind not in EASY_KINDS for s in self.by_day.get(day, ())):
            return False
        ahead = [day + timedelta(days=n) for n in range(1, BEFORE_TUNE_UP_DAYS + 1)]
        races = any(s.kind is Kind.TUNE_UP for d in ahead for s in self.by_day.get(d, ()))
        return not races and not self._is_heavy(ahead[0])

    def _is_away(self, day: date) -> bool:
        return any(a.first <= day <= a.last for a in self.request.runner.away)

    def _is_heavy(self, day: date) -> bool:
        hard = (*HARD_KINDS, Kind.SECOND_LONG)
        return any(s.kind in hard for s in self.by_day.get(day, ()))

    def _rank(self, day: date) -> tuple[bool, bool, date]:
        """Rank days: those with an easy run first, not right after a hard day, earlier ones."""
        return day not in self.by_day, self._is_heavy(day - timedelta(days=1)), day

    def _leaves_a_rest(self, day: date) -> bool:
        return len(self.used | {day}) <= MOST_DAYS_USED


def _other(
    kind: Kind, day: date, time_s: float, request: BlockRequest, by_day: dict[date, list[Session]]
) -> Session:
    at_s = request.runner.start_s[day.weekday()]
    for run in by_day.get(day, ()):
        after_s = (run.at_s or at_s) + run.duration_s + PAUSE_S
        before_s = (run.at_s or at_s) - time_s - PAUSE_S
        at_s = after_s if after_s + time_s <= LATEST_S else max(0.0, before_s)
    at_s = at_s // STEP_S * STEP_S
    key = f"{day.isoformat()}-{SLUG[kind]}"
    return Session(key, day, kind, 0.0, time_s, effort=EFFORT[kind], at_s=at_s)


def _order(session: Session) -> tuple[int, bool, float]:
    return session.day.toordinal(), session.kind is Kind.RACE, session.at_s or 0.0
