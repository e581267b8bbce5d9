"""The same job without a mouse: every deed of the sheet has its keys."""

from datetime import timedelta
from itertools import pairwise

from pypdf import PdfReader
from PySide6.QtCore import QLocale, Qt
from PySide6.QtWidgets import QApplication

from tests.whole.conftest import close
from ultraplanner_gui.desk import resources
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.store.project_file import read_project
from ultraplanner_gui.window.plan_form import PlanForm

Key = Qt.Key


def _make_plan(hand):
    hand.window.ask.answer = resources.path("demo/course.gpx")
    hand.shortcut("new")
    form = hand.dialog(PlanForm)
    assert form.day.hasFocus()
    day = form.day.date().addDays(7)
    hand.type(QLocale().toString(day, form.day.displayFormat()))
    hand.tab_to(form.name)
    hand.type("Keys Only")
    hand.tab_to(form.goal)
    hand.type("21 h 00")
    hand.keys(Key.Key_Return)
    hand.until(lambda: hand.window.document is not None)
    hand.in_front()
    return day.toPython()


def _move_session(hand):
    """Walk the grid to an open run, pick it up, carry it a week on and a day down."""
    document, selection = hand.window.document, hand.window.workplace.selection
    grid = hand.window.workplace.buildup.grid
    assert grid.hasFocus()
    easy = [s for s in document.project.block.sessions if s.kind is Kind.EASY and s.is_open]
    wanted = next(s for s in easy if s.day > document.outlook.today + timedelta(weeks=2))
    while (wanted.day - grid.day).days >= 7:
        hand.keys(Key.Key_Right)
    while grid.day < wanted.day:
        hand.keys(Key.Key_Down)
    assert selection.key == wanted.key
    hand.keys(Key.Key_Return, Key.Key_Right)
    trial = document.shown
    assert trial is not document.before
    assert "Esc" in grid.accessibleDescription()
    hand.keys(Key.Key_Escape)
    assert document.shown is document.before
    hand.keys(Key.Key_Return, Key.Key_Right, Key.Key_Return)
    assert document.project.block.session(wanted.key).day == wanted.day + timedelta(days=7)


def _change_target(hand):
    document, lane = hand.window.document, hand.window.workplace.raceday.target
    hand.tab_to(lane)
    hand.keys(Key.Key_Right)
    section = document.outlook.sections[1]
    assert hand.window.workplace.selection.key == section.key
    hand.keys(Key.Key_Return, Key.Key_Up, Key.Key_Up, Key.Key_Up)
    assert document.before.sections[1] == section
    hand.keys(Key.Key_Return)
    assert document.outlook.sections[1].moving_s < section.moving_s - 120.0
    assert document.outlook.sections[1].is_fixed
    hand.keys(Key.Key_Return, *[Key.Key_Right] * 3, Key.Key_Return)
    assert document.outlook.sections[1].end_m > section.end_m + 200.0


def _move_token(hand):
    document, lane = hand.window.document, hand.window.workplace.raceday.fuel
    hand.tab_to(lane)
    hand.keys(Key.Key_Right, Key.Key_Right)
    key = hand.window.workplace.selection.key
    before = next(i for i in document.project.fuel.items if i.key == key)
    hand.keys(Key.Key_Return, Key.Key_Right, Key.Key_Right, Key.Key_Return)
    after = next(i for i in document.project.fuel.items if i.key == key)
    assert after.at_s == before.at_s + 120.0


def test_a_plan_is_made_changed_and_printed_by_keys_alone(open_window, tmp_path):
    hand = open_window()
    race_day = _make_plan(hand)
    document = hand.window.document
    assert (document.project.race.name, document.project.race.day) == ("Keys Only", race_day)
    assert document.project.race.goal_s == 21 * 3600
    _move_session(hand)
    _change_target(hand)
    _move_token(hand)
    hand.window.ask.answer = pdf = tmp_path / "cards.pdf"
    hand.shortcut("write_pdf")
    hand.until(pdf.exists)
    assert "Keys Only" in PdfReader(pdf).pages[0].extract_text()
    made, path = document.project, document.path
    hand.shortcut("close_project")
    assert hand.window.document is None
    hand.window.ask.answer = path
    hand.shortcut("open")
    assert hand.window.document.project == made
    close(hand)
    assert read_project(path) == made


def test_tab_goes_round_the_sheet_and_never_gets_stuck(open_window):
    hand = open_window()
    hand.window.deeds.demo()
    place = hand.window.workplace
    wanted = {place.buildup.grid, place.raceday.target, place.raceday.fuel}
    for key in (Key.Key_Tab, Key.Key_Backtab):
        stops = []
        for _ in range(40):
            hand.keys(key)
            stops.append(QApplication.focusWidget())
        assert wanted <= set(stops)
        assert stops[-1] in stops[:-1]
        assert not any(a is b for a, b in pairwise(stops))
