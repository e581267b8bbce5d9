"""Practice food typed, proposed and taken over as eaten."""

import pytest

from tests.window.table_desk import FOODS
from ultraplanner_gui.plan.fuel import FuelPlan, Portion
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.window.table_practice import portions_text, read_portions
from ultraplanner_gui.wording.words import Words

FUEL = FuelPlan(foods=FOODS)
TWO = (Portion("gel", 2.0), Portion("water", 0.5))


def test_portions_read_back_as_they_are_written():
    assert read_portions(FUEL, portions_text(FUEL, TWO, Words()), Words()) == TWO


@pytest.mark.parametrize(
    "text", ["2 × Gel; 0.5 × Water", "2 x Gel; 0.5 x Water", "2*Gel;0.5*Water"]
)
def test_portions_in_the_ways_people_type(text):
    assert read_portions(FUEL, text, Words()) == TWO


def test_food_alone_is_one_serving():
    assert read_portions(FUEL, "Gel", Words()) == (Portion("gel", 1.0),)


def test_unknown_food_is_said():
    with pytest.raises(PlanError):
        read_portions(FUEL, "2 × Unicorn", Words())
