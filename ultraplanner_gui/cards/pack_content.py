"""What stands on bag labels and on the list of what to buy and pack, as finished text."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from ultraplanner_gui.cards.card_words import race_figures, say, turning
from ultraplanner_gui.cards.carry_words import bags_of, bought, count_texts, packed_at
from ultraplanner_gui.cards.list_content import Entry, Item, ListCard
from ultraplanner_gui.cards.station_words import (
    DOT,
    at_stations,
    kit_names,
    nearest_minute,
    what_to_do,
)
from ultraplanner_gui.engine.fuel_bags import BagPlan, Source
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.cards import Card, CardPart
from ultraplanner_gui.plan.course import AidStation, Offer
from ultraplanner_gui.plan.logistics import KitPlace
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.wording.words import Words

FINISH = ""


def bag_labels(outlook: Outlook, words: Words, card: Card) -> tuple[ListCard, ...]:
    """Return a label for every bag; PlanError without a course or without a bag."""
    race_figures(outlook)
    bags = bags_of(outlook)
    labels = tuple(
        _label(outlook, section, station, words, card, bags)
        for section, station in at_stations(outlook)
        if _has_bag(outlook, station)
    )
    if outlook.project.logistics.bag(FINISH):
        labels = (*labels, _finish_label(outlook, words))
    if not labels:
        raise PlanError(
            QT_TRANSLATE_NOOP("Cards", "No aid station takes a drop bag. Mark those that do.")
        )
    return labels


def _has_bag(outlook: Outlook, station: AidStation) -> bool:
    return Offer.DROP_BAG in station.offers or bool(outlook.project.logistics.bag(station.key))


def _label(
    outlook: Outlook,
    section: SectionFigures,
    station: AidStation,
    words: Words,
    card: Card,
    bags: BagPlan,
) -> ListCard:
    there = DOT.join(
        (
            words.distance(section.end_m, 1),
            words.clock(nearest_minute(outlook.project.race, section.arrive_s)),
        )
    )
    entries = [
        Entry(words.translate(_INSIDE), tuple(map(_box, _inside(outlook, station, words, bags))))
    ]
    to_do = what_to_do(station, words, with_offers=False)
    if to_do and card.has(CardPart.THERE):
        there_head = words.translate(QT_TRANSLATE_NOOP("Cards", "To do there"))
        entries.append(Entry(there_head, (Item(to_do),)))
    return ListCard(
        title=station.name,
        subtitle=there,
        entries=(_owner(outlook, words), *(e for e in entries if e.items)),
        turning=turning(words),
        is_loud=True,
    )


_INSIDE = QT_TRANSLATE_NOOP("Cards", "In this bag")


def _finish_label(outlook: Outlook, words: Words) -> ListCard:
    items = tuple(map(_box, outlook.project.logistics.bag(FINISH)))
    return ListCard(
        title=words.translate(QT_TRANSLATE_NOOP("Cards", "Finish")),
        subtitle=outlook.project.race.name,
        entries=(_owner(outlook, words), Entry(words.translate(_INSIDE), items)),
        turning=turning(words),
        is_loud=True,
    )


def _owner(outlook: Outlook, words: Words) -> Entry:
    who = outlook.project.logistics.who
    number = say(words, QT_TRANSLATE_NOOP("Cards", "number {0}"), who.number) if who.number else ""
    name = who.full_name or outlook.project.runner.name or "…"
    return Entry(name, (Item(outlook.project.race.name),), right=number)


def _box(text: str) -> Item:
    return Item(text, has_box=True)


def _inside(outlook: Outlook, station: AidStation, words: Words, bags: BagPlan) -> Iterator[str]:
    yield from outlook.project.logistics.bag(station.key)
    yield from kit_names(station.kit, words)
    yield from packed_at(outlook, bags, station.key, Source.BAG, words)


def shopping_and_packing(outlook: Outlook, words: Words) -> ListCard:
    """Return what to buy and what to pack; PlanError without a course."""
    race_figures(outlook)
    bags = bags_of(outlook)
    entries = [
        _list(QT_TRANSLATE_NOOP("Cards", "Mandatory kit"), _kit(outlook, words)),
        _list(QT_TRANSLATE_NOOP("Cards", "To pack"), outlook.project.logistics.packing),
        _list(QT_TRANSLATE_NOOP("Cards", "On me at the start"), _at_start(outlook, bags, words)),
        *_bags(outlook, words, bags),
        _list(
            QT_TRANSLATE_NOOP("Cards", "To buy"),
            (*bought(bags, words), *outlook.project.logistics.shopping),
        ),
    ]
    named = [
        Entry(words.translate(head), tuple(map(_box, lines))) for head, lines in entries if lines
    ]
    warnings = () if outlook.project.race.mandatory_kit else (words.translate(_NO_KIT),)
    return ListCard(
        title=words.translate(QT_TRANSLATE_NOOP("Cards", "To buy and to pack")),
        subtitle=outlook.project.race.name,
        entries=tuple(named),
        turning=turning(words),
        warnings=warnings,
        most_columns=3,
    )


def _kit(outlook: Outlook, words: Words) -> Iterator[str]:
    """Yield the mandatory kit, each piece with where it is once it is ticked."""
    packed = {p.item: p for p in outlook.project.logistics.packed}
    course = outlook.project.course
    names = {s.key: s.name for s in course.stations} if course is not None else {}
    for item in outlook.project.race.mandatory_kit:
        there = packed.get(item)
        if there is None:
            yield item
            continue
        where = names.get(there.station) or words.translate(_WHERE[there.place])
        yield say(words, QT_TRANSLATE_NOOP("Cards", "{0} ({1})"), item, where)


_WHERE = {
    KitPlace.BODY: QT_TRANSLATE_NOOP("Cards", "on the body"),
    KitPlace.VEST: QT_TRANSLATE_NOOP("Cards", "in the vest"),
    KitPlace.BAG: QT_TRANSLATE_NOOP("Cards", "in a drop bag"),
}
_NO_KIT = QT_TRANSLATE_NOOP("Cards", "No mandatory kit is put down yet. Look into the race rules.")


def _list(head: str, lines: Iterable[str]) -> tuple[str, tuple[str, ...]]:
    return head, tuple(lines)


def _bags(outlook: Outlook, words: Words, bags: BagPlan) -> Iterator[tuple[str, tuple[str, ...]]]:
    for _, station in at_stations(outlook):
        if _has_bag(outlook, station):
            head = say(words, QT_TRANSLATE_NOOP("Cards", "Bag for {0}"), station.name)
            yield head, tuple(_inside(outlook, station, words, bags))
    finish = outlook.project.logistics.bag(FINISH)
    yield words.translate(QT_TRANSLATE_NOOP("Cards", "Bag for the finish")), finish


def _at_start(outlook: Outlook, bags: BagPlan, words: Words) -> Iterator[str]:
    for pack in bags.packs:
        if pack.source is Source.START:
            yield from count_texts(outlook, pack.whole(), words)
