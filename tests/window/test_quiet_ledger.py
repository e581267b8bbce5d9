"""A drag renews the figures of its own storey and leaves the others as they are."""

from datetime import date, timedelta

import pytest
from PySide6.QtWidgets import QApplication

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.edits.block_moves import LengthenSession
from ultraplanner_gui.edits.course import SetSectionTarget
from ultraplanner_gui.edits.stations import MoveStart
from ultraplanner_gui.engine.glycogen import ledger_of
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.window import ledger_buildup, ledger_race
from ultraplanner_gui.window.ledger import Ledger
from ultraplanner_gui.wording.words import Words

TODAY = date(2026, 11, 25)


@pytest.fixture
def document(qtbot):
    return Document(None, demo_project(TODAY), lambda: TODAY)


@pytest.fixture
def ledger(qtbot, document):
    words = Words()
    ledger = Ledger(document, Selection(), lambda: words)
    qtbot.addWidget(ledger)
    return ledger


def _slower(document, s):
    section = document.outlook.sections[1]
    return SetSectionTarget(section.key, section.moving_s + s)


def _longer(document):
    sessions = document.project.block.sessions
    run = next(s for s in sessions if s.is_open and s.kind is Kind.LONG and s.day > TODAY)
    return LengthenSession(run.key, run.distance_m + 5000.0)


def _refuse(*_):
    raise AssertionError("renewed for nothing")


def test_a_target_drag_makes_no_rows_of_the_build_up(document, ledger, monkeypatch):
    # Once at its beginning: a proposal is no use while something is tried.
    document.try_edit(_slower(document, 60.0))
    monkeypatch.setattr(ledger_buildup, "build_up_rows", _refuse)
    before = ledger._lower.rows
    document.try_edit(_slower(document, 600.0))
    assert ledger._lower.rows != before


def test_a_session_drag_makes_no_rows_of_race_day(document, ledger, monkeypatch):
    monkeypatch.setattr(ledger_race, "race_rows", _refuse)
    before = ledger._upper.rows
    document.try_edit(_longer(document))
    assert ledger._upper.rows != before


def test_rows_of_the_build_up_follow_what_is_kept_and_the_day(document, ledger):
    document.perform(_longer(document))
    fresh = ledger_buildup.build_up_rows(document.shown, document.before, ledger._words())
    assert ledger._upper.rows == fresh
    document._today = lambda: TODAY + timedelta(days=7)
    document.refresh_today()
    assert ledger._upper.rows != fresh


def test_stores_of_the_plan_are_reckoned_once_in_a_drag(document):
    kept = ledger_of(document.before)
    for s in range(1, 8):
        document.try_edit(_slower(document, 60.0 * s))
        assert ledger_of(document.shown) is not kept
        assert ledger_of(document.before) is kept


def test_what_a_drag_changes_comes_first_though_nothing_is_selected(document, ledger):
    ledger.resize(300, 500)
    ledger.show()
    later = document.project.race.start + timedelta(minutes=45)
    assert ledger._upper.y() < ledger._lower.y()
    document.try_edit(MoveStart(later))
    QApplication.processEvents()
    assert ledger._lower.y() < ledger._upper.y()
