"""A tune-up race on the way: its day, its length and its ground."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QDate, Qt, Slot
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QLabel,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.block import LONGEST_SESSION_S, AddSession
from ultraplanner_gui.engine.candidates import likely_s
from ultraplanner_gui.plan.block import Ground, Kind, Session
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.widgets.fields import (
    DateField,
    DistanceField,
    DurationField,
    HeightField,
    describe,
)
from ultraplanner_gui.widgets.form_column import FormColumn
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording.words import Words

TOPIC = Kind.TUNE_UP.value
LEAST_M, MOST_M, MOST_CLIMB_M = 1_000.0, 300_000.0, 20_000.0
USUAL_M = 30_000.0
WIDTH_PX = 340.0
EFFORT = 7
#: From here on, as climb over distance, the ground goes up and down; our own choice.
HILLY = 0.006


class TuneUpForm(QDialog):
    """Asks for one tune-up race; kept, it is a session builders leave where it is."""

    def __init__(
        self, document: Document, day: date, words: Words, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._document, self._words = document, words
        self.setWindowTitle(self.tr("A tune-up race"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        set_topic(self, TOPIC)
        fields = FormColumn(self)
        fields.add_note(
            self.tr(
                "At least three weeks before the race, four if it is long; up to half its time."
            )
        )
        self.name = QLineEdit(fields)
        describe(self.name, self.tr("What it is called; kept as the note of the session"))
        self.day = DateField(fields)
        self.day.setDate(QDate(day.year, day.month, day.day))
        self.distance = DistanceField(words, LEAST_M, MOST_M, parent=fields)
        self.distance.set_metres(USUAL_M)
        self.climb, self.drop = (HeightField(words, MOST_CLIMB_M, fields) for _ in range(2))
        self.time = DurationField(words, 0.0, LONGEST_SESSION_S, optional=True, parent=fields)
        self.time.setPlaceholderText(self.tr("likely"))
        for label, field in (
            (self.tr("&Name"), self.name),
            (self.tr("&Day"), self.day),
            (self.tr("D&istance"), self.distance),
            (self.tr("&Climb"), self.climb),
            (self.tr("D&rop"), self.drop),
            (self.tr("&Time, if you know"), self.time),
        ):
            fields.add(label, field, TOPIC)
        fields.end()
        self.trouble = QLabel("", self)
        self.trouble.setWordWrap(True)
        dress(self.trouble, Pt.TEXT, theme().colours.clay)
        self.trouble.hide()
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        self.keep = buttons.addButton(self.tr("&Put it in"), QDialogButtonBox.ButtonRole.AcceptRole)
        self.keep.setDefault(True)
        buttons.accepted.connect(self._on_kept)
        buttons.rejected.connect(self.reject)
        document.refused.connect(self._on_refused)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        for widget in (fields, self.trouble, buttons):
            box.addWidget(widget)
        self.setMinimumWidth(round(theme().px(WIDTH_PX)))

    def session(self) -> Session:
        """Return what the fields say; without a time the likely one."""
        self.time.take_typed()
        day, metres, climb_m = self.day.date(), self.distance.metres, self.climb.metres
        runner = self._document.project.runner
        return Session(
            "",
            date(day.year(), day.month(), day.day()),
            Kind.TUNE_UP,
            metres,
            self.time.value_s or likely_s(metres, climb_m, runner),
            climb_m,
            self.drop.metres,
            Ground.SAW if climb_m > HILLY * metres else Ground.ROLLING,
            EFFORT,
            note=self.name.text().strip(),
        )

    @Slot()
    def _on_kept(self) -> None:
        self.trouble.hide()
        session = self.session()
        if session.day >= self._document.project.race.day:
            self._complain(self.tr("A tune-up race comes before the race."))
        elif self._document.perform(AddSession(session)):
            self.accept()

    @Slot(object)
    def _on_refused(self, why: Message) -> None:
        self._complain(self._words.say(why))

    def _complain(self, sentence: str) -> None:
        self.trouble.setText(sentence)
        self.trouble.show()
