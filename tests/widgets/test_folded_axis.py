"""Folded legs keep the axis one rising line, whatever is asked of it."""

from dataclasses import dataclass
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.engine.pacing import PacePlan, Stop
from ultraplanner_gui.widgets.axis import PLEAT_PX, RaceAxis

WIDE = 1000.0
STATIONS_M = (0.0, 10_000.0, 18_000.0, 30_000.0, 42_000.0, 50_000.0)
LEGS = tuple(pairwise(STATIONS_M))

pytestmark = pytest.mark.usefixtures("qapp")


@dataclass(frozen=True)
class Ground:
    length_m: float


@dataclass(frozen=True)
class Race:
    """As much of an outlook as the axis looks at."""

    profile: Ground
    target: PacePlan


def race():
    places = np.linspace(0.0, 50_000.0, 51)
    stops = tuple(Stop(at_m, 600.0) for at_m in STATIONS_M[1:-1])
    elapsed = 0.4 * places + sum(np.where(places > s.at_m, s.stop_s, 0.0) for s in stops)
    return Race(Ground(50_000.0), PacePlan(places, elapsed, stops))


def axis_with(legs, measure="distance", view=None):
    axis = RaceAxis()
    axis.show(race(), tuple(LEGS[k] for k in sorted(legs)))
    axis.choose(measure)
    if view is not None:
        low, high = axis.low, axis.high
        axis.view(low + view[0] * (high - low), low + view[1] * (high - low))
    return axis


measures = st.sampled_from(("distance", "clock"))
some_legs = st.sets(st.integers(0, 4))
views = st.tuples(st.floats(0.0, 0.9), st.floats(0.05, 1.0)).map(
    lambda v: (v[0], min(v[0] + v[1], 1.0))
)


@given(some_legs, measures, views, st.floats(0.0, 50_000.0))
def test_place_and_x_take_each_other_back_over_folds(legs, measure, view, at_m):
    axis = axis_with(legs, measure, view)

    x = axis.x_of_distance(at_m, WIDE)

    assert axis.distance_at(x, WIDE) == pytest.approx(at_m, abs=0.1)


@given(some_legs, measures, views)
def test_x_rises_along_the_course_and_the_view_fills_the_body(legs, measure, view):
    axis = axis_with(legs, measure, view)

    xs = axis.x_of_distances(np.linspace(0.0, 50_000.0, 400), WIDE)

    assert (np.diff(xs) > 0.0).all()
    ends = [axis._x(value, WIDE) for value in (axis.low, axis.high)]
    assert ends == [pytest.approx(0.0, abs=0.01), pytest.approx(WIDE, abs=1.0)]


@given(some_legs, measures, views, st.lists(st.floats(0.0, 26_000.0), min_size=1))
def test_many_at_once_agree_with_one_by_one(legs, measure, view, times_s):
    axis = axis_with(legs, measure, view)
    times_s = [min(t, axis._outlook.target.finish_s) for t in times_s]

    xs = axis.x_of_times(np.array(times_s), WIDE)

    assert list(xs) == pytest.approx([axis.x_of_time(t, WIDE) for t in times_s], abs=0.01)
    one_by_one = [axis.distance_at(x, WIDE) for x in xs.tolist()]
    assert list(axis.distances_at(xs, WIDE)) == pytest.approx(one_by_one, abs=0.1)


@given(some_legs.filter(lambda legs: 0 < len(legs) < 5), measures, st.integers(1, 12))
def test_pleat_is_as_wide_at_every_zoom(legs, measure, steps):
    axis = axis_with(legs, measure)

    def widths():
        return [axis._x(high, WIDE) - axis._x(low, WIDE) for low, high in axis._folded()]

    before = widths()
    for _ in range(steps):
        axis.zoom(1.25, 0.0, WIDE)

    assert widths() == pytest.approx(before, abs=0.01)
    assert all(wide <= PLEAT_PX + 0.01 for wide in before)


@given(some_legs, measures, st.floats(0.0, WIDE), st.integers(1, 10))
def test_zoom_keeps_what_is_under_the_pointer(legs, measure, x, steps):
    axis = axis_with(legs, measure)
    # A place is passed for as long as one stops there: by the clock a moment is what stays.
    at, x_of = (
        (axis.distance_at, axis.x_of_distance)
        if measure == "distance"
        else (axis.time_at, axis.x_of_time)
    )
    under = at(x, WIDE)

    for _ in range(steps):
        axis.zoom(1.25, x, WIDE)

    assert x_of(under, WIDE) == pytest.approx(x, abs=1.0)


@given(some_legs, measures)
def test_zooming_out_comes_back_to_the_whole_race(legs, measure):
    axis = axis_with(legs, measure)
    whole = axis.low, axis.high
    axis.zoom(5.0, 300.0, WIDE)
    axis.pan(0.3, WIDE)

    axis.zoom(0.001, 500.0, WIDE)

    assert (axis.low, axis.high) == pytest.approx(whole)


def test_panning_over_folds_goes_on_to_the_end_and_keeps_the_scale():
    axis = axis_with({1, 3}, view=(0.0, 0.3))
    unit = axis.unit_px(WIDE)
    for _ in range(30):
        axis.pan(0.2, WIDE)
        assert axis.unit_px(WIDE) == pytest.approx(unit, rel=1e-6)

    assert axis.high == pytest.approx(50_000.0)


def test_what_is_folded_gives_its_room_to_the_rest():
    plain, folded = axis_with(set()), axis_with({0, 1})

    assert folded.unit_px(WIDE) > 1.4 * plain.unit_px(WIDE)
    assert folded.in_fold(5_000.0)
    assert not folded.in_fold(20_000.0)
    assert folded.open_in_view() == pytest.approx(32_000.0)


def test_a_stop_between_two_folded_legs_stays_open_by_the_clock():
    axis = axis_with({0, 1}, "clock")
    arrive_s = axis._outlook.target.arrival_s(10_000.0)

    wide = axis.x_of_time(arrive_s + 600.0, WIDE) - axis.x_of_time(arrive_s, WIDE)

    assert wide == pytest.approx(600.0 * axis.unit_px(WIDE), rel=1e-6)


def test_all_legs_folded_still_fill_the_body():
    axis = axis_with({0, 1, 2, 3, 4})

    xs = [axis.x_of_distance(at_m, WIDE) for at_m in STATIONS_M]

    assert xs == sorted(xs)
    assert (xs[0], xs[-1]) == (0.0, pytest.approx(WIDE, abs=1.0))
