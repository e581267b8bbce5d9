"""The action table as QActions.

Menus, context menus, the switch of places, the list of keys and the finder are made from it.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QObject
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu, QMenuBar

from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.window.action_row import (
    ALWAYS,
    MARKED,
    NOT_DONE,
    NOT_MISSED,
    NOT_RACE,
    TO_MOVE,
    WITH_COURSE,
    WITH_ITEM,
    WITH_PROJECT,
    WITH_SECTION,
    WITH_SESSION,
    ActionRow,
)
from ultraplanner_gui.window.action_table import GROUPS, MENUS, TABLE

if TYPE_CHECKING:
    from ultraplanner_gui.window.main_window import MainWindow

#: A line is drawn in a context menu before these.
CONTEXT_GROUPS = GROUPS | {"how_it_went"}


class Situation(Value, frozen=True):
    """What there is to act on: a project, a course, the kind of what is selected, the session."""

    has_project: bool = False
    has_course: bool = False
    selected: str = ""
    session: Session | None = None


class Actions(QObject):
    """The table as QActions, wired to the deeds of a window."""

    def __init__(self, window: MainWindow, deeds: QObject) -> None:
        super().__init__(window)
        self.by_name: dict[str, QAction] = {}
        self._separators: dict[str, QAction] = {}
        self._states: dict[int, bool] = {}
        for row in TABLE:
            action = QAction(_with_keys(row), window)
            action.setToolTip(name_of(action))
            action.setShortcut(QKeySequence(row.shortcut))
            action.setCheckable(row.is_checkable)
            action.setObjectName(row.name)
            action.triggered.connect(getattr(deeds, row.name))
            window.addAction(action)
            self.by_name[row.name] = action

    def fill(self, bar: QMenuBar) -> dict[str, QMenu]:
        """Put the menus into *bar* and return them by name."""
        menus: dict[str, QMenu] = {}
        for name, text in MENUS:
            menu = bar.addMenu(QCoreApplication.translate("Actions", text))
            menus[name] = menu
            for row in TABLE:
                if row.menu == name:
                    if row.name in GROUPS:
                        menu.addSeparator()
                    menu.addAction(self.by_name[row.name])
        return menus

    def context(self, name: str) -> list[QAction]:
        """Return the actions of the context menu *name*, in the groups and order of the table."""
        actions: list[QAction] = []
        for row in TABLE:
            if name in row.contexts:
                if row.name in CONTEXT_GROUPS and actions:
                    actions.append(self._separator(row.name))
                actions.append(self.by_name[row.name])
        return actions

    def _separator(self, name: str) -> QAction:
        """Return what parts the action *name* from the one before it."""
        line = self._separators.get(name)
        if line is None:
            line = self._separators[name] = QAction(self)
            line.setSeparator(True)
        return line

    def enable(self, now: Situation) -> None:
        """Switch actions on and off by what there is to act on."""
        states = _states(now)
        if states == self._states:
            return
        self._states = states
        for row in TABLE:
            self.by_name[row.name].setEnabled(states[row.enabled])


def _with_keys(row: ActionRow) -> str:
    """Return the text of an action, after a tab the keys that do it in the day grid."""
    text = QCoreApplication.translate("Actions", row.text)
    keys = QKeySequence(row.keys).toString(QKeySequence.SequenceFormat.NativeText)
    return f"{text}\t{keys}" if keys else text


def name_of(action: QAction) -> str:
    """Return what an action is called, without mnemonic and keys."""
    return action.text().partition("\t")[0].replace("&", "")


def _states(now: Situation) -> dict[int, bool]:
    session = now.session
    is_race = session is not None and session.kind is Kind.RACE
    return {
        ALWAYS: True,
        WITH_PROJECT: now.has_project,
        WITH_COURSE: now.has_course,
        WITH_SESSION: session is not None,
        WITH_ITEM: now.has_course and now.selected == "item",
        WITH_SECTION: now.has_course and now.selected == "section",
        NOT_DONE: session is not None and session.done is None,
        NOT_MISSED: session is not None and not session.missed,
        MARKED: session is not None and not session.is_open,
        NOT_RACE: session is not None and not is_race,
        TO_MOVE: session is not None and session.done is None and not is_race,
    }
