"""How fast people walk on a slope, the hill rules walkers use, and what walking costs.

Gradient is rise over run, positive uphill; speeds are along the slope in m/s.
"""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

FloatArray = npt.NDArray[np.float64]

# Campbell et al. 2022, Computers, Environment and Urban Systems 97:101866: the median of hikers,
# a Lorentz curve over the slope in degrees. Coefficients as in the authors' own code; volume
# and page from memory.
_CENTRE_DEG, _WIDTH_DEG, _HEIGHT, _FLOOR, _TILT = -1.4579, 22.0787, 76.3271, 0.0525, -3.2002e-4
# OWN limit: the data end at about 30 degrees; beyond 45 the line would turn over.
_STEEPEST_DEG = 45.0

# The load carriage decision aid was validated up to this speed and between these slopes.
FASTEST_WALK_MPS = 1.96
_LCDA_SLOPES = (-0.40, 0.45)
STANDING_W_PER_KG = 1.44

# Paces change from walking to running: at 2.0 m/s up to 5 %, down to 1.3 m/s from 27 % on. OWN,
# between the level transition of Abe et al. 2015, PLoS ONE 10:e0138154 (7.5 km/h) and the fall
# with the slope of Brill & Kram 2021, J Exp Biol 224:jeb233056 (its end from memory).
_CHANGE_SLOPES = (0.05, 0.27)
_CHANGE_SPEEDS_MPS = (2.0, 1.3)


def hiking_speed(gradient: npt.ArrayLike) -> FloatArray:
    """Return the median speed of hikers, m/s (Campbell et al. 2022)."""
    steepness = np.degrees(np.arctan(np.asarray(gradient, dtype=np.float64)))
    steepness = np.clip(steepness, -_STEEPEST_DEG, _STEEPEST_DEG)
    bell = 1.0 + ((steepness - _CENTRE_DEG) / _WIDTH_DEG) ** 2
    return _HEIGHT / (np.pi * _WIDTH_DEG * bell) + _FLOOR + _TILT * steepness


def tobler_speed(gradient: npt.ArrayLike) -> FloatArray:
    """Return the speed of Tobler's hiking function, m/s (1993, NCGIA Technical Report 93-1)."""
    slope = np.asarray(gradient, dtype=np.float64)
    return np.asarray(6.0 / 3.6 * np.exp(-3.5 * np.abs(slope + 0.05)), dtype=np.float64)


def naismith_s(distance_m: npt.ArrayLike, climb_m: npt.ArrayLike) -> FloatArray:
    """Return the walking time, seconds: an hour for 5 km and one more for 600 m of climb.

    Naismith 1892, Scottish Mountaineering Club Journal 2:136, in its metric form.
    """
    return 0.72 * np.asarray(distance_m, dtype=np.float64) + 6.0 * np.asarray(climb_m)


def flat_equivalent(
    distance_m: npt.ArrayLike, climb_m: npt.ArrayLike, metres_per_climb: float = 8.0
) -> FloatArray:
    """Return the level distance worth as much, *metres_per_climb* for each metre of climb.

    Scarf 2007, J Sports Sci 25:719-726: 8 for men, 10 for women; Naismith's rule comes to 7.92.
    """
    return np.asarray(distance_m, dtype=np.float64) + metres_per_climb * np.asarray(climb_m)


def walking_power(speed_mps: npt.ArrayLike, gradient: npt.ArrayLike) -> FloatArray:
    """Return the gross metabolic rate of walking, W/kg, standing included.

    Looney et al. 2019, Med Sci Sports Exerc 51:1954-1960; -40 to 45 %, up to 1.96 m/s.
    """
    speed = np.asarray(speed_mps, dtype=np.float64)
    percent = 100.0 * np.clip(gradient, *_LCDA_SLOPES)
    level = STANDING_W_PER_KG + 1.94 * speed**0.43 + 0.24 * speed**4
    slope = 0.34 * speed * percent * (1.0 - 1.05 ** (1.0 - 1.1 ** (percent + 32.0)))
    return np.asarray(level + slope, dtype=np.float64)


def walking_speed(power_w_per_kg: float, gradient: npt.ArrayLike) -> FloatArray:
    """Return the walking speed at a gross metabolic rate, m/s: `walking_power` turned round.

    No faster than the rule was validated for; zero where standing alone takes the rate.
    """
    slope = np.asarray(gradient, dtype=np.float64)
    low, high = np.zeros_like(slope), np.full_like(slope, FASTEST_WALK_MPS)
    for _ in range(40):
        middle = (low + high) / 2.0
        is_fast = walking_power(middle, slope) > power_w_per_kg
        high = np.where(is_fast, middle, high)
        low = np.where(is_fast, low, middle)
    return np.where(walking_power(FASTEST_WALK_MPS, slope) <= power_w_per_kg, high, low)


def gait_change_speed(gradient: npt.ArrayLike) -> FloatArray:
    """Return the speed below which a runner walks, m/s (OWN, see the source of the constants).

    Between about 1.9 and 3.0 m/s people mix both over level ground (Baker, Long & Srinivasan
    2025, arXiv 2501.00720), so a stretch near the change may be either.
    """
    slope = np.asarray(gradient, dtype=np.float64)
    return np.asarray(np.interp(slope, _CHANGE_SLOPES, _CHANGE_SPEEDS_MPS), dtype=np.float64)
