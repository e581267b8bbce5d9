"""The plan's splits beside plain rules: even pace, climb rules, hikers, laboratory cost."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np

from ultraplanner_gui.engine.pacing import PacePlan, stopped_before
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, message
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.constant_power import Pieces, Ways, power_for_time, times_at_power
from ultraplanner_gui.science.walking import hiking_speed, naismith_s, tobler_speed

# Scarf 2007, J Sports Sci 25:719-726.
CLIMB_RATIO = 8.0
# From 2.0 m/s down one walks; 0.9 of race pace downhill (OWN, typical skill).
_LABORATORY = Ways(descent_skill=0.9, least_run_mps=2.0)


class Rule(Value, frozen=True):
    """One way to split a course: its name, and the race time of arrival at each place.

    All rules take the finish and the stops of the plan they stand beside. `own_finish_s` is the
    finish the rule names by itself, None where it only splits.
    """

    name: Message
    arrivals_s: tuple[float, ...]
    own_finish_s: float | None = None


def beside(profile: Profile, plan: PacePlan, places_m: Sequence[float]) -> tuple[Rule, ...]:
    """Return plain rules beside *plan* at places in course order."""
    names = {
        "even": QT_TRANSLATE_NOOP("Plan", "Even pace"),
        "climb": QT_TRANSLATE_NOOP("Plan", "1 m of climb as 8 m of distance (Scarf 2007)"),
        "naismith": QT_TRANSLATE_NOOP("Plan", "An hour for 5 km and for 600 m of climb (Naismith)"),
        "tobler": QT_TRANSLATE_NOOP("Plan", "Hiking speed by slope (Tobler 1993)"),
        "hikers": QT_TRANSLATE_NOOP("Plan", "Median of hikers (Campbell 2022)"),
        "power": QT_TRANSLATE_NOOP("Plan", "Constant power on laboratory cost (Minetti 2002)"),
    }
    own = {"naismith", "tobler", "hikers"}
    stopped_s = sum(stop.stop_s for stop in plan.stops)
    rules = []
    for key, name in names.items():
        pieces_s = _RULES[key](profile, plan)
        walked_s = float(pieces_s.sum())
        rules.append(
            Rule(
                message(name),
                _shared_out(profile, plan, pieces_s, places_m),
                walked_s + stopped_s if key in own else None,
            )
        )
    return tuple(rules)


def split(profile: Profile, plan: PacePlan, rule: str) -> FloatArray:
    """Return the moving time of *rule* from the start to each point, with the finish of *plan*.

    *rule* is one of even, climb, naismith, tobler, hikers, power.
    """
    pieces_s = _RULES[rule](profile, plan)
    moving_s = np.concatenate(([0.0], np.cumsum(pieces_s)))
    return np.asarray(moving_s / moving_s[-1] * plan.moving_s[-1], dtype=np.float64)


def _shared_out(
    profile: Profile, plan: PacePlan, pieces_s: FloatArray, places_m: Sequence[float]
) -> tuple[float, ...]:
    moving_s = np.concatenate(([0.0], np.cumsum(pieces_s)))
    moving_s = moving_s / moving_s[-1] * plan.moving_s[-1]
    at_m = np.asarray(places_m, dtype=np.float64)
    arrivals = np.interp(at_m, profile.distance_m, moving_s) + stopped_before(plan.stops, at_m)
    return tuple(arrivals.tolist())


def _even(profile: Profile, plan: PacePlan) -> FloatArray:
    return np.diff(profile.distance_m)


def _climb(profile: Profile, plan: PacePlan) -> FloatArray:
    return np.diff(profile.distance_m) + CLIMB_RATIO * _rise(profile)


def _naismith(profile: Profile, plan: PacePlan) -> FloatArray:
    return naismith_s(np.diff(profile.distance_m), _rise(profile))


def _tobler(profile: Profile, plan: PacePlan) -> FloatArray:
    return np.asarray(_along(profile) / tobler_speed(profile.gradient[:-1]), dtype=np.float64)


def _hikers(profile: Profile, plan: PacePlan) -> FloatArray:
    return np.asarray(_along(profile) / hiking_speed(profile.gradient[:-1]), dtype=np.float64)


def _power(profile: Profile, plan: PacePlan) -> FloatArray:
    distance_m = np.diff(profile.distance_m)
    pieces = Pieces(
        distance_m,
        distance_m * profile.gradient[:-1],
        profile.surface_cost[:-1],
        np.ones(len(distance_m)),
    )
    power = power_for_time(pieces, float(plan.moving_s[-1]), _LABORATORY)
    return times_at_power(pieces, power, _LABORATORY)[0]


def _rise(profile: Profile) -> FloatArray:
    """Return how far each piece goes up."""
    return np.diff(profile.distance_m) * np.maximum(profile.gradient[:-1], 0.0)


def _along(profile: Profile) -> FloatArray:
    return np.diff(profile.distance_m) * np.hypot(1.0, profile.gradient[:-1])


_RULES: dict[str, Callable[[Profile, PacePlan], FloatArray]] = {
    "even": _even,
    "climb": _climb,
    "naismith": _naismith,
    "tobler": _tobler,
    "hikers": _hikers,
    "power": _power,
}
