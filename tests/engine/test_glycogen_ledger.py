"""The glycogen ledger of a race: worked run, where the legs are empty, what is said of it."""

from datetime import UTC, datetime

import pytest
from msgspec.structs import replace

from ultraplanner_gui.engine.glycogen import (
    absorbed_cap_g_per_h,
    glycogen_ledger,
    left_g,
)
from ultraplanner_gui.engine.pacing import pace_for_finish
from ultraplanner_gui.engine.sections import section_figures
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.fuel import Food, FuelItem, FuelPlan, Sugars, Tank
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner

H = 3600.0
MIX = Food("mix", "Mix", "1", 40.0, 20.0, sugars=Sugars.MIXED)
TANK = Tank(vo2max=50.0, leg_share=0.214, legs_g_per_kg=20.0, liver_g=90.0)


@pytest.fixture(scope="module")
def race(profile_of, course_of):
    """40 km on the level in four hours."""
    profile, course = profile_of(range(0, 40_001, 100)), course_of(40_000.0)
    plan = pace_for_finish(profile, 4 * H, Runner(), (), "even")
    when = Race("R", datetime(2027, 6, 19, 6, tzinfo=UTC), 4 * H)
    return profile, plan, section_figures(course, when, profile, plan, plan)


def _every_20_min(race, g_per_h, tank=TANK, kg=70.0):
    servings = g_per_h / 60.0
    items = tuple(
        FuelItem(f"i{k}", "mix", t * 60.0, servings) for k, t in enumerate(range(30, 240, 20))
    )
    fuel = FuelPlan(foods=(MIX,), items=items if g_per_h else (), tank=tank)
    return glycogen_ledger(fuel, *race, kg)


# Own model: 10 km/h on the level, 70 kg, VO2max 50, as summed by hand for four hours.
@pytest.mark.parametrize(("g_per_h", "legs", "liver"), [(0, 21.4, 0.0), (60, 163.8, 44.7)])
def test_worked_run_through_the_whole_engine(race, g_per_h, legs, liver):
    ledger = _every_20_min(race, g_per_h)
    assert ledger.usual.legs_g[-1] == pytest.approx(legs, abs=0.3)
    assert ledger.usual.liver_g[-1] == pytest.approx(liver, abs=0.3)
    assert ledger.intensity == pytest.approx([10_000 / 60 / 5 / 50 * 0.2 * 5], rel=0.01)


def test_faster_burning_is_the_lower_edge(race):
    ledger = _every_20_min(race, 40)
    assert (left_g(ledger.fast) <= left_g(ledger.usual) + 1e-9).all()
    low, high = ledger.band_at(2 * H)
    assert 0.0 <= low < high < ledger.start_g


def test_empty_legs_are_said_with_their_place(race):
    ledger = _every_20_min(race, 0, replace(TANK, legs_g_per_kg=10.0))
    assert 0.0 < ledger.empty_m < 40_000.0
    check = ledger.checks[0]
    assert check.state is State.BREAKS
    assert check.text.args[0].value == ledger.empty_m


def test_too_much_for_the_pace_is_said(race):
    ledger = _every_20_min(race, 120)
    assert any(c.rule == "gut load" for c in ledger.checks)
    assert not any(c.rule == "gut load" for c in _every_20_min(race, 40).checks)


def test_unknown_vo2max_takes_the_effort_chosen(race):
    assert set(_every_20_min(race, 40, replace(TANK, vo2max=None)).intensity) == {0.5}


# Jeukendrup 2014: 60 g/h of one kind, 90 of a mixture of 2:1.
def test_ceiling_by_the_kind_of_sugar():
    one = Food("one", "One", "1", 40.0, 20.0)
    item = FuelItem("i", "mix", 0.0)
    assert absorbed_cap_g_per_h(FuelPlan(foods=(MIX,), items=(item,))) == pytest.approx(90.0)
    other = replace(item, food="one")
    assert absorbed_cap_g_per_h(FuelPlan(foods=(one,), items=(other,))) == pytest.approx(60.0)
