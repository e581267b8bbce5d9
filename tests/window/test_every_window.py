"""Every place of the window and every dialog, at three sizes, light and dark and in large text."""

from datetime import date

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import (
    QApplication,
    QDialog,
    QLabel,
    QMenu,
    QPushButton,
    QScrollArea,
    QToolButton,
    QWidget,
)

from ultraplanner_gui.desk import resources
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.engine.profile import build_profile
from ultraplanner_gui.engine.repair_request import Change, Choice, Cost, Repair
from ultraplanner_gui.exchange.gpx_in import read_course
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.message import message
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.window.course_table_form import CourseTableForm
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.repair_form import ChoicesForm
from ultraplanner_gui.window.tables import SPECS

SIZES = ((1280, 720), (1440, 900), (1920, 1080))
LIGHT, DARK, LARGE = ("light", 100), ("dark", 100), ("light", 150)
SCREENS = [*((size, look) for size in SIZES for look in (LIGHT, DARK)), (SIZES[-1], LARGE)]
COURSE_TABLE = (
    "Place;km;Climb;Drop;Cutoff;What is there\n"
    "The old mill at the bridge;12.4;410;120;Sat 10:30;water, food, soup\n"
    "Finish;42;1240;900;Sun 03:00;"
)
MENDED = "Cutbacks stay where they are; what the missed days no longer carry is shorter."
TABS = tuple(spec.name for spec in SPECS)


# ---------------------------------------------------------------- what there is to see


def _welcome(window):
    window.close_document()
    return window


def _place(name):
    def show(window):
        window.go(name)
        return window

    return show


def _selected(kind):
    def show(window):
        window.go("sheet")
        project = window.document.project
        keys = {
            "session": next(s.key for s in project.block.sessions if s.kind is Kind.LONG),
            "section": project.course.sections[4].key,
            "item": project.fuel.items[6].key,
        }
        window.workplace.selection.choose(kind, keys[kind])
        return window

    return show


def _shelf(window):
    window.go("sheet")
    window.table.by_name["add_of_kind"].trigger()
    return window


def _ways(window):
    """Two ways to mend, with what a real one says."""
    block = window.document.project.block
    session = next(s for s in block.sessions if s.is_open)
    shorter = replace(session, distance_m=session.distance_m / 2)
    why = message(MENDED)
    ways = [
        Choice(message(name), why, mended, (change,), Cost(4e3, 2e3, 31e3, 1), True, (why,))
        for name, mended, change in (
            ("Keep the plan", block.with_session(shorter), Change("k", session, shorter)),
            ("Come back gently", block.without(session.key), Change("k", session, None)),
        )
    ]
    words = window.settings.words()
    form = ChoicesForm(window.document, Repair(tuple(ways), (why,)), words, _shelf, window)
    form.show()
    return form


def _tab(number):
    def show(window):
        window.go("tables")
        window.workplace.tables.list.choose(number)
        return window

    return show


def _dialog(action):
    def show(window):
        known = set(window.findChildren(QDialog))
        window.table.by_name[action].trigger()
        (dialog,) = set(window.findChildren(QDialog)) - known
        return dialog

    return show


def _editor(kind):
    def show(window):
        window.go("sheet")
        wanted = (s for s in window.document.project.block.sessions if s.kind is kind)
        window.workplace.selection.choose("session", next(wanted).key)
        return _dialog("edit_session")(window)

    return show


def _new_plan(window):
    course = read_course(resources.path("demo/course.gpx"))
    window.deeds._propose((course, build_profile(course)))
    return window.findChildren(QDialog)[-1]


def _course_table(window):
    window.deeds.type_course()
    (form,) = window.findChildren(CourseTableForm)
    form.take_text(COURSE_TABLE)
    return form


def _finder(window):
    window.go("sheet")
    window.deeds.find()
    return window


VIEWS = {
    "welcome": _welcome,
    "sheet": _place("sheet"),
    **{f"sheet with a {kind}": _selected(kind) for kind in ("session", "section", "item")},
    "sheet with the shelf of kinds": _shelf,
    "ways to mend": _ways,
    **{f"table of {name}": _tab(number) for number, name in enumerate(TABS)},
    "cards": _place("cards"),
    "new plan": _new_plan,
    "race and runner": _dialog("race_form"),
    "session": _editor(Kind.EASY),
    "race session": _editor(Kind.RACE),
    "this week": _dialog("this_week"),
    "missed days": _dialog("missed_days"),
    "health": _dialog("health"),
    "wishes": _dialog("wishes"),
    "tune-up race": _dialog("tune_up"),
    "ground at hand": _dialog("ground_at_hand"),
    "races to pick from": _dialog("candidates"),
    "crew and lists": _dialog("crew_form"),
    "shape of the target": _dialog("shape_form"),
    "predicted finish": _dialog("predict_form"),
    "conditions": _dialog("conditions_form"),
    "beside other rules": _dialog("beside_rules"),
    "week typed back": _dialog("type_week_back"),
    "lock screen": _dialog("lock_screen"),
    "shape of the course": _dialog("course_shape"),
    "aid station": _dialog("change_station"),
    "surface factors": _dialog("surface_factors"),
    "what was mended": _dialog("what_was_mended"),
    "cut every so far": _dialog("cut_by_distance"),
    "notes": _dialog("notes"),
    "history": _dialog("history"),
    "course table": _course_table,
    "steps": _dialog("steps"),
    "fuel per hour": _dialog("fuel_rates"),
    "fill to target": _dialog("fill_fuel"),
    "repeat a food": _dialog("repeat_food"),
    "food at stations": _dialog("station_foods"),
    "fuel habits": _dialog("fuel_habits"),
    "sweat test": _dialog("sweat_test"),
    "fuel cautions": _dialog("fuel_cautions"),
    "name a state": _dialog("name_state"),
    "keys": _dialog("shortcuts"),
    "red flags": _dialog("red_flags"),
    "about": _dialog("about"),
    "finder": _finder,
}


@pytest.fixture(scope="module")
def demo(tmp_path_factory):
    path = tmp_path_factory.mktemp("demo") / "hundred.ultraplan"
    ProjectFile.create(path, demo_project(date.today())).close()
    return path


@pytest.fixture
def views(qtbot, qapp, demo, tmp_path):
    """Show one view after another in one window; give the name and top window of each."""

    def shown(size=SIZES[1], look=LIGHT):
        qapp.setStyle("Fusion")
        theme().choose(*look)
        settings = Settings(tmp_path / "settings.ini")
        settings.units, settings.locale = "metric", "en_GB"
        window = MainWindow(settings)
        qtbot.addWidget(window)
        window.resize(*size)
        window.show()
        for name, show in VIEWS.items():
            window.deeds.open_project_file(demo)
            top = show(window)
            for _ in range(3):
                QApplication.processEvents()
            yield name, top
            if top is not window:
                top.close()
                QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)

    yield shown
    theme().choose("light", 100)


def _seen(top, *kinds):
    for kind in kinds:
        for widget in top.findChildren(kind):
            if widget.isVisibleTo(top) and widget.window() is top:
                yield widget


def _called(widget):
    text = getattr(widget, "text", lambda: "")()
    return f"{type(widget).__name__} {widget.objectName()!r} {text!r}"


# ---------------------------------------------------------------- the rules


def test_everything_that_takes_keys_has_a_name(views):
    """Name and role are what WCAG 2.2, success criterion 4.1.2, asks of every control."""
    nameless = [
        f"{name}: {_called(widget)}"
        for name, top in views()
        for widget in _seen(top, QWidget)
        if widget.focusPolicy() != Qt.FocusPolicy.NoFocus
        and widget.focusProxy() is None
        and not QAccessible.queryAccessibleInterface(widget).text(QAccessible.Text.Name).strip()
    ]
    assert nameless == []


@pytest.mark.parametrize(("size", "look"), SCREENS, ids=str)
def test_no_text_is_cut_off(views, size, look):
    cut = []
    for name, top in views(size, look):
        for widget in _seen(top, QLabel, QPushButton, QToolButton):
            if needs := _needs_more(widget):
                has = f"{widget.width()} x {widget.height()}"
                cut.append(f"{name}: {_called(widget)} is {has}, needs {needs}")
            elif not _scrolls(widget, top) and not _is_whole(widget, top):
                cut.append(f"{name}: {_called(widget)} stands partly outside")
    assert cut == []


def test_every_dialog_fits_a_small_screen(views):
    sizes = {name: top.size() for name, top in views(SIZES[0]) if isinstance(top, QDialog)}
    assert len(sizes) > 8
    small = QSize(*SIZES[0])
    assert {name: size for name, size in sizes.items() if size.boundedTo(small) != size} == {}


def _needs_more(widget):
    """Return the size *widget* wants where it has less, else nothing."""
    if isinstance(widget, QLabel) and not widget.text():
        return ""
    wanted = widget.sizeHint()
    if isinstance(widget, QLabel) and widget.wordWrap():
        height = widget.heightForWidth(widget.width())
        longest = max(widget.text().split(), key=len)
        width = widget.fontMetrics().horizontalAdvance(longest)
    else:
        height, width = wanted.height(), wanted.width()
    fits = widget.width() >= width and widget.height() >= height
    return "" if fits else f"{width} x {height}"


def _scrolls(widget, top):
    while widget is not top:
        widget = widget.parentWidget()
        if isinstance(widget, QScrollArea):
            return True
    return False


def _is_whole(widget, top):
    at = widget.mapTo(top, widget.rect().topLeft())
    return top.rect().contains(widget.rect().translated(at))


def test_every_action_is_named_and_stands_in_a_menu(views):
    window = next(views())[1]
    held = {action for menu in window.menuBar().findChildren(QMenu) for action in menu.actions()}
    actions = window.table.by_name
    assert [name for name, action in actions.items() if not action.text()] == []
    assert [name for name, action in actions.items() if action not in held] == []
