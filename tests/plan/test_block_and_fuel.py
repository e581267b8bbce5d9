from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from ultraplanner_gui.plan.block import Block, Done, Kind, Session
from ultraplanner_gui.plan.fuel import FuelItem, FuelPlan
from ultraplanner_gui.plan.message import PlanError

MONDAY = date(2027, 3, 1)
PLANNED = Session(
    "long", MONDAY, Kind.LONG, 30_000.0, 3 * 3600.0, 900.0, 850.0, effort=4, carb_g_per_h=60.0
)
RUN = Done(27_000.0, 10_000.0, 800.0, 790.0, 6, 150.0)


def test_what_counts_is_the_plan_until_it_is_run():
    assert PLANNED.is_open
    assert PLANNED.actual == Done(30_000.0, 3 * 3600.0, 900.0, 850.0, 4, carb_g=180.0)


def test_what_counts_once_run_is_what_was_run():
    session = replace(PLANNED, done=RUN)

    assert not session.is_open
    assert session.actual is session.done


def test_what_counts_of_a_missed_session_is_nothing():
    session = replace(PLANNED, missed=True)

    assert not session.is_open
    assert session.actual == Done(0.0, 0.0, effort=0)


def sessions(offsets):
    return [
        Session(f"s{k}", MONDAY + timedelta(days=d), Kind.EASY, 8_000.0, 3_000.0)
        for k, d in enumerate(offsets)
    ]


@given(st.lists(st.integers(0, 60), min_size=1, max_size=20), st.integers(0, 60), st.data())
def test_sessions_stay_in_order_of_days_however_they_move(offsets, to, data):
    block = Block()
    for session in sessions(offsets):
        block = block.with_new(session)
    moved = data.draw(st.sampled_from(block.sessions))

    after = block.with_session(replace(moved, day=MONDAY + timedelta(days=to)))

    days = [s.day for s in after.sessions]
    assert days == sorted(days)
    assert {s.key for s in after.sessions} == {s.key for s in block.sessions}
    assert after.session(moved.key) in after.on(MONDAY + timedelta(days=to))


@given(st.lists(st.integers(0, 3), min_size=1, max_size=12))
def test_sessions_of_one_day_keep_the_order_they_came_in(offsets):
    block = Block()
    for session in sessions(offsets):
        block = block.with_new(session)

    for day in {s.day for s in block.sessions}:
        keys = [int(s.key[1:]) for s in block.on(day)]
        assert keys == sorted(keys)


def test_session_that_is_gone_is_said_to_be_gone():
    block = Block((PLANNED,)).without("long")

    for act in (block.session, block.without):
        with pytest.raises(PlanError, match="no longer"):
            act("long")


@given(st.lists(st.floats(0.0, 80_000.0), max_size=30), st.data())
def test_items_stay_in_order_of_time(times, data):
    plan = FuelPlan().with_items(tuple(FuelItem(f"i{k}", "gel", t) for k, t in enumerate(times)))
    if plan.items:
        moved = data.draw(st.sampled_from(plan.items))
        plan = plan.with_item(replace(moved, at_s=data.draw(st.floats(0.0, 80_000.0))))

    at = [i.at_s for i in plan.items]
    assert at == sorted(at)
    assert {i.key for i in plan.items} == {f"i{k}" for k in range(len(times))}


def test_what_is_a_run_and_what_is_hard():
    not_runs = {k for k in Kind if not k.is_run}

    assert not_runs == {Kind.STRENGTH, Kind.CROSS}
    assert not any(k.is_hard for k in (*not_runs, Kind.EASY, Kind.RECOVERY))
    assert all(k.is_hard and k.is_run for k in Kind if k.is_long)
