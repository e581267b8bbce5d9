"""Filling to target: bands, caps, textures and reasons."""

from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from ultraplanner_gui.engine import fuel_fill
from ultraplanner_gui.engine.fuel_fill import CARB_BAND, FLUID_BAND, SODIUM_BAND, fill_to_target
from ultraplanner_gui.engine.fuel_fill_cells import fill_cells
from ultraplanner_gui.engine.fuel_fill_why import legs
from ultraplanner_gui.engine.fuel_kit import Taste, proposed_foods, taste_of
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.exchange.foods_in import read_foods
from ultraplanner_gui.plan.course import AidStation, Offer
from ultraplanner_gui.plan.fuel import (
    Allergen,
    Caffeine,
    CaffeineLimit,
    Carrying,
    FuelPlan,
    Tolerance,
)
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.wording.words import Words

H = 3600.0
TABLE = read_foods(Path(__file__).parents[2] / "resources" / "foods.csv")
FOODS = {f.key: f for f in TABLE}
FUEL = FuelPlan(70.0, 500.0, 450.0, foods=TABLE, carrying=Carrying(3))
STATIONS = tuple(
    AidStation(
        *(f"s{n}", f"Station {n}", 12_000.0 * n, None, 300.0, (Offer.WATER, Offer.FOOD)),
        foods=("broth-chicken", "cola", "rice", "banana"),
    )
    for n in range(1, 9)
)
KIT = (
    *("water", "drink-8", "gel-mixed", "salt-capsule", "banana", "gummies", "dates-medjool"),
    *("potato-salted", "jam-sandwich", "pretzels", "raisins", "rice", "broth-chicken", "cola"),
    "orange",
)


@pytest.fixture(autouse=True)
def unhurried(monkeypatch):
    """The brake on time is for people who wait; here it would make answers hang on the machine."""
    monkeypatch.setattr(fuel_fill, "_LIMITS", replace(fuel_fill._LIMITS, time_s=60.0))


@pytest.fixture
def race(course_of):
    """24 hours with eight stations, nine even legs."""
    course, leg_s = course_of(108_000.0, STATIONS), 24 * H / 9
    sections = []
    for n in range(9):
        arrive, leave = (n + 1) * leg_s - 300, (n + 1) * leg_s
        end = (STATIONS[n].key, STATIONS[n].name) if n < 8 else (None, "")
        sections.append(
            SectionFigures(
                *(f"k{n}", *end, n * 12_000.0, (n + 1) * 12_000.0, 0.0, 0.0, leg_s - 300),
                *(arrive, leave if n < 8 else 24 * H, arrive, (arrive, arrive)),
                *(None, None, None, False),
            )
        )
    return course, tuple(sections)


def _filled(race, fuel=FUEL, kit=KIT, body_kg=70.0):
    cells = fill_cells(fuel, *race, 24 * H, body_kg)
    return cells, fill_to_target(fuel, cells, kit)


def _sum(fuel, items, of):
    return sum(getattr(fuel.food(i.food), of) * i.servings for i in items)


def test_twenty_four_hours_eight_stations_fifteen_foods_meet_every_band(race):
    cells, fill = _filled(race)
    assert fill.reasons == ()
    assert fill.is_proven
    edges = [cells[leg[-1]].arrive_s + 301 for leg in legs(cells)][:-1]
    for n, leg in enumerate(legs(cells)):
        hours = sum(cells[c].hours for c in leg)
        begin = edges[n - 1] if n else 0.0
        end = edges[n] if n < len(edges) else 25 * H
        items = [i for i in fill.items if begin <= i.at_s < end]
        for of, asked, (low, high) in (
            ("carb_g", 70.0, CARB_BAND),
            ("fluid_ml", 500.0, FLUID_BAND),
            ("sodium_mg", 450.0, SODIUM_BAND),
        ):
            assert low * asked * 0.99 <= _sum(FUEL, items, of) / hours <= high * asked * 1.01


def test_gels_give_way_to_savoury_food(race):
    _, fill = _filled(race)
    share = []
    for begin, end in ((0, 4), (10, 24)):
        items = [i for i in fill.items if begin * H <= i.at_s < end * H]
        gels = [i for i in items if taste_of(FOODS[i.food]) is Taste.GEL]
        share.append(_sum(FUEL, gels, "carb_g") / _sum(FUEL, items, "carb_g"))
    assert share[0] > share[1]


def test_table_food_is_taken_at_its_station_and_keeps_its_place(race):
    _, fill = _filled(race)
    at_tables = [i for i in fill.items if not FOODS[i.food].is_carried]
    assert at_tables
    assert {i.at_m for i in at_tables} <= {s.at_m for s in STATIONS}


def test_without_caffeine_turned_on_there_is_none(race):
    _, fill = _filled(race, kit=(*KIT, "gel-caffeine", "coffee"))
    assert _sum(FUEL, fill.items, "caffeine_mg") == 0.0


# EFSA NDA Panel 2015, EFSA Journal 13(5):4102: 400 mg in 24 hours, or 200 mg.
@pytest.mark.parametrize(
    ("limit", "most"), [(CaffeineLimit.USUAL, 400), (CaffeineLimit.LOWER, 200)]
)
def test_caffeine_stays_below_the_limit_of_a_day(race, limit, most):
    fuel = replace(FUEL, caffeine=Caffeine(True, limit))
    _, fill = _filled(race, fuel, (*KIT, "gel-caffeine"))
    assert 0.0 < _sum(fuel, fill.items, "caffeine_mg") <= most


def test_foods_to_avoid_and_allergens_are_left_out(race):
    foods = tuple(replace(f, tolerance=Tolerance.AVOID) if f.key == "banana" else f for f in TABLE)
    fuel = replace(FUEL, foods=foods, allergens=(Allergen.GLUTEN,))
    _, fill = _filled(race, fuel)
    assert not {"banana", "pretzels", "jam-sandwich"} & {i.food for i in fill.items}


def test_bottles_too_small_are_said(race):
    fuel = replace(FUEL, carrying=Carrying(1, 250.0))
    _, fill = _filled(race, fuel, ("water", "gel-mixed", "gummies", "salt-capsule"))
    words = Words()
    assert any("bottles hold no more" in words.say(m) for m in fill.reasons)


def test_sodium_that_cannot_be_met_is_said(race):
    _, fill = _filled(race, kit=("water", "gel-mixed", "gummies"))
    words = Words()
    assert any("salt" in words.say(m) for m in fill.reasons)


def test_no_carbohydrate_at_hand_is_refused(race):
    with pytest.raises(PlanError):
        _filled(race, kit=("water", "salt-capsule"))


def test_it_can_be_stopped_between_cells(race):
    class Stopped(Exception):
        pass

    def stop():
        raise Stopped

    cells = fill_cells(FUEL, *race, 24 * H, 70.0)
    with pytest.raises(Stopped):
        fill_to_target(FUEL, cells, KIT, stop)


def test_the_same_asked_twice_is_the_same_answer(race):
    assert _filled(race)[1].items == _filled(race)[1].items


@settings(
    max_examples=6, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
@given(st.floats(30.0, 90.0), st.floats(300.0, 700.0))
def test_fluid_never_passes_what_is_safe(course_of, carb, fluid):
    course = course_of(40_000.0, STATIONS[:1])
    leg = SectionFigures(
        *("k", "s1", "S", 0.0, 12_000.0, 0.0, 0.0, 2 * H, 2 * H, 2 * H, 2 * H, (2 * H, 2 * H)),
        *(None, None, None, False),
    )
    last = replace(leg, key="e", station=None, start_m=12_000.0, end_m=40_000.0, arrive_s=6 * H)
    fuel = replace(FUEL, carb_g_per_h=carb, fluid_ml_per_h=fluid)
    cells = fill_cells(fuel, course, (leg, last), 6 * H, 70.0)
    fill = fill_to_target(fuel, cells, KIT)
    assert _sum(fuel, fill.items, "fluid_ml") <= 800.0 * 6


def test_proposed_foods_hold_water_and_what_stations_have():
    proposed = proposed_foods(FUEL, ("rice",))
    assert {"water", "rice", "salt-capsule"} <= set(proposed)
    assert "coffee" not in proposed
