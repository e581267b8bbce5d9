"""What a runner's own recordings say about how they fade, climb and descend."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.engine.effort_clock import Fading
from ultraplanner_gui.engine.environment import descent_weight
from ultraplanner_gui.engine.recorded_pace import RecordedPace, recorded_pace
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError, Quantity
from ultraplanner_gui.plan.recording import Recording
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.gradient_cost import LEVEL_RUNNING_J_PER_KG_M, pace_cost

# OWN limits, as every threshold in this module: what one recording can bear.
FEWEST_PIECES = 60
FEWEST_SLOPES = 30
LEAST_HOURS = 3.0
LEAST_CLIMB_M = 500.0
SLOPE_FROM = 0.05
# A default counts as much as so many independent pieces.
DEFAULT_PIECES = 20.0
# Fade is of the runner and the day (own measurement: best per run 0 to 0.30), so one day's fade
# counts as much as the default however many pieces it has.
FADE_OF_THE_DAY = 0.06

FADE_RANGE = (0.0, 0.5)
UPHILL_RANGE = (0.6, 1.4)
DESCENT_RANGE = (0.5, 1.5)

# Huber 1964, Ann Math Stat 35:73-101: residuals beyond 1.345 deviations count less; 95 % as
# good as least squares where all is normal.
_HUBER = 1.345
_NORMAL_MAD = 1.4826
_ROUNDS = 30


class Estimate(Value, frozen=True):
    """One parameter: what to use, its standard deviation, and what it is without the recordings.

    `is_fitted` is False where the recordings could not bear a fit and the default stands;
    `pieces` are the independent ones it rests on.
    """

    value: float
    spread: float
    default: float
    is_fitted: bool
    pieces: float


class RunFit(Value, frozen=True):
    """One recording: how fast it was started on the level and fresh, and its times.

    `error_percent` is the median error of the fitted model over tenths of the run, in percent
    of each tenth's time.
    """

    name: str
    start: datetime | None
    length_m: float
    climb_m: float
    fresh_mps: float
    moving_s: float
    stops_s: tuple[float, ...]
    error_percent: float

    @property
    def standing_s(self) -> float:
        """All stops together."""
        return sum(self.stops_s)

    @property
    def stop_share(self) -> float:
        """Standing time over the whole time."""
        return self.standing_s / (self.moving_s + self.standing_s)

    @property
    def power_w_per_kg(self) -> float:
        """Net power of the fresh level speed, by the level cost of Minetti et al. 2002."""
        return LEVEL_RUNNING_J_PER_KG_M * self.fresh_mps


class Fit(Value, frozen=True):
    """A runner as fitted: `runner` carries fade and uphill share; `descent` is the speed downhill
    over the usual curve (`Effects.descent_speed`). `error_percent` as in `RunFit`, of all runs.
    """

    runner: Runner
    fade: Estimate
    uphill: Estimate
    descent: Estimate
    runs: tuple[RunFit, ...]
    error_percent: float


def fit(recordings: Sequence[Recording], runner: Runner | None = None) -> Fit:
    """Return what *recordings* say about the runner; *runner* has the defaults.

    Pace over pieces of 150 m is laid against the pace model with one fresh speed for each
    recording and one fade, uphill share and descent speed for all, by robust regression
    (Huber), then drawn towards the defaults: n independent pieces count n / (n + 20) (OWN), of
    one day's fade 20 at most.
    Standing time is set apart. Heat and altitude are never fitted. PlanError when there is too
    little to fit anything.
    """
    runner = runner or Runner()
    if not recordings:
        raise PlanError(
            QT_TRANSLATE_NOOP("Plan", "There is no recording; read in one run or more.")
        )
    paces = [recorded_pace(recording) for recording in recordings]
    pieces = sum(int(pace.is_sound.sum()) for pace in paces)
    if pieces < FEWEST_PIECES:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Plan",
                "Only {0} of the recording can be used, too little to learn from; read in a run "
                "of {1} or more.",
            ),
            Quantity(sum(float(p.length_m[p.is_sound].sum()) for p in paces), "m"),
            Quantity(10_000.0, "m"),
        )
    return _Regression(recordings, paces, runner).fit()


def error_of(recording: Recording, fitted: Fit, runner: Runner) -> float:
    """Return the error of *fitted* on *recording* as in `RunFit`, its own fresh speed apart.

    *runner* is the one the fit was made for. NaN where nothing of it can be used.
    """
    regression = _Regression([recording], [recorded_pace(recording)], runner)
    values = (fitted.fade.value, fitted.uphill.value, fitted.descent.value)
    return regression.error_percent(np.array(values))


class _Regression:
    """Log pace of all pieces against the model."""

    def __init__(
        self, recordings: Sequence[Recording], paces: list[RecordedPace], runner: Runner
    ) -> None:
        self._recordings, self._paces, self._runner = recordings, paces, runner
        kept = [pace.is_sound for pace in paces]
        self._run = np.concatenate([np.full(int(k.sum()), n) for n, k in enumerate(kept)])
        self._gradient = _all(paces, [p.gradient for p in paces])
        self._pace = np.log(_all(paces, [p.moving_s / p.length_m for p in paces]))
        self._hours = _all(paces, [p.passed_s for p in paces]) / 3600.0
        night = [
            np.log(_night(recording, pace, runner).power(pace.passed_s))
            for recording, pace in zip(recordings, paces, strict=True)
        ]
        self._night = _all(paces, night)

    def fit(self) -> Fit:
        """Return the fit."""
        runner = self._runner
        long_runs = sum(float(p.passed_s[-1]) >= LEAST_HOURS * 3600.0 for p in self._paces)
        climb_m = sum(p.profile.ascent_m for p in self._paces)
        is_up = self._gradient > SLOPE_FROM
        can_climb = climb_m >= LEAST_CLIMB_M and int(is_up.sum()) >= FEWEST_SLOPES
        is_down = self._gradient < -SLOPE_FROM
        can_descend = int(is_down.sum()) >= FEWEST_SLOPES
        free = np.array([long_runs > 0, can_climb, can_descend])
        raw, spread, effective = self._solve(free)
        if long_runs:
            spread[0] = np.hypot(spread[0], FADE_OF_THE_DAY / np.sqrt(long_runs))
        share = effective / len(self._pace)
        days = DEFAULT_PIECES * long_runs / share
        estimates = [
            _estimate(value, deviation, default, fitted, share * count, limits)
            for value, deviation, default, fitted, count, limits in zip(
                raw,
                spread,
                (runner.fade, runner.uphill_share, 1.0),
                free.tolist(),
                (min(len(self._pace), days), int(is_up.sum()), int(is_down.sum())),
                (FADE_RANGE, UPHILL_RANGE, DESCENT_RANGE),
                strict=True,
            )
        ]
        fade, uphill, descent = estimates
        fitted = replace(runner, fade=fade.value, uphill_share=uphill.value)
        runs, errors = self._runs(np.array([e.value for e in estimates]))
        return Fit(fitted, fade, uphill, descent, runs, float(np.median(errors)))

    def error_percent(self, values: FloatArray) -> float:
        """Return the median error of *values* over the tenths of all runs, percent."""
        return float(np.median(errors)) if (errors := self._runs(values)[1]) else np.nan

    def _log_model(self, values: FloatArray) -> FloatArray:
        """Return the log of model pace over fresh level pace."""
        fade, uphill, descent = values.tolist()
        cost = pace_cost(self._gradient, uphill)
        skill = 1.0 + (descent - 1.0) * descent_weight(self._gradient)
        tired = fade * np.log1p(self._hours / self._runner.fade_onset_h)
        return np.asarray(np.log(cost) - np.log(skill) + tired - self._night, dtype=np.float64)

    def _solve(self, free: np.typing.NDArray[np.bool_]) -> tuple[FloatArray, FloatArray, float]:
        """Return fade, uphill share, descent speed, their deviations, and how many pieces are
        independent; by reweighted least squares about the last solution (Gauss & Newton).
        """
        values = np.array([self._runner.fade, self._runner.uphill_share, 1.0])
        residual = self._level(self._pace - self._log_model(values), np.ones(len(self._pace)))
        columns = np.empty((len(residual), 0))
        weight = np.ones(len(residual))
        scale = 1.0
        for _ in range(_ROUNDS):
            scale = max(_NORMAL_MAD * float(np.median(np.abs(residual))), 1e-6)
            weight = np.minimum(1.0, _HUBER * scale / np.maximum(np.abs(residual), 1e-12))
            columns = np.column_stack(
                [self._level(c, weight) for c in self._slopes(values)[free]]
                or [np.zeros(len(residual))]
            )
            normal = columns.T @ (columns * weight[:, None]) + 1e-9 * np.eye(columns.shape[1])
            step = np.linalg.solve(normal, columns.T @ (weight * residual))
            if free.any():
                values[free] = values[free] + step
            values = np.clip(values, *np.array([FADE_RANGE, UPHILL_RANGE, DESCENT_RANGE]).T)
            residual = self._level(self._pace - self._log_model(values), weight)
            if np.abs(step).max() < 1e-6:
                break
        effective = self._independent(residual)
        deviation = np.zeros(3)
        if free.any():
            normal = columns.T @ (columns * weight[:, None])
            variance = np.diag(np.linalg.inv(normal + 1e-9 * np.eye(len(normal))))
            deviation[free] = scale * np.sqrt(variance * len(residual) / effective)
        return values, deviation, effective

    def _slopes(self, values: FloatArray) -> FloatArray:
        """Return how the log model answers each parameter, shape (3, n)."""
        step = 1e-4
        here = self._log_model(values)
        return np.array(
            [(self._log_model(values + step * np.eye(3)[k]) - here) / step for k in range(3)]
        )

    def _level(self, values: FloatArray, weight: FloatArray) -> FloatArray:
        """Return *values* less their weighted mean in each run: its own speed is free."""
        total = np.bincount(self._run, weight)
        mean = np.bincount(self._run, weight * values) / np.maximum(total, 1e-12)
        return np.asarray(values - mean[self._run], dtype=np.float64)

    def _independent(self, residual: FloatArray) -> float:
        """Return how many pieces are worth as much as independent ones.

        By the correlation of neighbours, as for an autoregressive series (Bayley & Hammersley
        1946, Suppl J R Stat Soc 8:184-197).
        """
        same = self._run[1:] == self._run[:-1]
        size = np.minimum(np.abs(residual), 3.0 * np.median(np.abs(residual))) * np.sign(residual)
        spread = float((size**2).mean())
        together = float((size[1:] * size[:-1])[same].mean()) / spread if same.any() else 0.0
        tie = min(max(together, 0.0), 0.95)
        return len(residual) * (1.0 - tie) / (1.0 + tie)

    def _runs(self, values: FloatArray) -> tuple[tuple[RunFit, ...], list[float]]:
        expected = self._log_model(values)
        runs: list[RunFit] = []
        errors: list[float] = []
        for n, (recording, pace) in enumerate(zip(self._recordings, self._paces, strict=True)):
            mine = self._run == n
            slow = float(np.median((self._pace - expected)[mine])) if mine.any() else np.nan
            off = _tenths(pace, np.exp(expected[mine] + slow)) if mine.any() else []
            errors += off
            runs.append(
                RunFit(
                    name=recording.name,
                    start=recording.start,
                    length_m=pace.profile.length_m,
                    climb_m=pace.profile.ascent_m,
                    fresh_mps=float(np.exp(-slow)),
                    moving_s=float(pace.moving_s.sum()),
                    stops_s=pace.stops_s,
                    error_percent=float(np.median(off)) if off else np.nan,
                )
            )
        return tuple(runs), errors


def _all(paces: list[RecordedPace], values: list[FloatArray]) -> FloatArray:
    return np.concatenate([v[pace.is_sound] for pace, v in zip(paces, values, strict=True)])


def _night(recording: Recording, pace: RecordedPace, runner: Runner) -> Fading:
    place = (pace.profile.latitude_deg, pace.profile.longitude_deg)
    return Fading(0.0, 1.0, runner.night_loss, recording.start, place)


def _estimate(
    value: float,
    deviation: float,
    default: float,
    is_fitted: bool,
    pieces: float,
    limits: tuple[float, float],
) -> Estimate:
    """Return the fitted value drawn towards the default.

    Its deviation keeps the way it was drawn, so that a default far off widens it.
    """
    if not is_fitted:
        return Estimate(default, 0.0, default, is_fitted=False, pieces=0.0)
    weight = pieces / (pieces + DEFAULT_PIECES)
    drawn = default + weight * (value - default)
    spread = float(np.hypot(weight * deviation, (1.0 - weight) * (value - default)))
    return Estimate(float(np.clip(drawn, *limits)), spread, default, True, pieces)


def _tenths(pace: RecordedPace, model_pace: FloatArray) -> list[float]:
    """Return the errors of the model over tenths of a run, percent of each tenth's time."""
    real_s = pace.moving_s[pace.is_sound]
    model_s = model_pace * pace.length_m[pace.is_sound]
    parts = np.array_split(np.arange(len(real_s)), 10)
    return [
        abs(float(model_s[part].sum() / real_s[part].sum()) - 1.0) * 100.0
        for part in parts
        if len(part)
    ]
