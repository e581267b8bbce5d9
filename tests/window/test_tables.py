from datetime import date, timedelta

import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QWidget

from tests.window.table_desk import KM, START, TODAY, Desk, H, project, sessions
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.block import RemoveSession
from ultraplanner_gui.plan.block import Block, Done, Ground, Kind
from ultraplanner_gui.plan.fuel import FuelPlan
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.window.table_intake import hour_rows, leg_rows
from ultraplanner_gui.window.table_sessions import COLUMNS as SESSION_COLUMNS
from ultraplanner_gui.window.tables import SPECS
from ultraplanner_gui.wording.words import Words


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
    assert table.rowCount() > 0
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


def test_after_a_removal_the_next_row_is_selected(desk):
    desk.choose("Sessions", "s3")
    desk.press("Sessions", "remove")
    assert desk.selection.key == desk.page("Sessions").view.chosen_keys()[0] == "s4"


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
    assert not desk.page(name).preview.isVisible()
    assert desk.document.undo_stack.count() == 0


# Filter


def test_ctrl_f_filters_the_table_in_view_and_escape_shows_all(desk):
    page = desk.page("Sessions")
    desk.qtbot.waitUntil(desk.tables.isActiveWindow)
    desk.qtbot.keyClick(page.view, Qt.Key.Key_F, Qt.KeyboardModifier.ControlModifier)
    assert page.filter.field.hasFocus()
    desk.qtbot.keyClicks(page.filter.field, "easy run")
    assert [row.key for row in page.table.rows] == ["s1", "s2"]
    assert page.filter.count.text() == "2 of 5"
    desk.qtbot.keyClick(page.filter.field, Qt.Key.Key_Down)
    assert page.view.hasFocus()
    assert page.view.chosen_keys() == ("s1",)
    desk.qtbot.keyClick(page.view, Qt.Key.Key_Escape)
    assert page.table.rowCount() == 5
    assert page.filter.count.text() == ""


def test_each_table_keeps_a_filter_of_its_own(desk):
    desk.page("Sessions").filter.field.setText("easy")
    page = desk.page("Foods")
    assert page.filter.isVisible()
    assert page.table.rowCount() == 2
    assert desk.page("Sessions").table.rowCount() == 2


def test_words_no_row_holds_say_so(desk):
    page = desk.page("Sessions")
    page.filter.field.setText("sauna")
    assert page.table.rowCount() == 0
    assert "No row holds" in page.view.empty_text
    assert not page.buttons["remove"].isEnabled()


def test_a_row_typed_in_stays_and_one_added_is_seen_under_a_filter(desk):
    page = desk.page("Sessions")
    page.filter.field.setText("strength")
    desk.type("Sessions", "s4", "Kind", "cross-training")
    assert [row.key for row in page.table.rows] == ["s4"]
    desk.choose("Sessions", "s4")
    desk.press("Sessions", "add")
    assert page.table.rowCount() == 2
    assert page.filter.count.text() == "2 of 6"


def test_deeds_reach_the_rows_in_sight_only(desk):
    page = desk.page("Sessions")
    page.view.selectAll()
    page.filter.field.setText("strength")
    desk.press("Sessions", "remove")
    assert [s.key for s in desk.project.block.sessions] == ["s1", "s2", "s3", "race"]


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
        name: bare.page(name).buttons["add"].isEnabled()
        for name in ALL
        if "add" in bare.page(name).buttons
    }
    without = dict.fromkeys(("Aid stations", "Surfaces", "Fuel"), False)
    assert enabled == {"Sessions": True, "Foods": True, "Lessons": True, **without}


def test_sessions_open_at_what_comes_next(qapp, qtbot):
    easy = sessions()[2]
    days = [replace(easy, key=f"d{n}", day=TODAY + timedelta(days=n)) for n in range(-90, 30)]
    whole = replace(project(), block=Block(tuple(days), 14))
    document = Document(project=whole, today=lambda: TODAY)
    desk = Desk(qtbot, document)
    view, rows = desk.tables.page.view, [session.key for session in days]
    bar = view.verticalScrollBar()
    qtbot.waitUntil(lambda: bar.value() > 0)
    ahead = view.visualRect(view.model().index(rows.index("d0"), 0))
    assert abs(ahead.center().y() - view.viewport().height() / 2) < 2 * ahead.height()
    assert not view.currentIndex().isValid()
    document.close()


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
                assert widget.accessibleName() or text, widget


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


def test_hours_and_legs_add_up_to_the_items(desk):
    outlook = desk.document.outlook
    fuel, items = outlook.fuel, desk.project.fuel.items
    taken_g = sum(desk.project.fuel.food(i.food).carb_g * i.servings for i in items)
    for rows in (hour_rows(outlook), leg_rows(outlook)):
        assert rows[0].start_s == 0.0
        assert rows[-1].end_s == pytest.approx(outlook.target.finish_s)
        assert sum(row.intake.carb_g for row in rows) == pytest.approx(taken_g)
        assert sum(row.intake.carb_g for row in rows) == pytest.approx(fuel.total.carb_g)
