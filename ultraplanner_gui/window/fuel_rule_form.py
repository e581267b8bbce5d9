"""The form that places one food by rule: every so many minutes, or at aid stations."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QComboBox, QDoubleSpinBox, QFormLayout, QRadioButton, QWidget

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.fuel import RepeatItem
from ultraplanner_gui.engine.fuel_clock import at_places, every
from ultraplanner_gui.engine.fuel_placing import LAST_BEFORE_FINISH_S
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.widgets.fields import WholeField, align_text
from ultraplanner_gui.widgets.help_topic import set_topics
from ultraplanner_gui.window.fuel_forms import FuelForm
from ultraplanner_gui.wording.words import Words

WIDTH_PX = 440.0
MINUTE_S = 60.0


class RepeatForm(FuelForm):
    """One food, how much of it, and when; *sent* takes the edit and says what is wrong."""

    def __init__(
        self,
        outlook: Outlook,
        words: Words,
        sent: Callable[[Edit], str],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(self.tr("Repeat a food by rule"), "placing fuel", WIDTH_PX, parent)
        self._outlook, self._sent = outlook, sent
        fuel, target = outlook.project.fuel, outlook.target
        finish_min = (target.finish_s if target is not None else 36_000.0) / MINUTE_S
        self.food = QComboBox(self)
        for food in fuel.foods:
            self.food.addItem(food.name, food.key)
        self.servings = QDoubleSpinBox(self)
        self.servings.setRange(0.25, 20.0)
        self.servings.setSingleStep(0.25)
        self.servings.setValue(1.0)
        align_text(self.servings)
        minutes = self.tr("min")
        self.by_clock = QRadioButton(self.tr("By the cl&ock"), self)
        self.at_stations = QRadioButton(self.tr("At each &aid station"), self)
        self.where_offered = QRadioButton(self.tr("At each station that &has it"), self)
        self.by_clock.setChecked(True)
        self.step = WholeField(words, 5, 240, minutes, 5, self)
        self.step.setValue(round(fuel.every_s / MINUTE_S))
        self.first = WholeField(words, 0, finish_min, minutes, 5, self)
        self.first.setValue(round(fuel.first_s / MINUTE_S))
        self.last = WholeField(words, 0, finish_min, minutes, 5, self)
        self.last.setValue(int(finish_min - LAST_BEFORE_FINISH_S / MINUTE_S))
        set_topics({self.food: "food", self.servings: "servings"})
        set_topics(dict.fromkeys((self.step, self.first, self.last), "placing fuel"))
        form = QFormLayout()
        form.addRow(self.tr("&Food"), self.food)
        form.addRow(self.tr("&Servings each time"), self.servings)
        self.box.addLayout(form)
        self.box.addWidget(self.by_clock)
        clock = QFormLayout()
        clock.addRow(self.tr("&Every"), self.step)
        clock.addRow(self.tr("F&rom minute"), self.first)
        clock.addRow(self.tr("&Until minute"), self.last)
        self.box.addLayout(clock)
        self.box.addWidget(self.at_stations)
        self.box.addWidget(self.where_offered)
        self.box.addWidget(
            self.line(self.tr("Added to what is there. At stations it keeps its place."))
        )
        self.finish(self.tr("&Place it"))
        self.by_clock.toggled.connect(self._on_toggled)

    def edit(self) -> RepeatItem | None:
        """Return what the form asks for, None where there is no place for it."""
        project, target = self._outlook.project, self._outlook.target
        food, servings = str(self.food.currentData()), self.servings.value()
        if self.by_clock.isChecked():
            steps = range(self.first.value(), self.last.value() + 1, self.step.value())
            times = [minute * MINUTE_S for minute in steps]
            return RepeatItem(every(project.fuel, food, servings, times)) if times else None
        if project.course is None or target is None:
            return None
        places = [
            s.at_m
            for s in project.course.stations
            if self.at_stations.isChecked() or food in s.foods
        ]
        return (
            RepeatItem(at_places(project.fuel, food, servings, places, target)) if places else None
        )

    def accept(self) -> None:
        edit = self.edit()
        trouble = (
            self.tr("No such time or station; change the rule.")
            if edit is None
            else self._sent(edit)
        )
        if trouble:
            self.say_trouble(trouble)
            return
        super().accept()

    @Slot(bool)
    def _on_toggled(self, is_on: bool) -> None:
        for field in (self.step, self.first, self.last):
            field.setEnabled(is_on)
