"""Cells as text: what is put on the clipboard for a spreadsheet, and what comes back from one."""

from __future__ import annotations

import csv
import re
import unicodedata
from collections.abc import Callable, Iterable, Sequence

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.wording.words import Words

MOST_CHARACTERS = 400_000
MOST_LINES = 2_000
MOST_CELLS = 100
LONGEST_CELL = 2_000

#: Units a pasted column may be in whatever the table shows: cells read them behind a figure.
READABLE_UNITS = frozenset(("km", "mi", "m", "ft", "h", "min", "min/km", "min/mi"))

_BREAKS = re.compile(r"\r\n?|\u2028|\u2029")
_GROUPED = re.compile(r"\d,\d{3}(?!\d)")
_PARTING = re.compile(r"[;,](?! )")
_BARE = re.compile(r"[-+]?[\d.,:\s\u00a0\u202f]*\d")

Line = list[str]


class Head(Value, frozen=True):
    """The head of a pasted column: the column it names, None if unknown, and its unit."""

    text: str
    column: int | None
    unit: str = ""


def written(lines: Iterable[Sequence[str]]) -> str:
    """Return *lines* of cells as spreadsheets take them: tabs between, odd cells in quotes."""
    return "\n".join(
        "\t".join(_quoted(cell, is_alone=len(line) == 1) for cell in line) for line in lines
    )


def read_lines(text: str, words: Words, is_head: Callable[[Line], bool]) -> list[Line]:
    """Return the lines of cells in *text*, parted by tabs, semicolons or commas.

    Commas and semicolons part cells where each line has as many and no space follows them, or
    where *is_head* knows the first line. PlanError if this is no text a table can take.
    """
    _check_size(text, words)
    plain = _BREAKS.sub("\n", text.removeprefix("\ufeff")).rstrip("\n")
    lines = _parted(plain, words, is_head)
    while lines and not any(cell.strip() for cell in lines[-1]):
        lines.pop()
    if not lines:
        raise PlanError(QT_TRANSLATE_NOOP("Tables", "There is no text to paste. Copy cells first."))
    if len(lines) > MOST_LINES or max(map(len, lines)) > MOST_CELLS:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Tables", "That is too much for this table: at most {0} lines of {1} cells."
            ),
            words.number(MOST_LINES),
            words.number(MOST_CELLS),
        )
    return lines


def check_cell(cell: str) -> None:
    """Raise PlanError if *cell* is nothing to be read: a formula, too long, not text."""
    if cell.lstrip().startswith("="):
        raise PlanError(
            QT_TRANSLATE_NOOP("Tables", "This is a formula. Copy what it comes to instead.")
        )
    if len(cell) > LONGEST_CELL:
        raise PlanError(
            QT_TRANSLATE_NOOP("Tables", "This is longer than a cell can be, {0} characters."),
            LONGEST_CELL,
        )
    if any(unicodedata.category(sign) in ("Cc", "Cs") for sign in cell if sign not in "\n\t"):
        raise PlanError(QT_TRANSLATE_NOOP("Tables", "This holds signs that are not text."))


def read_head(cell: str, names: Sequence[tuple[str, str]]) -> Head:
    """Return which of the columns, by *names* and units, the head *cell* stands for."""
    plain = " ".join(cell.split())
    for column, (name, unit) in enumerate(names):
        if plain.casefold() in (name.casefold(), f"{name}, {unit}".casefold()):
            return Head(plain, column, unit if "," in plain else "")
    for column, (name, _) in enumerate(names):
        found = re.fullmatch(
            rf"{re.escape(name)}\s*[,;:(\[]\s*([^()\[\]]*?)\s*[)\]]?", plain, re.IGNORECASE
        )
        if found is not None:
            return Head(plain, column, found[1])
    return Head(plain, None)


def without_unit(text: str, unit: str) -> str:
    """Return a figure without the unit behind it, if that is *unit* or its last word."""
    plain = text.strip()
    for own in dict.fromkeys((unit, unit.rpartition(" ")[2])):
        if own and plain.casefold().endswith(own.casefold()):
            figure = plain[: -len(own)].rstrip()
            if _BARE.fullmatch(figure):
                return figure
    return plain


def with_unit(text: str, unit: str) -> str:
    """Return a figure that has no unit with *unit* behind it."""
    return f"{text} {unit}" if unit and _BARE.fullmatch(text) else text


def folded(text: str) -> str:
    """Return *text* as it is searched: small letters without their accents."""
    parts = unicodedata.normalize("NFKD", text.casefold())
    return "".join(sign for sign in parts if not unicodedata.combining(sign))


def _check_size(text: str, words: Words) -> None:
    if len(text) > MOST_CHARACTERS:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Tables", "The clipboard holds {0} characters, a table takes {1}. Copy fewer rows."
            ),
            words.number(len(text)),
            words.number(MOST_CHARACTERS),
        )
    if "\0" in text:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Tables", "The clipboard holds something that is not text. Copy the cells again."
            )
        )


def _parted(text: str, words: Words, is_head: Callable[[Line], bool]) -> list[Line]:
    if "\t" in text:
        return _cells(text, "\t")
    for sign in (";", ","):
        lines = _cells(text, sign)
        if len(lines[0]) > 1 and (is_head(lines[0]) or _is_even(text, lines, sign, words)):
            return lines
    return _cells(text, "\t")


def _is_even(text: str, lines: list[Line], sign: str, words: Words) -> bool:
    """Whether *sign* parts cells, rather than words of a note or the figures of a number."""
    if len(lines) < 2 or len({len(line) for line in lines}) > 1 or f"{sign} " in text:
        return False
    # The decimal sign of the language, or that of thousands, is no parting.
    return sign == ";" or (words.number(0.5, 1) == "0.5" and not _GROUPED.search(text))


def _cells(text: str, sign: str) -> list[Line]:
    lines = text.split("\n")
    if '"' in text and not text.count('"') % 2:
        try:
            read = csv.reader([f"{line}\n" for line in lines], delimiter=sign)
            return [line or [""] for line in read]
        except csv.Error:  # a cell beyond the size the reader takes
            pass
    return [line.split(sign) for line in lines]


def _quoted(cell: str, is_alone: bool) -> str:
    is_odd = any(sign in cell for sign in '"\t\n\r')
    # Alone in its line it would be taken for two cells.
    is_odd |= is_alone and bool(_PARTING.search(cell)) and not _BARE.fullmatch(cell)
    doubled = cell.replace('"', '""')
    return f'"{doubled}"' if is_odd else cell
