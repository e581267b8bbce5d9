from dataclasses import replace
from datetime import date

import pytest
from PySide6.QtCore import Qt

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.plan.head import DayGoal, DayKind, Worry
from ultraplanner_gui.window.head_form import HeadForm
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.own_days_form import OwnDaysForm

TODAY = date(2027, 4, 5)


@pytest.fixture
def window(qtbot, tmp_path):
    settings = Settings(tmp_path / "settings.ini")
    settings.units, settings.locale = "metric", "en_GB"
    window = MainWindow(settings)
    qtbot.addWidget(window)
    window.show()
    window.show_document(Document(None, demo_project(TODAY), lambda: TODAY))
    return window


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
    when, then, _ = offers.item(0).data(Qt.ItemDataRole.UserRole)
    form.lines.take.click()
    assert offers.count() == count - 1
    form.keep.click()
    after = window.document.project.logistics.if_then
    assert after[: len(before)] == before
    assert (after[-1].when, after[-1].then) == (when, then)
    assert window.document.undo_stack.count() == 1


def test_a_line_remembers_the_session_it_was_tried_in(window, form):
    form.lines.table.setCurrentCell(0, 0)
    form.lines.tried_in.setCurrentIndex(2)
    form.lines.tried_in.activated.emit(2)
    form.keep.click()
    (tried,) = window.document.project.logistics.if_then[0].tried
    assert window.document.project.block.session(tried)
    window.deeds.crew_form()
    from ultraplanner_gui.window.crew_form import CrewForm

    (crew,) = window.findChildren(CrewForm)
    assert crew.edit().logistics.if_then[0].tried == (tried,)


def test_worries_and_days_are_kept(window, form):
    form.worries.table.append(("The dark", "run by night"))
    finish, counts = form.days.fields[DayKind.HARD]
    finish.setText("23 h")
    counts.setText("Arrive")
    form.keep.click()
    head = window.document.project.head
    assert head.worries == (Worry("The dark", "run by night"),)
    assert head.goals == (DayGoal(DayKind.HARD, "Arrive", 82_800.0),)


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
