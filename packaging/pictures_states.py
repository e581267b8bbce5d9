"""Every state the window can be in, one picture each, to be looked at before a release."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import timedelta

from msgspec.structs import replace
from pictures_race import RACE_STATES
from pictures_studio import SIZE, Studio, held, held_tile, hover, settle, taken, wait_for
from PySide6.QtCore import QPoint, QPointF
from PySide6.QtGui import QImage, QPainter, Qt
from PySide6.QtWidgets import QDialog, QWidget

from ultraplanner_gui.desk import resources
from ultraplanner_gui.edits.course import AddStation
from ultraplanner_gui.edits.project import WriteNotes
from ultraplanner_gui.engine.first_plan import new_block
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.plan.block import Block
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.widgets.theme import ThemeWish, theme
from ultraplanner_gui.window.course_table_form import CourseTableForm
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.plan_form import PlanForm
from ultraplanner_gui.window.tables import SPECS
from ultraplanner_gui.window.workplace import Workplace

SMALL, LARGE, LARGEST = (1280, 720), (1920, 1080), (2560, 1440)
STATIONS, STATION_APART_M = 25, 400.0
DIALOGS = ("race_form", "edit_session", "notes", "history", "fuel_rates", "shortcuts",
           "red_flags", "about", "steps", "crew_form", "type_week_back", "lock_screen",
           "shape_form", "predict_form", "conditions_form", "beside_rules", "fill_fuel",
           "repeat_food", "station_foods", "fuel_habits", "sweat_test",
           "this_week", "missed_days", "health", "wishes",
           "candidates", "ground_at_hand", "head_form", "own_days")  # fmt: skip
COURSE_TABLE = (
    "Place;km;Climb;Drop;Cutoff;What is there\n"
    "The old mill at the bridge;12.4;410;120;Sat 10:30;water, food, soup\n"
    "The hut;27;far;120;Sat 9:00;water\n"
    "Finish;42;1240;900;Sun 03:00;"
)


# ---------------------------------------------------------------- plans


def many_stations(project: Project) -> Project:
    """Return *project* with 25 aid stations, some of them close together."""
    length_m = project.course.length_m
    taken_m = [0.0, *(station.at_m for station in project.course.stations), length_m]
    for number in range(1, STATIONS + 1 - len(project.course.stations)):
        at_m = length_m * (0.02 + number * 0.618034 % 0.95)
        while min(abs(at_m - other_m) for other_m in taken_m) < STATION_APART_M:
            at_m += STATION_APART_M
        taken_m.append(at_m)
        cutoff_s = 24.5 * 3600.0 * at_m / length_m if number % 2 else None
        project = AddStation(f"Hollow Bridge {number}", at_m, cutoff_s, 120.0).apply(project)
    return project


def a_year(studio: Studio, project: Project) -> Project:
    """Return *project* with its race so far away that the block has 52 weeks."""
    start = project.race.start + timedelta(weeks=40)
    project = replace(project, race=replace(project.race, start=start), block=Block())
    planned = new_block(project, derive(project, None, studio.today), studio.today)
    return replace(project, block=planned.block)


# ---------------------------------------------------------------- the sheet


def sheet(
    look: ThemeWish = "light",
    percent: int = 100,
    size: tuple[int, int] = SIZE,
    plan: Callable[[Studio, Project], Project] | None = None,
    storey: str = "",
) -> Callable[[Studio], QImage]:
    """Return what takes the sheet so; with *storey* that one is opened."""

    def take(studio: Studio) -> QImage:
        project = None if plan is None else plan(studio, studio.demo())
        with place(studio, look, percent, size, project) as (window, desk):
            if storey:
                desk.open_storey(storey)
            return taken(window, close=False)

    return take


@contextmanager
def place(
    studio: Studio,
    look: ThemeWish = "light",
    percent: int = 100,
    size: tuple[int, int] = SIZE,
    project: Project | None = None,
) -> Iterator[tuple[MainWindow, Workplace]]:
    """Give a window on a plan and its workplace; close it and set the look back."""
    window = studio.demo_window(look, percent, size, project)
    assert window.workplace is not None
    try:
        yield window, window.workplace
    finally:
        window.close()
        theme().choose("light", 100)


def measured_by_clock(studio: Studio) -> QImage:
    """Take race day by the clock."""
    with place(studio, size=LARGE) as (window, desk):
        desk.raceday.choose_measure("clock")
        return taken(window, close=False)


def empty(studio: Studio) -> QImage:
    """Take the window without a project."""
    return taken(studio.empty_window(SMALL))


# ---------------------------------------------------------------- in the hand


def tile_held(studio: Studio) -> QImage:
    """Take a long run over the week after its own."""
    with place(studio) as (window, _):
        return _taken_held(window, held_tile(studio, window))


def target_held(studio: Studio) -> QImage:
    """Take a section's target moved to a faster time."""
    with place(studio) as (window, desk):
        desk.open_storey("raceday")
        settle()
        assert window.document is not None
        lane, section = desk.raceday.target, window.document.outlook.sections[2]
        x = round(lane.x_of((section.start_m + section.end_m) / 2, lane.body()))
        line = next(y for y in range(2, lane.height()) if _hovered(lane, QPoint(x, y)))
        return _taken_held(window, held(lane, QPoint(x, line), QPoint(x, line - 7)))


def _hovered(lane: QWidget, at: QPoint) -> bool:
    """Return whether something can be pulled up and down at *at* in *lane*."""
    hover(lane, at)
    return lane.cursor().shape() is Qt.CursorShape.SizeVerCursor


def token_held(studio: Studio) -> QImage:
    """Take a fuel token moved along the clock."""
    with place(studio) as (window, desk):
        desk.open_storey("raceday")
        settle()
        assert window.document is not None
        lane, item = desk.raceday.fuel, window.document.project.fuel.items[6]
        x = round(lane.x_of_time(item.at_s, lane.body()))
        rows = range(lane.height() - 4, 0, -2)
        start = QPoint(x, next(y for y in rows if lane.readout(QPointF(x, y))))
        return _taken_held(window, held(lane, start, start + QPoint(30, 0)))


def _taken_held(window: MainWindow, let_go: Callable[[], None]) -> QImage:
    assert window.document is not None
    if window.document.shown is window.document.before:
        raise RuntimeError("nothing was taken into the hand")
    image = taken(window, close=False)
    let_go()
    return image


# ---------------------------------------------------------------- work and errors


def long_work(studio: Studio) -> QImage:
    """Take the window while a large course is being read."""
    from bench_files import gpx_file

    with place(studio) as (window, _):
        jobs = window.jobs
        # once it is part done nothing more is heard of it, however fast the machine is
        jobs.progressed.connect(lambda _ticket, _fraction: jobs.blockSignals(True))
        window.deeds.open_any(gpx_file(studio.home))
        wait_for(jobs.signalsBlocked)
        image = taken(window, close=False)
        window.deeds.cancel_job()
        return image


def offered(studio: Studio) -> QImage:
    """Take the offer of a result that newer changes have overtaken."""
    with place(studio) as (window, _):
        assert window.document is not None
        window.deeds.build_block()
        window.document.perform(WriteNotes("Newer than the block being built."))
        wait_for(window.offer.isVisible)
        return taken(window, close=False)


def unreadable_file(studio: Studio) -> QImage:
    """Take what is said of a course file that is none."""
    broken = studio.home / "broken.gpx"
    broken.write_text("<gpx><trk></gpx>", encoding="utf-8")
    with place(studio) as (window, _):
        window.deeds.open_any(broken)
        wait_for(lambda: bool(window.findChildren(QDialog)))
        return _with_tops(window)


def refused(studio: Studio) -> QImage:
    """Take the sentence at the foot after a figure that is out of range was typed."""
    with place(studio) as (window, desk):
        window.go("tables")
        desk.tables.show_table("Sessions")
        table = desk.tables.page.table
        names = [column.name for column in table.columns]  # as marked, in no language yet
        cell = table.index(table.row_of(studio.long_run(window).key), names.index("Distance"))
        table.setData(cell, "as far as the hut")
        return taken(window, close=False)


# ---------------------------------------------------------------- tables, forms, panels


def table(name: str, percent: int = 100) -> Callable[[Studio], QImage]:
    """Return what takes the table of that name."""

    def take(studio: Studio) -> QImage:
        with place(studio, percent=percent) as (window, desk):
            window.go("tables")
            desk.tables.show_table(name)
            return taken(window, close=False)

    return take


def paste(studio: Studio) -> QImage:
    """Take the preview of a paste: what would change, and one cell that is refused."""
    with place(studio) as (window, desk):
        window.go("tables")
        desk.tables.show_table("Sessions")
        page = desk.tables.page
        names = [column.name for column in page.table.columns]
        row = page.table.row_of(studio.long_run(window).key)
        page.view.setCurrentIndex(page.table.index(row, names.index("Distance")))
        page.paste("26\n3.5\nas far as the hut\n12")
        return taken(window, close=False)


def cards(studio: Studio) -> QImage:
    """Take the desk of the cards."""
    with place(studio) as (window, _):
        window.go("cards")
        return taken(window, close=False)


def dialog(name: str, percent: int = 100) -> Callable[[Studio], QImage]:
    """Return what takes the window with the dialog of the action *name* over it."""

    def take(studio: Studio) -> QImage:
        size = SIZE if percent == 100 else LARGE
        with place(studio, percent=percent, size=size) as (window, desk):
            assert window.document is not None
            desk.selection.choose("session", studio.long_run(window).key)
            if name == "steps":
                for number in range(3):
                    window.document.perform(WriteNotes(f"Note {number}"))
            window.table.by_name[name].trigger()
            return _with_tops(window)

    return take


def plan_form(percent: int) -> Callable[[Studio], QImage]:
    """Return what takes the form that a dropped course opens."""

    def take(studio: Studio) -> QImage:
        theme().choose("light", percent)
        window = studio.empty_window(SMALL)
        window.deeds.open_any(resources.path("demo/course.gpx"))
        wait_for(lambda: bool(window.findChildren(PlanForm)))
        image = _with_tops(window)
        window.close()
        theme().choose("light", 100)
        return image

    return take


def course_table(studio: Studio) -> QImage:
    """Take the form for a course table, one line of it refused."""
    window = studio.empty_window(SMALL)
    window.deeds.type_course()
    window.findChildren(CourseTableForm)[0].take_text(COURSE_TABLE)
    image = _with_tops(window)
    window.close()
    return image


def help_panel(topics: bool) -> Callable[[Studio], QImage]:
    """Return what takes the help on what is selected, or the list of everything it explains."""

    def take(studio: Studio) -> QImage:
        with place(studio) as (window, desk):
            desk.buildup.grid.setFocus()
            settle()
            (window.deeds.help_topics if topics else window.deeds.help_here)()
            return taken(window, close=False)

    return take


def finder(studio: Studio) -> QImage:
    """Take the list of everything, with a word typed into it."""
    with place(studio) as (window, _):
        window.deeds.find()
        window.finder.field.setText("long")
        window.finder.search("long")
        return _with_tops(window)


def _with_tops(window: MainWindow) -> QImage:
    """Take *window* with what stands over it, each where it is on the screen."""
    settle()
    image = taken(window, close=False)
    tops = [w for w in window.findChildren(QWidget) if w.isWindow() and w.isVisible()]
    painter = QPainter(image)
    for top in tops:
        at = top.mapToGlobal(QPoint(0, 0)) - window.mapToGlobal(QPoint(0, 0))
        at = QPoint(max(at.x(), 1), max(at.y(), 1))
        painter.drawPixmap(at, top.grab())
        painter.drawRect(top.rect().translated(at).adjusted(-1, -1, 0, 0))
    painter.end()
    for top in tops:
        top.close()
    return image


def _many(_studio: Studio, project: Project) -> Project:
    return many_stations(project)


STATES: dict[str, Callable[[Studio], QImage]] = {
    "empty": empty,
    **{f"demo-{w}x{h}": sheet(size=(w, h)) for w, h in (SMALL, SIZE, LARGE, LARGEST)},
    "demo-1280x720-raceday": sheet(size=SMALL, storey="raceday"),
    "clock": measured_by_clock,
    "dark": sheet("dark"),
    "dark-1920x1080": sheet("dark", size=LARGE),
    "text-80": sheet(percent=80),
    "text-150": sheet(percent=150, size=LARGE),
    "text-200": sheet(percent=200, size=LARGE),
    "text-200-1440x900": sheet(percent=200),
    "text-200-raceday": sheet(percent=200, storey="raceday"),
    "52-weeks": sheet(plan=a_year),
    "52-weeks-1920x1080": sheet(size=LARGE, plan=a_year),
    "25-stations": sheet(plan=_many, storey="raceday"),
    "25-stations-1920x1080": sheet(size=LARGE, plan=_many),
    "held-tile": tile_held,
    "held-target": target_held,
    "held-token": token_held,
    **RACE_STATES,
    "long-work": long_work,
    "offer": offered,
    "error-file": unreadable_file,
    "error-refused": refused,
    **{f"table-{spec.name.lower().replace(' ', '-')}": table(spec.name) for spec in SPECS},
    "table-sessions-200": table("Sessions", 200),
    "paste": paste,
    "cards": cards,
    **{f"dialog-{name.replace('_', '-')}": dialog(name) for name in DIALOGS},
    "dialog-race-form-200": dialog("race_form", 200),
    "form-plan": plan_form(100),
    "form-plan-150": plan_form(150),
    "form-course-table": course_table,
    "help": help_panel(topics=False),
    "help-topics": help_panel(topics=True),
    "finder": finder,
}
