"""Whole columns of JSON values read at once: fast for the usual, no word on the rest.

Whatever is out of the ordinary, wrong or not, ends in one of `UNUSUAL`; who asked reads the values
one by one then, which tells what is wrong with which.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from datetime import date
from operator import itemgetter
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
        return [values[text] for text in only(str, column)]

    return read


def optional(read_there: Reader) -> Reader:
    """Return what leaves None as it is and reads the rest by *read_there*."""

    def read(column: Column) -> Column:
        there = [value for value in column if value is not None]
        if len(there) == len(column):
            return read_there(column)
        following = iter(read_there(there) if there else ())
        return [None if value is None else next(following) for value in column]

    return read


def rows(read_entries: Reader, most: int) -> Reader:
    """Return what reads lists of up to *most* entries as tuples."""

    def read(column: Column) -> Column:
        found = only(list, column)
        if max(map(len, found)) > most:
            raise Unusual
        return [tuple(read_entries(row)) if row else () for row in found]

    return read


def records(kind: Callable[..., object], readers: Mapping[str, Reader]) -> Reader:
    """Return what makes a *kind* of every object that has each of *readers* as a field, no other.

    The fields go to *kind* in their order.
    """
    names = tuple(readers)
    # the first name once more makes it a tuple where there is one field only
    fields_of = itemgetter(*names, names[0]) if names else None

    def read(column: Column) -> Column:
        found = only(dict, column)
        if fields_of is None or set(map(len, found)) != {len(names)}:
            raise Unusual
        by_field = zip(*map(fields_of, found), strict=True)
        return list(
            map(kind, *(one(of) for one, of in zip(readers.values(), by_field, strict=False)))
        )

    return read
