"""How often what is selected comes again, week by week."""

from __future__ import annotations

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QVBoxLayout, QWidget

from ultraplanner_gui.buildup.deeds import SessionDeeds
from ultraplanner_gui.edits.block_moves import MOST_REPEATS
from ultraplanner_gui.widgets.fields import WholeField
from ultraplanner_gui.widgets.form_column import FormColumn
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.tokens import Space
from ultraplanner_gui.wording.words import Words

USUAL_TIMES = 4


class RepeatForm(QDialog):
    """Asks for a number of weeks; Enter repeats."""

    def __init__(self, deeds: SessionDeeds, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._deeds = deeds
        self.setWindowTitle(self.tr("Repeat every week"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        set_topic(self, "several sessions")
        fields = FormColumn(self)
        fields.add_note(self.tr("Repeats stop before the race. What is done stays as it is."))
        self.times = WholeField(Words(), 1, MOST_REPEATS, parent=fields)
        self.times.setValue(USUAL_TIMES)
        fields.add(self.tr("In the &weeks that follow"), self.times, "several sessions")
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        buttons.addButton(self.tr("&Repeat"), QDialogButtonBox.ButtonRole.AcceptRole)
        buttons.accepted.connect(self._on_sent)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        box.addWidget(fields)
        box.addWidget(buttons)
        self.times.setFocus()
        self.times.selectAll()

    @Slot()
    def _on_sent(self) -> None:
        self._deeds.repeat(self.times.value())
        self.accept()
