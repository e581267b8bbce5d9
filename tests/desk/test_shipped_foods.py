"""The foods that come with the program have a name in every language, and keep their keys."""

import csv

from PySide6.QtCore import QTranslator

from ultraplanner_gui.desk import resources
from ultraplanner_gui.desk.shipped_foods import TEXTS, shipped_foods


def _rows():
    with resources.path("foods.csv").open(encoding="utf-8") as table:
        return list(csv.DictReader(table))


def test_every_text_of_the_table_is_collected():
    assert set(TEXTS) == {row[column] for row in _rows() for column in ("name", "serving")}


def test_a_food_is_named_in_german_and_keeps_its_key(qapp):
    english = shipped_foods()
    translator = QTranslator()
    assert translator.load(str(resources.path("translations/ultraplanner_de.qm")))
    qapp.installTranslator(translator)
    try:
        german = {food.key: food for food in shipped_foods()}
    finally:
        qapp.removeTranslator(translator)
    assert [food.key for food in english] == list(german)
    assert german["banana"].name == "Banane"
    assert german["rice"].serving == "halbe Tasse, 79 g"
    assert german["rice"].carb_g == {food.key: food for food in english}["rice"].carb_g
