"""Setting text: sizes that go together, and lines that break but never lose a letter."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from typing import NamedTuple

from ultraplanner_gui.cards.page import BLACK, LEAST_PT, MM_PER_PT, Align, Measure, Text

EASY_LINE_EM, DENSE_LINE_EM = 1.25, 1.13
"""From one line to the next; the baseline stands one em below the top of the line."""

MOST_KNOWN, MOST_WRAPPED = 8_000, 2_000
"""Texts whose width, and whose lines, are held: some more than all cards of one plan have."""

ROUNDING = 1e-9
"""Share of a width by which a text may seem wider than the column that was made for it."""


class Widths:
    """Widths of texts in type of one point, millimetres, each measured once."""

    def __init__(self, measure: Measure) -> None:
        self._measure = measure
        self._of_one: dict[tuple[str, bool], float] = {}
        self._of_widest: dict[tuple[tuple[str, ...], bool], float] = {}
        self._lines: dict[tuple[tuple[str, ...], str, bool], list[_Lines]] = {}

    def of(self, text: str, bold: bool) -> float:
        """Return the width of *text*."""
        width = self._of_one.get((text, bold))
        if width is None:
            if len(self._of_one) >= MOST_KNOWN:
                self._of_one.clear()
            width = self._of_one[text, bold] = self._measure(text, 1.0, bold)
        return width

    def of_widest(self, texts: tuple[str, ...], bold: bool) -> float:
        """Return the width of the widest of *texts*."""
        width = self._of_widest.get((texts, bold))
        if width is None:
            width = max((self.of(text, bold) for text in texts), default=0.0)
            self._of_widest[texts, bold] = width
        return width

    def wrapped(self, parts: tuple[str, ...], joint: str, bold: bool, room: float) -> Sequence[str]:
        """Return *parts* as lines no wider than *room*, broken in a part only if that is wider."""
        if len(self._lines) >= MOST_WRAPPED:
            self._lines.clear()
            self._of_widest.clear()
        known = self._lines.setdefault((parts, joint, bold), [])
        for found in known:
            if found.low <= room < found.high:
                return found.lines
        lines: list[str] = []
        line, high = "", math.inf
        is_whole = True
        for part in parts:
            longer = f"{line}{joint}{part}" if line else part
            wide = self.of(longer, bold)
            if wide <= room:
                line = longer
                continue
            high = min(high, wide)
            if line:
                lines.append(line)
            line = part
            if self.of(part, bold) > room:
                *full, line = self._broken(part, bold, room)
                lines.extend(full)
                is_whole = False
        if line:
            lines.append(line)
        if is_whole:
            known.append(_Lines(self.of_widest(tuple(lines), bold), high, lines))
        return lines

    def _broken(self, part: str, bold: bool, room: float) -> Sequence[str]:
        if " " in part:
            return self.wrapped(words_of(part), " ", bold, room)
        pieces: list[str] = []
        while part:
            count = len(part)
            while count > 1 and self.of(part[:count], bold) > room:
                count -= 1
            pieces.append(part[:count])
            part = part[count:]
        return pieces


class _Lines(NamedTuple):
    """How a text breaks in every room from `low` to less than `high`."""

    low: float
    high: float
    lines: Sequence[str]


@lru_cache(maxsize=2000)
def words_of(text: str) -> tuple[str, ...]:
    """Return the words of *text*."""
    return tuple(filter(None, text.split(" ")))


@dataclass(frozen=True, slots=True)
class Setting:
    """The type of one card at the body size `body_pt`; no size falls below the least legible."""

    body_pt: float
    widths: Widths
    is_dense: bool = False
    least_pt: float = LEAST_PT

    figure_pt: float = field(init=False)
    """Size of the one figure looked for first."""

    sum_pt: float = field(init=False)
    """Size of the sum of a leg."""

    name_pt: float = field(init=False)
    """Size of the names of places."""

    small_pt: float = field(init=False)
    """Size of second lines."""

    label_pt: float = field(init=False)
    """Size of heads and notes."""

    title_pt: float = field(init=False)
    """Size of the title."""

    gap_mm: float = field(init=False)
    """The least gap between columns."""

    pad_mm: float = field(init=False)
    """The least white above and below a row."""

    _line_mm: float = field(init=False)
    """The height of a line in type of one point."""

    def __post_init__(self) -> None:
        body, dense = self.body_pt, self.is_dense
        # Worked out once: every line of a trial asks for them.
        for name, value in (
            ("figure_pt", 1.2 * body),
            ("sum_pt", (1.2 if dense else 1.3) * body),
            ("name_pt", 1.05 * body),
            ("small_pt", max(self.least_pt, 0.9 * body)),
            ("label_pt", max(self.least_pt, 0.8 * body)),
            ("title_pt", 1.55 * body),
            ("gap_mm", 0.72 * em_mm(body)),
            ("pad_mm", 0.25 if dense else 0.6),
            ("_line_mm", (DENSE_LINE_EM if dense else EASY_LINE_EM) * MM_PER_PT),
        ):
            object.__setattr__(self, name, value)

    def line_mm(self, size_pt: float) -> float:
        """Return the height of a line."""
        return self._line_mm * size_pt

    def stacked(
        self,
        lines: Iterable[str],
        x_mm: float,
        top_mm: float,
        size_pt: float,
        bold: bool = False,
        align: Align = "left",
        grey: float = BLACK,
    ) -> list[Text]:
        """Return *lines* one under another, the first line's top at *top_mm*."""
        first, pitch = top_mm + em_mm(size_pt), self.line_mm(size_pt)
        return [
            Text(x_mm, first + k * pitch, line, size_pt, bold, align, grey)
            for k, line in enumerate(lines)
        ]

    def width_mm(self, text: str, size_pt: float, bold: bool = False) -> float:
        """Return the width of *text*."""
        return size_pt * self.widths.of(text, bold)

    def widest_mm(self, texts: Iterable[str], size_pt: float, bold: bool = False) -> float:
        """Return the width of the widest of *texts*."""
        return size_pt * self.widths.of_widest(tuple(texts), bold)

    def wrap(self, text: str, width_mm: float, size_pt: float, bold: bool = False) -> Sequence[str]:
        """Return *text* as lines of at most *width_mm*, broken in a word only if it is wider."""
        room = width_mm / size_pt * (1.0 + ROUNDING)
        return self.widths.wrapped(words_of(text), " ", bold, room)

    def wrap_parts(
        self,
        parts: Iterable[str],
        width_mm: float,
        size_pt: float,
        bold: bool = False,
        joint: str = " ",
    ) -> Sequence[str]:
        """Return *parts* as lines, broken between them where that is possible.

        The *joint* stands between parts on one line, never at its end.
        """
        room = width_mm / size_pt * (1.0 + ROUNDING)
        return self.widths.wrapped(tuple(parts), joint, bold, room)


def em_mm(size_pt: float) -> float:
    """Return the size of type in millimetres."""
    return size_pt * MM_PER_PT
