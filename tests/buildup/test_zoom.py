from datetime import timedelta

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from tests.buildup.conftest import TODAY, make_block
from ultraplanner_gui.edits.block import MoveSession

Key = Qt.Key
CTRL = Qt.KeyboardModifier.ControlModifier
NONE = Qt.KeyboardModifier.NoModifier
LONG = 30


@pytest.fixture
def long_stage(stage_of):
    """Thirty weeks where twenty-odd have room."""
    return stage_of(block=make_block(LONG), size=(1200, 520))


def axis(stage):
    return stage.grid._axis


def wheel(lane, turns, modifiers=NONE, share=0.5):
    body = lane.body()
    at = QPointF(body.left() + share * body.width(), body.center().y())
    event = QWheelEvent(
        at,
        QPointF(lane.mapToGlobal(at.toPoint())),
        QPoint(),
        QPoint(0, round(120 * turns)),
        Qt.MouseButton.NoButton,
        modifiers,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(lane, event)


def test_a_long_block_opens_two_weeks_before_today(long_stage):
    first = axis(long_stage).weeks[axis(long_stage).first]
    assert first.start + timedelta(weeks=2) <= TODAY < first.start + timedelta(weeks=3)
    assert axis(long_stage).hidden_after == 0


def test_lanes_and_grid_share_the_stretch(long_stage):
    axis(long_stage).view(3, 10)
    long_stage.storey.grab()
    for lane in long_stage.storey.lanes:
        columns = list(lane.columns(lane.body()))
        assert [c.now.start for c in columns] == [
            axis(long_stage).weeks[k].start for k in (*range(3, 12), LONG - 1)
        ]
        left, right = long_stage.grid.cells.column(5)
        assert (columns[2].rect.left(), columns[2].rect.right()) == (left, right)


def test_the_wheel_scrolls_and_with_ctrl_zooms_about_the_pointer(long_stage):
    axis(long_stage).view(10, 12)
    wheel(long_stage.storey.distance, -1)
    assert (axis(long_stage).first, axis(long_stage).count) == (12, 12)
    wheel(long_stage.grid, 1, Qt.KeyboardModifier.ShiftModifier)
    assert (axis(long_stage).first, axis(long_stage).count) == (10, 12)
    body = long_stage.grid.body()
    under = axis(long_stage).index_at(0.25 * body.width(), body.width())
    wheel(long_stage.storey.head, 1, CTRL, 0.25)
    assert axis(long_stage).count < 12
    assert abs(axis(long_stage).index_at(0.25 * body.width(), body.width()) - under) <= 1


def test_turns_of_a_touchpad_add_up(long_stage):
    axis(long_stage).view(10, 12)
    for _ in range(4):
        wheel(long_stage.grid, -0.25)
    assert axis(long_stage).first == 12


def test_keys_zoom_round_the_cursor(long_stage):
    long_stage.choose("easy25")
    long_stage.keys(Key.Key_Plus)
    count = axis(long_stage).count
    assert axis(long_stage).is_shown(25)
    long_stage.keys(Key.Key_Minus, Key.Key_Minus)
    assert axis(long_stage).count > count
    long_stage.keys(Key.Key_0)
    assert axis(long_stage).is_whole


def test_home_and_end_bring_both_ends_into_view(long_stage):
    axis(long_stage).view(10, 10)
    long_stage.choose("easy12")
    long_stage.keys(Key.Key_Home)
    assert axis(long_stage).first == 0
    assert long_stage.grid.day == axis(long_stage).weeks[0].start + timedelta(days=1)
    long_stage.keys(Key.Key_End)
    assert long_stage.grid.day == axis(long_stage).weeks[-1].start + timedelta(days=1)


def test_arrows_beyond_the_edge_scroll(long_stage):
    axis(long_stage).view(10, 10)
    long_stage.choose("easy10")
    long_stage.keys(Key.Key_Left)
    assert long_stage.selection.key == "easy9"
    assert axis(long_stage).first == 9


def test_what_is_selected_elsewhere_comes_into_view(long_stage):
    axis(long_stage).view(20, 10)
    long_stage.choose("long2")
    assert long_stage.grid.cells.tile("long2") is not None


def test_a_drag_to_the_edge_scrolls_and_lands_on_a_week_that_was_hidden(long_stage):
    stage = long_stage
    axis(stage).view(22, 8)
    stage.press(stage.spot("easy27"))
    body = stage.grid.body()
    at = QPoint(round(body.left()) + 4, stage.spot("easy27").y())
    stage.move(at)
    assert stage.grid._edge.is_on
    for _ in range(3):
        stage.grid._edge.step()
    day = axis(stage).weeks[19].start + timedelta(days=1)
    assert stage.document.shown.project.block.session("easy27").day == day
    stage.release(at)
    assert not stage.grid._edge.is_on
    assert [type(e) for e in stage.document.performed] == [MoveSession]
    assert stage.session("easy27").day == day


def test_a_drag_to_the_tear_scrolls_towards_the_race(long_stage):
    stage = long_stage
    day = TODAY + timedelta(weeks=1)
    axis(stage).view(axis(stage).index_of(TODAY) - 8, 11)
    key = next(s.key for s in stage.document.before.project.block.sessions if s.day > day)
    first, body = axis(stage).first, stage.grid.body()
    stage.press(stage.spot(key))
    tear = axis(stage).tear(body.width())
    stage.move(QPoint(round(body.left() + tear[0]) + 2, stage.spot_of(day).y()))
    stage.grid._edge.step()
    assert axis(stage).first == first + 1
    stage.keys(Key.Key_Escape)
    assert not stage.grid._edge.is_on


def test_scrolling_ends_at_the_first_week(long_stage):
    stage = long_stage
    axis(stage).view(1, 8)
    axis(stage).reveal(2)
    stage.keys(Key.Key_0)
    axis(stage).view(22, 8)
    stage.press(stage.spot("easy27"))
    stage.move(QPoint(round(stage.grid.body().left()) + 3, 100))
    for _ in range(40):
        stage.grid._edge.step()
    assert axis(stage).first == 0
    assert not stage.grid._edge.is_on
    stage.keys(Key.Key_Escape)


def test_keys_carry_a_session_into_hidden_weeks(long_stage):
    stage = long_stage
    axis(stage).view(22, 8)
    stage.choose("easy24")
    home = stage.session("easy24").day
    assert home >= TODAY
    stage.keys(Key.Key_Space, *[Key.Key_Left] * 4, Key.Key_Space)
    assert axis(stage).first == 20
    assert stage.session("easy24").day == home - timedelta(weeks=4)


# The overview


def _overview_x(stage, index):
    overview = stage.storey.overview
    body = overview.body()
    return round(body.left() + index * body.width() / LONG)


def _drag_overview(stage, start, end):
    overview = stage.storey.overview
    y = overview.height() // 2
    QTest.mousePress(overview, Qt.MouseButton.LeftButton, pos=QPoint(start, y))
    QTest.mouseMove(overview, QPoint((start + end) // 2, y))
    QTest.mouseMove(overview, QPoint(end, y))
    QTest.mouseRelease(overview, Qt.MouseButton.LeftButton, pos=QPoint(end, y))


def test_the_overview_is_dragged_to_scroll(long_stage):
    axis(long_stage).view(10, 10)
    _drag_overview(long_stage, _overview_x(long_stage, 14), _overview_x(long_stage, 9))
    assert (axis(long_stage).first, axis(long_stage).count) == (5, 10)


def test_the_ends_of_the_overview_are_dragged_to_zoom(long_stage):
    axis(long_stage).view(10, 10)
    _drag_overview(long_stage, _overview_x(long_stage, 10), _overview_x(long_stage, 6))
    assert (axis(long_stage).first, axis(long_stage).count) == (6, 14)
    _drag_overview(long_stage, _overview_x(long_stage, 19), _overview_x(long_stage, LONG))
    assert (axis(long_stage).first, axis(long_stage).hidden_after) == (6, 0)
    _drag_overview(long_stage, _overview_x(long_stage, LONG), _overview_x(long_stage, 16))
    assert (axis(long_stage).first, axis(long_stage).count) == (6, 11)


def test_a_click_beside_the_stretch_brings_it_there(long_stage):
    axis(long_stage).view(0, 9)
    x = _overview_x(long_stage, 20) + 3
    QTest.mouseClick(long_stage.storey.overview, Qt.MouseButton.LeftButton, pos=QPoint(x, 8))
    assert axis(long_stage).first == 16


def test_a_double_click_on_the_overview_shows_all(long_stage):
    axis(long_stage).view(10, 10)
    at = QPoint(_overview_x(long_stage, 14), 8)
    QTest.mouseDClick(long_stage.storey.overview, Qt.MouseButton.LeftButton, pos=at)
    assert axis(long_stage).is_whole


def test_the_overview_says_how_many_weeks_are_in_view(long_stage):
    axis(long_stage).view(10, 10)
    overview = long_stage.storey.overview
    assert overview.readout(QPointF()).startswith(f"10 of {LONG} weeks")
    assert overview.accessibleDescription() == overview.readout(QPointF())


def test_a_season_is_whole_in_view_as_soon_as_it_is_shown(stage_of):
    assert axis(stage_of(block=make_block(20), size=(1200, 520))).is_whole


def test_the_figures_at_the_pointer_stay_with_their_week_through_a_zoom(long_stage):
    storey = long_stage.storey
    storey._cursor.point(700.0)
    long_stage.grid.zoom_in()
    QApplication.processEvents()
    index = storey._week_at(700.0)
    left, right = axis(long_stage).edges(index, storey.head.body().width())
    line = storey._cursor.line.geometry()
    assert line.left() == round(storey.head.body().left() + left)
    assert line.width() == pytest.approx(right - left, abs=1.5)


def test_right_of_the_last_week_is_outside(stage_of):
    stage = stage_of(size=(1200, 520))
    day = stage.session("easy5").day
    stage.drag("easy5", stage.session("race").day - timedelta(days=2))
    stage.move(QPoint(round(stage.grid.body().right()) + 60, stage.spot("easy5").y()))
    assert stage.document.shown is stage.document.before
    stage.release(QPoint(round(stage.grid.body().right()) + 60, stage.spot("easy5").y()))
    assert stage.session("easy5").day == day
    assert stage.document.performed == []
