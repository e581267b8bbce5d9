"""How far each session goes: week by week under the ramp, the single-run rule and the free time."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date

from msgspec.structs import replace

from ultraplanner_gui.engine.block_days import (
    LAST_DOWNHILL_DAYS,
    LONG_KINDS,
    USUAL_RUN_M,
    Pattern,
    Slot,
    is_heavy,
)
from ultraplanner_gui.engine.block_ground import GroundRules
from ultraplanner_gui.engine.block_place import Room, Wish, place, stepped
from ultraplanner_gui.engine.block_weeks import Calendar, Frame, growth_curve, taper_targets
from ultraplanner_gui.engine.runway import LEAST_RUN_M, LEAST_WEEK_M, RaceAsks
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.plan.wishes import Ramp
from ultraplanner_gui.science.training import (
    CUTBACK_RANGE,
    CUTBACK_SHARE,
    longest_before,
    mean_cut,
    ten_percent_more,
)

PEAK_WEEKS = 3
CUTBACK_LONG_SHARE = 0.70
AFTER_REHEARSAL_SHARE = 0.75
LAST_LONG_DAYS = 15
LAST_LONG_SHARE = 0.55
EASED_SHARE = 0.35
MOST_LONG_SHARE = {3: 0.62, 4: 0.60, 5: 0.55}
MOST_LONG_SHARE_MANY_DAYS = 0.50
FEW_DAYS = 3
LATE_EASY_GROWTH = 1.25
MOST_TAPER_SHARE = 0.80
TAPER_ROUNDS = 4
LEAST_CAP_M = 6_000.0
AFTER_LONG_S = 75 * 60.0
FILLED_SHARE = 0.97


class Run(Value, frozen=True):
    """A session with its distance in whole metres."""

    day: date
    kind: Kind
    distance_m: int
    to_go: int


class Filled(Value, frozen=True):
    """All runs but the race, the first and greatest loading week, the longest run.

    `low` are loading weeks that a tune-up race made as small as a cutback. `taper_cut` is the
    mean cut over the taper's days; None if there is none to measure.
    """

    runs: tuple[Run, ...]
    first_m: int
    peak_m: int
    longest_m: int
    is_short_of_time: bool
    low: frozenset[int]
    taper_cut: float | None


def most_long_share(days: int) -> float:
    """Return the most of a week its long run may be where the longest one needs it (own choice)."""
    return MOST_LONG_SHARE[3] if days < 3 else MOST_LONG_SHARE.get(days, MOST_LONG_SHARE_MANY_DAYS)


def usual_long_share(days: int) -> float:
    """Return the usual part of a week its long run is: more of it where days are few."""
    return 0.40 if days >= 5 else 0.45 if days == 4 else 0.50


def fill(
    plan: Pattern, weeks: Calendar, rules: GroundRules, asks: RaceAsks, peak_m: float
) -> Filled:
    """Return the runs of every week, growing toward *peak_m* a week and the longest run asked."""
    return _Filling(plan, weeks, rules, asks, peak_m).all()


@dataclass(slots=True)
class _Filling:
    """The runs placed so far and what the next weeks are measured against."""

    plan: Pattern
    weeks: Calendar
    rules: GroundRules
    asks: RaceAsks
    goal_m: float
    runs: list[Run] = field(default_factory=list)
    behind: list[tuple[int, float]] = field(default_factory=list)
    loading_m: float = 0.0
    loading_long_m: float = 0.0
    easy_m: float = 0.0
    longest_m: int = 0
    first_m: int = 0
    peak_m: int = 0
    is_short_of_time: bool = False
    low: set[int] = field(default_factory=set)

    def all(self) -> Filled:
        """Fill every week in order of time."""
        request = self.plan.request
        self.loading_m = max(LEAST_WEEK_M, request.runner.weekly_m)
        self.loading_long_m = max(LEAST_RUN_M, request.runner.longest_m)
        self.behind.append((request.first_day.toordinal() - 1, self.loading_long_m))
        targets = self._volume_targets()
        for frame in self.weeks.frames:
            if not frame.whole:
                self._opening(frame)
            elif frame.role is Role.CUTBACK:
                self._cutback(frame)
            elif frame.role is Role.LOADING:
                self._loading(frame, targets[frame.to_go])
        cut = self._taper()
        return Filled(
            tuple(self.runs),
            self.first_m,
            self.peak_m,
            self.longest_m,
            self.is_short_of_time,
            frozenset(self.low),
            cut,
        )

    def _volume_targets(self) -> dict[int, float]:
        loads = self.weeks.loading
        late = [f.to_go for f in loads if f.to_go <= 2]
        curve = growth_curve(self.loading_m, self.goal_m, len(loads) - len(late), PEAK_WEEKS)
        rising = dict(zip((f.to_go for f in loads), curve, strict=False))
        return rising | dict.fromkeys(late, max(self.goal_m, self.loading_m))

    def _opening(self, frame: Frame) -> None:
        """Fill the part-week before the first whole one with the usual, in proportion."""
        usual = min(len(self.plan.days.run), max(3, -int(-self.loading_m // USUAL_RUN_M)))
        runs = len(next(self.plan.options(frame, self.loading_m)))
        share = min(1.0, runs / usual, len(frame.days) / 7.0 + 0.15)
        week_m = stepped(self.loading_m * share)
        long_m = min(self.loading_long_m, self._share_m(week_m))
        self._place(frame, self.loading_m, Wish(week_m, long_m))

    def _cutback(self, frame: Frame) -> None:
        wish = Wish(
            stepped(CUTBACK_SHARE * self.loading_m), CUTBACK_LONG_SHARE * self.loading_long_m
        )
        self._place(frame, self.loading_m, wish)

    def _loading(self, frame: Frame, target_m: float) -> None:
        week_m = stepped(min(target_m, self._ceiling_m(frame)))
        race = self.plan.tune_up(frame)
        wish = Wish(
            week_m,
            self._long_m(frame, week_m),
            self.asks.two_days_m or 0.0,
            self._most_long_m(week_m) if frame.to_go in self.plan.long.wished_m else 0.0,
            self._most_share,
        )
        placed = self._place(frame, week_m, wish)
        total = sum(run.distance_m for run in placed)
        if total < FILLED_SHARE * week_m and race is None and frame.to_go > 2:
            self.is_short_of_time = True
        raced = any(f.to_go == frame.to_go + 1 and self.plan.tune_up(f) for f in self.weeks.frames)
        if raced and total < CUTBACK_RANGE[1] * self.loading_m:
            self.low.add(frame.to_go)
        self.loading_m = total or self.loading_m
        self.first_m = self.first_m or total
        self.peak_m = max(self.peak_m, total)
        longs = [r.distance_m for r in placed if r.kind in LONG_KINDS]
        self.loading_long_m = max(longs, default=self.loading_long_m)
        self.easy_m = max((r.distance_m for r in placed if r.kind is Kind.EASY), default=0.0)

    def _ceiling_m(self, frame: Frame) -> float:
        """Return the most of a loading week; after a cutback no growth where that is wished."""
        after = frame.to_go + 1 in self.weeks.cutbacks
        if after and self.plan.request.runner.wishes.ramp is Ramp.BACK:
            return self.loading_m
        return ten_percent_more(self.loading_m)

    def _long_m(self, frame: Frame, week_m: int) -> float:
        """Return the long run: within its share of the week unless the longest needs more."""
        long = self.plan.long
        wish_m = long.wished_m.get(frame.to_go, AFTER_REHEARSAL_SHARE * self.longest_m)
        if frame.to_go == self.plan.rehearsal:
            return wish_m
        need_m = min(long.needed_m.get(frame.to_go, 0.0), self._most_share * week_m)
        return min(wish_m, max(self._share_m(week_m), need_m))

    @property
    def _most_share(self) -> float:
        return most_long_share(len(self.plan.days.run))

    def _most_long_m(self, week_m: int) -> float:
        if len(self.plan.days.run) > FEW_DAYS:
            return 0.0
        return min(self._most_share * week_m, self.asks.longest_m)

    def _share_m(self, week_m: float) -> float:
        """Return the long run's usual part of a week: more of it where days are few."""
        return week_m * usual_long_share(len(self.plan.days.run))

    def _taper(self) -> float | None:
        """Fill the taper and return its mean cut; what the last days cannot hold goes earlier."""
        frames = [f for f in self.weeks.frames if f.whole and f.role in (Role.TAPER, Role.RACE)]
        days = [len(f.days) for f in frames]
        shares = taper_targets(days, self.plan.request.race_s)
        wanted = sum(shares) * self.loading_m
        kept = len(self.runs), len(self.behind)
        best = (float("inf"), shares)
        for _ in range(TAPER_ROUNDS):
            total = self._taper_weeks(frames, shares)
            best = min(best, (abs(wanted - total), shares))
            more = (wanted - total) / self.loading_m / max(1, len(frames) - 1)
            shares = (
                *(min(MOST_TAPER_SHARE, share + 0.7 * more) for share in shares[:-1]),
                shares[-1],
            )
            del self.runs[kept[0] :], self.behind[kept[1] :]
        total = self._taper_weeks(frames, best[1])
        if not sum(days) or not self.weeks.loading:
            return None
        return mean_cut(total, sum(days), self.loading_m)

    def _taper_weeks(self, frames: Sequence[Frame], shares: Sequence[float]) -> int:
        total = 0
        for frame, share in zip(frames, shares, strict=True):
            week_m = stepped(share * self.loading_m)
            long_m = min(LAST_LONG_SHARE * self.longest_m, self._share_m(week_m))
            placed = self._place(frame, self.loading_m, Wish(week_m, long_m))
            total += sum(r.distance_m for r in placed)
        return total

    def _place(self, frame: Frame, usual_m: float, wish: Wish) -> list[Run]:
        """Place a week on the days of one of about *usual_m*, more of them if they are needed."""
        race = self.plan.tune_up(frame)
        wish = replace(wish, race_m=0 if race is None else round(race[1]))
        placed: list[Run] = []
        most = -1
        for slots in self.plan.options(frame, usual_m):
            trial = self._tried(frame, slots, wish)
            total = sum(run.distance_m for run in trial)
            if total > most:
                placed, most = trial, total
            if total >= FILLED_SHARE * wish.week_m:
                break
        self.runs.extend(placed)
        self.behind.extend((r.day.toordinal(), float(r.distance_m)) for r in placed)
        if frame.role in (Role.LOADING, Role.CUTBACK):
            self.longest_m = max(self.longest_m, *(r.distance_m for r in placed), 0)
        return placed

    def _tried(self, frame: Frame, slots: Sequence[Slot], wish: Wish) -> list[Run]:
        slots = self._apart(slots)
        room = {slot.day: self._room(slot, frame) for slot in slots}
        return [
            Run(slot.day, slot.kind, metres, frame.to_go)
            for slot, metres in place(wish, slots, room)
        ]

    def _room(self, slot: Slot, frame: Frame) -> Room:
        after_long = AFTER_LONG_S if slot.kind is Kind.RECOVERY else None
        return Room(
            self._cap(slot.day, slot.kind, frame),
            self._cap(slot.day, Kind.EASY, frame, after_long),
        )

    def _apart(self, slots: Sequence[Slot]) -> list[Slot]:
        """Return *slots*, easy wherever a hard day would follow one, or no long run a second."""
        apart: list[Slot] = []
        before = Slot(self.runs[-1].day, self.runs[-1].kind) if self.runs else None
        for slot in slots:
            follows = before is not None and (slot.day - before.day).days == 1
            if slot.kind is Kind.SECOND_LONG:
                fits = follows and before is not None and before.kind in LONG_KINDS
            else:
                fits = not (follows and before is not None and is_heavy(before.kind))
            stays = slot.kind is Kind.TUNE_UP or slot.fixed_m is not None
            if is_heavy(slot.kind) and not stays and not fits:
                slot = Slot(slot.day, Kind.EASY)
            before = slot
            apart.append(slot)
        return apart

    def _cap(self, day: date, kind: Kind, frame: Frame, most_s: float | None = None) -> int:
        """Return the longest a session of *kind* may be on *day*, within *most_s*."""
        request = self.plan.request
        left = (request.race_day - day).days
        free_s = request.free_s(day)
        if most_s is not None:
            free_s = min(free_s, most_s)
        cap = min(
            self.rules.limit_m(kind, frame.to_go, free_s),
            ten_percent_more(longest_before(self.behind, day.toordinal())),
        )
        if kind is Kind.EASY:
            usual = 0.8 * self.loading_long_m
            if frame.to_go <= 2 and self.easy_m:
                usual = LATE_EASY_GROWTH * self.easy_m
            cap = min(cap, max(usual, LEAST_CAP_M))
        if self.longest_m and left < LAST_LONG_DAYS:
            cap = min(cap, LAST_LONG_SHARE * self.longest_m)
        if self.longest_m and left < LAST_DOWNHILL_DAYS[0]:
            cap = min(cap, max(EASED_SHARE * self.longest_m, LEAST_CAP_M))
        return stepped(cap)
