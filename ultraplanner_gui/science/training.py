"""Load rules of training: ramp, cutback, single runs, taper, time on feet, session load."""

from __future__ import annotations

import math
from collections.abc import Iterable

RAMP_TENTHS = 11
WINDOW_DAYS = 30
CUTBACK_SHARE = 0.75
CUTBACK_RANGE = (0.60, 0.80)
TAPER_CUT_RANGE = (0.41, 0.60)
SHORT_TAPER_SHARES = (0.65, 0.35)
LONG_TAPER_SHARES = (0.76, 0.46, 0.28)
LONG_RACE_S = 12 * 3600.0
CLIMB_EQUIVALENT = 8.0


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


def weeks_for_steps(steps: int, every: int = 4) -> int:
    """Return the fewest weeks that hold *steps* growth steps after the starting week.

    Each loading week grows from the last loading week, so how deep the cutbacks are does not
    matter.
    """
    weeks = steps + 1
    while loading_weeks(weeks, every) - 1 < steps:
        weeks += 1
    return weeks


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
