"""What a runner gives by when: power fading with the hours and in the dark, added up.

Power is counted in fresh seconds: one second of a fresh runner by day gives one.
"""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Callable, Sequence
from datetime import datetime
from functools import cached_property, lru_cache

import numpy as np

from ultraplanner_gui.engine.light import dark_share, small_hours
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.value import Value

_CLOCK_STEPS_PER_H = 60
_MOST_CLOCK_STEPS = 4096
_NEAR_S = 1e-6

# Own fit: in the small hours the night takes half as much again.
SMALL_HOURS_EXTRA = 0.5


class Fading(Value, frozen=True):
    """How power falls: (1 + h / onset_h) ** -fade after h hours, *night_loss* of it in the dark.

    *start* is aware and *place_deg* latitude and longitude; without a start all is by day.
    """

    fade: float
    onset_h: float
    night_loss: float = 0.0
    start: datetime | None = None
    place_deg: tuple[float, float] = (0.0, 0.0)

    def power(self, clock_s: FloatArray) -> FloatArray:
        """Return the power after *clock_s* seconds, ascending, over that of a fresh runner."""
        power = (1.0 + clock_s / 3600.0 / self.onset_h) ** -self.fade
        if self.start is None or not self.night_loss:
            return np.asarray(power, dtype=np.float64)
        if self.start.tzinfo is None:
            raise ValueError("start must be aware")
        dark = dark_share(self.start, clock_s, *self.place_deg)
        if dark.any():
            late = small_hours(self.start, clock_s, self.place_deg[1])
            dark = dark * (1.0 + SMALL_HOURS_EXTRA * late)
        return np.asarray(power * (1.0 - self.night_loss * dark), dtype=np.float64)


class EffortClock(Value, frozen=True, eq=False, dict=True):
    """Times from the start and the integral of power up to each, both rising from zero."""

    clock_s: FloatArray
    given: FloatArray

    def __post_init__(self) -> None:
        self.clock_s.setflags(write=False)
        self.given.setflags(write=False)

    def used_by_finish(
        self, finish_s: float, at: Sequence[float], stop_s: Sequence[float]
    ) -> tuple[float, FloatArray]:
        """Return the power that goes into running, and what 0, 1, 2 ... stops have cost of it.

        *at* are the shares of the cost at which the stops lie. The clock must reach beyond the
        finish by all stops, so that even a stop a step before it finds its place.
        """
        to_finish = linear(*self._lists, finish_s)
        if not at:
            return to_finish, np.zeros(1)
        loss, lost = self._loss(at, stop_s), [0.0]

        def excess(used: float) -> float:
            nonlocal lost
            lost = loss(used)
            return used + lost[-1] - to_finish

        # A second gives one at most: the stops cost no more than they last. One for rounding.
        used = rising_root(excess, max(to_finish - sum(stop_s) - 1.0, 0.0), to_finish)
        return used, np.array(lost)

    def lost_in_stops(
        self, used: float, at: Sequence[float], stop_s: Sequence[float]
    ) -> FloatArray:
        """Return what 0, 1, 2 ... stops cost when *used* power goes into running."""
        return np.array(self._loss(at, stop_s)(used))

    @cached_property
    def _lists(self) -> tuple[list[float], list[float]]:
        return self.clock_s.tolist(), self.given.tolist()

    def _loss(self, at: Sequence[float], stop_s: Sequence[float]) -> Callable[[float], list[float]]:
        times, powers = self._lists
        stops = list(zip(at, stop_s, strict=True))
        last_s, last = times[-1], powers[-1]

        def lost(used: float) -> list[float]:
            # `linear` twice a stop, written out: a drag of a stop comes here four hundred times.
            total, so_far = [0.0], 0.0
            for share, stop in stops:
                arrival = used * share + so_far
                if arrival >= last:
                    arrival, arrive_s = last, last_s
                else:
                    k = max(bisect_right(powers, arrival) - 1, 0)
                    part = (arrival - powers[k]) / (powers[k + 1] - powers[k])
                    arrive_s = times[k] + part * (times[k + 1] - times[k])
                leave_s = arrive_s + stop
                if leave_s >= last_s:
                    so_far += last - arrival
                else:
                    k = max(bisect_right(times, leave_s) - 1, 0)
                    part = (leave_s - times[k]) / (times[k + 1] - times[k])
                    so_far += powers[k] + part * (powers[k + 1] - powers[k]) - arrival
                total.append(so_far)
            return total

        return lost


def effort_clock(fading: Fading, last_s: float) -> EffortClock:
    """Return the clock up to *last_s* seconds at least."""
    # By whole hours: a drag of a stop, which moves the last second, leaves the clock as it is.
    return _clock_of_hours(fading, max(1, math.ceil(last_s / 3600.0)))


@lru_cache(maxsize=4)
def _clock_of_hours(fading: Fading, hours: int) -> EffortClock:
    steps = min(hours * _CLOCK_STEPS_PER_H, _MOST_CLOCK_STEPS)
    clock_s = np.linspace(0.0, hours * 3600.0, steps + 1)
    power = fading.power(clock_s)
    pieces = np.diff(clock_s) * (power[:-1] + power[1:]) / 2.0
    return EffortClock(clock_s, np.concatenate(([0.0], np.cumsum(pieces))))


def linear(xs: Sequence[float], ys: Sequence[float], x: float) -> float:
    """Return y at *x* on the line through ascending points, level beyond its ends."""
    if x >= xs[-1]:
        return ys[-1]
    k = max(bisect_right(xs, x) - 1, 0)
    return ys[k] + (x - xs[k]) / (xs[k + 1] - xs[k]) * (ys[k + 1] - ys[k])


def rising_root(excess: Callable[[float], float], low: float, high: float) -> float:
    """Return where *excess* is zero between *low* and *high*, by false position (Illinois rule).

    Dowell & Jarratt 1971, BIT 11:168. What is returned is the last place *excess* was asked for.
    """
    below, above = excess(low), excess(high)
    side = 0
    root = high
    for _ in range(100):
        root = high - above * (high - low) / (above - below)
        value = excess(root)
        if abs(value) < _NEAR_S or high - low < _NEAR_S:
            break
        if value > 0.0:
            high, above = root, value
            below = below / 2.0 if side > 0 else below
            side = 1
        else:
            low, below = root, value
            above = above / 2.0 if side < 0 else above
            side = -1
    return root
