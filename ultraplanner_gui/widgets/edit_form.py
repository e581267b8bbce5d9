"""A short form that becomes one edit: fields, what is wrong with them, and two buttons."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, Qt, Slot
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QLabel, QVBoxLayout, QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.plan.message import Message, PlanError
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.least_size import at_least
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording.words import Words


class EditForm(QDialog):
    """Keeps what its fields say as one step, or says why it cannot and stays open.

    A subclass makes its fields, hands them to `finish`, and gives the edit in `edit`. Its title
    is marked in the context "Forms".
    """

    def __init__(
        self,
        document: Document,
        words: Words,
        title: str,
        topic: str,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._words = document, words
        self.setWindowTitle(QCoreApplication.translate("Forms", title))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        set_topic(self, topic)

    def edit(self) -> Edit:
        """Return the edit that keeps what the fields say; PlanError if they make none."""
        raise NotImplementedError

    def finish(self, fields: QWidget, keep: str, width_px: float) -> None:
        """Lay out *fields* over the buttons; *keep* is the text of the one that keeps."""
        self.trouble = QLabel("", self)
        self.trouble.setWordWrap(True)
        dress(self.trouble, Pt.TEXT, theme().colours.clay)
        self.trouble.hide()
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        self.keep = buttons.addButton(keep, QDialogButtonBox.ButtonRole.AcceptRole)
        self.keep.setDefault(True)
        buttons.accepted.connect(self._on_kept)
        buttons.rejected.connect(self.reject)
        self._document.refused.connect(self._on_refused)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        for widget in (fields, self.trouble, buttons):
            box.addWidget(widget)
        at_least(self, theme().px(width_px))

    @Slot()
    def _on_kept(self) -> None:
        self.trouble.hide()
        try:
            edit = self.edit()
        except PlanError as error:
            self._on_refused(error.message)
            return
        if self._document.perform(edit):
            self.accept()

    @Slot(object)
    def _on_refused(self, why: Message) -> None:
        self.trouble.setText(self._words.say(why))
        self.trouble.show()
