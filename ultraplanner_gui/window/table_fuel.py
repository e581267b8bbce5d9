"""The tables of fuel: what is taken when in the race, and the foods to choose from."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.fuel import (
    AddItem,
    ChangeFood,
    ChangeItem,
    MoveItem,
    RemoveFood,
    RemoveItem,
)
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.plan.course import fresh_key
from ultraplanner_gui.plan.fuel import Allergen, Food, FuelItem, Keep, Shape, Sugars, Tolerance
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.widgets.table_column import NO, YES, Column, say
from ultraplanner_gui.window import table_reading as reading
from ultraplanner_gui.window.table_sections import NO_COURSE
from ultraplanner_gui.window.table_spec import CellOf, TableSpec, distance_unit, one_line, unit
from ultraplanner_gui.wording.words import NONE, Words

PACKET = "from the packet"
MARKS = {
    PACKET: QT_TRANSLATE_NOOP("Tables", "from the packet"),
    "published": QT_TRANSLATE_NOOP("Tables", "published"),
    "from memory": QT_TRANSLATE_NOOP("Tables", "from memory"),
}
SUGARS = {
    Sugars.SINGLE: QT_TRANSLATE_NOOP("Tables", "one kind"),
    Sugars.MIXED: QT_TRANSLATE_NOOP("Tables", "mixed"),
}
SHAPES = {
    Shape.GEL: QT_TRANSLATE_NOOP("Tables", "gel"),
    Shape.DRINK: QT_TRANSLATE_NOOP("Tables", "drink"),
    Shape.SOLID: QT_TRANSLATE_NOOP("Tables", "solid"),
    Shape.SALT: QT_TRANSLATE_NOOP("Tables", "salt"),
}
KEEPS = {
    Keep.CLOCK: QT_TRANSLATE_NOOP("Tables", "its time"),
    Keep.PLACE: QT_TRANSLATE_NOOP("Tables", "its place"),
}
TOLERANCES = {
    Tolerance.TOLERATED: QT_TRANSLATE_NOOP("Tables", "tolerated"),
    Tolerance.NOT_TRIED: QT_TRANSLATE_NOOP("Tables", "not tried"),
    Tolerance.AVOID: QT_TRANSLATE_NOOP("Tables", "avoid"),
}
ALLERGENS = {
    Allergen.GLUTEN: QT_TRANSLATE_NOOP("Tables", "gluten"),
    Allergen.CRUSTACEANS: QT_TRANSLATE_NOOP("Tables", "crustaceans"),
    Allergen.EGGS: QT_TRANSLATE_NOOP("Tables", "eggs"),
    Allergen.FISH: QT_TRANSLATE_NOOP("Tables", "fish"),
    Allergen.PEANUTS: QT_TRANSLATE_NOOP("Tables", "peanuts"),
    Allergen.SOYA: QT_TRANSLATE_NOOP("Tables", "soya"),
    Allergen.MILK: QT_TRANSLATE_NOOP("Tables", "milk"),
    Allergen.NUTS: QT_TRANSLATE_NOOP("Tables", "nuts"),
    Allergen.CELERY: QT_TRANSLATE_NOOP("Tables", "celery"),
    Allergen.MUSTARD: QT_TRANSLATE_NOOP("Tables", "mustard"),
    Allergen.SESAME: QT_TRANSLATE_NOOP("Tables", "sesame"),
    Allergen.SULPHITES: QT_TRANSLATE_NOOP("Tables", "sulphites"),
    Allergen.LUPIN: QT_TRANSLATE_NOOP("Tables", "lupin"),
    Allergen.MOLLUSCS: QT_TRANSLATE_NOOP("Tables", "molluscs"),
}
S_PER_H = 3600.0
RACE_TIME = QT_TRANSLATE_NOOP("Tables", "Race time")
CLOCK = QT_TRANSLATE_NOOP("Tables", "Clock")
FOOD = QT_TRANSLATE_NOOP("Tables", "Food")


@dataclass(frozen=True, slots=True)
class ItemRow:
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


@dataclass(frozen=True, slots=True)
class FoodRow:
    """One food and how many servings of it the race takes."""

    key: str
    food: Food
    servings: float

    @property
    def is_own(self) -> bool:
        """Whether its figures are the user's."""
        return self.food.mark == PACKET


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


def food_rows(outlook: Outlook) -> tuple[FoodRow, ...]:
    """Return every food in the order of the plan."""
    fuel = outlook.project.fuel
    taken: dict[str, float] = {}
    for item in fuel.items:
        taken[item.food] = taken.get(item.food, 0.0) + item.servings
    return tuple(FoodRow(food.key, food, taken.get(food.key, 0.0)) for food in fuel.foods)


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


def _figure(name: str, of: str, field: str, decimals: int = 0) -> Column[FoodRow]:
    """Return a column of one figure per serving; a changed one is the user's own."""

    def parse(row: FoodRow, text: str, words: Words) -> Edit | None:
        return ChangeFood(_own(row, **{field: reading.read_number(text, words)}))

    return Column(
        name,
        unit=unit(of),
        text=lambda row, words: words.number(getattr(row.food, field), decimals),
        value=lambda row: getattr(row.food, field),
        parse=parse,
        is_figure=True,
    )


def _own(row: FoodRow, **changes: float | str | Sugars | None) -> Food:
    source = row.food.source if row.is_own else ""
    return replace(row.food, mark=PACKET, source=source, **changes)  # type: ignore[arg-type]


def _read_name(row: FoodRow, text: str, words: Words) -> Edit | None:
    return ChangeFood(replace(row.food, name=text))


def _read_serving(row: FoodRow, text: str, words: Words) -> Edit | None:
    return ChangeFood(_own(row, serving=text))


def _read_sugars(row: FoodRow, text: str, words: Words) -> Edit | None:
    names: dict[str, str] = {sugars: say(name) for sugars, name in SUGARS.items()}
    return ChangeFood(_own(row, sugars=Sugars(reading.read_choice(text, names))))


def _read_shape(row: FoodRow, text: str, words: Words) -> Edit | None:
    names: dict[str, str] = {shape: say(name) for shape, name in SHAPES.items()}
    return ChangeFood(replace(row.food, shape=Shape(reading.read_choice(text, names))))


def _read_tolerance(row: FoodRow, text: str, words: Words) -> Edit | None:
    names: dict[str, str] = {mark: say(name) for mark, name in TOLERANCES.items()}
    return ChangeFood(replace(row.food, tolerance=Tolerance(reading.read_choice(text, names))))


def _read_allergens(row: FoodRow, text: str, words: Words) -> Edit | None:
    names: dict[str, str] = {allergen: say(name) for allergen, name in ALLERGENS.items()}
    parts = [part.strip() for part in text.split(",")]
    found = {Allergen(reading.read_choice(p, names)) for p in parts if p and p != NONE}
    return ChangeFood(replace(row.food, allergens=tuple(a for a in Allergen if a in found)))


def _allergens_text(row: FoodRow, words: Words) -> str:
    return ", ".join(say(ALLERGENS[a]) for a in row.food.allergens) or NONE


def _read_fructose(row: FoodRow, text: str, words: Words) -> Edit | None:
    known = text.strip() not in ("", NONE)
    return ChangeFood(_own(row, fructose_g=reading.read_number(text, words) if known else None))


def _read_carried(row: FoodRow, text: str, words: Words) -> Edit | None:
    return ChangeFood(replace(row.food, is_carried=reading.read_tick(text)))


def _read_source(row: FoodRow, text: str, words: Words) -> Edit | None:
    return ChangeFood(replace(row.food, source=text))


FOOD_COLUMNS: tuple[Column[FoodRow], ...] = (
    Column(
        FOOD,
        text=lambda row, words: one_line(row.food.name),
        parse=_read_name,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Serving"),
        text=lambda row, words: one_line(row.food.serving),
        parse=_read_serving,
    ),
    _figure(CARBS, "g", "carb_g", 1),
    _figure(SODIUM, "mg", "sodium_mg"),
    _figure(FLUID, "mL", "fluid_ml"),
    _figure(CAFFEINE, "mg", "caffeine_mg"),
    _figure(QT_TRANSLATE_NOOP("Tables", "Energy"), "kcal", "energy_kcal"),
    _figure(QT_TRANSLATE_NOOP("Tables", "Weight"), "g", "weight_g"),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Sugars"),
        text=lambda row, words: say(SUGARS[row.food.sugars]),
        parse=_read_sugars,
        choices=lambda row, words: tuple(say(name) for name in SUGARS.values()),
        help_text=QT_TRANSLATE_NOOP(
            "Tables", "Carbohydrate of one kind, or glucose and fructose together."
        ),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Fructose"),
        unit=unit("g"),
        text=lambda row, words: words.number(row.food.fructose_g, 1),
        value=lambda row: row.food.fructose_g,
        parse=_read_fructose,
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP("Tables", "Where the packet says; empty: as the sugars say."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Your gut"),
        text=lambda row, words: say(TOLERANCES[row.food.tolerance]),
        parse=_read_tolerance,
        choices=lambda row, words: tuple(say(name) for name in TOLERANCES.values()),
        help_text=QT_TRANSLATE_NOOP("Tables", "What is marked to avoid is never filled in."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Allergens"),
        text=_allergens_text,
        parse=_read_allergens,
        help_text=QT_TRANSLATE_NOOP("Tables", "With commas between; the packet goes first."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Carried"),
        text=lambda row, words: say(YES if row.food.is_carried else NO),
        parse=_read_carried,
        is_checked=lambda row: row.food.is_carried,
        help_text=QT_TRANSLATE_NOOP("Tables", "Without: eaten only where it stands on a table."),
    ),
    _figure(QT_TRANSLATE_NOOP("Tables", "In a pack"), "servings", "per_pack", 1),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Form"),
        text=lambda row, words: say(SHAPES[row.food.shape]),
        parse=_read_shape,
        choices=lambda row, words: tuple(say(name) for name in SHAPES.values()),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "In the plan"),
        unit=unit(QT_TRANSLATE_NOOP("Tables", "servings")),
        text=lambda row, words: words.servings(row.servings) if row.servings else NONE,
        value=lambda row: row.servings,
        is_figure=True,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Figures are"),
        text=lambda row, words: say(MARKS.get(row.food.mark, row.food.mark)),
        help_text=QT_TRANSLATE_NOOP("Tables", "Figures you type count as read from the packet."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Source"),
        text=lambda row, words: one_line(row.food.source),
        parse=_read_source,
        can_edit=lambda row: row.is_own,
        is_wide=True,
    ),
)


def _add_food(outlook: Outlook, current: FoodRow | None) -> Edit:
    return _new_food(outlook, say(QT_TRANSLATE_NOOP("Tables", "Food of my own")))


def _add_food_line(outlook: Outlook, cell: CellOf, words: Words) -> Edit:
    """Return the edit that adds the food *cell* names."""
    if not cell(FOOD):
        raise PlanError(QT_TRANSLATE_NOOP("Tables", "A new food needs its name."))
    return _new_food(outlook, cell(FOOD))


def _new_food(outlook: Outlook, name: str) -> Edit:
    taken = {food.key for food in outlook.project.fuel.foods}
    return ChangeFood(
        Food(
            fresh_key("own-food", taken),
            name,
            say(QT_TRANSLATE_NOOP("Tables", "1 serving")),
            weight_g=0.0,
            carb_g=0.0,
            mark=PACKET,
        )
    )


def _food_title(row: FoodRow, words: Words) -> str:
    return one_line(row.food.name)


def _remove_food(row: FoodRow) -> Edit:
    return RemoveFood(row.key)


def _no_foods(outlook: Outlook) -> str:
    return QT_TRANSLATE_NOOP("Tables", "No foods yet. Add one and type in what its packet says.")


FOODS: TableSpec[FoodRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "Foods"),
    kind="",
    columns=FOOD_COLUMNS,
    rows=food_rows,
    empty=_no_foods,
    hint=QT_TRANSLATE_NOOP(
        "Tables", "Figures per serving. Removing a food takes it out of the race plan as well."
    ),
    title=_food_title,
    add=_add_food,
    add_line=_add_food_line,
    add_tip=QT_TRANSLATE_NOOP("Tables", "Add a food of your own"),
    remove=_remove_food,
)
