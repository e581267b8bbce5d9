"""How far the numbers in many values reach, told by whole columns.

The length of a vector is at least that of each of its numbers, and the quickest to find of all that
bounds them. Values that reach too far for that are looked at one by one (`codec.check`).
"""

from __future__ import annotations

from collections.abc import Callable, Collection
from dataclasses import is_dataclass
from functools import cache, partial
from itertools import chain
from math import hypot, inf
from operator import attrgetter
from types import NoneType
from typing import Any, get_args, get_origin

from ultraplanner_gui.store.codec import UNIONS, hints_of

_NONE: frozenset[str] = frozenset()
_Column = Collection[Any]
Reach = Callable[[_Column], float]


def reach_of(hint: Any, omit: frozenset[str] = _NONE) -> Reach:  # noqa: ANN401
    """Return what finds a figure that no number in values of the type *hint* lies beyond.

    The fields in *omit* are left out where it is a dataclass.
    """
    return _found(hint, omit) or (lambda values: 0.0)


@cache
def _found(hint: Any, omit: frozenset[str] = _NONE) -> Reach | None:  # noqa: ANN401
    """Return what `reach_of` does, None where there are no numbers to be found."""
    if hint in (float, int):
        return _numbers
    if isinstance(hint, type) and is_dataclass(hint):
        found = {name: _found(of) for name, of in hints_of(hint).items() if name not in omit}
        columns = [(attrgetter(name), reach) for name, reach in found.items() if reach is not None]
        return partial(_records, columns) if columns else None
    args = get_args(hint)
    if get_origin(hint) in UNIONS:
        kinds = [option for option in args if option is not NoneType]
        if len(kinds) == 1:
            return _of_some(_optional, _found(kinds[0]))
        options = [(get_origin(of) or of, reach) for of in kinds if (reach := _found(of))]
        return partial(_union, options) if options else None
    if get_origin(hint) is tuple and args[-1] is Ellipsis:
        return _of_some(_rows, _found(args[0]))
    if get_origin(hint) is tuple:
        places = [(k, reach) for k, of in enumerate(args) if (reach := _found(of))]
        return partial(_fixed, places) if places else None
    return None


def _of_some(find: Callable[[Reach, _Column], float], reach: Reach | None) -> Reach | None:
    return None if reach is None else partial(find, reach)


def _numbers(column: _Column) -> float:
    try:
        return hypot(*column)
    except OverflowError:  # a whole number that is no double
        return inf


def _records(columns: list[tuple[attrgetter[Any], Reach]], values: _Column) -> float:
    found = [(list(map(get, values)), reach) for get, reach in columns]
    return hypot(*[reach(column) for column, reach in found if any(column)])


def _optional(reach: Reach, column: _Column) -> float:
    return reach([value for value in column if value is not None])


def _union(options: list[tuple[type, Reach]], column: _Column) -> float:
    return hypot(*[reach([v for v in column if isinstance(v, of)]) for of, reach in options])


def _rows(reach: Reach, column: _Column) -> float:
    return reach(list(chain.from_iterable(column)))


def _fixed(places: list[tuple[int, Reach]], column: _Column) -> float:
    return hypot(*[reach([row[place] for row in column]) for place, reach in places])
