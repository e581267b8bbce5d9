"""What cards say of aid stations: times there, what to do, what waits."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

from ultraplanner_gui.cards.card_words import end_name, say
from ultraplanner_gui.cards.list_content import Item
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.course import AidStation, CutoffKind, IfStop, Kit, Offer, StopKind
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.wording.words import Words

DOT = " · "
_KIT = {
    Kit.SHOES: QT_TRANSLATE_NOOP("Cards", "shoes"),
    Kit.SOCKS: QT_TRANSLATE_NOOP("Cards", "socks"),
    Kit.TOP: QT_TRANSLATE_NOOP("Cards", "top"),
    Kit.LAMP: QT_TRANSLATE_NOOP("Cards", "lamp"),
    Kit.POLES: QT_TRANSLATE_NOOP("Cards", "poles"),
}
_STOPS = {
    StopKind.EAT: QT_TRANSLATE_NOOP("Cards", "eat"),
    StopKind.CHANGE: QT_TRANSLATE_NOOP("Cards", "change"),
    StopKind.SLEEP: QT_TRANSLATE_NOOP("Cards", "sleep"),
}
_OFFERS = {
    Offer.DROP_BAG: QT_TRANSLATE_NOOP("Cards", "bag"),
    Offer.CREW: QT_TRANSLATE_NOOP("Cards", "crew"),
}


def station_of(outlook: Outlook, section: SectionFigures) -> AidStation | None:
    """Return the station at the end of *section*, None at the finish or a free end."""
    course = outlook.project.course
    if course is None or section.station is None:
        return None
    return course.station(section.station)


def place_name(outlook: Outlook, section: SectionFigures, words: Words) -> str:
    """Return the name of where *section* ends: a free end goes by its distance."""
    if section.station is None and section is not outlook.sections[-1]:
        return words.distance(section.end_m, 1)
    return end_name(section.name, words)


def at_stations(outlook: Outlook) -> list[tuple[SectionFigures, AidStation]]:
    """Return every section that ends at a station, with it."""
    pairs = ((section, station_of(outlook, section)) for section in outlook.sections)
    return [(section, station) for section, station in pairs if station is not None]


def nearest_minute(race: Race, elapsed_s: float) -> datetime:
    """Return the clock after *elapsed_s*, to the nearest minute."""
    return whole_minute(race.clock(elapsed_s + 30.0))


def whole_minute(at: datetime) -> datetime:
    """Return *at* without its seconds."""
    return at - timedelta(seconds=at.second, microseconds=at.microsecond)


def latest_minute(race: Race, elapsed_s: float) -> datetime:
    """Return the clock after *elapsed_s*, rounded down.

    A latest time must not be read as half a minute later than it is. The thousandth keeps a
    whole minute whole when a sum of floats falls just short of it.
    """
    return whole_minute(race.clock(elapsed_s + 1e-3))


def is_departure(station: AidStation | None) -> bool:
    """Whether the cutoff of *station* says by when one must be out."""
    return (
        station is not None
        and station.cutoff_s is not None
        and station.cutoff_kind is CutoffKind.DEPARTURE
    )


def kit_names(kit: tuple[Kit, ...], words: Words) -> tuple[str, ...]:
    """Return what may be changed, by name."""
    return tuple(words.translate(_KIT[part]) for part in kit)


def what_to_do(station: AidStation, words: Words, with_offers: bool = True) -> str:
    """Return what is done at *station*: "eat · change shoes, socks · bag · crew · note"."""
    return DOT.join(_deeds(station, words, with_offers))


def _deeds(station: AidStation, words: Words, with_offers: bool) -> Iterator[str]:
    if station.stop_kind is StopKind.SLEEP:
        yield words.translate(_STOPS[StopKind.SLEEP])
    elif station.stop_kind is StopKind.EAT:
        yield words.translate(_STOPS[StopKind.EAT])
    kit = ", ".join(kit_names(station.kit, words))
    if kit:
        yield say(words, QT_TRANSLATE_NOOP("Cards", "change {0}"), kit)
    elif station.stop_kind is StopKind.CHANGE:
        yield words.translate(_STOPS[StopKind.CHANGE])
    if with_offers:
        yield from (words.translate(_OFFERS[o]) for o in _OFFERS if o in station.offers)
    if station.pacer_from:
        yield words.translate(QT_TRANSLATE_NOOP("Cards", "pacer from here"))
    if station.note:
        yield station.note


def ways_out(if_stop: IfStop, words: Words) -> Iterator[Item]:
    """Yield what happens if the runner stops at a station."""
    pairs = (
        (QT_TRANSLATE_NOOP("Cards", "way out"), if_stop.way_out),
        (QT_TRANSLATE_NOOP("Cards", "fetched by"), if_stop.fetched_by),
        (QT_TRANSLATE_NOOP("Cards", "takes"), if_stop.takes),
        (QT_TRANSLATE_NOOP("Cards", "call"), if_stop.number),
    )
    return (Item(text, words.translate(label)) for label, text in pairs if text)
