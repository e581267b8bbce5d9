"""The table of course sections: targets, arrivals, cutoffs, time in hand."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from typing import Any, Protocol

from ultraplanner_gui.edits.course import MoveSectionEnd, NoteHardStretch, SetSectionTarget
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.course import Section
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import Column, say
from ultraplanner_gui.window import table_reading as reading
from ultraplanner_gui.window.section_words import end_name, section_name
from ultraplanner_gui.window.table_spec import (
    RowDeed,
    TableSpec,
    distance_unit,
    height_unit,
    one_line,
    pace_unit,
)
from ultraplanner_gui.wording.words import NONE, Words

FINISH = QT_TRANSLATE_NOOP("Tables", "Finish")
NO_COURSE = QT_TRANSLATE_NOOP("Tables", "No course yet. Drop a GPX file on the window.")


class SectionRow(Value, frozen=True):
    """One section with its figures and their clock times."""

    key: str
    section: Section
    figures: SectionFigures
    length_m: float
    arrive: datetime
    window: tuple[datetime, datetime]
    cutoff: datetime | None

    @property
    def is_to_finish(self) -> bool:
        """Whether it ends at the finish."""
        return self.section.station is None and self.section.end_m is None


def section_rows(outlook: Outlook) -> tuple[SectionRow, ...]:
    """Return every section in course order."""
    course, race = outlook.project.course, outlook.project.race
    if course is None:
        return ()
    by_key = {section.key: section for section in course.sections}
    return tuple(
        SectionRow(
            figures.key,
            by_key[figures.key],
            figures,
            course.length_m,
            race.clock(figures.arrive_s),
            (race.clock(figures.window_s[0]), race.clock(figures.window_s[1])),
            None if figures.cutoff_s is None else race.clock(figures.cutoff_s),
        )
        for figures in outlook.sections
        if figures.key in by_key
    )


def window_text(window: tuple[datetime, datetime], words: Words) -> str:
    """Return "Sat 18:34 – 20:20", the weekday again where it is another."""
    low, high = window
    return f"{words.clock(low)} – {words.clock(high, weekday=low.date() != high.date())}"


class OfSection(Protocol):
    """A row of any table with a line for each section."""

    @property
    def section(self) -> Section:
        """The section."""

    @property
    def figures(self) -> SectionFigures:
        """Its figures."""


def name_of(row: OfSection, words: Words) -> str:
    """Return what the section is called, and where it ends."""
    end = end_name(row.section, row.figures, words, say(FINISH))
    own = section_name(row.section, row.figures, words)
    return f"{own}, {end}" if own else end


def _read_end(row: SectionRow, text: str, words: Words) -> Edit | None:
    at_m = reading.check_within(reading.read_distance(text, words), row.length_m)
    return MoveSectionEnd(row.key, at_m)


def _read_pace(row: SectionRow, text: str, words: Words) -> Edit | None:
    if not text:
        return SetSectionTarget(row.key, None)
    return SetSectionTarget(row.key, reading.read_pace(text, words) * row.figures.length_m)


def _read_time(row: SectionRow, text: str, words: Words) -> Edit | None:
    return SetSectionTarget(row.key, reading.read_duration(text, words) if text else None)


def _read_fixed(row: SectionRow, text: str, words: Words) -> Edit | None:
    return SetSectionTarget(row.key, row.figures.moving_s if reading.read_tick(text) else None)


def _read_note(row: SectionRow, text: str, words: Words) -> Edit | None:
    return NoteHardStretch(row.key, text)


def span_column(
    name: str, help_text: str, of: Callable[[SectionFigures], float | None]
) -> Column[Any]:
    """Return a column of durations of sections, marked where they are below zero."""
    return Column(
        name,
        text=lambda row, words: words.duration(of(row.figures)),
        value=lambda row: of(row.figures),
        warns=lambda row: (of(row.figures) or 0.0) < 0.0,
        copied=lambda row: reading.hours_and_minutes(of(row.figures)),
        copied_unit="h:mm",
        is_figure=True,
        help_text=help_text,
    )


COLUMNS: tuple[Column[SectionRow], ...] = (
    Column(
        QT_TRANSLATE_NOOP("Tables", "Section to"),
        text=name_of,
        value=lambda row: row.figures.end_m,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "From"),
        unit=distance_unit,
        text=lambda row, words: words.distance_bare(row.figures.start_m, 1),
        value=lambda row: row.figures.start_m,
        is_figure=True,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "To"),
        unit=distance_unit,
        text=lambda row, words: words.distance_bare(row.figures.end_m, 1),
        value=lambda row: row.figures.end_m,
        parse=_read_end,
        can_edit=lambda row: not row.is_to_finish,
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP("Tables", "Where it ends; the aid station there moves along."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Length"),
        unit=distance_unit,
        text=lambda row, words: words.distance_bare(row.figures.length_m, 1),
        value=lambda row: row.figures.length_m,
        is_figure=True,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Climb"),
        unit=height_unit,
        text=lambda row, words: words.height_bare(row.figures.climb_m),
        value=lambda row: row.figures.climb_m,
        is_figure=True,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Drop"),
        unit=height_unit,
        text=lambda row, words: words.height_bare(row.figures.drop_m),
        value=lambda row: row.figures.drop_m,
        is_figure=True,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Target"),
        unit=pace_unit,
        text=lambda row, words: words.pace(row.figures.pace_s_per_m),
        value=lambda row: row.figures.pace_s_per_m,
        parse=_read_pace,
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP(
            "Tables", "Pace while moving. Typing one fixes it; empty lets it follow the curve."
        ),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Running"),
        text=lambda row, words: words.duration(row.figures.moving_s),
        value=lambda row: row.figures.moving_s,
        parse=_read_time,
        copied=lambda row: reading.hours_and_minutes(row.figures.moving_s),
        copied_unit="h:mm",
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP(
            "Tables", "Time without stops. Typing one fixes it; empty lets it follow the curve."
        ),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Fixed"),
        text=lambda row, words: "",
        is_checked=lambda row: row.figures.is_fixed,
        parse=_read_fixed,
        help_text=QT_TRANSLATE_NOOP("Tables", "Whether you set its target yourself."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Arrive"),
        text=lambda row, words: words.clock(row.arrive),
        value=lambda row: row.figures.arrive_s,
        is_figure=True,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Window"),
        text=lambda row, words: window_text(row.window, words),
        value=lambda row: row.figures.window_s[0],
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP(
            "Tables",
            "Where 8 of 10 arrivals fall in 10,000 simulated races; an estimate of our own.",
        ),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Cutoff"),
        text=lambda row, words: NONE if row.cutoff is None else words.clock(row.cutoff),
        value=lambda row: row.figures.cutoff_s,
        is_figure=True,
    ),
    span_column(
        QT_TRANSLATE_NOOP("Tables", "To this cutoff"),
        QT_TRANSLATE_NOOP("Tables", "Cutoff minus arrival."),
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
        QT_TRANSLATE_NOOP("Tables", "When it gets hard here"),
        text=lambda row, words: one_line(row.section.hard_note),
        parse=_read_note,
        is_wide=True,
    ),
)


def _empty(outlook: Outlook) -> str:
    return NO_COURSE


def _free(row: SectionRow) -> Edit | None:
    return SetSectionTarget(row.key, None) if row.section.target_s is not None else None


def _fix(row: SectionRow) -> Edit | None:
    return SetSectionTarget(row.key, row.figures.moving_s) if not row.figures.is_fixed else None


SECTIONS: TableSpec[SectionRow] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "Sections"),
    kind="section",
    columns=COLUMNS,
    rows=section_rows,
    empty=_empty,
    title=name_of,
    hint=QT_TRANSLATE_NOOP("Tables", "Each aid station ends a section; add one there to split."),
    deeds=(
        RowDeed(
            QT_TRANSLATE_NOOP("Tables", "Follow the curve"),
            QT_TRANSLATE_NOOP("Tables", "Let the selected sections follow the target curve again"),
            _free,
        ),
        RowDeed(
            QT_TRANSLATE_NOOP("Tables", "Fix as it is"),
            QT_TRANSLATE_NOOP("Tables", "Keep the targets of the selected sections as they are"),
            _fix,
        ),
    ),
    shows_trouble=True,
)
