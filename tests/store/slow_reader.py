"""Bodies read value by value by the types of the fields, as `packaging/file-format.md` has them.

It shares with the store only the classes: what both make of a body is held against each other.
"""

import math
import re
from datetime import UTC, date, datetime, timedelta
from enum import Enum
from types import NoneType, UnionType
from typing import Literal, Union, get_args, get_origin, get_type_hints
from zoneinfo import ZoneInfo

from msgspec import NODEFAULT, Struct, structs


class Refused(Exception):
    """A value is not as it should be."""


def read(hint, coded, given=None):
    origin, args = get_origin(hint), get_args(hint)
    if origin in (Union, UnionType):
        return _union(args, coded)
    if origin is tuple:
        return _row(args, coded)
    if origin is Literal:
        return _of(coded in args, coded)
    if issubclass(hint, Struct):
        return _record(hint, coded, given or {})
    if issubclass(hint, Enum):
        words = {member.value: member for member in hint}
        return _of(isinstance(coded, str) and coded in words, words.get(str(coded)))
    return _PLAIN[hint](coded)


def _of(is_fit, value):
    if not is_fit:
        raise Refused
    return value


def _union(options, coded):
    for option in sorted(options, key=lambda one: not _has_all(one, coded)):
        try:
            return read(option, coded)
        except Refused:
            continue
    raise Refused


def _has_all(option, coded):
    """Whether every field of *coded* is one of *option*: that comes before any other."""
    names = set(getattr(option, "__struct_fields__", ()))
    return isinstance(coded, dict) and coded.keys() <= names


def _row(args, coded):
    _of(isinstance(coded, list) and len(coded) <= 20_000, None)
    if args[-1] is Ellipsis:
        return tuple(read(args[0], one) for one in coded)
    _of(len(coded) == len(args), None)
    return tuple(map(read, args, coded))


def _record(kind, coded, given):
    hints, values = get_type_hints(kind), dict(given)
    _of(isinstance(coded, dict), None)
    for field in structs.fields(kind):
        if field.name in coded and field.name not in given:
            values[field.name] = read(hints[field.name], coded[field.name])
        elif field.name not in given and field.default is field.default_factory is NODEFAULT:
            raise Refused
    try:
        return kind(**values)
    except ValueError as error:
        raise Refused from error


def _number(coded):
    is_number = type(coded) in (int, float) and abs(coded) <= 1e12 and math.isfinite(coded)
    return _of(is_number, coded) * 1.0


def _day(coded):
    _of(isinstance(coded, str) and re.fullmatch(r"\d{4}-\d\d-\d\d", coded, re.ASCII), None)
    try:
        return date.fromisoformat(coded)
    except ValueError as error:
        raise Refused from error


def _time(coded):
    _of(isinstance(coded, str) and len(coded) <= 100, None)
    found = re.fullmatch(r"([^\[]+)(?:\[(.+)\])?", coded)
    _of(found, None)
    try:
        clock = datetime.fromisoformat(found[1])
        offset = clock.utcoffset()
        _of(offset is not None and abs(offset) < timedelta(hours=24), None)
        clock.astimezone(UTC)
        return clock.replace(tzinfo=ZoneInfo(found[2])) if found[2] else clock
    except (ValueError, OverflowError, LookupError, OSError) as error:
        raise Refused from error


_PLAIN = {
    str: lambda coded: _of(isinstance(coded, str) and len(coded) <= 200_000, coded),
    bool: lambda coded: _of(isinstance(coded, bool), coded),
    int: lambda coded: _of(type(coded) is int and abs(coded) <= 1e12, coded),
    float: _number,
    NoneType: lambda coded: _of(coded is None, None),
    date: _day,
    datetime: _time,
}
