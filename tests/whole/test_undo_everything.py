"""Every kind of deed is one step, taken back and done again by the same two keys."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QDialog, QPlainTextEdit, QSpinBox

from ultraplanner_gui.buildup.session_editor import SessionEditor
from ultraplanner_gui.desk import resources
from ultraplanner_gui.window.plan_form import PlanForm
from ultraplanner_gui.window.table_stations import STATIONS

Key = Qt.Key
CONTROL = Qt.KeyboardModifier.ControlModifier


def _choose_run(hand):
    """Choose an open run ahead and put the keyboard into the grid."""
    document = hand.window.document
    today = document.outlook.today
    runs = [s for s in document.project.block.sessions if s.is_open and s.day > today]
    hand.window.workplace.selection.choose("session", runs[4].key)
    hand.window.workplace.buildup.grid.setFocus()


def _grid_keys(*keys):
    def deed(hand):
        _choose_run(hand)
        hand.keys(*keys)

    return deed


def _lane_keys(name, *keys):
    def deed(hand):
        lane = getattr(hand.window.workplace.raceday, name)
        hand.tab_to(lane)
        hand.keys(*keys)

    return deed


def _menu(name):
    return lambda hand: hand.menu(name)


def _mark_missed(hand):
    _choose_run(hand)
    hand.menu("mark_missed")


def _change_session(hand):
    _choose_run(hand)
    hand.keys(Key.Key_F2)
    editor = hand.dialog(SessionEditor)
    assert editor.planned.distance.hasFocus()
    hand.type("11.5")
    hand.keys(Key.Key_Return)
    hand.in_front()


def _front_dialog(hand):
    hand.until(lambda: isinstance(QApplication.activeWindow(), QDialog))
    return QApplication.activeWindow()


def _fuel_rates(hand):
    hand.menu("fuel_rates")
    field = _front_dialog(hand).findChildren(QSpinBox)[0]
    hand.tab_to(field)
    hand.type("85")
    hand.keys(Key.Key_Return)
    hand.in_front()


def _notes(hand):
    hand.shortcut("notes")
    hand.tab_to(_front_dialog(hand).findChild(QPlainTextEdit))
    hand.type("Two lamps.")
    hand.keys(Key.Key_Escape)
    hand.in_front()


def _race_form(hand):
    hand.shortcut("race_form")
    form = hand.dialog(PlanForm)
    hand.tab_to(form.goal)
    hand.type("21 h 30")
    hand.keys(Key.Key_Return)
    hand.in_front()


def _cutoff(hand):
    hand.shortcut("tables")
    tables = hand.window.workplace.tables
    tables.show_table(STATIONS.name)
    view = tables.page.view
    column = [c.name for c in STATIONS.columns].index("Planned stop")
    view.setCurrentIndex(tables.page.table.index(0, column))
    view.setFocus()
    hand.keys(Key.Key_F2)
    hand.type("9")
    hand.keys(Key.Key_Return)
    hand.shortcut("sheet")


def _leave_card_out(hand):
    hand.shortcut("cards")
    desk = hand.window.workplace.cards
    hand.click(desk.choice.rows[0].remove)
    hand.shortcut("sheet")


def _other_course(hand):
    hand.window.ask.answer = resources.path("demo/course.gpx")
    _awaited(hand, lambda: hand.menu("open_course"))


def _awaited(hand, deed):
    """Do what a job works at, and wait for the step it ends in."""
    count = hand.window.document.undo_stack.count()
    deed()
    hand.until(lambda: hand.window.document.undo_stack.count() > count)


def _go_back(hand):
    hand.menu("history")
    _front_dialog(hand)
    hand.keys(Key.Key_Return)
    hand.in_front()


DEEDS = {
    "move session": _grid_keys(Key.Key_Return, Key.Key_Right, Key.Key_Return),
    "mark done": _grid_keys(Key.Key_D),
    "mark missed": _mark_missed,
    "change session": _change_session,
    "remove session": _grid_keys(Key.Key_Delete),
    "add session": _grid_keys(Key.Key_N),
    "target": _lane_keys("target", Key.Key_Return, Key.Key_Up, Key.Key_Return),
    "section end": _lane_keys("target", Key.Key_Return, Key.Key_Right, Key.Key_Return),
    "free targets": _menu("free_targets"),
    "add station": lambda hand: hand.shortcut("add_station"),
    "fuel rates": _fuel_rates,
    "place fuel": lambda hand: hand.shortcut("place_fuel"),
    "move token": _lane_keys("fuel", Key.Key_Return, Key.Key_Right, Key.Key_Return),
    "remove token": _lane_keys("fuel", Key.Key_Delete),
    "add token": lambda hand: hand.shortcut("add_item"),
    "notes": _notes,
    "race form": _race_form,
    "planned stop": _cutoff,
    "card left out": _leave_card_out,
    "build anew": lambda hand: _awaited(hand, lambda: hand.shortcut("build_block")),
    "another course": _other_course,
    "go back": _go_back,
}


def test_every_deed_is_one_step_and_all_are_undone_and_done_again(open_window):
    hand = open_window()
    hand.window.deeds.demo()
    document = hand.window.document
    states = [document.project]
    for name, deed in DEEDS.items():
        deed(hand)
        states.append(document.project)
        assert states[-1] != states[-2], name
        assert document.undo_stack.count() == len(states) - 1, name
        assert document.undo_stack.undoText(), name
        assert hand.window.ask.told == []
    for state in reversed(states[:-1]):
        hand.keys(Key.Key_Z, modifier=CONTROL)
        assert document.project == state
    assert not document.undo_stack.canUndo()
    for state in states[1:]:
        hand.keys(Key.Key_Z, modifier=CONTROL | Qt.KeyboardModifier.ShiftModifier)
        assert document.project == state
    assert document.is_kept


@pytest.mark.parametrize("place", ["sheet", "tables", "cards"])
def test_undo_is_named_after_the_deed_and_works_from_every_place(open_window, place):
    hand = open_window()
    hand.window.deeds.demo()
    document, before = hand.window.document, hand.window.document.project
    hand.shortcut("place_fuel")
    hand.shortcut("add_station")
    hand.shortcut(place)
    undo = hand.window._undo[0]
    assert document.undo_stack.undoText() in undo.text()
    hand.keys(Key.Key_Z, Key.Key_Z, modifier=CONTROL)
    assert document.project == before
