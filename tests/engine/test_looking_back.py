from datetime import date
from itertools import permutations
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from tests.engine.made_recordings import run_of, standing, with_hole
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.engine import looking_back
from ultraplanner_gui.engine.looking_back import Cause, look_back
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.exchange.gpx_in import read_course, read_recording
from ultraplanner_gui.plan.message import PlanError

TODAY = date(2027, 4, 5)
DATA = Path(__file__).resolve().parents[3] / "shared" / "data" / "recordings"
RUNS = sorted(DATA.glob("timed-*.gpx.gz")) if DATA.is_dir() else []


@pytest.fixture(scope="module")
def outlook():
    return derive(demo_project(TODAY), None, TODAY)


def adds_up(back):
    late = float((back.real_s[-1] - back.real_s[0]) - (back.planned_s[-1] - back.planned_s[0]))
    assert back.minutes.total_s == pytest.approx(late, abs=1e-6)
    assert sum(s.minutes.total_s for s in back.sections) == pytest.approx(late, abs=1e-6)
    for section in back.sections:
        late = section.real_s - section.planned_s
        assert section.minutes.total_s == pytest.approx(late, abs=1e-6)


def test_a_race_run_as_planned_lost_no_minutes(outlook):
    back = look_back(outlook, run_of(outlook))
    adds_up(back)
    assert back.is_whole
    assert abs(back.minutes.total_s) < 60.0
    assert abs(back.minutes.stops_s) < 300.0
    for section, planned in zip(back.sections, outlook.sections, strict=True):
        assert section.real_arrive_s == pytest.approx(planned.arrive_s, abs=60.0)


def test_a_race_a_tenth_slower_lost_it_to_speed(outlook):
    back = look_back(outlook, run_of(outlook, slower=1.1))
    adds_up(back)
    assert back.minutes.total_s == pytest.approx(0.1 * outlook.target.finish_s, rel=0.02)
    assert back.minutes.speed_s > 0.6 * back.minutes.total_s


def test_standing_is_a_stop_and_nothing_else(outlook):
    run = run_of(outlook)
    at = len(run.elapsed_s) // 3
    before, after = look_back(outlook, run), look_back(outlook, standing(run, at, 1_200.0))
    adds_up(after)
    assert after.minutes.stops_s - before.minutes.stops_s == pytest.approx(1_200.0, abs=60.0)


@settings(max_examples=12)
@given(st.floats(0.0, 0.5), st.floats(0.1, 0.5), st.floats(0.8, 1.3))
def test_minutes_add_up_for_whatever_was_recorded(outlook, from_share, covered, slower):
    length_m = outlook.project.course.length_m
    start_m, end_m = from_share * length_m, min(1.0, from_share + covered) * length_m
    back = look_back(outlook, run_of(outlook, start_m, end_m, slower))
    adds_up(back)
    assert back.unexplained < 0.05
    assert back.edge_m[0] == pytest.approx(start_m, abs=150.0)
    assert back.edge_m[-1] == pytest.approx(end_m, abs=150.0)


def test_a_race_that_ended_early_has_no_arrival_beyond(outlook):
    end_m = 0.4 * outlook.project.course.length_m
    back = look_back(outlook, run_of(outlook, 0.0, end_m))
    adds_up(back)
    assert not back.is_whole
    assert back.sections[-1].real_arrive_s is None
    assert 0.0 < back.sections[-1].share <= 1.0
    assert len(back.sections) < len(outlook.sections)


def test_a_hole_in_the_recording_is_said_and_still_adds_up(outlook):
    run = run_of(outlook)
    third = len(run.elapsed_s) // 3
    back = look_back(outlook, with_hole(run, third, third + 200))
    assert back.has_hole
    adds_up(back)
    assert not look_back(outlook, run).has_hole


def test_time_in_hand_is_what_there_really_was(outlook):
    back = look_back(outlook, run_of(outlook, slower=1.05))
    for section, planned in zip(back.sections, outlook.sections, strict=True):
        if planned.in_hand_s is not None:
            late_s = section.real_arrive_s - planned.arrive_s
            assert section.in_hand_s == pytest.approx(planned.in_hand_s - late_s)


def test_no_cause_gains_by_being_named_first():
    planned = np.array([100.0, 200.0])
    ratios = {
        Cause.SPEED: np.array([1.1, 0.9]),
        Cause.GROUND: np.array([1.2, 1.0]),
        Cause.FADE: np.array([1.0, 1.3]),
        Cause.DARK: np.array([1.05, 1.05]),
    }
    told = [
        looking_back._shared_out(planned, {cause: ratios[cause] for cause in order})
        for order in permutations(ratios)
    ]
    for one in told[1:]:
        for cause in ratios:
            np.testing.assert_allclose(one[cause], told[0][cause])
    whole = planned * np.prod(list(ratios.values()), axis=0) - planned
    np.testing.assert_allclose(sum(told[0].values()), whole)


def test_two_causes_share_what_they_do_together():
    """The game of two players: each gets its own and half of the rest (Shapley 1953)."""
    ratios = {Cause.SPEED: np.array([1.5]), Cause.FADE: np.array([2.0])}
    shares = looking_back._shared_out(np.array([100.0]), ratios)
    assert shares[Cause.SPEED] == pytest.approx(0.5 * (50.0 + (300.0 - 200.0)))
    assert shares[Cause.FADE] == pytest.approx(0.5 * (100.0 + (300.0 - 150.0)))


def test_another_course_is_refused(outlook):
    run = run_of(outlook, 0.0, 20_000.0)
    elsewhere = replace(run, line=replace(run.line, latitude_deg=run.line.latitude_deg + 3.0))
    with pytest.raises(PlanError, match="not of this course"):
        look_back(outlook, elsewhere)


def real_run(path):
    """A recorded run, and the outlook of its line planned a tenth faster than it was run."""
    run, plan = read_recording(path), demo_project(TODAY)
    real_s = float(run.elapsed_s[-1])
    race = replace(plan.race, start=run.start, goal_s=0.9 * real_s, limit_s=None)
    return run, derive(replace(plan, course=read_course(path), race=race), None, TODAY)


@pytest.mark.skipif(not RUNS, reason="the recordings of ../shared/data are not here")
@pytest.mark.parametrize("path", RUNS, ids=lambda path: path.name.split(".")[0])
def test_real_runs_leave_a_twentieth_unexplained_at_most(path):
    run, outlook = real_run(path)
    count = len(run.elapsed_s)
    early = with_hole(run, round(0.6 * count), count)
    for some in (run, early, with_hole(run, round(0.4 * count), round(0.5 * count))):
        back = look_back(outlook, some)
        adds_up(back)
        assert back.unexplained < 0.05
        assert back.off_share < 0.05
