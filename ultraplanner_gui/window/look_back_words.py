"""How a run ended, remarks at places, a note, and lessons, in the runner's own words."""

from __future__ import annotations

from msgspec.structs import replace
from PySide6.QtCore import Slot
from PySide6.QtWidgets import (
    QComboBox,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QPlainTextEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.typing_pause import TypingPause
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.review import ChangeReview, NewLesson
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.plan.review import Ending, PinnedTo, Remark, Review
from ultraplanner_gui.widgets.form_column import FormColumn
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.table_column import say
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window.table_lessons import PINS, where_text
from ultraplanner_gui.wording.words import Words

TOPIC = "looking back"
ENDINGS = {
    Ending.FINISHED: QT_TRANSLATE_NOOP("Tables", "finished"),
    Ending.STOPPED: QT_TRANSLATE_NOOP("Tables", "stopped by my own choice"),
    Ending.TIMED_OUT: QT_TRANSLATE_NOOP("Tables", "past a cutoff"),
    Ending.TAKEN_OUT: QT_TRANSLATE_NOOP("Tables", "taken out by the race or its doctors"),
}


class OwnWords(QWidget):
    """Each field is kept when it is left; a lesson when its button is pressed."""

    def __init__(
        self, document: Document, kept: KeptRecording, words: Words, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._document, self._kept, self._words = document, kept, words
        self.ending = QComboBox(self)
        for ending, name in ENDINGS.items():
            self.ending.addItem(say(name), ending)
        self.why = QLineEdit(self)
        self.note = QPlainTextEdit(self)
        self.note.setTabChangesFocus(True)
        self.remarks = QListWidget(self)
        self.remark_at, self.remark = QLineEdit(self), QLineEdit(self)
        self.lessons = QListWidget(self)
        self.lesson, self.pin, self.which = QLineEdit(self), QComboBox(self), QLineEdit(self)
        for pin, name in PINS.items():
            self.pin.addItem(say(name), pin)
        self.add_remark = QPushButton(self.tr("Add &remark"), self)
        self.add_lesson = QPushButton(self.tr("Add &lesson"), self)
        self.trouble = QLabel("", self)
        self.trouble.setWordWrap(True)
        dress(self.trouble, Pt.TEXT, theme().colours.clay)
        self._lay_out()
        self._connect()
        self._fill()

    @property
    def review(self) -> Review:
        """What was said of this run so far."""
        found = (r for r in self._document.project.reviews if r.recording == self._kept.key)
        return next(found, Review(self._kept.key))

    def _lay_out(self) -> None:
        self.remark_at.setPlaceholderText(self.tr("at, {0}").format(self._words.distance_unit))
        self.remark.setPlaceholderText(self.tr("what was there"))
        self.lesson.setPlaceholderText(self.tr("what to do, or never again"))
        self.which.setPlaceholderText(self.tr("7 h 30, 3, or a name"))
        form = FormColumn(self)
        form.add(self.tr("It &ended"), self.ending, TOPIC)
        form.add(self.tr("Wh&y"), self.why, TOPIC)
        names = (
            (self.note, self.tr("Note")),
            (self.remarks, self.tr("Remarks at places")),
            (self.remark_at, self.tr("Place of the remark")),
            (self.remark, self.tr("Remark")),
            (self.lessons, self.tr("Lessons")),
            (self.lesson, self.tr("Lesson")),
            (self.pin, self.tr("Pinned to")),
            (self.which, self.tr("Which hour, climb or food")),
        )
        for widget, name in names:
            widget.setAccessibleName(name)
            is_lesson = widget in (self.lessons, self.lesson, self.pin, self.which)
            set_topic(widget, "lessons" if is_lesson else TOPIC)
        box = QVBoxLayout(self)
        box.setSpacing(Space.NEAR)
        box.addWidget(form)
        box.addWidget(self._head(self.tr("Note")))
        box.addWidget(self.note, 1)
        box.addWidget(self._head(self.tr("Remarks at places")))
        box.addWidget(self.remarks, 1)
        box.addLayout(self._row((self.remark_at, 1), (self.remark, 5), (self.add_remark, 0)))
        box.addWidget(self._head(self.tr("Lessons; all of them stand in their table")))
        box.addWidget(self.lessons, 1)
        box.addLayout(
            self._row((self.lesson, 5), (self.pin, 0), (self.which, 2), (self.add_lesson, 0))
        )
        box.addWidget(self.trouble)

    def _row(self, *widgets: tuple[QWidget, int]) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(Space.NEAR)
        for widget, stretch in widgets:
            row.addWidget(widget, stretch)
        return row

    def _head(self, text: str) -> QLabel:
        head = QLabel(text, self)
        dress(head, Pt.TEXT, theme().colours.ink, bold=True)
        return head

    def _connect(self) -> None:
        for button in (self.add_remark, self.add_lesson):
            button.setAutoDefault(False)
        self.ending.activated.connect(self._keep)
        self.why.editingFinished.connect(self._keep)
        self._pause = TypingPause(self.note, self._noted, self._do, self)
        self.add_remark.clicked.connect(self._on_remark)
        self.remark.returnPressed.connect(self._on_remark)
        self.add_lesson.clicked.connect(self._on_lesson)
        self.lesson.returnPressed.connect(self._on_lesson)
        self.pin.currentIndexChanged.connect(self._on_pin)
        self._document.changed.connect(self._on_changed)
        self._document.refused.connect(self._on_refused)
        self._on_pin()

    def _fill(self) -> None:
        review, words = self.review, self._words
        self.ending.setCurrentIndex(list(ENDINGS).index(review.ending))
        if self.why.text() != review.why:
            self.why.setText(review.why)
        if not self._pause.is_pending and self.note.toPlainText() != review.note:
            self.note.setPlainText(review.note)
            self._pause.drop()
        self.remarks.clear()
        for remark in review.remarks:
            self.remarks.addItem(f"{words.distance(remark.at_m, 1)}  {remark.text}")
        self.lessons.clear()
        for lesson in self._document.project.lessons:
            place = f"{say(PINS[lesson.pin])} {where_text(lesson, words)}".strip(" –")
            self.lessons.addItem(f"{lesson.text}  ({place})")

    def _noted(self, text: str, gesture: int) -> Edit | None:
        if text == self.review.note:
            return None
        return ChangeReview(replace(self.review, note=text), gesture)

    @Slot()
    def _keep(self) -> None:
        ending, why = Ending(self.ending.currentData()), self.why.text().strip()
        said = replace(self.review, ending=ending, why=why)
        if said != self.review:
            self._do(ChangeReview(said))

    def done(self) -> None:
        """Keep what is still being typed."""
        self._pause.flush()
        self._keep()

    @Slot()
    def _on_remark(self) -> None:
        at_m = self._words.parse_distance(self.remark_at.text())
        text = self.remark.text().strip()
        if at_m is None or not text:
            self.trouble.setText(self.tr("A remark needs a place, as 62.5, and its words."))
            return
        review = self.review
        remarks = (*review.remarks, Remark(at_m, text))
        ordered = tuple(sorted(remarks, key=lambda remark: remark.at_m))
        if self._do(ChangeReview(replace(review, remarks=ordered))):
            self.remark_at.clear()
            self.remark.clear()

    @Slot()
    def _on_lesson(self) -> None:
        edit = self._new_lesson()
        if edit is not None and self._do(edit):
            self.lesson.clear()
            self.which.clear()

    def _new_lesson(self) -> NewLesson | None:
        text, which, pin = self.lesson.text(), self.which.text(), PinnedTo(self.pin.currentData())
        words = self._words
        if pin is PinnedTo.HOUR:
            hour_s = words.parse_duration(which, 3600.0)
            if hour_s is not None:
                return NewLesson(text, pin, hour_s=hour_s)
        elif pin is PinnedTo.CLIMB:
            number = words.parse_number(which)
            if number is not None and number == round(number):
                return NewLesson(text, pin, climb=int(number))
        elif pin is PinnedTo.FOOD:
            if which.strip():
                return NewLesson(text, pin, food=which.strip())
        else:
            return NewLesson(text)
        self.trouble.setText(self.tr("Say which: a time as 7 h 30, the number of a climb, a food."))
        return None

    @Slot()
    def _on_pin(self) -> None:
        self.which.setEnabled(PinnedTo(self.pin.currentData()) is not PinnedTo.ALL)

    def _do(self, edit: Edit) -> bool:
        self.trouble.setText("")
        return self._document.perform(edit)

    @Slot(object, object)
    def _on_changed(self, before: object, after: object) -> None:
        self._fill()

    @Slot(object)
    def _on_refused(self, why: Message) -> None:
        self.trouble.setText(self._words.say(why))
