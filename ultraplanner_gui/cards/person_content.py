"""What stands on the cards for the head and for strangers: hard stretches, who I am."""

from __future__ import annotations

from collections.abc import Iterator

from ultraplanner_gui.cards.card_words import no_course, say, turning
from ultraplanner_gui.cards.head_content import three_days, to_picture
from ultraplanner_gui.cards.list_content import Entry, Item, ListCard
from ultraplanner_gui.cards.station_words import (
    DOT,
    at_stations,
    nearest_minute,
    place_name,
    ways_out,
)
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.cards import Card, CardPart
from ultraplanner_gui.plan.course import IfStop
from ultraplanner_gui.plan.logistics import IfThen
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.words import Words


def hard_stretches(outlook: Outlook, words: Words, card: Card) -> ListCard:
    """Return what the runner put down for when it gets hard; PlanError without a course."""
    if not outlook.sections:
        raise no_course()
    plan = outlook.project.logistics
    entries = []
    anywhere = [line for line in plan.if_then if not line.station]
    if anywhere:
        head = words.translate(QT_TRANSLATE_NOOP("Cards", "Anywhere"))
        entries.append(Entry(head, tuple(_if_then(line, words) for line in anywhere)))
    entries += _stretches(outlook, words)
    if card.has(CardPart.DAYS):
        entries += three_days(outlook, words)
    if card.has(CardPart.PICTURES):
        entries += to_picture(outlook, words)
    if plan.cues and card.has(CardPart.CUES):
        head = words.translate(QT_TRANSLATE_NOOP("Cards", "To say to myself"))
        entries.append(Entry(head, tuple(Item(cue, loud=True) for cue in plan.cues)))
    return ListCard(
        title=words.translate(QT_TRANSLATE_NOOP("Cards", "When it gets hard")),
        subtitle=outlook.project.race.name,
        entries=tuple(entries),
        turning=turning(words),
        warnings=() if entries else (words.translate(_NO_WORDS),),
    )


_NO_WORDS = QT_TRANSLATE_NOOP(
    "Cards",
    "Nothing is put down yet. Write in the ledger or under Crew and lists what will help.",
)


def _if_then(line: IfThen, words: Words) -> Item:
    if not line.when:
        return Item(line.then)
    label = say(words, QT_TRANSLATE_NOOP("Cards", "If {0}"), line.when)
    then = QT_TRANSLATE_NOOP("Cards", "then {0}")
    if line.tried:
        then = QT_TRANSLATE_NOOP("Cards", "then {0} (tried)")
    return Item(say(words, then, line.then), label)


def _stretches(outlook: Outlook, words: Words) -> Iterator[Entry]:
    course, plan, race = outlook.project.course, outlook.project.logistics, outlook.project.race
    start = words.translate(QT_TRANSLATE_NOOP("Cards", "Start"))
    for section in outlook.sections:
        own = course.section(section.key) if course is not None else None
        items = [Item(own.hard_note)] if own is not None and own.hard_note else []
        lines = (x for x in plan.if_then if x.station and x.station == section.station)
        items += [_if_then(line, words) for line in lines]
        name = place_name(outlook, section, words)
        if items:
            begins_s = section.arrive_s - section.moving_s
            clock = words.clock(nearest_minute(race, begins_s))
            head = say(words, QT_TRANSLATE_NOOP("Cards", "{0} → {1}"), start, name)
            yield Entry(head, tuple(items), right=clock)
        start = name


def who_i_am(outlook: Outlook, words: Words, card: Card) -> ListCard:
    """Return who the runner is, for a stranger who finds them."""
    who, race = outlook.project.logistics.who, outlook.project.race
    name = who.full_name or outlook.project.runner.name
    entries = [*_calls(outlook, words)]
    if who.medical and card.has(CardPart.MEDICAL):
        head = words.translate(QT_TRANSLATE_NOOP("Cards", "Medical"))
        entries.append(Entry(head, tuple(Item(line) for line in who.medical)))
    if card.has(CardPart.IF_STOP):
        entries += _if_i_stop(outlook, words)
    born = say(words, QT_TRANSLATE_NOOP("Cards", "born {0}"), who.born) if who.born else ""
    number = say(words, QT_TRANSLATE_NOOP("Cards", "number {0}"), who.number) if who.number else ""
    return ListCard(
        title=name or words.translate(QT_TRANSLATE_NOOP("Cards", "Who I am")),
        subtitle=DOT.join(filter(None, (born, number, race.name))),
        entries=tuple(entries),
        turning=turning(words),
        warnings=() if name and who.call else (words.translate(_NOBODY),),
    )


_NOBODY = QT_TRANSLATE_NOOP(
    "Cards", "Name and whom to call are not put down yet: fill in Crew and lists."
)


def _calls(outlook: Outlook, words: Words) -> Iterator[Entry]:
    who, race = outlook.project.logistics.who, outlook.project.race
    items = []
    if race.emergency:
        label = words.translate(QT_TRANSLATE_NOOP("Cards", "race emergency"))
        items.append(Item(race.emergency, label, loud=True))
    if who.call:
        label = words.translate(QT_TRANSLATE_NOOP("Cards", "my people"))
        items.append(Item(who.call, label, loud=True))
    if items:
        yield Entry(words.translate(QT_TRANSLATE_NOOP("Cards", "Call")), tuple(items))


def _if_i_stop(outlook: Outlook, words: Words) -> Iterator[Entry]:
    for section, station in at_stations(outlook):
        if station.if_stop != IfStop():
            head = say(words, QT_TRANSLATE_NOOP("Cards", "If I stop at {0}"), station.name)
            items = tuple(ways_out(station.if_stop, words))
            yield Entry(head, items, right=_at(section, words))


def _at(section: SectionFigures, words: Words) -> str:
    return words.distance(section.end_m, 1)
