"""Bags, tables, bottles and the shopping list of an invented race."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from ultraplanner_gui.engine.fuel_bags import Source, bag_plan
from ultraplanner_gui.engine.pacing import Stop, pace_for_finish
from ultraplanner_gui.engine.sections import section_figures
from ultraplanner_gui.plan.course import AidStation, Kit, Offer
from ultraplanner_gui.plan.fuel import Carrying, Food, FuelItem, FuelPlan, Shape
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner

H = 3600.0
GEL = Food("gel", "Gel", "1", 40.0, 25.0, shape=Shape.GEL, energy_kcal=100.0, per_pack=4.0)
MIX = Food("mix", "Drink", "500 mL", 500.0, 30.0, 250.0, 500.0, 0.0, 120.0, shape=Shape.DRINK)
WATER = Food("water", "Water", "500 mL", 500.0, 0.0, fluid_ml=500.0, shape=Shape.DRINK)
SOUP = Food("soup", "Soup", "1 cup", 150.0, 5.0, 600.0, 150.0, is_carried=False, energy_kcal=30.0)
FOODS = (GEL, MIX, WATER, SOUP)
TAP = (Offer.WATER,)
STATIONS = (
    AidStation("ford", "Ford", 20_000.0, stop_s=300.0, offers=TAP, foods=("soup",)),
    AidStation(
        *("barn", "Barn", 40_000.0, None, 600.0, (Offer.WATER, Offer.DROP_BAG)), kit=(Kit.SHOES,)
    ),
    AidStation("hut", "Hut", 60_000.0, offers=(Offer.FOOD,), foods=("gel",)),
)


@pytest.fixture(scope="module")
def race(profile_of, course_of):
    """A level race of ten hours with three stations."""
    from datetime import UTC, datetime

    profile, course = profile_of(range(0, 80_001, 100)), course_of(80_000.0, STATIONS)
    stops = tuple(Stop(s.at_m, s.stop_s) for s in STATIONS if s.stop_s)
    plan = pace_for_finish(profile, 10 * H, Runner(), stops, "even")
    when = Race("R", datetime(2027, 6, 19, 6, tzinfo=UTC), 10 * H)
    return course, section_figures(course, when, profile, plan, plan)


def _plan(*items, **more):
    placed = tuple(FuelItem(f"i{n}", food, at_s, k) for n, (food, at_s, k) in enumerate(items))
    return FuelPlan(foods=FOODS, items=placed, **more)


def _of(plan, source):
    return {p.station: dict(p.servings) for p in plan.packs if p.source is source}


eaten = st.lists(
    st.tuples(
        st.sampled_from([f.key for f in FOODS]),
        st.floats(0.0, 10 * H),
        st.sampled_from((0.5, 1, 2)),
    ),
    max_size=25,
)


@given(eaten)
def test_bags_and_tables_are_the_timeline(race, items):
    fuel = _plan(*sorted(items, key=lambda i: i[1]))
    plan = bag_plan(fuel, *race, 10 * H)

    packed, taken = {}, {}
    for pack in plan.packs:
        for food, n in pack.servings:
            packed[food] = packed.get(food, 0.0) + n
    for item in fuel.items:
        taken[item.food] = taken.get(item.food, 0.0) + item.servings
    assert packed == pytest.approx(taken)


@given(eaten)
def test_what_is_bought_covers_what_is_packed(race, items):
    plan = bag_plan(_plan(*sorted(items, key=lambda i: i[1])), *race, 10 * H)
    for row in plan.shopping:
        assert row.packs * row.food.per_pack >= row.servings
        assert row.left >= -1e-9


def test_food_comes_from_the_last_bag(race):
    plan = bag_plan(_plan(("gel", H, 1), ("gel", 6 * H, 2)), *race, 10 * H)
    assert _of(plan, Source.START) == {None: {"gel": 1}}
    assert _of(plan, Source.BAG) == {"barn": {"gel": 2}}


def test_food_of_the_table_is_eaten_there_or_taken_along(race):
    course, sections = race
    fuel = _plan(("soup", sections[0].arrive_s, 1), ("gel", sections[2].leave_s + 600, 1))
    plan = bag_plan(fuel, course, sections, 10 * H)
    assert _of(plan, Source.TABLE) == {"ford": {"soup": 1}, "hut": {"gel": 1}}
    assert plan.astray == ()


def test_soup_where_there_is_no_table_is_astray(race):
    plan = bag_plan(_plan(("soup", 1000.0, 1)), *race, 10 * H)
    assert [i.food for i in plan.astray] == ["soup"]


# Own rule, worked example: 2.4 h at 60 g/h with 15 % spare are 165.6 g, 7 gels of 25 g.
def test_spare_makes_six_gels_seven(race):
    gels = [("gel", k * 1200.0, 1) for k in range(1, 7)]
    plan = bag_plan(_plan(*gels, carb_g_per_h=60.0), *race, 2.4 * H)
    start = next(p for p in plan.packs if p.source is Source.START)
    assert start.whole() == (("gel", 7.0),)
    assert start.weight_g == 7 * 40


def test_powder_weighs_what_powder_weighs(race):
    plan = bag_plan(_plan(("mix", H, 1)), *race, 10 * H)
    start = next(p for p in plan.packs if p.source is Source.START)
    assert start.weight_g == pytest.approx(2 * 32.0)


def test_bottles_run_short_on_a_dry_stretch(race):
    sips = [("water", t * H, 1) for t in (5.6, 6.2, 6.8, 7.4, 8.0)]
    plan = bag_plan(_plan(*sips, carrying=Carrying(2, 500.0, 0.0)), *race, 10 * H)
    barn = next(c for c in plan.carries if c.station == "barn")
    assert (barn.fluid_ml, barn.bottles, barn.short_ml) == (2500.0, 5, 1500.0)


def test_kit_of_the_stop_stands_in_the_bag(race):
    plan = bag_plan(_plan(), *race, 10 * H)
    assert [(p.station, p.kit) for p in plan.packs] == [("barn", (Kit.SHOES,))]


def test_packs_are_bought_whole(race):
    plan = bag_plan(_plan(*[("gel", k * 1200.0, 1) for k in range(1, 6)]), *race, 2 * H)
    row = plan.shopping[0]
    assert (row.packs, row.servings) == (2, 6.0)
    assert row.left == 3.0


def test_astray_food_is_still_packed(race):
    fuel = replace(_plan(("soup", 1000.0, 1)), carb_g_per_h=0.0)
    assert _of(bag_plan(fuel, *race, 10 * H), Source.START) == {None: {"soup": 1}}
