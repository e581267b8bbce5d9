"""A column of a table: what its cells show, how they are typed over, copied and sorted."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Generic, Protocol, TypeVar

from msgspec.structs import replace
from PySide6.QtCore import QCoreApplication

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.table_text import without_unit
from ultraplanner_gui.wording import locales
from ultraplanner_gui.wording.reading import without_isolates
from ultraplanner_gui.wording.words import NONE, Words

YES = QT_TRANSLATE_NOOP("Tables", "yes")
NO = QT_TRANSLATE_NOOP("Tables", "no")
SortValue = str | float | int


class Keyed(Protocol):
    """A row: any frozen value with a key of its own."""

    @property
    def key(self) -> str: ...


R = TypeVar("R", bound=Keyed)


def no_unit(words: Words) -> str:
    """Return no unit at all."""
    return ""


def always(row: Keyed) -> bool:
    """Return True."""
    return True


class Column(Value, Generic[R], frozen=True):
    """One column. `name` and `help_text` are marked for translation in the context "Tables".

    `text` is what a cell shows; `value` what it is sorted by (default: its text, None last);
    `parse` makes an edit of what was typed, None where nothing changes, or raises PlanError
    with a sentence. Without `parse` the column is for reading; `can_edit` excepts single
    rows. `choices` are the texts to choose from, `is_checked` makes it a column of ticks
    (parsed from "yes" and "no"), `warns` says which cells to mark. `copied` is the text for a
    spreadsheet where it is another one, `copied_unit` its unit. Figures stand on the right.
    `is_wide` lets the column take what room is left, `is_main` sets it in full ink though it
    is for reading.
    """

    name: str
    text: Callable[[R, Words], str]
    unit: Callable[[Words], str] = no_unit
    value: Callable[[R], SortValue | None] | None = None
    parse: Callable[[R, str, Words], Edit | None] | None = None
    can_edit: Callable[[R], bool] = always
    choices: Callable[[R, Words], tuple[str, ...]] | None = None
    is_checked: Callable[[R], bool] | None = None
    warns: Callable[[R], bool] | None = None
    copied: Callable[[R], str] | None = None
    copied_unit: str = ""
    is_figure: bool = False
    is_wide: bool = False
    is_main: bool = False
    help_text: str = ""


class Mark(Value, frozen=True):
    """What a paste would do to a cell, in words, and whether it cannot be done."""

    text: str
    is_refused: bool = False


class Aim(Value, frozen=True):
    """Where a paste goes.

    `keys` are the rows in view from its first on; `first` is where its first column stands in
    `columns`, which are all of them as they stand; `block` counts the selected rows and
    columns.
    """

    keys: tuple[str, ...]
    first: int
    columns: tuple[int, ...]
    block: tuple[int, int] = (1, 1)


def cell_text(spec: Column[R], row: R, words: Words) -> str:
    """Return what a cell of *row* shows, "yes" or "no" for a tick."""
    if spec.is_checked is not None:
        return say(YES if spec.is_checked(row) else NO)
    return spec.text(row, words)


def edited_text(spec: Column[R], row: R, words: Words) -> str:
    """Return what stands in a cell of *row* when it is typed over: nothing for none."""
    text = cell_text(spec, row, words)
    return "" if text == NONE else without_isolates(text)


def copied_text(spec: Column[R], row: R, words: Words) -> str:
    """Return a cell as a spreadsheet takes it: nothing for none, no marks for thousands."""
    if spec.copied is not None:
        return spec.copied(row)
    text = edited_text(spec, row, words)
    if spec.is_figure:
        text = text.replace(locales.separators(words.locale).group, "")
    return " ".join(text.split())


def typed(spec: Column[Any], text: str, words: Words) -> str:
    """Return *text* as it is to be read: a figure without the unit its head names already."""
    plain = text.strip()
    return without_unit(plain, spec.unit(words)) if spec.is_figure else plain


def say(text: str) -> str:
    """Return a text marked in the context "Tables" in the user's language."""
    return QCoreApplication.translate("Tables", text) if text else ""


def is_yes(text: str) -> bool | None:
    """Return whether *text* says yes; None if it says neither yes nor no."""
    plain = text.strip().casefold()
    if plain in ("", say(NO).casefold(), NO, "0"):
        return False
    return True if plain in (say(YES).casefold(), YES, "1", "x") else None


def in_gesture(edit: Edit, gesture: int) -> Edit:
    """Return *edit* as part of a gesture, on its own if *gesture* is 0."""
    return replace(edit, gesture=gesture) if gesture else edit  # type: ignore[type-var]
