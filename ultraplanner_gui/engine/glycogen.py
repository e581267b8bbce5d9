"""The glycogen ledger of a race: stores along the course, where they run out, load of the gut."""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from typing import TYPE_CHECKING

import numpy as np

from ultraplanner_gui.engine.fuel_checks import FuelCheck
from ultraplanner_gui.engine.fuel_kit import fructose_g
from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.fuel import Effort, FuelPlan, Tank
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.fuelling import MOST_GLUCOSE_G_PER_H, MOST_MIXED_G_PER_H
from ultraplanner_gui.science.glycogen import (
    EMPTY_SHARE,
    FULL_GUT_G,
    KCAL_PER_G_GLYCOGEN,
    LOW_LIVER_G,
    LOW_SHARE,
    OVERFULL_GUT_G,
    SHARE_SPREAD,
    Stores,
    carb_share,
    first_empty,
    legs_g,
    oxygen_ml_per_kg_min,
    run_kcal,
    run_stores,
)
from ultraplanner_gui.science.gradient_cost import LEVEL_RUNNING_J_PER_KG_M, running_cost

if TYPE_CHECKING:
    from ultraplanner_gui.engine.fuelling import FuelFigures
    from ultraplanner_gui.engine.outlook import Outlook

# OWN: where the VO2max is not known.
INTENSITY = {Effort.EASY: 0.50, Effort.STEADY: 0.60, Effort.HARD: 0.70}
_STEP_S = 60.0
_OWN = QT_TRANSLATE_NOOP("Fuel", "Own model, a trend only: 30 % off either way is usual")


class GlycogenLedger(Value, frozen=True, eq=False):
    """Stores at each minute of the race; arrays of shape (n,).

    `usual` burns carbohydrate as most do, `fast` a tenth of all energy more: the two edges of
    the band. `empty_m` is where the legs are empty at the usual rate, `fast_empty_m` at the fast
    one, None where they are not. `intensity` is the share of VO2max, by section.
    """

    time_s: FloatArray
    distance_m: FloatArray
    usual: Stores
    fast: Stores
    start_g: float
    empty_m: float | None
    fast_empty_m: float | None
    intensity: tuple[float, ...]
    energy_kcal: float
    checks: tuple[FuelCheck, ...]

    def band_at(self, at_s: float) -> tuple[float, float]:
        """Return least and most of the reserve left at a time, g; never below nothing."""
        low = float(np.interp(at_s, self.time_s, left_g(self.fast)))
        return low, float(np.interp(at_s, self.time_s, left_g(self.usual)))

    def gut_at(self, at_s: float) -> float:
        """Return what lies in the gut unused at a time, g."""
        return float(np.interp(at_s, self.time_s, self.usual.gut_g))


def left_g(stores: Stores) -> FloatArray:
    """Return liver and legs together, empty legs counted as nothing."""
    return np.asarray(stores.liver_g + np.maximum(stores.legs_g, 0.0), dtype=np.float64)


def absorbed_cap_g_per_h(fuel: FuelPlan) -> float:
    """Return the most that is absorbed of what *fuel* holds: glucose no more than 60 g/h.

    Jeukendrup 2014, Sports Med 44 Suppl 1:S25-S33: 60 of one kind, 90 of a mixture of 2:1.
    """
    servings: dict[str, float] = {}
    for item in fuel.items:
        servings[item.food] = servings.get(item.food, 0.0) + item.servings
    eaten = [(food, servings[food.key]) for food in fuel.foods if food.key in servings]
    carb = sum(food.carb_g * count for food, count in eaten)
    if carb <= 0.0:
        return MOST_GLUCOSE_G_PER_H
    fructose = sum(fructose_g(food) * count for food, count in eaten)
    glucose_share = max(1.0 - fructose / carb, 0.01)
    return min(MOST_GLUCOSE_G_PER_H / glucose_share, MOST_MIXED_G_PER_H)


def glycogen_ledger(
    fuel: FuelPlan,
    profile: Profile,
    target: PacePlan,
    sections: Sequence[SectionFigures],
    body_kg: float,
) -> GlycogenLedger:
    """Return the ledger of *fuel*, its items resolved to the clock, at the pace of *target*."""
    finish_s = target.finish_s
    steps = int(np.ceil(finish_s / _STEP_S))
    time_s = np.minimum(np.arange(steps + 1) * _STEP_S, finish_s)
    tank, cap = fuel.tank, absorbed_cap_g_per_h(fuel)
    ground = _ground(profile, target, sections, body_kg, tank)
    eaten = _eaten(fuel, steps, finish_s)
    energy, *burns = (
        np.diff(np.interp(time_s, ground.knot_s, so_far_g))
        for so_far_g in (ground.energy_g, ground.usual_g, ground.fast_g)
    )
    start_legs = legs_g(body_kg, tank.leg_share, tank.legs_g_per_kg)
    both = [run_stores(tank.liver_g, start_legs, burn, energy, eaten, cap) for burn in burns]
    usual, fast = both
    distance_m = np.interp(time_s, target.elapsed_s, target.distance_m)
    empty = [_empty_m(stores, distance_m) for stores in both]
    start_g = tank.liver_g + start_legs
    return GlycogenLedger(
        time_s=time_s,
        distance_m=distance_m,
        usual=usual,
        fast=fast,
        start_g=start_g,
        empty_m=empty[0],
        fast_empty_m=empty[1],
        intensity=ground.intensity,
        energy_kcal=float(ground.energy_g[-1]) * KCAL_PER_G_GLYCOGEN,
        checks=tuple(_checks(usual, fast, start_g, empty[0], empty[1], distance_m)),
    )


class _Ground(Value, frozen=True, eq=False):
    """Energy and carbohydrate burnt by each knot, g, straight between them."""

    knot_s: FloatArray
    energy_g: FloatArray
    usual_g: FloatArray
    fast_g: FloatArray
    intensity: tuple[float, ...]


@lru_cache(maxsize=4)
def _terrain_so_far(profile: Profile) -> FloatArray:
    """Return level kilometres of the same energy from the start to each point.

    Slopes by Minetti et al. 2002, J Appl Physiol 93:1039-1046, over their level cost.
    """
    dear = running_cost(profile.gradient[:-1]) / LEVEL_RUNNING_J_PER_KG_M
    km = np.diff(profile.distance_m) / 1000.0 * dear * profile.surface_cost[:-1]
    return np.concatenate(([0.0], np.cumsum(km)))


def _ground(
    profile: Profile,
    target: PacePlan,
    sections: Sequence[SectionFigures],
    body_kg: float,
    tank: Tank,
) -> _Ground:
    ends_m = [s.end_m for s in sections] or [profile.length_m]
    level_km = np.diff(
        np.interp([0.0, *ends_m], profile.distance_m, _terrain_so_far(profile))
    ).tolist()
    times = [(s.arrive_s, s.leave_s) for s in sections] or [(target.finish_s, target.finish_s)]
    knots, energy, usual, fast, intensities = [0.0], [0.0], [0.0], [0.0], []
    left_s = 0.0
    for km, (arrive_s, leave_s) in zip(level_km, times, strict=True):
        kcal, minutes = run_kcal(body_kg, km), max((arrive_s - left_s) / 60.0, 1.0)
        intensity = INTENSITY[tank.effort]
        if tank.vo2max is not None:
            intensity = oxygen_ml_per_kg_min(kcal, minutes, body_kg) / tank.vo2max
        share = carb_share(intensity)
        whole_g = kcal / KCAL_PER_G_GLYCOGEN
        for so_far, part in ((energy, 1.0), (usual, share), (fast, min(share + SHARE_SPREAD, 1.0))):
            so_far += [so_far[-1] + whole_g * part] * 2
        knots += [arrive_s, max(leave_s, arrive_s)]
        intensities.append(intensity)
        left_s = leave_s
    return _Ground(
        *(np.array(knots), np.array(energy), np.array(usual), np.array(fast)), tuple(intensities)
    )


def _eaten(fuel: FuelPlan, steps: int, finish_s: float) -> FloatArray:
    carb = {food.key: food.carb_g for food in fuel.foods}
    items = [item for item in fuel.items if item.at_s < finish_s]
    minute = np.array([int(item.at_s // _STEP_S) for item in items], dtype=np.intp)
    grams = np.array([carb[item.food] * item.servings for item in items], dtype=np.float64)
    eaten = np.bincount(minute, grams, minlength=steps)[:steps]
    return np.asarray(eaten, dtype=np.float64)


def _empty_m(stores: Stores, distance_m: FloatArray) -> float | None:
    minute = first_empty(stores.legs_g)
    if minute is None:
        return None
    return float(np.interp(minute, np.arange(len(distance_m)), distance_m))


def _checks(
    usual: Stores,
    fast: Stores,
    start_g: float,
    empty_m: float | None,
    fast_empty_m: float | None,
    distance_m: FloatArray,
) -> list[FuelCheck]:
    checks = [_stores(usual, fast, start_g, empty_m, fast_empty_m)]
    liver = float(usual.liver_g.min())
    if liver < LOW_LIVER_G and empty_m is None:
        text = QT_TRANSLATE_NOOP(
            "Fuel", "The liver falls to about {0}: low blood sugar is likely; eat more or earlier."
        )
        checks.append(_check(State.BREAKS, "liver", message(text, Quantity(liver, "g"))))
    peak = int(usual.gut_g.argmax())
    load = float(usual.gut_g[peak])
    if load > FULL_GUT_G:
        text = QT_TRANSLATE_NOOP(
            "Fuel",
            "About {0} wait in the gut at {1}: more than the body can use at this pace; take less.",
        )
        state = State.BREAKS if load > OVERFULL_GUT_G else State.STRAINS
        at = Quantity(float(distance_m[peak]), "m")
        checks.append(_check(state, "gut load", message(text, Quantity(load, "g"), at)))
    return checks


def _stores(
    usual: Stores, fast: Stores, start_g: float, empty_m: float | None, fast_empty_m: float | None
) -> FuelCheck:
    if empty_m is not None:
        text = QT_TRANSLATE_NOOP(
            "Fuel", "The legs are empty from about {0} on; eat more or go slower before it."
        )
        return _check(State.BREAKS, "glycogen", message(text, Quantity(empty_m, "m")))
    low, high = float(left_g(fast).min()), float(left_g(usual).min())
    args = (Quantity(low, "g"), Quantity(high, "g"), Quantity(start_g, "g"))
    if high < EMPTY_SHARE * start_g:
        text = QT_TRANSLATE_NOOP("Fuel", "Only {0} to {1} of glycogen are left of {2}; eat more.")
        return _check(State.BREAKS, "glycogen", message(text, *args))
    if fast_empty_m is not None:
        text = QT_TRANSLATE_NOOP(
            "Fuel", "The legs may be empty from about {0} on if you burn fast; eat more before it."
        )
        return _check(State.STRAINS, "glycogen", message(text, Quantity(fast_empty_m, "m")))
    if high < LOW_SHARE * start_g:
        text = QT_TRANSLATE_NOOP("Fuel", "At the lowest {0} to {1} of glycogen are left of {2}.")
        return _check(State.STRAINS, "glycogen", message(text, *args))
    text = QT_TRANSLATE_NOOP("Fuel", "At the lowest {0} to {1} of glycogen are left of {2}.")
    return _check(State.HOLDS, "glycogen", message(text, *args))


def _check(state: State, rule: str, text: Message) -> FuelCheck:
    return FuelCheck(state, text, message(_OWN), rule)


_recent: tuple[tuple[FuelFigures, GlycogenLedger], ...] = ()


def ledger_of(outlook: Outlook) -> GlycogenLedger | None:
    """Return the ledger of the race of *outlook*, None without a course.

    Reckoned when first asked for and kept with the fuel figures it belongs to: a drag that
    nobody watches the stores of does not pay for them.
    """
    global _recent
    fuel, profile, target = outlook.fuel, outlook.profile, outlook.target
    if fuel is None or profile is None or target is None:
        return None
    known = next((pair for pair in _recent if pair[0] is fuel), None)
    if known is None:
        body_kg = outlook.project.runner.body_kg
        known = fuel, glycogen_ledger(fuel.plan, profile, target, outlook.sections, body_kg)
    # What was asked for last goes last: that of the plan as it stands outlives a drag.
    _recent = (known, *(pair for pair in _recent if pair is not known))[:4]
    return known[1]
