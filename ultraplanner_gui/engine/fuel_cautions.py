"""Which cautions a fuel plan calls for, each once, the gravest first."""

from __future__ import annotations

from collections.abc import Iterator

from ultraplanner_gui.engine.fuel_kit import fructose_g
from ultraplanner_gui.engine.fuelling import FuelFigures
from ultraplanner_gui.science.fuelling import S_PER_H
from ultraplanner_gui.wording import cautions

# OWN: where each begins to matter.
_LONG_S = 4.0 * S_PER_H
_MUCH_FRUCTOSE_G_PER_H = 15.0


def cautions_for(figures: FuelFigures, finish_s: float, is_hot: bool = False) -> tuple[str, ...]:
    """Return what has to be said with the plan of *figures*; *is_hot* where heat is forecast."""
    return tuple(_cautions(figures, finish_s, is_hot))


def _cautions(figures: FuelFigures, finish_s: float, is_hot: bool) -> Iterator[str]:
    fuel = figures.plan
    if finish_s > _LONG_S:
        yield cautions.OVER_DRINKING
        yield cautions.PAINKILLERS
    if is_hot:
        yield cautions.HEAT
    if figures.total.caffeine_mg or fuel.before.caffeine_mg or fuel.caffeine.is_used:
        yield cautions.CAFFEINE
    foods = {food.key: food for food in fuel.foods}
    taken = [(foods[item.food], item.servings) for item in fuel.items]
    if fuel.allergens or any(food.allergens for food, _ in taken):
        yield cautions.ALLERGY
    fructose = sum(fructose_g(food) * n for food, n in taken)
    if finish_s and fructose * S_PER_H / finish_s > _MUCH_FRUCTOSE_G_PER_H:
        yield cautions.FRUCTOSE
    yield cautions.MEDICINES
