import math
from datetime import UTC, datetime
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from ultraplanner_gui.engine.pacing import Stop, pace_for_finish
from ultraplanner_gui.engine.sections import (
    arrival_window,
    section_figures,
    shaped_target,
    tightest,
)
from ultraplanner_gui.plan.course import AidStation, Section
from ultraplanner_gui.plan.message import PlanError, Quantity
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner

HOUR_S = 3600.0
EVEN = Runner(fade=0.0, night_loss=0.0)
START = datetime(2026, 8, 28, 6, tzinfo=UTC)

LAKE = AidStation("lake", "Lake", 20_003.0, cutoff_s=5 * HOUR_S, stop_s=300.0)
PASS = AidStation("pass", "Pass", 41_007.0, stop_s=600.0)
MILL = AidStation("mill", "Mill", 70_011.0, cutoff_s=14 * HOUR_S)
STATIONS = (LAKE, PASS, MILL)


def sections(**targets):
    return tuple(
        Section(key, None if key == "finish" else key, target_s=targets.get(key))
        for key in ("lake", "pass", "mill", "finish")
    )


@pytest.fixture(scope="module")
def profile(profile_of):
    slope = np.where(np.arange(4001) // 200 % 2 == 0, 0.06, -0.06)
    return profile_of(np.arange(4001) * 25.0, slope)


@pytest.fixture(scope="module")
def plans(profile):
    stops = tuple(Stop(s.at_m, s.stop_s) for s in STATIONS if s.stop_s)
    return tuple(
        pace_for_finish(profile, 18 * HOUR_S, None, stops, shape)
        for shape in ("forecast", "target")
    )


@pytest.fixture
def figures_of(profile, plans, course_of):
    def figures(course=None, limit_s=20 * HOUR_S, target=None):
        race = Race("Test race", START, 18 * HOUR_S, limit_s)
        course = course or course_of(100_000.0, STATIONS)
        return section_figures(course, race, profile, plans[0], target or plans[1])

    return figures


def test_halfway_of_50_km_in_three_hours_leaves_five_kilometres_an_hour(profile_of, course_of):
    # Common practice, no source: under an 8 h cutoff halfway of 50 km in 3 h leaves 5 h for 25 km.
    level = profile_of(np.arange(5001) * 10.0)
    halfway = AidStation("half", "Halfway", 25_000.0)
    course = course_of(
        50_000.0, (halfway,), (Section("half", "half", target_s=3 * HOUR_S), Section("finish"))
    )
    even = pace_for_finish(level, 8 * HOUR_S, EVEN)
    target = shaped_target(course, even, 8 * HOUR_S)
    race = Race("Test race", START, 8 * HOUR_S, limit_s=8 * HOUR_S)
    first, second = section_figures(course, race, level, target, target)
    assert first.arrive_s == pytest.approx(3 * HOUR_S)
    assert second.moving_s == pytest.approx(5 * HOUR_S)
    assert 3.6 / second.pace_s_per_m == pytest.approx(5.0)
    assert second.to_cutoff_s == pytest.approx(0.0, abs=1e-6)


def test_sections_and_stops_add_up_to_the_finish(figures_of):
    figures = figures_of()
    assert [f.name for f in figures] == ["Lake", "Pass", "Mill", ""]
    assert sum(f.moving_s for f in figures) + 900.0 == pytest.approx(18 * HOUR_S)
    assert sum(f.length_m for f in figures) == pytest.approx(100_000.0)
    before = 0.0
    for f in figures:
        assert f.arrive_s == pytest.approx(before + f.moving_s)
        before = f.leave_s
    assert [f.leave_s - f.arrive_s for f in figures] == pytest.approx([300.0, 600.0, 0.0, 0.0])


def test_climb_and_drop_of_the_sections_add_up_to_the_course(figures_of, profile):
    figures = figures_of()
    assert sum(f.climb_m for f in figures) == pytest.approx(profile.ascent_m)
    assert sum(f.drop_m for f in figures) == pytest.approx(profile.descent_m)


def test_a_stop_inside_a_section_is_not_running_time(figures_of, course_of):
    course = course_of(
        100_000.0, STATIONS, (Section("lake", "lake"), Section("mill", "mill"), Section("finish"))
    )
    lake, mill, _ = figures_of(course)
    assert mill.moving_s + 600.0 == pytest.approx(mill.arrive_s - lake.leave_s)


def test_the_later_of_target_and_forecast_is_held_against_a_cutoff(figures_of, plans):
    lake, _, mill, finish = figures_of()
    forecast, target = plans
    for f in (lake, mill):
        later = max(forecast.arrival_s(f.end_m), target.arrival_s(f.end_m))
        assert f.to_cutoff_s == pytest.approx(f.cutoff_s - later)
        assert f.forecast_s < f.arrive_s == later
    assert finish.to_cutoff_s == pytest.approx(2 * HOUR_S)


def test_a_forecast_behind_the_target_speaks(figures_of, plans, course_of):
    # Running to the lake faster than the forecast expects is no reason to trust its cutoff more.
    quick = shaped_target(
        course_of(100_000.0, STATIONS, sections(lake=2.5 * HOUR_S)), plans[1], 18 * HOUR_S
    )
    lake = figures_of(target=quick)[0]
    assert lake.arrive_s < lake.forecast_s
    assert lake.to_cutoff_s == pytest.approx(5 * HOUR_S - lake.forecast_s)


def test_time_in_hand_is_the_least_over_this_and_later_cutoffs(figures_of):
    figures = figures_of()
    lake, on_pass, mill, finish = figures
    margins = [lake.to_cutoff_s, mill.to_cutoff_s, finish.to_cutoff_s]
    assert lake.in_hand_s == pytest.approx(min(margins))
    assert on_pass.cutoff_s is None
    assert on_pass.to_cutoff_s is None
    assert on_pass.in_hand_s == pytest.approx(min(margins[1:]))
    assert finish.in_hand_s == finish.to_cutoff_s
    assert all(a.in_hand_s <= b.in_hand_s for a, b in pairwise(figures))


def test_arriving_later_by_the_time_in_hand_just_makes_every_cutoff(figures_of):
    for k, f in enumerate(figures := figures_of()):
        left = [g.to_cutoff_s - f.in_hand_s for g in figures[k:] if g.to_cutoff_s is not None]
        assert min(left) == pytest.approx(0.0, abs=1e-6)


def test_a_cutoff_where_no_section_ends_counts_in_the_time_in_hand(figures_of, course_of):
    stations = (AidStation("gate", "Gate", 10_000.0, cutoff_s=1.0), *STATIONS)
    lake_first = figures_of(course_of(100_000.0, STATIONS))[0]
    whole = course_of(100_000.0, stations, sections())
    assert figures_of(whole)[0].in_hand_s == lake_first.in_hand_s
    joined = course_of(100_000.0, STATIONS, (Section("pass", "pass"), Section("finish")))
    assert figures_of(joined, limit_s=None)[0].in_hand_s == pytest.approx(
        figures_of(limit_s=None)[2].to_cutoff_s
    )


def test_without_cutoffs_there_is_no_time_in_hand(figures_of, course_of):
    course = course_of(100_000.0, (AidStation("hut", "Hut", 50_000.0),))
    figures = figures_of(course, limit_s=None)
    assert all(f.in_hand_s is None and f.to_cutoff_s is None for f in figures)
    assert tightest(figures) is None


def test_the_tightest_cutoff_is_the_one_that_leaves_least(figures_of):
    figures = figures_of()
    margins = {f.key: f.to_cutoff_s for f in figures if f.to_cutoff_s is not None}
    assert tightest(figures).key == min(margins, key=margins.get)
    assert tightest(figures_of(limit_s=18.1 * HOUR_S)).name == ""


@pytest.mark.parametrize(
    ("share", "half_percent"), [(0.10, 1.5), (0.25, 2.6), (0.50, 3.2), (0.75, 2.6), (0.90, 1.5)]
)
def test_windows_of_a_sure_finish_are_those_measured(share, half_percent):
    # Own measurement, in percent of the finish time, printed with one decimal.
    low, high = arrival_window(share * 10 * HOUR_S, 10 * HOUR_S, spread=0.0)
    assert (high - low) / 2 / (10 * HOUR_S) * 100 == pytest.approx(half_percent, abs=0.06)
    assert (high + low) / 2 == pytest.approx(share * 10 * HOUR_S)


def test_an_unsure_finish_widens_windows_towards_the_end(figures_of):
    # 1.28 standard deviations on either side hold 80 % of a normal distribution.
    finish = figures_of()[-1]
    half_s = (finish.window_s[1] - finish.window_s[0]) / 2
    assert half_s == pytest.approx(1.28 * 0.04 * 18 * HOUR_S)
    low, high = arrival_window(5 * HOUR_S, 10 * HOUR_S)
    assert (high - low) / 2 == pytest.approx(math.hypot(0.03182, 0.0256) * 10 * HOUR_S, rel=1e-3)


@given(st.floats(0.0, 1.0))
def test_windows_hold_the_arrival_and_start_at_the_gun(share):
    low, high = arrival_window(share * 86_400.0, 86_400.0)
    assert 0.0 <= low <= share * 86_400.0 <= high


def test_a_fixed_section_takes_exactly_its_time_and_the_finish_stays(figures_of, plans, course_of):
    course = course_of(100_000.0, STATIONS, sections(**{"pass": 4 * HOUR_S}))
    before = figures_of()
    after = figures_of(course, target=shaped_target(course, plans[1], 18 * HOUR_S))
    assert [f.is_fixed for f in after] == [False, True, False, False]
    assert after[1].moving_s == pytest.approx(4 * HOUR_S, abs=1e-6)
    assert after[-1].arrive_s == 18 * HOUR_S
    factors = [a.moving_s / b.moving_s for a, b in zip(after, before, strict=True)]
    assert factors[0] == pytest.approx(factors[2])
    assert factors[0] == pytest.approx(factors[3])


@given(st.lists(st.none() | st.floats(0.8, 1.25), min_size=4, max_size=4))
def test_any_mix_of_fixed_sections_is_kept(profile, plans, course_of, wishes):
    assume(any(wish is None for wish in wishes))
    ends = (0.0, LAKE.at_m, PASS.at_m, MILL.at_m, 100_000.0)
    target = plans[1]
    usual = [target.arrival_s(b) - target.departure_s(a) for a, b in pairwise(ends)]
    wanted = {
        key: None if wish is None else wish * usual_s
        for key, wish, usual_s in zip(
            ("lake", "pass", "mill", "finish"), wishes, usual, strict=True
        )
    }
    course = course_of(100_000.0, STATIONS, sections(**wanted))
    try:
        shaped = shaped_target(course, target, 18 * HOUR_S)
    except PlanError:
        fixed = sum(s for s in wanted.values() if s is not None)
        free = sum(u for u, s in zip(usual, wanted.values(), strict=True) if s is None)
        assert not 0.5 <= (18 * HOUR_S - 900.0 - fixed) / free <= 2.0
        return
    assert shaped.finish_s == 18 * HOUR_S
    assert np.all(np.diff(shaped.elapsed_s) > 0)
    for wish_s, (a, b) in zip(wanted.values(), pairwise(ends), strict=True):
        if wish_s is not None:
            assert shaped.arrival_s(b) - shaped.departure_s(a) == pytest.approx(wish_s, abs=1e-6)


def test_when_all_sections_are_fixed_the_finish_moves(plans, course_of):
    times = {"lake": 3.0, "pass": 4.0, "mill": 5.0, "finish": 5.5}
    course = course_of(
        100_000.0, STATIONS, sections(**{key: h * HOUR_S for key, h in times.items()})
    )
    shaped = shaped_target(course, plans[1], 18 * HOUR_S)
    assert shaped.finish_s == pytest.approx(17.5 * HOUR_S + 900.0)


def test_without_fixed_sections_the_target_is_left_alone(plans, course_of):
    assert shaped_target(course_of(100_000.0, STATIONS), plans[1], 18 * HOUR_S) is plans[1]


def test_a_target_that_leaves_too_little_is_refused_by_name(plans, course_of):
    course = course_of(100_000.0, STATIONS, sections(mill=17 * HOUR_S))
    with pytest.raises(PlanError, match=r"to Mill .*less than half") as refusal:
        shaped_target(course, plans[1], 18 * HOUR_S)
    assert Quantity(17 * HOUR_S, "s") in refusal.value.message.args
    assert len(str(refusal.value)) <= 200


def test_targets_that_leave_too_much_are_refused_by_name(plans, course_of):
    quick = {"lake": 1.5 * HOUR_S, "pass": 2 * HOUR_S, "mill": 2 * HOUR_S}
    course = course_of(100_000.0, STATIONS, sections(**quick))
    with pytest.raises(PlanError, match=r"to Mill .*more than twice"):
        shaped_target(course, plans[1], 18 * HOUR_S)


def test_a_refused_last_section_is_named_by_its_distance(plans, course_of):
    course = course_of(100_000.0, STATIONS, sections(finish=17 * HOUR_S))
    with pytest.raises(PlanError) as refusal:
        shaped_target(course, plans[1], 18 * HOUR_S)
    assert refusal.value.message.args[0] == Quantity(100_000.0, "m")
