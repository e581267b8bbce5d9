"""No painted text stands outside its widget or over another, at any size of window and text."""

from datetime import date, timedelta

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from tests.window.test_every_window import VIEWS
from tests.window.text_drawn import TextWatch, narrow_buttons, settle
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.course import AddStation
from ultraplanner_gui.edits.stations import MoveStation
from ultraplanner_gui.engine.first_plan import new_block
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.plan.block import Block, Kind
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.widgets.lane import Align, Lane, draw_text
from ultraplanner_gui.widgets.theme import theme

TODAY = date(2026, 11, 25)
SIZES = ((1280, 720), (1440, 900), (1920, 1080), (2560, 1440))
LOOKS = [
    ("light", 80, "clock"),
    ("light", 100, "distance"),
    ("dark", 100, "clock"),
    ("light", 150, "distance"),
    ("light", 200, "clock"),
]
#: The views that paint texts of their own: what else there is shows labels and fields.
PAINTED = [
    n for n in VIEWS if n.startswith(("sheet ", "table of ")) or n in ("course table", "finder")
]
LEFT, PLAIN = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier


def _demo():
    return demo_project(TODAY)


def _many_stations():
    """Return the demo with 25 aid stations, some of them close together."""
    project = _demo()
    length_m = project.course.length_m
    for number in range(1, 19):
        at_m = length_m * (0.06 + number * 0.618034) % length_m
        cutoff_s = 24.5 * 3600.0 * at_m / length_m if number % 2 else None
        edit = AddStation(f"Hollow Bridge {number}", at_m, cutoff_s, 120.0)
        project = edit.apply(project)
    assert len(project.course.stations) == 25
    return project


def _a_year():
    """Return the demo with its race so far away that the block has 52 weeks."""
    project = _demo()
    start = project.race.start + timedelta(weeks=40)
    project = replace(project, race=replace(project.race, start=start), block=Block())
    block = new_block(project, derive(project, None, TODAY), TODAY).block
    assert (start.date() - block.sessions[0].day).days // 7 >= 50
    return replace(project, block=block)


PLANS = {"demo": _demo, "25 stations": _many_stations, "52 weeks": _a_year}


@pytest.fixture
def watch(monkeypatch):
    return TextWatch(monkeypatch)


def _show(window, project, size):
    window.resize(*size)
    window.show_document(Document(None, project, lambda: TODAY))
    assert (window.width(), window.height()) == size


def _painted_anew(watch):
    """Have everything in sight painted once, now that it has found its size."""
    settle()
    watch.forget()
    theme().changed.emit()
    settle()
    return watch.faults() + narrow_buttons()


@pytest.mark.parametrize("plan", PLANS)
@pytest.mark.parametrize("size", SIZES, ids=str)
def test_the_sheet_at_every_size(window, watch, plan, size):
    _show(window, PLANS[plan](), size)
    faults = {}
    for look, percent, measure in LOOKS:
        theme().choose(look, percent)
        window.workplace.raceday.choose_measure(measure)
        if found := _painted_anew(watch):
            faults[look, percent, measure] = found
        assert len(watch.texts) > 50
    assert faults == {}


@pytest.mark.parametrize("plan", ["demo", "25 stations"])
@pytest.mark.parametrize("size", SIZES, ids=str)
def test_the_plan_view_beside_the_lanes(window, watch, plan, size):
    _show(window, PLANS[plan](), size)
    raceday = window.workplace.raceday
    window.workplace.open_storey("raceday")
    raceday.show_plan(True)
    faults = {}
    for look, percent, measure in LOOKS:
        theme().choose(look, percent)
        raceday.choose_measure(measure)
        raceday.plan._point(33_000.0)
        if found := _painted_anew(watch):
            faults[look, percent, measure] = found
        assert ("N" in watch.texts) == raceday.plan.isVisible()
    assert percent == 200
    assert raceday.plan.isVisible() == (size[0] > 1440)
    assert faults == {}


@pytest.mark.parametrize("plan", ["demo", "25 stations"])
@pytest.mark.parametrize("size", SIZES[::2], ids=str)
def test_folded_legs_and_a_station_in_the_hand(window, watch, plan, size):
    _show(window, PLANS[plan](), size)
    raceday, document = window.workplace.raceday, window.document
    window.workplace.open_storey("raceday")
    stations = document.project.course.stations
    raceday.folds.choose({stations[1].key, stations[4].key, ""})
    raceday.head.hand.choose(stations[3].key)
    faults = {}
    for look, percent, measure in LOOKS:
        theme().choose(look, percent)
        raceday.choose_measure(measure)
        document.try_edit(MoveStation(stations[3].key, stations[3].at_m + 400.0))
        if found := _painted_anew(watch):
            faults[look, percent, measure] = found
        document.drop_trial()
    assert faults == {}


@pytest.mark.parametrize("percent", [100, 150, 200])
@pytest.mark.parametrize("size", SIZES[::2], ids=str)
def test_every_other_view_that_paints(window, watch, tmp_path, size, percent):
    path = tmp_path / "demo.ultraplan"
    ProjectFile.create(path, demo_project(date.today())).close()
    theme().choose("light", percent)
    window.resize(*size)
    faults = {}
    for name in PAINTED:
        window.deeds.open_project_file(path)
        top = VIEWS[name](window)
        if found := _painted_anew(watch):
            faults[name] = found
        assert watch.texts, name
        if top is not window:
            top.close()
    assert faults == {}


@pytest.mark.parametrize("plan", PLANS)
@pytest.mark.parametrize("percent", [100, 200])
def test_the_cards_on_their_desk(window, watch, plan, percent):
    theme().choose("light", percent)
    _show(window, PLANS[plan](), SIZES[1])
    window.go("cards")
    assert _painted_anew(watch) == []
    assert "Fellside Hundred" in " ".join(watch.texts)


@pytest.mark.parametrize("what", ["tile", "target", "token"])
@pytest.mark.parametrize("size", SIZES, ids=str)
def test_what_is_in_the_hand(window, watch, what, size):
    _show(window, _demo(), size)
    settle()
    widget, start, end = globals()[f"_{what}"](window)
    QTest.mousePress(widget, LEFT, PLAIN, start)
    for share in (0.4, 0.7, 1.0):
        QTest.mouseMove(widget, start + (end - start) * share)
    carried = window.document.shown is not window.document.before
    faults = _painted_anew(watch)
    QTest.mouseRelease(widget, LEFT, PLAIN, end)
    assert carried
    assert faults == []


def _tile(window):
    grid = window.workplace.buildup.grid
    ahead = TODAY + timedelta(weeks=2)
    sessions = window.document.project.block.sessions
    session = next(s for s in sessions if s.kind is Kind.LONG and s.day > ahead)
    start = grid.cells.tile(session.key).rect.center().toPoint()
    return grid, start, grid.cells.cell(session.day + timedelta(days=6)).center().toPoint()


def _target(window):
    window.workplace.open_storey("raceday")
    settle()
    lane = window.workplace.raceday.target
    section = window.document.outlook.sections[2]
    x = round(lane.x_of((section.start_m + section.end_m) / 2, lane.body()))
    for y in range(2, lane.height()):
        QTest.mouseMove(lane, QPoint(x, y))
        if lane.cursor().shape() is Qt.CursorShape.SizeVerCursor:
            return lane, QPoint(x, y), QPoint(x, y - 7)
    raise AssertionError("no target to take hold of")


def _token(window):
    window.workplace.open_storey("raceday")
    settle()
    lane = window.workplace.raceday.fuel
    x = lane.x_of_time(window.document.project.fuel.items[6].at_s, lane.body())
    for y in range(lane.height() - 4, 0, -2):
        if lane.readout(QPointF(x, y)):
            start = QPoint(round(x), y)
            return lane, start, start + QPoint(30, 0)
    raise AssertionError("no token to take hold of")


class _Planted(Lane):
    """A lane whose texts the test chooses."""

    def __init__(self, *texts):
        super().__init__("Planted", "km")
        self._texts = texts
        self.resize(400, 60)

    def paint_body(self, painter, body):
        for text, x, align in self._texts:
            place = QRectF(body.left() + x, 20.0, 60.0, 16.0)
            draw_text(painter, place, text, theme().colours["ink"], theme().font(8.5), align)


MIDDLE, LEADING = Align.AlignCenter, Align.AlignLeft | Align.AlignVCenter


@pytest.mark.parametrize(
    ("texts", "fault"),
    [
        ([("12 km", 0, MIDDLE), ("14 km", 80, MIDDLE)], ""),
        ([("12 km", 0, MIDDLE), ("14 km", 8, MIDDLE)], "over"),
        ([("a far longer text than its box", 0, LEADING), ("14 km", 80, MIDDLE)], "over"),
        ([("12 km", 250, LEADING)], "cut off"),
    ],
)
def test_a_planted_fault_is_found(qtbot, qapp, watch, texts, fault):
    lane = _Planted(*texts)
    qtbot.addWidget(lane)
    lane.show()
    QApplication.processEvents()
    assert {"Planted", "km"} <= set(watch.texts)
    assert [fault in found for found in watch.faults()] == ([True] if fault else [])
