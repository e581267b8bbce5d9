"""What stands on the screen after each move of a drag is what a whole new painting gives."""

from functools import partial

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from tests.raceday.conftest import rest
from ultraplanner_gui.widgets.theme import theme

LEFT = Qt.MouseButton.LeftButton


def grip(lane, shape):
    """Where the pointer over *lane* says that something can be dragged."""
    body = lane.body()
    for x in range(round(body.center().x()), round(body.right())):
        for y in range(round(body.top()), round(body.bottom()), 2):
            QTest.mouseMove(lane, QPoint(x, y))
            if lane.cursor().shape() is shape:
                return QPoint(x, y)
    raise AssertionError("nothing to drag")


def by_name(lane):
    return (
        next(r for label, r in lane.placed(lane.body()) if label.key == "barn").center().toPoint()
    )


def by_stop(lane):
    spot = next(s for s in lane.stop_spots(lane.body()) if s.station.key == "barn")
    return QPoint(round(spot.right), round(lane.bar_top) + 6)


#: The lane, where in it the hand takes hold, and how far each move goes.
DRAGS = {
    "target": ("target", partial(grip, shape=Qt.CursorShape.SizeVerCursor), QPoint(0, 3)),
    "section end": ("target", partial(grip, shape=Qt.CursorShape.SizeHorCursor), QPoint(9, 0)),
    "token": ("fuel", partial(grip, shape=Qt.CursorShape.SizeHorCursor), QPoint(17, 0)),
    "station": ("head", by_name, QPoint(13, 0)),
    "stop": ("head", by_stop, QPoint(15, 0)),
    "light": ("light", lambda lane: lane.body().center().toPoint(), QPoint(11, 0)),
}


def on_screen(storey):
    """What the moves have left on the screen, and what is there once all is painted anew."""
    rest(storey)
    left = storey.screen().grabWindow(storey.winId()).toImage()
    for lane in storey.lanes:
        lane.update()
    QApplication.processEvents()
    return left, storey.screen().grabWindow(storey.winId()).toImage()


@pytest.fixture(params=["light", "dark"])
def look(request, qapp):
    theme().choose(request.param, 100)
    yield request.param
    theme().choose("light", 100)


@pytest.mark.parametrize("measure", ["distance", "clock"])
@pytest.mark.parametrize("name", DRAGS)
def test_every_move_leaves_a_whole_picture(stage_of, look, name, measure):
    stage = stage_of(size=(1200, 620))
    storey = stage.storey
    storey.choose_measure(measure)
    QApplication.processEvents()
    of, take, by = DRAGS[name]
    lane = getattr(storey, of)
    at = take(lane)
    kept = stage.document.shown
    QTest.mousePress(lane, LEFT, pos=at)
    for _ in range(3):
        at += by
        QTest.mouseMove(lane, at)
        left, anew = on_screen(storey)
        assert left == anew
    assert stage.document.shown is not kept
    assert left.width() == storey.width()
    QTest.mouseRelease(lane, LEFT, pos=at)
    left, anew = on_screen(storey)
    assert left == anew
