from itertools import pairwise

import numpy as np
import pytest

from ultraplanner_gui.engine.gait import stretches, walked_m
from ultraplanner_gui.engine.pacing import Stop, pace_for_finish

HOUR_S = 3600.0


@pytest.fixture(scope="module")
def climb_and_descent(profile_of):
    slope = np.zeros(2001)
    slope[400:700], slope[1200:1500] = 0.25, -0.10
    return profile_of(np.arange(2001) * 10.0, slope)


def test_a_steep_climb_is_walked_and_the_rest_run(climb_and_descent):
    plan = pace_for_finish(climb_and_descent, 2.5 * HOUR_S)
    parts = stretches(climb_and_descent, plan)
    assert [part.is_walked for part in parts] == [False, True, False]
    climb = parts[1]
    assert climb.start_m == pytest.approx(4000.0, abs=60.0)
    assert climb.end_m == pytest.approx(7000.0, abs=60.0)
    assert climb.climb_m == pytest.approx(750.0, abs=15.0)
    assert climb.speed_mps < 1.4
    assert walked_m(parts) == pytest.approx(3000.0, abs=120.0)


def test_stretches_follow_each_other_and_take_the_time_of_the_plan(climb_and_descent):
    plan = pace_for_finish(climb_and_descent, 4 * HOUR_S, None, (Stop(10_000.0, 600.0),))
    parts = stretches(climb_and_descent, plan)
    assert parts[0].start_m == 0.0
    assert parts[-1].end_m == 20_000.0
    assert all(a.end_m == b.start_m for a, b in pairwise(parts))
    assert sum(part.length_m / part.speed_mps for part in parts) == pytest.approx(
        4 * HOUR_S - 600.0
    )


def test_who_has_all_day_walks_all_the_way_and_who_races_runs_it(climb_and_descent, profile_of):
    parts = stretches(climb_and_descent, pace_for_finish(climb_and_descent, 8 * HOUR_S))
    assert [part.is_walked for part in parts] == [True]
    level = profile_of(np.arange(2001) * 10.0)
    assert [p.is_walked for p in stretches(level, pace_for_finish(level, 2 * HOUR_S))] == [False]


def test_a_short_steep_step_is_no_change_of_gait(profile_of):
    slope = np.zeros(1001)
    slope[500:512] = 0.3
    profile = profile_of(np.arange(1001) * 10.0, slope)
    assert len(stretches(profile, pace_for_finish(profile, HOUR_S))) == 1
