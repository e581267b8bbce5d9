"""How it went, in seconds: what was planned stands in the fields, Enter keeps."""

from __future__ import annotations

from itertools import pairwise

from msgspec.structs import replace
from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QLabel, QVBoxLayout, QWidget

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.buildup.session_fields import WAS_DONE, WAS_MISSED, DoneBox
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.block import MarkDone, MarkMissed
from ultraplanner_gui.plan.block import Done
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.least_size import at_least
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording.words import Words

WIDTH_PX = 380.0


class DoneForm(QDialog):
    """The record of one session, *recorded* or as it was; `kept` says that it was kept."""

    kept = Signal()

    def __init__(
        self,
        document: Document,
        key: str,
        words: Words,
        parent: QWidget | None = None,
        recorded: Done | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._key, self._words = document, key, words
        session = document.before.project.block.session(key)
        name = kinds.capital(kinds.say(kinds.FULL[session.kind]))
        self.setWindowTitle(self.tr("{0}, {1}").format(name, words.day(session.day)))
        set_topic(self, "done or missed")
        planned = QLabel(self.tr("Planned: {0}").format(kinds.sentence(session, words)), self)
        planned.setWordWrap(True)
        dress(planned, Pt.LABEL, theme().colours.soft)
        set_topic(planned, session.kind.value)
        shown = session if recorded is None else replace(session, done=recorded, missed=False)
        self.box = DoneBox(shown, words, self)
        if shown.done is None:
            self.box.state.setCurrentIndex(WAS_DONE)
        self.refusal = QLabel("", self)
        self.refusal.setWordWrap(True)
        dress(self.refusal, Pt.TEXT, theme().colours.clay)
        self.refusal.hide()
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        self.keep = buttons.addButton(self.tr("&Keep"), QDialogButtonBox.ButtonRole.AcceptRole)
        self.keep.setDefault(True)
        buttons.accepted.connect(self._on_kept)
        buttons.rejected.connect(self.reject)
        document.refused.connect(self._on_refused)
        for first, then in pairwise(self.box.order):
            QWidget.setTabOrder(first, then)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        whole.setSpacing(Space.APART)
        for widget in (planned, *self._to_say(recorded), self.box, self.refusal, buttons):
            whole.addWidget(widget)
        at_least(self, theme().px(WIDTH_PX))
        first_field = self.box.distance if session.kind.is_run else self.box.time
        open_field = first_field if recorded is None else self.box.effort
        open_field.setFocus()
        open_field.selectAll()

    def _to_say(self, recorded: Done | None) -> tuple[QLabel, ...]:
        """Return what a recording does not tell, as a sentence."""
        if recorded is None:
            return ()
        asked = QLabel(
            self.tr(
                "Distance, time moving, climb and drop are from the recording. Say how hard it "
                "was, what you ate and how your gut took it."
            ),
            self,
        )
        asked.setWordWrap(True)
        dress(asked, Pt.TEXT, theme().colours.ink)
        return (asked,)

    @Slot()
    def _on_kept(self) -> None:
        self.box.time.take_typed()
        self.refusal.hide()
        state, done = self.box.state.currentIndex(), self.box.done()
        edit = MarkMissed(self._key) if state == WAS_MISSED else MarkDone(self._key, done)
        if self._document.perform(edit):
            self.kept.emit()
            self.accept()

    @Slot(object)
    def _on_refused(self, why: Message) -> None:
        self.refusal.setText(self._words.say(why))
        self.refusal.show()
