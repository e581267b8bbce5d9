"""When each item is taken: those that keep their place go with the pace."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec.structs import replace

from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.plan.fuel import FuelItem, FuelPlan, Keep


def on_clock(fuel: FuelPlan, target: PacePlan) -> FuelPlan:
    """Return *fuel* with the items that keep their place at the time *target* reaches it.

    *fuel* itself if there are none. A place beyond the finish comes after it.
    """
    if all(item.at_m is None for item in fuel.items):
        return fuel
    return fuel.with_items(tuple(_timed(item, target) for item in fuel.items))


def _timed(item: FuelItem, target: PacePlan) -> FuelItem:
    if item.at_m is None:
        return item
    beyond_m = item.at_m - float(target.distance_m[-1])
    at_s = target.finish_s + beyond_m if beyond_m > 1.0 else target.arrival_s(item.at_m)
    return replace(item, at_s=at_s)


def kept(items: Sequence[FuelItem], keep: Keep, target: PacePlan) -> tuple[FuelItem, ...]:
    """Return *items*, resolved by `on_clock`, keeping their clock or their place from now on.

    Items beyond the finish keep their clock: they have no place.
    """
    if keep is Keep.CLOCK:
        return tuple(replace(item, at_m=None) for item in items)
    return tuple(
        replace(item, at_m=target.distance_at(item.at_s)) if item.at_s <= target.finish_s else item
        for item in items
    )


def every(
    fuel: FuelPlan, food: str, servings: float, times_s: Sequence[float]
) -> tuple[FuelItem, ...]:
    """Return the items of *fuel* and *servings* of *food* at each of *times_s*."""
    return _with_new(fuel, [FuelItem("", food, at_s, servings) for at_s in times_s])


def at_places(
    fuel: FuelPlan, food: str, servings: float, places_m: Sequence[float], target: PacePlan
) -> tuple[FuelItem, ...]:
    """Return the items of *fuel* and *servings* of *food* at each of *places_m*, kept there."""
    new = [FuelItem("", food, target.arrival_s(at_m), servings, at_m) for at_m in places_m]
    return _with_new(fuel, new)


def _with_new(fuel: FuelPlan, new: Sequence[FuelItem]) -> tuple[FuelItem, ...]:
    taken, number = {item.key for item in fuel.items}, 1
    named = []
    for item in new:
        while f"item-{number}" in taken:
            number += 1
        taken.add(f"item-{number}")
        named.append(replace(item, key=f"item-{number}"))
    return tuple(sorted((*fuel.items, *named), key=lambda i: i.at_s))
