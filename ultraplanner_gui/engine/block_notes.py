"""What a block could not give, in words: which wish or rule gives way, and by how much."""

from __future__ import annotations

from ultraplanner_gui.engine.block_days import Pattern, wants_downhill
from ultraplanner_gui.engine.block_fill import Filled
from ultraplanner_gui.engine.block_ground import GroundRules
from ultraplanner_gui.engine.block_layout import Layout
from ultraplanner_gui.engine.block_place import STEP_M
from ultraplanner_gui.engine.block_request import BlockRequest
from ultraplanner_gui.engine.block_weeks import Calendar
from ultraplanner_gui.engine.runway import LEAST_RUN_M, LEAST_WEEK_M, REACHED, RaceAsks
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.science.training import (
    TAPER_CUT_RANGE,
    gut_weeks,
    longest_before,
    within_ten_percent,
)


def notes_of(layout: Layout) -> tuple[Message, ...]:
    """Return a sentence for all that the runs in *layout* fall short in."""
    return _notes(layout.plan, layout.weeks, layout.rules, layout.asks, layout.filled)


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
