"""Figures of the ledger before and now, side by side while something is carried."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

from ultraplanner_gui.desk.language import tr
from ultraplanner_gui.widgets.rows import Figure, Heads, Row

T = TypeVar("T")


class Pairs:
    """Rows under one head; with *changes* each shows what it was where that differs."""

    def __init__(self, title: str, changes: bool, topic: str) -> None:
        self._changes = changes
        heads = (tr("before"), tr("now")) if changes else ("", "")
        self.rows: list[Row] = [Heads(title, *heads, topic=topic)]

    def add(
        self,
        label: str,
        topic: str,
        both: tuple[str, str],
        warns: bool = False,
        help_text: str = "",
    ) -> None:
        """Add a figure by what it was and what it is now; *topic* is what the help says of it."""
        was, now = both
        before = was if self._changes else ""
        self.rows.append(Figure(label, now, before, warns, help_text, topic=topic))


def each(say: Callable[[T], str], was: T, now: T) -> tuple[str, str]:
    """Return *was* and *now* as text."""
    return say(was), say(now)
