"""The whole job in a real window: course dropped, plan made and changed, cards out, reopened."""

import gzip
import re
from datetime import timedelta
from itertools import pairwise
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QPoint, Qt
from PySide6.QtPrintSupport import QPrintDialog
from PySide6.QtWidgets import (
    QApplication,
    QDialogButtonBox,
    QLabel,
    QPushButton,
    QSpinBox,
    QTableView,
)

from tests.whole.conftest import Shape, close
from ultraplanner_gui.cards.content import fuel_card, pace_card
from ultraplanner_gui.desk import resources
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.store.project_file import read_project
from ultraplanner_gui.widgets.rows import Rows
from ultraplanner_gui.window.line_choice import LineChoice
from ultraplanner_gui.window.plan_form import PlanForm
from ultraplanner_gui.window.table_stations import STATIONS
from ultraplanner_gui.wording.words import NONE

Key = Qt.Key
MINUTE_S = 60.0
ROOT = Path(__file__).resolve().parents[2]


# ---------------------------------------------------------------- courses


def _track(gpx):
    return gpx


def _route(gpx):
    """The same line as a route, with no waypoints beside it."""
    gpx = re.sub(r"<wpt.*?</wpt>\s*", "", gpx, flags=re.DOTALL)
    gpx = re.sub(r"</?trkseg>", "", gpx)
    return gpx.replace("trkpt", "rtept").replace("<trk>", "<rte>").replace("</trk>", "</rte>")


def _no_heights(gpx):
    return re.sub(r"<ele>.*?</ele>", "", gpx)


COURSES = {"track with waypoints": _track, "route alone": _route, "no heights": _no_heights}


def _course_file(folder, made):
    path = folder / "the course.gpx"
    path.write_text(made(resources.path("demo/course.gpx").read_text("utf-8")), "utf-8")
    return path


# ---------------------------------------------------------------- steps


def _button(dialog, role=QDialogButtonBox.ButtonRole.AcceptRole):
    box = dialog.findChild(QDialogButtonBox)
    return next(b for b in box.buttons() if box.buttonRole(b) is role)


def _fill_form(hand, name, finish, has_heights):
    """Name, a date a week later than proposed and the finish, then the button."""
    form = hand.dialog(PlanForm)
    says_so = any("no heights" in label.text() for label in form.findChildren(QLabel))
    assert says_so is not has_heights
    hand.click(form.name)
    hand.type(name)
    proposed = form.day.date()
    _pick_next_week(hand, form.day)
    day = form.day.date()
    assert abs(proposed.daysTo(day)) == 7
    hand.click(form.goal)
    hand.type(finish)
    hand.click(_button(form))
    hand.until(lambda: hand.window.document is not None)
    hand.in_front()
    return day.toPython()


def _pick_next_week(hand, field):
    """Pick the same weekday of the next row in the calendar under *field*."""
    hand.click(field, QPoint(field.width() - 8, field.height() // 2))
    hand.until(field.calendarWidget().isVisible)
    days = field.calendarWidget().findChild(QTableView)
    now = days.currentIndex()
    row = now.row() + 1 if now.row() + 1 < days.model().rowCount() else now.row() - 1
    hand.click(days.viewport(), days.visualRect(now.siblingAtRow(row)).center())
    hand.until(lambda: not days.isVisible())


def _week_m(outlook):
    return [week.distance_m for week in outlook.weeks]


def _an_easy_run(document):
    """An easy run in the middle of the block, and the same weekday two weeks on."""
    ahead = document.outlook.today + timedelta(weeks=3)
    easy = (s for s in document.project.block.sessions if s.kind is Kind.EASY and s.day > ahead)
    session = next(easy)
    return session, session.day + timedelta(weeks=2)


def _drag_session(hand):
    """Carry a run two weeks on: every move shows, Esc puts back, letting go is one step."""
    window, document = hand.window, hand.window.document
    grid, lane = window.workplace.buildup.grid, window.workplace.buildup.distance
    ledger = window.workplace.ledger.findChild(Rows)
    session, day = _an_easy_run(document)
    start = grid.cells.tile(session.key).rect.center().toPoint()
    end = grid.cells.cell(day).center().toPoint()

    hand.click(grid, start)
    assert (window.workplace.selection.kind, window.workplace.selection.key) == (
        "session",
        session.key,
    )
    # Away from the lanes: the line under the pointer would run through them.
    hand.move(window.workplace.header, window.workplace.header.rect().center())
    QApplication.processEvents()
    kept, bars, tiles = document.outlook, hand.pixels(lane), hand.pixels(grid)
    told = ledger.accessibleDescription()
    hand.press(grid, start)
    seen = []
    for at in hand.way(start, end):
        hand.move(grid, at)
        seen.append(document.shown)
    assert document.before is kept
    assert document.project is kept.project
    assert len({id(outlook) for outlook in seen}) > 2
    assert _week_m(seen[-1]) != _week_m(kept)
    assert sum(_week_m(seen[-1])) == pytest.approx(sum(_week_m(kept)))
    assert ledger.accessibleDescription() != told
    hand.sees_change(lane, bars)
    hand.sees_change(grid, tiles)

    hand.keys(Key.Key_Escape)
    assert document.shown is kept
    assert ledger.accessibleDescription() == told
    hand.sees_again(lane, bars)
    hand.release(grid, end)
    assert document.outlook is kept

    steps = document.undo_stack.count()
    hand.press(grid, start)
    for at in hand.way(start, end):
        hand.move(grid, at)
    hand.release(grid, end)
    assert document.project.block.session(session.key).day == day
    assert document.undo_stack.count() == steps + 1
    hand.sees_change(lane, bars)


def _drag_target(hand):
    """Drag the top of a section's step: faster there, while the finish asked for stays."""
    document, lane = hand.window.document, hand.window.workplace.raceday.target
    section = document.outlook.sections[0]
    x = lane.x_of((section.start_m + section.end_m) / 2, lane.body())
    start = hand.grip(lane, x, range(2, lane.height()), Shape.SizeVerCursor)
    before = hand.pixels(lane)
    hand.press(lane, start)
    paces = []
    for at in hand.way(start, start - QPoint(0, 9), 4):
        hand.move(lane, at)
        paces.append(document.shown.sections[0].pace_s_per_m)
    assert sorted(paces, reverse=True) == paces
    assert paces[-1] < section.pace_s_per_m
    assert not document.outlook.sections[0].is_fixed
    hand.sees_change(lane, before)
    hand.release(lane, start - QPoint(0, 9))
    now = document.outlook
    assert now.sections[0].is_fixed
    assert now.sections[0].pace_s_per_m == paces[-1]
    assert now.target.finish_s == pytest.approx(document.project.race.goal_s, abs=1.0)


def _drag_section_end(hand):
    """Drag the edge between two sections: the station goes along."""
    document, lane = hand.window.document, hand.window.workplace.raceday.target
    section = document.outlook.sections[0]
    start = QPoint(round(lane.x_of(section.end_m, lane.body())), lane.height() - 6)
    hand.move(lane, start)
    assert lane.cursor().shape() is Shape.SizeHorCursor
    hand.press(lane, start)
    ends = []
    for at in hand.way(start, start + QPoint(20, 0), 4):
        hand.move(lane, at)
        ends.append(document.shown.sections[0].end_m)
    # Two moves may snap to one whole kilometre.
    assert sorted(ends) == ends
    assert len(set(ends)) >= len(ends) - 1
    assert ends[-1] > section.end_m
    hand.release(lane, start + QPoint(20, 0))
    assert document.outlook.sections[0].end_m == ends[-1]


def _place_fuel(hand):
    """Ask for more per hour, place it by the clock."""
    document = hand.window.document
    carb_g = document.outlook.fuel.total.carb_g
    hand.menu("fuel_rates")
    hand.until(lambda: QApplication.activeWindow() is not hand.window)
    dialog = QApplication.activeWindow()
    hand.until(lambda: dialog.findChildren(QSpinBox))
    hand.click(dialog.findChildren(QSpinBox)[0])
    hand.type("80")
    hand.click(_button(dialog))
    hand.in_front()
    assert document.project.fuel.carb_g_per_h == 80.0
    hand.shortcut("place_fuel")
    hours = document.outlook.target.finish_s / 3600.0
    assert document.outlook.fuel.total.carb_g > carb_g
    assert document.outlook.fuel.total.carb_g / hours == pytest.approx(80.0, rel=0.1)


def _drag_token(hand):
    """Drag something to eat to a later hour; the grams per hour follow at every move."""
    document, lane = hand.window.document, hand.window.workplace.raceday.fuel
    item = document.project.fuel.items[5]
    x = lane.x_of_time(item.at_s, lane.body())
    low = lane.height()
    start = hand.grip(lane, x, range(low - 1, low // 2, -1), Shape.SizeHorCursor)
    before = hand.pixels(lane)
    hand.press(lane, start)
    taken = hand.window.workplace.selection.key
    was_s = next(i.at_s for i in document.project.fuel.items if i.key == taken)
    lines = []
    for at in hand.way(start, start + QPoint(40, 0), 4):
        hand.move(lane, at)
        lines.append(tuple(document.shown.fuel.rolling_g_per_h))
    assert len(set(lines)) > 1
    hand.sees_change(lane, before)
    hand.release(lane, start + QPoint(40, 0))
    moved = next(i for i in document.project.fuel.items if i.key == taken)
    assert moved.at_s > was_s + 10 * MINUTE_S


def _type_cutoff(hand):
    """Type a cutoff into the table of aid stations: time in hand follows."""
    document, tables = hand.window.document, hand.window.workplace.tables
    arrive_s = document.outlook.sections[0].arrive_s
    hand.shortcut("tables")
    (name,) = tables.list.findItems(STATIONS.name, Qt.MatchFlag.MatchExactly)
    hand.click(tables.list.viewport(), tables.list.visualItemRect(name).center())
    page = tables.page
    assert page.spec is STATIONS
    column = [c.name for c in STATIONS.columns].index("Cutoff after")
    cell = page.view.visualRect(page.table.index(0, column))
    hand.double_click(page.view.viewport(), cell.center())
    cutoff_s = (arrive_s // 3600 + 2) * 3600.0
    hand.type(f"{cutoff_s // 3600:.0f} h 00")
    hand.keys(Key.Key_Return)
    assert document.project.course.stations[0].cutoff_s == cutoff_s
    now = document.outlook.sections[0]
    assert now.to_cutoff_s == pytest.approx(cutoff_s - max(now.arrive_s, now.forecast_s))
    hand.shortcut("sheet")


def _write_pdf(hand, path):
    hand.window.ask.answer = path
    hand.shortcut("write_pdf")
    hand.until(path.exists)
    assert hand.window.ask.told == []


def _flat(text):
    return "".join(text.split())


def _assert_cards(path, outlook, words):
    """Every figure of both cards is in the PDF at *path*."""
    pages = PdfReader(path).pages
    text = _flat("".join(page.extract_text() for page in pages))
    pace, fuel = pace_card(outlook, words), fuel_card(outlook, words)
    assert len(pace.rows) == len(outlook.sections)
    assert words.duration(outlook.target.finish_s) in pace.subtitle
    figures = [pace.title, pace.subtitle, fuel.title]
    for row in pace.rows:
        figures += [row.name, row.distance, row.pace, row.on_plan, row.cutoff.time.strip(NONE)]
    for leg in (*fuel.rows, fuel.total):
        figures += [leg.name, *leg.foods, leg.time, leg.carbs, leg.rate, leg.fluid]
    assert [figure for figure in figures if _flat(figure) not in text] == []


# ---------------------------------------------------------------- the jobs


@pytest.mark.parametrize("kind", COURSES)
def test_a_course_becomes_a_plan_and_cards_and_is_found_again(open_window, tmp_path, kind):
    course = _course_file(tmp_path, COURSES[kind])
    _do_the_whole_job(open_window, course, tmp_path, has_heights=kind != "no heights")


@pytest.mark.parametrize("number", ["05", "06", "07"])
def test_a_real_course_becomes_a_plan_and_cards(open_window, tmp_path, number):
    """A route, a track with waypoints, and five tracks without heights."""
    folder = ROOT.parent / "shared" / "data" / "courses"
    packed = next(iter(folder.glob(f"course-{number}*.gpx.gz")), None)
    if packed is None:
        pytest.skip("the real courses are not at hand")
    course = tmp_path / "real.gpx"
    course.write_bytes(gzip.decompress(packed.read_bytes()))
    is_several = number == "07"
    _do_the_whole_job(open_window, course, tmp_path, not is_several, is_several)


def _do_the_whole_job(open_window, course, folder, has_heights, is_several=False):
    hand = open_window()
    hand.drop(course)
    if is_several:
        hand.dialog(LineChoice)
        hand.keys(Key.Key_Return)
    race_day = _fill_form(hand, "Long Hills", "20 h 30", has_heights)
    _assert_plan(hand, race_day, has_heights)
    while len(hand.window.document.outlook.sections) < 3:
        hand.shortcut("add_station")
    for step in (
        _drag_session,
        _drag_target,
        _drag_section_end,
        _place_fuel,
        _drag_token,
        _type_cutoff,
    ):
        step(hand)
    pdf = folder / "cards.pdf"
    _write_pdf(hand, pdf)
    document = hand.window.document
    made, path, sections = document.project, document.path, document.outlook.sections
    _assert_cards(pdf, document.outlook, hand.window.settings.words())
    close(hand)
    assert read_project(path) == made
    _assert_found_again(open_window(), path, made, sections)


def _assert_plan(hand, race_day, has_heights):
    document = hand.window.document
    race = document.project.race
    assert (race.name, race.day, race.goal_s) == ("Long Hills", race_day, 20.5 * 3600)
    assert document.outlook.profile.has_elevation is has_heights
    assert any(s.kind is Kind.RACE and s.day == race_day for s in document.project.block.sessions)
    facts = [label.text() for label in hand.window.workplace.header.findChildren(QLabel)]
    assert any("paced as flat" in text for text in facts) is not has_heights
    if not has_heights:
        assert document.outlook.profile.ascent_m == 0.0
        _assert_flat_pace(document.outlook)


def _assert_found_again(hand, path, made, sections):
    """Open the project from the list of the last ones."""
    buttons = hand.window.findChildren(QPushButton)
    hand.click(next(b for b in buttons if b.text() == path.stem and b.isVisible()))
    hand.until(lambda: hand.window.document is not None)
    assert hand.window.document.project == made
    assert hand.window.document.path == path
    assert hand.window.document.outlook.sections == sections


def _assert_flat_pace(outlook):
    """Without heights only hours and darkness slow, so that neighbours are close to each other."""
    paces = [section.pace_s_per_m for section in outlook.sections]
    assert all(abs(b / a - 1.0) < 0.15 for a, b in pairwise(paces))
    assert all(section.climb_m == section.drop_m == 0.0 for section in outlook.sections)


def test_printing_asks_for_a_printer_and_esc_leaves_all_as_it_was(open_window):
    hand = open_window()
    hand.window.deeds.demo()
    document = hand.window.document
    project = document.project
    hand.shortcut("print_cards")
    hand.dialog(QPrintDialog)
    hand.keys(Key.Key_Escape)
    hand.in_front()
    assert document.project is project
    assert hand.window.workplace.place == "cards"
    assert hand.window.ask.told == []
