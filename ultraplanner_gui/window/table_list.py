"""The names of all tables beside the one in view, in groups."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt, Signal, Slot
from PySide6.QtWidgets import QFrame, QListWidget, QListWidgetItem, QWidget

from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Space

NUMBER = Qt.ItemDataRole.UserRole


class TableList(QListWidget):
    """Tables by their number, under the names of their groups."""

    #: Another table is wanted: its number.
    chosen = Signal(int)

    def __init__(
        self, groups: Sequence[tuple[str, Sequence[str]]], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(self.tr("Tables"))
        self._rows: list[int] = []
        self._heads: list[QListWidgetItem] = []
        for group, names in groups:
            head = QListWidgetItem(group)
            head.setFlags(Qt.ItemFlag.NoItemFlags)
            self._heads.append(head)
            self.addItem(head)
            for name in names:
                item = QListWidgetItem(name)
                item.setData(NUMBER, len(self._rows))
                self._rows.append(self.count())
                self.addItem(item)
        self.setCurrentRow(self._rows[0])
        self.currentItemChanged.connect(self._on_current)
        theme().changed.connect(self._dress)
        self._dress()

    @property
    def number(self) -> int:
        """The number of the chosen table."""
        item = self.currentItem()
        return 0 if item is None else int(item.data(NUMBER))

    def choose(self, number: int) -> None:
        """Choose the table *number*."""
        self.setCurrentRow(self._rows[number])

    def sizeHint(self) -> QSize:
        bar = self.verticalScrollBar().sizeHint().width()
        return QSize(self.sizeHintForColumn(0) + bar + Space.WIDE, super().sizeHint().height())

    @Slot()
    def _dress(self) -> None:
        look = theme()
        c = look.colours
        self.setStyleSheet(
            f"QListWidget, QListWidget:focus {{ background: {c.paper}; border: 0; }}"
            f"QListWidget::item {{ color: {c.ink}; padding: {Space.CLOSE}px {Space.NEAR}px; }}"
            f"QListWidget::item:disabled {{ color: {c.soft}; padding-top: {Space.APART}px; }}"
            f"QListWidget::item:selected {{ background: {c.pale_teal}; color: {c.ink}; }}"
            f"QListWidget:focus::item:selected {{ border: 1px solid {c.ink}; }}"
        )
        self.setFont(look.font(Pt.TEXT))
        for head in self._heads:
            head.setFont(look.font(Pt.SMALL, bold=True))
        self.setFixedWidth(self.sizeHint().width())

    @Slot(QListWidgetItem, QListWidgetItem)
    def _on_current(self, item: QListWidgetItem | None, before: QListWidgetItem | None) -> None:
        if item is not None:
            self.chosen.emit(int(item.data(NUMBER)))
