from contextlib import suppress
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from ultraplanner_gui.plan.course import (
    SHORTEST_SECTION_M,
    AidStation,
    Course,
    Line,
    Section,
    fresh_key,
    sections_between,
)
from ultraplanner_gui.plan.message import PlanError

LENGTH_M = 10_000.0


def course(*places_m):
    line = Line(np.array([54.0, 54.1]), np.array([-3.0, -3.0]), np.array([100.0, 200.0]))
    stations = tuple(AidStation(f"k{k}", f"Place {k}", at) for k, at in enumerate(places_m))
    return Course(line, LENGTH_M, stations, sections_between(stations))


def whole(ground):
    """Whether the sections cover the course, one to each station, none too short."""
    ends = ground.section_ends()
    places = [s.at_m for s in ground.stations]
    return (
        ends[-1] == ground.length_m
        and min(b - a for a, b in pairwise((0.0, *ends))) >= SHORTEST_SECTION_M
        and [s.station for s in ground.sections[:-1]] == [s.key for s in ground.stations]
        and places == sorted(places)
        and len({s.key for s in ground.sections}) == len(ground.sections)
    )


places = st.floats(-100.0, LENGTH_M + 100.0) | st.sampled_from(
    (0.0, 99.9, 100.0, 5_000.0, LENGTH_M - 100.0, LENGTH_M - 99.9, LENGTH_M)
)
deeds = st.lists(
    st.tuples(st.sampled_from(("add", "move", "remove")), st.integers(0, 9), places), max_size=30
)


def done(ground, deed):
    what, which, at_m = deed
    if what == "add":
        key = fresh_key("new", {s.key for s in ground.stations})
        return ground.with_new_station(AidStation(key, f"New {key}", at_m))
    station = ground.stations[which % len(ground.stations)] if ground.stations else None
    if station is None:
        return ground
    if what == "move":
        return ground.with_station(replace(station, at_m=at_m))
    return ground.without_station(station.key)


@given(deeds)
def test_sections_stay_whole_whatever_is_done_to_the_stations(steps):
    ground = course(2_000.0, 4_000.0, 7_500.0)
    for step in steps:
        with suppress(PlanError):
            ground = done(ground, step)
        assert whole(ground)


@given(places)
def test_new_station_taken_out_again_leaves_the_course_as_it_was(at_m):
    ground = course(2_000.0, 4_000.0)
    try:
        more = ground.with_new_station(AidStation("new", "New", at_m))
    except PlanError:
        return

    assert more.without_station("new") == ground


def test_new_station_splits_the_section_it_lies_in():
    ground = course(2_000.0, 4_000.0).with_new_station(AidStation("spring", "Spring", 3_000.0))

    assert ground.section_ends() == (2_000.0, 3_000.0, 4_000.0, LENGTH_M)
    assert [ground.end_name(s) for s in ground.sections] == ["Place 0", "Spring", "Place 1", ""]


def test_split_and_joined_sections_lose_the_target_that_was_for_another_length():
    ground = course(2_000.0, 4_000.0)
    fixed = replace(ground, sections=tuple(replace(s, target_s=900.0) for s in ground.sections))

    split = fixed.with_new_station(AidStation("spring", "Spring", 3_000.0))
    joined = fixed.without_station("k0")

    assert [s.target_s for s in split.sections] == [900.0, None, None, 900.0]
    assert [s.target_s for s in joined.sections] == [None, 900.0]


def test_moving_a_station_moves_the_section_that_ends_there():
    ground = course(2_000.0, 4_000.0)

    after = ground.with_station(replace(ground.station("k0"), at_m=2_500.0))

    assert after.end_of(after.sections[0]) == 2_500.0
    assert after.sections == ground.sections


@pytest.mark.parametrize("at_m", [3_901.0, 4_000.0, 4_500.0])
def test_station_may_not_reach_its_neighbour(at_m):
    ground = course(2_000.0, 4_000.0)

    with pytest.raises(PlanError, match="leave at least 100 m"):
        ground.with_station(replace(ground.station("k0"), at_m=at_m))


def test_last_section_that_would_vanish_is_named_by_its_place():
    ground = course(2_000.0)

    with pytest.raises(PlanError) as refusal:
        ground.with_station(replace(ground.station("k0"), at_m=LENGTH_M - 50.0))

    assert refusal.value.message.args[0].value == LENGTH_M


@pytest.mark.parametrize("at_m", [float("nan"), float("inf"), -float("inf"), 0.0, LENGTH_M])
def test_station_off_the_course_is_refused(at_m):
    ground = course(2_000.0)

    with pytest.raises(PlanError, match="between the start and the finish"):
        ground.with_station(replace(ground.station("k0"), at_m=at_m))
    with pytest.raises(PlanError, match="between the start and the finish"):
        ground.with_new_station(AidStation("new", "New", at_m))


@pytest.mark.parametrize("end_m", [float("nan"), float("inf"), -1.0])
def test_free_section_end_without_a_place_is_refused(end_m):
    ground = replace(course(), sections=(Section("free", end_m=3_000.0), Section("finish")))

    with pytest.raises(PlanError):
        ground.with_section(replace(ground.sections[0], end_m=end_m))


def test_note_can_be_written_on_a_course_shorter_than_a_section():
    tiny = replace(course(), length_m=60.0)

    noted = tiny.with_section(replace(tiny.sections[0], hard_note="Breathe."))

    assert noted.sections[0].hard_note == "Breathe."


def test_unknown_station_and_section_are_named():
    with pytest.raises(PlanError, match="aid station hut"):
        course().station("hut")
    with pytest.raises(PlanError, match="section hut"):
        course().section("hut")


@given(st.text(max_size=3), st.sets(st.text(max_size=3), max_size=8))
def test_fresh_key_is_not_taken(wish, taken):
    assert fresh_key(wish, taken) not in taken


def test_fresh_key_takes_the_smallest_number_that_is_free():
    assert fresh_key("item", {"item", "item-2", "item-4"}) == "item-3"


def test_equal_lines_are_equal_though_a_height_is_missing():
    def line():
        return Line(np.array([54.0, 54.1]), np.zeros(2), np.array([np.nan, 200.0]))

    assert line() == line()
    assert line() != replace(line(), gaps=(1,))
    assert line().has_elevation


def test_points_of_a_line_cannot_be_written():
    with pytest.raises(ValueError):
        course().line.latitude_deg[0] = 0.0
