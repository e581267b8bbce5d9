"""Real courses, where they are at hand, changed in every way."""

import pytest

from tests.edits.hilly import project_with
from ultraplanner_gui.edits.course_shape import (
    GoOutAndBack,
    JoinCourse,
    PinStation,
    ReverseCourse,
    RunLaps,
    SetOfficialDistance,
    SetOfficialHeights,
    TrimCourse,
)
from ultraplanner_gui.edits.sections import CutSections
from ultraplanner_gui.engine.profile import build_profile
from ultraplanner_gui.engine.section_cuts import CutBy
from ultraplanner_gui.exchange.gpx_in import read_course
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.store.soundness import is_sound_line, unsound_part


@pytest.fixture(params=("course-05", "course-06", "course-07", "course-12", "course-15"))
def course(request, shared):
    (path,) = shared.glob(f"courses/{request.param}*")
    return read_course(path)


def changed(course, edit):
    project = edit.apply(project_with(course))
    assert unsound_part(project) is None
    assert is_sound_line(project.course.line)
    return project.course, build_profile(project.course)


def test_every_way_to_change_its_shape(course):
    before = build_profile(course)
    length_m = course.length_m
    both_m = before.ascent_m + before.descent_m
    _, part = changed(course, TrimCourse(0.2 * length_m, 0.7 * length_m))
    climb_m, drop_m = before.climb_drop(0.2 * length_m, 0.7 * length_m)
    assert (part.ascent_m, part.descent_m) == pytest.approx((climb_m, drop_m), abs=12.0)
    _, back = changed(course, ReverseCourse())
    assert (back.ascent_m, back.descent_m) == pytest.approx(
        (before.descent_m, before.ascent_m), rel=0.002, abs=1.0
    )
    _, twice = changed(course, GoOutAndBack("Turn"))
    assert twice.length_m == pytest.approx(2 * length_m)
    assert twice.ascent_m == pytest.approx(both_m, rel=0.02)
    _, joined = changed(course, JoinCourse(course))
    assert joined.length_m >= 2 * length_m - 1.0
    try:
        _, laps = changed(course, RunLaps(3, "Base"))
    except PlanError:
        return
    assert laps.length_m >= 3 * length_m - 1.0


def test_official_figures_and_pins(course):
    before = build_profile(course)
    longer, profile = changed(course, SetOfficialDistance(1.04 * course.length_m))
    assert profile.ascent_m == pytest.approx(before.ascent_m, rel=0.02, abs=1.0)
    if before.has_elevation:
        _, higher = changed(longer, SetOfficialHeights(1.1 * before.ascent_m, None))
        assert higher.ascent_m == pytest.approx(1.1 * before.ascent_m)
    for station in course.stations[1:3]:
        longer, _ = changed(longer, PinStation(station.key, 1.03 * station.at_m))
        assert longer.is_pinned(longer.station(station.key))


@pytest.mark.parametrize("by", CutBy)
def test_cut_into_sections(course, by):
    cut, _ = changed(course, CutSections(by, 10_000.0))
    assert {s.key for s in cut.stations} <= {s.station for s in cut.sections}
