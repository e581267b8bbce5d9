"""What one table of the plan is: its rows out of an outlook, its columns, what its buttons do."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Generic, TypeVar

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_column import Column, say
from ultraplanner_gui.wording.words import Words

R = TypeVar("R")
#: What a pasted line says under the name of a column, nothing if nothing.
CellOf = Callable[[str], str]


class RowDeed(Value, Generic[R], frozen=True):
    """A button that does something to each selected row: `edit` gives None where it cannot."""

    text: str
    tip: str
    edit: Callable[[R], Edit | None]


class TableSpec(Value, Generic[R], frozen=True):
    """One table. All texts are marked in the context "Tables".

    `kind` is the name of its rows in the selection, empty if they cannot be selected there.
    `empty` says why there are no rows, `hint` how the table works. `add` makes the edit behind
    the Add button from the outlook and the current row, None where nothing can be added. A
    table has the buttons it has deeds for. `add_line` makes the edit behind a pasted line from
    what it says under the name of a column, or raises PlanError. `title` names a row in a
    sentence. `group` tells which rows belong together, `opens_at` the key of the row to see
    first. With `shows_trouble` it says what is wrong with the targets.
    """

    name: str
    kind: str
    columns: tuple[Column[Any], ...]
    rows: Callable[[Outlook], tuple[R, ...]]
    empty: Callable[[Outlook], str]
    hint: str
    title: Callable[[R, Words], str]
    add: Callable[[Outlook, R | None], Edit | None] | None = None
    add_tip: str = ""
    add_line: Callable[[Outlook, CellOf, Words], Edit] | None = None
    remove: Callable[[R], Edit | None] | None = None
    deeds: tuple[RowDeed[R], ...] = ()
    group: Callable[[R], object] | None = None
    opens_at: Callable[[Outlook], str] | None = None
    needs_course: bool = False
    shows_trouble: bool = False


def distance_unit(words: Words) -> str:
    """Return "km" or "mi"."""
    return words.distance_unit


def height_unit(words: Words) -> str:
    """Return "m" or "ft"."""
    return words.height_unit


def pace_unit(words: Words) -> str:
    """Return "min/km" or "min/mi"."""
    return words.pace_unit


def unit(text: str) -> Callable[[Words], str]:
    """Return a unit that is the same for everybody; a word is marked in the context "Tables"."""
    return lambda words: say(text)


def one_line(text: str) -> str:
    """Return *text* without breaks, for a cell."""
    return " ".join(text.split())
