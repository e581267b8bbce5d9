"""What one recording says of itself: slopes, pace on them, how it slowed, where it stood."""

from __future__ import annotations

import numpy as np

from ultraplanner_gui.engine.match import GRADIENT_EDGES
from ultraplanner_gui.engine.recorded_pace import RecordedPace
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.gradient_cost import pace_cost

HOUR_S = 3600.0
#: An hour of which less was recorded and run says nothing (own rule).
_LEAST_OF_HOUR_S = 900.0


class SlopeClass(Value, frozen=True):
    """One class of gradient, rise over run from `low` to `high`; infinite at the ends.

    `pace_s_per_m` is that of the run, `model_s_per_m` what the pace model would give at the
    same level pace; NaN where nothing of the class was run.
    """

    low: float
    high: float
    distance_m: float
    moving_s: float
    pace_s_per_m: float
    model_s_per_m: float


class HourOfRun(Value, frozen=True):
    """One hour since the start: flat-equivalent speed, over that of the first hour in `share`.

    `forecast` is what the runner's fade makes of it.
    """

    number: int
    flat_mps: float
    share: float
    forecast: float


class RunAnalysis(Value, frozen=True, eq=False):
    """All of it. `flat_m` is the flat-equivalent distance; `drift` how much slower the second
    half was than the first over equal effort, as a share; NaN where too little was run.
    `gradient` and `pace_s_per_m` are those of the sound pieces, shape (n,).
    """

    length_m: float
    flat_m: float
    climb_m: float
    drop_m: float
    moving_s: float
    standing_s: float
    stops_s: tuple[float, ...]
    slopes: tuple[SlopeClass, ...]
    hours: tuple[HourOfRun, ...]
    drift: float
    gradient: FloatArray
    pace_s_per_m: FloatArray
    level_s_per_m: float

    @property
    def flat_s_per_m(self) -> float:
        """Moving time over flat-equivalent distance."""
        return self.moving_s / self.flat_m if self.flat_m > 0.0 else np.nan


def analysis_of(pace: RecordedPace, runner: Runner) -> RunAnalysis:
    """Return what the pieces of a recording say; *runner* has the uphill share and the fade."""
    sound = pace.is_sound
    cost = pace_cost(pace.gradient, runner.uphill_share)
    flat = cost * pace.length_m
    level = _median(pace.moving_s[sound] / flat[sound])
    return RunAnalysis(
        length_m=pace.profile.length_m,
        flat_m=float(flat.sum()),
        climb_m=pace.profile.ascent_m,
        drop_m=pace.profile.descent_m,
        moving_s=float(pace.moving_s.sum()),
        standing_s=pace.standing_s,
        stops_s=pace.stops_s,
        slopes=_slopes(pace, cost, level),
        hours=_hours(pace, flat, runner),
        drift=_drift(flat[sound], pace.moving_s[sound]),
        gradient=pace.gradient[sound],
        pace_s_per_m=pace.moving_s[sound] / pace.length_m[sound],
        level_s_per_m=level,
    )


def flat_and_drift(pace: RecordedPace) -> tuple[float, float | None]:
    """Return flat-equivalent metres and the drift of a recording by the usual runner's curve.

    The drift is None where too little was run to tell.
    """
    found = analysis_of(pace, Runner())
    return found.flat_m, None if np.isnan(found.drift) else found.drift


def _slopes(pace: RecordedPace, cost: FloatArray, level: float) -> tuple[SlopeClass, ...]:
    sound = pace.is_sound
    classes = np.digitize(pace.gradient, GRADIENT_EDGES)
    edges = (-np.inf, *GRADIENT_EDGES, np.inf)
    found = []
    for number in range(len(edges) - 1):
        mine = classes == number
        good = mine & sound
        metres = float(pace.length_m[good].sum())
        found.append(
            SlopeClass(
                low=edges[number],
                high=edges[number + 1],
                distance_m=float(pace.length_m[mine].sum()),
                moving_s=float(pace.moving_s[mine].sum()),
                pace_s_per_m=float(pace.moving_s[good].sum()) / metres if metres else np.nan,
                model_s_per_m=(
                    level * float((cost * pace.length_m)[good].sum()) / metres if metres else np.nan
                ),
            )
        )
    return tuple(found)


def _hours(pace: RecordedPace, flat: FloatArray, runner: Runner) -> tuple[HourOfRun, ...]:
    hour = (pace.passed_s // HOUR_S).astype(int)
    found: list[HourOfRun] = []
    first = np.nan
    for number in range(int(hour[-1]) + 1):
        mine = (hour == number) & pace.is_sound
        moving_s = float(pace.moving_s[mine].sum())
        if moving_s < _LEAST_OF_HOUR_S:
            continue
        speed = float(flat[mine].sum()) / moving_s
        first = speed if np.isnan(first) else first
        begun = found[0].number if found else number
        fade = (_power(number + 0.5, runner)) / _power(begun + 0.5, runner)
        found.append(HourOfRun(number, speed, speed / first, fade))
    return tuple(found)


def _power(hours: float, runner: Runner) -> float:
    return float((1.0 + hours / runner.fade_onset_h) ** -runner.fade)


def _drift(flat: FloatArray, moving_s: FloatArray) -> float:
    """Return how much longer the second half of the flat-equivalent way took than the first."""
    if len(flat) < 4:
        return np.nan
    second = np.cumsum(flat) > flat.sum() / 2.0
    first_s, second_s = float(moving_s[~second].sum()), float(moving_s[second].sum())
    ahead, behind = float(flat[~second].sum()), float(flat[second].sum())
    if min(first_s, second_s, ahead, behind) <= 0.0:
        return np.nan
    return (second_s / behind) / (first_s / ahead) - 1.0


def _median(values: FloatArray) -> float:
    return float(np.median(values)) if len(values) else np.nan
