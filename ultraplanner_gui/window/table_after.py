"""The table of the days after the race: rest by its length, and what not to wait with."""

from __future__ import annotations

from datetime import date

from ultraplanner_gui.engine.fuel_before import CountdownRow
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.race_week import days_after
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import Column
from ultraplanner_gui.window.table_sections import NO_COURSE
from ultraplanner_gui.window.table_spec import TableSpec, unit
from ultraplanner_gui.wording.words import Words


class AfterRow(Value, frozen=True):
    """One thing to do or to watch for; `end` is the day of the finish, from which days count."""

    key: str
    row: CountdownRow
    end: date


def after_rows(outlook: Outlook) -> tuple[AfterRow, ...]:
    """Return what to do and to watch for from the finish on."""
    if outlook.target is None:
        return ()
    rows = days_after(outlook.project, outlook.target.finish_s)
    end = outlook.project.race.clock(outlook.target.finish_s).date()
    return tuple(AfterRow(f"row-{n}", row, end) for n, row in enumerate(rows))


def _title(row: AfterRow, words: Words) -> str:
    return words.day(row.row.at.date())


AFTER: TableSpec[AfterRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "After the race"),
    kind="",
    columns=(
        Column(
            QT_TRANSLATE_NOOP("Tables", "Day"),
            text=_title,
            value=lambda row: row.row.at.timestamp(),
            is_figure=True,
            is_main=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "After the finish"),
            text=lambda row, words: words.number((row.row.at.date() - row.end).days),
            value=lambda row: row.row.at.timestamp(),
            unit=unit(QT_TRANSLATE_NOOP("Tables", "days")),
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
    rows=after_rows,
    empty=lambda outlook: NO_COURSE,
    hint=QT_TRANSLATE_NOOP(
        "Tables", "Counted from the planned finish. Healing has no calendar: pain goes first."
    ),
    title=_title,
    needs_course=True,
)
