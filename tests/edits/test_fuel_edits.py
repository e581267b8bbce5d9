from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from tests.edits.made import DRINK, FUEL, GEL, PROJECT
from ultraplanner_gui.edits.fuel import (
    AddItem,
    ChangeFood,
    ChangeItem,
    MoveItem,
    PlaceItems,
    RemoveFood,
    RemoveItem,
    SetFuelRates,
)
from ultraplanner_gui.edits.fuel_habits import SetStationFoods, SetSweatTests
from ultraplanner_gui.plan.fuel import FuelItem, SweatTest
from ultraplanner_gui.plan.message import PlanError


def fuel_after(*edits):
    project = PROJECT
    for edit in edits:
        project = edit.apply(project)
    return project.fuel


@given(st.sampled_from([i.key for i in FUEL.items]), st.floats(0.0, 240 * 3600.0))
def test_moved_item_stands_in_order_of_time(key, at_s):
    fuel = fuel_after(MoveItem(key, at_s))

    times = [i.at_s for i in fuel.items]
    assert times == sorted(times)
    assert fuel.item(key) == replace(FUEL.item(key), at_s=at_s)
    assert fuel.foods is FUEL.foods


@given(st.lists(st.floats(0.0, 80_000.0), max_size=8))
def test_added_items_stand_in_order_under_keys_of_their_own(times):
    items = fuel_after(*(AddItem("gel", at_s) for at_s in times)).items

    assert [i.at_s for i in items] == sorted([*times, *(i.at_s for i in FUEL.items)])
    assert len({i.key for i in items}) == len(items)


def test_added_and_removed_item_leaves_the_plan_as_it_was():
    assert fuel_after(AddItem("gel", 60.0), RemoveItem("item-4")) == FUEL


def test_removed_food_takes_its_items_along():
    fuel = fuel_after(RemoveFood("gel"))

    assert fuel.foods == (DRINK,)
    assert [i.key for i in fuel.items] == ["item-2"]


def test_placing_by_the_clock_replaces_what_was_there():
    late, early = FuelItem("b", "gel", 900.0), FuelItem("a", "gel", 300.0)

    assert fuel_after(PlaceItems((late, early))).items == (early, late)


def test_item_of_an_unknown_food_is_refused():
    item = FuelItem("item", "rice", 60.0)

    for edit in (AddItem("rice", 60.0), ChangeItem(item), PlaceItems((item,)), RemoveFood("rice")):
        with pytest.raises(PlanError, match="no food rice"):
            edit.apply(PROJECT)


def test_unknown_item_is_refused():
    for edit in (MoveItem("x", 1.0), RemoveItem("x"), ChangeItem(FuelItem("x", "gel", 1.0))):
        with pytest.raises(PlanError, match="no longer in the fuel plan"):
            edit.apply(PROJECT)


@pytest.mark.parametrize("servings", [0.0, 50.1])
def test_servings_lie_above_none_and_at_most_fifty(servings):
    with pytest.raises(PlanError, match="Servings"):
        AddItem("gel", 60.0, servings).apply(PROJECT)


def test_two_items_of_one_key_are_refused():
    twice = FuelItem("a", "gel", 300.0)

    with pytest.raises(PlanError):
        PlaceItems((twice, replace(twice, at_s=600.0))).apply(PROJECT)


def test_changed_food_keeps_its_place_and_a_new_one_comes_last():
    changed, new = replace(GEL, carb_g=30.0), replace(GEL, key="bar", name="Bar")

    assert fuel_after(ChangeFood(changed), ChangeFood(new)).foods == (changed, DRINK, new)


def test_food_needs_a_name():
    with pytest.raises(PlanError, match="needs a name"):
        ChangeFood(replace(GEL, name=" ")).apply(PROJECT)


@pytest.mark.parametrize(
    ("field", "highest"),
    [("carb_g_per_h", 120.0), ("fluid_ml_per_h", 1000.0), ("sodium_mg_per_h", 2000.0)],
)
def test_rates_reach_their_highest_value_and_no_further(field, highest):
    rates = SetFuelRates(60.0, 500.0, 400.0, 1800.0, 1200.0)

    assert getattr(fuel_after(replace(rates, **{field: highest})), field) == highest
    with pytest.raises(PlanError):
        replace(rates, **{field: highest + 1.0}).apply(PROJECT)


def test_more_than_a_litre_an_hour_needs_a_sweat_test_that_shows_it():
    rates = SetFuelRates(60.0, 1_200.0, 500.0, 900.0, 1_500.0)
    with pytest.raises(PlanError):
        rates.apply(PROJECT)
    tested = SetSweatTests((SweatTest(date(2027, 5, 1), 70.0, 68.4, 0.8, 0.2, 1.5),)).apply(PROJECT)
    assert rates.apply(tested).fuel.fluid_ml_per_h == 1_200.0


def test_impossible_sweat_is_refused_as_a_slip():
    with pytest.raises(PlanError):
        SetSweatTests((SweatTest(date(2027, 5, 1), 70.0, 60.0, 0.8, 0.2, 1.5),)).apply(PROJECT)


def test_dragging_an_item_that_keeps_its_time_gives_it_no_place():
    after = MoveItem("item", 4_000.0, at_m=9_000.0).apply(PROJECT)
    assert after.fuel.item("item").at_m is None


def test_food_removed_is_off_every_table():
    stocked = SetStationFoods("ford", ("gel", "drink")).apply(PROJECT)
    after = RemoveFood("gel").apply(stocked)
    assert after.course.station("ford").foods == ("drink",)
