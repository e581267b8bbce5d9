from datetime import date, timedelta
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest

from tests.buildup.conftest import FIRST, RACE_DAY, TODAY, make_block, make_project, outlook
from ultraplanner_gui.buildup.cells import Cells
from ultraplanner_gui.edits.block import AddSession, MarkDone, MarkMissed, RemoveSession
from ultraplanner_gui.plan.block import Block, Kind
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.week_axis import WeekAxis
from ultraplanner_gui.wording.words import Words

Key = Qt.Key


def _axis(weeks=9):
    axis = WeekAxis()
    axis.show(outlook(make_project(make_block(weeks))).weeks)
    return axis


@given(st.integers(8, 52), st.integers(300, 2400), st.integers(126, 600), st.data())
def test_every_day_is_found_where_it_is_drawn(weeks, width, height, data):
    cells = Cells(_axis(weeks), QRectF(118, 1, width, height), ())
    day = cells.first_day + timedelta(days=data.draw(st.integers(0, 7 * weeks - 1)))
    assert cells.day_at(cells.cell(day).center()) == day


@given(st.integers(8, 52), st.integers(300, 2400))
def test_columns_fill_the_width_without_gaps(weeks, width):
    cells = Cells(_axis(weeks), QRectF(118, 1, width, 252), ())
    edges = [cells.column(k) for k in range(weeks)]
    assert (edges[0][0], edges[-1][1]) == (118, 118 + width)
    assert all(left[1] == right[0] for left, right in pairwise(edges))


def test_outside_the_grid_is_no_day(stage):
    body = stage.grid.cells.body
    for at in (QPointF(body.left() - 2, 20), QPointF(body.right() + 2, 20), QPointF(300, -1)):
        assert stage.grid.cells.day_at(at) is None


def test_a_tile_is_hit_where_it_is_drawn(stage):
    cells = stage.grid.cells
    assert len(cells.tiles) == len(stage.document.shown.project.block.sessions)
    for tile in cells.tiles:
        assert cells.tile_at(tile.rect.center()).session.key == tile.session.key


def test_rows_follow_the_first_day_of_the_week(stage_of):
    stage = stage_of()
    sunday_first = replace(stage.document.before.project, first_weekday=6)
    now = outlook(sunday_first)
    stage.storey.show_outlooks(now, now)
    column, row = stage.grid.cells.place(RACE_DAY)
    assert row == 6
    assert column == len(now.weeks) - 1


@pytest.mark.parametrize("size", [(480, 500), (700, 130), (1900, 1000), (480, 80)])
@pytest.mark.parametrize("weeks", [8, 52])
@pytest.mark.parametrize("units", ["metric", "imperial"])
def test_any_size_and_length_is_drawn(stage_of, size, weeks, units):
    stage = stage_of(block=make_block(weeks), size=size, words=Words(units))
    picture = stage.storey.grab().toImage()
    assert len({picture.pixel(x, picture.height() // 2) for x in range(0, size[0], 3)}) > 1


def test_an_empty_block_says_what_to_do(stage_of):
    stage = stage_of(block=Block())
    empty = stage.grid.grab().toImage()
    body = stage.grid.body().toRect()
    ground = theme().colours["lane"].rgb()
    assert any(
        empty.pixel(x, body.center().y() - 6) != ground for x in range(body.left(), body.right())
    )
    assert all(lane.readout(QPointF(body.center())) == "" for lane in stage.storey.lanes)


def test_n_adds_the_first_run_of_an_empty_block_today(stage_of):
    stage = stage_of(block=Block())
    stage.keys(Key.Key_N)
    (edit,) = stage.document.performed
    assert isinstance(edit, AddSession)
    assert (edit.session.day, edit.session.kind) == (TODAY, Kind.EASY)


def test_arrows_move_from_day_to_day_and_week_to_week(stage):
    stage.choose("easy5")
    stage.keys(Key.Key_Down)
    assert stage.selection.key == "hills5"
    stage.keys(Key.Key_Left)
    assert stage.selection.key == "hills4"
    stage.keys(Key.Key_Down)
    assert stage.selection.kind == ""
    assert stage.grid.day == stage.session("hills4").day + timedelta(days=1)
    stage.keys(Key.Key_Home)
    assert stage.grid.day == FIRST + timedelta(days=3)


def test_arrows_visit_both_sessions_of_a_day(stage_of):
    block = make_block()
    twin = replace(block.session("hills5"), key="twin", kind=Kind.STRENGTH)
    stage = stage_of(block=block.with_new(twin))
    stage.choose("easy5")
    stage.keys(Key.Key_Down)
    first = stage.selection.key
    stage.keys(Key.Key_Down)
    assert {first, stage.selection.key} == {"hills5", "twin"}
    stage.keys(Key.Key_Up, Key.Key_Up)
    assert stage.selection.key == "easy5"


@pytest.mark.parametrize(
    ("key", "edit"),
    [(Key.Key_Delete, RemoveSession), (Key.Key_D, MarkDone), (Key.Key_M, MarkMissed)],
)
def test_keys_do_deeds(stage, key, edit):
    stage.choose("easy5")
    stage.keys(key)
    assert [type(e) for e in stage.document.performed] == [edit]


def test_done_as_planned_records_the_plan(stage):
    stage.choose("long5")
    stage.keys(Key.Key_D)
    session = stage.session("long5")
    assert session.done.distance_m == session.distance_m
    assert session.done.carb_g == pytest.approx(50.0 * session.duration_s / 3600.0)


def test_done_again_keeps_what_was_recorded(stage):
    stage.choose("easy0")
    stage.keys(Key.Key_D)
    assert stage.document.performed == []


def test_insert_adds_an_easy_run_and_selects_it(stage):
    stage.choose("hills5")
    stage.keys(Key.Key_Down, Key.Key_Insert)
    new = stage.session(stage.selection.key)
    assert (new.kind, new.day) == (Kind.EASY, stage.session("hills5").day + timedelta(days=1))


def test_letters_reach_the_grid_before_the_shortcuts_of_a_window(stage, qtbot):
    from PySide6.QtGui import QAction, QKeySequence

    taken = []
    action = QAction(stage.storey, shortcut=QKeySequence("D"))
    action.triggered.connect(lambda: taken.append(1))
    stage.storey.addAction(action)
    stage.choose("easy5")
    stage.grid.setFocus()
    stage.storey.activateWindow()
    QTest.keyClick(stage.storey.window().windowHandle(), Key.Key_D)
    qtbot.waitUntil(lambda: bool(stage.document.performed))
    assert taken == []


def test_main_menu_deeds_act_on_the_selected_session(stage):
    stage.choose("easy5")
    stage.storey.mark_missed()
    stage.storey.unmark()
    stage.storey.mark_done()
    stage.storey.remove_session()
    done = [MarkMissed, MarkDone, MarkDone, RemoveSession]
    assert [type(e) for e in stage.document.performed] == done
    assert stage.selection.kind == ""


def test_readout_says_all_a_tile_stands_for(stage):
    text = stage.grid.readout(stage.grid.cells.tile("long5").rect.center())
    assert text == (
        "Sat 29 May: long run, 30.0 km, 3 h 20, ground level, effort 3 of 10, 50 g/h practice carbs"
    )


def test_a_screen_reader_hears_what_is_in_the_hand(stage):
    stage.choose("easy5")
    stage.keys(Key.Key_Space, Key.Key_Right)
    assert stage.grid.accessibleDescription().startswith("Picked up. Tue 1 Jun: easy run")


def _tile_image(stage, key):
    rect = stage.grid.cells.tile(key).rect.toRect()
    return stage.grid.grab(rect).toImage().convertToFormat(QImage.Format.Format_RGB32)


def test_missed_and_part_done_tiles_look_unlike_planned_ones(stage_of, done_half):
    block = make_block()
    part = done_half(block.session("hills6"))
    missed = replace(block.session("hills5"), missed=True)
    stage = stage_of(block=block.with_session(part).with_session(missed))
    pictures = [_tile_image(stage, f"hills{k}") for k in (4, 5, 6)]
    assert pictures[0] != pictures[1] != pictures[2] != pictures[0]


def test_focusable_widgets_have_names(stage):
    from PySide6.QtWidgets import QWidget

    for widget in stage.storey.findChildren(QWidget):
        if widget.focusPolicy() is not Qt.FocusPolicy.NoFocus:
            assert widget.accessibleName()


def test_a_day_outside_the_block_has_no_cell(stage):
    assert stage.grid.cells.cell(date(2020, 1, 1)) is None


def test_enter_on_an_empty_day_says_what_can_be_done_there(stage):
    stage.choose("easy5")
    stage.keys(Qt.Key.Key_Up)
    assert stage.selection.kind == ""
    stage.keys(Qt.Key.Key_Return)
    (why,) = stage.refused
    assert "N adds a run" in why
    assert not stage.grid.is_carrying
