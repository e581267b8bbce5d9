"""What stands on each card, as finished text: no figure is worked out or worded after this."""

from __future__ import annotations

from typing import Literal

from msgspec.structs import replace

from ultraplanner_gui.cards.crew_content import crew_sheet
from ultraplanner_gui.cards.fuel_content import FuelCard, fuel_card
from ultraplanner_gui.cards.head_content import last_days
from ultraplanner_gui.cards.list_content import ListCard
from ultraplanner_gui.cards.pace_content import PaceCard, pace_card
from ultraplanner_gui.cards.pack_content import bag_labels, shopping_and_packing
from ultraplanner_gui.cards.person_content import hard_stretches, who_i_am
from ultraplanner_gui.cards.strip_content import Concertina, WristStrip, concertina, wrist_strip
from ultraplanner_gui.cards.week_content import WallCard, wall_plan, week_sheets
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.cards import PARTS_OF, Card, CardForm, CardKind, CardPart, CardUnits
from ultraplanner_gui.wording.words import Words

CardContent = PaceCard | FuelCard | ListCard | WallCard | WristStrip | Concertina


FOODS_ALONE = Card(CardKind.FUEL, leaves_out=PARTS_OF[CardKind.FUEL])
"""What strips need of the fuel card."""


def card_contents(card: Card, outlook: Outlook, words: Words) -> tuple[CardContent, ...]:
    """Return what stands on *card*, one content to each thing that is cut out by itself.

    PlanError without what it is made of.
    """
    words = words_of(card, words)
    match card.kind:
        case CardKind.PACE:
            return _pace(card, outlook, words)
        case CardKind.FUEL:
            return (fuel_card(outlook, words, card),)
        case CardKind.CREW:
            return (crew_sheet(outlook, words, card),)
        case CardKind.BAGS:
            return bag_labels(outlook, words, card)
        case CardKind.LISTS:
            return (shopping_and_packing(outlook, words),)
        case CardKind.HARD:
            return (hard_stretches(outlook, words, card),)
        case CardKind.WHO:
            return (who_i_am(outlook, words, card),)
        case CardKind.WALL:
            return (wall_plan(outlook, words, card),)
        case CardKind.WEEKS:
            return week_sheets(outlook, words, card)
        case CardKind.COUNTDOWN:
            return last_days(outlook, words, card)


def words_of(card: Card, words: Words) -> Words:
    """Return how numbers read on *card*: in its own units and language where it has them."""
    units: Literal["metric", "imperial"] = words.units
    if card.units is not CardUnits.AS_SHOWN:
        units = "metric" if card.units is CardUnits.METRIC else "imperial"
    locale = card.locale or words.locale
    if (units, locale) == (words.units, words.locale):
        return words
    return replace(words, units=units, locale=locale)


def _pace(card: Card, outlook: Outlook, words: Words) -> tuple[CardContent, ...]:
    if card.form is CardForm.WRIST:
        card = replace(card, leaves_out=(*card.leaves_out, CardPart.PROFILE))
    pace = pace_card(outlook, words, card)
    # A strip worn upright is a list.
    is_upright = card.form is CardForm.WRIST and card.width_mm < card.height_mm
    if card.form is CardForm.SHEET or is_upright:
        return (pace,)
    fuel = fuel_card(outlook, words, FOODS_ALONE) if outlook.project.fuel.items else None
    match card.form:
        case CardForm.WRIST:
            return (wrist_strip(pace, fuel, outlook),)
        case CardForm.CONCERTINA:
            return (concertina(pace, fuel, outlook, words),)
        case _:
            return (pace, fuel_card(outlook, words)) if fuel is not None else (pace,)
