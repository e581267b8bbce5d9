"""Which foods filling may use, in what portions, and the caps that hold whatever is asked."""

from __future__ import annotations

from collections.abc import Sequence
from enum import Enum, auto

from ultraplanner_gui.plan.fuel import (
    CaffeineLimit,
    Food,
    FuelPlan,
    Shape,
    Sugars,
    SweatTest,
    Tolerance,
)
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.caffeine import limits_mg, lower_limits_mg, young_limits_mg
from ultraplanner_gui.science.fuelling import MOST_GLUCOSE_G_PER_H, MUCH_FLUID_ML_PER_H
from ultraplanner_gui.science.hydration import sweat_l_per_h

# OWN rules throughout.
_LARGE_SERVING_ML = 400.0
_LARGE_SERVING_G = 32.0
_SALTY_MG_PER_G = 5.0
_MOSTLY_WATER_G_PER_ML = 0.02
_FOODS_PROPOSED = {Shape.GEL: 2, Shape.DRINK: 1, Shape.SOLID: 6, Shape.SALT: 1}
_POWDER_G = 2.0


class Taste(Enum):
    """What a food feels like, hours in."""

    GEL = auto()
    DRINK = auto()
    SWEET = auto()
    SAVOURY = auto()
    PLAIN = auto()


class FillFood(Value, frozen=True):
    """One food in portions of *part* servings; the figures are those of a portion.

    `carried_g` is what a portion weighs before water is put to it; `is_bottled` that its fluid
    takes room in a bottle; what `is_perishable` does not wait in a bag.
    """

    key: str
    part: float
    carb_g: float
    fluid_ml: float
    sodium_mg: float
    caffeine_mg: float
    carried_g: float
    taste: Taste
    tolerance: Tolerance
    is_carried: bool
    is_bottled: bool
    is_mixed: bool
    is_perishable: bool


def fill_foods(fuel: FuelPlan, keys: Sequence[str]) -> tuple[FillFood, ...]:
    """Return the foods of *keys* that may be used: none to avoid, none with the runner's
    allergens, caffeine only where it is turned on.
    """
    wanted = set(keys)
    return tuple(_portioned(f) for f in fuel.foods if f.key in wanted and may_use(fuel, f))


def may_use(fuel: FuelPlan, food: Food) -> bool:
    """Whether *food* may be chosen for the runner."""
    if food.tolerance is Tolerance.AVOID or set(food.allergens) & set(fuel.allergens):
        return False
    return not food.caffeine_mg or fuel.caffeine.is_used


def taste_of(food: Food) -> Taste:
    """Return what *food* feels like."""
    if food.shape is Shape.SALT:
        return Taste.PLAIN
    if food.shape is Shape.DRINK:
        if food.carb_g >= _MOSTLY_WATER_G_PER_ML * max(food.fluid_ml, 1.0):
            return Taste.DRINK
        return Taste.SAVOURY if food.sodium_mg > food.fluid_ml else Taste.PLAIN
    if food.shape is Shape.GEL:
        return Taste.GEL
    is_savoury = food.sugars is Sugars.SINGLE or food.sodium_mg >= _SALTY_MG_PER_G * food.carb_g
    return Taste.SAVOURY if is_savoury else Taste.SWEET


def proposed_foods(fuel: FuelPlan, at_stations: Sequence[str] = ()) -> tuple[str, ...]:
    """Return the foods a runner is likely to use: those tolerated, or else those in the plan, or
    else some of each shape; with water, and what the stations offer.
    """
    usable = [f for f in fuel.foods if may_use(fuel, f)]
    tolerated = {f.key for f in usable if f.tolerance is Tolerance.TOLERATED and f.carb_g}
    planned = {i.food for i in fuel.items}
    chosen = tolerated or planned & {f.key for f in usable if f.carb_g}
    left = dict(_FOODS_PROPOSED)
    if not chosen:
        asks_for_a_mixture = fuel.carb_g_per_h > MOST_GLUCOSE_G_PER_H
        for food in sorted(usable, key=lambda f: asks_for_a_mixture and not _is_mixture(f)):
            is_fit = food.is_carried and food.carb_g >= 10.0 and food.shape in left
            if is_fit and left[food.shape] and 4.0 * food.carb_g >= food.energy_kcal / 2.0:
                left[food.shape] -= 1
                chosen.add(food.key)
    chosen |= {f.key for f in usable if f.key in at_stations}
    if fuel.caffeine.is_used:
        awake = [f.key for f in usable if f.caffeine_mg and f.is_carried and f.carb_g >= 10.0]
        chosen |= set(awake[:1])
    for food in usable:
        is_water = food.shape is Shape.DRINK and food.is_carried and not food.energy_kcal
        if (is_water and not food.caffeine_mg) or food.key in planned:
            chosen.add(food.key)
        elif food.shape is Shape.SALT and food.is_carried and left[Shape.SALT]:
            left[Shape.SALT] -= 1
            chosen.add(food.key)
    return tuple(f.key for f in usable if f.key in chosen)


def _is_mixture(food: Food) -> bool:
    return food.sugars is Sugars.MIXED or food.shape is Shape.SOLID


def caffeine_caps_mg(fuel: FuelPlan, body_kg: float) -> tuple[float, float]:
    """Return the most caffeine at once and in 24 hours by the limit the runner chose."""
    limits = {
        CaffeineLimit.USUAL: limits_mg,
        CaffeineLimit.LOWER: lower_limits_mg,
        CaffeineLimit.BY_WEIGHT: young_limits_mg,
    }
    return limits[fuel.caffeine.limit](body_kg)


def sweat_of(test: SweatTest) -> float:
    """Return the sweat rate of a test, L/h."""
    return sweat_l_per_h(test.before_kg, test.after_kg, test.drunk_l, test.passed_l, test.hours)


def known_sweat_l_per_h(fuel: FuelPlan) -> float | None:
    """Return the least sweat rate of the tests, L/h, None without one: the careful figure."""
    return min((sweat_of(test) for test in fuel.sweat_tests), default=None)


def most_fluid_ml_per_h(fuel: FuelPlan) -> float:
    """Return what may never be planned above: the sweat rate, or 800 mL/h where unknown."""
    sweat = known_sweat_l_per_h(fuel)
    return MUCH_FLUID_ML_PER_H if sweat is None else 1000.0 * sweat


def fructose_g(food: Food) -> float:
    """Return the fructose of a serving: as its packet says, else a third of a mixed food (OWN)."""
    if food.fructose_g is not None:
        return food.fructose_g
    return food.carb_g / 3.0 if food.sugars is Sugars.MIXED else 0.0


def dry_weight_g(food: Food) -> float:
    """Return what a serving weighs in a bag: of a drink its powder, the water comes from taps."""
    if food.shape is Shape.DRINK and food.is_carried:
        return food.carb_g + _POWDER_G if food.energy_kcal else 0.0
    return food.weight_g


def _portioned(food: Food) -> FillFood:
    part = 1.0
    if food.shape is Shape.DRINK and food.fluid_ml >= _LARGE_SERVING_ML:
        part = 0.25
    elif food.shape is Shape.SOLID and food.carb_g > _LARGE_SERVING_G:
        part = 0.5
    return FillFood(
        key=food.key,
        part=part,
        carb_g=food.carb_g * part,
        fluid_ml=food.fluid_ml * part,
        sodium_mg=food.sodium_mg * part,
        caffeine_mg=food.caffeine_mg * part,
        carried_g=dry_weight_g(food) * part,
        taste=taste_of(food),
        tolerance=food.tolerance,
        is_carried=food.is_carried,
        is_bottled=food.shape is Shape.DRINK,
        is_mixed=food.sugars is Sugars.MIXED,
        is_perishable=food.shape is Shape.SOLID and 2.0 * food.fluid_ml > food.weight_g,
    )
