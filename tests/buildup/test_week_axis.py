from datetime import date, timedelta
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.buildup.conftest import TODAY, make_block, make_project, outlook
from ultraplanner_gui.widgets.week_axis import LEAST_WEEKS, TEAR_PX, WeekAxis

WIDTH = 1000.0
lengths = st.integers(1, 60)
steps = st.lists(
    st.one_of(
        st.tuples(st.just("zoom"), st.integers(-3, 3).filter(bool), st.integers(0, 70)),
        st.tuples(st.just("scroll"), st.integers(-20, 20), st.just(0)),
        st.tuples(st.just("reveal"), st.integers(0, 70), st.just(0)),
        st.tuples(st.just("fit"), st.integers(1, 60), st.just(0)),
    ),
    max_size=8,
)
_weeks = {}


def weeks_of(count):
    if count not in _weeks:
        _weeks[count] = outlook(make_project(make_block(count))).weeks
    return _weeks[count]


def axis_of(count):
    axis = WeekAxis()
    axis.show(weeks_of(count))
    return axis


def take(axis, steps):
    last = len(axis.weeks) - 1
    for what, amount, index in steps:
        if what == "zoom":
            axis.zoom(amount, min(index, last))
        elif what == "scroll":
            axis.scroll(amount)
        elif what == "reveal":
            axis.reveal(min(amount, last))
        else:
            axis.fit(TODAY, amount)


@given(lengths, steps)
def test_the_race_week_keeps_the_right_edge(count, steps):
    axis = axis_of(count)
    take(axis, steps)
    assert axis.shown[-1] == count - 1
    assert axis.edges(count - 1, WIDTH)[1] == pytest.approx(WIDTH)
    assert axis.index_at(WIDTH - 1e-6, WIDTH) == count - 1


@given(lengths, steps)
def test_the_stretch_stays_inside_the_block(count, steps):
    axis = axis_of(count)
    take(axis, steps)
    assert min(LEAST_WEEKS, count) <= axis.count <= count
    assert axis.first >= 0
    assert axis.hidden_after >= 0
    assert axis.shown == tuple(sorted(set(axis.shown)))
    assert len(axis.shown) == axis.count


@given(lengths, steps)
def test_columns_follow_each_other_but_for_the_tear(count, steps):
    axis = axis_of(count)
    take(axis, steps)
    edges = [axis.edges(index, WIDTH) for index in axis.shown]
    gaps = [right[0] - left[1] for left, right in pairwise(edges)]
    assert all(abs(gap) < 1e-6 for gap in gaps[:-1])
    if gaps:
        assert gaps[-1] == pytest.approx(TEAR_PX if axis.hidden_after else 0.0, abs=1e-6)
    middles = [(left + right) / 2 for left, right in edges]
    assert tuple(axis.index_at(x, WIDTH) for x in middles) == axis.shown


@given(st.integers(9, 60), steps, st.integers(0, 59))
def test_revealed_is_shown(count, steps, index):
    axis = axis_of(count)
    take(axis, steps)
    axis.reveal(min(index, count - 1))
    assert axis.is_shown(min(index, count - 1))


@given(st.integers(20, 60), st.integers(0, 30), st.integers(12, 20), st.data())
def test_zoom_keeps_the_week_under_the_pointer(count, first, width, data):
    axis = axis_of(count)
    axis.view(first, width)
    inner = axis.shown[2:-3]
    index = data.draw(st.sampled_from(inner))
    before = sum(axis.edges(index, WIDTH)) / 2
    axis.zoom(1, index)
    after = sum(axis.edges(index, WIDTH)) / 2
    assert abs(after - before) <= axis.each(WIDTH) + TEAR_PX


def test_zoom_in_ends_at_eight_weeks_and_out_at_all():
    axis = axis_of(52)
    for _ in range(20):
        axis.zoom(1, 30)
    assert axis.count == LEAST_WEEKS
    for _ in range(20):
        axis.zoom(-1, 30)
    assert axis.is_whole


def test_all_weeks_by_default_where_there_is_room():
    axis = axis_of(24)
    axis.fit(TODAY, 24)
    assert axis.is_whole


def test_else_from_two_weeks_before_today_to_the_race():
    axis = axis_of(24)
    axis.fit(TODAY, 23)
    here = axis.index_of(TODAY)
    assert (axis.first, axis.hidden_after) == (here - 2, 0)


def test_before_the_block_and_after_it_all_weeks_are_shown():
    for today in (date(2020, 1, 1), date(2030, 1, 1)):
        axis = axis_of(24)
        axis.fit(today, 10)
        assert axis.is_whole


def test_what_the_user_chose_is_not_fitted_again():
    axis = axis_of(52)
    axis.view(5, 12)
    axis.fit(TODAY, 52)
    assert (axis.first, axis.count) == (5, 12)


def test_a_stretch_keeps_its_dates_when_weeks_are_added_before():
    axis = axis_of(30)
    axis.view(10, 12)
    start = axis.weeks[axis.first].start
    axis.show(weeks_of(34))
    assert axis.weeks[axis.first].start == start
    assert axis.count == 12


def test_the_tear_belongs_to_the_week_before_it():
    axis = axis_of(30)
    axis.view(4, 10)
    left, right = axis.tear(WIDTH)
    assert axis.index_at((left + right) / 2, WIDTH) == 4 + 10 - 2
    assert axis.index_at(right + 1, WIDTH) == 29


def test_it_speaks_up_once_for_each_change():
    axis, said = axis_of(30), []
    axis.changed.connect(lambda: said.append(1))
    axis.view(4, 10)
    axis.view(4, 10)
    axis.show(weeks_of(30))
    assert len(said) == 1


def test_a_day_out_of_view_still_has_its_column():
    axis = axis_of(30)
    axis.view(20, 10)
    day = axis.weeks[3].start + timedelta(days=4)
    assert axis.index_of(day) == 3
    assert not axis.is_shown(3)
