"""Units, colours and text size change what is seen and nothing in the project."""

import re

import pytest
from PySide6.QtCore import QPoint
from PySide6.QtWidgets import QLabel

from ultraplanner_gui.widgets.lane import Lane
from ultraplanner_gui.widgets.theme import DARK, LIGHT, theme


@pytest.fixture
def hand(open_window):
    hand = open_window()
    hand.window.deeds.demo()
    place, document = hand.window.workplace, hand.window.document
    place.selection.choose("section", document.outlook.sections[2].key)
    return hand


def _words_seen(hand):
    """Every text of header, ledger and lane heads."""
    place = hand.window.workplace
    texts = [label.text() for label in place.header.findChildren(QLabel)]
    texts += [row.accessibleDescription() for row in place.ledger.widget().children() if _says(row)]
    texts += [lane.accessibleName() for lane in place.findChildren(Lane)]
    return "\n".join(texts)


def _says(row):
    return hasattr(row, "accessibleDescription") and row.accessibleDescription()


def test_miles_and_feet_and_back(hand):
    document = hand.window.document
    project, metric = document.project, _words_seen(hand)
    assert re.search(r"\d km", metric)
    hand.menu("units_imperial")
    imperial = _words_seen(hand)
    assert re.search(r"63\.\d mi\b", imperial)
    assert re.search(r"12,\d{3} ft\b", imperial)
    assert not re.search(r"\b(km|m)\b", imperial)
    hand.menu("units_metric")
    assert _words_seen(hand) == metric
    assert document.project is project
    assert document.undo_stack.count() == 0


def test_a_change_of_units_keeps_place_and_selection(hand):
    hand.shortcut("tables")
    hand.menu("units_imperial")
    place = hand.window.workplace
    assert place.place == "tables"
    assert place.selection.kind == "section"


def test_undo_still_works_after_a_change_of_units(hand):
    document, before = hand.window.document, hand.window.document.project
    hand.shortcut("add_station")
    hand.menu("units_imperial")
    assert hand.window.document is document
    hand.window._undo[0].trigger()
    assert document.project == before


def _ground(hand):
    """Colours at places that hold nothing but ground: header, ledger edge, foot."""
    image = hand.pixels(hand.window)
    ratio = image.width() / hand.window.width()
    spots = [QPoint(4, 60), QPoint(hand.window.width() - 6, hand.window.height() - 6)]
    return {image.pixelColor(spot * ratio).name() for spot in spots}


def test_dark_and_light_again(hand):
    assert _ground(hand) == {LIGHT.paper}
    bright = hand.settled(hand.window.workplace)
    hand.menu("theme_dark")
    hand.until(lambda: _ground(hand) == {DARK.paper})
    assert hand.settled(hand.window.workplace) != bright
    assert hand.window.settings.theme == "dark"
    hand.menu("theme_light")
    hand.until(lambda: _ground(hand) == {LIGHT.paper})
    hand.sees_again(hand.window.workplace, bright)


def test_text_half_as_large_again(hand):
    title = next(w for w in hand.window.workplace.header.findChildren(QLabel) if w.text())
    height = title.height()
    for _ in range(5):
        hand.menu("text_larger")
    assert hand.window.settings.text_percent == 150
    hand.until(lambda: title.height() > 1.3 * height)
    grid = hand.window.workplace.buildup.grid
    hand.until(lambda: grid.isVisible() and grid.height() >= theme().px(100))
    screen = hand.window.screen().availableGeometry()
    assert hand.window.width() <= screen.width()
    assert hand.window.height() <= screen.height()
    for _ in range(5):
        hand.menu("text_smaller")
    hand.until(lambda: title.height() == height)
