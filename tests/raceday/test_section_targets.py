import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from ultraplanner_gui.edits.course import SetSectionTarget
from ultraplanner_gui.raceday import target_lane

Key = Qt.Key


def test_drag_of_an_edge_shows_before_and_after_on_every_move(stage):
    seen = []
    stage.document.changed.connect(lambda *_: seen.append(stage.shown("to-ford").end_m))

    stage.drag(stage.target, stage.edge("to-ford"), stage.edge("to-ford") + QPoint(50, 0))

    # Two moves onto one whole kilometre are one change.
    assert len(seen) >= 8
    assert seen == sorted(seen)
    assert stage.kept("to-ford").end_m == 14_000.0
    assert seen[-1] == pytest.approx(14_000.0 + 50 * 60_000 / stage.target.body().width(), abs=60)


def test_drag_of_an_edge_is_one_undo_step_that_moves_the_station(stage):
    end = stage.edge("to-ford") + QPoint(50, 0)
    stage.drag(stage.target, stage.edge("to-ford"), end)
    there = stage.shown("to-ford").end_m
    assert stage.undo.count() == 0

    stage.release(stage.target, end)

    assert stage.undo.count() == 1
    assert stage.document.project.course.station("ford").at_m == there
    stage.undo.undo()
    assert stage.kept("to-ford").end_m == 14_000.0


def test_edge_cannot_be_dragged_over_its_neighbour(stage):
    end = stage.edge("to-barn") + QPoint(60, 0)

    stage.drag(stage.target, stage.edge("to-ford"), end)
    stage.release(stage.target, end)

    assert stage.kept("to-ford").end_m < stage.kept("to-barn").end_m - 99.0
    assert any("no length" in why for why in stage.refused)


@pytest.mark.parametrize(("by", "is_faster"), [(-6, True), (6, False)])
def test_drag_of_a_top_sets_the_target(stage, by, is_faster):
    was = stage.kept("to-barn")
    start = stage.top("to-barn")
    end = start + QPoint(0, by)

    stage.drag(stage.target, start, end)
    shown = stage.shown("to-barn")
    stage.release(stage.target, end)

    fixed = stage.document.project.course.section("to-barn").target_s
    assert (shown.moving_s < was.moving_s) is is_faster
    assert fixed % 10.0 == 0.0
    assert stage.kept("to-barn").moving_s == pytest.approx(fixed, abs=1.0)
    assert stage.kept("to-barn").is_fixed
    assert stage.undo.count() == 1


def test_top_follows_the_pointer(stage):
    end = stage.top("to-barn") + QPoint(0, -5)

    stage.drag(stage.target, stage.top("to-barn"), end)

    assert abs(stage.top("to-barn").y() - end.y()) <= 1


def test_finish_stays_where_it_was_while_a_target_moves(stage):
    end = stage.top("to-barn") + QPoint(0, -6)
    stage.drag(stage.target, stage.top("to-barn"), end)

    assert stage.document.shown.target.finish_s == pytest.approx(9 * 3600.0)
    others = [s.key for s in stage.document.before.sections if s.key != "to-barn"]
    assert all(stage.shown(k).moving_s > stage.kept(k).moving_s for k in others)


def test_escape_puts_a_drag_back(stage):
    end = stage.edge("to-ford") + QPoint(40, 0)
    stage.drag(stage.target, stage.edge("to-ford"), end)

    QTest.keyClick(stage.target, Key.Key_Escape)
    assert stage.document.shown is stage.document.before
    stage.move(stage.target, end + QPoint(20, 0))
    stage.release(stage.target, end)

    assert stage.undo.count() == 0
    assert stage.kept("to-ford").end_m == 14_000.0


def test_two_drags_are_two_steps(stage):
    for by in (20, 20):
        end = stage.edge("to-ford") + QPoint(by, 0)
        stage.drag(stage.target, stage.edge("to-ford"), end)
        stage.release(stage.target, end)

    assert stage.undo.count() == 2


def test_click_chooses_and_changes_nothing(stage):
    at = QPoint(stage.top("to-barn").x(), round(stage.target.body().bottom()) - 3)

    QTest.mouseClick(stage.target, Qt.MouseButton.LeftButton, pos=at)

    assert (stage.selection.kind, stage.selection.key) == ("section", "to-barn")
    assert stage.undo.count() == 0


def test_double_click_frees_a_fixed_target(stage):
    end = stage.top("to-barn") + QPoint(0, -6)
    stage.drag(stage.target, stage.top("to-barn"), end)
    stage.release(stage.target, end)

    QTest.mouseDClick(stage.target, Qt.MouseButton.LeftButton, pos=stage.top("to-barn"))

    assert not stage.kept("to-barn").is_fixed


def test_keys_choose_pick_up_and_set_the_target(stage):
    stage.keys(stage.target, Key.Key_Right, Key.Key_Return)
    assert stage.selection.key == "to-barn"
    assert stage.target.is_carrying
    was_s = stage.kept("to-barn").moving_s

    stage.keys(stage.target, Key.Key_Up, Key.Key_Up, Key.Key_Up)
    assert stage.shown("to-barn").moving_s == pytest.approx(was_s - 180.0, abs=31.0)
    assert stage.undo.count() == 0
    stage.keys(stage.target, Key.Key_Return)

    assert stage.undo.count() == 1
    assert stage.document.project.course.section("to-barn").target_s % 60.0 == 0.0


def test_keys_move_the_end_by_a_hundred_metres(stage):
    stage.keys(stage.target, Key.Key_Space, Key.Key_Right, Key.Key_Right, Key.Key_Left)
    stage.keys(stage.target, Key.Key_Space)

    assert stage.kept("to-ford").end_m == 14_100.0
    assert stage.undo.count() == 1


def test_escape_puts_back_what_the_keys_carried(stage):
    stage.keys(stage.target, Key.Key_Space, Key.Key_Right, Key.Key_Escape)

    assert not stage.target.is_carrying
    assert stage.document.shown is stage.document.before
    assert stage.undo.count() == 0


def test_target_and_end_carried_in_one_go_are_both_kept(stage):
    stage.keys(stage.target, Key.Key_Space, Key.Key_Up, Key.Key_Right, Key.Key_Space)

    section = stage.document.project.course.section("to-ford")
    assert section.target_s is not None
    assert stage.kept("to-ford").end_m == 14_100.0
    assert stage.undo.count() == 2


def test_delete_frees_the_chosen_target(stage):
    stage.keys(stage.target, Key.Key_Space, Key.Key_Up, Key.Key_Space, Key.Key_Delete)

    assert not stage.kept("to-ford").is_fixed


def test_leaving_the_lane_puts_back_what_the_keys_carried(stage):
    stage.keys(stage.target, Key.Key_Space, Key.Key_Right)

    stage.fuel.setFocus()

    assert stage.document.shown is stage.document.before
    assert not stage.target.is_carrying


def test_undo_while_carrying_empties_the_hand(stage):
    stage.keys(stage.target, Key.Key_Space, Key.Key_Right, Key.Key_Space)
    stage.keys(stage.target, Key.Key_Space, Key.Key_Right)

    stage.undo.undo()
    stage.keys(stage.target, Key.Key_Space)

    assert stage.undo.count() == 1
    assert stage.kept("to-ford").end_m == 14_000.0


def test_finish_is_not_moved_by_the_keys(stage):
    stage.selection.choose("section", "finish")
    stage.keys(stage.target, Key.Key_Space, Key.Key_Left, Key.Key_Space)

    assert stage.undo.count() == 0
    assert any("finish stays" in why for why in stage.refused)


def test_keys_begin_at_what_was_chosen_elsewhere(stage):
    stage.selection.choose("section", "to-ridge")

    stage.keys(stage.target, Key.Key_Left)

    assert stage.selection.key == "to-barn"


def test_screen_reader_is_told_what_is_chosen_and_carried(stage):
    stage.keys(stage.target, Key.Key_Right)
    said = stage.target.accessibleDescription()
    assert said.startswith("To Barn: ")

    stage.keys(stage.target, Key.Key_Space, Key.Key_Up)
    section = stage.shown("to-barn")

    assert stage.target.accessibleDescription() != said
    assert stage.words.duration(section.moving_s) in stage.target.accessibleDescription()


def test_readout_says_pace_and_time(stage):
    said = stage.target.readout(stage.top("to-barn").toPointF())

    section = stage.kept("to-barn")
    assert stage.words.pace(section.pace_s_per_m) in said
    assert stage.words.duration(section.moving_s) in said


def test_what_a_drag_left_behind_is_gone_when_it_ends(stage):
    start = stage.edge("to-ford")
    stage.drag(stage.target, start, start + QPoint(40, 0))
    stage.storey.grab()
    stage.release(stage.target, start + QPoint(40, 0))
    ended = stage.storey.grab().toImage()
    for lane in stage.storey.lanes:
        lane.update()

    assert stage.storey.grab().toImage() == ended


@pytest.mark.parametrize("height", range(330, 830, 30))
def test_every_pace_stands_inside_its_step(stage_of, monkeypatch, height):
    stage = stage_of(size=(1144, height))
    fast = SetSectionTarget("to-ford", 0.7 * stage.kept("to-ford").moving_s)
    assert stage.document.perform(fast)
    lane, written = stage.target, []
    monkeypatch.setattr(
        target_lane, "draw_text", lambda _p, rect, text, *more: written.append((rect, text))
    )
    lane.update()
    lane.grab()
    steps = lane._steps(lane.body(), lane._scale(lane.body()))
    assert lane.height() < 40 or height > 330
    paces = {rect.center().x(): (rect, text) for rect, text in written if ":" in text}
    assert len(paces) == len(steps)
    for step in steps:
        rect, text = paces[step.rect.center().x()]
        assert text == stage.words.pace(step.section.pace_s_per_m)
        assert step.top <= rect.top() < rect.bottom() < step.foot
