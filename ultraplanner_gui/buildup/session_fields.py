"""The two halves of the session editor: fields of what is planned, fields of what was done."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from PySide6.QtCore import QDate, QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDateEdit,
    QGridLayout,
    QGroupBox,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QSpinBox,
    QWidget,
)

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.edits.block import LONGEST_SESSION_M, LONGEST_SESSION_S, STEEPEST_M
from ultraplanner_gui.plan.block import Done, Ground, Gut, Kind, Session
from ultraplanner_gui.widgets.fields import DistanceField, DurationField, HeightField
from ultraplanner_gui.widgets.help_topic import set_topics
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

MOST_CARB_G_PER_H = 120
MOST_CARB_G = 5000
AHEAD, WAS_DONE, WAS_MISSED = range(3)


class FigureBox(QGroupBox):
    """Distance, time, climb, drop and effort, each with its range beside it.

    A figure nobody touched keeps the digits its field does not show.
    """

    edited = Signal()

    def __init__(self, title: str, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(title, parent)
        self._words = words
        self._of: Session | Done = Done(0.0, 0.0)
        self._shown: tuple[float, float, float] = (0.0, 0.0, 0.0)
        self._rows = QGridLayout(self)
        self._rows.setColumnStretch(1, 1)
        self.distance = DistanceField(words, 0.0, LONGEST_SESSION_M, parent=self)
        self.time = DurationField(words, 0.0, LONGEST_SESSION_S, parent=self)
        self.climb = HeightField(words, STEEPEST_M, self)
        self.drop = HeightField(words, STEEPEST_M, self)
        self.effort = QSpinBox(self)
        self.effort.setRange(0, 10)
        self.note = QLineEdit(self)
        set_topics({self.distance: "session distance", self.time: "session time"})
        set_topics({self.climb: "session climb", self.drop: "session climb"})
        set_topics({self.effort: "effort", self.note: "session note"})
        for field in (self.distance, self.climb, self.drop, self.effort):
            field.valueChanged.connect(self._on_edited)
        self.time.value_changed.connect(self._on_edited)

    def show_figures(self, of: Session | Done) -> None:
        """Show the figures of *of*."""
        blockers = [QSignalBlocker(f) for f in (self.distance, self.climb, self.drop, self.effort)]
        self._of = of
        self.distance.set_metres(of.distance_m)
        self.time.set_value(of.duration_s)
        self.climb.set_metres(of.climb_m)
        self.drop.set_metres(of.drop_m)
        self.effort.setValue(of.effort)
        self.note.setText(of.note)
        self._shown = (self.distance.value(), self.climb.value(), self.drop.value())
        del blockers

    def figures(self) -> tuple[float, float, float, float]:
        """Return distance, time, climb and drop in metres and seconds."""
        distance, climb, drop = self._shown
        of, time_s = self._of, self.time.value_s
        return (
            of.distance_m if self.distance.value() == distance else self.distance.metres,
            of.duration_s if time_s is None else time_s,
            of.climb_m if self.climb.value() == climb else self.climb.metres,
            of.drop_m if self.drop.value() == drop else self.drop.metres,
        )

    def add_figures(self) -> None:
        """Add the rows of the shared figures."""
        words = self._words
        heights = reach(words.number(0), words.height(STEEPEST_M))
        furthest = reach(words.number(0), words.distance(LONGEST_SESSION_M))
        self.add_row(self.tr("D&istance"), self.distance, furthest)
        latest = reach(words.number(0), words.duration(LONGEST_SESSION_S))
        self.add_row(self.tr("&Time"), self.time, latest)
        self.add_row(self.tr("&Climb"), self.climb, heights)
        self.add_row(self.tr("D&rop"), self.drop, heights)
        self.add_row(self.tr("&Effort"), self.effort, reach(words.number(0), words.number(10)))

    def add_row(self, label: str, field: QWidget, beside: str = "") -> None:
        """Add a row; the label is the field's buddy, *beside* its range."""
        row = self._rows.rowCount()
        name = QLabel(label, self)
        name.setBuddy(field)
        field.setAccessibleName(label.replace("&", ""))
        self._rows.addWidget(name, row, 0, Qt.AlignmentFlag.AlignRight)
        self._rows.addWidget(field, row, 1, 1, 1 if beside else 2)
        if beside:
            hint = QLabel(beside, self)
            hint.setFont(theme().font(7.5))
            hint.setStyleSheet(f"color: {theme().colours.soft}")
            self._rows.addWidget(hint, row, 2)

    def _on_edited(self) -> None:
        self.edited.emit()


class PlannedBox(FigureBox):
    """Fields of what is planned."""

    def __init__(self, session: Session, words: Words, parent: QWidget | None = None) -> None:
        super().__init__("", words, parent)
        self.setTitle(self.tr("Planned"))
        self._session = session
        is_race = session.kind is Kind.RACE
        self.kind = QComboBox(self)
        for kind in Kind:
            if (kind is Kind.RACE) == is_race:
                self.kind.addItem(kinds.capital(kinds.say(kinds.FULL[kind])), kind)
        self.day = QDateEdit(self)
        self.day.setCalendarPopup(True)
        self.day.setDisplayFormat("ddd d MMM yyyy")
        self.day.setEnabled(not is_race)
        self.ground = QComboBox(self)
        for ground in Ground:
            self.ground.addItem(kinds.capital(kinds.say(kinds.GROUNDS[ground])), ground)
        self.carbs = QSpinBox(self)
        self.carbs.setRange(0, MOST_CARB_G_PER_H)
        self.carbs.setSingleStep(5)
        self.carbs.setSuffix(" g/h")
        self.fasted = QCheckBox(self.tr("&Fasted"), self)
        self.dark = QCheckBox(self.tr("In the d&ark"), self)
        set_topics({self.kind: "session kind", self.day: "session day", self.ground: "ground"})
        set_topics({self.carbs: "practice carbs", self.fasted: "fasted", self.dark: "dark"})
        self._add_rows()
        self._show()
        self.kind.currentIndexChanged.connect(self._on_edited)
        self.fasted.toggled.connect(self._on_edited)

    def session(self) -> Session:
        """Return the session as the fields have it; what was done is left alone."""
        distance_m, duration_s, climb_m, drop_m = self.figures()
        day = self.day.date()
        session = self._session
        carbs = self.carbs.value()
        return replace(
            session,
            kind=Kind(self.kind.currentData()),
            day=date(day.year(), day.month(), day.day()),
            distance_m=distance_m,
            duration_s=duration_s,
            climb_m=climb_m,
            drop_m=drop_m,
            ground=Ground(self.ground.currentData()),
            effort=self.effort.value(),
            carb_g_per_h=session.carb_g_per_h
            if carbs == round(session.carb_g_per_h)
            else float(carbs),
            fasted=self.fasted.isChecked(),
            dark=self.dark.isChecked(),
            note=self.note.text(),
        )

    def _add_rows(self) -> None:
        words = self._words
        self.add_row(self.tr("&Kind"), self.kind)
        self.add_row(self.tr("Da&y"), self.day)
        self.add_figures()
        self.add_row(self.tr("&Ground"), self.ground)
        most = reach(words.number(0), words.grams_per_hour(MOST_CARB_G_PER_H))
        self.add_row(self.tr("&Practice carbs"), self.carbs, most)
        ticks = QHBoxLayout()
        ticks.addWidget(self.fasted)
        ticks.addWidget(self.dark)
        ticks.addStretch(1)
        self._rows.addLayout(ticks, self._rows.rowCount(), 1, 1, 2)
        self.add_row(self.tr("&Note"), self.note)

    def _show(self) -> None:
        session = self._session
        self.show_figures(session)
        self.kind.setCurrentIndex(self.kind.findData(session.kind))
        self.day.setDate(QDate(session.day.year, session.day.month, session.day.day))
        self.ground.setCurrentIndex(self.ground.findData(session.ground))
        self.carbs.setValue(round(session.carb_g_per_h))
        self.fasted.setChecked(session.fasted)
        self.dark.setChecked(session.dark)


class DoneBox(FigureBox):
    """How it went: not marked yet, done with figures of its own, or missed."""

    def __init__(self, session: Session, words: Words, parent: QWidget | None = None) -> None:
        super().__init__("", words, parent)
        self.setTitle(self.tr("What was done"))
        self.state = QComboBox(self)
        for text in (self.tr("Not marked yet"), self.tr("Done"), self.tr("Missed")):
            self.state.addItem(text)
        self.carbs = QSpinBox(self)
        self.carbs.setRange(0, MOST_CARB_G)
        self.carbs.setSingleStep(10)
        self.carbs.setSuffix(" g")
        self.gut = QComboBox(self)
        set_topics({self.state: "done or missed", self.carbs: "carbs eaten", self.gut: "gut"})
        self.gut.addItem(self.tr("Not noted"), None)
        for gut in Gut:
            self.gut.addItem(kinds.capital(kinds.say(kinds.GUTS[gut])), gut)
        self._add_rows()
        self._show(session)
        self.state.currentIndexChanged.connect(self._on_state_changed)

    @property
    def is_missed(self) -> bool:
        """Whether the session is marked missed."""
        return self.state.currentIndex() == WAS_MISSED

    def done(self) -> Done | None:
        """Return the record; None if the session is not marked done."""
        if self.state.currentIndex() != WAS_DONE:
            return None
        gut = self.gut.currentData()
        carb_g = float(self.carbs.value())
        shown = self._of.carb_g if isinstance(self._of, Done) else 0.0
        return Done(
            *self.figures(),
            effort=self.effort.value(),
            carb_g=shown if carb_g == round(shown) else carb_g,
            gut=None if gut is None else Gut(gut),
            note=self.note.text(),
        )

    def _add_rows(self) -> None:
        words = self._words
        self.add_row(self.tr("How it &went"), self.state)
        self.add_figures()
        self.add_row(
            self.tr("Carbs eate&n"), self.carbs, reach(words.number(0), words.grams(MOST_CARB_G))
        )
        self.add_row(self.tr("G&ut"), self.gut)
        self.add_row(self.tr("Note"), self.note)
        self._rows.setRowStretch(self._rows.rowCount(), 1)

    def _show(self, session: Session) -> None:
        record = session.done or replace(session, missed=False, note="").actual
        self.show_figures(record)
        self.carbs.setValue(round(record.carb_g))
        self.gut.setCurrentIndex(max(0, self.gut.findData(record.gut)) if record.gut else 0)
        state = WAS_DONE if session.done else WAS_MISSED if session.missed else AHEAD
        self.state.setCurrentIndex(state)
        self._on_state_changed()

    def _on_state_changed(self) -> None:
        is_done = self.state.currentIndex() == WAS_DONE
        for field in (
            self.distance,
            self.time,
            self.climb,
            self.drop,
            self.effort,
            self.carbs,
            self.gut,
            self.note,
        ):
            field.setEnabled(is_done)


def reach(low: str, high: str) -> str:
    """Return "0 to 400 km"."""
    return kinds.say(kinds.REACH).format(low, high)
