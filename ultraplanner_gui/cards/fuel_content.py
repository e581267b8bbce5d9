"""What stands on the fuel card, as finished text."""

from __future__ import annotations

from collections.abc import Iterator

from ultraplanner_gui.cards.card_words import (
    Turning,
    end_name,
    no_course,
    race_figures,
    say,
    turning,
)
from ultraplanner_gui.cards.carry_words import NO_BAGS, bags_of, packed_at
from ultraplanner_gui.cards.station_words import DOT, what_to_do
from ultraplanner_gui.engine.fuel_bags import BagPlan, Carry, Source
from ultraplanner_gui.engine.fuelling import FuelFigures, Intake, LegFuel
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.cards import Card, CardKind, CardPart
from ultraplanner_gui.plan.course import Offer
from ultraplanner_gui.plan.fuel import Food, Shape
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.wording.cautions import STANDING
from ultraplanner_gui.wording.words import Words

LOOSE = (Shape.DRINK, Shape.SOLID)
"""Foods of which one is not what a packet holds."""


class FuelRow(Value, frozen=True):
    """What to eat and drink from one aid station to the next; `marks` is what waits there.

    `sums` are sodium and caffeine, `carry` what to carry out at its beginning, `there` what to
    do at its end.
    """

    name: str
    marks: tuple[str, ...]
    time: str
    foods: tuple[str, ...]
    carbs: str
    rate: str
    fluid: str
    sums: tuple[str, ...] = ()
    carry: str = ""
    there: str = ""


class FuelCard(Value, frozen=True):
    """What to take on each leg."""

    title: str
    subtitle: str
    rows: tuple[FuelRow, ...]
    total: FuelRow | None
    notes: tuple[str, ...]
    turning: Turning
    eat_head: str = ""


WHOLE_CARD = Card(CardKind.FUEL)


def fuel_card(outlook: Outlook, words: Words, card: Card = WHOLE_CARD) -> FuelCard:
    """Return the fuel card; PlanError without a course."""
    _, target = race_figures(outlook)
    fuel = outlook.fuel
    if fuel is None:
        raise no_course()
    name = outlook.project.race.name
    said = _servings(outlook, fuel, words) if outlook.project.fuel.items else say(words, _NO_FOOD)
    return FuelCard(
        title=say(words, QT_TRANSLATE_NOOP("Cards", "Fuel")),
        subtitle=name,
        rows=tuple(_fuel_rows(outlook, fuel, words, card)),
        total=_fuel_total(fuel, target.finish_s, words, card),
        notes=tuple(
            note for note in (said, *_fallbacks(words, card), say(words, STANDING)) if note
        ),
        turning=turning(words),
        eat_head=words.translate(QT_TRANSLATE_NOOP("Cards", "eat")),
    )


_NO_FOOD = QT_TRANSLATE_NOOP("Cards", "No food is placed yet. Place some on the race day lanes.")


def _fallbacks(words: Words, card: Card) -> Iterator[str]:
    if card.has(CardPart.FALLBACKS):
        yield words.translate(_WENT_WRONG)


# The lines of `cautions.FALLBACKS`, short enough for a pocket. Common practice, no source; drinking
# and low sodium: Hew-Butler et al. 2015, Clin J Sport Med 25:303-320.
_WENT_WRONG = QT_TRANSLATE_NOOP(
    "Cards",
    "Sick: walk, cool down, sip, then 20 g/h. Hot: wet head and arms. Empty: two sweets, water, "
    "walk. Puffy, headache: stop drinking, salt. Nothing stays down, confused: get help.",
)


def _fuel_rows(outlook: Outlook, fuel: FuelFigures, words: Words, card: Card) -> Iterator[FuelRow]:
    nothing = words.translate(QT_TRANSLATE_NOOP("Cards", "nothing planned"))
    names = _short_names(outlook, fuel)
    has_bags = card.has(CardPart.CARRY) or card.has(CardPart.THERE)
    bags = bags_of(outlook) if has_bags else NO_BAGS
    carries = {carry.station: carry for carry in bags.carries}
    begins: str | None = None
    for number, leg in enumerate(fuel.legs):
        name = end_name(leg.name, words)
        way = (
            QT_TRANSLATE_NOOP("Cards", "Start → {0}")
            if number == 0
            else QT_TRANSLATE_NOOP("Cards", "→ {0}")
        )
        yield FuelRow(
            name=say(words, way, name),
            marks=tuple(_marks(outlook, leg, words)),
            time=words.duration(leg.end_s - leg.start_s),
            foods=tuple(_foods(outlook, leg, names, words)) or (nothing,),
            carbs=words.grams(leg.intake.carb_g),
            rate=words.grams_per_hour(leg.carb_g_per_h),
            fluid=_fluid(leg.intake.fluid_ml, words, card),
            sums=tuple(_sums(leg.intake, words, card)),
            carry=_carry(carries.get(begins), words) if card.has(CardPart.CARRY) else "",
            there=_there(outlook, leg, bags, words) if card.has(CardPart.THERE) else "",
        )
        begins = leg.station


def _fluid(ml: float, words: Words, card: Card) -> str:
    return words.litres(ml) if card.has(CardPart.FLUID) else ""


def _sums(intake: Intake, words: Words, card: Card) -> Iterator[str]:
    if card.has(CardPart.SODIUM):
        text = words.milligrams(intake.sodium_mg)
        yield say(words, QT_TRANSLATE_NOOP("Cards", "{0} sodium"), text)
    if card.has(CardPart.CAFFEINE) and intake.caffeine_mg:
        text = words.milligrams(intake.caffeine_mg)
        yield say(words, QT_TRANSLATE_NOOP("Cards", "{0} caffeine"), text)


def _carry(carry: Carry | None, words: Words) -> str:
    if carry is None:
        return ""
    return say(
        words,
        QT_TRANSLATE_NOOP("Cards", "carry out {0} of carbs, {1}"),
        words.grams(carry.carb_g),
        words.litres(carry.fluid_ml),
    )


def _there(outlook: Outlook, leg: LegFuel, bags: BagPlan, words: Words) -> str:
    course = outlook.project.course
    if course is None or leg.station is None:
        return ""
    taken = ", ".join(packed_at(outlook, bags, leg.station, Source.TABLE, words))
    to_do = what_to_do(course.station(leg.station), words, with_offers=False)
    parts = [say(words, QT_TRANSLATE_NOOP("Cards", "take {0}"), taken)] if taken else []
    text = DOT.join([*parts, *([to_do] if to_do else [])])
    return say(words, QT_TRANSLATE_NOOP("Cards", "there: {0}"), text) if text else ""


def _marks(outlook: Outlook, leg: LegFuel, words: Words) -> Iterator[str]:
    course = outlook.project.course
    if course is None or leg.station is None:
        return
    offers = course.station(leg.station).offers
    if Offer.DROP_BAG in offers:
        yield words.translate(QT_TRANSLATE_NOOP("Cards", "BAG"))
    if Offer.CREW in offers:
        yield words.translate(QT_TRANSLATE_NOOP("Cards", "CREW"))


def _used(outlook: Outlook, fuel: FuelFigures) -> list[Food]:
    keys = dict.fromkeys(key for leg in fuel.legs for key, _ in leg.counts)
    return [outlook.project.fuel.food(key) for key in keys]


def _short_names(outlook: Outlook, fuel: FuelFigures) -> dict[str, str]:
    """Return what each food is called in the rows: up to the comma, where that tells it apart."""
    foods = _used(outlook, fuel)
    short = [food.name.partition(",")[0] for food in foods]
    return {
        food.key: name if short.count(name) == 1 else food.name
        for food, name in zip(foods, short, strict=True)
    }


def _foods(outlook: Outlook, leg: LegFuel, names: dict[str, str], words: Words) -> Iterator[str]:
    for key, servings in leg.counts:
        food = outlook.project.fuel.food(key)
        text = f"{words.servings(servings)} × {names[key]}"
        clocks = _clocks(outlook, leg, key, words) if food.caffeine_mg else ""
        yield (
            say(words, QT_TRANSLATE_NOOP("Cards", "{0} at {1}"), text, clocks) if clocks else text
        )


def _clocks(outlook: Outlook, leg: LegFuel, food: str, words: Words) -> str:
    items = (outlook.project.fuel.item(key) for key in leg.items)
    race = outlook.project.race
    return ", ".join(words.clock(race.clock(i.at_s)) for i in items if i.food == food)


def _servings(outlook: Outlook, fuel: FuelFigures, words: Words) -> str:
    """Return what one of each food is, for those with a short name or without a packet."""
    names = _short_names(outlook, fuel)
    texts = [
        f"{food.name}: {food.serving}"
        for food in _used(outlook, fuel)
        if food.serving and (food.shape in LOOSE or names[food.key] != food.name)
    ]
    return say(words, QT_TRANSLATE_NOOP("Cards", "1 × {0}"), "; ".join(texts)) if texts else ""


def _fuel_total(fuel: FuelFigures, finish_s: float, words: Words, card: Card) -> FuelRow | None:
    if len(fuel.legs) < 2:
        return None
    return FuelRow(
        name=say(words, QT_TRANSLATE_NOOP("Cards", "Whole race")),
        marks=(),
        time=words.duration(finish_s),
        foods=(),
        carbs=words.grams(fuel.total.carb_g),
        rate=words.grams_per_hour(fuel.total.carb_g * 3600.0 / finish_s),
        fluid=_fluid(fuel.total.fluid_ml, words, card),
        sums=tuple(_sums(fuel.total, words, card)),
    )
