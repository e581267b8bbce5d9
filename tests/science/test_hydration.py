"""Sweat, fluid and sodium against their worked examples."""

import pytest

from ultraplanner_gui.science.hydration import (
    MassChange,
    drink_before_ml,
    fluid_to_plan_ml_per_h,
    mass_change,
    mass_change_percent,
    sodium_mg_per_l,
    sweat_l_per_h,
)


# Sawka et al. 2007, Med Sci Sports Exerc 39:377-390, formula from memory.
def test_sweat_rate():
    assert sweat_l_per_h(70.0, 68.4, 0.8, 0.2, 1.5) == pytest.approx(1.467, abs=5e-4)


# Own rule: never more than is sweated.
@pytest.mark.parametrize(("sweat", "ml"), [(1.47, 750), (0.6, 420), (0.3, 300), (0.2, 200)])
def test_fluid_to_plan(sweat, ml):
    assert fluid_to_plan_ml_per_h(sweat) == pytest.approx(ml)


# Classes of Hoffman et al. 2013, Med Sci Sports Exerc 45:784-791; unusual is our own.
@pytest.mark.parametrize(
    ("after", "percent", "meaning"),
    [
        (69.0, -1.43, MassChange.USUAL),
        (70.5, 0.71, MassChange.GAIN),
        (66.0, -5.71, MassChange.UNUSUAL),
        (67.2, -4.0, MassChange.LOW),
    ],
)
def test_change_of_mass(after, percent, meaning):
    change = mass_change_percent(70.0, after)
    assert change == pytest.approx(percent, abs=0.005)
    assert mass_change(change) is meaning


# Molar mass of sodium; 575 mg/L is 25 mmol/L in Tiller et al. 2019.
def test_sodium_concentration():
    assert sodium_mg_per_l(35) == pytest.approx(804.7, abs=0.06)


# Sawka et al. 2007, from memory.
def test_drink_before():
    assert drink_before_ml(70) == (350, 490)
