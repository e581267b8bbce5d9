"""What the Course menu does, in the window."""

from datetime import date

import numpy as np
import pytest
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QPushButton, QWidget

from ultraplanner_gui.desk import resources
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.course import ReplaceCourse
from ultraplanner_gui.edits.sections import RenameSection, SplitSection
from ultraplanner_gui.exchange.gpx_in import course_choices, read_course
from ultraplanner_gui.plan.course import Kit, Repair, Slope, StopKind
from ultraplanner_gui.window import ledger_race
from ultraplanner_gui.window.course_form import JOIN, CourseForm

TODAY = date(2026, 11, 25)


@pytest.fixture
def window(bare_window):
    bare_window.show_document(Document(None, demo_project(TODAY), lambda: TODAY))
    QApplication.processEvents()
    return bare_window


def course(window):
    return window.document.project.course


def do(window, action):
    window.table.by_name[action].trigger()
    QApplication.processEvents()


def dialog_of(window, action):
    known = set(window.findChildren(QDialog))
    do(window, action)
    # A dialog that shows what is in a file opens when the file has been looked through.
    for _ in range(500):
        if set(window.findChildren(QDialog)) - known:
            break
        QTest.qWait(10)
    (dialog,) = set(window.findChildren(QDialog)) - known
    return dialog


def test_the_plan_view_is_shown_hidden_and_remembered(window):
    do(window, "plan_view")
    assert window.workplace.raceday.plan.isVisible()
    assert window.settings.plan_view
    do(window, "plan_view")
    assert not window.workplace.raceday.plan.isVisible()
    assert not window.settings.plan_view


def test_sections_are_cut_by_climbs_and_back_by_stations(window):
    before = course(window).section_ends()
    do(window, "cut_by_climbs")
    assert {Slope.CLIMB, Slope.DESCENT} <= {s.slope for s in course(window).sections}
    do(window, "cut_by_stations")
    assert course(window).section_ends() == before


def test_sections_of_ten_kilometres(window):
    dialog = dialog_of(window, "cut_by_distance")
    next(b for b in dialog.findChildren(QPushButton) if b.text() == "&Cut").click()
    ends = course(window).section_ends()
    assert {10_000.0, 20_000.0, 80_000.0} <= set(ends)


def test_a_section_is_split_at_the_cursor_and_joined_again(window):
    ends = course(window).section_ends()
    window.workplace.raceday.plan.mark(5_000.0)
    do(window, "split_section")
    assert course(window).section_ends() == (5_000.0, *ends)
    window.workplace.selection.choose("section", course(window).sections[0].key)
    do(window, "merge_section")
    assert course(window).section_ends() == ends


def test_the_station_form_changes_all_as_one_step(window):
    station = course(window).stations[1]
    window.workplace.selection.choose("station", station.key)
    form = dialog_of(window, "change_station")
    form.stop_kind.setCurrentIndex(form.stop_kind.findData(StopKind.SLEEP))
    assert "drive" in form._sleep.text()
    form.cutoff.setText("14 h 30")
    form.kit[Kit.LAMP].setChecked(True)
    form.number.setText("112")
    steps = window.document.undo_stack.count()
    form.send()
    changed = course(window).station(station.key)
    assert changed.stop_kind is StopKind.SLEEP
    assert changed.cutoff_s == 14.5 * 3600.0
    assert changed.kit == (Kit.LAMP,)
    assert changed.if_stop.number == "112"
    assert changed.at_m == station.at_m
    assert window.document.undo_stack.count() == steps + 1


def test_a_station_form_that_cannot_be_read_says_why(window):
    before = window.document.project
    form = dialog_of(window, "change_station")
    form.cutoff.setText("soon")
    form.send()
    assert "neither a clock time nor a duration" in form._trouble.text()
    assert window.document.project is before


def test_a_pinned_station_takes_the_handbook_distance_and_keeps_its_ground(window):
    station = course(window).stations[2]
    window.workplace.selection.choose("station", station.key)
    form = dialog_of(window, "change_station")
    form.at.set_metres(station.at_m + 400.0)
    form.pinned.setChecked(True)
    form.send()
    changed = course(window).station(station.key)
    assert changed.at_m == pytest.approx(station.at_m + 400.0, abs=6.0)
    (pin,) = course(window).pins
    assert pin.line_m == pytest.approx(station.at_m, abs=1.0)


@pytest.mark.parametrize(("deed", "ratio"), [(2, 1.0), (3, 2.0), (4, 2.0)])
def test_the_shape_is_seen_first_and_taken_as_one_step(window, deed, ratio):
    length_m = course(window).length_m
    form = dialog_of(window, "course_shape")
    form.deed.setCurrentIndex(deed)
    assert course(window).length_m == length_m
    assert form._said.text().startswith("Then ")
    form.take()
    assert course(window).length_m == pytest.approx(ratio * length_m, rel=0.02)
    window.document.undo_stack.undo()
    assert course(window).length_m == length_m


def test_official_figures_stand_beside_the_measured_ones(window):
    form = dialog_of(window, "course_shape")
    assert (
        "Measured on the line"
        in form.pages.currentWidget().findChildren(type(form._said))[-1].text()
    )
    form.official.set_metres(103_000.0)
    form.climb.set_metres(4_200.0)
    form.take()
    assert course(window).official_m == pytest.approx(103_000.0)
    assert window.document.outlook.profile.ascent_m == pytest.approx(4_200.0, rel=0.01)


def test_surface_factors_are_set_and_put_back(window):
    form = dialog_of(window, "surface_factors")
    buttons = {b.text(): b for b in form.findChildren(QPushButton)}
    spins = {s.accessibleName(): s for s in form.findChildren(object) if hasattr(s, "setDecimals")}
    spins["Energy on rock"].setValue(1.7)
    buttons["&Set"].click()
    (factors,) = course(window).surface_factors
    assert (factors.surface, factors.cost) == ("rock", 1.7)
    form = dialog_of(window, "surface_factors")
    buttons = {b.text(): b for b in form.findChildren(QPushButton)}
    buttons["As &usual"].click()
    buttons["&Set"].click()
    assert course(window).surface_factors == ()


def _two_tracks(path):
    steps = np.linspace(0.0, 1.0, 40)
    tracks = "".join(
        f"<trk><name>{name}</name><trkseg>"
        + "".join(f'<trkpt lat="{lat + 0.05 * s}" lon="7.0"><ele>500</ele></trkpt>' for s in steps)
        + "</trkseg></trk>"
        for name, lat in (("Morning", 46.0), ("Evening", 46.06))
    )
    path.write_text(
        f'<gpx version="1.1" xmlns="http://www.topografix.com/GPX/1/1">{tracks}</gpx>',
        encoding="utf-8",
    )
    return path


def test_another_line_of_the_file_is_read_instead(window, qtbot, tmp_path):
    path = _two_tracks(tmp_path / "two.gpx")
    assert len(course_choices(path)) == 3
    window.document.perform(ReplaceCourse(read_course(path)))
    window.deeds.remember_course_file(path)
    dialog = dialog_of(window, "what_was_mended")
    buttons = dialog.findChildren(QPushButton)
    next(b for b in buttons if b.accessibleName().startswith("Read this: Evening")).click()
    qtbot.waitUntil(lambda: course(window).length_m < 6_000.0, timeout=5_000)


def test_without_its_file_nothing_can_be_undone_and_it_says_why(window, tmp_path):
    path = _two_tracks(tmp_path / "two.gpx")
    window.document.perform(ReplaceCourse(read_course(path)))
    assert course(window).repairs
    dialog = dialog_of(window, "what_was_mended")
    undo = [b for b in dialog.findChildren(QPushButton) if b.text() == "Undo this"]
    assert undo
    assert not any(b.isEnabled() for b in undo)


def test_a_file_with_two_tracks_asks_which_and_reads_the_one_chosen(window, qtbot, tmp_path):
    path = _two_tracks(tmp_path / "two.gpx")
    known, read = set(window.findChildren(QDialog)), []
    window.deeds._read_course(path, read.append)
    qtbot.waitUntil(lambda: len(set(window.findChildren(QDialog)) - known) == 1, timeout=5_000)
    (dialog,) = set(window.findChildren(QDialog)) - known
    assert dialog.lines.item(0).text().startswith("All 2 in order")
    assert "Evening (track): 5.6 km, 40 points" in dialog.lines.item(2).text()
    dialog.lines.setCurrentRow(2)
    dialog.send()
    qtbot.waitUntil(lambda: bool(read), timeout=5_000)
    assert read[0][0].length_m == pytest.approx(5_559.0, rel=0.01)


def test_all_in_order_is_not_read_twice(window, qtbot, tmp_path):
    path = _two_tracks(tmp_path / "two.gpx")
    known, read = set(window.findChildren(QDialog)), []
    window.deeds._read_course(path, read.append)
    qtbot.waitUntil(lambda: len(set(window.findChildren(QDialog)) - known) == 1, timeout=5_000)
    (dialog,) = set(window.findChildren(QDialog)) - known
    dialog.send()
    assert len(read) == 1
    assert read[0][0].length_m > 11_000.0


def test_a_section_is_named_with_what_to_do_when_it_gets_hard(window):
    key = course(window).sections[2].key
    window.workplace.selection.choose("section", key)
    dialog = dialog_of(window, "name_section")
    fields = {f.accessibleName(): f for f in dialog.findChildren(QWidget)}
    fields["Name"].setText("The long ridge")
    fields["When it gets hard here"].setPlainText("If the legs go, then eat.")
    steps = window.document.undo_stack.count()
    next(b for b in dialog.findChildren(QPushButton) if b.text() == "&Set").click()
    section = course(window).section(key)
    assert (section.name, section.hard_note) == ("The long ridge", "If the legs go, then eat.")
    assert window.document.undo_stack.count() == steps + 1


def test_table_and_ledger_say_which_climb_a_section_is_and_what_it_is_called(window):
    do(window, "cut_by_climbs")
    first = next(s for s in course(window).sections if s.slope is Slope.CLIMB)
    window.workplace.tables.show_table("Sections")
    page = window.workplace.tables.page
    page.show_outlook(window.document.outlook)
    assert page.table.text(page.table.row_of(first.key), 0).startswith("Climb 1: ")
    window.document.perform(RenameSection(first.key, "The wall"))
    page.show_outlook(window.document.outlook)
    assert page.table.text(page.table.row_of(first.key), 0).startswith("The wall, ")


def test_a_section_cut_by_hand_does_not_end_at_the_finish(window):
    window.document.perform(SplitSection(5_000.0))
    words, outlook = window.settings.words(), window.document.outlook
    key = outlook.sections[0].key
    title = ledger_race.section_rows(outlook, outlook, key, words)[0]
    assert title.text == "Start to 5.0 km"


def test_a_repair_is_undone_by_reading_the_file_again(window, qtbot, tmp_path):
    path = _two_tracks(tmp_path / "two.gpx")
    window.document.perform(ReplaceCourse(read_course(path)))
    window.deeds.remember_course_file(path)
    before = course(window).repairs
    kind = next(repair.kind for repair in before if isinstance(repair, Repair))
    dialog = dialog_of(window, "what_was_mended")
    next(b for b in dialog.findChildren(QPushButton) if b.text() == "Undo this").click()
    qtbot.waitUntil(lambda: course(window).reading.without == (kind,), timeout=5_000)
    assert kind not in [getattr(r, "kind", None) for r in course(window).repairs]
    window.document.undo_stack.undo()
    assert course(window).repairs == before


def test_leg_is_read_off_the_window_and_joined_as_one_step(qtbot, window, tmp_path):
    leg = tmp_path / "leg.gpx"
    leg.write_bytes(resources.path("demo/course.gpx").read_bytes())
    window.ask.which_course = lambda folder, taken: taken(leg)
    before_m = window.document.project.course.length_m
    window.table.by_name["course_shape"].trigger()
    (form,) = window.findChildren(CourseForm)
    form.deed.setCurrentIndex(JOIN)
    form.take()
    qtbot.waitUntil(lambda: form.edit() is not None, timeout=20_000)
    form.take()

    assert window.document.project.course.length_m > 1.5 * before_m
    assert window.document.undo_stack.count() == 1
