"""Where the sun stands, from the low-precision solar equations.

Meeus, Astronomical Algorithms (2nd ed. 1998), chapters 25 and 28, in the form published with
the Solar Calculator of the NOAA Global Monitoring Laboratory. Flat horizon.
"""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

FloatArray = npt.NDArray[np.float64]

SUNRISE_DEG = -0.833
CIVIL_TWILIGHT_DEG = -6.0

_STEP_S = 300.0


def elevation_deg(unix_s: npt.ArrayLike, latitude_deg: float, longitude_deg: float) -> FloatArray:
    """Return the height of the sun's centre above the horizon, without refraction, degrees.

    *unix_s* are seconds since 1970 UTC; longitude is positive east.
    """
    when = np.asarray(unix_s, dtype=np.float64)
    declination, equation_min = _declination_and_equation_of_time(when)
    solar_min = when / 60.0 % 1440.0 + equation_min + 4.0 * longitude_deg
    hour_angle = np.radians(solar_min / 4.0 - 180.0)
    latitude = np.radians(latitude_deg)
    sine = np.sin(latitude) * np.sin(declination)
    sine = sine + np.cos(latitude) * np.cos(declination) * np.cos(hour_angle)
    return np.asarray(np.degrees(np.arcsin(np.clip(sine, -1.0, 1.0))), dtype=np.float64)


def crossings(
    from_s: float, to_s: float, latitude_deg: float, longitude_deg: float, level_deg: float
) -> FloatArray:
    """Return when the sun passes *level_deg* between two times, in seconds since 1970 UTC.

    Ascending; empty where it stays above or below. A dip of less than five minutes may be missed.
    """
    steps = max(2, int(np.ceil((to_s - from_s) / _STEP_S)) + 1)
    when = np.linspace(from_s, to_s, steps)
    over = elevation_deg(when, latitude_deg, longitude_deg) - level_deg
    k = np.flatnonzero((over[:-1] < 0.0) != (over[1:] < 0.0))
    return when[k] + (when[k + 1] - when[k]) * over[k] / (over[k] - over[k + 1])


def _declination_and_equation_of_time(when: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Return the declination in radians and the equation of time in minutes."""
    century = (when / 86400.0 + 2440587.5 - 2451545.0) / 36525.0
    mean_longitude = np.radians(280.46646 + century * (36000.76983 + 0.0003032 * century))
    anomaly = np.radians(357.52911 + century * (35999.05029 - 0.0001537 * century))
    eccentricity = 0.016708634 - century * (0.000042037 + 0.0000001267 * century)
    centre_deg = (
        np.sin(anomaly) * (1.914602 - century * (0.004817 + 0.000014 * century))
        + np.sin(2.0 * anomaly) * (0.019993 - 0.000101 * century)
        + np.sin(3.0 * anomaly) * 0.000289
    )
    node = np.radians(125.04 - 1934.136 * century)
    longitude = mean_longitude + np.radians(centre_deg - 0.00569 - 0.00478 * np.sin(node))
    arc_s = 21.448 - century * (46.815 + century * (0.00059 - 0.001813 * century))
    obliquity = np.radians(23.0 + (26.0 + arc_s / 60.0) / 60.0 + 0.00256 * np.cos(node))
    declination = np.arcsin(np.sin(obliquity) * np.sin(longitude))
    y = np.tan(obliquity / 2.0) ** 2
    equation = (
        y * np.sin(2.0 * mean_longitude)
        - 2.0 * eccentricity * np.sin(anomaly)
        + 4.0 * eccentricity * y * np.sin(anomaly) * np.cos(2.0 * mean_longitude)
        - 0.5 * y**2 * np.sin(4.0 * mean_longitude)
        - 1.25 * eccentricity**2 * np.sin(2.0 * anomaly)
    )
    return declination, 4.0 * np.degrees(equation)
