from datetime import date, time

import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication

from tests.window.table_desk import TODAY, project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.desk.zones import place_of
from ultraplanner_gui.exchange.course_rows import ClockTime
from ultraplanner_gui.plan.course import Offer
from ultraplanner_gui.store.project_file import read_project
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.window.course_form_rows import (
    AT,
    CLIMB,
    COLUMNS,
    CUTOFF,
    DROP,
    LEG,
    NAME,
    STOP,
    THERE,
)
from ultraplanner_gui.window.course_table_form import CourseTableForm
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.plan_form import PlanForm

Key = Qt.Key
H = 3600.0
TEXT = (
    "The long way round\n"
    "Aid station\tDistance, km\tClimb, m\tDrop, m\tCutoff\tWhat is there\n"
    "Start\t0\t\t\tFri 18:00\t\n"
    "Mill\t12.4\t410\t120\t21:30\twater, food, soup\n"
    "Hut\t27\t1240\t900\tSat 03:00\tcrew; drop bag\n"
    "Finish\t42.2\t300\t930\t10:00\t"
)


@pytest.fixture
def window(qapp, qtbot, tmp_path, monkeypatch):
    monkeypatch.setenv("ULTRAPLANNER_HOME", str(tmp_path / "home"))
    theme().choose("light", 100)
    settings = Settings(tmp_path / "settings.ini")
    settings.units, settings.locale = "metric", "en_GB"
    window = MainWindow(settings)
    qtbot.addWidget(window)
    window.resize(1440, 900)
    with qtbot.waitActive(window):
        window.show()
    return window


@pytest.fixture
def form(qtbot, window):
    window.table.by_name["type_course"].trigger()
    form = window.findChild(CourseTableForm)
    qtbot.waitExposed(form)
    return form


def told(form):
    return form._complaint.text()


def cell(form, row, column):
    return form.table.text(row, column)


def filled(form, *rows):
    """Type rows of (column, text) pairs below the start."""
    for number, pairs in enumerate(rows, 1):
        for column, text in pairs:
            assert form.type_in(number, column, text), told(form)


def at(form, row, column):
    form.view.setCurrentIndex(form.table.index(row, column))


def editor_of(form):
    return form.view.indexWidget(form.view.currentIndex())


def paste(form, text):
    QGuiApplication.clipboard().setText(text)
    form.view.paste()


def plan_form(window):
    (found,) = (w for w in QApplication.topLevelWidgets() if isinstance(w, PlanForm))
    return found


def test_the_form_opens_from_the_empty_start_beside_the_window(window, qtbot):
    qtbot.mouseClick(window._welcome._type, Qt.MouseButton.LeftButton)
    form = window.findChild(CourseTableForm)
    assert form.isVisible()
    assert not form.isModal()
    assert [cell(form, n, NAME) for n in (0, 5)] == ["Start", "Finish"]
    assert told(form) == ""


def test_typing_by_keys_alone_makes_a_course(qtbot, form):
    at(form, 5, AT)
    for text, column in (("42", AT), ("1,240 m", CLIMB), ("900", DROP), ("7 h", CUTOFF)):
        at(form, 5, column)
        qtbot.keyClick(form.view, Key.Key_F2)
        editor = editor_of(form)
        qtbot.keyClicks(editor, text)
        qtbot.keyClick(editor, Key.Key_Return)
        QApplication.processEvents()
    assert (
        form._totals.text() == "42.0 km   ·   climb 1,240 m   ·   drop 900 m   ·   0 aid stations"
    )
    assert told(form) == ""
    assert form.rows[5].place.cutoff == 7 * H


def test_empty_rows_count_for_nothing(form):
    form.type_in(3, NAME, "Mill")
    form.type_in(3, AT, "12.4")
    form.type_in(5, AT, "42")
    assert form._result[1].stations[0].name == "Mill"
    assert cell(form, 5, LEG) == "29.6"


def test_what_is_in_the_way_is_said_by_row_and_nothing_goes_on(form):
    gone = []
    form.gone_on.connect(lambda *what: gone.append(what))
    form.type_in(3, NAME, "Mill")
    form.type_in(5, AT, "42")
    assert told(form).startswith("Row 4 (Mill) has no distance")
    form.go_on()
    assert gone == []
    form.type_in(3, AT, "43")
    assert told(form).startswith("Row 6 (Finish) lies no further")
    form.type_in(3, AT, "12")
    assert told(form) == ""
    form.go_on()
    assert len(gone) == 1


def test_a_cell_that_cannot_be_read_is_refused_and_stays_as_it_was(form):
    form.type_in(1, AT, "12.4")
    assert not form.table.setData(form.table.index(1, AT), "ten")
    assert told(form).startswith("“ten” is not a distance")
    assert cell(form, 1, AT) == "12.4"
    assert form.table.setData(form.table.index(1, AT), "10")
    assert "ten" not in told(form)


def test_a_leg_moves_the_places_after_it_along(form):
    filled(form, [(AT, "10")], [(LEG, "5")], [(LEG, "7.25")])
    assert [cell(form, n, AT) for n in (1, 2, 3)] == ["10.0", "15.0", "22.25"]
    form.type_in(1, LEG, "11")
    assert [cell(form, n, AT) for n in (1, 2, 3)] == ["11.0", "16.0", "23.25"]
    assert [cell(form, n, LEG) for n in (1, 2, 3)] == ["11.0", "5.0", "7.25"]


def test_a_drop_typed_with_a_minus_is_a_drop(form):
    form.type_in(1, DROP, "-120")
    assert cell(form, 1, DROP) == "120"


def test_cells_read_what_people_write(form):
    filled(form, [(CUTOFF, "sat 9:30"), (STOP, "10"), (THERE, "water, bag, soup")])
    place = form.rows[1].place
    assert place.cutoff == ClockTime(time(9, 30), 5)
    assert place.stop_s == 600.0
    assert (place.offers, place.note) == ((Offer.WATER, Offer.DROP_BAG), "soup")
    assert cell(form, 1, CUTOFF) == "Sat 09:30"
    assert cell(form, 1, THERE) == "water, drop bag, soup"


@pytest.mark.parametrize("column", range(len(COLUMNS)))
def test_every_cell_reads_back_what_it_shows(form, column):
    form.take_text(TEXT)
    before = form.rows
    for row in range(len(before)):
        if form.table.can_edit(row, column):
            assert form.type_in(row, column, cell(form, row, column)), told(form)
    assert form.rows == before


def test_units_are_those_of_the_program(window, form):
    form.take_text(TEXT)
    window.settings.units = "imperial"
    form.hide()
    form.show()
    assert form.table.head(AT) == "Distance, mi"
    assert cell(form, 1, CLIMB) == "1,345"
    assert cell(form, 1, AT) == "7.705"
    assert "26.2 mi" in form._totals.text()
    form.type_in(1, CLIMB, "1000")
    assert form.rows[1].place.climb_m == pytest.approx(304.8)


def test_a_table_with_heads_is_pasted_whole_wherever_one_is(form):
    form.type_in(2, NAME, "Old")
    at(form, 3, THERE)
    paste(form, TEXT)
    assert [row.place.name for row in form.rows] == ["Start", "Mill", "Hut", "Finish"]
    assert form.name.text() == "The long way round"
    assert "climb 1,950 m" in form._totals.text()


def test_a_table_without_heads_is_pasted_whole_into_an_empty_form(form):
    paste(form, "Mill\t12.4\t410\nFinish\t42\t300")
    assert [row.place.at_m for row in form.rows] == [0.0, 12_400.0, 42_000.0]


def test_a_block_of_cells_is_pasted_from_the_current_cell_on(form):
    form.take_text(TEXT)
    at(form, 1, CLIMB)
    paste(form, "500\t60\n700\t800")
    assert [cell(form, n, CLIMB) for n in (1, 2)] == ["500", "700"]
    assert [cell(form, n, DROP) for n in (1, 2)] == ["60", "800"]
    assert cell(form, 3, CLIMB) == "300"


def test_cells_pasted_past_the_end_add_rows_before_the_finish(form):
    form.type_in(5, AT, "60")
    at(form, 3, NAME)
    paste(form, "a\t10\nb\t20\nc\t30\nd\t60")
    names = [row.place.name for row in form.rows]
    assert names == ["Start", "", "", "a", "b", "c", "d"]
    assert form.rows[-1].place.at_m == 60_000.0


def test_a_paste_that_cannot_be_read_changes_nothing(form):
    form.take_text(TEXT)
    before = form.rows
    at(form, 1, CLIMB)
    paste(form, "500\nlots")
    assert form.rows == before
    assert "lots" in told(form)


def test_undo_takes_a_paste_back(qtbot, form):
    form.type_in(1, NAME, "Mine")
    before = form.rows
    paste(form, TEXT)
    qtbot.mouseClick(form.buttons["undo"], Qt.MouseButton.LeftButton)
    assert form.rows == before
    form.undo()
    form.undo()
    assert not form.buttons["undo"].isEnabled()


def test_rows_are_added_under_the_current_one_and_removed(qtbot, form):
    form.take_text(TEXT)
    at(form, 1, AT)
    qtbot.keyClick(form.view, Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert [row.place.name for row in form.rows] == ["Start", "Mill", "", "Hut", "Finish"]
    assert form.view.currentIndex().row() == 2
    qtbot.keyClick(form.view, Key.Key_Delete)
    assert [row.place.name for row in form.rows] == ["Start", "Mill", "Hut", "Finish"]


def test_start_and_finish_are_emptied_not_removed(form):
    form.take_text(TEXT)
    form.view.selectAll()
    form.remove()
    assert [row.place.name for row in form.rows] == ["Start", "Finish"]
    assert form.rows[-1].place.at_m is None


def test_what_was_made_up_is_said(form):
    form.take_text("Place;km;climb\nMill;12;400\nMarket;42;300")
    assert "Market, is taken for the finish" in form._note.text()
    assert "has no drop" in form._note.text()


def test_esc_puts_the_form_away_and_keeps_what_was_typed(qtbot, window, form):
    form.take_text(TEXT)
    qtbot.keyClick(form.view, Key.Key_Escape)
    assert form.isHidden()
    window.deeds.type_course()
    assert form.isVisible()
    assert form.rows[1].place.name == "Mill"


def test_the_profile_is_drawn_as_one_types(qtbot, form):
    form.take_text(TEXT)
    picture = form.profile.grab().toImage()
    form.type_in(1, CLIMB, "1200")
    assert form.profile.grab().toImage() != picture
    form.type_in(1, AT, "")
    assert "No course yet" in form.profile._empty_text


def test_going_on_leads_to_a_plan_with_its_cutoffs_limit_and_light(qtbot, window, form):
    form.take_text(TEXT)
    qtbot.mouseClick(form.buttons["go on"], Qt.MouseButton.LeftButton)
    plan = plan_form(window)
    assert plan.name.text() == "The long way round"
    assert (plan.day.date().dayOfWeek(), plan.start.time().hour()) == (5, 18)
    assert plan.limit.value_s == 16 * H
    plan.zone.setCurrentText("Europe/Paris")
    plan._on_sent()
    made = window.document.project
    assert made.race.limit_s == 16 * H
    assert [s.cutoff_s for s in made.course.stations] == [3.5 * H, 9 * H]
    assert made.course.length_m == 42_200.0
    assert (made.course.line.latitude_deg[0], made.course.line.longitude_deg[0]) == pytest.approx(
        place_of("Europe/Paris")
    )
    assert window.settings.words().say(made.course.repairs[-1]).endswith("computed for Paris.")
    assert window.document.outlook.profile.ascent_m == pytest.approx(1950.0, abs=10.0)
    assert form.isHidden()
    assert form.rows[1].place.name == ""
    path = window.document.path
    window.close_document()
    assert read_project(path) == made


def test_clock_cutoffs_follow_the_start_that_is_answered(qtbot, window, form):
    form.take_text(TEXT)
    form.go_on()
    plan = plan_form(window)
    plan.start.setTime(plan.start.time().addSecs(-2 * 3600))
    plan._on_sent()
    made = window.document.project
    assert [s.cutoff_s for s in made.course.stations] == [5.5 * H, 11 * H]
    assert made.race.limit_s == 18 * H


def test_a_start_the_cutoffs_cannot_follow_is_refused_in_the_plan_form(qtbot, window, form):
    form.take_text(TEXT)
    form.go_on()
    plan = plan_form(window)
    plan.day.setDate(plan.day.date().addDays(2))
    plan._on_sent()
    assert "Row 3 (Hut)" in plan._trouble.text()
    assert window.document is None
    plan.close()
    assert form.rows[1].place.name == "Mill"


def test_a_limit_typed_over_stays(window, form):
    form.take_text(TEXT)
    form.go_on()
    plan = plan_form(window)
    plan.limit.set_value(20 * H)
    plan._on_sent()
    assert window.document.project.race.limit_s == 20 * H


def test_a_zone_without_a_place_leaves_the_place_open_and_says_so(window, form):
    form.take_text(TEXT)
    form.go_on()
    plan = plan_form(window)
    plan.zone.setCurrentText("UTC")
    plan._on_sent()
    made = window.document.project
    assert made.course.line.latitude_deg[0] == 0.0
    assert "its place is not known" in window.settings.words().say(made.course.repairs[-1])


def test_a_text_file_opens_in_the_form(tmp_path, window):
    path = tmp_path / "course.csv"
    text = TEXT.replace("; ", ", ").replace("\t", ";").replace("Mill", "Mühle")
    path.write_bytes(text.encode("cp1252"))
    window.deeds.open_any(path)
    form = window.findChild(CourseTableForm)
    assert form.isVisible()
    assert form.rows[1].place.name == "Mühle"


def test_a_file_that_is_no_text_is_told(tmp_path, window):
    said = []
    window.ask.tell = lambda title, sentence: said.append(sentence)
    path = tmp_path / "course.txt"
    path.write_bytes(b"\x00\x01\x02" * 100)
    window.deeds.open_any(path)
    window.deeds.open_any(tmp_path / "none.csv")
    assert "is not a text file" in said[0]
    assert "cannot be found" in said[1]


def test_the_open_project_stays_as_it_is(qtbot, window, form):
    window.show_document(Document(project=project(), today=lambda: TODAY))
    before = window.document.project
    form.take_text(TEXT)
    form.type_in(1, CLIMB, "900")
    form.undo()
    assert window.document.project is before
    assert window.document.undo_stack.count() == 0


def test_places_of_zones_are_those_of_the_tz_database():
    # zone.tab of the IANA time zone database: FR +4852+00220, US Denver +394421-1045903.
    assert place_of("Europe/Paris") == pytest.approx((48 + 52 / 60, 2 + 20 / 60))
    assert place_of("America/Denver") == pytest.approx((39.73917, -104.98417), abs=1e-4)
    assert place_of("UTC") is None


def test_the_proposed_start_is_a_saturday_well_ahead(window, form):
    form.take_text("Place;km\nMill;12\nFinish;42")
    form.go_on()
    day = plan_form(window).day.date().toPython()
    assert day.weekday() == 5
    assert (day - date.today()).days >= 140


def test_replacing_rows_keeps_their_keys(form):
    keys = [row.key for row in form.rows]
    form.type_in(1, NAME, "Mill")
    assert [row.key for row in form.rows] == keys
    assert len({row.key for row in form.rows}) == len(keys)
    assert replace(form.rows[1].place, name="") == form.rows[2].place
