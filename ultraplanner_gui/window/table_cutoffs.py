"""The table of latest times: how each section end stands against its cutoff and the later ones."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

from ultraplanner_gui.engine.gait import walked_between
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.race_checks import ODDS_HOLD
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.course import Section
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import Column, say
from ultraplanner_gui.window.table_sections import NO_COURSE, name_of, span_column
from ultraplanner_gui.window.table_spec import TableSpec, distance_unit
from ultraplanner_gui.wording.words import NONE, Words

LEAVING = QT_TRANSLATE_NOOP("Tables", "leave {0}")


class CutoffRow(Value, frozen=True):
    """One section end: its figures, the race whose clock they are on, and what is walked to it."""

    key: str
    figures: SectionFigures
    race: Race
    walked_m: float
    section: Section

    def clock(self, elapsed_s: float | None) -> datetime | None:
        """Return the clock at a race time, None without one."""
        return None if elapsed_s is None else self.race.clock(elapsed_s)


def cutoff_rows(outlook: Outlook) -> tuple[CutoffRow, ...]:
    """Return every section end in course order."""
    walked, course = outlook.walked, outlook.project.course
    if course is None:
        return ()
    return tuple(
        CutoffRow(
            figures.key,
            figures,
            outlook.project.race,
            walked_between(walked, figures.start_m, figures.end_m)[0],
            course.section(figures.key),
        )
        for figures in outlook.sections
    )


def _cutoff(row: CutoffRow, words: Words) -> str:
    at = row.clock(row.figures.cutoff_s)
    if at is None:
        return NONE
    text = words.clock(at)
    return say(LEAVING).format(text) if row.figures.cutoff_is_departure else text


def _makes_it(row: CutoffRow, words: Words) -> str:
    chance = row.figures.chance
    return NONE if chance is None else words.say(chance.sentence)


def _time(name: str, help_text: str, of: Callable[[SectionFigures], float | None]) -> Column:
    """Return a column of times on the clock at the race."""

    def text(row: CutoffRow, words: Words) -> str:
        at = row.clock(of(row.figures))
        return NONE if at is None else words.clock(at)

    return Column(
        name, text=text, value=lambda row: of(row.figures), is_figure=True, help_text=help_text
    )


COLUMNS: tuple[Column[CutoffRow], ...] = (
    Column(
        QT_TRANSLATE_NOOP("Tables", "Section to"),
        text=name_of,
        value=lambda row: row.figures.end_m,
    ),
    span_column(
        QT_TRANSLATE_NOOP("Tables", "Running"),
        QT_TRANSLATE_NOOP("Tables", "Running time of the section on the target."),
        lambda figures: figures.moving_s,
    ),
    span_column(
        QT_TRANSLATE_NOOP("Tables", "Forecast takes"),
        QT_TRANSLATE_NOOP("Tables", "Running time of the section on the forecast."),
        lambda figures: figures.forecast_moving_s,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "At walking pace"),
        unit=distance_unit,
        text=lambda row, words: words.distance_bare(row.walked_m, 1),
        value=lambda row: row.walked_m,
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP(
            "Tables", "How much of the section the target takes slower than one changes to walking."
        ),
    ),
    _time(
        QT_TRANSLATE_NOOP("Tables", "Arrive"),
        QT_TRANSLATE_NOOP("Tables", "Arrival on the target."),
        lambda figures: figures.arrive_s,
    ),
    _time(
        QT_TRANSLATE_NOOP("Tables", "Forecast"),
        QT_TRANSLATE_NOOP("Tables", "Arrival on the forecast."),
        lambda figures: figures.forecast_s,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Cutoff"),
        text=_cutoff,
        value=lambda row: row.figures.cutoff_s,
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP("Tables", "The latest arrival, or leaving where it says so."),
    ),
    span_column(
        QT_TRANSLATE_NOOP("Tables", "To this cutoff"),
        QT_TRANSLATE_NOOP("Tables", "Cutoff minus the later of the arrivals."),
        lambda figures: figures.to_cutoff_s,
    ),
    span_column(
        QT_TRANSLATE_NOOP("Tables", "Time in hand"),
        QT_TRANSLATE_NOOP(
            "Tables",
            "How much later you could arrive here and still make every later cutoff at planned "
            "speed.",
        ),
        lambda figures: figures.in_hand_s,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Makes it"),
        text=_makes_it,
        value=lambda row: None if row.figures.chance is None else row.figures.chance.share,
        warns=lambda row: (
            row.figures.chance is not None and row.figures.chance.twentieths < ODDS_HOLD
        ),
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP(
            "Tables", "Days of 20 on which this and every earlier cutoff is made."
        ),
    ),
    _time(
        QT_TRANSLATE_NOOP("Tables", "Leave by"),
        QT_TRANSLATE_NOOP(
            "Tables", "The latest leaving from which every later cutoff is met at planned speed."
        ),
        lambda figures: figures.leave_by_s,
    ),
    _time(
        QT_TRANSLATE_NOOP("Tables", "Leave by, to walk in"),
        QT_TRANSLATE_NOOP(
            "Tables",
            "The latest leaving from which the rest can be walked in, only if well; empty where "
            "it is over when you get there as planned.",
        ),
        lambda figures: figures.walk_leave_by_s if figures.can_walk_in else None,
    ),
)


def _empty(outlook: Outlook) -> str:
    return NO_COURSE


CUTOFFS: TableSpec[CutoffRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "Cutoffs"),
    kind="",
    columns=COLUMNS,
    rows=cutoff_rows,
    empty=_empty,
    title=name_of,
    hint=QT_TRANSLATE_NOOP("Tables", "Cutoffs are typed under Aid stations, targets in Sections."),
)
