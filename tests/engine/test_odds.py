import importlib.util
import math
import sys
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.engine.odds import Chance, Passed, Scatter, odds
from ultraplanner_gui.engine.pacing import Stop, pace_for_finish
from ultraplanner_gui.engine.sections import arrival_window

HOUR_S = 3600.0
ROOT = Path(__file__).resolve().parents[2]
DATA = ROOT.parent / "shared" / "data"
PLACES = [10_000.0, 25_000.0, 50_000.0, 75_000.0, 90_000.0, 100_000.0]
STOPS = (Stop(25_000.0, 600.0), Stop(50_000.0, 1200.0))
# The tail of a normal distribution that 10 and 90 % leave: 1.2816 deviations.
NORMAL_90 = 1.2816


@pytest.fixture(scope="module")
def profile(profile_of):
    slope = np.where(np.arange(2001) // 100 % 2 == 0, 0.06, -0.06)
    return profile_of(np.arange(2001) * 50.0, slope)


@pytest.fixture(scope="module")
def plan(profile):
    return pace_for_finish(profile, 15 * HOUR_S)


@pytest.fixture(scope="module")
def stopped(profile):
    return pace_for_finish(profile, 15 * HOUR_S, None, STOPS)


def test_the_same_races_are_run_every_time(plan):
    assert odds(plan, PLACES) == odds(plan, PLACES)


@given(st.integers(1, 200))
def test_the_ends_of_a_window_lie_about_its_middle(plan, races):
    drawn = odds(plan, PLACES, races=races)
    for (low, high), middle in zip(drawn.windows_s, drawn.middle_s, strict=True):
        assert low <= middle <= high


def test_half_of_the_races_are_before_the_forecast(plan):
    drawn = odds(plan, PLACES)
    forecast = plan.arrivals_s(PLACES)
    assert drawn.middle_s == pytest.approx(forecast, rel=0.005)
    for (low, high), arrival_s in zip(drawn.windows_s, forecast, strict=True):
        assert low < arrival_s < high


def test_the_finish_scatters_as_the_ability_of_the_day(plan):
    low, high = odds(plan, PLACES, scatter=Scatter(ability=0.06)).windows_s[-1]
    assert math.log(high / low) / 2.0 == pytest.approx(NORMAL_90 * 0.06, rel=0.03)


def test_with_a_sure_finish_windows_are_those_of_real_runs(plan):
    # Own measurement (OWN): half-width 0.09 T (s (1 - s)) ** 0.75 when the finish is met.
    drawn = odds(plan, PLACES, scatter=Scatter(ability=0.0))
    for (low, high), arrival_s in zip(drawn.windows_s[:-1], plan.arrivals_s(PLACES), strict=False):
        wanted_low, wanted_high = arrival_window(arrival_s, plan.finish_s, spread=0.0)
        assert high - low == pytest.approx(wanted_high - wanted_low, rel=0.25)
    # Ups and downs even out in the logarithm of time, so their sum is a little longer.
    assert drawn.windows_s[-1] == pytest.approx((plan.finish_s, plan.finish_s), rel=0.006)


def test_windows_do_not_depend_on_where_sections_are_cut(plan):
    few = odds(plan, PLACES)
    many = odds(plan, [*np.linspace(2_500.0, 97_500.0, 39).tolist(), 100_000.0])
    for at_m, (low, high) in zip(few.places_m, few.windows_s, strict=True):
        other = many.window_at(at_m)
        assert other is not None
        assert high - low == pytest.approx(other[1] - other[0], rel=0.08)


def test_chances_fall_from_cutoff_to_cutoff_and_rise_with_its_time(plan):
    cutoffs = [(50_000.0, 7 * HOUR_S), (75_000.0, 11 * HOUR_S), (100_000.0, 15.2 * HOUR_S)]
    shares = [chance.share for chance in odds(plan, PLACES, cutoffs).chances]
    assert shares == sorted(shares, reverse=True)
    later = [(at_m, by_s + 1800.0) for at_m, by_s in cutoffs]
    more = [chance.share for chance in odds(plan, PLACES, later).chances]
    assert all(a >= b for a, b in zip(more, shares, strict=True))


def test_a_cutoff_at_the_forecast_is_made_on_half_of_the_days(plan):
    (chance,) = odds(plan, [], [(100_000.0, plan.finish_s)]).chances
    assert chance.share == pytest.approx(0.5, abs=0.02)
    assert str(chance.sentence) == "about 10 of 20 days"


def test_the_chance_of_a_finish_is_that_of_the_normal_distribution(plan):
    # One deviation to spare: 84.1 %, 17 of 20.
    limit_s = plan.finish_s * math.exp(0.04)
    (chance,) = odds(plan, [], [(100_000.0, limit_s)], scatter=Scatter(ability=0.04)).chances
    assert chance.share == pytest.approx(0.841, abs=0.015)
    assert chance.twentieths == 17


@given(st.floats(0.0, 1.0))
def test_chances_are_said_in_twentieths_never_none_or_all(share):
    chance = Chance(1.0, 1.0, share)
    assert 1 <= chance.twentieths <= 19
    if 0.05 <= share <= 0.95:
        assert abs(chance.twentieths / 20 - share) <= 0.025 + 1e-9
    assert "20" in str(chance.sentence)


def test_stops_may_take_longer_and_come_before_what_is_beyond_them(plan, stopped):
    sure = Scatter(ability=0.0, swing=0.0, jitter=1e-6, fade=0.0, stop=0.0)
    drawn = odds(stopped, PLACES, scatter=sure)
    assert [low for low, _ in drawn.windows_s] == pytest.approx(stopped.arrivals_s(PLACES), abs=2.0)
    loose = odds(stopped, PLACES, scatter=Scatter(0.0, 0.0, 0.0, 0.2, 1e-6, stop=0.35))
    assert loose.windows_s[1][1] - loose.windows_s[1][0] < 2.0
    # exp(0.35 z) of 600 s between the 10th and the 90th percentile.
    wide = 600.0 * 2.0 * math.sinh(0.35 * NORMAL_90)
    assert loose.windows_s[2][1] - loose.windows_s[2][0] == pytest.approx(wide, rel=0.05)


def test_what_has_been_passed_is_known_and_later_windows_are_narrower(stopped):
    at_m = 50_000.0
    before = odds(stopped, PLACES)
    on_plan = odds(stopped, PLACES, passed=Passed(at_m, stopped.arrival_s(at_m)))
    assert on_plan.places_m == (75_000.0, 90_000.0, 100_000.0)
    for place_m, (low, high) in zip(on_plan.places_m, on_plan.windows_s, strict=True):
        was = before.window_at(place_m)
        assert was is not None
        assert high - low < was[1] - was[0]
        assert low < stopped.arrival_s(place_m) < high


def test_who_is_late_halfway_is_expected_late_at_the_finish(stopped):
    at_m = 50_000.0
    late_s = stopped.arrival_s(at_m) + 1800.0
    late = odds(stopped, PLACES, passed=Passed(at_m, late_s))
    # Part of it is a slow start that is made up, for the finish was known to 4 % beforehand.
    assert stopped.finish_s + 1200.0 < late.middle_s[-1] < stopped.finish_s + 3000.0
    unsure = odds(stopped, PLACES, scatter=Scatter(ability=0.2), passed=Passed(at_m, late_s))
    assert unsure.middle_s[-1] > stopped.finish_s + 3000.0
    early = odds(stopped, PLACES, passed=Passed(at_m, late_s - 3600.0))
    assert early.middle_s[-1] < stopped.finish_s - 1200.0


def test_only_the_races_inside_the_limit_count_when_asked(plan):
    limit_s = plan.finish_s * 0.97
    drawn = odds(plan, PLACES, [(100_000.0, limit_s)], made_all=True)
    assert drawn.windows_s[-1][1] <= limit_s * (1.0 + 1e-6)
    assert drawn.middle_s[-1] < odds(plan, PLACES).middle_s[-1]
    hopeless = odds(plan, PLACES, [(100_000.0, 0.5 * plan.finish_s)], made_all=True)
    assert hopeless.windows_s[-1][1] <= 0.5 * plan.finish_s * (1.0 + 1e-6)


def test_nothing_is_left_to_draw_at_the_finish(plan):
    assert odds(plan, PLACES, passed=Passed(100_000.0, 15 * HOUR_S)).places_m == ()


def test_fewer_races_while_dragging_tell_much_the_same(plan):
    cutoffs = [(100_000.0, 15.5 * HOUR_S)]
    many, few = (odds(plan, PLACES, cutoffs, races=races) for races in (10_000, 2_000))
    assert few.chances[0].share == pytest.approx(many.chances[0].share, abs=0.03)
    assert few.windows_s[-1] == pytest.approx(many.windows_s[-1], rel=0.01)


@pytest.mark.skipif(not DATA.is_dir(), reason="real splits are not at hand")
def test_windows_from_the_first_check_hold_four_in_five_real_arrivals_and_are_sharp():
    spec = importlib.util.spec_from_file_location(
        "bench_pace_windows", ROOT / "packaging" / "bench_pace.py"
    )
    bench = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = bench
    spec.loader.exec_module(bench)
    race = list(bench.race_runs(DATA / "splits", bench.RACE_START, bench.RACE_PLACE_DEG, every=4))
    rows = [line.split() for line in bench.windows(race, bench.RACE_LIMIT_H * HOUR_S)][1:]
    held = [float(row[-3]) for row in rows]
    assert all(70.0 <= share <= 92.0 for share in held)
    assert 75.0 <= held[-1] <= 90.0
    assert float(rows[-1][-2]) < float(rows[-1][-1])
