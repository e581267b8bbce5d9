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
from ultraplanner_gui.buildup.cells import TILE_PX, Tile
from ultraplanner_gui.buildup.deeds import SessionDeeds
from ultraplanner_gui.buildup.edgescroll import EdgeScroll
from ultraplanner_gui.buildup.gridhand import GridHand
from ultraplanner_gui.buildup.gridpicture import WEEK
from ultraplanner_gui.buildup.nearest_day import seeker_of
from ultraplanner_gui.buildup.typein import TypeIn
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, message
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.week_axis import WeekAxis
from ultraplanner_gui.wording.words import Words

NOTHING_HERE = QT_TRANSLATE_NOOP(
    "Edit", "Nothing stands on this day. N adds a run, K opens the kinds to choose from."
)


class DayGrid(GridHand):
    """Weeks by days. The document is asked for trials while a session is in the hand.

    From afar, where weeks are strips, what can be chosen is a week.
    """

    menu_wanted = Signal(object)
    #: The shelf of kinds is asked for.
    shelf_wanted = Signal()

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
        self._is_toggling = self._is_added = False
        self._typing: TypeIn | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setAccessibleName(self.tr("Day grid"))
        axis.changed.connect(self._on_axis_changed)
        self._edge.scrolled.connect(self._hold_over_pointer)
        selection.changed.connect(self._on_selection_changed)
        seeker_of(document).found.connect(self._refresh)

    # What is shown

    def show_outlook(self, now: Outlook) -> None:
        """Show the sessions of *now*."""
        self._outlook = now
        self._lay_out()
        # Undone, removed or replaced while in the hand: nothing is carried any more.
        if self._carry is not None and not self._carry.is_valid:
            self._let_go()
        if self._length is not None and not self._length.is_valid:
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
        if day is None or self.is_carrying:
            return
        if self.is_far:
            self._go_to_week(day)
            return
        is_left = event.button() is Qt.MouseButton.LeftButton
        edge = self.edge_at(at) if is_left and not event.modifiers() else None
        if edge is not None:
            self._go_to(day, edge.session)
            self._take_edge(edge.session, at, edge.rect)
            return
        tile = self._cells.tile_at(at)
        self._press_on(day, tile, event)
        if is_left:
            self._press = at
            self._grab = QPointF() if tile is None else at - tile.rect.topLeft()

    def _press_on(self, day: date, tile: Tile | None, event: QMouseEvent) -> None:
        """Select what was pressed: alone, with Ctrl beside the rest, with Shift all up to it."""
        ctrl = bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier)
        shift = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        key = tile.session.key if tile is not None else ""
        # Another press on one of several may be the start of a drag of them all.
        self._is_toggling = ctrl and key in self._selection.keys
        self._is_added = ctrl and bool(key) and not self._is_toggling
        if shift and self.day is not None:
            self._choose_between(self.day, day)
        elif ctrl and tile is not None:
            if not self._is_toggling:
                self._selection.toggle("session", key)
        elif key and key in self._selection.keys and len(self._selection.keys) > 1:
            self._selection.choose_all("session", self._selection.keys, key)
        elif not ctrl:
            self._go_to(day, None if tile is None else tile.session)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        self._pointer = event.position()
        if self._length is not None:
            self._draw_edge()
        elif self._press is not None and self._carry is None:
            way = (self._pointer - self._press).manhattanLength()
            if self._box is not None:
                self._draw_box(self._press)
            elif way >= QApplication.startDragDistance():
                self._start_drag(event)
        if self._carry is not None and self._by_mouse:
            self._edge.point(self._pointer, self._cells.body)
            self._set_copies(_wants_copy(event.modifiers()))
            self._hold_over_pointer()
        elif event.buttons() == Qt.MouseButton.NoButton:
            self._point_at(self._pointer)

    def _start_drag(self, event: QMouseEvent) -> None:
        assert self._press is not None
        self._is_toggling = False
        if self._cells.tile_at(self._press) is None:
            self._draw_box(self._press)
        else:
            if self._is_added:
                # What was selected before has nothing to do with this copy.
                self._selection.choose("session", self._selection.key)
            self._pick_up(by_mouse=True, copies=_wants_copy(event.modifiers()))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() is not Qt.MouseButton.LeftButton:
            return
        pressed, self._press = self._press, None
        if self._length is not None:
            self._put_edge_down()
        elif self._box is not None:
            self._box = None
            self._refresh()
        elif self._carry is not None and self._by_mouse:
            if self._day_held_over(event.position()) is None:
                self._put_back()
            else:
                self._put_down()
        elif pressed is not None and not event.modifiers():
            self._choose_alone(pressed)
        elif self._is_toggling and pressed is not None:
            tile = self._cells.tile_at(pressed)
            if tile is not None:
                self._selection.toggle("session", tile.session.key)

    def _choose_alone(self, at: QPointF) -> None:
        """Select nothing but what was clicked among several."""
        tile = self._cells.tile_at(at)
        if tile is not None and len(self._selection.keys) > 1:
            self._selection.choose("session", tile.session.key)

    def _choose_between(self, one: date, other: date) -> None:
        first, last = min(one, other), max(one, other)
        sessions = self._document.project.block.sessions
        keys = [s.key for s in sessions if first <= s.day <= last]
        self._selection.choose_all("session", keys, self._selection.key)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        day = self._cells.day_at(event.position())
        if day is None or self.is_carrying:
            return
        if self.is_far:
            self.zoom_in()
        elif self._cells.tile_at(event.position()) is not None:
            self._deeds.edit()
        else:
            self._deeds.add(day)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        if self.is_carrying:
            return
        at = event.globalPos()
        if event.reason() is QContextMenuEvent.Reason.Keyboard:
            rect = self._chosen_tile() or (self._cells.cell(self.day) if self.day else None)
            if rect is not None:
                at = self.mapToGlobal(rect.center().toPoint())
        self.menu_wanted.emit(at)

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
        if self._carry is not None and key is Qt.Key.Key_Control:
            self._set_copies(True)
        if not self._takes(event):
            super().keyPressEvent(event)
        elif gridkeys.is_zoom_key(event):
            getattr(self, gridkeys.ZOOM[event.text()])()
        elif key is Qt.Key.Key_Escape:
            self._on_escape()
        elif key is gridkeys.TAKE_OFFER:
            self._take_offer()
        elif key in gridkeys.CONFIRM:
            self._confirm(_wants_copy(event.modifiers()))
        elif key in gridkeys.STEPS:
            self._on_arrow(gridkeys.STEPS[key], event.modifiers())
        elif self.is_carrying:
            return
        elif key in gridkeys.ENDS:
            self._go(self._cells.end(self.day, key is Qt.Key.Key_Home))
        elif gridkeys.is_start_of_figure(event):
            self._type_in(event.text())
        elif key is gridkeys.TYPE:
            self._type_in("")
        elif key in gridkeys.ADD:
            self.add_here()
        elif key is gridkeys.SHELF:
            self.shelf_wanted.emit()
        else:
            self._do(gridkeys.deed_of(event))

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Control:
            self._set_copies(False)
        super().keyReleaseEvent(event)

    def _do(self, deed: str) -> None:
        if deed == "paste":
            if self.day is not None:
                self._deeds.paste(self.day)
        elif deed:
            getattr(self._deeds, deed)()

    def _on_escape(self) -> None:
        if self.is_carrying:
            self._put_back()
        else:
            self._go_to(self.day, self._deeds.chosen()) if self.day is not None else None

    def _on_arrow(self, days: int, modifiers: Qt.KeyboardModifier) -> None:
        if modifiers & Qt.KeyboardModifier.ControlModifier and not self.is_carrying:
            self._deeds.move_by(days)
        elif modifiers & Qt.KeyboardModifier.AltModifier and not self.is_carrying:
            self._deeds.lengthen(1 if days > 0 else -1)
        elif modifiers & Qt.KeyboardModifier.ShiftModifier and not self.is_carrying:
            self._reach(days)
        else:
            self._step(days)

    def _reach(self, days: int) -> None:
        """Go on and select what stands there beside what is selected."""
        place = self._cells.step(self.day, self._selection.key, days)
        if place is None:
            return
        self.day, session = place
        self._reveal(self.day)
        if session is not None:
            kept = self._selection.keys if self._selection.kind == "session" else ()
            self._selection.choose_all("session", (*kept, session.key), session.key)
        self._describe()
        self._refresh()

    def _type_in(self, text: str) -> None:
        """Open a field over the selected session, with the first sign in it or all it is."""
        session = self._deeds.chosen()
        tile = None if session is None else self._cells.tile(session.key)
        if session is None or tile is None:
            return
        self._typing = TypeIn(self, session, text, self._words(), self._deeds.retype)
        self._typing.open_over(tile.rect)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self._describe()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        if self.is_carrying and event.reason() is not Qt.FocusReason.ActiveWindowFocusReason:
            self._put_back()

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self._settling.stop()
        if self.is_carrying:
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
        return gridkeys.is_grid_key(event, self.is_carrying, self.is_far)

    def _confirm(self, copies: bool = False) -> None:
        if self._carry is not None:
            self._carry.copy(copies)
            self._put_down()
        elif self.is_far:
            self.zoom_in()
        elif self._deeds.chosen() is None:
            self._document.refused.emit(message(NOTHING_HERE))
        else:
            self._pick_up(by_mouse=False)

    def _step(self, days: int) -> None:
        if self._carry is None:
            self._go(self._cells.step(self.day, self._selection.key, days))
        elif not self._by_mouse and self._carry.day is not None:
            day = self._carry.day + timedelta(days=days)
            if self._cells.place(day) is not None:
                self._carry.over(day)
                self._tell_seeker()
                self.day = self._carry.day
                self._reveal(day)
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
        others = len(self._selection.keys) - 1
        if others > 0:
            text = self.tr("{0}; and %n more selected", "", others).format(text)
        if self._carry is not None:
            text = self.tr("Picked up. {0}. Enter puts it down, Esc puts it back.").format(text)
        self.setAccessibleDescription(text)


def _wants_copy(modifiers: Qt.KeyboardModifier) -> bool:
    return bool(modifiers & Qt.KeyboardModifier.ControlModifier)
