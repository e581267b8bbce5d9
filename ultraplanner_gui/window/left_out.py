"""Files that could not be used, and why, in a list that stays until it is closed."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QHeaderView,
    QLabel,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording.words import Words

_SIZE_PX = (720.0, 360.0)


class LeftOutView(QDialog):
    """A file to a line, and the sentence why it was left out."""

    def __init__(
        self,
        left_out: Sequence[tuple[str, Message]],
        head: str,
        words: Words,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Files left out"))
        set_topic(self, "recordings")
        label = QLabel(head, self)
        label.setWordWrap(True)
        dress(label, Pt.TEXT, theme().colours.ink)
        self.table = QTableWidget(len(left_out), 2, self)
        self.table.setHorizontalHeaderLabels([self.tr("File"), self.tr("Why")])
        self.table.setAccessibleName(self.tr("Files left out"))
        for row, (name, why) in enumerate(left_out):
            for column, text in enumerate((name, words.say(why))):
                item = QTableWidgetItem(text)
                item.setToolTip(text)
                self.table.setItem(row, column, item)
        self.table.setEditTriggers(QTableWidget.EditTrigger.NoEditTriggers)
        self.table.setTabKeyNavigation(False)
        self.table.verticalHeader().hide()
        self.table.setShowGrid(False)
        header = self.table.horizontalHeader()
        header.setHighlightSections(False)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(1, QHeaderView.ResizeMode.Stretch)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        rows = self.table.verticalHeader()
        rows.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close, self)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        box.addWidget(label)
        box.addWidget(self.table, 1)
        box.addWidget(buttons)
        width, height = (round(theme().px(size)) for size in _SIZE_PX)
        self.resize(width, height)
