from datetime import timedelta

from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from ultraplanner_gui.edits.block import MoveSession, RemoveSession

Key = Qt.Key


def _ahead(stage, key="easy5"):
    return stage.session(key).day


def test_drag_is_one_undo_step(stage):
    target = _ahead(stage) + timedelta(days=9)
    stage.drag("easy5", target)
    assert stage.document.performed == []
    stage.release(stage.spot_of(target))
    assert [(type(e), e.session, e.day) for e in stage.document.performed] == [
        (MoveSession, "easy5", target)
    ]
    assert stage.session("easy5").day == target
    assert stage.document.undo_stack.count() == 1
    stage.document.undo_stack.undo()
    assert stage.session("easy5").day == target - timedelta(days=9)
    assert stage.grid.cells.tile("easy5") is not None


def test_undo_while_carrying_empties_the_hand(stage):
    target = _ahead(stage) + timedelta(days=9)
    stage.drag("easy5", target)
    stage.release(stage.spot_of(target))
    stage.choose("hills5")
    stage.keys(Key.Key_Space, Key.Key_Right)
    stage.document.undo_stack.undo()
    assert not stage.grid.is_carrying
    assert stage.document.shown is stage.document.before


def test_every_move_of_a_drag_carries_the_same_gesture(stage):
    stage.drag("easy5", _ahead(stage) + timedelta(days=14))
    assert len(stage.document.tried) > 2
    assert len({edit.gesture for edit in stage.document.tried}) == 1


def test_two_drags_are_two_gestures(stage):
    for days in (2, 4):
        target = stage.session("easy5").day + timedelta(days=days)
        stage.drag("easy5", target)
        stage.release(stage.spot_of(target))
    first, second = stage.document.performed
    assert first.gesture != second.gesture


def test_week_totals_follow_every_move(stage):
    kept = stage.week_m(3), stage.week_m(2)
    start = stage.spot("easy5")
    over = stage.spot_of(_ahead(stage) + timedelta(days=7))
    stage.press(start)
    stage.move(start + (over - start) / 2 + QPoint(20, 0))
    stage.move(over)
    assert (stage.week_m(3), stage.week_m(2)) == (kept[0] - 13_000, kept[1] + 13_000)
    stage.move(start)
    assert (stage.week_m(3), stage.week_m(2)) == kept


def test_lanes_are_given_before_and_now_while_dragging(stage):
    stage.drag("long5", stage.session("long5").day + timedelta(days=2))
    lane = stage.storey.practice
    body = lane.body()
    columns = {column.now.to_go: column for column in lane.columns(body)}
    assert columns[3].now.carb_g == 0.0
    assert columns[3].before.carb_g > 0.0
    assert columns[2].now.carb_g > columns[2].before.carb_g


def test_escape_puts_a_dragged_session_back(stage):
    kept = stage.document.before
    stage.drag("easy5", _ahead(stage) + timedelta(days=9))
    assert stage.document.shown is not kept
    stage.keys(Key.Key_Escape)
    assert stage.document.shown is kept
    stage.release(stage.spot("easy6"))
    assert stage.document.performed == []


def test_another_button_does_not_drop(stage):
    target = _ahead(stage) + timedelta(days=9)
    stage.drag("easy5", target)
    QTest.mouseRelease(stage.grid, Qt.MouseButton.RightButton, pos=stage.spot_of(target))
    assert stage.grid.is_carrying
    assert stage.document.performed == []


def test_hiding_the_storey_puts_it_back(stage):
    stage.drag("easy5", _ahead(stage) + timedelta(days=9))
    stage.storey.hide()
    assert not stage.grid.is_carrying
    assert stage.document.shown is stage.document.before


def test_dropping_outside_the_grid_puts_it_back(stage):
    kept = stage.document.before
    stage.drag("easy5", _ahead(stage) + timedelta(days=9))
    outside = QPoint(20, 40)
    stage.move(outside)
    assert stage.document.shown is kept
    stage.release(outside)
    assert stage.document.performed == []
    assert not stage.grid.is_carrying


def test_dragging_home_again_is_no_step(stage):
    home = _ahead(stage)
    stage.drag("easy5", home + timedelta(days=9))
    stage.move(stage.spot_of(home))
    stage.release(stage.spot_of(home))
    assert stage.document.performed == []
    assert stage.document.shown is stage.document.before


def test_a_click_moves_nothing_but_the_selection(stage):
    at = stage.spot("hills5")
    stage.press(at)
    stage.move(at + QPoint(2, 1))
    stage.release(at + QPoint(2, 1))
    assert stage.document.tried == []
    assert (stage.selection.kind, stage.selection.key) == ("session", "hills5")


def test_a_done_session_stays(stage):
    stage.drag("easy0", _ahead(stage))
    assert len(stage.refused) == 1
    assert not stage.grid.is_carrying
    stage.release(stage.spot_of(_ahead(stage)))
    assert stage.document.performed == []


def test_the_race_stays(stage):
    stage.drag("race", _ahead(stage))
    assert len(stage.refused) == 1
    assert stage.document.shown is stage.document.before


def test_two_sessions_share_a_day(stage):
    target = stage.session("hills5").day
    stage.drag("easy5", target)
    stage.release(stage.spot_of(target))
    sessions = stage.document.before.project.block.on(target)
    assert {s.key for s in sessions} == {"easy5", "hills5"}
    tiles = stage.grid.cells.tiles_on(target)
    assert not tiles[0].rect.intersects(tiles[1].rect)


def test_keys_carry_a_session(stage):
    stage.choose("easy5")
    home = _ahead(stage)
    stage.keys(Key.Key_Return, Key.Key_Right, Key.Key_Down)
    assert stage.document.shown.project.block.session("easy5").day == home + timedelta(days=8)
    assert stage.document.performed == []
    stage.keys(Key.Key_Return)
    assert stage.session("easy5").day == home + timedelta(days=8)
    assert len(stage.document.performed) == 1


def test_escape_puts_a_carried_session_back(stage):
    stage.choose("easy5")
    stage.keys(Key.Key_Space, Key.Key_Left, Key.Key_Escape)
    assert stage.document.performed == []
    assert stage.document.shown is stage.document.before
    assert stage.grid.day == _ahead(stage)


def test_a_session_is_not_carried_past_the_ends(stage):
    stage.choose("easy7")
    day = _ahead(stage, "easy7")
    stage.keys(Key.Key_Space, *[Key.Key_Right] * 5, Key.Key_Space)
    assert stage.session("easy7").day == day + timedelta(days=7)


def test_leaving_the_grid_puts_a_carried_session_back(stage):
    stage.choose("easy5")
    stage.keys(Key.Key_Space, Key.Key_Right)
    stage.grid.clearFocus()
    assert not stage.grid.is_carrying
    assert stage.document.shown is stage.document.before


def test_a_session_removed_elsewhere_leaves_the_hand(stage):
    stage.drag("easy5", _ahead(stage) + timedelta(days=7))
    stage.document.perform(RemoveSession("easy5"))
    assert not stage.grid.is_carrying
