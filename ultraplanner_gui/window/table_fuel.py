"""The table of fuel: what is taken when in the race."""

from __future__ import annotations

from collections.abc import Callable

from msgspec.structs import replace

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.fuel import (
    AddItem,
    ChangeItem,
    MoveItem,
    RemoveItem,
)
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.plan.fuel import Food, FuelItem, Keep
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import Column, say
from ultraplanner_gui.window import table_reading as reading
from ultraplanner_gui.window.table_sections import NO_COURSE
from ultraplanner_gui.window.table_spec import CellOf, TableSpec, distance_unit, one_line, unit
from ultraplanner_gui.wording.words import NONE, Words

KEEPS = {
    Keep.CLOCK: QT_TRANSLATE_NOOP("Tables", "its time"),
    Keep.PLACE: QT_TRANSLATE_NOOP("Tables", "its place"),
}
S_PER_H = 3600.0
RACE_TIME = QT_TRANSLATE_NOOP("Tables", "Race time")
CLOCK = QT_TRANSLATE_NOOP("Tables", "Clock")
FOOD = QT_TRANSLATE_NOOP("Tables", "Food")


class ItemRow(Value, frozen=True):
    """One fuel item with its food; `at_m` is None beyond the finish or without a course."""

    key: str
    item: FuelItem
    food: Food
    foods: tuple[Food, ...]
    race: Race
    at_m: float | None
    target: PacePlan | None

    @property
    def keeps_place(self) -> bool:
        """Whether it is taken at its place whatever the pace."""
        return self.item.at_m is not None

    def place(self, at_s: float) -> float | None:
        """Return where the target brings one by *at_s*, None beyond the finish."""
        if self.target is None or at_s > self.target.finish_s:
            return None
        return self.target.distance_at(at_s)


def item_rows(outlook: Outlook) -> tuple[ItemRow, ...]:
    """Return every fuel item in order of time."""
    fuel, race, target = outlook.project.fuel, outlook.project.race, outlook.target
    by_key = {food.key: food for food in fuel.foods}

    def place(item: FuelItem) -> float | None:
        if target is None or item.at_s > target.finish_s:
            return None
        return target.distance_at(item.at_s)

    return tuple(
        ItemRow(item.key, item, by_key[item.food], fuel.foods, race, place(item), target)
        for item in outlook.items
        if item.food in by_key
    )


def _read_time(duration_first: bool) -> Callable[[ItemRow, str, Words], Edit | None]:
    def parse(row: ItemRow, text: str, words: Words) -> Edit | None:
        at_s = reading.read_race_time(text, row.race, words, duration_first)
        return MoveItem(row.key, at_s, at_m=row.place(at_s) if row.keeps_place else None)

    return parse


def _read_keep(row: ItemRow, text: str, words: Words) -> Edit | None:
    names: dict[str, str] = {keep: say(name) for keep, name in KEEPS.items()}
    at_m = row.at_m if Keep(reading.read_choice(text, names)) is Keep.PLACE else None
    changed = replace(row.item, at_m=at_m)
    return None if changed == row.item else ChangeItem(changed)


def _read_servings(row: ItemRow, text: str, words: Words) -> Edit | None:
    return ChangeItem(replace(row.item, servings=reading.read_number(text, words)))


def _food_names(foods: tuple[Food, ...]) -> dict[str, str]:
    return {food.key: one_line(food.name) for food in foods}


def _read_food(row: ItemRow, text: str, words: Words) -> Edit | None:
    food = reading.read_choice(text, _food_names(row.foods))
    return None if food == row.item.food else ChangeItem(replace(row.item, food=food))


def _taken(name: str, of: str, field: str, decimals: int = 0) -> Column[ItemRow]:
    """Return a column of what the servings of an item hold."""

    def taken(row: ItemRow) -> float:
        per_serving: float = getattr(row.food, field)
        return per_serving * row.item.servings

    return Column(
        name,
        unit=unit(of),
        text=lambda row, words: words.number(taken(row), decimals) if taken(row) else NONE,
        value=taken,
        is_figure=True,
    )


CARBS = QT_TRANSLATE_NOOP("Tables", "Carbs")
FLUID = QT_TRANSLATE_NOOP("Tables", "Fluid")
SODIUM = QT_TRANSLATE_NOOP("Tables", "Sodium")
CAFFEINE = QT_TRANSLATE_NOOP("Tables", "Caffeine")

ITEM_COLUMNS: tuple[Column[ItemRow], ...] = (
    Column(
        RACE_TIME,
        text=lambda row, words: words.duration(row.item.at_s),
        value=lambda row: row.item.at_s,
        parse=_read_time(duration_first=True),
        copied=lambda row: reading.hours_and_minutes(row.item.at_s),
        copied_unit="h:mm",
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP("Tables", "Since the start, as 1 h 30, 1:30 or 90 min."),
    ),
    Column(
        CLOCK,
        text=lambda row, words: words.clock(row.race.clock(row.item.at_s)),
        value=lambda row: row.item.at_s,
        parse=_read_time(duration_first=False),
        is_figure=True,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "At"),
        unit=distance_unit,
        text=lambda row, words: words.distance_bare(row.at_m, 1),
        value=lambda row: row.at_m,
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP("Tables", "Where the target brings you by then."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Keeps"),
        text=lambda row, words: say(KEEPS[Keep.PLACE if row.keeps_place else Keep.CLOCK]),
        parse=_read_keep,
        choices=lambda row, words: tuple(say(name) for name in KEEPS.values()),
        help_text=QT_TRANSLATE_NOOP(
            "Tables", "When the pace changes: taken at the same time, or at the same place."
        ),
    ),
    Column(
        FOOD,
        text=lambda row, words: one_line(row.food.name),
        parse=_read_food,
        choices=lambda row, words: tuple(one_line(food.name) for food in row.foods),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Servings"),
        text=lambda row, words: words.servings(row.item.servings),
        value=lambda row: row.item.servings,
        parse=_read_servings,
        is_figure=True,
    ),
    _taken(CARBS, "g", "carb_g", 1),
    _taken(FLUID, "mL", "fluid_ml"),
    _taken(SODIUM, "mg", "sodium_mg"),
    _taken(CAFFEINE, "mg", "caffeine_mg"),
    Column(
        QT_TRANSLATE_NOOP("Tables", "One serving is"),
        text=lambda row, words: one_line(row.food.serving),
        is_wide=True,
    ),
)


def _add_item(outlook: Outlook, current: ItemRow | None) -> Edit | None:
    fuel, target = outlook.project.fuel, outlook.target
    if not fuel.foods:
        raise PlanError(QT_TRANSLATE_NOOP("Tables", "There is no food yet. Add one under Foods."))
    if current is not None:
        after_s, food = current.item.at_s + fuel.every_s, current.item.food
    else:
        last_s = max((item.at_s + fuel.every_s for item in fuel.items), default=fuel.first_s)
        after_s, food = last_s, fuel.foods[0].key
    return AddItem(food, min(after_s, target.finish_s) if target is not None else after_s)


def _add_item_line(outlook: Outlook, cell: CellOf, words: Words) -> Edit:
    """Return the edit that adds the food *cell* names at its time."""
    time, clock = cell(RACE_TIME), cell(CLOCK)
    if not cell(FOOD) or not (time or clock):
        raise PlanError(
            QT_TRANSLATE_NOOP("Tables", "A new item needs its food and when it is taken.")
        )
    food = reading.read_choice(cell(FOOD), _food_names(outlook.project.fuel.foods))
    at_s = reading.read_race_time(time or clock, outlook.project.race, words, bool(time))
    return AddItem(food, at_s)


def _item_title(row: ItemRow, words: Words) -> str:
    return f"{words.duration(row.item.at_s)}, {one_line(row.food.name)}"


def _remove_item(row: ItemRow) -> Edit:
    return RemoveItem(row.key)


def _no_items(outlook: Outlook) -> str:
    if outlook.project.course is None:
        return NO_COURSE
    return QT_TRANSLATE_NOOP(
        "Tables", "Nothing placed yet. Add an item here, or place fuel by the clock (Ctrl+L)."
    )


FUEL: TableSpec[ItemRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "Fuel"),
    kind="item",
    columns=ITEM_COLUMNS,
    rows=item_rows,
    empty=_no_items,
    hint=QT_TRANSLATE_NOOP("Tables", "Type a race time (1 h 30) or a clock time (Sat 09:30)."),
    title=_item_title,
    add=_add_item,
    add_tip=QT_TRANSLATE_NOOP("Tables", "Add the same food again after the current row"),
    add_line=_add_item_line,
    remove=_remove_item,
    group=lambda row: row.item.at_s // S_PER_H,
    needs_course=True,
)
