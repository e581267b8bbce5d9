"""The day grid: sessions as tiles, moved about by mouse or keys, shown as they would be."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QContextMenuEvent,
    QFocusEvent,
    QHideEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QResizeEvent,
)
from PySide6.QtWidgets import QApplication, QWidget

from ultraplanner_gui.buildup import gridkeys, gridpaint, kinds
from ultraplanner_gui.buildup.carry import SessionCarry
from ultraplanner_gui.buildup.cells import Cells
from ultraplanner_gui.buildup.deeds import SessionDeeds
from ultraplanner_gui.buildup.tile import Stage
from ultraplanner_gui.buildup.tilelayer import TileLayer
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.widgets.axis import WeekAxis
from ultraplanner_gui.widgets.lane import Lane
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

HEIGHT_PX = 252.0
LEAST_PX = 126.0


class DayGrid(Lane):
    """Weeks by days. The document is asked for trials while a session is in the hand."""

    menu_wanted = Signal(object)

    def __init__(
        self,
        axis: WeekAxis,
        document: Document,
        selection: Selection,
        deeds: SessionDeeds,
        words: Callable[[], Words],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__("", "", HEIGHT_PX, parent)
        self._axis = axis
        self._document = document
        self._selection = selection
        self._deeds = deeds
        self._words = words
        self._outlook: Outlook | None = None
        self._cells = Cells(axis, self.body(), ())
        self._layer = TileLayer()
        self._carry: SessionCarry | None = None
        self._by_mouse = False
        self._press: QPointF | None = None
        self._grab = QPointF()
        self._pointer = QPointF()
        self.day: date | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setAccessibleName(self.tr("Day grid"))
        selection.changed.connect(self._on_selection_changed)

    # What is shown

    def show_outlook(self, now: Outlook) -> None:
        """Show the sessions of *now*."""
        self._outlook = now
        self._lay_out()
        # Undone, removed or replaced while in the hand: nothing is carried any more.
        if self._carry is not None and not self._carry.is_at(now.project):
            self._let_go()
        if self.day is None:
            self.day = self._cells.clamped(now.today)
        self._describe()
        self.update()

    def redraw(self) -> None:
        """Draw everything anew, in other words or colours."""
        self._layer.clear()
        self._lay_out()
        self._describe()
        self.update()

    @property
    def cells(self) -> Cells:
        """Where the tiles lie."""
        return self._cells

    @property
    def is_carrying(self) -> bool:
        """Whether a session is in the hand."""
        return self._carry is not None

    def minimumSizeHint(self) -> QSize:
        return QSize(300, round(theme().px(LEAST_PX)))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._lay_out()

    def readout(self, at: QPointF) -> str:
        tile = self._cells.tile_at(at)
        if tile is not None:
            return self._sentence(tile.session)
        day = self._cells.day_at(at)
        return "" if day is None else self._words().day(day)

    # Painting

    def paint_ground(self, painter: QPainter, body: QRectF) -> None:
        if self._outlook is not None and self._has_sessions():
            race_day = self._outlook.project.race.day
            gridpaint.paint_ground(painter, self._cells, self._axis, race_day)
        else:
            painter.fillRect(body, theme().colours["lane"])

    def paint_head(self, painter: QPainter) -> None:
        if self._outlook is not None and self._has_sessions():
            first = self._outlook.project.first_weekday
            gridpaint.paint_day_names(
                painter, self._cells, first, self._outlook.today, self._words()
            )

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        if self._outlook is None or not self._has_sessions():
            texts = (
                self.tr("No sessions yet."),
                self.tr("Build the block from the Build-up menu, or press N to add a run."),
            )
            gridpaint.paint_lines_of_text(painter, body, texts)
            return
        words, ratio, today = self._words(), self.devicePixelRatioF(), self._outlook.today
        tiles = self._layer.picture(self.size(), ratio, self._cells, words, today, self._in_hand())
        painter.drawPixmap(QPointF(0.0, 0.0), tiles)
        self._paint_origin(painter)
        gridpaint.paint_today(painter, self._cells, self._axis, today)
        if self._carry is not None and self._by_mouse:
            gridpaint.paint_in_hand(painter, self._hand_rect(), self._carry.session, words)
        elif not self.hasFocus():
            self._paint_cursor(painter, False)

    def paint_focus(self, painter: QPainter) -> None:
        if self._has_sessions() and not self._by_mouse:
            self._paint_cursor(painter, True)
        elif not self._has_sessions():
            super().paint_focus(painter)

    def _paint_origin(self, painter: QPainter) -> None:
        if self._carry is None:
            return
        cell = self._cells.cell(self._carry.session.day)
        if cell is not None and (not self._carry.is_home or self._by_mouse):
            gridpaint.paint_origin(painter, cell)

    def _paint_cursor(self, painter: QPainter, has_focus: bool) -> None:
        tile = self._chosen_tile()
        if tile is not None:
            gridpaint.paint_cursor(painter, tile, has_focus, False)
        elif has_focus and self.day is not None:
            cell = self._cells.cell(self.day)
            if cell is not None:
                gridpaint.paint_cursor(painter, cell, True, True)

    def _in_hand(self) -> tuple[str, Stage]:
        if self._carry is None:
            return "", Stage()
        return self._carry.key, Stage(is_carried=not self._by_mouse, is_landing=self._by_mouse)

    def _hand_rect(self) -> QRectF:
        """Return where the carried tile hangs: under the pointer, never out of the grid."""
        assert self._carry is not None
        cell = self._cells.cell(self._carry.session.day)
        body = self._cells.body
        if cell is None:
            return QRectF()
        rect = QRectF(self._pointer - self._grab, cell.size())
        rect.moveLeft(min(max(rect.left(), body.left()), body.right() - rect.width()))
        rect.moveTop(min(max(rect.top(), 0.0), self.height() - rect.height() - 4.0))
        return rect

    # Mouse

    def mousePressEvent(self, event: QMouseEvent) -> None:
        at = event.position()
        day = self._cells.day_at(at)
        if day is None or self._carry is not None:
            return
        tile = self._cells.tile_at(at)
        self._go_to(day, tile.session if tile is not None else None)
        if tile is not None and event.button() is Qt.MouseButton.LeftButton:
            self._press = at
            self._grab = at - tile.rect.topLeft()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        self._pointer = event.position()
        if self._press is not None and self._carry is None:
            way = (self._pointer - self._press).manhattanLength()
            if way >= QApplication.startDragDistance():
                self._pick_up(by_mouse=True)
        if self._carry is not None and self._by_mouse:
            day = self._cells.day_at(self._pointer)
            self._carry.over(self._carry.session.day if day is None else day)
            self.update()
        elif event.buttons() == Qt.MouseButton.NoButton:
            self._point_at(self._pointer)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() is not Qt.MouseButton.LeftButton:
            return
        self._press = None
        if self._carry is None or not self._by_mouse:
            return
        if self._cells.day_at(event.position()) is None:
            self._put_back()
        else:
            self._put_down()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        day = self._cells.day_at(event.position())
        if day is None or self._carry is not None:
            return
        if self._cells.tile_at(event.position()) is not None:
            self._deeds.edit()
        else:
            self._deeds.add(day)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        if self._carry is not None:
            return
        at = event.globalPos()
        if event.reason() is QContextMenuEvent.Reason.Keyboard:
            rect = self._chosen_tile() or (self._cells.cell(self.day) if self.day else None)
            if rect is not None:
                at = self.mapToGlobal(rect.center().toPoint())
        self.menu_wanted.emit(at)

    def _point_at(self, at: QPointF) -> None:
        tile = self._cells.tile_at(at)
        can_move = tile is not None and is_movable(tile.session)
        self.setCursor(Qt.CursorShape.OpenHandCursor if can_move else Qt.CursorShape.ArrowCursor)

    # Keys

    def event(self, event: QEvent) -> bool:
        # Keys that act here must not start a shortcut of the window instead.
        is_shortcut = event.type() is QEvent.Type.ShortcutOverride
        if is_shortcut and isinstance(event, QKeyEvent) and self._takes(event):
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if not self._takes(event):
            super().keyPressEvent(event)
        elif key is Qt.Key.Key_Escape:
            self._put_back()
        elif key in gridkeys.CONFIRM:
            self._put_down() if self._carry is not None else self._pick_up(by_mouse=False)
        elif key in gridkeys.STEPS:
            self._step(gridkeys.STEPS[key])
        elif self._carry is not None:
            return
        elif key in gridkeys.ENDS:
            self._go(self._cells.end(self.day, key is Qt.Key.Key_Home))
        elif key in gridkeys.ADD:
            self.add_here()
        else:
            getattr(self._deeds, gridkeys.DEEDS[key])()

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self._describe()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        if self._carry is not None and event.reason() is not Qt.FocusReason.ActiveWindowFocusReason:
            self._put_back()

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        if self._carry is not None:
            self._put_back()

    def add_here(self) -> None:
        """Add an easy run on the day of the cursor."""
        if self.day is None and self._outlook is not None:
            self.day = self._outlook.today
        if self.day is not None:
            self._deeds.add(self.day)

    def pick_up(self) -> None:
        """Take the selected session in the hand, to be moved by keys."""
        self.setFocus(Qt.FocusReason.OtherFocusReason)
        self._pick_up(by_mouse=False)

    def _takes(self, event: QKeyEvent) -> bool:
        return gridkeys.is_grid_key(event, self._carry is not None)

    def _step(self, days: int) -> None:
        if self._carry is None:
            self._go(self._cells.step(self.day, self._selection.key, days))
        elif not self._by_mouse:
            day = self._carry.day + timedelta(days=days)
            if self._cells.place(day) is not None:
                self._carry.over(day)
                self.day = self._carry.day
            self._describe()
            self.update()

    def _go(self, place: tuple[date, Session | None] | None) -> None:
        if place is not None:
            self._go_to(*place)

    # In the hand

    def _pick_up(self, by_mouse: bool) -> None:
        session = self._deeds.chosen()
        self._press = None
        if session is None:
            return
        carry = SessionCarry(self._document, session)
        if not carry.lift():
            self._point_at(self._pointer)
            return
        self._carry, self._by_mouse = carry, by_mouse
        if by_mouse:
            self.setCursor(Qt.CursorShape.ClosedHandCursor)
        self._describe()
        self.update()

    def _put_down(self) -> None:
        carry = self._carry
        self._let_go()
        if carry is not None:
            self.day = carry.day
            carry.put_down()
        self._describe()

    def _put_back(self) -> None:
        carry = self._carry
        self._let_go()
        if carry is not None:
            carry.put_back()
            self.day = carry.session.day
        self._describe()

    def _let_go(self) -> None:
        self._carry, self._by_mouse, self._press = None, False, None
        self._point_at(self._pointer)
        self.update()

    # Selection and words

    def _go_to(self, day: date, session: Session | None) -> None:
        self.day = day
        if session is not None:
            self._selection.choose("session", session.key)
        elif self._selection.kind == "session":
            self._selection.clear()
        self._describe()
        self.update()

    def _on_selection_changed(self) -> None:
        if self._selection.kind == "session" and self._carry is None:
            tile = self._cells.tile(self._selection.key)
            if tile is not None:
                self.day = tile.session.day
        self._describe()
        self.update()

    def _chosen_tile(self) -> QRectF | None:
        if self._selection.kind != "session":
            return None
        tile = self._cells.tile(self._selection.key)
        return None if tile is None else tile.rect

    def _describe(self) -> None:
        """Say to a screen reader where the cursor is and what is in the hand."""
        if not self.hasFocus() or self.day is None:
            return
        tile = self._cells.tile(self._selection.key) if self._chosen_tile() else None
        text = self._words().day(self.day) if tile is None else self._sentence(tile.session)
        if self._carry is not None:
            text = self.tr("Picked up. {0}. Enter puts it down, Esc puts it back.").format(text)
        self.setAccessibleDescription(text)

    def _sentence(self, session: Session) -> str:
        is_past = self._outlook is not None and session.day < self._outlook.today
        return kinds.sentence(session, self._words(), is_past)

    def _has_sessions(self) -> bool:
        return bool(self._cells.by_day)

    def _lay_out(self) -> None:
        sessions = self._outlook.project.block.sessions if self._outlook is not None else ()
        self._cells = Cells(self._axis, self.body(), sessions, self._cells)


def is_movable(session: Session) -> bool:
    """Whether a session may be picked up: not the race, not what is done."""
    return session.kind is not Kind.RACE and session.done is None
