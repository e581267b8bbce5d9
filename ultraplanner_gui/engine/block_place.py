"""One week's distance shared out among its days."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date

from ultraplanner_gui.engine.block_days import LONG_KINDS, Slot
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.value import Value

STEP_M = 500
LEAST_SESSION_M = 3_000
LEAST_EASY_M = 5_000
RUNS_TO_SHARE = 3
MOST_QUALITY_SHARE = 0.25
SMALL_WEEK_SHARE = 0.25
SECOND_LONG_SHARE = 0.70
TWO_DAYS_SHARE = 0.68
# Share of the week and range in metres of the shorter kinds (own defaults).
SHORTER = {
    Kind.HILLS: (0.17, 5_000, 13_000),
    Kind.DOWNHILL: (0.15, 5_000, 11_000),
    Kind.TEMPO: (0.16, 5_000, 15_000),
    Kind.INTERVALS: (0.15, 5_000, 13_000),
    Kind.RECOVERY: (0.09, 4_000, 7_000),
}


class Wish(Value, frozen=True):
    """What a week is to hold: about `week_m`, a long run of `long_m`, two long days of up to
    `two_days_m`. The long run may take what finds no other place up to `most_long_m`, and is at
    most `most_share` of the week.
    """

    week_m: int
    long_m: float
    two_days_m: float = 0.0
    most_long_m: float = 0.0
    most_share: float = 0.5
    race_m: int = 0


class Room(Value, frozen=True):
    """How far a session of its kind may go, and how far an easy run could on the same day."""

    kind_m: int
    easy_m: int


def stepped(metres: float) -> int:
    """Return *metres* rounded down to half a kilometre."""
    return int((metres + 1e-6) // STEP_M) * STEP_M


def place(wish: Wish, slots: Sequence[Slot], room: Mapping[date, Room]) -> list[tuple[Slot, int]]:
    """Return the slots that get a run, with its metres; together never more than wished, but
    for a tune-up race.
    """
    placed = {s.day: wish.race_m for s in slots if s.kind is Kind.TUNE_UP}
    placed |= {s.day: s.fixed_m for s in slots if s.fixed_m is not None}
    fixed = frozenset(placed)
    left = wish.week_m - sum(placed.values())
    for kinds in (LONG_KINDS, (Kind.SECOND_LONG,), tuple(SHORTER)):
        for slot in (s for s in slots if s.kind in kinds and s.day not in fixed):
            metres = min(_wished(slot.kind, wish, placed), room[slot.day].kind_m, left)
            if slot.kind is Kind.LONG and len(slots) >= RUNS_TO_SHARE:
                metres = min(metres, wish.most_share * wish.week_m)
            placed[slot.day] = max(0, stepped(metres))
            left -= placed[slot.day]
    open_ = [s for s in slots if s.day not in fixed]
    left = _share(left, wish, [s for s in open_ if s.kind is Kind.EASY], room, placed)
    _top_up(left, wish, open_, room, placed)
    _keep_share(wish, open_, placed)
    return [
        (slot if slot.day in fixed else _named(slot, placed[slot.day], room), placed[slot.day])
        for slot in slots
        if placed.get(slot.day, 0) >= LEAST_SESSION_M or slot.day in fixed
    ]


def _wished(kind: Kind, wish: Wish, placed: Mapping[date, int]) -> float:
    if kind in LONG_KINDS:
        return wish.long_m
    if kind is Kind.SECOND_LONG:
        first = max(placed.values(), default=0)
        both = min(wish.two_days_m, TWO_DAYS_SHARE * wish.week_m)
        return min(both - first, SECOND_LONG_SHARE * first)
    share, least, most = SHORTER[kind]
    least = max(LEAST_SESSION_M, min(least, round(SMALL_WEEK_SHARE * wish.week_m)))
    return min(max(share * wish.week_m, least), most)


def _share(
    left: int, wish: Wish, easy: list[Slot], room: Mapping[date, Room], placed: dict[date, int]
) -> int:
    """Share *left* evenly among *easy*, fewer of them if it is little; return what is over."""
    least = max(LEAST_SESSION_M, min(LEAST_EASY_M, stepped(0.1 * wish.week_m)))
    while len(easy) > 1 and left < len(easy) * least:
        easy.pop()
    order = sorted(easy, key=lambda s: (room[s.day].easy_m, s.day))
    for n, slot in enumerate(order):
        metres = max(0, min(room[slot.day].easy_m, stepped(left / (len(order) - n))))
        placed[slot.day] = metres
        left -= metres
    return left


def _top_up(
    left: int,
    wish: Wish,
    slots: Sequence[Slot],
    room: Mapping[date, Room],
    placed: dict[date, int],
) -> None:
    """Give what the easy days could not take to quality, recovery days and the long run."""
    quality = stepped(MOST_QUALITY_SHARE * wish.week_m)
    rested = all(s.kind not in (Kind.REHEARSAL, Kind.TUNE_UP) for s in slots)
    for slot in sorted(slots, key=lambda s: (s.kind in LONG_KINDS, s.kind is Kind.RECOVERY)):
        if slot.kind is Kind.RECOVERY:
            most = room[slot.day].easy_m if rested else placed[slot.day]
        elif slot.kind in SHORTER:
            most = min(room[slot.day].kind_m, quality)
        elif slot.kind is Kind.LONG:
            most = min(room[slot.day].kind_m, stepped(wish.most_long_m))
        else:
            continue
        more = stepped(max(0, min(left, most - placed[slot.day])))
        placed[slot.day] += more
        left -= more


def _keep_share(wish: Wish, slots: Sequence[Slot], placed: dict[date, int]) -> None:
    """Keep a long run to its share of the week where there are runs enough to share it."""
    for slot in slots:
        if slot.kind is Kind.LONG and len(slots) >= RUNS_TO_SHARE:
            rest = sum(placed.values()) - placed[slot.day]
            most = stepped(rest * wish.most_share / (1.0 - wish.most_share))
            placed[slot.day] = min(placed[slot.day], most)


def _named(slot: Slot, metres: int, room: Mapping[date, Room]) -> Slot:
    """Return *slot*, an easy run where it grew beyond a recovery run."""
    if slot.kind is Kind.RECOVERY and metres > room[slot.day].kind_m:
        return Slot(slot.day, Kind.EASY)
    return slot
