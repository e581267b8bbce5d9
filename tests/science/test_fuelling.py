"""Fuelling figures against published values and the worked examples derived from them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.science.fuelling import (
    S_PER_H,
    caffeine_limits_mg,
    carry_need,
    dose,
    loading_g_per_day,
    meal_carb_g,
    per_hour,
    recommended_carb_g_per_h,
    sodium_mmol_per_l,
    sugar_split,
    weeks_of_gut_training,
)

rates = st.floats(min_value=0, max_value=120)


# Jeukendrup 2014, Sports Med 44 Suppl 1: 90 g/h as 60 of glucose and 30 of fructose.
def test_two_to_one_split():
    assert sugar_split(90) == pytest.approx((60, 30))


# Derived from the 1 : 0.8 ratio of Rowlands et al. 2015, Sports Med 45:1561-1576.
def test_one_to_four_fifths_split():
    assert sugar_split(120, 0.8) == pytest.approx((66.7, 53.3), abs=0.05)


# Common practice, no source: the arithmetic of gels and minutes.
def test_thirty_grams_every_three_quarters_of_an_hour_are_forty_an_hour():
    assert per_hour(30, 45 * 60) == 40


def test_a_gel_lasts_under_nineteen_minutes_at_eighty_an_hour():
    assert dose(80, 18.75 * 60) == 25


def test_no_time_has_no_rate():
    assert per_hour(30, 0) == 0


# Common practice, no source: a gel of 25 g every 40 minutes.
def test_common_practice_is_less_than_half_of_what_trained_guts_take():
    common = per_hour(25, 40 * 60)
    assert common == 37.5
    assert 2 * common < 80
    assert weeks_of_gut_training(common, 80) >= 6


# Own rule: 15 % spare.
def test_carrying_for_a_leg_of_144_minutes():
    assert carry_need(60, 2.4 * S_PER_H) == pytest.approx(165.6)
    assert carry_need(600, 2.4 * S_PER_H) == pytest.approx(1656)


# Own rule, worked examples.
@pytest.mark.parametrize(("now", "target", "weeks"), [(40, 80, 6), (60, 90, 5), (50, 50, 2)])
def test_weeks_of_gut_training(now, target, weeks):
    assert weeks_of_gut_training(now, target) == weeks


@given(now=rates, target=rates)
def test_gut_training_never_asks_more_than_ten_grams_a_week(now, target):
    weeks = weeks_of_gut_training(now, target)
    assert now + 10 * (weeks - 2) >= target - 1e-6
    assert weeks == 2 or now + 10 * (weeks - 3) < target


# EFSA NDA Panel 2015, EFSA Journal 13(5):4102, and Guest et al. 2021, J Int Soc Sports Nutr 18:1.
@pytest.mark.parametrize(
    ("body_kg", "dose_mg", "day_mg"), [(70, 200, 400), (50, 150, 300), (90, 200, 400)]
)
def test_caffeine_limits(body_kg, dose_mg, day_mg):
    assert caffeine_limits_mg(body_kg) == (dose_mg, day_mg)


# Tiller et al. 2019, J Int Soc Sports Nutr 16:50: 575 mg/L is 25 mmol/L.
def test_sodium_in_millimoles():
    assert sodium_mmol_per_l(575) == pytest.approx(25.0, abs=0.05)
    assert sodium_mmol_per_l(804.7) == pytest.approx(35.0, abs=0.01)


# Jeukendrup 2014: little below 75 min, up to 60 g/h to three hours, 90 g/h beyond.
@pytest.mark.parametrize(
    ("hours", "band"),
    [(0.4, (0, 0)), (1, (0, 30)), (1.5, (30, 45)), (2.5, (45, 60)), (3, (30, 90)), (30, (30, 90))],
)
def test_advice_by_duration(hours, band):
    assert recommended_carb_g_per_h(hours * S_PER_H) == band


# Thomas et al. 2016, Med Sci Sports Exerc 48:543-568, from memory.
def test_loading_of_a_day():
    assert loading_g_per_day(70) == (700, 840)


# Band of Wallis & Podlogar 2022; 1 g/kg for each hour is an own rule.
@pytest.mark.parametrize(("hours", "grams"), [(3, 210), (2, 140), (0.5, 70), (6, 280)])
def test_last_meal(hours, grams):
    assert meal_carb_g(70, hours) == grams
