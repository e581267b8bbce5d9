"""What would put a broken rule right, where one way is plainly best."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import date, timedelta

from msgspec.structs import replace

from ultraplanner_gui.engine.check import Mend
from ultraplanner_gui.plan.block import HARD_KINDS, Block, Kind, Session, week_start
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Quantity, message
from ultraplanner_gui.science.training import CUTBACK_SHARE

STEP_M, STEP_S = 500.0, 300.0
LEAST_RUN_M = 3_000.0
MOST_CUT = 0.6
CARRYING_S = 3_600.0
EASY_KINDS = (Kind.EASY, Kind.RECOVERY)


def is_free(session: Session) -> bool:
    """Return whether a mend may change *session*: a run ahead that is not locked."""
    return (
        session.is_open
        and not session.locked
        and session.kind.is_run
        and session.kind not in (Kind.RACE, Kind.TUNE_UP)
    )


def shortened(session: Session, most_m: float) -> Session:
    """Return *session* cut to *most_m*, time, climb and drop with it, in round figures."""
    metres = most_m // STEP_M * STEP_M
    share = metres / session.distance_m
    return replace(
        session,
        distance_m=metres,
        duration_s=max(STEP_S, share * session.duration_s // STEP_S * STEP_S),
        climb_m=share * session.climb_m // 10 * 10,
        drop_m=share * session.drop_m // 10 * 10,
    )


def shorter_run(session: Session, most_m: float) -> Mend | None:
    """Return the mend that cuts *session* to *most_m*."""
    if not is_free(session) or most_m < LEAST_RUN_M:
        return None
    cut = shortened(session, most_m)
    return Mend(message(SHORTEN, Quantity(cut.distance_m, "m")), (cut,))


def smaller_week(sessions: Iterable[Session], over_m: float) -> Mend | None:
    """Return the mend that takes *over_m* metres off the easy runs, the longest first."""
    changed: list[Session] = []
    left = over_m
    easy = [s for s in sessions if is_free(s) and s.kind in EASY_KINDS]
    for session in sorted(easy, key=lambda s: (-s.distance_m, s.day)):
        most_m = max(LEAST_RUN_M, (1.0 - MOST_CUT) * session.distance_m)
        cut = shortened(session, max(most_m, session.distance_m - left))
        if left > 0.0 and cut.distance_m < session.distance_m:
            changed.append(cut)
            left -= session.distance_m - cut.distance_m
    if left > 0.0 or not changed:
        return None
    return Mend(message(EASY_SHORTER, Quantity(over_m - left, "m")), tuple(changed))


def cut_back(block: Block, to_go: int, sessions: Sequence[Session]) -> Mend | None:
    """Return the mend that makes the week *to_go* a cutback, all its runs a quarter shorter."""
    free = [s for s in sessions if is_free(s) and s.distance_m > 0]
    if not free or to_go < block.taper_weeks or {to_go - 1, to_go + 1} & set(block.cutbacks):
        return None
    changed = tuple(shortened(s, max(STEP_M, CUTBACK_SHARE * s.distance_m)) for s in free)
    cutbacks = tuple(sorted({*block.cutbacks, to_go}, reverse=True))
    return Mend(
        message(MAKE_CUTBACK, Quantity(100.0 * CUTBACK_SHARE, "percent")), changed, cutbacks
    )


def moved_apart(
    session: Session, sessions: Mapping[date, Sequence[Session]], first_weekday: int
) -> Mend | None:
    """Return the mend that moves *session* to the nearest empty day of its week, no hard one
    beside it.
    """
    if not is_free(session):
        return None
    start = week_start(session.day, first_weekday)
    days = [start + timedelta(days=n) for n in range(7)]
    for day in sorted(days, key=lambda d: (abs((d - session.day).days), d)):
        beside = [
            s
            for n in (-1, 0, 1)
            for s in sessions.get(day + timedelta(days=n), ())
            if s.key != session.key and (n == 0 or is_heavy(s.kind))
        ]
        if day != session.day and not beside:
            days_on = (day - session.day).days
            text = MOVE_ON if days_on > 0 else MOVE_BACK
            return Mend(message(text, abs(days_on)), (replace(session, day=day),))
    return None


def is_heavy(kind: Kind) -> bool:
    """Return whether the day beside *kind* must not be hard."""
    return kind in HARD_KINDS or kind is Kind.SECOND_LONG


def practised_at(sessions: Iterable[Session], rate_g_per_h: float) -> Mend | None:
    """Return the mend that has every long run and one more an hour long practise that rate."""
    free = [s for s in sessions if is_free(s) and s.duration_s >= CARRYING_S and not s.fasted]
    longs = [s for s in free if s.kind.is_long or s.kind is Kind.SECOND_LONG]
    chosen = longs or sorted(free, key=lambda s: -s.duration_s)[:1]
    changed = tuple(
        replace(s, carb_g_per_h=rate_g_per_h) for s in chosen if s.carb_g_per_h != rate_g_per_h
    )
    return Mend(message(PRACTISE, Quantity(rate_g_per_h, "g_per_h")), changed) if changed else None


def fed(sessions: Iterable[Session]) -> Mend | None:
    """Return the mend that has *sessions* run after breakfast."""
    changed = tuple(replace(s, fasted=False) for s in sessions if s.is_open and not s.locked)
    return Mend(message(FEED), changed) if changed else None


def darkened(sessions: Iterable[Session], count: int) -> Mend | None:
    """Return the mend that moves *count* easy evening runs into the dark."""
    easy = [s for s in sessions if is_free(s) and s.kind is Kind.EASY and not s.dark]
    changed = tuple(
        replace(s, dark=True, at_s=21 * 3600.0, fasted=False, heat=False)
        for s in sorted(easy, key=lambda s: -s.duration_s)[:count]
    )
    if len(changed) < count:
        return None
    return Mend(message(DARKEN, count), changed)


SHORTEN = QT_TRANSLATE_NOOP("Mend", "Shorten it to {0}.")
EASY_SHORTER = QT_TRANSLATE_NOOP("Mend", "Take {0} off the easy runs of that week.")
MAKE_CUTBACK = QT_TRANSLATE_NOOP("Mend", "Make that week a cutback, every run {0} of what it is.")
MOVE_ON = QT_TRANSLATE_NOOP("Mend", "Move the later session to an empty day, days later: {0}.")
MOVE_BACK = QT_TRANSLATE_NOOP("Mend", "Move the later session to an empty day, days earlier: {0}.")
PRACTISE = QT_TRANSLATE_NOOP("Mend", "Practise {0} on the long runs.")
FEED = QT_TRANSLATE_NOOP("Mend", "Run it after breakfast.")
DARKEN = QT_TRANSLATE_NOOP("Mend", "Run {0} of the easy runs after dark.")
