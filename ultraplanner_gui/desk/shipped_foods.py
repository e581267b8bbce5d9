"""The food table that comes with the program, in the user's language.

A project takes its foods over with their names, as if they had been typed: what a food is stays
with its key, so a plan made in one language opens in another as it was.
"""

from __future__ import annotations

from msgspec.structs import replace
from PySide6.QtCore import QCoreApplication

from ultraplanner_gui.desk import resources
from ultraplanner_gui.exchange.foods_in import read_foods
from ultraplanner_gui.plan.fuel import Food
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP

TEXTS = (
    QT_TRANSLATE_NOOP("Foods", "Water"),
    QT_TRANSLATE_NOOP("Foods", "Sports drink 6 %"),
    QT_TRANSLATE_NOOP("Foods", "Sports drink 8 %, glucose and fructose"),
    QT_TRANSLATE_NOOP("Foods", "Gel"),
    QT_TRANSLATE_NOOP("Foods", "Gel, glucose and fructose"),
    QT_TRANSLATE_NOOP("Foods", "Gel with caffeine"),
    QT_TRANSLATE_NOOP("Foods", "Salt capsule"),
    QT_TRANSLATE_NOOP("Foods", "Electrolyte solution"),
    QT_TRANSLATE_NOOP("Foods", "Banana"),
    QT_TRANSLATE_NOOP("Foods", "Starch jelly sweets"),
    QT_TRANSLATE_NOOP("Foods", "Dates, large soft"),
    QT_TRANSLATE_NOOP("Foods", "Potato, boiled, salted"),
    QT_TRANSLATE_NOOP("Foods", "Jam sandwich, white bread"),
    QT_TRANSLATE_NOOP("Foods", "Pretzels, salted"),
    QT_TRANSLATE_NOOP("Foods", "White rice, cooked"),
    QT_TRANSLATE_NOOP("Foods", "White bread"),
    QT_TRANSLATE_NOOP("Foods", "Chicken broth from powder"),
    QT_TRANSLATE_NOOP("Foods", "Beef broth"),
    QT_TRANSLATE_NOOP("Foods", "Beef stock, home made"),
    QT_TRANSLATE_NOOP("Foods", "Cola"),
    QT_TRANSLATE_NOOP("Foods", "Dates, small firm"),
    QT_TRANSLATE_NOOP("Foods", "Potato, boiled, unsalted"),
    QT_TRANSLATE_NOOP("Foods", "Spaghetti, cooked"),
    QT_TRANSLATE_NOOP("Foods", "Oat porridge made with water"),
    QT_TRANSLATE_NOOP("Foods", "Orange"),
    QT_TRANSLATE_NOOP("Foods", "Orange juice"),
    QT_TRANSLATE_NOOP("Foods", "Watermelon"),
    QT_TRANSLATE_NOOP("Foods", "Raisins"),
    QT_TRANSLATE_NOOP("Foods", "Honey"),
    QT_TRANSLATE_NOOP("Foods", "Maple syrup"),
    QT_TRANSLATE_NOOP("Foods", "Jam"),
    QT_TRANSLATE_NOOP("Foods", "Potato crisps, salted"),
    QT_TRANSLATE_NOOP("Foods", "Peanut butter"),
    QT_TRANSLATE_NOOP("Foods", "Dark chocolate 70-85 %"),
    QT_TRANSLATE_NOOP("Foods", "Sugar"),
    QT_TRANSLATE_NOOP("Foods", "Table salt"),
    QT_TRANSLATE_NOOP("Foods", "Coffee"),
    QT_TRANSLATE_NOOP("Foods", "Tea, black"),
    QT_TRANSLATE_NOOP("Foods", "500 mL"),
    QT_TRANSLATE_NOOP("Foods", "500 mL bottle"),
    QT_TRANSLATE_NOOP("Foods", "1 gel, 40 g"),
    QT_TRANSLATE_NOOP("Foods", "1 capsule"),
    QT_TRANSLATE_NOOP("Foods", "250 mL"),
    QT_TRANSLATE_NOOP("Foods", "1 medium, 118 g peeled"),
    QT_TRANSLATE_NOOP("Foods", "10 small, 22 g"),
    QT_TRANSLATE_NOOP("Foods", "1 date, 24 g"),
    QT_TRANSLATE_NOOP("Foods", "1 small, 125 g"),
    QT_TRANSLATE_NOOP("Foods", "1 sandwich, 76 g"),
    QT_TRANSLATE_NOOP("Foods", "1 handful, 28 g"),
    QT_TRANSLATE_NOOP("Foods", "half a cup, 79 g"),
    QT_TRANSLATE_NOOP("Foods", "1 slice, 28 g"),
    QT_TRANSLATE_NOOP("Foods", "1 cup, 150 mL"),
    QT_TRANSLATE_NOOP("Foods", "3 dates, 21 g"),
    QT_TRANSLATE_NOOP("Foods", "1 cup, 140 g"),
    QT_TRANSLATE_NOOP("Foods", "1 cup, 234 g"),
    QT_TRANSLATE_NOOP("Foods", "1 fruit, 131 g"),
    QT_TRANSLATE_NOOP("Foods", "1 wedge, 286 g"),
    QT_TRANSLATE_NOOP("Foods", "1 small box, 43 g"),
    QT_TRANSLATE_NOOP("Foods", "1 tablespoon, 21 g"),
    QT_TRANSLATE_NOOP("Foods", "1 tablespoon, 20 g"),
    QT_TRANSLATE_NOOP("Foods", "1 tablespoon, 16 g"),
    QT_TRANSLATE_NOOP("Foods", "5 pieces, 28 g"),
    QT_TRANSLATE_NOOP("Foods", "1 teaspoon, 4 g"),
    QT_TRANSLATE_NOOP("Foods", "1 g"),
    QT_TRANSLATE_NOOP("Foods", "1 cup, 237 mL"),
)
"""Every name and serving in `resources/foods.csv`, to be collected for translation."""


def shipped_foods() -> tuple[Food, ...]:
    """Return the foods of the table, named as the user speaks."""
    return tuple(map(_named, read_foods(resources.path("foods.csv"))))


def _named(food: Food) -> Food:
    return replace(food, name=_said(food.name), serving=_said(food.serving))


def _said(text: str) -> str:
    return QCoreApplication.translate("Foods", text)
