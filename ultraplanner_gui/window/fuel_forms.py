"""What the forms of fuel share: their frame, lines of text, lists to tick."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.least_size import at_least
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space

KEY = Qt.ItemDataRole.UserRole


class FuelForm(QDialog):
    """A form with its buttons and a line that says what is wrong."""

    def __init__(self, title: str, topic: str, width_px: float, parent: QWidget | None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(title)
        set_topic(self, topic)
        self.box = QVBoxLayout(self)
        self.box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        self.box.setSpacing(Space.APART)
        self.buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        self.buttons.rejected.connect(self.reject)
        self._trouble = self.line("", is_small=False)
        self._trouble.hide()
        self.resize(round(theme().px(width_px)), 10)

    def finish(self, do: str) -> QPushButton:
        """Put the line of trouble and the buttons below what was laid out.

        Return the button that accepts, with the text *do*.
        """
        self.box.addWidget(self._trouble)
        accept: QPushButton = self.buttons.addButton(do, QDialogButtonBox.ButtonRole.AcceptRole)
        self.buttons.accepted.connect(self.accept)
        self.box.addWidget(self.buttons)
        at_least(self, self.width())
        return accept

    def open(self) -> None:
        """Open it, no smaller than its wrapped lines of text need."""
        at_least(self, self.width(), with_height=True)
        super().open()

    def say_trouble(self, text: str) -> None:
        """Say what is wrong and stay open."""
        dress(self._trouble, Pt.TEXT, theme().colours.clay)
        self._trouble.setText(text)
        self._trouble.setVisible(bool(text))

    def head(self, text: str) -> QLabel:
        """Return the head of a part of the form."""
        label = QLabel(text, self)
        dress(label, Pt.STRONG, theme().colours.ink, bold=True)
        return label

    def line(self, text: str, is_small: bool = True) -> QLabel:
        """Return a line of text that wraps."""
        label = QLabel(text, self)
        label.setWordWrap(True)
        dress(label, Pt.SMALL if is_small else Pt.TEXT, theme().colours.ink)
        return label


class TickList(QListWidget):
    """A list of things to tick; the space bar ticks."""

    def __init__(self, name: str, rows: Iterable[tuple[str, str]], parent: QWidget) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        for key, text in rows:
            item = QListWidgetItem(text, self)
            item.setData(KEY, key)
            item.setFlags(
                Qt.ItemFlag.ItemIsEnabled
                | Qt.ItemFlag.ItemIsSelectable
                | Qt.ItemFlag.ItemIsUserCheckable
            )
            item.setCheckState(Qt.CheckState.Unchecked)

    def ticked(self) -> tuple[str, ...]:
        """Return the keys ticked, in the order of the list."""
        rows = (self.item(n) for n in range(self.count()))
        return tuple(r.data(KEY) for r in rows if r.checkState() is Qt.CheckState.Checked)

    def tick(self, keys: Iterable[str]) -> None:
        """Tick *keys* and nothing else."""
        wanted = set(keys)
        for n in range(self.count()):
            row = self.item(n)
            is_in = row.data(KEY) in wanted
            row.setCheckState(Qt.CheckState.Checked if is_in else Qt.CheckState.Unchecked)
