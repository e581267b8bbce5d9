"""The table of foods: what there is to choose from, and how it is borne."""

from __future__ import annotations

from msgspec.structs import replace

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.fuel import ChangeFood, RemoveFood
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.course import fresh_key
from ultraplanner_gui.plan.fuel import Allergen, Food, Shape, Sugars, Tolerance
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import NO, YES, Column, say
from ultraplanner_gui.window import table_reading as reading
from ultraplanner_gui.window.table_fuel import CAFFEINE, CARBS, FLUID, FOOD, SODIUM
from ultraplanner_gui.window.table_spec import CellOf, TableSpec, one_line, unit
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


class FoodRow(Value, frozen=True):
    """One food and how many servings of it the race takes."""

    key: str
    food: Food
    servings: float

    @property
    def is_own(self) -> bool:
        """Whether its figures are the user's."""
        return self.food.mark == PACKET


def food_rows(outlook: Outlook) -> tuple[FoodRow, ...]:
    """Return every food in the order of the plan."""
    fuel = outlook.project.fuel
    taken: dict[str, float] = {}
    for item in fuel.items:
        taken[item.food] = taken.get(item.food, 0.0) + item.servings
    return tuple(FoodRow(food.key, food, taken.get(food.key, 0.0)) for food in fuel.foods)


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
    return replace(row.food, mark=PACKET, source=source, **changes)


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
