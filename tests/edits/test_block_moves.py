from datetime import timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from tests.edits.made import DONE, HILLS, PLANNED, PROJECT, RACE, RACE_DAY, RUN_DAY
from ultraplanner_gui.edits.block import MoveSession
from ultraplanner_gui.edits.block_moves import (
    CopySessions,
    LengthenSession,
    LockSessions,
    MoveSessions,
    PasteSessions,
    RepeatWeekly,
    ShiftWithRace,
    SwapSessions,
    SwapWeeks,
)
from ultraplanner_gui.edits.race import ChangeRace
from ultraplanner_gui.plan.block import Kind, weeks_to_go
from ultraplanner_gui.plan.message import PlanError

WEEK = timedelta(days=7)


def _with(*sessions, **block):
    made = replace(PROJECT.block, sessions=tuple(sorted(sessions, key=lambda s: s.day)), **block)
    return replace(PROJECT, block=made)


def _days(project):
    return {s.key: s.day for s in project.block.sessions}


def _race_moved(project, weeks):
    return ChangeRace(replace(project.race, start=project.race.start + weeks * WEEK))


def test_sessions_moved_together_keep_their_distance():
    after = MoveSessions(("easy", "hills"), -4).apply(PROJECT)

    moved, before = _days(after), _days(PROJECT)
    assert moved["hills"] - moved["easy"] == before["hills"] - before["easy"]
    assert moved["easy"] == RUN_DAY - timedelta(days=4)


@pytest.mark.parametrize("key", ["run", "race"])
def test_one_that_must_stay_keeps_all_of_them(key):
    with pytest.raises(PlanError):
        MoveSessions(("easy", key), 1).apply(PROJECT)


def test_locked_session_is_moved_neither_alone_nor_with_others():
    locked = LockSessions(("easy",), True).apply(PROJECT)

    for edit in (
        MoveSession("easy", RUN_DAY + WEEK),
        MoveSessions(("easy", "hills"), 1),
        SwapSessions("easy", "hills"),
    ):
        with pytest.raises(PlanError, match="locked"):
            edit.apply(locked)
    assert LockSessions(("easy",), False).apply(locked) == PROJECT


def test_copy_of_a_done_session_is_planned_only():
    after = CopySessions(("run",), 21).apply(PROJECT)

    (new,) = (s for s in after.block.sessions if s.key not in _days(PROJECT))
    assert (new.done, new.missed, new.distance_m) == (None, False, PLANNED.distance_m)
    assert new.day == PROJECT.block.session("run").day + timedelta(days=21)


def test_pasted_sessions_begin_on_the_day_and_keep_their_gaps():
    day = RUN_DAY + timedelta(days=3)

    after = PasteSessions((HILLS, replace(PLANNED, done=DONE)), day).apply(PROJECT)

    new = [s for s in after.block.sessions if s.key not in _days(PROJECT)]
    assert [(s.kind, s.day - day) for s in new] == [
        (Kind.EASY, timedelta(0)),
        (Kind.HILLS, HILLS.day - RUN_DAY),
    ]
    assert all(s.done is None for s in new)


def test_there_is_never_a_second_race():
    for edit in (CopySessions(("race",), -7), PasteSessions((RACE,), RUN_DAY)):
        with pytest.raises(PlanError, match="one race"):
            edit.apply(PROJECT)


def test_weekly_repeats_stop_at_the_race():
    after = RepeatWeekly(("easy",), 52).apply(PROJECT)

    new = [s.day for s in after.block.sessions if s.key not in _days(PROJECT)]
    assert new == [RUN_DAY + n * WEEK for n in range(1, 5)]
    assert RACE_DAY - new[-1] < WEEK


@given(st.floats(100.0, 60_000.0))
def test_lengthened_run_keeps_pace_and_climb_per_km(to):
    after = LengthenSession("easy", to).apply(PROJECT).block.session("easy")

    assert after.distance_m == pytest.approx(to)
    for figure in ("duration_s", "climb_m", "drop_m"):
        share = getattr(after, figure) / getattr(PLANNED, figure)
        assert share == pytest.approx(to / PLANNED.distance_m)


def test_strength_is_lengthened_in_seconds():
    strength = replace(PLANNED, kind=Kind.STRENGTH, distance_m=0.0, climb_m=0.0, drop_m=0.0)

    after = LengthenSession("easy", 3_600.0).apply(_with(strength, RACE))

    assert after.block.session("easy").duration_s == 3_600.0


def test_swapped_weeks_take_their_cutback_along_and_leave_what_is_locked():
    second = replace(PLANNED, key="second", day=RUN_DAY + WEEK)
    fast = replace(PLANNED, key="fast", day=RUN_DAY + timedelta(days=1), locked=True)
    first_week = weeks_to_go(RUN_DAY, RACE_DAY, 0)
    project = _with(PLANNED, second, fast, RACE, cutbacks=(first_week,))

    after = SwapWeeks(RUN_DAY, RUN_DAY + WEEK).apply(project)

    days = _days(after)
    assert (days["easy"], days["second"]) == (RUN_DAY + WEEK, RUN_DAY)
    assert days["fast"] == fast.day
    assert after.block.cutbacks == (first_week - 1,)


def test_race_week_and_weeks_with_something_done_are_not_swapped():
    for day in (RACE_DAY, PROJECT.block.session("run").day):
        with pytest.raises(PlanError):
            SwapWeeks(RUN_DAY, day).apply(PROJECT)


@given(st.integers(1, 30))
def test_build_up_moved_with_the_race_keeps_weekdays_and_weeks_to_go(weeks):
    after = ShiftWithRace(_race_moved(PROJECT, weeks), RUN_DAY).apply(PROJECT)

    for key in ("easy", "hills", "race"):
        before, now = PROJECT.block.session(key), after.block.session(key)
        assert now.day - before.day == weeks * WEEK
        assert weeks_to_go(now.day, after.race.day, 0) == weeks_to_go(before.day, RACE_DAY, 0)
    assert after.block.session("run").day == PROJECT.block.session("run").day


def test_build_up_moved_earlier_leaves_out_what_would_lie_behind():
    after = ShiftWithRace(_race_moved(PROJECT, -1), RUN_DAY).apply(PROJECT)

    assert "easy" not in _days(after)
    assert _days(after)["hills"] == HILLS.day - WEEK


def test_locked_session_keeps_its_day_when_the_race_moves():
    project = LockSessions(("hills",), True).apply(PROJECT)

    after = ShiftWithRace(_race_moved(PROJECT, 2), RUN_DAY).apply(project)

    assert _days(after)["hills"] == HILLS.day


def test_past_cutbacks_stay_on_their_weeks_when_the_race_moves():
    past = weeks_to_go(RUN_DAY - WEEK, RACE_DAY, 0)
    project = replace(PROJECT, block=replace(PROJECT.block, cutbacks=(past - 3, past)))

    after = ShiftWithRace(_race_moved(PROJECT, 2), RUN_DAY).apply(project)

    assert after.block.cutbacks == (past - 3, past + 2)


def test_race_moved_within_its_week_moves_no_session():
    change = ChangeRace(replace(PROJECT.race, start=PROJECT.race.start - timedelta(days=1)))

    assert ShiftWithRace(change, RUN_DAY).apply(PROJECT) == change.apply(PROJECT)
