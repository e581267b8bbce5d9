from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from tests.edits.made import DONE, PLANNED, PROJECT, RACE, RACE_DAY, RUN, RUN_DAY
from ultraplanner_gui.edits.block import (
    AddSession,
    ChangeSession,
    MarkDone,
    MarkMissed,
    MoveSession,
    RemoveSession,
    ReplaceBlock,
)
from ultraplanner_gui.plan.block import Block, Kind
from ultraplanner_gui.plan.message import PlanError


def block_after(*edits):
    project = PROJECT
    for edit in edits:
        project = edit.apply(project)
    return project.block


@given(st.integers(-200, 60))
def test_moved_session_stands_in_order_of_days(by):
    to = RUN_DAY + timedelta(days=by)

    block = block_after(MoveSession("easy", to))

    days = [s.day for s in block.sessions]
    assert days == sorted(days)
    assert block.session("easy") == replace(PLANNED, day=to)


def test_session_moved_to_its_own_day_changes_nothing():
    assert MoveSession("easy", RUN_DAY).apply(PROJECT) is PROJECT


def test_the_race_stays_on_its_day():
    earlier = RACE_DAY - timedelta(days=1)

    for edit in (MoveSession("race", earlier), ChangeSession(replace(RACE, day=earlier))):
        with pytest.raises(PlanError, match="stays on its day"):
            edit.apply(PROJECT)


def test_the_race_is_neither_removed_nor_doubled_nor_made_a_run():
    for edit in (
        RemoveSession("race"),
        AddSession(replace(RACE, key="")),
        ChangeSession(replace(RACE, kind=Kind.LONG)),
        ChangeSession(replace(PLANNED, kind=Kind.RACE)),
    ):
        with pytest.raises(PlanError, match="race"):
            edit.apply(PROJECT)


def test_done_session_stays_on_the_day_it_was_run():
    with pytest.raises(PlanError, match="stays on the day it was run"):
        MoveSession("run", RUN_DAY).apply(PROJECT)


@pytest.mark.parametrize("year", [1, 1899, 2201, 9999])
def test_day_no_file_would_take_back_is_refused(year):
    far = date(year, 6, 1)

    for edit in (
        MoveSession("easy", far),
        AddSession(replace(PLANNED, day=far)),
        ChangeSession(replace(PLANNED, day=far)),
        ReplaceBlock(Block((replace(PLANNED, day=far),))),
    ):
        with pytest.raises(PlanError, match="between the years"):
            edit.apply(PROJECT)


@given(st.lists(st.sampled_from(("", "easy", "run", "session")), max_size=6))
def test_added_sessions_get_keys_of_their_own(wishes):
    block = block_after(*(AddSession(replace(PLANNED, key=wish)) for wish in wishes))

    assert len({s.key for s in block.sessions}) == len(PROJECT.block.sessions) + len(wishes)


def test_added_and_removed_session_leaves_the_block_as_it_was():
    block = block_after(AddSession(replace(PLANNED, key="new")), RemoveSession("new"))

    assert block == PROJECT.block


def test_done_and_missed_exclude_each_other():
    done = block_after(MarkMissed("easy"), MarkDone("easy", DONE)).session("easy")
    missed = block_after(MarkMissed("run")).session("run")
    neither = block_after(MarkMissed("easy"), MarkDone("easy", None)).session("easy")

    assert (done.done, done.missed) == (DONE, False)
    assert (missed.done, missed.missed) == (None, True)
    assert neither == PLANNED


def test_longest_race_there_is_can_be_marked_done():
    hours = 240 * 3600.0
    race = replace(RACE, duration_s=hours, distance_m=560_000.0)

    block = block_after(ChangeSession(race), MarkDone("race", replace(DONE, duration_s=hours)))

    assert block.session("race").actual.duration_s == hours


@pytest.mark.parametrize("effort", [-1, 11])
def test_effort_off_the_ten_steps_is_refused(effort):
    with pytest.raises(PlanError, match="Effort"):
        ChangeSession(replace(PLANNED, effort=effort)).apply(PROJECT)
    with pytest.raises(PlanError, match="Effort"):
        MarkDone("easy", replace(DONE, effort=effort)).apply(PROJECT)


def test_unknown_session_is_refused_by_every_edit():
    for edit in (
        MoveSession("gone", RUN_DAY),
        ChangeSession(replace(RUN, key="gone")),
        RemoveSession("gone"),
        MarkDone("gone", DONE),
        MarkMissed("gone"),
    ):
        with pytest.raises(PlanError, match="no longer in the build-up"):
            edit.apply(PROJECT)
