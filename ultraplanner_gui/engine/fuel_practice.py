"""Practising the race's food in training: what to eat on a session, and what the gut has shown."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from datetime import date

from ultraplanner_gui.engine.fuel_kit import Taste, may_use, taste_of
from ultraplanner_gui.plan.block import Block, Gut, Session
from ultraplanner_gui.plan.fuel import Food, FuelPlan, Portion, Tolerance
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.fuelling import S_PER_H, dose

# OWN: only a run this long, eaten on for so much of the rate, says anything of the race.
LEAST_RUN_S = 60.0 * 60.0
TIMES = 2
_HALF = 0.5
_HAIR = 1e-9


class Tolerated(Value, frozen=True):
    """What training shows: the highest rate that sat well on `TIMES` runs, on which *days*."""

    g_per_h: float
    days: tuple[date, ...]


def practice_portions(fuel: FuelPlan, session: Session) -> tuple[Portion, ...]:
    """Return what to eat on *session* for its practice carbohydrate, of the race's own foods.

    What is not tried yet comes first; drink gives up to half, the rest comes in whole pieces.
    """
    grams = dose(session.carb_g_per_h, session.duration_s)
    planned = {item.food for item in fuel.items}
    foods = [
        f
        for f in fuel.foods
        if f.carb_g > 0.0 and f.is_carried and may_use(fuel, f) and not f.caffeine_mg
    ]
    foods = [f for f in foods if f.key in planned] or foods
    if not foods or grams <= 0.0:
        return ()
    foods.sort(key=lambda f: f.tolerance is not Tolerance.NOT_TRIED)
    drinks = [f for f in foods if taste_of(f) is Taste.DRINK]
    solids = [f for f in foods if taste_of(f) is not Taste.DRINK]
    portions: dict[str, float] = {}
    left = grams
    if drinks:
        share = _HALF if solids else 1.0
        servings = math.floor(share * left / drinks[0].carb_g / _HALF + _HAIR) * _HALF
        if servings:
            portions[drinks[0].key] = servings
            left -= servings * drinks[0].carb_g
    for turn in range(200):
        if not solids:
            break
        food = solids[turn % min(len(solids), 2)]
        if left < food.carb_g / 2.0:
            break
        portions[food.key] = portions.get(food.key, 0.0) + 1.0
        left -= food.carb_g
    return tuple(Portion(key, servings) for key, servings in portions.items())


def portions_carb_g(foods: Iterable[Food], portions: Sequence[Portion]) -> float:
    """Return the carbohydrate of *portions*; of a food that is gone nothing is known."""
    carb = {f.key: f.carb_g for f in foods}
    return sum(carb.get(p.food, 0.0) * p.servings for p in portions)


def tolerated_rate(block: Block) -> Tolerated | None:
    """Return the highest rate that sat well on two runs of an hour or more, None without.

    A later run at that rate or less with a bad gut takes back what came before it. Own rule.
    """
    runs = [(s.day, rate, s.done.gut) for s in block.sessions if s.done and (rate := _rate(s))]
    fine: list[tuple[float, date]] = []
    for day, rate, gut in runs:
        if gut is Gut.BAD:
            fine = [(r, d) for r, d in fine if r < rate]
        elif gut is Gut.FINE:
            fine.append((rate, day))
    fine.sort(reverse=True)
    if len(fine) < TIMES:
        return None
    return Tolerated(fine[TIMES - 1][0], tuple(sorted(d for _, d in fine[:TIMES])))


def _rate(session: Session) -> float:
    done = session.done
    if done is None or not session.kind.is_run or done.duration_s < LEAST_RUN_S:
        return 0.0
    return done.carb_g * S_PER_H / done.duration_s


def tolerated_foods(block: Block) -> dict[str, Tolerance]:
    """Return what training says of foods: eaten and well on two runs, or badly on one."""
    fine: dict[str, int] = {}
    found: dict[str, Tolerance] = {}
    for session in block.sessions:
        if session.done is None:
            continue
        for portion in session.done.foods:
            if session.done.gut is Gut.FINE:
                fine[portion.food] = fine.get(portion.food, 0) + 1
                if fine[portion.food] >= TIMES:
                    found[portion.food] = Tolerance.TOLERATED
    return found
