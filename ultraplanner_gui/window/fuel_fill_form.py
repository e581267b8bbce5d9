"""The form that fills the race to its targets: which foods, what it came to, why not all is met."""

from __future__ import annotations

from collections.abc import Callable

from msgspec.structs import replace
from PySide6.QtCore import Slot
from PySide6.QtWidgets import QCheckBox, QPushButton, QWidget

from ultraplanner_gui.engine.fuel_fill import Fill
from ultraplanner_gui.engine.fuel_kit import may_use, proposed_foods
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.fuel import Caffeine, Food, FuelPlan, Tolerance
from ultraplanner_gui.widgets.help_topic import set_topic, set_topics
from ultraplanner_gui.widgets.table_column import say
from ultraplanner_gui.window.fuel_forms import FuelForm, TickList
from ultraplanner_gui.window.table_foods import TOLERANCES
from ultraplanner_gui.wording.words import Words

WIDTH_PX = 560.0
MOST_REASONS = 6


class FillForm(FuelForm):
    """Foods to tick and what filling with them comes to; nothing changes before it is taken.

    *start* begins the work for a plan and some foods, *take* puts the result in.
    """

    def __init__(
        self,
        outlook: Outlook,
        words: Words,
        start: Callable[[FuelPlan, tuple[str, ...]], None],
        take: Callable[[Fill, FuelPlan], None],
        stop: Callable[[], None],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(self.tr("Fill fuel to target"), "fill to target", WIDTH_PX, parent)
        self._outlook, self._words = outlook, words
        self._start, self._take, self._stop = start, take, stop
        self._fill: Fill | None = None
        fuel, course = outlook.project.fuel, outlook.project.course
        stations = course.stations if course is not None else ()
        self._on_tables = tuple(food for s in stations for food in s.foods)
        self.caffeine = QCheckBox(self.tr("Ca&ffeine may be used, late in the race"), self)
        self.caffeine.setChecked(fuel.caffeine.is_used)
        rows = ((food.key, self._said(food)) for food in fuel.foods)
        self.foods = TickList(self.tr("Foods to fill with"), rows, self)
        self.foods.tick(proposed_foods(fuel, self._on_tables))
        self.try_it = QPushButton(self.tr("&Work it out"), self)
        self._result = self.line("", is_small=False)
        set_topics({self.foods: "food", self._result: "fill to target"})
        self._lay_out()
        self.try_it.clicked.connect(self._on_try)
        self.foods.itemChanged.connect(self._on_changed)
        self.caffeine.toggled.connect(self._on_changed)

    def fuel(self) -> FuelPlan:
        """Return the plan as the form has it."""
        fuel = self._outlook.project.fuel
        caffeine = Caffeine(self.caffeine.isChecked(), fuel.caffeine.limit)
        return replace(fuel, caffeine=caffeine)

    def show_fill(self, fill: Fill) -> None:
        """Say what filling came to."""
        self._fill = fill
        self.try_it.setEnabled(True)
        self._do.setEnabled(True)
        self._do.setDefault(True)
        self._result.setText("\n".join(self._lines(fill)))
        needed = self.box.totalHeightForWidth(self.width())
        self.resize(self.width(), max(self.height(), needed))

    def show_failure(self, text: str) -> None:
        """Say why there is nothing to take."""
        self.try_it.setEnabled(True)
        self.say_trouble(text)

    def accept(self) -> None:
        if self._fill is not None:
            self._take(self._fill, self.fuel())
        super().accept()

    def reject(self) -> None:
        self._stop()
        super().reject()

    def _lay_out(self) -> None:
        fuel, words = self._outlook.project.fuel, self._words
        says = self.line(
            self.tr(
                "Replaces all items by a choice that keeps {0}, {1} of fluid and {2} of sodium "
                "an hour, changes the taste with the hours and carries little far. Food on a "
                "table is taken there."
            ).format(
                words.grams_per_hour(fuel.carb_g_per_h),
                words.millilitres(fuel.fluid_ml_per_h),
                words.milligrams(fuel.sodium_mg_per_h),
            ),
            is_small=False,
        )
        set_topic(says, "fill to target")
        self.box.addWidget(says)
        self.box.addWidget(self.head(self.tr("With these foods")))
        self.box.addWidget(self.foods, 1)
        self.box.addWidget(self.caffeine)
        self.box.addWidget(self.try_it)
        self.box.addWidget(self._result)
        self.foods.setMinimumHeight(self.foods.sizeHintForRow(0) * 9)
        self._do = self.finish(self.tr("&Take it"))
        self._do.setEnabled(False)
        self.try_it.setDefault(True)

    def _said(self, food: Food) -> str:
        parts = [food.name]
        if food.carb_g:
            parts.append(self._words.grams(food.carb_g))
        if food.tolerance is not Tolerance.NOT_TRIED:
            parts.append(say(TOLERANCES[food.tolerance]))
        if food.key in self._on_tables:
            parts.append(self.tr("on a table"))
        elif not food.is_carried:
            parts.append(self.tr("on no table yet"))
        return ", ".join(parts)

    def _lines(self, fill: Fill) -> list[str]:
        words, fuel = self._words, self._outlook.project.fuel
        target = self._outlook.target
        hours = target.finish_s / 3600.0 if target is not None else 1.0
        foods = {food.key: food for food in fuel.foods}
        carb, fluid, sodium = (
            sum(getattr(foods[i.food], of) * i.servings for i in fill.items) / hours
            for of in ("carb_g", "fluid_ml", "sodium_mg")
        )
        first = self.tr("{0} items: {1}, {2} of fluid and {3} of sodium an hour.").format(
            words.number(len(fill.items)),
            words.grams_per_hour(carb),
            words.millilitres(fluid),
            words.milligrams(sodium),
        )
        lines = [first]
        if not fill.reasons:
            lines.append(self.tr("Every target is met on every leg."))
        lines += [words.say(reason) for reason in fill.reasons[:MOST_REASONS]]
        if len(fill.reasons) > MOST_REASONS:
            left = words.number(len(fill.reasons) - MOST_REASONS)
            lines.append(self.tr("And {0} more.").format(left))
        if not fill.is_proven:
            lines.append(self.tr("A good choice; whether the best was not settled in time."))
        return lines

    @Slot()
    def _on_try(self) -> None:
        self.say_trouble("")
        fuel, ticked = self.fuel(), self.foods.ticked()
        usable = [f for f in fuel.foods if f.key in ticked and may_use(fuel, f)]
        if not usable:
            self.say_trouble(self.tr("Tick foods you may eat."))
            return
        self.try_it.setEnabled(False)
        self._result.setText(self.tr("Working it out…"))
        self._start(fuel, ticked)

    @Slot()
    def _on_changed(self) -> None:
        self._fill = None
        self._do.setEnabled(False)
        self._result.setText("")
