"""Values are dataclasses in every way, and as the standard library makes them."""

import copy
import dataclasses
import pickle

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.plan.value import dataclass


@dataclass(frozen=True, slots=True)
class Point:
    """Two numbers, a name that is not compared, and a list that is not shown."""

    x: float
    y: float = 0.0
    name: str = dataclasses.field(default="", compare=False)
    notes: tuple[str, ...] = dataclasses.field(default=(), repr=False)


@dataclasses.dataclass(frozen=True, slots=True)
class Usual:
    x: float
    y: float = 0.0
    name: str = dataclasses.field(default="", compare=False)
    notes: tuple[str, ...] = dataclasses.field(default=(), repr=False)


@dataclass(frozen=True, slots=True)
class Place(Point):
    """A point with a height."""

    height: float = 0.0


@dataclass(frozen=True, slots=True)
class One:
    """One field alone."""

    x: object


@dataclass(frozen=True, slots=True, eq=False)
class Own:
    """Equals itself alone."""

    x: float


@dataclass(frozen=True, slots=True)
class Length:
    """Equals by a rule of its own."""

    x: float

    def __eq__(self, other):
        return isinstance(other, Length) and abs(self.x) == abs(other.x)


fields = st.tuples(
    st.sampled_from([0.0, 1.0, -0.0]), st.sampled_from([0.0, 2.0]), st.sampled_from(["", "a"])
)


@given(fields, fields)
def test_it_equals_and_hashes_as_a_usual_dataclass_does(one, other):
    ours, usual = (Point(*one), Point(*other)), (Usual(*one), Usual(*other))
    assert (ours[0] == ours[1]) is (usual[0] == usual[1])
    assert hash(ours[0]) == hash(usual[0])


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


def test_equality_of_its_own_is_kept():
    assert Own(1.0) != Own(1.0)
    assert Length(-2.0) == Length(2.0)
    assert hash(Length(2.0)) == hash((2.0,))


@pytest.mark.parametrize("value", [Point(1.0, name="a"), Place(1.0, height=3.0), One(None)])
def test_it_is_frozen_copied_and_pickled(value):
    with pytest.raises(dataclasses.FrozenInstanceError):
        value.x = 2.0
    with pytest.raises(dataclasses.FrozenInstanceError):
        del value.x
    for alike in (copy.deepcopy(value), pickle.loads(pickle.dumps(value))):
        assert alike == value
        assert alike is not value
    assert dataclasses.replace(value, x=4.0).x == 4.0
    assert not hasattr(value, "__dict__")
