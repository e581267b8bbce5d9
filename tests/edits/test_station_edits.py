"""What hands do to stations, stops and the start."""

import math
from datetime import timedelta

import pytest
from msgspec.structs import replace

from tests.edits.made import PROJECT, RACE
from ultraplanner_gui.edits.stations import MoveStart, MoveStation, SetStop
from ultraplanner_gui.plan.message import PlanError


def test_moved_station_takes_its_section_end_and_its_cutoff_along():
    course = MoveStation("ford", 13_500.0).apply(PROJECT).course

    assert course.station("ford").at_m == 13_500.0
    assert course.end_of(course.sections[0]) == 13_500.0
    assert course.station("ford").cutoff_s == PROJECT.course.station("ford").cutoff_s
    assert course.station("barn") is PROJECT.course.station("barn")


@pytest.mark.parametrize("at_m", [0.0, -5.0, 50_000.0, math.nan, math.inf, 19_950.0, 31_000.0])
def test_station_stays_on_the_course_and_between_its_neighbours(at_m):
    with pytest.raises(PlanError):
        MoveStation("ford", at_m).apply(PROJECT)


def test_stop_is_set_and_all_else_of_the_station_stays():
    ford = PROJECT.course.station("ford")

    after = SetStop("ford", 900.0).apply(PROJECT).course.station("ford")

    assert after == replace(ford, stop_s=900.0)


@pytest.mark.parametrize("stop_s", [-1.0, math.nan, math.inf, 24 * 3600.0 + 1.0])
def test_stop_out_of_range_is_refused(stop_s):
    with pytest.raises(PlanError, match="stop"):
        SetStop("ford", stop_s).apply(PROJECT)


def test_start_moves_on_its_day_and_the_race_session_stays_on_it():
    start = PROJECT.race.start.replace(hour=5, minute=30)

    after = MoveStart(start).apply(PROJECT)

    assert after.race.start == start
    assert after.race.clock(3_600.0) == start + timedelta(hours=1)
    assert [s.day for s in after.block.sessions if s.key == RACE.key] == [RACE.day]


def test_start_does_not_change_its_day_by_hand():
    for start in (
        PROJECT.race.start - timedelta(days=1),
        PROJECT.race.start.replace(tzinfo=None),
    ):
        with pytest.raises(PlanError, match="day"):
            MoveStart(start).apply(PROJECT)


@pytest.mark.parametrize(
    "edit",
    [MoveStation("barn", 30_000.0), SetStop("barn", 300.0), MoveStart(PROJECT.race.start)],
)
def test_what_changes_nothing_gives_the_project_back(edit):
    assert edit.apply(PROJECT) is PROJECT
