"""The session editor: what is planned beside what was done, kept as one edit."""

from __future__ import annotations

from itertools import pairwise

from msgspec.structs import replace
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.buildup.session_fields import DoneBox, PlannedBox
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.block import ChangeSession, MarkDone, MarkMissed
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Space
from ultraplanner_gui.wording.words import Words

# Our own limits, drawn tighter than the trials of fasted training, which used 1 to 1.5 h at
# about 70 % of VO2max (Van Proeyen et al. 2011, J Appl Physiol 110:236-245).
FASTED_MOST_S = 5400.0
FASTED_MOST_EFFORT = 3
GAP_PX = 26.0


class SessionEditor(QDialog):
    """Change one session; Save keeps it as one step, Cancel leaves it."""

    def __init__(
        self, document: Document, key: str, words: Words, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._words = words
        self._session = document.before.project.block.session(key)
        self.planned = PlannedBox(self._session, words, self)
        self.done_box = DoneBox(self._session, words, self)
        self.caution = _sentence_label(self)
        self.refusal = _sentence_label(self)
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Save | QDialogButtonBox.StandardButton.Cancel, self
        )
        name, day = kinds.say(kinds.FULL[self._session.kind]), words.day(self._session.day)
        self.setWindowTitle(self.tr("{0}, {1}").format(kinds.capital(name), day))
        set_topic(self, self._session.kind.value)
        self._lay_out()
        self._caution()
        self.buttons.accepted.connect(self._on_save)
        self.buttons.rejected.connect(self.reject)
        self.planned.edited.connect(self._caution)
        document.refused.connect(self._on_refused)
        self.planned.distance.setFocus()

    def edit(self) -> Edit | None:
        """Return the one edit that takes over the fields; None if nothing changed."""
        plan, before = self.planned.session(), self._session
        done, missed = self.done_box.done(), self.done_box.is_missed
        is_same_record = (done, missed) == (before.done, before.missed)
        if plan != before:
            return ChangeSession(replace(plan, done=done, missed=missed))
        if is_same_record:
            return None
        return MarkMissed(before.key) if missed else MarkDone(before.key, done)

    def _on_save(self) -> None:
        edit = self.edit()
        self.refusal.hide()
        if edit is None or self._document.perform(edit):
            self.accept()

    def _on_refused(self, why: Message) -> None:
        self.refusal.setText(self._words.say(why))
        self.refusal.setVisible(True)

    def _caution(self) -> None:
        """Say what goes with a fasted session, louder where this one is not fit for it."""
        session = self.planned.session()
        self.caution.setVisible(session.fasted)
        if not session.fasted:
            return
        who = self.tr(
            "Not under 18, not when pregnant, ill or injured, with diabetes, fainting or an "
            "eating disorder now or before: ask a doctor first."
        )
        if is_too_much_fasted(session):
            text = self.tr("Too hard or too long to run fasted: easy, at most 90 min. {0}")
            colour = theme().colours.clay
        else:
            text = self.tr(
                "Fasted: easy and short only, 60 min in the first month, later 90; "
                "carry 25 g of sugar. {0}"
            )
            colour = theme().colours.soft
        self.caution.setText(text.format(who))
        self.caution.setStyleSheet(f"color: {colour}")

    def _lay_out(self) -> None:
        halves = QHBoxLayout()
        halves.setSpacing(round(theme().px(GAP_PX)))
        halves.addWidget(self.planned, 1)
        halves.addWidget(self.done_box, 1)
        for first, then in pairwise((*self.planned.order, *self.done_box.order)):
            QWidget.setTabOrder(first, then)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        whole.setSpacing(Space.APART)
        whole.addLayout(halves, 1)
        whole.addWidget(self.caution)
        whole.addWidget(self.refusal)
        whole.addWidget(self.buttons)
        self.refusal.setStyleSheet(f"color: {theme().colours.clay}")
        self.caution.hide()
        self.refusal.hide()
        self.buttons.button(QDialogButtonBox.StandardButton.Save).setDefault(True)


def is_too_much_fasted(session: Session) -> bool:
    """Whether a session is too hard or too long to be run fasted."""
    return (
        session.kind.is_hard
        or session.effort > FASTED_MOST_EFFORT
        or session.duration_s > FASTED_MOST_S
    )


def _sentence_label(parent: QWidget) -> QLabel:
    label = QLabel(parent)
    label.setWordWrap(True)
    return label
