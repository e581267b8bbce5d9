"""Races one may pick from, side by side: runway, ground, dark hours, what the cutoffs ask."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
    QDialog,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.language import tr
from ultraplanner_gui.edits.training import RemoveCandidate
from ultraplanner_gui.engine.candidates import CandidateFigures, Leg, candidate_figures
from ultraplanner_gui.plan.candidates import Candidate
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.rows import CheckRow, Figure, Heads, Row, Rows, Rule, Sentence, Title
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window.candidate_form import CandidateForm
from ultraplanner_gui.wording.words import NONE, Words

TOPIC = "candidate races"
AFTER_TOPIC = "after the race"
COLUMN_PX, WIDTH_PX, HEIGHT_PX = 268.0, 920.0, 560.0


class CandidatesPage(QDialog):
    """A column to each race; they follow the plan while the page is open."""

    def __init__(
        self, document: Document, words: Callable[[], Words], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._document, self._words = document, words
        self.setWindowTitle(self.tr("Races to pick from"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        set_topic(self, TOPIC)
        self.empty = QLabel(
            self.tr(
                "No race yet. Add those you think of: day, distance, climb, drop and cutoffs are "
                "enough to see whether there is time, and what they ask."
            ),
            self,
        )
        self.empty.setWordWrap(True)
        self._columns = QHBoxLayout()
        self._columns.setSpacing(Space.WIDE)
        inside = QWidget(self)
        held = QVBoxLayout(inside)
        held.setContentsMargins(0, 0, 0, Space.NEAR)
        held.addLayout(self._columns)
        held.addStretch(1)
        area = QScrollArea(self)
        area.setWidget(inside)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.add = QPushButton(self.tr("&Add a race…"), self)
        close = QPushButton(self.tr("Close"), self)
        self.add.clicked.connect(self._on_add)
        close.clicked.connect(self.close)
        row = QHBoxLayout()
        row.addWidget(self.add)
        row.addStretch(1)
        row.addWidget(close)
        for button in (self.add, close):
            button.setAutoDefault(False)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        box.addWidget(self.empty)
        box.addWidget(area, 1)
        box.addLayout(row)
        look = theme()
        dress(self.empty, Pt.STRONG, look.colours.soft)
        self.resize(round(look.px(WIDTH_PX)), round(look.px(HEIGHT_PX)))
        self._shown: object = None
        document.changed.connect(self._on_changed)
        self.refresh()

    def refresh(self) -> None:
        """Show every race anew."""
        while self._columns.count():
            item = self._columns.takeAt(0)
            widget = item.widget() if item is not None else None
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        outlook = self._document.outlook
        figures = candidate_figures(outlook.project, outlook, outlook.today)
        self.empty.setVisible(not figures)
        for one in figures:
            self._columns.addWidget(self._column(one))
        self._columns.addStretch(1)

    def _column(self, figures: CandidateFigures) -> QWidget:
        words, candidate = self._words(), figures.candidate
        column = QWidget(self)
        column.setFixedWidth(round(theme().px(COLUMN_PX)))
        rows = Rows(candidate.name, column)
        rows.show_rows(candidate_rows(figures, words))
        change = QPushButton(self.tr("Change…"), column)
        remove = QPushButton(self.tr("Remove"), column)
        change.setAccessibleName(self.tr("Change {0}").format(candidate.name))
        remove.setAccessibleName(self.tr("Remove {0}").format(candidate.name))
        change.clicked.connect(partial(self._change, candidate))
        remove.clicked.connect(partial(self._remove, candidate.key))
        row = QHBoxLayout()
        for button in (change, remove):
            button.setAutoDefault(False)
            row.addWidget(button)
        row.addStretch(1)
        box = QVBoxLayout(column)
        box.setContentsMargins(0, 0, 0, 0)
        box.addWidget(rows)
        # At the foot of the tallest: the buttons of all races stand in one line.
        box.addStretch(1)
        box.addLayout(row)
        return column

    @Slot()
    def _on_add(self) -> None:
        CandidateForm(self._document, None, self._words(), self).open()

    def _change(self, candidate: Candidate) -> None:
        CandidateForm(self._document, candidate, self._words(), self).open()

    def _remove(self, key: str) -> None:
        self._document.perform(RemoveCandidate(key))

    @Slot(object, object)
    def _on_changed(self, before: object, after: object) -> None:
        project = self._document.project
        outlook = self._document.outlook
        parts = (project.candidates, project.runner, project.block, project.race, outlook.today)
        if self._document.trial_outlook is None and parts != self._shown:
            self._shown = parts
            self.refresh()


def candidate_rows(figures: CandidateFigures, words: Words) -> tuple[Row, ...]:
    """Return what there is to say of one race."""
    race, way = figures.candidate, figures.way
    day = words.day_and_year(race.day)
    dark = NONE if figures.dark_s is None else words.duration(figures.dark_s)
    rows: list[Row] = [
        Title(race.name, day, TOPIC),
        _figure(tr("Distance"), words.distance(race.distance_m, 1)),
        _figure(tr("Climb, drop"), words.climb_and_drop(race.climb_m, race.drop_m)),
        _figure(tr("Climb per {0}").format(words.distance_unit), _per_unit(figures, words)),
        _figure(tr("Likely finish"), words.duration(figures.finish_s)),
        _figure(tr("In the dark"), dark),
        Rule(),
        Heads(tr("Runway"), topic="runway"),
        Figure(tr("Weeks to go"), words.number(way.weeks_there), topic="runway"),
        Figure(tr("Weeks needed"), words.number(way.weeks_needed), topic="runway"),
        Figure(
            tr("Largest week"),
            words.distance(way.reachable_week_m, 0),
            words.distance(way.asks.peak_week_m, 0),
            shows_both=True,
            topic="what the race asks",
        ),
        Figure(
            tr("Longest run"),
            words.distance(way.reachable_longest_m, 0),
            words.distance(way.asks.longest_m, 0),
            shows_both=True,
            topic="what the race asks",
        ),
        Sentence(tr("Pale: asked; bold: what the rules allow by then.")),
        CheckRow(figures.state, words.say(figures.says[0]), topic=TOPIC),
        *(Sentence(words.say(text), "runway") for text in figures.says[1:]),
    ]
    if figures.after is not None:
        state, text = figures.after
        rows.append(CheckRow(state, words.say(text), topic=AFTER_TOPIC))
    if figures.legs:
        rows += [
            Rule(),
            Heads(tr("Cutoffs, level pace"), tr("asked"), tr("likely"), topic=TOPIC),
            *(_leg(leg, words) for leg in figures.legs),
        ]
    if race.note:
        rows.append(Sentence(race.note, TOPIC))
    return tuple(rows)


def _leg(leg: Leg, words: Words) -> Figure:
    return Figure(
        tr("to {0}").format(words.distance(leg.end_m)),
        words.pace(1.0 / leg.does_mps) if leg.does_mps > 0.0 else NONE,
        words.pace(1.0 / leg.asked_mps) if leg.asked_mps > 0.0 else NONE,
        warns=leg.in_hand_s < 0.0,
        help_text=tr("Time in hand at its end: {0}").format(
            words.signed(words.duration(leg.in_hand_s))
            if leg.in_hand_s < 0.0
            else words.duration(leg.in_hand_s)
        ),
        shows_both=True,
        topic=TOPIC,
    )


def _per_unit(figures: CandidateFigures, words: Words) -> str:
    return words.height(figures.climb_per_m * words.unit_m)


def _figure(label: str, text: str) -> Figure:
    return Figure(label, text, topic=TOPIC)
