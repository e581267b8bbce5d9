"""A course from a table of its places: distances, climb and drop, cutoffs, what is there."""

from __future__ import annotations

import math
from collections.abc import Sequence
from datetime import datetime
from itertools import pairwise

import numpy as np

from ultraplanner_gui.edits.course import LONGEST_STOP_S
from ultraplanner_gui.exchange.course_heights import HIGHEST_M, LOWEST_M
from ultraplanner_gui.exchange.course_rows import (
    NOWHERE,
    CourseRow,
    CourseTable,
    NumberedRow,
    Place,
    cutoffs_of,
    refuse,
)
from ultraplanner_gui.exchange.course_text import read_table
from ultraplanner_gui.exchange.gpx_in import LONGEST_COURSE_M
from ultraplanner_gui.exchange.gpx_parse import cleaned
from ultraplanner_gui.exchange.schematic import Leg, schematic_line
from ultraplanner_gui.plan.course import (
    SHORTEST_SECTION_M,
    AidStation,
    Course,
    Line,
    fresh_key,
    sections_between,
)
from ultraplanner_gui.plan.message import (
    QT_TRANSLATE_NOOP,
    CourseError,
    Message,
    Quantity,
    message,
)
from ultraplanner_gui.wording.words import Words

# OWN limits: nobody walks up a leg steeper than that on average.
MOST_ROWS = 300
STEEPEST_LEG = 0.6
HEIGHTS_DIFFER_M = 20.0
ROUNDING_M = 0.01


def read_course_table(text: str, words: Words, start: datetime, place: Place = NOWHERE) -> Course:
    """Return the course that *text* describes; CourseError with a sentence for the user."""
    return course_of(read_table(text, words), start, place)


def course_of(table: CourseTable, start: datetime, place: Place = NOWHERE) -> Course:
    """Return the course *table* describes, for a race that starts at *start*.

    Its line and the shape of its hills are made up (`exchange.schematic`), distances, climb and
    drop are those of the table. CourseError names the row that cannot be and what to do.
    """
    places = table.places
    _check_places(places)
    legs, said = _legs(places)
    rows = [row for _, row in places]
    cutoffs_s = cutoffs_of(table, start)
    line, length_m = _line(rows, legs, place)
    stations = _stations(rows[1:-1], cutoffs_s[1:-1])
    return Course(
        line=line,
        length_m=length_m,
        stations=stations,
        sections=sections_between(stations),
        name=table.name,
        repairs=(*table.notes, *said, _said_of_line(place)),
    )


def _check_places(rows: Sequence[NumberedRow]) -> None:
    """Raise CourseError unless the rows lie one behind another from 0 on."""
    if len(rows) < 2:
        raise CourseError(
            QT_TRANSLATE_NOOP(
                "Course", "The course needs its finish: type a row with the whole distance."
            )
        )
    if len(rows) > MOST_ROWS:
        raise CourseError(
            QT_TRANSLATE_NOOP(
                "Course", "The table has more than {0} rows. Keep the aid stations alone."
            ),
            MOST_ROWS,
        )
    before_m = 0.0
    for number, row in rows[1:]:
        before_m = _checked_place(number, row, before_m)
        _check_row(number, row)


def _checked_place(number: int, row: CourseRow, before_m: float) -> float:
    if row.at_m is None or not math.isfinite(row.at_m):
        refuse(
            number,
            row,
            QT_TRANSLATE_NOOP(
                "Course", "Row {0} has no distance. Type how far it is from the start."
            ),
        )
    if row.at_m <= before_m:
        refuse(
            number,
            row,
            QT_TRANSLATE_NOOP(
                "Course",
                "Row {0} lies no further than the row before it. Distances count from the start.",
            ),
        )
    if row.at_m - before_m < SHORTEST_SECTION_M - ROUNDING_M:
        refuse(
            number,
            row,
            QT_TRANSLATE_NOOP(
                "Course", "Row {0} lies less than {1} after the row before it. Join the two."
            ),
            Quantity(SHORTEST_SECTION_M, "m"),
        )
    if row.at_m > LONGEST_COURSE_M:
        refuse(
            number,
            row,
            QT_TRANSLATE_NOOP(
                "Course", "Row {0} lies {1} from the start, further than any race. Check its unit."
            ),
            Quantity(row.at_m, "m"),
        )
    return row.at_m


def _check_row(number: int, row: CourseRow) -> None:
    for value in (row.climb_m, row.drop_m):
        if value is not None and not 0.0 <= value < HIGHEST_M * 10.0:
            refuse(
                number,
                row,
                QT_TRANSLATE_NOOP(
                    "Course", "Row {0}: climb and drop are metres or feet, none below 0. Mend it."
                ),
            )
    if row.height_m is not None and not LOWEST_M < row.height_m < HIGHEST_M:
        refuse(
            number,
            row,
            QT_TRANSLATE_NOOP(
                "Course", "Row {0}: no path lies at a height of {1}. Check its unit."
            ),
            Quantity(row.height_m, "height_m"),
        )
    if not 0.0 <= row.stop_s <= LONGEST_STOP_S:
        refuse(
            number,
            row,
            QT_TRANSLATE_NOOP("Course", "Row {0}: a stop takes 0 to 24 hours. Mend it."),
        )


def _legs(rows: Sequence[NumberedRow]) -> tuple[list[Leg] | None, list[Message]]:
    """Return the legs with their climb and drop, None if nothing is known of either, and what
    is to be said about it.
    """
    later = [row for _, row in rows[1:]]
    has_climb = any(row.climb_m is not None for row in later)
    has_drop = any(row.drop_m is not None for row in later)
    has_heights = sum(row.height_m is not None for _, row in rows) > 1
    if not (has_climb or has_drop or has_heights):
        return None, [
            message(
                QT_TRANSLATE_NOOP(
                    "Course", "The table has no climb and no drop: all counts as level."
                )
            )
        ]
    legs: list[Leg] = []
    unknown = 0
    for (_, before), (number, row) in pairwise(rows):
        climb_m, drop_m, is_known = _climb_and_drop(before, row, has_climb, has_drop)
        unknown += not is_known
        assert row.at_m is not None
        _check_steepness(number, row, climb_m + drop_m, row.at_m - (before.at_m or 0.0))
        legs.append(Leg(row.at_m, climb_m, drop_m))
    said = _said_of_heights(has_climb, has_drop, unknown)
    return legs, said + _said_of_misfits([row for _, row in rows], legs)


def _climb_and_drop(
    before: CourseRow, row: CourseRow, has_climb: bool, has_drop: bool
) -> tuple[float, float, bool]:
    """Return climb and drop of a leg, from the heights at its ends where one is not given, and
    whether they are known.
    """
    climb_m, drop_m = row.climb_m, row.drop_m
    rise_m = None
    if before.height_m is not None and row.height_m is not None:
        rise_m = row.height_m - before.height_m
    if climb_m is not None and drop_m is not None:
        return climb_m, drop_m, True
    if rise_m is not None:
        if climb_m is not None:
            return climb_m, max(climb_m - rise_m, 0.0), True
        if drop_m is not None:
            return max(drop_m + rise_m, 0.0), drop_m, True
        return max(rise_m, 0.0), max(-rise_m, 0.0), True
    if climb_m is not None:
        return climb_m, 0.0 if has_drop else climb_m, True
    if drop_m is not None:
        return 0.0 if has_climb else drop_m, drop_m, True
    return 0.0, 0.0, False


def _check_steepness(number: int, row: CourseRow, way_m: float, length_m: float) -> None:
    if way_m > STEEPEST_LEG * length_m:
        refuse(
            number,
            row,
            QT_TRANSLATE_NOOP(
                "Course",
                "Row {0}: {1} of climb and drop on {2} is steeper than any path."
                " Check the units and the distance.",
            ),
            Quantity(way_m, "height_m"),
            Quantity(length_m, "m"),
        )


def _said_of_heights(has_climb: bool, has_drop: bool, unknown: int) -> list[Message]:
    said: list[Message] = []
    if has_climb and not has_drop:
        said.append(
            message(
                QT_TRANSLATE_NOOP(
                    "Course", "The table has no drop: each leg goes down as far as it goes up."
                )
            )
        )
    elif has_drop and not has_climb:
        said.append(
            message(
                QT_TRANSLATE_NOOP(
                    "Course", "The table has no climb: each leg goes up as far as it goes down."
                )
            )
        )
    elif not has_climb:
        said.append(
            message(
                QT_TRANSLATE_NOOP(
                    "Course",
                    "Climb and drop are taken from the heights of the places alone: what goes up"
                    " and down between them is not in it.",
                )
            )
        )
    if unknown:
        said.append(
            message(
                QT_TRANSLATE_NOOP("Course", "Legs without climb and drop count as level: {0}."),
                Quantity(unknown, "count"),
            )
        )
    return said


def _said_of_misfits(rows: Sequence[CourseRow], legs: Sequence[Leg]) -> list[Message]:
    """Say it if the heights of the places do not fit the climb and drop between them."""
    reached = np.cumsum([0.0, *(leg.climb_m - leg.drop_m for leg in legs)])
    known = [n for n, row in enumerate(rows) if row.height_m is not None]
    off_m = [
        abs((rows[b].height_m or 0.0) - (rows[a].height_m or 0.0) - float(reached[b] - reached[a]))
        for a, b in pairwise(known)
    ]
    if max(off_m, default=0.0) <= HEIGHTS_DIFFER_M:
        return []
    return [
        message(
            QT_TRANSLATE_NOOP(
                "Course",
                "The heights of the places do not fit climb and drop, by up to {0}: climb and drop"
                " are kept.",
            ),
            Quantity(max(off_m), "height_m"),
        )
    ]


def _line(
    rows: Sequence[CourseRow], legs: Sequence[Leg] | None, place: Place
) -> tuple[Line, float]:
    """Return the schematic line, at the heights of the places where one is known, and its
    length.
    """
    length_m = rows[-1].at_m or 0.0
    line, along = schematic_line(legs or [Leg(length_m)], place.latitude_deg, place.longitude_deg)
    if legs is None:
        flat = np.full(len(line), math.nan)
        return Line(line.latitude_deg, line.longitude_deg, flat), length_m
    base = next((row for row in rows if row.height_m is not None), None)
    if base is None:
        lift_m = -float(line.elevation_m.min())
    else:
        there_m = float(np.interp(base.at_m or 0.0, along, line.elevation_m))
        lift_m = (base.height_m or 0.0) - there_m
    heights_m = line.elevation_m + lift_m
    if not LOWEST_M < heights_m.min() <= heights_m.max() < HIGHEST_M:
        raise CourseError(
            QT_TRANSLATE_NOOP(
                "Course",
                "Climb and drop add up to a height of {0}, where no path is. Check both, in"
                " metres or feet.",
            ),
            Quantity(float(heights_m[np.abs(heights_m).argmax()]), "height_m"),
        )
    return Line(line.latitude_deg, line.longitude_deg, heights_m), length_m


def _stations(
    rows: Sequence[CourseRow], cutoffs_s: Sequence[float | None]
) -> tuple[AidStation, ...]:
    stations: list[AidStation] = []
    keys: set[str] = set()
    for row, cutoff_s in zip(rows, cutoffs_s, strict=True):
        key = fresh_key("station", keys)
        keys.add(key)
        name = cleaned(row.name) or f"Station {len(stations) + 1}"
        assert row.at_m is not None
        stations.append(
            AidStation(key, name, row.at_m, cutoff_s, row.stop_s, row.offers, cleaned(row.note))
        )
    return tuple(stations)


def _said_of_line(place: Place) -> Message:
    if not place.name:
        return message(
            QT_TRANSLATE_NOOP(
                "Course",
                "The course is drawn from a table: its hills are schematic and its place is not"
                " known. Light is that of the equator.",
            )
        )
    return message(
        QT_TRANSLATE_NOOP(
            "Course",
            "The course is drawn from a table: its line and hills are schematic. Light is computed"
            " for {0}.",
        ),
        place.name,
    )
