import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.extra.numpy import arrays

from ultraplanner_gui.science.elevation import (
    climb_and_drop,
    filled,
    moving_mean,
    spikes,
    turning_points,
    zero_fillers,
)

# A public tutorial's profile; climb and drop by turning points computed by hand and by an
# independent script (OWN): extremes 12, 22 and 12 for every threshold from 3 to 10.
TUTORIAL = [12, 17, 15, 20, 22, 18, 15, 16, 14, 12]
BUMPY = [0, 4, 3, 8, 7, 12, 2, 6, 5, 9]


def totals(heights, threshold):
    climb, drop = climb_and_drop(np.array(heights, dtype=float), threshold)
    return float(climb[-1]), float(drop[-1])


@pytest.mark.parametrize(
    ("threshold", "climb_drop"),
    [
        (1, (13, 13)),
        (2, (12, 12)),
        (3, (10, 10)),
        (4, (10, 10)),
        (5, (10, 10)),
        (6, (10, 10)),
        (8, (10, 10)),
        (11, (0, 0)),
    ],
)
def test_turning_point_rule_on_the_tutorial_profile(threshold, climb_drop):
    assert totals(TUTORIAL, threshold) == climb_drop


@pytest.mark.parametrize("threshold", [2, 3, 5])
def test_turning_point_rule_on_a_bumpy_profile(threshold):
    assert totals(BUMPY, threshold) == (19, 10)


def test_ripples_below_the_threshold_are_no_climb():
    assert totals([100, 101, 100, 101, 100, 101, 100], 2) == (0, 0)


def test_extremes_are_where_the_ground_turns():
    assert turning_points(np.array(TUTORIAL, dtype=float), 5) == [0, 4, 9]


def test_climb_is_counted_where_it_is_climbed():
    climb, drop = climb_and_drop(np.array([0.0, 0.0, 10.0, 8.0, 20.0, 20.0, 0.0]), 5.0)
    assert climb.tolist() == [0, 0, 10, 10, 20, 20, 20]
    assert drop.tolist() == [0, 0, 0, 0, 0, 0, 20]


heights = arrays(float, st.integers(2, 60), elements=st.floats(0, 3000, width=32))


@given(heights, st.floats(0.5, 50))
def test_climb_and_drop_never_fall_and_account_for_the_difference(elevation, threshold):
    climb, drop = climb_and_drop(elevation, threshold)
    assert (np.diff(climb) >= 0).all()
    assert (np.diff(drop) >= 0).all()
    raw = np.diff(elevation)
    assert climb[-1] <= raw[raw > 0].sum() + 1e-6
    assert drop[-1] <= -raw[raw < 0].sum() + 1e-6
    # What is not counted lies before the first extreme and after the last: less than two turns.
    assert abs(climb[-1] - drop[-1] - (elevation[-1] - elevation[0])) <= 2 * threshold + 1e-6


@given(heights, st.floats(0.5, 50))
def test_the_way_back_swaps_climb_and_drop(elevation, threshold):
    there, back = totals(elevation, threshold), totals(elevation[::-1], threshold)
    # The two ends of a walk are treated alike up to the threshold.
    assert there[0] == pytest.approx(back[1], abs=2 * threshold)
    assert there[1] == pytest.approx(back[0], abs=2 * threshold)


@pytest.mark.parametrize("noise_m", [0.5, 1.0, 3.0])
def test_raw_sum_of_noise_grows_by_s_over_root_pi_per_step(noise_m):
    # The difference of two independent normal errors has standard deviation s sqrt(2); half of
    # the mean of its absolute value is s / sqrt(pi).
    steps = np.diff(np.random.default_rng(7).normal(0.0, noise_m, 200_001))
    assert steps[steps > 0].sum() / len(steps) == pytest.approx(
        noise_m / math.sqrt(math.pi), rel=0.01
    )


@pytest.mark.parametrize("noise_m", [1.0, 3.0])
def test_smoothing_then_turning_points_leaves_a_flat_track_flat(noise_m):
    at = np.arange(0.0, 100_000.0, 5.0)
    noisy = np.random.default_rng(3).normal(0.0, noise_m, len(at))
    smooth = moving_mean(at, noisy, np.arange(0.0, 99_990.0, 10.0), 70.0)
    climb, _ = climb_and_drop(smooth, 5.0)
    raw = np.diff(noisy)
    assert climb[-1] < 0.002 * raw[raw > 0].sum()


def profile_lines():
    return st.lists(
        st.tuples(st.floats(1.0, 80.0), st.floats(-100, 100)), min_size=2, max_size=60
    ).map(lambda rows: (np.cumsum([r[0] for r in rows]), np.array([r[1] for r in rows])))


@given(profile_lines(), st.floats(5.0, 200.0))
def test_smoothing_keeps_the_ends(line, window):
    distance, elevation = line
    ends = moving_mean(distance, elevation, distance[[0, -1]], window)
    assert ends == pytest.approx(elevation[[0, -1]], abs=1e-6)


@given(profile_lines(), st.floats(5.0, 200.0))
def test_smoothing_never_adds_to_a_convex_cost(line, window):
    distance, elevation = line
    at = np.linspace(distance[0], distance[-1], 40)
    slope = np.diff(moving_mean(distance, elevation, at, window)) / np.diff(at)
    raw_slope = np.diff(elevation) / np.diff(distance)

    def energy(gradient, run):
        return float((gradient**4 * run).sum())

    raw = energy(raw_slope, np.diff(distance))
    assert energy(slope, np.diff(at)) <= raw * (1 + 1e-6) + 1e-6


@given(st.floats(-0.5, 0.5), st.floats(10, 200))
def test_smoothing_keeps_a_steady_slope(slope, window):
    distance = np.array([0.0, 3.0, 40.0, 41.0, 300.0])
    at = np.linspace(0.0, 300.0, 31)
    assert moving_mean(distance, slope * distance, at, window) == pytest.approx(
        slope * at, abs=1e-6
    )


def test_smoothing_agrees_with_a_plain_average_of_a_fine_grid():
    rng = np.random.default_rng(5)
    distance = np.cumsum(rng.uniform(1.0, 30.0, 200))
    elevation = np.cumsum(rng.normal(0.0, 2.0, 200))
    for place in (distance[60], 0.5 * (distance[100] + distance[101])):
        fine = np.linspace(place - 35.0, place + 35.0, 70_001)
        expected = np.interp(fine, distance, elevation).mean()
        got = moving_mean(distance, elevation, np.array([place]), 70.0)[0]
        assert got == pytest.approx(expected, abs=1e-3)


def test_standing_still_does_not_weigh():
    distance = np.array([0.0, 100.0, 100.0, 100.0, 200.0])
    elevation = np.array([10.0, 10.0, 60.0, 10.0, 10.0])
    assert moving_mean(distance, elevation, np.array([100.0]), 70.0) == pytest.approx(10.0)


def test_a_line_without_length_has_one_height():
    still = moving_mean(np.zeros(3), np.array([1.0, 2.0, 3.0]), np.zeros(2), 70.0)
    assert still.tolist() == [2.0, 2.0]


def test_holes_are_filled_along_the_line():
    distance = np.array([0.0, 10.0, 40.0, 50.0, 60.0])
    nan = float("nan")
    mended = filled(distance, np.array([nan, 100.0, nan, 140.0, nan]))
    assert mended == pytest.approx([100.0, 100.0, 130.0, 140.0, 140.0])


EVERY_10_M = np.arange(0.0, 100.0, 10.0)


def test_a_spike_is_found_and_a_cliff_is_not():
    elevation = np.full(10, 500.0)
    elevation[4:6] = 900.0
    assert np.flatnonzero(spikes(EVERY_10_M, elevation)).tolist() == [4, 5]
    elevation[4:] = 900.0
    assert not spikes(EVERY_10_M, elevation).any()


def test_a_mountain_of_thin_points_is_no_spike():
    assert not spikes(EVERY_10_M * 20, np.array([0, 100, 250, 100, 0] * 2, dtype=float)).any()


def test_zeros_within_heights_are_fillers_and_the_sea_is_not():
    elevation = np.full(10, 800.0)
    elevation[:2] = elevation[5:8] = 0.0
    assert np.flatnonzero(zero_fillers(EVERY_10_M, elevation)).tolist() == [0, 1, 5, 6, 7]
    shore = np.array([20, 12, 5, 0, 0, 0, 4, 9, 15, 22], dtype=float)
    assert not zero_fillers(EVERY_10_M, shore).any()
