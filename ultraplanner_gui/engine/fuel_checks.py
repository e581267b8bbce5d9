"""The limits and habits a fuel plan is held against, each with its figure and its source."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.engine.fuel_kit import caffeine_caps_mg, known_sweat_l_per_h
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.fuel import FuelPlan, Tolerance
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.fuelling import (
    MOST_FLUID_ML_PER_H,
    MOST_GLUCOSE_G_PER_H,
    MOST_MIXED_G_PER_H,
    MOST_SODIUM_MG_PER_H,
    MOST_STUDIED_G_PER_H,
    MUCH_FLUID_ML_PER_H,
    S_PER_H,
    per_hour,
    recommended_carb_g_per_h,
    sodium_mmol_per_l,
    weeks_of_gut_training,
)

# Own limits.
_MOST_ABOVE_PRACTICE_G_PER_H = 10.0
_LATEST_FIRST_BITE_S = 45.0 * 60.0
_DRINKING_WINDOW_S = 2.0 * S_PER_H
_AT_ONCE_S = S_PER_H
_DAY_S = 24.0 * S_PER_H
_HALF_G_PER_H = 0.5

_OWN = QT_TRANSLATE_NOOP("Fuel", "Own rule")
_JEUKENDRUP = "Jeukendrup 2014, Sports Med 44 Suppl 1:S25-S33"
_VIRIBAY = "Viribay et al. 2020, Nutrients 12:1367"
_TILLER = "Tiller et al. 2019, J Int Soc Sports Nutr 16:50"
_EFSA = "EFSA NDA Panel 2015, EFSA Journal 13(5):4102"
_SAWKA = "Sawka et al. 2007, Med Sci Sports Exerc 39:377-390"
_HOFFMAN = "Hoffman & Stuempfle 2014, Res Sports Med 22:213-225"
_GUT = QT_TRANSLATE_NOOP(
    "Fuel", "Own rule, after Costa et al. 2017, Appl Physiol Nutr Metab 42:547-557"
)


class FuelCheck(Value, frozen=True):
    """A limit or habit the plan touches: state, sentence, source, and the rule it is about."""

    state: State
    text: Message
    source: Message
    rule: str = ""


class Taken(Value, frozen=True, eq=False):
    """What is taken in the race, by time; arrays of shape (n,). `beyond` is how many items lie
    beyond the finish.
    """

    finish_s: float
    at_s: FloatArray
    carb_g: FloatArray
    fluid_ml: FloatArray
    sodium_mg: FloatArray
    caffeine_mg: FloatArray
    fructose_g: FloatArray
    beyond: int

    def peak(self, amounts: FloatArray, window_s: float) -> float:
        """Return the most taken within *window_s*."""
        if not len(self.at_s):
            return 0.0
        sums = np.concatenate(((0.0,), np.cumsum(amounts)))
        ends = np.searchsorted(self.at_s, self.at_s + window_s)
        return float(np.max(sums[ends] - sums[:-1]))

    def peak_per_hour(self, amounts: FloatArray) -> float:
        """Return the highest hourly rate over two hours, or over a shorter race."""
        window_s = min(_DRINKING_WINDOW_S, self.finish_s)
        return per_hour(self.peak(amounts, window_s), window_s)


def fuel_checks(
    fuel: FuelPlan, taken: Taken, band_g_per_h: tuple[float, float], runner: Runner
) -> tuple[FuelCheck, ...]:
    """Return every check of the fuel plan, those that hold as well.

    While nothing is placed, what is asked per hour is checked instead.
    """
    is_placed = len(taken.at_s) > 0
    carb_g_per_h = (
        per_hour(float(taken.carb_g.sum()), taken.finish_s) if is_placed else fuel.carb_g_per_h
    )
    fluid_ml_per_h = taken.peak_per_hour(taken.fluid_ml) if is_placed else fuel.fluid_ml_per_h
    checks = [
        *_of("carbs practised", _practised(carb_g_per_h, runner)),
        *_of("carb ceiling", _ceiling(carb_g_per_h, taken)),
        *_of("carb advice", _by_duration(carb_g_per_h, taken.finish_s)),
        *_of("fluid", _fluid(fluid_ml_per_h, known_sweat_l_per_h(fuel))),
        *_of("sodium", _sodium(fuel, taken, is_placed)),
    ]
    if is_placed:
        on_target = _of("fuel target", _on_target(carb_g_per_h, band_g_per_h))
        checks = [*on_target, *checks, *_of("first bite", _first_bite(taken))]
    caffeine = _of("caffeine", *_caffeine(fuel, taken, runner))
    marks = _of("food marks", *_marks(fuel))
    return (*marks, *checks, *caffeine, *_of("after the finish", *_beyond(taken)))


def _of(rule: str, *checks: FuelCheck) -> Iterator[FuelCheck]:
    for check in checks:
        yield replace(check, rule=rule)


def _check(state: State, text: Message, source: str) -> FuelCheck:
    return FuelCheck(state, text, message(source))


def _rate(g_per_h: float) -> Quantity:
    return Quantity(g_per_h, "g_per_h")


def _on_target(g_per_h: float, band: tuple[float, float]) -> FuelCheck:
    low, high = band
    if low <= g_per_h <= high:
        text = QT_TRANSLATE_NOOP("Fuel", "The items give {0}, inside the target of {1} to {2}.")
        state = State.HOLDS
    elif g_per_h < low:
        text = QT_TRANSLATE_NOOP(
            "Fuel", "The items give {0}, below the target of {1} to {2}; add some or ask for less."
        )
        state = State.STRAINS
    else:
        text = QT_TRANSLATE_NOOP(
            "Fuel", "The items give {0}, above the target of {1} to {2}; take some out."
        )
        state = State.STRAINS
    return _check(state, message(text, _rate(g_per_h), _rate(low), _rate(high)), _OWN)


def _practised(g_per_h: float, runner: Runner) -> FuelCheck:
    practised = runner.carb_g_per_h
    if g_per_h <= practised + _MOST_ABOVE_PRACTICE_G_PER_H:
        text = QT_TRANSLATE_NOOP("Fuel", "{0} is near the {1} your gut is known to take.")
        return _check(State.HOLDS, message(text, _rate(g_per_h), _rate(practised)), _OWN)
    weeks = weeks_of_gut_training(practised, g_per_h)
    text = QT_TRANSLATE_NOOP(
        "Fuel",
        "{0} is well above the {1} your gut is known to take; practise for about {2} weeks first.",
    )
    return _check(State.STRAINS, message(text, _rate(g_per_h), _rate(practised), weeks), _GUT)


def _ceiling(g_per_h: float, taken: Taken) -> FuelCheck:
    hour_g = max(g_per_h, taken.peak(taken.carb_g, S_PER_H) if taken.finish_s >= S_PER_H else 0.0)
    if hour_g > MOST_STUDIED_G_PER_H + _HALF_G_PER_H:
        text = QT_TRANSLATE_NOOP(
            "Fuel", "{0} in one hour is more than has been studied ({1}); spread it or take less."
        )
        return _check(
            State.BREAKS, message(text, _rate(hour_g), _rate(MOST_STUDIED_G_PER_H)), _VIRIBAY
        )
    if g_per_h > MOST_MIXED_G_PER_H + _HALF_G_PER_H:
        text = QT_TRANSLATE_NOOP(
            "Fuel", "{0} is more than most guts take even when trained; above {1} expect trouble."
        )
        return _check(
            State.BREAKS, message(text, _rate(g_per_h), _rate(MOST_MIXED_G_PER_H)), _JEUKENDRUP
        )
    glucose_g_per_h = _glucose(taken)
    if glucose_g_per_h > MOST_GLUCOSE_G_PER_H + _HALF_G_PER_H:
        text = QT_TRANSLATE_NOOP(
            "Fuel",
            "{0} of it is glucose, more than is absorbed ({1}); swap some for a mix with fructose.",
        )
        return _check(
            State.STRAINS,
            message(text, _rate(glucose_g_per_h), _rate(MOST_GLUCOSE_G_PER_H)),
            _JEUKENDRUP,
        )
    if g_per_h > MOST_GLUCOSE_G_PER_H + _HALF_G_PER_H:
        text = QT_TRANSLATE_NOOP(
            "Fuel",
            "{0} takes a trained gut, and glucose with fructose; take less if you feel sick.",
        )
        return _check(State.STRAINS, message(text, _rate(g_per_h)), _JEUKENDRUP)
    text = QT_TRANSLATE_NOOP("Fuel", "{0} can be absorbed from any kind of sugar.")
    return _check(State.HOLDS, message(text, _rate(g_per_h)), _JEUKENDRUP)


def _glucose(taken: Taken) -> float:
    """Return the glucose taken per hour: all carbohydrate that is not fructose."""
    return per_hour(float(taken.carb_g.sum() - taken.fructose_g.sum()), taken.finish_s)


def _by_duration(g_per_h: float, finish_s: float) -> FuelCheck:
    low, high = recommended_carb_g_per_h(finish_s)
    span = Quantity(finish_s, "s")
    if g_per_h >= low - _HALF_G_PER_H:
        text = QT_TRANSLATE_NOOP("Fuel", "For {0} the advice is {1} to {2}; the plan has {3}.")
        state = State.HOLDS
    else:
        text = QT_TRANSLATE_NOOP("Fuel", "For {0} the advice is {1} to {2}; the plan has only {3}.")
        state = State.STRAINS
    return _check(state, message(text, span, _rate(low), _rate(high), _rate(g_per_h)), _JEUKENDRUP)


def _first_bite(taken: Taken) -> FuelCheck:
    fed = taken.at_s[taken.carb_g > 0.0]
    first_s = float(fed[0]) if len(fed) else taken.finish_s
    at = Quantity(first_s, "s")
    if first_s <= _LATEST_FIRST_BITE_S or taken.finish_s <= 2.0 * _LATEST_FIRST_BITE_S:
        text = QT_TRANSLATE_NOOP("Fuel", "The first carbohydrate comes after {0}.")
        return _check(State.HOLDS, message(text, at), _OWN)
    text = QT_TRANSLATE_NOOP(
        "Fuel", "The first carbohydrate comes only after {0}; start within 30 to 45 minutes."
    )
    return _check(State.STRAINS, message(text, at), _OWN)


def _marks(fuel: FuelPlan) -> Iterator[FuelCheck]:
    """Yield a check for every food of the plan the runner must not or would not eat."""
    named = set(fuel.allergens)
    doubtful = [f for f in fuel.foods if f.tolerance is Tolerance.AVOID or named & {*f.allergens}]
    planned = {item.food for item in fuel.items} if doubtful else set()
    for food in doubtful:
        if food.key not in planned:
            continue
        name = food.name.partition(",")[0]
        if set(food.allergens) & set(fuel.allergens):
            text = QT_TRANSLATE_NOOP(
                "Fuel", "{0} holds what you said you must not eat; take it out of the plan."
            )
            yield _check(State.BREAKS, message(text, name), _OWN)
        elif food.tolerance is Tolerance.AVOID:
            text = QT_TRANSLATE_NOOP("Fuel", "{0} is marked to avoid and stands in the plan.")
            yield _check(State.STRAINS, message(text, name), _OWN)


def _fluid(ml_per_h: float, sweat_l_per_h: float | None) -> FuelCheck:
    amount = Quantity(ml_per_h, "ml")
    if sweat_l_per_h is not None and ml_per_h > 1000.0 * sweat_l_per_h:
        text = QT_TRANSLATE_NOOP(
            "Fuel", "{0} of fluid an hour at some time, but you sweat only {1}; drink less."
        )
        sweat = Quantity(1000.0 * sweat_l_per_h, "ml")
        return _check(State.BREAKS, message(text, amount, sweat), _SAWKA)
    if ml_per_h <= MUCH_FLUID_ML_PER_H:
        text = QT_TRANSLATE_NOOP(
            "Fuel", "At most {0} of fluid an hour to have at hand; drink to thirst."
        )
        return _check(State.HOLDS, message(text, amount), _TILLER)
    text = QT_TRANSLATE_NOOP(
        "Fuel",
        "{0} of fluid an hour at some time; drink to thirst and never more than you sweat.",
    )
    state = State.STRAINS if ml_per_h <= MOST_FLUID_ML_PER_H else State.BREAKS
    return _check(state, message(text, amount), _TILLER)


def _sodium(fuel: FuelPlan, taken: Taken, is_placed: bool) -> FuelCheck:
    mg_per_h = taken.peak_per_hour(taken.sodium_mg) if is_placed else fuel.sodium_mg_per_h
    amount = Quantity(mg_per_h, "mg")
    if mg_per_h > MOST_SODIUM_MG_PER_H:
        text = QT_TRANSLATE_NOOP(
            "Fuel", "{0} of sodium an hour at some time is much; it need not all be replaced."
        )
        return _check(State.STRAINS, message(text, amount), _OWN)
    fluid_l = float(taken.fluid_ml.sum()) / 1000.0
    if fluid_l <= 0.0:
        text = QT_TRANSLATE_NOOP("Fuel", "At most {0} of sodium an hour.")
        return _check(State.HOLDS, message(text, amount), _HOFFMAN)
    text = QT_TRANSLATE_NOOP(
        "Fuel",
        "At most {0} of sodium an hour, {1} mmol a litre; it is no shield against over-drinking.",
    )
    mmol = sodium_mmol_per_l(float(taken.sodium_mg.sum()) / fluid_l)
    return _check(State.HOLDS, message(text, amount, Quantity(mmol, "count")), _HOFFMAN)


def _caffeine(fuel: FuelPlan, taken: Taken, runner: Runner) -> Iterator[FuelCheck]:
    if not taken.caffeine_mg.any():
        return
    dose_mg, day_mg = caffeine_caps_mg(fuel, runner.body_kg)
    at_once = taken.peak(taken.caffeine_mg, _AT_ONCE_S)
    text = (
        QT_TRANSLATE_NOOP("Fuel", "At most {0} of caffeine within an hour; the limit is {1}.")
        if at_once <= dose_mg
        else QT_TRANSLATE_NOOP(
            "Fuel", "{0} of caffeine within an hour; above {1} at once is not held to be safe."
        )
    )
    state = State.HOLDS if at_once <= dose_mg else State.BREAKS
    yield _check(state, message(text, Quantity(at_once, "mg"), Quantity(dose_mg, "mg")), _EFSA)
    by_day = taken.peak(taken.caffeine_mg, _DAY_S)
    first_day = float(taken.caffeine_mg[taken.at_s < _DAY_S].sum())
    by_day = max(by_day, first_day + fuel.before.caffeine_mg)
    text = (
        QT_TRANSLATE_NOOP(
            "Fuel",
            "{0} of caffeine within 24 hours; the limit is {1}, your morning coffee included.",
        )
        if by_day <= day_mg
        else QT_TRANSLATE_NOOP(
            "Fuel",
            "{0} of caffeine within 24 hours, coffee aside; above {1} is not held to be safe.",
        )
    )
    state = State.HOLDS if by_day <= day_mg else State.BREAKS
    yield _check(state, message(text, Quantity(by_day, "mg"), Quantity(day_mg, "mg")), _EFSA)


def _beyond(taken: Taken) -> Iterator[FuelCheck]:
    if taken.beyond:
        text = QT_TRANSLATE_NOOP(
            "Fuel", "Items after the finish: {0}; take them out or place the fuel again."
        )
        yield _check(State.STRAINS, message(text, taken.beyond), _OWN)
