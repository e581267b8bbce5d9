from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from tests.edits.hilly import LOOP, ONE_WAY, course_on, open_line, project_with, round_line
from ultraplanner_gui.edits.course import ChangeStation, MoveSectionEnd, RemoveStation
from ultraplanner_gui.edits.course_shape import (
    GoOutAndBack,
    JoinCourse,
    PinStation,
    ReadAgain,
    ReverseCourse,
    RunLaps,
    SetOfficialDistance,
    SetOfficialHeights,
    TakeHeightsAsFeet,
    TrimCourse,
)
from ultraplanner_gui.engine.course_scale import knots, line_distance, line_length_m, line_place
from ultraplanner_gui.engine.profile import build_profile
from ultraplanner_gui.plan.course import (
    Course,
    Line,
    Pin,
    Reading,
    Repair,
    RepairKind,
    Section,
    Surface,
    sections_between,
)
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.store.soundness import unsound_part


def done(course, *edits):
    project = project_with(course)
    for edit in edits:
        project = edit.apply(project)
    assert unsound_part(project) is None
    return project.course


def ground(course, at_m):
    """Return latitude and longitude of a place."""
    line, along_m = course.line, line_distance(course.line)
    line_m = line_place(course, at_m)
    return np.interp(line_m, along_m, line.latitude_deg), np.interp(
        line_m, along_m, line.longitude_deg
    )


def lies_where(course, station, before, was):
    return ground(course, station.at_m) == pytest.approx(ground(before, was.at_m), abs=1e-7)


# Trim


def test_trimmed_course_keeps_what_lies_on_the_ground_that_is_left():
    course = done(LOOP, TrimCourse(2_000.0, 26_000.0))
    assert course.length_m == pytest.approx(24_000.0)
    hut, mill = course.stations
    assert (hut.at_m, mill.at_m) == (pytest.approx(6_000.0), pytest.approx(19_000.0))
    assert lies_where(course, hut, LOOP, LOOP.stations[0])
    assert replace(hut, at_m=8_000.0) == LOOP.stations[0]
    assert [(s.start_m, s.end_m, s.surface) for s in course.surfaces] == [
        (0.0, 3_000.0, Surface.ROAD),
        (3_000.0, 10_000.0, Surface.ROCK),
        (18_000.0, 22_000.0, Surface.GRASS),
    ]


def test_only_sections_that_were_cut_lose_their_targets():
    course = done(LOOP, TrimCourse(2_000.0, 26_000.0))
    assert [s.target_s for s in course.sections] == [None, 4_100.0, None, None]
    assert course.sections[1].name == "Over the moor"
    assert course.sections[0].hard_note == "Walk the ramp."


def test_stations_and_sections_cut_off_are_gone():
    course = done(LOOP, TrimCourse(9_000.0, 20_000.0))
    assert course.stations == ()
    assert [s.key for s in course.sections] == ["free", "to-mill"]
    assert course.section_ends() == (pytest.approx(6_000.0), course.length_m)


def test_a_sliver_of_a_section_goes_to_its_neighbour():
    course = done(LOOP, TrimCourse(7_950.0, 21_050.0))
    assert len(course.sections) == 2
    assert course.sections[0].target_s is None


@settings(max_examples=40, deadline=None)
@given(st.floats(0, 12_000), st.floats(15_000, 30_000))
def test_climb_of_what_is_left_is_the_climb_it_had(start_m, end_m):
    course = replace(ONE_WAY, stations=(), sections=(Section("finish"),))
    end_m = min(end_m, course.length_m)
    part = build_profile(done(course, TrimCourse(start_m, end_m)))
    climb_m, drop_m = build_profile(course).climb_drop(start_m, end_m)
    assert part.length_m == pytest.approx(end_m - start_m, abs=0.01)
    # At each end a turn of less than 5 m may be counted in one and not in the other.
    assert part.ascent_m == pytest.approx(climb_m, abs=10.0)
    assert part.descent_m == pytest.approx(drop_m, abs=10.0)


def test_parts_of_a_course_climb_as_much_as_the_whole():
    whole = build_profile(ONE_WAY)
    halves = [(0.0, 13_000.0), (13_000.0, ONE_WAY.length_m)]
    parts = [build_profile(done(ONE_WAY, TrimCourse(*half))) for half in halves]
    assert sum(p.ascent_m for p in parts) == pytest.approx(whole.ascent_m, rel=0.01)


def test_stretched_ground_stays_stretched_when_it_is_trimmed():
    official = done(LOOP, SetOfficialDistance(33_000.0), SetOfficialHeights(1_200.0, 1_200.0))
    course = done(official, TrimCourse(11_000.0, 33_000.0))
    assert course.length_m == course.official_m == pytest.approx(22_000.0)
    assert line_length_m(course.line) == pytest.approx(20_000.0, rel=1e-3)
    part = build_profile(official).climb_drop(11_000.0, 33_000.0)
    profile = build_profile(course)
    assert (profile.ascent_m, profile.descent_m) == pytest.approx(part, abs=0.01)


@pytest.mark.parametrize(
    ("start_m", "end_m"), [(5_000.0, 5_500.0), (9_000.0, 2_000.0), (0.0, 31_000.0), (-1.0, 9e3)]
)
def test_nothing_that_is_no_course_is_left(start_m, end_m):
    with pytest.raises(PlanError):
        done(LOOP, TrimCourse(start_m, end_m))


def test_trimming_nothing_changes_nothing():
    project = project_with(LOOP)
    assert TrimCourse(0.0, LOOP.length_m).apply(project) is project


def test_gaps_stay_where_the_line_is_broken():
    line = open_line()
    broken = course_on(Line(line.latitude_deg, line.longitude_deg, line.elevation_m, (100, 500)))
    part = done(broken, TrimCourse(4_000.0, 20_000.0)).line
    (gap,) = part.gaps
    assert part.longitude_deg[gap] == line.longitude_deg[100]
    back = done(broken, ReverseCourse()).line
    assert [back.longitude_deg[g - 1] for g in back.gaps] == list(line.longitude_deg[[500, 100]])


# Reverse


def test_reversed_course_mirrors_all_that_lies_along_it():
    course = done(ONE_WAY, ReverseCourse())
    mill, hut = course.stations
    assert (mill.name, hut.name) == ("Mill", "Hut")
    assert lies_where(course, hut, ONE_WAY, ONE_WAY.stations[0])
    assert hut.offers == ONE_WAY.stations[0].offers
    assert course.surfaces[-1].surface is Surface.ROAD
    assert course.surfaces[-1].end_m == course.length_m
    moor = next(s for s in course.sections if s.name == "Over the moor")
    assert course.end_of(moor) == pytest.approx(course.length_m - 8_000.0)
    assert moor.station == "hut"


def test_times_of_the_other_direction_are_dropped():
    course = done(ONE_WAY, ReverseCourse())
    assert {s.cutoff_s for s in course.stations} == {None}
    assert {s.target_s for s in course.sections} == {None}
    assert "cutoffs dropped" in ReverseCourse.label


def test_climb_and_drop_change_places():
    there, back = build_profile(ONE_WAY), build_profile(done(ONE_WAY, ReverseCourse()))
    assert back.ascent_m == pytest.approx(there.descent_m)
    assert back.descent_m == pytest.approx(there.ascent_m)
    official = done(ONE_WAY, SetOfficialHeights(1_100.0, 900.0), ReverseCourse())
    assert (official.official_climb_m, official.official_drop_m) == (900.0, 1_100.0)


@settings(max_examples=30, deadline=None)
@given(
    st.lists(st.integers(2, 145), max_size=6, unique=True),
    st.floats(0.8, 1.25),
    st.booleans(),
)
def test_reversed_twice_is_as_before(places, stretch, is_loop):
    course = LOOP if is_loop else ONE_WAY
    stations = tuple(
        replace(course.stations[0], key=f"s{n}", at_m=200.0 * n, cutoff_s=None)
        for n in sorted(places)
    )
    course = replace(course, stations=stations, sections=sections_between(stations))
    course = done(course, SetOfficialDistance(course.length_m * stretch))
    twice = done(course, ReverseCourse(), ReverseCourse())
    assert twice.line == course.line
    assert [s.key for s in twice.stations] == [s.key for s in course.stations]
    assert twice.section_ends() == pytest.approx(course.section_ends(), abs=1e-6)
    assert [(s.key, s.station) for s in twice.sections] == [
        (s.key, s.station) for s in course.sections
    ]
    spans = [(s.start_m, s.end_m) for s in course.surfaces]
    assert [m for s in twice.surfaces for m in (s.start_m, s.end_m)] == pytest.approx(
        [m for span in spans for m in span], abs=1e-6
    )


# Laps, out and back, legs


@settings(max_examples=20, deadline=None)
@given(st.integers(2, 9))
def test_laps_are_as_long_as_so_many_laps(laps):
    course = done(LOOP, RunLaps(laps))
    assert course.length_m == pytest.approx(laps * LOOP.length_m)
    assert course.official_m is None
    assert build_profile(course).ascent_m == pytest.approx(
        laps * build_profile(LOOP).ascent_m, rel=0.01
    )
    assert len(course.stations) == laps * len(LOOP.stations)
    assert len(course.sections) == laps * len(LOOP.sections)
    assert (np.diff((0.0, *course.section_ends())) > 99.0).all()


def test_stations_come_by_in_every_lap_without_the_cutoffs_of_the_first():
    course = done(LOOP, RunLaps(3))
    assert [s.name for s in course.stations] == [
        *("Hut", "Mill", "Hut (lap 2)", "Mill (lap 2)", "Hut (lap 3)", "Mill (lap 3)")
    ]
    assert [s.cutoff_s for s in course.stations] == [7_200.0, None, None, None, None, None]
    third = course.stations[4]
    assert third.offers == LOOP.stations[0].offers
    assert third.at_m == pytest.approx(8_000.0 + 2 * LOOP.length_m)
    assert lies_where(course, third, LOOP, LOOP.stations[0])
    assert [s.target_s for s in course.sections[:4]] == [s.target_s for s in LOOP.sections]
    assert {s.target_s for s in course.sections[4:]} == {None}


def test_surfaces_come_by_in_every_lap_too():
    course = done(LOOP, RunLaps(2))
    assert [s.surface for s in course.surfaces] == [
        *(Surface.ROAD, Surface.ROCK, Surface.GRASS) * 2
    ]


def test_base_is_a_station_at_the_end_of_each_lap_but_the_last():
    course = done(LOOP, RunLaps(3, base="Base", names="{0}, Runde {1}"))
    bases = [s for s in course.stations if s.name.startswith("Base")]
    assert [s.name for s in bases] == ["Base, Runde 1", "Base, Runde 2"]
    assert [s.at_m for s in bases] == pytest.approx([LOOP.length_m, 2 * LOOP.length_m])
    assert {s.key for s in bases} <= {s.station for s in course.sections}


def test_a_line_that_does_not_come_back_is_no_lap():
    with pytest.raises(PlanError, match="no lap"):
        done(ONE_WAY, RunLaps(2))


def test_short_way_back_to_the_start_is_run():
    line = round_line()
    nearly = Line(
        *(v[:-10].copy() for v in (line.latitude_deg, line.longitude_deg, line.elevation_m))
    )
    lap = course_on(nearly)
    course = done(lap, RunLaps(3, "Base"))
    assert course.length_m == pytest.approx(2 * LOOP.length_m + lap.length_m, rel=1e-4)
    assert course.line.gaps == ()
    first_base = next(s for s in course.stations if s.name == "Base (lap 1)")
    assert first_base.at_m == pytest.approx(lap.length_m)


def test_official_lap_makes_official_laps():
    lap = done(LOOP, SetOfficialDistance(31_000.0), SetOfficialHeights(1_100.0, 1_100.0))
    course = done(lap, RunLaps(4))
    assert course.official_m == course.length_m == pytest.approx(124_000.0)
    assert course.official_climb_m == 4_400.0
    assert course.pins == ()


def test_out_and_back_passes_every_station_twice_but_for_its_cutoff():
    course = done(ONE_WAY, GoOutAndBack("Turn"))
    assert course.length_m == pytest.approx(2 * ONE_WAY.length_m)
    assert [s.name for s in course.stations] == [
        *("Hut", "Mill", "Turn", "Mill (way back)", "Hut (way back)")
    ]
    assert course.stations[2].at_m == pytest.approx(ONE_WAY.length_m)
    assert [
        s.at_m + t.at_m for s, t in zip(course.stations, course.stations[::-1], strict=True)
    ] == (pytest.approx([course.length_m] * 5))
    assert course.stations[4].cutoff_s is None
    profile, there = build_profile(course), build_profile(ONE_WAY)
    both_m = there.ascent_m + there.descent_m
    assert profile.ascent_m == pytest.approx(both_m, rel=0.01)
    assert profile.descent_m == pytest.approx(both_m, rel=0.01)


def test_leg_behind_keeps_both_and_counts_a_way_between():
    leg = course_on(open_line(20_000.0))
    shifted = Line(
        leg.line.latitude_deg,
        leg.line.longitude_deg + np.degrees(ONE_WAY.length_m / 6_378_137.0) + 0.009,
        leg.line.elevation_m,
    )
    leg = replace(
        leg,
        line=shifted,
        surfaces=(),
        stations=leg.stations[:1],
        sections=sections_between(leg.stations[:1]),
    )
    course = done(ONE_WAY, JoinCourse(leg))
    assert course.length_m == pytest.approx(ONE_WAY.length_m + leg.length_m + 1_000.0, abs=20.0)
    assert [s.key for s in course.stations] == ["hut", "mill", "hut-2"]
    assert course.stations[2].cutoff_s is None
    assert course.line.gaps == ()
    assert len({s.key for s in course.sections}) == len(course.sections) == 6


def test_leg_far_away_is_joined_by_a_gap_that_does_not_count():
    far = replace(
        LOOP,
        line=Line(*(LOOP.line.latitude_deg + 1.0, LOOP.line.longitude_deg, LOOP.line.elevation_m)),
    )
    far = replace(far, length_m=line_length_m(far.line), surfaces=())
    course = done(ONE_WAY, JoinCourse(far))
    assert course.length_m == pytest.approx(ONE_WAY.length_m + far.length_m)
    assert course.line.gaps == (len(ONE_WAY.line),)


def test_too_many_laps_are_refused():
    for laps in (0, -1, 101):
        with pytest.raises(PlanError, match="1 and 100"):
            done(LOOP, RunLaps(laps))
    with pytest.raises(PlanError, match="2,000 km"):
        done(LOOP, RunLaps(100))


# Official figures


def test_official_distance_stretches_the_line_and_all_on_it():
    course = done(LOOP, SetOfficialDistance(33_000.0))
    assert course.length_m == course.official_m == 33_000.0
    assert course.line is LOOP.line
    assert course.stations[0].at_m == pytest.approx(8_800.0, rel=1e-3)
    assert lies_where(course, course.stations[0], LOOP, LOOP.stations[0])
    assert course.sections[0].target_s == 4_000.0
    assert build_profile(course).ascent_m == pytest.approx(build_profile(LOOP).ascent_m, rel=0.01)


def test_official_distance_taken_away_gives_the_line_as_measured():
    course = done(LOOP, SetOfficialDistance(33_000.0), SetOfficialDistance(None))
    assert course.official_m is None
    assert course.length_m == LOOP.length_m
    assert course.section_ends() == pytest.approx(LOOP.section_ends())


@pytest.mark.parametrize("length_m", [0.0, 9_000.0, 91_000.0, 3e6, float("nan")])
def test_distance_of_another_course_is_refused(length_m):
    with pytest.raises(PlanError):
        done(LOOP, SetOfficialDistance(length_m))


def test_climb_of_another_course_or_unit_is_refused():
    with pytest.raises(PlanError, match="unit"):
        done(LOOP, SetOfficialHeights(4_500.0, None))
    with pytest.raises(PlanError, match="100,000"):
        done(LOOP, SetOfficialHeights(-5.0, None))


def test_heights_in_feet_nobody_noticed_are_made_metres_once():
    course = done(LOOP, TakeHeightsAsFeet())
    assert course.line.elevation_m == pytest.approx(LOOP.line.elevation_m * 0.3048)
    assert course.stations is LOOP.stations
    known = replace(LOOP, repairs=(Repair("In feet.", (), RepairKind.FEET),))
    with pytest.raises(PlanError, match="already"):
        done(known, TakeHeightsAsFeet())


# Pins


def test_pinned_station_lies_at_its_distance_and_on_its_ground():
    course = done(LOOP, PinStation("hut", 9_000.0))
    hut, mill = course.stations
    assert hut.at_m == 9_000.0
    assert course.is_pinned(hut)
    assert lies_where(course, hut, LOOP, LOOP.stations[0])
    assert lies_where(course, mill, LOOP, LOOP.stations[1])
    assert course.length_m == LOOP.length_m
    # Behind the pin 21 of 22 km are left: Mill lies 13 of 22 km on.
    after_m = (LOOP.length_m - 9_000.0) / (LOOP.length_m - 8_000.0)
    assert mill.at_m == pytest.approx(9_000.0 + 13_000.0 * after_m)
    assert course.surfaces[0].end_m == pytest.approx(5_000.0 * 9.0 / 8.0)


def test_freed_station_goes_back_and_so_does_all_else():
    course = done(LOOP, PinStation("hut", 9_000.0), PinStation("hut", None))
    assert course.pins == ()
    assert course.section_ends() == pytest.approx(LOOP.section_ends())


def test_all_stations_can_be_pinned_to_the_handbook():
    course = done(LOOP, SetOfficialDistance(32_000.0), PinStation("hut", 8_100.0))
    course = done(course, PinStation("mill", 23_500.0))
    assert [s.at_m for s in course.stations] == [8_100.0, 23_500.0]
    assert all(course.is_pinned(s) for s in course.stations)
    again = done(course, SetOfficialDistance(33_000.0))
    assert [s.at_m for s in again.stations] == [8_100.0, 23_500.0]
    profile = build_profile(course)
    # The ground pinned there is the ground the unpinned profile has where the station was.
    for station, was in zip(course.stations, LOOP.stations, strict=True):
        height_m = build_profile(LOOP).elevation_at(was.at_m)
        assert profile.elevation_at(station.at_m) == pytest.approx(height_m, abs=1.0)


def test_a_pin_cannot_pass_its_neighbours():
    course = done(LOOP, PinStation("hut", 9_000.0))
    for at_m in (9_000.0, 8_000.0, 29_990.0, 40_000.0, 0.0):
        with pytest.raises(PlanError):
            done(course, PinStation("mill", at_m))


@settings(max_examples=40, deadline=None)
@given(st.lists(st.tuples(st.sampled_from(("hut", "mill")), st.floats(0, 31_000)), max_size=5))
def test_pins_rise_whatever_is_pinned(wishes):
    project = project_with(LOOP)
    for key, at_m in wishes:
        try:
            project = PinStation(key, at_m).apply(project)
        except PlanError:
            continue
    course = project.course
    assert unsound_part(project) is None
    for places in knots(course):
        assert all(a < b for a, b in pairwise(places))
    for station, was in zip(course.stations, LOOP.stations, strict=True):
        assert lies_where(course, station, LOOP, was)


def test_pinned_station_moved_or_removed_loses_its_pin_and_the_others_stay_on_their_ground():
    pinned = done(LOOP, PinStation("hut", 9_000.0))
    for edit in (
        ChangeStation(replace(pinned.stations[0], at_m=9_500.0)),
        MoveSectionEnd("to-hut", 9_500.0),
        RemoveStation("hut"),
    ):
        course = done(pinned, edit)
        assert course.pins == ()
        assert lies_where(course, course.station("mill"), LOOP, LOOP.stations[1])


def test_pins_go_with_the_ground_when_it_is_reversed_run_twice_or_trimmed():
    pinned = done(LOOP, PinStation("hut", 9_000.0))
    assert done(pinned, ReverseCourse()).is_pinned(done(pinned, ReverseCourse()).station("hut"))
    laps = done(pinned, RunLaps(2))
    assert [p.at_m for p in laps.pins] == pytest.approx(
        [9_000.0, LOOP.length_m, LOOP.length_m + 9_000.0]
    )
    assert all(laps.is_pinned(laps.station(key)) for key in ("hut", "hut-2"))
    part = done(pinned, TrimCourse(4_000.0, 25_000.0))
    (pin,) = part.pins
    assert pin == Pin(5_000.0, pytest.approx(8_000.0 - 4_000.0 * 8.0 / 9.0))
    for course in (laps, part):
        assert lies_where(course, course.station("hut"), LOOP, LOOP.stations[0])


# Read again


def test_reading_again_with_the_same_places_keeps_what_the_user_said():
    before = replace(
        LOOP, reading=Reading("a.gpx"), repairs=(Repair("Mended.", (), RepairKind.SPIKES),)
    )
    spiky = Line(LOOP.line.latitude_deg, LOOP.line.longitude_deg, LOOP.line.elevation_m + 1.0)
    read = replace(
        before,
        line=spiky,
        stations=(),
        sections=(Section("finish"),),
        repairs=(),
        reading=Reading("a.gpx", without=(RepairKind.SPIKES,)),
    )
    course = done(before, ReadAgain(read))
    assert course.line is spiky
    assert course.stations is before.stations
    assert course.sections is before.sections
    assert course.repairs == ()
    assert course.reading == read.reading


def test_stations_keep_their_points_of_the_file_on_a_line_of_another_length():
    before = replace(LOOP, reading=Reading("a.gpx"), name="Ours")
    half = Line(
        LOOP.line.latitude_deg[100:], LOOP.line.longitude_deg[100:], LOOP.line.elevation_m[100:]
    )
    read = Course(half, line_length_m(half), reading=Reading("a.gpx", "track-2"))
    course = done(before, ReadAgain(read))
    assert course.name == "Ours"
    assert [s.name for s in course.stations] == ["Hut", "Mill"]
    for station, was in zip(course.stations, LOOP.stations, strict=True):
        assert lies_where(course, station, LOOP, was)
        assert replace(station, at_m=was.at_m) == was
    assert [s.key for s in course.sections] == [s.key for s in LOOP.sections]
    assert [s.target_s for s in course.sections] == [None, 4_100.0, None, None]
    assert [s.surface for s in course.surfaces] == [Surface.ROCK, Surface.GRASS]


def test_what_has_no_point_on_the_other_line_is_left_out():
    before = replace(LOOP, reading=Reading("a.gpx"))
    end = Line(
        LOOP.line.latitude_deg[300:], LOOP.line.longitude_deg[300:], LOOP.line.elevation_m[300:]
    )
    read = Course(end, line_length_m(end), reading=Reading("a.gpx"))
    course = done(before, ReadAgain(read))
    assert [s.name for s in course.stations] == ["Mill"]
    assert [s.key for s in course.sections] == ["to-mill", "finish"]


def test_another_file_is_another_course():
    before = replace(LOOP, reading=Reading("a.gpx"))
    line = open_line(20_000.0)
    other = Course(line, line_length_m(line), reading=Reading("b.gpx"))
    assert done(before, ReadAgain(other)) is other
