"""A light line through the lanes where the thing in the hand has snapped to, and its name."""

from __future__ import annotations

from PySide6.QtCore import QLineF, QRect, QRectF, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.widgets.lane import UNIT_PT, Align, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke

PAD_PX = 4.0


class SnapMark(QWidget):
    """Lies over the lanes and lets the mouse through."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setAttribute(Qt.WidgetAttribute.WA_NoSystemBackground)
        self._text, self._is_left = "", True
        self.hide()

    @property
    def text(self) -> str:
        """What it names; empty while nothing has snapped."""
        return self._text

    def leave(self) -> None:
        """Name nothing. Not hidden: each time it came back the lanes would be laid out anew."""
        if self._text:
            self._text = ""
            self.setGeometry(QRect())

    def stand_at(self, x: int, top: int, height: int, text: str) -> None:
        """Stand at *x*, the name of the place right of the line, or left where there is room."""
        parent = self.parentWidget()
        metrics = theme().metrics(UNIT_PT, bold=True)
        wide = round(metrics.horizontalAdvance(text) + 3.0 * theme().px(PAD_PX)) + 1
        is_left = parent is not None and x + wide > parent.width()
        place = QRect(x - wide + 1 if is_left else x, top, wide, height)
        if (text, is_left) != (self._text, self._is_left):
            self._text, self._is_left = text, is_left
            self.update()
        if place != self.geometry():
            self.setGeometry(place)
        if not self.isVisible():
            self.raise_()
            self.show()

    def paintEvent(self, event: QPaintEvent) -> None:
        look = theme()
        pad, high = look.px(PAD_PX), look.metrics(UNIT_PT, bold=True).height()
        x = self.width() - 1.0 if self._is_left else 0.0
        with QPainter(self) as painter:
            painter.setPen(QPen(look.colours["teal"], Stroke.HAIR, Qt.PenStyle.DashLine))
            painter.drawLine(QLineF(x, 0.0, x, float(self.height())))
            left = 0.0 if self._is_left else pad
            box = QRectF(left, 1.0, self.width() - 1.0 - pad, high + 1.0)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(look.colours["teal"], Stroke.HAIR))
            painter.setBrush(look.colours["panel"])
            painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 2.0, 2.0)
            font, ink = look.font(UNIT_PT, bold=True), look.colours["ink"]
            draw_text(painter, box, self._text, ink, font, Align.AlignCenter)
