"""How the height of the storey is shared out among its lanes."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple


class Wish(NamedTuple):
    """The least, the usual and the greatest height of a lane; *rank* 0 stays longest."""

    least: float
    usual: float
    most: float
    rank: int


def share_out(height: float, wishes: Sequence[Wish]) -> list[int]:
    """Return a height for each wish, together at most *height*; 0 where there is no room.

    Lanes of the highest rank go first when room is short, even below their least height.
    """
    shown = list(range(len(wishes)))
    while len(shown) > 1 and sum(wishes[k].least for k in shown) > height:
        shown.remove(max(shown, key=lambda k: wishes[k].rank))
    heights = [0] * len(wishes)
    if not shown:
        return heights
    low, middle, high = (
        sum(wish[part] for wish in (wishes[k] for k in shown)) for part in range(3)
    )
    part = 0 if height <= middle else 1
    start, end = (low, middle) if part == 0 else (middle, high)
    share = 0.0 if end <= start else min(1.0, max(0.0, (height - start) / (end - start)))
    for k in shown:
        one, other = wishes[k][part], wishes[k][part + 1]
        heights[k] = int(one + share * (other - one))
    return heights
