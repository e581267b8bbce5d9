"""Context menus are made from the one table, and offer what can be done."""

from datetime import date

import pytest
from PySide6.QtWidgets import QMenu

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.window.action_table import TABLE
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


def test_zoom_of_weeks_stands_in_the_view_menu(window):
    axis = window.workplace.buildup._axis
    window.deeds.weeks_larger()
    assert not axis.is_whole
    window.deeds.all_weeks()
    assert axis.is_whole
