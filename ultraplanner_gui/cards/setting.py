"""Setting text: sizes that go together, and lines that break but never lose a letter."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from ultraplanner_gui.cards.page import BLACK, LEAST_PT, MM_PER_PT, Align, Measure, Text

EASY_LINE_EM, DENSE_LINE_EM = 1.25, 1.13
"""From one line to the next; the baseline stands one em below the top of the line."""


@dataclass(frozen=True, slots=True)
class Setting:
    """The type of one card at the body size `body_pt`; no size falls below the least legible."""

    body_pt: float
    measure: Measure
    is_dense: bool = False

    @property
    def figure_pt(self) -> float:
        """Size of the one figure looked for first."""
        return 1.2 * self.body_pt

    @property
    def sum_pt(self) -> float:
        """Size of the sum of a leg."""
        return (1.2 if self.is_dense else 1.3) * self.body_pt

    @property
    def name_pt(self) -> float:
        """Size of the names of places."""
        return 1.05 * self.body_pt

    @property
    def small_pt(self) -> float:
        """Size of second lines."""
        return max(LEAST_PT, 0.9 * self.body_pt)

    @property
    def label_pt(self) -> float:
        """Size of heads and notes."""
        return max(LEAST_PT, 0.8 * self.body_pt)

    @property
    def title_pt(self) -> float:
        """Size of the title."""
        return 1.55 * self.body_pt

    @property
    def gap_mm(self) -> float:
        """The least gap between columns."""
        return 0.72 * em_mm(self.body_pt)

    @property
    def pad_mm(self) -> float:
        """The least white above and below a row."""
        return 0.25 if self.is_dense else 0.6

    def line_mm(self, size_pt: float) -> float:
        """Return the height of a line."""
        return (DENSE_LINE_EM if self.is_dense else EASY_LINE_EM) * em_mm(size_pt)

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
        return self.measure(text, size_pt, bold) if text else 0.0

    def widest_mm(self, texts: Iterable[str], size_pt: float, bold: bool = False) -> float:
        """Return the width of the widest of *texts*."""
        return max((self.width_mm(text, size_pt, bold) for text in texts), default=0.0)

    def wrap(self, text: str, width_mm: float, size_pt: float, bold: bool = False) -> list[str]:
        """Return *text* as lines of at most *width_mm*, broken in a word only if it is wider."""
        return self.wrap_parts(filter(None, text.split(" ")), width_mm, size_pt, bold)

    def wrap_parts(
        self,
        parts: Iterable[str],
        width_mm: float,
        size_pt: float,
        bold: bool = False,
        joint: str = " ",
    ) -> list[str]:
        """Return *parts* as lines, broken between them where that is possible.

        The *joint* stands between parts on one line, never at its end.
        """
        lines: list[str] = []
        line = ""
        for part in parts:
            longer = f"{line}{joint}{part}" if line else part
            if self.width_mm(longer, size_pt, bold) <= width_mm:
                line = longer
                continue
            if line:
                lines.append(line)
            *full, line = self._broken(part, width_mm, size_pt, bold)
            lines.extend(full)
        return [*lines, line] if line else lines

    def _broken(self, part: str, width_mm: float, size_pt: float, bold: bool) -> list[str]:
        if self.width_mm(part, size_pt, bold) <= width_mm:
            return [part]
        if " " in part:
            return self.wrap(part, width_mm, size_pt, bold)
        pieces: list[str] = []
        while part:
            count = len(part)
            while count > 1 and self.width_mm(part[:count], size_pt, bold) > width_mm:
                count -= 1
            pieces.append(part[:count])
            part = part[count:]
        return pieces


def em_mm(size_pt: float) -> float:
    """Return the size of type in millimetres."""
    return size_pt * MM_PER_PT
