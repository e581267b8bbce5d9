"""The food table that travels with the program, and tables of one's own."""

import csv
from pathlib import Path

import pytest

from ultraplanner_gui.exchange.foods_in import read_foods
from ultraplanner_gui.plan.fuel import Shape, Sugars
from ultraplanner_gui.plan.message import PlanError

TABLE = Path(__file__).parents[2] / "resources" / "foods.csv"
FOODS = read_foods(TABLE)
BY_KEY = {food.key: food for food in FOODS}


def _rows():
    with TABLE.open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def test_every_line_is_a_food():
    assert len(FOODS) == len(_rows()) > 30
    assert len(BY_KEY) == len(FOODS)


# The Atwater factors 4, 4 and 9 kcal/g (Merrill & Watt 1973, USDA Agriculture Handbook 74), on
# carbohydrate without fibre.
@pytest.mark.parametrize(
    "row",
    [r for r in _rows() if r["key"] not in ("coffee", "tea") and r["shape"] != "salt"],
    ids=lambda row: row["key"],
)
def test_energy_follows_from_what_is_in_it(row):
    energy = 4 * float(row["carb_g"]) + 4 * float(row["protein_g"]) + 9 * float(row["fat_g"])
    assert energy == pytest.approx(float(row["energy_kcal"]), rel=0.12)


# USDA National Nutrient Database for Standard Reference, by NDB number, net of fibre.
@pytest.mark.parametrize(
    ("key", "carb_g", "sodium_mg", "kcal"),
    [
        ("banana", 23.9, 1, 105),
        ("dates-medjool", 16.4, 0, 66),
        ("potato-salted", 22.5, 301, 108),
        ("rice", 21.9, 1, 103),
        ("pretzels", 21.7, 326, 109),
        ("broth-beef", 0.1, 558, 10),
        ("salt", 0.0, 388, 0),
    ],
)
def test_published_figures(key, carb_g, sodium_mg, kcal):
    food = BY_KEY[key]
    assert (food.carb_g, food.sodium_mg, food.energy_kcal) == (carb_g, sodium_mg, kcal)
    assert food.mark == "published"
    assert food.source.startswith("USDA SR ")


def test_what_is_not_published_says_so():
    assert {food.mark for food in FOODS} == {"published", "from memory"}
    assert {food.mark for food in FOODS if "gel" in food.key} == {"from memory"}
    caffeinated = [f for f in FOODS if f.caffeine_mg and f.mark == "published"]
    assert caffeinated
    assert all("caffeine from memory" in food.source for food in caffeinated)


# Salt is 39.3 % sodium by mass (22.99 / 58.44 g/mol).
def test_salt_is_two_fifths_sodium():
    assert BY_KEY["salt"].sodium_mg == pytest.approx(1000 * 22.99 / 58.44, rel=0.02)


def test_no_food_weighs_less_than_what_is_in_it():
    for food in FOODS:
        # The table has water in whole per cent of the weight.
        slack_g = 0.5 + 0.005 * food.weight_g
        assert food.carb_g + food.sodium_mg / 1000 + food.fluid_ml <= food.weight_g + slack_g


def test_a_table_of_text_with_the_needed_columns_alone():
    (food,) = read_foods("key,name,serving,weight_g,carb_g,colour\nbar,Bar, 1 bar ,40,28,red\n")
    assert (food.name, food.serving, food.carb_g) == ("Bar", "1 bar", 28)
    assert (food.shape, food.sugars, food.caffeine_mg) == (Shape.SOLID, Sugars.SINGLE, 0)


def test_a_spreadsheets_byte_order_mark_is_passed_over(tmp_path):
    path = tmp_path / "foods.csv"
    path.write_text("key,name,serving,weight_g,carb_g\nbar,Bar,1,40,28\n", encoding="utf-8-sig")
    assert read_foods(path)[0].key == "bar"


HEAD = "key,name,serving,weight_g,carb_g,shape\n"


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("key,name\n", "serving"),
        (HEAD + "a,A,1,40,x,gel\n", "Line 2"),
        (HEAD + "a,A,1,40,nan,gel\n", "carb_g"),
        (HEAD + "a,A,1,-4,20,gel\n", "weight_g"),
        (HEAD + "a,A,1,40,20,brick\n", "shape"),
        (HEAD + "a,,1,40,20,gel\n", "name"),
        (HEAD + "a,A,1,40,20,gel\na,B,1,40,20,gel\n", "Line 3"),
    ],
)
def test_a_bad_table_names_the_place(text, says):
    with pytest.raises(PlanError, match=says) as caught:
        read_foods(text)
    assert len(str(caught.value)) <= 200
