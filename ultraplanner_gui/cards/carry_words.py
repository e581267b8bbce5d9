"""What cards say of food that is carried, handed over or packed."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from ultraplanner_gui.engine.fuelling import LegFuel
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.course import Offer
from ultraplanner_gui.wording.words import Words


def count_texts(
    outlook: Outlook, counts: Iterable[tuple[str, float]], words: Words
) -> tuple[str, ...]:
    """Return "3 × Gel" for every food of *counts*."""
    fuel = outlook.project.fuel
    return tuple(f"{words.servings(n)} × {fuel.food(key).name}" for key, n in counts)


def sums(legs: Iterable[LegFuel]) -> tuple[tuple[str, float], ...]:
    """Return the servings of every food on *legs*, in the order of first use."""
    totals: dict[str, float] = {}
    for leg in legs:
        for key, servings in leg.counts:
            totals[key] = totals.get(key, 0.0) + servings
    return tuple(totals.items())


def legs_from(outlook: Outlook, station: str, until: Offer) -> Sequence[LegFuel]:
    """Return the legs from *station* to the next one that offers *until*, or the finish."""
    if outlook.fuel is None or outlook.project.course is None:
        return ()
    found: list[LegFuel] = []
    has_begun = False
    for leg in outlook.fuel.legs:
        if has_begun:
            found.append(leg)
            if leg.station and until in outlook.project.course.station(leg.station).offers:
                break
        has_begun = has_begun or leg.station == station
    return found


def hand_over_foods(outlook: Outlook, station: str, words: Words) -> tuple[str, ...]:
    """Return what the crew hands over: the foods to where they are met next."""
    course = outlook.project.course
    if course is None or Offer.CREW not in course.station(station).offers:
        return ()
    return count_texts(outlook, sums(legs_from(outlook, station, Offer.CREW)), words)


def bag_foods(outlook: Outlook, station: str, words: Words) -> tuple[str, ...]:
    """Return the foods for the bag at *station*: those to the next bag."""
    return count_texts(outlook, sums(legs_from(outlook, station, Offer.DROP_BAG)), words)
