"""What each week adds up to."""

from datetime import UTC, date, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from ultraplanner_gui.engine.weeks import Role, standing, week_figures
from ultraplanner_gui.plan.block import Block, Done, Kind, Session, week_start
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner

RACE = Race("Race", datetime(2027, 5, 22, 6, tzinfo=UTC), 14 * 3600.0)
MONDAY = date(2027, 5, 17)


def session(weeks_before, weekday, km, kind=Kind.EASY, **more):
    day = MONDAY + timedelta(days=weekday - 7 * weeks_before)
    more.setdefault("duration_s", km * 400.0)
    return Session(f"{day}-{kind.name}-{km}", day, kind, km * 1000.0, **more)


def project(*sessions, first_week=6, cutbacks=(), taper_weeks=2, weekly_m=40_000.0):
    block = Block(tuple(sorted(sessions, key=lambda s: s.day)), first_week, cutbacks, taper_weeks)
    return Project(RACE, runner=Runner(weekly_m=weekly_m), block=block)


def weeks_of(plan):
    return {week.to_go: week for week in week_figures(plan)}


def test_weeks_run_without_gaps_from_the_first_to_the_race():
    weeks = week_figures(project(session(6, 1, 10), session(0, 5, 100, Kind.RACE)))
    assert [week.to_go for week in weeks] == [6, 5, 4, 3, 2, 1, 0]
    assert weeks[0].start == MONDAY - timedelta(weeks=6)
    assert weeks[3].distance_m == 0.0


def test_an_empty_block_has_no_weeks():
    assert week_figures(project()) == ()


def test_earlier_sessions_open_earlier_weeks():
    assert week_figures(project(session(8, 1, 10)))[0].to_go == 8


def test_roles_follow_cutbacks_and_taper():
    weeks = weeks_of(project(session(6, 1, 10), cutbacks=(5,), taper_weeks=3))
    assert [weeks[n].role for n in (6, 5, 4, 2, 1, 0)] == [
        Role.LOADING,
        Role.CUTBACK,
        Role.LOADING,
        Role.TAPER,
        Role.TAPER,
        Role.RACE,
    ]


def test_the_race_counts_in_no_figure():
    race = session(0, 5, 100, Kind.RACE, climb_m=4000.0, carb_g_per_h=60.0)
    week = weeks_of(project(race))[0]
    assert week.sessions == (race.key,)
    assert (week.distance_m, week.longest_m, week.climb_m, week.on_feet_s) == (0, 0, 0, 0)
    assert (week.carb_g, week.carb_g_per_h, week.load) == (0, 0, 0)


def test_done_counts_as_done_and_missed_as_nothing():
    done = replace(
        session(6, 1, 10), done=Done(12_000.0, 4800.0, 150.0, 140.0, effort=5, carb_g=40.0)
    )
    missed = replace(session(6, 3, 8), missed=True)
    week = weeks_of(project(done, missed, session(6, 5, 20, carb_g_per_h=60.0)))[6]
    assert week.planned_m == 38_000.0
    assert week.done_m == 12_000.0
    assert week.distance_m == 32_000.0
    assert week.longest_m == 20_000.0
    assert week.carb_g == pytest.approx(40.0 + 60.0 * 8000.0 / 3600.0)
    assert week.carb_g_per_h == 60.0
    assert week.load == pytest.approx(5 * 80 + 3 * 8000 / 60)
    assert week.climb_m == 150.0
    assert week.drop_m == 140.0


def test_strength_and_cross_training_count_time_but_no_distance():
    gym = session(6, 1, 5, Kind.STRENGTH, duration_s=2400.0, effort=5)
    bike = session(6, 3, 30, Kind.CROSS, duration_s=3600.0, effort=2, climb_m=300.0)
    week = weeks_of(project(gym, bike))[6]
    assert (week.distance_m, week.planned_m, week.longest_m, week.climb_m) == (0, 0, 0, 0)
    assert week.on_feet_s == 6000.0
    assert week.load == 5 * 40 + 2 * 60


def test_the_yardstick_passes_over_cutback_weeks():
    plan = project(
        session(6, 1, 44), session(5, 1, 33), session(4, 1, 48), cutbacks=(5,), weekly_m=40_000.0
    )
    weeks = weeks_of(plan)
    assert weeks[6].last_loading_m == 40_000.0
    assert weeks[5].last_loading_m == 44_000.0
    assert weeks[4].last_loading_m == 44_000.0
    assert weeks[4].ceiling_m == pytest.approx(48_400.0)
    assert weeks[3].last_loading_m == 48_000.0


def test_a_runner_without_a_usual_week_gives_no_first_yardstick():
    weeks = weeks_of(project(session(6, 1, 30), weekly_m=0.0))
    assert weeks[6].last_loading_m is None
    assert weeks[6].ceiling_m is None
    assert weeks[5].last_loading_m == 30_000.0


def test_a_missed_week_sets_no_yardstick_and_several_lower_it():
    # 80 % after two weeks, 65 % after three: common practice, no source.
    missed = [replace(session(n, 1, 40), missed=True) for n in (5, 4, 3)]
    weeks = weeks_of(project(session(6, 1, 40), *missed, session(2, 1, 10)))
    assert [weeks[n].last_loading_m for n in (5, 4, 3, 2)] == [40e3, 40e3, 32e3, 26e3]


def test_weeks_before_the_block_set_no_yardstick():
    weeks = weeks_of(project(session(7, 5, 12), session(6, 1, 40)))
    assert weeks[6].last_loading_m == 40_000.0


@given(st.integers(0, 6), st.integers(0, 60))
def test_every_session_falls_into_the_week_that_holds_its_day(first_weekday, days_before):
    plan = replace(
        project(Session("a", RACE.day - timedelta(days=days_before), Kind.EASY, 5000.0, 1800.0)),
        first_weekday=first_weekday,
    )
    week = next(w for w in week_figures(plan) if "a" in w.sessions)
    assert week.start == week_start(plan.block.sessions[0].day, first_weekday)


def test_standing_is_the_runners_own_until_a_week_is_over():
    plan = project(session(6, 1, 42))
    today = MONDAY - timedelta(weeks=6)
    assert standing(plan, week_figures(plan), today) == (40_000.0, plan.runner.longest_m)


def test_standing_follows_what_was_done():
    sessions = [
        replace(session(n, 5, km), done=Done(km * 1000.0, 3600.0))
        for n, km in ((6, 42), (5, 45), (4, 30))
    ]
    plan = project(*sessions, cutbacks=(4,))
    today = MONDAY - timedelta(weeks=3)
    assert standing(plan, week_figures(plan), today) == (45_000.0, 45_000.0)


def test_standing_forgets_a_long_run_after_thirty_days():
    sessions = [
        replace(session(n, 5, km), done=Done(km * 1000.0, 3600.0)) for n, km in ((6, 30), (2, 20))
    ]
    plan = project(*sessions)
    first = plan.block.sessions[0].day
    weeks = week_figures(plan)
    assert standing(plan, weeks, first + timedelta(days=30))[1] == 30_000.0
    assert standing(plan, weeks, first + timedelta(days=31))[1] == 20_000.0
