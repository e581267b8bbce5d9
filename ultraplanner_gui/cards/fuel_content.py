"""What stands on the fuel card, as finished text."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from ultraplanner_gui.cards.card_words import (
    Turning,
    end_name,
    no_course,
    race_figures,
    say,
    turning,
)
from ultraplanner_gui.engine.fuelling import FuelFigures, LegFuel
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.course import Offer
from ultraplanner_gui.plan.fuel import Food, Shape
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.cautions import STANDING
from ultraplanner_gui.wording.words import Words

LOOSE = (Shape.DRINK, Shape.SOLID)
"""Foods of which one is not what a packet holds."""


@dataclass(frozen=True, slots=True)
class FuelRow:
    """What to eat and drink from one aid station to the next; `marks` is what waits there."""

    name: str
    marks: tuple[str, ...]
    time: str
    foods: tuple[str, ...]
    carbs: str
    rate: str
    fluid: str


@dataclass(frozen=True, slots=True)
class FuelCard:
    """What to take on each leg."""

    title: str
    subtitle: str
    rows: tuple[FuelRow, ...]
    total: FuelRow | None
    notes: tuple[str, ...]
    turning: Turning


def fuel_card(outlook: Outlook, words: Words) -> FuelCard:
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
        rows=tuple(_fuel_rows(outlook, fuel, words)),
        total=_fuel_total(fuel, target.finish_s, words),
        notes=tuple(note for note in (said, say(words, STANDING)) if note),
        turning=turning(words),
    )


_NO_FOOD = QT_TRANSLATE_NOOP("Cards", "No food is placed yet. Place some on the race day lanes.")


def _fuel_rows(outlook: Outlook, fuel: FuelFigures, words: Words) -> Iterator[FuelRow]:
    nothing = words.translate(QT_TRANSLATE_NOOP("Cards", "nothing planned"))
    names = _short_names(outlook, fuel)
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
            fluid=words.litres(leg.intake.fluid_ml),
        )


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


def _fuel_total(fuel: FuelFigures, finish_s: float, words: Words) -> FuelRow | None:
    if len(fuel.legs) < 2:
        return None
    return FuelRow(
        name=say(words, QT_TRANSLATE_NOOP("Cards", "Whole race")),
        marks=(),
        time=words.duration(finish_s),
        foods=(),
        carbs=words.grams(fuel.total.carb_g),
        rate=words.grams_per_hour(fuel.total.carb_g * 3600.0 / finish_s),
        fluid=words.litres(fuel.total.fluid_ml),
    )
