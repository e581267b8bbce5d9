"""Where a text stands in a lane so that no line of a station runs through it."""

from __future__ import annotations

from collections.abc import Sequence

#: Between a text and a line beside it.
CLEAR_PX = 4.0


def crossing(left: float, width: float, lines: Sequence[float]) -> list[float]:
    """Return which of *lines* run through a text of *width* at *left*."""
    return [x for x in lines if left - CLEAR_PX < x < left + width + CLEAR_PX]


def first_clear(left: float, right: float, width: float, lines: Sequence[float]) -> float:
    """Return the first place between *left* and *right* for a text that none of *lines* crosses.

    Where all of them are crossed it is the first of all.
    """
    for start in (left, *(x for x in lines if left < x < right)):
        place = start + CLEAR_PX + 1.0
        if place + width + CLEAR_PX <= right and not crossing(place, width, lines):
            return place
    return left + CLEAR_PX + 1.0
