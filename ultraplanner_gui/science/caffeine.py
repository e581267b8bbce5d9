"""Caffeine in the body, by its half-life."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

# Mean; people range from 1.5 to 9.5 h. Institute of Medicine 2001, Caffeine for the Sustainment
# of Mental Task Performance.
HALF_LIFE_H = 5.0
_S_PER_H = 3600.0

# EFSA NDA Panel 2015, EFSA Journal 13(5):4102; mg/kg for adults: Guest et al. 2021, J Int Soc
# Sports Nutr 18:1. Taking the lower of both is an own rule.
MOST_AT_ONCE_MG, MOST_A_DAY_MG = 200.0, 400.0
AT_ONCE_MG_PER_KG, A_DAY_MG_PER_KG = 3.0, 6.0
#: Pregnant or breastfeeding, per day; young people, per kg and day. Same opinion.
LOWER_A_DAY_MG, YOUNG_MG_PER_KG = 200.0, 3.0


def in_body_mg(
    at_s: npt.ArrayLike,
    dose_mg: npt.ArrayLike,
    when_s: npt.ArrayLike,
    half_life_h: float = HALF_LIFE_H,
) -> npt.NDArray[np.float64]:
    """Return the caffeine in the body at *when_s*, each dose counted in full from when it is taken.

    Taken as absorbed at once: 99 % is within 45 min (same source). *at_s* are in order.
    """
    at, dose = np.atleast_1d(np.asarray(at_s, float)), np.atleast_1d(np.asarray(dose_mg, float))
    when = np.atleast_1d(np.asarray(when_s, float))
    half_s = half_life_h * _S_PER_H
    # Every dose as if taken at the start, so that one sum serves all moments.
    grown = np.concatenate(([0.0], np.cumsum(dose * np.exp2(at / half_s))))
    left = grown[np.searchsorted(at, when, side="right")] * np.exp2(-when / half_s)
    return np.asarray(left, dtype=np.float64)


def limits_mg(body_kg: float) -> tuple[float, float]:
    """Return the most at once and within 24 hours for a healthy adult."""
    return (
        min(AT_ONCE_MG_PER_KG * body_kg, MOST_AT_ONCE_MG),
        min(A_DAY_MG_PER_KG * body_kg, MOST_A_DAY_MG),
    )


def lower_limits_mg(body_kg: float) -> tuple[float, float]:
    """Return the same when pregnant or breastfeeding: 200 mg a day, half of it at once (OWN)."""
    return min(AT_ONCE_MG_PER_KG * body_kg, LOWER_A_DAY_MG / 2.0), LOWER_A_DAY_MG


def young_limits_mg(body_kg: float) -> tuple[float, float]:
    """Return the same for young people: 3 mg/kg a day as a guide, half of it at once (OWN)."""
    a_day = min(YOUNG_MG_PER_KG * body_kg, LOWER_A_DAY_MG)
    return a_day / 2.0, a_day
