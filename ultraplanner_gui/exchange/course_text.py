"""The rows of a course table out of a text: heads known or guessed, figures in any unit."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from datetime import time
from itertools import pairwise

from ultraplanner_gui.exchange.course_rows import (
    ClockTime,
    CourseRow,
    CourseTable,
    Cutoff,
    shortened,
    with_start,
)
from ultraplanner_gui.exchange.table_heads import (
    FINISH_NAMES,
    START_NAMES,
    TOTAL_NAMES,
    Field,
    Head,
    Layout,
    guessed_layout,
    layout_of,
    offer_of,
    plain_words,
)
from ultraplanner_gui.exchange.table_text import TextLine, lines_of
from ultraplanner_gui.plan.course import Offer
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, CourseError, Message, message
from ultraplanner_gui.wording.clocks import clock_time, is_afternoon_clock, split_weekday
from ultraplanner_gui.wording.reading import read_number
from ultraplanner_gui.wording.words import Words

#: Races are described in these as well as in the user's language and in English.
HANDBOOK_LOCALES = ("de", "fr", "es", "it")
START = QT_TRANSLATE_NOOP("Course", "Start")

_NONE = frozenset(("", "-", "–", "—", "/", "x", "n/a", "na", "none", "?", "..."))
_NO = frozenset(("", "-", "–", "—", "no", "non", "nein", "0", "n", "false"))
_LENGTH = re.compile(r"[^\d+\-−.,]*([+\-−]?[\d.,'’ ]*\d)\s*([a-z]*)\W*", re.IGNORECASE)
_GROUPS = re.compile(r"[+\-−]?\d{1,3}(?:[.,]\d{3})+")
_CELL_UNITS_M = {"km": 1000.0, "k": 1000.0, "mi": 1609.344, "m": 1.0, "ft": 0.3048, "hm": 1.0}
_MIDNIGHT = re.compile(r"24\s*[:.h]\s*00")


def read_table(text: str, words: Words) -> CourseTable:
    """Return the table in *text*, the start before its rows if it has none of its own.

    Columns are told by their heads, without heads by what is in them. Figures without a unit
    are in the units of *words*. CourseError names the line that cannot be read.
    """
    lines = lines_of(text)
    layout = layout_of(lines) or guessed_layout(lines)
    if layout is None:
        raise CourseError(
            QT_TRANSLATE_NOOP(
                "Course",
                "No column of distances is found. Give the columns heads: name, distance, climb,"
                " drop, cutoff.",
            )
        )
    columns = _Columns(layout, words)
    return columns.table()


class _Columns:
    """The cells under the heads, read column by column."""

    def __init__(self, layout: Layout, words: Words) -> None:
        self._layout, self._words = layout, words
        self._lines = _without_total(layout)
        self._notes: list[Message] = []

    def table(self) -> CourseTable:
        """Return all columns as rows."""
        self._check_width()
        at_m = self._distances()
        climbs = self._heights(Field.CLIMB, at_m)
        drops = self._heights(Field.DROP, at_m)
        heights = self._lengths(Field.HEIGHT, self._words.height_unit_m)
        cutoffs = self._cutoffs()
        stops = self._stops()
        rows = []
        for n, line in enumerate(self._lines):
            offers, note = self._offers(line)
            rows.append(
                CourseRow(
                    self._text(line, Field.NAME),
                    at_m[n],
                    climbs[n],
                    drops[n],
                    heights[n],
                    cutoffs[n],
                    stops[n],
                    offers,
                    note,
                )
            )
        if not rows:
            raise CourseError(
                QT_TRANSLATE_NOOP("Course", "There are heads but no rows. Paste the rows as well.")
            )
        last = rows[-1].name
        if last and not set(plain_words(last)) & FINISH_NAMES:
            self._notes.append(
                message(
                    QT_TRANSLATE_NOOP("Course", "The last row, {0}, is taken for the finish."), last
                )
            )
        rows = list(with_start(rows, self._words.translate(START)))
        return CourseTable(tuple(rows), self._layout.title, tuple(self._notes))

    # Columns

    def _check_width(self) -> None:
        wide = next((li for li in self._lines if any(li.cells[self._layout.width :])), None)
        if wide is not None:
            raise CourseError(
                QT_TRANSLATE_NOOP(
                    "Course",
                    "Line {0} has more cells than there are heads. Part cells with tabs or"
                    " semicolons, not with the decimal sign.",
                ),
                _line_name(wide),
            )

    def _column(self, field: Field) -> tuple[int, Head] | None:
        heads = self._layout.heads.items()
        return next(((n, h) for n, h in heads if h.field is field and h.offer is None), None)

    def _cell(self, line: TextLine, number: int) -> str:
        return line.cells[number] if number < len(line.cells) else ""

    def _text(self, line: TextLine, field: Field) -> str:
        column = self._column(field)
        return "" if column is None else self._cell(line, column[0])

    def _lengths(self, field: Field, bare_m: float) -> list[float | None]:
        """Return a column of lengths in metres, None where there is none."""
        column = self._column(field)
        if column is None:
            return [None] * len(self._lines)
        number, head = column
        return [
            self._length(line, self._cell(line, number), field, head.unit_m or bare_m)
            for line in self._lines
        ]

    def _length(self, line: TextLine, text: str, field: Field, bare_m: float) -> float | None:
        if text.casefold() in _NONE:
            return None
        value = _metres(text, bare_m, self._words)
        if value is None:
            what = QT_TRANSLATE_NOOP("Course", "Line {0}: “{1}” is not a distance. Type it as {2}.")
            example = self._words.distance(12_400.0, 1)
            if field not in (Field.AT, Field.LEG):
                what = QT_TRANSLATE_NOOP(
                    "Course", "Line {0}: “{1}” is not a height. Type it as {2}."
                )
                example = self._words.height(410.0)
            raise CourseError(what, _line_name(line), shortened(text), example)
        return abs(value) if field is Field.DROP else value

    def _distances(self) -> list[float | None]:
        """Return how far each place lies from the start, from lengths of legs if need be."""
        at_m = self._lengths(Field.AT, self._words.unit_m)
        legs_m = self._lengths(Field.LEG, self._words.unit_m)
        leg = self._column(Field.LEG)
        if leg is not None and leg[1].is_next:
            legs_m = self._shifted(legs_m, 0.0)
        known = [m for m in at_m if m is not None]
        if leg is None and len(known) > 2 and not all(a < b for a, b in pairwise(known)):
            # Distances that do not rise are those of the legs.
            if sum(a >= b for a, b in pairwise(known)) * 3 < len(known):
                return at_m  # one slip in a rising column: said where the rows are checked
            self._notes.append(
                message(
                    QT_TRANSLATE_NOOP(
                        "Course", "The distances do not rise, so each is taken for one leg."
                    )
                )
            )
            at_m, legs_m = [None] * len(at_m), at_m
        return self._summed(at_m, legs_m)

    def _summed(
        self, at_m: Sequence[float | None], legs_m: Sequence[float | None]
    ) -> list[float | None]:
        there_m: float | None = 0.0
        found: list[float | None] = []
        for n, (at, leg) in enumerate(zip(at_m, legs_m, strict=True)):
            if at is None and leg is None and n == 0 and self._is_start(self._lines[0]):
                leg = 0.0
            if at is None and leg is not None and there_m is not None:
                at = there_m + leg
            there_m = at
            found.append(at)
        return found

    def _is_start(self, line: TextLine) -> bool:
        return bool(set(plain_words(self._text(line, Field.NAME))) & START_NAMES)

    def _heights(self, field: Field, at_m: Sequence[float | None]) -> list[float | None]:
        """Return climb or drop of the leg that ends at each row."""
        values = self._lengths(field, self._words.height_unit_m)
        column = self._column(field)
        if column is not None and column[1].is_next:
            return self._shifted(values, None)
        if column is not None and column[1].is_sum:
            return _differences(values)
        return values

    def _shifted(self, values: Sequence[float | None], first: float | None) -> list[float | None]:
        """Return figures of the legs that begin at the rows as those of the legs that end there."""
        return [first, *values[:-1]]

    # Times

    def _cutoffs(self) -> list[Cutoff | None]:
        column = self._column(Field.CUTOFF)
        if column is None:
            return [None] * len(self._lines)
        number, head = column
        texts = [self._cell(line, number) for line in self._lines]
        read = [_both_ways(text, self._words) for text in texts]
        for line, text, (clock, race_s) in zip(self._lines, texts, read, strict=True):
            if clock is None and race_s is None and text.casefold() not in _NONE:
                raise CourseError(
                    QT_TRANSLATE_NOOP(
                        "Course",
                        "Line {0}: “{1}” is no cutoff. Type it as Sat 20:30, 20:30 or 14 h 30 of"
                        " race time.",
                    ),
                    _line_name(line),
                    shortened(text),
                )
        is_clock = _is_clock(texts, read, head, self._words)
        return [(clock or race_s) if is_clock else _first(race_s, clock) for clock, race_s in read]

    def _stops(self) -> list[float]:
        column = self._column(Field.STOP)
        stops: list[float] = []
        for line in self._lines:
            text = self._cell(line, column[0]) if column is not None else ""
            if text.casefold() in _NONE:
                stops.append(0.0)
                continue
            stop_s = self._words.parse_duration(text)
            if stop_s is None or not math.isfinite(stop_s):
                raise CourseError(
                    QT_TRANSLATE_NOOP(
                        "Course", "Line {0}: “{1}” is not a stop. Type minutes, or 1 h 30."
                    ),
                    _line_name(line),
                    shortened(text),
                )
            stops.append(stop_s)
        return stops

    # What is there

    def _offers(self, line: TextLine) -> tuple[tuple[Offer, ...], str]:
        found: set[Offer] = set()
        notes: list[str] = []
        for number, head in self._layout.heads.items():
            text = self._cell(line, number)
            if head.offer is not None:
                if text.casefold() not in _NO:
                    found.add(head.offer)
            elif head.field is Field.OFFERS:
                offers, others = offers_in(text)
                found |= set(offers)
                notes += others
            elif head.field is Field.NOTE and text:
                notes.append(text)
        return tuple(offer for offer in Offer if offer in found), ", ".join(notes)


def offers_in(text: str) -> tuple[tuple[Offer, ...], list[str]]:
    """Return what *text* says there is, parted by commas or signs, and what is not known of it."""
    found: set[Offer] = set()
    others: list[str] = []
    for part in re.split(r"[,;/+&]", text):
        offer = offer_of(part)
        if offer is not None:
            found.add(offer)
        elif part.strip() and part.strip().casefold() not in _NONE:
            others.append(" ".join(part.split()))
    return tuple(offer for offer in Offer if offer in found), others


def read_cutoff(text: str, words: Words) -> Cutoff | None:
    """Return the cutoff typed: a clock time if it can be one, unless written with h or min."""
    clock, race_s = _both_ways(text, words)
    if clock is not None and (_only_clock(text, words) or not re.search("[a-z]", text, re.I)):
        return clock
    return _first(race_s, clock)


def _both_ways(text: str, words: Words) -> tuple[ClockTime | None, float | None]:
    """Return *text* as a clock time and as seconds of race time, None where it is not one."""
    weekday, plain = split_weekday(text, *HANDBOOK_LOCALES, words.locale)
    at = clock_time(plain)
    clock = None if at is None else ClockTime(at, weekday)
    if _MIDNIGHT.fullmatch(plain):
        clock = ClockTime(time(0, 0), None if weekday is None else (weekday + 1) % 7)
    race_s = None
    if weekday is None:
        # A bare number is hours: no cutoff comes after so many minutes.
        race_s = words.parse_duration(plain, bare_s=3600.0)
    return clock, race_s if race_s is not None and math.isfinite(race_s) else None


def _only_clock(text: str, words: Words) -> bool:
    weekday, plain = split_weekday(text, *HANDBOOK_LOCALES, words.locale)
    return weekday is not None or is_afternoon_clock(plain)


def _is_clock(
    texts: Sequence[str],
    read: Sequence[tuple[ClockTime | None, float | None]],
    head: Head,
    words: Words,
) -> bool:
    """Whether a column of cutoffs holds clock times: by weekdays, by its head, by values that
    fall at midnight; else figures with a colon are clock times, with h and min race times.
    """
    there = [(text, c, s) for text, (c, s) in zip(texts, read, strict=True) if c or s is not None]
    if any(_only_clock(text, words) for text, _, _ in there):
        return True
    if head.is_clock is not None:
        return head.is_clock
    if there and there[0][2] == 0.0:
        return False  # the start stands at 0:00
    if any(clock is None for _, clock, _ in there):
        return False
    falls = any((a or 0.0) > (b or 0.0) for (_, _, a), (_, _, b) in pairwise(there))
    return falls or not any(re.search("[a-z]", text, re.IGNORECASE) for text in texts)


def _first(value: float | None, other: Cutoff | None) -> Cutoff | None:
    return value if value is not None else other


def _metres(text: str, bare_m: float, words: Words) -> float | None:
    found = _LENGTH.fullmatch(re.sub(r"\(.*?\)", "", text))
    if found is None:
        return None
    unit = found[2].casefold()
    if unit and unit not in _CELL_UNITS_M:
        return None
    unit_m = _CELL_UNITS_M.get(unit, bare_m)
    figures = found[1].replace(" ", "")
    # In metres and feet three figures behind a mark are thousands, in kilometres and miles a
    # mark is the decimal sign: nobody's leg has 1,240 km, nobody climbs 1.240 m.
    if _GROUPS.fullmatch(figures) and unit_m <= 1.0:
        figures = re.sub(r"[.,]", "", figures)
    elif unit_m > 1.0 and figures.count(",") + figures.count(".") == 1:
        figures = figures.replace(",", ".")
        return _times(read_number(figures, "."), unit_m)
    return _times(read_number(figures, words.decimal), unit_m)


def _times(value: float | None, unit_m: float) -> float | None:
    return None if value is None or not math.isfinite(value) else value * unit_m


def _differences(values: Sequence[float | None]) -> list[float | None]:
    """Return sums from the start as figures of the legs."""
    before = 0.0
    found: list[float | None] = []
    for value in values:
        found.append(None if value is None else value - before)
        before = before if value is None else value
    return found


def _without_total(layout: Layout) -> tuple[TextLine, ...]:
    """Return the rows without a last one that only adds them up."""
    rows = layout.rows
    if len(rows) > 2 and rows[-1].cells and set(plain_words(rows[-1].cells[0])) & TOTAL_NAMES:
        return rows[:-1]
    return rows


def _line_name(line: TextLine) -> str:
    first = shortened(next((cell for cell in line.cells if cell), ""))
    return f"{line.number} ({first})" if first and not first[0].isdigit() else str(line.number)
