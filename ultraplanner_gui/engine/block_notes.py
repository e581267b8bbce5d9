"""What a block could not give, in words: which wish or rule gives way, and by how much."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from ultraplanner_gui.engine.block_days import (
    MOST_RUN_DAYS,
    Pattern,
    is_heavy,
    wants_downhill,
)
from ultraplanner_gui.engine.block_fill import Filled
from ultraplanner_gui.engine.block_ground import HILLY_PER_M, GroundRules
from ultraplanner_gui.engine.block_home import lives_flat
from ultraplanner_gui.engine.block_layout import Layout
from ultraplanner_gui.engine.block_place import STEP_M
from ultraplanner_gui.engine.block_request import LEAST_FREE_S, BlockRequest
from ultraplanner_gui.engine.block_weeks import Calendar
from ultraplanner_gui.engine.runway import LEAST_RUN_M, LEAST_WEEK_M, REACHED, RaceAsks
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.plan.wishes import Ask
from ultraplanner_gui.science.training import (
    CUTBACK_RANGE,
    TAPER_CUT_RANGE,
    gut_weeks,
    longest_before,
    within_ten_percent,
)

LONG_RACE_M = 80_000.0


def notes_of(layout: Layout) -> tuple[Message, ...]:
    """Return a sentence for all that the runs in *layout* fall short in."""
    notes = _notes(layout.plan, layout.weeks, layout.rules, layout.asks, layout.filled)
    return (*notes, *_days_left(layout), *_cutbacks_off(layout), *_locked_notes(layout))


def _days_left(layout: Layout) -> Iterator[Message]:
    """Yield why days with time to run hold none, where more than one in ten of them does."""
    request, free, used = layout.request, 0, 0
    raced = {r.to_go for r in layout.filled.runs if r.kind is Kind.TUNE_UP}
    for frame in layout.weeks.loading:
        if raced & {frame.to_go, frame.to_go + 1}:
            continue
        days = [d for d in frame.days if request.free_s(d) >= LEAST_FREE_S]
        free += min(MOST_RUN_DAYS, len(days))
        used += len({r.day for r in layout.filled.runs if r.to_go == frame.to_go})
    if 10 * used < 9 * free:
        yield message(DAYS_LEFT, used, free)


def _volumes(layout: Layout) -> dict[int, int]:
    sums: dict[int, int] = {}
    for run in layout.filled.runs:
        sums[run.to_go] = sums.get(run.to_go, 0) + run.distance_m
    return sums


def _cutbacks_off(layout: Layout) -> Iterator[Message]:
    """Yield the cutback farthest from its range, if one is outside."""
    sums, worst = _volumes(layout), (0.0, 0.0)
    low, high = CUTBACK_RANGE
    raced = {r.to_go for r in layout.filled.runs if r.kind is Kind.TUNE_UP}
    reference = max(LEAST_WEEK_M, layout.request.runner.weekly_m)
    for frame in layout.weeks.frames:
        metres = float(sums.get(frame.to_go, 0))
        if frame.whole and frame.role is Role.CUTBACK:
            share = metres / reference
            least = 0.0 if raced & {frame.to_go, frame.to_go + 1} else low
            worst = max(worst, (max(least - share, share - high), share))
        elif frame.whole and frame.role is Role.LOADING and metres:
            reference = metres
    if worst[0] > 1e-9:
        yield message(CUTBACK_OFF, Quantity(100.0 * worst[1], "percent"))


def _locked_notes(layout: Layout) -> Iterator[Message]:
    """Yield the rules that locked runs make give way."""
    request = layout.request
    locked = {s.day for s in request.locked if s.kind.is_run}
    if not locked:
        return
    runs = layout.filled.runs
    behind = [(request.first_day.toordinal() - 1, max(LEAST_RUN_M, request.runner.longest_m))]
    for n, run in enumerate(runs):
        longest = longest_before(behind, run.day.toordinal())
        if run.day in locked and not within_ten_percent(run.distance_m, longest):
            yield message(LOCKED_FAR, Quantity(run.distance_m, "m"), Quantity(longest, "m"))
        behind.append((run.day.toordinal(), float(run.distance_m)))
        before = runs[n - 1] if n else run
        meets = (run.day - before.day).days == 1 and is_heavy(run.kind) and is_heavy(before.kind)
        if meets and run.kind is not Kind.SECOND_LONG and locked & {run.day, before.day}:
            yield message(LOCKED_HARD)
    yield from _locked_weeks(layout, locked)


def _locked_weeks(layout: Layout, locked: set[date]) -> Iterator[Message]:
    sums = _volumes(layout)
    reference = round(max(LEAST_WEEK_M, layout.request.runner.weekly_m))
    for frame in layout.weeks.frames:
        metres = sums.get(frame.to_go, 0)
        if not frame.whole or frame.role is not Role.LOADING:
            continue
        over = not within_ten_percent(metres, reference)
        if over and any(frame.first <= day <= frame.last for day in locked):
            yield message(LOCKED_WEEK, Quantity(metres, "m"), Quantity(reference, "m"))
        reference = metres or reference


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
    falls = any(run.kind is Kind.DOWNHILL for run in filled.runs)
    if wants_downhill(request) and weeks.loading and not falls:
        notes.append(message(NO_DOWNHILL))
    if lives_flat(request.runner) and request.climb_m >= HILLY_PER_M * request.race_m:
        notes.append(message(FLAT_HOME))
    if request.race_m >= LONG_RACE_M and weeks.loading and _may_offer_downhill(request):
        notes.append(message(OFFER_DOWNHILL))
    if filled.taper_cut is not None and not (
        TAPER_CUT_RANGE[0] <= filled.taper_cut <= TAPER_CUT_RANGE[1]
    ):
        notes.append(message(TAPER_OFF, Quantity(100.0 * filled.taper_cut, "percent")))
    tolerated, target = request.runner.carb_g_per_h, request.carb_target_g_per_h
    if gut_weeks(tolerated, target) > weeks.first_week:
        notes.append(message(GUT_SHORT, gut_weeks(tolerated, target), Quantity(target, "g_per_h")))
    notes.extend(_tune_up_notes(request, plan, filled))
    return tuple(notes)


def _may_offer_downhill(request: BlockRequest) -> bool:
    return not wants_downhill(request) and request.runner.wishes.downhill is Ask.BY_RACE


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
    "Block",
    "Volume reaches {0} a week of the {1} asked: growing by 10 % gets no further by the race.",
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
FLAT_HOME = QT_TRANSLATE_NOOP(
    "Block",
    "The long runs climb as the race does and nothing at hand gives that: travel for the longest "
    "ones, use stand-in sessions for the others.",
)
OFFER_DOWNHILL = QT_TRANSLATE_NOOP(
    "Block",
    "A long flat race wears out the quads in its last third too; downhill runs can be wished for "
    "(common practice, no source).",
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
    "Block", "A week of {0} is nearly all tune-up race ({1}): it may grow by more than 10 %."
)
DAYS_LEFT = QT_TRANSLATE_NOOP(
    "Block",
    "{0} of the {1} days with time to run hold one: weeks of this size are shared by fewer, longer "
    "runs.",
)
CUTBACK_OFF = QT_TRANSLATE_NOOP(
    "Block",
    "A cutback comes to {0} of the last loading week, outside 60 to 80 %: its days allow no other.",
)
LOCKED_FAR = QT_TRANSLATE_NOOP(
    "Block", "A locked run of {0} is over 10 % longer than the longest run before it ({1})."
)
LOCKED_HARD = QT_TRANSLATE_NOOP("Block", "A locked session makes two hard days meet.")
LOCKED_WEEK = QT_TRANSLATE_NOOP(
    "Block", "A week comes to {0} by a locked session; up to 10 % over {1} holds."
)
