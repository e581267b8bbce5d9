from datetime import date, datetime, timedelta

import numpy as np
import pytest
from msgspec.structs import replace

from tests.engine.made_recordings import run_of
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.engine.course_scale import places_of_points
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.engine.recording_match import (
    all_matched,
    covered,
    is_same_run,
    matched,
    on_course,
)
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.course import Course, Line, sections_between
from ultraplanner_gui.plan.recording import KeptRecording, Recording

TODAY = date(2027, 4, 5)


@pytest.fixture(scope="module")
def project():
    return demo_project(TODAY)


def kept(project, day, distance_m, hour=9, key="k"):
    zone = project.race.start.tzinfo
    start = datetime(day.year, day.month, day.day, hour, tzinfo=zone)
    return KeptRecording(key, "a.gpx", b"x", start=start, distance_m=distance_m)


def past_run(project, kind=Kind.LONG):
    return next(s for s in project.block.sessions if s.kind is kind and s.done is not None)


def test_a_run_is_of_the_session_of_its_day(project):
    session = past_run(project)
    found = matched(kept(project, session.day, session.done.distance_m), project)
    assert (found.session, found.is_race) == (session.key, False)


def test_of_two_sessions_of_a_day_the_nearer_in_length_counts(project):
    session = past_run(project)
    other = replace(session, key="short", distance_m=6_000.0, done=None)
    both = replace(project, block=project.block.with_new(other))
    assert matched(kept(both, session.day, 6_500.0), both).session == "short"


def test_a_run_after_midnight_may_be_of_the_evening_before(project):
    session = past_run(project)
    night = session.day + timedelta(days=1)
    alone = replace(project, block=replace(project.block, sessions=(session,)))
    assert matched(kept(alone, night, session.done.distance_m, hour=1), alone).session
    assert not matched(kept(alone, night, session.done.distance_m, hour=9), alone).session


def test_what_is_much_too_short_is_of_no_session(project):
    session = past_run(project)
    alone = replace(project, block=replace(project.block, sessions=(session,)))
    assert not matched(kept(alone, session.day, 900.0), alone).session


def test_two_recordings_never_share_a_session(project):
    session = past_run(project)
    two = [kept(project, session.day, 1.0 * session.done.distance_m, key=k) for k in "ab"]
    alone = replace(project, block=replace(project.block, sessions=(session,)))
    assert sorted(r.session for r in all_matched(two, alone)) == ["", session.key]


def test_a_long_run_on_the_day_is_the_race(project):
    start, length_m = project.race.start, project.course.length_m
    found = matched(replace(kept(project, start.date(), 0.6 * length_m), start=start), project)
    assert found.is_race
    assert not matched(kept(project, start.date(), 3_000.0, start.hour), project).is_race


def test_a_run_along_the_course_is_found_on_it(project):
    outlook = derive(project, None, TODAY)
    length_m = project.course.length_m
    laid = on_course(project.course, run_of(outlook, 0.2 * length_m, 0.7 * length_m))
    assert laid.from_m == pytest.approx(0.2 * length_m, abs=120.0)
    assert laid.to_m == pytest.approx(0.7 * length_m, abs=120.0)
    assert laid.off_share < 0.01


def east_west(metres_east):
    """A line on the equator, where a degree is 111.3 km either way."""
    degrees = np.asarray(metres_east) / 111_319.5
    return Line(np.zeros(len(degrees)), degrees, np.full(len(degrees), 100.0))


def there_and_back():
    line = east_west(np.r_[np.arange(0.0, 5_000.0, 25.0), np.arange(5_000.0, -1.0, -25.0)])
    return Course(line, 10_000.0, (), sections_between(()))


def test_there_and_back_keep_their_order():
    course = there_and_back()
    run = Recording(course.line, 8.0 * np.arange(len(course.line.latitude_deg)))
    laid = on_course(course, run)
    np.testing.assert_allclose(laid.place_m, places_of_points(course), atol=120.0)


def three_laps():
    angle = np.linspace(0.0, 6.0 * np.pi, 900)
    line = Line(0.01 * np.sin(angle), 0.01 * np.cos(angle), np.zeros(900))
    return Course(line, 3 * 2 * np.pi * 0.01 * 111_000.0, (), sections_between(()))


def some_of(line, part):
    return Line(line.latitude_deg[part], line.longitude_deg[part], line.elevation_m[part])


@pytest.mark.parametrize("first", [90, 390, 690])
def test_a_run_begun_late_is_on_the_lap_of_its_hour(first):
    course = three_laps()
    line = some_of(course.line, slice(first, first + 150))
    at_m = places_of_points(course)[first : first + 150]
    likely_m = at_m[0] + 1_200.0
    laid = on_course(course, Recording(line, 20.0 * np.arange(150)), likely_m)
    np.testing.assert_allclose(laid.place_m, at_m, atol=150.0)


def test_a_whole_run_begins_at_the_start_whatever_its_hour():
    course = three_laps()
    laid = on_course(course, Recording(course.line, 20.0 * np.arange(900)), 0.4 * course.length_m)
    np.testing.assert_allclose(laid.place_m, places_of_points(course), atol=150.0)


def test_laps_keep_their_order():
    course = three_laps()
    line = course.line
    laid = on_course(course, Recording(line, 20.0 * np.arange(900)))
    np.testing.assert_allclose(laid.place_m, places_of_points(course), atol=150.0)


def test_off_the_line_the_place_waits():
    course = there_and_back()
    line = east_west(np.arange(0.0, 4_000.0, 25.0))
    latitude = line.latitude_deg.copy()
    latitude[60:100] = 0.004  # 440 m north
    laid = on_course(course, Recording(replace(line, latitude_deg=latitude), 8.0 * np.arange(160)))
    assert not laid.is_on[60:100].any()
    assert np.ptp(laid.place_m[62:99]) == 0.0
    assert laid.to_m == pytest.approx(3_975.0, abs=60.0)
    assert laid.off_share > 0.2


def test_a_run_elsewhere_on_race_day_is_not_the_race(project):
    run = run_of(derive(project, None, TODAY), every_s=60.0)
    aside = replace(run.line, latitude_deg=run.line.latitude_deg + 0.2)
    length_m = project.course.length_m
    one = replace(kept(project, TODAY, length_m), start=run.start)
    assert matched(one, project, points=run).is_race
    assert not matched(one, project, points=replace(run, line=aside)).is_race


def test_same_start_and_length_are_one_recording_and_two_devices_are_two(project):
    one = kept(project, TODAY, 20_000.0)
    assert is_same_run(one, replace(one, key="b", distance_m=20_010.0))
    assert not is_same_run(one, replace(one, key="b", distance_m=20_500.0))
    assert not is_same_run(one, replace(one, key="b", start=one.start + timedelta(seconds=40)))
    assert not is_same_run(replace(one, start=None), replace(one, key="b", start=None))


def test_there_and_back_covers_the_way_out_once(project):
    length_m = project.course.length_m
    out = run_of(derive(project, None, TODAY), 0.0, 0.2 * length_m, every_s=30.0)
    columns = (out.line.latitude_deg, out.line.longitude_deg, out.line.elevation_m)
    line = Line(*(np.concatenate((c, c[::-1])) for c in columns))
    clock_s = np.concatenate((out.elapsed_s, out.elapsed_s[-1] + out.elapsed_s))
    found = covered(project.course, Recording(line, clock_s))
    assert found.off_share < 0.01
    (start_m, end_m), *_ = found.spans_m
    assert start_m == pytest.approx(0.0, abs=100.0)
    assert end_m == pytest.approx(0.2 * length_m, abs=150.0)


def test_a_run_elsewhere_covers_nothing(project):
    run = run_of(derive(project, None, TODAY), every_s=60.0)
    aside = replace(run.line, latitude_deg=run.line.latitude_deg + 1.0)
    found = covered(project.course, replace(run, line=aside))
    assert (found.spans_m, found.share, found.off_share) == ((), 0.0, 1.0)


def test_half_a_run_beside_the_line_is_said_to_be_off_it(project):
    run = run_of(derive(project, None, TODAY), every_s=60.0)
    half = np.linspace(0.0, 1.0, len(run.line)) > 0.5
    latitude = run.line.latitude_deg + np.where(half, 0.2, 0.0)
    found = covered(project.course, replace(run, line=replace(run.line, latitude_deg=latitude)))
    assert found.share == pytest.approx(0.5, abs=0.1)
