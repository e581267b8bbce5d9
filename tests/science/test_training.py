"""Load rules of training against published bands and tables worked by hand."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.science.training import (
    CUTBACK_SHARE,
    LONG_TAPER_SHARES,
    SHORT_TAPER_SHARES,
    Growth,
    easy_days_after,
    growth_steps,
    gut_weeks,
    likeness,
    loading_weeks,
    long_share,
    longest_before,
    mean_cut,
    practice_rate,
    reach_m,
    rest_days_after,
    session_load,
    taper_shares,
    ten_percent_more,
    time_on_feet_s,
    week_of_target,
    weeks_for_steps,
    within_ten_percent,
)

# Worked by hand: 10 % from the last loading week, a cutback in weeks 4, 8, 12 ...
FIRST_WEEK_AT = {
    30: {80: 15, 100: 18, 120: 21},
    40: {80: 11, 100: 14, 120: 17},
    50: {80: 7, 100: 11, 120: 14},
}
STEPS_TO = {30: (11, 13, 15), 40: (8, 10, 12), 50: (5, 8, 10)}
SERIES = {
    50: "50 55 60.5 45.375 66.55 73.205 80.5255 60.394 88.578 97.436 107.179 80.385 117.897",
    30: "30 33 36.3 27.225 39.93 43.923 48.315 36.237 53.147 58.462 64.308 48.231 70.738 77.812",
    40: "40 44 48.4 36.3 53.24 58.564 64.42 48.315 70.862 77.949 85.744 64.308 94.318 103.75",
}


@pytest.mark.parametrize("start", FIRST_WEEK_AT)
def test_ramp_reaches_the_target_in_the_week_of_the_table(start):
    for target, week in FIRST_WEEK_AT[start].items():
        assert weeks_for_steps(growth_steps(start, target)) == week


@pytest.mark.parametrize("start", STEPS_TO)
def test_growth_steps_are_those_of_the_logarithm(start):
    assert tuple(growth_steps(start, target) for target in (80, 100, 120)) == STEPS_TO[start]


@pytest.mark.parametrize("start", SERIES)
def test_ramp_series_goes_on_from_the_last_loading_week(start):
    loading, series = start / 1.1, []
    for week in range(1, len(SERIES[start].split()) + 1):
        if week % 4 == 0:
            series.append(loading * CUTBACK_SHARE)
        else:
            loading = ten_percent_more(loading)
            series.append(loading)
    assert series == pytest.approx([float(km) for km in SERIES[start].split()], abs=6e-4)


def test_sixteen_weeks_hold_eleven_loading_ones():
    # Fourteen weeks before a two-week taper, cutbacks in weeks 11, 7 and 3.
    assert loading_weeks(14) == 11
    assert 50 * 1.1 ** (loading_weeks(14) - 1) == pytest.approx(129.7, abs=0.05)


def test_twenty_kilometres_need_ten_steps_to_fifty():
    assert growth_steps(20, 50) == 10
    assert growth_steps(20, 20) == growth_steps(20, 5) == 0


@given(st.integers(5, 200), st.integers(5, 200))
def test_growth_steps_are_the_fewest(start, target):
    steps = growth_steps(start, target)
    assert start * 1.1**steps >= target * (1 - 1e-8)
    assert steps == 0 or start * 1.1 ** (steps - 1) < target


@given(st.integers(0, 40), st.sampled_from([3, 4]))
def test_weeks_for_steps_are_the_fewest(steps, every):
    weeks = weeks_for_steps(steps, every)
    assert loading_weeks(weeks, every) == steps + 1
    assert loading_weeks(weeks - 1, every) == steps


def test_ten_percent_is_exact_on_whole_metres():
    assert within_ten_percent(22_000, 20_000)
    assert not within_ten_percent(22_001, 20_000)


def test_a_run_thirty_days_before_counts_and_one_of_thirty_one_does_not():
    # The window of Frandsen et al. 2025, Br J Sports Med 59:1203-1210.
    runs = [(100, 30_000.0), (101, 20_000.0)]
    assert longest_before(runs, 130) == 30_000.0
    assert longest_before(runs, 131) == 20_000.0
    assert longest_before(runs, 101) == 30_000.0
    assert longest_before(runs, 100) == 0.0


@pytest.mark.parametrize("shares", [SHORT_TAPER_SHARES, LONG_TAPER_SHARES])
def test_taper_cuts_what_the_review_found_best(shares):
    # 41-60 %: Bosquet et al. 2007, Med Sci Sports Exerc 39:1358-1365.
    cut = mean_cut(sum(shares), 7 * len(shares), 1.0)
    assert 0.41 <= cut <= 0.60
    assert list(shares) == sorted(shares, reverse=True)


def test_three_week_taper_is_an_exponential_one():
    # The form of Banister, Carter and Zarkadas 1999, Eur J Appl Physiol 79:182-191; the time
    # constant that halves the mean over 21 days is 14.017 days (worked by hand).
    daily = [math.exp(-t / 14.017) for t in range(1, 22)]
    weekly = [sum(daily[n : n + 7]) / 7 for n in (0, 7, 14)]
    assert list(LONG_TAPER_SHARES) == pytest.approx(weekly, abs=0.005)


def test_twelve_hours_part_the_short_taper_from_the_long():
    assert len(taper_shares(11.9 * 3600)) == 2
    assert len(taper_shares(12 * 3600)) == 3


def test_a_metre_of_climb_counts_as_eight_along():
    # Scarf 2007, J Sports Sci 25:719-726: 1:8.
    assert time_on_feet_s(10_000, 500, 2.5) == 14_000 / 2.5
    assert reach_m(5_600, 0.05, 2.5) == pytest.approx(10_000)


@pytest.mark.parametrize(
    ("hours", "rest", "easy"), [(2, 1, 4), (5, 2, 7), (8, 4, 10), (20, 6, 14), (30, 7, 21)]
)
def test_days_after_a_race_grow_with_it(hours, rest, easy):
    # Common practice, no source.
    assert rest_days_after(hours * 3600) == rest
    assert easy_days_after(hours * 3600) == easy


@pytest.mark.parametrize(("tolerated", "target", "weeks"), [(40, 80, 6), (60, 90, 5), (50, 50, 2)])
def test_gut_needs_a_week_for_ten_grams_and_two_at_the_target(tolerated, target, weeks):
    # Own rule: 10 g/h more each week, the last two weeks at the race rate.
    assert gut_weeks(tolerated, target) == weeks


def test_practice_rises_by_ten_a_week_and_holds():
    rates = [practice_rate(40, 80, 12 - left, left) for left in range(12, 0, -1)]
    assert rates == [40, 40, 40, 50, 60, 70, 80, 80, 80, 80, 80, 80]


def test_practice_never_jumps_when_weeks_are_few():
    assert [practice_rate(40, 80, n, 3 - n) for n in range(4)] == [40, 50, 60, 70]


def test_practice_at_a_rate_below_what_is_tolerated_needs_no_ramp():
    assert practice_rate(60, 45, 0, 10) == 45


def test_session_load_is_effort_times_minutes():
    # The product of Foster et al. 2001, J Strength Cond Res 15:109-115; the week is our own.
    week = [(45, 4), (60, 7), (50, 3), (210, 4), (90, 3)]
    assert sum(session_load(effort, 60 * minutes) for minutes, effort in week) == 1860


# The first week at 80, 100 or 120 from 30, 40 or 50 km by three ways of counting on after a
# cutback every fourth week: own computation, exact; None: never.
ON_TABLE = {30: (15, 18, 21), 40: (11, 14, 17), 50: (7, 11, 14)}
BACK_TABLE = {30: (22, 26, 30), 40: (15, 19, 23), 50: (10, 15, 19)}
FROM_CUTBACK_TABLE = {
    0.90: {30: (22, 27, 31), 40: (15, 22, 26), 50: (11, 15, 19)},
    0.85: {30: (31, 38, 43), 40: (22, 27, 35), 50: (15, 22, 27)},
    0.80: {30: (55, 71, 83), 40: (39, 51, 63), 50: (23, 39, 47)},
    0.76: {30: (279, 359, 423), 40: (179, 259, 319), 50: (103, 179, 243)},
    0.75: {30: (None,) * 3, 40: (None,) * 3, 50: (None,) * 3},
}
CASES = [
    *((Growth.ON, share, ON_TABLE) for share in (0.6, 0.75, 0.8)),
    *((Growth.BACK, share, BACK_TABLE) for share in (0.6, 0.75, 0.8)),
    *((Growth.FROM_CUTBACK, share, table) for share, table in FROM_CUTBACK_TABLE.items()),
]


@pytest.mark.parametrize(("growth", "share", "table"), CASES)
def test_three_ways_of_counting_on_after_a_cutback(growth, share, table):
    for start, weeks in table.items():
        found = [week_of_target(start, km, growth, cutback=share) for km in (80, 100, 120)]
        assert tuple(found) == weeks


@pytest.mark.parametrize(("growth", "table"), [(Growth.ON, ON_TABLE), (Growth.BACK, BACK_TABLE)])
def test_weeks_for_steps_agree_with_the_tables(growth, table):
    for start, weeks in table.items():
        steps = [growth_steps(start, km) for km in (80, 100, 120)]
        assert tuple(weeks_for_steps(n, 4, growth) for n in steps) == weeks


def test_a_five_percent_ramp_takes_twice_as_long():
    # Own computation: 30 to 80 takes 21 steps of 5 %, in week 29 with a cutback every fourth.
    assert math.ceil(math.log(80 / 30) / math.log(1.05)) == 21
    assert weeks_for_steps(21) == 29


@given(st.integers(0, 30), st.sampled_from([3, 4]), st.sampled_from([Growth.ON, Growth.BACK]))
def test_growing_on_never_takes_longer_than_coming_back_first(steps, every, growth):
    assert weeks_for_steps(steps, every) <= weeks_for_steps(steps, every, growth)


def test_fewer_runs_a_week_leave_more_to_the_long_one():
    # Own thresholds; 35 to 50 % is usual with three to five runs a week (from memory).
    assert [long_share(n) for n in (2, 3, 4, 5, 6, 7)] == [0.55, 0.55, 0.50, 0.45, 0.40, 0.40]


def test_likeness_of_distributions():
    # Own worked example; equal ones are 1, disjoint ones 0.
    assert likeness((0.1, 0.3, 0.5, 0.1), (0.5, 0.3, 0.2, 0.0)) == pytest.approx(0.6)
    assert likeness((1, 2), (10, 20)) == pytest.approx(1.0)
    assert likeness((1, 0), (0, 1)) == likeness((0, 0), (1, 1)) == 0.0
