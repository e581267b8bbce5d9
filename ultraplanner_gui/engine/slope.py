"""The slope a runner answers: the mean over a stretch, longer where the heights are noisy."""

from __future__ import annotations

from functools import lru_cache

import numpy as np

from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.course import FloatArray

# Own measurement: pace answers the mean slope of the last hundred metres or so.
FELT_M = 100.0
# OWN: hills lose little of their slope when looked at twice as far, 13 % at most on sound
# recordings; heights from satellites lose 30 % at every doubling, for theirs is mostly noise.
NOISY_RATIO = 1.25
LONGEST_M = 800.0
_WIDER = 1.25


@lru_cache(maxsize=4)
def slope_felt(profile: Profile) -> FloatArray:
    """Return the gradient felt on each piece, shape (n - 1,): the mean over `felt_window_m`."""
    felt = _mean_slope(profile, felt_window_m(profile))
    felt.setflags(write=False)
    return felt


@lru_cache(maxsize=4)
def felt_window_m(profile: Profile) -> float:
    """Return over how many metres the slope is averaged: 100, more where heights are noisy.

    It is widened, to 800 at most, while a look twice as wide sees slopes less than 0.8 as
    steep. Then two devices on one run agree on the targets, and hills that are there stay.
    """
    window_m = FELT_M
    while window_m < LONGEST_M:
        steepness, wider = (_steepness(profile, w) for w in (window_m, 2.0 * window_m))
        if steepness <= NOISY_RATIO * wider:
            break
        window_m = min(window_m * _WIDER, LONGEST_M)
    return window_m


def _steepness(profile: Profile, window_m: float) -> float:
    """Return the root mean square of the slopes seen over a window."""
    slope = _mean_slope(profile, window_m)
    return float(np.sqrt(np.average(slope**2, weights=np.diff(profile.distance_m))))


def _mean_slope(profile: Profile, window_m: float) -> FloatArray:
    """Return the mean gradient over *window_m* about the middle of each piece.

    Less where the course ends sooner; a piece as long as the window keeps its own gradient.
    """
    place = profile.distance_m
    height = np.concatenate(([0.0], np.cumsum(profile.gradient[:-1] * np.diff(place))))
    middle = (place[:-1] + place[1:]) / 2.0
    before = np.maximum(middle - window_m / 2.0, place[0])
    after = np.minimum(middle + window_m / 2.0, place[-1])
    rise = np.interp(after, place, height) - np.interp(before, place, height)
    return np.asarray(rise / (after - before), dtype=np.float64)
