import math
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QHelpEvent, QImage, QPainter
from PySide6.QtWidgets import QApplication, QToolTip

from ultraplanner_gui.widgets.lane import Lane, Scale, draw_level, nice_ticks
from ultraplanner_gui.widgets.theme import theme

numbers = st.floats(-1e6, 1e6)


class Bare(Lane):
    """A lane that shows one tick and says where the pointer is."""

    fault = False

    def paint_body(self, painter, body):
        if self.fault:
            raise ValueError("cannot be drawn")
        scale = Scale(0.0, 10.0, body.top(), body.bottom())
        self.paint_ticks(painter, body, scale, [(5.0, "5"), (5.1, "5.1")])

    def readout(self, at):
        return f"at {at.x():.0f}" if self.body().contains(at) else ""


@pytest.fixture
def lane(qtbot):
    lane = Bare("Distance", "km a week", 60.0)
    qtbot.addWidget(lane)
    lane.resize(500, 60)
    lane.show()
    return lane


@given(numbers, st.floats(1e-3, 1e6), st.integers(1, 12))
def test_ticks_are_round_inside_and_no_more_than_asked(low, span, at_most):
    high = low + span
    ticks = nice_ticks(low, high, at_most)

    assert len(ticks) <= at_most + 1
    assert all(low - 1e-6 * span <= t <= high + 1e-6 * span for t in ticks)
    steps = [b - a for a, b in pairwise(ticks)]
    for step in steps:
        figure = step / 10 ** math.floor(math.log10(step) + 1e-9)
        assert min(abs(figure - f) for f in (1.0, 2.0, 5.0, 10.0)) < 1e-3


@pytest.mark.parametrize(
    ("low", "high", "at_most"),
    [(1.0, 1.0, 5), (2.0, 1.0, 5), (0.0, math.inf, 5), (math.nan, 1.0, 5), (0.0, 1.0, 0)],
)
def test_no_ticks_where_there_is_no_scale(low, high, at_most):
    assert nice_ticks(low, high, at_most) == []


@given(numbers, st.floats(1.0, 1e6), st.floats(0.0, 300.0), st.floats(2.0, 300.0), numbers)
def test_value_takes_back_what_y_gives(low, span, top, height, value):
    scale = Scale(low, low + span, top, top + height)

    assert scale.value(scale.y(value)) == pytest.approx(value, rel=1e-6, abs=1e-6 * span)


def test_low_lies_at_the_bottom():
    scale = Scale(0.0, 10.0, 5.0, 55.0)

    assert (scale.y(0.0), scale.y(10.0), scale.y(5.0)) == (55.0, 5.0, 30.0)


def test_empty_scale_puts_everything_at_the_bottom():
    assert Scale(3.0, 3.0, 0.0, 50.0).y(7.0) == 50.0


def test_level_line_lies_on_whole_pixels(qapp):
    image = QImage(20, 20, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    with QPainter(image) as painter:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        draw_level(painter, (0.0, 20.0), 9.4, QColor("black"))

    rows = [y for y in range(20) if image.pixelColor(10, y) != QColor("white")]
    assert len(rows) == 1
    assert image.pixelColor(10, rows[0]) == QColor("black")


def test_name_and_unit_are_said_to_a_screen_reader(lane):
    assert lane.accessibleName() == "Distance, km a week"
    lane.set_unit("mi a week")
    lane.rename("Way")
    assert lane.accessibleName() == "Way, mi a week"


def test_head_and_body_do_not_overlap_at_any_text_size(lane):
    for percent in (80, 100, 200):
        theme().choose("light", percent)
        image = lane.grab().toImage()
        assert lane.body().left() == pytest.approx(118.0 * percent / 100)
        ground = image.pixelColor(round(lane.body().left()) + 30, 10)
        assert ground == theme().colours["lane"]
    theme().choose("light", 100)


def test_readout_becomes_the_tool_tip(lane, monkeypatch):
    said = []
    monkeypatch.setattr(QToolTip, "showText", lambda at, text, widget: said.append(text))
    for at in (QPoint(200, 20), QPoint(5, 20)):
        QApplication.sendEvent(lane, QHelpEvent(QEvent.Type.ToolTip, at, lane.mapToGlobal(at)))

    assert said == ["at 200"]


def test_fault_in_painting_leaves_the_painter_closed(lane):
    lane.fault = True

    # A painter left open would be a warning of Qt, and that fails a test.
    for _ in range(3):
        with pytest.raises(ValueError, match=r"cannot be drawn|override"):
            lane.repaint()
    lane.fault = False
    lane.repaint()


def test_lane_of_any_size_has_a_body(lane):
    lane.resize(1, 1)

    assert lane.body().width() >= 1.0
    assert lane.body().height() >= 1.0
    assert isinstance(lane.body(), QRectF)
    assert lane.readout(QPointF(0.0, 0.0)) == ""


def test_focus_is_shown(lane):
    lane.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    without = lane.grab().toImage()
    lane.setFocus()
    lane.activateWindow()
    QApplication.processEvents()

    assert lane.hasFocus()
    assert lane.grab().toImage() != without
