"""A week dragged over another in the head: the two change places."""

from datetime import timedelta

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

LEFT = Qt.MouseButton.LeftButton
WEEK = timedelta(days=7)


def _spot(stage, to_go):
    axis, head = stage.storey._axis, stage.storey.head
    body = head.body()
    index = next(n for n, week in enumerate(axis.weeks) if week.to_go == to_go)
    left, right = axis.edges(index, body.width())
    return QPoint(round(body.left() + (left + right) / 2), 8)


def _drag(stage, one, other):
    head = stage.storey.head
    QTest.mousePress(head, LEFT, pos=_spot(stage, one))
    for part in range(1, 6):
        way = _spot(stage, other) - _spot(stage, one)
        QTest.mouseMove(head, _spot(stage, one) + QPoint(way.x() * part // 5, 0))
    QTest.mouseMove(head, _spot(stage, other))


def test_a_click_selects_the_week(stage):
    QTest.mouseClick(stage.storey.head, LEFT, pos=_spot(stage, 2))
    start = next(w.start for w in stage.document.before.weeks if w.to_go == 2)
    assert (stage.selection.kind, stage.selection.key) == ("week", start.isoformat())
    assert stage.document.tried == []


def test_weeks_change_places_in_one_step(stage):
    kept = stage.week_m(3), stage.week_m(1)
    days = stage.session("easy5").day, stage.session("easy7").day
    _drag(stage, 3, 1)
    assert (stage.week_m(3), stage.week_m(1)) == pytest.approx(kept[::-1])
    assert stage.document.performed == []
    QTest.mouseRelease(stage.storey.head, LEFT, pos=_spot(stage, 1))
    assert (stage.session("easy5").day, stage.session("easy7").day) == days[::-1]
    assert stage.document.undo_stack.count() == 1


def test_the_race_week_takes_no_other(stage):
    _drag(stage, 3, 0)
    QTest.mouseRelease(stage.storey.head, LEFT, pos=_spot(stage, 0))
    assert stage.refused
    # The last good place on the way counts, as with every drag.
    assert stage.session("race").day == stage.document.project.race.day


def test_hiding_puts_the_week_back(stage):
    _drag(stage, 3, 2)
    assert stage.document.shown is not stage.document.before
    stage.storey.hide()
    assert stage.document.shown is stage.document.before
    assert stage.document.performed == []


def test_escape_puts_the_week_back_wherever_the_focus_is(stage):
    stage.grid.setFocus()
    _drag(stage, 3, 1)
    assert stage.document.shown is not stage.document.before
    QTest.keyClick(stage.grid, Qt.Key.Key_Escape)
    assert stage.document.shown is stage.document.before
    QTest.mouseRelease(stage.storey.head, LEFT, pos=_spot(stage, 1))
    assert stage.document.performed == []


def test_the_keys_are_free_again_once_a_week_is_put_down(stage):
    _drag(stage, 3, 1)
    QTest.mouseRelease(stage.storey.head, LEFT, pos=_spot(stage, 1))
    assert len(stage.document.performed) == 1
    stage.choose("easy6")
    stage.keys(Qt.Key.Key_Space, Qt.Key.Key_Right)
    assert stage.grid.is_carrying
    stage.keys(Qt.Key.Key_Escape)
    assert not stage.grid.is_carrying
