"""Values are what frozen dataclasses of the standard library are, but made sooner."""

import copy
import dataclasses
import pickle
from functools import cached_property

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from tests.rules import source
from ultraplanner_gui.plan.value import Value


class Point(Value, frozen=True):
    """Two numbers, a name and a list."""

    x: float
    y: float = 0.0
    name: str = ""
    notes: tuple[str, ...] = ()


@dataclasses.dataclass(frozen=True, slots=True)
class Usual:
    x: float
    y: float = 0.0
    name: str = ""
    notes: tuple[str, ...] = ()


class Place(Point, frozen=True):
    """A point with a height."""

    height: float = 0.0


class One(Value, frozen=True):
    """One field alone."""

    x: object


class Own(Value, frozen=True, eq=False, dict=True):
    """Equals itself alone, and works something out once."""

    x: float

    @cached_property
    def twice(self):
        return 2.0 * self.x


fields = st.tuples(
    st.sampled_from([0.0, 1.0, -0.0]), st.sampled_from([0.0, 2.0]), st.sampled_from(["", "a"])
)


@given(fields, fields)
def test_it_equals_and_hashes_as_a_usual_dataclass_does(one, other):
    ours, usual = (Point(*one), Point(*other)), (Usual(*one), Usual(*other))
    assert (ours[0] == ours[1]) is (usual[0] == usual[1])
    assert ours[0] != ours[1] or hash(ours[0]) == hash(ours[1])


def test_it_is_shown_as_a_usual_dataclass_is():
    values = (1.5, 2.0, "ford", ("x",))
    assert repr(Point(*values)) == repr(Usual(*values)).replace("Usual", "Point")
    assert repr(One((1,))) == "One(x=(1,))"


def test_another_kind_with_equal_fields_is_not_equal():
    assert Point(1.0) != Usual(1.0)
    assert Place(1.0) != Point(1.0)
    assert Place(1.0, height=2.0) != Place(1.0, height=3.0)


def test_what_equals_nothing_equals_itself_in_a_value():
    nan = float("nan")
    assert One(nan) == One(nan)
    assert Point(nan) == Point(nan)


def test_what_equals_itself_alone_works_out_a_figure_once():
    own = Own(1.0)
    assert own != Own(1.0)
    assert len({own, Own(1.0)}) == 2
    assert own.twice == 2.0
    assert vars(own) == {"twice": 2.0}


@pytest.mark.parametrize("value", [Point(1.0, name="a"), Place(1.0, height=3.0), One(None)])
def test_it_is_frozen_copied_and_pickled(value):
    with pytest.raises(AttributeError):
        value.x = 2.0
    with pytest.raises(AttributeError):
        del value.x
    for alike in (copy.deepcopy(value), pickle.loads(pickle.dumps(value))):
        assert alike == value
        assert alike is not value
    assert replace(value, x=4.0).x == 4.0
    assert not hasattr(value, "__dict__")


def test_what_is_frozen_is_a_value_unless_it_fills_fields_itself():
    frozen = [
        source.name(path)
        for path in source.modules()
        for line in path.read_text("utf-8").splitlines()
        if line.startswith("@dataclass(frozen=True")
    ]
    assert frozen == ["ultraplanner_gui/cards/setting.py"]
