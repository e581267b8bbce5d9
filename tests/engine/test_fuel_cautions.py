"""Which checks and cautions a plan calls for: marks, allergens, sweat, caffeine by choice."""

from datetime import date

import pytest
from msgspec.structs import replace

from ultraplanner_gui.engine.fuel_cautions import cautions_for
from ultraplanner_gui.engine.fuelling import fuel_figures
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.fuel import (
    Allergen,
    Before,
    Caffeine,
    CaffeineLimit,
    Food,
    FuelItem,
    FuelPlan,
    Shape,
    SweatTest,
    Tolerance,
)
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.wording import cautions

H = 3600.0
BAR = Food("bar", "Bar, nutty", "1", 40.0, 25.0, allergens=(Allergen.NUTS,))
WATER = Food("water", "Water", "1", 500.0, 0.0, fluid_ml=500.0, shape=Shape.DRINK)
SHOT = Food("shot", "Shot", "1", 40.0, 25.0, caffeine_mg=100.0, shape=Shape.GEL)


def _figures(*foods, every_h=1.0, hours=8, **more):
    items = tuple(
        FuelItem(f"{food.key}{n}", food.key, (n + 0.4) * every_h * H)
        for food in foods
        for n in range(int(hours / every_h))
    )
    fuel = FuelPlan(foods=foods, **more).with_items(items)
    return fuel_figures(fuel, (), hours * H, Runner(body_kg=70.0))


def _states(figures, rule):
    return [c.state for c in figures.checks if c.rule == rule]


def test_food_with_the_runners_allergen_breaks():
    assert _states(_figures(BAR, allergens=(Allergen.NUTS,)), "food marks") == [State.BREAKS]
    assert _states(_figures(BAR), "food marks") == []


def test_food_marked_to_avoid_strains():
    avoided = replace(BAR, tolerance=Tolerance.AVOID)
    assert _states(_figures(avoided), "food marks") == [State.STRAINS]


# Sawka et al. 2007, Med Sci Sports Exerc 39:377-390: never more than is sweated.
def test_drinking_above_the_measured_sweat_breaks():
    test = SweatTest(date(2027, 5, 1), 70.0, 69.9, 0.4, 0.0, 1.5)
    assert _states(_figures(WATER, sweat_tests=(test,)), "fluid") == [State.BREAKS]
    assert _states(_figures(WATER), "fluid") == [State.HOLDS]


# EFSA NDA Panel 2015, EFSA Journal 13(5):4102.
@pytest.mark.parametrize(
    ("limit", "state"), [(CaffeineLimit.USUAL, State.HOLDS), (CaffeineLimit.LOWER, State.BREAKS)]
)
def test_three_hundred_milligrams_by_the_limit_chosen(limit, state):
    figures = _figures(SHOT, every_h=2.5, caffeine=Caffeine(limit=limit))
    assert _states(figures, "caffeine")[1] is state


def test_coffee_before_the_start_counts_toward_the_day():
    figures = _figures(SHOT, every_h=2.5, before=Before(caffeine_mg=200.0))
    assert _states(figures, "caffeine")[1] is State.BREAKS


def test_each_caution_is_said_once_and_only_where_it_matters():
    plain = cautions_for(_figures(WATER), 8 * H)
    assert cautions.CAFFEINE not in plain
    assert cautions.ALLERGY not in plain
    assert cautions.OVER_DRINKING in plain
    rich = cautions_for(_figures(BAR, SHOT), 8 * H, is_hot=True)
    assert {cautions.CAFFEINE, cautions.ALLERGY, cautions.HEAT} <= set(rich)
    assert len(rich) == len(set(rich))


def test_short_races_are_spared_the_cautions_of_long_ones():
    assert cautions.OVER_DRINKING not in cautions_for(_figures(BAR, hours=2), 2 * H)
