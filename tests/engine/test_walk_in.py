from datetime import UTC, datetime

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.engine.pacing import Stop, pace_for_finish
from ultraplanner_gui.engine.walk_in import Cutoff, Walker, course_cutoffs, walk_in
from ultraplanner_gui.plan.course import AidStation
from ultraplanner_gui.plan.race import Race

HOUR_S = 3600.0
FRESH = Walker(tiredness=1.0)
STOPS = (Stop(20_000.0, 600.0), Stop(40_000.0, 900.0))


@pytest.fixture(scope="module")
def level(profile_of):
    return profile_of(np.arange(6001) * 10.0)


@pytest.fixture(scope="module")
def hilly(profile_of):
    slope = np.where(np.arange(2401) // 80 % 2 == 0, 0.12, -0.12)
    return profile_of(np.arange(2401) * 25.0, slope)


def test_seven_pieces_take_the_median_hiker_as_long_as_published(profile_of):
    # 45 km with 1980 m up on the median function of Campbell et al. 2022, along the slope:
    # 42,784.9 s. At 5 km/h on the flat it would be 32,400 s.
    course = np.array(
        [(8, 80), (6, 900), (4, -700), (7, -70), (5, 1000), (6, -900), (9, -310)], dtype=float
    ) * (1000.0, 1.0)
    slope = course[:, 1] / course[:, 0]
    profile = profile_of(np.concatenate(([0.0], np.cumsum(course[:, 0]))), [*slope, slope[-1]])
    limit = walk_in(profile, [Cutoff(45_000.0, 50_000.0)], walker=FRESH)
    assert limit.walk_s(0.0, 45_000.0) == pytest.approx(42_784.9, abs=0.1)
    assert limit.latest_s[0] == pytest.approx(50_000.0 - 42_784.9, abs=0.1)


def test_level_ground_is_walked_in_at_nine_tenths_of_4_13_kilometres_an_hour(level):
    # Campbell et al. 2022: 1.1481 m/s on the level; the nine tenths are OWN.
    limit = walk_in(level, [Cutoff(60_000.0, 20 * HOUR_S)])
    assert limit.walk_s(0.0, 60_000.0) == pytest.approx(60_000.0 / (0.9 * 1.1481), rel=1e-4)


def test_walking_from_the_limit_just_makes_the_tightest_later_cutoff(hilly):
    cutoffs = [Cutoff(20_000.0, 6 * HOUR_S), Cutoff(45_000.0, 14 * HOUR_S), Cutoff(60_000.0, 20e4)]
    limit = walk_in(hilly, cutoffs, STOPS)
    for at_m in (0.0, 10_000.0, 25_000.0, 44_975.0):
        spare = []
        for cutoff in (c for c in cutoffs if c.at_m >= at_m):
            stopped_s = sum(s.stop_s for s in STOPS if at_m <= s.at_m < cutoff.at_m)
            arrival_s = limit.latest_arrival_s(at_m) + limit.walk_s(at_m, cutoff.at_m) + stopped_s
            spare.append(cutoff.by_s - arrival_s)
        assert min(spare) == pytest.approx(0.0, abs=1e-6)


@given(st.lists(st.tuples(st.floats(1.0, 60_000.0), st.floats(0.0, 2e5)), min_size=1, max_size=5))
def test_the_limit_never_falls_along_the_course(hilly, gates):
    limit = walk_in(hilly, [Cutoff(*gate) for gate in gates], STOPS)
    known = np.isfinite(limit.latest_s)
    assert np.all(np.diff(limit.latest_s[known]) >= -1e-6)
    assert np.all(np.isfinite(limit.latest_s[:-1]) >= np.isfinite(limit.latest_s[1:]))


def test_a_stop_still_to_come_brings_the_limit_forward_by_its_time(level):
    cutoff = [Cutoff(60_000.0, 20 * HOUR_S)]
    bare, stopped = walk_in(level, cutoff), walk_in(level, cutoff, STOPS)
    assert bare.latest_s[0] - stopped.latest_s[0] == pytest.approx(1500.0)
    assert bare.latest_arrival_s(30_000.0) - stopped.latest_arrival_s(30_000.0) == pytest.approx(
        900.0
    )
    assert bare.latest_s[-1] == stopped.latest_s[-1]


def test_a_station_may_be_left_as_much_later_as_its_stop_is_long(level):
    limit = walk_in(level, [Cutoff(60_000.0, 20 * HOUR_S)], STOPS)
    assert limit.latest_departure_s(40_000.0) == pytest.approx(
        limit.latest_arrival_s(40_000.0) + 900.0
    )


def test_a_cutoff_for_arriving_does_not_bind_the_leaving(level):
    gates = [Cutoff(40_000.0, HOUR_S), Cutoff(60_000.0, 20 * HOUR_S)]
    limit = walk_in(level, gates, STOPS)
    assert limit.latest_arrival_s(40_000.0) == HOUR_S
    assert limit.latest_departure_s(40_000.0) > 10 * HOUR_S


def test_a_cutoff_for_leaving_binds_both(level):
    gates = [Cutoff(40_000.0, 9 * HOUR_S, is_departure=True)]
    limit = walk_in(level, gates, STOPS)
    assert limit.latest_departure_s(40_000.0) == 9 * HOUR_S
    assert limit.latest_arrival_s(40_000.0) == pytest.approx(9 * HOUR_S - 900.0)


def test_beyond_the_last_cutoff_there_is_no_limit(level):
    limit = walk_in(level, [Cutoff(30_000.0, 10 * HOUR_S)])
    assert limit.latest_arrival_s(30_010.0) == np.inf
    assert limit.latest_departure_s(30_000.0) == np.inf


def test_the_first_point_is_where_plan_and_limit_meet(level):
    # 60 km at 10 km/h under an 11 h limit: a walker at 3.72 km/h makes the rest from where
    # x / 10 + (60 - x) / 3.72 = 11.
    plan = pace_for_finish(level, 6 * HOUR_S, shape="even")
    limit = walk_in(level, [Cutoff(60_000.0, 11 * HOUR_S)])
    walked_kmh = 0.9 * 1.14815 * 3.6
    expected_km = (60 / walked_kmh - 11) / (1 / walked_kmh - 0.1)
    assert limit.first_point_m(plan) == pytest.approx(expected_km * 1000, abs=20.0)


def test_from_the_first_point_on_the_plan_is_never_behind_the_limit(hilly):
    plan = pace_for_finish(hilly, 9 * HOUR_S, None, STOPS)
    limit = walk_in(hilly, [Cutoff(30_000.0, 8 * HOUR_S), Cutoff(60_000.0, 13 * HOUR_S)], STOPS)
    first_m = limit.first_point_m(plan)
    assert 0.0 < first_m < 60_000.0
    for at_m in np.linspace(first_m + 1.0, 60_000.0, 50).tolist():
        assert plan.arrival_s(at_m) <= limit.latest_arrival_s(at_m)
    assert plan.arrival_s(first_m - 50.0) > limit.latest_arrival_s(first_m - 50.0)


def test_a_generous_limit_can_be_walked_from_the_start_and_a_missed_one_never(level):
    plan = pace_for_finish(level, 8 * HOUR_S)
    assert walk_in(level, [Cutoff(60_000.0, 40 * HOUR_S)]).first_point_m(plan) == 0.0
    assert walk_in(level, [Cutoff(60_000.0, 7 * HOUR_S)]).first_point_m(plan) is None
    assert walk_in(level, []).first_point_m(plan) is None


def test_a_metabolic_rate_may_stand_for_the_hiker(level):
    # Looney et al. 2019: 3.62 W/kg is 1 m/s on the level.
    limit = walk_in(level, [Cutoff(60_000.0, 20 * HOUR_S)], walker=Walker(1.0, 3.62))
    assert limit.walk_s(0.0, 60_000.0) == pytest.approx(60_000.0, rel=1e-4)


def test_cutoffs_of_a_course_are_those_of_its_stations_and_the_finish(course_of):
    course = course_of(50_000.0, (AidStation("a", "A", 10e3, 7200.0), AidStation("b", "B", 20e3)))
    race = Race("Test race", datetime(2026, 8, 28, tzinfo=UTC), 8 * HOUR_S, 10 * HOUR_S)
    assert course_cutoffs(course, race) == (Cutoff(10e3, 7200.0), Cutoff(50e3, 10 * HOUR_S))


@given(
    st.lists(
        st.tuples(st.integers(1, 19), st.floats(0.0, 2e5), st.booleans()), min_size=0, max_size=6
    ),
    st.lists(st.tuples(st.integers(1, 19), st.floats(0.0, 7_200.0)), max_size=5),
    st.lists(st.integers(1, 20), min_size=1, max_size=8),
)
def test_many_places_at_once_have_the_limits_of_each(hilly, gates, stops, places):
    # A grid of places, so that they meet stops and cutoffs.
    step_m = hilly.length_m / 20.0
    cutoffs = [Cutoff(k * step_m, by_s, is_out) for k, by_s, is_out in gates]
    halts = [Stop(k * step_m, stop_s) for k, stop_s in dict(stops).items()]
    limit = walk_in(hilly, cutoffs, halts)
    at_m = [k * step_m for k in sorted(places)]

    arrive_s, leave_s = limit.latest_at(at_m)

    def latest(m):
        """By hand: no cutoff from here on is missed on foot, the stops on the way taken."""
        ahead = [(c, c.by_s - limit.walk_s(m, c.at_m)) for c in cutoffs if c.at_m >= m]
        return min(
            (
                left_s
                - sum(
                    h.stop_s
                    for h in halts
                    if m <= h.at_m < c.at_m or (c.is_departure and h.at_m == c.at_m)
                )
                for c, left_s in ahead
            ),
            default=np.inf,
        )

    assert list(arrive_s) == pytest.approx([latest(m) for m in at_m], abs=1e-6)
    at_points = limit.latest_at(limit.distance_m)[0]
    assert list(limit.latest_s) == pytest.approx(list(at_points), abs=1e-6)
    assert list(leave_s) == pytest.approx([limit.latest_departure_s(m) for m in at_m], abs=1e-6)
