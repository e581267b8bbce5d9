"""A table in plain text, whatever parts its cells, into lines of cells."""

from __future__ import annotations

import csv
import re
from collections.abc import Iterable, Sequence
from typing import Literal

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, CourseError
from ultraplanner_gui.plan.value import Value

# OWN limits.
LONGEST_TEXT = 200_000
MOST_LINES = 500
MOST_CELLS = 40
LONGEST_CELL = 200
MOST_TITLES = 3
MOST_JOINED = 5

Numbered = tuple[int, str]

_RULE = re.compile(r"[\s\-=+|:;,_]*")
_GAP = re.compile(r" {2,}")
_DECIMAL_COMMA = re.compile(r"(?<=\d),(?=\d)")


class TextLine(Value, frozen=True):
    """One line of the text that is not empty: its number and its cells."""

    number: int
    cells: tuple[str, ...]


def lines_of(text: str) -> tuple[TextLine, ...]:
    """Return the lines of *text* that hold anything, parted into cells.

    Cells are parted by tabs, semicolons, upright strokes, commas, or by two or more spaces or
    the columns that are blank in every line. CourseError if the text is too large to be the
    table of a course, or empty.
    """
    if len(text) > LONGEST_TEXT:
        raise _too_large()
    lines = [(n, line) for n, line in enumerate(_plain(text).split("\n"), 1) if _says(line)]
    if len(lines) > MOST_LINES:
        raise _too_large()
    if not lines:
        raise CourseError(
            QT_TRANSLATE_NOOP("Course", "The table is empty. Paste it with its heads.")
        )
    parted = _parted(lines)
    if max(len(line.cells) for line in parted) > MOST_CELLS:
        raise _too_large()
    return tuple(line for line in parted if any(line.cells))


def _says(line: str) -> bool:
    return _RULE.fullmatch(line) is None


def _plain(text: str) -> str:
    """Return *text* with one kind of line end, usual spaces and no invisible characters."""
    text = text.replace("\r\n", "\n").replace("\r", "\n").replace("\u2028", "\n")
    kept = (" " if c.isspace() and c not in "\n\t" else c for c in text)
    return "".join(c for c in kept if c in "\n\t" or c.isprintable())


def _too_large() -> CourseError:
    return CourseError(
        QT_TRANSLATE_NOOP(
            "Course", "This is too large for the table of a course. Paste only its rows and heads."
        )
    )


def _parted(lines: Sequence[Numbered]) -> list[TextLine]:
    texts = [line for _, line in lines]
    if any("\t" in text for text in texts):
        return _by_mark(lines, "\t")
    for mark in (";", "|"):
        if _is_usual(texts, mark):
            return _by_mark(lines, mark)
    spaced = _by_spaces(lines)
    if spaced is not None and not any("," in _DECIMAL_COMMA.sub("", text) for text in texts):
        return spaced
    if _is_usual(texts, ","):
        return _by_mark(lines, ",")
    return spaced or [TextLine(n, (text.strip(),)) for n, text in lines]


def _is_usual(texts: Sequence[str], mark: str) -> bool:
    return 2 * sum(mark in text for text in texts) > len(texts)


def _by_mark(lines: Sequence[Numbered], mark: str) -> list[TextLine]:
    """Part by *mark*; one that stands in quotes does not part, nor does a line end."""
    parted: list[TextLine] = []
    for number, text in _joined(lines, mark):
        if mark == "|":
            text = text.strip().removeprefix("|").removesuffix("|")
        # A quote that is not closed, as in 12", is a sign like any other.
        quote = None if text.count('"') % 2 else '"'
        quoting: Literal[0, 3] = csv.QUOTE_NONE if quote is None else csv.QUOTE_MINIMAL
        reader = csv.reader(
            [text], delimiter=mark, quotechar=quote, quoting=quoting, skipinitialspace=True
        )
        row = next(reader, [])
        parted.append(TextLine(number, _cut(row)))
    return parted


def _joined(lines: Sequence[Numbered], mark: str) -> list[Numbered]:
    """Return the lines with those joined between which a quote at the head of a cell is open."""
    opens = re.compile(rf'(?:^|{re.escape(mark)})\s*"')
    joined: list[Numbered] = []
    place = 0
    while place < len(lines):
        number, text = lines[place]
        end = place + 1
        if text.count('"') % 2 and opens.search(text):
            tries = range(place + 2, min(place + MOST_JOINED, len(lines)) + 1)
            whole = [" ".join(line for _, line in lines[place:stop]) for stop in tries]
            closed = next((n for n, t in enumerate(whole) if t.count('"') % 2 == 0), None)
            if closed is not None:
                end, text = place + 2 + closed, whole[closed]
        joined.append((number, text))
        place = end
    return joined


def _by_spaces(lines: Sequence[Numbered]) -> list[TextLine] | None:
    """Part by gaps of spaces, leaving titles over the table whole if that finds more columns."""
    found: list[tuple[str, ...]] | None = None
    for gap in (2, 1):
        for titles in range(min(MOST_TITLES, len(lines) - 2) + 1):
            rows = [text for _, text in lines[titles:]]
            cells = _by_gaps(rows) or _by_columns(rows, gap)
            if cells is not None and (found is None or len(cells[0]) > len(found[-1])):
                found = [(text.strip(),) for _, text in lines[:titles]] + cells
        if found is not None:
            return [TextLine(n, row) for (n, _), row in zip(lines, found, strict=True)]
    return None


def _by_gaps(texts: Sequence[str]) -> list[tuple[str, ...]] | None:
    """Return the cells between gaps of two spaces or more, None unless all lines have as many."""
    cells = [_cut(_GAP.split(text.strip())) for text in texts]
    return cells if len(cells[0]) > 1 and len({len(row) for row in cells}) == 1 else None


def _by_columns(texts: Sequence[str], gap: int) -> list[tuple[str, ...]] | None:
    """Return the cells between columns that are blank in every line, at least *gap* wide; None
    if there is but one.
    """
    width = min(max(map(len, texts)), LONGEST_CELL * MOST_CELLS)
    is_blank = [all(text[k : k + 1] in ("", " ") for text in texts) for k in range(width)]
    edges: list[list[int]] = []
    for start, end in _edges(is_blank):
        if edges and start - edges[-1][1] < gap:
            edges[-1][1] = end
        else:
            edges.append([start, end])
    if len(edges) < 2:
        return None
    return [_cut(text[start:end] for start, end in edges) for text in texts]


def _edges(is_blank: Sequence[bool]) -> list[tuple[int, int]]:
    """Return where the columns of text lie between blank ones."""
    edges: list[tuple[int, int]] = []
    start: int | None = None
    for place, blank in enumerate((*is_blank, True)):
        if not blank and start is None:
            start = place
        elif blank and start is not None:
            edges.append((start, place))
            start = None
    return edges


def _cut(cells: Iterable[str]) -> tuple[str, ...]:
    return tuple(" ".join(cell[:LONGEST_CELL].split()) for cell in cells)
