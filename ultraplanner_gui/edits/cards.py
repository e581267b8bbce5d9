"""Edits of which cards are printed and what stands on them."""

from __future__ import annotations

from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.plan.cards import PARTS_OF, Card, CardForm, CardKind
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value

SMALLEST_CARD_MM = 30.0
LARGEST_CARD_MM = 900.0
MOST_CARDS = 40
MOST_COPIES = 50


class ChooseCards(Value, frozen=True):
    """The user chose which cards to print, how large, how many and what is on them."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Choose cards")
    cards: tuple[Card, ...]
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        if len(self.cards) > MOST_CARDS:
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "There are at most {0} cards."), MOST_CARDS)
        for card in self.cards:
            _check(card)
        return project if self.cards == project.cards else replace(project, cards=self.cards)


def _check(card: Card) -> None:
    sides_mm = (card.width_mm, card.height_mm)
    if not all(SMALLEST_CARD_MM <= mm <= LARGEST_CARD_MM for mm in sides_mm):
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "A card measures between {0} and {1} mm a side."),
            f"{SMALLEST_CARD_MM:g}",
            f"{LARGEST_CARD_MM:g}",
        )
    if not 1 <= card.copies <= MOST_COPIES:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "A card is printed between 1 and {0} times."), MOST_COPIES
        )
    if card.form is not CardForm.SHEET and card.kind is not CardKind.PACE:
        raise PlanError(QT_TRANSLATE_NOOP("Edit", "Only a pace card can be worn or folded."))
    if not set(card.leaves_out) <= set(PARTS_OF[card.kind]):
        raise PlanError(QT_TRANSLATE_NOOP("Edit", "That does not stand on this card."))
