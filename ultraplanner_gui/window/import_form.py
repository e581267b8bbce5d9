"""What a calendar would change in the build-up, shown before it is done."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QLabel, QListWidget, QVBoxLayout, QWidget

from ultraplanner_gui.exchange.calendar_in import CalendarPlan
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Space
from ultraplanner_gui.wording.words import Words


class ImportForm(QDialog):
    """Lists the changes; taken, they are one step."""

    def __init__(
        self,
        plan: CalendarPlan,
        words: Words,
        taken: Callable[[], None],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._taken = taken
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Import sessions"))
        look = theme()
        self.resize(round(look.px(520)), round(look.px(380)))
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        count = len(plan.changes)
        head = QLabel(self.tr("Changes: {0}. Left out: {1}.").format(count, len(plan.left_out)))
        box.addWidget(head)
        self.list = QListWidget(self)
        self.list.setWordWrap(True)
        self.list.setAccessibleName(self.tr("What would change"))
        self.list.addItems([words.say(said) for said, _ in plan.changes])
        self.list.addItems([words.say(said) for said in plan.left_out])
        box.addWidget(self.list, 1)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        self.take = buttons.addButton(self.tr("Import"), QDialogButtonBox.ButtonRole.AcceptRole)
        self.take.setEnabled(count > 0)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        box.addWidget(buttons)

    def accept(self) -> None:
        self._taken()
        super().accept()
