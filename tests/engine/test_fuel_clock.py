"""Items that keep their time and items that keep their place when the pace changes."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.engine.fuel_clock import at_places, every, kept, on_clock
from ultraplanner_gui.engine.pacing import Stop, pace_for_finish
from ultraplanner_gui.plan.fuel import Food, FuelItem, FuelPlan, Keep
from ultraplanner_gui.plan.runner import Runner

H = 3600.0
FOODS = (Food("gel", "Gel", "1", 40.0, 25.0),)


@pytest.fixture(scope="module")
def pace(profile_of):
    profile = profile_of(range(0, 50_001, 100))
    stop = (Stop(20_000.0, 600.0),)
    return lambda hours: pace_for_finish(profile, hours * H, Runner(), stop, "even")


def _plan(*items):
    return FuelPlan(foods=FOODS, items=items)


def test_slower_pace_moves_what_keeps_its_place_and_nothing_else(pace):
    timed, placed = FuelItem("a", "gel", 2 * H), FuelItem("b", "gel", 2 * H, 1.0, 20_000.0)
    plan = on_clock(_plan(timed, placed), pace(10))
    assert plan.item("a").at_s == 2 * H
    assert plan.item("b").at_s == pytest.approx(pace(10).arrival_s(20_000.0))


def test_plan_without_places_is_the_plan_itself(pace):
    plan = _plan(FuelItem("a", "gel", 2 * H))
    assert on_clock(plan, pace(10)) is plan


def test_place_beyond_the_finish_comes_after_it(pace):
    plan = on_clock(_plan(FuelItem("a", "gel", 0.0, 1.0, 60_000.0)), pace(10))
    assert plan.items[0].at_s > 10 * H


@given(st.lists(st.floats(0.0, 10 * H), max_size=10))
def test_keeping_the_place_changes_no_time_at_this_pace(pace, times):
    items = tuple(FuelItem(f"i{n}", "gel", at_s) for n, at_s in enumerate(sorted(times)))
    placed = kept(items, Keep.PLACE, pace(10))
    back = on_clock(_plan(*placed), pace(10)).items
    stop_s = 600.0
    assert all(abs(b.at_s - i.at_s) <= stop_s + 1.0 for b, i in zip(back, items, strict=True))
    assert all(i.at_m is None for i in kept(placed, Keep.CLOCK, pace(10)))


def test_rule_by_the_clock_adds_to_what_is_there():
    plan = _plan(FuelItem("item-1", "gel", 100.0))
    items = every(plan, "gel", 0.5, (1800.0, 3000.0))
    assert [(i.at_s, i.servings) for i in items] == [(100.0, 1.0), (1800.0, 0.5), (3000.0, 0.5)]
    assert len({i.key for i in items}) == 3


def test_rule_at_stations_keeps_the_place(pace):
    items = at_places(_plan(), "gel", 1.0, (10_000.0, 20_000.0), pace(8))
    assert [i.at_m for i in items] == [10_000.0, 20_000.0]
    assert items[0].at_s == pytest.approx(pace(8).arrival_s(10_000.0))
