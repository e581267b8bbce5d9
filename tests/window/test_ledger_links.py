"""Lines of the ledger that do something, and marks of what has changed."""

from datetime import date, timedelta

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QDialog

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.block import MoveSession
from ultraplanner_gui.edits.block_moves import LengthenSession
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.block import Block, Kind
from ultraplanner_gui.widgets.motion import Motion
from ultraplanner_gui.widgets.rows import CheckRow, Figure, Link, Rows, Title
from ultraplanner_gui.window.ledger_buildup import SWAP

TODAY = date(2026, 11, 25)


@pytest.fixture
def window(bare_window):
    bare_window.show_document(Document(None, demo_project(TODAY), lambda: TODAY))
    yield bare_window
    Motion.wished = True


def _upper(window):
    return window.workplace.ledger._upper


def _links(window, start=""):
    rows = _upper(window).rows
    return [row for row in rows if isinstance(row, Link) and row.target.startswith(start)]


def _long_run(window):
    sessions = window.document.project.block.sessions
    return next(s for s in sessions if s.is_open and s.kind is Kind.LONG and s.day > TODAY)


def test_a_mend_in_the_ledger_is_one_step_and_better_than_before(window):
    session = _long_run(window)
    document = window.document
    document.perform(LengthenSession(session.key, 2.0 * session.distance_m))
    window.workplace.selection.choose("session", session.key)
    links = _links(window, "mend:")
    assert links
    check = document.outlook.checks[int(links[0].target.partition(":")[2])]
    broken = {c.rule for c in document.outlook.checks if c.state is State.BREAKS}
    steps = document.undo_stack.count()

    _upper(window).chosen.emit(links[0].target)

    assert document.undo_stack.count() == steps + 1
    assert document.undo_stack.undoText() == "Mend the build-up"
    after = [c for c in document.outlook.checks if c.rule == check.rule]
    concerned = [c for c in after if set(c.sessions) & set(check.sessions)]
    assert check.rule in broken or check.state is State.STRAINS
    assert all(c.state is not State.BREAKS for c in concerned)


def test_no_mend_is_offered_for_what_is_on_trial(window):
    session = _long_run(window)
    window.workplace.selection.choose("session", session.key)
    window.document.try_edit(LengthenSession(session.key, 2.0 * session.distance_m))
    assert _links(window, "mend:") == []


def test_the_day_that_would_hold_moves_the_session(window, qtbot):
    session = _long_run(window)
    document = window.document
    window.workplace.selection.choose("session", session.key)
    hard = next(s for s in document.project.block.sessions if s.is_open and s.kind is Kind.HILLS)
    assert document.perform(MoveSession(hard.key, session.day - timedelta(days=1)))
    window.workplace.selection.choose("session", hard.key)
    qtbot.waitUntil(lambda: bool(_links(window, "to day:")), timeout=10_000)
    (link,) = _links(window, "to day:")
    _upper(window).chosen.emit(link.target)
    day = date.fromisoformat(link.target.rpartition(":")[2])
    assert document.project.block.session(hard.key).day == day


def test_a_check_leads_to_all_its_sessions(window):
    session = _long_run(window)
    hard = next(
        s
        for s in window.document.project.block.sessions
        if s.is_open and s.kind in (Kind.HILLS, Kind.TEMPO)
    )
    window.document.perform(MoveSession(hard.key, session.day - timedelta(days=1)))
    window.workplace.selection.choose("session", hard.key)
    row = next(
        row
        for row in _upper(window).rows
        if isinstance(row, CheckRow) and row.topic == "hard days" and row.target
    )
    _upper(window).chosen.emit(row.target)
    assert set(window.workplace.selection.keys) == {hard.key, session.key}


def test_health_and_this_week_are_asked_for_from_the_ledger(window):
    window.workplace.selection.clear()
    for action in ("health", "this_week"):
        known = set(window.findChildren(QDialog))
        (link,) = _links(window, f"action:{action}")
        _upper(window).chosen.emit(link.target)
        (dialog,) = set(window.findChildren(QDialog)) - known
        dialog.close()


def test_changed_figures_are_marked_for_a_moment(qtbot):
    rows = Rows("Figures")
    qtbot.addWidget(rows)
    rows.show_rows((Figure("Distance", "60 km"), Figure("Drop", "800 m")))
    rows.show_rows((Figure("Distance", "64 km"), Figure("Drop", "800 m")))
    assert rows._fresh == {0}
    qtbot.waitUntil(lambda: rows._fresh == frozenset(), timeout=3000)


def test_nothing_is_marked_where_motion_is_stopped(window):
    assert window.settings.motion
    window.table.by_name["motion"].trigger()
    assert not window.settings.motion
    rows = Rows("Figures", window)
    rows.show_rows((Figure("Distance", "60 km"),))
    rows.show_rows((Figure("Distance", "64 km"),))
    assert rows._fresh == frozenset()


def test_nothing_is_marked_where_the_system_asks_to_keep_still(window, monkeypatch):
    monkeypatch.setattr(Motion, "is_stilled", False)
    window._stillness.told.emit(True)
    rows = Rows("Figures", window)
    rows.show_rows((Figure("Distance", "60 km"),))
    rows.show_rows((Figure("Distance", "64 km"),))
    assert rows._fresh == frozenset()
    window.deeds.motion()
    window.deeds.motion()
    assert "keep still" in window._message.text()
    window._stillness.told.emit(False)
    rows.show_rows((Figure("Distance", "60 km"),))
    assert rows._fresh == {0}


@pytest.mark.parametrize(
    ("without", "action"), [("block", "build_block"), ("course", "open_course")]
)
def test_what_is_missing_can_be_had_from_the_ledger(window, monkeypatch, without, action):
    parts = {"block": {"block": Block()}, "course": {"course": None}}[without]
    window.show_document(Document(None, replace(demo_project(TODAY), **parts), lambda: TODAY))
    done = []
    window.table.by_name[action].triggered.connect(lambda: done.append(action))
    monkeypatch.setattr(window.jobs, "submit", lambda *more: None)
    monkeypatch.setattr(window.ask, "which_course", lambda *more: None)
    ledger = window.workplace.ledger
    rows = ledger._upper if without == "block" else ledger._lower
    (link,) = [row for row in rows.rows if isinstance(row, Link)]
    rows.chosen.emit(link.target)
    assert done == [action]


def test_a_swap_offered_in_the_ledger_is_one_step(window):
    document = window.document
    ahead = [s for s in document.project.block.sessions if s.is_open and s.kind.is_run]
    one = next(s for s in ahead if s.kind is Kind.LONG)
    other = next(s for s in ahead if s.kind is Kind.EASY and s.day != one.day)
    _upper(window).chosen.emit(f"{SWAP}:{one.key}:{other.key}")
    block = document.project.block
    assert block.session(one.key).day == other.day
    assert block.session(other.key).day == one.day
    assert document.undo_stack.count() == 1


def test_the_ledger_is_about_a_copy_while_it_hangs_from_the_pointer(window):
    session = _long_run(window)
    window.workplace.selection.choose("session", session.key)
    grid = window.workplace.buildup.grid
    tile = grid.cells.tile(session.key).rect
    target = grid.cells.cell(session.day + timedelta(days=7)).center().toPoint()
    QTest.mousePress(grid, Qt.MouseButton.LeftButton, pos=tile.center().toPoint())
    for at in (tile.center().toPoint() + QPoint(15, 0), target):
        QTest.mouseMove(grid, at)
    QTest.keyPress(grid, Qt.Key.Key_Control)
    title = next(row for row in _upper(window).rows if isinstance(row, Title))
    day = session.day + timedelta(days=7)
    assert window.settings.words().day(day) in title.under
    QTest.keyClick(grid, Qt.Key.Key_Escape)
    title = next(row for row in _upper(window).rows if isinstance(row, Title))
    assert window.settings.words().day(session.day) in title.under
