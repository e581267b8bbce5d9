from __future__ import annotations

from datetime import UTC, date, datetime, timedelta

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from ultraplanner_gui.buildup.storey import BuildUp
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.outlook import Outlook, derive
from ultraplanner_gui.engine.runway import race_asks
from ultraplanner_gui.plan.block import Block, Done, Ground, Kind, Session
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Level, Runner
from ultraplanner_gui.wording.words import Words

RACE_DAY = date(2027, 6, 19)
TODAY = date(2027, 5, 6)
FIRST = date(2027, 4, 19)
WEEKS = 9


def outlook(project: Project, previous: Outlook | None = None) -> Outlook:
    """Derive, with what a race of 101 km asks, which takes a course."""
    now = derive(project, previous, TODAY)
    asks = race_asks(101_400.0, project.race.goal_s, Level.USUAL)
    return replace(now, asks=asks)


class WatchedDocument(Document):
    """A document in no file that remembers what it was asked."""

    def __init__(self, project: Project) -> None:
        super().__init__(None, project, lambda: TODAY, derive=_derive)
        self.performed: list[object] = []
        self.tried: list[object] = []

    def try_edit(self, edit):
        is_done = super().try_edit(edit)
        if is_done:
            self.tried.append(edit)
        return is_done

    def perform(self, edit):
        is_done = super().perform(edit)
        if is_done:
            self.performed.append(edit)
        return is_done


def _derive(project, previous, today):
    return outlook(project, previous)


def run(key, day, kind=Kind.EASY, km=8.0, **more):
    return Session(key, day, kind, km * 1000.0, km * 400.0, **more)


def make_block(weeks: int = WEEKS) -> Block:
    first = RACE_DAY - timedelta(days=5 + 7 * (weeks - 1))
    sessions = []
    for week in range(weeks - 1):
        monday = first + timedelta(weeks=week)
        hills = {"ground": Ground.SAW, "climb_m": 300.0, "drop_m": 300.0, "effort": 6}
        for part in (
            run(f"easy{week}", monday + timedelta(1), km=8 + week),
            run(f"hills{week}", monday + timedelta(2), Kind.HILLS, 10, **hills),
            run(f"long{week}", monday + timedelta(5), Kind.LONG, 20 + 2 * week, carb_g_per_h=50.0),
        ):
            is_past = part.day < TODAY
            sessions.append(replace(part, done=part.actual) if is_past else part)
    sessions.append(run("race", RACE_DAY, Kind.RACE, 101.4, ground=Ground.ROLLING, effort=9))
    return Block(tuple(sessions), weeks - 1, (3,), 2)


def make_project(block: Block | None = None) -> Project:
    race = Race("Fellside", datetime(2027, 6, 19, 6, tzinfo=UTC), 72_960.0, 86_400.0)
    return Project(race, None, Runner(), make_block() if block is None else block)


class Stage:
    """The storey in a window of its own, with hands on it."""

    def __init__(self, qtbot, block=None, size=(1200, 500), words=None):
        self.document = WatchedDocument(make_project(block))
        self.selection = Selection()
        self.words = words or Words()
        self.refused: list[str] = []
        self.document.refused.connect(self._on_refused)
        self.storey = BuildUp(self.document, self.selection, self._words)
        qtbot.addWidget(self.storey)
        self.storey.resize(*size)
        self.storey.show()
        qtbot.waitExposed(self.storey)

    def _words(self):
        return self.words

    def _on_refused(self, why):
        self.refused.append(str(why))

    @property
    def grid(self):
        return self.storey.grid

    def spot(self, key):
        return self.grid.cells.tile(key).rect.center().toPoint()

    def spot_of(self, day):
        return self.grid.cells.cell(day).center().toPoint()

    def press(self, at):
        QTest.mousePress(self.grid, Qt.MouseButton.LeftButton, pos=at)

    def move(self, at):
        QTest.mouseMove(self.grid, at)

    def release(self, at):
        QTest.mouseRelease(self.grid, Qt.MouseButton.LeftButton, pos=at)

    def drag(self, key, day):
        start, end = self.spot(key), self.spot_of(day)
        self.press(start)
        way = end - start
        for part in range(1, 11):
            self.move(start + QPoint(way.x() * part // 10, way.y() * part // 10))
        self.move(end)

    def keys(self, *keys):
        self.grid.setFocus()
        for key in keys:
            QTest.keyClick(self.grid, key)

    def choose(self, key):
        self.selection.choose("session", key)

    def session(self, key):
        return self.document.before.project.block.session(key)

    def week_m(self, to_go):
        return next(w.distance_m for w in self.document.shown.weeks if w.to_go == to_go)


@pytest.fixture
def stage(qtbot):
    return Stage(qtbot)


@pytest.fixture
def stage_of(qtbot):
    def make(**how):
        return Stage(qtbot, **how)

    return make


@pytest.fixture
def done_half():
    def halve(session):
        actual = session.actual
        return replace(session, done=Done(actual.distance_m / 2, actual.duration_s / 2))

    return halve
