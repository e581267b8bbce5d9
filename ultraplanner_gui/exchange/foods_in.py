"""The food table, one food a line, as a spreadsheet saves it."""

from __future__ import annotations

import csv
import io
import math
from collections.abc import Mapping
from pathlib import Path

from ultraplanner_gui.plan.fuel import Allergen, Food, Shape, Sugars
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError

_NEEDED = ("key", "name", "serving", "weight_g", "carb_g")
_HIGHEST = 5000.0


def read_foods(table: Path | str) -> tuple[Food, ...]:
    """Return the foods of *table*, a file or the text of one, in its order.

    Columns that `Food` does not know are passed over. PlanError, naming the line, if a figure
    cannot be read, a column is missing or a key is there twice.
    """
    text = table.read_text(encoding="utf-8-sig") if isinstance(table, Path) else table
    reader = csv.DictReader(io.StringIO(text, newline=""))
    missing = [name for name in _NEEDED if name not in (reader.fieldnames or ())]
    if missing:
        raise PlanError(
            QT_TRANSLATE_NOOP("Food table", "The food table has no column {0}; add it."),
            missing[0],
        )
    foods: dict[str, Food] = {}
    for row in reader:
        food = _food(row, reader.line_num)
        if food.key in foods:
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "Food table", "Line {0} of the food table repeats the key {1}; choose another."
                ),
                reader.line_num,
                food.key,
            )
        foods[food.key] = food
    return tuple(foods.values())


def _food(row: Mapping[str, str | None], line: int) -> Food:
    def text(column: str) -> str:
        return (row.get(column) or "").strip()

    def figure(column: str) -> float:
        try:
            value = float(text(column) or 0.0)
        except ValueError:
            value = math.nan
        if not 0.0 <= value <= _HIGHEST:
            raise _unreadable(line, column)
        return value

    if not text("key") or not text("name"):
        raise _unreadable(line, "name" if text("key") else "key")
    try:
        allergens = tuple(Allergen(name) for name in text("allergens").split())
    except ValueError as error:
        raise _unreadable(line, "allergens") from error
    try:
        sugars = Sugars(text("sugars") or Sugars.SINGLE)
        shape = Shape(text("shape") or Shape.SOLID)
    except ValueError as error:
        raise _unreadable(line, "sugars, shape") from error
    return Food(
        key=text("key"),
        name=text("name"),
        serving=text("serving"),
        weight_g=figure("weight_g"),
        carb_g=figure("carb_g"),
        sodium_mg=figure("sodium_mg"),
        fluid_ml=figure("fluid_ml"),
        caffeine_mg=figure("caffeine_mg"),
        energy_kcal=figure("energy_kcal"),
        sugars=sugars,
        shape=shape,
        source=text("source"),
        mark=text("mark"),
        protein_g=figure("protein_g"),
        fructose_g=figure("fructose_g") if text("fructose_g") else None,
        allergens=allergens,
        is_carried=text("is_carried") != "no",
        per_pack=figure("per_pack") or 1.0,
    )


def _unreadable(line: int, column: str) -> PlanError:
    return PlanError(
        QT_TRANSLATE_NOOP(
            "Food table",
            "Line {0} of the food table: {1} cannot be read; figures lie between 0 and 5000.",
        ),
        line,
        column,
    )
