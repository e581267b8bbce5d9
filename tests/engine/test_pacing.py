import importlib.util
import sys
from datetime import UTC, datetime, timedelta
from pathlib import Path

import numpy as np
import pytest
from astral import Observer
from astral.sun import dawn, dusk
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from ultraplanner_gui.engine.pacing import Stop, pace_for_finish
from ultraplanner_gui.plan.message import PlanError, Quantity
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.science.gradient_cost import pace_cost, running_cost

HOUR_S = 3600.0
EVEN = Runner(fade=0.0, night_loss=0.0)
ROOT = Path(__file__).resolve().parents[2]
DATA = ROOT.parent / "shared" / "data"
SHAPES = ("forecast", "target", "even")


@pytest.fixture(scope="module")
def hilly(profile_of):
    rng = np.random.default_rng(7)
    return profile_of(
        np.arange(4001) * 25.0,
        np.clip(np.repeat(rng.normal(0.0, 0.12, 41), 100)[:4001], -0.4, 0.4),
        np.repeat(rng.choice([1.0, 1.05, 1.15], 41), 100)[:4001],
    )


@st.composite
def courses(draw):
    pieces = draw(st.integers(2, 60))
    gradient = draw(st.lists(st.floats(-0.6, 0.6), min_size=pieces, max_size=pieces))
    stops = draw(
        st.lists(
            st.builds(Stop, st.floats(0.0, 50.0 * (pieces - 1)), st.floats(0.0, 3600.0)), max_size=5
        )
    )
    start = draw(st.none() | st.datetimes(datetime(2026, 1, 1), datetime(2027, 1, 1)))
    start = start.replace(tzinfo=UTC) if start else None
    return 50.0 * np.arange(pieces), gradient, stops, start, draw(st.sampled_from(SHAPES))


@given(courses(), st.floats(6.0, 60.0))
def test_plans_rise_and_meet_the_finish_exactly(profile_of, course, hours):
    places, gradient, stops, start, shape = course
    plan = pace_for_finish(profile_of(places, gradient), hours * HOUR_S, None, stops, shape, start)
    assert plan.elapsed_s[0] == 0.0
    assert plan.finish_s == pytest.approx(hours * HOUR_S, abs=1e-6)
    assert np.all(np.diff(plan.elapsed_s) > 0)
    assert np.all(np.diff(plan.moving_s) > 0)


@given(courses(), st.floats(0.0, 1.0))
def test_place_and_time_are_inverse(profile_of, course, share):
    places, gradient, stops, start, shape = course
    plan = pace_for_finish(profile_of(places, gradient), 20 * HOUR_S, None, stops, shape, start)
    at_m = share * places[-1]
    assert plan.distance_at(plan.arrival_s(at_m)) == pytest.approx(at_m, abs=1e-6)
    assert plan.distance_at(plan.departure_s(at_m)) == pytest.approx(at_m, abs=1e-6)


def test_level_course_by_even_effort_is_run_at_one_pace(profile_of):
    level = profile_of(np.arange(5001) * 10.0)
    plan = pace_for_finish(level, 6 * HOUR_S, EVEN)
    assert [plan.arrival_s(m) for m in (10e3, 20e3, 30e3, 40e3, 50e3)] == pytest.approx(
        [4320.0 * n for n in range(1, 6)], abs=1e-6
    )


def test_stops_are_taken_out_of_the_running_time(profile_of):
    # Two stops of 300 s leave 21,000 s of six hours for 5 x 10 km: 4,200 s each.
    level = profile_of(np.arange(5001) * 10.0)
    plan = pace_for_finish(level, 6 * HOUR_S, EVEN, (Stop(20e3, 300.0), Stop(40e3, 300.0)))
    assert plan.arrival_s(20e3) == pytest.approx(8400.0, abs=1e-6)
    assert plan.departure_s(20e3) == pytest.approx(8700.0, abs=1e-6)
    assert plan.arrival_s(40e3) == pytest.approx(17_100.0, abs=1e-6)
    assert plan.arrival_s(50e3) == pytest.approx(21_600.0, abs=1e-6)


def test_climbs_share_time_as_constant_power_on_running_cost(profile_of):
    # Minetti et al. 2002: 10 km at +10 % cost 5.9682 / 3.6 of 10 km level.
    climb = profile_of([0.0, 10e3, 20e3], [0.0, 0.10, 0.10])
    plan = pace_for_finish(climb, 3 * HOUR_S, replace(EVEN, uphill_share=1.0))
    level_s = plan.elapsed_s[1]
    assert (plan.finish_s - level_s) / level_s == pytest.approx(5.9682 / 3.6, abs=1e-4)


def test_climbs_on_rough_ground_share_time_as_constant_power(profile_of):
    # Three climbs of 1, 15 and 20 % on ground of cost 1.00, 1.05 and 1.10 at constant power on
    # running cost (polynomial, per metre along the slope): 3414.22, 5306.95 and 5673.98 s for
    # 8, 6 and 5 km of map distance.
    along = np.hypot([8000.0, 6000.0, 5000.0], [80.0, 900.0, 1000.0])
    expected = np.array([3414.22, 5306.95, 5673.98])
    profile = profile_of(
        np.concatenate(([0.0], np.cumsum(along))), [0.01, 0.15, 0.20, 0.2], [1.0, 1.05, 1.1, 1.1]
    )
    plan = pace_for_finish(profile, expected.sum(), replace(EVEN, uphill_share=1.0))
    assert np.diff(plan.elapsed_s) == pytest.approx(expected, abs=0.02)


def test_fade_on_the_level_has_a_closed_form(profile_of):
    # Power (1 + h / o) ** -b on level ground: the share of the distance covered after h hours is
    # ((1 + h / o) ** (1 - b) - 1) / ((1 + H / o) ** (1 - b) - 1).
    level = profile_of(np.arange(1001) * 100.0)
    plan = pace_for_finish(level, 20 * HOUR_S, Runner(fade=0.2, fade_onset_h=1.5))
    h = plan.elapsed_s / HOUR_S
    share = ((1 + h / 1.5) ** 0.8 - 1) / ((1 + 20 / 1.5) ** 0.8 - 1)
    assert share * 100e3 == pytest.approx(plan.distance_m, abs=0.1)


def test_power_given_while_running_pays_for_the_ground(hilly):
    # The law of the model, marched second by second: what is given between two places, stops left
    # out, stands to the cost between them as one figure, in fade, night and stops alike.
    start = datetime(2026, 8, 28, 14, tzinfo=UTC)
    stops = (Stop(19_990.0, 1200.0), Stop(50_012.5, 3600.0), Stop(77_777.0, 300.0))
    plan = pace_for_finish(hilly, 24 * HOUR_S, None, stops, start=start)
    t = np.arange(0.5, 24 * HOUR_S)
    place = Observer(46.0, 7.0)
    dusk_s = (dusk(place, start.date()) - start).total_seconds()
    dawn_s = (dawn(place, start.date() + timedelta(days=1)) - start).total_seconds()
    dark = np.interp(t, [dusk_s - 1800, dusk_s + 1800, dawn_s - 1800, dawn_s + 1800], [0, 1, 1, 0])
    # Half as much again about three at night by the sun, which at 7 E is 02:32 UTC.
    from_three_h = (14 + t / HOUR_S + 7 / 15 - 3 + 12) % 24 - 12
    dark = dark * (1 + 0.5 * np.exp(-((from_three_h / 2) ** 2) / 2))
    power = (1 + t / HOUR_S / 0.75) ** -0.10 * (1 - 0.10 * dark)
    for stop in stops:
        arrival = plan.arrival_s(stop.at_m)
        power[(t > arrival) & (t < arrival + stop.stop_s)] = 0.0
    given = np.interp(plan.elapsed_s, t + 0.5, np.cumsum(power))
    # The slope felt is the mean over 100 m, four pieces about the middle of one.
    padded = np.pad(hilly.gradient[:-1], 2, mode="edge")
    felt = np.convolve(padded, [0.125, 0.25, 0.25, 0.25, 0.125], mode="valid")
    cost = pace_cost(felt) * hilly.surface_cost[:-1] * 25.0
    spent = np.concatenate(([0.0], np.cumsum(cost)))
    assert given / given[-1] == pytest.approx(spent / spent[-1], abs=5e-5)


def test_target_fades_less_than_forecast_and_more_than_even(hilly):
    half = {
        shape: pace_for_finish(hilly, 20 * HOUR_S, shape=shape).arrival_s(50e3) for shape in SHAPES
    }
    assert half["forecast"] < half["target"] < half["even"]


def test_even_shape_knows_neither_fade_nor_night(hilly):
    start = datetime(2026, 8, 28, 14, tzinfo=UTC)
    even = pace_for_finish(hilly, 20 * HOUR_S, None, (), "even", start)
    plain = pace_for_finish(hilly, 20 * HOUR_S, EVEN)
    assert even.elapsed_s == pytest.approx(plain.elapsed_s)


def test_night_slows_only_what_is_run_in_it(hilly):
    start = datetime(2026, 8, 28, 12, tzinfo=UTC)
    day = pace_for_finish(hilly, 12 * HOUR_S)
    night = pace_for_finish(hilly, 12 * HOUR_S, start=start)
    assert night.arrival_s(50e3) < day.arrival_s(50e3)
    lit = pace_for_finish(hilly, 12 * HOUR_S, Runner(night_loss=0.0), start=start)
    assert lit.elapsed_s == pytest.approx(day.elapsed_s)
    # Where all of it is dark only the small hours change the shares, by a twentieth at most.
    midnight = pace_for_finish(hilly, 4 * HOUR_S, start=start + timedelta(hours=9))
    all_day = pace_for_finish(hilly, 4 * HOUR_S).elapsed_s
    assert midnight.elapsed_s == pytest.approx(all_day, rel=0.03)


@given(st.lists(st.floats(-0.4, 0.4), min_size=1, max_size=20))
def test_out_and_back_over_an_even_hill_turns_at_half_time(profile_of, climb):
    hill = [*climb, *(-slope for slope in reversed(climb))]
    profile = profile_of(np.arange(2 * len(hill) + 1) * 1000.0, [*hill, *hill, 0.0])
    plan = pace_for_finish(profile, 10 * HOUR_S, EVEN)
    assert plan.elapsed_s[len(hill)] == pytest.approx(5 * HOUR_S, abs=1e-5)


def test_splitting_every_piece_changes_nothing(profile_of, hilly):
    fine = profile_of(
        np.arange(8001) * 12.5,
        np.repeat(hilly.gradient, 2)[:8001],
        np.repeat(hilly.surface_cost, 2)[:8001],
    )
    stops = (Stop(30_010.0, 900.0),)
    whole = pace_for_finish(hilly, 20 * HOUR_S, None, stops)
    split = pace_for_finish(fine, 20 * HOUR_S, None, stops)
    # But for the slope felt, which a finer grid follows closer at the foot of a climb.
    assert split.elapsed_s[::2] == pytest.approx(whole.elapsed_s, abs=1.0)


def test_ground_that_is_dearer_everywhere_scales_out(hilly):
    rough = replace(hilly, surface_cost=hilly.surface_cost * 1.1)
    plain = pace_for_finish(hilly, 20 * HOUR_S)
    assert pace_for_finish(rough, 20 * HOUR_S).elapsed_s == pytest.approx(plain.elapsed_s)


def test_dearer_ground_on_one_half_takes_its_time_from_the_other(profile_of):
    half = np.where(np.arange(1001) < 500, 1.0, 1.6)
    plan = pace_for_finish(profile_of(np.arange(1001) * 50.0, 0.0, half), 13 * HOUR_S, EVEN)
    assert plan.arrival_s(25e3) == pytest.approx(5 * HOUR_S)


@given(st.floats(0.0, 99_999.0), st.floats(1.0, 7200.0))
def test_a_stop_makes_all_running_faster_in_one_measure(hilly, at_m, stop_s):
    plain = pace_for_finish(hilly, 20 * HOUR_S, EVEN)
    stopped = pace_for_finish(hilly, 20 * HOUR_S, EVEN, (Stop(at_m, stop_s),))
    assert stopped.moving_s == pytest.approx(
        plain.elapsed_s * (1 - stop_s / (20 * HOUR_S)), abs=1e-4
    )


def test_the_arrival_at_a_stop_is_before_it_and_all_beyond_is_after(hilly):
    plan = pace_for_finish(hilly, 20 * HOUR_S, None, (Stop(50_000.0, 1800.0),))
    k = 2000
    assert plan.distance_m[k] == 50_000.0
    assert plan.arrival_s(50_000.0) == plan.elapsed_s[k]
    assert plan.departure_s(50_000.0) == plan.elapsed_s[k] + 1800.0
    assert plan.elapsed_s[k + 1] - plan.elapsed_s[k] > 1800.0
    assert plan.elapsed_s[k] - plan.elapsed_s[k - 1] < 60.0


def test_a_stop_between_two_points_is_not_smeared_over_them(hilly):
    plan = pace_for_finish(hilly, 20 * HOUR_S, None, (Stop(50_010.0, 1800.0),))
    arrival = plan.arrival_s(50_010.0)
    assert plan.departure_s(50_010.0) - arrival == 1800.0
    assert arrival - plan.arrival_s(50_009.9) < 1.0
    assert plan.arrival_s(50_010.1) - plan.departure_s(50_010.0) < 1.0
    for waited in (0.0, 1.0, 900.0, 1800.0):
        assert plan.distance_at(arrival + waited) == pytest.approx(50_010.0, abs=1e-6)
    assert plan.distance_at(arrival + 1801.0) > 50_010.0
    assert plan.arrival_s(50_000.0) == plan.elapsed_s[2000]
    assert plan.arrival_s(50_025.0) == plan.elapsed_s[2001]


def test_stops_at_one_place_are_one_stop_and_those_at_the_finish_do_not_count(hilly):
    one = pace_for_finish(hilly, 20 * HOUR_S, None, (Stop(30e3, 900.0),))
    stops = (Stop(100e3, 600.0), Stop(30e3, 300.0), Stop(60e3, 0.0), Stop(30e3, 600.0))
    many = pace_for_finish(hilly, 20 * HOUR_S, None, stops)
    assert many.stops == (Stop(30e3, 900.0),)
    assert np.array_equal(many.elapsed_s, one.elapsed_s)


def test_a_stop_a_step_before_the_finish_is_still_made(hilly):
    plan = pace_for_finish(hilly, 20 * HOUR_S, None, (Stop(np.nextafter(100e3, 0.0), 1800.0),))
    assert plan.finish_s == 20 * HOUR_S
    assert plan.moving_s[-1] == pytest.approx(20 * HOUR_S - 1800.0)
    assert plan.moving_s[-1] - plan.moving_s[-2] < 60.0


@given(st.lists(st.integers(0, 400).map(lambda n: n * 250.0), min_size=1, max_size=9))
def test_many_arrivals_at_once_are_those_of_each_place(hilly, places_m):
    stops = (Stop(0.0, 60.0), Stop(20_000.0, 300.0), Stop(50_125.0, 900.0))
    plan = pace_for_finish(hilly, 50_000.0, None, stops)
    places_m = sorted(place for place in places_m if place <= hilly.length_m)
    one_by_one = [plan.arrival_s(at_m) for at_m in places_m]
    assert plan.arrivals_s(places_m) == pytest.approx(one_by_one, abs=1e-6)


def test_before_the_start_and_beyond_the_finish_stand_the_ends(hilly):
    plan = pace_for_finish(hilly, 20 * HOUR_S)
    assert plan.arrival_s(-5.0) == 0.0
    assert plan.arrival_s(100_001.0) == plan.finish_s
    assert plan.distance_at(-1.0) == 0.0
    assert plan.distance_at(21 * HOUR_S) == 100_000.0


def test_stops_that_leave_no_time_are_refused_with_their_sum(hilly):
    with pytest.raises(PlanError) as refusal:
        pace_for_finish(hilly, 3600.0, None, (Stop(10e3, 3000.0), Stop(20e3, 600.0)))
    assert refusal.value.message.args == (Quantity(3600.0, "s"), Quantity(3600.0, "s"))
    assert len(str(refusal.value)) <= 200


def test_a_start_without_time_zone_is_a_mistake(hilly):
    with pytest.raises(ValueError, match="aware"):
        pace_for_finish(hilly, 3600.0, start=datetime(2026, 8, 28, 14))


def test_arrays_of_a_plan_cannot_be_written(hilly):
    plan = pace_for_finish(hilly, 3600.0)
    with pytest.raises(ValueError, match="read-only"):
        plan.elapsed_s[0] = 1.0


def test_climbs_of_the_default_runner_cost_less_than_the_laboratory_says(profile_of):
    climb = profile_of([0.0, 10e3, 20e3], [0.0, 0.20, 0.20])
    plan = pace_for_finish(climb, 5 * HOUR_S)
    lab = pace_for_finish(climb, 5 * HOUR_S, Runner(uphill_share=1.0))
    assert plan.arrival_s(10e3) > lab.arrival_s(10e3)
    assert running_cost(0.2) / 3.6 > pace_cost(0.2)


needs_data = pytest.mark.skipif(
    not DATA.is_dir(), reason="real splits and recordings are not at hand"
)


@pytest.fixture(scope="module")
def bench():
    spec = importlib.util.spec_from_file_location(
        "bench_pace", ROOT / "packaging" / "bench_pace.py"
    )
    module = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = module
    spec.loader.exec_module(module)
    return module


@needs_data
def test_forecast_meets_the_splits_of_a_mountain_race(bench):
    # That race starts at five in the morning at midsummer, 39.2 N 120.2 W.
    start = datetime(2026, 6, 27, 12, tzinfo=UTC)
    runs = list(bench.race_runs(DATA / "splits", start, (39.197, -120.2357), every=5))
    ours = bench.pooled([bench.score(bench.forecast, run) for run in runs])
    rule = bench.pooled([bench.score(bench.by_rule("tobler"), run) for run in runs])
    assert (np.percentile(ours.cumulative, (50, 90)) < (1.15, 3.4)).all()
    assert (np.percentile(ours.section, (50, 90)) < (7.5, 21.0)).all()
    assert np.median(ours.cumulative) < 0.5 * np.median(rule.cumulative)


@needs_data
def test_forecast_meets_recorded_runs(bench):
    runs = list(bench.recorded_runs(DATA / "recordings"))
    ours = bench.pooled([bench.score(bench.forecast, run) for run in runs])
    rule = bench.pooled([bench.score(bench.by_rule("even"), run) for run in runs])
    assert (np.percentile(ours.cumulative, (50, 90)) < (1.15, 2.7)).all()
    assert (np.percentile(ours.section, (50, 90)) < (6.1, 14.4)).all()
    assert np.median(ours.cumulative) < 0.6 * np.median(rule.cumulative)


@given(st.floats(1.0, 7200.0))
def test_a_stop_asks_for_a_faster_runner(hilly, stop_s):
    plain = pace_for_finish(hilly, 20 * HOUR_S)
    stopped = pace_for_finish(hilly, 20 * HOUR_S, None, (Stop(50_000.0, stop_s),))
    assert stopped.fresh_mps > plain.fresh_mps


def test_fresh_speed_on_the_level_is_that_of_the_start(profile_of):
    plan = pace_for_finish(profile_of(np.arange(5001) * 10.0), 8 * HOUR_S)
    assert plan.distance_m[5] / plan.elapsed_s[5] == pytest.approx(plan.fresh_mps, rel=2e-3)
