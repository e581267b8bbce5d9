"""A day that would hold is looked for where a session breaks a rule."""

from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from tests.buildup.conftest import TODAY, make_block, outlook
from ultraplanner_gui.buildup import nearest_day
from ultraplanner_gui.buildup.nearest_day import (
    DaySeeker,
    breaks_something,
    burden,
    days_near,
    seeker_of,
)
from ultraplanner_gui.edits.block import MoveSession
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.block import Kind


@pytest.fixture
def beside_the_long_run(stage):
    """The hill run of a week on trial on the day before its long run."""
    day = stage.session("long6").day - timedelta(days=1)
    assert stage.document.try_edit(MoveSession("hills6", day))
    assert breaks_something(stage.document.shown, "hills6")
    return stage


@pytest.fixture
def at_once(monkeypatch):
    monkeypatch.setattr(nearest_day, "REST_MS", 0)


def test_the_day_found_breaks_nothing_and_worsens_no_rule(beside_the_long_run, at_once, qtbot):
    document = beside_the_long_run.document
    seeker = DaySeeker(document)
    with qtbot.waitSignal(seeker.found, timeout=5000):
        assert seeker.day_for("hills6") is None
    day = seeker.day_for("hills6")

    after = outlook(MoveSession("hills6", day).apply(document.project))
    assert not any(c.state is State.BREAKS and "hills6" in c.sessions for c in after.checks)
    was = burden(document.before)
    assert all(weight <= was[rule] for rule, weight in burden(after).items())


def test_no_day_is_looked_for_where_nothing_breaks(stage, at_once, qtbot):
    seeker = DaySeeker(stage.document)
    assert not breaks_something(stage.document.shown, "easy6")
    assert seeker.day_for("easy6") is None
    qtbot.wait(30)
    assert seeker.day_for("easy6") is None


def test_a_day_found_for_one_trial_is_not_shown_for_the_next(beside_the_long_run, at_once, qtbot):
    document = beside_the_long_run.document
    seeker = DaySeeker(document)
    with qtbot.waitSignal(seeker.found, timeout=5000):
        seeker.day_for("hills6")
    document.drop_trial()
    assert seeker.day_for("hills6") is None


def test_days_looked_at_are_free_ahead_and_nearest_first(stage):
    now = stage.document.before
    session = stage.session("hills6")
    days = list(days_near(now, session, session.day))
    busy = {s.day for s in make_block().sessions if s.kind is not Kind.STRENGTH}
    assert days
    assert not set(days) & busy
    assert all(day >= TODAY for day in days)
    # Monday is a day without time in the plan of the runner.
    assert all(day.weekday() != 0 for day in days)
    gaps = [abs((day - session.day).days) for day in days]
    assert gaps == sorted(gaps)


def test_h_puts_what_is_in_the_hand_on_the_day_found(stage, at_once, qtbot):
    day = stage.session("long6").day - timedelta(days=1)
    stage.drag("hills6", day)
    seeker = seeker_of(stage.document)
    with qtbot.waitSignal(seeker.found, timeout=5000):
        seeker.day_for("hills6")
    better = seeker.day_for("hills6")
    QTest.keyClick(stage.grid, Qt.Key.Key_H)
    assert not stage.grid.is_carrying
    assert stage.session("hills6").day == better
    assert stage.document.undo_stack.count() == 1


def test_where_no_day_near_the_hand_holds_one_near_its_own_is_offered(stage, at_once, qtbot):
    home, far = stage.session("hills7").day, TODAY + timedelta(days=8)
    assert stage.document.try_edit(MoveSession("hills7", far))
    seeker = DaySeeker(stage.document)
    with qtbot.waitSignal(seeker.found, timeout=5000):
        seeker.day_for("hills7")
    day = seeker.day_for("hills7")
    assert abs((day - home).days) < abs((day - far).days)
