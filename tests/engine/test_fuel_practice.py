"""Practice food for a session, and what training shows of the gut."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.engine.fuel_practice import (
    portions_carb_g,
    practice_portions,
    tolerated_foods,
    tolerated_rate,
)
from ultraplanner_gui.plan.block import Block, Done, Gut, Kind, Session
from ultraplanner_gui.plan.fuel import Food, FuelPlan, Portion, Shape, Tolerance

GEL = Food("gel", "Gel", "1", 40.0, 25.0, energy_kcal=100.0, shape=Shape.GEL)
DRINK = Food("mix", "Mix", "1", 500.0, 30.0, 250.0, 500.0, 0.0, 120.0, shape=Shape.DRINK)
AVOIDED = Food("nut", "Nuts", "1", 30.0, 10.0, tolerance=Tolerance.AVOID)
FUEL = FuelPlan(foods=(GEL, DRINK, AVOIDED))
DAY = date(2027, 3, 1)


def _run(n, g_per_h, gut=Gut.FINE, hours=2.0, foods=()):
    done = Done(20_000.0, hours * 3600, carb_g=g_per_h * hours, gut=gut, foods=foods)
    return Session(f"s{n}", DAY + timedelta(days=n), Kind.LONG, 20_000.0, hours * 3600, done=done)


def _asked(g_per_h, hours):
    return Session("s", DAY, Kind.LONG, 1.0, hours * 3600, carb_g_per_h=g_per_h)


@given(st.floats(20.0, 90.0), st.floats(1.0, 7.0))
def test_portions_come_near_what_is_to_be_practised(g_per_h, hours):
    portions = practice_portions(FUEL, _asked(g_per_h, hours))
    got = portions_carb_g(FUEL.foods, portions)
    assert got == pytest.approx(g_per_h * hours, abs=GEL.carb_g / 2 + 1e-6)
    assert "nut" not in {p.food for p in portions}


def test_nothing_to_practise_is_no_food():
    assert practice_portions(FUEL, _asked(0.0, 2.0)) == ()


def test_one_good_run_is_not_enough():
    assert tolerated_rate(Block((_run(1, 60.0),))) is None


def test_two_good_runs_give_the_lower_of_their_rates():
    block = Block((_run(1, 40.0), _run(8, 62.0), _run(15, 58.0)))
    assert tolerated_rate(block).g_per_h == pytest.approx(58.0)


def test_a_bad_gut_takes_back_what_was_at_that_rate_or_above():
    block = Block((_run(1, 40.0), _run(2, 42.0), _run(8, 60.0), _run(9, 60.0, Gut.BAD)))
    assert tolerated_rate(block).g_per_h == pytest.approx(40.0)


def test_short_runs_say_nothing():
    assert tolerated_rate(Block((_run(1, 60.0, hours=0.5), _run(2, 60.0, hours=0.5)))) is None


def test_food_that_sat_well_twice_is_tolerated():
    gel = (Portion("gel", 3.0),)
    block = Block((_run(1, 40.0, foods=gel), _run(2, 40.0, Gut.BAD, foods=gel)))
    assert tolerated_foods(block) == {}
    block = Block((*block.sessions, _run(3, 40.0, foods=gel)))
    assert tolerated_foods(block) == {"gel": Tolerance.TOLERATED}
