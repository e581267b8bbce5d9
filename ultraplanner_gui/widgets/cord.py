"""How a check stands, drawn as a cord: taut, frayed, parted."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from ultraplanner_gui.engine.state import State
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke


def draw_cord(painter: QPainter, rect: QRectF, state: State) -> None:
    """Draw the cord of *state* across *rect*; its shape alone tells the three apart."""
    y, left, right = rect.center().y(), rect.left(), rect.right()
    colour = {State.HOLDS: "moss", State.STRAINS: "ochre", State.BREAKS: "clay"}[state]
    pen = QPen(
        theme().colours[colour], Stroke.HEAVY, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap
    )
    painter.setPen(pen)
    if state is State.HOLDS:
        painter.drawLine(QPointF(left, y), QPointF(right, y))
        return
    middle, third = (left + right) / 2, rect.width() / 3
    if state is State.STRAINS:
        painter.drawLine(QPointF(left, y), QPointF(left + third, y))
        painter.drawLine(QPointF(right - third, y), QPointF(right, y))
        painter.setPen(QPen(pen.color(), Stroke.HAIR))
        for lift in (-2.5, 0.0, 2.5):
            painter.drawLine(QPointF(left + third, y), QPointF(middle, y + lift))
            painter.drawLine(QPointF(middle, y + lift), QPointF(right - third, y))
        return
    for end, side in ((left, 1.0), (right, -1.0)):
        knot = end + side * third
        painter.setPen(pen)
        painter.drawLine(QPointF(end, y), QPointF(knot, y))
        painter.setPen(QPen(pen.color(), Stroke.HAIR))
        for lift in (-3.0, 3.0):
            painter.drawLine(QPointF(knot, y), QPointF(knot + side * 3.0, y + lift))
