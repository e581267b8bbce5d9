from dataclasses import replace
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.plan.block import Block, Done, Ground, Kind, Session
from ultraplanner_gui.plan.course import AidStation, Course, Line, Offer, sections_between
from ultraplanner_gui.plan.fuel import Food, FuelItem, FuelPlan, Shape, Sugars
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.window.table_sessions import COLUMNS as SESSION_COLUMNS
from ultraplanner_gui.window.tables import SPECS, Tables
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
    return Course(line, LENGTH_M, stations, sections_between(stations))


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


def project():
    return Project(
        Race("Round", START, 7 * H, 9 * H),
        course(),
        block=Block(sessions(), 7),
        fuel=FuelPlan(foods=FOODS, items=ITEMS),
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


@pytest.fixture
def desk(qapp, qtbot):
    document = Document(project=project(), today=lambda: TODAY)
    yield Desk(qtbot, document)
    document.close()


@pytest.fixture
def bare(qapp, qtbot):
    document = Document(project=Project(Race("Plain", START, 7 * H)), today=lambda: TODAY)
    yield Desk(qtbot, document)
    document.close()


ALL = [spec.name for spec in SPECS]


@pytest.mark.parametrize("name", ALL)
def test_each_table_keeps_the_rules_of_qt(desk, name, qtmodeltester):
    table = desk.page(name).table
    assert table.rowCount() > 1
    qtmodeltester.check(table)


# Sessions


@pytest.mark.parametrize(
    ("head", "text", "field", "value"),
    [
        ("Kind", "tempo run", "kind", Kind.TEMPO),
        ("Distance", "25.5", "distance_m", 25_500.0),
        ("Time", "3 h 05", "duration_s", 11_100.0),
        ("Climb", "800", "climb_m", 800.0),
        ("Drop", "810 m", "drop_m", 810.0),
        ("Ground", "Up and Down", "ground", Ground.SAW),
        ("Effort", "5", "effort", 5),
        ("Practice", "60", "carb_g_per_h", 60.0),
        ("Fasted", "yes", "fasted", True),
        ("Dark", "yes", "dark", True),
        ("Note", "with poles", "note", "with poles"),
        ("Date", "16 May", "day", date(2027, 5, 16)),
    ],
)
def test_a_session_is_typed_over(desk, head, text, field, value):
    before = desk.session("s3")
    assert desk.type("Sessions", "s3", head, text)
    assert desk.session("s3") == replace(before, **{field: value})
    assert desk.document.undo_stack.count() == 1
    desk.document.undo_stack.undo()
    assert desk.session("s3") == before


@pytest.mark.parametrize(
    ("head", "text", "says"),
    [
        ("Date", "soon", "not a date"),
        ("Kind", "nap", "none of the choices"),
        ("Distance", "far", "not a distance"),
        ("Distance", "9999", "distance lies between 0 and"),
        ("Time", "ages", "not a duration"),
        ("Climb", "-5", "climb and drop lie between 0 and"),
        ("Effort", "11", "between 0 and 10"),
        ("Effort", "4.5", "not a whole number"),
        ("Practice", "300", "between 0 and 120 g/h"),
        ("Done", "", "choose planned or missed"),
    ],
)
def test_a_bad_text_is_refused_in_words_and_the_value_kept(desk, head, text, says):
    key = "s1" if head == "Done" else "s3"
    before = desk.text("Sessions", key, head)
    assert not desk.type("Sessions", key, head, text)
    assert says in desk.page("Sessions").note.text()
    assert desk.text("Sessions", key, head) == before
    assert desk.document.undo_stack.count() == 0


def test_the_sentence_goes_once_something_is_done(desk):
    hint = desk.page("Sessions").note.text()
    desk.type("Sessions", "s3", "Effort", "eleven")
    assert desk.page("Sessions").note.text() != hint
    desk.type("Sessions", "s3", "Effort", "5")
    assert desk.page("Sessions").note.text() == hint


def test_a_moved_session_goes_to_its_place_and_stays_selected(desk):
    desk.choose("Sessions", "s3")
    desk.type("Sessions", "s3", "Date", "2027-05-03")
    page = desk.page("Sessions")
    assert [row.key for row in page.table.rows] == ["s3", "s1", "s2", "s4", "race"]
    assert page.view.chosen_keys() == ("s3",)
    assert (desk.text("Sessions", "s3", "Day"), desk.text("Sessions", "s3", "To go")) == (
        "Mon",
        "6",
    )


def test_what_is_done_and_the_race_stay_on_their_days(desk):
    can_edit = desk.page("Sessions").table.can_edit
    dates = {
        key: can_edit(desk.cell("Sessions", key, "Date").row(), 0) for key in ("s1", "s3", "race")
    }
    assert dates == {"s1": False, "s3": True, "race": False}


def test_the_kind_race_is_neither_given_nor_taken(desk):
    assert not desk.type("Sessions", "s3", "Kind", "race")
    assert not desk.type("Sessions", "race", "Kind", "long run")
    assert desk.session("race").kind is Kind.RACE


def test_the_state_marks_and_unmarks(desk):
    desk.type("Sessions", "s3", "State", "done")
    assert desk.session("s3").done == replace(desk.session("s3"), done=None).actual
    desk.type("Sessions", "s3", "State", "missed")
    assert (desk.session("s3").missed, desk.session("s3").done) == (True, None)
    desk.type("Sessions", "s3", "State", "planned")
    assert desk.session("s3").is_open


def test_typing_what_was_done_makes_the_record_of_it(desk):
    desk.type("Sessions", "s2", "Done", "6.5")
    done = desk.session("s2").done
    assert (done.distance_m, done.duration_s, desk.session("s2").missed) == (6500.0, 3000.0, False)
    desk.type("Sessions", "s2", "Done in", "40 min")
    assert desk.session("s2").done == replace(done, duration_s=2400.0)


def test_a_session_not_run_shows_no_figures_of_running(desk):
    assert desk.text("Sessions", "s3", "Done") == desk.text("Sessions", "s3", "Done in") == "–"
    assert desk.text("Sessions", "s4", "Distance") == "–"


def test_sessions_are_added_on_the_day_of_the_row(desk):
    desk.choose("Sessions", "s4")
    desk.press("Sessions", "add")
    new = desk.project.block.on(date(2027, 5, 18))[-1]
    assert (new.kind, len(desk.project.block.sessions)) == (Kind.EASY, 6)
    assert desk.page("Sessions").view.chosen_keys() == (new.key,)
    assert (desk.selection.kind, desk.selection.key) == ("session", new.key)


def test_several_rows_are_removed_in_one_step(desk):
    desk.choose("Sessions", "s1", "s3", "s4")
    desk.press("Sessions", "remove")
    assert [s.key for s in desk.project.block.sessions] == ["s2", "race"]
    assert desk.document.undo_stack.count() == 1
    desk.document.undo_stack.undo()
    assert len(desk.project.block.sessions) == 5


def test_the_race_is_not_removed_and_says_so(desk):
    desk.choose("Sessions", "s4", "race")
    desk.qtbot.keyClick(desk.page("Sessions").view, Qt.Key.Key_Delete)
    assert [s.key for s in desk.project.block.sessions] == ["s1", "s2", "s3", "race"]
    assert "race itself cannot be removed" in desk.page("Sessions").note.text()


def test_rows_are_marked_done_and_missed_together(desk):
    desk.choose("Sessions", "s2", "s3")
    desk.press("Sessions", "Done")
    assert all(desk.session(key).done for key in ("s1", "s2", "s3"))
    assert desk.session("s1").done == Done(7.5 * KM, 48 * 60.0)
    desk.press("Sessions", "Missed")
    assert [desk.session(key).missed for key in ("s1", "s2", "s3")] == [False, True, True]


def test_sessions_are_sorted_by_value(desk):
    page = desk.page("Sessions")
    column = desk.cell("Sessions", "s3", "Distance").column()
    page.view.sortByColumn(column, Qt.SortOrder.DescendingOrder)
    assert [row.key for row in page.table.rows] == ["race", "s3", "s1", "s2", "s4"]


def test_a_column_copied_and_pasted_one_row_down_is_one_step(desk):
    page = desk.page("Sessions")
    column = desk.cell("Sessions", "s1", "Time").column()
    page.view.setCurrentIndex(page.table.index(0, column))
    QGuiApplication.clipboard().setText("Time, h:mm\n1:10\n1:20\n")
    page.view.paste()
    assert [desk.session(key).duration_s for key in ("s1", "s2")] == [4200.0, 4800.0]
    assert desk.document.undo_stack.count() == 1


@pytest.mark.parametrize("name", ALL)
def test_a_whole_table_copied_and_pasted_back_changes_nothing(desk, name):
    view = desk.page(name).view
    view.selectAll()
    view.copy()
    lines = QGuiApplication.clipboard().text().split("\n")
    table = desk.page(name).table
    assert len(lines) == table.rowCount() + 1
    assert {line.count("\t") for line in lines} == {table.columnCount() - 1}
    view.paste()
    assert desk.document.undo_stack.count() == 0


# Sections


def test_a_pace_fixes_the_section_and_nothing_frees_it(desk):
    assert desk.type("Sections", "to-mill", "Target", "9:00")
    assert desk.project.course.section("to-mill").target_s == pytest.approx(9 * 60 * 12)
    assert desk.text("Sections", "to-mill", "Target") == "9:00"
    assert desk.text("Sections", "to-mill", "Running") == "1 h 48"
    assert desk.text("Sections", "to-mill", "Fixed") == "yes"
    assert desk.type("Sections", "to-mill", "Target", "")
    assert desk.project.course.section("to-mill").target_s is None


def test_a_running_time_fixes_the_section(desk):
    desk.type("Sections", "to-hut", "Running", "2:30")
    assert desk.project.course.section("to-hut").target_s == 9000.0
    desk.type("Sections", "to-hut", "Running", "")
    assert desk.project.course.section("to-hut").target_s is None


def test_the_tick_fixes_a_section_as_it_is(desk):
    before = desk.text("Sections", "to-hut", "Running")
    desk.type("Sections", "to-hut", "Fixed", "yes")
    assert desk.project.course.section("to-hut").target_s is not None
    assert desk.text("Sections", "to-hut", "Running") == before
    desk.type("Sections", "to-hut", "Fixed", "no")
    assert desk.project.course.section("to-hut").target_s is None


def test_the_end_of_a_section_takes_its_station_along(desk):
    desk.type("Sections", "to-mill", "To", "13")
    assert desk.station("mill").at_m == pytest.approx(13 * KM)
    assert desk.text("Sections", "to-hut", "From") == "13.0"


def test_the_finish_and_what_follows_are_for_reading(desk):
    table = desk.page("Sections").table
    for key, head in (("finish", "To"), ("to-hut", "Length"), ("to-hut", "Arrive")):
        index = desk.cell("Sections", key, head)
        assert not table.can_edit(index.row(), index.column())


@pytest.mark.parametrize(
    ("head", "text", "says"),
    [
        ("Target", "fast", "not a pace"),
        ("Running", "ages", "not a duration"),
        ("To", "60", "off the course, which is 42.0 km long"),
        ("To", "27.05", "would have no length"),
    ],
)
def test_a_bad_section_figure_is_refused(desk, head, text, says):
    before = desk.project
    assert not desk.type("Sections", "to-mill", head, text)
    assert says in desk.page("Sections").note.text()
    assert desk.project is before


def test_a_target_nobody_can_keep_is_said_under_the_table(desk):
    desk.type("Sections", "to-mill", "Running", "6 h 50")
    assert desk.document.outlook.trouble is not None
    assert desk.page("Sections").note.text() == Words().say(desk.document.outlook.trouble)


def test_arrivals_and_cutoffs_are_clock_times_and_margins_durations(desk):
    figures = desk.document.outlook.sections[0]
    clock = Words().clock(START + timedelta(seconds=figures.arrive_s))
    assert desk.text("Sections", "to-mill", "Arrive") == clock
    assert desk.text("Sections", "to-mill", "Cutoff") == "Sat 09:00"
    assert desk.text("Sections", "to-hut", "To this cutoff") == "–"
    assert desk.text("Sections", "finish", "Cutoff") == "Sat 15:00"


def test_a_missed_cutoff_is_marked(desk):
    desk.type("Aid stations", "mill", "Cutoff", "06:30")
    index = desk.cell("Sections", "to-mill", "To this cutoff")
    assert desk.page("Sections").table.warns(index.row(), index.column())
    assert desk.text("Sections", "to-mill", "To this cutoff").startswith("-")


def test_a_note_for_hard_stretches_is_kept(desk):
    desk.type("Sections", "finish", "When it gets hard here", "If it rains, then hood up.")
    assert desk.project.course.section("finish").hard_note == "If it rains, then hood up."


# Aid stations


@pytest.mark.parametrize(
    ("head", "text", "field", "value"),
    [
        ("Aid station", "Old Mill", "name", "Old Mill"),
        ("At", "11.5", "at_m", 11_500.0),
        ("Cutoff", "Sat 09:20", "cutoff_s", 12_000.0),
        ("Cutoff", "09:20", "cutoff_s", 12_000.0),
        ("Cutoff", "3 h 20", "cutoff_s", 12_000.0),
        ("Cutoff", "", "cutoff_s", None),
        ("Cutoff after", "3:20", "cutoff_s", 12_000.0),
        ("Cutoff after", "Sat 09:20", "cutoff_s", 12_000.0),
        ("Planned stop", "7.5", "stop_s", 450.0),
        ("What is there", "crew, water", "offers", (Offer.WATER, Offer.CREW)),
        ("Note", "turn left", "note", "turn left"),
    ],
)
def test_an_aid_station_is_typed_over(desk, head, text, field, value):
    before = desk.station("mill")
    assert desk.type("Aid stations", "mill", head, text)
    assert desk.station("mill") == replace(before, **{field: value})
    assert desk.document.undo_stack.count() == 1


@pytest.mark.parametrize(
    ("head", "text", "says"),
    [
        ("Aid station", "", "needs a name"),
        ("At", "99", "off the course"),
        ("Cutoff", "late", "neither a clock time nor a duration"),
        ("Cutoff", "300 h", "within 240 hours"),
        ("Planned stop", "-3", "between 0 and 24 hours"),
        ("What is there", "sauna", "not known"),
    ],
)
def test_a_bad_station_figure_is_refused(desk, head, text, says):
    before = desk.project
    assert not desk.type("Aid stations", "mill", head, text)
    assert says in desk.page("Aid stations").note.text()
    assert desk.project is before


def test_the_finish_stands_last_and_cannot_be_typed_over(desk):
    table = desk.page("Aid stations").table
    last = table.rowCount() - 1
    assert table.text(last, 0) == "Finish"
    assert not any(table.can_edit(last, column) for column in range(table.columnCount()))
    assert desk.text("Aid stations", "", "Cutoff") == "Sat 15:00"
    assert desk.text("Aid stations", "", "Cutoff after") == "9 h 00"


def test_a_station_is_added_after_the_current_one_and_removed(desk):
    desk.choose("Aid stations", "hut")
    desk.press("Aid stations", "add")
    assert [s.at_m for s in desk.project.course.stations] == [12 * KM, 27 * KM, 34_500.0]
    assert desk.selection.kind == "station"
    desk.press("Aid stations", "remove")
    assert [s.key for s in desk.project.course.stations] == ["mill", "hut"]


def test_the_finish_is_not_removed(desk):
    desk.choose("Aid stations", "")
    desk.press("Aid stations", "remove")
    assert len(desk.project.course.stations) == 2


# Fuel and foods


@pytest.mark.parametrize(
    ("head", "text", "field", "value"),
    [
        ("Race time", "2:15", "at_s", 8100.0),
        ("Race time", "45", "at_s", 2700.0),
        ("Clock", "Sat 08:15", "at_s", 8100.0),
        ("Clock", "08:15", "at_s", 8100.0),
        ("Food", "Water", "food", "water"),
        ("Servings", "0.5", "servings", 0.5),
    ],
)
def test_a_fuel_item_is_typed_over(desk, head, text, field, value):
    before = desk.project.fuel.item("i3")
    assert desk.type("Fuel", "i3", head, text)
    assert desk.project.fuel.item("i3") == replace(before, **{field: value})


@pytest.mark.parametrize(
    ("head", "text", "says"),
    [
        ("Race time", "later", "neither a clock time nor a duration"),
        ("Food", "stones", "none of the choices"),
        ("Servings", "0", "above 0 and at most 50"),
        ("Servings", "many", "not a number"),
    ],
)
def test_a_bad_fuel_figure_is_refused(desk, head, text, says):
    assert not desk.type("Fuel", "i3", head, text)
    assert says in desk.page("Fuel").note.text()
    assert desk.project.fuel.items == ITEMS


def test_an_item_says_where_it_is_taken_and_what_it_holds(desk):
    place = desk.document.outlook.target.distance_at(5400.0)
    assert desk.text("Fuel", "i3", "At") == Words().distance_bare(place, 1)
    assert desk.text("Fuel", "i3", "Clock") == "Sat 07:30"
    assert desk.text("Fuel", "i3", "Carbs") == "50.0"
    assert desk.text("Fuel", "i3", "Sodium") == "100"
    assert desk.text("Fuel", "i3", "Caffeine") == "–"


def test_an_item_beyond_the_finish_has_no_place(desk):
    desk.type("Fuel", "i3", "Race time", "8 h")
    assert desk.text("Fuel", "i3", "At") == "–"


def test_an_item_is_added_a_step_after_the_current_one(desk):
    desk.choose("Fuel", "i3")
    desk.press("Fuel", "add")
    assert [(i.food, i.at_s) for i in desk.project.fuel.items][-1] == ("gel", 6600.0)
    desk.press("Fuel", "remove")
    assert desk.project.fuel.items == ITEMS


@pytest.mark.parametrize(
    ("head", "text", "changes"),
    [
        ("Food", "Berry gel", {"name": "Berry gel"}),
        (
            "Serving",
            "1 gel, 60 g",
            {"serving": "1 gel, 60 g", "mark": "from the packet", "source": ""},
        ),
        ("Carbs", "32.5", {"carb_g": 32.5, "mark": "from the packet", "source": ""}),
        ("Sodium", "", {"sodium_mg": 0.0, "mark": "from the packet", "source": ""}),
        ("Caffeine", "75", {"caffeine_mg": 75.0, "mark": "from the packet", "source": ""}),
        ("Sugars", "mixed", {"sugars": Sugars.MIXED, "mark": "from the packet", "source": ""}),
        ("Form", "solid", {"shape": Shape.SOLID}),
    ],
)
def test_a_food_is_typed_over_and_its_figures_become_the_packets(desk, head, text, changes):
    assert desk.type("Foods", "gel", head, text)
    assert desk.project.fuel.food("gel") == replace(FOODS[0], **changes)


def test_the_source_of_a_shipped_food_stays(desk):
    index = desk.cell("Foods", "gel", "Source")
    table = desk.page("Foods").table
    assert not table.can_edit(index.row(), index.column())
    desk.type("Foods", "gel", "Carbs", "30")
    assert table.can_edit(index.row(), index.column())
    desk.type("Foods", "gel", "Source", "shop shelf")
    desk.type("Foods", "gel", "Carbs", "31")
    assert desk.project.fuel.food("gel").source == "shop shelf"


@pytest.mark.parametrize(
    ("head", "text", "says"),
    [
        ("Carbs", "9000", "between 0 and 5000"),
        ("Food", "", "needs a name"),
        ("Energy", "x", "number"),
    ],
)
def test_a_bad_food_figure_is_refused(desk, head, text, says):
    assert not desk.type("Foods", "gel", head, text)
    assert says in desk.page("Foods").note.text()
    assert desk.project.fuel.foods == FOODS


def test_a_food_of_ones_own_is_added_and_removed(desk):
    desk.press("Foods", "add")
    own = desk.project.fuel.foods[-1]
    assert (own.mark, own.carb_g) == ("from the packet", 0.0)
    desk.press("Foods", "remove")
    assert desk.project.fuel.foods == FOODS


# Together with the rest


def test_a_row_gone_to_is_selected_everywhere(desk):
    for name, kind, key in (
        ("Sessions", "session", "s3"),
        ("Sections", "section", "to-hut"),
        ("Aid stations", "station", "hut"),
        ("Fuel", "item", "i3"),
    ):
        desk.choose(name, key)
        assert (desk.selection.kind, desk.selection.key) == (kind, key)


def test_foods_and_the_finish_are_not_selected(desk):
    desk.choose("Sessions", "s3")
    desk.choose("Foods", "gel")
    desk.choose("Aid stations", "")
    assert (desk.selection.kind, desk.selection.key) == ("session", "s3")


def test_what_is_selected_elsewhere_is_gone_to(desk):
    view = desk.page("Sessions").view
    desk.selection.choose("session", "s4")
    assert view.chosen_keys() == ("s4",)


def test_the_tables_open_at_what_is_selected(desk):
    desk.tables.hide()
    desk.selection.choose("item", "i2")
    desk.tables.show()
    assert desk.tables.page.spec.name == "Fuel"
    assert desk.tables.page.view.chosen_keys() == ("i2",)


def test_tables_out_of_sight_wait_and_then_show_what_is(desk):
    desk.tables.hide()
    from ultraplanner_gui.edits.block import RemoveSession

    desk.document.perform(RemoveSession("s3"))
    page = desk.tables.pages[0]
    assert page.table.row_of("s3") >= 0
    desk.tables.show()
    assert page.table.row_of("s3") < 0


def test_undo_is_shown_at_once(desk):
    desk.type("Sessions", "s3", "Distance", "30")
    desk.document.undo_stack.undo()
    assert desk.text("Sessions", "s3", "Distance") == "24.0"


def test_only_the_changed_cells_of_a_row_are_told(desk):
    page, told = desk.page("Sessions"), []
    page.table.dataChanged.connect(
        lambda a, b, roles: told.append((a.row(), a.column(), b.column()))
    )
    desk.type("Sessions", "s3", "Distance", "30")
    column = desk.cell("Sessions", "s3", "Distance").column()
    assert told == [(2, column, column)]


def test_a_project_without_a_course_says_what_is_missing(bare):
    for name in ALL:
        page = bare.page(name)
        assert page.table.rowCount() == 0
        assert page.view.empty_text
        assert page.view.accessibleDescription() == page.view.empty_text
    enabled = {
        name: bare.page(name).buttons["add"].isEnabled() for name in ALL if name != "Sections"
    }
    assert enabled == {"Sessions": True, "Aid stations": False, "Fuel": False, "Foods": True}


def test_an_empty_build_up_takes_its_first_session_today(bare):
    bare.press("Sessions", "add")
    assert [s.day for s in bare.project.block.sessions] == [TODAY]


def test_fuel_without_foods_says_where_to_add_one(qapp, qtbot):
    document = Document(project=replace(project(), fuel=FuelPlan()), today=lambda: TODAY)
    desk = Desk(qtbot, document)
    desk.press("Fuel", "add")
    assert "no food yet" in desk.page("Fuel").note.text()
    document.close()


def test_everything_that_takes_the_focus_has_a_name(desk):
    for name in ALL:
        desk.page(name)
        for widget in desk.tables.findChildren(QWidget):
            if widget.focusPolicy() != Qt.FocusPolicy.NoFocus and widget.isVisible():
                text = getattr(widget, "text", lambda: "")()
                is_tab = widget is desk.tables.tabs or widget.parent() is desk.tables.tabs
                assert widget.accessibleName() or text or is_tab, widget


@pytest.mark.parametrize("name", ALL)
def test_heads_are_whole_and_end_in_the_window(desk, name):
    view = desk.page(name).view
    head = view.horizontalHeader()
    assert all(head.sectionSize(c) >= head.wanted_width(c) - 1 for c in range(head.count()))
    assert head.length() <= view.viewport().width()


def test_every_column_has_a_name_of_its_own():
    for spec in SPECS:
        heads = [(column.name, column.unit(Words())) for column in spec.columns]
        assert len(set(heads)) == len(heads)
    assert len(SESSION_COLUMNS) == 17
