"""Many simulated races: arrival windows and the chance to make each cutoff.

The forecast is run again and again with an ability of the day, a fade of the day, stops that
last longer or shorter, and ups and downs that carry over from section to section. All of them
but the stops are normal in the logarithm of section time, so one matrix holds them: a
continuous process along the race, cut where the sections end, which is why the windows do not
depend on where one cuts. What has been passed already is taken as known.
"""

from __future__ import annotations

import math
import threading
from bisect import bisect_right
from collections.abc import Sequence
from functools import lru_cache

import numpy as np
import numpy.typing as npt

from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, message
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value

Draws = npt.NDArray[np.float32]

# OWN: how surely a runner knows the finish time beforehand, standard deviation over finish time.
FINISH_SPREAD = Runner().finish_spread
NORMAL_90 = 1.28

RACES = 10_000
SEED = 1

LOW, MIDDLE, HIGH = 10.0, 50.0, 90.0
IN_TWENTY = 20

_FADE_ONSET_H = Runner().fade_onset_h
_LEAST_SHARE = 1e-6


class Scatter(Value, frozen=True):
    """How races scatter about a forecast; standard deviations of the logarithm of time.

    All values are an own fit to the splits of one mountain 100-mile race and to recordings
    (OWN); the times they belong to are shares of the finish time. `ability` is that of the
    finish beforehand (infinite: unknown), `fade` that of the fade exponent, `swing` of ups and
    downs that are forgotten over `memory` of the race, `jitter` of what one section does not
    share with the next, over the root of its share. Swing and jitter grow from half their size
    at the start to one and a half at the end. `stop` is that of a stop's length. `hurry`: whom
    a limit is about to catch makes up so much.
    """

    ability: float = FINISH_SPREAD
    fade: float = 0.056
    swing: float = 0.08
    memory: float = 0.20
    jitter: float = 0.012
    stop: float = 0.35
    hurry: float = 0.03


class Passed(Value, frozen=True):
    """Where the runner has been, and when: the arrival at *at_m* metres."""

    at_m: float
    elapsed_s: float


class Chance(Value, frozen=True):
    """The chance of being at a place in time, that of every cutoff before it included.

    `share` is that of the simulated races. People are told `twentieths`.
    """

    at_m: float
    by_s: float
    share: float

    @property
    def twentieths(self) -> int:
        """On about how many of 20 days it is made: 1 to 19, for nothing is sure."""
        return min(max(round(self.share * IN_TWENTY), 1), IN_TWENTY - 1)

    @property
    def sentence(self) -> Message:
        """The chance in words."""
        return message(
            QT_TRANSLATE_NOOP("Plan", "about {0} of {1} days"), self.twentieths, IN_TWENTY
        )


class Odds(Value, frozen=True):
    """Arrival windows at the places asked for, seconds of race time, and chances per cutoff.

    `windows_s` are the 10th and 90th percentiles, `middle_s` the medians; in the order of
    `places_m`. Places passed already are not among them.
    """

    places_m: tuple[float, ...]
    windows_s: tuple[tuple[float, float], ...]
    middle_s: tuple[float, ...]
    chances: tuple[Chance, ...]

    def window_at(self, at_m: float) -> tuple[float, float] | None:
        """Return the arrival window at one of the places; None if it is not among them."""
        return dict(zip(self.places_m, self.windows_s, strict=True)).get(at_m)


def odds(
    plan: PacePlan,
    places_m: Sequence[float],
    cutoffs: Sequence[tuple[float, float]] = (),
    *,
    scatter: Scatter | None = None,
    passed: Passed | None = None,
    races: int = RACES,
    made_all: bool = False,
) -> Odds:
    """Return windows and chances of *races* simulated races about the forecast *plan*.

    *cutoffs* are places and latest arrivals in seconds of race time. With *made_all* only the
    races count that make every cutoff, with a little hurry; that is what a table of finishers
    holds. The draws are the same every time, so a drag moves figures, not luck.
    """
    scatter = scatter or Scatter()
    start_m = 0.0 if passed is None else passed.at_m
    ends = sorted({*places_m, *(at_m for at_m, _ in cutoffs), float(plan.distance_m[-1])})
    ends = [at_m for at_m in ends if at_m > start_m]
    if not ends:
        return Odds((), (), (), ())
    arrivals = _arrivals(plan, ends, scatter, passed, races)
    limits = {at_m: by_s for at_m, by_s in cutoffs if at_m > start_m}
    chances = _chances(ends, arrivals, limits)
    asked = set(places_m)
    wanted = [k for k, at_m in enumerate(ends) if at_m in asked]
    if made_all:
        arrivals = _in_time(ends, arrivals, limits, scatter.hurry)
    is_all = len(wanted) == len(ends)
    low, middle, high = _percentiles(arrivals if is_all else arrivals[wanted])
    return Odds(
        places_m=tuple(ends[k] for k in wanted),
        windows_s=tuple(zip(low.tolist(), high.tolist(), strict=True)),
        middle_s=tuple(middle.tolist()),
        chances=chances,
    )


def _arrivals(
    plan: PacePlan, ends: list[float], scatter: Scatter, passed: Passed | None, races: int
) -> Draws:
    """Return the arrivals at *ends* in every race, shape (ends, races); good until the next."""
    known = [] if passed is None else [passed.at_m]
    edges = np.array([0.0, *known, *ends])
    at_s = np.interp(edges, plan.distance_m, plan.moving_s)
    share = at_s / plan.moving_s[-1]
    root, mean = _root(
        tuple(share.tolist()),
        plan.finish_s / 3600.0,
        scatter,
        None if passed is None else _log_ratio(plan, passed, float(at_s[1])),
    )
    draws = _draws(len(ends), races)
    times = _workplace.of(len(ends), races)
    np.matmul(root.astype(np.float32), draws, out=times)
    if passed is not None:
        times += mean.astype(np.float32)[:, None]
    planned_s = np.diff(at_s)[len(known) :].astype(np.float32)
    stopped = _stops_by_end(plan, ends, races, scatter, passed)
    before = np.float32(0.0) if passed is None else np.float32(passed.elapsed_s)
    # Row by row, all that is done to one while it is near: that halves the time.
    for row, usual_s, stops in zip(times, planned_s, stopped, strict=True):
        np.exp(row, out=row)
        row *= usual_s
        for stop_s, length in stops:
            row += stop_s * length
        row += before
        before = row
    return times


def _log_ratio(plan: PacePlan, passed: Passed, planned_s: float) -> float:
    """Return how much slower than *plan* the runner was up to the place passed, logarithm."""
    stopped_s = sum(stop.stop_s for stop in plan.stops if stop.at_m < passed.at_m)
    return math.log(max(passed.elapsed_s - stopped_s, 1.0) / max(planned_s, 1.0))


def _stops_by_end(
    plan: PacePlan, ends: list[float], races: int, scatter: Scatter, passed: Passed | None
) -> list[list[tuple[np.float32, Draws]]]:
    """Return the stops before each of *ends*: planned time, the median, and factors on it."""
    from_m = -1.0 if passed is None else passed.at_m
    stops = [stop for stop in plan.stops if stop.at_m >= from_m]
    found: list[list[tuple[np.float32, Draws]]] = [[] for _ in ends]
    lengths = _stop_lengths(len(stops), races, scatter.stop) if stops else ()
    for stop, length in zip(stops, lengths, strict=True):
        first = bisect_right(ends, stop.at_m)
        if first < len(ends):
            found[first].append((np.float32(stop.stop_s), length))
    return found


class _Workplace(threading.local):
    """Memory for the races of one thread: new memory takes as long as what is done in it."""

    def __init__(self) -> None:
        self._times: Draws = np.empty((0, 0), dtype=np.float32)

    def of(self, sections: int, races: int) -> Draws:
        """Return an array for so many; what was in it is lost."""
        if self._times.shape != (sections, races):
            self._times = np.empty((sections, races), dtype=np.float32)
        return self._times


_workplace = _Workplace()


# Megabytes each: a drag needs one, of its stations or its stops two.
@lru_cache(maxsize=2)
def _draws(sections: int, races: int) -> Draws:
    """Return standard normal draws, the same for the same numbers of sections and races."""
    return np.random.Generator(np.random.SFC64(SEED)).standard_normal(
        (sections, races), dtype=np.float32
    )


@lru_cache(maxsize=2)
def _stop_lengths(stops: int, races: int, spread: float) -> Draws:
    """Return the factors on the planned stops, shape (stops, races)."""
    draws = np.random.Generator(np.random.SFC64(SEED + 1)).standard_normal(
        (stops, races), dtype=np.float32
    )
    lengths: Draws = np.exp(np.float32(spread) * draws)
    return lengths


@lru_cache(maxsize=64)
def _root(
    share: tuple[float, ...], finish_h: float, scatter: Scatter, known: float | None
) -> tuple[FloatArray, FloatArray]:
    """Return a root of the covariance of log section times, and their mean.

    *share* are the edges of the sections in shares of the running time. With *known*, the log
    time of the first one, the others are those given it (the rule of the normal distribution).
    """
    covariance = _covariance(np.array(share), finish_h, scatter)
    mean = np.zeros(len(covariance))
    if known is not None:
        gain = covariance[1:, 0] / covariance[0, 0]
        covariance = covariance[1:, 1:] - np.outer(gain, covariance[0, 1:])
        mean = gain * known
    values, vectors = np.linalg.eigh(covariance)
    return vectors * np.sqrt(np.maximum(values, 0.0)), mean


def _covariance(share: FloatArray, finish_h: float, scatter: Scatter) -> FloatArray:
    """Return the covariance of the log times of sections with edges at *share*.

    Ups and downs within the race leave its finish alone: they are those of a process with a
    fading memory (Ornstein & Uhlenbeck 1930, Phys Rev 36:823-841) given that they sum to
    nothing. The ability of the day then moves all sections alike.
    """
    width = np.maximum(np.diff(share), _LEAST_SHARE)
    middle = (share[:-1] + share[1:]) / 2.0
    swing = _mean_covariance(share[:-1], width, scatter.memory) * scatter.swing**2
    swing[np.diag_indices_from(swing)] += scatter.jitter**2 / width
    size = 0.5 + middle
    fade = scatter.fade * _fade_shape(share, finish_h)
    within = swing * np.outer(size, size) + np.outer(fade, fade)
    whole, weight = _whole(within, share, width)
    return np.asarray(within - np.outer(whole, whole) / weight + _ability(scatter), dtype=float)


def _ability(scatter: Scatter) -> float:
    """Return the variance of the ability of the day; a deviation of 1 is as good as unknown."""
    return min(scatter.ability, 1.0) ** 2


def _whole(within: FloatArray, share: FloatArray, width: FloatArray) -> tuple[FloatArray, float]:
    """Return the covariance of each section with the whole race, and the whole's variance."""
    weights = width / width.sum()
    whole = within @ weights
    return whole, float(weights @ whole)


def _mean_covariance(start: FloatArray, width: FloatArray, memory: float) -> FloatArray:
    """Return the covariance of the means of a unit process over intervals one after another."""
    lost = -np.expm1(-width / memory)
    end = start + width
    apart = np.maximum(start[None, :] - end[:, None], 0.0)
    apart = np.maximum(apart, apart.T)
    scale = memory * lost / width
    covariance = np.outer(scale, scale) * np.exp(-apart / memory)
    rest = width / memory
    covariance[np.diag_indices_from(covariance)] = 2.0 * (rest - lost) / rest**2
    return np.asarray(covariance, dtype=np.float64)


def _fade_shape(share: FloatArray, finish_h: float) -> FloatArray:
    """Return the mean of ln(1 + h / onset) over each section, less that over the race."""
    hours = share * finish_h / _FADE_ONSET_H
    area = (hours + 1.0) * np.log1p(hours) - hours
    width_h = np.maximum(np.diff(hours), 1e-9)
    return np.asarray(
        np.diff(area) / width_h - (area[-1] - area[0]) / (hours[-1] - hours[0]), dtype=np.float64
    )


def _chances(ends: list[float], arrivals: Draws, limits: dict[float, float]) -> tuple[Chance, ...]:
    made = np.ones(arrivals.shape[1], dtype=np.bool_)
    found = []
    for at_m in sorted(limits):
        made &= arrivals[ends.index(at_m)] <= limits[at_m]
        found.append(Chance(at_m, limits[at_m], int(np.count_nonzero(made)) / len(made)))
    return tuple(found)


def _in_time(ends: list[float], arrivals: Draws, limits: dict[float, float], hurry: float) -> Draws:
    """Return the races that make all *limits* with a little *hurry*; the nearest if few do.

    Arrivals are brought within the limits they just miss.
    """
    excess = np.full(arrivals.shape[1], -np.inf, dtype=np.float32)
    for at_m, by_s in limits.items():
        np.maximum(excess, arrivals[ends.index(at_m)] / np.float32(by_s) - 1.0, out=excess)
    least = max(arrivals.shape[1] // 100, 1)
    if (excess <= hurry).sum() >= least:
        kept = arrivals[:, excess <= hurry]
    else:
        kept = arrivals[:, np.argpartition(excess, least - 1)[:least]]
    for at_m, by_s in limits.items():
        k = ends.index(at_m)
        kept[k] = np.minimum(kept[k], np.float32(by_s))
    return kept


def _percentiles(arrivals: Draws) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Return the 10th, 50th and 90th percentile of each row, nearest rank; it reorders the rows."""
    races = arrivals.shape[1]
    low, middle, high = (
        min(round(p / 100.0 * (races - 1)), races - 1) for p in (LOW, MIDDLE, HIGH)
    )
    # One after the other, each in its half: three ranks asked for at once take six times as long.
    found = {}
    for rank, start, end in ((middle, 0, races), (high, middle, races), (low, 0, middle + 1)):
        arrivals[:, start:end].partition(rank - start, axis=1)
        found[rank] = arrivals[:, rank].astype(np.float64)
    return found[low], found[middle], found[high]
