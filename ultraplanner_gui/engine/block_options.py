"""The task of an exact search, from the weeks and the pattern the rules lay out."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from msgspec.structs import replace

from ultraplanner_gui.engine.block_days import (
    FEWEST_RUN_DAYS,
    FIRST_DOWNHILL_WEEK,
    LAST_DOWNHILL_DAYS,
    MOST_RUN_DAYS,
    USUAL_RUN_M,
    Slot,
    wants_downhill,
)
from ultraplanner_gui.engine.block_fill import (
    AFTER_LONG_S,
    AFTER_REHEARSAL_SHARE,
    EASED_SHARE,
    FEW_DAYS,
    LAST_LONG_DAYS,
    LAST_LONG_SHARE,
    LEAST_CAP_M,
    PEAK_WEEKS,
    most_long_share,
    usual_long_share,
)
from ultraplanner_gui.engine.block_ground import LIMIT_S
from ultraplanner_gui.engine.block_layout import Layout
from ultraplanner_gui.engine.block_place import LEAST_SESSION_M, SHORTER
from ultraplanner_gui.engine.block_request import LEAST_FREE_S
from ultraplanner_gui.engine.block_task import LONG_KINDS, Day, Option, Task, Week
from ultraplanner_gui.engine.block_weeks import Frame, growth_curve, taper_targets
from ultraplanner_gui.engine.runway import LEAST_RUN_M, LEAST_WEEK_M
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.runner import Level
from ultraplanner_gui.plan.wishes import Ramp
from ultraplanner_gui.science.training import rest_days_after

STEP_S = 300
STEP_ROUND_M = 10
OFF_PATTERN = 5
FINER = 5
FINE_KINDS = (*LONG_KINDS, Kind.SECOND_LONG)
EASY_SHARE = 0.8
LEAST_PAIR_S = 3600.0
LEAST_PAIR_DAYS = 15
LEAST_S = {Kind.SECOND_LONG: 2700, Kind.LONG: 2700, Kind.REHEARSAL: 2700}


def task_of(layout: Layout, step_s: int = STEP_S) -> Task:
    """Return what may be chosen from in the weeks of *layout*."""
    return _Tasking(layout, step_s).task()


@dataclass(slots=True)
class _Tasking:
    layout: Layout
    step_s: int

    def task(self) -> Task:
        layout = self.layout
        targets = self._targets()
        shares = self._taper_shares()
        weeks = tuple(
            self._week(frame, targets.get(frame.to_go, 0), shares.get(frame.to_go, 0))
            for frame in layout.weeks.frames
            if frame.days
        )
        runner = layout.request.runner
        start_m = round(max(LEAST_WEEK_M, runner.weekly_m))
        peak, longest = self._peak(weeks), self._longest(weeks)
        loads = sum(w.whole and w.role is Role.LOADING for w in weeks[: peak + 1])
        reach_m = start_m * 1.1**loads
        return Task(
            weeks,
            start_m,
            round(max(LEAST_RUN_M, runner.longest_m)),
            round(min(layout.asks.peak_week_m, reach_m)),
            round(layout.asks.longest_m) if weeks else 0,
            peak,
            longest,
            sum(len(f.days) for f in layout.weeks.frames if self._is_taper(f)),
            round(layout.asks.two_days_m or 0.0),
            len(layout.plan.pairs),
            self._downhill(),
            self.step_s,
        )

    @staticmethod
    def _is_taper(frame: Frame) -> bool:
        return frame.whole and frame.role in (Role.TAPER, Role.RACE)

    def _targets(self) -> dict[int, int]:
        """Return the volume of every loading week, as the rules want it."""
        layout = self.layout
        goal_m = layout.asks.peak_week_m
        if layout.filled.is_short_of_time:
            goal_m = min(goal_m, 1.05 * layout.filled.peak_m)
        start_m = max(LEAST_WEEK_M, layout.request.runner.weekly_m)
        loads = layout.weeks.loading
        late = [f.to_go for f in loads if f.to_go <= 2]
        curve = growth_curve(start_m, goal_m, len(loads) - len(late), PEAK_WEEKS)
        rising = dict(zip((f.to_go for f in loads), curve, strict=False))
        rising |= dict.fromkeys(late, max(goal_m, start_m))
        return {to_go: round(metres) for to_go, metres in rising.items()}

    def _taper_shares(self) -> dict[int, int]:
        """Return the share of every taper week, in thousandths."""
        frames = [f for f in self.layout.weeks.frames if self._is_taper(f)]
        shares = taper_targets([len(f.days) for f in frames], self.layout.request.race_s)
        return {f.to_go: round(1000 * s) for f, s in zip(frames, shares, strict=True)}

    def _week(self, frame: Frame, target_m: int, share: int) -> Week:
        layout, plan = self.layout, self.layout.plan
        days = tuple(self._day(frame, day, target_m) for day in frame.days)
        open_days = sum(bool(d.options) or d.fixed is not None for d in days)
        week_m = target_m or layout.request.runner.weekly_m
        fewest = max(FEWEST_RUN_DAYS, -int(-week_m // USUAL_RUN_M))
        fewest = min(fewest, open_days, MOST_RUN_DAYS)
        raced = any(
            0 < (frame.first - day).days <= 7 and rest_days_after(race_s) > 1
            for day, _, race_s in plan.tune_ups
        )
        return Week(
            frame.to_go,
            frame.role,
            days,
            target_m or share,
            round(self._long_m(frame, target_m)),
            fewest if frame.role is Role.LOADING else min(fewest, 3),
            max(fewest, min(MOST_RUN_DAYS, len(plan.days.run))),
            self._sharp(frame, days),
            frame.whole,
            raced or plan.tune_up(frame) is not None,
            self._usual_share(),
            round(100 * most_long_share(len(plan.days.run))),
            self._ceiling(frame),
        )

    def _ceiling(self, frame: Frame) -> int:
        """Return how far a loading week may go, in hundredths of its yardstick."""
        ramp = self.layout.request.runner.wishes.ramp
        after = frame.to_go + 1 in self.layout.weeks.cutbacks
        return 100 if ramp is Ramp.BACK and after else 110

    def _usual_share(self) -> int:
        return round(100 * usual_long_share(len(self.layout.plan.days.run)))

    def _long_m(self, frame: Frame, week_m: int) -> float:
        plan, layout = self.layout.plan, self.layout
        wish_m = plan.long.wished_m.get(
            frame.to_go, AFTER_REHEARSAL_SHARE * layout.filled.longest_m
        )
        if frame.to_go == plan.rehearsal:
            return wish_m
        most = 0.01 * self._usual_share() * week_m
        need_m = min(
            plan.long.needed_m.get(frame.to_go, 0.0), most_long_share(len(plan.days.run)) * week_m
        )
        return min(wish_m, max(most, need_m))

    def _sharp(self, frame: Frame, days: tuple[Day, ...]) -> int:
        kinds = self._sharp_kinds(frame)
        there = {o.kind for d in days for o in d.options} & {*kinds, Kind.DOWNHILL}
        return min(len(kinds), len(there), len(self.layout.plan.days.hard))

    def _sharp_kinds(self, frame: Frame) -> tuple[Kind, ...]:
        if not frame.whole or frame.role is Role.RACE:
            return ()
        bare = replace(self.layout.plan, downhill=frozenset())
        return bare.quality(frame, pair=False)

    def _day(self, frame: Frame, day: date, target_m: int) -> Day:
        at = day.toordinal()
        fixed = self._fixed(frame, day)
        if fixed is not None or not frame.whole:
            return Day(at, (), fixed)
        plan = self.layout.plan
        free = self.layout.request.free_s(day) >= LEAST_FREE_S
        if not free or not plan.is_run_on(Slot(day, Kind.EASY)):
            return Day(at)
        kinds = dict.fromkeys(self._kinds(frame, day))
        options = (self._option(frame, day, kind, target_m) for kind in kinds)
        return Day(at, tuple(o for o in options if o is not None))

    def _fixed(self, frame: Frame, day: date) -> tuple[Kind, int] | None:
        """Return a race, a locked run, or what an opening part-week holds."""
        plan = self.layout.plan
        races = {at: metres for at, metres, _ in plan.tune_ups}
        if day in races:
            return Kind.TUNE_UP, round(races[day])
        for slot in plan.locked(frame):
            if slot.day == day:
                return slot.kind, slot.fixed_m or 0
        if not frame.whole:
            for run in self.layout.filled.runs:
                if run.day == day:
                    return run.kind, run.distance_m
        return None

    def _kinds(self, frame: Frame, day: date) -> list[Kind]:
        plan = self.layout.plan
        kinds = [Kind.EASY]
        longs = {plan.days.long, *self.layout.request.runner.wishes.long_days}
        taken = plan.tune_up(frame) is not None or any(s.kind.is_long for s in plan.locked(frame))
        long = Kind.REHEARSAL if frame.to_go == plan.rehearsal else Kind.LONG
        if frame.role is Role.RACE:
            return kinds
        if not taken and day.weekday() in longs and self._stays(day, long):
            kinds.append(long)
        if (day.weekday() - 1) % 7 in longs:
            kinds.append(Kind.RECOVERY)
            if self._may_pair(frame, day):
                kinds.append(Kind.SECOND_LONG)
        beside = len(longs) == 1 and (day.weekday() - plan.days.long) % 7 in (0, 1, 6)
        if not beside:
            kinds.extend(k for k in self._sharp_kinds(frame) if self._stays(day, k))
            if self._may_fall(frame, day):
                kinds.append(Kind.DOWNHILL)
        return kinds

    def _stays(self, day: date, kind: Kind) -> bool:
        slot = Slot(day, kind)
        return self.layout.plan.eased(slot) == slot

    def _may_fall(self, frame: Frame, day: date) -> bool:
        return (
            wants_downhill(self.layout.request)
            and bool(self._sharp_kinds(frame))
            and frame.to_go <= FIRST_DOWNHILL_WEEK
            and self._stays(day, Kind.DOWNHILL)
        )

    def _may_pair(self, frame: Frame, day: date) -> bool:
        plan, request = self.layout.plan, self.layout.request
        return (
            self.layout.asks.two_days_m is not None
            and request.runner.wishes.back_to_back
            and request.runner.level is not Level.FLOOR
            and len(plan.days.run) > FEW_DAYS
            and frame.role is Role.LOADING
            and frame.to_go not in (plan.rehearsal, *plan.long.big)
            and frame.to_go <= 0.65 * self.layout.weeks.first_week
            and (request.race_day - day).days >= LEAST_PAIR_DAYS - 1
            and request.free_s(day) >= LEAST_PAIR_S
            and self._stays(day, Kind.SECOND_LONG)
        )

    def _option(self, frame: Frame, day: date, kind: Kind, target_m: int) -> Option | None:
        """Return *kind* on *day* between its shortest and longest; None if there is no room."""
        rules, request = self.layout.rules, self.layout.request
        # In steps of five minutes a long run of two hours could not grow by ten percent.
        step_s = self.step_s // FINER if kind in FINE_KINDS else self.step_s
        step_m = int(rules.limit_m(kind, frame.to_go, step_s) / STEP_ROUND_M) * STEP_ROUND_M
        if step_m <= 0:
            return None
        free = int(request.free_s(day) // step_s)
        limit_s = LIMIT_S.get(kind, 1e9)
        if kind is Kind.EASY and (day.weekday() - 1) % 7 == self.layout.plan.days.long:
            limit_s = min(limit_s, AFTER_LONG_S)
        cap = int(min(limit_s // step_s, self._cap_m(frame, day, kind, target_m) // step_m))
        least_s = LEAST_S.get(kind, LEAST_FREE_S)
        least = max(-int(-least_s // step_s), -(-LEAST_SESSION_M // step_m))
        most = min(free, cap)
        if most < least:
            return None
        return Option(kind, step_m, least, most, cap, self._cost(day, kind), step_s)

    def _cap_m(self, frame: Frame, day: date, kind: Kind, target_m: int) -> float:
        layout = self.layout
        left = (layout.request.race_day - day).days
        longest_m = max(layout.filled.longest_m, LEAST_CAP_M)
        week_m = target_m or layout.filled.peak_m
        cap_m = 1e9
        if kind in LONG_KINDS:
            cap_m = layout.asks.longest_m
        elif kind is Kind.EASY:
            long_m = max(self._long_m(frame, round(week_m)), 0.5 * longest_m)
            cap_m = max(EASY_SHARE * long_m, LEAST_CAP_M)
        elif kind in SHORTER:
            share, low, high = SHORTER[kind]
            cap_m = min(max(1.25 * share * week_m, low), high)
        if left < LAST_LONG_DAYS:
            cap_m = min(cap_m, LAST_LONG_SHARE * longest_m)
        if left < LAST_DOWNHILL_DAYS[0]:
            cap_m = min(cap_m, max(EASED_SHARE * longest_m, LEAST_CAP_M))
        return cap_m

    def _cost(self, day: date, kind: Kind) -> int:
        """Return what a session costs that leaves the pattern of the rules; its own place pays."""
        there = next((r.kind for r in self.layout.filled.runs if r.day == day), None)
        if there is None:
            return OFF_PATTERN
        return -OFF_PATTERN if there is kind else 0

    def _peak(self, weeks: tuple[Week, ...]) -> int:
        loads = [n for n, w in enumerate(weeks) if w.whole and w.role is Role.LOADING]
        free = [n for n in loads if weeks[n].to_go >= 3 and not weeks[n].fixed_m] or loads
        return max(free, key=lambda n: (weeks[n].target_m, n), default=0)

    def _longest(self, weeks: tuple[Week, ...]) -> int:
        with_long = [
            n
            for n, w in enumerate(weeks)
            if w.role is Role.LOADING
            and any(o.kind in LONG_KINDS for d in w.days for o in d.options)
        ]
        rehearsal = self.layout.plan.rehearsal
        return max(
            with_long, key=lambda n: (weeks[n].to_go == rehearsal, weeks[n].long_m, n), default=0
        )

    def _downhill(self) -> tuple[int, int] | None:
        request = self.layout.request
        if not wants_downhill(request):
            return None
        race = request.race_day.toordinal()
        first = max(request.first_day.toordinal(), race - 7 * FIRST_DOWNHILL_WEEK)
        return first, race - LAST_DOWNHILL_DAYS[0]
