"""The table of weeks: what each comes to, of what was done or else planned."""

from __future__ import annotations

from collections.abc import Callable

from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.weeks import Role, WeekFigures
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import Column, say
from ultraplanner_gui.window.ledger_buildup import longest_of_30_days
from ultraplanner_gui.window.table_spec import TableSpec, distance_unit, height_unit, unit
from ultraplanner_gui.wording.words import NONE, Words

ROLES: dict[Role, str] = {
    Role.LOADING: QT_TRANSLATE_NOOP("Tables", "loading"),
    Role.CUTBACK: QT_TRANSLATE_NOOP("Tables", "cutback"),
    Role.TAPER: QT_TRANSLATE_NOOP("Tables", "taper"),
    Role.RACE: QT_TRANSLATE_NOOP("Tables", "race"),
}


class WeekRow(Value, frozen=True):
    """One week; its key is its first day."""

    key: str
    week: WeekFigures
    reference_m: float | None


def week_table_rows(outlook: Outlook) -> tuple[WeekRow, ...]:
    """Return every week from the first to the race week."""
    return tuple(
        WeekRow(w.start.isoformat(), w, longest_of_30_days(outlook, w)) for w in outlook.weeks
    )


Read = Callable[[WeekFigures], float | None]


def _column(
    name: str, read: Read, text: Callable[[Words, float | None], str], of: Callable[[Words], str]
) -> Column[WeekRow]:
    return Column(
        name,
        unit=of,
        text=lambda row, words: text(words, read(row.week)),
        value=lambda row: read(row.week),
        is_figure=True,
    )


def _whole_distance(words: Words, m: float | None) -> str:
    return words.distance_bare(m, 1)


def _of_last(week: WeekFigures) -> float | None:
    return 100.0 * week.distance_m / week.last_loading_m if week.last_loading_m else None


def _or_none(words: Words, value: float | None) -> str:
    return words.number(value) if value else NONE


COLUMNS: tuple[Column[WeekRow], ...] = (
    Column(
        QT_TRANSLATE_NOOP("Tables", "To go"),
        unit=unit(QT_TRANSLATE_NOOP("Tables", "weeks")),
        text=lambda row, words: words.number(row.week.to_go),
        value=lambda row: row.week.to_go,
        is_figure=True,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Begins"),
        text=lambda row, words: row.week.start.isoformat(),
        value=lambda row: row.week.start.toordinal(),
    ),
    Column(QT_TRANSLATE_NOOP("Tables", "Week"), text=lambda row, words: say(ROLES[row.week.role])),
    _column(
        QT_TRANSLATE_NOOP("Tables", "Distance"),
        lambda w: w.distance_m,
        _whole_distance,
        distance_unit,
    ),
    _column(
        QT_TRANSLATE_NOOP("Tables", "Planned"),
        lambda w: w.planned_m,
        _whole_distance,
        distance_unit,
    ),
    _column(
        QT_TRANSLATE_NOOP("Tables", "Of last loading week"),
        _of_last,
        lambda words, value: words.number(value),
        unit("%"),
    ),
    _column(
        QT_TRANSLATE_NOOP("Tables", "On feet"),
        lambda w: w.on_feet_s,
        lambda words, value: words.duration(value),
        unit(""),
    ),
    _column(
        QT_TRANSLATE_NOOP("Tables", "Climb"),
        lambda w: w.climb_m,
        lambda words, value: words.height_bare(value),
        height_unit,
    ),
    _column(
        QT_TRANSLATE_NOOP("Tables", "Drop"),
        lambda w: w.drop_m,
        lambda words, value: words.height_bare(value),
        height_unit,
    ),
    _column(
        QT_TRANSLATE_NOOP("Tables", "Longest"),
        lambda w: w.longest_m,
        _whole_distance,
        distance_unit,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "30 days before it"),
        unit=distance_unit,
        text=lambda row, words: words.distance_bare(row.reference_m, 1),
        value=lambda row: row.reference_m,
        is_figure=True,
    ),
    _column(
        QT_TRANSLATE_NOOP("Tables", "Practice"),
        lambda w: w.carb_g_per_h,
        _or_none,
        unit(QT_TRANSLATE_NOOP("Tables", "carbs g/h")),
    ),
    _column(
        QT_TRANSLATE_NOOP("Tables", "Load"),
        lambda w: w.load,
        lambda words, value: words.number(value),
        unit(QT_TRANSLATE_NOOP("Tables", "effort × min")),
    ),
)


def _empty(outlook: Outlook) -> str:
    return QT_TRANSLATE_NOOP("Tables", "No weeks yet. Build the block from the Build-up menu.")


def _this_week(outlook: Outlook) -> str:
    week = next((w for w in outlook.weeks if 0 <= (outlook.today - w.start).days < 7), None)
    return "" if week is None else week.start.isoformat()


def _title(row: WeekRow, words: Words) -> str:
    return words.day(row.week.start)


WEEKS: TableSpec[WeekRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "Weeks"),
    kind="week",
    columns=COLUMNS,
    rows=week_table_rows,
    empty=_empty,
    hint=QT_TRANSLATE_NOOP(
        "Tables", "What was done counts, else what is planned; missed sessions count nothing."
    ),
    title=_title,
    opens_at=_this_week,
)
