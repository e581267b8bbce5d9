"""The pictures of `first-plan.md`: a plan made from an invented course, then changed."""

from __future__ import annotations

import math
from collections.abc import Callable
from datetime import datetime, time, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

from msgspec.structs import replace
from pictures_studio import NEUTRAL_FOLDER, SIZE, Studio, held, settle, taken, wait_for
from PySide6.QtCore import QPoint, QRect
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel, QWidget

from ultraplanner_gui.desk import resources
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.course import ChangeStation, SetSectionTarget
from ultraplanner_gui.edits.stations import SetStop
from ultraplanner_gui.engine.first_plan import first_plan
from ultraplanner_gui.exchange.foods_in import read_foods
from ultraplanner_gui.exchange.gpx_in import read_course
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.plan_form import PlanForm

EARTH_M = 6_371_000.0
LENGTH_M, APART_M = 67_000.0, 25.0
STATIONS = ("Larch Hut", "Mill Bridge", "Sheepfold", "Quarry Inn", "Chapel Saddle")
HOUR_S = 3600.0
GOAL_S = 13.0 * HOUR_S
WEEKS = 20
FORM_SIZE = (1180, 720)
LEDGER_PX = 300


def course_file(studio: Studio) -> Path:
    """Write an invented course of 67 km over rolling hills, five stations along it."""
    count = round(LENGTH_M / APART_M)
    step = math.degrees(APART_M / EARTH_M / math.sqrt(2.0))
    points = []
    for k in range(count + 1):
        km = k * APART_M / 1000.0
        height = 900.0 + 330.0 * math.sin(km / 5.3) + 120.0 * math.sin(km / 2.1 + 1.0)
        east = 11.0 + k * step / math.cos(math.radians(46.2))
        points.append(f'lat="{46.0 + k * step:.6f}" lon="{east:.6f}"><ele>{height:.1f}</ele>')
    marks = "".join(
        f"<wpt {points[number * count // 6]}<name>{name}</name></wpt>"
        for number, name in enumerate(STATIONS, 1)
    )
    line = "".join(f"<trkpt {point}</trkpt>" for point in points)
    path = studio.home / "Hollow Ridge.gpx"
    path.write_text(
        '<gpx version="1.1" creator="invented" xmlns="http://www.topografix.com/GPX/1/1">'
        f"{marks}<trk><name>Hollow Ridge</name><trkseg>{line}</trkseg></trk></gpx>",
        "utf-8",
    )
    return path


def form_over(studio: Studio, course: Path, zone: str) -> QImage:
    """Take the form of a new plan as it opens over *course*."""
    window = studio.empty_window(FORM_SIZE)
    window.deeds.open_any(course)
    wait_for(lambda: bool(window.findChildren(PlanForm)))
    asked = window.findChildren(PlanForm)[0]
    note_shown = not asked.race.note.isHidden()
    asked.day.setDate(_race_day(studio))  # type: ignore[arg-type]
    asked.race.note.setVisible(note_shown)
    asked.zone.setCurrentText(zone)
    for label in asked.findChildren(QLabel):
        label.setText(label.text().replace(str(studio.home / "projects"), NEUTRAL_FOLDER))
    settle()
    image = asked.grab().toImage()
    asked.reject()
    window.close()
    return image


def _race_day(studio: Studio) -> object:
    return studio.today + timedelta(weeks=WEEKS, days=(5 - studio.today.weekday()) % 7)


def _window(studio: Studio, has_cutoffs: bool = True) -> MainWindow:
    """Return a window on the plan just made; *has_cutoffs* once they are put in."""
    theme().choose("light", 100)
    course = read_course(course_file(studio))
    start = datetime.combine(_race_day(studio), time(6), ZoneInfo("Europe/Zurich"))  # type: ignore[arg-type]
    race, runner = Race("Hollow Ridge", start, GOAL_S), replace(Runner(), weekly_m=45_000.0)
    foods = read_foods(resources.path("foods.csv"))
    project, notes = first_plan(course, race, runner, foods, 0, studio.today)
    window = studio.empty_window(SIZE)
    file = ProjectFile.create(studio.home / "Hollow Ridge.ultraplan", project, overwrite=True)
    window.show_document(Document(file, today=lambda: studio.today, parent=window))
    assert window.workplace is not None
    words = studio.settings.words()
    window.workplace.ledger.begin(tuple(words.say(note) for note in notes))
    if has_cutoffs:
        _put_in_cutoffs(window)
    window.workplace.setFocus()
    settle()
    return window


def _put_in_cutoffs(window: MainWindow) -> None:
    assert window.document is not None
    sections = window.document.outlook.sections[:-1]
    course = window.document.project.course
    assert course is not None
    for station, section in zip(course.stations, sections, strict=True):
        cutoff_s = (math.ceil(section.arrive_s / HOUR_S) + 1.5) * HOUR_S
        window.document.perform(ChangeStation(replace(station, cutoff_s=cutoff_s)))


def _part(window: MainWindow, *widgets: QWidget, close: bool = True) -> QImage:
    """Return the part of the window that *widgets* take, with a little round them."""
    around = QRect()
    for widget in widgets:
        around |= QRect(widget.mapTo(window, QPoint(0, 0)), widget.size())
    return taken(window, close).copy(around)


# ---------------------------------------------------------------- the steps


def welcome(studio: Studio) -> QImage:
    """Take the window before anything is in it."""
    return taken(studio.empty_window(FORM_SIZE))


def form(studio: Studio) -> QImage:
    """Take the one form."""
    return form_over(studio, course_file(studio), "Europe/Zurich")


def sheet(studio: Studio) -> QImage:
    """Take the sheet as it first stands there."""
    return taken(_window(studio, has_cutoffs=False))


def comes_next(studio: Studio) -> QImage:
    """Take the head of the ledger."""
    window = _window(studio, has_cutoffs=False)
    assert window.workplace is not None
    return _part(window, window.workplace.ledger).copy(0, 0, LEDGER_PX, 460)


def cutoffs(studio: Studio) -> QImage:
    """Take the table of aid stations with their cutoffs typed in."""
    window = _window(studio)
    assert window.workplace is not None
    window.deeds.table_of("station:Cutoff")
    settle()
    return _part(window, window.workplace.tables).copy(0, 0, 1000, 330)


def run(studio: Studio) -> QImage:
    """Take the build-up and the ledger while a long run hangs over the day after its own."""
    window = _window(studio)
    assert window.workplace is not None
    grid, session = window.workplace.buildup.grid, studio.long_run(window)
    tile, cell = grid.cells.tile(session.key), grid.cells.cell(session.day - timedelta(days=1))
    assert tile is not None
    assert cell is not None
    let_go = held(grid, tile.rect.center().toPoint(), cell.center().toPoint())
    image = _part(window, window.workplace.buildup, close=False)
    let_go()
    window.close()
    return image


def longest(studio: Studio) -> QImage:
    """Take the build-up while a longest run is typed over."""
    window = _window(studio)
    assert window.workplace is not None
    grid, session = window.workplace.buildup.grid, studio.long_run(window)
    window.workplace.selection.choose("session", session.key)
    grid.setFocus()
    settle()
    QTest.keyClick(grid, "1")
    settle()
    QTest.keyClick(window.focusWidget(), "6")
    settle()
    return _part(window, window.workplace.buildup)


def target(studio: Studio) -> QImage:
    """Take race day while one target is made faster."""
    window = _window(studio)
    assert window.workplace is not None
    assert window.document is not None
    section = window.document.outlook.sections[2]
    window.workplace.selection.choose("section", section.key)
    window.document.try_edit(SetSectionTarget(section.key, section.moving_s - 600.0))
    image = _part(window, window.workplace.raceday, close=False)
    window.document.drop_trial()
    window.close()
    return image


def stop(studio: Studio) -> QImage:
    """Take race day with a stop of 10 minutes at a station."""
    window = _window(studio)
    assert window.workplace is not None
    assert window.document is not None
    course = window.document.project.course
    assert course is not None
    station = course.stations[2]
    window.document.perform(SetStop(station.key, 600.0))
    window.workplace.selection.choose("station", station.key)
    settle()
    return _part(window, window.workplace.raceday)


def food(studio: Studio) -> QImage:
    """Take race day with something to eat that was added."""
    window = _window(studio)
    assert window.workplace is not None
    window.deeds.add_item()
    settle()
    return _part(window, window.workplace.raceday)


def cards(studio: Studio) -> QImage:
    """Take the desk of the cards."""
    window = _window(studio)
    window.go("cards")
    return taken(window)


WALK: dict[str, Callable[[Studio], QImage]] = {
    "1-welcome": welcome,
    "2-form": form,
    "3-sheet": sheet,
    "4-next": comes_next,
    "5-cutoffs": cutoffs,
    "6-run": run,
    "7-longest": longest,
    "8-target": target,
    "9-stop": stop,
    "10-food": food,
    "11-cards": cards,
}
"""The pictures of `first-plan.md` by their names, in the order of its steps."""
