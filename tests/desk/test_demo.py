"""The demo keeps its own rules and moves with the day."""

from datetime import date, timedelta

import pytest

from ultraplanner_gui.desk.demo import LIMIT_S, WEEKS_IN_ALL, WEEKS_TO_GO, demo_project
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.block import Kind

DAYS = [
    date(2026, 11, 25),
    date(2027, 2, 28),
    date(2028, 2, 29),
    date(2026, 6, 1),
    date(2026, 6, 7),
]


@pytest.fixture(params=DAYS, ids=str)
def outlook(request):
    return derive(demo_project(request.param), None, request.param)


def test_eighteen_weeks_with_the_race_eleven_ahead(outlook):
    assert len(outlook.weeks) == WEEKS_IN_ALL
    assert [w.to_go for w in outlook.weeks] == list(range(WEEKS_IN_ALL - 1, -1, -1))
    this_week = next(
        w for w in outlook.weeks if w.start <= outlook.today < w.start + timedelta(days=7)
    )
    assert this_week.to_go == WEEKS_TO_GO


def test_what_lies_behind_is_done_or_missed_and_nothing_ahead_is(outlook):
    for session in outlook.project.block.sessions:
        assert session.is_open == (session.day >= outlook.today)


def test_no_rule_of_ours_breaks(outlook):
    assert [str(c.text) for c in outlook.checks if c.state is State.BREAKS] == []


def test_every_cutoff_is_met_with_an_hour_to_spare(outlook):
    assert all(s.to_cutoff_s > 3600.0 for s in outlook.sections if s.to_cutoff_s is not None)
    assert outlook.sections[-1].cutoff_s == LIMIT_S


def test_sections_add_up_to_the_course(outlook):
    profile = outlook.profile
    assert sum(s.length_m for s in outlook.sections) == pytest.approx(profile.length_m)
    assert sum(s.climb_m for s in outlook.sections) == pytest.approx(profile.ascent_m)
    assert sum(s.drop_m for s in outlook.sections) == pytest.approx(profile.descent_m)
    stops_s = sum(s.stop_s for s in outlook.project.course.stations)
    moving_s = sum(s.moving_s for s in outlook.sections)
    assert moving_s + stops_s == pytest.approx(outlook.project.race.goal_s)


def test_fuel_by_leg_and_by_hour_adds_up_to_the_race(outlook):
    fuel = outlook.fuel
    assert sum(leg.intake.carb_g for leg in fuel.legs) == pytest.approx(fuel.total.carb_g)
    assert sum(hour.intake.carb_g for hour in fuel.hours) == pytest.approx(fuel.total.carb_g)


def test_the_tune_up_is_no_longer_than_the_longest_run(outlook):
    runs = outlook.project.block.sessions
    tune_up = next(s for s in runs if s.kind is Kind.TUNE_UP)
    longest = max(s.distance_m for s in runs if s.kind in (Kind.LONG, Kind.REHEARSAL))
    assert tune_up.distance_m <= longest
