"""Placing food and drink on the race clock by rule."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from enum import Enum, auto

from ultraplanner_gui.plan.fuel import Food, FuelItem, FuelPlan, Shape, Sugars
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.science.fuelling import (
    MOST_GLUCOSE_G_PER_H,
    MUCH_FLUID_ML_PER_H,
    S_PER_H,
    dose,
)

# Own rules throughout, but for the turn from sweet to savoury food in long races, reported by
# Tiller et al. 2019, J Int Soc Sports Nutr 16:50.
LAST_BEFORE_FINISH_S = 900.0
_FOOD_STEP = 0.5
_DRINK_STEP = 0.25
_HAIR = 1e-9
_LEAST_PORTION_G = 8.0
_LARGE_PORTION_G = 30.0
_LEAST_CARB_SHARE = 1.0 / 3.0
_KCAL_PER_G = 4.0
_DRINK_G_PER_ML = 0.02
_SALTY_MG_PER_G = 5.0
_BROTH_MG_PER_ML = 1.5
_FOODS_IN_TURN = 3


class _Taste(Enum):
    GEL = auto()
    SWEET = auto()
    SAVOURY = auto()


_TASTES: tuple[tuple[float, tuple[_Taste, ...]], ...] = (
    (4.0 * S_PER_H, (_Taste.GEL, _Taste.GEL, _Taste.SWEET)),
    (10.0 * S_PER_H, (_Taste.GEL, _Taste.SAVOURY, _Taste.GEL, _Taste.SWEET)),
    (math.inf, (_Taste.SAVOURY, _Taste.GEL, _Taste.SAVOURY, _Taste.SWEET)),
)
_BROTH_FROM_S = _TASTES[1][0]


def slot_times(first_s: float, every_s: float, finish_s: float) -> tuple[float, ...]:
    """Return the times to take something, none in the last 15 minutes of the race."""
    room_s = finish_s - LAST_BEFORE_FINISH_S - first_s
    count = math.floor(room_s / every_s) + 1 if room_s >= 0.0 else 0
    return tuple(first_s + k * every_s for k in range(count))


def place_by_clock(fuel: FuelPlan, finish_s: float) -> tuple[FuelItem, ...]:
    """Return items placed every `every_s` from `first_s` to reach the asked rates with the foods
    at hand; none in the last 15 minutes, none with caffeine.

    Each time stands for the time since the one before. What a portion gives too much or too
    little is made up for at the next. PlanError if there is no food with carbohydrate.
    """
    kit = _kit(fuel)
    slots = slot_times(fuel.first_s, fuel.every_s, finish_s)
    owed = _Owed()
    items: list[FuelItem] = []
    for at_s, span_s in zip(slots, _spans(slots, fuel, finish_s), strict=True):
        owed.carb_g += dose(fuel.carb_g_per_h, span_s)
        owed.fluid_ml += dose(kit.fluid_ml_per_h, span_s)
        owed.sodium_mg += dose(fuel.sodium_mg_per_h, span_s)
        for food, servings in _portions(kit, owed, at_s):
            owed.take(food, servings)
            items.append(FuelItem(f"item-{len(items) + 1}", food.key, at_s, servings))
    return tuple(items)


@dataclass(slots=True)
class _Owed:
    """What has been asked by now and not yet been given."""

    carb_g: float = 0.0
    fluid_ml: float = 0.0
    sodium_mg: float = 0.0

    def take(self, food: Food, servings: float) -> None:
        self.carb_g -= food.carb_g * servings
        self.fluid_ml -= food.fluid_ml * servings
        self.sodium_mg -= food.sodium_mg * servings


@dataclass(slots=True)
class _Kit:
    """The foods sorted by use, and how often each kind has been eaten."""

    fluid_ml_per_h: float
    drink: Food | None
    water: Food | None
    broth: Food | None
    salt: Food | None
    foods: dict[_Taste, tuple[Food, ...]]
    eaten: dict[_Taste, int] = field(default_factory=lambda: dict.fromkeys(_Taste, 0))
    turns: int = 0

    def next_food(self, at_s: float) -> tuple[_Taste, Food] | None:
        """Return what is due at *at_s*, in turn; another kind if there is none of the right one."""
        pattern = next(tastes for until_s, tastes in _TASTES if at_s < until_s)
        due = pattern[self.turns % len(pattern)]
        for taste in (due, *pattern, *_Taste):
            if foods := self.foods[taste]:
                return taste, foods[self.eaten[taste] % len(foods)]
        return None

    def has_food(self) -> bool:
        return any(self.foods.values())


def _spans(slots: Sequence[float], fuel: FuelPlan, finish_s: float) -> list[float]:
    """Return how many seconds of eating each slot stands for.

    The first makes up for no more than half an interval of late start, the last for as much
    of what is left, lest either become too big a portion.
    """
    spans = [fuel.every_s] * len(slots)
    if spans:
        spans[0] = min(fuel.first_s, 1.5 * fuel.every_s)
        spans[-1] += min(finish_s - LAST_BEFORE_FINISH_S - slots[-1], 0.5 * fuel.every_s)
    return spans


def _kit(fuel: FuelPlan) -> _Kit:
    calm = [food for food in fuel.foods if food.caffeine_mg == 0.0]
    drinks = [food for food in calm if food.shape is Shape.DRINK and food.fluid_ml > 0.0]
    sweet_drinks = [f for f in drinks if f.carb_g >= _DRINK_G_PER_ML * f.fluid_ml]
    foods = _foods_to_eat(fuel, calm)
    if fuel.carb_g_per_h > 0.0 and not sweet_drinks and not any(foods.values()):
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Fuel",
                "There is no food with carbohydrate and without caffeine in this project; add one.",
            )
        )
    drink = next(iter(_mixed_first(sweet_drinks, fuel)), None)
    broths = [f for f in drinks if f.sodium_mg >= _BROTH_MG_PER_ML * f.fluid_ml]
    waters = [f for f in drinks if f not in sweet_drinks and f not in broths]
    kit = _Kit(
        fluid_ml_per_h=fuel.fluid_ml_per_h,
        drink=drink,
        water=min(waters, key=lambda f: f.carb_g + f.sodium_mg, default=None),
        broth=broths[0] if broths else None,
        salt=next((f for f in calm if f.shape is Shape.SALT and f.sodium_mg > 0.0), None),
        foods=foods,
    )
    if drink is not None and not kit.has_food():
        # All carbohydrate has to come out of the bottle, but never at the price of drinking
        # more than is safe without a known sweat rate.
        by_bottle = fuel.carb_g_per_h * drink.fluid_ml / drink.carb_g
        kit.fluid_ml_per_h = max(kit.fluid_ml_per_h, min(by_bottle, MUCH_FLUID_ML_PER_H))
    return kit


def _foods_to_eat(fuel: FuelPlan, calm: list[Food]) -> dict[_Taste, tuple[Food, ...]]:
    solid = [f for f in calm if f.shape in (Shape.GEL, Shape.SOLID) and f.carb_g > 0.0]
    largest_g = max(_LARGE_PORTION_G, 1.5 * dose(fuel.carb_g_per_h, fuel.every_s))
    handy = [f for f in solid if _LEAST_PORTION_G <= f.carb_g <= largest_g and _is_mostly_carb(f)]
    by_taste: dict[_Taste, list[Food]] = {taste: [] for taste in _Taste}
    for food in handy or solid:
        by_taste[_taste(food)].append(food)
    by_taste[_Taste.GEL] = _mixed_first(by_taste[_Taste.GEL], fuel)
    return {taste: tuple(foods[:_FOODS_IN_TURN]) for taste, foods in by_taste.items()}


def _mixed_first(foods: list[Food], fuel: FuelPlan) -> list[Food]:
    """Return only those of glucose and fructose if more is asked than glucose alone can give."""
    mixed = [food for food in foods if food.sugars is Sugars.MIXED]
    return mixed if mixed and fuel.carb_g_per_h > MOST_GLUCOSE_G_PER_H else foods


def _is_mostly_carb(food: Food) -> bool:
    return _KCAL_PER_G * food.carb_g >= _LEAST_CARB_SHARE * food.energy_kcal


def _taste(food: Food) -> _Taste:
    if food.shape is Shape.GEL:
        return _Taste.GEL
    is_starch = food.sugars is Sugars.SINGLE
    is_salty = food.sodium_mg >= _SALTY_MG_PER_G * food.carb_g
    return _Taste.SAVOURY if is_starch or is_salty else _Taste.SWEET


def _portions(kit: _Kit, owed: _Owed, at_s: float) -> Iterator[tuple[Food, float]]:
    """Yield what to take at one time; *owed* is lowered by the caller after each."""
    broth, drink, water, salt = kit.broth, kit.drink, kit.water, kit.salt
    if broth is not None and at_s >= _BROTH_FROM_S:
        needed = min(owed.sodium_mg / broth.sodium_mg, owed.fluid_ml / broth.fluid_ml)
        if needed >= 0.5:
            yield broth, 1.0
    if drink is not None:
        by_carb = math.floor(max(0.0, owed.carb_g) / drink.carb_g / _DRINK_STEP + _HAIR)
        most = by_carb * _DRINK_STEP
        if servings := min(_steps(owed.fluid_ml / drink.fluid_ml, _DRINK_STEP), most):
            yield drink, servings
    if (due := kit.next_food(at_s)) is not None:
        taste, food = due
        if servings := _steps(owed.carb_g / food.carb_g, _FOOD_STEP):
            kit.turns += 1
            kit.eaten[taste] += 1
            yield food, servings
    if water is not None and (servings := _steps(owed.fluid_ml / water.fluid_ml, _DRINK_STEP)):
        yield water, servings
    if salt is not None and (servings := _steps(owed.sodium_mg / salt.sodium_mg, 1.0)):
        yield salt, servings


def _steps(servings: float, step: float) -> float:
    """Return *servings* to the nearest *step*, halves up; 0 if below zero."""
    return max(0.0, math.floor(servings / step + 0.5) * step)
