from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from ultraplanner_gui.engine.climbs import hills, least_height_m, sections_by_climbs
from ultraplanner_gui.engine.profile import build_profile
from ultraplanner_gui.plan.course import AidStation, Course, Line, Slope, sections_between
from ultraplanner_gui.science.geodesy import distance_along
from ultraplanner_gui.wording.words import Words

METRES_PER_DEGREE = 111_132.0  # of latitude at 45 degrees


def course(turns_m, heights_m, stations=()):
    """A course straight from turn to turn."""
    at = np.arange(0.0, turns_m[-1] + 10.0, 20.0)
    latitude = 45.0 + at / METRES_PER_DEGREE
    line = Line(latitude, np.full(len(at), 7.0), np.interp(at, turns_m, heights_m))
    length_m = float(distance_along(line.latitude_deg, line.longitude_deg)[-1])
    return Course(line, length_m, stations, sections_between(stations))


PASSES = ([0, 2_000, 7_000, 10_000, 14_000, 20_000], [500, 500, 910, 610, 1_010, 410])


def test_climbs_and_descents_are_found_where_they_are():
    found = hills(build_profile(course(*PASSES)))
    assert [(h.slope, h.number) for h in found] == [
        (Slope.CLIMB, 1),
        (Slope.DESCENT, 1),
        (Slope.CLIMB, 2),
        (Slope.DESCENT, 2),
    ]
    assert [h.start_m for h in found] == pytest.approx([2_000, 7_000, 10_000, 14_000], abs=60)
    assert [h.end_m for h in found] == pytest.approx([7_000, 10_000, 14_000, 20_000], abs=60)
    assert [h.height_m for h in found] == pytest.approx([410, 300, 400, 600], abs=8)
    assert found[0].gradient == pytest.approx(0.082, abs=0.002)
    assert found[1].gradient == pytest.approx(-0.1, abs=0.003)
    assert found[1].steepest == pytest.approx(-0.1, abs=0.003)


def test_a_climb_is_called_by_number_length_and_height():
    third = hills(build_profile(course([0, 5_100, 9_000], [0, 415, 0])))[0]
    assert Words().say(third.name) == f"Climb 1: 5.1 km, {round(third.height_m)} m"


def test_steepest_is_that_of_its_steepest_100_m():
    ramp = course([0, 3_000, 3_400, 6_000], [0, 150, 270, 400])
    (climb,) = hills(build_profile(ramp))
    assert climb.steepest == pytest.approx(0.3, abs=0.01)
    assert climb.gradient == pytest.approx(400 / 6_000, rel=0.02)


def test_a_valley_floor_belongs_to_no_climb():
    (climb,) = hills(build_profile(course([0, 8_000, 12_000], [505, 500, 1_000])))
    assert climb.start_m == pytest.approx(8_000, abs=60)


def test_two_climbs_with_a_long_level_between_are_two():
    steps = course([0, 3_000, 15_000, 18_000], [0, 300, 310, 610])
    assert [h.number for h in hills(build_profile(steps))] == [1, 2]


def test_a_short_ledge_does_not_part_a_climb():
    ledge = course([0, 3_000, 3_800, 7_000], [0, 300, 295, 610])
    assert len(hills(build_profile(ledge))) == 1


def test_a_level_course_has_none():
    flat = course([0, 20_000], [100, 100])
    assert hills(build_profile(flat)) == ()
    assert [s.slope for s in sections_by_climbs(build_profile(flat), flat)] == [None]


def test_what_counts_as_a_climb_grows_with_the_course():
    low, high = course(*PASSES), course(PASSES[0], [10 * h for h in PASSES[1]])
    assert least_height_m(build_profile(low)) == pytest.approx(855 / 25, abs=1.0)
    assert least_height_m(build_profile(high)) == 150.0


waves = st.lists(st.floats(-400, 400), min_size=3, max_size=25)


@settings(max_examples=60, deadline=None)
@given(waves, st.floats(600, 4_000))
def test_climbs_lie_apart_in_order_and_come_to_no_more_than_the_whole(steps_m, every_m):
    heights = 2_000.0 + np.cumsum([0.0, *steps_m])
    profile = build_profile(course(np.arange(len(heights)) * every_m, heights))
    found = hills(profile)
    for one, two in pairwise(found):
        assert one.end_m <= two.start_m
    for slope, total_m in ((Slope.CLIMB, profile.ascent_m), (Slope.DESCENT, profile.descent_m)):
        own = [h for h in found if h.slope is slope]
        assert sum(h.height_m for h in own) <= total_m + 1e-6
        assert [h.number for h in own] == list(range(1, len(own) + 1))
    for hill in found:
        assert (hill.gradient > 0.0) is (hill.slope is Slope.CLIMB)
        assert abs(hill.steepest) >= abs(hill.gradient) - 0.02
        assert hill.height_m >= least_height_m(profile) - 5.0


@settings(max_examples=60, deadline=None)
@given(waves)
def test_backwards_climbs_are_descents(steps_m):
    heights = 2_000.0 + np.cumsum([0.0, *steps_m])
    turns = np.arange(len(heights)) * 1_500.0
    there = hills(build_profile(course(turns, heights)), 60.0)
    back = hills(build_profile(course(turns, heights[::-1])), 60.0)
    length_m = turns[-1]
    mirrored = [(length_m - h.end_m, length_m - h.start_m) for h in back[::-1]]
    assert [h.slope for h in there] == [
        Slope.CLIMB if h.slope is Slope.DESCENT else Slope.DESCENT for h in back[::-1]
    ]
    assert [m for pair in mirrored for m in pair] == pytest.approx(
        [m for h in there for m in (h.start_m, h.end_m)], abs=40.0
    )


def test_sections_end_where_slopes_do_and_level_ends_join_their_neighbours():
    plain = course(*PASSES)
    sections = sections_by_climbs(build_profile(plain), plain)
    assert [(s.slope, s.number) for s in sections] == [
        (None, 0),
        (Slope.CLIMB, 1),
        (Slope.DESCENT, 1),
        (Slope.CLIMB, 2),
        (Slope.DESCENT, 2),
    ]
    assert sections[-1].end_m is None
    short = course([0, 600, 7_000, 12_000], [500, 500, 910, 400])
    assert [s.slope for s in sections_by_climbs(build_profile(short), short)] == [
        Slope.CLIMB,
        Slope.DESCENT,
    ]


def test_a_station_parts_a_climb_and_draws_a_near_end_to_itself():
    stations = (AidStation("half", "Half way", 4_500.0), AidStation("top", "Top", 7_200.0))
    parted = course(*PASSES, stations)
    sections = sections_by_climbs(build_profile(parted), parted)
    assert [(s.station, s.slope, s.number) for s in sections[1:4]] == [
        ("half", Slope.CLIMB, 1),
        ("top", Slope.CLIMB, 1),
        (None, Slope.DESCENT, 1),
    ]
