"""What kinds, forms and parts of cards are called on the desk."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from ultraplanner_gui.plan.cards import CardForm, CardKind, CardPart, CardUnits
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.locales import known_locale

KINDS: dict[CardKind, str] = {
    CardKind.PACE: QT_TRANSLATE_NOOP("CardNames", "Pace card"),
    CardKind.FUEL: QT_TRANSLATE_NOOP("CardNames", "Fuel card"),
    CardKind.CREW: QT_TRANSLATE_NOOP("CardNames", "Crew sheet"),
    CardKind.BAGS: QT_TRANSLATE_NOOP("CardNames", "Bag labels"),
    CardKind.LISTS: QT_TRANSLATE_NOOP("CardNames", "To buy and to pack"),
    CardKind.HARD: QT_TRANSLATE_NOOP("CardNames", "Hard stretches"),
    CardKind.WHO: QT_TRANSLATE_NOOP("CardNames", "Who I am"),
    CardKind.WALL: QT_TRANSLATE_NOOP("CardNames", "Wall plan"),
    CardKind.WEEKS: QT_TRANSLATE_NOOP("CardNames", "Week sheets"),
    CardKind.COUNTDOWN: QT_TRANSLATE_NOOP("CardNames", "The last ten days"),
}
FORMS: dict[CardForm, str] = {
    CardForm.SHEET: QT_TRANSLATE_NOOP("CardNames", "Flat card"),
    CardForm.WRIST: QT_TRANSLATE_NOOP("CardNames", "Wrist strip"),
    CardForm.FOLDED: QT_TRANSLATE_NOOP("CardNames", "Folded once, pace and fuel"),
    CardForm.CONCERTINA: QT_TRANSLATE_NOOP("CardNames", "Concertina, a leg to each fold"),
}
UNITS: dict[CardUnits, str] = {
    CardUnits.AS_SHOWN: QT_TRANSLATE_NOOP("CardNames", "As in the window"),
    CardUnits.METRIC: QT_TRANSLATE_NOOP("CardNames", "Kilometres and metres"),
    CardUnits.IMPERIAL: QT_TRANSLATE_NOOP("CardNames", "Miles and feet"),
}
PARTS: dict[CardPart, str] = {
    CardPart.PROFILE: QT_TRANSLATE_NOOP("CardNames", "Profile and light"),
    CardPart.CLIMB: QT_TRANSLATE_NOOP("CardNames", "Climb and drop"),
    CardPart.PACE: QT_TRANSLATE_NOOP("CardNames", "Pace"),
    CardPart.STOP: QT_TRANSLATE_NOOP("CardNames", "Stops"),
    CardPart.IN_HAND: QT_TRANSLATE_NOOP("CardNames", "Time in hand"),
    CardPart.LATE: QT_TRANSLATE_NOOP("CardNames", "30 min late"),
    CardPart.LAST: QT_TRANSLATE_NOOP("CardNames", "Last arrival"),
    CardPart.THERE: QT_TRANSLATE_NOOP("CardNames", "What to do there"),
    CardPart.FLUID: QT_TRANSLATE_NOOP("CardNames", "Fluid"),
    CardPart.SODIUM: QT_TRANSLATE_NOOP("CardNames", "Sodium"),
    CardPart.CAFFEINE: QT_TRANSLATE_NOOP("CardNames", "Caffeine"),
    CardPart.CARRY: QT_TRANSLATE_NOOP("CardNames", "Carbs to carry or practise"),
    CardPart.FALLBACKS: QT_TRANSLATE_NOOP("CardNames", "When it goes wrong"),
    CardPart.ACCESS: QT_TRANSLATE_NOOP("CardNames", "Way there"),
    CardPart.HAND_OVER: QT_TRANSLATE_NOOP("CardNames", "What to hand over"),
    CardPart.ASK: QT_TRANSLATE_NOOP("CardNames", "What to ask"),
    CardPart.NEWS: QT_TRANSLATE_NOOP("CardNames", "When to worry"),
    CardPart.FLAGS: QT_TRANSLATE_NOOP("CardNames", "Red flags"),
    CardPart.HOME: QT_TRANSLATE_NOOP("CardNames", "Way home"),
    CardPart.CUES: QT_TRANSLATE_NOOP("CardNames", "Words to myself"),
    CardPart.MEDICAL: QT_TRANSLATE_NOOP("CardNames", "Medical lines"),
    CardPart.IF_STOP: QT_TRANSLATE_NOOP("CardNames", "If I stop at …"),
    CardPart.DONE: QT_TRANSLATE_NOOP("CardNames", "What is done"),
    CardPart.WRITE: QT_TRANSLATE_NOOP("CardNames", "Lines to write on"),
    CardPart.DAYS: QT_TRANSLATE_NOOP("CardNames", "Three kinds of day"),
    CardPart.PICTURES: QT_TRANSLATE_NOOP("CardNames", "What to picture"),
    CardPart.AFTER: QT_TRANSLATE_NOOP("CardNames", "Days after the race"),
}


def say(text: str) -> str:
    """Return one of the texts above in the user's language."""
    return QCoreApplication.translate("CardNames", text)


def language(locale: str) -> str:
    """Return a language by its own name, such as "Deutsch (Schweiz)"."""
    return known_locale(locale).display_name or locale
