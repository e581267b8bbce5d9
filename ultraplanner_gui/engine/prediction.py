"""The finish time to expect from what the runner has done: a window, and why."""

from __future__ import annotations

import math
from collections.abc import Sequence
from datetime import datetime
from typing import Literal

import numpy as np

from ultraplanner_gui.engine.environment import Effects
from ultraplanner_gui.engine.odds import NORMAL_90
from ultraplanner_gui.engine.pacing import PacePlan, Stop, flat_length_m, pace_at_effort
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.engine.recorded_pace import recorded_pace
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, PlanError, Quantity, message
from ultraplanner_gui.plan.pacing import PastRun, ResultKind
from ultraplanner_gui.plan.recording import Recording
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.gradient_cost import pace_cost

Kind = Literal["race", "long run"]
_KINDS: dict[ResultKind, Kind] = {ResultKind.RACE: "race", ResultKind.LONG_RUN: "long run"}

# How time grows with distance, T2 = T1 (D2 / D1) ** k: Riegel 1981, American Scientist 69:285-290,
# with 1.06 to 1.08 up to four hours. Beyond, no exponent is published; 1.12 to 1.18 up to a
# day and 1.20 to 1.30 past it are a planning band of our own (OWN), never one number.
EXPONENTS: tuple[tuple[float, float, float], ...] = (
    (4.0, 1.06, 1.08),
    (24.0, 1.12, 1.18),
    (math.inf, 1.20, 1.30),
)

# OWN, like all below: how far one race lies off what the runner could do, as a share of time.
RACE_SPREAD = 0.05
# A long run is taken as run so much slower than a race of its length, give or take.
LONG_RUN_SLOWER, LONG_RUN_SPREAD = 0.10, 0.08
SHORTEST_S = 1200.0
LONGEST_REACH = 8.0
WIDE_REACH = 2.0
DISAGREE = 0.10
_SLOPED_SHARE = 2.0 / 3.0
_STEPS = 200
_CLEAR_BEND = 0.3
_ROUNDS = 30
_CLOSE_S = 0.1


class Result(Value, frozen=True):
    """Something the runner has done: running time over a distance with so much climb.

    As much drop as climb is assumed. `flat_m` is the flat-equivalent distance where it is known
    from a recording, else it is estimated.
    """

    distance_m: float
    climb_m: float
    time_s: float
    kind: Kind = "race"
    name: str = ""
    flat_m: float | None = None

    @property
    def flat_equivalent_m(self) -> float:
        """Metres of level firm ground that take as long."""
        if self.flat_m is not None:
            return self.flat_m
        return flat_equivalent_m(self.distance_m, self.climb_m)


class Prediction(Value, frozen=True):
    """The finish time to expect, stops included: 10th, 50th and 90th percentile, seconds.

    `spread` is the standard deviation over the finish time, as `Scatter.ability` takes it.
    `reasons` say in words where it comes from.
    """

    low_s: float
    middle_s: float
    high_s: float
    spread: float
    exponents: tuple[float, float]
    reasons: tuple[Message, ...]


def flat_equivalent_m(distance_m: float, climb_m: float) -> float:
    """Return the flat-equivalent distance of a run known by distance and climb alone.

    Two thirds of it are taken as slopes, half up and half down, of one gradient (OWN); the cost
    is that of the pace model.
    """
    sloped_m = distance_m * _SLOPED_SHARE
    gradient = 2.0 * climb_m / sloped_m
    up, down = pace_cost([gradient, -gradient])
    return distance_m - sloped_m + sloped_m * float(up + down) / 2.0


def result_of_run(run: PastRun) -> Result:
    """Return a past run as a result."""
    kind = _KINDS[run.kind]
    return Result(run.distance_m, run.climb_m, run.time_s, kind, run.name, run.flat_m)


def result_of(recording: Recording, kind: Kind = "race", runner: Runner | None = None) -> Result:
    """Return a recorded run as a result, its standing time left out."""
    pace = recorded_pace(recording)
    profile = pace.profile
    return Result(
        distance_m=profile.length_m,
        climb_m=profile.ascent_m,
        time_s=float(pace.moving_s.sum()),
        kind=kind,
        name=recording.name,
        flat_m=flat_length_m(profile, runner),
    )


def predict(
    profile: Profile,
    results: Sequence[Result],
    stops: Sequence[Stop] = (),
    runner: Runner | None = None,
) -> Prediction:
    """Return the finish time on *profile* to expect from *results*, planned stops added.

    Each result is carried to the flat-equivalent distance of the course with an exponent that
    grows with the hours; several are weighed by how surely they can be carried, and draw the
    exponent their way if they disagree along it (normal regression with the band as prior, OWN).
    PlanError where nothing usable was given.
    """
    target_m = flat_length_m(profile, runner)
    _check(results, target_m)
    carried = [_carried(result, target_m) for result in results]
    middle, deviation, bend = _joined(carried)
    spread = math.hypot(deviation, RACE_SPREAD)
    stopped_s = sum(stop.stop_s for stop in stops if stop.at_m < profile.length_m)
    low_s, middle_s, high_s = (
        math.exp(middle + side * NORMAL_90 * spread) + stopped_s for side in (-1.0, 0.0, 1.0)
    )
    band = _exponents(math.exp(middle) / 3600.0)
    return Prediction(
        low_s=low_s,
        middle_s=middle_s,
        high_s=high_s,
        spread=(high_s - low_s) / (2.0 * NORMAL_90 * middle_s),
        exponents=band,
        reasons=_reasons(results, carried, target_m, bend, stopped_s),
    )


def plan_from_passing(
    profile: Profile,
    at_m: float,
    elapsed_s: float,
    runner: Runner | None = None,
    stops: Sequence[Stop] = (),
    start: datetime | None = None,
    *,
    effects: Effects | None = None,
) -> PacePlan:
    """Return the forecast of a runner of whom only one passing is known.

    Its finish is that of the runners who get to *at_m* after *elapsed_s* seconds. PlanError if
    the planned stops before it take all that time.
    """
    stopped_s = sum(stop.stop_s for stop in stops if stop.at_m < at_m)
    if not 0.0 < at_m <= profile.length_m or elapsed_s <= stopped_s:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Plan",
                "Nobody gets there in {0} with the stops planned before it; check place and time.",
            ),
            Quantity(elapsed_s, "s"),
        )
    fresh_mps = flat_length_m(profile, runner) / (elapsed_s * profile.length_m / at_m)
    plan = pace_at_effort(profile, fresh_mps, runner, stops, start=start, effects=effects)
    for _ in range(_ROUNDS):
        arrival_s = plan.arrival_s(at_m)
        if abs(arrival_s - elapsed_s) < _CLOSE_S:
            break
        fresh_mps *= (arrival_s - stopped_s) / (elapsed_s - stopped_s)
        plan = pace_at_effort(profile, fresh_mps, runner, stops, start=start, effects=effects)
    return plan


class _Carried(Value, frozen=True):
    """A result carried to the course: log of its time there, what the band of exponents leaves
    open (signed: above zero where the course is longer), and how far the result itself may lie off.
    """

    log_s: float
    open_by: float
    scatter: float


def _carried(result: Result, target_m: float) -> _Carried:
    is_race = result.kind == "race"
    log_s = math.log(result.time_s * (1.0 if is_race else 1.0 - LONG_RUN_SLOWER))
    step = math.log(target_m / result.flat_equivalent_m) / _STEPS
    open_by = 0.0
    for _ in range(_STEPS):
        low, high = _exponents(math.exp(log_s) / 3600.0)
        log_s += step * (low + high) / 2.0
        open_by += step * (high - low) / 2.0
    return _Carried(log_s, open_by, RACE_SPREAD if is_race else LONG_RUN_SPREAD)


def _exponents(hours: float) -> tuple[float, float]:
    return next((low, high) for until_h, low, high in EXPONENTS if hours < until_h)


def _joined(carried: Sequence[_Carried]) -> tuple[float, float, float]:
    """Return the log time on the course, its standard deviation, and how the exponent was drawn.

    Each result is the truth, less the bend of the exponent times what it leaves open, plus its
    scatter; the bend is normal about zero. Results that scatter more than expected widen it.
    """
    log_s = np.array([c.log_s for c in carried])
    open_by = np.array([c.open_by for c in carried])
    weight = np.array([c.scatter for c in carried]) ** -2
    design = np.column_stack([np.ones(len(carried)), -open_by])
    precision = design.T @ (design * weight[:, None]) + np.diag([0.0, 1.0])
    covariance = np.linalg.inv(precision)
    middle, bend = (covariance @ (design.T @ (weight * log_s))).tolist()
    left = log_s - design @ (middle, bend)
    excess = float(weight @ left**2) / max(len(carried) - 1, 1)
    return middle, math.sqrt(covariance[0, 0] * max(excess, 1.0)), bend


def _check(results: Sequence[Result], target_m: float) -> None:
    if not results:
        raise PlanError(
            QT_TRANSLATE_NOOP("Plan", "Type in a race or a long run first: distance, climb, time.")
        )
    for result in results:
        sizes = (result.distance_m, result.climb_m, result.time_s)
        if not all(map(math.isfinite, sizes)) or result.distance_m <= 0.0 or result.climb_m < 0.0:
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "Plan", "A result needs a distance and a time above zero and a climb of 0 up."
                )
            )
        if result.time_s < SHORTEST_S:
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "Plan", "A run of {0} says nothing about an ultra; give one of {1} or more."
                ),
                Quantity(result.time_s, "s"),
                Quantity(SHORTEST_S, "s"),
            )
    longest_m = max(result.flat_equivalent_m for result in results)
    if target_m > LONGEST_REACH * longest_m:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Plan",
                "The course is more than {0} times as far as anything typed in; add a longer run.",
            ),
            f"{LONGEST_REACH:g}",
        )


def _reasons(
    results: Sequence[Result],
    carried: Sequence[_Carried],
    target_m: float,
    bend: float,
    stopped_s: float,
) -> tuple[Message, ...]:
    reasons = [_own_reason(result, c) for result, c in zip(results, carried, strict=True)]
    if any(result.kind == "long run" for result in results):
        reasons.append(
            message(
                QT_TRANSLATE_NOOP("Plan", "A long run is taken as {0} slower than a race."),
                Quantity(100.0 * LONG_RUN_SLOWER, "percent"),
            )
        )
    longest = max(result.flat_equivalent_m for result in results)
    if target_m > longest:
        low, high = _exponents(min(math.exp(c.log_s) for c in carried) / 3600.0)
        reasons.append(
            message(
                QT_TRANSLATE_NOOP(
                    "Plan",
                    "The longer, the slower: time grows with distance to the power {0} to {1}.",
                ),
                f"{low:.2f}",
                f"{high:.2f}",
            )
        )
    if target_m > WIDE_REACH * longest:
        reasons.append(
            message(
                QT_TRANSLATE_NOOP(
                    "Plan", "Nothing typed in is half as far as this course, so the window is wide."
                )
            )
        )
    reasons += _joint_reasons(carried, bend)
    if stopped_s > 0.0:
        reasons.append(
            message(
                QT_TRANSLATE_NOOP("Plan", "{0} of planned stops are in it."),
                Quantity(stopped_s, "s"),
            )
        )
    return tuple(reasons)


def _own_reason(result: Result, carried: _Carried) -> Message:
    return message(
        QT_TRANSLATE_NOOP("Plan", "{0} in {1}, worth {2} on the flat, comes to {3} here."),
        result.name or Quantity(result.distance_m, "m"),
        Quantity(result.time_s, "s"),
        Quantity(result.flat_equivalent_m, "m"),
        Quantity(math.exp(carried.log_s), "s"),
    )


def _joint_reasons(carried: Sequence[_Carried], bend: float) -> list[Message]:
    times = [c.log_s for c in carried]
    reasons = []
    if max(times) - min(times) > DISAGREE:
        apart = 100.0 * math.expm1(max(times) - min(times))
        reasons.append(
            message(
                QT_TRANSLATE_NOOP("Plan", "The results lie {0} apart, which widens the window."),
                Quantity(apart, "percent"),
            )
        )
    if bend > _CLEAR_BEND:
        reasons.append(
            message(QT_TRANSLATE_NOOP("Plan", "You slow down more than most as it gets longer."))
        )
    if bend < -_CLEAR_BEND:
        reasons.append(
            message(QT_TRANSLATE_NOOP("Plan", "You slow down less than most as it gets longer."))
        )
    return reasons
