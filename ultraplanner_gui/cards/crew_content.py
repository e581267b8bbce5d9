"""What stands on the crew sheet, as finished text."""

from __future__ import annotations

from collections.abc import Iterator

from ultraplanner_gui.cards.card_words import race_figures, say, turning
from ultraplanner_gui.cards.carry_words import bags_of, packed_at
from ultraplanner_gui.cards.list_content import Entry, Item, ListCard
from ultraplanner_gui.cards.station_words import (
    DOT,
    is_departure,
    kit_names,
    latest_minute,
    nearest_minute,
    place_name,
    station_of,
    ways_out,
)
from ultraplanner_gui.engine.fuel_bags import BagPlan, Source
from ultraplanner_gui.engine.news import news
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.cards import Card, CardPart
from ultraplanner_gui.plan.course import AidStation, IfStop, Offer
from ultraplanner_gui.plan.logistics import Visit
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.cautions import RED_FLAGS
from ultraplanner_gui.wording.words import Words

_CREW_FLAGS = RED_FLAGS[:2]
_NO_DRIVING = QT_TRANSLATE_NOOP("Cards", "Whoever was up all night does not drive.")


def crew_sheet(outlook: Outlook, words: Words, card: Card) -> ListCard:
    """Return the crew sheet; PlanError without a course."""
    race_figures(outlook)
    race = outlook.project.race
    entries = [*_team(outlook, words), *_stops(outlook, words, card)]
    entries += _home(outlook, words) if card.has(CardPart.HOME) else ()
    flags = tuple(words.translate(flag) for flag in _CREW_FLAGS)
    return ListCard(
        title=say(words, QT_TRANSLATE_NOOP("Cards", "Crew")),
        subtitle=DOT.join(
            filter(None, (race.name, words.day(race.day), outlook.project.runner.name))
        ),
        entries=tuple(entries),
        turning=turning(words),
        warnings=() if _is_visited(outlook) else (words.translate(_NOWHERE),),
        notes=flags if card.has(CardPart.FLAGS) else (),
        most_columns=2,
    )


_NOWHERE = QT_TRANSLATE_NOOP("Cards", "No aid station lets a crew in. Mark those that do.")


def _is_visited(outlook: Outlook) -> bool:
    return any(_visits(outlook, section) for section in outlook.sections[:-1])


def _visits(outlook: Outlook, section: SectionFigures) -> AidStation | None:
    """Return the station at the end of *section* if the crew comes there."""
    station = station_of(outlook, section)
    if station is None:
        return None
    is_planned = outlook.project.logistics.visit(station.key) != Visit(station.key)
    return station if Offer.CREW in station.offers or is_planned else None


def _team(outlook: Outlook, words: Words) -> Iterator[Entry]:
    plan = outlook.project.logistics
    if not plan.crew and not outlook.project.race.emergency:
        return
    items = [Item(DOT.join(filter(None, (h.number, h.role))), h.name) for h in plan.crew]
    if outlook.project.race.emergency:
        label = words.translate(QT_TRANSLATE_NOOP("Cards", "emergency"))
        items.append(Item(outlook.project.race.emergency, label))
    yield Entry(words.translate(QT_TRANSLATE_NOOP("Cards", "Who is who")), tuple(items))


def _stops(outlook: Outlook, words: Words, card: Card) -> Iterator[Entry]:
    bags = bags_of(outlook)
    for section in outlook.sections:
        station = _visits(outlook, section)
        is_finish = section is outlook.sections[-1]
        if station is None and not is_finish:
            continue
        race = outlook.project.race
        low_s, high_s = section.window_s
        yield Entry(
            place_name(outlook, section, words),
            tuple(_lines(outlook, section, station, words, card, bags)),
            right=say(
                words,
                QT_TRANSLATE_NOOP("Cards", "{0} – {1}"),
                words.clock(nearest_minute(race, low_s)),
                words.clock(
                    nearest_minute(race, high_s),
                    weekday=race.clock(high_s).date() != race.clock(low_s).date(),
                ),
            ),
        )


def _lines(
    outlook: Outlook,
    section: SectionFigures,
    station: AidStation | None,
    words: Words,
    card: Card,
    bags: BagPlan,
) -> Iterator[Item]:
    yield Item(_when(outlook, section, station, words), _say(words, _ARRIVES))
    if station is not None and station.access and card.has(CardPart.ACCESS):
        yield Item(station.access, _say(words, _WAY))
    plan = outlook.project.logistics
    visit = plan.visit(station.key) if station is not None else Visit("")
    if visit.who:
        yield Item(visit.who, _say(words, _WHO))
    if card.has(CardPart.HAND_OVER) and station is not None:
        kit = kit_names(station.kit, words)
        foods = packed_at(outlook, bags, station.key, Source.CREW, words)
        given = (*visit.hand_over, *kit, *foods)
        yield from (Item(label=_say(words, _HAND_OVER)) for _ in given[:1])
        yield from (Item(text, has_box=True) for text in given)
    if card.has(CardPart.ASK):
        asked = (*plan.ask, *visit.ask) if station is not None else ()
        if asked:
            yield Item(DOT.join(asked), _say(words, _ASK))
    if station is not None and station.if_stop != IfStop() and card.has(CardPart.IF_STOP):
        out = (f"{item.label} {item.text}" for item in ways_out(station.if_stop, words))
        yield Item(DOT.join(out), _say(words, _IF_STOP))
    if card.has(CardPart.NEWS):
        yield Item(_no_news(outlook, section, station, words))


def _say(words: Words, template: str) -> str:
    return words.translate(template)


_ARRIVES = QT_TRANSLATE_NOOP("Cards", "on plan")
_WAY = QT_TRANSLATE_NOOP("Cards", "way there")
_WHO = QT_TRANSLATE_NOOP("Cards", "who")
_HAND_OVER = QT_TRANSLATE_NOOP("Cards", "hand over")
_IF_STOP = QT_TRANSLATE_NOOP("Cards", "if I stop")
_ASK = QT_TRANSLATE_NOOP("Cards", "ask")


def _when(
    outlook: Outlook, section: SectionFigures, station: AidStation | None, words: Words
) -> str:
    race = outlook.project.race
    parts = [
        words.clock(nearest_minute(race, section.arrive_s)),
        words.distance(section.end_m, 1),
    ]
    stop_s = section.leave_s - section.arrive_s
    if stop_s >= 30.0:
        parts.append(say(words, QT_TRANSLATE_NOOP("Cards", "stop {0}"), words.duration(stop_s)))
    if section.cutoff_s is not None:
        template = (
            QT_TRANSLATE_NOOP("Cards", "leave by {0}")
            if is_departure(station)
            else QT_TRANSLATE_NOOP("Cards", "cutoff {0}")
        )
        parts.append(say(words, template, words.clock(latest_minute(race, section.cutoff_s))))
    return DOT.join(parts)


def _no_news(
    outlook: Outlook, section: SectionFigures, station: AidStation | None, words: Words
) -> str:
    race, found = outlook.project.race, news(section)
    template = (
        QT_TRANSLATE_NOOP(
            "Cards", "Before {0} no news is good news; after {1} ask the race office."
        )
        if station is None
        else QT_TRANSLATE_NOOP(
            "Cards", "Before {0} no news is good news; after {1} ask the station."
        )
    )
    clocks = (words.clock(nearest_minute(race, s)) for s in (found.calm_s, found.ask_s))
    return say(words, template, *clocks)


def _home(outlook: Outlook, words: Words) -> Iterator[Entry]:
    driver = outlook.project.logistics.drives_home
    who = (
        say(words, QT_TRANSLATE_NOOP("Cards", "{0} drives."), driver)
        if driver
        else words.translate(QT_TRANSLATE_NOOP("Cards", "Nobody is named yet who drives."))
    )
    head = words.translate(QT_TRANSLATE_NOOP("Cards", "The way home"))
    yield Entry(head, (Item(who), Item(words.translate(_NO_DRIVING))))
