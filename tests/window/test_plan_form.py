from datetime import datetime
from functools import partial
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace
from PySide6.QtCore import QPoint, QRect, Qt, QTime
from PySide6.QtGui import QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractSpinBox,
    QComboBox,
    QDateTimeEdit,
    QDialogButtonBox,
    QLabel,
    QLineEdit,
    QWidget,
)

from tests.window.table_desk import TODAY, project
from ultraplanner_gui.buildup.session_editor import SessionEditor
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.race import ChangeSetup, check_race, check_runner
from ultraplanner_gui.engine.first_plan import likely_finish_s
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Health, Level, Runner
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.window.plan_form import PlanForm
from ultraplanner_gui.wording.words import Words

Key = Qt.Key
MILES = Words(units="imperial")
RACE = Race("Round", datetime(2027, 6, 19, 6, 0, 30, tzinfo=ZoneInfo("Europe/London")), 25_230.0)
ODD = Runner(weekly_m=43_210.0, longest_m=17_777.0, easy_mps=2.61, body_kg=68.4, carb_g_per_h=42.5)


@pytest.fixture(scope="module")
def profile():
    return derive(project(), None, TODAY).profile


@pytest.fixture
def form_of(qtbot, profile, tmp_path):
    def make(race=RACE, runner=ODD, words=None, is_new=False, sent=None, parent=None):
        form = PlanForm(
            race,
            runner,
            0,
            words or Words(),
            sent or (lambda answers: ""),
            facts="42.0 km, 2 aid stations proposed" if is_new else "",
            path=tmp_path / "Round.ultraplan" if is_new else None,
            likely_s=partial(likely_finish_s, profile),
            parent=parent,
        )
        form.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose, False)
        qtbot.addWidget(form)
        with qtbot.waitActive(form):
            form.show()
        return form

    return make


def button(form, role=QDialogButtonBox.ButtonRole.AcceptRole):
    box = form.findChild(QDialogButtonBox)
    return next(b for b in box.buttons() if box.buttonRole(b) is role)


def fields(form):
    kinds = (QLineEdit, QAbstractSpinBox, QComboBox)
    inner = [w for kind in kinds for w in form.findChildren(kind)]
    return [w for w in inner if not isinstance(w.parent(), QAbstractSpinBox | QComboBox)]


# What it answers


@pytest.mark.parametrize("words", [Words(), MILES], ids=["km", "mi"])
def test_a_form_nobody_touched_changes_nothing(form_of, words):
    form = form_of(words=words)
    answers = form.answers()
    assert (answers.race, answers.runner) == (RACE, ODD)
    edit = ChangeSetup(answers.race, answers.runner, 0)
    base = replace(project(), race=RACE, runner=ODD)
    assert edit.apply(base) == base


def test_one_answer_leaves_the_digits_of_the_others(form_of):
    form = form_of()
    form.runner.body.setValue(70)
    form.limit.set_value(36_000.0)
    answers = form.answers()
    assert answers.runner == replace(ODD, body_kg=70.0)
    assert answers.race == replace(RACE, limit_s=36_000.0)


def test_each_field_answers_for_its_part(form_of):
    form = form_of()
    race, runner = form.race, form.runner
    race.name.setText("  Long way ")
    race.start.setTime(QTime(5, 15))
    race.zone.setCurrentText("Europe/Paris")
    race.first_weekday.setCurrentIndex(6)
    runner.weekly.setValue(55)
    runner.longest.setValue(24)
    runner.easy.setTime(QTime(0, 6, 40))
    runner.carbs.setValue(60)
    runner.level.setCurrentIndex(2)
    runner.long_day.setCurrentIndex(6)
    runner.minutes[0].setText("45")
    answers = form.answers()
    paris = datetime(2027, 6, 19, 5, 15, tzinfo=ZoneInfo("Europe/Paris"))
    assert answers.race == replace(RACE, name="Long way", start=paris)
    assert answers.runner == replace(
        ODD,
        weekly_m=55_000.0,
        longest_m=24_000.0,
        easy_mps=2.5,
        carb_g_per_h=60.0,
        level=Level.AMBITIOUS,
        long_day=6,
        available_s=(2700.0, *ODD.available_s[1:]),
    )
    assert answers.first_weekday == 6


def test_whatever_is_typed_can_be_kept(form_of):
    form = form_of(sent=lambda answers: "Not yet.")

    @settings(max_examples=25)
    @given(st.text("0123456789:.,x -", max_size=6))
    def type_everywhere(text):
        for field in fields(form):
            if field is form.name or isinstance(field, QComboBox):
                continue
            field.setFocus()
            if not isinstance(field, QDateTimeEdit):
                field.selectAll()
            QTest.keyClicks(field, text)
            QTest.keyClick(field, Key.Key_Return)
        check_runner(form.answers().runner)
        check_race(form.answers().race)

    type_everywhere()


@pytest.mark.parametrize(
    ("typed", "kept"), [("2000", "1440"), ("", "0"), ("007", "7"), ("0,014", "14")]
)
def test_minutes_beyond_a_day_come_back_into_it(form_of, typed, kept):
    form = form_of()
    field = form.runner.minutes[0]
    field.setFocus()
    field.selectAll()
    QTest.keyClick(field, Key.Key_Delete)
    QTest.keyClicks(field, typed)
    QTest.keyClick(field, Key.Key_Tab)
    assert form.answers().runner.available_s[0] == 60.0 * int(kept)


# Guesses


def test_a_new_plan_begins_with_careful_guesses(form_of):
    form = form_of(runner=Runner(), is_new=True)
    runner = form.answers().runner
    # Own choice, all on the careful side of what `Runner` has; carbs: Tiller et al. 2019,
    # J Int Soc Sports Nutr 16:50, 30 to 50 g/h.
    assert (runner.weekly_m, runner.longest_m, runner.carb_g_per_h) == (30_000.0, 12_000.0, 30.0)
    assert (runner.easy_mps, runner.body_kg) == (pytest.approx(1000 / 420), 70.0)
    assert runner.weekly_m < Runner().weekly_m
    assert runner.longest_m < Runner().longest_m
    assert form.runner.note.isVisible()
    assert all(form.runner.guesses[f].is_guessed for f in (form.weekly, form.runner.carbs))


def test_the_finish_is_guessed_from_the_course_and_follows_the_easy_pace(form_of, profile):
    form = form_of(runner=Runner(), is_new=True)
    assert form.goal.value_s == likely_finish_s(profile, form.answers().runner)
    slow = form.goal.value_s
    form.runner.easy.setTime(QTime(0, 6, 0))
    assert form.goal.value_s < slow
    assert form.goal.value_s == likely_finish_s(profile, form.answers().runner)


def test_a_finish_that_was_typed_stays(form_of):
    form = form_of(runner=Runner(), is_new=True)
    form.goal.setFocus()
    form.goal.selectAll()
    QTest.keyClicks(form.goal, "5 h 30")
    form.runner.easy.setTime(QTime(0, 6, 0))
    assert form.answers().race.goal_s == 19_800.0
    assert not form.race.guesses[form.goal].is_guessed


def test_the_note_on_guesses_goes_with_the_last_of_them(form_of):
    form = form_of()
    assert not form.runner.note.isVisible()
    guess = form.runner.guesses[form.runner.body]
    guess.button.click()
    assert form.runner.note.isVisible()
    guess.button.click()
    assert not form.runner.note.isVisible()
    assert form.answers().runner == ODD


def test_the_long_run_is_proposed_for_the_day_with_most_time(form_of):
    form = form_of()
    for field, minutes in zip(form.runner.minutes, (0, 60, 300, 0, 0, 90, 60), strict=True):
        field.setText(str(minutes))
    form.runner.guesses[form.runner.long_day].button.click()
    assert form.answers().runner.long_day == 2


def test_miles_are_guessed_in_round_miles(form_of):
    form = form_of(runner=Runner(), words=MILES, is_new=True)
    assert (form.weekly.text(), form.runner.longest.text()) == ("20 mi", "8 mi")
    assert form.runner.easy.text() == "11:15"


def test_every_guess_says_why_and_where_from_and_can_be_kept(form_of):
    form = form_of()
    rows = [*form.race.guesses.values(), *form.runner.guesses.values()]
    assert len(rows) == 11
    for row in rows:
        row.button.click()
        assert row.why.isVisible()
        assert 0 < len(row.why.text()) <= 60
        assert "(" in row.field.toolTip()
        assert form._scroll.verticalScrollBar().maximum() == 0
    answers = form.answers()
    check_race(answers.race)
    check_runner(answers.runner)
    assert answers.race.limit_s is None


# Keys, names, room


def dialogs(form_of, qtbot, request):
    if request == "editor":
        document = Document(project=project(), today=lambda: TODAY)
        editor = SessionEditor(document, "s1", Words())
        qtbot.addWidget(editor)
        editor.show()
        return editor
    return form_of(is_new=request == "new")


@pytest.fixture(params=["new", "change", "editor"])
def dialog(request, form_of, qtbot):
    return dialogs(form_of, qtbot, request.param)


def test_every_field_says_its_name_and_what_goes_in(dialog):
    choices = ("Kind", "Ground", "How it went", "Gut")
    for field in fields(dialog):
        assert field.accessibleName(), field
        if field.accessibleName() not in choices:
            assert field.toolTip(), field.accessibleName()
            assert field.accessibleDescription(), field.accessibleName()


def test_mnemonics_are_each_given_once(dialog):
    texts = [w.text() for w in dialog.findChildren(QAbstractButton)]
    texts += [label.text() for label in dialog.findChildren(QLabel) if label.buddy()]
    # The standard button is "&Cancel" on some desktops and "Cancel" on others.
    texts = [text for text in texts if text.replace("&", "") not in ("Cancel", "Save")]
    given = [QKeySequence.mnemonic(text).toString() for text in texts if "&" in text]
    given += ["Alt+C", "Alt+S"] if isinstance(dialog, SessionEditor) else ["Alt+C"]
    assert len(given) >= 12
    assert sorted(set(given)) == sorted(given)


def test_the_tab_key_goes_down_one_column_and_then_the_other(dialog):
    first = dialog.focusWidget()
    seen, at = [], first
    for _ in range(200):
        QTest.keyClick(at, Key.Key_Tab)
        at = dialog.focusWidget()
        # A date has a stop for each of its parts.
        if at is first and seen:
            break
        if at is not first and at not in seen:
            seen.append(at)
    assert at is first
    reached = {*seen, first}
    for field in fields(dialog):
        assert field in reached or not field.isEnabled() or field.focusProxy(), field
    left, right = (
        (dialog.race, dialog.runner)
        if isinstance(dialog, PlanForm)
        else (
            dialog.planned,
            dialog.done_box,
        )
    )
    for column in (left, right):
        tops = [w.mapTo(dialog, QPoint()).y() for w in seen if column.isAncestorOf(w)]
        start = tops.index(min(tops))
        ordered = tops[start:] + tops[:start]
        # What stands beside another may stand a little higher.
        slack = dialog.findChild(QLineEdit).height() // 2
        assert all(below >= above - slack for above, below in pairwise(ordered))


def test_enter_sends_from_any_field(form_of, qtbot):
    sent = []
    form = form_of(sent=lambda answers: sent.append(answers) or "Not yet.")
    for field in (form.name, form.start, form.goal, form.zone, form.weekly, *form.runner.minutes):
        field.setFocus()
        QTest.keyClick(field, Key.Key_Return)
    assert len(sent) == 12
    assert form.isVisible()
    assert form._trouble.text() == "Not yet."


def test_a_form_without_a_name_or_finish_is_not_sent(form_of):
    form = form_of(sent=lambda answers: pytest.fail("it was sent"))
    form.name.clear()
    button(form).click()
    assert "needs a name" in form._trouble.text()
    form.name.setText("Round")
    form.goal.setText("soon")
    button(form).click()
    assert "reads like 20 h 16" in form._trouble.text()


@pytest.mark.parametrize("percent", [80, 100, 150, 200])
@pytest.mark.parametrize("is_new", [True, False])
def test_the_form_fits_a_small_screen_and_nothing_is_out_of_reach(form_of, qtbot, percent, is_new):
    """1280 by 720 is what a small laptop has at twice the pixels of its panel."""
    theme().choose("light", percent)
    parent = QWidget()
    parent.resize(1280, 720)
    qtbot.addWidget(parent)
    try:
        form = form_of(is_new=is_new, parent=parent)
        room = QRect(QPoint(), form.screen().availableSize().expandedTo(parent.size()))
        assert room.contains(QRect(QPoint(), form.size()))
        assert form._scroll.horizontalScrollBar().maximum() == 0
        if percent <= 150:
            assert form._scroll.verticalScrollBar().maximum() == 0
        send = button(form)
        assert form.rect().contains(QRect(send.mapTo(form, QPoint()), send.size()))
        for field in fields(form):
            assert field.width() >= field.minimumSizeHint().width(), field.accessibleName()
    finally:
        theme().choose("system", 100)


@pytest.mark.parametrize("health", list(Health))
def test_the_answer_on_health_goes_into_the_plan(form_of, health):
    form = form_of(is_new=True)
    form.health.setCurrentIndex(form.health.findData(health))
    assert form.answers().runner.health is health
