"""Which cards the runner prints, and on what size."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class CardKind(StrEnum):
    """The cards there are."""

    PACE = "pace card"
    FUEL = "fuel card"


@dataclass(frozen=True, slots=True)
class Card:
    """One card to print; `width_mm` x `height_mm` is the finished size."""

    kind: CardKind
    width_mm: float = 105.0
    height_mm: float = 148.0


DEFAULT_CARDS = (Card(CardKind.PACE), Card(CardKind.FUEL))
