from itertools import pairwise

import pytest

from tests.exchange.gpx_samples import document, eastward, track, waypoint
from ultraplanner_gui.exchange.gpx_in import read_course
from ultraplanner_gui.plan.course import SHORTEST_SECTION_M, Section

# 100 points, 7.88 km; a thousandth of a degree of longitude is 78.8 m there.
OUT = eastward(101)
STEP_M = 78.85
OUT_AND_BACK = OUT + OUT[-2::-1]


def stations(write, line, *waypoints):
    course = read_course(write(document(*(waypoint(*w) for w in waypoints), track(line))))
    return [(s.name, round(s.at_m / STEP_M)) for s in course.stations], course


def test_waypoints_become_aid_stations_in_course_order(write):
    found, course = stations(write, OUT, (45.0, 7.06, "Pass"), (45.0, 7.02, "Lake"))
    assert found == [("Lake", 20), ("Pass", 60)]
    assert [s.key for s in course.stations] == ["station", "station-2"]
    assert course.sections == (
        Section("to-station", station="station"),
        Section("to-station-2", station="station-2"),
        Section("finish"),
    )


def test_waypoint_beside_the_line_is_put_at_the_nearest_place(write):
    # 0.001 degrees of latitude are 111 m; midway between two points of the line.
    _, course = stations(write, OUT, (45.001, 7.0205, "Hut"))
    assert course.stations[0].at_m == pytest.approx(20.5 * STEP_M, abs=1.0)


def test_waypoints_far_off_are_left_out_and_it_is_said(write):
    found, course = stations(write, OUT, (45.01, 7.02, "Peak"), (45.0, 7.05, "Lake"))
    assert found == [("Lake", 50)]
    assert "off the line" in str(course.repairs[0])


def test_start_and_finish_are_no_aid_stations(write):
    found, course = stations(write, OUT, (45.0, 7.0, "Start"), (45.0, 7.0985, "Finish"))
    assert found == []
    assert course.repairs == ()


def test_out_and_back_follows_the_order_of_the_list(write):
    found, _ = stations(
        write,
        OUT_AND_BACK,
        (45.0, 7.03, "Lake"),
        (45.0, 7.07, "Pass"),
        (45.0, 7.05, "Hut on the way back"),
        (45.0, 7.03, "Lake again"),
    )
    assert found == [("Lake", 30), ("Pass", 70), ("Hut on the way back", 150), ("Lake again", 170)]


def test_list_in_no_order_takes_the_first_pass(write):
    found, _ = stations(
        write,
        OUT_AND_BACK,
        (45.0, 7.07, "Pass"),
        (45.0, 7.03, "Lake"),
        (45.0, 7.09, "Turn"),
        (45.0, 7.02, "Bridge"),
        (45.0, 7.05, "Hut"),
    )
    assert found == [("Bridge", 20), ("Lake", 30), ("Hut", 50), ("Pass", 70), ("Turn", 90)]


def test_laps_follow_the_order_of_the_list(write):
    corner = [(45.02, 7.02, 500.0), (45.02, 7.0, 500.0)]
    lap = [*eastward(21), *corner]
    found, course = stations(
        write, lap * 3, (45.02, 7.02, "Far corner"), (45.02, 7.02, "Far corner")
    )
    assert [name for name, _ in found] == ["Far corner"]
    found, course = stations(
        write,
        lap * 3,
        (45.02, 7.02, "Far corner"),
        (45.0, 7.01, "Well"),
        (45.02, 7.02, "Far corner"),
    )
    lap_m = course.length_m / 3
    assert [int(s.at_m // lap_m) for s in course.stations] == [0, 1, 1]


def test_base_passed_on_every_lap_is_a_station_between_laps(write):
    lap = [*eastward(21), (45.02, 7.02, 500.0), (45.02, 7.0, 500.0), (45.0, 7.0, 500.0)]
    _, course = stations(write, lap * 3, (45.0, 7.0, "Base"))
    (base,) = course.stations
    assert base.at_m == pytest.approx(course.length_m / 3, abs=1.0)


def test_waypoints_on_one_spot_are_merged_and_it_is_said(write):
    found, course = stations(
        write, OUT, (45.0, 7.02, "Lake"), (45.0, 7.02, "Lake"), (45.0002, 7.0203, "Lake water")
    )
    assert found == [("Lake", 20)]
    assert "2" in str(course.repairs[-1])


def test_sections_are_never_shorter_than_the_shortest(write):
    places = [(45.0, 7.0 + 0.0007 * i, f"W{i}") for i in range(140)]
    _, course = stations(write, OUT, *places)
    ends = [0.0, *course.section_ends()]
    assert min(b - a for a, b in pairwise(ends)) >= SHORTEST_SECTION_M


def test_names_are_cleaned_and_never_empty(write):
    found, _ = stations(write, OUT, (45.0, 7.02, "\n Lake\n  hut "), (45.0, 7.05))
    assert [name for name, _ in found] == ["Lake hut", "Station 2"]


def test_nothing_is_snapped_into_a_gap(write):
    text = document(waypoint(45.0, 7.2, "Nowhere"), track(OUT), track(eastward(50, start=7.3)))
    assert read_course(write(text)).stations == ()


def test_hundreds_of_waypoints_are_left_out_and_it_is_said(write):
    found, course = stations(write, OUT, *((45.0, 7.02, f"W{i}") for i in range(301)))
    assert found == []
    assert "too many" in str(course.repairs[-1])
