"""Any deeds in any order leave a course that can be kept and reckoned with."""

from itertools import pairwise

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.edits.hilly import LOOP, ONE_WAY, project_with
from ultraplanner_gui.edits.course import AddStation, MoveSectionEnd, RemoveStation, check_course
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
from ultraplanner_gui.edits.sections import CutSections, MergeSections, SplitSection
from ultraplanner_gui.edits.surfaces import PaintSurface
from ultraplanner_gui.engine.course_scale import knots
from ultraplanner_gui.engine.profile import build_profile
from ultraplanner_gui.engine.section_cuts import CutBy
from ultraplanner_gui.plan.course import Surface
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.store.soundness import is_sound_line, unsound_part

share = st.floats(0.0, 1.0)
number = st.integers(0, 50)


def pick(items, at):
    return items[at % len(items)].key if items else "none"


#: Deeds as functions of the course they are done to, places as shares of its length.
DEEDS = st.one_of(
    st.builds(
        lambda a, b: lambda c: TrimCourse(min(a, b) * c.length_m, max(a, b) * c.length_m),
        *(share, share),
    ),
    st.just(lambda c: ReverseCourse()),
    st.builds(lambda n: lambda c: RunLaps(n, "Base"), st.integers(1, 3)),
    st.just(lambda c: GoOutAndBack("Turn")),
    st.just(lambda c: JoinCourse(LOOP)),
    st.builds(lambda f: lambda c: SetOfficialDistance(f * c.length_m), st.floats(0.7, 1.4)),
    st.just(lambda c: SetOfficialDistance(None)),
    st.builds(lambda m: lambda c: SetOfficialHeights(m, None), st.floats(300, 5_000)),
    st.builds(
        lambda n, f: (
            lambda c: PinStation(
                pick(c.stations, n), f * c.stations[n % len(c.stations)].at_m if c.stations else 1.0
            )
        ),
        *(number, st.floats(0.8, 1.2)),
    ),
    st.builds(lambda n: lambda c: PinStation(pick(c.stations, n), None), number),
    st.builds(
        lambda by, km: lambda c: CutSections(by, 1000.0 * km),
        st.sampled_from(CutBy),
        st.floats(1, 30),
    ),
    st.builds(lambda f: lambda c: SplitSection(f * c.length_m), share),
    st.builds(lambda n: lambda c: MergeSections(pick(c.sections, n)), number),
    st.builds(
        lambda n, f: lambda c: MoveSectionEnd(pick(c.sections, n), f * c.length_m), number, share
    ),
    st.builds(
        lambda a, b, s: lambda c: PaintSurface(min(a, b) * c.length_m, max(a, b) * c.length_m, s),
        *(share, share, st.sampled_from(Surface)),
    ),
    st.builds(lambda f: lambda c: AddStation("New", f * c.length_m), share),
    st.builds(lambda n: lambda c: RemoveStation(pick(c.stations, n)), number),
)


@settings(max_examples=120, deadline=None)
@given(st.lists(DEEDS, min_size=1, max_size=6), st.booleans())
def test_any_deeds_leave_a_sound_course(deeds, is_loop):
    project = project_with(LOOP if is_loop else ONE_WAY)
    for deed in deeds:
        try:
            project = deed(project.course).apply(project)
        except PlanError:
            continue
        course = project.course
        assert unsound_part(project) is None
        assert is_sound_line(course.line)
        check_course(course)
        for places in knots(course):
            assert all(a < b for a, b in pairwise(places))
        for one, two in pairwise(course.surfaces):
            assert one.end_m <= two.start_m + 1e-6
    profile = build_profile(project.course)
    assert np.isfinite(profile.elevation_m).all()
    assert profile.length_m == project.course.length_m
