"""The question which line of a file is the course."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Space
from ultraplanner_gui.wording.words import Words

if TYPE_CHECKING:
    from ultraplanner_gui.exchange.gpx_in import CourseChoice

SIZE_PX = (480.0, 320.0)


class LineChoice(QDialog):
    """Lists the lines with their lengths; `taken` gets the key of the one chosen."""

    def __init__(
        self,
        file: str,
        choices: Sequence[CourseChoice],
        words: Words,
        taken: Callable[[str], None],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._taken, self._words = taken, words
        self.setWindowTitle(self.tr("Which line is the course?"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.resize(*(round(theme().px(side)) for side in SIZE_PX))
        set_topic(self, "course")
        text = self.tr("{0} holds several lines. Which is the course?").format(file)
        label = QLabel(text, self)
        label.setWordWrap(True)
        self.lines = QListWidget(self)
        self.lines.setAccessibleName(self.tr("Lines in the file"))
        set_topic(self.lines, "which line")
        for choice in choices:
            item = QListWidgetItem(self._said(choice))
            item.setData(Qt.ItemDataRole.UserRole, choice.key)
            self.lines.addItem(item)
        self.lines.setCurrentRow(0)
        self.lines.itemDoubleClicked.connect(self.send)
        buttons = QDialogButtonBox(self)
        buttons.addButton(self.tr("&Read it"), QDialogButtonBox.ButtonRole.AcceptRole).setDefault(
            True
        )
        buttons.addButton(QDialogButtonBox.StandardButton.Cancel)
        buttons.accepted.connect(self.send)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        box.addWidget(label)
        box.addWidget(self.lines, 1)
        box.addWidget(buttons)
        self.lines.setFocus()

    @Slot()
    def send(self) -> None:
        """Take the line chosen."""
        item = self.lines.currentItem()
        if item is not None:
            self.accept()
            self._taken(str(item.data(Qt.ItemDataRole.UserRole)))

    def _said(self, choice: CourseChoice) -> str:
        words = self._words
        kinds = {"track": self.tr("track"), "route": self.tr("route")}
        if choice.count > 1:
            name = self.tr("All {0} in order").format(choice.count)
        else:
            name = choice.name or self.tr("without a name")
        text = self.tr("{0} ({1}): {2}, {3} points").format(
            name, kinds[choice.kind], words.distance(choice.length_m, 1), choice.points
        )
        if choice.climb_m is not None:
            text += self.tr(", climb {0}").format(words.height(choice.climb_m))
        return text
