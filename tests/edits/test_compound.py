import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from tests.edits.made import EDITS, PLANNED, PROJECT, STATIONS
from ultraplanner_gui.edits.block import ChangeSession, RemoveSession
from ultraplanner_gui.edits.compound import PasteCells
from ultraplanner_gui.edits.course import ChangeStation
from ultraplanner_gui.plan.message import PlanError

LONGER = ChangeSession(replace(PLANNED, distance_m=9_000.0))
FORD = ChangeStation(replace(STATIONS[0], stop_s=240.0))


def test_all_of_it_is_one_deed():
    after = PasteCells((LONGER, FORD)).apply(PROJECT)
    assert after.block.session("easy").distance_m == 9_000.0
    assert after.course.station("ford").stop_s == 240.0
    assert after.runner is PROJECT.runner


def test_one_change_that_cannot_be_made_refuses_them_all():
    with pytest.raises(PlanError, match="no longer in the build-up"):
        PasteCells((FORD, RemoveSession("nobody"))).apply(PROJECT)


def test_later_changes_see_the_earlier_ones():
    with pytest.raises(PlanError, match="no longer in the build-up"):
        PasteCells((RemoveSession("easy"), LONGER)).apply(PROJECT)


def test_nothing_pasted_is_the_project_itself():
    assert PasteCells(()).apply(PROJECT) is PROJECT


SINGLE = [edit for edit, touched in EDITS if "race" not in touched]


@given(st.lists(st.sampled_from(SINGLE), max_size=4))
def test_it_is_what_its_parts_are_one_after_another(edits):
    project, refusal = PROJECT, None
    try:
        for edit in edits:
            project = edit.apply(project)
    except PlanError as error:
        refusal = str(error)
    if refusal is None:
        assert PasteCells(tuple(edits)).apply(PROJECT) == project
    else:
        with pytest.raises(PlanError) as said:
            PasteCells(tuple(edits)).apply(PROJECT)
        assert str(said.value) == refusal
