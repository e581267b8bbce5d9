"""Published figures for eating and drinking while running, and what follows from them.

Healthy adults only. Studies of more than 60 g of carbohydrate an hour last three hours at
most; for longer races such figures are carried over, not measured.
"""

from __future__ import annotations

import math

S_PER_H = 3600.0
SODIUM_MG_PER_MMOL = 22.99

# Glucose alone: Jeukendrup 2014, Sports Med 44 Suppl 1:S25-S33.
MOST_GLUCOSE_G_PER_H = 60.0
# Glucose with fructose, trained gut: same paper.
MOST_MIXED_G_PER_H = 90.0
# The most studied in a race, elite runners: Viribay et al. 2020, Nutrients 12:1367.
MOST_STUDIED_G_PER_H = 120.0

# Own limits; 450-750 mL/h is the band of Tiller et al. 2019, J Int Soc Sports Nutr 16:50.
MUCH_FLUID_ML_PER_H = 800.0
MOST_FLUID_ML_PER_H = 1000.0
MOST_SODIUM_MG_PER_H = 1000.0

_GUT_STEP_G_PER_H = 10.0
_GUT_WEEKS_AT_TARGET = 2


def per_hour(amount: float, s: float) -> float:
    """Return the hourly rate of *amount* taken in *s* seconds; 0 for no time."""
    return amount * S_PER_H / s if s > 0.0 else 0.0


def dose(rate_per_h: float, s: float) -> float:
    """Return what *s* seconds ask for at *rate_per_h*."""
    return rate_per_h * s / S_PER_H


def carry_need(rate_per_h: float, s: float, spare: float = 0.15) -> float:
    """Return what to carry for *s* seconds with *spare* on top (own rule: 15 %)."""
    return dose(rate_per_h, s) * (1.0 + spare)


def sugar_split(carb_g: float, fructose_per_glucose: float = 0.5) -> tuple[float, float]:
    """Return glucose and fructose, g, of a mixture; 2:1 unless said.

    Currell & Jeukendrup 2008, Med Sci Sports Exerc 40:275-281, for the 2:1 mixture; Rowlands
    et al. 2015, Sports Med 45:1561-1576, for 0.8 fructose to 1 glucose.
    """
    glucose_g = carb_g / (1.0 + fructose_per_glucose)
    return glucose_g, carb_g - glucose_g


def recommended_carb_g_per_h(race_s: float) -> tuple[float, float]:
    """Return the lowest and highest sensible intake, g/h, for a race of *race_s* seconds.

    Jeukendrup 2014, Sports Med 44 Suppl 1:S25-S33, and Tiller et al. 2019, J Int Soc Sports
    Nutr 16:50; the rows below three hours partly from memory.
    """
    hours = race_s / S_PER_H
    if hours < 0.5:
        return 0.0, 0.0
    if hours < 1.25:
        return 0.0, 30.0
    if hours < 2.0:
        return 30.0, 45.0
    return (45.0, 60.0) if hours < 3.0 else (30.0, MOST_MIXED_G_PER_H)


def weeks_of_gut_training(current_g_per_h: float, target_g_per_h: float) -> int:
    """Return the weeks of practice from a tolerated to a target intake.

    Own rule: 10 g/h more each week, the last two weeks at the target. Two weeks of practice
    lessened gut symptoms in Costa et al. 2017, Appl Physiol Nutr Metab 42:547-557.
    """
    steps = math.ceil((target_g_per_h - current_g_per_h) / _GUT_STEP_G_PER_H - 1e-9)
    return max(0, steps) + _GUT_WEEKS_AT_TARGET


def caffeine_limits_mg(body_kg: float) -> tuple[float, float]:
    """Return the most caffeine at once and within 24 hours, mg.

    The lower of 3 mg/kg and 200 mg, and of 6 mg/kg and 400 mg: absolute limits of EFSA NDA
    Panel 2015, EFSA Journal 13(5):4102, doses per kg of Guest et al. 2021, J Int Soc Sports
    Nutr 18:1; taking the lower is an own rule.
    """
    return min(3.0 * body_kg, 200.0), min(6.0 * body_kg, 400.0)


def sodium_mmol_per_l(mg_per_l: float) -> float:
    """Return a sodium concentration in mmol/L."""
    return mg_per_l / SODIUM_MG_PER_MMOL


def loading_g_per_day(body_kg: float) -> tuple[float, float]:
    """Return least and most carbohydrate a day for loading: 10 to 12 g/kg for 36 to 48 h.

    Thomas et al. 2016, Med Sci Sports Exerc 48:543-568 (from memory).
    """
    return 10.0 * body_kg, 12.0 * body_kg


def meal_carb_g(body_kg: float, hours_before: float) -> float:
    """Return the carbohydrate of the last meal: 1 g/kg for each hour before, 1 to 4 g/kg.

    The band of 1 to 4 g/kg one to four hours before is that of Wallis & Podlogar 2022, Sports
    Science Exchange; the line through it is an own rule.
    """
    return min(max(hours_before, 1.0), 4.0) * body_kg


def energy_left_kcal_per_kg(eaten_kcal: float, run_kcal: float, lean_kg: float) -> float:
    """Return what eating leaves for the body after running, kcal per kg of lean mass and day.

    Mountjoy et al. 2023, Br J Sports Med 57:1073-1097. Only to say that more should be eaten
    around training; nobody is to be labelled by it.
    """
    return (eaten_kcal - run_kcal) / lean_kg
