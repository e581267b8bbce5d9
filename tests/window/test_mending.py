"""Days missed, from the form to one step in the build-up."""

import re
from datetime import date, timedelta

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QDate, QTime
from PySide6.QtWidgets import QAbstractButton, QLabel

from ultraplanner_gui.buildup.tune_up_form import TuneUpForm
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.engine.repair_request import Absence, Cause, Change, Choice, Cost, Repair
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.message import message
from ultraplanner_gui.plan.runner import Health
from ultraplanner_gui.window.health_form import HealthForm
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.repair_form import (
    ChoicesForm,
    RepairForm,
    change_sentence,
    likely_missed,
)
from ultraplanner_gui.window.wishes_form import WishesForm
from ultraplanner_gui.wording.words import Words

TODAY = date(2026, 11, 25)


@pytest.fixture
def document():
    return Document(None, demo_project(TODAY), lambda: TODAY)


@pytest.fixture
def window(qtbot, tmp_path, document):
    settings = Settings(tmp_path / "settings.ini")
    settings.units, settings.locale = "metric", "en_GB"
    window = MainWindow(settings)
    qtbot.addWidget(window)
    window.show()
    window.show_document(document)
    return window


def _choice(block, *changed, name="Fewest"):
    return Choice(message(name), message("Why."), block, changed, Cost(0.0, 0.0, 500.0, 0), True)


@pytest.fixture
def repair(document):
    """Two ways: an open session shortened, or taken out."""
    block = document.project.block
    session = next(s for s in block.sessions if s.is_open and s.day > TODAY)
    shorter = replace(session, distance_m=session.distance_m / 2)
    return Repair(
        (
            _choice(block.with_session(shorter), Change(session.key, session, shorter)),
            _choice(block.without(session.key), Change(session.key, session, None), name="Rest"),
        ),
        (message("Easy first."),),
    )


def test_the_way_looked_at_is_on_trial_and_taken_in_one_step(qtbot, document, repair):
    form = ChoicesForm(document, repair, Words(), lambda: None)
    qtbot.addWidget(form)
    assert document.shown.project.block == repair.choices[0].block
    form.choices.button(1).click()
    assert document.shown.project.block == repair.choices[1].block
    assert document.undo_stack.count() == 0

    form.put_in.click()

    assert document.project.block == repair.choices[1].block
    assert document.undo_stack.count() == 1
    document.undo_stack.undo()
    assert document.project.block == document.before.project.block


def test_leaving_the_ways_leaves_the_build_up_as_it_was(qtbot, document, repair):
    before = document.project
    form = ChoicesForm(document, repair, Words(), lambda: None)
    qtbot.addWidget(form)
    form.reject()
    assert document.trial_outlook is None
    assert document.project is before


def test_ways_that_no_longer_fit_are_put_away(qtbot, document, repair):
    form = ChoicesForm(document, repair, Words(), lambda: None)
    qtbot.addWidget(form)
    form.show()
    from ultraplanner_gui.edits.project import WriteNotes

    document.perform(WriteNotes("Poles?"))
    assert not form.isVisible()
    assert document.project.notes == "Poles?"


def test_a_refusal_offers_no_way(qtbot, document):
    form = ChoicesForm(document, Repair(refusal=message("Rest.")), Words(), lambda: None)
    qtbot.addWidget(form)
    assert form.chosen is None
    assert document.trial_outlook is None


@pytest.mark.parametrize(
    ("cause", "fever", "cleared"),
    [(Cause.LIFE, False, False), (Cause.ILLNESS, True, False), (Cause.INJURY, False, True)],
)
def test_the_form_asks_what_goes_with_the_cause_alone(qtbot, cause, fever, cleared):
    days = TODAY - timedelta(days=9), TODAY - timedelta(days=1)
    form = RepairForm(days, Words())
    qtbot.addWidget(form)
    form.cause.setCurrentIndex(form.cause.findData(cause))
    form.fever.setChecked(True)
    form.cleared.setChecked(True)
    assert form.absence() == Absence(*days, cause, has_red_flag=fever, is_cleared=cleared)


def test_days_the_wrong_way_round_stay_in_the_form(qtbot):
    form = RepairForm((TODAY, TODAY), Words())
    qtbot.addWidget(form)
    asked = []
    form.asked.connect(asked.append)
    form.last.setDate(QDate(2026, 11, 20))
    form.send.click()
    assert asked == []
    assert "swap" in form.trouble.text()


def test_the_form_proposes_the_days_not_marked(document):
    first, last = likely_missed(document)
    assert last == TODAY - timedelta(days=1)
    unmarked = [s.day for s in document.project.block.sessions if s.day < TODAY and s.done is None]
    recent = [day for day in unmarked if (TODAY - day).days <= 28]
    assert first == min(recent, default=last)


def test_changes_are_said_with_what_they_were(document):
    session = next(s for s in document.project.block.sessions if s.is_open and s.distance_m > 9000)
    words = Words()
    moved = replace(session, day=session.day + timedelta(days=1), distance_m=4000.0)
    assert "becomes" in change_sentence(Change("k", session, moved), words)
    assert words.day(moved.day) in change_sentence(Change("k", session, moved), words)
    assert change_sentence(Change("k", session, None), words).endswith("goes")


def test_days_missed_are_mended_from_the_menu_to_the_grid(window, document, qtbot):
    """The whole way, in a process of its own."""
    window.table.by_name["missed_days"].trigger()
    (form,) = window.findChildren(RepairForm)
    day = TODAY - timedelta(days=4)
    form.first.setDate(QDate(day.year, day.month, day.day))
    with qtbot.waitSignal(window.jobs.done, timeout=60_000):
        form.send.click()
    ways = window.findChild(ChoicesForm)
    assert ways is not None
    assert ways.chosen is not None
    kept = {s.key: s for s in document.project.block.sessions if s.done is not None}
    ways.put_in.click()
    after = {s.key: s for s in document.project.block.sessions}
    assert all(after[key] == session for key, session in kept.items())
    assert document.undo_stack.undoText() == "Mend after missed days"


def test_fever_is_answered_with_rest_and_no_plan(window, document, qtbot):
    window.table.by_name["missed_days"].trigger()
    (form,) = window.findChildren(RepairForm)
    form.cause.setCurrentIndex(form.cause.findData(Cause.ILLNESS))
    form.fever.setChecked(True)
    with qtbot.waitSignal(window.jobs.done, timeout=60_000):
        form.send.click()
    ways = window.findChild(ChoicesForm)
    assert ways.chosen is None
    assert document.trial_outlook is None
    ways.close()


def test_only_what_came_of_the_health_questions_is_kept(qtbot, document):
    then = []
    form = HealthForm(document, lambda: None, lambda: then.append(True))
    qtbot.addWidget(form)
    form.yes.click()
    assert document.project.runner.health is Health.ASK_FIRST
    assert then == [True]


def test_wishes_and_days_away_are_one_step(qtbot, document):
    form = WishesForm(document, Words())
    qtbot.addWidget(form)
    before = document.project.runner
    assert form.runner() == before
    form.wishes.strength.setValue(1)
    form.figures.week.setText("6 h 30")
    form.away.add.click()
    row = form.away._rows[-1]
    row.last.setDate(QDate(2026, 11, 30))
    row.why.setText("At sea")
    form._on_sent()
    after = document.project.runner
    assert after.wishes.strength == 1
    assert after.weekly_s == 6.5 * 3600.0
    assert [(a.first, a.last, a.why) for a in after.away][-1] == (
        TODAY,
        date(2026, 11, 30),
        "At sea",
    )
    assert document.undo_stack.count() == 1


def test_fasted_runs_stay_off_until_health_is_clear(qtbot, document):
    form = WishesForm(document, Words())
    qtbot.addWidget(form)
    assert form.wishes.fasted.isEnabled() is (document.project.runner.health is Health.CLEAR)
    from ultraplanner_gui.edits.training import SetHealth

    document.perform(SetHealth(Health.CLEAR))
    clear = WishesForm(document, Words())
    qtbot.addWidget(clear)
    assert clear.wishes.fasted.isEnabled()


def test_hours_of_the_runs_are_kept_unless_changed(qtbot, document):
    form = WishesForm(document, Words())
    qtbot.addWidget(form)
    assert form.runner().start_s == document.project.runner.start_s
    form.figures.starts[0].setTime(QTime(6, 15))
    assert form.runner().start_s[:5] == (6.25 * 3600.0,) * 5
    assert form.runner().start_s[5:] == document.project.runner.start_s[5:]


def test_a_tune_up_race_comes_in_with_a_likely_time(qtbot, document):
    day = TODAY + timedelta(weeks=5)
    form = TuneUpForm(document, day, Words())
    qtbot.addWidget(form)
    form.distance.set_metres(42_000.0)
    form.climb.set_metres(900.0)
    form.keep.click()
    new = next(
        s for s in document.project.block.on(day) if s.kind is Kind.TUNE_UP and s.climb_m == 900.0
    )
    # A metre of climb as eight along, four fifths of easy speed kept: engine.candidates.
    easy = document.project.runner.easy_mps
    assert new.duration_s == pytest.approx((42_000.0 + 8 * 900.0) / (0.8 * easy))
    assert document.undo_stack.count() == 1


def test_a_tune_up_race_after_the_race_is_refused(qtbot, document):
    form = TuneUpForm(document, document.project.race.day + timedelta(days=1), Words())
    qtbot.addWidget(form)
    form.keep.click()
    assert document.undo_stack.count() == 0
    assert form.trouble.text()


def test_mnemonics_of_the_forms_are_each_given_once(qtbot, document):
    for form in (
        WishesForm(document, Words()),
        TuneUpForm(document, TODAY, Words()),
        RepairForm((TODAY, TODAY), Words()),
        HealthForm(document, lambda: None),
    ):
        qtbot.addWidget(form)
        texts = [w.text() for kind in (QLabel, QAbstractButton) for w in form.findChildren(kind)]
        letters = [re.search("&(.)", text)[1].casefold() for text in texts if "&" in text]
        assert sorted(letters) == sorted(set(letters)), type(form).__name__
