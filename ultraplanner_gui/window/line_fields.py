"""Fields for several lines, and small tables that grow as they are filled."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Slot
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QPlainTextEdit,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from ultraplanner_gui.widgets.fields import describe
from ultraplanner_gui.widgets.table_heads import align_heads


class LinesField(QPlainTextEdit):
    """Text of which each line counts by itself; empty ones do not."""

    def __init__(self, lines: Sequence[str] = (), parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setTabChangesFocus(True)
        self.setPlainText("\n".join(lines))
        describe(self, self.tr("One to a line"))
        self.setMinimumHeight(4 * self.fontMetrics().height())

    @property
    def lines(self) -> tuple[str, ...]:
        """The lines that are not empty."""
        found = (line.strip() for line in self.toPlainText().splitlines())
        return tuple(line for line in found if line)

    def set_lines(self, lines: Sequence[str]) -> None:
        """Show *lines*."""
        self.setPlainText("\n".join(lines))


class RowsField(QTableWidget):
    """Rows of short texts; the last one is always empty, ready to be filled."""

    def __init__(
        self, heads: Sequence[str], rows: Sequence[Sequence[str]], parent: QWidget | None = None
    ) -> None:
        super().__init__(0, len(heads), parent)
        self.setHorizontalHeaderLabels(list(heads))
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        align_heads(self)
        self.verticalHeader().hide()
        self.setTabKeyNavigation(False)
        self.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.AllEditTriggers)
        for row in (*rows, ()):
            self._add(row)
        self.cellChanged.connect(self._on_changed)

    @property
    def filled(self) -> tuple[tuple[str, ...], ...]:
        """The rows in which anything stands."""
        rows = (
            tuple(self._text(row, column) for column in range(self.columnCount()))
            for row in range(self.rowCount())
        )
        return tuple(row for row in rows if any(row))

    def append(self, texts: Sequence[str]) -> None:
        """Fill the empty row at the end with *texts*."""
        row = self.rowCount() - 1
        for column, text in enumerate(texts[: self.columnCount()]):
            item = self.item(row, column)
            if item is not None:
                item.setText(text)

    def _add(self, texts: Sequence[str]) -> None:
        row = self.rowCount()
        self.insertRow(row)
        for column in range(self.columnCount()):
            text = texts[column] if column < len(texts) else ""
            self.setItem(row, column, QTableWidgetItem(text))

    def _text(self, row: int, column: int) -> str:
        item = self.item(row, column)
        return item.text().strip() if item is not None else ""

    @Slot(int, int)
    def _on_changed(self, row: int, column: int) -> None:
        if row == self.rowCount() - 1 and self._text(row, column):
            self._add(())
