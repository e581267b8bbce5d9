"""Legs folded away: the others get their room, everything else goes on as before."""

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu

from ultraplanner_gui.edits.course import RemoveStation
from ultraplanner_gui.raceday.pleat import Pleat
from ultraplanner_gui.widgets.axis import PLEAT_PX

Key, LEFT = Qt.Key, Qt.MouseButton.LeftButton


def head(stage):
    return stage.storey.head


def fold_of(stage, key):
    """Where the fold of a leg can be clicked."""
    lane = head(stage)
    spot = next(s for s in lane.leg_spots(lane.body()) if s.leg.key == key)
    return spot.box.center().toPoint()


def pleats(stage):
    QApplication.processEvents()
    seen = {p.key: p for p in stage.storey.findChildren(Pleat) if p.isVisible()}
    return dict(sorted(seen.items()))


def x_of(stage, at_m):
    lane = stage.target
    return lane.x_of(at_m, lane.body())


def test_a_click_on_the_fold_folds_the_leg_and_a_click_on_the_pleat_opens_it(stage):
    was = x_of(stage, 30_000.0) - x_of(stage, 14_000.0)

    QTest.mouseClick(head(stage), LEFT, pos=fold_of(stage, "barn"))

    assert list(pleats(stage)) == ["barn"]
    assert x_of(stage, 30_000.0) - x_of(stage, 14_000.0) == pytest.approx(PLEAT_PX, abs=1.0)
    QTest.mouseClick(pleats(stage)["barn"], LEFT)
    assert pleats(stage) == {}
    assert x_of(stage, 30_000.0) - x_of(stage, 14_000.0) == pytest.approx(was)
    assert stage.undo.count() == 0


def test_the_pleat_says_which_leg_how_far_and_how_long(stage):
    stage.storey.folds.toggle("barn")

    text = pleats(stage)["barn"].text

    section = stage.kept("to-barn")
    assert "Ford to Barn" in text
    assert "16.0 km" in text
    assert stage.words.duration(section.moving_s) in text


def test_pleats_lie_over_every_lane_and_no_more(stage):
    stage.storey.folds.toggle("barn")
    pleat, body = pleats(stage)["barn"], stage.target.body()

    assert pleat.y() == head(stage).geometry().bottom() + 1
    assert pleat.geometry().bottom() + 1 == stage.storey.foot.y()
    assert pleat.x() == round(stage.target.x_of(14_000.0, body))
    assert pleat.geometry().right() + 1 == round(stage.target.x_of(30_000.0, body))


@pytest.mark.parametrize("measure", ["distance", "clock"])
def test_folds_stay_when_the_axis_is_switched(stage, measure):
    stage.storey.folds.choose(("barn", ""))
    stage.storey.choose_measure(measure)

    assert list(pleats(stage)) == ["", "barn"]
    assert all(p.width() <= PLEAT_PX + 1 for p in pleats(stage).values())


def test_keys_fold_the_leg_ahead_and_behind(stage):
    stage.selection.choose("station", "ford")

    QTest.keyClick(head(stage), Key.Key_F)
    assert stage.storey.folds.keys == {"barn"}
    QTest.keyClick(head(stage), Key.Key_F, Qt.KeyboardModifier.ShiftModifier)
    assert stage.storey.folds.keys == {"barn", "ford"}
    QTest.keyClick(head(stage), Key.Key_F)

    assert stage.storey.folds.keys == {"ford"}


def test_a_pleat_is_opened_by_keys(stage):
    stage.storey.folds.toggle("barn")

    QTest.keyClick(pleats(stage)["barn"], Key.Key_Return)

    assert stage.storey.folds.keys == frozenset()


def test_one_leg_always_stays_open(stage):
    stage.storey.folds.choose(("ford", "barn", "ridge", ""))
    assert len(stage.storey.folds.keys) == 3

    for key in ("ford", "barn", "ridge", ""):
        stage.storey.folds.choose({*stage.storey.folds.keys, key})

    assert len(stage.storey.folds.keys) == 3


@pytest.mark.parametrize("measure", ["distance", "clock"])
def test_a_station_at_a_pleat_is_dragged_and_takes_its_fold_along(stage, measure):
    stage.storey.choose_measure(measure)
    stage.storey.folds.toggle("barn")
    lane = head(stage)
    rect = next(rect for label, rect in lane.placed(lane.body()) if label.key == "barn")
    start = rect.center().toPoint()
    end = start + QPoint(60, 0)

    stage.drag(lane, start, end)
    stage.release(lane, end)

    at_m = stage.document.project.course.station("barn").at_m
    assert at_m > 31_000.0
    assert stage.undo.count() == 1
    right = pleats(stage)["barn"].geometry().right() + 1
    assert right == pytest.approx(lane.x_of(at_m, lane.body()), abs=1.0)


def test_a_token_beside_a_pleat_stays_under_the_pointer(stage):
    stage.storey.folds.toggle("ford")
    items = stage.document.project.fuel.items
    item = next(i for i in items if i.at_s > stage.kept("to-ford").leave_s + 4_000.0)
    start = stage.token(item.key)

    stage.drag(stage.fuel, start, start + QPoint(100, 0))

    assert abs(stage.token(item.key).x() - start.x() - 100) <= 7


def test_the_wheel_over_a_pleat_zooms_and_the_cursor_stands_in_it(stage):
    stage.storey.folds.toggle("barn")
    pleat, axis = pleats(stage)["barn"], stage.target.axis
    span, wide = axis.high - axis.low, pleat.width()
    at = QPointF(wide / 2.0, 40.0)
    turn = QWheelEvent(
        at,
        pleat.mapToGlobal(at),
        QPoint(),
        QPoint(0, 240),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.ControlModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(pleat, turn)

    assert axis.high - axis.low < span
    assert pleats(stage)["barn"].width() == pytest.approx(wide, abs=1.0)
    QTest.mouseMove(pleat, QPoint(wide // 2, 60))
    assert 14_000.0 < stage.storey.place_of_cursor() < 30_000.0


def test_marks_of_the_foot_leave_pleats_free_and_never_repeat(stage):
    for measure in ("distance", "clock"):
        stage.storey.choose_measure(measure)
        stage.storey.folds.choose(("barn", "ridge"))
        foot = stage.storey.foot
        marks = foot._marks(foot.body())
        texts = [text for _, text in marks]
        assert len(set(texts)) == len(texts) > 2
        for pleat in pleats(stage).values():
            assert not any(pleat.x() + 1 < x < pleat.geometry().right() for x, _ in marks)


def test_a_strip_has_no_pleats_and_gets_them_back(stage):
    stage.storey.folds.toggle("barn")

    stage.storey.set_strip(True)
    assert pleats(stage) == {}
    stage.storey.set_strip(False)

    assert list(pleats(stage)) == ["barn"]


def test_a_removed_station_takes_its_fold_with_it(stage):
    stage.storey.folds.toggle("ridge")
    stage.document.perform(RemoveStation("ridge"))

    assert pleats(stage) == {}
    assert stage.target.axis.folds == ()
    assert not stage.storey.title.unfold.isVisible()
    stage.undo.undo()
    assert list(pleats(stage)) == ["ridge"]


def test_the_title_offers_to_unfold_all(stage):
    title = stage.storey.title
    assert not title.unfold.isVisible()
    stage.storey.folds.choose(("barn", "ford"))
    assert title.unfold.isVisible()

    QTest.mouseClick(title.unfold, LEFT)

    assert pleats(stage) == {}
    assert not title.unfold.isVisible()


def test_the_menu_of_a_station_folds_both_legs_and_picks_it_up(stage):
    lane = head(stage)
    rect = next(rect for label, rect in lane.placed(lane.body()) if label.key == "barn")
    at = rect.center().toPoint()
    menu = QMenu()
    lane.hand.fill(menu, at.toPointF())
    actions = {action.text(): action for action in menu.actions()}

    assert stage.selection.key == "barn"
    actions["Fold away Ford to Barn"].trigger()
    assert stage.storey.folds.keys == {"barn"}
    actions["Move with the arrow keys"].trigger()
    assert lane.is_carrying
