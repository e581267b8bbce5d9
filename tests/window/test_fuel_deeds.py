"""The deeds of the fuel menu in the real window, on the demo."""

from datetime import date

import pytest
from PySide6.QtWidgets import QDialog

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.plan.fuel import Allergen, Keep
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.window.main_window import MainWindow


@pytest.fixture(scope="module")
def demo(tmp_path_factory):
    path = tmp_path_factory.mktemp("fuel") / "demo.ultraplan"
    ProjectFile.create(path, demo_project(date.today())).close()
    return path


@pytest.fixture
def window(qtbot, demo, tmp_path):
    copy = tmp_path / "copy.ultraplan"
    copy.write_bytes(demo.read_bytes())
    window = MainWindow(Settings())
    qtbot.addWidget(window)
    window.show()
    window.deeds.open_project_file(copy)
    yield window
    window.close()


def _form(window, deed):
    known = set(window.findChildren(QDialog))
    getattr(window.deeds, deed)()
    (form,) = set(window.findChildren(QDialog)) - known
    return form


def test_filling_is_shown_first_and_one_step_when_taken(window, qtbot):
    before = window.document.project
    form = _form(window, "fill_fuel")
    form.try_it.click()
    qtbot.waitUntil(lambda: form._fill is not None, timeout=20_000)
    assert window.document.project is before
    items = form._fill.items
    form.accept()
    assert window.document.project.fuel.items == items
    window.document.undo_stack.undo()
    assert window.document.project.fuel.items == before.fuel.items


def test_items_keep_their_place_and_their_time_again(window):
    before = window.document.outlook.items
    window.deeds.keep_place()
    assert window.document.project.fuel.keep is Keep.PLACE
    assert all(i.at_m is not None for i in window.document.project.fuel.items)
    window.deeds.keep_clock()
    after = window.document.project.fuel.items
    assert [i.at_m for i in after] == [None] * len(before)


def test_rule_at_every_station_adds_one_there(window):
    before = len(window.document.project.fuel.items)
    form = _form(window, "repeat_food")
    form.at_stations.setChecked(True)
    form.accept()
    stations = window.document.project.course.stations
    assert len(window.document.project.fuel.items) == before + len(stations)


def test_ticked_food_stands_on_every_table(window):
    form = _form(window, "station_foods")
    form.foods.tick(("cola", "banana"))
    form.everywhere.click()
    form.accept()
    stations = window.document.project.course.stations
    assert {frozenset(s.foods) for s in stations} == {frozenset(("cola", "banana"))}


def test_habits_are_one_step(window):
    form = _form(window, "fuel_habits")
    form.bottles.setValue(3)
    form.vo2max.setValue(52)
    form.allergens.tick(("nuts",))
    steps = window.document.undo_stack.count()
    form.accept()
    fuel = window.document.project.fuel
    assert (fuel.carrying.bottles, fuel.tank.vo2max, fuel.allergens) == (3, 52.0, (Allergen.NUTS,))
    assert window.document.undo_stack.count() == steps + 1


def test_sweat_test_sets_the_fluid_if_asked(window):
    form = _form(window, "sweat_test")
    values = (70.0, 68.4, 0.8, 0.2, 1.5)
    fields = (form.before, form.after, form.drunk, form.passed, form.hours)
    for field, value in zip(fields, values, strict=True):
        field.setValue(value)
    form.sets.setChecked(True)
    form.accept()
    fuel = window.document.project.fuel
    assert len(fuel.sweat_tests) == 1
    assert fuel.fluid_ml_per_h == pytest.approx(750.0)


def test_practice_food_goes_on_sessions_to_come_only(window):
    window.deeds.practice_food()
    today = window.document.outlook.today
    fed = [s for s in window.document.project.block.sessions if s.foods]
    assert fed
    assert all(s.day >= today and s.is_open for s in fed)


def test_tolerated_rate_is_offered_never_taken(window):
    before = window.document.project.runner
    window.deeds.take_tolerated()
    assert window.document.project.runner is before
