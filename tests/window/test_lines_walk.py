"""No line runs through a text of the sheet, whatever the plan, the window and the axis."""

from datetime import date, timedelta

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QRectF

from tests.window.lines_drawn import LineWatch
from tests.window.text_drawn import TextWatch, settle
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.block import AddSession
from ultraplanner_gui.edits.course import AddStation
from ultraplanner_gui.engine.first_plan import new_block
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.plan.block import Block, Kind
from ultraplanner_gui.widgets.lane import Align, Lane, draw_level, draw_text
from ultraplanner_gui.widgets.theme import theme

TODAY = date(2026, 11, 25)
SIZES = ((1280, 720), (1440, 900), (1920, 1080))
POSES = ((False, "distance"), (False, "clock"), (True, "clock"))
EXTRAS = ((Kind.STRENGTH, 0.0), (Kind.RECOVERY, 6_500.0), (Kind.CROSS, 0.0))


def _demo():
    return demo_project(TODAY)


def _long_block(weeks):
    project = _demo()
    start = project.race.start + timedelta(weeks=weeks - 11)
    project = replace(project, race=replace(project.race, start=start), block=Block())
    return replace(project, block=new_block(project, derive(project, None, TODAY), TODAY).block)


def _full_days():
    """Return a plan of 24 weeks with three and four sessions on every long run's day."""
    project = _long_block(24)
    for number, session in enumerate(project.block.sessions):
        if session.kind is not Kind.LONG:
            continue
        for kind, metres in EXTRAS[: 2 + number % 2]:
            one = replace(session, key="", kind=kind, distance_m=metres, duration_s=4_200.0)
            project = AddSession(one).apply(project)
    return project


def _many_stations():
    project = _demo()
    length_m = project.course.length_m
    for number in range(1, 19):
        at_m = length_m * (0.06 + number * 0.618034) % length_m
        project = AddStation(f"Hollow Bridge {number}", at_m, None, 120.0).apply(project)
    return project


def _no_cutoffs():
    project = _demo()
    course = project.course
    stations = tuple(replace(s, cutoff_s=None) for s in course.stations)
    race = replace(project.race, limit_s=None)
    return replace(project, race=race, course=replace(course, stations=stations))


PLANS = {
    "demo": _demo,
    "52 weeks": lambda: _long_block(52),
    "full days": _full_days,
    "25 stations": _many_stations,
    "no cutoffs": _no_cutoffs,
}


@pytest.mark.parametrize("plan", PLANS)
@pytest.mark.parametrize("size", SIZES, ids=str)
def test_no_line_runs_through_a_text(window, monkeypatch, plan, size):
    window.resize(*size)
    window.show_document(Document(None, PLANS[plan](), lambda: TODAY))
    settle()
    watch, faults = LineWatch(monkeypatch), {}
    for alone, measure in POSES:
        window.workplace.show_storeys(not alone, True)
        window.workplace.raceday.choose_measure(measure)
        settle()
        watch.forget()
        theme().changed.emit()
        settle()
        if found := watch.faults():
            faults[alone, measure] = found
        assert watch.count > 50
    assert faults == {}


@pytest.mark.parametrize("size", SIZES, ids=str)
def test_full_days_keep_their_texts_apart(window, monkeypatch, size):
    window.resize(*size)
    window.show_document(Document(None, _full_days(), lambda: TODAY))
    settle()
    watch, faults = TextWatch(monkeypatch), {}
    for look, percent in (("light", 80), ("dark", 100), ("light", 150)):
        theme().choose(look, percent)
        settle()
        watch.forget()
        theme().changed.emit()
        settle()
        if found := watch.faults():
            faults[percent] = found
    assert faults == {}


class _Planted(Lane):
    """A lane with a text, a line and a plate where the test wants them."""

    def __init__(self, y, has_plate, is_after):
        super().__init__("Planted", "km")
        self._planted = y, has_plate, is_after
        self.resize(400, 60)

    def paint_body(self, painter, body):
        y, has_plate, is_after = self._planted
        place, look = QRectF(body.left() + 20.0, 20.0, 60.0, 16.0), theme()

        def line():
            draw_level(painter, (body.left(), body.right()), y, look.colours["clay"])

        if not is_after:
            line()
        if has_plate:
            painter.fillRect(place, look.colours["lane"])
        draw_text(painter, place, "12 km", look.colours["ink"], look.font(8.5), Align.AlignCenter)
        if is_after:
            line()


@pytest.mark.parametrize(
    ("y", "has_plate", "is_after", "is_fault"),
    [
        (28.0, False, False, True),
        (28.0, True, False, False),
        (28.0, True, True, True),
        (50.0, False, True, False),
    ],
)
def test_a_planted_line_is_found(qtbot, monkeypatch, y, has_plate, is_after, is_fault):
    watch = LineWatch(monkeypatch)
    lane = _Planted(y, has_plate, is_after)
    qtbot.addWidget(lane)
    lane.show()
    settle()
    assert bool(watch.faults()) is is_fault
