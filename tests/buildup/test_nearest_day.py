"""A day that would hold is looked for where a session breaks a rule."""

from datetime import timedelta

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from tests.buildup.conftest import (
    TODAY,
    WatchedDocument,
    make_block,
    make_project,
    outlook,
    run,
)
from ultraplanner_gui.buildup import nearest_day
from ultraplanner_gui.buildup.deeds import usual
from ultraplanner_gui.buildup.nearest_day import (
    DaySeeker,
    breaks_something,
    burden,
    days_near,
    seeker_of,
)
from ultraplanner_gui.edits.block import MoveSession
from ultraplanner_gui.edits.block_moves import LengthenSession, SwapSessions
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
        assert seeker.offer_for("hills6") is None
    offer = seeker.offer_for("hills6")

    after = outlook(_edit(offer, "hills6").apply(document.project))
    assert not any(c.state is State.BREAKS and "hills6" in c.sessions for c in after.checks)
    was = burden(document.before)
    assert all(weight <= was[rule] for rule, weight in burden(after).items())


def test_no_day_is_looked_for_where_nothing_breaks(stage, at_once, qtbot):
    seeker = DaySeeker(stage.document)
    assert not breaks_something(stage.document.shown, "easy6")
    assert seeker.offer_for("easy6") is None
    qtbot.wait(30)
    assert seeker.offer_for("easy6") is None


def test_a_day_found_for_one_trial_is_not_shown_for_the_next(beside_the_long_run, at_once, qtbot):
    document = beside_the_long_run.document
    seeker = DaySeeker(document)
    with qtbot.waitSignal(seeker.found, timeout=5000):
        seeker.offer_for("hills6")
    document.drop_trial()
    assert seeker.offer_for("hills6") is None


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
        seeker.offer_for("hills6")
    better = seeker.offer_for("hills6").day
    QTest.keyClick(stage.grid, Qt.Key.Key_H)
    assert not stage.grid.is_carrying
    assert stage.session("hills6").day == better
    assert stage.document.undo_stack.count() == 1


def test_where_no_day_near_the_hand_holds_one_near_its_own_is_offered(stage, at_once, qtbot):
    home, far = stage.session("hills7").day, TODAY + timedelta(days=8)
    assert stage.document.try_edit(MoveSession("hills7", far))
    seeker = DaySeeker(stage.document)
    with qtbot.waitSignal(seeker.found, timeout=5000):
        seeker.offer_for("hills7")
    day = seeker.offer_for("hills7").day
    assert abs((day - home).days) < abs((day - far).days)


def test_where_every_day_with_time_has_a_run_a_swap_is_offered(at_once, qtbot):
    project = make_project()
    free_s = tuple(36_000.0 if weekday in (1, 2, 5) else 0.0 for weekday in range(7))
    document = WatchedDocument(replace(project, runner=replace(project.runner, available_s=free_s)))
    day = project.block.session("long6").day - timedelta(days=1)
    assert document.try_edit(MoveSession("hills6", day))
    assert breaks_something(document.shown, "hills6")
    seeker = DaySeeker(document)
    with qtbot.waitSignal(seeker.found, timeout=5000):
        seeker.offer_for("hills6")
    offer = seeker.offer_for("hills6")
    other = project.block.session(offer.other)
    assert other.day == offer.day
    after = outlook(SwapSessions("hills6", offer.other).apply(document.project))
    assert not breaks_something(after, "hills6")
    assert not breaks_something(after, other.key)


def test_a_long_run_is_offered_no_evening(stage):
    project = stage.document.project
    free_s = (0.0, *(5400.0,) * 4, 28_800.0, 10_800.0)
    now = outlook(replace(project, runner=replace(project.runner, available_s=free_s)))
    long_run = project.block.session("long6")
    assert long_run.duration_s > 5400.0
    weekdays = {d.weekday() for d in days_near(now, long_run, long_run.day)}
    assert weekdays <= {5, 6}


def test_an_edge_drawn_too_far_is_offered_a_length_and_h_makes_it_so(stage, at_once, qtbot):
    tile = stage.grid.cells.tile("easy6").rect
    start = tile.center().toPoint()
    start.setX(round(tile.right()) - 2)
    stage.press(start)
    for x in (10, 60, 110):
        stage.move(start + QPoint(x, 0))
    drawn = stage.document.shown.project.block.session("easy6")
    assert breaks_something(stage.document.shown, "easy6")
    seeker = seeker_of(stage.document)
    with qtbot.waitSignal(seeker.found, timeout=5000):
        seeker.offer_for("easy6")
    offer = seeker.offer
    assert offer.length < drawn.distance_m
    after = outlook(LengthenSession("easy6", offer.length).apply(stage.document.project))
    assert not breaks_something(after, "easy6")
    QTest.keyClick(stage.grid, Qt.Key.Key_H)
    assert stage.session("easy6").distance_m == offer.length
    assert not stage.grid.is_carrying


def test_what_hangs_from_the_pointer_is_what_the_seeker_is_about(stage):
    seeker = seeker_of(stage.document)
    stage.drag("hills6", stage.session("hills6").day + timedelta(days=1))
    assert seeker.held == "hills6"
    stage.keys(Qt.Key.Key_Escape)
    assert seeker.held == ""
    new = usual(stage.document.project, Kind.TEMPO, TODAY)
    assert stage.grid.take_new(new)
    stage.grid.point_new(stage.spot_of(TODAY + timedelta(days=1)).toPointF())
    held = seeker.held
    assert stage.document.shown.project.block.session(held).kind is Kind.TEMPO
    stage.keys(Qt.Key.Key_Escape)
    assert seeker.held == ""


def _edit(offer, key):
    return SwapSessions(key, offer.other) if offer.other else MoveSession(key, offer.day)


def test_h_leaves_out_what_is_new_where_nothing_holds(stage, at_once, qtbot):
    before = stage.document.project
    far_too_long = run("", TODAY, Kind.LONG, km=90)
    assert stage.grid.take_new(far_too_long)
    stage.grid.point_new(stage.spot_of(TODAY + timedelta(days=1)).toPointF())
    seeker = seeker_of(stage.document)
    assert breaks_something(stage.document.shown, seeker.held)
    seeker.offer_for(seeker.held)
    qtbot.waitUntil(lambda: seeker.offer is not None, timeout=10_000)
    assert seeker.offer.is_home
    stage.grid.setFocus()
    QTest.keyClick(stage.grid, Qt.Key.Key_H)
    assert not stage.grid.is_carrying
    assert stage.document.project is before
    assert stage.document.shown is stage.document.before
