"""Load rules of training: ramp, cutback, single runs, taper, time on feet, session load."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from enum import StrEnum

RAMP_TENTHS = 11
WINDOW_DAYS = 30
CUTBACK_SHARE = 0.75
CUTBACK_RANGE = (0.60, 0.80)
TAPER_CUT_RANGE = (0.41, 0.60)
SHORT_TAPER_SHARES = (0.65, 0.35)
LONG_TAPER_SHARES = (0.76, 0.46, 0.28)
LONG_RACE_S = 12 * 3600.0
CLIMB_EQUIVALENT = 8.0


LONG_SHARES = {3: 0.55, 4: 0.50, 5: 0.45}
LONG_SHARE_OF_MANY = 0.40
LONG_SHARE_SLACK = 0.10
LONGEST_SERIES = 1_000


class Growth(StrEnum):
    """What the week after a cutback may be: 10 % above the last loading week, no more than that
    week, or 10 % above the cutback itself.
    """

    ON = "on"
    BACK = "back"
    FROM_CUTBACK = "from cutback"


def long_share(runs: int) -> float:
    """Return up to what share of a week one run may be when there are *runs* of them.

    Road custom says a quarter to a third of five to seven runs; with three to five runs a week
    35 to 50 % is usual in ultra training (from memory). Our own thresholds, no trial.
    """
    return LONG_SHARES[3] if runs < 3 else LONG_SHARES.get(runs, LONG_SHARE_OF_MANY)


def week_of_target(
    start: float,
    target: float,
    growth: Growth = Growth.ON,
    *,
    every: int = 4,
    cutback: float = 0.75,
) -> int | None:
    """Return the first week at *target* or above, week 1 at *start*; None if there is none.

    Loading weeks grow by 10 %; every *every*-th week is *cutback* of the last loading week.
    """
    loading = before = start
    for week in range(1, LONGEST_SERIES):
        if week % every == 0:
            before = cutback * loading
            continue
        if week > 1:
            loading = _loading_after(loading, before, growth, week % every == 1)
        before = loading
        if loading >= target - 1e-9:
            return week
    return None


def _loading_after(loading: float, before: float, growth: Growth, after_cutback: bool) -> float:
    if not after_cutback or growth is Growth.ON:
        return ten_percent_more(loading)
    return loading if growth is Growth.BACK else ten_percent_more(before)


def within_ten_percent(now_m: float, before_m: float) -> bool:
    """Return whether *now_m* is at most 1.10 times *before_m*, exact on whole metres."""
    return 10 * round(now_m) <= RAMP_TENTHS * round(before_m)


def ten_percent_more(before_m: float) -> float:
    """Return 1.10 times *before_m*: the ceiling of the ramp and of a single run."""
    return before_m * RAMP_TENTHS / 10.0


def growth_steps(start: float, target: float) -> int:
    """Return how many steps of 10 % lead from *start* (above 0) to *target* or beyond."""
    if target <= start:
        return 0
    steps = math.ceil(math.log(target / start) / math.log(1.1) - 1e-9)
    return max(1, steps)


def loading_weeks(weeks: int, every: int = 4) -> int:
    """Return how many of *weeks* are loading weeks when every *every*-th is a cutback."""
    return weeks - weeks // every


def steps_in(weeks: int, every: int = 4, growth: Growth = Growth.ON) -> int:
    """Return how many of *weeks* grow, the last one loading; the first only sets out.

    Cutbacks are every *every*-th week. Counted `Growth.BACK`, the week after one does not grow.
    """
    steps = loading_weeks(weeks, every) - 1
    if growth is Growth.BACK:
        steps -= max(0, weeks - 1) // every
    return max(0, steps)


def weeks_for_steps(steps: int, every: int = 4, growth: Growth = Growth.ON) -> int:
    """Return the fewest weeks that hold *steps* growth steps after the starting week.

    Each loading week grows from the last loading week, so how deep the cutbacks are does not
    matter. Two loading weeks between cutbacks is the least that gets anywhere.
    """
    weeks = steps + 1
    while steps_in(weeks, every, growth) < steps:
        weeks += 1
    return weeks


def likeness(one: Sequence[float], other: Sequence[float]) -> float:
    """Return how far two distributions over the same classes agree: 1 equal, 0 disjoint.

    1 - half the sum of the differences of the shares; 0 where one of them is empty.
    """
    sums = sum(one), sum(other)
    if min(sums) <= 0.0:
        return 0.0
    apart = sum(abs(a / sums[0] - b / sums[1]) for a, b in zip(one, other, strict=True))
    return max(0.0, 1.0 - 0.5 * apart)


def longest_before(runs: Iterable[tuple[int, float]], day: int) -> float:
    """Return the longest of *runs* (day number, metres) in the 30 days before *day*; 0 if none.

    The window holds the calendar days day - 30 to day - 1 (Frandsen et al. 2025, Br J Sports
    Med 59:1203-1210).
    """
    return max((metres for at, metres in runs if 1 <= day - at <= WINDOW_DAYS), default=0.0)


def taper_shares(race_s: float) -> tuple[float, ...]:
    """Return the weekly shares of the last loading week, race week last.

    Two weeks for a race under 12 hours, else three; the mean cut lies in the 41-60 % of
    Bosquet et al. 2007, Med Sci Sports Exerc 39:1358-1365. The shares are our own choice.
    """
    return SHORT_TAPER_SHARES if race_s < LONG_RACE_S else LONG_TAPER_SHARES


def mean_cut(distance_m: float, days: int, last_loading_m: float) -> float:
    """Return by what share the daily mean over *days* lies below that of a week of
    *last_loading_m*; both above 0.
    """
    return 1.0 - (distance_m / days) / (last_loading_m / 7.0)


def time_on_feet_s(distance_m: float, climb_m: float, level_mps: float) -> float:
    """Return the time for *distance_m* with *climb_m* at *level_mps* on level ground.

    A metre of climb counts as eight of distance: Scarf 2007, J Sports Sci 25:719-726.
    """
    return (distance_m + CLIMB_EQUIVALENT * climb_m) / level_mps


def reach_m(time_s: float, climb_per_m: float, level_mps: float) -> float:
    """Return the distance that *time_s* holds on ground climbing *climb_per_m* (Scarf 2007)."""
    return time_s * level_mps / (1.0 + CLIMB_EQUIVALENT * climb_per_m)


def easy_days_after(race_s: float) -> int:
    """Return for how many days after a race of *race_s* nothing hard is run.

    Common practice, no source.
    """
    for hours, days in ((3, 4), (6, 7), (12, 10), (24, 14)):
        if race_s < hours * 3600:
            return days
    return 21


def rest_days_after(race_s: float) -> int:
    """Return for how many days after a race of *race_s* nothing is run (common practice)."""
    for hours, days in ((3, 1), (6, 2), (12, 4), (24, 6)):
        if race_s < hours * 3600:
            return days
    return 7


def practice_rate(
    tolerated_g_per_h: float, target_g_per_h: float, weeks_in: int, weeks_left: int
) -> float:
    """Return the carbohydrate to practise with, grams per hour, rising by 10 a week to the target.

    *weeks_in* counts from 0 in the first week, *weeks_left* is the number to go. The target is
    held for the last six weeks where there is time (common practice, no source).
    """
    if target_g_per_h <= tolerated_g_per_h:
        return target_g_per_h
    late = target_g_per_h - 10.0 * max(0, weeks_left - 6)
    early = tolerated_g_per_h + 10.0 * weeks_in
    return max(tolerated_g_per_h, min(target_g_per_h, late, early))


def gut_weeks(tolerated_g_per_h: float, target_g_per_h: float) -> int:
    """Return the weeks of practice from the intake tolerated to the target, two of them at it."""
    return 2 + max(0, math.ceil((target_g_per_h - tolerated_g_per_h) / 10.0 - 1e-9))


def session_load(effort: float, duration_s: float) -> float:
    """Return effort times minutes: Foster et al. 2001, J Strength Cond Res 15:109-115."""
    return effort * duration_s / 60.0
