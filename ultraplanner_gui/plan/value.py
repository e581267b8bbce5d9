"""Frozen dataclasses with slots, made in little more than half the time they take as a rule.

The standard library writes and compiles six functions for each class, which takes half a
millisecond: a fifth of the start of a program with hundreds of them. Here three of the six, for
comparing, hashing and showing, are the same functions in all of them.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Callable
from functools import cache
from inspect import get_annotations
from operator import attrgetter
from reprlib import recursive_repr
from typing import TYPE_CHECKING, Annotated, Any, ClassVar, TypeVar

from msgspec import Meta, Struct

__all__ = ["LARGEST_NUMBER", "Number", "Value", "Whole", "dataclass"]

T = TypeVar("T")

#: No figure of a plan is larger, so that sums and squares of many stay far from the ends of a
#: double.
LARGEST_NUMBER = 10**12

_WITHIN = Meta(ge=-LARGEST_NUMBER, le=LARGEST_NUMBER)
Number = Annotated[float, _WITHIN]
"""A figure in a `Value`."""
Whole = Annotated[int, _WITHIN]
"""A whole number in a `Value`."""


class _Fields:
    """The fields of a `Value` as the standard library has them, found once they are asked for."""

    def __get__(self, _value: object, cls: type[Value]) -> dict[str, dataclasses.Field[Any]]:
        return _fields_of(cls)


class Value(Struct, frozen=True, gc=False):
    """A part of a plan, never changed in place: what a project file holds, made as it is read.

    `dataclasses` takes it for one of its own, so that `replace`, `fields` and `is_dataclass` do
    what they do there. A plan holds no value that leads back to itself, so that Python need not
    look for such.
    """

    __dataclass_fields__: ClassVar[dict[str, dataclasses.Field[Any]]] = _Fields()  # type: ignore


@cache
def _fields_of(cls: type[Value]) -> dict[str, dataclasses.Field[Any]]:
    types = {name: of for base in cls.__mro__ for name, of in get_annotations(base).items()}
    names, defaults = cls.__struct_fields__, cls.__struct_defaults__
    needed = len(names) - len(defaults)
    told = [(name, types[name]) for name in names[:needed]]
    more = [
        (name, types[name], dataclasses.field(default=default))
        for name, default in zip(names[needed:], defaults, strict=True)
    ]
    twin = dataclasses.make_dataclass(
        cls.__name__, [*told, *more], init=False, repr=False, eq=False
    )
    return twin.__dataclass_fields__  # type: ignore


if TYPE_CHECKING:
    from dataclasses import dataclass
else:

    def dataclass(*, eq: bool = True, **wishes: bool) -> Callable[[type[T]], type[T]]:
        """Do what `dataclasses.dataclass` does; sooner for a frozen one with slots, no order."""
        if wishes != {"frozen": True, "slots": True}:
            return dataclasses.dataclass(eq=eq, **wishes)
        return _value if eq else _own_value


def _value(cls: type[T]) -> type[T]:
    """Return *cls* as a value that equals those of its kind with equal fields."""
    has_equality, has_hash = "__eq__" in vars(cls), vars(cls).get("__hash__") is not None
    made = _own_value(cls)
    key = _key(*(f.name for f in dataclasses.fields(made) if f.compare))  # type: ignore[arg-type]

    def __eq__(self: object, other: object) -> bool:
        if other.__class__ is not self.__class__:
            return NotImplemented
        return key(self) == key(other)

    def __hash__(self: object) -> int:
        return hash(key(self))

    if not has_equality:
        made.__eq__ = __eq__  # type: ignore[method-assign]
    if not has_hash:
        made.__hash__ = __hash__  # type: ignore[method-assign]
    return made


def _own_value(cls: type[T]) -> type[T]:
    """Return *cls* as a value that equals itself alone."""
    # Without a docstring the library would write one, from the signature it has to look for.
    cls.__doc__ = cls.__doc__ or cls.__name__
    made = dataclasses.dataclass(frozen=True, slots=True, eq=False, repr=False)(cls)
    if "__repr__" not in vars(made):
        made.__repr__ = _shown  # type: ignore[method-assign]
    return made


def _key(*names: str) -> Callable[[object], tuple[object, ...]]:
    """Return what gives the fields *names* of a value as a tuple."""
    if len(names) > 1:
        return attrgetter(*names)
    return lambda value: tuple(getattr(value, name) for name in names)


@recursive_repr()
def _shown(value: object) -> str:
    fields = dataclasses.fields(value)  # type: ignore[arg-type]
    shown = ", ".join(f"{f.name}={getattr(value, f.name)!r}" for f in fields if f.repr)
    return f"{type(value).__qualname__}({shown})"
