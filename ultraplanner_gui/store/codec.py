"""Values to JSON by their type hints, and nothing that could not be read back.

A field is always written, also one that stands at its default: msgspec takes three times as long
to fill in what is absent as to read it.
"""

from __future__ import annotations

import json
import math
import types
from collections.abc import Callable, Mapping
from datetime import date, datetime
from enum import Enum
from functools import cache, partial
from typing import Any, Literal, TypeAlias, TypeGuard, TypeVar, Union, get_args, get_origin
from zoneinfo import ZoneInfo

from msgspec import structs

from ultraplanner_gui.plan.value import LARGEST_NUMBER, Number, Value, Whole
from ultraplanner_gui.store.troubles import damaged, unfit

Json: TypeAlias = "bool | int | float | str | list[Json] | dict[str, Json] | None"
T = TypeVar("T")
_Encode: TypeAlias = Callable[[object], Json]

MOST_CHARACTERS = 200_000
MOST_ENTRIES = 20_000
UNIONS = (Union, types.UnionType)


class _Misfit(Exception):
    """A value does not fit its type; `place` is filled in on the way out."""

    def __init__(self, place: str = "") -> None:
        super().__init__(place)
        self.place = place

    def within(self, place: str) -> _Misfit:
        """Return the same trouble seen from one level further out."""
        joint = "." if self.place and not self.place.startswith(" ") else ""
        return _Misfit(f"{place}{joint}{self.place}")


def encode(kind: type[T], value: T, place: str, omit: frozenset[str] = frozenset()) -> bytes:
    """Return *value* of type *kind* as JSON bytes, the fields in *omit* left out.

    Raises StoreError naming *place* if it holds what could not be read back.
    """
    try:
        coded = _coder(kind, omit)(value)  # type: ignore[arg-type]  # mypy: a class, no value of it
    except _Misfit as misfit:
        raise unfit(misfit.within(place).place) from misfit
    return to_bytes(coded)


def check(kind: object, value: object, place: str, omit: frozenset[str] = frozenset()) -> None:
    """Raise StoreError naming *place* if *value*, just read, could not have been written."""
    try:
        _coder(kind, omit)(value)
    except _Misfit as misfit:
        raise damaged(misfit.within(place).place) from misfit


def to_bytes(coded: Json) -> bytes:
    """Return JSON as ASCII bytes, the same for the same value."""
    return json.dumps(coded, separators=(",", ":"), allow_nan=False).encode("ascii")


def from_bytes(body: bytes, place: str) -> Json:
    """Return the JSON in *body*; StoreError naming *place* if it is none."""
    try:
        coded: Json = _READ_JSON(body.decode("ascii"))
    except (ValueError, RecursionError) as error:
        raise damaged(place) from error
    return coded


@cache
def hints_of(kind: type[Value]) -> dict[str, Any]:
    """Return the types of the fields of *kind*, by their names in order."""
    return {field.name: field.type for field in structs.fields(kind)}


def is_kind(hint: object) -> TypeGuard[type[Value]]:
    """Whether the type *hint* is a kind of value."""
    return isinstance(hint, type) and issubclass(hint, Value)


def _no_constant(text: str) -> Json:
    raise ValueError(text)


_READ_JSON = json.JSONDecoder(parse_constant=_no_constant).decode


@cache
def _coder(hint: object, omit: frozenset[str] = frozenset()) -> _Encode:
    if hint in _PLAIN:
        return _PLAIN[hint]
    origin, args = get_origin(hint), get_args(hint)
    if origin in UNIONS:
        return partial(_union, tuple(map(_coder, args)))
    if origin is tuple and args[-1] is Ellipsis:
        return partial(_row, _coder(args[0]))
    if origin is tuple:
        return partial(_fixed, tuple(map(_coder, args)))
    if origin is Literal:
        return partial(_one_of, {value: value for value in args})
    if isinstance(hint, type) and issubclass(hint, Enum):
        return partial(_one_of, {member: member.value for member in hint})
    if is_kind(hint):
        kept = {name: _coder(of) for name, of in hints_of(hint).items() if name not in omit}
        return partial(_record, hint, kept)
    raise TypeError(f"no way to keep a {hint!r}")


def _plain(kind: type, most: float, value: object) -> Json:
    """Return *value*, which is a *kind*; *most* bounds a number or the length of a text."""
    # type() and not isinstance(): True is an int to isinstance
    if type(value) is not kind or not isinstance(value, bool | int | str):
        raise _Misfit
    if (len(value) if isinstance(value, str) else abs(value)) > most:
        raise _Misfit
    return value


def _nothing(value: object) -> None:
    if value is not None:
        raise _Misfit


def _number(value: object) -> float:
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise _Misfit
    # compared before float(), which a huge integer would overflow
    if not -LARGEST_NUMBER <= value <= LARGEST_NUMBER or not math.isfinite(value):
        raise _Misfit
    return float(value)


def _day(value: object) -> Json:
    if not isinstance(value, date) or isinstance(value, datetime):
        raise _Misfit
    return value.isoformat()


def _time(value: object) -> Json:
    if not isinstance(value, datetime) or value.tzinfo is None:
        raise _Misfit
    zone = value.tzinfo
    key = zone.key if isinstance(zone, ZoneInfo) else None
    return f"{value.isoformat()}[{key}]" if key else value.isoformat()


_PLAIN: dict[object, _Encode] = {
    str: partial(_plain, str, MOST_CHARACTERS),
    bool: partial(_plain, bool, 1),
    Whole: partial(_plain, int, LARGEST_NUMBER),
    Number: _number,
    type(None): _nothing,
    date: _day,
    datetime: _time,
}


def _one_of(values: Mapping[object, Json], value: object) -> Json:
    if value not in values:
        raise _Misfit
    return values[value]


def _row(entry: _Encode, value: object) -> Json:
    if not isinstance(value, tuple) or len(value) > MOST_ENTRIES:
        raise _Misfit
    return [_at(i, entry, v) for i, v in enumerate(value)]


def _fixed(entries: tuple[_Encode, ...], value: object) -> Json:
    if not isinstance(value, tuple) or len(value) != len(entries):
        raise _Misfit
    return [_at(i, entry, v) for i, (entry, v) in enumerate(zip(entries, value, strict=True))]


def _at(index: int, entry: _Encode, value: object) -> Json:
    try:
        return entry(value)
    except _Misfit as misfit:
        raise misfit.within(f" {index + 1}") from misfit


def _union(options: tuple[_Encode, ...], value: object) -> Json:
    deepest = _Misfit()
    for option in options:
        try:
            return option(value)
        except _Misfit as misfit:
            deepest = max(deepest, misfit, key=lambda m: len(m.place))
    raise deepest


def _record(kind: type, kept: Mapping[str, _Encode], value: object) -> Json:
    if type(value) is not kind:
        raise _Misfit
    coded: dict[str, Json] = {}
    for name, entry in kept.items():
        try:
            coded[name] = entry(getattr(value, name))
        except _Misfit as misfit:
            raise misfit.within(name) from misfit
    return coded
