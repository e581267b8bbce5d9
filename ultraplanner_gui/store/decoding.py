"""JSON bodies to values by their type hints, every value checked.

msgspec makes the values as it parses, and checks types and how far numbers reach. How long a text
or a row is it leaves to `codec.check`, which looks at bodies that are long enough for it to matter.

A field that is not known here is passed over: it was added by a newer minor version. One that is
absent has its default, in every older file. So a default, once released, never changes.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from contextlib import suppress
from datetime import UTC, datetime, timedelta
from functools import cache, partial
from typing import (
    Any,
    NamedTuple,
    Required,
    TypedDict,
    TypeVar,
    get_args,
    get_origin,
)
from zoneinfo import ZoneInfo

from msgspec import convert, structs
from msgspec.json import Decoder

from ultraplanner_gui.store.codec import (
    MOST_ENTRIES,
    UNIONS,
    Json,
    check,
    from_bytes,
    hints_of,
    is_kind,
)
from ultraplanner_gui.store.troubles import damaged

T = TypeVar("T")

_LONGEST_TIME = 100
_Make = Callable[[Any], object]
#: A body no longer than this holds no text of too many characters and no list of too many entries.
_SHORT_BYTES = 2 * MOST_ENTRIES
_FAULT = re.compile(r"^(?:Object missing required field `(\w+)`)?.*?(?: - at `\$(.*)`)?$")


def decode(kind: type[T], body: bytes, place: str, given: Mapping[str, object] | None = None) -> T:
    """Return the *kind* of value in *body*; the fields in *given* are taken from there.

    Raises StoreError naming *place* if anything is not as it should be.
    """
    omit = frozenset(given or ())
    shape = _shape(kind, omit)  # type: ignore[arg-type]  # mypy: a class, no value of it
    value = _parsed(shape.decoder, body, place)
    if shape.later is not None:
        for name, make in shape.later.items():
            if name in value:
                value[name] = _made(f"{place}.{name}", make, value[name])
        value = _made(place, partial(kind, **value, **(given or {})))
    if len(body) > _SHORT_BYTES:
        check(kind, value, place, omit)
    return value  # type: ignore[no-any-return]  # what the decoder of kind makes


def decode_rows(kind: type[T], bodies: Sequence[bytes], place: str) -> tuple[T, ...]:
    """Return the values of type *kind* in *bodies*, each a row of them, one after another.

    Raises StoreError naming *place*, counted within its body, if anything is not as it should be.
    """
    decoder = _row_decoder(kind)  # type: ignore[arg-type]  # mypy: a class, no value of it
    values: list[T] = []
    for body in bodies:
        row = _parsed(decoder, body, place)
        values += row
        if len(values) > MOST_ENTRIES:
            raise damaged(place)
        if len(body) > _SHORT_BYTES:
            check(tuple[kind, ...], row, place)  # type: ignore[valid-type]  # known when it runs
    return tuple(values)


def decode_lists(body: bytes, place: str) -> dict[str, tuple[str, ...]]:
    """Return the texts under each name in *body*; StoreError naming *place* if it is no such."""
    return _parsed(_decoder(dict[str, tuple[str, ...]]), body, place)  # type: ignore[no-any-return]


def knows(hint: Any, coded: Json) -> bool:  # noqa: ANN401 - a type, as the fields name it
    """Whether every field in *coded* is one that a value of type *hint* has."""
    args = get_args(hint)
    if isinstance(coded, list) and get_origin(hint) is tuple:
        each = args[:1] * len(coded) if args[-1] is Ellipsis else args
        return all(map(knows, each, coded))
    if get_origin(hint) in UNIONS:
        return any(knows(option, coded) for option in args)
    if not isinstance(coded, dict) or not is_kind(hint):
        return not isinstance(coded, dict | list)
    hints = hints_of(hint)
    return all(name in hints and knows(hints[name], of) for name, of in coded.items())


class _Shape(NamedTuple):
    """How a type is read: what parses it, and what is made later.

    Where `later` is None msgspec makes the whole value; else the fields of one, but for the
    values of those in it.
    """

    decoder: Decoder[Any]
    later: Mapping[str, _Make] | None


@cache
def _shape(kind: type, omit: frozenset[str]) -> _Shape:
    hints = {name: of for name, of in hints_of(kind).items() if name not in omit}
    later = {name: make for name, of in hints.items() if (make := maker_of(of)) is not None}
    if not omit and not later:
        return _Shape(_decoder(kind), None)
    needed = {field.name for field in structs.fields(kind) if field.required}
    parsed = {name: Any if name in later else of for name, of in hints.items()}
    parsed = {name: Required[of] if name in needed else of for name, of in parsed.items()}
    # its fields are known when it runs
    return _Shape(_decoder(TypedDict(kind.__name__, parsed, total=False)), later)  # type: ignore


@cache
def _row_decoder(kind: type) -> Decoder[Any]:
    return _decoder(tuple[kind, ...])  # type: ignore[valid-type]  # known when it runs


@cache
def _decoder(hint: Any) -> Decoder[Any]:  # noqa: ANN401
    return Decoder(hint)


def _parsed(decoder: Decoder[Any], body: bytes, place: str) -> Any:  # noqa: ANN401
    try:
        return decoder.decode(body)
    except (ValueError, RecursionError) as error:
        if b"\\u" not in body:
            raise damaged(_place_of(error, place)) from error
    # Half a pair of surrogates, from the name of a file that is no UTF-8: msgspec has no such text.
    return _made(place, partial(convert, type=decoder.type), from_bytes(body, place))


def _made(place: str, make: Callable[..., object], *coded: object) -> Any:  # noqa: ANN401
    try:
        return make(*coded)
    except (ValueError, TypeError, OverflowError, OSError, LookupError) as error:
        raise damaged(_place_of(error, place)) from error


def _place_of(error: Exception, place: str) -> str:
    """Return where in *place* the fault is that msgspec found, counted from 1."""
    found = _FAULT.search(str(error))
    if found is None:
        return place
    missing, path = found.groups(default="")
    inside = re.sub(r"\[(\d+)\]", lambda index: f" {int(index[1]) + 1}", path)
    return f"{place}{inside}" + (f".{missing}" if missing else "")


def maker_of(hint: object) -> _Make | None:
    """Return what makes a value of type *hint* where msgspec cannot."""
    args = get_args(hint)
    if hint is datetime:
        return _time
    if get_origin(hint) is tuple:
        make = maker_of(args[0])
        return None if make is None else partial(_row, make)
    if get_origin(hint) not in UNIONS:
        return None
    kinds = [option for option in args if is_kind(option)]
    if len(kinds) > 1:
        return partial(_one_of, kinds)
    make = maker_of(args[0])
    return None if make is None else lambda coded: None if coded is None else make(coded)


def _row(make: _Make, coded: object) -> tuple[object, ...]:
    if not isinstance(coded, list):
        raise ValueError
    return tuple(map(make, coded))


def _one_of(kinds: Sequence[Any], coded: object) -> object:
    """Return the value of the first of *kinds* that *coded* fits, best one with all its fields."""
    names = coded.keys() if isinstance(coded, dict) else set()
    for kind in sorted(kinds, key=lambda one: not hints_of(one).keys() >= names):
        with suppress(ValueError):
            return convert(coded, kind)
    raise ValueError


def _time(coded: object) -> datetime:
    if not isinstance(coded, str) or len(coded) > _LONGEST_TIME:
        raise ValueError
    text, bracket, key = coded.partition("[")
    clock = datetime.fromisoformat(text)
    offset = clock.utcoffset()
    if offset is None or abs(offset) >= timedelta(hours=24):
        raise ValueError
    clock.astimezone(UTC)  # refuses the very ends of the calendar
    return _in_zone(clock, offset, key.removesuffix("]")) if bracket else clock


def _in_zone(clock: datetime, offset: timedelta, key: str) -> datetime:
    """Return the same wall clock in the zone *key*; where it occurs twice *offset* tells which.

    The wall clock is what a start list prints, so it stays when a zone's rules have changed.
    """
    zone = ZoneInfo(key)
    first = clock.replace(tzinfo=zone, fold=0)
    second = clock.replace(tzinfo=zone, fold=1)
    return second if first.utcoffset() != offset == second.utcoffset() else first
