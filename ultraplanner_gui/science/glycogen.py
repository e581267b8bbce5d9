"""Carbohydrate stores along a run: what is burnt, what is absorbed, what is left.

A trend tool, not a prediction: +/- 30 % at best. Not valid with diabetes; downhill running, heat,
altitude and sleep loss are left out.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

FloatArray = npt.NDArray[np.float64]
Amounts = Sequence[float] | FloatArray

# Margaria et al. 1963, J Appl Physiol 18:367-370 (from memory).
LEVEL_KCAL_PER_KG_KM = 1.0
# Rounded between 4.69 and 5.05: Lusk 1924 (from memory).
KCAL_PER_L_OXYGEN = 5.0
# OWN, between 4.0 (eaten) and 4.18 (burnt).
KCAL_PER_G_GLYCOGEN = 4.1

# OWN straight lines through Romijn et al. 1993, Am J Physiol 265:E380-E391 (from memory).
_INTENSITY = (0.25, 0.65, 0.85, 1.00)
_CARB_SHARE = (0.10, 0.52, 0.75, 1.00)
#: OWN: the other edge of the band; the share differs that much between people.
SHARE_SPREAD = 0.10

# OWN, so that a steady intake reaches 95 % at 90 min, as in Jeukendrup & Jentjens 2000, Sports Med
# 29:407-424 (from memory).
TAU_MIN = 30.0
# OWN: shares of the energy that eaten carbohydrate may give, and of glycogen it may spare.
MOST_EATEN_SHARE = 0.75
MOST_SPARED_SHARE = 0.75
# OWN: the part of the glycogen burnt that comes from the liver while it lasts.
LIVER_SHARE = 0.25

# OWN: shares of the start below which the reserve is low, loads of the gut above which it is full.
LOW_SHARE, EMPTY_SHARE = 0.40, 0.20
LOW_LIVER_G = 15.0
FULL_GUT_G, OVERFULL_GUT_G = 60.0, 100.0


def carb_share(intensity: float) -> float:
    """Return the share of energy from carbohydrate, fasted, at a share of VO2max."""
    return float(np.interp(intensity, _INTENSITY, _CARB_SHARE))


def run_kcal(body_kg: float, km: float, terrain: float = 1.0) -> float:
    """Return the energy of running *km*, *terrain* times as dear as the level."""
    return LEVEL_KCAL_PER_KG_KM * body_kg * km * terrain


def oxygen_ml_per_kg_min(kcal: float, minutes: float, body_kg: float) -> float:
    """Return the oxygen that *kcal* in *minutes* takes."""
    return kcal / (minutes * KCAL_PER_L_OXYGEN) * 1000.0 / body_kg


def legs_g(body_kg: float, leg_share: float, g_per_kg: float) -> float:
    """Return the glycogen of the leg muscles."""
    return body_kg * leg_share * g_per_kg


def carb_from_gases(oxygen_l_min: float, carbon_dioxide_l_min: float) -> tuple[float, float]:
    """Return carbohydrate and fat burnt, g/min, protein left out.

    Peronnet & Massicotte 1991, Can J Sport Sci 16:23-29 (coefficients from memory).
    """
    carb = 4.585 * carbon_dioxide_l_min - 3.226 * oxygen_l_min
    return carb, 1.695 * oxygen_l_min - 1.701 * carbon_dioxide_l_min


def kcal_per_litre(quotient: float) -> tuple[float, float]:
    """Return the energy of a litre of oxygen and the share of it from carbohydrate.

    The closed form of the table of Zuntz and Lusk, 0.707 to 1 (Lusk 1924, from memory).
    """
    part = (quotient - 0.707) / 0.293
    kcal = 4.686 + 0.361 * part
    return kcal, 5.047 * part / kcal


def reserve_kcal_per_kg(
    leg_share: float, legs_kcal_per_kg: float, liver_kcal_per_kg: float
) -> float:
    """Return the carbohydrate reserve per kg of body mass, the liver 2.5 % of it.

    Rapoport 2010, PLoS Comput Biol 6:e1000960, as rebuilt here; inputs from memory.
    """
    return leg_share * legs_kcal_per_kg + 0.025 * liver_kcal_per_kg


def km_to_empty(reserve: float, intensity: float) -> float:
    """Return how far *reserve*, kcal per kg, lasts on the level without eating."""
    return reserve / (LEVEL_KCAL_PER_KG_KM * carb_share(intensity))


def most_intensity(reserve: float, km: float) -> float:
    """Return the highest share of VO2max at which *reserve*, kcal per kg, lasts for *km*."""
    low, high = 0.25, 1.0
    for _ in range(60):
        middle = (low + high) / 2.0
        if km_to_empty(reserve, middle) >= km:
            low = middle
        else:
            high = middle
    return low


def absorbed_rate_share(minutes: float) -> float:
    """Return absorption over intake after *minutes* of eating steadily."""
    return 1.0 - math.exp(-minutes / TAU_MIN)


def absorbed_g(g_per_h: float, minutes: float) -> float:
    """Return what is absorbed of a steady intake after *minutes*, below every ceiling."""
    return g_per_h / 60.0 * (minutes - TAU_MIN * absorbed_rate_share(minutes))


def absorbed_of_dose_g(dose_g: float, minutes: float) -> float:
    """Return what is absorbed of one dose after *minutes*, below every ceiling."""
    return dose_g * absorbed_rate_share(minutes)


@dataclass(frozen=True, slots=True, eq=False)
class Stores:
    """Stores in g at the start and after each minute; arrays of shape (minutes + 1,).

    `burnt_g` is the glycogen burnt so far, `eaten_burnt_g` what of the eaten was burnt so far,
    of it `spared_g` in place of glycogen and the rest in place of fat. `legs_g` may fall below
    nothing: then they are empty.
    """

    liver_g: FloatArray
    legs_g: FloatArray
    gut_g: FloatArray
    burnt_g: FloatArray
    eaten_burnt_g: FloatArray
    spared_g: FloatArray

    @property
    def reserve_g(self) -> FloatArray:
        """Liver and legs together."""
        return self.liver_g + self.legs_g


def run_stores(
    liver_g: float,
    legs_g: float,
    burn_g: Amounts,
    energy_g: Amounts,
    eaten_g: Amounts,
    cap_g_per_h: float | Amounts,
) -> Stores:
    """Return the stores through a run, minute by minute.

    Per minute: *burn_g* the glycogen burnt if nothing were eaten, *energy_g* all energy as
    carbohydrate, *eaten_g* what is swallowed at its beginning, *cap_g_per_h* the most that is
    absorbed. What is absorbed is burnt at once, first in place of glycogen, then of fat; what
    finds no use refills the liver; the rest waits. Own model throughout.
    """
    return runs_of_stores(liver_g, legs_g, (burn_g,), energy_g, eaten_g, cap_g_per_h)[0]


def runs_of_stores(
    liver_g: float,
    legs_g: float,
    burns_g: Sequence[Amounts],
    energy_g: Amounts,
    eaten_g: Amounts,
    cap_g_per_h: float | Amounts,
) -> tuple[Stores, ...]:
    """Return the stores through runs that differ by what they burn only; see `run_stores`."""
    eaten = np.asarray(eaten_g, dtype=np.float64)
    usable = MOST_EATEN_SHARE * np.asarray(energy_g, dtype=np.float64)
    most = np.broadcast_to(np.asarray(cap_g_per_h, dtype=np.float64) / 60.0, eaten.shape)
    guts = _emptied(eaten, most)
    ready = np.minimum((guts[:-1] + eaten) / TAU_MIN, most)
    used = np.minimum(usable, ready)
    runs = []
    for burn_g in burns_g:
        burn = np.asarray(burn_g, dtype=np.float64)
        sparable = MOST_SPARED_SHARE * burn
        taken = LIVER_SHARE * (burn - np.minimum(sparable, used))
        livers = _unfilled(liver_g, ready - used, taken)
        if livers is None:
            levels = _minute_by_minute(liver_g, burn, usable, eaten, most)
        else:
            levels = livers, guts, np.concatenate(([0.0], used))
        runs.append(_stores(legs_g, levels, burn, sparable, eaten))
    return tuple(runs)


Levels = tuple[FloatArray, FloatArray, FloatArray]


def _emptied(eaten: FloatArray, most: FloatArray) -> FloatArray:
    """Return what lies in the gut as long as the liver has room for all that finds no use."""
    gut, guts = 0.0, [0.0]
    keep, tau = guts.append, TAU_MIN
    for swallowed, limit in zip(eaten.tolist(), most.tolist(), strict=True):
        gut += swallowed
        ready = gut / tau
        gut -= limit if ready > limit else ready
        keep(gut)
    return np.array(guts, dtype=np.float64)


def _unfilled(liver_g: float, gained: FloatArray, taken: FloatArray) -> FloatArray | None:
    """Return the levels of a liver that never overflows, None where it would.

    A sum that stays above nothing is the free sum and the most it has lacked so far (Skorokhod
    1961, Theory Probab Appl 6:264-274, from memory).
    """
    free = liver_g + np.cumsum(gained - taken)
    levels = np.concatenate(([liver_g], free + np.maximum.accumulate(np.maximum(-free, 0.0))))
    return None if ((levels[:-1] + gained > liver_g) & (gained > 0.0)).any() else levels


def _minute_by_minute(
    liver_g: float, burn: FloatArray, usable: FloatArray, eaten: FloatArray, most: FloatArray
) -> Levels:
    """Return liver, gut and what of the eaten is burnt, whatever happens."""
    sparable = MOST_SPARED_SHARE * burn
    minutes = zip(*(a.tolist() for a in (burn, usable, sparable, eaten, most)), strict=True)
    livers, guts, used_up = [liver_g], [0.0], [0.0]
    liver, gut = liver_g, 0.0
    for need, used, spared, swallowed, limit in minutes:
        gut += swallowed
        ready = min(gut / TAU_MIN, limit)
        if used < ready:
            gained = min(ready - used, liver_g - liver)
            gut -= used + gained
            liver += gained
        else:
            used = ready
            gut -= used
        liver = max(liver - LIVER_SHARE * (need - min(spared, used)), 0.0)
        livers.append(liver)
        guts.append(gut)
        used_up.append(used)
    return np.array(livers), np.array(guts), np.array(used_up)


def _stores(
    legs_g: float, levels: Levels, burn: FloatArray, sparable: FloatArray, eaten: FloatArray
) -> Stores:
    """Return the stores of *levels*; the legs follow from the rest."""
    livers, guts, used = levels
    spared = np.minimum(sparable, used[1:])
    # What left the gut and was not burnt went into the liver; what the liver lacked, the legs gave.
    of_liver = eaten - np.diff(guts) - used[1:] - np.diff(livers)
    return Stores(
        liver_g=livers,
        legs_g=np.concatenate(([legs_g], legs_g - np.cumsum(burn - spared - of_liver))),
        gut_g=guts,
        burnt_g=np.concatenate(([0.0], np.cumsum(burn - spared))),
        eaten_burnt_g=np.cumsum(used),
        spared_g=np.concatenate(([0.0], np.cumsum(spared))),
    )


def first_empty(values: FloatArray) -> float | None:
    """Return the minute at which *values*, at each minute, first fall to nothing; None if never."""
    below = np.flatnonzero(values <= 0.0)
    if not len(below):
        return None
    k = int(below[0])
    if k == 0:
        return 0.0
    before, after = float(values[k - 1]), float(values[k])
    return k - 1 + before / (before - after)
