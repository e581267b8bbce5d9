"""Heads of a table each over what its column holds."""

from __future__ import annotations

from collections.abc import Container

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QTableWidget

TEXTS = Qt.AlignmentFlag.AlignLeading | Qt.AlignmentFlag.AlignVCenter
NUMBERS = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


def align_heads(table: QTableWidget, numbers: Container[int] = ()) -> None:
    """Put each head where its column begins, those of columns of *numbers* where these end."""
    for column in range(table.columnCount()):
        head = table.horizontalHeaderItem(column)
        if head is not None:
            head.setTextAlignment(NUMBERS if column in numbers else TEXTS)
