"""One move of a drag repaints all that shows its figures, before the next move comes."""

from datetime import timedelta

import pytest
from PySide6.QtCore import QEvent, QObject, QPoint
from PySide6.QtWidgets import QApplication

from tests.whole.conftest import Shape
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.widgets.lane_cursor import LaneCursor
from ultraplanner_gui.widgets.rows import Rows


class Painted(QObject):
    """Counts how often each of some widgets is painted."""

    def __init__(self, parts):
        super().__init__()
        self.times = dict.fromkeys(parts, 0)
        self._parts = {id(part): name for name, part in parts.items()}
        for part in parts.values():
            part.installEventFilter(self)

    def eventFilter(self, watched, event):
        if event.type() is QEvent.Type.Paint and id(watched) in self._parts:
            self.times[self._parts[id(watched)]] += 1
        return False

    def forget(self):
        self.times = dict.fromkeys(self.times, 0)


@pytest.fixture
def hand(open_window, monkeypatch):
    # The line under the pointer is moved over the lanes and would have them painted anyway.
    monkeypatch.setattr(LaneCursor, "point", lambda self, x, at_once=True: None)
    hand = open_window()
    hand.window.deeds.demo()
    return hand


def _settle():
    for _ in range(5):
        QApplication.processEvents()


def _moved(hand, painted, widget, at):
    """Move the pointer once; return what was painted and what was not."""
    _settle()
    painted.forget()
    hand.move(widget, at)
    _settle()
    return (
        {name for name, times in painted.times.items() if times},
        {name for name, times in painted.times.items() if not times},
    )


def test_one_move_of_a_session_repaints_grid_week_lanes_and_ledger(hand):
    document, place = hand.window.document, hand.window.workplace
    grid = place.buildup.grid
    ahead = document.outlook.today + timedelta(weeks=2)
    session = next(
        s
        for s in document.project.block.sessions
        if s.kind is Kind.LONG and s.is_open and s.day > ahead and s.carb_g_per_h
    )
    names = ("distance", "climb", "longest", "practice")
    parts = dict(zip(names, place.buildup.lanes, strict=True))
    parts |= {"grid": grid, "ledger": place.ledger.findChild(Rows)}
    painted = Painted(parts)
    start = grid.cells.tile(session.key).rect.center().toPoint()
    same, other = (
        grid.cells.cell(session.day + timedelta(days=days)).center().toPoint() for days in (-1, 6)
    )
    hand.press(grid, start)
    hand.move(grid, same)
    assert _moved(hand, painted, grid, other) == (set(parts), set())
    assert _moved(hand, painted, grid, other + QPoint(2, 1)) == ({"grid"}, set(parts) - {"grid"})
    hand.release(grid, other)


def test_one_move_of_a_target_by_clock_repaints_every_lane_but_the_foot(hand):
    place, document = hand.window.workplace, hand.window.document
    place.raceday.choose_measure("clock")
    _settle()
    lane, section = place.raceday.target, document.outlook.sections[2]
    # The foot names the hours of a race that still begins and ends when it did.
    foot = place.raceday.foot
    lanes = [lane for lane in place.raceday.lanes if lane is not foot and lane.isVisible()]
    parts = {type(lane).__name__: lane for lane in lanes}
    parts["ledger"] = place.ledger.findChildren(Rows)[-1]
    painted = Painted(parts)
    x = lane.x_of((section.start_m + section.end_m) / 2, lane.body())
    start = hand.grip(lane, x, range(2, lane.height()), Shape.SizeVerCursor)
    hand.press(lane, start)
    hand.move(lane, start - QPoint(0, 5))
    at = start - QPoint(0, 8)
    assert _moved(hand, painted, lane, at) == (set(parts), set())
    assert _moved(hand, painted, lane, at)[0] == set()
    hand.release(lane, at)
