"""The shelf of kinds: by mouse into the grid, by keys on the day of the cursor."""

from datetime import timedelta

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from ultraplanner_gui.buildup.shelf import ON_SHELF
from ultraplanner_gui.edits.block import AddSession
from ultraplanner_gui.plan.block import Kind

Key, LEFT = Qt.Key, Qt.MouseButton.LeftButton


@pytest.fixture
def shelf(stage):
    stage.keys(Key.Key_K)
    return stage.storey._shelf


def _row(shelf, kind):
    return shelf._rect_of(ON_SHELF.index(kind)).center().toPoint()


def _over(stage, shelf, day):
    return shelf.mapFrom(stage.storey, stage.grid.mapTo(stage.storey, stage.spot_of(day)))


def _drag(stage, shelf, kind, day):
    start, end = _row(shelf, kind), _over(stage, shelf, day)
    QTest.mousePress(shelf, LEFT, pos=start)
    for part in range(1, 9):
        QTest.mouseMove(shelf, start + (end - start) * part / 8)
    QTest.mouseMove(shelf, end)


def test_a_kind_dragged_in_is_shown_as_it_would_be_and_one_step(stage, shelf):
    day = stage.session("easy5").day + timedelta(days=2)
    before = len(stage.document.project.block.sessions)
    _drag(stage, shelf, Kind.TEMPO, day)
    assert [s.kind for s in stage.document.shown.project.block.on(day)] == [Kind.TEMPO]
    assert len(stage.document.project.block.sessions) == before
    QTest.mouseRelease(shelf, LEFT, pos=_over(stage, shelf, day))
    assert [type(e) for e in stage.document.performed] == [AddSession]
    (new,) = stage.document.project.block.on(day)
    assert new.kind is Kind.TEMPO
    assert stage.selection.key == new.key
    assert not shelf.isVisible()


def test_a_kind_let_go_outside_the_grid_comes_in_nowhere(stage, shelf):
    kept = stage.document.project
    _drag(stage, shelf, Kind.LONG, stage.session("easy5").day + timedelta(days=2))
    outside = QPoint(-4000, -4000)
    QTest.mouseMove(shelf, outside)
    QTest.mouseRelease(shelf, LEFT, pos=outside)
    assert stage.document.project is kept
    assert stage.document.shown is stage.document.before
    assert not stage.grid.is_carrying


def test_a_kind_is_as_the_build_up_has_it(stage, shelf):
    day = stage.session("hills5").day + timedelta(days=1)
    _drag(stage, shelf, Kind.HILLS, day)
    QTest.mouseRelease(shelf, LEFT, pos=_over(stage, shelf, day))
    (new,) = stage.document.project.block.on(day)
    usual = stage.session("hills5")
    assert (new.distance_m, new.climb_m, new.effort) == (
        usual.distance_m,
        usual.climb_m,
        usual.effort,
    )
    assert new.done is None


def test_by_keys_a_kind_comes_on_the_day_of_the_cursor(stage):
    stage.choose("easy5")
    day = stage.session("easy5").day
    stage.keys(Key.Key_K)
    shelf = stage.storey._shelf
    for _ in range(ON_SHELF.index(Kind.LONG) - 1):
        QTest.keyClick(shelf, Key.Key_Down)
    QTest.keyClick(shelf, Key.Key_Return)
    assert {s.kind for s in stage.document.project.block.on(day)} == {Kind.EASY, Kind.LONG}
    assert not shelf.isVisible()


def test_escape_closes_the_shelf(stage, shelf):
    QTest.keyClick(shelf, Key.Key_Escape)
    assert not shelf.isVisible()
    assert stage.document.performed == []


def test_there_is_no_second_race_on_the_shelf():
    assert Kind.RACE not in ON_SHELF
    assert len(ON_SHELF) == len(Kind) - 1
