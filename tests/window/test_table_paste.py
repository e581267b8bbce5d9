from datetime import date

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication

from tests.window.table_desk import FOODS, ITEMS, KM, TODAY, Desk, H, project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.block import RemoveSession
from ultraplanner_gui.edits.compound import PasteCells
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.plan.block import Block, Kind
from ultraplanner_gui.plan.course import Offer
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.widgets.table import TableModel
from ultraplanner_gui.widgets.table_column import Aim
from ultraplanner_gui.widgets.table_text import written
from ultraplanner_gui.window.table_paste import plan_paste
from ultraplanner_gui.window.tables import SPECS
from ultraplanner_gui.wording.words import Words

Key = Qt.Key
BY_NAME = {spec.name: spec for spec in SPECS}
ALL = list(BY_NAME)
GERMAN, MILES = Words(locale="de"), Words(units="imperial")


@pytest.fixture
def desk(qapp, qtbot):
    document = Document(project=project(), today=lambda: TODAY)
    yield Desk(qtbot, document)
    document.close()


@pytest.fixture(scope="module")
def outlook():
    return derive(project(), None, TODAY)


def paste(desk, name, key, head, text):
    """Put *text* on the clipboard and press Ctrl+V at a cell."""
    page = desk.page(name)
    page.view.setFocus()
    page.view.setCurrentIndex(desk.cell(name, key, head))
    QGuiApplication.clipboard().setText(text)
    desk.qtbot.keyClick(page.view, Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    return page


def plan(outlook, name, text, first_row=0, head="", words=None, block=(1, 1), is_filtered=False):
    """Return what pasting *text* at a place would do, without a window."""
    spec = BY_NAME[name]
    heads = [column.name for column in spec.columns]
    keys = tuple(row.key for row in spec.rows(outlook))[first_row:]
    first = heads.index(head) if head else 0
    aim = Aim(keys, first, tuple(range(len(heads))), block)
    return plan_paste(spec, outlook, aim, text, words or Words(), is_filtered)


def told(found):
    return [(f.where, f.head, f.now, f.becomes) for f in found.findings if f.reason is None]


def refusals(found):
    return [(f.where, f.becomes, str(f.reason)) for f in found.refused]


# Before anything happens


def test_a_paste_changes_nothing_until_it_is_agreed_to(desk):
    page = paste(desk, "Sessions", "s3", "Distance", "26\n3.5")
    assert desk.document.undo_stack.count() == 0
    assert page.preview.isVisible()
    assert page.preview.change.hasFocus()
    assert page.preview.change.text() == "Change 2 cells"
    texts = [[page.preview.table.text(r, c) for c in range(4)] for r in range(2)]
    assert texts == [
        ["Sat 15 May, long run", "Distance, km", "24.0", "26.0"],
        ["Tue 18 May, strength", "Distance, km", "–", "3.5"],
    ]
    desk.qtbot.keyClick(page.preview.change, Key.Key_Return)
    assert [desk.session(key).distance_m for key in ("s3", "s4")] == [26 * KM, 3500.0]
    assert (desk.document.undo_stack.count(), page.preview.isVisible()) == (1, False)
    assert page.view.hasFocus()
    desk.document.undo_stack.undo()
    assert desk.project == project()


@pytest.mark.parametrize("way", ["cancel", "escape", "escape in the list"])
def test_a_paste_is_dropped_without_a_trace(desk, way):
    page = paste(desk, "Sessions", "s3", "Distance", "26\n3.5")
    if way == "cancel":
        desk.qtbot.mouseClick(page.preview.cancel, Qt.MouseButton.LeftButton)
    else:
        field = page.preview.view if "list" in way else page.preview.change
        field.setFocus()
        desk.qtbot.keyClick(field, Key.Key_Escape)
    assert not page.preview.isVisible()
    assert page.buttons["add"].isVisible()
    assert page.table.mark(2, 4) is None
    assert (desk.document.undo_stack.count(), desk.project) == (0, project())


def test_the_cells_a_paste_would_change_are_marked_in_the_table(desk):
    page = paste(desk, "Sessions", "s3", "Distance", "26\nfar")
    column = desk.cell("Sessions", "s3", "Distance").column()
    good, bad = (page.table.mark(row, column) for row in (2, 3))
    assert (good.text, good.is_refused) == ("would become 26.0", False)
    assert bad.is_refused
    assert "not a distance" in bad.text


def test_a_line_of_the_preview_leads_to_its_cell(desk):
    page = paste(desk, "Sessions", "s3", "Distance", "26\n3.5")
    page.preview.view.setCurrentIndex(page.preview.table.index(1, 0))
    assert page.table.thing(page.view.currentIndex().row()).key == "s4"


def test_one_cell_is_taken_as_if_typed(desk):
    page = paste(desk, "Sessions", "s3", "Distance", "26")
    assert not page.preview.isVisible()
    assert desk.session("s3").distance_m == 26 * KM
    assert desk.document.undo_stack.undoText() == "Change session"
    paste(desk, "Sessions", "s3", "Distance", "far")
    assert "not a distance" in page.note.text()
    assert desk.document.undo_stack.count() == 1


def test_what_is_pasted_is_looked_at_anew_when_the_plan_changes(desk):
    page = paste(desk, "Sessions", "s2", "Distance", "9\n26")
    desk.document.perform(RemoveSession("s4"))
    assert not page.preview.isVisible()
    page = paste(desk, "Sessions", "s2", "Distance", "9\n26")
    desk.type("Sessions", "s3", "Distance", "26")
    assert page.preview.change.text() == "Change 1 cell"


def test_nothing_new_is_said_and_not_shown(desk):
    page = paste(desk, "Sessions", "s3", "Distance", "24,0\n")
    page = paste(desk, "Sessions", "s2", "Distance", "8\n24 km")
    assert not page.preview.isVisible()
    assert "Nothing to change" in page.note.text()


@pytest.mark.parametrize(
    ("text", "says"),
    [("x" * 1_000_000, "Copy fewer rows"), ("1\t2\0", "not text"), ("", "no text to paste")],
)
def test_a_hostile_clipboard_is_refused_under_the_table(desk, text, says):
    page = desk.page("Sessions")
    page.paste(text)
    assert says in page.note.text()
    assert not page.preview.isVisible()
    assert desk.project == project()


def test_computed_columns_alone_take_nothing(desk):
    page = paste(desk, "Fuel", "i1", "Carbs", "30\n30")
    assert "can be typed over" in page.note.text()


# What is read


def test_bad_cells_are_listed_with_their_reasons_and_the_rest_is_taken(outlook):
    found = plan(outlook, "Sessions", "26\tages\n3.5\t50", 2, "Distance")
    assert told(found) == [
        ("Sat 15 May, long run", "Distance, km", "24.0", "26.0"),
        ("Tue 18 May, strength", "Distance, km", "–", "3.5"),
    ]
    assert refusals(found) == [
        ("Sat 15 May, long run", "ages", "“ages” is not a duration. Type 1 h 30, 1:30 or 90 min.")
    ]
    after = found.edit.apply(outlook.project)
    assert after.block.session("s4").distance_m == 3500.0
    assert after.block.session("s3").duration_s == outlook.project.block.session("s3").duration_s


@pytest.mark.parametrize("text", ["26,5\n9", "26.5 km\n9 km", "26,5 KM\n9"])
@pytest.mark.parametrize("words", [Words(), GERMAN])
def test_decimals_and_units_are_understood(outlook, text, words):
    found = plan(outlook, "Sessions", text, 2, "Distance", words)
    after = found.edit.apply(outlook.project).block
    assert [after.session(key).distance_m for key in ("s3", "s4")] == [26_500.0, 9000.0]


def test_other_figures_take_their_units_too(outlook):
    found = plan(outlook, "Sessions", "600 m\t610 m\tup and down\t5 of 10\t60 g/h", 2, "Climb")
    session = found.edit.apply(outlook.project).block.session("s3")
    assert (session.climb_m, session.drop_m, session.effort, session.carb_g_per_h) == (
        600.0,
        610.0,
        5,
        60.0,
    )


def test_columns_are_found_by_their_heads(outlook):
    text = "Note;Planned stop, min;Sauna;Aid station\nsocks;6;yes;Mill\nhat;7;no;Hut"
    found = plan(outlook, "Aid stations", text, 0, "Cutoff")
    stations = found.edit.apply(outlook.project).course.stations
    assert [(s.name, s.stop_s, s.note) for s in stations] == [
        ("Mill", 360.0, "socks"),
        ("Hut", 420.0, "hat"),
    ]
    assert [str(note) for note in found.notes] == [
        "The column “Sauna” is not in this table and is left out."
    ]


def test_a_head_may_be_in_another_unit(outlook):
    text = "Aid station\tAt, mi\tPlanned stop, h\nMill\t8\t0.1"
    found = plan(outlook, "Aid stations", text)
    mill = found.edit.apply(outlook.project).course.station("mill")
    # The international mile: 1609.344 m, by the agreement of 1959.
    assert (mill.at_m, mill.stop_s) == (pytest.approx(8 * 1609.344), pytest.approx(360.0))


def test_a_head_in_a_unit_nobody_reads_is_left_out(outlook):
    found = plan(outlook, "Foods", "Food\tWeight, oz\nGel\t2")
    assert (found.edits, [str(n)[:14] for n in found.notes]) == ((), ["“Weight, oz” i"])


def test_one_column_with_its_head_goes_where_one_points(outlook):
    found = plan(outlook, "Sessions", "Time, h:mm\n1:10\n1:20", 0, "Done in")
    assert [f.head for f in found.findings] == ["Done in", "Done in"]
    after = found.edit.apply(outlook.project).block
    assert [after.session(key).done.duration_s for key in ("s1", "s2")] == [4200.0, 4800.0]


def test_a_state_is_not_taken_for_the_head_of_the_column_done(outlook):
    found = plan(outlook, "Sessions", "done\nmissed", 2, "State")
    after = found.edit.apply(outlook.project).block
    assert (after.session("s3").done is not None, after.session("s4").missed) == (True, True)


def test_what_was_not_touched_in_the_spreadsheet_stays(outlook):
    """A changed pace moves the running time too, which was copied as it stood before."""
    spec = BY_NAME["Sections"]
    copied = copied_table(outlook, spec)
    copied[1][[c.name for c in spec.columns].index("Target")] = "9:00"
    found = plan(outlook, "Sections", written(copied))
    assert [(f.where, f.head) for f in found.findings] == [("Mill", "Target, min/km")]
    section = found.edit.apply(outlook.project).course.section("to-mill")
    assert section.target_s == pytest.approx(540.0 * 12)


def test_a_pace_is_read_by_the_length_pasted_with_it(outlook):
    text = "To, km\tTarget, min/km\n10\t9:00"
    found = plan(outlook, "Sections", text)
    assert found.edit.apply(outlook.project).course.section("to-mill").target_s == pytest.approx(
        540.0 * 10
    )


def test_stations_move_past_the_places_others_leave(outlook):
    found = plan(outlook, "Aid stations", "28\n40", 0, "At")
    stations = found.edit.apply(outlook.project).course.stations
    assert [s.at_m for s in stations] == [28 * KM, 40 * KM]
    assert found.refused == ()


def test_digits_a_cell_does_not_show_are_kept(outlook):
    block = outlook.project.block
    odd = block.with_session(replace(block.session("s3"), distance_m=24_037.0))
    outlook = derive(replace(outlook.project, block=odd), outlook, TODAY)
    found = plan(outlook, "Sessions", "24\n3.5", 2, "Distance")
    assert [f.row for f in found.findings] == ["s4"]


def test_empty_cells_leave_what_stands_there(outlook):
    found = plan(outlook, "Sessions", "26\t\n\t50", 2, "Distance")
    assert [f.becomes for f in found.findings] == ["26.0"]
    assert [str(note) for note in found.notes] == ["Empty cells leave what stands there."]


def test_cells_that_stay_say_why(outlook):
    found = plan(outlook, "Sessions", "2027-05-05\n2027-05-07", 0, "Date")
    assert [f.becomes for f in found.findings if f.reason is None] == ["2027-05-07"]
    assert refusals(found)[0][2] == "This session is done; it stays on the day it was run."


def test_formulas_are_not_taken(outlook):
    found = plan(outlook, "Sessions", '=HYPERLINK("a")\nok', 2, "Note")
    assert [f.becomes for f in found.findings if f.reason is None] == ["ok"]
    assert "formula" in refusals(found)[0][2]


def test_one_cell_fills_a_selected_block(outlook):
    found = plan(outlook, "Sessions", "5", 1, "Effort", block=(3, 1))
    assert [f.row for f in found.findings] == ["s2", "s3", "s4"]
    found = plan(outlook, "Sessions", "5\n6", 0, "Effort", block=(4, 1))
    assert [f.becomes for f in found.findings] == ["5", "6", "5", "6"]


# New rows


def test_lines_past_the_end_become_sessions(outlook):
    text = (
        "Date\tKind\tDistance, km\tTime, h:mm\tNote\n"
        "2027-06-01\tlong\t30\t4:00\tpoles\n"
        "soon\teasy run\t8\t0:50\t\n"
        "2 Jun\tstrength\t\t40 min\t\n"
        "3 Jun\t\t\t\t\n"
    )
    found = plan(outlook, "Sessions", text, 5)
    assert (found.cells, found.new_rows) == (0, 3)
    assert [f.becomes for f in found.findings if f.is_new_row and f.reason is None] == [
        "2027-06-01 · long run · 30.0 · 4 h 00 · poles",
        "2027-06-02 · strength · 40 min",
        "2027-06-03 · easy run · 7.0 · 45 min",
    ]
    assert "“soon” is not a date" in refusals(found)[0][2]
    block = found.edit.apply(outlook.project).block
    (long,), (strength,), (easy,) = (block.on(date(2027, 6, day)) for day in (1, 2, 3))
    assert (long.kind, long.distance_m, long.duration_s) == (Kind.LONG, 30 * KM, 4 * H)
    assert (strength.kind, strength.distance_m, strength.duration_s) == (Kind.STRENGTH, 0.0, 2400.0)
    assert (easy.kind, easy.distance_m > 0.0) == (Kind.EASY, True)


def test_a_course_table_becomes_stations(outlook):
    text = (
        "Aid station,At,Cutoff after,What is there\n"
        "Mill,12,3 h,water\n"
        "Ford,28,5:30,crew\n"
        "Top,35,,\n"
        ",30,,\n"
        "Finish,42,9:00,\n"
    )
    found = plan(outlook, "Aid stations", text)
    assert [(f.where, f.head) for f in found.findings if f.row] == [
        ("Hut", "Aid station"),
        ("Hut", "At, km"),
        ("Hut", "Cutoff after, race time"),
        ("Hut", "What is there"),
    ]
    # The line without a name is no station, and the finish is there already.
    assert [why for _, _, why in refusals(found)] == [
        "A new aid station needs its name and where it is."
    ]
    stations = found.edit.apply(outlook.project).course.stations
    assert [(s.name, s.at_m, s.cutoff_s, s.offers) for s in stations] == [
        ("Mill", 12 * KM, 3 * H, (Offer.WATER,)),
        ("Ford", 28 * KM, 5.5 * H, (Offer.CREW,)),
        ("Top", 35 * KM, None, ()),
    ]


def test_items_and_foods_are_added(outlook):
    found = plan(outlook, "Fuel", "Food\tRace time\tServings\ngel\t2:15\t2\nWater\t\t1\n", 3)
    assert (found.new_rows, len(found.refused)) == (1, 1)
    item = found.edit.apply(outlook.project).fuel.items[-1]
    assert (item.food, item.at_s, item.servings) == ("gel", 8100.0, 2.0)
    found = plan(outlook, "Foods", "Rice ball\t1 ball\t28,5\t150\n\t1 cup\t\t", 2)
    food = found.edit.apply(outlook.project).fuel.foods[-1]
    assert (food.name, food.serving, food.carb_g, food.sodium_mg) == (
        "Rice ball",
        "1 ball",
        28.5,
        150.0,
    )
    assert "needs its name" in refusals(found)[0][2]


def test_no_row_is_added_under_a_filter_or_where_none_can_be(outlook):
    found = plan(outlook, "Foods", "Bar\nBun\nRoll", 1, is_filtered=True)
    assert (found.new_rows, found.cells) == (0, 1)
    assert "Clear the filter" in str(found.notes[0])
    found = plan(outlook, "Sections", "be calm\n" * 5, 0, "When it gets hard here")
    assert (found.cells, [str(note) for note in found.notes]) == (
        3,
        ["Lines left out past the last row: 2."],
    )


def test_more_lines_than_a_plan_can_take_are_left_out(outlook):
    found = plan(outlook, "Sessions", "\n".join(["2027-06-01"] * 900), 5)
    assert (found.new_rows, str(found.notes[0])) == (0, "Lines left out past the last row: 900.")


def test_new_rows_are_one_step_with_the_cells(desk):
    page = paste(
        desk, "Foods", "water", "Food", "Still water\t1 bottle\nRice ball\t1 ball\nBun\t1 bun"
    )
    assert page.preview.change.text() == "Change 2 cells, add 2 rows"
    desk.qtbot.mouseClick(page.preview.change, Qt.MouseButton.LeftButton)
    names = [food.name for food in desk.project.fuel.foods]
    assert names == ["Gel", "Still water", "Rice ball", "Bun"]
    assert desk.document.undo_stack.count() == 1
    assert desk.document.undo_stack.undoText() == PasteCells.label
    desk.document.undo_stack.undo()
    assert desk.project.fuel.foods == project().fuel.foods


def test_an_empty_table_takes_a_pasted_block(qapp, qtbot):
    bare = replace(project(), block=Block())
    document = Document(project=bare, today=lambda: TODAY)
    desk = Desk(qtbot, document)
    page = desk.page("Sessions")
    QGuiApplication.clipboard().setText("2027-06-01\n2027-06-02")
    page.view.setFocus()
    qtbot.keyClick(page.view, Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    assert page.preview.change.text() == "Add 2 rows"
    page.preview.change.click()
    assert [s.day.day for s in desk.project.block.sessions] == [1, 2]
    document.close()


# Copied and pasted back


def model_of(outlook, spec, words):
    model = TableModel(spec.columns, lambda: words, lambda edit: True)
    model.show_rows(spec.rows(outlook))
    return model


def copied_table(outlook, spec):
    model = model_of(outlook, spec, Words())
    columns = range(model.columnCount())
    heads = [model.copied_head(c) for c in columns]
    rows = [[model.copied_text(r, c) for c in columns] for r in range(model.rowCount())]
    return [heads, *rows]


notes = st.text(st.characters(exclude_categories=("Cs", "Cc")), max_size=12).filter(
    lambda text: not text.lstrip().startswith("=")
)


figures = st.tuples(
    st.floats(0.0, 90_000.0, allow_subnormal=False),
    st.floats(0.0, 90_000.0),
    st.floats(0.0, 9_000.0),
    st.floats(0.0, 99.0),
)


def outlook_with(figures, note, name):
    """Return the project with any figures and words in it."""
    distance_m, duration_s, climb_m, carb_g = figures
    base = project()
    session = base.block.session("s3")
    session = replace(
        session, distance_m=distance_m, duration_s=duration_s, climb_m=climb_m, note=note
    )
    foods = (replace(FOODS[0], carb_g=carb_g, name=f"Gel {name}"), *FOODS[1:])
    fuel = replace(base.fuel, foods=foods)
    base = replace(base, block=base.block.with_session(session), fuel=fuel)
    return derive(base, None, TODAY)


@pytest.mark.parametrize("words", [Words(), GERMAN, MILES], ids=["km", "de", "mi"])
@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=60)
@given(st.data(), figures, notes, notes, st.sampled_from(ALL), st.sampled_from(["", "e", "run"]))
def test_what_is_copied_changes_nothing_when_pasted_back(
    qapp, words, data, figures, note, food, name, text
):
    """Any block of cells with its heads, however the table is sorted and filtered."""
    outlook = outlook_with(figures, note, food)
    spec = BY_NAME[name]
    model = model_of(outlook, spec, words)
    model.filter(text)
    last = model.columnCount() - 1
    model.sort(data.draw(st.integers(-1, last)), Qt.SortOrder.DescendingOrder)
    if not model.rowCount():
        return
    top, bottom = sorted(data.draw(st.integers(0, model.rowCount() - 1)) for _ in range(2))
    left, right = sorted(data.draw(st.integers(0, last)) for _ in range(2))
    columns = range(left, right + 1)
    rows = [[model.copied_text(r, c) for c in columns] for r in range(top, bottom + 1)]
    copied = written([[model.copied_head(c) for c in columns], *rows])
    aim = Aim(tuple(row.key for row in model.rows[top:]), left, tuple(range(last + 1)))
    try:
        found = plan_paste(spec, outlook, aim, copied, words, model.is_filtered)
    except PlanError as error:
        assert "Nothing in these columns" in str(error)  # noqa: PT017 - one of two good ends
    else:
        assert (found.findings, found.edits) == ((), ())


def test_all_items_of_a_race_are_pasted_in_one_go(outlook):
    """A race with a filled fuel table: every time put off by ten minutes."""
    text = "\n".join(f"{int(i.at_s // 3600)}:{int(i.at_s % 3600 // 60) + 10:02d}" for i in ITEMS)
    found = plan(outlook, "Fuel", text, 0, "Race time")
    items = found.edit.apply(outlook.project).fuel.items
    assert [i.at_s for i in items] == [i.at_s + 600.0 for i in ITEMS]
