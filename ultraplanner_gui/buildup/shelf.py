"""The shelf of kinds: each is dragged into the day grid, or put on the day of the cursor."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Slot
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QApplication, QWidget

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.buildup.daygrid import DayGrid
from ultraplanner_gui.buildup.deeds import SessionDeeds, usual
from ultraplanner_gui.buildup.tile import ground_colour
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.widgets.ground import draw_ground
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.lane import Align, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt

ON_SHELF = tuple(kind for kind in Kind if kind is not Kind.RACE)
WIDTH_PX, ROW_PX, FOOT_PX = 158.0, 21.0, 30.0
PAD_PX, MARK_PX, BESIDE_PX = 8.0, 26.0, 14.0


class Shelf(QWidget):
    """A list over the left of the grid. It fades while one of its kinds is in the hand.

    Keys: up and down, Enter puts the kind on the day of the cursor, Esc closes.
    """

    def __init__(
        self, document: Document, deeds: SessionDeeds, grid: DayGrid, parent: QWidget
    ) -> None:
        super().__init__(parent)
        self._owner = parent
        self._document, self._deeds, self._grid = document, deeds, grid
        self._row = 1
        self._press: QPointF | None = None
        self._is_dragging = False
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setAccessibleName(self.tr("Kinds to put in"))
        set_topic(self, "several sessions")
        theme().changed.connect(self.update)
        self.hide()

    def sizeHint(self) -> QSize:
        look = theme()
        height = look.px(ROW_PX) * len(ON_SHELF) + look.px(FOOT_PX) + 2 * PAD_PX
        metrics = look.metrics(Pt.TEXT)
        longest = max(metrics.horizontalAdvance(_name_of(kind)) for kind in ON_SHELF)
        width = max(look.px(WIDTH_PX), look.px(MARK_PX) + longest + BESIDE_PX + PAD_PX)
        return QSize(round(width), round(height))

    def open_at(self, left: float, bottom: float) -> None:
        """Show the shelf with its left lower corner at a place, inside its owner."""
        size, parent = self.sizeHint(), self._owner
        height = min(size.height(), parent.height())
        top = max(0.0, min(bottom - height, parent.height() - height))
        self.setGeometry(round(left), round(top), size.width(), height)
        self.show()
        self.raise_()
        self.setFocus(Qt.FocusReason.OtherFocusReason)
        self._describe()

    def close_up(self) -> None:
        """Put the shelf away; the keys go back to the grid."""
        had_focus = self.hasFocus()
        self.hide()
        if had_focus:
            self._grid.setFocus(Qt.FocusReason.OtherFocusReason)

    def topic_at(self, at: object) -> str:
        return ON_SHELF[self._row].value

    # Mouse

    def mousePressEvent(self, event: QMouseEvent) -> None:
        row = self._row_at(event.position())
        if row is not None and event.button() is Qt.MouseButton.LeftButton:
            self._row, self._press = row, event.position()
            self._describe()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        at = event.position()
        if self._press is None:
            self._point_at(at)
            return
        if not self._is_dragging:
            way = (at - self._press).manhattanLength()
            if way < QApplication.startDragDistance():
                return
            self._start()
        if self._is_dragging:
            self._grid.point_new(self._in_grid(at))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        pressed, self._press = self._press, None
        if self._is_dragging:
            self._is_dragging = False
            self._grid.drop_new(self._in_grid(event.position()))
            self.close_up()
        elif pressed is not None:
            self._put_in()

    def _start(self) -> None:
        kind, project = ON_SHELF[self._row], self._document.project
        self._is_dragging = self._grid.take_new(usual(project, kind, self._document.before.today))
        self.update()

    def _in_grid(self, at: QPointF) -> QPointF:
        return QPointF(self._grid.mapFrom(self._owner, self.mapToParent(at.toPoint())))

    def _point_at(self, at: QPointF) -> None:
        row = self._row_at(at)
        has_row = row is not None
        self.setCursor(Qt.CursorShape.OpenHandCursor if has_row else Qt.CursorShape.ArrowCursor)

    # Keys

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if key is Qt.Key.Key_Escape:
            if self._is_dragging:
                self._is_dragging, self._press = False, None
                self._grid.drop_new(QPointF(-1.0, -1.0))
            self.close_up()
        elif key in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            step = 1 if key is Qt.Key.Key_Down else -1
            self._row = (self._row + step) % len(ON_SHELF)
            self._describe()
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            self._put_in()
        else:
            super().keyPressEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        if event.reason() is not Qt.FocusReason.ActiveWindowFocusReason and not self._is_dragging:
            self.hide()

    @Slot()
    def _put_in(self) -> None:
        day = self._grid.day or self._document.before.today
        self.close_up()
        self._deeds.add(day, ON_SHELF[self._row])

    # Look

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._is_dragging:
            return
        look = theme()
        c = look.colours
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(c["strong_line"])
        painter.setBrush(c["panel"])
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5), 4.0, 4.0)
        for row, kind in enumerate(ON_SHELF):
            self._paint_row(painter, row, kind)
        foot = QRectF(self.rect()).adjusted(PAD_PX, 0.0, -PAD_PX, -PAD_PX / 2)
        foot.setTop(self._rect_of(len(ON_SHELF)).top())
        painter.setPen(c["soft"])
        painter.setFont(look.font(Pt.MARK))
        text = self.tr("Drag into the grid, or Enter")
        painter.drawText(foot, int(Qt.TextFlag.TextWordWrap | Align.AlignVCenter), text)
        painter.end()

    def _paint_row(self, painter: QPainter, row: int, kind: Kind) -> None:
        look, rect = theme(), self._rect_of(row)
        if row == self._row:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(look.colours["pale_teal"])
            painter.drawRoundedRect(rect, 3.0, 3.0)
        session = usual(self._document.project, kind, self._document.before.today)
        mark = QRectF(rect.left() + 6.0, 0.0, look.px(MARK_PX), look.px(7.0))
        mark.moveTop(rect.center().y() - mark.height() / 2)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        if kind.is_run:
            draw_ground(painter, mark, session.ground, session.effort, ground_colour(session))
        else:
            painter.setPen(look.colours["soft"])
            y = mark.center().y()
            painter.drawLine(QPointF(mark.left(), y), QPointF(mark.right(), y))
        room = rect.adjusted(mark.width() + BESIDE_PX, 0.0, 0.0, 0.0)
        draw_text(painter, room, _name_of(kind), look.colours["ink"], look.font(Pt.TEXT))

    def _rect_of(self, row: int) -> QRectF:
        height = min(theme().px(ROW_PX), (self.height() - 2 * PAD_PX) / (len(ON_SHELF) + 1))
        left = PAD_PX / 2
        return QRectF(left, PAD_PX + row * height, self.width() - 2 * left, height)

    def _row_at(self, at: QPointF) -> int | None:
        rects = (self._rect_of(row) for row in range(len(ON_SHELF)))
        return next((row for row, rect in enumerate(rects) if rect.contains(at)), None)

    def _describe(self) -> None:
        kind = kinds.say(kinds.FULL[ON_SHELF[self._row]])
        self.setAccessibleDescription(
            self.tr("{0}. Enter puts it on the day of the cursor, Esc closes.").format(kind)
        )
        self.update()


def _name_of(kind: Kind) -> str:
    return kinds.capital(kinds.say(kinds.FULL[kind]))
