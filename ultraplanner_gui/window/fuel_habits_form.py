"""The form of what goes with the fuel plan: bottles, caffeine, stores, allergies, days before."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDoubleSpinBox,
    QFormLayout,
    QHBoxLayout,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.fuel_habits import (
    SetAllergens,
    SetBefore,
    SetCaffeine,
    SetCarrying,
    SetFuelHabits,
    SetTank,
)
from ultraplanner_gui.plan.fuel import (
    Allergen,
    Before,
    Caffeine,
    CaffeineLimit,
    Carrying,
    Effort,
    FuelPlan,
    Tank,
)
from ultraplanner_gui.widgets.fields import WholeField, align_text
from ultraplanner_gui.widgets.help_topic import set_topic, set_topics
from ultraplanner_gui.widgets.table_column import say
from ultraplanner_gui.window.fuel_forms import FuelForm, TickList
from ultraplanner_gui.window.table_foods import ALLERGENS
from ultraplanner_gui.wording import cautions
from ultraplanner_gui.wording.words import Words

WIDTH_PX = 760.0
#: One below what is taken for a VO2max: not known.
LEAST_VO2MAX = 19


def _caution(text: str) -> str:
    return QCoreApplication.translate("Caution", text)


class HabitsForm(FuelForm):
    """Everything in one place; *sent* takes it as one step and says what is wrong."""

    def __init__(
        self,
        fuel: FuelPlan,
        words: Words,
        sent: Callable[[Edit], str],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(self.tr("Fuel habits"), "carried", WIDTH_PX, parent)
        self._fuel, self._words, self._sent = fuel, words, sent
        left, right = QVBoxLayout(), QVBoxLayout()
        self._carrying(left)
        self._caffeine(left)
        self._before(left)
        self._tank(right)
        self._allergens(right)
        row = QHBoxLayout()
        row.addLayout(left, 1)
        row.addLayout(right, 1)
        self.box.addLayout(row, 1)
        self.finish(self.tr("&Set"))

    def accept(self) -> None:
        edits = (
            SetCarrying(
                Carrying(
                    self.bottles.value(),
                    float(self.bottle_ml.value()),
                    self.spare.value() / 100.0,
                )
            ),
            SetCaffeine(Caffeine(self.uses.isChecked(), self.limit.currentData())),
            SetBefore(
                Before(
                    self.days.value(),
                    float(self.loading.value()),
                    self.meal.value(),
                    float(self.coffee.value()),
                )
            ),
            SetTank(
                Tank(
                    float(self.vo2max.value()) if self.vo2max.value() > LEAST_VO2MAX else None,
                    self.effort.currentData(),
                    self.leg_share.value() / 100.0,
                    float(self.legs.value()),
                    float(self.liver.value()),
                )
            ),
            SetAllergens(tuple(Allergen(key) for key in self.allergens.ticked())),
        )
        trouble = self._sent(SetFuelHabits(edits))
        if trouble:
            self.say_trouble(trouble)
            return
        super().accept()

    def _whole(self, value: float, low: int, high: int, unit: str, step: int = 1) -> WholeField:
        field = WholeField(self._words, low, high, unit, step, self)
        field.setValue(round(value))
        return field

    def _carrying(self, box: QVBoxLayout) -> None:
        c = self._fuel.carrying
        self.bottles = self._whole(c.bottles, 0, 8, "")
        self.bottle_ml = self._whole(c.bottle_ml, 100, 3000, self.tr("mL"), 50)
        self.spare = self._whole(100 * c.spare, 0, 100, "%", 5)
        set_topics({self.bottles: "carried", self.bottle_ml: "carried", self.spare: "carry"})
        form = QFormLayout()
        form.addRow(self.tr("&Bottles"), self.bottles)
        form.addRow(self.tr("Eac&h holds"), self.bottle_ml)
        form.addRow(self.tr("S&pare packed"), self.spare)
        box.addWidget(self.head(self.tr("What you carry")))
        box.addLayout(form)

    def _caffeine(self, box: QVBoxLayout) -> None:
        caffeine = self._fuel.caffeine
        self.uses = QCheckBox(self.tr("Filling may use ca&ffeine"), self)
        self.uses.setChecked(caffeine.is_used)
        self.limit = QComboBox(self)
        for limit, text in (
            (CaffeineLimit.USUAL, self.tr("400 mg a day, healthy adults")),
            (CaffeineLimit.LOWER, self.tr("200 mg a day, as in pregnancy")),
            (CaffeineLimit.BY_WEIGHT, self.tr("3 mg/kg a day, as under 18")),
        ):
            self.limit.addItem(text, limit)
        self.limit.setCurrentIndex(self.limit.findData(caffeine.limit))
        set_topics({self.uses: "caffeine", self.limit: "caffeine"})
        form = QFormLayout()
        form.addRow(self.tr("&Limit that counts"), self.limit)
        box.addWidget(self.head(self.tr("Caffeine")))
        box.addWidget(self.uses)
        box.addLayout(form)
        caution = self.line(_caution(cautions.CAFFEINE))
        set_topic(caution, "caffeine")
        box.addWidget(caution)

    def _before(self, box: QVBoxLayout) -> None:
        before = self._fuel.before
        self.days = self._whole(before.loading_days, 0, 4, self.tr("days"))
        self.loading = self._whole(before.loading_g_per_kg, 5, 12, self.tr("g/kg a day"))
        self.meal = QDoubleSpinBox(self)
        self.meal.setRange(1.0, 4.0)
        self.meal.setSingleStep(0.5)
        self.meal.setDecimals(1)
        self.meal.setSuffix(self.tr(" h before"))
        self.meal.setValue(before.meal_h)
        align_text(self.meal)
        self.coffee = self._whole(before.caffeine_mg, 0, 200, self.tr("mg"), 25)
        fields = (self.days, self.loading, self.meal)
        set_topics(dict.fromkeys(fields, "before the start"))
        set_topic(self.coffee, "caffeine")
        form = QFormLayout()
        form.addRow(self.tr("L&oading"), self.days)
        form.addRow(self.tr("Of carbohydrate, &each"), self.loading)
        form.addRow(self.tr("Last &meal"), self.meal)
        form.addRow(self.tr("Caffeine bef&ore the start"), self.coffee)
        box.addWidget(self.head(self.tr("Before the start")))
        box.addLayout(form)
        box.addStretch(1)

    def _tank(self, box: QVBoxLayout) -> None:
        tank = self._fuel.tank
        self.vo2max = self._whole(tank.vo2max or 0, LEAST_VO2MAX, 95, self.tr("mL/kg/min"))
        self.vo2max.setSpecialValueText(self.tr("not known"))
        self.vo2max.setValue(round(tank.vo2max) if tank.vo2max is not None else LEAST_VO2MAX)
        self.effort = QComboBox(self)
        for effort, text in (
            (Effort.EASY, self.tr("easy, half of your best")),
            (Effort.STEADY, self.tr("steady, 60 %")),
            (Effort.HARD, self.tr("hard, 70 %")),
        ):
            self.effort.addItem(text, effort)
        self.effort.setCurrentIndex(self.effort.findData(tank.effort))
        self.leg_share = self._whole(100 * tank.leg_share, 14, 27, "%")
        self.legs = self._whole(tank.legs_g_per_kg, 5, 36, self.tr("g/kg"))
        self.liver = self._whole(tank.liver_g, 0, 160, self.tr("g"), 5)
        fields = (self.vo2max, self.effort, self.leg_share, self.legs, self.liver)
        set_topics(dict.fromkeys(fields, "glycogen at the start"))
        form = QFormLayout()
        form.addRow(self.tr("&VO2max"), self.vo2max)
        form.addRow(self.tr("If not known, the race &is"), self.effort)
        form.addRow(self.tr("Leg muscle, of the bod&y"), self.leg_share)
        form.addRow(self.tr("&Glycogen in it"), self.legs)
        form.addRow(self.tr("In the live&r"), self.liver)
        box.addWidget(self.head(self.tr("Glycogen at the start")))
        box.addLayout(form)
        usual = self.line(self.tr("20 g/kg is usual, 36 fully loaded; liver 90 g after breakfast."))
        set_topic(usual, "glycogen at the start")
        box.addWidget(usual)

    def _allergens(self, box: QVBoxLayout) -> None:
        rows = ((allergen.value, say(ALLERGENS[allergen])) for allergen in Allergen)
        self.allergens = TickList(self.tr("What you must not eat"), rows, self)
        self.allergens.tick(a.value for a in self._fuel.allergens)
        set_topic(self.allergens, "allergens")
        box.addWidget(self.head(self.tr("What you must not eat")))
        box.addWidget(self.allergens, 1)
        box.addWidget(self.line(_caution(cautions.ALLERGY)))
