from datetime import timedelta

import pytest
from msgspec.structs import replace

from tests.edits.made import BLOCK, DONE, PROJECT
from ultraplanner_gui.edits.better_block import TakeBetterBlock
from ultraplanner_gui.edits.block import ChangeSession, MarkDone, MarkMissed, MoveSession
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.message import PlanError


def longer(block):
    return replace(
        block,
        sessions=tuple(
            s if s.kind is Kind.RACE else replace(s, distance_m=s.distance_m + 1_000.0)
            for s in block.sessions
        ),
    )


EDIT = TakeBetterBlock(BLOCK, longer(BLOCK))


def test_it_replaces_the_block_the_search_began_with():
    assert EDIT.fits(PROJECT)
    assert EDIT.apply(PROJECT).block == longer(BLOCK)


def test_marks_made_meanwhile_are_kept():
    marked = MarkDone("easy", DONE).apply(PROJECT)
    taken = EDIT.apply(marked).block
    assert taken.session("easy") == marked.block.session("easy")
    others = [s.key for s in BLOCK.sessions if s.day != marked.block.session("easy").day]
    assert all(taken.session(key) == longer(BLOCK).session(key) for key in others)
    assert EDIT.fits(MarkMissed("easy").apply(PROJECT))


def test_a_change_of_sessions_meanwhile_drops_the_offer():
    session = BLOCK.session("easy")
    moved = MoveSession("easy", session.day + timedelta(days=2)).apply(PROJECT)
    resized = ChangeSession(replace(session, distance_m=1_234.0)).apply(PROJECT)
    for changed in (moved, resized):
        assert not EDIT.fits(changed)
        with pytest.raises(PlanError, match="build it again"):
            EDIT.apply(changed)
