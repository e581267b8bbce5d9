"""The rows of a course table: places, the legs between them, cutoffs by clock or race time."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, time, timedelta
from typing import NoReturn

from msgspec.structs import replace

from ultraplanner_gui.edits.course import LONGEST_RACE_S
from ultraplanner_gui.plan.course import Offer
from ultraplanner_gui.plan.message import (
    QT_TRANSLATE_NOOP,
    Argument,
    CourseError,
    Message,
    Quantity,
)
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.value import Value

# OWN: a cutoff later than that after the one before from the one before is a
# clock or weekday that does not fit.
LONGEST_WAIT_S = 48 * 3600.0
LONGEST_UNNAMED_WAIT_S = 20 * 3600.0
LONGEST_QUOTE = 30


class ClockTime(Value, frozen=True):
    """A time of day, on a weekday (Monday 0) if one is known."""

    at: time
    weekday: int | None = None


Cutoff = float | ClockTime


class CourseRow(Value, frozen=True):
    """One place of the course. What is not known is None.

    `at_m` lies metres from the start, `climb_m` and `drop_m` are those of the leg that ends
    here. `cutoff` is a clock time or seconds of race time; at the start a clock time is when
    the race starts.
    """

    name: str = ""
    at_m: float | None = None
    climb_m: float | None = None
    drop_m: float | None = None
    height_m: float | None = None
    cutoff: Cutoff | None = None
    stop_s: float = 0.0
    offers: tuple[Offer, ...] = ()
    note: str = ""


BLANK = CourseRow()


class CourseTable(Value, frozen=True):
    """The places of a course in order: the start at 0, aid stations, the finish.

    Rows with nothing in them count for nothing. `notes` are what the reader of a text had to
    make up, said to the user.
    """

    rows: tuple[CourseRow, ...]
    name: str = ""
    notes: tuple[Message, ...] = ()

    @property
    def places(self) -> tuple[NumberedRow, ...]:
        """The rows that hold anything, each with its number, the first being 1."""
        return tuple((n, row) for n, row in enumerate(self.rows, 1) if row != BLANK)


NumberedRow = tuple[int, CourseRow]


class Place(Value, frozen=True):
    """A named place on the globe, which gives a course without a map its light."""

    name: str = ""
    latitude_deg: float = 0.0
    longitude_deg: float = 0.0


NOWHERE = Place()


def limit_of(table: CourseTable, start: datetime) -> float | None:
    """Return the cutoff at the finish in seconds of race time; CourseError if one cannot be."""
    return cutoffs_of(table, start)[-1]


def proposed_start(table: CourseTable, near: datetime) -> datetime:
    """Return the start the table names, or one its first cutoff fits, on or after the day of
    *near*; *near* itself where the table tells nothing.
    """
    first = next((row.cutoff for row in table.rows if isinstance(row.cutoff, ClockTime)), None)
    if first is None:
        return near
    is_start = table.rows[0].cutoff is first
    day = near
    if first.weekday is not None:
        # A cutoff before the usual hour of the start belongs to the morning after.
        back = 0 if is_start or first.at > near.time() else 1
        day += timedelta(days=(first.weekday - back - near.weekday()) % 7)
    return datetime.combine(day.date(), first.at if is_start else near.time(), near.tzinfo)


def cutoffs_of(table: CourseTable, start: datetime) -> list[float | None]:
    """Return the cutoff of each place of *table* in seconds of race time.

    A clock time is the first such time after the cutoff before it. CourseError if one comes
    before an earlier one, or so late that the weekday or the start cannot be meant.
    """
    race = Race("", start, 0.0)
    found: list[float | None] = [None]
    latest_s = 0.0
    for number, row in table.places[1:]:
        if row.cutoff is None:
            found.append(None)
            continue
        latest_s = _checked_cutoff(number, row, race, latest_s)
        found.append(latest_s)
    return found


def _checked_cutoff(number: int, row: CourseRow, race: Race, after_s: float) -> float:
    cutoff = row.cutoff
    if isinstance(cutoff, ClockTime):
        at_s = _first_after(race, cutoff, after_s)
        longest_s = LONGEST_WAIT_S if cutoff.weekday is not None else LONGEST_UNNAMED_WAIT_S
        if at_s - after_s > longest_s:
            refuse(
                number,
                row,
                QT_TRANSLATE_NOOP(
                    "Course",
                    "Row {0}: the cutoff would come {1} after the one before or the start."
                    " Check it, its weekday and the start.",
                ),
                Quantity(at_s - after_s, "s"),
            )
    else:
        assert cutoff is not None
        at_s = cutoff
    if at_s < after_s:
        refuse(
            number,
            row,
            QT_TRANSLATE_NOOP(
                "Course", "Row {0}: the cutoff comes before an earlier one. Check both."
            ),
        )
    if not 0.0 < at_s <= LONGEST_RACE_S:
        refuse(
            number,
            row,
            QT_TRANSLATE_NOOP(
                "Course", "Row {0}: a cutoff lies after the start and within 240 hours. Mend it."
            ),
        )
    return at_s


def _first_after(race: Race, clock: ClockTime, after_s: float) -> float:
    first_day = race.clock(after_s).date()
    for days in range(9):
        day = first_day + timedelta(days=days)
        if clock.weekday is not None and day.weekday() != clock.weekday:
            continue
        for fold in (0, 1):
            at = datetime.combine(day, clock.at.replace(fold=fold), race.start.tzinfo)
            at_s = race.elapsed(at)
            if at_s > after_s:
                return at_s
    raise AssertionError("every weekday comes within nine days")


def refuse(number: int, row: CourseRow, template: str, *args: Argument) -> NoReturn:
    """Raise the CourseError *template* about a row, named by number and name."""
    name = shortened(row.name)
    name = f"{number} ({name})" if name else str(number)
    raise CourseError(template, name, *args)


def with_start(rows: Sequence[CourseRow], name: str) -> tuple[CourseRow, ...]:
    """Return *rows* with the start before them, called *name* if it has none of its own."""
    if rows and rows[0].at_m == 0.0:
        return (replace(rows[0], name=rows[0].name or name), *rows[1:])
    return (CourseRow(name, 0.0), *rows)


def shortened(text: str) -> str:
    """Return *text* on one line, short enough to stand in a sentence."""
    plain = " ".join(text[:200].split())
    return plain if len(plain) <= LONGEST_QUOTE else plain[: LONGEST_QUOTE - 1].rstrip() + "…"
