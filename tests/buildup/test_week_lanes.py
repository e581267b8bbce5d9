from datetime import timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace
from PySide6.QtCore import QPointF, QRectF

from tests.buildup.conftest import make_block, make_project, outlook
from ultraplanner_gui.buildup import distance_lane, practice_lane
from ultraplanner_gui.buildup.storey import WISHES
from ultraplanner_gui.buildup.weekhead import runs, today_edge
from ultraplanner_gui.edits.block import ChangeSession, MoveSession, RemoveSession
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.widgets.room import Wish, share_out
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.week_axis import WeekAxis
from ultraplanner_gui.wording.words import Words


def _said(stage, lane, to_go):
    (column,) = [c for c in lane.columns(lane.body()) if c.now.to_go == to_go]
    return lane.readout(column.rect.center())


def test_distance_says_what_changed(stage):
    day = stage.session("easy5").day + timedelta(days=7)
    stage.document.try_edit(MoveSession("easy5", day, 1))
    week = next(w for w in stage.document.shown.weeks if w.to_go == 2)
    assert _said(stage, stage.storey.distance, 2).startswith(
        f"2 to go (31 May): {week.distance_m / 1000:.1f} km, before 56.0 km"
    )


def test_a_week_over_its_ceiling_is_named_and_drawn(stage):
    session = stage.session("long4")
    quiet = stage.storey.distance.grab().toImage()
    stage.document.perform(ChangeSession(replace(session, distance_m=90_000.0)))
    assert "up to 10 % holds" in _said(stage, stage.storey.distance, 4)
    assert stage.storey.distance.grab().toImage() != quiet


def test_the_longest_run_is_held_against_what_the_race_asks(stage):
    asked = stage.document.shown.asks.longest_m
    assert f"the race asks {Words().distance(asked)}" in _said(stage, stage.storey.longest, 1)
    assert stage.storey.longest.accessibleName().startswith("Longest, km, asked")


def test_practice_counts_the_grams_of_the_week(stage):
    session = stage.session("long5")
    grams = Words().grams(50.0 * session.duration_s / 3600.0)
    assert f"practice carbs {grams} at up to 50 g/h" in _said(stage, stage.storey.practice, 3)


@pytest.mark.parametrize("weeks", [9, 18, 21])
def test_grams_of_all_weeks_are_written_alike_whatever_pixel_they_end_on(
    stage_of, monkeypatch, weeks
):
    stage = stage_of(block=make_block(weeks))
    lane, written = stage.storey.practice, []
    monkeypatch.setattr(
        practice_lane, "draw_text", lambda _p, _r, text, *more: written.append(text)
    )
    for width in range(900, 1300, 13):
        written.clear()
        lane.resize(width, lane.height())
        lane.update()
        lane.grab()
        assert len({text.endswith("g") for text in written}) <= 1, width


def test_units_are_the_users(stage):
    stage.words = Words("imperial")
    stage.storey.redraw()
    assert stage.storey.distance.accessibleName() == "Distance, mi a week"
    assert stage.storey.climb.accessibleName() == "Climb, drop, ft a week"
    assert " mi" in _said(stage, stage.storey.distance, 3)


def test_a_trial_marks_the_lane_it_changes_and_leaves_the_others(stage):
    lanes = stage.storey.lanes
    before = [lane.grab().toImage() for lane in lanes]
    day = stage.session("hills5").day + timedelta(days=7)
    stage.document.try_edit(MoveSession("hills5", day, 1))
    after = [lane.grab().toImage() for lane in lanes]
    changed = [a != b for a, b in zip(before, after, strict=True)]
    assert changed == [True, True, False, False]


def test_the_figure_on_trial_stands_clear_of_the_bar_before(stage, monkeypatch):
    feet = {}
    monkeypatch.setattr(
        distance_lane,
        "paint_label",
        lambda painter, at, text, *more, **also: feet.__setitem__(text, at.y()),
    )
    lane = stage.storey.lanes[0]
    stage.document.try_edit(RemoveSession("long6"))
    week = next(c for c in lane.columns(lane.body()) if c.before and distance_lane._is_changed(c))
    lane.grab()
    before = distance_lane.bar_rect(
        week.rect, lane._scale(lane.body()), 0.0, week.before.distance_m
    )
    assert feet[stage.words.distance_bare(week.now.distance_m, 0)] <= before.top()


def test_a_dropped_trial_leaves_no_trace(stage):
    before = stage.storey.grab().toImage()
    stage.document.try_edit(MoveSession("long5", stage.session("easy6").day, 1))
    assert stage.storey.grab().toImage() != before
    stage.document.drop_trial()
    assert stage.storey.grab().toImage() == before


def test_columns_stay_while_a_trial_would_shorten_the_block(stage):
    weeks = stage.document.before.weeks
    shorter = replace(stage.document.before, weeks=weeks[1:])
    stage.storey.show_outlooks(stage.document.before, shorter)
    columns = list(stage.storey.distance.columns(QRectF(0, 0, 900, 60)))
    assert len(columns) == len(weeks) - 1
    assert columns[0].rect.left() == pytest.approx(100.0)


def test_today_steps_down_at_todays_row(stage):
    axis, now = WeekAxis(), stage.document.shown
    axis.show(now.weeks)
    week = axis.index_of(now.today)
    each = 900.0 / len(now.weeks)
    edge = today_edge(axis, now.today, 900.0)
    assert edge == (round((week + 1) * each), round(week * each), now.today.weekday())
    assert today_edge(axis, now.weeks[0].start - timedelta(days=1), 900.0) is None


def test_cutback_and_taper_weeks_are_bracketed_once():
    weeks = outlook(make_project(make_block(12))).weeks
    found = list(runs(weeks))
    covered = [k for first, last, _ in found for k in range(first, last + 1)]
    assert covered == [k for k, w in enumerate(weeks) if w.role in (Role.CUTBACK, Role.TAPER)]


def test_the_race_week_column_is_the_last(stage):
    assert "Race week" in stage.storey.head.readout(
        QPointF(stage.storey.head.body().right() - 3, 10)
    )


@given(st.floats(0, 3000), st.floats(0.8, 2.0))
def test_lanes_never_ask_for_more_height_than_there_is(height, scale):
    wishes = [Wish(w[0] * scale, w[1] * scale, w[2] * scale, *w[3:]) for w in WISHES]
    heights = share_out(height, wishes)
    if height >= min(wishes, key=lambda w: w.rank).least:
        assert sum(heights) <= height + 1e-6
    assert all(h == 0 or h >= int(w.least) for h, w in zip(heights, wishes, strict=True))


@given(st.floats(430, 1200))
def test_a_taller_storey_makes_no_lane_lower(height):
    lower, taller = share_out(height, WISHES), share_out(height + 7, WISHES)
    assert all(a <= b for a, b in zip(lower, taller, strict=True))


def test_a_strip_keeps_the_weeks_and_their_distance(stage_of):
    stage = stage_of(size=(1200, 100))
    assert stage.storey.distance.isVisible()
    assert not stage.grid.isVisible()
    assert not stage.storey.practice.isVisible()


def test_dark_and_light_draw_alike(stage):
    light = stage.storey.grab().toImage()
    theme().choose("dark", 100)
    try:
        dark = stage.storey.grab().toImage()
    finally:
        theme().choose("light", 100)
    assert dark.size() == light.size()
    assert dark != light
    assert stage.storey.grab().toImage() == light
