"""The steps of this sitting by name: choosing one makes the plan what it was after it."""

from __future__ import annotations

import shiboken6
from PySide6.QtCore import QSignalBlocker, QSize, Qt, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QDialog, QLabel, QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space

WIDTH_PX = 300.0
HEIGHT_PX = 360.0
ROW_PX = 23.0


class UndoList(QDialog):
    """A small panel beside the work; it follows what is done, undone and redone.

    The last row is the present unless steps were taken back: those stand under it, to be gone
    over again. Enter or a click goes there.
    """

    def __init__(self, document: Document, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._stack = document.undo_stack
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        set_topic(self, "kept")
        self.setWindowTitle(self.tr("Steps of this sitting"))
        self._head = QLabel(
            self.tr("Click one, or press Enter on it: the plan becomes what it was after it."), self
        )
        self._head.setWordWrap(True)
        self.steps = QListWidget(self)
        self.steps.setAccessibleName(self.tr("Steps of this sitting"))
        self.steps.setUniformItemSizes(True)
        self._foot = QLabel("", self)
        self._foot.setWordWrap(True)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.WIDE, Space.APART, Space.WIDE, Space.APART)
        box.setSpacing(Space.NEAR)
        for widget in (self._head, self.steps, self._foot):
            box.addWidget(widget)
        self.steps.itemClicked.connect(self._on_item)
        self._stack.indexChanged.connect(self._refresh)
        document.destroyed.connect(self.close)
        theme().changed.connect(self._dress)
        look = theme()
        self.resize(QSize(round(look.px(WIDTH_PX)), round(look.px(HEIGHT_PX))))
        self._dress()
        self.steps.setFocus()

    @classmethod
    def show_beside(cls, window: QWidget, document: Document) -> UndoList:
        """Show the panel in the corner of *window*, the one that is open already if there is."""
        there = window.findChild(cls)
        panel = there if there is not None else cls(document, window)
        if there is None:
            corner = window.mapToGlobal(window.rect().topRight())
            panel.move(corner.x() - panel.width() - 24, corner.y() + 96)
        panel.show()
        panel.raise_()
        panel.activateWindow()
        return panel

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.go_to(self.steps.currentRow())
        else:
            super().keyPressEvent(event)

    def go_to(self, row: int) -> None:
        """Make the plan what it was after the step in *row*; row 0 is before the first."""
        if 0 <= row <= self._stack.count() and row != self._stack.index():
            self._stack.setIndex(row)

    @Slot(QListWidgetItem)
    def _on_item(self, item: QListWidgetItem) -> None:
        self.go_to(self.steps.row(item))

    @Slot()
    def _refresh(self) -> None:
        """List the steps; the present one is bold, those taken back are soft."""
        if not shiboken6.isValid(self._stack):
            return  # a stack says that its index changed even while it goes (pitfall 6)
        stack, look = self._stack, theme()
        here, c = stack.index(), look.colours
        with QSignalBlocker(self.steps):
            self.steps.clear()
            for row in range(stack.count() + 1):
                text = stack.text(row - 1) if row else self.tr("As it was opened")
                item = QListWidgetItem(text, self.steps)
                item.setSizeHint(QSize(0, round(look.px(ROW_PX))))
                item.setFont(look.font(Pt.STRONG, bold=row == here))
                item.setForeground(c["soft" if row > here else "ink"])
                item.setData(Qt.ItemDataRole.AccessibleTextRole, self._spoken(text, row - here))
            self.steps.setCurrentRow(here)
            self.steps.scrollToItem(self.steps.item(here))
        back = stack.count() - here
        if back:
            text = self.tr("{0} taken back. Until you change something you can go over them again.")
            self._foot.setText(text.format(back))
        elif not stack.count():
            self._foot.setText(self.tr("Nothing was changed yet."))
        else:
            self._foot.setText(self.tr("The plan is as after the last step."))

    def _spoken(self, text: str, from_here: int) -> str:
        if from_here == 0:
            return self.tr("{0}, here the plan stands").format(text)
        return self.tr("{0}, taken back").format(text) if from_here > 0 else text

    @Slot()
    def _dress(self) -> None:
        c = theme().colours
        dress(self._head, Pt.NOTE, c.soft)
        dress(self._foot, Pt.NOTE, c.soft)
        pad = round(theme().px(3))
        self.steps.setStyleSheet(
            f"QListWidget {{ background: {c.panel}; border: 1px solid {c.line}; outline: 0; }}"
            f"QListWidget::item {{ padding: 0 {2 * pad}px; }}"
            f"QListWidget::item:selected {{ background: {c.pale_teal}; color: {c.ink}; }}"
        )
        self._refresh()
