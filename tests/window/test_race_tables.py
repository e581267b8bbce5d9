from datetime import timedelta

import pytest
from msgspec.structs import replace

from tests.window.table_desk import FOODS, ITEMS, KM, START, TODAY, Desk, project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.plan.course import Offer
from ultraplanner_gui.plan.fuel import Shape, Sugars
from ultraplanner_gui.wording.words import Words


@pytest.fixture
def desk(qapp, qtbot):
    document = Document(project=project(), today=lambda: TODAY)
    yield Desk(qtbot, document)
    document.close()


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
