"""The hand on a stack of lanes: heads dragged, the pointer followed, keys and menus."""

from __future__ import annotations

from typing import TYPE_CHECKING, cast

from PySide6.QtCore import QEvent, QObject, QPoint, QPointF, Qt
from PySide6.QtGui import QContextMenuEvent, QFocusEvent, QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QApplication, QWidget

from ultraplanner_gui.widgets.lane import GUTTER_PX, HEAD_PX
from ultraplanner_gui.widgets.lane_overlays import DropMark
from ultraplanner_gui.widgets.theme import theme

if TYPE_CHECKING:
    from ultraplanner_gui.widgets.lane_stack import LaneStack

Type, Key, Mod, Shape = QEvent.Type, Qt.Key, Qt.KeyboardModifier, Qt.CursorShape

WATCHED = frozenset(
    (
        *(Type.MouseButtonPress, Type.MouseMove, Type.MouseButtonRelease),
        *(Type.MouseButtonDblClick, Type.Leave, Type.ContextMenu, Type.KeyPress, Type.FocusIn),
        Type.ShortcutOverride,
    )
)
BY_KEYS = (
    *(Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason),
    Qt.FocusReason.ShortcutFocusReason,
)
MODIFIERS = Mod.ControlModifier | Mod.ShiftModifier | Mod.AltModifier | Mod.MetaModifier
MOVES = Mod.ControlModifier | Mod.ShiftModifier
SIZES = Mod.AltModifier
UP_DOWN: dict[int, int] = {Key.Key_Up: -1, Key.Key_Down: 1}
LEFT_RIGHT: dict[int, int] = {Key.Key_Left: -1, Key.Key_Right: 1}
MENU_KEYS = (Key.Key_Return, Key.Key_Enter, Key.Key_Space)
LONG_STEP = 10


class LaneHand(QObject):
    """Sees the events of the lanes of *stack* before they do, and takes what is for the stack."""

    def __init__(self, stack: LaneStack) -> None:
        super().__init__(stack)
        self._stack = stack
        self._mark = DropMark(stack)
        self._held = ""
        self._from_y = 0.0
        self._is_dragging = False
        self._hot: QWidget | None = None
        #: Lanes that take no keys themselves: the arrows step the cursor, Enter opens the menu.
        self.plain: set[QWidget] = set()

    def watch(self, part: QWidget) -> None:
        """See the events of *part*."""
        part.setMouseTracking(True)
        part.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        kind = event.type()
        if kind not in WATCHED:
            return False
        part = cast(QWidget, watched)
        if kind is Type.MouseMove:
            return self._on_move(part, cast(QMouseEvent, event))
        if kind is Type.MouseButtonPress:
            return self._on_press(part, cast(QMouseEvent, event))
        if kind is Type.MouseButtonRelease:
            return self._on_release(cast(QMouseEvent, event))
        if kind is Type.KeyPress:
            return self._on_key(part, cast(QKeyEvent, event))
        if kind is Type.ContextMenu:
            return self._on_menu(part, cast(QContextMenuEvent, event))
        if kind is Type.ShortcutOverride and self._is_ours(cast(QKeyEvent, event)):
            event.accept()
            return True
        if kind is Type.FocusIn:
            self._on_focus(part, cast(QFocusEvent, event))
        elif kind is Type.Leave:
            self._cool()
            self._stack.leave()
        elif kind is Type.MouseButtonDblClick:
            return bool(self._head_of(part, cast(QMouseEvent, event).position()))
        return False

    # Mouse

    def _on_press(self, part: QWidget, event: QMouseEvent) -> bool:
        if event.button() is not Qt.MouseButton.LeftButton:
            return False
        if self._stack.is_strip:
            self._stack.open_wanted.emit()
            return True
        self._held = self._head_of(part, event.position())
        self._from_y = event.position().y()
        if self._held:
            self._stack.leave()
            part.setFocus(Qt.FocusReason.MouseFocusReason)
        return bool(self._held)

    def _on_move(self, part: QWidget, event: QMouseEvent) -> bool:
        at = event.position()
        if self._held:
            self._drag(part, at)
            return True
        is_free = event.buttons() == Qt.MouseButton.NoButton
        if is_free or self._stack.follows_drags:
            # What is in the hand changes the figures first.
            self._stack.point(at.x(), at_once=is_free)
        else:
            self._stack.leave()
        if is_free and self._head_of(part, at):
            if self._hot is not part:
                part.setCursor(Shape.OpenHandCursor)
                self._hot = part
            return True
        self._cool()
        return False

    def _drag(self, part: QWidget, at: QPointF) -> None:
        if abs(at.y() - self._from_y) >= QApplication.startDragDistance():
            self._is_dragging = True
        if self._is_dragging:
            part.setCursor(Shape.ClosedHandCursor)
            self._hot = part
            self._mark.stand_at(self._stack.drop_at(part.y() + at.y())[2])

    def _on_release(self, event: QMouseEvent) -> bool:
        held, was_dragging = self._held, self._is_dragging
        if not held or event.button() is not Qt.MouseButton.LeftButton:
            return False
        y = self._stack.mapFromGlobal(event.globalPosition()).y()
        self._let_go()
        if was_dragging:
            beside, is_after, _ = self._stack.drop_at(y)
            self._stack.place(held, beside, is_after)
        return True

    def _let_go(self) -> None:
        self._held, self._is_dragging = "", False
        self._mark.hide()
        self._cool()

    def _cool(self) -> None:
        if self._hot is not None:
            self._hot.unsetCursor()
            self._hot = None

    def _head_of(self, part: QWidget, at: QPointF) -> str:
        """Return the name of the lane whose head is *at*, empty if it has none there."""
        is_head = at.x() < theme().px(HEAD_PX - GUTTER_PX) and not self._stack.is_strip
        return self._stack.name_of(part) if is_head else ""

    # Menu and keys

    def _on_menu(self, part: QWidget, event: QContextMenuEvent) -> bool:
        name = self._stack.name_of(part)
        if not name or self._stack.is_strip:
            return False
        by_mouse = event.reason() is QContextMenuEvent.Reason.Mouse
        spot = event.globalPos() if by_mouse else part.mapToGlobal(self._below_head(part))
        is_place = by_mouse and not self._head_of(part, QPointF(event.pos()))
        self._stack.menus.of_lane(name, QPointF(event.pos()) if is_place else None).popup(spot)
        return True

    def _on_key(self, part: QWidget, event: QKeyEvent) -> bool:
        if self._held and event.key() == Key.Key_Escape:
            self._let_go()
            return True
        name, key = self._stack.name_of(part), event.key()
        if not name:
            return False
        if self._is_ours(event):
            if event.modifiers() & MODIFIERS == MOVES:
                self._stack.move_lane(name, UP_DOWN[key])
            else:
                self._stack.stretch(name, UP_DOWN[key])
            return True
        if part not in self.plain:
            return False
        if key in LEFT_RIGHT:
            is_long = bool(event.modifiers() & Mod.ShiftModifier)
            said = self._stack.step(LEFT_RIGHT[key] * (LONG_STEP if is_long else 1))
            part.setAccessibleDescription(said)
        elif key in MENU_KEYS:
            self._stack.menus.of_lane(name, None).popup(part.mapToGlobal(self._below_head(part)))
        else:
            return False
        return True

    def _is_ours(self, event: QKeyEvent) -> bool:
        held = event.modifiers() & MODIFIERS
        return event.key() in UP_DOWN and held in (MOVES, SIZES)

    def _below_head(self, part: QWidget) -> QPoint:
        return QPoint(round(theme().px(GUTTER_PX)), part.height())

    def _on_focus(self, part: QWidget, event: QFocusEvent) -> None:
        self._stack.current = self._stack.name_of(part) or self._stack.current
        if self._stack.is_strip and event.reason() in BY_KEYS:
            self._stack.open_wanted.emit()
