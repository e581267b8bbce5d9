"""A block by the rules before it is dressed: its weeks, its pattern of kinds and its runs."""

from __future__ import annotations

from msgspec.structs import replace

from ultraplanner_gui.engine.block_days import Pattern, pattern
from ultraplanner_gui.engine.block_fill import Filled, fill
from ultraplanner_gui.engine.block_ground import GroundRules
from ultraplanner_gui.engine.block_request import BlockRequest, check_request
from ultraplanner_gui.engine.block_weeks import Calendar, calendar
from ultraplanner_gui.engine.runway import RaceAsks, Runway, growth_of, race_asks, runway
from ultraplanner_gui.plan.value import Value

RECASTS = 3


class Layout(Value, frozen=True):
    """A block by the rules before it is dressed: its weeks, pattern of kinds and runs."""

    request: BlockRequest
    asks: RaceAsks
    way: Runway
    weeks: Calendar
    plan: Pattern
    rules: GroundRules
    filled: Filled


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
        growth=growth_of(runner.wishes),
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
