from datetime import date

import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialogButtonBox

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.plan.course import IfStop
from ultraplanner_gui.plan.logistics import BagLine, CrewMember, IfThen, Logistics
from ultraplanner_gui.window.crew_form import CrewForm
from ultraplanner_gui.window.type_back import TypeBack
from ultraplanner_gui.wording.words import Words

TODAY = date(2027, 4, 5)
WORDS = Words()


@pytest.fixture(scope="module")
def project():
    return demo_project(TODAY)


@pytest.fixture
def sent():
    return []


@pytest.fixture
def form(qtbot, project, sent):
    def take(edit):
        sent.append(edit)
        return ""

    form = CrewForm(project, take)
    qtbot.addWidget(form)
    form.show()
    return form


def test_a_form_nobody_touched_changes_nothing(form, project):
    assert form.edit().apply(project) is project


def test_visiting_every_station_changes_nothing(form, project):
    for index in range(form.places.which.count()):
        form.places.which.setCurrentIndex(index)
    assert form.edit().apply(project) is project


def test_who_i_am_is_typed_once(form, project, qtbot):
    form.who.name.clear()
    qtbot.keyClicks(form.who.name, "Alex Example")
    form.who.medical.setPlainText("No penicillin\n\n  Blood group 0  ")
    who = form.edit().apply(project).logistics.who
    assert who.full_name == "Alex Example"
    assert who.medical == ("No penicillin", "Blood group 0")


def test_what_is_typed_for_one_station_stays_with_it(form, project):
    keys = [station.key for station in project.course.stations]
    form.places.which.setCurrentIndex(1)
    form.places.access.setText("By the lane")
    form.places.bag.setPlainText("rice\ntape")
    form.places.way_out.setText("bus 3")
    form.places.which.setCurrentIndex(2)
    form.places.hand_over.setPlainText("hat")
    after = form.edit().apply(project)
    assert after.course.station(keys[1]).access == "By the lane"
    assert after.course.station(keys[1]).if_stop == IfStop("bus 3")
    assert after.logistics.bag(keys[1]) == ("rice", "tape")
    assert after.logistics.visit(keys[2]).hand_over == ("hat",)
    assert BagLine("", "dry clothes") in after.logistics.bag_lines


def test_a_table_grows_as_it_is_filled(form, project):
    team = form.crew.team
    last = team.rowCount() - 1
    team.item(last, 0).setText("Lee")
    team.item(last, 1).setText("01632 960 444")
    assert team.rowCount() == last + 2
    assert form.edit().apply(project).logistics.crew[-1] == CrewMember("Lee", "01632 960 444", "")


def test_if_then_finds_its_station_by_name(form, project):
    table = form.hard.table
    row = table.rowCount() - 1
    for column, text in enumerate(("it snows", "I put the hat on", "col hut")):
        table.item(row, column).setText(text)
    key = next(s.key for s in project.course.stations if s.name == "Col Hut")
    line = IfThen("it snows", "I put the hat on", key)
    assert form.edit().apply(project).logistics.if_then[-1] == line


def test_what_is_wrong_is_said_and_the_form_stays(qtbot, project):
    form = CrewForm(project, lambda edit: "Make two of it.")
    qtbot.addWidget(form)
    form.show()
    form.accept()
    assert form.isVisible()
    assert form._trouble.text() == "Make two of it."


def test_a_plan_without_a_course_has_no_stations(qtbot, project):
    bare = replace(project, course=None, logistics=Logistics())
    form = CrewForm(bare, lambda edit: "")
    qtbot.addWidget(form)
    assert not form.places.isEnabled()
    assert form.edit().apply(bare) is bare


# Typing a week back in


@pytest.fixture(scope="module")
def outlook(project):
    return derive(project, None, TODAY)


@pytest.fixture
def typed(qtbot, outlook, sent):
    def take(edit):
        sent.append(edit)
        return ""

    form = TypeBack(outlook, WORDS, take)
    qtbot.addWidget(form)
    with qtbot.waitActive(form):
        form.show()
        form.activateWindow()
    return form


def test_rows_are_the_sessions_of_the_week_in_order(typed, outlook):
    week = typed.week.currentData()
    assert [row.session.key for row in typed.rows] == list(week.sessions)
    assert typed.edit().marks == ()


def _type(qtbot, typed, texts):
    """Type *texts* into the fields of the first row by keys alone, Enter after each."""
    field = typed.rows[0].fields[0]
    field.setFocus()
    for text in texts:
        field = typed.focusWidget()
        qtbot.keyClicks(field, text)
        qtbot.keyClick(field, Qt.Key.Key_Return)


def test_a_whole_row_is_typed_by_keys_alone(typed, qtbot, outlook):
    open_week = next(
        k
        for k in range(typed.week.count())
        if all(
            outlook.project.block.session(key).is_open for key in typed.week.itemData(k).sessions
        )
    )
    typed.week.setCurrentIndex(open_week)
    _type(qtbot, typed, ["", "12.5", "1:20", "300", "280", "4", "45", "f", "windy"])
    ((key, done),) = typed.edit().marks
    assert key == typed.rows[0].session.key
    figures = (done.distance_m, done.duration_s, done.climb_m, done.drop_m)
    assert figures == (12_500.0, 4800.0, 300.0, 280.0)
    assert (done.effort, done.carb_g, done.gut, done.note) == (4, 45.0, "fine", "windy")
    after = typed.edit().apply(outlook.project)
    assert after.block.session(key).done == done


def test_enter_after_the_last_field_comes_to_the_button(typed, qtbot):
    typed.rows[-1].fields[-1].setFocus()
    qtbot.keyClick(typed.rows[-1].fields[-1], Qt.Key.Key_Return)
    assert typed.focusWidget() is typed.buttons.button(QDialogButtonBox.StandardButton.Ok)


def test_a_missed_session_is_ticked_and_needs_no_figures(typed, outlook):
    row = typed.rows[-1]
    row.missed.setChecked(not row.session.missed)
    assert not row.distance.isEnabled()
    assert typed.edit().marks == ((row.session.key, None),)


def test_what_cannot_be_read_is_named_and_nothing_is_sent(typed, sent):
    row = typed.rows[-1]
    row.time.setText("soon")
    typed.accept()
    assert sent == []
    assert "soon cannot be read here" in typed._trouble.text()


def test_a_week_done_comes_up_as_it_was_put_down(typed, outlook):
    done = next(k for k in range(typed.week.count()))
    typed.week.setCurrentIndex(done)
    session = typed.rows[0].session
    assert session.done is not None
    assert WORDS.parse_distance(typed.rows[0].distance.text()) == session.done.distance_m
