"""The fuel plan: foods and where on the race clock each is taken."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import StrEnum

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError


class Sugars(StrEnum):
    """Whether a food's carbohydrate is of one kind or glucose and fructose together."""

    SINGLE = "single"
    MIXED = "mixed"


class Shape(StrEnum):
    """What a food is to hold, which is also the shape of its token."""

    GEL = "gel"
    DRINK = "drink"
    SOLID = "solid"
    SALT = "salt"


@dataclass(frozen=True, slots=True)
class Food:
    """One food, per serving. `carb_g` is net of fibre; `mark` says where the figures are from
    ("published", "from memory", "from the packet").
    """

    key: str
    name: str
    serving: str
    weight_g: float
    carb_g: float
    sodium_mg: float = 0.0
    fluid_ml: float = 0.0
    caffeine_mg: float = 0.0
    energy_kcal: float = 0.0
    sugars: Sugars = Sugars.SINGLE
    shape: Shape = Shape.SOLID
    source: str = ""
    mark: str = ""


@dataclass(frozen=True, slots=True)
class FuelItem:
    """*servings* of a food taken at *at_s* seconds of race time."""

    key: str
    food: str
    at_s: float
    servings: float = 1.0


@dataclass(frozen=True, slots=True)
class FuelPlan:
    """What is asked per hour, the foods at hand and the items placed on the race clock.

    Items are by time. `first_s` and `every_s` are the rule by which items are placed.
    """

    carb_g_per_h: float = 60.0
    fluid_ml_per_h: float = 500.0
    sodium_mg_per_h: float = 400.0
    first_s: float = 1800.0
    every_s: float = 1200.0
    foods: tuple[Food, ...] = ()
    items: tuple[FuelItem, ...] = ()

    def food(self, key: str) -> Food:
        """Return the food *key*; PlanError if there is none."""
        for food in self.foods:
            if food.key == key:
                return food
        raise PlanError(QT_TRANSLATE_NOOP("Plan", "There is no food {0} in this project."), key)

    def item(self, key: str) -> FuelItem:
        """Return the item *key*; PlanError if there is none."""
        for item in self.items:
            if item.key == key:
                return item
        raise PlanError(QT_TRANSLATE_NOOP("Plan", "That item is no longer in the fuel plan."))

    def with_item(self, changed: FuelItem) -> FuelPlan:
        """Return a copy with the item of the same key replaced, kept in order of time."""
        self.item(changed.key)
        return self.with_items(tuple(changed if i.key == changed.key else i for i in self.items))

    def with_items(self, items: tuple[FuelItem, ...]) -> FuelPlan:
        """Return a copy with *items* in order of time."""
        return replace(self, items=tuple(sorted(items, key=lambda i: i.at_s)))
