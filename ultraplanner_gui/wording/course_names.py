"""What things of the course are called, marked in the context "Course words"."""

from __future__ import annotations

from ultraplanner_gui.plan.course import CutoffKind, Kit, Offer, StopKind, Surface
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP

CONTEXT = "Course words"

SURFACES: dict[Surface, str] = {
    Surface.UNKNOWN: QT_TRANSLATE_NOOP("Course words", "unknown"),
    Surface.ROAD: QT_TRANSLATE_NOOP("Course words", "road"),
    Surface.GRAVEL: QT_TRANSLATE_NOOP("Course words", "gravel"),
    Surface.SMOOTH_TRAIL: QT_TRANSLATE_NOOP("Course words", "smooth trail"),
    Surface.GRASS: QT_TRANSLATE_NOOP("Course words", "grass"),
    Surface.TECHNICAL_TRAIL: QT_TRANSLATE_NOOP("Course words", "technical trail"),
    Surface.ROCK: QT_TRANSLATE_NOOP("Course words", "rock"),
    Surface.SAND: QT_TRANSLATE_NOOP("Course words", "sand"),
    Surface.SNOW: QT_TRANSLATE_NOOP("Course words", "snow"),
}

OFFERS: dict[Offer, str] = {
    Offer.WATER: QT_TRANSLATE_NOOP("Course words", "water"),
    Offer.FOOD: QT_TRANSLATE_NOOP("Course words", "food"),
    Offer.DROP_BAG: QT_TRANSLATE_NOOP("Course words", "drop bag"),
    Offer.CREW: QT_TRANSLATE_NOOP("Course words", "crew"),
    Offer.MEDICAL: QT_TRANSLATE_NOOP("Course words", "medical"),
}

STOPS: dict[StopKind, str] = {
    StopKind.PASS: QT_TRANSLATE_NOOP("Course words", "pass through"),
    StopKind.EAT: QT_TRANSLATE_NOOP("Course words", "eat"),
    StopKind.CHANGE: QT_TRANSLATE_NOOP("Course words", "change"),
    StopKind.SLEEP: QT_TRANSLATE_NOOP("Course words", "sleep"),
}

#: Who stands still does not pass through: the same kind, with a stop planned.
NO_REASON = QT_TRANSLATE_NOOP("Course words", "no reason given")

CUTOFFS: dict[CutoffKind, str] = {
    CutoffKind.ARRIVAL: QT_TRANSLATE_NOOP("Course words", "in by"),
    CutoffKind.DEPARTURE: QT_TRANSLATE_NOOP("Course words", "out by"),
}

KIT: dict[Kit, str] = {
    Kit.SHOES: QT_TRANSLATE_NOOP("Course words", "shoes"),
    Kit.SOCKS: QT_TRANSLATE_NOOP("Course words", "socks"),
    Kit.TOP: QT_TRANSLATE_NOOP("Course words", "top"),
    Kit.LAMP: QT_TRANSLATE_NOOP("Course words", "lamp"),
    Kit.POLES: QT_TRANSLATE_NOOP("Course words", "poles"),
}


def stops(stop_s: float) -> dict[StopKind, str]:
    """Return what each kind of stop is called where *stop_s* are planned."""
    return STOPS | {StopKind.PASS: NO_REASON} if stop_s > 0.0 else STOPS
