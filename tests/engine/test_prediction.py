import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.engine.pacing import Stop, flat_length_m, pace_for_finish
from ultraplanner_gui.engine.prediction import (
    Result,
    flat_equivalent_m,
    plan_from_passing,
    predict,
    result_of,
)
from ultraplanner_gui.plan.course import Line
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.recording import Recording

HOUR_S = 3600.0
MARATHON = Result(42_195.0, 0.0, 3.5 * HOUR_S, name="A marathon")


@pytest.fixture(scope="module")
def level(profile_of):
    def of(km):
        return profile_of(np.linspace(0.0, km * 1000.0, 501))

    return of


def test_ten_kilometres_carried_to_the_marathon_by_the_published_rule(level):
    # Riegel 1981, American Scientist 69:285: 44:00 for 10 km, exponent 1.06: 12,144.53 s. The
    # band here is 1.06 to 1.08; its middle, 1.07, gives 1.0145 times as long.
    got = predict(level(42.195), [Result(10_000.0, 0.0, 2640.0)])
    assert got.middle_s == pytest.approx(2640.0 * 4.2195**1.07, rel=1e-3)
    assert 2640.0 * 4.2195**1.06 < got.middle_s < 2640.0 * 4.2195**1.08


def test_a_marathon_carried_to_100_km_lies_between_the_exponents(level):
    # 3:30:00 over the marathon: 8:44:08 at 1.06 and 9:26:28 at 1.15 all the way.
    got = predict(level(100.0), [MARATHON])
    assert 31_448.0 < got.middle_s < 33_988.0
    assert got.exponents == (1.12, 1.18)
    assert got.low_s < got.middle_s < got.high_s


def test_the_same_distance_again_takes_the_same_time(level):
    got = predict(level(42.195), [MARATHON])
    assert got.middle_s == pytest.approx(3.5 * HOUR_S)
    # OWN: one race lies 5 % off what one can do, and so does the next.
    assert got.spread == pytest.approx(0.05 * math.sqrt(2.0), rel=0.01)


@given(st.floats(30.0, 200.0), st.floats(1.02, 1.5))
def test_further_takes_longer_and_is_less_sure(level, km, ratio):
    near, far = (predict(level(k), [MARATHON]) for k in (km, km * ratio))
    assert far.middle_s > near.middle_s * ratio
    if km > 42.195:
        assert far.spread > near.spread


def test_climb_counts_on_both_sides(profile_of):
    slope = np.where(np.arange(501) // 20 % 2 == 0, 0.10, -0.10)
    hilly = profile_of(np.arange(501) * 100.0, slope)
    typed = Result(50_000.0, 2500.0, 6 * HOUR_S)
    assert flat_equivalent_m(50_000.0, 2500.0) == pytest.approx(flat_length_m(hilly), rel=0.06)
    assert predict(hilly, [typed]).middle_s == pytest.approx(6 * HOUR_S, rel=0.06)
    assert predict(hilly, [Result(50_000.0, 0.0, 6 * HOUR_S)]).middle_s > 7 * HOUR_S


@given(st.floats(5e3, 2e5), st.floats(0.0, 5000.0))
def test_climb_never_makes_a_run_shorter(distance_m, climb_m):
    if climb_m < 0.15 * distance_m:
        assert flat_equivalent_m(distance_m, climb_m) >= 0.95 * distance_m


def test_more_results_that_agree_narrow_the_window(level):
    other = Result(50_000.0, 0.0, predict(level(50.0), [MARATHON]).middle_s)
    one, two = predict(level(100.0), [MARATHON]), predict(level(100.0), [MARATHON, other])
    assert two.spread < one.spread
    assert two.middle_s == pytest.approx(one.middle_s, rel=0.01)


def test_results_that_disagree_widen_it_and_are_named(level):
    slow = Result(42_195.0, 0.0, 5 * HOUR_S)
    got = predict(level(50.0), [MARATHON, slow])
    assert got.spread > predict(level(50.0), [MARATHON, MARATHON]).spread * 1.5
    assert any("apart" in reason.template for reason in got.reasons)


def test_who_slows_down_more_than_most_is_expected_to_go_on_so(level):
    fast_short = Result(21_098.0, 0.0, 1.4 * HOUR_S)
    slow_long = Result(60_000.0, 0.0, 1.25 * predict(level(60.0), [fast_short]).middle_s)
    got = predict(level(120.0), [fast_short, slow_long])
    assert got.middle_s > predict(level(120.0), [fast_short]).middle_s
    assert any("more than most" in reason.template for reason in got.reasons)


def test_a_long_run_stands_for_a_faster_race(level):
    # OWN: taken as a tenth slower than a race of its length.
    train = Result(42_195.0, 0.0, 4 * HOUR_S, kind="long run")
    got = predict(level(42.195), [train])
    assert got.middle_s == pytest.approx(3.6 * HOUR_S)
    assert got.spread > predict(level(42.195), [MARATHON]).spread
    assert any("long run" in reason.template for reason in got.reasons)


def test_planned_stops_are_added_and_said(level):
    got = predict(level(42.195), [MARATHON], (Stop(20_000.0, 600.0),))
    assert got.middle_s == pytest.approx(3.5 * HOUR_S + 600.0)
    assert any("stops" in reason.template for reason in got.reasons)


def test_every_result_is_explained_in_a_sentence(level):
    got = predict(level(160.0), [MARATHON])
    assert got.reasons[0].args[0] == "A marathon"
    assert all(len(str(reason)) <= 200 for reason in got.reasons)
    assert any("half as far" in reason.template for reason in got.reasons)


@pytest.mark.parametrize(
    "results",
    [
        [],
        [Result(10_000.0, 0.0, 600.0)],
        [Result(0.0, 0.0, 3600.0)],
        [Result(10_000.0, -5.0, 3600.0)],
        [Result(10_000.0, 0.0, math.nan)],
        [Result(5_000.0, 0.0, 1500.0)],
    ],
)
def test_what_says_nothing_is_refused_with_a_sentence(level, results):
    with pytest.raises(PlanError) as refusal:
        predict(level(100.0), results)
    assert len(str(refusal.value)) <= 200


def test_a_recorded_race_counts_by_its_own_profile():
    place = np.arange(3001) * 10.0
    line = Line(46.0 + place / 111_149.0, np.full(3001, 7.0), 500.0 + 60.0 * np.sin(place / 600.0))
    got = result_of(Recording(line, place / 2.5, name="Hills"))
    assert got.time_s == pytest.approx(12_000.0, rel=1e-3)
    assert got.flat_m > 1.05 * got.distance_m
    assert got.flat_equivalent_m == got.flat_m


@given(st.floats(0.05, 0.95), st.floats(8.0, 40.0))
def test_a_passing_names_the_finish_of_those_who_pass_then(level, share, hours):
    profile = level(100.0)
    stops = (Stop(20_000.0, 600.0), Stop(60_000.0, 900.0))
    plan = pace_for_finish(profile, hours * HOUR_S, None, stops)
    at_m = share * 100_000.0
    back = plan_from_passing(profile, at_m, plan.arrival_s(at_m), None, stops)
    assert back.finish_s == pytest.approx(plan.finish_s, rel=1e-3)
    assert back.arrival_s(at_m) == pytest.approx(plan.arrival_s(at_m), abs=2.0)


def test_a_passing_that_cannot_be_is_refused(level):
    for at_m, elapsed_s in ((0.0, 100.0), (2e5, 100.0), (30_000.0, 500.0)):
        with pytest.raises(PlanError):
            plan_from_passing(level(100.0), at_m, elapsed_s, None, (Stop(10_000.0, 600.0),))
