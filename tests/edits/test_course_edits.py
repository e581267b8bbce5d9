import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from tests.edits.made import COURSE, FINISH, FORD, PROJECT, STATIONS
from ultraplanner_gui.edits.course import (
    AddStation,
    ChangeStation,
    FreeAllTargets,
    MoveSectionEnd,
    NoteHardStretch,
    RemoveStation,
    ReplaceCourse,
    SetSectionTarget,
)
from ultraplanner_gui.plan.course import SHORTEST_SECTION_M, AidStation, sections_between
from ultraplanner_gui.plan.message import PlanError

EMPTY = replace(PROJECT, course=None)


def test_without_a_course_every_edit_says_so():
    for edit in (
        MoveSectionEnd("free", 20_000.0),
        SetSectionTarget("free", 900.0),
        FreeAllTargets(),
        NoteHardStretch("free", ""),
        ChangeStation(STATIONS[0]),
        AddStation("Spring", 1_000.0),
        RemoveStation("ford"),
    ):
        with pytest.raises(PlanError, match="no course yet"):
            edit.apply(EMPTY)


def test_section_end_at_a_station_takes_the_station_along():
    course = MoveSectionEnd(FORD.key, 11_000.0).apply(PROJECT).course

    assert course.station("ford") == replace(STATIONS[0], at_m=11_000.0)
    assert course.station("barn") is STATIONS[1]
    assert course.line is COURSE.line


def test_free_section_end_leaves_the_stations_alone():
    course = MoveSectionEnd("free", 22_000.0).apply(PROJECT).course

    assert course.section_ends() == (12_000.0, 22_000.0, 30_000.0, 50_000.0)
    assert course.stations is COURSE.stations


def test_finish_stays_where_the_course_ends():
    with pytest.raises(PlanError, match="finish stays"):
        MoveSectionEnd(FINISH.key, 49_000.0).apply(PROJECT)


@given(st.sampled_from((FORD.key, "free", "to-barn")), st.floats(-1e3, 6e4))
def test_section_end_is_where_it_was_put_or_refused(key, end_m):
    before = COURSE.section_ends()
    at = [s.key for s in COURSE.sections].index(key)
    low, high = (0.0, *before)[at], before[at + 1]
    fits = low + SHORTEST_SECTION_M <= end_m <= high - SHORTEST_SECTION_M
    edit = MoveSectionEnd(key, end_m)

    if fits:
        assert edit.apply(PROJECT).course.section_ends()[at] == end_m
    elif not low + 99.9 < end_m < high - 99.9:
        with pytest.raises(PlanError):
            edit.apply(PROJECT)


def test_targets_are_freed_all_at_once_and_only_if_any_is_fixed():
    free = FreeAllTargets().apply(PROJECT)

    assert {s.target_s for s in free.course.sections} == {None}
    assert FreeAllTargets().apply(free) is free


@pytest.mark.parametrize("target_s", [0.0, 0.5, 240 * 3600.0 + 1])
def test_section_takes_at_least_a_second_and_at_most_ten_days(target_s):
    with pytest.raises(PlanError, match="1 second and 240 hours"):
        SetSectionTarget("free", target_s).apply(PROJECT)


@pytest.mark.parametrize("name", ["", "  "])
def test_station_needs_a_name(name):
    for edit in (ChangeStation(replace(STATIONS[0], name=name)), AddStation(name, 1_000.0)):
        with pytest.raises(PlanError, match="needs a name"):
            edit.apply(PROJECT)


def test_added_stations_get_keys_of_their_own():
    project = PROJECT
    for at_m in (2_000.0, 4_000.0, 6_000.0):
        project = AddStation("Spring", at_m).apply(project)

    keys = [s.key for s in project.course.stations]
    assert keys == ["station", "station-2", "station-3", "ford", "barn"]


def test_added_and_removed_station_leaves_the_course_as_it_was():
    there = AddStation("Spring", 40_000.0).apply(PROJECT)

    assert RemoveStation("station").apply(there) == PROJECT


def test_cutoff_and_stop_have_ranges():
    for station, said in (
        (replace(STATIONS[0], cutoff_s=0.0), "after the start"),
        (replace(STATIONS[0], stop_s=86_401.0), "between 0 and 24 hours"),
    ):
        with pytest.raises(PlanError, match=said):
            ChangeStation(station).apply(PROJECT)


def test_course_out_of_order_is_not_taken_over():
    backward = (replace(STATIONS[1], at_m=5_000.0), STATIONS[0])
    beyond = (AidStation("far", "Far", 60_000.0),)
    for stations in (backward[::-1], beyond):
        course = replace(COURSE, stations=stations, sections=sections_between(stations))
        with pytest.raises(PlanError, match="not in order"):
            ReplaceCourse(course).apply(PROJECT)
