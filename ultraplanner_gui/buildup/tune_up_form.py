"""A tune-up race on the way: its day, its length and its ground."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QDate
from PySide6.QtWidgets import (
    QLineEdit,
    QWidget,
)

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.block import LONGEST_SESSION_S, AddSession
from ultraplanner_gui.engine.candidates import likely_s
from ultraplanner_gui.plan.block import Ground, Kind, Session
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.widgets.edit_form import EditForm
from ultraplanner_gui.widgets.fields import (
    DateField,
    DistanceField,
    DurationField,
    HeightField,
    describe,
)
from ultraplanner_gui.widgets.form_column import FormColumn
from ultraplanner_gui.wording.words import Words

TITLE = QT_TRANSLATE_NOOP("Forms", "A tune-up race")
TOPIC = Kind.TUNE_UP.value
LEAST_M, MOST_M, MOST_CLIMB_M = 1_000.0, 300_000.0, 20_000.0
USUAL_M = 30_000.0
WIDTH_PX = 340.0
EFFORT = 7
#: From here on, as climb over distance, the ground goes up and down; our own choice.
HILLY = 0.006


class TuneUpForm(EditForm):
    """Asks for one tune-up race; kept, it is a session builders leave where it is."""

    def __init__(
        self, document: Document, day: date, words: Words, parent: QWidget | None = None
    ) -> None:
        super().__init__(document, words, TITLE, TOPIC, parent)
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
        self.finish(fields, self.tr("&Put it in"), WIDTH_PX)

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

    def edit(self) -> AddSession:
        session = self.session()
        if session.day >= self._document.project.race.day:
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "TuneUp", "A tune-up race comes before the race; set an earlier day."
                )
            )
        return AddSession(session)
