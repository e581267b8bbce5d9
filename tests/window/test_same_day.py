"""Beside one session the ledger names what else there is on its day."""

from datetime import date

import pytest

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.widgets.rows import Sentence
from ultraplanner_gui.window.ledger_buildup import session_rows
from ultraplanner_gui.wording.words import Words

TODAY = date(2026, 11, 25)


@pytest.fixture(scope="module")
def outlook():
    return derive(demo_project(TODAY), None, TODAY)


def _said(outlook, session):
    rows = session_rows(outlook, outlook, session.key, Words())
    return [r.text for r in rows if isinstance(r, Sentence) and r.topic == "session day"]


def test_every_other_session_of_the_day_is_named_and_none_where_there_is_none(outlook):
    sessions = outlook.project.block.sessions
    counts = set()
    for session in sessions:
        others = [s for s in sessions if s.day == session.day and s.key != session.key]
        said = _said(outlook, session)
        counts.add(len(others))
        assert len(said) == (1 if others else 0)
        assert all(s.kind.value in said[0] for s in others)
    assert {0, 1} <= counts
