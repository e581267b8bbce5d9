"""Building a block: weeks counted back from the race, sessions placed on the days there are."""

from __future__ import annotations

from dataclasses import dataclass, replace

from ultraplanner_gui.engine.block_days import Pattern, pattern, wants_downhill
from ultraplanner_gui.engine.block_dress import dressed
from ultraplanner_gui.engine.block_fill import Filled, fill
from ultraplanner_gui.engine.block_ground import GroundRules
from ultraplanner_gui.engine.block_place import STEP_M
from ultraplanner_gui.engine.block_request import BlockRequest, check_request
from ultraplanner_gui.engine.block_weeks import Calendar, calendar
from ultraplanner_gui.engine.runway import (
    LEAST_RUN_M,
    LEAST_WEEK_M,
    REACHED,
    RaceAsks,
    Runway,
    race_asks,
    runway,
)
from ultraplanner_gui.plan.block import Block, Kind, Session
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.science.training import (
    TAPER_CUT_RANGE,
    gut_weeks,
    longest_before,
    within_ten_percent,
)

RECASTS = 3

__all__ = ["BlockPlan", "BlockRequest", "build_block"]


@dataclass(frozen=True, slots=True)
class BlockPlan:
    """A built block, its runway, and what the builder could not give, in words."""

    block: Block
    runway: Runway
    notes: tuple[Message, ...] = ()


@dataclass(frozen=True, slots=True)
class Layout:
    """A block by the rules before it is dressed: its weeks, pattern of kinds and runs."""

    request: BlockRequest
    asks: RaceAsks
    way: Runway
    weeks: Calendar
    plan: Pattern
    rules: GroundRules
    filled: Filled


def build_block(request: BlockRequest) -> BlockPlan:
    """Return a block for *request* by the rules; the same request gives the same block.

    Raises PlanError if there is no day to run on or no race ahead.
    """
    return finished(laid_out(request))


def laid_out(request: BlockRequest) -> Layout:
    """Return the runs of a block by the rules; raises PlanError like `build_block`."""
    check_request(request)
    runner = request.runner
    asks = race_asks(
        request.race_m,
        request.race_s,
        runner.level,
        climb_m=request.climb_m,
        easy_mps=runner.easy_mps,
    )
    way = runway(
        asks,
        runner,
        request.first_day,
        request.race_day,
        request.first_weekday,
        request.race_s,
        cutback_every=request.cutback_every,
    )
    weeks = calendar(request)
    plan, rules, filled = _filled(request, weeks, asks)
    low: frozenset[int] = frozenset()
    for _ in range(RECASTS):
        if filled.low <= low:
            break
        low |= filled.low
        weeks = calendar(request, low)
        plan, rules, filled = _filled(request, weeks, asks)
    return Layout(request, asks, way, weeks, plan, rules, filled)


def finished(layout: Layout) -> BlockPlan:
    """Return the block of *layout* with everything its sessions carry."""
    weeks, filled = layout.weeks, layout.filled
    sessions = _with_locked(dressed(filled.runs, layout.rules), layout.request)
    block = Block(sessions, weeks.first_week, weeks.cutbacks, weeks.taper_weeks)
    notes = _notes(layout.plan, weeks, layout.rules, layout.asks, filled)
    return BlockPlan(block, layout.way, notes)


def _with_locked(sessions: tuple[Session, ...], request: BlockRequest) -> tuple[Session, ...]:
    """Return *sessions* with the locked ones as they were instead of what stands in for them."""
    if not request.locked:
        return sessions
    days = {s.day for s in request.locked if s.kind.is_run}
    keys = {s.key for s in request.locked}
    free = [
        replace(s, key=f"{s.key}-new") if s.key in keys else s
        for s in sessions
        if s.day not in days or not s.kind.is_run or s.kind is Kind.RACE
    ]
    return tuple(sorted((*free, *request.locked), key=lambda s: s.day))


def _filled(
    request: BlockRequest, weeks: Calendar, asks: RaceAsks
) -> tuple[Pattern, GroundRules, Filled]:
    rules = GroundRules.of(request, weeks)
    plan = pattern(request, weeks, rules, asks)
    filled = fill(plan, weeks, rules, asks, asks.peak_week_m)
    if filled.is_short_of_time and filled.peak_m < asks.peak_week_m:
        # Grow evenly to what the days hold instead of fast to where they stop it.
        filled = fill(plan, weeks, rules, asks, float(filled.peak_m))
        filled = replace(filled, is_short_of_time=True)
    return plan, rules, filled


def _notes(
    plan: Pattern, weeks: Calendar, rules: GroundRules, asks: RaceAsks, filled: Filled
) -> tuple[Message, ...]:
    request = plan.request
    notes: list[Message] = []
    if request.runner.weekly_m < LEAST_WEEK_M or request.runner.longest_m < LEAST_RUN_M:
        notes.append(
            message(LITTLE_BEHIND, Quantity(LEAST_WEEK_M, "m"), Quantity(LEAST_RUN_M, "m"))
        )
    if not weeks.loading:
        notes.append(message(TOO_NEAR))
    else:
        notes.extend(_reach_notes(plan, rules, asks, filled))
        usual_m = request.runner.weekly_m
        if filled.first_m < REACHED * usual_m - STEP_M:
            notes.append(
                message(USUAL_UNFIT, Quantity(filled.first_m, "m"), Quantity(usual_m, "m"))
            )
    if wants_downhill(request) and weeks.loading and not plan.downhill:
        notes.append(message(NO_DOWNHILL))
    if filled.taper_cut is not None and not (
        TAPER_CUT_RANGE[0] <= filled.taper_cut <= TAPER_CUT_RANGE[1]
    ):
        notes.append(message(TAPER_OFF, Quantity(100.0 * filled.taper_cut, "percent")))
    tolerated, target = request.runner.carb_g_per_h, request.carb_target_g_per_h
    if gut_weeks(tolerated, target) > weeks.first_week:
        notes.append(message(GUT_SHORT, gut_weeks(tolerated, target), Quantity(target, "g_per_h")))
    notes.extend(_tune_up_notes(request, plan, filled))
    return tuple(notes)


def _reach_notes(
    plan: Pattern, rules: GroundRules, asks: RaceAsks, filled: Filled
) -> list[Message]:
    request = plan.request
    notes: list[Message] = []
    if filled.peak_m < REACHED * asks.peak_week_m - STEP_M:
        text = DAYS_HOLD if filled.is_short_of_time else RAMP_HOLDS
        notes.append(message(text, Quantity(filled.peak_m, "m"), Quantity(asks.peak_week_m, "m")))
    if filled.longest_m < REACHED * asks.longest_m - STEP_M:
        free_s = request.runner.available_s[plan.days.long]
        longest, asked = Quantity(filled.longest_m, "m"), Quantity(asks.longest_m, "m")
        if rules.limit_m(Kind.REHEARSAL, plan.rehearsal or 0, free_s) < asks.longest_m:
            notes.append(message(LONG_DAY_HOLDS, longest, asked, Quantity(free_s, "s")))
        else:
            notes.append(message(LONG_STOPS, longest, asked))
    if plan.rehearsal is None:
        notes.append(message(NO_REHEARSAL))
    return notes


def _tune_up_notes(request: BlockRequest, plan: Pattern, filled: Filled) -> list[Message]:
    notes: list[Message] = []
    if len(plan.tune_ups) < len(request.tune_ups):
        notes.append(message(TUNE_UP_OUTSIDE))
    before = request.first_day.toordinal() - 1
    longest = max(LEAST_RUN_M, request.runner.longest_m)
    runs = [(before, longest), *((r.day.toordinal(), float(r.distance_m)) for r in filled.runs)]
    for run in filled.runs:
        if run.kind is not Kind.TUNE_UP:
            continue
        behind = longest_before(runs, run.day.toordinal())
        if not within_ten_percent(run.distance_m, behind):
            notes.append(message(TUNE_UP_FAR, Quantity(run.distance_m, "m"), Quantity(behind, "m")))
        week_m = sum(r.distance_m for r in filled.runs if r.to_go == run.to_go)
        if run.distance_m > 0.8 * week_m:
            notes.append(
                message(TUNE_UP_WEEK, Quantity(week_m, "m"), Quantity(run.distance_m, "m"))
            )
    return notes


LITTLE_BEHIND = QT_TRANSLATE_NOOP(
    "Block",
    "Too little running is entered to grow from; the build-up starts at {0} a week and a run "
    "of {1}.",
)
TOO_NEAR = QT_TRANSLATE_NOOP(
    "Block", "The race is too near to build anything; these weeks only ease into it."
)
DAYS_HOLD = QT_TRANSLATE_NOOP(
    "Block", "Volume stops at {0} a week of the {1} asked: the days given hold no more."
)
USUAL_UNFIT = QT_TRANSLATE_NOOP(
    "Block",
    "The build-up starts at {0} a week, under the {1} run now: the free time and the longest run "
    "allow no more.",
)
RAMP_HOLDS = QT_TRANSLATE_NOOP(
    "Block", "Volume reaches {0} a week of the {1} asked: the ramp allows no more by the race."
)
LONG_STOPS = QT_TRANSLATE_NOOP(
    "Block",
    "The longest run stops at {0} of the {1} asked: it grows by 10 % at a time and the long runs "
    "before it keep to about half of their week.",
)
LONG_DAY_HOLDS = QT_TRANSLATE_NOOP(
    "Block", "The longest run stops at {0} of the {1} asked: its day has {2} free."
)
NO_REHEARSAL = QT_TRANSLATE_NOOP(
    "Block", "There is no rehearsal run: no long run fits three to five weeks before the race."
)
NO_DOWNHILL = QT_TRANSLATE_NOOP(
    "Block",
    "There is no downhill run: no day lies far enough from the long run. Seek descents on that "
    "one.",
)
TAPER_OFF = QT_TRANSLATE_NOOP(
    "Block", "The taper cuts the daily mean by {0}, outside 41 to 60 %: the days allow no other."
)
GUT_SHORT = QT_TRANSLATE_NOOP(
    "Block", "The gut needs {0} weeks of practice to take {1}; there are fewer."
)
TUNE_UP_OUTSIDE = QT_TRANSLATE_NOOP(
    "Block",
    "A tune-up race was left out: it lies outside the build-up, in the week before the race or "
    "within two weeks of another.",
)
TUNE_UP_FAR = QT_TRANSLATE_NOOP(
    "Block", "A tune-up race of {0} is over 10 % longer than the longest run before it ({1})."
)
TUNE_UP_WEEK = QT_TRANSLATE_NOOP(
    "Block", "A week of {0} is nearly all tune-up race ({1}); the ramp gives way to it."
)
