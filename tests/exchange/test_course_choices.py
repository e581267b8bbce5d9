"""Which line of a file is the course, and what can be chosen instead."""

import pytest

from tests.exchange.gpx_samples import document, eastward, route, track, waypoint
from ultraplanner_gui.exchange.gpx_in import course_choices, read_course
from ultraplanner_gui.plan.course import RepairKind
from ultraplanner_gui.plan.message import CourseError

LINE = eastward(200)
LEGS = LINE[:80], LINE[79:140], LINE[139:]
SPUR = [(45.0 + 0.001 * i, 7.1, 600.0 + 5.0 * i) for i in range(40)]


def kinds(course):
    return [r.kind for r in course.repairs if hasattr(r, "kind")]


def length(write, *parts):
    return read_course(write(document(*parts), "whole.gpx")).length_m


def test_file_with_one_line_has_one_choice(write):
    (choice,) = course_choices(write(document(track(LINE, name="Lake loop"))))
    assert (choice.key, choice.name, choice.points, choice.count) == (
        "track-1",
        "Lake loop",
        200,
        1,
    )
    course = read_course(write(document(track(LINE))))
    assert choice.length_m == course.length_m
    assert choice.climb_m == pytest.approx(199.0, abs=1.0)
    assert course.reading.choice == ""
    assert course.reading.file == "course.gpx"


def test_every_track_and_route_can_be_chosen_and_all_together(write):
    path = write(document(route(SPUR, name="Spur"), *(track(leg) for leg in LEGS)))
    choices = {c.key: c for c in course_choices(path)}
    assert list(choices) == ["tracks", "track-1", "track-2", "track-3", "route-1"]
    assert choices["tracks"].count == 3
    assert choices["route-1"].name == "Spur"
    for key, choice in choices.items():
        course = read_course(path, key)
        assert course.length_m == choice.length_m
        assert course.reading.choice == key
        assert kinds(course) == []


def test_without_heights_a_choice_has_no_climb(write):
    (choice,) = course_choices(write(document(track([p[:2] for p in LINE]))))
    assert choice.climb_m is None


def test_choice_that_is_gone_is_said(write):
    with pytest.raises(CourseError, match="no longer holds"):
        read_course(write(document(track(LINE))), "track-2")


def test_file_without_a_line_has_no_choices(write):
    with pytest.raises(CourseError, match="no track and no route"):
        course_choices(write(document(waypoint(45, 7, "Hut"))))


@pytest.mark.parametrize(
    "twice",
    [
        (track(LINE), route(LINE[::3])),
        (route(LINE), track(LINE)),
        (track(LINE), track(LINE, name="Copy")),
        (track(LINE), track([(lat + 1e-4, lon, ele) for lat, lon, ele in LINE[::2]])),
        (route(LINE), route(LINE[::4])),
        (track(LINE), *(track(leg) for leg in LEGS)),
    ],
)
def test_the_same_line_twice_is_run_once(write, twice):
    course = read_course(write(document(*twice)))
    assert course.length_m == pytest.approx(length(write, track(LINE)), rel=0.01)
    assert set(kinds(course)) & {RepairKind.ROUTE, RepairKind.DOUBLED}


def test_doubled_line_stays_doubled_if_the_user_says_so(write):
    path = write(document(track(LINE), track(LINE)))
    course = read_course(path, without=(RepairKind.DOUBLED, RepairKind.BROKEN))
    assert course.length_m > 2.9 * length(write, track(LINE))
    assert RepairKind.DOUBLED not in kinds(course)
    assert course.reading.without == (RepairKind.BROKEN, RepairKind.DOUBLED)


def test_out_and_back_in_two_tracks_is_no_double(write):
    course = read_course(write(document(track(LINE), track(LINE[::-1]))))
    assert course.length_m == pytest.approx(2 * length(write, track(LINE)))
    assert kinds(course) == [RepairKind.JOINED]


def test_side_track_that_only_touches_is_no_double(write):
    course = read_course(write(document(track(LINE), track(SPUR))))
    assert RepairKind.DOUBLED not in kinds(course)


def test_route_is_followed_instead_if_the_user_says_so(write):
    path = write(document(track(LINE), route(SPUR)))
    assert kinds(read_course(path)) == [RepairKind.ROUTE]
    other = read_course(path, without=(RepairKind.ROUTE,))
    assert len(other.line) == len(SPUR)
    assert kinds(other) == []


def test_route_is_followed_where_the_track_is_only_a_stub(write):
    course = read_course(write(document(track(LINE[:10]), route(LINE))))
    assert len(course.line) == len(LINE)
    assert "short track" in str(course.repairs[0])


def test_tracks_out_of_order_are_put_in_the_order_in_which_they_meet(write):
    first, second, third = LEGS
    path = write(document(track(third), track(first), track(second)))
    course = read_course(path)
    assert course.length_m == pytest.approx(length(write, track(LINE)))
    assert kinds(course) == [RepairKind.ORDER, RepairKind.JOINED]
    assert course.line.longitude_deg[0] == LINE[0][1]
    as_filed = read_course(path, without=(RepairKind.ORDER,))
    assert as_filed.line.longitude_deg[0] == third[0][1]
    assert RepairKind.ORDER not in kinds(as_filed)


def test_unjoined_tracks_leave_the_longest(write):
    course = read_course(write(document(*map(track, LEGS))), without=(RepairKind.JOINED,))
    assert len(course.line) == max(map(len, LEGS))


def loop(length_deg, width_deg, lat=45.0, lon=7.0, points=80):
    """A loop to the east of a base, out along one parallel and back along another."""
    out = [(lat, lon + length_deg * i / points, 500.0) for i in range(points)]
    back = [
        (lat + width_deg, lon + length_deg * (points - i) / points, 500.0) for i in range(points)
    ]
    return [*out, *back, (lat, lon, 500.0)]


def test_of_the_races_of_one_event_the_longest_is_taken(write):
    races = loop(0.1, 0.02), loop(0.3, 0.03), loop(0.2, 0.025)
    path = write(document(*(track(race, name=f"Race {n}") for n, race in enumerate(races))))
    course = read_course(path)
    assert course.length_m == pytest.approx(length(write, track(races[1])))
    assert kinds(course) == [RepairKind.DOUBLED]
    assert "same finish" in str(course.repairs[0])


def test_loops_from_one_base_are_all_run(write):
    loops = loop(0.1, 0.02), loop(-0.12, 0.02), [(lat - 0.002, *p) for lat, *p in loop(0.1, -0.03)]
    course = read_course(write(document(*map(track, loops))))
    assert course.length_m > 0.99 * sum(length(write, track(one)) for one in loops)
    assert RepairKind.DOUBLED not in kinds(course)


def test_two_ways_from_one_town_to_another_are_no_two_legs(write):
    over = [(45.0 + 0.03 * min(i, 199 - i) / 100, lon, ele) for i, (_, lon, ele) in enumerate(LINE)]
    course = read_course(write(document(track(LINE), track(over))))
    assert len(course.line) == 200
    assert course.line.latitude_deg.max() > 45.02
    assert kinds(course) == [RepairKind.DOUBLED]
