"""The private questions on health before the first block; only what came of them is kept."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QCoreApplication, Qt, Slot
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.training import SetHealth
from ultraplanner_gui.plan.runner import Health
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.least_size import at_least
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording.cautions import BEFORE_BLOCK

WIDTH_PX = 480.0


class HealthForm(QDialog):
    """One question with yes or no; *then* is called when it is answered, whatever the answer."""

    def __init__(
        self,
        document: Document,
        show_red_flags: Callable[[], None],
        then: Callable[[], None] | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._then = document, then
        self.setWindowTitle(self.tr("Health, before the first block"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        set_topic(self, "health")
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        look = theme()
        for text, colour, size in (
            (QCoreApplication.translate("Caution", BEFORE_BLOCK), look.colours.ink, Pt.STRONG),
            (
                self.tr(
                    "Go through the published questionnaire PAR-Q+ (seven questions; search the "
                    "web for its name) whole and as it stands. It is not repeated here."
                ),
                look.colours.ink,
                Pt.TEXT,
            ),
            (
                self.tr(
                    "Does any of this, or any answer there, apply to you? Only yes or no is kept, "
                    "in this project file. A yes stops nothing; fasted runs and heat days stay off."
                ),
                look.colours.ink,
                Pt.TEXT,
            ),
            (self._standing(), look.colours.soft, Pt.LABEL),
        ):
            label = QLabel(text, self)
            label.setWordWrap(True)
            dress(label, size, colour)
            box.addWidget(label)
        buttons = QDialogButtonBox(self)
        flags = QPushButton(self.tr("When to &stop and get help"), self)
        flags.clicked.connect(show_red_flags)
        buttons.addButton(flags, QDialogButtonBox.ButtonRole.HelpRole)
        self.yes = buttons.addButton(
            self.tr("&Yes: I ask a doctor first"), QDialogButtonBox.ButtonRole.ActionRole
        )
        self.no = buttons.addButton(self.tr("&No"), QDialogButtonBox.ButtonRole.ActionRole)
        later = buttons.addButton(self.tr("&Later"), QDialogButtonBox.ButtonRole.RejectRole)
        for button in (flags, self.yes, self.no, later):
            button.setAutoDefault(False)
        self.yes.clicked.connect(self._on_yes)
        self.no.clicked.connect(self._on_no)
        buttons.rejected.connect(self.reject)
        box.addWidget(buttons)
        self.no.setFocus()
        at_least(self, look.px(WIDTH_PX), with_height=True)

    def _standing(self) -> str:
        return {
            Health.NOT_ASKED: self.tr("Not answered yet."),
            Health.CLEAR: self.tr("Answered so far: no."),
            Health.ASK_FIRST: self.tr("Answered so far: yes, a doctor is asked first."),
        }[self._document.project.runner.health]

    @Slot()
    def _on_yes(self) -> None:
        self._answer(Health.ASK_FIRST)

    @Slot()
    def _on_no(self) -> None:
        self._answer(Health.CLEAR)

    def _answer(self, health: Health) -> None:
        self._document.perform(SetHealth(health))
        self.accept()
        if self._then is not None:
            self._then()
