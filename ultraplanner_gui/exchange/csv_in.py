"""A table out of a CSV file nobody vouches for: heads and lines of text, bounded."""

from __future__ import annotations

import csv
from collections.abc import Sequence
from pathlib import Path

from ultraplanner_gui.exchange.csv_out import unguarded
from ultraplanner_gui.exchange.safe_read import shown_name
from ultraplanner_gui.exchange.table_file import read_text
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, StoreError
from ultraplanner_gui.plan.value import Value

MOST_LINES = 5_000
MOST_CELLS = 100
LONGEST_CELL = 2_000
_MARKS = ",;\t"


class CsvTable(Value, frozen=True):
    """Heads without their units, and the lines under them; every line as long as the heads."""

    heads: tuple[str, ...]
    lines: tuple[tuple[str, ...], ...]


def read_csv(path: Path) -> CsvTable:
    """Return the table in *path*; CourseError or StoreError with one sentence if there is none.

    Cells are parted by the mark the first line has most of: comma, semicolon or tab.
    """
    text = read_text(path)
    first = text.partition("\n")[0]
    mark = max(_MARKS, key=first.count)
    try:
        rows = list(csv.reader(text.splitlines(), delimiter=mark, strict=True))
    except csv.Error as error:
        raise _strange(path) from error
    rows = [row for row in rows if any(cell.strip() for cell in row)]
    if len(rows) < 2 or len(rows[0]) < 2:
        raise _strange(path)
    if len(rows) > MOST_LINES or any(not _is_fit(row) for row in rows):
        raise StoreError(
            QT_TRANSLATE_NOOP(
                "Export", "{0} is larger than a table of sessions can be. Keep its rows alone."
            ),
            shown_name(path),
        )
    heads = tuple(head.rpartition(", ")[0] or head for head in map(str.strip, rows[0]))
    width = len(heads)
    lines = (tuple(map(unguarded, (*row, *("",) * width)[:width])) for row in rows[1:])
    return CsvTable(heads, tuple(lines))


def _is_fit(row: Sequence[str]) -> bool:
    return len(row) <= MOST_CELLS and all(len(cell) <= LONGEST_CELL for cell in row)


def _strange(path: Path) -> StoreError:
    return StoreError(
        QT_TRANSLATE_NOOP(
            "Export", "{0} is no table with heads that can be read. Save it as CSV again."
        ),
        shown_name(path),
    )
