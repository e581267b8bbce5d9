import numpy as np
import pytest

from ultraplanner_gui.engine.slope import felt_window_m, slope_felt


@pytest.fixture
def hills(profile_of):
    place = np.arange(3001) * 10.0
    return profile_of(place, 0.04 * np.sin(place / 600.0))


def with_noise(profile_of, hills, seed):
    """The same hills seen by a satellite receiver: heights that wander by metres."""
    rng = np.random.default_rng(seed)
    wander = np.convolve(rng.normal(0.0, 2.0, 3010), np.ones(10), mode="valid")[:3001]
    return profile_of(hills.distance_m, hills.gradient + np.gradient(wander, 10.0))


def test_hills_are_felt_over_a_hundred_metres(hills):
    assert felt_window_m(hills) == 100.0
    steepest = np.abs(hills.gradient).max()
    assert np.abs(slope_felt(hills)).max() == pytest.approx(steepest, rel=0.01)


def test_noisy_heights_are_looked_at_over_a_longer_way(profile_of, hills):
    noisy = with_noise(profile_of, hills, 1)
    assert felt_window_m(noisy) > 200.0
    off = np.sqrt(np.mean((slope_felt(noisy) - slope_felt(hills)) ** 2))
    raw = np.sqrt(np.mean((noisy.gradient[:-1] - hills.gradient[:-1]) ** 2))
    assert off < 0.25 * raw


def test_a_level_course_is_felt_level(profile_of):
    assert np.array_equal(slope_felt(profile_of(np.arange(101) * 10.0)), np.zeros(100))


def test_a_piece_longer_than_the_window_keeps_its_slope(profile_of):
    profile = profile_of([0.0, 1000.0, 3000.0, 3500.0], [0.1, -0.2, 0.3, 0.3])
    assert slope_felt(profile) == pytest.approx([0.1, -0.2, 0.3])


def test_no_climb_is_lost_within_the_course(profile_of, hills):
    # A mean over equal ways keeps the rise from end to end but for half a window.
    felt_m = float((slope_felt(hills) * 10.0).sum())
    assert felt_m == pytest.approx(hills.elevation_m[-1], abs=0.04 * 50.0)
