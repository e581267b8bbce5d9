from datetime import date, datetime
from functools import cache
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from ultraplanner_gui.desk import resources
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.first_plan import first_plan
from ultraplanner_gui.exchange.foods_in import read_foods
from ultraplanner_gui.plan.course import AidStation, Course, Line, sections_between
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.raceday.storey import RaceDay
from ultraplanner_gui.science.geodesy import distance_along
from ultraplanner_gui.wording.words import Words

TODAY = date(2027, 3, 1)
HOUR_S = 3600.0


def ground(km=60.0, heights=True):
    """Three hills along a meridian."""
    share = np.linspace(0.0, 1.0, round(km * 20) + 1)
    height = 300.0 - 250.0 * np.cos(6.0 * np.pi * share)
    line = Line(
        54.0 + share * km / 111.3,
        np.full(len(share), -3.0),
        height if heights else np.full(len(share), np.nan),
    )
    return line, float(distance_along(line.latitude_deg, line.longitude_deg)[-1])


def course(stations, km=60.0, heights=True):
    line, length_m = ground(km, heights)
    return Course(line, length_m, stations, sections_between(stations), name="Three hills")


STATIONS = (
    AidStation("ford", "Ford", 14_000.0, cutoff_s=3.5 * HOUR_S, stop_s=120.0),
    AidStation("barn", "Barn", 30_000.0, cutoff_s=6.0 * HOUR_S, stop_s=600.0),
    AidStation("ridge", "Ridge", 45_000.0, stop_s=180.0),
)


@cache
def plan():
    """A whole plan, made as the program makes it from a course and a few facts."""
    start = datetime(2027, 6, 19, 18, tzinfo=ZoneInfo("Europe/London"))
    race = Race("Three hills", start, 9.0 * HOUR_S, 12.0 * HOUR_S)
    foods = read_foods(resources.path("foods.csv"))
    project, _ = first_plan(course(STATIONS), race, Runner(), foods, 0, TODAY)
    return project


def rest(storey):
    """Let the hand rest until no lane waits for its turn to be painted."""
    QApplication.processEvents()
    while any(lane.waits for lane in storey.lanes):
        QTest.qWait(5)
    # What is shown in one turn of the loop is painted in the next but one.
    for _ in range(3):
        QApplication.processEvents()


class Stage:
    """Race day in a window of its own, with hands on it."""

    def __init__(self, qtbot, project=None, size=(1200, 400), words=None, **parts):
        self.document = Document(project=replace(project or plan(), **parts), today=lambda: TODAY)
        self.selection = Selection()
        self.words = words or Words()
        self.refused: list[str] = []
        self.document.refused.connect(self._on_refused)
        self.storey = RaceDay(self.document, self.selection, self._words)
        qtbot.addWidget(self.storey)
        self.storey.resize(*size)
        with qtbot.waitExposed(self.storey):
            self.storey.show()

    def _words(self):
        return self.words

    def _on_refused(self, why):
        self.refused.append(str(why))

    @property
    def target(self):
        return self.storey.target

    @property
    def fuel(self):
        return self.storey.fuel

    @property
    def undo(self):
        return self.document.undo_stack

    def kept(self, key):
        return next(s for s in self.document.before.sections if s.key == key)

    def shown(self, key):
        return next(s for s in self.document.shown.sections if s.key == key)

    def item(self, key):
        return self.document.shown.project.fuel.item(key)

    def edge(self, key):
        """Where the end of a section can be taken hold of."""
        lane = self.target
        x = lane.x_of(self.shown(key).end_m, lane.body())
        return QPoint(round(x), round(lane.body().bottom()) - 4)

    def top(self, key):
        """Where the top of a section can be taken hold of."""
        lane, section = self.target, self.shown(key)
        x = lane.x_of((section.start_m + section.end_m) / 2, lane.body())
        y = lane._scale(lane.body()).y(1.0 / section.pace_s_per_m)
        return QPoint(round(x), round(y))

    def token(self, key):
        """Where the token of an item is drawn."""
        xs, ys = self.fuel._spots(self.fuel.body())
        index = [i.key for i in self.document.shown.project.fuel.items].index(key)
        return QPoint(round(xs[index]), round(ys[index]))

    def press(self, lane, at):
        QTest.mousePress(lane, Qt.MouseButton.LeftButton, pos=at)

    def move(self, lane, at):
        QTest.mouseMove(lane, at)

    def release(self, lane, at):
        QTest.mouseRelease(lane, Qt.MouseButton.LeftButton, pos=at)

    def drag(self, lane, start, end):
        """Press at *start* and move to *end* in ten moves, without letting go."""
        self.press(lane, start)
        for part in range(1, 11):
            self.move(lane, start + (end - start) * part / 10)

    def keys(self, lane, *keys, modifier=Qt.KeyboardModifier.NoModifier):
        lane.setFocus()
        for key in keys:
            QTest.keyClick(lane, key, modifier)

    def wheel(self, lane, at, turns, modifier=Qt.KeyboardModifier.ControlModifier):
        event = QWheelEvent(
            QPointF(at),
            lane.mapToGlobal(QPointF(at)),
            QPoint(),
            QPoint(0, 120 * turns),
            Qt.MouseButton.NoButton,
            modifier,
            Qt.ScrollPhase.NoScrollPhase,
            False,
        )
        QApplication.sendEvent(lane, event)


@pytest.fixture
def stage(qtbot):
    return Stage(qtbot)


@pytest.fixture
def stage_of(qtbot):
    def make(**how):
        return Stage(qtbot, **how)

    return make


@pytest.fixture
def course_of():
    return course


@pytest.fixture
def base() -> Project:
    return plan()
