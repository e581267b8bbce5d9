"""What cards made of headings and lines are, as finished text."""

from __future__ import annotations

from typing import NamedTuple

from ultraplanner_gui.cards.card_words import Turning
from ultraplanner_gui.plan.value import Value


class Blank(NamedTuple):
    """Room for one thing to be written: a line behind its label, or a box to tick before it.

    A long one takes more room. A tuple, for rows of them are looked up on every trial of a page.
    """

    label: str
    is_box: bool = False
    is_long: bool = False


class Item(Value, frozen=True):
    """One line: a label in front, a text, a box to tick, blanks to write on.

    A `loud` line is as large as the figures that are looked for first.
    """

    text: str = ""
    label: str = ""
    has_box: bool = False
    blanks: tuple[Blank, ...] = ()
    loud: bool = False


class Entry(Value, frozen=True):
    """A heading with its lines; `right` is the figure at its end, `marks` are boxed words."""

    head: str
    items: tuple[Item, ...] = ()
    right: str = ""
    marks: tuple[str, ...] = ()
    has_box: bool = False


class ListCard(Value, frozen=True):
    """A card of entries; `is_loud` has its title fill the width, as a label on a bag does."""

    title: str
    subtitle: str
    entries: tuple[Entry, ...]
    turning: Turning
    warnings: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    is_loud: bool = False
    most_columns: int = 1
