from dataclasses import dataclass

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.engine.pacing import PacePlan, Stop
from ultraplanner_gui.widgets.axis import RaceAxis


@dataclass(frozen=True)
class Course:
    length_m: float


@dataclass(frozen=True)
class Race:
    """As much of an outlook as the axis looks at."""

    profile: Course | None
    target: PacePlan | None


def race(length_m=50_000.0, finish_s=20_600.0):
    """A race at even pace with one stop of ten minutes in the middle."""
    places = np.linspace(0.0, length_m, 11)
    moving = np.linspace(0.0, finish_s - 600.0, 11)
    elapsed = moving + np.where(places > length_m / 2, 600.0, 0.0)
    return Race(Course(length_m), PacePlan(places, elapsed, (Stop(length_m / 2, 600.0),)))


@pytest.fixture
def axis():
    axis = RaceAxis()
    axis.show(race())
    return axis


places = st.floats(0.0, 50_000.0)


@given(places, st.sampled_from(("distance", "clock")), st.floats(0.0, 40_000.0))
def test_x_and_place_take_each_other_back(at_m, measure, low_m):
    axis = RaceAxis()
    axis.show(race())
    axis.choose(measure)
    share = low_m / 50_000.0 * axis.high
    axis.view(share, share + 0.2 * axis.high)

    x = axis.x_of_distance(at_m, 800.0)

    assert axis.distance_at(x, 800.0) == pytest.approx(at_m, abs=0.01)


@given(st.floats(0.0, 20_600.0), st.sampled_from(("distance", "clock")))
def test_one_moment_and_many_moments_stand_at_one_x(at_s, measure):
    axis = RaceAxis()
    axis.show(race())
    axis.choose(measure)

    many = axis.x_of_times(np.array([at_s]), 800.0)

    assert many[0] == pytest.approx(axis.x_of_time(at_s, 800.0), abs=1e-6)


def test_stop_is_passed_standing_still(axis):
    # Half of 20,000 s of running, then ten minutes at the station.
    xs = axis.x_of_times(np.array([10_000.0, 10_300.0, 10_600.0]), 800.0)

    assert list(xs) == [400.0, 400.0, 400.0]
    axis.choose("clock")
    xs = axis.x_of_times(np.array([10_000.0, 10_600.0]), 20_600.0)
    assert list(xs) == [10_000.0, 10_600.0]


def test_view_stays_inside_the_race_and_above_a_hundredth(axis):
    axis.view(-9_000.0, 1_000.0)
    assert (axis.low, axis.high) == (0.0, 10_000.0)
    axis.view(49_999.0, 50_000.0)
    assert (axis.low, axis.high) == (49_500.0, 50_000.0)
    axis.view(-1e12, 1e12)
    assert (axis.low, axis.high) == (0.0, 50_000.0)


def test_view_that_stays_says_nothing(axis):
    moved = []
    axis.changed.connect(lambda: moved.append(1))
    axis.show(race())
    axis.view(0.0, 50_000.0)
    axis.choose("distance")
    assert moved == []

    axis.choose("clock")
    axis.show(race(finish_s=22_600.0))
    assert moved == [1, 1]
    assert axis.high == 22_600.0


def test_zoomed_view_stays_for_the_same_course_and_goes_with_another():
    axis, ground = RaceAxis(), race()
    axis.show(ground)
    axis.view(10_000.0, 20_000.0)

    axis.show(Race(ground.profile, race(finish_s=25_000.0).target))
    assert (axis.low, axis.high) == (10_000.0, 20_000.0)
    axis.show(race(length_m=80_000.0))
    assert (axis.low, axis.high) == (0.0, 80_000.0)


@pytest.mark.parametrize(
    ("start_m", "end_m", "view"),
    [
        (12_000.0, 15_000.0, (10_000.0, 20_000.0)),
        (4_000.0, 6_000.0, (4_000.0, 14_000.0)),
        (25_000.0, 28_000.0, (18_000.0, 28_000.0)),
    ],
)
def test_what_is_revealed_comes_into_view_by_the_least_shift(axis, start_m, end_m, view):
    axis.view(10_000.0, 20_000.0)

    axis.reveal(start_m, end_m)

    assert (axis.low, axis.high) == view


def test_share_of_the_race_is_that_of_the_whole_in_any_view(axis):
    axis.view(10_000.0, 20_000.0)
    assert axis.share_of_race(25_000.0) == 0.5

    axis.choose("clock")
    assert axis.share_of_race(25_000.0) == pytest.approx(10_000.0 / 20_600.0)


def test_race_without_a_course_has_an_axis_all_the_same():
    axis = RaceAxis()
    axis.show(Race(None, None))
    axis.choose("clock")

    assert (axis.low, axis.high) == (0.0, 1.0)
    assert axis.x_of_distance(0.5, 100.0) == 50.0
    assert axis.time_at(50.0, 100.0) == 0.5
