"""A leg that is folded away: a narrow pleat through all lanes that says what lies in it."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QLineF, QRectF, Qt, Signal
from PySide6.QtGui import (
    QEnterEvent,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QWheelEvent,
)
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.lane import LABEL_PT, UNIT_PT, Align, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke

KEYS = (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space)


class Pleat(QWidget):
    """Lies over the lanes where the leg is; a click, or Enter, unfolds it."""

    opened = Signal(str)
    #: The pointer is over it, at x of the stack; None once it has left.
    pointed = Signal(object)
    #: The wheel was turned over it; the event, its place in this widget.
    wheeled = Signal(object)

    def __init__(self, key: str, parent: QWidget) -> None:
        super().__init__(parent)
        self.key = key
        self._name, self._figures = "", ""
        self._is_hot = False
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setMouseTracking(True)
        set_topic(self, "folded leg")

    def say(self, name: str, figures: str, tip: str) -> None:
        """Take over the name of the leg, its figures, and all of it in words."""
        if (name, figures) != (self._name, self._figures):
            self._name, self._figures = name, figures
            self.setToolTip(tip)
            self.setAccessibleName(tip)
            self.update()

    @property
    def text(self) -> str:
        """What it says."""
        return f"{self._name}  {self._figures}"

    def paintEvent(self, event: QPaintEvent) -> None:
        c = theme().colours
        box = QRectF(self.rect())
        with QPainter(self) as painter:
            painter.fillRect(box, c["lane" if self._is_hot else "panel"])
            painter.setPen(QPen(c["line"], Stroke.HAIR))
            # Creases: the leg is folded between its two stations.
            for share in (0.0, 0.12, 0.88):
                x = round(share * box.width())
                painter.drawLine(QLineF(x, 0.0, x, box.height()))
            edge = "teal" if self.hasFocus() else "strong_line"
            painter.setPen(QPen(c[edge], Stroke.HEAVY if self.hasFocus() else Stroke.HAIR))
            painter.drawLine(QLineF(0.5, 0.0, 0.5, box.height()))
            painter.drawLine(QLineF(box.right() - 0.5, 0.0, box.right() - 0.5, box.height()))
            self._write(painter, box)

    def _write(self, painter: QPainter, box: QRectF) -> None:
        """Write upward: the name over the figures, or all in one line where it is too narrow."""
        look = theme()
        bold, small = look.metrics(LABEL_PT, bold=True), look.metrics(UNIT_PT)
        painter.translate(0.0, box.height())
        painter.rotate(-90.0)
        length, across = box.height(), box.width()
        ink, soft = look.colours["ink"], look.colours["soft"]
        lines = (
            (self._name, look.font(LABEL_PT, bold=True), bold, ink),
            (self._figures, look.font(UNIT_PT), small, soft),
        )
        if across < bold.height() + small.height():
            is_large = across >= bold.height()
            metrics = bold if is_large else small
            if across >= metrics.height():
                font = look.font(LABEL_PT, bold=True) if is_large else look.font(UNIT_PT)
                text = metrics.elidedText(self.text, Qt.TextElideMode.ElideMiddle, length - 6.0)
                draw_text(painter, QRectF(0, 0, length, across), text, ink, font, CENTRE)
            return
        top = (across - bold.height() - small.height()) / 2.0
        for text, font, metrics, colour in lines:
            fits = metrics.elidedText(text, Qt.TextElideMode.ElideMiddle, length - 6.0)
            rect = QRectF(0.0, top, length, metrics.height())
            draw_text(painter, rect, fits, colour, font, CENTRE)
            top += metrics.height()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        event.setAccepted(event.button() is Qt.MouseButton.LeftButton)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        is_here = self.rect().contains(event.position().toPoint())
        if event.button() is Qt.MouseButton.LeftButton and is_here:
            self.opened.emit(self.key)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        self.pointed.emit(self.x() + event.position().x())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in KEYS:
            self.opened.emit(self.key)
        else:
            super().keyPressEvent(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        self.wheeled.emit(event)

    def enterEvent(self, event: QEnterEvent) -> None:
        self._is_hot = True
        self.update()

    def leaveEvent(self, event: QEvent) -> None:
        self._is_hot = False
        self.pointed.emit(None)
        self.update()

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.update()


CENTRE = Align.AlignCenter
