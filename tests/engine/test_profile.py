from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from ultraplanner_gui.engine.profile import build_profile
from ultraplanner_gui.plan.course import (
    Course,
    Line,
    Pin,
    Surface,
    SurfaceFactors,
    SurfaceSpan,
)
from ultraplanner_gui.science.elevation import climb_and_drop
from ultraplanner_gui.science.geodesy import distance_along
from ultraplanner_gui.science.surface import COST_FACTOR

METRES_PER_DEGREE = 111_132.0  # of latitude at 45 degrees


def course(distance_m, elevation_m, gaps=(), surfaces=()):
    latitude = 45.0 + np.asarray(distance_m, dtype=float) / METRES_PER_DEGREE
    longitude = np.full(len(latitude), 7.0)
    line = Line(latitude, longitude, np.asarray(elevation_m, dtype=float), gaps)
    length = float(distance_along(latitude, longitude, gaps)[-1])
    return Course(line, length, surfaces=surfaces)


def hills(length_m=20_000.0, step_m=20.0, height_m=100.0, wave_m=4000.0, noise_m=0.0):
    at = np.arange(0.0, length_m + step_m / 2, step_m)
    noise = np.random.default_rng(1).normal(0.0, noise_m, len(at)) if noise_m else 0.0
    return at, 500.0 - height_m / 2 * np.cos(2 * np.pi * at / wave_m) + noise


def test_grid_is_even_and_ends_at_the_finish():
    a_course = course(*hills(length_m=12_345.0))
    profile = build_profile(a_course)
    assert profile.length_m == a_course.length_m
    assert np.ptp(np.diff(profile.distance_m)) < 1e-6
    assert profile.distance_m[1] == pytest.approx(10.0, abs=0.01)


def test_arrays_cannot_be_written_to():
    profile = build_profile(course(*hills()))
    for array in (profile.distance_m, profile.gradient, profile.climb_m, profile.surface_cost):
        with pytest.raises(ValueError, match="read-only"):
            array[0] = 1.0


def test_five_hills_of_100_m_are_500_m_of_climb():
    profile = build_profile(course(*hills()))
    assert profile.ascent_m == pytest.approx(500.0, rel=0.01)
    assert profile.descent_m == pytest.approx(500.0, rel=0.01)


def test_noise_of_3_m_hardly_changes_the_climb():
    noisy = hills(step_m=5.0, noise_m=3.0)
    rise = np.diff(noisy[1])
    assert rise[rise > 0].sum() > 5_000.0
    assert build_profile(course(*noisy)).ascent_m == pytest.approx(500.0, rel=0.06)


def test_climb_does_not_hang_on_how_dense_the_points_are():
    thin = build_profile(course(*hills(step_m=40.0)))
    dense = build_profile(course(*hills(step_m=1.0)))
    assert thin.ascent_m == pytest.approx(dense.ascent_m, rel=0.01)


def test_climb_and_drop_of_sections_add_up_to_the_totals():
    profile = build_profile(course(*hills(noise_m=2.0)))
    ends = [0.0, 1_234.5, 7_000.0, 15_432.1, profile.length_m]
    parts = [profile.climb_drop(a, b) for a, b in pairwise(ends)]
    assert sum(p[0] for p in parts) == pytest.approx(profile.ascent_m)
    assert sum(p[1] for p in parts) == pytest.approx(profile.descent_m)
    assert profile.climb_m[-1] == profile.ascent_m


def test_climb_lies_where_the_ground_rises():
    profile = build_profile(course(*hills()))
    up, down = profile.climb_drop(0.0, 2000.0), profile.climb_drop(2000.0, 4000.0)
    assert up == (pytest.approx(100.0, abs=1.5), pytest.approx(0.0, abs=1.5))
    assert down == (pytest.approx(0.0, abs=1.5), pytest.approx(100.0, abs=1.5))


@given(st.lists(st.floats(0, 2000), min_size=2, max_size=60))
def test_cumulative_climb_and_drop_never_fall(heights):
    profile = build_profile(course(np.arange(len(heights)) * 35.0, heights))
    assert (np.diff(profile.climb_m) >= 0).all()
    assert (np.diff(profile.drop_m) >= 0).all()
    assert np.abs(profile.gradient).max() <= 1.0


def test_height_is_read_between_the_points():
    profile = build_profile(course([0.0, 5_000.0, 10_000.0], [0.0, 500.0, 0.0]))
    assert profile.elevation_at(1_000.0) == pytest.approx(100.0, rel=0.001)
    assert profile.gradient[10] == pytest.approx(0.1, rel=0.001)
    assert profile.gradient[-1] == profile.gradient[-2]


def test_missing_heights_are_filled_in_between():
    at, heights = hills()
    holed = heights.copy()
    holed[1::2] = np.nan
    assert build_profile(course(at, holed)).ascent_m == pytest.approx(500.0, rel=0.01)


def test_without_heights_the_course_is_level_and_says_so():
    at, heights = hills()
    profile = build_profile(course(at, np.full(len(heights), np.nan)))
    assert not profile.has_elevation
    assert profile.ascent_m == profile.descent_m == 0.0
    assert not profile.gradient.any()
    assert "level" in str(profile.method)


def test_nothing_is_climbed_across_a_gap():
    at = np.concatenate((np.arange(0.0, 2_000.0, 20.0), np.arange(50_000.0, 52_000.0, 20.0)))
    heights = np.where(at < 10_000.0, 100.0, 900.0)
    profile = build_profile(course(at, heights, gaps=(100,)))
    assert profile.length_m == pytest.approx(3_960.0, rel=1e-3)
    assert profile.ascent_m == 0.0
    assert np.abs(profile.gradient).max() < 1e-6
    assert profile.elevation_m[0] == pytest.approx(100.0)
    assert profile.elevation_m[-1] == pytest.approx(900.0)


def test_a_very_long_course_keeps_to_a_bounded_number_of_pieces():
    at = np.linspace(0.0, 600_000.0, 3_000)
    assert len(build_profile(course(at, np.zeros(len(at)))).distance_m) == 20_001


def test_a_course_said_to_be_longer_is_stretched():
    line = course(*hills())
    longer = Course(line.line, line.length_m * 1.05)
    profile = build_profile(longer)
    assert profile.length_m == longer.length_m
    assert profile.ascent_m == pytest.approx(500.0, rel=0.01)


def test_surface_costs_lie_under_their_spans():
    spans = (
        SurfaceSpan(1_000.0, 2_000.0, Surface.SAND),
        SurfaceSpan(2_000.0, 3_000.0, Surface.ROCK),
    )
    profile = build_profile(course(*hills(), surfaces=spans))
    places = [500.0, 1_005.0, 1_500.0, 2_500.0, 3_500.0]
    pieces = [int(m / profile.distance_m[1]) for m in places]
    assert profile.surface_cost[pieces].tolist() == [1.0, 1.6, 1.6, 1.4, 1.0]


def test_every_surface_has_a_cost():
    assert set(COST_FACTOR) == set(Surface)


def test_sand_costs_what_was_published():
    # Lejeune, Willems & Heglund 1998, J Exp Biol 201:2071-2080: running on dry sand takes 1.6
    # times the energy of running on hard ground.
    assert COST_FACTOR[Surface.SAND] == 1.6


# Official figures, pins, own factors


@pytest.mark.parametrize(("climb_m", "drop_m"), [(600.0, 450.0), (450.0, 600.0), (500.0, 500.0)])
def test_climb_and_drop_come_to_the_official_figures(climb_m, drop_m):
    plain = course(*hills(noise_m=1.0))
    profile = build_profile(replace(plain, official_climb_m=climb_m, official_drop_m=drop_m))
    assert profile.ascent_m == pytest.approx(climb_m)
    assert profile.descent_m == pytest.approx(drop_m)
    # The heights themselves say so, not the totals alone.
    counted = climb_and_drop(profile.elevation_m, 5.0)
    assert [float(c[-1]) for c in counted] == pytest.approx([climb_m, drop_m], abs=2.0)
    steps = np.diff(profile.elevation_m) / profile.distance_m[1]
    assert profile.gradient[:-1] == pytest.approx(steps, abs=1e-9)
    measured = build_profile(plain)
    assert profile.measured_ascent_m == measured.ascent_m
    assert profile.measured_descent_m == measured.descent_m
    assert "Scaled to the official figures" in str(profile.method)
    assert str(profile.method) != str(measured.method)


def test_of_one_official_figure_the_other_follows():
    plain = course(*hills())
    profile = build_profile(replace(plain, official_climb_m=600.0))
    assert profile.descent_m == pytest.approx(600.0, rel=0.01)
    assert profile.elevation_m[-1] == pytest.approx(build_profile(plain).elevation_m[-1])
    one_way = course([0.0, 10_000.0], [0.0, 500.0])
    assert build_profile(replace(one_way, official_climb_m=550.0)).ascent_m == pytest.approx(550.0)


def test_official_figures_that_are_those_of_the_line_change_nothing():
    plain = course(*hills())
    profile = build_profile(plain)
    same = build_profile(
        replace(plain, official_climb_m=profile.ascent_m, official_drop_m=profile.descent_m)
    )
    assert same.elevation_m.tolist() == profile.elevation_m.tolist()
    assert same.method == profile.method


def test_without_heights_official_climb_makes_no_hills():
    at, heights = hills()
    flat = course(at, np.full(len(heights), np.nan))
    profile = build_profile(replace(flat, official_climb_m=900.0))
    assert profile.ascent_m == 0.0
    assert not profile.gradient.any()


@given(st.floats(0.5, 2.0), st.floats(0.5, 2.0))
def test_sections_keep_their_shares_of_the_official_climb(up, down):
    plain = course(*hills(noise_m=1.0))
    measured = build_profile(plain)
    official = build_profile(
        replace(
            plain,
            official_climb_m=up * measured.ascent_m,
            official_drop_m=down * measured.descent_m,
        )
    )
    for start_m in (0.0, 3_333.0, 11_000.0):
        was, now = (p.climb_drop(start_m, start_m + 5_000.0) for p in (measured, official))
        assert now == (pytest.approx(up * was[0]), pytest.approx(down * was[1]))


def test_a_pin_moves_the_ground_between_its_neighbours():
    plain = course([0.0, 5_000.0, 10_000.0], [0.0, 500.0, 0.0])
    pinned = replace(plain, pins=(Pin(6_000.0, 5_000.0),))
    profile = build_profile(pinned)
    assert profile.length_m == plain.length_m
    assert profile.distance_m[np.argmax(profile.elevation_m)] == pytest.approx(6_000.0, abs=11.0)
    assert profile.gradient[100] == pytest.approx(500 / 6_000, rel=0.01)
    assert profile.gradient[-100] == pytest.approx(-500 / 4_000, rel=0.01)


def test_own_factors_count_for_this_course():
    spans = (SurfaceSpan(1_000.0, 2_000.0, Surface.SAND),)
    own = (SurfaceFactors(Surface.SAND, 1.3, 0.9), SurfaceFactors(Surface.UNKNOWN, 1.1, 1.0))
    profile = build_profile(replace(course(*hills(), surfaces=spans), surface_factors=own))
    assert profile.surface_cost[[50, 150, 250]].tolist() == [1.1, 1.3, 1.1]
