from datetime import UTC, datetime, timedelta, timezone
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from ultraplanner_gui.engine.conditions import condition_times
from ultraplanner_gui.engine.environment import (
    EFFECTS,
    Effects,
    clock_hour,
    place_power,
    weather_along,
)
from ultraplanner_gui.engine.pacing import Stop, pace_at_effort, pace_for_finish
from ultraplanner_gui.plan.conditions import ValleyForecast
from ultraplanner_gui.plan.course import Surface, SurfaceFactors, SurfaceSpan
from ultraplanner_gui.plan.runner import Runner

HOUR_S = 3600.0
HOT = ValleyForecast(16.0, 33.0, 35.0, valley_m=400.0)
START = datetime(2026, 8, 28, 6, tzinfo=ZoneInfo("Europe/Paris"))
ROUGH = (SurfaceSpan(0.0, 100_000.0, Surface.TECHNICAL_TRAIL),)
ALL = Effects(weather=HOT, surfaces=ROUGH)


@pytest.fixture(scope="module")
def mountain(profile_of):
    """Up from 0 to 2400 m on the first half, down on the second."""
    slope = np.where(np.arange(1601) < 800, 0.12, -0.12)
    return profile_of(np.arange(1601) * 25.0, slope)


def test_without_effects_nothing_but_the_night_counts(mountain):
    plain = pace_for_finish(mountain, 10 * HOUR_S, start=START)
    off = pace_for_finish(mountain, 10 * HOUR_S, start=START, effects=ALL.without(*EFFECTS))
    by_day = pace_for_finish(mountain, 10 * HOUR_S)
    night = Effects().without("altitude")
    same = pace_for_finish(mountain, 10 * HOUR_S, start=START, effects=night)
    assert same.elapsed_s == pytest.approx(plain.elapsed_s)
    assert off.elapsed_s == pytest.approx(by_day.elapsed_s)


def test_a_third_of_the_published_loss_at_altitude_counts(mountain):
    # Wehrlin & Hallen 2006: 6.3 % for each 1000 m above 300; the third is an own measurement.
    power = place_power(mountain, Effects())
    at_2000 = int(np.searchsorted(mountain.elevation_m, 2000.0))
    assert power[at_2000] == pytest.approx(1.0 - 0.063 * 1.7 / 3, abs=2e-4)
    assert power[:50] == pytest.approx(np.ones(50))
    full = place_power(mountain, Effects(altitude_share=1.0))
    assert full[at_2000] == pytest.approx(1.0 - 0.063 * 1.7, abs=5e-4)


def test_altitude_takes_time_to_the_heights(profile_of):
    # Two level halves, 300 m and 2300 m high: times as 1 to 1 / (1 - 0.126).
    profile = profile_of(np.arange(401) * 100.0)
    high = np.where(np.arange(401) <= 200, 300.0, 2300.0)
    profile = type(profile)(**{**_fields(profile), "elevation_m": high})
    plan = pace_for_finish(
        profile,
        5 * HOUR_S,
        Runner(fade=0.0, night_loss=0.0),
        effects=Effects(altitude_share=1.0),
    )
    below = plan.arrival_s(20_000.0)
    assert (5 * HOUR_S - below) / below == pytest.approx(1 / (1 - 0.126), rel=2e-3)


def _fields(profile):
    return {name: getattr(profile, name) for name in type(profile).__slots__}


def test_rough_descents_are_slower_and_nothing_else_is(mountain):
    # OWN default: a technical descent at 0.80 of the speed on firm ground.
    power = place_power(mountain, Effects(surfaces=ROUGH).without("altitude"))
    assert power[:800] == pytest.approx(np.ones(800))
    assert power[800:] == pytest.approx(np.full(800, 0.80))


def test_a_gentle_slope_is_only_in_part_a_descent(profile_of):
    profile = profile_of(np.arange(101) * 100.0, -0.02)
    power = place_power(profile, Effects(surfaces=ROUGH).without("altitude"))
    assert power == pytest.approx(np.full(100, 1.0 - 0.2 * 0.4))


def test_own_speed_downhill_is_not_switched_off(mountain):
    power = place_power(mountain, Effects(descent_speed=1.1).without(*EFFECTS))
    assert power[:800] == pytest.approx(np.ones(800))
    assert power[800:] == pytest.approx(np.full(800, 1.1))


def test_it_is_cooler_higher_up_and_in_the_morning(mountain):
    plan = pace_for_finish(mountain, 16 * HOUR_S)
    along = weather_along(mountain, HOT, START, plan.elapsed_s)
    # Valley at 400 m, 6 in the morning the coldest hour, start at the sea: 2.6 degrees warmer.
    assert along.temperature_c[0] == pytest.approx(16.0 + 0.0065 * 400.0)
    top = int(np.argmax(mountain.elevation_m))
    valley_c = along.temperature_c[top] + 0.0065 * (mountain.elevation_m[top] - 400.0)
    assert 16.0 <= valley_c <= 33.0
    # Civil dawn comes at 06:16.
    assert 0.5 < along.dark[0] < 1.0


def test_the_hour_of_the_clock_is_that_of_the_place():
    assert clock_hour(START, np.array([0.0, 20 * HOUR_S])) == pytest.approx([6.0, 2.0])
    assert clock_hour(START.astimezone(UTC), np.array([0.0])) == pytest.approx([4.0])


def test_the_clock_of_the_start_counts_though_the_instants_are_equal(mountain):
    # The coldest hour is six by the clock that the forecast was typed for.
    paris = pace_for_finish(mountain, 10 * HOUR_S, start=START, effects=ALL)
    shifted = START.astimezone(timezone(timedelta(hours=12)))
    other = pace_for_finish(mountain, 10 * HOUR_S, start=shifted, effects=ALL)
    assert np.abs(paris.elapsed_s - other.elapsed_s).max() > 10.0


def test_heat_slows_the_hot_hours(profile_of):
    level = profile_of(np.arange(1001) * 100.0)
    runner = Runner(fade=0.0, night_loss=0.0)
    start = datetime(2026, 7, 10, 6, tzinfo=ZoneInfo("Europe/Paris"))
    effects = Effects(weather=ValleyForecast(12.0, 34.0, 40.0, 0.0)).without("altitude")
    plan = pace_for_finish(level, 12 * HOUR_S, runner, start=start, effects=effects)
    speed = 100.0 / np.diff(plan.elapsed_s)
    assert int(np.argmin(speed)) == pytest.approx(
        np.searchsorted(plan.elapsed_s, 9 * HOUR_S), abs=9
    )
    # At 34 degrees and 40 % the rule gives a WBGT of 31.6: 16.6 degrees above 15 at 0.7 %.
    assert speed.min() / speed.max() == pytest.approx(1 - 0.007 * 16.6, abs=0.01)


def test_heat_does_not_count_in_the_dark(profile_of):
    level = profile_of(np.arange(501) * 100.0)
    start = datetime(2026, 8, 28, 22, tzinfo=ZoneInfo("Europe/Paris"))
    warm = Effects(weather=ValleyForecast(25.0, 35.0, 60.0, 0.0)).without("altitude")
    hot = pace_for_finish(level, 5 * HOUR_S, start=start, effects=warm)
    assert hot.elapsed_s == pytest.approx(
        pace_for_finish(level, 5 * HOUR_S, start=start).elapsed_s, abs=1.0
    )


def test_effort_and_finish_are_inverse(mountain):
    stops = (Stop(10_000.0, 900.0), Stop(30_010.0, 1800.0))
    for shape in ("forecast", "target", "even"):
        plan = pace_for_finish(mountain, 11 * HOUR_S, None, stops, shape, START, effects=ALL)
        back = pace_at_effort(mountain, plan.fresh_mps, None, stops, shape, START, effects=ALL)
        assert back.finish_s == pytest.approx(11 * HOUR_S, abs=2.0)
        assert back.elapsed_s == pytest.approx(plan.elapsed_s, abs=2.0)


@given(st.floats(0.5, 6.0), st.floats(1.01, 2.0))
def test_a_faster_runner_is_sooner_there(mountain, fresh_mps, ratio):
    slow, fast = (
        pace_at_effort(mountain, v, stops=(Stop(20_000.0, 600.0),), start=START)
        for v in (fresh_mps, fresh_mps * ratio)
    )
    assert fast.finish_s < slow.finish_s
    assert (fast.elapsed_s[1:] < slow.elapsed_s[1:]).all()


def test_minutes_of_the_effects_sum_to_what_they_take_together(mountain):
    took = condition_times(
        mountain, 14 * HOUR_S, ALL, start=START.replace(hour=12), stops=(Stop(20e3, 900.0),)
    )
    assert set(took.seconds) == set(EFFECTS)
    assert all(took.seconds[effect] > 60.0 for effect in EFFECTS)
    assert sum(took.seconds.values()) == pytest.approx(took.total_s, abs=1e-6)
    assert took.finish_s == pytest.approx(14 * HOUR_S, abs=2.0)
    assert took.without_s < 14 * HOUR_S


def test_an_effect_alone_takes_what_the_finish_without_it_is_sooner(mountain):
    only = Effects().without("night")
    took = condition_times(mountain, 10 * HOUR_S, only)
    fresh_mps = pace_for_finish(mountain, 10 * HOUR_S, effects=only).fresh_mps
    near_sea = pace_at_effort(mountain, fresh_mps, effects=only.without("altitude"))
    assert took.seconds["altitude"] == pytest.approx(10 * HOUR_S - near_sea.finish_s, abs=0.1)
    assert took.seconds["heat"] == took.seconds["night"] == 0.0


def test_an_effect_that_is_off_takes_nothing(mountain):
    took = condition_times(mountain, 14 * HOUR_S, ALL.without("heat"), start=START)
    assert took.seconds["heat"] == 0.0


def test_descents_take_what_the_user_thinks_of_the_ground(mountain):
    own = SurfaceFactors(Surface.TECHNICAL_TRAIL, 1.15, 0.5)
    power = place_power(mountain, replace(ALL, surface_factors=(own,)).without("altitude"))

    assert power[10] == 1.0
    assert power[-10] == pytest.approx(0.5)
