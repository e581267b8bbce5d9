"""The whole job by Tab, arrows, Enter, Esc, menus and typing: no key has to be known by heart."""

from datetime import timedelta

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QLocale, Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QAbstractButton, QApplication, QMenu

from tests.whole.conftest import close
from ultraplanner_gui.desk import resources
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.store.project_file import read_project
from ultraplanner_gui.window.plan_form import PlanForm
from ultraplanner_gui.window.table_stations import STATIONS
from ultraplanner_gui.window.tables import SPECS

Key = Qt.Key
ALT, SHIFT = Qt.KeyboardModifier.AltModifier, Qt.KeyboardModifier.ShiftModifier
KNOWN = {Key.Key_Tab, Key.Key_Backtab, Key.Key_Return, Key.Key_Space, Key.Key_Escape}
KNOWN |= {Key.Key_Left, Key.Key_Right, Key.Key_Up, Key.Key_Down, Key.Key_Home, Key.Key_End}


@pytest.fixture
def hand(open_window, monkeypatch):
    """A hand that knows no shortcut but the letters underlined in the menu bar."""
    hand = open_window()
    keys = hand.keys
    underlined = {_letter(menu.text()) for menu in hand.window.menuBar().actions()}

    def known_keys(*pressed, modifier=Qt.KeyboardModifier.NoModifier):
        is_menu = modifier == ALT and underlined.issuperset(pressed)
        assert is_menu or modifier in (SHIFT, Qt.KeyboardModifier.NoModifier)
        assert is_menu or KNOWN.issuperset(pressed)
        keys(*pressed, modifier=modifier)

    monkeypatch.setattr(hand, "keys", known_keys)
    return hand


def _letter(text):
    return Key(QKeySequence.mnemonic(text)[0].key())


def _menu(hand, name):
    """Open a menu by its underlined letter, walk down to an action and press Enter."""
    action = hand.window.table.by_name[name]
    bar = hand.window.menuBar()
    above = next(a for a in bar.actions() if action in a.menu().actions())
    hand.keys(_letter(above.text()), modifier=ALT)
    menu = above.menu()
    hand.until(lambda: QApplication.activePopupWidget() is menu)
    for _ in menu.actions():
        if menu.activeAction() is action:
            break
        hand.keys(Key.Key_Down)
    assert menu.activeAction() is action
    hand.keys(Key.Key_Return)
    assert not isinstance(QApplication.activePopupWidget(), QMenu)


def _make_plan(hand):
    hand.window.ask.answer = resources.path("demo/course.gpx")
    button = next(
        b for b in hand.window.findChildren(QAbstractButton) if b.text() == "New from a &course…"
    )
    hand.tab_to(button)
    hand.keys(Key.Key_Space)
    form = hand.dialog(PlanForm)
    assert form.day.hasFocus()
    day = form.day.date().addDays(7)
    hand.write(QLocale().toString(day, "d MMM yyyy"))
    hand.tab_to(form.name)
    hand.write("Known Keys")
    hand.tab_to(form.goal)
    hand.write("21 h 00")
    hand.keys(Key.Key_Return)
    hand.until(lambda: hand.window.document is not None)
    hand.in_front()
    return day.toPython()


def _move_session(hand):
    """Carry an open easy run a week on."""
    document = hand.window.document
    grid = hand.window.workplace.buildup.grid
    hand.tab_to(grid)
    easy = [s for s in document.project.block.sessions if s.kind is Kind.EASY and s.is_open]
    wanted = next(s for s in easy if s.day > document.outlook.today + timedelta(weeks=2))
    while (wanted.day - grid.day).days >= 7:
        hand.keys(Key.Key_Right)
    while grid.day < wanted.day:
        hand.keys(Key.Key_Down)
    hand.keys(Key.Key_Return, Key.Key_Right, Key.Key_Escape)
    assert document.project.block.session(wanted.key) == wanted
    hand.keys(Key.Key_Return, Key.Key_Right, Key.Key_Return)
    assert document.project.block.session(wanted.key).day == wanted.day + timedelta(days=7)


def _change_target(hand):
    document, lane = hand.window.document, hand.window.workplace.raceday.target
    hand.tab_to(lane)
    hand.keys(Key.Key_Right)
    was = document.outlook.sections[1]
    hand.keys(Key.Key_Return, Key.Key_Up, Key.Key_Up, Key.Key_Up, Key.Key_Return)
    now = document.outlook.sections[1]
    assert now.is_fixed
    assert now.moving_s < was.moving_s - 120.0


def _move_token(hand):
    document, lane = hand.window.document, hand.window.workplace.raceday.fuel
    hand.tab_to(lane)
    hand.keys(Key.Key_Right, Key.Key_Right)
    key = hand.window.workplace.selection.key
    was_s = {item.key: item.at_s for item in document.project.fuel.items}
    hand.keys(Key.Key_Return, Key.Key_Right, Key.Key_Right, Key.Key_Return)
    now_s = {item.key: item.at_s for item in document.project.fuel.items}
    assert now_s == was_s | {key: was_s[key] + 120.0}


def _type_cutoff(hand):
    """Give the second aid station three hours more than the target takes to get there."""
    document = hand.window.document
    _menu(hand, "tables")
    tables = hand.window.workplace.tables
    hand.tab_to(tables.list)
    wanted = SPECS.index(STATIONS)
    while tables.list.number != wanted:
        before = tables.list.number
        hand.keys(Key.Key_Down if before < wanted else Key.Key_Up)
        assert tables.list.number != before
    view = tables.page.view
    hand.tab_to(view)
    column = next(n for n, c in enumerate(STATIONS.columns) if c.name == "Cutoff")
    for _ in range(20):
        row, at = view.currentIndex().row(), view.currentIndex().column()
        if (row, at) == (1, column):
            break
        if row != 1:
            hand.keys(Key.Key_Down if row < 1 else Key.Key_Up)
        else:
            hand.keys(Key.Key_Right if at < column else Key.Key_Left)
    station = document.project.course.stations[1]
    hours = round(document.outlook.target.arrival_s(station.at_m) / 3600.0) + 3
    assert station.cutoff_s != hours * 3600.0
    hand.write(f"{hours} h 00")
    hand.keys(Key.Key_Return)
    assert document.project.course.stations[1].cutoff_s == hours * 3600.0


def test_a_plan_is_made_changed_and_printed_without_shortcuts(hand, tmp_path):
    race_day = _make_plan(hand)
    document = hand.window.document
    assert (document.project.race.name, document.project.race.day) == ("Known Keys", race_day)
    assert document.project.race.goal_s == 21 * 3600
    _move_session(hand)
    _change_target(hand)
    _move_token(hand)
    _type_cutoff(hand)
    _menu(hand, "sheet")
    hand.tab_to(hand.window.workplace.buildup.grid)
    hand.window.ask.answer = pdf = tmp_path / "cards.pdf"
    _menu(hand, "write_pdf")
    hand.until(pdf.exists)
    assert "Known Keys" in PdfReader(pdf).pages[0].extract_text()
    made, path = document.project, document.path
    assert hand.window.ask.told == []
    _menu(hand, "close_project")
    assert hand.window.document is None
    close(hand)
    assert read_project(path) == made
