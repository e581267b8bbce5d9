"""Sessions at home that stand in for a stretch of the race."""

from datetime import date

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from ultraplanner_gui.engine.pacing import pace_for_finish
from ultraplanner_gui.engine.profile import build_profile
from ultraplanner_gui.engine.stand_in import (
    NO_DESCENT,
    STEEPER,
    STEP_DOWNS,
    Stretch,
    as_session,
    stand_ins,
    stretch_of,
)
from ultraplanner_gui.plan.block import Ground, Kind, Session
from ultraplanner_gui.plan.course import Course, Line
from ultraplanner_gui.plan.ground import GroundAtHand, GroundKind
from ultraplanner_gui.plan.runner import Runner

RUNNER = Runner(easy_mps=2.5)
MILL = GroundAtHand("mill", GroundKind.TREADMILL, most_gradient=0.15)
HILL = GroundAtHand("hill", GroundKind.HILL, "Hill", 600.0, 66.0)
STAIRS = GroundAtHand("stairs", GroundKind.STAIRS, "Stairs", 40.0, 16.0)
RAMP = GroundAtHand("ramp", GroundKind.RAMP, "Car park", 150.0, 9.0)
PATH = GroundAtHand("path", GroundKind.PATH, "Canal")
LOOP = GroundAtHand(
    *("loop", GroundKind.LOOP, "Wood"),
    distance_m=(0.0, 1_000.0, 2_000.0),
    elevation_m=(0.0, 110.0, 0.0),
)
MIDDLES = (-0.20, -0.11, -0.05, 0.0, 0.05, 0.11, 0.20)


def stretch(up_s=3_000.0, down_s=1_800.0, level_s=1_200.0):
    """A stretch at 11 % up and down with some level ground."""
    return Stretch(
        12_000.0,
        (0.0, down_s, 0.0, level_s, 0.0, up_s, 0.0),
        MIDDLES,
        (0.0, 0.0, 0.0, 0.0, 0.0, up_s / 6.0, 0.0),
        (0.0, down_s / 3.0, 0.0, 0.0, 0.0, 0.0, 0.0),
    )


def by_grounds(found):
    return {s.grounds: s for s in found}


def test_a_treadmill_gives_the_climb_and_says_that_it_gives_no_descent():
    (mill,) = stand_ins(stretch(), [MILL], RUNNER)
    assert mill.climb_m > 0
    assert mill.drop_m == 0
    assert mill.cannot[0].template == NO_DESCENT
    assert mill.cannot[0].args[0].value == pytest.approx(600.0)
    # One set of step-downs for 200 m of drop, two to six: own choice.
    assert (mill.cannot[1].template, mill.cannot[1].args) == (STEP_DOWNS, (3, 15))
    # What goes down is 30 % of the time asked.
    assert mill.match == pytest.approx(4_200 / 6_000, abs=0.01)


def test_what_comes_down_a_hill_has_gone_up_it():
    for ground in (HILL, STAIRS, RAMP):
        (session,) = stand_ins(stretch(), [ground], RUNNER)
        up, down = session.repeats
        assert (up.count, up.gradient) == (down.count, -down.gradient)
        assert session.climb_m == session.drop_m == up.count * ground.climb_m
        assert up.count <= 40


def test_a_hill_of_the_races_gradient_and_a_path_match_best():
    found = stand_ins(stretch(), [HILL, PATH, RAMP], RUNNER)
    assert found[0].grounds == ("hill", "path")
    assert found[0].match > 0.85
    assert [s.match for s in found] == sorted((s.match for s in found), reverse=True)


def test_beside_a_treadmill_a_hill_gives_the_descents():
    both = by_grounds(stand_ins(stretch(), [MILL, HILL, PATH], RUNNER))[("hill", "mill", "path")]
    down_s = sum(r.count * r.each_s for r in both.repeats if r.gradient < 0)
    up_s = sum(r.count * r.each_s for r in both.repeats if r.gradient > 0)
    assert down_s == pytest.approx(1_800.0, abs=300.0)
    assert up_s == pytest.approx(3_000.0, abs=300.0)


def test_a_loop_is_run_in_laps():
    (loop,) = stand_ins(stretch(), [LOOP], RUNNER)
    (lap,) = loop.repeats
    assert (lap.climb_m, lap.drop_m) == (110.0, 110.0)
    assert loop.distance_m == lap.count * 2_000.0
    assert loop.time_s == pytest.approx(6_000.0, rel=0.2)


def test_steeper_ground_than_there_is_is_named():
    steep = replace(stretch(), time_s=(0, 0, 0, 0, 0, 0, 3_000.0), climb_m=(0,) * 6 + (700.0,))
    (mill,) = stand_ins(steep, [MILL], RUNNER)
    assert [a.value for a in mill.cannot[-1].args] == pytest.approx([20.0, 15.0])
    assert mill.cannot[-1].template == STEEPER


def test_a_runner_who_climbs_slowly_climbs_less():
    slow = replace(RUNNER, hill_m_per_h=300.0)
    fast, slower = (stand_ins(stretch(), [MILL], r)[0] for r in (RUNNER, slow))
    assert slower.climb_m < fast.climb_m
    # 3000 s at 300 m an hour.
    assert slower.climb_m == pytest.approx(250.0, rel=0.02)


@given(
    st.lists(st.sampled_from([MILL, HILL, STAIRS, RAMP, PATH, LOOP]), unique=True, max_size=6),
    st.floats(0.0, 20_000.0),
    st.floats(0.0, 20_000.0),
    st.floats(0.0, 20_000.0),
    st.floats(1_800.0, 14_400.0),
)
def test_sessions_keep_to_the_time_and_their_parts_add_up(grounds, up_s, down_s, level_s, most_s):
    for session in stand_ins(stretch(up_s, down_s, level_s), grounds, RUNNER, most_s):
        assert 0.0 <= session.match <= 1.0 + 1e-9
        assert session.time_s == pytest.approx(sum(r.count * r.each_s for r in session.repeats))
        assert session.time_s <= most_s * 1.2 + 1_200.0
        assert session.climb_m == pytest.approx(sum(r.count * r.climb_m for r in session.repeats))
        assert set(session.grounds) == {r.place for r in session.repeats}
        assert all(r.each_s > 0 and r.count > 0 for r in session.repeats)


def test_nothing_at_hand_gives_no_session():
    assert stand_ins(stretch(), [], RUNNER) == ()


def course(stop=False):
    along = np.linspace(0.0, 0.18, 400)
    height = 400.0 + 600.0 * np.abs(np.linspace(-1.0, 1.0, 400))
    return Course(Line(46.0 + along, np.full(400, 8.0), height), 20_000.0)


def test_a_stretch_takes_the_time_of_the_plan_and_the_climb_of_the_profile():
    profile = build_profile(course())
    pace = pace_for_finish(profile, 4 * 3_600.0, RUNNER)
    whole = stretch_of(profile, pace, 0.0, profile.length_m)
    assert whole.whole_s == pytest.approx(4 * 3_600.0, rel=0.01)
    assert sum(whole.climb_m) == pytest.approx(profile.ascent_m, rel=0.1)
    climb = stretch_of(profile, pace, 11_000.0, 19_000.0)
    assert sum(climb.climb_m) > 10 * sum(climb.drop_m)
    assert climb.whole_s < whole.whole_s


def test_a_session_run_as_a_stand_in_carries_its_parts():
    session = Session("h", date(2027, 3, 1), Kind.HILLS, 10_000.0, 4_000.0, 700.0, 700.0)
    (mill,) = stand_ins(stretch(), [MILL], RUNNER)
    run = as_session(mill, session)
    assert (run.repeats, run.duration_s) == (mill.repeats, mill.time_s)
    assert (run.ground, run.drop_m, run.key) == (Ground.RISING, 0.0, "h")
