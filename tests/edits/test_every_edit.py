import importlib
from pathlib import Path
from types import UnionType
from typing import Union, get_args, get_origin, get_type_hints

import pytest
from msgspec import Struct, structs

from tests.edits.made import EDITS, PROJECT, edit_id
from ultraplanner_gui import edits
from ultraplanner_gui.edits.project import GoBack
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.store.soundness import unsound_part

PARTS = Project.__struct_fields__
HOSTILE = (float("nan"), float("inf"), -float("inf"), -1.0, 1e300)
MAY_BE_BELOW_ZERO = {
    *("coldest_c", "warmest_c", "valley_m"),
    *("latitude_deg", "longitude_deg", "elevation_m", "gradient"),
}


def own_edits():
    modules = [
        importlib.import_module(f"ultraplanner_gui.edits.{path.stem}")
        for path in Path(edits.__file__).parent.glob("*.py")
        if path.stem not in ("__init__", "edit")
    ]
    return {
        value
        for module in modules
        for value in vars(module).values()
        if isinstance(value, type) and value.__module__ == module.__name__
    }


def is_number(kind):
    if get_origin(kind) in (Union, UnionType):
        return any(map(is_number, get_args(kind)))
    return kind is float


def spoilt(value, name="", kind=None):
    """Yield a path and copies of *value*, each with one number in it made hostile."""
    if is_number(kind):
        for bad in HOSTILE:
            if bad == -1.0 and name.rpartition(".")[2].partition("[")[0] in MAY_BE_BELOW_ZERO:
                continue
            yield f"{name}={bad}", bad
    elif isinstance(value, Struct) and not isinstance(value, Project):
        kinds = get_type_hints(type(value))
        for field in value.__struct_fields__:
            if field == "gesture":
                continue
            inside = spoilt(getattr(value, field), f"{name}.{field}", kinds[field])
            for path, bad in inside:
                yield path, structs.replace(value, **{field: bad})
    elif isinstance(value, tuple):
        of = get_args(kind)[:1] if kind is not None else ()
        for index, item in enumerate(value):
            for path, bad in spoilt(item, f"{name}[{index}]", *of):
                yield path, (*value[:index], bad, *value[index + 1 :])


CASES = [
    pytest.param(bad, id=f"{edit_id(edit)}{path}")
    for edit, _ in EDITS
    for path, bad in spoilt(edit)
]


def test_every_edit_is_tried_here():
    assert {type(edit) for edit, _ in EDITS} == own_edits()


@pytest.mark.parametrize("edit", CASES)
def test_number_out_of_range_is_refused_in_a_sentence(edit):
    with pytest.raises(PlanError) as refusal:
        edit.apply(PROJECT)

    said = str(refusal.value)
    assert said.endswith(".")
    assert len(said) <= 200


@pytest.mark.parametrize("pair", EDITS, ids=edit_id)
def test_edit_changes_something_and_leaves_the_other_parts_alone(pair):
    edit, touched = pair

    after = edit.apply(PROJECT)

    assert after != PROJECT
    kept = [part for part in PARTS if part not in touched]
    assert [p for p in kept if getattr(after, p) is not getattr(PROJECT, p)] == []


@pytest.mark.parametrize("pair", EDITS, ids=edit_id)
def test_edit_leaves_a_project_that_can_be_kept(pair):
    assert unsound_part(pair[0].apply(PROJECT)) is None


@pytest.mark.parametrize("pair", EDITS, ids=edit_id)
def test_equal_edits_of_equal_projects_give_equal_projects(pair):
    edit = pair[0]

    assert structs.replace(edit).apply(structs.replace(PROJECT)) == edit.apply(PROJECT)


@pytest.mark.parametrize("pair", EDITS, ids=edit_id)
def test_gesture_makes_no_difference_to_the_outcome(pair):
    edit = pair[0]

    assert structs.replace(edit, gesture=7).apply(PROJECT) == edit.apply(PROJECT)


ADDING = {
    *("AddSession", "AddStation", "AddItem", "CopyItem", "CopySessions", "PasteSessions"),
    *("RepeatWeekly", "AddGround", "AddCandidate"),
}
SHAPING = {"RunLaps", "GoOutAndBack", "JoinCourse", "ReverseCourse", "TakeHeightsAsFeet"}
PARTING = {"SplitSection", "MergeSections"}
SWAPS = {"SwapSessions", "SwapWeeks"}
BY_SO_MUCH = {"MoveSessions"}
GONE = {
    *("RemoveSession", "RemoveSessions", "RemoveItem", "RemoveStation", "RemoveFood"),
    *("RemoveGround", "RemoveCandidate", "RemoveRecording", "RemoveLesson"),
}


@pytest.mark.parametrize(
    "pair",
    [p for p in EDITS if edit_id(p) not in ADDING | GONE | SWAPS | BY_SO_MUCH | SHAPING | PARTING],
    ids=edit_id,
)
def test_edit_done_twice_is_the_edit_done_once(pair):
    once = pair[0].apply(PROJECT)

    assert pair[0].apply(once) == once


@pytest.mark.parametrize("pair", [p for p in EDITS if edit_id(p) in SWAPS], ids=edit_id)
def test_a_swap_done_twice_leaves_everything_as_it_was(pair):
    once = pair[0].apply(PROJECT)

    assert pair[0].apply(once) == PROJECT


@pytest.mark.parametrize("pair", [p for p in EDITS if edit_id(p) in GONE], ids=edit_id)
def test_what_is_gone_cannot_be_removed_again(pair):
    once = pair[0].apply(PROJECT)

    with pytest.raises(PlanError):
        pair[0].apply(once)


def test_going_back_takes_the_earlier_project_itself():
    assert GoBack(PROJECT).apply(EDITS[0][0].apply(PROJECT)) is PROJECT
