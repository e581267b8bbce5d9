"""One table of values that every part of the fuelling figures has to give, by the paper behind it.

Where a row says OWN the rule is our own and the value its arithmetic.
"""

import math

import pytest

from ultraplanner_gui.engine.fuel_placing import slot_times
from ultraplanner_gui.science import caffeine, fuelling, glycogen, hydration

H = 3600.0

ROWS = (
    # Jeukendrup 2014, Sports Med 44 Suppl 1:S25-S33
    ("90 g/h, 2:1", lambda: fuelling.sugar_split(90), (60.0, 30.0), 1e-6),
    # Rowlands et al. 2015, Sports Med 45:1561-1576
    ("120 g/h, 1:0.8", lambda: fuelling.sugar_split(120, 0.8), (66.7, 53.3), 0.05),
    # Common practice, no source
    ("30 g each 45 min", lambda: fuelling.per_hour(30, 45 * 60), 40.0, 1e-6),
    ("minutes for 25 g at 80 g/h", lambda: 25 / fuelling.dose(80, 60.0), 18.75, 1e-6),
    # OWN: 15 % spare
    ("carbs of 2.4 h", lambda: fuelling.carry_need(60, 2.4 * H), 165.6, 1e-6),
    ("gels of 25 g", lambda: math.ceil(fuelling.carry_need(60, 2.4 * H) / 25), 7, 0),
    ("water of 2.4 h, L", lambda: fuelling.carry_need(0.6, 2.4 * H), 1.656, 1e-6),
    # OWN: none in the last 15 min
    ("times in 300 min", lambda: len(slot_times(1800.0, 1200.0, 5 * H)), 13, 0),
    # OWN, after Costa et al. 2017, Appl Physiol Nutr Metab 42:547-557
    ("weeks 40 to 80", lambda: fuelling.weeks_of_gut_training(40, 80), 6, 0),
    ("weeks 60 to 90", lambda: fuelling.weeks_of_gut_training(60, 90), 5, 0),
    ("weeks 50 to 50", lambda: fuelling.weeks_of_gut_training(50, 50), 2, 0),
    # Thomas et al. 2016, Med Sci Sports Exerc 48:543-568 (from memory)
    ("loading at 70 kg", lambda: fuelling.loading_g_per_day(70), (700.0, 840.0), 1e-6),
    # Band of Wallis & Podlogar 2022, Sports Science Exchange; the line is OWN
    ("meal 3 h before", lambda: fuelling.meal_carb_g(70, 3), 210.0, 1e-6),
    # EFSA NDA Panel 2015, EFSA Journal 13(5):4102; the lower of two is OWN
    ("caffeine at 70 kg", lambda: caffeine.limits_mg(70), (200.0, 400.0), 1e-6),
    ("caffeine at 50 kg", lambda: caffeine.limits_mg(50), (150.0, 300.0), 1e-6),
    # Half-life: Institute of Medicine 2001
    (
        "200 mg and 100 mg at 4 h, left at 4, 8 and 12 h",
        lambda: caffeine.in_body_mg((0, 4 * H), (200, 100), (4 * H, 8 * H, 12 * H)).tolist(),
        (214.9, 123.4, 70.9),
        0.05,
    ),
    # Sawka et al. 2007, Med Sci Sports Exerc 39:377-390 (formula from memory)
    ("sweat", lambda: hydration.sweat_l_per_h(70.0, 68.4, 0.8, 0.2, 1.5), 1.467, 5e-4),
    # OWN
    ("fluid at 1.47", lambda: hydration.fluid_to_plan_ml_per_h(1.47), 750.0, 1e-6),
    ("fluid at 0.6", lambda: hydration.fluid_to_plan_ml_per_h(0.6), 420.0, 1e-6),
    ("fluid at 0.3", lambda: hydration.fluid_to_plan_ml_per_h(0.3), 300.0, 1e-6),
    ("fluid at 0.2", lambda: hydration.fluid_to_plan_ml_per_h(0.2), 200.0, 1e-6),
    # Hoffman et al. 2013, Med Sci Sports Exerc 45:784-791
    ("70 to 69.0", lambda: hydration.mass_change_percent(70, 69.0), -1.43, 0.005),
    ("70 to 70.5", lambda: hydration.mass_change_percent(70, 70.5), 0.71, 0.005),
    ("70 to 66", lambda: hydration.mass_change_percent(70, 66), -5.71, 0.005),
    # Molar mass; Tiller et al. 2019, J Int Soc Sports Nutr 16:50
    ("35 mmol/L", lambda: hydration.sodium_mg_per_l(35), 804.7, 0.06),
    ("575 mg/L", lambda: fuelling.sodium_mmol_per_l(575), 25.0, 0.05),
    # Peronnet & Massicotte 1991, Can J Sport Sci 16:23-29 (from memory)
    ("VO2 2.5, RER 0.88", lambda: glycogen.carb_from_gases(2.5, 2.2), (2.022, 0.495), 6e-4),
    # Table of Zuntz and Lusk as printed
    ("RQ 0.76", lambda: glycogen.kcal_per_litre(0.76)[0], 4.751, 5e-4),
    ("fat at 0.76", lambda: 100 - 100 * glycogen.kcal_per_litre(0.76)[1], 80.8, 0.05),
    # OWN line through Romijn et al. 1993, Am J Physiol 265:E380-E391 (from memory)
    ("f(0.45)", lambda: glycogen.carb_share(0.45), 0.310, 5e-4),
    ("f(0.75)", lambda: glycogen.carb_share(0.75), 0.635, 5e-4),
    # OWN, tau of 30 min
    ("absorbing at 60 min", lambda: glycogen.absorbed_rate_share(60), 0.865, 5e-4),
    ("absorbed of 60 g/h", lambda: glycogen.absorbed_g(60, 60), 34.1, 0.05),
    # Mountjoy et al. 2023, Br J Sports Med 57:1073-1097
    ("energy left", lambda: fuelling.energy_left_kcal_per_kg(2600, 800, 55), 32.7, 0.05),
)


@pytest.mark.parametrize(
    ("value", "expected", "within"), [r[1:] for r in ROWS], ids=[r[0] for r in ROWS]
)
def test_value(value, expected, within):
    assert value() == pytest.approx(expected, abs=within)
