"""What lies over the lanes of a stack: their lower edges, the shared cursor, and its readout."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QPointF, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QEnterEvent, QMouseEvent, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QPushButton, QWidget

from ultraplanner_gui.widgets.lane import LABEL_PT, Align, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke

BETWEEN = "   "
READOUT_PAD_PX = 6.0

OPEN_PX = 14.0


class Edge(QWidget):
    """The lower edge of a lane: dragged it sizes the lane, a double click undoes that."""

    dragged = Signal(object)
    released = Signal()
    reset = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setCursor(Qt.CursorShape.SizeVerCursor)
        self.setToolTip(self.tr("Drag to size the lane above; a double click undoes it"))
        self._grab: float | None = None
        self._is_hot = False

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is Qt.MouseButton.LeftButton:
            self._grab = event.position().y()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._grab is not None:
            self.dragged.emit(self.y() + event.position().y() - self._grab)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._grab is not None and event.button() is Qt.MouseButton.LeftButton:
            self._grab = None
            self.update()
            self.released.emit()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        self._grab = None
        self.reset.emit()

    def enterEvent(self, event: QEnterEvent) -> None:
        self._is_hot = True
        self.update()

    def leaveEvent(self, event: QEvent) -> None:
        self._is_hot = False
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._is_hot or self._grab is not None:
            with QPainter(self) as painter:
                middle = round(self.height() / 2) - 1
                painter.fillRect(QRect(0, middle, self.width(), 2), theme().colours["teal"])


class _Overlay(QWidget):
    """Something drawn over the lanes that lets the mouse through."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setAttribute(Qt.WidgetAttribute.WA_NoSystemBackground)
        self.hide()


class DropMark(_Overlay):
    """Where a lane that is dragged by its head would come to stand."""

    def stand_at(self, y: int) -> None:
        """Show it at *y*."""
        parent = self.parentWidget()
        assert parent is not None
        self.setGeometry(0, y - 2, parent.width(), 4)
        self.raise_()
        self.show()

    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), theme().colours["teal"])


class HairLine(_Overlay):
    """A line through all lanes, or two at the ends of a stretch.

    Only what it leaves and where it comes to is painted anew.
    """

    def stand_at(self, stretch: QRect) -> None:
        """Show it at the left end of *stretch* and, if that is wider than a line, at its right."""
        if self.geometry() != stretch:
            self.setGeometry(stretch)
        if not self.isVisible():
            self.raise_()
            self.show()

    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self) as painter:
            colour = theme().colours["ink"]
            colour.setAlphaF(0.75 if self.width() == 1 else 0.4)
            for x in {0, self.width() - 1}:
                painter.fillRect(QRect(x, 0, 1, self.height()), colour)


class Readout(_Overlay):
    """Figures at the cursor, in one line; the last ones are left out where there is no room."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._text = ""

    @property
    def text(self) -> str:
        """What it says."""
        return self._text if self.isVisible() else ""

    def say(self, texts: Sequence[str], x: float, room: QRect) -> None:
        """Say *texts* in *room*, beginning at *x* or, past the middle, ending there."""
        metrics, pad = theme().metrics(LABEL_PT, bold=True), theme().px(READOUT_PAD_PX)
        said = list(texts)
        while said and metrics.horizontalAdvance(BETWEEN.join(said)) + 2 * pad > room.width():
            said.pop()
        if not said or metrics.height() > room.height() + 1:
            self.hide()
            return
        text = BETWEEN.join(said)
        width = round(metrics.horizontalAdvance(text) + 2 * pad) + 1
        left = x if x <= room.center().x() else x - width
        left = min(max(left, room.left()), room.right() + 1 - width)
        self.setGeometry(round(left), room.top(), width, room.height())
        if text != self._text:
            self._text = text
            self.update()
        if not self.isVisible():
            self.raise_()
            self.show()

    def paintEvent(self, event: QPaintEvent) -> None:
        look = theme()
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(look.colours["strong_line"], Stroke.HAIR))
            painter.setBrush(look.colours["panel"])
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5), 3.0, 3.0)
            font, ink = look.font(LABEL_PT, bold=True), look.colours["ink"]
            draw_text(painter, QRectF(self.rect()), self._text, ink, font, Align.AlignCenter)


class OpenButton(QPushButton):
    """In a strip: opens its storey."""

    def sizeHint(self) -> QSize:
        side = round(theme().px(OPEN_PX))
        return QSize(side, side)

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def paintEvent(self, event: QPaintEvent) -> None:
        colours, box = theme().colours, QRectF(self.rect()).adjusted(1, 1, -1, -1)
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(colours["teal" if self.hasFocus() else "strong_line"], Stroke.LINE))
            painter.setBrush(colours["lane" if self.underMouse() else "panel"])
            painter.drawRoundedRect(box, 3.0, 3.0)
            # A bracket opened up and down: more than the strip shows.
            w, h = box.width() / 4, box.height() / 7
            painter.setPen(QPen(colours["ink"], Stroke.LINE))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            for way in (-1, 1):
                tip = box.center() + QPointF(0.0, way * 2 * h)
                painter.drawPolyline(
                    QPolygonF([tip + QPointF(-w, -way * h), tip, tip + QPointF(w, -way * h)])
                )
