"""Stores along a run: worked runs of the model, and what must hold whatever the run.

The published figures named are those the model is built on; the worked runs are our own sums.
"""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.science import glycogen as g

KG, VO2MAX = 70.0, 50.0
#: km, minutes, terrain of each section.
MIXED = ((12, 84, 1.0), (10, 90, 1.25), (14, 114, 1.05), (14, 126, 1.0))
FAST = ((10, 60, 1.0),) * 4
SLOW = ((101.4, 1182, 1.35),)


def burns(sections, body_kg=KG, vo2max=VO2MAX):
    burn, energy = [], []
    for km, minutes, terrain in sections:
        kcal = g.run_kcal(body_kg, km, terrain)
        share = g.carb_share(g.oxygen_ml_per_kg_min(kcal, minutes, body_kg) / vo2max)
        burn += [kcal * share / g.KCAL_PER_G_GLYCOGEN / minutes] * minutes
        energy += [kcal / g.KCAL_PER_G_GLYCOGEN / minutes] * minutes
    return burn, energy


def run(sections, g_per_h, liver=90.0, legs=299.6, cap=90.0):
    burn, energy = burns(sections)
    eaten = [0.0] * len(burn)
    for minute in range(30, len(burn), 20):
        eaten[minute] = g_per_h * 20 / 60
    return g.run_stores(liver, legs, burn, energy, eaten, cap), sum(eaten)


def ends(sections):
    return np.cumsum([minutes for _, minutes, _ in sections])


# Romijn et al. 1993, Am J Physiol 265:E380-E391, from memory; the lines between are our own.
@pytest.mark.parametrize(
    ("intensity", "share"),
    [(0.4, 0.258), (0.45, 0.310), (0.5, 0.363), (0.6, 0.467), (0.7, 0.577), (0.75, 0.635)],
)
def test_share_of_carbohydrate(intensity, share):
    assert g.carb_share(intensity) == pytest.approx(share, abs=6e-4)


# The table of Zuntz and Lusk as nutrition texts print it: 4.751 kcal at 0.76, almost 81 % fat.
def test_energy_of_a_litre_of_oxygen():
    kcal, share = g.kcal_per_litre(0.76)
    assert kcal == pytest.approx(4.751, abs=5e-4)
    assert 100 * (1 - share) == pytest.approx(80.8, abs=0.05)


# Peronnet & Massicotte 1991, Can J Sport Sci 16:23-29, coefficients from memory.
def test_carbohydrate_and_fat_from_gases():
    assert g.carb_from_gases(2.5, 2.5 * 0.88) == pytest.approx((2.022, 0.495), abs=6e-4)


# Rapoport 2010, PLoS Comput Biol 6:e1000960, as reviewed: about 2950 kcal for a marathon.
def test_energy_of_a_marathon():
    assert g.run_kcal(70, 42.195) == pytest.approx(2953.65)


# Regression of our own rebuild; Science News, October 2010, printed 3:10 for a VO2max of 60.
def test_fastest_marathon_on_the_stores():
    reserve = g.reserve_kcal_per_kg(0.214, 80, 361)
    intensity = g.most_intensity(reserve, 42.195)
    km_per_h = intensity * 60 * 60 / 200
    assert reserve == pytest.approx(26.145)
    assert intensity == pytest.approx(0.737, abs=5e-4)
    assert 42.195 / km_per_h * 3600 == pytest.approx(3 * 3600 + 10 * 60 + 56, abs=1)


@pytest.mark.parametrize(
    ("intensity", "km"),
    [(0.6, (47.0, 55.9, 85.2)), (0.7, (38.1, 45.3, 69.0)), (0.85, (29.3, 34.9, 53.1))],
)
def test_distance_to_empty(intensity, km):
    reserves = (22.0, 26.145, 39.84)
    assert [g.km_to_empty(r, intensity) for r in reserves] == pytest.approx(list(km), abs=0.15)


# OWN model, 95 % at 90 minutes as in Jeukendrup & Jentjens 2000, Sports Med 29:407-424.
@pytest.mark.parametrize(
    ("minutes", "share"),
    [(15, 0.393), (30, 0.632), (45, 0.777), (60, 0.865), (75, 0.918), (90, 0.950), (120, 0.982)],
)
def test_absorption_climbs_for_ninety_minutes(minutes, share):
    assert g.absorbed_rate_share(minutes) == pytest.approx(share, abs=6e-4)


@pytest.mark.parametrize(("minutes", "grams"), [(30, 11.0), (60, 34.1), (90, 61.5), (120, 90.5)])
def test_absorbed_of_sixty_an_hour(minutes, grams):
    assert g.absorbed_g(60, minutes) == pytest.approx(grams, abs=0.05)


@pytest.mark.parametrize(("minutes", "grams"), [(20, 12.2), (30, 15.8), (60, 21.6), (90, 23.8)])
def test_absorbed_of_one_gel(minutes, grams):
    assert g.absorbed_of_dose_g(25, minutes) == pytest.approx(grams, abs=0.05)


def test_burn_without_eating():
    burn, _ = burns(MIXED)
    starts = [0, *ends(MIXED)[:-1]]
    by_section = [sum(burn[a:b]) for a, b in zip(starts, ends(MIXED), strict=True)]
    assert by_section == pytest.approx([89.6, 89.8, 95.1, 72.7], abs=0.06)


@pytest.mark.parametrize(
    ("g_per_h", "after", "eaten", "burnt", "for_fat"),
    [
        (0, ((67.6, 232.4, 0), (45.1, 165.0, 0), (21.4, 93.7, 0), (3.2, 39.1, 0)), 0, 347.3, 0),
        (
            40,
            ((73.9, 251.4, 14.6), (65.5, 226.0, 23.5), (58.5, 205.0, 14.7), (53.9, 191.4, 23.6)),
            266.7,
            144.2,
            40.0,
        ),
        (
            60,
            ((76.4, 258.7, 22.0), (70.5, 241.2, 35.3), (64.6, 223.3, 22.1), (60.0, 209.7, 35.5)),
            400.0,
            119.9,
            137.1,
        ),
        (
            80,
            ((77.6, 262.3, 29.3), (72.0, 245.5, 49.0), (66.0, 227.6, 31.2), (65.7, 214.0, 49.9)),
            533.3,
            114.1,
            246.0,
        ),
    ],
)
def test_worked_run(g_per_h, after, eaten, burnt, for_fat):
    stores, swallowed = run(MIXED, g_per_h)
    columns = (stores.liver_g, stores.legs_g, stores.gut_g)
    rows = [tuple(float(c[k]) for c in columns) for k in ends(MIXED)]
    for row, expected in zip(rows, after, strict=True):
        assert row == pytest.approx(expected, abs=0.1)
    assert swallowed == pytest.approx(eaten, abs=0.05)
    assert stores.burnt_g[-1] == pytest.approx(burnt, abs=0.1)
    assert stores.eaten_burnt_g[-1] - stores.spared_g[-1] == pytest.approx(for_fat, abs=0.1)


@pytest.mark.parametrize(
    ("g_per_h", "liver", "legs", "gut"),
    [(40, 38.0, 143.6, 18), (80, 46.4, 146.8, 38), (100, 57.8, 146.8, 228)],
)
def test_long_slow_run(g_per_h, liver, legs, gut):
    stores, _ = run(SLOW, g_per_h)
    assert stores.liver_g[-1] == pytest.approx(liver, abs=0.1)
    assert stores.legs_g[-1] == pytest.approx(legs, abs=0.1)
    assert stores.gut_g[-1] == pytest.approx(gut, abs=0.6)


def test_long_slow_run_without_food_says_when_it_is_empty():
    stores, _ = run(SLOW, 0)
    minute = g.first_empty(stores.legs_g)
    assert stores.legs_g[-1] == pytest.approx(-367, abs=1)
    assert stores.legs_g[int(minute)] > 0 >= stores.legs_g[int(minute) + 1]


@pytest.mark.parametrize(
    ("g_per_h", "legs", "liver"),
    [
        (0, (230.6, 161.5, 92.5, 21.4), (67.0, 44.0, 21.0, 0.0)),
        (60, (244.4, 215.1, 189.2, 163.8), (71.6, 61.8, 53.2, 44.7)),
    ],
)
def test_faster_run(g_per_h, legs, liver):
    stores, _ = run(FAST, g_per_h)
    assert stores.legs_g[ends(FAST)] == pytest.approx(np.array(legs), abs=0.1)
    assert stores.liver_g[ends(FAST)] == pytest.approx(np.array(liver), abs=0.1)


rates = st.floats(0.0, 120.0)
hours = st.lists(
    st.tuples(st.floats(2.0, 14.0), st.integers(30, 90), st.floats(0.8, 1.6)),
    min_size=1,
    max_size=5,
)


@given(hours, rates, st.sampled_from((60.0, 90.0, 105.0)))
def test_mass_is_kept(sections, g_per_h, cap):
    stores, eaten = run(sections, g_per_h, cap=cap)
    left = stores.liver_g[-1] + stores.legs_g[-1] + stores.gut_g[-1]
    assert left + stores.burnt_g[-1] + stores.eaten_burnt_g[-1] == pytest.approx(389.6 + eaten)


@given(hours, rates, st.floats(0.0, 60.0))
def test_more_intake_never_lowers_the_stores(sections, g_per_h, more):
    less, _ = run(sections, g_per_h)
    fed, _ = run(sections, g_per_h + more)
    assert (fed.reserve_g - less.reserve_g >= -1e-6).all()


@given(hours, rates)
def test_gut_and_liver_stay_in_their_bounds(sections, g_per_h):
    stores, _ = run(sections, g_per_h)
    assert (stores.gut_g >= -1e-9).all()
    assert (stores.liver_g >= -1e-9).all()
    assert (stores.liver_g <= 90.0 + 1e-9).all()


@given(hours)
def test_without_food_the_fall_is_straight_within_a_section(sections):
    stores, _ = run(sections, 0.0)
    for start, end in zip([0, *ends(sections)[:-1]], ends(sections), strict=True):
        assert np.ptp(np.diff(stores.reserve_g[start : end + 1])) == pytest.approx(0.0, abs=1e-9)


def minute_by_minute(liver_g, burn, energy, eaten, most):
    """The words of `run_stores`, one after the other."""
    liver, gut, told = liver_g, 0.0, []
    for needed, whole, swallowed in zip(burn, energy, eaten, strict=True):
        gut += swallowed
        absorbed = min(gut / g.TAU_MIN, most)
        burnt = min(absorbed, g.MOST_EATEN_SHARE * whole)
        refilled = min(absorbed - burnt, liver_g - liver)
        gut -= burnt + refilled
        glycogen = needed - min(burnt, g.MOST_SPARED_SHARE * needed)
        liver = max(liver + refilled - g.LIVER_SHARE * glycogen, 0.0)
        told.append((liver, gut, burnt))
    return np.array(told).T


# Eating from the first minute on, and minutes with little to burn: the liver is full then.
@given(
    st.lists(st.tuples(st.floats(0.0, 3.0), st.floats(0.0, 6.0), st.floats(0.0, 30.0)), min_size=1),
    st.floats(0.0, 110.0),
    st.floats(1.0, 120.0),
)
def test_stores_are_those_of_the_words(minutes, liver, cap):
    burn, energy, eaten = zip(*minutes, strict=True)
    told = minute_by_minute(liver, burn, energy, eaten, cap / 60.0)
    stores = g.run_stores(liver, 300.0, burn, energy, eaten, cap)
    assert stores.liver_g[1:] == pytest.approx(told[0], abs=1e-9)
    assert stores.gut_g[1:] == pytest.approx(told[1], abs=1e-9)
    assert np.diff(stores.eaten_burnt_g) == pytest.approx(told[2], abs=1e-9)


def test_what_is_empty_from_the_start_is_empty_at_once():
    assert g.first_empty(np.array([0.0, -1.0])) == 0.0
    assert g.first_empty(np.array([2.0, 1.0])) is None
