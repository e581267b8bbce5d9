"""How the height of the storey is shared out among its lanes."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple


class Wish(NamedTuple):
    """The least, the usual and the greatest height of a lane; *rank* 0 stays in sight longest.

    One that yields last keeps its usual height until the others are down to their least.
    Where there is no room for a *fair* height, those that are spare are left out.
    """

    least: float
    usual: float
    most: float
    rank: int
    yields_last: bool = False
    fair: float = 0.0
    is_spare: bool = False


def share_out(height: float, wishes: Sequence[Wish]) -> list[int]:
    """Return a height for each wish, together at most *height*; 0 where there is no room.

    Lanes of the highest rank go first when room is short even for the least heights.
    """
    shown = list(range(len(wishes)))
    while len(shown) > 1 and sum(wishes[k].least for k in shown) > height:
        shown.remove(max(shown, key=lambda k: wishes[k].rank))
    spare_lanes = sorted((k for k in shown if wishes[k].is_spare), key=lambda k: wishes[k].rank)
    while spare_lanes and sum(max(wishes[k].least, wishes[k].fair) for k in shown) > height:
        shown.remove(spare_lanes.pop())
    least = _least(height, {k: wishes[k] for k in shown})
    sizes = {k: wishes[k].usual for k in shown}
    spare = height - sum(sizes.values())
    if spare >= 0.0:
        _spread(sizes, spare, {k: wishes[k].most - wishes[k].usual for k in shown})
    else:
        for is_last in (False, True):
            slack = {
                k: wishes[k].usual - least[k] for k in shown if wishes[k].yields_last is is_last
            }
            taken = min(-spare, sum(slack.values()))
            _spread(sizes, -taken, slack)
            spare += taken
    return [int(sizes.get(k, 0.0)) for k in range(len(wishes))]


def _least(height: float, wishes: dict[int, Wish]) -> dict[int, float]:
    """Return the least height of each, raised to what is fair as far as there is room for it."""
    least = {k: wish.least for k, wish in wishes.items()}
    for k, wish in wishes.items():
        room = height - sum(least.values())
        least[k] += max(0.0, min(wish.fair - wish.least, room))
    return least


def _spread(sizes: dict[int, float], amount: float, reach: dict[int, float]) -> None:
    """Add *amount* to *sizes*, each by its part of all *reach* and no further."""
    whole = sum(reach.values())
    share = 0.0 if whole <= 0.0 else max(-1.0, min(1.0, amount / whole))
    for k, most in reach.items():
        sizes[k] += share * most
