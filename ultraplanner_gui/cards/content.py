"""What stands on each card, as finished text: no figure is worked out or worded after this."""

from __future__ import annotations

from ultraplanner_gui.cards.fuel_content import FuelCard, fuel_card
from ultraplanner_gui.cards.pace_content import PaceCard, pace_card
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.cards import CardKind
from ultraplanner_gui.wording.words import Words

CardContent = PaceCard | FuelCard


def card_content(kind: CardKind, outlook: Outlook, words: Words) -> CardContent:
    """Return the content of the card *kind*; PlanError without a course."""
    return pace_card(outlook, words) if kind is CardKind.PACE else fuel_card(outlook, words)
