"""The tables of what the fuel adds up to: by the hour, and by the leg between aid stations."""

from __future__ import annotations

from collections.abc import Callable

from ultraplanner_gui.engine.fuelling import Intake
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import Column, say
from ultraplanner_gui.window.table_sections import NO_COURSE
from ultraplanner_gui.window.table_spec import TableSpec, one_line, unit
from ultraplanner_gui.wording.words import NONE, Words

S_PER_H = 3600.0
FINISH = QT_TRANSLATE_NOOP("Tables", "Finish")


class IntakeRow(Value, frozen=True):
    """What is taken in one stretch of the race, seconds of race time."""

    key: str
    name: str
    start_s: float
    end_s: float
    intake: Intake
    race: Race
    foods: tuple[tuple[str, float], ...] = ()

    @property
    def hours(self) -> float:
        """Length in hours, never nothing."""
        return max(self.end_s - self.start_s, 1.0) / S_PER_H


def hour_rows(outlook: Outlook) -> tuple[IntakeRow, ...]:
    """Return every hour of the race, the last one shorter."""
    fuel, race = outlook.fuel, outlook.project.race
    if fuel is None:
        return ()
    rows = []
    for n, hour in enumerate(fuel.hours, start=1):
        start_s, end_s = hour.start_s, hour.start_s + hour.hours * S_PER_H
        is_last = n == len(fuel.hours)
        foods: dict[str, float] = {}
        for item in fuel.plan.items:
            if start_s <= item.at_s < end_s or (is_last and item.at_s == end_s):
                name = one_line(fuel.plan.food(item.food).name)
                foods[name] = foods.get(name, 0.0) + item.servings
        counts = tuple(foods.items())
        rows.append(IntakeRow(f"hour-{n}", str(n), start_s, end_s, hour.intake, race, counts))
    return tuple(rows)


def leg_rows(outlook: Outlook) -> tuple[IntakeRow, ...]:
    """Return every leg between aid stations."""
    fuel, race = outlook.fuel, outlook.project.race
    if fuel is None:
        return ()
    rows = []
    for n, leg in enumerate(fuel.legs):
        counts = tuple((one_line(fuel.plan.food(key).name), count) for key, count in leg.counts)
        span = (leg.start_s, leg.end_s)
        rows.append(IntakeRow(f"leg-{n}", leg.name, *span, leg.intake, race, counts))
    return tuple(rows)


def _foods_text(row: IntakeRow, words: Words) -> str:
    return ", ".join(f"{words.servings(n)} × {name}" for name, n in row.foods) or NONE


def _columns(first: Column[IntakeRow]) -> tuple[Column[IntakeRow], ...]:
    def figure(
        name: str,
        of: str,
        value: Callable[[IntakeRow], float],
        help_text: str = "",
    ) -> Column[IntakeRow]:
        return Column(
            name,
            unit=unit(of),
            text=lambda row, words: words.number(value(row)),
            value=value,
            is_figure=True,
            is_main=True,
            help_text=help_text,
        )

    return (
        first,
        Column(
            QT_TRANSLATE_NOOP("Tables", "From"),
            text=lambda row, words: words.clock(row.race.clock(row.start_s)),
            value=lambda row: row.start_s,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Takes"),
            text=lambda row, words: words.duration(row.end_s - row.start_s),
            value=lambda row: row.end_s - row.start_s,
            is_figure=True,
        ),
        figure(QT_TRANSLATE_NOOP("Tables", "Carbs"), "g", lambda row: row.intake.carb_g),
        figure(
            QT_TRANSLATE_NOOP("Tables", "Carbs per hour"),
            "g/h",
            lambda row: row.intake.carb_g / row.hours,
        ),
        figure(QT_TRANSLATE_NOOP("Tables", "Fluid"), "mL", lambda row: row.intake.fluid_ml),
        figure(
            QT_TRANSLATE_NOOP("Tables", "Fluid per hour"),
            "mL/h",
            lambda row: row.intake.fluid_ml / row.hours,
        ),
        figure(QT_TRANSLATE_NOOP("Tables", "Sodium"), "mg", lambda row: row.intake.sodium_mg),
        figure(QT_TRANSLATE_NOOP("Tables", "Caffeine"), "mg", lambda row: row.intake.caffeine_mg),
        figure(QT_TRANSLATE_NOOP("Tables", "Energy"), "kcal", lambda row: row.intake.energy_kcal),
        figure(QT_TRANSLATE_NOOP("Tables", "Weight"), "g", lambda row: row.intake.weight_g),
        Column(QT_TRANSLATE_NOOP("Tables", "What"), text=_foods_text, is_wide=True),
    )


def _empty(outlook: Outlook) -> str:
    return NO_COURSE


def _title(row: IntakeRow, words: Words) -> str:
    return row.name


HOURS: TableSpec[IntakeRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "By the hour"),
    kind="",
    columns=_columns(
        Column(
            QT_TRANSLATE_NOOP("Tables", "Hour"),
            text=lambda row, words: row.name,
            value=lambda row: row.start_s,
            is_figure=True,
            is_main=True,
        )
    ),
    rows=hour_rows,
    empty=_empty,
    hint=QT_TRANSLATE_NOOP("Tables", "What the items of the table Fuel add up to, hour by hour."),
    title=_title,
    needs_course=True,
)

LEGS: TableSpec[IntakeRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "By the leg"),
    kind="",
    columns=_columns(
        Column(
            QT_TRANSLATE_NOOP("Tables", "Leg to"),
            text=lambda row, words: row.name or say(FINISH),
            value=lambda row: row.start_s,
            is_main=True,
        )
    ),
    rows=leg_rows,
    empty=_empty,
    hint=QT_TRANSLATE_NOOP("Tables", "What to have with you from one aid station to the next."),
    title=_title,
    needs_course=True,
)
