"""The two halves of the session editor: fields of what is planned, fields of what was done."""

from __future__ import annotations

from datetime import date
from functools import partial
from typing import TypeVar

from msgspec.structs import replace
from PySide6.QtCore import QCoreApplication, QDate, QSignalBlocker, Signal
from PySide6.QtWidgets import QCheckBox, QComboBox, QLineEdit, QWidget

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.buildup.hour_field import HourField
from ultraplanner_gui.edits.block import LONGEST_SESSION_M, LONGEST_SESSION_S, STEEPEST_M
from ultraplanner_gui.engine.block_ground import EFFORT
from ultraplanner_gui.plan.block import Done, Ground, Gut, Kind, Mind, Session
from ultraplanner_gui.plan.race import FIRST_YEAR, LAST_YEAR
from ultraplanner_gui.widgets.fields import (
    DateField,
    DistanceField,
    DurationField,
    HeightField,
    WholeField,
    describe,
)
from ultraplanner_gui.widgets.form_column import FormColumn
from ultraplanner_gui.widgets.guess import OWN, Guess, mark
from ultraplanner_gui.widgets.help_topic import set_topics
from ultraplanner_gui.wording.words import Words

V = TypeVar("V")

MOST_CARB_G_PER_H = 120
MOST_CARB_G = 5000
EASY_EFFORT = 3
AHEAD, WAS_DONE, WAS_MISSED = range(3)


class FigureBox(FormColumn):
    """Distance, time, climb, drop and effort under a head.

    A figure nobody touched keeps the digits its field does not show.
    """

    edited = Signal()

    def __init__(self, title: str, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = words
        self._of: Session | Done = Done(0.0, 0.0)
        self._shown: tuple[float, float, float] = (0.0, 0.0, 0.0)
        self.add_head(title)
        self.distance = DistanceField(words, 0.0, LONGEST_SESSION_M, parent=self)
        self.time = DurationField(words, 0.0, LONGEST_SESSION_S, parent=self)
        self.climb = HeightField(words, STEEPEST_M, self)
        self.drop = HeightField(words, STEEPEST_M, self)
        self.effort = WholeField(words, 0, 10, kinds.say(kinds.OF_TEN), parent=self)
        self.note = QLineEdit(self)
        describe(self.note, self.tr("Anything worth remembering"))
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

    def _on_edited(self) -> None:
        self.edited.emit()


class PlannedBox(FigureBox):
    """Fields of what is planned."""

    def __init__(self, session: Session, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(QCoreApplication.translate("PlannedBox", "Planned"), words, parent)
        self._session = session
        is_race = session.kind is Kind.RACE
        self.kind = QComboBox(self)
        for kind in Kind:
            if (kind is Kind.RACE) == is_race:
                self.kind.addItem(kinds.capital(kinds.say(kinds.FULL[kind])), kind)
        self.day = DateField(self)
        self.day.setDateRange(QDate(FIRST_YEAR, 1, 1), QDate(LAST_YEAR, 12, 31))
        self.day.setEnabled(not is_race)
        describe(self.day, self.tr("Between the years {0} and {1}").format(FIRST_YEAR, LAST_YEAR))
        self.ground = QComboBox(self)
        for ground in Ground:
            self.ground.addItem(kinds.capital(kinds.say(kinds.GROUNDS[ground])), ground)
        self.carbs = WholeField(words, 0, MOST_CARB_G_PER_H, "g/h", 5, self)
        self.fasted = QCheckBox(self.tr("&Fasted"), self)
        self.dark = QCheckBox(self.tr("In the d&ark"), self)
        self.heat = QCheckBox(self.tr("In the heat"), self)
        self.hour = HourField(words, self)
        self.mind = QComboBox(self)
        self.mind.addItem(self.tr("None"), None)
        for mind in Mind:
            self.mind.addItem(kinds.capital(kinds.say(kinds.MINDS[mind])), mind)
        self.locked = QCheckBox(self.tr("L&ocked"), self)
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
        mind = self.mind.currentData()
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
            heat=self.heat.isChecked(),
            at_s=self.hour.value_s,
            mind=None if mind is None else Mind(mind),
            locked=self.locked.isChecked(),
            note=self.note.text(),
        )

    def _add_rows(self) -> None:
        self.add(self.tr("&Kind"), self.kind, "session kind")
        self.add(self.tr("Da&y"), self.day, "session day")
        self.add(self.tr("&Begins at"), self.hour, "session hour")
        self.add(self.tr("D&istance"), self.distance, "session distance")
        self.add(self.tr("&Time"), self.time, "session time")
        self.add(self.tr("C&limb"), self.climb, "session climb")
        self.add(self.tr("D&rop"), self.drop, "session climb")
        effort = self.effort
        self.add_guess(
            self.tr("&Effort"), effort, effort.value, effort.setValue, self._usual_effort, "effort"
        )
        self.add(self.tr("&Ground"), self.ground, "ground")
        self.add(self.tr("&Practice carbs"), self.carbs, "practice carbs")
        self.add(self.tr("&Mental rehearsal"), self.mind, "mental rehearsal")
        what = self.tr("What is pictured beforehand, or gone through on this run")
        describe(self.mind, what)
        ticks = (self.fasted, self.dark, self.heat, self.locked)
        topics = ("fasted", "dark", "heat days", "several sessions")
        set_topics(dict(zip(ticks, topics, strict=True)))
        self.add_ticks(*ticks)
        self.add(self.tr("&Note"), self.note, "session note")
        self.end()

    def _usual_effort(self) -> Guess[int]:
        why = self.tr("Usual for this kind.")
        return Guess(EFFORT.get(Kind(self.kind.currentData()), EASY_EFFORT), why, mark(OWN))

    def _show(self) -> None:
        session = self._session
        self.show_figures(session)
        self.kind.setCurrentIndex(self.kind.findData(session.kind))
        self.day.setDate(QDate(session.day.year, session.day.month, session.day.day))
        self.ground.setCurrentIndex(self.ground.findData(session.ground))
        self.carbs.setValue(round(session.carb_g_per_h))
        self.fasted.setChecked(session.fasted)
        self.dark.setChecked(session.dark)
        self.heat.setChecked(session.heat)
        self.hour.set_value(session.at_s)
        self.mind.setCurrentIndex(max(0, self.mind.findData(session.mind)) if session.mind else 0)
        self.locked.setChecked(session.locked)


class DoneBox(FigureBox):
    """How it went: not marked yet, done with figures of its own, or missed."""

    def __init__(self, session: Session, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(QCoreApplication.translate("DoneBox", "What was done"), words, parent)
        self._planned = replace(session, done=None, missed=False).actual
        self.state = QComboBox(self)
        for text in (self.tr("Not marked yet"), self.tr("Done"), self.tr("Missed")):
            self.state.addItem(text)
        self.carbs = WholeField(words, 0, MOST_CARB_G, "g", 10, self)
        self.gut = QComboBox(self)
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
        before = self._of if isinstance(self._of, Done) else Done(0.0, 0.0)
        shown = before.carb_g
        return Done(
            *self.figures(),
            effort=self.effort.value(),
            carb_g=shown if carb_g == round(shown) else carb_g,
            gut=None if gut is None else Gut(gut),
            note=self.note.text(),
            foods=before.foods,
        )

    def _add_rows(self) -> None:
        planned, effort, carbs = self._planned, self.effort, self.carbs
        self.add(self.tr("How it &went"), self.state, "done or missed")
        self.add(self.tr("Distance"), self.distance, "session distance")
        self.add(self.tr("Time"), self.time, "session time")
        for label, field, planned_m in (
            (self.tr("Climb"), self.climb, planned.climb_m),
            (self.tr("Drop"), self.drop, planned.drop_m),
        ):
            guess = partial(self._as_planned, planned_m)
            read = partial(getattr, field, "metres")
            self.add_guess(label, field, read, field.set_metres, guess, "session climb")
        for label, whole, value, topic in (
            (self.tr("Effort"), effort, planned.effort, "effort"),
            (self.tr("Carbs eaten"), carbs, round(planned.carb_g), "carbs eaten"),
        ):
            put = partial(self._as_planned, value)
            self.add_guess(label, whole, whole.value, whole.setValue, put, topic)
        self.add(self.tr("G&ut"), self.gut, "gut")
        self.add(self.tr("Note"), self.note, "session note")
        self.end()

    def _as_planned(self, value: V) -> Guess[V]:
        return Guess(value, self.tr("As planned."), mark(OWN))

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
        for field in (self.distance, self.time, self.gut, self.note, *self.guesses.values()):
            field.setEnabled(is_done)
