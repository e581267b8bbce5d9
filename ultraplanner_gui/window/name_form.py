"""The form that names the plan as it stands, to go back to it later."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QLabel, QLineEdit, QVBoxLayout, QWidget

from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.tokens import Space

MOST_LETTERS = 60


class NameForm(QDialog):
    """One line of text; *named* takes it and returns what is wrong, nothing if it was taken."""

    def __init__(self, named: Callable[[str], str], parent: QWidget) -> None:
        super().__init__(parent)
        self._named = named
        self.setWindowTitle(self.tr("Name this state"))
        set_topic(self, "history")
        self.name = QLineEdit(self)
        self.name.setMaxLength(MOST_LETTERS)
        self.name.setMinimumWidth(360)
        self.name.setAccessibleName(self.tr("Name"))
        set_topic(self.name, "history")
        self.name.setPlaceholderText(self.tr("before the camp"))
        label = QLabel(self.tr("&Name, found again under “Go back to an earlier state”"), self)
        label.setBuddy(self.name)
        label.setWordWrap(True)
        self._trouble = QLabel(self)
        self._trouble.setWordWrap(True)
        self._trouble.hide()
        buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel, self
        )
        buttons.accepted.connect(self._on_accepted)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setSpacing(Space.APART)
        for widget in (label, self.name, self._trouble, buttons):
            box.addWidget(widget)
        self.finished.connect(self.deleteLater)

    @Slot()
    def _on_accepted(self) -> None:
        name = " ".join(self.name.text().split())
        trouble = self._named(name) if name else self.tr("Type a name first.")
        if not trouble:
            self.accept()
            return
        self._trouble.setText(trouble)
        self._trouble.show()
        self.name.setFocus()
