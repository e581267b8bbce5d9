"""A week marked by single keys, and how a session went in a short form."""

from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from tests.buildup.conftest import TODAY
from ultraplanner_gui.buildup.done_form import DoneForm
from ultraplanner_gui.buildup.week_panel import DONE, SESSION, WeekPanel
from ultraplanner_gui.edits.block import MarkDone, MarkMissed
from ultraplanner_gui.plan.block import Gut
from ultraplanner_gui.wording.words import Words

Key = Qt.Key
#: The week of today: an easy run and hills behind it, the long run ahead.
EASY, HILLS, LONG = "easy2", "hills2", "long2"


@pytest.fixture
def panel(stage, qtbot):
    panel = WeekPanel(stage.document, stage.selection, stage.storey.deeds, Words)
    qtbot.addWidget(panel)
    panel.show()
    return panel


def _go(panel, key):
    panel.table.setCurrentCell(panel._keys.index(key), SESSION)


def test_the_week_of_today_has_seven_days_and_its_sessions(panel):
    assert [key for key in panel._keys if key] == [EASY, HILLS, LONG]
    assert panel.table.rowCount() == 7


def test_planned_and_done_stand_side_by_side(panel):
    row = panel._keys.index(EASY)
    assert "10.0 km" in panel.table.item(row, DONE - 1).text()
    assert "10.0 km" in panel.table.item(row, DONE).text()
    assert panel.table.item(panel._keys.index(LONG), DONE).text() == ""


def test_one_key_marks_a_session(panel, stage):
    _go(panel, LONG)
    QTest.keyClick(panel.table, Key.Key_D)
    assert stage.session(LONG).done is not None
    _go(panel, LONG)
    QTest.keyClick(panel.table, Key.Key_M)
    assert stage.session(LONG).missed
    _go(panel, LONG)
    QTest.keyClick(panel.table, Key.Key_U)
    assert stage.session(LONG).is_open
    assert stage.document.undo_stack.count() == 3


def test_two_sessions_are_starred(panel):
    starred = [
        key
        for row, key in enumerate(panel._keys)
        if panel.table.item(row, SESSION).text().startswith("★")
    ]
    assert starred == [HILLS, LONG]


def test_weeks_are_turned(panel):
    panel.go_on()
    assert [key for key in panel._keys if key] == ["easy3", "hills3", "long3"]
    panel.go_back()
    panel.go_back()
    assert [key for key in panel._keys if key] == ["easy1", "hills1", "long1"]


def test_a_row_selects_its_session_on_the_sheet(panel, stage):
    _go(panel, HILLS)
    assert stage.selection.key == HILLS


def test_an_empty_day_cannot_be_marked(panel, stage):
    panel.table.setCurrentCell(panel._keys.index(""), SESSION)
    QTest.keyClick(panel.table, Key.Key_D)
    assert stage.document.performed == []


def test_enter_keeps_what_was_planned_as_done(stage, qtbot):
    form = DoneForm(stage.document, LONG, Words())
    qtbot.addWidget(form)
    planned = stage.session(LONG).actual
    form.keep.click()
    assert stage.document.performed == [MarkDone(LONG, planned)]


def test_a_changed_session_keeps_every_real_figure(stage, qtbot):
    form = DoneForm(stage.document, LONG, Words())
    qtbot.addWidget(form)
    box = form.box
    box.distance.set_metres(22_000.0)
    box.time.setText("2 h 40")
    box.climb.set_metres(410.0)
    box.drop.set_metres(390.0)
    box.effort.setValue(6)
    box.carbs.setValue(90)
    box.gut.setCurrentIndex(box.gut.findData(Gut.UNEASY))
    form.keep.click()
    done = stage.session(LONG).done
    assert (done.distance_m, done.duration_s) == (22_000.0, 9_600.0)
    assert (done.climb_m, done.drop_m, done.effort) == (410.0, 390.0, 6)
    assert (done.carb_g, done.gut) == (90.0, Gut.UNEASY)
    assert stage.document.undo_stack.count() == 1


def test_missed_is_chosen_in_the_form_too(stage, qtbot):
    form = DoneForm(stage.document, LONG, Words())
    qtbot.addWidget(form)
    form.box.state.setCurrentIndex(2)
    form.keep.click()
    assert stage.document.performed == [MarkMissed(LONG)]


def test_c_in_the_grid_opens_the_short_form(stage, qtbot):
    opened = []
    stage.storey.editor_opened.connect(opened.append)
    stage.choose(LONG)
    stage.keys(Key.Key_C)
    (form,) = opened
    assert isinstance(form, DoneForm)
    form.reject()
    assert stage.session(LONG).is_open
    assert stage.session(LONG).day - TODAY == timedelta(days=2)
