"""The form of a sweat test: a run weighed before and after."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PySide6.QtCore import QCoreApplication, QDate, Slot
from PySide6.QtWidgets import QCheckBox, QDoubleSpinBox, QFormLayout, QWidget

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.fuel import SetFuelRates
from ultraplanner_gui.edits.fuel_habits import SetFuelHabits, SetSweatTests
from ultraplanner_gui.engine.fuel_kit import sweat_of
from ultraplanner_gui.plan.fuel import FuelPlan, SweatTest
from ultraplanner_gui.science.hydration import fluid_to_plan_ml_per_h
from ultraplanner_gui.widgets.fields import DateField, align_text
from ultraplanner_gui.widgets.help_topic import set_topics
from ultraplanner_gui.window.fuel_forms import FuelForm
from ultraplanner_gui.wording import cautions
from ultraplanner_gui.wording.words import Words

WIDTH_PX = 440.0


class SweatForm(FuelForm):
    """One test, what it comes to while it is typed; *sent* takes it and says what is wrong."""

    def __init__(
        self,
        fuel: FuelPlan,
        body_kg: float,
        today: date,
        words: Words,
        sent: Callable[[Edit], str],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(self.tr("Sweat test"), "sweat test", WIDTH_PX, parent)
        self._fuel, self._words, self._sent = fuel, words, sent
        self.day = DateField(self)
        self.day.setDate(QDate(today.year, today.month, today.day))
        self.before = self._field(body_kg, 30.0, 250.0, self.tr(" kg"), 0.1)
        self.after = self._field(body_kg - 1.0, 30.0, 250.0, self.tr(" kg"), 0.1)
        self.drunk = self._field(0.5, 0.0, 10.0, self.tr(" L"), 0.05)
        self.passed = self._field(0.0, 0.0, 5.0, self.tr(" L"), 0.05)
        self.hours = self._field(1.5, 0.25, 6.0, self.tr(" h"), 0.25)
        self.sets = QCheckBox(self.tr("&Plan fluid by it"), self)
        self._rate = self.line("", is_small=False)
        fields = (self.day, self.before, self.after, self.drunk, self.passed, self.hours)
        set_topics(dict.fromkeys((*fields, self.sets, self._rate), "sweat test"))
        form = QFormLayout()
        form.addRow(self.tr("&Day"), self.day)
        form.addRow(self.tr("Weight &before, undressed and dry"), self.before)
        form.addRow(self.tr("Weight &after"), self.after)
        form.addRow(self.tr("D&runk"), self.drunk)
        form.addRow(self.tr("Pass&ed"), self.passed)
        form.addRow(self.tr("It &took"), self.hours)
        self.box.addLayout(form)
        self.box.addWidget(self._rate)
        self.box.addWidget(self.sets)
        caution = QCoreApplication.translate("Caution", cautions.OVER_DRINKING)
        self.box.addWidget(self.line(caution))
        self.finish(self.tr("&Keep it"))
        for field in (self.before, self.after, self.drunk, self.passed, self.hours):
            field.valueChanged.connect(self._on_changed)
        self._on_changed()

    def test(self) -> SweatTest:
        """Return the test as the fields have it."""
        day = self.day.date()
        return SweatTest(
            date(day.year(), day.month(), day.day()),
            self.before.value(),
            self.after.value(),
            self.drunk.value(),
            self.passed.value(),
            self.hours.value(),
        )

    def accept(self) -> None:
        test, fuel = self.test(), self._fuel
        edits: list[Edit] = [SetSweatTests((*fuel.sweat_tests, test))]
        if self.sets.isChecked():
            fluid = fluid_to_plan_ml_per_h(sweat_of(test))
            rates = (fuel.sodium_mg_per_h, fuel.first_s, fuel.every_s)
            edits.append(SetFuelRates(fuel.carb_g_per_h, fluid, *rates))
        trouble = self._sent(SetFuelHabits(tuple(edits)))
        if trouble:
            self.say_trouble(trouble)
            return
        super().accept()

    def _field(
        self, value: float, low: float, high: float, unit: str, step: float
    ) -> QDoubleSpinBox:
        field = QDoubleSpinBox(self)
        field.setRange(low, high)
        field.setDecimals(2 if step < 0.1 else 1 if step < 0.25 else 2)
        field.setSingleStep(step)
        field.setSuffix(unit)
        field.setValue(value)
        align_text(field)
        return field

    @Slot()
    def _on_changed(self) -> None:
        rate = sweat_of(self.test())
        words = self._words
        if rate <= 0.0:
            self._rate.setText(self.tr("Check the figures: that is no sweat at all."))
            return
        self._rate.setText(
            self.tr("You sweat about {0} an hour; {1} an hour at hand is enough.").format(
                words.litres(1000.0 * rate), words.millilitres(fluid_to_plan_ml_per_h(rate))
            )
        )
