"""What would put a broken rule right, as the ledger says it while a session is in the hand."""

from datetime import date, timedelta

import pytest
from msgspec.structs import replace

from ultraplanner_gui.buildup.nearest_day import Offer
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.edits.block import MoveSession
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.widgets.rows import CheckRow, Link, Sentence
from ultraplanner_gui.window.ledger_buildup import session_rows
from ultraplanner_gui.wording.words import Words

TODAY = date(2027, 4, 5)


@pytest.fixture(scope="module")
def dragged():
    """The longest run ahead, on trial on the Friday of the week before."""
    before = derive(demo_project(TODAY), None, TODAY)
    runs = [s for s in before.project.block.sessions if s.is_open and s.kind is Kind.LONG]
    run = max(runs, key=lambda s: s.distance_m)
    edit = MoveSession(run.key, run.day - timedelta(days=8))
    now = derive(edit.apply(before.project), before, before.today)
    return before, now, run


def _rows(dragged, offer, **more):
    before, now, run = dragged
    return session_rows(now, before, run.key, Words(), offer, **more)


def _text(rows):
    return [row.text for row in rows if isinstance(row, (Link, Sentence))]


def test_the_mend_stands_right_under_the_rules_that_are_broken(dragged):
    run = dragged[2]
    rows = _rows(dragged, Offer(run.day + timedelta(days=7)))
    place = next(k for k, row in enumerate(rows) if isinstance(row, Link))
    states = [row.state for row in rows if isinstance(row, CheckRow)]
    above = [row.state for row in rows[:place] if isinstance(row, CheckRow)]
    assert above == [state for state in states if state is State.BREAKS] != []
    assert rows[place].text.endswith("would hold; H puts it there")


def test_each_offer_names_what_h_does(dragged):
    before, _, run = dragged
    other = next(s for s in before.project.block.sessions if s.day > run.day and s.kind.is_run)
    offers = {
        "H puts it there": Offer(run.day + timedelta(days=7)),
        "H swaps them": Offer(other.day, other.key),
        "H makes it so": Offer(run.day, length=20_000.0),
        "H puts it back": Offer(run.day, is_home=True),
        "only as long as it was": Offer(run.day, length=20_000.0, is_home=True),
    }
    for said, offer in offers.items():
        assert [text for text in _text(_rows(dragged, offer)) if said in text], said


def test_what_is_new_is_left_out_where_nothing_holds(dragged):
    before, now, run = dragged
    without = replace(before.project, block=before.project.block.without(run.key))
    bare = replace(before, project=without)
    texts = _text(session_rows(now, bare, run.key, Words(), Offer(run.day, is_home=True)))
    assert any("H leaves it out" in text for text in texts)


def test_several_selected_are_counted_with_what_they_come_to(dragged):
    _, now, run = dragged
    others = [s for s in now.project.block.sessions if s.is_open and s.kind is Kind.EASY][:2]
    chosen = (run, *others)
    total = Words().distance(sum(s.distance_m for s in chosen))
    texts = _text(_rows(dragged, None, selected=tuple(s.key for s in chosen)))
    assert any(text.startswith("3 sessions are selected") and total in text for text in texts)
