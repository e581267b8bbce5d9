"""Giving every portion that filling chose its time."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from ultraplanner_gui.engine.fuel_fill_cells import Cell
from ultraplanner_gui.engine.fuel_kit import FillFood, Taste
from ultraplanner_gui.plan.fuel import FuelItem

_CARB, _FLUID, _SODIUM = range(3)
Key = tuple[float, str, float | None]


def placed(
    cells: Sequence[Cell],
    kit: Sequence[FillFood],
    counts: Sequence[Mapping[int, int]],
) -> tuple[FuelItem, ...]:
    """Return the items: food of a table at its station, the rest spread over the times to eat.

    Each portion goes where the piece so far has the least of what it is for.
    """
    servings: dict[Key, float] = {}
    for cell, chosen in zip(cells, counts, strict=True):
        slots = cell.slots
        load = [[0.0, 0.0, 0.0] for _ in slots]
        for f in sorted(chosen, key=lambda f: (kit[f].taste is not Taste.DRINK, -kit[f].carb_g, f)):
            food = kit[f]
            if not food.is_carried:
                _add(servings, (cell.arrive_s, food.key, cell.place_m), chosen[f] * food.part)
                continue
            kind = _FLUID if food.is_bottled else _CARB if food.carb_g > 0.0 else _SODIUM
            for _ in range(chosen[f]):
                k = min(range(len(slots)), key=lambda k: (load[k][kind], k))
                for n, amount in enumerate((food.carb_g, food.fluid_ml, food.sodium_mg)):
                    load[k][n] += amount
                _add(servings, (slots[k], food.key, None), food.part)
    keys = sorted(servings, key=lambda key: (key[0], key[1]))
    return tuple(
        FuelItem(f"item-{n}", food, at_s, servings[at_s, food, at_m], at_m)
        for n, (at_s, food, at_m) in enumerate(keys, start=1)
    )


def _add(servings: dict[Key, float], key: Key, amount: float) -> None:
    servings[key] = servings.get(key, 0.0) + amount
