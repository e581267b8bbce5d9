from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from tests.edits.hilly import LOOP, ONE_WAY, project_with
from ultraplanner_gui.edits.course import ChangeStation
from ultraplanner_gui.edits.sections import (
    CutSections,
    MergeSections,
    RenameSection,
    SplitSection,
)
from ultraplanner_gui.edits.surfaces import PaintSurface, SetSurfaceFactors
from ultraplanner_gui.engine.profile import build_profile
from ultraplanner_gui.engine.section_cuts import CutBy
from ultraplanner_gui.engine.surface_spans import surface_at, surface_factors_of
from ultraplanner_gui.plan.course import Slope, Surface, SurfaceFactors
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.science.surface import COST_FACTOR, DESCENT_FACTOR
from ultraplanner_gui.store.soundness import unsound_part


def done(course, *edits):
    project = project_with(course)
    for edit in edits:
        project = edit.apply(project)
    assert unsound_part(project) is None
    return project.course


def words(course):
    return " ".join(s.hard_note for s in course.sections if s.hard_note)


# Sections


def test_sections_by_stations_end_at_stations_and_keep_what_did_not_change():
    course = done(LOOP, CutSections(CutBy.STATIONS))
    assert [s.station for s in course.sections] == ["hut", "mill", None]
    assert course.sections[0] == LOOP.sections[0]
    assert course.sections[1].target_s is None
    assert words(course) == words(LOOP)


def test_sections_by_distance_end_there_and_at_stations():
    course = done(LOOP, CutSections(CutBy.DISTANCE, 5_000.0))
    ends_km = [5, 8, 10, 15, 20, 21, 25, LOOP.length_m / 1000]
    assert course.section_ends() == pytest.approx([1000.0 * km for km in ends_km])
    assert course.sections[1].station == "hut"


def test_cutoffs_always_end_a_section():
    course = done(LOOP, CutSections(CutBy.DISTANCE, 5_000.0, with_stations=False))
    assert [s.station for s in course.sections if s.station] == ["hut"]
    mill = replace(course.station("mill"), cutoff_s=20_000.0)
    assert {s.station for s in done(course, ChangeStation(mill)).sections} >= {"hut", "mill"}


def test_what_is_left_at_the_finish_is_no_sliver():
    ends_m = done(LOOP, CutSections(CutBy.DISTANCE, 7_000.0, False)).section_ends()
    assert np.diff((0.0, *ends_m)).min() > 900.0
    assert ends_m[-2] == 21_000.0


def test_sections_by_climbs_are_numbered_in_course_order():
    course = done(ONE_WAY, CutSections(CutBy.CLIMBS, with_stations=False))
    climbs = [s.number for s in course.sections if s.slope is Slope.CLIMB]
    assert sorted(set(climbs)) == [1, 2, 3, 4]
    assert climbs == sorted(climbs)
    profile = build_profile(course)
    for section, (low_m, high_m) in zip(
        course.sections, pairwise((0.0, *course.section_ends())), strict=True
    ):
        climb_m, drop_m = profile.climb_drop(low_m, high_m)
        if section.slope is not None:
            assert (climb_m > drop_m) is (section.slope is Slope.CLIMB)


@settings(max_examples=30, deadline=None)
@given(
    st.sampled_from(list(CutBy)),
    st.floats(500, 40_000),
    st.booleans(),
    st.booleans(),
)
def test_cutting_anew_loses_no_words_and_no_ground(by, every_m, with_stations, is_loop):
    before = LOOP if is_loop else ONE_WAY
    course = done(before, CutSections(by, every_m, with_stations))
    assert course.section_ends()[-1] == before.length_m
    assert np.diff((0.0, *course.section_ends())).min() >= 100.0
    assert {"Walk", "ramp.", "Sing."} <= set(words(course).split())
    assert done(course, CutSections(by, every_m, with_stations)) is course


def test_split_section_keeps_its_words_where_its_middle_is():
    course = done(LOOP, SplitSection(3_000.0))
    assert course.section_ends()[:2] == (3_000.0, 8_000.0)
    first, second = course.sections[:2]
    assert (first.target_s, second.target_s) == (None, None)
    assert (first.hard_note, second.hard_note) == ("", "Walk the ramp.")
    assert course.sections[2:] == LOOP.sections[1:]


def test_split_and_merged_section_is_whole_again_but_for_its_target():
    course = done(LOOP, SplitSection(3_000.0))
    whole = done(course, MergeSections(course.sections[0].key))
    assert whole.section_ends() == LOOP.section_ends()
    assert whole.sections[0] == replace(LOOP.sections[0], target_s=None)


@pytest.mark.parametrize("at_m", [50.0, 7_950.0, 8_000.0, -5.0, 40_000.0, float("nan")])
def test_section_is_not_split_into_nothing(at_m):
    with pytest.raises(PlanError):
        done(LOOP, SplitSection(at_m))


def test_sections_are_not_joined_over_a_cutoff_or_the_finish():
    with pytest.raises(PlanError, match="cutoff at Hut"):
        done(LOOP, MergeSections("to-hut"))
    with pytest.raises(PlanError, match="last section"):
        done(LOOP, MergeSections("finish"))
    assert done(LOOP, MergeSections("to-mill")).stations is LOOP.stations


def test_section_is_renamed_in_one_line():
    course = done(LOOP, RenameSection("to-hut", "  Up \n the  ramp "))
    assert course.sections[0].name == "Up the ramp"
    assert done(course, RenameSection("to-hut", "Up the ramp")) is course
    with pytest.raises(PlanError, match="60"):
        done(LOOP, RenameSection("to-hut", "x" * 61))


# Surfaces

places = st.floats(0, 29_900)
strokes = st.lists(st.tuples(places, places, st.sampled_from(list(Surface))), max_size=8)


@settings(max_examples=60, deadline=None)
@given(strokes)
def test_painted_spans_stay_ordered_apart_and_merged(painted):
    edits = [
        PaintSurface(min(a, b), max(a, b), surface) for a, b, surface in painted if abs(a - b) >= 10
    ]
    course = done(LOOP, *edits)
    for one, two in pairwise(course.surfaces):
        assert one.end_m <= two.start_m
        assert one.end_m < two.start_m or one.surface is not two.surface
    assert all(s.start_m < s.end_m for s in course.surfaces)
    assert Surface.UNKNOWN not in {s.surface for s in course.surfaces}
    # Whatever was painted last lies on top.
    for at_m in np.linspace(7.0, 29_000.0, 40):
        on_top = [e.surface for e in edits if e.start_m <= at_m < e.end_m]
        assert surface_at(course, at_m) is (on_top[-1] if on_top else surface_at(LOOP, at_m))


def test_unknown_erases():
    course = done(LOOP, PaintSurface(0.0, LOOP.length_m, Surface.UNKNOWN))
    assert course.surfaces == ()


def test_the_same_paint_again_changes_nothing():
    project = project_with(LOOP)
    assert PaintSurface(1_000.0, 4_000.0, Surface.ROAD).apply(project) is project


@pytest.mark.parametrize(("start_m", "end_m"), [(5.0, 10.0), (9.0, 3.0), (-1.0, 50.0), (0.0, 4e4)])
def test_paint_off_the_course_is_refused(start_m, end_m):
    with pytest.raises(PlanError):
        done(LOOP, PaintSurface(start_m, end_m, Surface.SAND))


def test_factors_of_the_course_come_before_the_usual_ones_and_can_be_taken_away():
    course = done(LOOP, SetSurfaceFactors(Surface.ROCK, 1.25, 0.7))
    assert surface_factors_of(course)[Surface.ROCK] == SurfaceFactors(Surface.ROCK, 1.25, 0.7)
    assert surface_factors_of(course)[Surface.SAND].cost == COST_FACTOR["sand"]
    usual = done(course, SetSurfaceFactors(Surface.ROCK, None, None))
    assert usual.surface_factors == ()
    assert surface_factors_of(usual)[Surface.ROCK].descent == DESCENT_FACTOR["rock"]


def test_cost_of_a_surface_is_the_users_own():
    course = done(LOOP, SetSurfaceFactors(Surface.ROCK, 1.25, 0.7))
    profile = build_profile(course)
    assert profile.surface_cost[profile.distance_m.searchsorted(8_000.0)] == 1.25


@pytest.mark.parametrize(("cost", "descent"), [(0.4, 0.7), (6.0, 0.7), (1.2, 0.0), (1.2, None)])
def test_factors_have_ranges(cost, descent):
    with pytest.raises(PlanError):
        done(LOOP, SetSurfaceFactors(Surface.ROCK, cost, descent))
