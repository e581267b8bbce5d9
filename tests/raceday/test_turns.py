"""Lanes that wait for a turn while something is in the hand, so that it follows the hand."""

from functools import partial

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from tests.raceday.conftest import rest

LEFT = Qt.MouseButton.LeftButton
TALL = (1200, 620)


@pytest.fixture
def stage(stage_of):
    return stage_of(size=TALL)


def note(names, lane, paint, *args):
    names.append(type(lane).__name__)
    paint(*args)


def painted(stage, monkeypatch):
    """Who is painted anew, in order."""
    names = []
    for lane in stage.storey.lanes:
        monkeypatch.setattr(lane, "paint_picture", partial(note, names, lane, lane.paint_picture))
    return names


def make_slow(stage, seconds=1.0):
    for lane in stage.storey.lanes:
        lane.paint_s = seconds


def hold(stage):
    """Take an item into the hand."""
    start = stage.token(stage.document.project.fuel.items[4].key)
    QTest.mousePress(stage.fuel, LEFT, pos=start)
    QApplication.processEvents()
    return start


def move(stage, at, seconds):
    make_slow(stage, seconds)
    QTest.mouseMove(stage.fuel, at)
    QApplication.processEvents()


def test_where_all_is_slow_the_lane_in_the_hand_alone_is_painted(stage, monkeypatch):
    start = hold(stage)
    names = painted(stage, monkeypatch)
    move(stage, start + QPoint(60, 0), 1.0)
    assert names == ["FuelLane"]
    assert any(lane.waits for lane in stage.storey.lanes)


def test_figures_one_drags_by_never_wait(stage, monkeypatch):
    head = stage.storey.head
    spot = next(r for label, r in head.placed(head.body()) if label.key == "barn").center()
    QTest.mousePress(head, LEFT, pos=spot.toPoint())
    QApplication.processEvents()
    names = painted(stage, monkeypatch)
    make_slow(stage)
    QTest.mouseMove(head, spot.toPoint() + QPoint(30, 0))
    QApplication.processEvents()
    waiting = {type(lane).__name__ for lane in stage.storey.lanes if lane.waits}
    assert {"StationHead", "TargetLane", "InHandLane"} <= set(names)
    assert "GlycogenLane" in waiting


def test_none_waits_longer_than_so_long(stage, monkeypatch):
    monkeypatch.setattr("ultraplanner_gui.raceday.turns.LONGEST_WAIT_S", 0.0)
    monkeypatch.setattr("ultraplanner_gui.raceday.turns.PAUSE_MS", 60_000)
    start = hold(stage)
    names = painted(stage, monkeypatch)
    for k in range(1, 7):
        before = len(names)
        move(stage, start + QPoint(40 * k, 0), 1.0)
        assert len(names) - before <= 2, "one that was due besides the one in the hand"
    others = {name for name in names if name != "FuelLane"}
    assert names.count("FuelLane") == 6
    assert {"GlycogenLane", "FluidLane"} <= others


def test_where_all_is_quick_none_waits(stage, monkeypatch):
    # However long the reckoning takes here.
    monkeypatch.setattr("ultraplanner_gui.raceday.turns.FRAME_S", 60.0)
    start = hold(stage)
    names = painted(stage, monkeypatch)
    move(stage, start + QPoint(60, 0), 0.0)
    assert len(names) == len(set(names)) > 2
    assert not any(lane.waits for lane in stage.storey.lanes)


def test_all_are_painted_once_the_hand_rests(stage, monkeypatch):
    start = hold(stage)
    names = painted(stage, monkeypatch)
    move(stage, start + QPoint(60, 0), 1.0)
    rest(stage.storey)
    assert {"FuelLane", "GlycogenLane", "FluidLane"} <= set(names)
    assert len(names) == len(set(names))


@pytest.mark.parametrize("end", [Qt.Key.Key_Escape, None])
def test_none_waits_once_it_is_put_down_or_back(stage, end):
    start = hold(stage)
    move(stage, start + QPoint(60, 0), 1.0)
    if end is None:
        QTest.mouseRelease(stage.fuel, LEFT, pos=start + QPoint(60, 0))
    else:
        QTest.keyClick(stage.fuel, end)
    assert not any(lane.waits for lane in stage.storey.lanes)


def test_another_view_is_painted_at_once(stage):
    start = hold(stage)
    move(stage, start + QPoint(60, 0), 1.0)
    stage.storey.choose_measure("clock")
    assert not any(lane.waits for lane in stage.storey.lanes)
