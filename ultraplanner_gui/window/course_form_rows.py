"""The rows of the form for a course table: what its cells show and what typing changes."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import datetime
from functools import partial

from msgspec.structs import replace

from ultraplanner_gui.exchange.course_rows import (
    BLANK,
    ClockTime,
    CourseRow,
    CourseTable,
    Cutoff,
)
from ultraplanner_gui.exchange.course_text import offers_in, read_cutoff
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import Column
from ultraplanner_gui.window import table_reading as reading
from ultraplanner_gui.window.table_spec import distance_unit, height_unit, unit
from ultraplanner_gui.wording.words import Words

BLANK_ROWS = 4
MOST_DECIMALS = 3
#: A cell to be filled is empty; a dash would say that there is none.
NOTHING = ""


class FormRow(Value, frozen=True):
    """One row: the place in it, and the place before it that has a distance."""

    key: str
    place: CourseRow
    before_m: float | None
    is_start: bool = False

    @property
    def leg_m(self) -> float | None:
        """Length of the leg that ends here, if known."""
        if self.place.at_m is None or self.before_m is None or self.is_start:
            return None
        return self.place.at_m - self.before_m


Rows = tuple[FormRow, ...]


def first_rows(start: str, finish: str) -> Rows:
    """Return the rows of an empty form."""
    places = (CourseRow(start, 0.0), *(BLANK,) * BLANK_ROWS, CourseRow(finish))
    return rows_of(places)


def rows_of(places: Sequence[CourseRow], keys: Sequence[str] = ()) -> Rows:
    """Return rows that hold *places*, under *keys* as far as they go."""
    rows: list[FormRow] = []
    before_m: float | None = None
    for n, place in enumerate(places):
        key = keys[n] if n < len(keys) else f"row-{n}"
        rows.append(FormRow(key, place, before_m, is_start=n == 0))
        before_m = place.at_m if place.at_m is not None else before_m
    return tuple(rows)


def places_of(rows: Rows) -> list[CourseRow]:
    """Return what is in *rows*."""
    return [row.place for row in rows]


def is_untouched(rows: Rows) -> bool:
    """Whether nothing was typed into *rows* but names of start and finish."""
    return all(replace(p, name="", at_m=p.at_m or None) == BLANK for p in places_of(rows)) and all(
        not row.place.name for row in rows[1:-1]
    )


def table_of(rows: Rows, name: str) -> CourseTable:
    """Return the course table in *rows*."""
    return CourseTable(tuple(places_of(rows)), name)


# What cells show


def _distance(m: float | None, words: Words) -> str:
    """Return a distance with as few decimals as say it to the metre."""
    if m is None:
        return NOTHING
    texts = [words.distance_bare(m, decimals) for decimals in range(1, MOST_DECIMALS + 1)]
    exact = [words.parse_distance(text) for text in texts]
    near = (t for t, e in zip(texts, exact, strict=True) if e is not None and abs(e - m) < 0.5)
    return next(near, texts[-1])


def cutoff_text(cutoff: Cutoff | None, words: Words) -> str:
    """Return a cutoff as it is typed: a clock time or a duration."""
    if cutoff is None:
        return NOTHING
    if not isinstance(cutoff, ClockTime):
        return words.duration(cutoff)
    # The first of January 2024 was a Monday.
    day = 1 + (cutoff.weekday or 0)
    at = datetime(2024, 1, day, cutoff.at.hour, cutoff.at.minute)
    return words.clock(at, weekday=cutoff.weekday is not None)


def _stop(row: FormRow, words: Words) -> str:
    minutes = row.place.stop_s / reading.S_PER_MIN
    return words.number(minutes, 0 if minutes == round(minutes) else 1) if minutes else NOTHING


def there_text(place: CourseRow) -> str:
    """Return what is at a place, the known things first."""
    return ", ".join(part for part in (reading.offers_text(place.offers), place.note) if part)


def _height(name: str) -> Callable[[FormRow, Words], str]:
    def text(row: FormRow, words: Words) -> str:
        value = getattr(row.place, name)
        return NOTHING if value is None else words.height_bare(value)

    return text


def _is_later(row: FormRow) -> bool:
    return not row.is_start


COLUMNS: tuple[Column[FormRow], ...] = (
    Column(
        QT_TRANSLATE_NOOP("Tables", "Place"),
        text=lambda row, words: row.place.name,
        is_main=True,
        help_text=QT_TRANSLATE_NOOP("Tables", "An aid station, or any place with a cutoff."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Distance"),
        unit=distance_unit,
        text=lambda row, words: _distance(row.place.at_m, words),
        can_edit=_is_later,
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP("Tables", "How far the place is from the start."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Leg"),
        unit=distance_unit,
        text=lambda row, words: _distance(row.leg_m, words),
        can_edit=_is_later,
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP(
            "Tables", "How far it is from the place before; later places move along."
        ),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Climb"),
        unit=height_unit,
        text=_height("climb_m"),
        can_edit=_is_later,
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP("Tables", "All that goes up on the leg that ends here."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Drop"),
        unit=height_unit,
        text=_height("drop_m"),
        can_edit=_is_later,
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP("Tables", "All that goes down on the leg that ends here."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Height"),
        unit=height_unit,
        text=_height("height_m"),
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP(
            "Tables", "Above the sea, where you know it. One is enough; none will do."
        ),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Cutoff"),
        text=lambda row, words: cutoff_text(row.place.cutoff, words),
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP(
            "Tables",
            "Sat 20:30, or 20:30 for the next after the one before, or 14 h 30 of race time. At"
            " the start: when the race starts.",
        ),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Stop"),
        unit=unit(QT_TRANSLATE_NOOP("Tables", "min")),
        text=_stop,
        can_edit=_is_later,
        is_figure=True,
        help_text=QT_TRANSLATE_NOOP("Tables", "How long you mean to stay."),
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "What is there"),
        text=lambda row, words: there_text(row.place),
        can_edit=_is_later,
        is_wide=True,
        help_text=QT_TRANSLATE_NOOP(
            "Tables", "Water, food, drop bag, crew, medical; what else you write stays as a note."
        ),
    ),
)
NAME, AT, LEG, CLIMB, DROP, HEIGHT, CUTOFF, STOP, THERE = range(len(COLUMNS))


# What typing changes


def typed(rows: Rows, number: int, column: int, text: str, words: Words) -> Rows:
    """Return *rows* with *text* typed into a cell; PlanError with a sentence if it cannot be."""
    places, plain = places_of(rows), " ".join(text.split())
    if column == LEG:
        places = _with_leg(rows, number, plain, words)
    else:
        places[number] = _TYPED[column](places[number], plain, words)
    return rows_of(places, [row.key for row in rows])


def _with_leg(rows: Rows, number: int, text: str, words: Words) -> list[CourseRow]:
    """Return the places with the leg to *number* as long as typed, later ones moved along."""
    places, row = places_of(rows), rows[number]
    if not text:
        places[number] = replace(row.place, at_m=None)
        return places
    if row.before_m is None:
        raise PlanError(QT_TRANSLATE_NOOP("Tables", "Type the distance of the place before first."))
    at_m = row.before_m + reading.read_distance(text, words)
    by_m = 0.0 if row.place.at_m is None else at_m - row.place.at_m
    places[number] = replace(row.place, at_m=at_m)
    for n in range(number + 1, len(places)):
        later_m = places[n].at_m
        if later_m is not None:
            places[n] = replace(places[n], at_m=later_m + by_m)
    return places


def _named(place: CourseRow, text: str, words: Words) -> CourseRow:
    return replace(place, name=text)


def _placed(place: CourseRow, text: str, words: Words) -> CourseRow:
    return replace(place, at_m=reading.read_distance(text, words) if text else None)


def _measured(name: str, place: CourseRow, text: str, words: Words) -> CourseRow:
    value = reading.read_height(text, words) if text else None
    if value is not None and name == "drop_m":
        value = abs(value)
    return replace(place, **{name: value})


def _cut_off(place: CourseRow, text: str, words: Words) -> CourseRow:
    cutoff = read_cutoff(text, words) if text else None
    if text and cutoff is None:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Tables", "“{0}” is no cutoff. Type it as Sat 20:30, 20:30 or 14 h 30 of race time."
            ),
            text[: reading.LONGEST_QUOTE],
        )
    return replace(place, cutoff=cutoff)


def _stopped(place: CourseRow, text: str, words: Words) -> CourseRow:
    return replace(place, stop_s=reading.read_minutes(text, words))


def _supplied(place: CourseRow, text: str, words: Words) -> CourseRow:
    offers, others = offers_in(text)
    return replace(place, offers=offers, note=", ".join(others))


_TYPED: dict[int, Callable[[CourseRow, str, Words], CourseRow]] = {
    NAME: _named,
    AT: _placed,
    CLIMB: partial(_measured, "climb_m"),
    DROP: partial(_measured, "drop_m"),
    HEIGHT: partial(_measured, "height_m"),
    CUTOFF: _cut_off,
    STOP: _stopped,
    THERE: _supplied,
}


def with_new(rows: Rows, after: int, count: int = 1) -> Rows:
    """Return *rows* with *count* blank ones after the row *after*, never behind the finish."""
    at = min(max(after + 1, 1), len(rows) - 1)
    keys = [row.key for row in rows]
    fresh: list[str] = []
    taken, number = set(keys), len(rows)
    while len(fresh) < count:
        if (key := f"row-{number}") not in taken:
            fresh.append(key)
        number += 1
    places = places_of(rows)
    places[at:at] = [BLANK] * count
    keys[at:at] = fresh
    return rows_of(places, keys)


def without(rows: Rows, gone: set[str]) -> Rows:
    """Return *rows* without those of the keys *gone*; start and finish are emptied instead."""
    first, last = rows[0], rows[-1]
    kept = [row for row in rows[1:-1] if row.key not in gone]
    ends = {
        first.key: CourseRow(first.place.name, 0.0) if first.key in gone else first.place,
        last.key: CourseRow(last.place.name) if last.key in gone else last.place,
    }
    places = [ends[first.key], *(row.place for row in kept), ends[last.key]]
    return rows_of(places, [first.key, *(row.key for row in kept), last.key])
