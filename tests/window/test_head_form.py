from datetime import date

import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.engine.head import days_of
from ultraplanner_gui.plan.head import DayGoal, DayKind, Worry
from ultraplanner_gui.widgets.rows import Figure
from ultraplanner_gui.window.head_form import HeadForm
from ultraplanner_gui.window.ledger_race import race_rows
from ultraplanner_gui.window.own_days_form import OwnDaysForm

TODAY = date(2027, 4, 5)


@pytest.fixture
def window(bare_window):
    bare_window.show_document(Document(None, demo_project(TODAY), lambda: TODAY))
    return bare_window


@pytest.fixture
def form(window):
    window.deeds.head_form()
    (form,) = window.findChildren(HeadForm)
    return form


def test_nothing_kept_is_no_step(window, form):
    form.keep.click()
    assert window.document.undo_stack.count() == 0


def test_only_ticked_proposals_are_taken(window, form):
    before = window.document.project.logistics.if_then
    offers = form.lines.offers
    count = offers.count()
    offers.item(0).setCheckState(Qt.CheckState.Checked)
    when, then, _, station = offers.item(0).data(Qt.ItemDataRole.UserRole)
    form.lines.take.click()
    assert offers.count() == count - 1
    form.keep.click()
    after = window.document.project.logistics.if_then
    assert after[: len(before)] == before
    assert (after[-1].when, after[-1].then, after[-1].station) == (when, then, station)
    assert window.document.undo_stack.count() == 1


def test_a_line_remembers_every_session_it_was_tried_in(window, form):
    form.lines.table.setCurrentCell(0, 0)
    first, second, *_ = form.lines.runs
    for key in (first, second):
        form.lines.runs[key].trigger()
    form.lines.table.item(0, 1).setText("I sit down and eat")
    form.keep.click()
    line = window.document.project.logistics.if_then[0]
    assert (line.then, line.tried) == ("I sit down and eat", (first, second))
    window.deeds.crew_form()
    from ultraplanner_gui.window.crew_form import CrewForm

    (crew,) = window.findChildren(CrewForm)
    assert crew.edit().logistics.if_then[0].tried == (first, second)


def test_runs_shown_as_tried_are_those_of_the_chosen_line(form):
    form.lines.table.setCurrentCell(0, 0)
    form.lines.runs[next(iter(form.lines.runs))].trigger()
    form.lines.table.setCurrentCell(1, 0)
    assert not any(run.isChecked() for run in form.lines.runs.values())
    form.lines.table.setCurrentCell(0, 0)
    assert [run.isChecked() for run in form.lines.runs.values()].count(True) == 1


def test_a_place_that_is_no_station_is_refused(window, form):
    form.lines.table.append(("cold", "jacket", "Nowhere"))
    form.keep.click()
    assert "Nowhere" in form.trouble.text()
    assert window.document.undo_stack.count() == 0
    station = window.document.project.course.stations[2]
    row = form.lines.table.rowCount() - 2
    form.lines.table.item(row, 2).setText(station.name.upper())
    form.keep.click()
    assert window.document.project.logistics.if_then[-1].station == station.key


def test_worries_and_days_are_kept(window, form):
    form.worries.table.append(("The dark", "run by night"))
    finish, counts = form.days.fields[DayKind.HARD]
    finish.setText("23 h")
    counts.setText("Arrive")
    form.keep.click()
    head = window.document.project.head
    assert head.worries == (Worry("The dark", "run by night"),)
    assert head.goals == (DayGoal(DayKind.HARD, "Arrive", 82_800.0),)


def test_the_ledger_of_the_race_has_the_three_days(window, form):
    finish, _ = form.days.fields[DayKind.HARD]
    finish.setText("23 h")
    form.keep.click()
    outlook, words = window.document.outlook, window.settings.words()
    rows = {row.label: row.now for row in race_rows(outlook, outlook, words) if is_figure(row)}
    good = days_of(outlook)[0].finish_s
    assert rows["Good day"] == words.duration(good)
    assert rows["Hard day"] == words.duration(82_800.0)


def is_figure(row):
    return isinstance(row, Figure)


def test_own_lines_are_typed_and_what_cannot_be_read_is_said(window):
    window.deeds.own_days()
    (form,) = window.findChildren(OwnDaysForm)
    form.table.append(("three", "18:00", "Collect the number"))
    form.keep.click()
    assert "Line 1" in form.trouble.text()
    form.table.item(0, 0).setText("3")
    form.keep.click()
    (own,) = window.document.project.logistics.own_days
    assert (own.days_before, own.at_s, own.text) == (3, 64_800.0, "Collect the number")


def test_kit_is_ticked_in_its_table(window):
    from ultraplanner_gui.window.table_kit import KIT

    words = window.settings.words()
    rows = KIT.rows(window.document.outlook)
    columns = {column.name: column for column in KIT.columns}
    for text in columns["Where it is"].choices(rows[0], words):
        window.document.perform(columns["Where it is"].parse(rows[0], text, words))
        row = KIT.rows(window.document.outlook)[0]
        assert row.packed is not None
        assert columns["Where it is"].text(row, words) in (text, "in a drop bag")
    window.document.perform(columns["Packed"].parse(row, "no", words))
    assert KIT.rows(window.document.outlook)[0].packed is None
    assert replace(row, packed=None).packed is None


def test_kit_is_ticked_by_the_space_bar(qtbot, window):
    window.go("tables")
    window.workplace.tables.show_table("Mandatory kit")
    page = window.workplace.tables.page
    heads = [page.table.head_parts(c)[0] for c in range(page.table.columnCount())]
    page.view.setCurrentIndex(page.table.index(1, heads.index("Packed")))
    qtbot.keyClick(page.view, Qt.Key.Key_Space)
    kit = window.document.project.race.mandatory_kit
    assert [p.item for p in window.document.project.logistics.packed] == [kit[1]]
    qtbot.keyClick(page.view, Qt.Key.Key_Space)
    assert window.document.project.logistics.packed == ()
    assert window.document.undo_stack.count() == 2
