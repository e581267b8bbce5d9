"""Carbohydrate stores along a run: what is burnt, what is absorbed, what is left.

A trend tool, not a prediction: +/- 30 % at best. Not valid with diabetes; downhill running, heat,
altitude and sleep loss are left out.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import numpy.typing as npt
from msgspec import Struct

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


class Stores(Struct, frozen=True, eq=False):
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
    burn, eaten = (np.asarray(amounts, dtype=np.float64) for amounts in (burn_g, eaten_g))
    usable = MOST_EATEN_SHARE * np.asarray(energy_g, dtype=np.float64)
    most = np.broadcast_to(np.asarray(cap_g_per_h, dtype=np.float64) / 60.0, burn.shape)
    sparable = MOST_SPARED_SHARE * burn
    livers, guts = _levels(liver_g, LIVER_SHARE * burn, usable, LIVER_SHARE * sparable, eaten, most)
    used = np.minimum(usable, np.minimum((guts[:-1] + eaten) / TAU_MIN, most))
    spared = np.minimum(sparable, used)
    # What left the gut and was not burnt went into the liver; what the liver lacked, the legs gave.
    of_liver = eaten - np.diff(guts) - used - np.diff(livers)
    return Stores(
        liver_g=livers,
        legs_g=np.concatenate(([legs_g], legs_g - np.cumsum(burn - spared - of_liver))),
        gut_g=guts,
        burnt_g=np.concatenate(([0.0], np.cumsum(burn - spared))),
        eaten_burnt_g=np.concatenate(([0.0], np.cumsum(used))),
        spared_g=np.concatenate(([0.0], np.cumsum(spared))),
    )


def _levels(liver_g: float, *of_minutes: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Return liver and gut at the start and after each minute.

    *of_minutes* are, per minute: what the liver gives if nothing is eaten, the most of the eaten
    that is burnt, the most that the liver is spared by it, what is swallowed, the most absorbed.
    """
    # What a minute leaves decides the next: there is no way around a loop, only a lean one.
    livers, guts = [liver_g], [0.0]
    keep_liver, keep_gut = livers.append, guts.append
    liver, gut, share, tau = liver_g, 0.0, LIVER_SHARE, TAU_MIN
    minutes = zip(*(amounts.tolist() for amounts in of_minutes), strict=True)
    for given, used, spared, swallowed, limit in minutes:
        gut += swallowed
        ready = gut / tau
        if ready > limit:
            ready = limit
        if used < ready:
            gained, room = ready - used, liver_g - liver
            if gained > room:
                gained = room
            gut -= used + gained
            liver += gained
            ready = used
        else:
            gut -= ready
        ready *= share
        liver -= given - (spared if spared < ready else ready)
        if liver < 0.0:
            liver = 0.0
        keep_liver(liver)
        keep_gut(gut)
    return np.array(livers), np.array(guts)


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
