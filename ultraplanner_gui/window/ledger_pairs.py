"""Figures of the ledger before and now, side by side while something is carried."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from ultraplanner_gui.widgets.rows import Figure, Heads, Row


def tr(text: str) -> str:
    """Return *text* in the user's language."""
    return QCoreApplication.translate("Ledger", text)


class Pairs:
    """Rows under one head; with *changes* each shows what it was where that differs."""

    def __init__(self, title: str, changes: bool) -> None:
        self._changes = changes
        heads = (tr("before"), tr("now")) if changes else ("", "")
        self.rows: list[Row] = [Heads(title, *heads)]

    def add(self, label: str, was: str, now: str, warns: bool = False, help_text: str = "") -> None:
        """Add the figure *label*, *was* before and *now*."""
        self.rows.append(Figure(label, now, was if self._changes else "", warns, help_text))
