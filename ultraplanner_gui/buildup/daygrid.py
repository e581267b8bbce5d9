"""The day grid: sessions as tiles, moved about by mouse or keys, shown as they would be."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt, Signal
from PySide6.QtGui import (
    QContextMenuEvent,
    QFocusEvent,
    QHideEvent,
    QKeyEvent,
    QMouseEvent,
)
from PySide6.QtWidgets import QApplication, QWidget

from ultraplanner_gui.buildup import gridkeys
from ultraplanner_gui.buildup.carry import SessionCarry
from ultraplanner_gui.buildup.cells import TILE_PX
from ultraplanner_gui.buildup.deeds import SessionDeeds
from ultraplanner_gui.buildup.edgescroll import EdgeScroll
from ultraplanner_gui.buildup.gridpicture import WEEK, GridPicture
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.week_axis import WeekAxis
from ultraplanner_gui.wording.words import Words


class DayGrid(GridPicture):
    """Weeks by days. The document is asked for trials while a session is in the hand.

    From afar, where weeks are strips, what can be chosen is a week.
    """

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
        super().__init__(axis, selection, words, parent)
        self._document = document
        self._deeds = deeds
        self._edge = EdgeScroll(axis, self)
        self._press: QPointF | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setAccessibleName(self.tr("Day grid"))
        axis.changed.connect(self._on_axis_changed)
        self._edge.scrolled.connect(self._hold_over_pointer)
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
        self._refresh()

    def redraw(self) -> None:
        """Draw everything anew, in other words or colours."""
        self._draw_anew()
        self._describe()

    def topic_at(self, at: QPoint | None) -> str:
        tile = None if at is None else self._cells.tile_at(QPointF(at))
        session = self._deeds.chosen() if at is None else tile and tile.session
        return session.kind.value if session else "day grid"

    # Mouse

    def mousePressEvent(self, event: QMouseEvent) -> None:
        at = event.position()
        day = self._cells.day_at(at)
        if day is None or self._carry is not None:
            return
        if self.is_far:
            self._go_to_week(day)
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
            self._edge.point(self._pointer, self._cells.body)
            self._hold_over_pointer()
        elif event.buttons() == Qt.MouseButton.NoButton:
            self._point_at(self._pointer)

    def _hold_over_pointer(self) -> None:
        """Try the day under the pointer; outside the grid the session is back home."""
        if self._carry is not None and self._by_mouse:
            seen, day = self._outlook, self._day_held_over(self._pointer)
            self._carry.over(self._carry.session.day if day is None else day)
            # A trial on another day has it repainted already.
            if self._outlook is seen:
                self._refresh()

    def _day_held_over(self, at: QPointF) -> date | None:
        return self._cells.day_at(self._edge.held_in(at, self._cells.body))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() is not Qt.MouseButton.LeftButton:
            return
        self._press = None
        if self._carry is None or not self._by_mouse:
            return
        if self._day_held_over(event.position()) is None:
            self._put_back()
        else:
            self._put_down()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        day = self._cells.day_at(event.position())
        if day is None or self._carry is not None:
            return
        if self.is_far:
            self.zoom_in()
        elif self._cells.tile_at(event.position()) is not None:
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
        tile = None if self.is_far else self._cells.tile_at(at)
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
        elif gridkeys.is_zoom_key(event):
            getattr(self, gridkeys.ZOOM[event.text()])()
        elif key is Qt.Key.Key_Escape:
            self._put_back()
        elif key in gridkeys.CONFIRM:
            self._confirm()
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
        return gridkeys.is_grid_key(event, self._carry is not None, self.is_far)

    def _confirm(self) -> None:
        if self._carry is not None:
            self._put_down()
        elif self.is_far:
            self.zoom_in()
        else:
            self._pick_up(by_mouse=False)

    def _step(self, days: int) -> None:
        if self._carry is None:
            self._go(self._cells.step(self.day, self._selection.key, days))
        elif not self._by_mouse:
            day = self._carry.day + timedelta(days=days)
            if self._cells.place(day) is not None:
                self._carry.over(day)
                self.day = self._carry.day
                self._reveal(self.day)
            self._describe()
            self._refresh()

    def _go(self, place: tuple[date, Session | None] | None) -> None:
        if place is not None and self.is_far:
            self._go_to_week(place[0])
        elif place is not None:
            self._go_to(*place)

    # Zoom

    def zoom_in(self) -> None:
        """Show fewer weeks round the cursor; from afar as many as have room for tiles."""
        if self.is_far:
            self._axis.zoom_to(self._room_for_tiles(), self._column_of_cursor())
        else:
            self._axis.zoom(1, self._column_of_cursor())

    def zoom_out(self) -> None:
        """Show more weeks round the cursor."""
        self._axis.zoom(-1, self._column_of_cursor())

    def show_all(self) -> None:
        """Show every week."""
        self._axis.show_all()

    def _room_for_tiles(self) -> int:
        return min(int(self.body().width() // theme().px(TILE_PX)), self._axis.count)

    def _column_of_cursor(self) -> int:
        index = None if self.day is None else self._axis.index_of(self.day)
        if index is not None and self._axis.is_shown(index):
            return index
        return self._axis.first + self._axis.count // 2

    def _reveal(self, day: date) -> None:
        index = self._axis.index_of(day)
        if index is not None:
            self._axis.reveal(index)

    def _on_axis_changed(self) -> None:
        self._lay_out()
        self._refresh()

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
        self._refresh()

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
        self._edge.stop()
        self._point_at(self._pointer)
        self._refresh()

    # Selection and words

    def _go_to(self, day: date, session: Session | None) -> None:
        self.day = day
        self._reveal(day)
        if session is not None:
            self._selection.choose("session", session.key)
        elif self._selection.kind in ("session", WEEK):
            self._selection.clear()
        self._describe()
        self._refresh()

    def _go_to_week(self, day: date) -> None:
        index = self._axis.index_of(day)
        if index is None:
            return
        self.day = day
        self._axis.reveal(index)
        self._selection.choose(WEEK, self._axis.weeks[index].start.isoformat())
        self._describe()
        self._refresh()

    def _on_selection_changed(self) -> None:
        if self._selection.kind == "session" and self._carry is None:
            session = self._deeds.chosen()
            if session is not None:
                self.day = session.day
                self._reveal(session.day)
        self._describe()
        self._refresh()

    def _describe(self) -> None:
        """Say to a screen reader where the cursor is and what is in the hand."""
        if not self.hasFocus() or self.day is None:
            return
        tile = self._cells.tile(self._selection.key) if self._chosen_tile() else None
        if tile is not None:
            text = self._sentence(tile.session)
        else:
            text = self._week_sentence(self.day) if self.is_far else self._words().day(self.day)
        if self._carry is not None:
            text = self.tr("Picked up. {0}. Enter puts it down, Esc puts it back.").format(text)
        self.setAccessibleDescription(text)


def is_movable(session: Session) -> bool:
    """Whether a session may be picked up: not the race, not what is done."""
    return session.kind is not Kind.RACE and session.done is None
