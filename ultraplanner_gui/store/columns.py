"""Whole columns of JSON values read at once: fast for the usual, no word on the rest.

Whatever is out of the ordinary, wrong or not, ends in one of `UNUSUAL`; who asked reads the values
one by one then, which tells what is wrong with which.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Mapping, Sequence
from dataclasses import fields
from datetime import date
from itertools import repeat
from operator import itemgetter
from types import MemberDescriptorType
from typing import TypeAlias, TypeVar

T = TypeVar("T")
Column: TypeAlias = Sequence[object]
Reader: TypeAlias = Callable[[Column], Column]


class Unusual(Exception):
    """A column is not of the usual kind."""


UNUSUAL = (Unusual, KeyError, TypeError, ValueError)


def only(kind: type[T], column: Column) -> Sequence[T]:
    """Return *column* once it is known that its values are of *kind*, and of no kind of it."""
    if set(map(type, column)) != {kind}:
        raise Unusual
    return column  # type: ignore[return-value]  # just looked at


def one_by_one(column: Column) -> Column:
    """Read nothing: these values want to be looked at one by one."""
    raise Unusual


def bools(column: Column) -> Column:
    """Read true and false."""
    return only(bool, column)


def days(column: Column) -> Column:
    """Read dates."""
    return list(map(date.fromisoformat, only(str, column)))


def texts(most: int) -> Reader:
    """Return what reads texts of up to *most* characters."""

    def read(column: Column) -> Column:
        found = only(str, column)
        if max(map(len, found)) > most:
            raise Unusual
        return found

    return read


def integers(most: float) -> Reader:
    """Return what reads whole numbers from -*most* to *most*."""

    def read(column: Column) -> Column:
        found = only(int, column)
        if max(map(abs, found)) > most:
            raise Unusual
        return found

    return read


def numbers(most: float) -> Reader:
    """Return what reads figures from -*most* to *most*; NaN must have been refused before."""

    def read(column: Column) -> Column:
        found = only(float, column)
        if min(found) < -most or max(found) > most:
            raise Unusual
        return found

    return read


def choices(values: Mapping[str | int, object]) -> Reader:
    """Return what reads texts as the *values* they stand for."""

    def read(column: Column) -> Column:
        return list(map(values.__getitem__, only(str, column)))

    return read


def optional(read_there: Reader) -> Reader:
    """Return what leaves None as it is and reads the rest by *read_there*."""

    def read(column: Column) -> Column:
        missing = column.count(None)
        if not missing:
            return read_there(column)
        if missing == len(column):
            return column
        following = iter(read_there([value for value in column if value is not None]))
        return [None if value is None else next(following) for value in column]

    return read


def rows(read_entries: Reader, most: int) -> Reader:
    """Return what reads lists of up to *most* entries as tuples."""

    def read(column: Column) -> Column:
        found = only(list, column)
        longest = max(map(len, found))
        if longest > most:
            raise Unusual
        if not longest:
            return [()] * len(found)
        return [tuple(read_entries(row)) if row else () for row in found]

    return read


def records(kind: type, readers: Mapping[str, Reader]) -> Reader:
    """Return what makes a *kind* of every object that has each of *readers* as a field, no other.

    *kind* is a dataclass and *readers* are in the order of its fields.
    """
    names = tuple(readers)
    # the first name once more makes it a tuple where there is one field only
    fields_of = itemgetter(*names, names[0]) if names else None
    make = _maker(kind, names)

    def read(column: Column) -> Column:
        found = only(dict, column)
        if fields_of is None or set(map(len, found)) != {len(names)}:
            raise Unusual
        by_field = zip(*map(fields_of, found), strict=True)
        read_fields = [one(of) for one, of in zip(readers.values(), by_field, strict=False)]
        return make(len(found), read_fields)

    return read


def _maker(kind: type, names: tuple[str, ...]) -> Callable[[int, Sequence[Column]], Column]:
    """Return what makes so many of *kind* of a column for each of its fields *names*.

    The constructor of a frozen dataclass takes twice as long as filling its slots one after the
    other, and does no more unless it has something to check.
    """
    slots = [kind.__dict__.get(name) for name in names]
    setters = [slot.__set__ for slot in slots if isinstance(slot, MemberDescriptorType)]
    if len(setters) < len(fields(kind)) or hasattr(kind, "__post_init__"):
        return lambda _count, columns: list(map(kind, *columns))

    def fill(count: int, columns: Sequence[Column]) -> Column:
        made: list[object] = list(map(object.__new__, repeat(kind, count)))
        for setter, column in zip(setters, columns, strict=True):
            deque(map(setter, made, column), maxlen=0)
        return made

    return fill
