"""Frozen dataclasses to JSON and back by their type hints, strict in both directions."""

from __future__ import annotations

import json
import math
import types
from collections.abc import Callable, Iterable, Mapping
from dataclasses import MISSING, Field, fields, is_dataclass
from datetime import UTC, date, datetime, timedelta
from enum import Enum
from itertools import chain
from typing import Literal, TypeAlias, TypeVar, Union, get_args, get_origin, get_type_hints
from zoneinfo import ZoneInfo

from ultraplanner_gui.plan.value import dataclass
from ultraplanner_gui.store import columns
from ultraplanner_gui.store.troubles import damaged, unfit

Json: TypeAlias = "bool | int | float | str | list[Json] | dict[str, Json] | None"
T = TypeVar("T")

MOST_CHARACTERS = 200_000
MOST_ENTRIES = 20_000
LARGEST_NUMBER = 1e12


class _Misfit(Exception):
    """A value does not fit its type; `place` is filled in on the way out."""

    def __init__(self, place: str = "") -> None:
        super().__init__(place)
        self.place = place

    def within(self, place: str) -> _Misfit:
        """Return the same trouble seen from one level further out."""
        joint = "." if self.place and not self.place.startswith(" ") else ""
        return _Misfit(f"{place}{joint}{self.place}")


@dataclass(frozen=True, slots=True)
class _Coder:
    """Both directions for one type; *decode* ignores unknown fields where its flag says so.

    *read_column* is the fast way for many values at once, where there is one.
    """

    encode: Callable[[object], Json]
    decode: Callable[[Json, bool], object]
    read_column: columns.Reader = columns.one_by_one


def encode(kind: type[T], value: T, place: str, omit: frozenset[str] = frozenset()) -> bytes:
    """Return *value* of type *kind* as JSON bytes, the fields in *omit* left out.

    Raises StoreError naming *place* if it holds what could not be read back.
    """
    try:
        coded = _record(kind, omit).encode(value) if omit else _coder(kind).encode(value)
    except _Misfit as misfit:
        raise unfit(misfit.within(place).place) from misfit
    return to_bytes(coded)


def decode(
    kind: type[T],
    body: bytes,
    place: str,
    lenient: bool = False,
    given: Mapping[str, object] | None = None,
) -> T:
    """Return the value of type *kind* in *body*; the fields in *given* are taken from there.

    *lenient* passes over unknown fields. Raises StoreError naming *place* if anything else is
    not as it should be.
    """
    coded = from_bytes(body, place)
    try:
        if given:
            value = _record(kind, frozenset(given)).decode(coded, lenient, given)
        else:
            value = _coder(kind).decode(coded, lenient)
    except _Misfit as misfit:
        raise damaged(misfit.within(place).place) from misfit
    if not _is_a(value, kind):
        raise damaged(place)
    return value  # type: ignore[return-value]  # just looked at, but not in mypy's terms


def decode_rows(
    kind: type[T], bodies: Iterable[bytes], place: str, lenient: bool = False
) -> tuple[T, ...]:
    """Return the values of type *kind* in *bodies*, each a row of them, one after another.

    Raises StoreError naming *place*, counted within its body, if anything is not as it should be.
    """
    rows: list[list[Json]] = []
    left = MOST_ENTRIES
    for body in bodies:
        row = from_bytes(body, place)
        if not isinstance(row, list) or len(row) > left:
            raise damaged(place)
        left -= len(row)
        rows.append(row)
    if not any(rows):
        return ()
    coder = _coder(kind)
    try:
        values = coder.read_column(list(chain.from_iterable(rows)))
    except columns.UNUSUAL:
        values = _one_by_one(coder, rows, place, lenient)
    return tuple(values)  # type: ignore[arg-type]  # what the coder of kind makes


def _one_by_one(coder: _Coder, rows: list[list[Json]], place: str, lenient: bool) -> columns.Column:
    try:
        return [_read_at(i, coder, c, lenient) for row in rows for i, c in enumerate(row)]
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


def _no_constant(text: str) -> Json:
    raise ValueError(text)


_READ_JSON = json.JSONDecoder(parse_constant=_no_constant).decode


def _is_a(value: object, kind: object) -> bool:
    origin = get_origin(kind) or kind
    return isinstance(value, origin) if isinstance(origin, type) else True


_coders: dict[object, _Coder] = {}


def _coder(hint: object) -> _Coder:
    if hint not in _coders:
        _coders[hint] = _coder_for(hint)
    return _coders[hint]


def _coder_for(hint: object) -> _Coder:
    origin, args = get_origin(hint), get_args(hint)
    if origin in (Union, types.UnionType):
        return _union(tuple(args))
    if origin is tuple:
        return _row(_coder(args[0])) if args[-1] is Ellipsis else _fixed(tuple(args))
    if origin is Literal:
        return _one_of({value: value for value in args})
    if isinstance(hint, type):
        if hint in _PLAIN:
            return _PLAIN[hint]
        if issubclass(hint, Enum):
            return _one_of({member: member.value for member in hint})
        if is_dataclass(hint):
            record = _record(hint)
            return _Coder(
                record.encode,
                lambda coded, lenient: record.decode(coded, lenient, {}),
                record.read_column,
            )
    raise TypeError(f"no way to keep a {hint!r}")


def _plain(
    kind: type[bool] | type[int] | type[str], most: float, read_column: columns.Reader
) -> _Coder:
    """Return the coder of a plain type; *most* bounds a number or the length of a text."""

    def encode_plain(value: object) -> Json:
        # type() and not isinstance(): True is an int to isinstance
        if type(value) is not kind or not isinstance(value, bool | int | str):
            raise _Misfit
        if (len(value) if isinstance(value, str) else abs(value)) > most:
            raise _Misfit
        return value

    return _Coder(encode_plain, lambda coded, lenient: encode_plain(coded), read_column)


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


def _text(coded: Json) -> str:
    if not isinstance(coded, str) or len(coded) > 100:
        raise _Misfit
    return coded


def _write_day(value: object) -> Json:
    if not isinstance(value, date) or isinstance(value, datetime):
        raise _Misfit
    return value.isoformat()


def _read_day(coded: Json, lenient: bool) -> date:
    try:
        return date.fromisoformat(_text(coded))
    except ValueError as error:
        raise _Misfit from error


def _write_time(value: object) -> Json:
    if not isinstance(value, datetime) or value.tzinfo is None:
        raise _Misfit
    zone = value.tzinfo
    key = zone.key if isinstance(zone, ZoneInfo) else None
    return f"{value.isoformat()}[{key}]" if key else value.isoformat()


def _read_time(coded: Json, lenient: bool) -> datetime:
    text, bracket, key = _text(coded).partition("[")
    try:
        clock = datetime.fromisoformat(text)
        offset = clock.utcoffset()
        if offset is None or abs(offset) >= timedelta(hours=24):
            raise _Misfit
        clock.astimezone(UTC)  # refuses the very ends of the calendar
        return _in_zone(clock, offset, key.removesuffix("]")) if bracket else clock
    except (ValueError, OverflowError, OSError, LookupError) as error:
        raise _Misfit from error


def _in_zone(clock: datetime, offset: timedelta, key: str) -> datetime:
    """Return the same wall clock in the zone *key*; where it occurs twice *offset* tells which.

    The wall clock is what a start list prints, so it stays when a zone's rules have changed.
    """
    zone = ZoneInfo(key)
    first = clock.replace(tzinfo=zone, fold=0)
    second = clock.replace(tzinfo=zone, fold=1)
    return second if first.utcoffset() != offset == second.utcoffset() else first


_PLAIN: dict[type, _Coder] = {
    str: _plain(str, MOST_CHARACTERS, columns.texts(MOST_CHARACTERS)),
    bool: _plain(bool, 1, columns.bools),
    int: _plain(int, LARGEST_NUMBER, columns.integers(LARGEST_NUMBER)),
    float: _Coder(_number, lambda coded, lenient: _number(coded), columns.numbers(LARGEST_NUMBER)),
    type(None): _Coder(_nothing, lambda coded, lenient: _nothing(coded)),
    date: _Coder(_write_day, _read_day, columns.days),
    datetime: _Coder(_write_time, _read_time),
}


def _one_of(values: Mapping[object, Json]) -> _Coder:
    back = {coded: value for value, coded in values.items() if isinstance(coded, str | int)}

    def encode_one(value: object) -> Json:
        if value not in values:
            raise _Misfit
        return values[value]

    def decode_one(coded: Json, lenient: bool) -> object:
        if not isinstance(coded, str | int) or coded not in back:
            raise _Misfit
        return back[coded]

    return _Coder(encode_one, decode_one, columns.choices(back))


def _row(entry: _Coder) -> _Coder:
    def encode_row(value: object) -> Json:
        if not isinstance(value, tuple) or len(value) > MOST_ENTRIES:
            raise _Misfit
        return [_at(i, entry.encode, v) for i, v in enumerate(value)]

    def decode_row(coded: Json, lenient: bool) -> object:
        if not isinstance(coded, list) or len(coded) > MOST_ENTRIES:
            raise _Misfit
        try:
            return tuple(entry.read_column(coded))
        except columns.UNUSUAL:
            return tuple(_read_at(i, entry, c, lenient) for i, c in enumerate(coded))

    return _Coder(encode_row, decode_row, columns.rows(entry.read_column, MOST_ENTRIES))


def _fixed(hints: tuple[object, ...]) -> _Coder:
    coders = tuple(_coder(hint) for hint in hints)

    def encode_fixed(value: object) -> Json:
        if not isinstance(value, tuple) or len(value) != len(coders):
            raise _Misfit
        pairs = zip(coders, value, strict=True)
        return [_at(i, coder.encode, v) for i, (coder, v) in enumerate(pairs)]

    def decode_fixed(coded: Json, lenient: bool) -> object:
        if not isinstance(coded, list) or len(coded) != len(coders):
            raise _Misfit
        pairs = zip(coders, coded, strict=True)
        return tuple(_read_at(i, coder, c, lenient) for i, (coder, c) in enumerate(pairs))

    return _Coder(encode_fixed, decode_fixed)


def _at(index: int, encode_entry: Callable[[object], Json], value: object) -> Json:
    try:
        return encode_entry(value)
    except _Misfit as misfit:
        raise misfit.within(f" {index + 1}") from misfit


def _read_at(index: int, coder: _Coder, coded: Json, lenient: bool) -> object:
    try:
        return coder.decode(coded, lenient)
    except _Misfit as misfit:
        raise misfit.within(f" {index + 1}") from misfit


def _union(hints: tuple[object, ...]) -> _Coder:
    coders = tuple(_coder(hint) for hint in hints)

    def encode_union(value: object) -> Json:
        deepest = _Misfit()
        for coder in coders:
            try:
                return coder.encode(value)
            except _Misfit as misfit:
                deepest = max(deepest, misfit, key=lambda m: len(m.place))
        raise deepest

    def decode_union(coded: Json, lenient: bool) -> object:
        deepest = _Misfit()
        # strictly first: a field unknown to one type may tell that it is the next
        for leniency in (False, True) if lenient else (False,):
            for coder in coders:
                try:
                    return coder.decode(coded, leniency)
                except _Misfit as misfit:
                    deepest = max(deepest, misfit, key=lambda m: len(m.place))
        raise deepest

    if len(hints) == 2 and hints[1] is type(None):
        return _Coder(encode_union, decode_union, columns.optional(coders[0].read_column))
    return _Coder(encode_union, decode_union)


@dataclass(frozen=True, slots=True)
class _Slot:
    """One field of a dataclass: its name, its coder and whether it may be absent."""

    name: str
    coder: _Coder
    may_lack: bool


class _Record:
    """The coder of one dataclass, the fields in *omit* left out."""

    def __init__(self, kind: type, omit: frozenset[str]) -> None:
        self._kind = kind
        hints = get_type_hints(kind)
        self._slots = tuple(
            _Slot(f.name, _coder(hints[f.name]), _has_default(f))
            for f in fields(kind)
            if f.name not in omit
        )
        self._names = frozenset(slot.name for slot in self._slots)
        self.read_column = columns.records(
            kind, {slot.name: slot.coder.read_column for slot in self._slots}
        )

    def encode(self, value: object) -> Json:
        if type(value) is not self._kind:
            raise _Misfit
        coded: dict[str, Json] = {}
        for slot in self._slots:
            try:
                coded[slot.name] = slot.coder.encode(getattr(value, slot.name))
            except _Misfit as misfit:
                raise misfit.within(slot.name) from misfit
        return coded

    def decode(self, coded: Json, lenient: bool, given: Mapping[str, object]) -> object:
        if not isinstance(coded, dict):
            raise _Misfit
        if not lenient and (unknown := coded.keys() - self._names):
            raise _Misfit(min(unknown)[:40])
        values: dict[str, object] = dict(given)
        for slot in self._slots:
            if slot.name in coded:
                try:
                    values[slot.name] = slot.coder.decode(coded[slot.name], lenient)
                except _Misfit as misfit:
                    raise misfit.within(slot.name) from misfit
            elif not slot.may_lack:
                raise _Misfit(slot.name)
        try:
            return self._kind(**values)
        except ValueError as error:
            raise _Misfit from error


_records: dict[tuple[object, frozenset[str]], _Record] = {}


def _record(kind: type, omit: frozenset[str] = frozenset()) -> _Record:
    if (kind, omit) not in _records:
        _records[kind, omit] = _Record(kind, omit)
    return _records[kind, omit]


def _has_default(field: Field[object]) -> bool:
    return field.default is not MISSING or field.default_factory is not MISSING
