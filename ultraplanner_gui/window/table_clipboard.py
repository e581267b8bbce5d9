"""Where the cells of a clipboard's text belong in a table: lines under columns, heads known."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import Aim, Column, say
from ultraplanner_gui.widgets.table_text import (
    READABLE_UNITS,
    Head,
    Line,
    read_head,
    read_lines,
    with_unit,
)
from ultraplanner_gui.wording.words import Words

Names = Sequence[tuple[str, str]]

PAST_THE_LAST_COLUMN = Message(
    QT_TRANSLATE_NOOP("Tables", "Cells past the last column are left out.")
)


class Sheet(Value, frozen=True):
    """Pasted lines, each a text by column; `notes` say what is left out of them."""

    lines: tuple[dict[int, str], ...]
    notes: tuple[Message, ...] = ()
    is_one_cell: bool = False


def lay_out(text: str, columns: Sequence[Column[Any]], aim: Aim, words: Words) -> Sheet:
    """Return the cells of *text* under the columns they go to; PlanError if it is no table.

    Columns are found by their heads where the text brings two or more, else by place from the
    aim on. One block of cells fills a selection that is a multiple of it.
    """
    names = [(say(spec.name), spec.copied_unit or spec.unit(words)) for spec in columns]

    def is_head(line: Line) -> bool:
        return are_heads(line, names)

    lines = read_lines(text, words, is_head)
    # Heads over empty cells alone come as one line with a break behind it.
    if is_head(lines[0]) and (len(lines) > 1 or "\n" in text):
        return _by_heads([read_head(cell, names) for cell in lines[0]], lines[1:], names, aim)
    is_one = len(lines) == len(lines[0]) == 1 and aim.block == (1, 1)
    lines = _filling(lines, aim.block)
    order = aim.columns[aim.first :]
    notes = [PAST_THE_LAST_COLUMN] if max(map(len, lines)) > len(order) else []
    placed = tuple(dict(zip(order, line, strict=False)) for line in lines)
    return Sheet(placed, tuple(notes), is_one)


def are_heads(line: Line, names: Names) -> bool:
    """Whether *line* holds heads of this table: half of its cells, or its one cell to the letter.

    A cell alone may say "done" without being the head "Done, km".
    """
    cells = [cell.strip() for cell in line if cell.strip()]
    if len(cells) == 1:
        return cells[0] in [f"{name}, {unit}" if unit else name for name, unit in names]
    known = sum(read_head(cell, names).column is not None for cell in cells)
    return known >= 2 and 2 * known >= len(cells)


def _by_heads(heads: list[Head], lines: list[Line], names: Names, aim: Aim) -> Sheet:
    if len(heads) == 1 and aim.columns:
        # One column goes where the user points, whatever column it was copied from.
        place = aim.columns[aim.first]
        unit = heads[0].unit if heads[0].column == place else ""
        heads = [Head(heads[0].text, place, unit)]
    notes: list[Message] = []
    used: list[Head | None] = []
    for head in heads:
        note = _trouble(head, names)
        is_again = head.column in [other.column for other in used if other is not None]
        if note is not None:
            notes.append(note)
        used.append(None if note is not None or is_again or head.column is None else head)
    placed = tuple(
        {
            head.column: with_unit(cell.strip(), _foreign(head, names))
            for head, cell in zip(used, line, strict=False)
            if head is not None and head.column is not None
        }
        for line in lines
    )
    return Sheet(placed, tuple(notes))


def _trouble(head: Head, names: Names) -> Message | None:
    """Return why a column is left out, None if it is read."""
    if not head.text:
        return None
    if head.column is None:
        return Message(
            QT_TRANSLATE_NOOP("Tables", "The column “{0}” is not in this table and is left out."),
            (_short(head.text),),
        )
    unit = _foreign(head, names)
    if unit and unit not in READABLE_UNITS:
        return Message(
            QT_TRANSLATE_NOOP("Tables", "“{0}” is in a unit this table does not read; left out."),
            (_short(head.text),),
        )
    return None


def _foreign(head: Head, names: Names) -> str:
    """Return the unit of a pasted column where it is another one than the table's."""
    if head.column is None or head.unit.casefold() == names[head.column][1].casefold():
        return ""
    return head.unit


def _filling(lines: list[Line], block: tuple[int, int]) -> list[Line]:
    """Return *lines* repeated over a selected block that is a multiple of them."""
    width = len(lines[0])
    is_even = len({len(line) for line in lines}) == 1
    down, rest = divmod(block[0], len(lines))
    across, rest_across = divmod(block[1], width)
    if not is_even or rest or rest_across or not (down and across):
        return lines
    return [line * across for line in lines] * down


def _short(text: str) -> str:
    return text if len(text) <= 40 else text[:39] + "…"
