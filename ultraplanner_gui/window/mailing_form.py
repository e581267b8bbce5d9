"""Which private things stay out of a copy that is sent to somebody."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QCheckBox, QDialog, QDialogButtonBox, QLabel, QVBoxLayout, QWidget

from ultraplanner_gui.engine.mailing import LeftOut
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.least_size import at_least
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space

_WIDTH_PX = 460.0


class MailingForm(QDialog):
    """Three boxes, ticked; *taken* gets what is left out."""

    def __init__(self, taken: Callable[[LeftOut], None], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._taken = taken
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Copy to send"))
        set_topic(self, "copy to send")
        self.person = QCheckBox(self.tr("Without &who I am: names, medical lines, health"), self)
        self.recordings = QCheckBox(self.tr("Without &recordings: where I was and when"), self)
        self.diary = QCheckBox(self.tr("Without &notes, worries and what was said of runs"), self)
        note = QLabel(
            self.tr("The copy has the plan as it stands and no earlier states. Yours stays whole."),
            self,
        )
        note.setWordWrap(True)
        dress(note, Pt.LABEL, theme().colours.soft)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        self.write = buttons.addButton(self.tr("&Write…"), QDialogButtonBox.ButtonRole.AcceptRole)
        buttons.accepted.connect(self._on_write)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        for tick in (self.person, self.recordings, self.diary):
            tick.setChecked(True)
            box.addWidget(tick)
        box.addWidget(note)
        box.addWidget(buttons)
        at_least(self, theme().px(_WIDTH_PX))

    @Slot()
    def _on_write(self) -> None:
        ticks = (self.person, self.recordings, self.diary)
        left_out = LeftOut(*(tick.isChecked() for tick in ticks))
        self.accept()
        self._taken(left_out)
