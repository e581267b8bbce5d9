"""What a drag repaints: enough, so that no trace is left, and no more than that."""

from datetime import timedelta

import numpy as np
import pytest
from msgspec.structs import replace
from PySide6.QtCore import QEvent, QObject, QPoint, Qt
from PySide6.QtGui import QImage, QRegion
from PySide6.QtWidgets import QApplication

from tests.buildup.conftest import TODAY, make_block


def settle():
    for _ in range(3):
        QApplication.processEvents()


class Painted(QObject):
    """Adds up where a widget is painted."""

    def __init__(self, widget):
        super().__init__(widget)
        self.region = QRegion()
        self.times = 0
        widget.installEventFilter(self)

    def eventFilter(self, watched, event):
        if event.type() is QEvent.Type.Paint:
            self.region += event.region()
            self.times += 1
        return False

    def forget(self):
        self.region, self.times = QRegion(), 0


def pixels(picture):
    image = picture.toImage().convertToFormat(QImage.Format.Format_RGB32)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return rows.astype(int)


def assert_no_trace(stage, where=""):
    """Assert that repainting parts came to what is painted whole.

    A smooth line may differ by a shade where it was clipped.
    """
    settle()
    window = stage.storey
    in_parts = pixels(window.screen().grabWindow(window.winId()))
    whole = pixels(window.grab())
    # Some platforms hand out the corner alone when pixels are scaled.
    height, width = in_parts.shape
    assert np.abs(in_parts - whole[:height, :width]).max() <= 3, where


@pytest.mark.parametrize(
    ("weeks", "view", "size"),
    [
        (9, (0, 9), (1200, 600)),
        (24, (0, 24), (1500, 520)),
        (30, (17, 12), (1100, 560)),
        (40, (9, 30), (1000, 560)),
    ],
)
def test_parts_repainted_while_dragging_make_the_same_picture(stage_of, weeks, view, size):
    stage = stage_of(block=make_block(weeks), size=size)
    index = weeks - 4
    stage.grid._axis.view(index - 6, 8)
    settle()
    key = f"long{index}"
    home = stage.session(key).day
    assert home > TODAY
    stage.press(stage.spot(key))
    stage.move(stage.spot(key) + QPoint(20, 4))
    stage.grid._axis.view(*view)
    for days in (1, -7, 2, -12, 8, 0):
        at = stage.spot_of(home + timedelta(days=days))
        stage.move(at + QPoint(3, 2))
        assert_no_trace(stage, days)
    stage.release(at)
    assert_no_trace(stage)


def test_keys_leave_no_trace_either(stage_of):
    stage = stage_of(size=(1100, 560))
    stage.choose("hills5")
    for key in (Qt.Key.Key_Down, Qt.Key.Key_Right, Qt.Key.Key_Up, Qt.Key.Key_Up):
        stage.keys(key)
        assert_no_trace(stage)


def _grown(rect, by=8):
    return QRegion(rect.toRect().adjusted(-by, -by, by, by))


def test_a_move_repaints_the_cells_it_touches_and_no_others(stage):
    grid, cells = stage.grid, stage.grid.cells
    home = stage.session("easy5").day
    old, new = home + timedelta(days=2), home + timedelta(days=10)
    stage.press(stage.spot("easy5"))
    stage.move(stage.spot_of(old))
    settle()
    hand = grid._marks()[-1].rect
    painted = Painted(grid)
    stage.move(stage.spot_of(new))
    settle()
    touched = _grown(hand) + _grown(grid._marks()[-1].rect)
    for day in (old, new):
        touched += _grown(cells.outer_cell(day))
    assert painted.times == 1
    assert painted.region.subtracted(touched).isEmpty()
    assert painted.region.contains(stage.spot_of(old))


def test_a_move_within_a_cell_repaints_the_hand_alone(stage):
    at = stage.spot_of(stage.session("easy5").day + timedelta(days=9))
    stage.press(stage.spot("easy5"))
    stage.move(at)
    settle()
    watched = [Painted(lane) for lane in (*stage.storey.lanes, stage.storey.overview)]
    grid = Painted(stage.grid)
    hand = stage.grid._marks()[-1].rect
    stage.move(at + QPoint(2, 1))
    settle()
    assert grid.region.subtracted(_grown(hand, 12)).isEmpty()
    assert [lane.times for lane in watched] == [0] * len(watched)


def test_lanes_repaint_the_weeks_that_changed(stage_of):
    block = make_block()
    # One week that keeps the scale where it is.
    stage = stage_of(
        block=block.with_session(replace(block.session("hills7"), climb_m=2e3, drop_m=2e3))
    )
    lane = stage.storey.climb
    stage.press(stage.spot("hills5"))
    stage.move(stage.spot("hills5") + QPoint(20, 0))
    settle()
    painted = Painted(lane)
    stage.move(stage.spot_of(stage.session("hills5").day + timedelta(days=7)))
    settle()
    columns = {c.now.to_go: c.rect for c in lane.columns(lane.body())}
    changed = _grown(columns[3]) + _grown(columns[2])
    assert painted.times == 1
    assert painted.region.subtracted(changed).isEmpty()


def test_a_scale_stays_still_while_a_trial_changes_little(stage):
    lane, ends = stage.storey.climb, stage.storey.climb.ends
    stage.drag("hills5", stage.session("hills6").day)
    assert max(w.climb_m for w in stage.document.shown.weeks) > ends[1]
    grown = lane.ends[1]
    assert grown >= max(w.climb_m for w in stage.document.shown.weeks)
    stage.document.drop_trial()
    assert lane.ends == ends


def test_nothing_is_painted_for_a_trial_that_changes_nothing(stage):
    settle()
    painted = [Painted(part) for part in (stage.grid, stage.storey.head, *stage.storey.lanes)]
    stage.storey.show_outlooks(stage.document.before, stage.document.shown)
    settle()
    assert [part.times for part in painted] == [0] * len(painted)
