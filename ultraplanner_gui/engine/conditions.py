"""What altitude, heat, night and rough descents come to in minutes, each by itself."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from datetime import datetime
from itertools import combinations
from types import MappingProxyType

from ultraplanner_gui.engine.environment import EFFECTS, Effects
from ultraplanner_gui.engine.pacing import PaceShape, Stop, pace_at_effort, pace_for_finish
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.conditions import Effect
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value


class ConditionTimes(Value, frozen=True):
    """Seconds each effect adds to the finish at one effort; they sum to `total_s`.

    `without_s` is the finish of the same effort on a mild day, by day, near sea level and on
    firm ground. An effect that is off or has nothing to act on takes 0.
    """

    seconds: Mapping[Effect, float]
    finish_s: float
    without_s: float

    @property
    def total_s(self) -> float:
        """What all effects take together."""
        return self.finish_s - self.without_s


def condition_times(
    profile: Profile,
    finish_s: float,
    effects: Effects,
    runner: Runner | None = None,
    stops: Sequence[Stop] = (),
    shape: PaceShape = "forecast",
    start: datetime | None = None,
) -> ConditionTimes:
    """Return what each of *effects* takes of a race finished in *finish_s* seconds.

    The effort is held and the effects are switched on in every order; each is given the mean of
    what it adds (Shapley 1953, Contributions to the Theory of Games II:307-317). So the order
    does not matter and nothing is left over, though an effect stretches the others.
    """
    fresh_mps = pace_for_finish(
        profile, finish_s, runner, stops, shape, start, effects=effects
    ).fresh_mps
    there = [effect for effect in EFFECTS if effects.has(effect)]

    def finish(on: frozenset[Effect]) -> float:
        left = effects.without(*(effect for effect in EFFECTS if effect not in on))
        return pace_at_effort(
            profile, fresh_mps, runner, stops, shape, start, effects=left
        ).finish_s

    finishes = {on: finish(on) for on in _subsets(there)}
    seconds = dict.fromkeys(EFFECTS, 0.0)
    for effect in there:
        others = [other for other in there if other != effect]
        for on in _subsets(others):
            added = finishes[on | {effect}] - finishes[on]
            seconds[effect] += added * _weight(len(on), len(there))
    return ConditionTimes(
        MappingProxyType(seconds), finishes[frozenset(there)], finishes[frozenset()]
    )


def _subsets(effects: Sequence[Effect]) -> Iterator[frozenset[Effect]]:
    for size in range(len(effects) + 1):
        for chosen in combinations(effects, size):
            yield frozenset(chosen)


def _weight(before: int, players: int) -> float:
    """Return the share of all orders in which just *before* given ones come first."""
    after = players - before - 1
    return math.factorial(before) * math.factorial(after) / math.factorial(players)
