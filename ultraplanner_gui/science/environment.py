"""What altitude and heat take from a runner, and how warm it is where and when.

Temperatures in degrees Celsius, heights in metres, humidity in percent.
"""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

FloatArray = npt.NDArray[np.float64]

# ISO 2533:1975, Standard Atmosphere: 6.5 K per kilometre up to 11 km.
LAPSE_K_PER_M = 0.0065

ALTITUDE_LOSS_PER_M = 0.063 / 1000.0
ALTITUDE_FROM_M = 300.0

HEAT_LOSS_PER_K = 0.0035
HEAT_FROM_WBGT_C = 15.0


def altitude_power(height_m: npt.ArrayLike) -> FloatArray:
    """Return the aerobic power at a height over that near sea level, unacclimatised.

    6.3 % less for each 1000 m above 300 m: Wehrlin & Hallen 2006, Eur J Appl Physiol
    96:404-412, who measured up to 2800 m; people differ between 4.6 and 7.5 % (from memory).
    """
    above_m = np.maximum(np.asarray(height_m, dtype=np.float64) - ALTITUDE_FROM_M, 0.0)
    return np.asarray(1.0 - ALTITUDE_LOSS_PER_M * above_m, dtype=np.float64)


def air_pressure_torr(height_m: npt.ArrayLike) -> FloatArray:
    """Return the pressure of the standard atmosphere, Torr (ISO 2533:1975)."""
    height = np.asarray(height_m, dtype=np.float64)
    return np.asarray(760.0 * (1.0 - 2.25577e-5 * height) ** 5.25588, dtype=np.float64)


def altitude_power_peronnet(height_m: npt.ArrayLike) -> FloatArray:
    """Return the maximal aerobic power at a height over that at sea level.

    Peronnet, Thibault & Cousineau 1991, J Appl Physiol 70:399-404: a check on `altitude_power`.
    """
    p = air_pressure_torr(height_m)
    percent = -174.1448622 + 1.0899959 * p - 1.5119e-3 * p**2 + 0.72674e-6 * p**3
    return np.asarray(percent / 100.0, dtype=np.float64)


def vapour_pressure_hpa(
    temperature_c: npt.ArrayLike, humidity_percent: npt.ArrayLike
) -> FloatArray:
    """Return the water vapour pressure, hPa, as the Bureau of Meteorology computes it."""
    warmth = np.asarray(temperature_c, dtype=np.float64)
    full = 6.105 * np.exp(17.27 * warmth / (237.7 + warmth))
    return np.asarray(np.asarray(humidity_percent) / 100.0 * full, dtype=np.float64)


def wbgt_estimate_c(temperature_c: npt.ArrayLike, vapour_hpa: npt.ArrayLike) -> FloatArray:
    """Return the wet bulb globe temperature under moderately strong sun and light wind.

    Approximation of the Australian Bureau of Meteorology from temperature and vapour pressure.
    It knows neither sun nor wind: too high at night, under cloud and in wind, too low in full
    sun without wind.
    """
    warmth = np.asarray(temperature_c, dtype=np.float64)
    return 0.567 * warmth + 0.393 * np.asarray(vapour_hpa) + 3.94


def heat_power(wbgt_c: npt.ArrayLike, loss_per_k: float = HEAT_LOSS_PER_K) -> FloatArray:
    """Return the speed in the heat over that on a mild day.

    0.3 to 0.4 % less per degree above 15 (Mantzios et al. 2022, Med Sci Sports Exerc 54:153-161);
    slower runners lose more (Ely et al. 2007, Med Sci Sports Exerc 39:487-493), so planners may
    give a larger *loss_per_k*. Never less than half (OWN).
    """
    above_k = np.maximum(np.asarray(wbgt_c, dtype=np.float64) - HEAT_FROM_WBGT_C, 0.0)
    return np.maximum(1.0 - loss_per_k * above_k, 0.5)


def temperature_at_height(
    temperature_c: npt.ArrayLike, from_m: npt.ArrayLike, to_m: npt.ArrayLike
) -> FloatArray:
    """Return the temperature at *to_m* where it is *temperature_c* at *from_m* (ISO 2533:1975)."""
    rise_m = np.asarray(to_m, dtype=np.float64) - np.asarray(from_m)
    return np.asarray(temperature_c - LAPSE_K_PER_M * rise_m, dtype=np.float64)


def temperature_of_day(
    hour: npt.ArrayLike, coldest_c: float, coldest_h: float, warmest_c: float, warmest_h: float
) -> FloatArray:
    """Return the temperature at clock hours 0 to 24: two half cosines between the extremes.

    OWN shape. *coldest_h* and *warmest_h* must differ.
    """
    since_h = (np.asarray(hour, dtype=np.float64) - coldest_h) % 24.0
    rise_h = (warmest_h - coldest_h) % 24.0
    turn = np.interp(since_h, (0.0, rise_h, 24.0), (0.0, np.pi, 2.0 * np.pi))
    return np.asarray(
        coldest_c + (warmest_c - coldest_c) * (1.0 - np.cos(turn)) / 2.0, dtype=np.float64
    )
