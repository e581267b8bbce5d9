"""The menus of a stack of lanes: which are shown, and what can be done with one."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QPointF, Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu

if TYPE_CHECKING:
    from ultraplanner_gui.widgets.lane_stack import LaneStack


def _no_actions(name: str) -> list[QAction]:
    return []


class LaneMenus(QObject):
    """Makes the menus of *stack*."""

    def __init__(self, stack: LaneStack) -> None:
        super().__init__(stack)
        self._stack = stack
        self.actions_of: Callable[[str], list[QAction]] = _no_actions

    def fill(self, menu: QMenu) -> None:
        """Put in which lanes are shown and what can be done with the one the keys were in last."""
        menu.clear()
        self._add_checks(menu)
        current = self._stack.current
        if current in self._stack.arrangement.shown:
            menu.addSeparator()
            self._add_deeds(menu, current)
            self._add_table(menu, current)

    def of_lane(self, name: str, at: QPointF | None) -> QMenu:
        """Return a menu of what can be done with a lane, *at* a place in it or by keys."""
        stack, lane = self._stack, self._stack.lane(name)
        menu = QMenu(lane.part)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        if lane.deeds is not None:
            lane.deeds(menu, at)
        menu.addActions(self.actions_of(name))
        x = at.x() if at is not None else None
        if lane.table:
            menu.addAction(self.tr("Show as a table"), partial(stack.show_table, name, x))
        menu.addSeparator()
        self._add_deeds(menu, name)
        hide = menu.addAction(
            self.tr("Hide {0}").format(lane.title), partial(stack.show_lane, name, False)
        )
        hide.setEnabled(stack.arrangement.can_hide(name))
        menu.addSeparator()
        self._add_checks(menu.addMenu(self.tr("Lanes")))
        return menu

    def _add_checks(self, menu: QMenu) -> None:
        stack = self._stack
        for choice in stack.arrangement.lanes:
            lane = stack.lane(choice.name)
            text = lane.title
            if choice.is_shown and not stack.is_strip and not lane.part.isVisibleTo(stack):
                text = self.tr("{0} (no room now)").format(text)
            action = menu.addAction(text)
            action.setCheckable(True)
            action.setChecked(choice.is_shown)
            action.setEnabled(not choice.is_shown or stack.arrangement.can_hide(choice.name))
            action.toggled.connect(partial(stack.show_lane, choice.name))
        usual = menu.addAction(self.tr("Usual lanes"), stack.arrange_usually)
        usual.setEnabled(stack.arrangement != stack.usual)

    def _add_deeds(self, menu: QMenu, name: str) -> None:
        stack, title = self._stack, self._stack.lane(name).title
        moves = (
            (self.tr("Move {0} up") + "\tCtrl+Shift+Up", -1),
            (self.tr("Move {0} down") + "\tCtrl+Shift+Down", 1),
        )
        for text, by in moves:
            action = menu.addAction(text.format(title), partial(stack.move_lane, name, by))
            action.setEnabled(stack.arrangement.can_move(name, by))
        sizes = (
            (self.tr("Make {0} higher") + "\tAlt+Down", 1),
            (self.tr("Make {0} lower") + "\tAlt+Up", -1),
        )
        for text, by in sizes:
            menu.addAction(text.format(title), partial(stack.stretch, name, by))
        usual = menu.addAction(
            self.tr("Usual height of {0}").format(title), partial(stack.size_lane, name, 0.0)
        )
        usual.setEnabled(stack.arrangement.of(name).height_px > 0)

    def _add_table(self, menu: QMenu, name: str) -> None:
        lane = self._stack.lane(name)
        if lane.table:
            text = self.tr("Show {0} as a table").format(lane.title)
            menu.addAction(text, partial(self._stack.show_table, name))
