"""The short form of one race that might be run."""

from __future__ import annotations

from datetime import timedelta

from msgspec.structs import replace
from PySide6.QtCore import QDate, QSize, QTime
from PySide6.QtWidgets import (
    QLineEdit,
    QPlainTextEdit,
    QSizePolicy,
    QWidget,
)

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.course import LONGEST_RACE_S
from ultraplanner_gui.edits.training import AddCandidate, ChangeCandidate
from ultraplanner_gui.plan.candidates import Candidate, CandidateStop
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.widgets.edit_form import EditForm
from ultraplanner_gui.widgets.fields import (
    ClockField,
    DateField,
    DistanceField,
    DurationField,
    HeightField,
    describe,
)
from ultraplanner_gui.widgets.form_column import FormColumn
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

TITLE = QT_TRANSLATE_NOOP("Forms", "A race to pick from")
TOPIC = "candidate races"
LEAST_M, MOST_M, MOST_CLIMB_M = 1_000.0, 500_000.0, 50_000.0
USUAL_M, USUAL_CLIMB_M = 50_000.0, 1_500.0
USUAL_WEEKS = 24
STOPS_PX, WIDTH_PX = 84.0, 400.0


class CandidateForm(EditForm):
    """Adds a race, or changes *candidate*."""

    def __init__(
        self,
        document: Document,
        candidate: Candidate | None,
        words: Words,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(document, words, TITLE, TOPIC, parent)
        self._of = candidate
        day = document.before.today + timedelta(weeks=USUAL_WEEKS)
        of = candidate or Candidate("", "", day, USUAL_M, USUAL_CLIMB_M, USUAL_CLIMB_M)
        fields = self._made(of, words)
        self.finish(fields, self.tr("&Keep"), WIDTH_PX)
        self.name.setFocus()

    def _made(self, of: Candidate, words: Words) -> FormColumn:
        """Return the fields with *of* in them."""
        fields = FormColumn(self)
        self.name = QLineEdit(of.name, fields)
        describe(self.name, self.tr("What the race is called"))
        self.day = DateField(fields)
        self.day.setDate(QDate(of.day.year, of.day.month, of.day.day))
        self.start = ClockField(fields)
        self.start.setTime(QTime(0, 0).addSecs(round(of.start_s)))
        self.distance = DistanceField(words, LEAST_M, MOST_M, parent=fields)
        self.distance.set_metres(of.distance_m)
        self.climb, self.drop = (HeightField(words, MOST_CLIMB_M, fields) for _ in range(2))
        self.climb.set_metres(of.climb_m)
        self.drop.set_metres(of.drop_m)
        self.limit = DurationField(words, 600.0, LONGEST_RACE_S, optional=True, parent=fields)
        self.limit.set_value(of.limit_s)
        self.stops = _Lines("\n".join(_written(s, words) for s in of.stops), fields)
        self.stops.setTabChangesFocus(True)
        self.stops.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        described = self.tr("One cutoff a line: distance, race time, climb until there if known")
        describe(self.stops, described)
        self.stops.setPlaceholderText(self.tr("30 km; 6 h; 1200 m"))
        self.note = QLineEdit(of.note, fields)
        describe(self.note, self.tr("Anything worth remembering"))
        for label, field in (
            (self.tr("&Name"), self.name),
            (self.tr("&Day"), self.day),
            (self.tr("&Start"), self.start),
            (self.tr("D&istance"), self.distance),
            (self.tr("&Climb"), self.climb),
            (self.tr("D&rop"), self.drop),
            (self.tr("&Time limit"), self.limit),
            (self.tr("Cut&offs"), self.stops),
            (self.tr("Not&e"), self.note),
        ):
            fields.add(label, field, TOPIC)
        fields.end()
        return fields

    def candidate(self) -> Candidate:
        """Return what the fields say; PlanError if a cutoff cannot be read."""
        self.limit.take_typed()
        day = self.day.date()
        of = self._of or Candidate("", "", self._document.before.today, USUAL_M)
        return replace(
            of,
            name=self.name.text().strip(),
            day=of.day.replace(day.year(), day.month(), day.day()),
            start_s=float(QTime(0, 0).secsTo(self.start.time())),
            distance_m=self.distance.metres,
            climb_m=self.climb.metres,
            drop_m=self.drop.metres,
            limit_s=self.limit.value_s,
            stops=read_stops(self.stops.toPlainText(), self._words),
            note=self.note.text().strip(),
        )

    def edit(self) -> AddCandidate | ChangeCandidate:
        if not self.name.text().strip():
            raise PlanError(QT_TRANSLATE_NOOP("Candidates", "The race needs a name."))
        candidate = self.candidate()
        return AddCandidate(candidate) if self._of is None else ChangeCandidate(candidate)


class _Lines(QPlainTextEdit):
    """A few lines of text."""

    def sizeHint(self) -> QSize:
        return QSize(super().sizeHint().width(), round(theme().px(STOPS_PX)))

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()


def read_stops(text: str, words: Words) -> tuple[CandidateStop, ...]:
    """Return the cutoffs typed, one a line: distance; race time; climb until there.

    Raises PlanError for the first line that cannot be read.
    """
    stops = []
    for line in text.splitlines():
        if not line.strip():
            continue
        parts = [part.strip() for part in line.split(";")]
        at_m = words.parse_distance(parts[0])
        cutoff_s = words.parse_duration(parts[1]) if len(parts) > 1 else None
        climb_m = words.parse_height(parts[2]) if len(parts) > 2 and parts[2] else 0.0
        if at_m is None or cutoff_s is None or climb_m is None:
            raise PlanError(UNREADABLE, line.strip()[:60])
        stops.append(CandidateStop(at_m, cutoff_s, climb_m))
    return tuple(sorted(stops, key=lambda s: s.at_m))


def _written(stop: CandidateStop, words: Words) -> str:
    words = words.plain()
    parts = [words.distance(stop.at_m, 1), words.duration(stop.cutoff_s)]
    if stop.climb_m:
        parts.append(words.height(stop.climb_m))
    return "; ".join(parts)


UNREADABLE = QT_TRANSLATE_NOOP(
    "Candidates", "“{0}” cannot be read; a cutoff is typed as 30 km; 6 h; 1200 m."
)
