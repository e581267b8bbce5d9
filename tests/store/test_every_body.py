"""What msgspec makes of a body is what reading it value by value makes of it."""

import copy
import json

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.store.projects import full_project
from tests.store.slow_reader import Refused, read
from ultraplanner_gui.plan.message import StoreError
from ultraplanner_gui.store.codec import hints_of, is_kind
from ultraplanner_gui.store.decoding import decode, decode_rows
from ultraplanner_gui.store.parts import KINDS, pieces

PROJECT = full_project(sessions=6, points=40)
BODIES = [
    (piece.name, json.loads(piece.write())) for piece in pieces(PROJECT) if piece.name in KINDS
]
WHOLE = {
    "project": PROJECT,
    "race": PROJECT.race,
    "runner": PROJECT.runner,
    "block": PROJECT.block,
    "fuel": PROJECT.fuel,
    "course": PROJECT.course,
    "recordings": PROJECT.recordings[0],
}
ODD = st.sampled_from(
    (
        *(None, True, False, 0, 1, -7, 0.5, 1e12, -1.1e12, 10**30, -1e300, 5e-324),
        *(
            "",
            "a",
            "easy run",
            "2027-02-28",
            "2027-02-30",
            "20270228",
            "x" * 200_001,
            "\udcff",
            "é",
        ),
        *(
            "2027-06-19T06:00:00+01:00[Europe/London]",
            "2027-06-19T06:00:00",
            "0001-01-01T00:00+14:00",
        ),
        *([], [1], ["a"], [[1, 2]], [True, ""], [{}], {}, {"name": "a"}, [0.0] * 20_001),
        {"template": "a", "args": [1, {"value": 2, "unit": "m"}], "kind": "spikes"},
    )
)


def places(coded, path=()):
    """Every place in *coded*, by the keys and indices that lead there."""
    yield path
    if isinstance(coded, dict | list):
        for key in coded if isinstance(coded, dict) else range(len(coded)):
            yield from places(coded[key], (*path, key))


def changed(coded, path, odd, how):
    if not path:
        return odd
    coded = copy.deepcopy(coded)
    at = coded
    for key in path[:-1]:
        at = at[key]
    if how == "gone":
        del at[path[-1]]
    elif how == "more" and isinstance(at, dict):
        at["unheard"] = odd
    else:
        at[path[-1]] = odd
    return coded


def both(name, coded):
    """What the store and the slow reader make of *coded*, None where they refuse it."""
    kind, body = KINDS[name], json.dumps(coded).encode()
    apart, said = {}, None
    if is_kind(kind):
        held = next(of for other, of in BODIES if other == name)
        apart = {n: getattr(WHOLE[name], n) for n in hints_of(kind) if n not in held}
    try:
        if is_kind(kind):
            ours = decode(kind, body, name, apart)
        else:
            ours = decode_rows(kind.__args__[0], [body], name)
    except StoreError as error:
        ours, said = None, str(error)
    assert said is None or (said.startswith(f"The part {name}") and len(said) <= 200)
    try:
        return ours, read(kind, coded, apart)
    except Refused:
        return ours, None


@pytest.mark.parametrize("name", KINDS)
def test_every_part_is_among_the_bodies(name):
    for coded in (of for other, of in BODIES if other == name):
        ours, slowly = both(name, coded)
        assert ours == slowly is not None
        break
    else:
        raise AssertionError(f"no body of {name}")


@given(st.data())
@settings(max_examples=400)
def test_changed_bodies_are_read_or_refused_alike(data):
    name, coded = data.draw(st.sampled_from(BODIES))
    for _ in range(data.draw(st.integers(1, 2))):
        path = data.draw(st.sampled_from(list(places(coded))))
        how = data.draw(st.sampled_from(("odd", "odd", "gone", "more")))
        coded = changed(coded, path, data.draw(ODD), how)
    ours, slowly = both(name, coded)
    assert ours == slowly
    assert repr(ours) == repr(slowly)
