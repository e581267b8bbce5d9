"""Which cards the runner prints, in what form, on what size, and what stands on them."""

from __future__ import annotations

from enum import StrEnum

from ultraplanner_gui.plan.value import Kept, Number, Whole


class CardKind(StrEnum):
    """The cards there are."""

    PACE = "pace card"
    FUEL = "fuel card"
    CREW = "crew sheet"
    BAGS = "bag labels"
    LISTS = "shopping and packing"
    HARD = "hard stretches"
    WHO = "who I am"
    WALL = "wall plan"
    WEEKS = "week sheets"
    COUNTDOWN = "last ten days"


class CardForm(StrEnum):
    """How a card is made up: a sheet, or something to wear or to fold."""

    SHEET = "sheet"
    WRIST = "wrist strip"
    FOLDED = "folded card"
    CONCERTINA = "concertina strip"


class CardPart(StrEnum):
    """What can be left out of a card."""

    PROFILE = "profile"
    CLIMB = "climb and drop"
    PACE = "pace"
    STOP = "stop"
    IN_HAND = "time in hand"
    LATE = "30 late"
    LAST = "last"
    THERE = "what to do there"
    FLUID = "fluid"
    SODIUM = "sodium"
    CAFFEINE = "caffeine"
    CARRY = "carry out"
    FALLBACKS = "fallbacks"
    ACCESS = "way there"
    HAND_OVER = "hand over"
    ASK = "questions"
    NEWS = "no news"
    FLAGS = "red flags"
    HOME = "way home"
    CUES = "cues"
    MEDICAL = "medical"
    IF_STOP = "if I stop"
    DONE = "what was done"
    WRITE = "lines to write on"
    DAYS = "three kinds of day"
    PICTURES = "to picture"
    AFTER = "days after"


class CardUnits(StrEnum):
    """The units of a card."""

    AS_SHOWN = "as in the window"
    METRIC = "metric"
    IMPERIAL = "imperial"


_P = CardPart
PARTS_OF: dict[CardKind, tuple[CardPart, ...]] = {
    CardKind.PACE: (
        *(_P.PROFILE, _P.CLIMB, _P.PACE, _P.STOP, _P.IN_HAND, _P.LATE, _P.LAST, _P.THERE),
    ),
    CardKind.FUEL: (_P.CARRY, _P.THERE, _P.FLUID, _P.SODIUM, _P.CAFFEINE, _P.FALLBACKS),
    CardKind.CREW: (*(_P.ACCESS, _P.HAND_OVER, _P.ASK, _P.IF_STOP, _P.NEWS, _P.FLAGS, _P.HOME),),
    CardKind.BAGS: (_P.THERE,),
    CardKind.LISTS: (),
    CardKind.HARD: (_P.CUES, _P.DAYS, _P.PICTURES),
    CardKind.WHO: (_P.MEDICAL, _P.IF_STOP),
    CardKind.WALL: (_P.CLIMB, _P.CARRY, _P.DONE),
    CardKind.WEEKS: (_P.WRITE, _P.FLAGS),
    CardKind.COUNTDOWN: (_P.FLAGS, _P.AFTER),
}
"""What can be left out of each kind of card."""


class Card(Kept, frozen=True):
    """One card to print; `width_mm` x `height_mm` is the finished size, flat where it is folded.

    `leaves_out` is what does not stand on it, `locale` how its numbers are written, such as
    "de_DE", empty for that of the window.
    """

    kind: CardKind
    width_mm: Number = 105.0
    height_mm: Number = 148.0
    form: CardForm = CardForm.SHEET
    copies: Whole = 1
    leaves_out: tuple[CardPart, ...] = ()
    units: CardUnits = CardUnits.AS_SHOWN
    locale: str = ""

    def has(self, part: CardPart) -> bool:
        """Whether *part* stands on it."""
        return part not in self.leaves_out


DEFAULT_CARDS = (Card(CardKind.PACE), Card(CardKind.FUEL))
