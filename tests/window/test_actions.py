"""Context menus are made from the one table, and offer what can be done."""

from datetime import date
from itertools import pairwise

import pytest
from PySide6.QtCore import QEvent
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QMenu

from ultraplanner_gui.buildup import gridkeys
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.window.action_table import TABLE
from ultraplanner_gui.window.actions import name_of
from ultraplanner_gui.window.main_window import MainWindow

TODAY = date(2026, 11, 25)


@pytest.fixture
def window(qtbot, tmp_path):
    window = MainWindow(Settings(tmp_path / "settings.ini"))
    qtbot.addWidget(window)
    window.show()
    window.show_document(Document(None, demo_project(TODAY), lambda: TODAY))
    return window


def offered(window, name):
    return {a.objectName() for a in window.table.context(name) if a.isEnabled()}


def choose(window, is_so):
    session = next(s for s in window.document.project.block.sessions if is_so(s))
    window.workplace.selection.choose("session", session.key)


def test_what_can_be_done_with_a_session_follows_what_became_of_it(window):
    choose(window, lambda s: s.is_open and s.kind is Kind.EASY)
    assert {"pick_up", "mark_done", "mark_missed", "remove_session"} <= offered(window, "session")
    assert "unmark" not in offered(window, "session")
    choose(window, lambda s: s.done is not None)
    assert {"unmark", "edit_session"} <= offered(window, "session")
    assert not {"pick_up", "mark_done"} & offered(window, "session")
    choose(window, lambda s: s.kind is Kind.RACE)
    assert not {"pick_up", "remove_session"} & offered(window, "session")


def test_every_context_is_one_that_is_asked_for(window):
    lanes = set(window.workplace.raceday.stack._lanes)
    asked = {"session", "weeks"} | lanes
    assert {name for row in TABLE for name in row.contexts} <= asked


def test_the_menu_of_a_lane_holds_the_actions_of_the_table(window):
    menus = window.workplace.raceday.stack.menus
    for name in ("target", "fuel", "profile"):
        menu = menus.of_lane(name, None)
        assert set(window.table.context(name)) <= set(menu.actions())
        assert window.table.context(name)
        menu.deleteLater()


def test_the_menu_of_the_grid_holds_the_actions_of_the_table(window, monkeypatch):
    storey = window.workplace.buildup
    monkeypatch.setattr(QMenu, "popup", lambda menu, at: None)
    choose(window, lambda s: s.is_open)
    assert storey.actions_of("session") == window.table.context("session")
    storey.grid.menu_wanted.emit(storey.grid.mapToGlobal(storey.grid.rect().center()))
    menu = storey.findChildren(QMenu)[-1]
    assert menu.actions() == window.table.context("session")


def test_the_menu_of_the_grid_shows_groups_and_the_keys_of_the_grid(window):
    actions = window.table.context("session")
    assert sum(action.isSeparator() for action in actions) >= 4
    assert not actions[0].isSeparator()
    assert not any(a.isSeparator() and b.isSeparator() for a, b in pairwise(actions))
    keys = {row.name: row.keys for row in TABLE if row.keys}
    for name, key in keys.items():
        text = QKeySequence(key).toString(QKeySequence.SequenceFormat.NativeText)
        assert window.table.by_name[name].text().endswith(f"\t{text}")
        pressed = QKeySequence(key)[0]
        typed = key if key in "+-0" else ""
        event = QKeyEvent(QEvent.Type.KeyPress, pressed.key(), pressed.keyboardModifiers(), typed)
        assert gridkeys.is_grid_key(event, is_carrying=False), name


def test_names_of_actions_are_without_keys(window):
    assert name_of(window.table.by_name["mark_done"]) == "Mark done as planned"


def test_zoom_of_weeks_stands_in_the_view_menu(window):
    axis = window.workplace.buildup._axis
    window.deeds.weeks_larger()
    assert not axis.is_whole
    window.deeds.all_weeks()
    assert axis.is_whole
