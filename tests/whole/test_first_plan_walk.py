"""A first plan as somebody makes it who never saw the window: by what it says, step by step."""

import math
from datetime import date, timedelta
from itertools import pairwise

import pytest
from PySide6.QtCore import QPoint, QPointF
from PySide6.QtWidgets import QPushButton

from tests.whole.conftest import Key, Shape, close
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.store.project_file import read_project
from ultraplanner_gui.widgets.rows import Heads, Link, Rows, Sentence
from ultraplanner_gui.window.plan_form import PlanForm
from ultraplanner_gui.window.table_stations import STATIONS

EARTH_M = 6_371_000.0
HOUR_S = 3600.0
NAMES = ("Larch Hut", "Mill Bridge", "Sheepfold", "Quarry Inn", "Chapel Saddle")


def _gpx(length_m, names):
    """An invented line to the north-east over rolling hills, with *names* evenly along it."""
    count = round(length_m / 25.0)
    step = math.degrees(length_m / count / EARTH_M / math.sqrt(2.0))
    points = []
    for k in range(count + 1):
        km = k * length_m / count / 1000.0
        lat = 46.0 + k * step
        height = 900.0 + 330.0 * math.sin(km / 5.3) + 120.0 * math.sin(km / 2.1 + 1.0)
        points.append((lat, 11.0 + k * step / math.cos(math.radians(46.2)), height))
    marks = "".join(
        f'<wpt lat="{points[at][0]:.6f}" lon="{points[at][1]:.6f}"><name>{name}</name></wpt>'
        for number, name in enumerate(names, 1)
        for at in [number * count // (len(names) + 1)]
    )
    line = "".join(
        f'<trkpt lat="{lat:.6f}" lon="{lon:.6f}"><ele>{height:.1f}</ele></trkpt>'
        for lat, lon, height in points
    )
    return (
        '<gpx version="1.1" creator="invented" xmlns="http://www.topografix.com/GPX/1/1">'
        f"{marks}<trk><name>Hollow Ridge</name><trkseg>{line}</trkseg></trk></gpx>"
    )


@pytest.fixture
def course(tmp_path):
    path = tmp_path / "hollow ridge.gpx"
    path.write_text(_gpx(67_000.0, NAMES), "utf-8")
    return path


# ---------------------------------------------------------------- what is read and clicked


def _upper(hand):
    return hand.window.workplace.ledger.findChildren(Rows)[0]


def _steps(hand):
    """The texts under the first head of the ledger."""
    rows = _upper(hand).rows
    if not (isinstance(rows[0], Heads) and rows[0].title == "What comes next"):
        return []
    return [row.text for row in rows if isinstance(row, Link | Sentence)]


def _links(hand):
    return [row.text for row in _upper(hand).rows if isinstance(row, Link)]


def _follow(hand, text):
    """Click the line of the ledger that reads *text*."""
    rows = _upper(hand)
    number = [getattr(row, "text", "") for row in rows.rows].index(text)
    hand.click(rows, rows._place_of(number).center())


def _drag(hand, widget, start, end):
    hand.press(widget, start)
    for at in hand.way(start, end):
        hand.move(widget, at)
    hand.release(widget, end)


# ---------------------------------------------------------------- the steps


def _make_plan(hand, course):
    """Drop the course; of the form nothing but the day and the usual week is typed."""
    hand.drop(course)
    form = hand.dialog(PlanForm)
    assert form.name.text() == "Hollow Ridge"
    assert form.focusWidget() is form.day
    assert form.race.note.isVisible()
    rows = {**form.race.guesses, **form.runner.guesses}
    assert all(row.is_guessed for row in rows.values())
    assert {row.button.text() for row in rows.values()} == {"our guess"}
    day = _a_saturday()
    hand.write(f"{day:%d %b %Y}")
    assert form.day.date().toPython() == day
    assert not form.race.note.isVisible()
    hand.click(form.runner.weekly)
    hand.type("45")
    hand.keys(Key.Key_Return)
    hand.until(lambda: hand.window.document is not None)
    hand.in_front()
    project = hand.window.document.project
    assert (project.race.day, project.runner.weekly_m) == (day, 45_000.0)
    return day


def _a_saturday():
    today = date.today()
    return today + timedelta(weeks=22, days=(5 - today.weekday()) % 7)


def _put_in_cutoffs(hand):
    """The first step of the ledger leads to the cell the first cutoff is typed into."""
    document, tables = hand.window.document, hand.window.workplace.tables
    _follow(hand, "Put in the cutoffs")
    page = tables.page
    assert page.spec is STATIONS
    column = [c.name for c in STATIONS.columns].index("Cutoff")
    assert (page.view.currentIndex().row(), page.view.currentIndex().column()) == (0, column)
    for number, section in enumerate(document.outlook.sections[:-1]):
        hour = 6 + math.ceil(section.arrive_s / HOUR_S) + 1
        hand.write(f"{hour % 24:02d}:30")
        hand.keys(Key.Key_Return)
        assert document.project.course.stations[number].cutoff_s == (hour + 0.5 - 6) * HOUR_S
    room = page.view.columnWidth(column)
    texts = [page.table.text(row, column) for row in range(len(NAMES))]
    assert all(page.view._cells.wanted_width(column, text) <= room for text in texts)
    hand.shortcut("sheet")
    assert document.outlook.tightest is not None
    assert "Put in the cutoffs" not in _links(hand)


def _move_a_run(hand):
    """Drag an easy run to a day without a session in its week."""
    document, grid = hand.window.document, hand.window.workplace.buildup.grid
    sessions = document.project.block.sessions
    taken = {s.day for s in sessions}
    ahead = document.outlook.today + timedelta(weeks=2)
    run, day = next(
        (s, free)
        for s in sessions
        if s.kind is Kind.EASY and s.day > ahead
        for free in (s.day - timedelta(days=s.day.weekday()) + timedelta(days=n) for n in range(7))
        if free not in taken
    )
    start = grid.cells.tile(run.key).rect.center().toPoint()
    _drag(hand, grid, start, grid.cells.cell(day).center().toPoint())
    assert document.project.block.session(run.key).day == day


def _change_a_longest_run(hand):
    """Click a long run and type its length over it."""
    document, grid = hand.window.document, hand.window.workplace.buildup.grid
    ahead = document.outlook.today + timedelta(weeks=3)
    long_runs = (s for s in document.project.block.sessions if s.kind is Kind.LONG)
    run = next(s for s in long_runs if s.day > ahead)
    hand.click(grid, grid.cells.tile(run.key).rect.center().toPoint())
    hand.write("11")
    hand.keys(Key.Key_Return)
    assert document.project.block.session(run.key).distance_m == 11_000.0


def _change_a_target(hand):
    document, lane = hand.window.document, hand.window.workplace.raceday.target
    section = document.outlook.sections[1]
    x = lane.x_of((section.start_m + section.end_m) / 2, lane.body())
    start = hand.grip(lane, x, range(2, lane.height()), Shape.SizeVerCursor)
    _drag(hand, lane, start, start - QPoint(0, 6))
    assert document.outlook.sections[1].pace_s_per_m < section.pace_s_per_m


def _add_a_stop(hand):
    """Drag the grip under a station's name to the right."""
    document, head = hand.window.document, hand.window.workplace.raceday.head
    station = document.project.course.stations[2]
    x = head.x_of(station.at_m, head.body())
    for dx in (0, 1, 2, 3, 4):
        y = next((y for y in range(head.height() - 1, 0, -1) if _is_stop(head, x + dx, y)), None)
        if y is not None:
            break
    start = QPoint(round(x + dx), y)
    _drag(hand, head, start, start + QPoint(12, 0))
    stop_s = document.project.course.stations[2].stop_s
    assert stop_s > 0.0
    assert stop_s % 60.0 == 0.0


def _is_stop(head, x, y):
    return head.hand.grip_at(QPointF(x, y)).kind == "stop"


def _add_food(hand):
    document = hand.window.document
    count, carb_g = len(document.project.fuel.items), document.outlook.fuel.total.carb_g
    hand.menu("add_item")
    assert len(document.project.fuel.items) == count + 1
    assert document.outlook.fuel.total.carb_g > carb_g
    assert hand.window.workplace.selection.kind == "item"


def _write_cards(hand, path):
    """From the ledger to the cards, and there the button that stands out."""
    hand.window.workplace.selection.clear()
    _follow(hand, "See the cards to print")
    assert hand.window.workplace.place == "cards"
    hand.window.ask.answer = path
    cards = hand.window.workplace.cards
    (button,) = (b for b in cards.findChildren(QPushButton) if b.text() == "Write PDF…")
    hand.click(button)
    hand.until(path.exists)
    assert path.read_bytes().startswith(b"%PDF")


def test_from_a_course_file_to_a_plan_that_was_changed(hand, course, tmp_path):
    day = _make_plan(hand, course)
    document = hand.window.document
    assert [s.name for s in document.project.course.stations] == list(NAMES)
    assert any(s.kind is Kind.RACE and s.day == day for s in document.project.block.sessions)
    assert len(document.outlook.sections) == len(NAMES) + 1
    assert document.outlook.items
    steps = _steps(hand)
    assert steps[:3] == [
        "Put in the cutoffs",
        "Look over race and runner",
        "See the cards to print",
    ]
    for step in (
        _put_in_cutoffs,
        _move_a_run,
        _change_a_longest_run,
        _change_a_target,
        _add_a_stop,
        _add_food,
    ):
        before = document.project
        step(hand)
        assert document.project is not before
    assert hand.window.ask.told == []
    _write_cards(hand, tmp_path / "cards.pdf")
    made, path = document.project, document.path
    close(hand)
    assert read_project(path) == made


def test_a_course_without_stations_is_asked_for_them_first(hand, tmp_path):
    course = tmp_path / "bare.gpx"
    course.write_text(_gpx(30_000.0, ()), "utf-8")
    hand.drop(course)
    hand.dialog(PlanForm)
    hand.keys(Key.Key_Return)
    hand.until(lambda: hand.window.document is not None)
    hand.in_front()
    assert _steps(hand)[0] == "Put in the aid stations"
    assert "Put in the cutoffs" not in _links(hand)
    _follow(hand, "Put in the aid stations")
    assert hand.window.workplace.tables.page.spec is STATIONS


def test_steps_go_as_they_are_taken_and_what_was_noticed_with_the_block(hand, course):
    _make_plan(hand, course)
    told = _steps(hand)
    assert "Drag a run to another day, or its right edge to lengthen it." in told
    heads = [r.title for r in _upper(hand).rows if isinstance(r, Heads)]
    assert "Noticed while making it" in heads
    _move_a_run(hand)
    hand.window.workplace.selection.clear()
    now = _steps(hand)
    assert "Drag a run to another day, or its right edge to lengthen it." not in now
    assert "Noticed while making it" not in [
        r.title for r in _upper(hand).rows if isinstance(r, Heads)
    ]
    hand.shortcut(hand.window._undo[0])
    assert _steps(hand) == told


def test_names_of_climbs_keep_off_the_lines_of_stations(hand, course):
    _make_plan(hand, course)
    lane = hand.window.workplace.raceday.profile
    body = lane.body()
    lines = sorted(lane.x_of(s.at_m, body) for s in lane.stations)
    rooms = lane.name_rooms(hand.window.document.outlook.profile, body)
    assert rooms
    for room, _ in rooms:
        assert not [x for x in lines if room.left() < x < room.right()]
    assert all(a.right() <= b.left() for (a, _), (b, _) in pairwise(rooms))
