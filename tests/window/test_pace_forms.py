"""The forms for target shape, predicted finish, conditions, and the table of other rules."""

from datetime import date

import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.engine.prediction import predict, result_of_run
from ultraplanner_gui.plan.conditions import Conditions, Effect, ValleyForecast
from ultraplanner_gui.plan.message import message
from ultraplanner_gui.plan.pacing import Pacing, PastRun, ResultKind
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.pace_beside import BesideTable
from ultraplanner_gui.window.pace_conditions import ConditionsForm
from ultraplanner_gui.window.pace_predict import CLIMB, DISTANCE, TIME, PredictForm
from ultraplanner_gui.window.pace_shape import ShapeForm
from ultraplanner_gui.window.recordings_read import ReadRuns
from ultraplanner_gui.wording.words import Words

TODAY = date(2026, 11, 25)
DEMO = demo_project(TODAY)


@pytest.fixture
def document():
    return Document(None, DEMO, lambda: TODAY)


@pytest.fixture
def sent(document):
    """What the window does with an edit."""
    edits = []

    def take(edit):
        edits.append(edit)
        document.perform(edit)
        return ""

    take.edits = edits
    return take


def shown(qtbot, form):
    qtbot.addWidget(form)
    form.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose, on=False)
    form.show()
    return form


def test_even_effort_is_one_choice_and_one_step(qtbot, document, sent):
    form = shown(qtbot, ShapeForm(document.project, Words(), sent))
    assert form.half.isChecked()
    form.even.click()
    form.accept()

    assert document.project.pacing == Pacing(0.0)
    assert document.undo_stack.count() == 1


def test_own_fade_and_loose_finish_are_taken_together(qtbot, document, sent):
    form = shown(qtbot, ShapeForm(document.project, Words(), sent))
    assert not form.share.isEnabled()
    form.own.click()
    form.share.setValue(80)
    form.holds.click()
    form.figures["tired_walk"].setValue(75)
    form.figures["fade"].setValue(14)
    form.accept()

    assert document.project.pacing == Pacing(0.8, False)
    assert document.project.runner.tired_walk == pytest.approx(0.75)
    assert document.project.runner.fade == pytest.approx(0.14)
    assert document.undo_stack.count() == 1


def test_shape_left_alone_changes_nothing(qtbot, document, sent):
    shown(qtbot, ShapeForm(document.project, Words(), sent)).accept()

    assert sent.edits == []


def type_run(form, row, distance, climb, time):
    for column, text in ((DISTANCE, distance), (CLIMB, climb), (TIME, time)):
        form.table.item(row, column).setText(text)


def test_finish_is_predicted_as_one_types_and_nothing_changes_by_itself(qtbot, document, sent):
    form = shown(qtbot, PredictForm(document.outlook, Words(), sent, lambda taken: None))
    assert not form.use.isEnabled()
    type_run(form, 0, "50", "1900", "7 h 10")

    assert form.prediction.low_s < form.prediction.middle_s < form.prediction.high_s
    assert Words().duration(form.prediction.middle_s) in form.window_line.text()
    assert form.why.text()
    assert form.table.rowCount() == 2
    assert sent.edits == []


def test_use_as_goal_takes_finish_spread_and_runs_in_one_step(qtbot, document, sent):
    form = shown(qtbot, PredictForm(document.outlook, Words(), sent, lambda taken: None))
    type_run(form, 0, "50", "1900", "7 h 10")
    form.table.kind_at(0).setCurrentIndex(1)
    found = form.prediction
    QTest.mouseClick(form.use, Qt.MouseButton.LeftButton)

    assert document.undo_stack.count() == 1
    assert document.project.race.goal_s == pytest.approx(found.middle_s, abs=30.0)
    assert document.project.runner.finish_spread == pytest.approx(found.spread, abs=1e-3)
    assert document.project.runner.past_runs == (
        PastRun(50_000.0, 1_900.0, 25_800.0, ResultKind.LONG_RUN),
    )
    low, high = document.outlook.sections[-1].window_s
    assert high - low > found.high_s - found.low_s - 1800.0


def test_line_that_cannot_be_read_is_named(qtbot, document, sent):
    form = shown(qtbot, PredictForm(document.outlook, Words(), sent, lambda taken: None))
    type_run(form, 0, "fifty", "", "7 h")

    assert "Line 1" in form.window_line.text()
    assert not form.use.isEnabled()
    assert not form.keep.isEnabled()


def test_runs_typed_before_are_there_again(qtbot, document, sent):
    runs = (PastRun(80_000.0, 2_500.0, 50_000.0, ResultKind.RACE, "Lakes"),)
    project = replace(document.project, runner=replace(document.project.runner, past_runs=runs))
    again = Document(None, project, lambda: TODAY)
    form = shown(qtbot, PredictForm(again.outlook, Words(), sent, lambda taken: None))

    assert form.table.runs()[0].name == "Lakes"
    assert form.table.runs()[0].distance_m == 80_000.0
    assert form.prediction is not None


def test_recordings_are_added_with_their_own_flat_distance_and_told_when_left_out(
    qtbot, document, sent
):
    run = PastRun(61_234.0, 2_210.0, 31_111.0, ResultKind.LONG_RUN, "Ridge", 74_000.0)
    found = ReadRuns((run,), (("torn.gpx", message("It ends in the middle.")),))
    form = PredictForm(document.outlook, Words(), sent, lambda taken: taken(found))
    shown(qtbot, form)
    QTest.mouseClick(form.add, Qt.MouseButton.LeftButton)

    assert form.table.runs() == (run,)
    assert "torn.gpx" in form.left_out.text()
    race, runner = document.outlook.race, document.project.runner
    by_line = predict(race.profile, [result_of_run(run)], race.forecast.stops, runner)
    assert form.prediction == by_line
    form.table.item(0, 1).setText("70")
    assert form.table.runs()[0].flat_m is None


def test_each_effect_says_its_minutes_and_can_be_switched_off(qtbot, document, sent):
    form = shown(qtbot, ConditionsForm(document.outlook, Words(), sent))
    night = form.minutes[Effect.NIGHT].text()
    form.night.setValue(20)
    form.reckon()
    assert form.minutes[Effect.NIGHT].text() != night
    form.switches[Effect.NIGHT].click()
    form.reckon()
    assert form.minutes[Effect.NIGHT].text() == "off"
    form.accept()

    assert document.project.conditions.off == (Effect.NIGHT,)
    assert document.project.runner.night_loss == pytest.approx(0.2)
    assert document.undo_stack.count() == 1


def test_weather_is_typed_once_and_told_along_the_way(qtbot, document, sent):
    bare = replace(document.project, conditions=Conditions())
    form = shown(qtbot, ConditionsForm(Document(None, bare, lambda: TODAY).outlook, Words(), sent))
    assert not form.coldest.isEnabled()
    form.known.click()
    form.coldest.setValue(12)
    form.warmest.setValue(31)
    form.reckon()

    assert "Hottest" in form._result.text()
    assert form.conditions().weather.warmest_c == 31.0
    form.coldest.setValue(35)
    form.reckon()
    assert "cannot be warmer" in form._trouble.text()


def test_fahrenheit_in_is_celsius_kept(qtbot, document, sent):
    form = shown(qtbot, ConditionsForm(document.outlook, Words("imperial"), sent))
    form.warmest.setValue(86)

    assert form.conditions().weather.warmest_c == pytest.approx(30.0)


def test_hours_of_the_forecast_come_back_as_typed(qtbot, document, sent):
    weather = ValleyForecast(5.0, 25.0, 40.0, 500.0, 4.5, 16.25)
    project = replace(document.project, conditions=Conditions(weather, lamp_s=30_600.0))
    form = shown(
        qtbot, ConditionsForm(Document(None, project, lambda: TODAY).outlook, Words(), sent)
    )

    assert form.conditions() == project.conditions


def test_other_rules_meet_the_target_at_the_finish(qtbot, document):
    dialog = shown(qtbot, BesideTable(document.outlook, Words()))
    table, last = dialog.table, len(document.outlook.sections) - 1

    assert table.columnCount() == 9
    assert {table.item(last, column).text() for column in range(3, 9)} == {"0 min"}
    assert table.item(0, 1).text() == Words().duration(document.outlook.sections[0].arrive_s)
    assert any("h" in table.item(last + 1, column).text() for column in range(3, 9))


def test_locking_a_section_keeps_it_as_it_is(qtbot, tmp_path):
    window = MainWindow(Settings(tmp_path / "settings.ini"))
    qtbot.addWidget(window)
    window.show_document(Document(None, DEMO, lambda: TODAY))
    section = window.document.outlook.sections[2]
    window.workplace.selection.choose("section", section.key)
    window.deeds.lock_target()

    now = next(s for s in window.document.outlook.sections if s.key == section.key)
    assert now.is_fixed
    assert now.moving_s == pytest.approx(section.moving_s)
    window.deeds.lock_target()
    assert window.document.undo_stack.count() == 1


def test_enter_does_not_throw_the_runs_away(qtbot, document, sent):
    form = shown(qtbot, PredictForm(document.outlook, Words(), sent, lambda taken: None))
    form.setFocus()
    QTest.keyClick(form, Qt.Key.Key_Return)
    assert form.isVisible()
    assert sent.edits == []
