"""The table of practice: what to eat on each session, what was eaten, how the gut took it."""

from __future__ import annotations

from msgspec.structs import replace
from PySide6.QtCore import QCoreApplication

from ultraplanner_gui.buildup.kinds import FULL, GUTS
from ultraplanner_gui.edits.block import ChangeSession
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.engine.fuel_practice import portions_carb_g, practice_portions
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.block import Done, Gut, Kind, Session
from ultraplanner_gui.plan.fuel import FuelPlan, Portion
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import Column
from ultraplanner_gui.window import table_reading as reading
from ultraplanner_gui.window.table_spec import RowDeed, TableSpec, one_line, unit
from ultraplanner_gui.wording.words import NONE, Words

S_PER_H = 3600.0
TIMES = "×"
BETWEEN = ";"
#: What people type for the sign of times.
ALSO_TIMES = (TIMES, " x ", "*")


class PracticeRow(Value, frozen=True):
    """One session with something to practise or something eaten."""

    key: str
    session: Session
    fuel: FuelPlan

    @property
    def done(self) -> Done | None:
        """What was done, None where it still lies ahead."""
        return self.session.done

    @property
    def gives_g(self) -> float:
        """The carbohydrate of the food put on it."""
        return portions_carb_g(self.fuel.foods, self.session.foods)

    @property
    def taken_g_per_h(self) -> float | None:
        """What was eaten per hour, None where nobody knows."""
        done = self.done
        return done.carb_g * S_PER_H / done.duration_s if done and done.duration_s else None


def practice_rows(outlook: Outlook) -> tuple[PracticeRow, ...]:
    """Return every long run, and what else has carbohydrate or food on it."""
    fuel = outlook.project.fuel
    return tuple(
        PracticeRow(s.key, s, fuel)
        for s in outlook.project.block.sessions
        if s.carb_g_per_h
        or s.foods
        or (s.done is not None and (s.done.foods or s.done.carb_g))
        or (s.kind.is_long and s.kind is not Kind.RACE)
    )


def portions_text(fuel: FuelPlan, portions: tuple[Portion, ...], words: Words) -> str:
    """Return "2 × Gel; 1 × Banana"; food that is gone is left out."""
    names = {food.key: one_line(food.name) for food in fuel.foods}
    parts = [
        f"{words.servings(p.servings)} {TIMES} {names[p.food]}" for p in portions if p.food in names
    ]
    return f"{BETWEEN} ".join(parts) or NONE


def read_portions(fuel: FuelPlan, text: str, words: Words) -> tuple[Portion, ...]:
    """Return what *text* lists; a food without a number is one serving."""
    names = {food.key: one_line(food.name) for food in fuel.foods}
    found: list[Portion] = []
    for part in (part.strip() for part in text.split(BETWEEN)):
        if not part or part == NONE:
            continue
        servings, name = 1.0, part
        sign = next((s for s in ALSO_TIMES if s in part), "")
        if sign:
            number, _, rest = part.partition(sign)
            servings, name = reading.read_number(number.strip(), words), rest.strip()
        found.append(Portion(reading.read_choice(name, names), servings))
    return tuple(found)


def _read_foods(row: PracticeRow, text: str, words: Words) -> Edit | None:
    foods = read_portions(row.fuel, text, words)
    return None if foods == row.session.foods else ChangeSession(replace(row.session, foods=foods))


def _read_taken(row: PracticeRow, text: str, words: Words) -> Edit | None:
    if row.done is None:
        raise PlanError(QT_TRANSLATE_NOOP("Tables", "Mark the session done first."))
    foods = read_portions(row.fuel, text, words)
    if foods == row.done.foods:
        return None
    carb_g = portions_carb_g(row.fuel.foods, foods) if foods else row.done.carb_g
    done = replace(row.done, foods=foods, carb_g=carb_g)
    return ChangeSession(replace(row.session, done=done))


def _read_gut(row: PracticeRow, text: str, words: Words) -> Edit | None:
    if row.done is None:
        raise PlanError(QT_TRANSLATE_NOOP("Tables", "Mark the session done first."))
    names: dict[str, str] = {gut: say_gut(gut) for gut in Gut}
    known = text.strip() not in ("", NONE)
    gut = Gut(reading.read_choice(text, names)) if known else None
    return ChangeSession(replace(row.session, done=replace(row.done, gut=gut)))


def say_gut(gut: Gut | None) -> str:
    """Return how the stomach took it, in words."""
    return NONE if gut is None else QCoreApplication.translate("Kinds", GUTS[gut])


def _kind(row: PracticeRow, words: Words) -> str:
    return QCoreApplication.translate("Kinds", FULL[row.session.kind])


def _rate(value: float | None, words: Words) -> str:
    return words.number(value) if value else NONE


def _propose(row: PracticeRow) -> Edit | None:
    foods = practice_portions(row.fuel, row.session)
    is_new = row.session.is_open and foods and foods != row.session.foods
    return ChangeSession(replace(row.session, foods=foods)) if is_new else None


def _as_planned(row: PracticeRow) -> Edit | None:
    if row.done is None or not row.session.foods or row.done.foods == row.session.foods:
        return None
    done = replace(row.done, foods=row.session.foods, carb_g=row.gives_g)
    return ChangeSession(replace(row.session, done=done))


PRACTICE: TableSpec[PracticeRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "Practice"),
    kind="session",
    columns=(
        Column(
            QT_TRANSLATE_NOOP("Tables", "Day"),
            text=lambda row, words: words.day(row.session.day),
            value=lambda row: row.session.day.toordinal(),
            is_figure=True,
            is_main=True,
        ),
        Column(QT_TRANSLATE_NOOP("Tables", "Kind"), text=_kind),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Asked"),
            unit=unit(QT_TRANSLATE_NOOP("Tables", "g/h")),
            text=lambda row, words: _rate(row.session.carb_g_per_h, words),
            value=lambda row: row.session.carb_g_per_h,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "To eat"),
            text=lambda row, words: portions_text(row.fuel, row.session.foods, words),
            parse=_read_foods,
            is_wide=True,
            help_text=QT_TRANSLATE_NOOP("Tables", "As 2 × Gel; 1 × Banana."),
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Gives"),
            unit=unit("g"),
            text=lambda row, words: _rate(row.gives_g, words),
            value=lambda row: row.gives_g,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Eaten"),
            text=lambda row, words: (
                portions_text(row.fuel, row.done.foods, words) if row.done is not None else NONE
            ),
            parse=_read_taken,
            can_edit=lambda row: row.done is not None,
            help_text=QT_TRANSLATE_NOOP(
                "Tables", "What was really eaten; it sets the carbohydrate."
            ),
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "That was"),
            unit=unit(QT_TRANSLATE_NOOP("Tables", "g/h")),
            text=lambda row, words: _rate(row.taken_g_per_h, words),
            value=lambda row: row.taken_g_per_h,
            is_figure=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Gut"),
            text=lambda row, words: say_gut(row.done.gut) if row.done is not None else NONE,
            parse=_read_gut,
            choices=lambda row, words: tuple(say_gut(gut) for gut in Gut),
            can_edit=lambda row: row.done is not None,
        ),
    ),
    rows=practice_rows,
    empty=lambda outlook: QT_TRANSLATE_NOOP("Tables", "No long run and nothing to practise yet."),
    hint=QT_TRANSLATE_NOOP(
        "Tables", "Two runs of an hour that sat well show what your gut takes; Fuel offers it."
    ),
    title=lambda row, words: words.day(row.session.day),
    deeds=(
        RowDeed(
            QT_TRANSLATE_NOOP("Tables", "Propose food"),
            QT_TRANSLATE_NOOP("Tables", "Food of the race plan for what is to be practised"),
            _propose,
        ),
        RowDeed(
            QT_TRANSLATE_NOOP("Tables", "Eaten as planned"),
            QT_TRANSLATE_NOOP("Tables", "What was to be eaten was eaten"),
            _as_planned,
        ),
    ),
)
