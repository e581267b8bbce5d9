"""A small project, and the tables of it in a window, for the tests of both."""

from datetime import UTC, date, datetime
from zoneinfo import ZoneInfo

import numpy as np
from msgspec.structs import replace
from PySide6.QtCore import Qt

from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.plan.block import Block, Done, Kind, Session
from ultraplanner_gui.plan.course import (
    AidStation,
    Course,
    Line,
    Offer,
    Surface,
    SurfaceSpan,
    sections_between,
)
from ultraplanner_gui.plan.fuel import Food, FuelItem, FuelPlan, Shape, Sugars
from ultraplanner_gui.plan.logistics import Logistics, PackedKit
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.plan.review import Lesson, PinnedTo
from ultraplanner_gui.window.tables import Tables
from ultraplanner_gui.wording.words import Words

TODAY = date(2027, 5, 12)
H, KM = 3600.0, 1000.0
LENGTH_M = 42_000.0
START = datetime(2027, 6, 19, 6, 0, tzinfo=ZoneInfo("Europe/London"))


def course():
    """Due north from 46 degrees; 111.2 km a degree of latitude, near enough for a test."""
    steps = np.linspace(0.0, 1.0, 400)
    line = Line(
        46.0 + steps * LENGTH_M / 111_195.0, np.full(400, 7.0), 500 + 200 * np.sin(9 * steps)
    )
    stations = (
        AidStation("mill", "Mill", 12 * KM, 3 * H, 300.0, (Offer.WATER,)),
        AidStation("hut", "Hut", 27 * KM, None, 0.0, (Offer.FOOD, Offer.WATER), "socks"),
    )
    surfaces = (SurfaceSpan(2 * KM, 9 * KM, Surface.ROAD),)
    return Course(line, LENGTH_M, stations, sections_between(stations), surfaces)


def sessions():
    easy = Session("s1", date(2027, 5, 4), Kind.EASY, 8 * KM, 50 * 60.0, 60.0, 60.0)
    return (
        replace(easy, done=Done(7.5 * KM, 48 * 60.0)),
        replace(easy, key="s2", day=date(2027, 5, 6), missed=True),
        replace(
            easy, key="s3", day=date(2027, 5, 15), kind=Kind.LONG, distance_m=24 * KM, note="x"
        ),
        replace(easy, key="s4", day=date(2027, 5, 18), kind=Kind.STRENGTH, distance_m=0.0),
        Session("race", date(2027, 6, 19), Kind.RACE, LENGTH_M, 7 * H),
    )


FOODS = (
    Food("gel", "Gel", "1 gel, 40 g", 40.0, 25.0, 50.0, 14.0, 0.0, 100.0, Sugars.SINGLE, Shape.GEL,
         "typical packet", "from memory"),
    Food("water", "Water", "500 mL", 500.0, 0.0, fluid_ml=500.0, shape=Shape.DRINK),
)  # fmt: skip
ITEMS = (
    FuelItem("i1", "gel", 1800.0),
    FuelItem("i2", "water", 1800.0),
    FuelItem("i3", "gel", 5400.0, 2.0),
)

RECORDED = KeptRecording(
    *("r1", "may.gpx", b"packed", False, "Along the dyke", datetime(2027, 5, 4, 17, tzinfo=UTC)),
    *(7.5 * KM, 0.9 * H, 0.8 * H, 60.0, 55.0, "s1"),
)


def project():
    return Project(
        Race("Round", START, 7 * H, 9 * H, ("whistle", "foil blanket")),
        course(),
        block=Block(sessions(), 7),
        fuel=FuelPlan(foods=FOODS, items=ITEMS),
        recordings=(RECORDED,),
        logistics=Logistics(packed=(PackedKit("whistle"),)),
        lessons=(
            Lesson("l1", "Walk it", PinnedTo.CLIMB, climb=2, learnt_at="Round 2026"),
            Lesson("l2", "Eat early", PinnedTo.HOUR, hour_s=2 * H),
            Lesson("l3", "No gels", PinnedTo.FOOD, food="Gel"),
            Lesson("l4", "Smile"),
        ),
    )


class Desk:
    def __init__(self, qtbot, document):
        self.qtbot, self.document, self.selection = qtbot, document, Selection()
        self.tables = Tables(document, self.selection, Words)
        qtbot.addWidget(self.tables)
        self.tables.resize(1440, 820)
        self.tables.show()

    @property
    def project(self):
        return self.document.project

    def page(self, name):
        self.tables.show_table(name)
        return self.tables.page

    def cell(self, name, key, head):
        table = self.page(name).table
        column = [table.head_parts(c)[0] for c in range(table.columnCount())].index(head)
        return table.index(table.row_of(key), column)

    def text(self, name, key, head):
        index = self.cell(name, key, head)
        return self.page(name).table.text(index.row(), index.column())

    def type(self, name, key, head, text):
        """Type into a cell through the model, as the field in the cell does."""
        index = self.cell(name, key, head)
        return self.page(name).table.setData(index, text)

    def press(self, name, button):
        self.qtbot.mouseClick(self.page(name).buttons[button], Qt.MouseButton.LeftButton)

    def choose(self, name, *keys):
        view = self.page(name).view
        view.clearSelection()
        for key in keys:
            index = self.page(name).table.index(self.page(name).table.row_of(key), 0)
            view.selectionModel().setCurrentIndex(index, view.selectionModel().SelectionFlag.Select)

    def session(self, key):
        return self.project.block.session(key)

    def station(self, key):
        return self.project.course.station(key)
