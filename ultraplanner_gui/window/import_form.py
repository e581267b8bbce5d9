"""What a file would change in the build-up, shown before it is done."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.exchange.plan_changes import PlanChanges
from ultraplanner_gui.widgets.help_topic import set_topics
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Space
from ultraplanner_gui.wording.words import Words


class ImportForm(QDialog):
    """Lists the changes, each to be ticked; those ticked are one step."""

    def __init__(
        self,
        plan: PlanChanges,
        words: Words,
        taken: Callable[[tuple[Edit, ...]], None],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._taken, self._plan = taken, plan
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Import sessions"))
        look = theme()
        self.resize(round(look.px(520)), round(look.px(380)))
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        count = len(plan.changes)
        head = QLabel(
            self.tr("Changes: {0}. The same already: {1}. Left out: {2}.").format(
                count, plan.untouched, len(plan.left_out)
            )
        )
        box.addWidget(head)
        self.list = QListWidget(self)
        self.list.setWordWrap(True)
        self.list.setAccessibleName(self.tr("What would change"))
        for said, _ in plan.changes:
            item = QListWidgetItem(words.say(said), self.list)
            item.setCheckState(Qt.CheckState.Checked)
        for said in plan.left_out:
            item = QListWidgetItem(words.say(said), self.list)
            item.setFlags(Qt.ItemFlag.ItemIsEnabled)
        set_topics(dict.fromkeys((head, self.list), "hand over"))
        box.addWidget(self.list, 1)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        self.take = buttons.addButton(self.tr("Import"), QDialogButtonBox.ButtonRole.AcceptRole)
        self.take.setEnabled(count > 0)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        box.addWidget(buttons)

    def accept(self) -> None:
        ticked = tuple(
            edit
            for number, (_, edit) in enumerate(self._plan.changes)
            if self.list.item(number).checkState() is Qt.CheckState.Checked
        )
        if ticked:
            self._taken(ticked)
        super().accept()
