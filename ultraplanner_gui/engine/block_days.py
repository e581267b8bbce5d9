"""Which kind of session goes on which day of the week."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from itertools import combinations, pairwise

from msgspec.structs import replace

from ultraplanner_gui.engine.block_ground import DOWNHILL_RACE_M, GroundRules
from ultraplanner_gui.engine.block_long import LongPlan, eased_after, long_plan
from ultraplanner_gui.engine.block_request import LEAST_FREE_S, BlockRequest
from ultraplanner_gui.engine.block_weeks import Calendar, Frame, tune_ups
from ultraplanner_gui.engine.runway import LEAST_RUN_M, RaceAsks
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.plan.block import HARD_KINDS, Kind, weeks_to_go
from ultraplanner_gui.plan.runner import Level, Runner
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.plan.wishes import Ask
from ultraplanner_gui.science.training import easy_days_after, rest_days_after

USUAL_RUN_M = 8_000.0
FEWEST_RUN_DAYS = 3
MOST_RUN_DAYS = 6
LAST_HARD_DAYS = 5
DAYS_BEFORE_TUNE_UP = (3, 6)
LONG_AGAIN_S = 3 * 3600.0
FIRST_DOWNHILL_WEEK = 12
LAST_DOWNHILL_DAYS = (10, 21)
LONG_KINDS = (Kind.LONG, Kind.REHEARSAL)


class Slot(Value, frozen=True):
    """A day and the kind of session on it; `fixed_m` the metres of one that stays as it is."""

    day: date
    kind: Kind
    fixed_m: int | None = None


class Days(Value, frozen=True):
    """The weekdays to run on (Monday 0), the long one among them, and the hard ones between."""

    run: tuple[int, ...]
    long: int
    hard: tuple[int, ...]
    hard_beside_pair: tuple[int, ...]

    @property
    def after_long(self) -> int:
        """The weekday after the long run's."""
        return (self.long + 1) % 7


def days_of(runner: Runner) -> Days:
    """Return the weekdays *runner* can use; one day a week stays without running."""
    free = runner.available_s
    run = [d for d in range(7) if free[d] >= LEAST_FREE_S]
    long = runner.long_day if runner.long_day in run else max(run, key=lambda d: (free[d], d))
    if len(run) > MOST_RUN_DAYS:
        rest = min((d for d in run if d != long), key=lambda d: (free[d], (d - long - 2) % 7))
        run.remove(rest)
    count = 0 if len(run) < 3 else 1
    if len(run) >= 5 and runner.level is not Level.FLOOR:
        count = 2
    return Days(
        tuple(run),
        long,
        _hard_weekdays(run, long, count, pair=False),
        _hard_weekdays(run, long, count, pair=True),
    )


def _hard_weekdays(run: list[int], long: int, count: int, *, pair: bool) -> tuple[int, ...]:
    """Return up to *count* weekdays as far from the long run and each other as they get."""
    offsets = sorted((d - long) % 7 for d in run)
    near = {0, 1, 6, 2} if pair else {0, 1, 6}
    free = [o for o in offsets if o not in near]
    for size in range(count, 0, -1):
        best: tuple[tuple[int, int], tuple[int, ...]] | None = None
        for chosen in combinations(free, size):
            marks = (0, *chosen, 7)
            gaps = [b - a for a, b in pairwise(marks)]
            if min(gaps) < 2:
                continue
            score = (min(gaps), gaps[-1])
            if best is None or score > best[0]:
                best = (score, chosen)
        if best is not None:
            return tuple((long + o) % 7 for o in best[1])
    return ()


class Pattern(Value, frozen=True):
    """Everything that decides the kinds of a block's days."""

    request: BlockRequest
    days: Days
    is_hilly: bool
    rehearsal: int | None
    long: LongPlan
    pairs: frozenset[int]
    downhill: frozenset[int]
    tune_ups: tuple[tuple[date, float, float], ...]

    def tune_up(self, frame: Frame) -> tuple[date, float] | None:
        """Return day and distance of the tune-up race in the week of *frame*."""
        for day, distance_m, _ in self.tune_ups:
            if frame.first <= day <= frame.last:
                return day, distance_m
        return None

    def options(self, frame: Frame, week_m: float) -> Iterator[tuple[Slot, ...]]:
        """Yield ways to lay out a week of about *week_m*, the one wished for first.

        The others use more days, then no back-to-back, for when the first holds too little.
        """
        least = max(FEWEST_RUN_DAYS, -int(-week_m // USUAL_RUN_M))
        most = max(least, len(self.days.run))
        for pair in (True, False) if frame.to_go in self.pairs else (False,):
            for count in range(least, most + 1):
                yield self.slots(frame, count, pair)

    def slots(self, frame: Frame, count: int, pair: bool) -> tuple[Slot, ...]:
        """Return the sessions of a week on *count* days, in order."""
        race = self.tune_up(frame)
        locked = self.locked(frame)
        chosen = self._weekdays(count, pair)
        kinds = self._kinds(frame, pair)
        slots = [
            Slot(day, kinds.get(day.weekday(), Kind.EASY))
            for day in frame.days
            if day.weekday() in chosen and self.request.free_s(day) >= LEAST_FREE_S
        ]
        slots = _around(slots, locked)
        if race is not None:
            slots = [
                replace(s, kind=Kind.EASY) if s.kind in (*LONG_KINDS, Kind.SECOND_LONG) else s
                for s in slots
                if s.day != race[0]
            ]
            slots = [s for s in slots if s.day != race[0]]
            slots.append(Slot(race[0], Kind.TUNE_UP))
            if len(slots) > MOST_RUN_DAYS:
                slots = [s for s in slots if (race[0] - s.day).days != 1]
        return tuple(self.eased(s) for s in sorted(slots, key=lambda s: s.day) if self.is_run_on(s))

    def locked(self, frame: Frame) -> tuple[Slot, ...]:
        """Return the runs in *frame* that stay as they are, tune-up races aside."""
        races = {day for day, _, _ in self.tune_ups}
        return tuple(
            Slot(s.day, s.kind, round(s.distance_m))
            for s in self.request.locked
            if s.kind.is_run and frame.first <= s.day <= frame.last and s.day not in races
        )

    def _weekdays(self, count: int, pair: bool) -> frozenset[int]:
        days = self.days
        first = [days.long, *(days.hard_beside_pair if pair else days.hard)]
        if pair:
            first.insert(1, days.after_long)
        others = [d for d in days.run if d not in first]
        free = self.request.runner.available_s
        others.sort(key=lambda d: (d == days.after_long, d == (days.long - 1) % 7, -free[d], d))
        return frozenset((first + others)[: max(count, len(first))])

    def _kinds(self, frame: Frame, pair: bool) -> dict[int, Kind]:
        days = self.days
        if frame.role is Role.RACE:
            return {}
        kinds = {days.after_long: Kind.RECOVERY, days.long: Kind.LONG}
        if frame.to_go == self.rehearsal:
            kinds[days.long] = Kind.REHEARSAL
        hard = days.hard
        if pair:
            kinds[days.after_long] = Kind.SECOND_LONG
            hard = days.hard_beside_pair
        if frame.whole:
            quality = self.quality(frame, pair)
            kinds.update(zip(hard, quality, strict=False))
        return kinds

    def quality(self, frame: Frame, pair: bool) -> tuple[Kind, ...]:
        """Return the harder kinds of a week between its long runs."""
        ambitious = self.request.runner.level is Level.AMBITIOUS
        if self.is_hilly:
            kinds = [Kind.HILLS, Kind.TEMPO]
            if len(self.days.hard) < 2 and frame.to_go % 3 == 0:
                kinds.reverse()
        elif ambitious:
            kinds = [Kind.INTERVALS, Kind.TEMPO]
            if len(self.days.hard) < 2 and frame.to_go % 2 == 0:
                kinds.reverse()
        else:
            kinds = [Kind.TEMPO, Kind.HILLS]
        if frame.to_go in self.downhill:
            kinds[0] = Kind.DOWNHILL
        elif frame.role is Role.TAPER:
            kinds[0] = Kind.TEMPO
        light = pair or frame.to_go == self.rehearsal
        return tuple(kinds[:1] if light or frame.role is not Role.LOADING else kinds)

    def is_run_on(self, slot: Slot) -> bool:
        """Return whether races leave *slot* for running."""
        if slot.kind is Kind.TUNE_UP or slot.fixed_m is not None:
            return True
        if (self.request.race_day - slot.day).days == 1:
            return False
        return not any(
            1 <= (slot.day - day).days <= rest_days_after(race_s)
            for day, _, race_s in self.tune_ups
        )

    def eased(self, slot: Slot) -> Slot:
        """Return *slot*, easy instead where a race lies too near for hard running."""
        if slot.kind is Kind.TUNE_UP or slot.fixed_m is not None:
            return slot
        left = (self.request.race_day - slot.day).days
        hard = is_heavy(slot.kind)
        late = left < (LAST_DOWNHILL_DAYS[0] if _is_damaging(slot.kind) else LAST_HARD_DAYS)
        before = DAYS_BEFORE_TUNE_UP[1 if _is_damaging(slot.kind) else 0]
        near = any(
            -before <= (slot.day - day).days <= easy_days_after(race_s)
            for day, _, race_s in self.tune_ups
        )
        return replace(slot, kind=Kind.EASY) if hard and (late or near) else slot


def _around(slots: list[Slot], locked: tuple[Slot, ...]) -> list[Slot]:
    """Return *slots* with the *locked* ones in their places and no second long run beside one."""
    taken = {s.day for s in locked}
    has_long = any(s.kind in LONG_KINDS for s in locked)
    free = [s for s in slots if s.day not in taken]
    if has_long:
        free = [
            replace(s, kind=Kind.EASY) if s.kind in (*LONG_KINDS, Kind.SECOND_LONG) else s
            for s in free
        ]
    return [*free, *locked][-MOST_RUN_DAYS:]


def is_heavy(kind: Kind) -> bool:
    """Return whether the day after *kind* must not be hard."""
    return kind in HARD_KINDS or kind is Kind.SECOND_LONG


def _is_damaging(kind: Kind) -> bool:
    return kind in (*LONG_KINDS, Kind.SECOND_LONG, Kind.DOWNHILL)


def pattern(request: BlockRequest, weeks: Calendar, rules: GroundRules, asks: RaceAsks) -> Pattern:
    """Return the pattern of kinds for *request*."""
    days = days_of(request.runner)
    none: frozenset[int] = frozenset()
    bare = Pattern(
        request, days, rules.is_hilly, None, LongPlan({}, {}, none), none, none, tune_ups(request)
    )
    rehearsal = _rehearsal(bare, weeks)
    last = 0 if rehearsal is None else rehearsal
    loads = [f.to_go for f in weeks.loading if f.to_go >= last and _long_left(bare, f) is not None]
    longs = long_plan(
        loads,
        max(LEAST_RUN_M, request.runner.longest_m),
        asks.longest_m,
        rules.limit_m(Kind.LONG, last, LONG_AGAIN_S),
    )
    for day, distance_m, _ in bare.tune_ups:
        race_week = weeks_to_go(day, request.race_day, request.first_weekday)
        longs = eased_after(longs, race_week, distance_m, last)
    planned = replace(bare, rehearsal=rehearsal, long=longs)
    pairs = none if asks.two_days_m is None else _pairs(planned, weeks)
    placed = replace(planned, pairs=pairs)
    return replace(placed, downhill=_downhill(placed, weeks))


def _long_left(plan: Pattern, frame: Frame) -> int | None:
    """Return the days from the long run of *frame* to the race; None if it has no long run."""
    if plan.tune_up(frame) is not None:
        return None
    for day in frame.days:
        if day.weekday() == plan.days.long and plan.request.free_s(day) >= LEAST_FREE_S:
            slot = Slot(day, Kind.LONG)
            if plan.is_run_on(slot) and plan.eased(slot) == slot:
                return (plan.request.race_day - day).days
    return None


def _rehearsal(plan: Pattern, weeks: Calendar) -> int | None:
    fitting = [
        frame.to_go
        for frame in weeks.loading
        if (left := _long_left(plan, frame)) is not None and 21 <= left <= 35
    ]
    return min(fitting, default=None)


def _pairs(plan: Pattern, weeks: Calendar) -> frozenset[int]:
    """Return the weeks with a second long run: later loading weeks, never two in a row."""
    days, runner = plan.days, plan.request.runner
    if (
        runner.level is Level.FLOOR
        or not runner.wishes.back_to_back
        or len(days.run) < 4
        or days.after_long not in days.run
        or runner.available_s[days.after_long] < 60 * 60.0
    ):
        return frozenset()
    pairs: set[int] = set()
    for frame in reversed(weeks.loading):
        left = _long_left(plan, frame)
        late = frame.to_go <= 0.65 * weeks.first_week
        if left is None or left < 15 or not late or frame.to_go == plan.rehearsal:
            continue
        if frame.to_go not in plan.long.big and frame.to_go - 1 not in pairs:
            pairs.add(frame.to_go)
    return frozenset(pairs)


def wants_downhill(request: BlockRequest) -> bool:
    """Return whether downhill runs belong to the block: by the race's drop, or by wish."""
    wish = request.runner.wishes.downhill
    return wish is Ask.YES or (wish is Ask.BY_RACE and request.drop_m > DOWNHILL_RACE_M)


def _downhill(plan: Pattern, weeks: Calendar) -> frozenset[int]:
    """Return the weeks with a downhill run: every other week back from 10-21 days out."""
    if not wants_downhill(plan.request) or not plan.days.hard:
        return frozenset()
    left: dict[int, int] = {}
    for frame in weeks.frames:
        hard = plan.days.hard_beside_pair if frame.to_go in plan.pairs else plan.days.hard
        for day in frame.days:
            slot = Slot(day, Kind.DOWNHILL)
            late = frame.whole and frame.to_go <= FIRST_DOWNHILL_WEEK
            if hard and late and day.weekday() == hard[0] and plan.eased(slot) == slot:
                left[frame.to_go] = (plan.request.race_day - day).days
    low, high = LAST_DOWNHILL_DAYS
    last = [to_go for to_go, days in left.items() if low <= days <= high]
    if not last:
        return frozenset()
    chosen = [max(last)]
    while True:
        later = chosen[-1]
        wished = [later + n for n in (2, 3, 1) if later + n in left]
        good = [w for w in wished if w not in weeks.cutbacks and left[w] - left[later] <= 21]
        earlier = [w for w in left if w > later]
        if not earlier:
            return frozenset(chosen)
        good = good or sorted(earlier)
        chosen.append(good[0])
