"""How the long run grows: every loading week at first, every other one once it is really long."""

from __future__ import annotations

from collections.abc import Sequence

from ultraplanner_gui.engine.block_weeks import growth_curve
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.training import growth_steps, ten_percent_more

BETWEEN_SHARE = 0.75
WEEKS_EASED = 3
# A little under the 10 % allowed, for what rounding takes away at each step.
SAFE_GROWTH = 1.09


class LongPlan(Value, frozen=True):
    """Per week to go what the long run should be and what it must be at least for the longest
    one to be reached; `big` are the late weeks that carry the growth alone.
    """

    wished_m: dict[int, float]
    needed_m: dict[int, float]
    big: frozenset[int]


def long_plan(loads: Sequence[int], start_m: float, asked_m: float, alternate_m: float) -> LongPlan:
    """Return the growth of the long run over the weeks *loads* (to go, in order of time).

    From *alternate_m* on only every other weekend is big, where the single-run rule leaves
    time for that; the weekends between are shorter.
    """
    if not loads:
        return LongPlan({}, {}, frozenset())
    most = 0
    while asked_m / 1.1 ** (most + 1) >= alternate_m and most < len(loads):
        most += 1
    steps = growth_steps(start_m, asked_m)
    growing = tuple(loads)
    big: frozenset[int] = frozenset()
    for count in range(most, 0, -1):
        trial = _growing(loads, count)
        if len(trial) - 1 > steps:
            growing, big = trial, frozenset(trial[-count - 1 :])
            break
    return _curves(loads, growing, big, start_m, asked_m)


def eased_after(plan: LongPlan, race_week: int, race_m: float, last: int) -> LongPlan:
    """Return *plan* with the three weeks after a race of *race_m* shorter, but for week *last*.

    The race stands in for the long runs it replaces, so none of them is needed.
    """
    wished, needed = dict(plan.wished_m), dict(plan.needed_m)
    for to_go in range(race_week - WEEKS_EASED, race_week):
        if to_go in wished and to_go != last:
            wished[to_go] = min(wished[to_go], BETWEEN_SHARE * max(race_m, wished[to_go]))
            needed[to_go] = 0.0
    return LongPlan(wished, needed, plan.big)


def _growing(loads: Sequence[int], apart: int) -> tuple[int, ...]:
    """Return the weeks that carry growth when the last *apart* steps take two weeks or more."""
    chosen = [loads[-1]]
    for to_go in reversed(loads[:-1]):
        gap = to_go - chosen[-1]
        if len(chosen) > apart or gap >= 2:
            chosen.append(to_go)
    return tuple(reversed(chosen))


def _curves(
    loads: Sequence[int],
    growing: Sequence[int],
    big: frozenset[int],
    start_m: float,
    asked_m: float,
) -> LongPlan:
    count = len(growing)
    if start_m < asked_m and start_m * 1.1 ** (count - 1) < asked_m:
        start_m = ten_percent_more(start_m)
    curve = growth_curve(min(start_m, asked_m), asked_m, count, 1)
    wished = dict(zip(growing, curve, strict=True))
    needed = {g: asked_m / SAFE_GROWTH ** (count - 1 - n) for n, g in enumerate(growing)}
    for to_go in loads:
        if to_go not in wished:
            after = max(g for g in growing if g < to_go)
            wished[to_go] = BETWEEN_SHARE * wished[after]
            needed[to_go] = 0.0
    return LongPlan(wished, needed, big)
