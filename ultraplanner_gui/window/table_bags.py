"""The tables of where food comes from: bags, what is carried, tables, shopping, the days before."""

from __future__ import annotations

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.fuel_habits import SetStationFoods
from ultraplanner_gui.engine.fuel_bags import BagPlan, Bought, Carry, Pack, Source, bag_plan
from ultraplanner_gui.engine.fuel_before import CountdownRow
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.race_week import countdown
from ultraplanner_gui.plan.fuel import Food
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.station import AidStation, Kit
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import Column, say
from ultraplanner_gui.window import table_reading as reading
from ultraplanner_gui.window.table_sections import NO_COURSE
from ultraplanner_gui.window.table_spec import TableSpec, distance_unit, one_line, unit
from ultraplanner_gui.wording.words import NONE, Words

START = QT_TRANSLATE_NOOP("Tables", "Start")
SOURCES = {
    Source.START: QT_TRANSLATE_NOOP("Tables", "on you"),
    Source.BAG: QT_TRANSLATE_NOOP("Tables", "drop bag"),
    Source.CREW: QT_TRANSLATE_NOOP("Tables", "crew"),
    Source.TABLE: QT_TRANSLATE_NOOP("Tables", "table"),
    Source.TAP: QT_TRANSLATE_NOOP("Tables", "tap"),
}
KITS = {
    Kit.SHOES: QT_TRANSLATE_NOOP("Tables", "shoes"),
    Kit.SOCKS: QT_TRANSLATE_NOOP("Tables", "socks"),
    Kit.TOP: QT_TRANSLATE_NOOP("Tables", "top"),
    Kit.LAMP: QT_TRANSLATE_NOOP("Tables", "lamp"),
    Kit.POLES: QT_TRANSLATE_NOOP("Tables", "poles"),
}
NOTHING_PLACED = QT_TRANSLATE_NOOP(
    "Tables", "Nothing placed yet. Place fuel by the clock, or fill to target, in the Fuel menu."
)
BETWEEN = "; "
DAY_S, MANY_HOURS_S = 86_400.0, 172_800.0


class BagRow(Value, frozen=True):
    """One food out of one place, or the kit that waits there."""

    key: str
    pack: Pack
    what: str
    planned: float
    spare: float
    whole: float
    weight_g: float
    race: Race


class CarryRow(Value, frozen=True):
    """What is on the runner when leaving one place."""

    key: str
    carry: Carry
    race: Race


class ShoppingRow(Value, frozen=True):
    """One food to buy."""

    key: str
    bought: Bought


class BeforeRow(Value, frozen=True):
    """One thing to do before the race."""

    key: str
    row: CountdownRow
    race: Race


class TableRow(Value, frozen=True):
    """What stands on the table of one aid station."""

    key: str
    station: AidStation
    foods: tuple[Food, ...]


def bags_of(outlook: Outlook) -> BagPlan | None:
    """Return the bag plan of the race, None without a course."""
    course, fuel, target = outlook.project.course, outlook.fuel, outlook.target
    if course is None or fuel is None or target is None:
        return None
    return bag_plan(fuel.plan, course, outlook.sections, target.finish_s)


def bag_rows(outlook: Outlook) -> tuple[BagRow, ...]:
    """Return a row for every food out of every place, and one for kit that waits there."""
    plan, race = bags_of(outlook), outlook.project.race
    rows: list[BagRow] = []
    for pack in plan.packs if plan is not None else ():
        whole, spare = dict(pack.whole()), dict(pack.spare)
        is_packed = pack.source not in (Source.TABLE, Source.TAP)
        for key, planned in pack.servings:
            food = outlook.project.fuel.food(key)
            count = whole[key] if is_packed else planned
            rows.append(
                BagRow(
                    key=f"{pack.source}-{pack.station}-{key}",
                    pack=pack,
                    what=one_line(food.name),
                    planned=planned,
                    spare=spare.get(key, 0.0),
                    whole=count,
                    weight_g=pack.weight_of(food, count),
                    race=race,
                )
            )
        if pack.kit:
            what = ", ".join(say(KITS[kit]) for kit in pack.kit)
            rows.append(BagRow(f"kit-{pack.station}", pack, what, 0.0, 0.0, 0.0, 0.0, race))
    return tuple(rows)


def carry_rows(outlook: Outlook) -> tuple[CarryRow, ...]:
    """Return what is on the runner when leaving the start and every station."""
    plan, race = bags_of(outlook), outlook.project.race
    carries = plan.carries if plan is not None else ()
    return tuple(CarryRow(f"carry-{n}", carry, race) for n, carry in enumerate(carries))


def shopping_rows(outlook: Outlook) -> tuple[ShoppingRow, ...]:
    """Return what to buy, a food a row."""
    plan = bags_of(outlook)
    bought = plan.shopping if plan is not None else ()
    return tuple(ShoppingRow(row.food.key, row) for row in bought)


def before_rows(outlook: Outlook) -> tuple[BeforeRow, ...]:
    """Return the countdown to the gun."""
    rows = countdown(outlook.project) if outlook.project.course is not None else ()
    return tuple(BeforeRow(f"row-{n}", row, outlook.project.race) for n, row in enumerate(rows))


def table_rows(outlook: Outlook) -> tuple[TableRow, ...]:
    """Return what stands on the table of every aid station."""
    course = outlook.project.course
    stations = course.stations if course is not None else ()
    return tuple(TableRow(s.key, s, outlook.project.fuel.foods) for s in stations)


def _place(name: str) -> str:
    return name or say(START)


def _to_start(s: float, words: Words) -> str:
    """Return how long it is to the start, in days while these are many."""
    if s < MANY_HOURS_S:
        return words.duration(s)
    return say(QT_TRANSLATE_NOOP("Tables", "{0} days")).format(words.number(round(s / DAY_S)))


def _servings(value: float, words: Words) -> str:
    return words.servings(value) if value else NONE


BAGS: TableSpec[BagRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "Bags"),
    kind="",
    columns=(
        Column(
            QT_TRANSLATE_NOOP("Tables", "Out of"),
            text=lambda row, words: _place(row.pack.name),
            value=lambda row: row.pack.arrive_s,
            is_main=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "At"),
            unit=distance_unit,
            text=lambda row, words: words.distance_bare(row.pack.at_m, 1),
            value=lambda row: row.pack.at_m,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "There by"),
            text=lambda row, words: words.clock(row.race.clock(row.pack.arrive_s)),
            value=lambda row: row.pack.arrive_s,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "From"),
            text=lambda row, words: say(SOURCES[row.pack.source]),
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "What"),
            text=lambda row, words: row.what,
            is_wide=True,
            is_main=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Planned"),
            unit=unit(QT_TRANSLATE_NOOP("Tables", "servings")),
            text=lambda row, words: _servings(row.planned, words),
            value=lambda row: row.planned,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Spare"),
            unit=unit(QT_TRANSLATE_NOOP("Tables", "servings")),
            text=lambda row, words: _servings(row.spare, words),
            value=lambda row: row.spare,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Pack"),
            unit=unit(QT_TRANSLATE_NOOP("Tables", "servings")),
            text=lambda row, words: _servings(row.whole, words),
            value=lambda row: row.whole,
            is_figure=True,
            is_main=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Weight"),
            unit=unit(QT_TRANSLATE_NOOP("Tables", "g")),
            text=lambda row, words: words.number(row.weight_g) if row.weight_g else NONE,
            value=lambda row: row.weight_g,
            is_figure=True,
        ),
    ),
    rows=bag_rows,
    empty=lambda outlook: NO_COURSE if outlook.project.course is None else NOTHING_PLACED,
    hint=QT_TRANSLATE_NOOP(
        "Tables", "What comes from where. Packed whole, with spare; drinks weigh as powder."
    ),
    title=lambda row, words: row.what,
    group=lambda row: (row.pack.station, row.pack.source),
    needs_course=True,
)

CARRY: TableSpec[CarryRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "Carried"),
    kind="",
    columns=(
        Column(
            QT_TRANSLATE_NOOP("Tables", "Leaving"),
            text=lambda row, words: _place(row.carry.name),
            value=lambda row: row.carry.at_s,
            is_wide=True,
            is_main=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Clock"),
            text=lambda row, words: words.clock(row.race.clock(row.carry.at_s)),
            value=lambda row: row.carry.at_s,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Carbs"),
            unit=unit("g"),
            text=lambda row, words: words.number(row.carry.carb_g),
            value=lambda row: row.carry.carb_g,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Food"),
            unit=unit("g"),
            text=lambda row, words: words.number(row.carry.food_g),
            value=lambda row: row.carry.food_g,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Fluid to the next tap"),
            unit=unit("mL"),
            text=lambda row, words: words.number(row.carry.fluid_ml),
            value=lambda row: row.carry.fluid_ml,
            is_figure=True,
            help_text=QT_TRANSLATE_NOOP("Tables", "What is planned until then, and the spare."),
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Bottles"),
            text=lambda row, words: words.number(row.carry.bottles),
            value=lambda row: row.carry.bottles,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Short of room"),
            unit=unit("mL"),
            text=lambda row, words: (
                words.number(row.carry.short_ml) if row.carry.short_ml else NONE
            ),
            value=lambda row: row.carry.short_ml,
            is_figure=True,
            warns=lambda row: row.carry.short_ml > 0.0,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Weight"),
            unit=unit("g"),
            text=lambda row, words: words.number(row.carry.weight_g),
            value=lambda row: row.carry.weight_g,
            is_figure=True,
            is_main=True,
        ),
    ),
    rows=carry_rows,
    empty=lambda outlook: NO_COURSE,
    hint=QT_TRANSLATE_NOOP("Tables", "What is on you when you leave, food and full bottles."),
    title=lambda row, words: _place(row.carry.name),
    needs_course=True,
)

SHOPPING: TableSpec[ShoppingRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "Shopping"),
    kind="",
    columns=(
        Column(
            QT_TRANSLATE_NOOP("Tables", "Food"),
            text=lambda row, words: one_line(row.bought.food.name),
            is_wide=True,
            is_main=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "One serving is"),
            text=lambda row, words: one_line(row.bought.food.serving),
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Servings"),
            text=lambda row, words: words.servings(row.bought.servings),
            value=lambda row: row.bought.servings,
            is_figure=True,
            is_main=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "In a pack"),
            text=lambda row, words: words.servings(row.bought.food.per_pack),
            value=lambda row: row.bought.food.per_pack,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Packs"),
            text=lambda row, words: words.number(row.bought.packs),
            value=lambda row: row.bought.packs,
            is_figure=True,
            is_main=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Left over"),
            unit=unit(QT_TRANSLATE_NOOP("Tables", "servings")),
            text=lambda row, words: _servings(row.bought.left, words),
            value=lambda row: row.bought.left,
            is_figure=True,
        ),
    ),
    rows=shopping_rows,
    empty=lambda outlook: NO_COURSE if outlook.project.course is None else NOTHING_PLACED,
    hint=QT_TRANSLATE_NOOP("Tables", "For every bag, spare among it; whole packs are bought."),
    title=lambda row, words: one_line(row.bought.food.name),
    needs_course=True,
)

BEFORE: TableSpec[BeforeRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "Before the start"),
    kind="",
    columns=(
        Column(
            QT_TRANSLATE_NOOP("Tables", "Day"),
            text=lambda row, words: words.day(row.row.at.date()),
            value=lambda row: row.row.at.timestamp(),
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Clock"),
            text=lambda row, words: words.clock(row.row.at),
            value=lambda row: row.row.at.timestamp(),
            is_figure=True,
            is_main=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "To the start"),
            text=lambda row, words: _to_start(-row.race.elapsed(row.row.at), words),
            value=lambda row: row.row.at.timestamp(),
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "What"),
            text=lambda row, words: words.say(row.row.text),
            is_wide=True,
            is_main=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Source"),
            text=lambda row, words: words.say(row.row.source),
        ),
    ),
    rows=before_rows,
    empty=lambda outlook: NO_COURSE,
    hint=QT_TRANSLATE_NOOP(
        "Tables", "By body mass and start. Not for people with diabetes without their care team."
    ),
    title=lambda row, words: words.clock(row.row.at),
    needs_course=True,
)


def _read_table(row: TableRow, text: str, words: Words) -> Edit | None:
    names = {food.key: one_line(food.name) for food in row.foods}
    parts = [part.strip() for part in text.split(BETWEEN.strip())]
    keys = tuple(reading.read_choice(part, names) for part in parts if part and part != NONE)
    return None if keys == row.station.foods else SetStationFoods(row.key, keys)


def _table_text(row: TableRow, words: Words) -> str:
    names = {food.key: one_line(food.name) for food in row.foods}
    return BETWEEN.join(names[key] for key in row.station.foods if key in names) or NONE


TABLE_FOODS: TableSpec[TableRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "Food at stations"),
    kind="station",
    columns=(
        Column(
            QT_TRANSLATE_NOOP("Tables", "Station"),
            text=lambda row, words: one_line(row.station.name),
            value=lambda row: row.station.at_m,
            is_main=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "At"),
            unit=distance_unit,
            text=lambda row, words: words.distance_bare(row.station.at_m, 1),
            value=lambda row: row.station.at_m,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "On the table"),
            text=_table_text,
            parse=_read_table,
            is_wide=True,
            help_text=QT_TRANSLATE_NOOP(
                "Tables",
                "Names of foods with semicolons between; Fuel, Food at stations ticks them.",
            ),
        ),
    ),
    rows=table_rows,
    empty=lambda outlook: NO_COURSE,
    hint=QT_TRANSLATE_NOOP("Tables", "What the organiser offers; filling takes it there."),
    title=lambda row, words: one_line(row.station.name),
    needs_course=True,
)
