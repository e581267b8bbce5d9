"""What cards say of food that is carried, handed over, packed or bought."""

from __future__ import annotations

from collections.abc import Iterable

from ultraplanner_gui.cards.card_words import say
from ultraplanner_gui.engine.fuel_bags import BagPlan, Source, bag_plan
from ultraplanner_gui.engine.fuelling import FuelFigures
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.words import Words

NO_BAGS = BagPlan((), (), (), ())
_known: list[tuple[FuelFigures, Course, BagPlan]] = []


def bags_of(outlook: Outlook) -> BagPlan:
    """Return where the food of the race comes from; an empty plan without a course."""
    course, fuel, target = outlook.project.course, outlook.fuel, outlook.target
    if course is None or fuel is None or target is None:
        return NO_BAGS
    # One card after another asks for it.
    if not _known or _known[0][0] is not fuel or _known[0][1] is not course:
        plan = bag_plan(fuel.plan, course, outlook.sections, target.finish_s)
        _known[:] = [(fuel, course, plan)]
    return _known[0][2]


def count_texts(
    outlook: Outlook, counts: Iterable[tuple[str, float]], words: Words
) -> tuple[str, ...]:
    """Return "3 × Gel" for every food of *counts*."""
    fuel = outlook.project.fuel
    return tuple(f"{words.servings(n)} × {fuel.food(key).name}" for key, n in counts)


def packed_at(
    outlook: Outlook, bags: BagPlan, station: str, source: Source, words: Words
) -> tuple[str, ...]:
    """Return what waits at *station* from *source*, in whole servings, spare ones among them."""
    packs = (p for p in bags.packs if p.station == station and p.source is source)
    return tuple(text for pack in packs for text in count_texts(outlook, pack.whole(), words))


def bought(bags: BagPlan, words: Words) -> tuple[str, ...]:
    """Return what to buy: "12 × Gel", and in how many packs where they hold several."""
    template = QT_TRANSLATE_NOOP("Cards", "{0}, packs: {1}")
    texts = []
    for item in bags.shopping:
        text = f"{words.servings(item.servings)} × {item.food.name}"
        is_plain = item.food.per_pack == 1.0
        texts.append(text if is_plain else say(words, template, text, words.number(item.packs)))
    return tuple(texts)
