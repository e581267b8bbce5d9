"""What a metre costs on a slope: laboratory polynomials, measured means, the pace curve of runs.

Gradient is rise over run, positive uphill. Energy costs are net of standing, J/kg/m along the
slope: Minetti, Moia, Roi, Susta & Ferretti 2002, J Appl Physiol 93:1039-1046.
"""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

FloatArray = npt.NDArray[np.float64]

STEEPEST = 0.45
LEVEL_RUNNING_J_PER_KG_M = 3.6

_RUNNING = (155.4, -30.4, -43.3, 46.3, 19.5, LEVEL_RUNNING_J_PER_KG_M)
_WALKING = (280.5, -58.7, -76.8, 51.9, 19.6, 2.5)

_RACE_PACE = (-4.3635, -0.3211, 3.2209, 0.5656, 0.1707)
_RACE_STEEPEST = 0.40

# Gradient, running, walking: the measured means, J/kg/m.
_MEANS = (
    (-0.45, 3.92, 3.46),
    (-0.40, 3.49, 3.23),
    (-0.35, 2.81, 2.65),
    (-0.30, 2.43, 2.18),
    (-0.20, 1.73, 1.30),
    (-0.10, 1.93, 0.81),
    (0.00, 3.40, 1.64),
    (0.10, 5.77, 4.68),
    (0.20, 8.92, 8.07),
    (0.30, 12.52, 11.29),
    (0.35, 14.43, 12.72),
    (0.40, 16.83, 14.75),
    (0.45, 18.93, 17.33),
)
MEASURED_GRADIENT = tuple(gradient for gradient, _, _ in _MEANS)
MEASURED_RUNNING_J_PER_KG_M = tuple(running for _, running, _ in _MEANS)
MEASURED_WALKING_J_PER_KG_M = tuple(walking for _, _, walking in _MEANS)

# Pace against the level of the same run, medians over own recordings of real runs, not published.
# Laboratory cost halves at -20 %; runners in races take hardly any of that gift.
DOWNHILL_GRADIENT = (-0.45, -0.38, -0.28, -0.22, -0.18, -0.13, -0.10, -0.06, -0.03, 0.0)
DOWNHILL_PACE = (2.15, 1.85, 1.46, 1.22, 1.08, 0.97, 0.91, 0.90, 0.95, 1.0)


def running_cost(gradient: npt.ArrayLike) -> FloatArray:
    """Return the energy cost of running, J/kg/m.

    Minetti et al. 2002. Slopes beyond 45 % count as 45 %, where the measurements end and
    beyond which the polynomial turns over.
    """
    return _polynomial(_RUNNING, np.clip(gradient, -STEEPEST, STEEPEST))


def walking_cost(gradient: npt.ArrayLike) -> FloatArray:
    """Return the energy cost of walking at the best speed for the slope, J/kg/m.

    Minetti et al. 2002, clipped as in `running_cost`. Up to half above the measured means
    between -20 % and level; `measured_walking_cost` follows those.
    """
    return _polynomial(_WALKING, np.clip(gradient, -STEEPEST, STEEPEST))


def measured_running_cost(gradient: npt.ArrayLike) -> FloatArray:
    """Return the measured mean cost of running, J/kg/m, drawn smoothly between the slopes.

    Means of Minetti et al. 2002; between them a cubic that adds no bumps of its own.
    """
    return _through_means(MEASURED_RUNNING_J_PER_KG_M, gradient)


def measured_walking_cost(gradient: npt.ArrayLike) -> FloatArray:
    """Return the measured mean cost of walking, J/kg/m; as `measured_running_cost`."""
    return _through_means(MEASURED_WALKING_J_PER_KG_M, gradient)


def pace_cost(gradient: npt.ArrayLike, uphill_share: float = 0.90) -> FloatArray:
    """Return how many level metres one metre at *gradient* takes the time of, in a long race.

    Uphill *uphill_share* of the surcharge of `running_cost` over level ground; downhill
    the pace curve of real runs (own measurement).
    """
    slope = np.asarray(gradient, dtype=np.float64)
    uphill = running_cost(np.maximum(slope, 0.0)) / LEVEL_RUNNING_J_PER_KG_M - 1.0
    downhill = np.interp(slope, DOWNHILL_GRADIENT, DOWNHILL_PACE)
    return downhill + uphill_share * uphill


def race_pace(gradient: npt.ArrayLike) -> FloatArray:
    """Return the pace on a slope over that on the level in records of hill races.

    Kay 2012, J Quant Anal Sports 8(4), the quartic as others quote it, not confirmed in the
    paper; slopes beyond 40 % count as 40 % (OWN). Braking downhill is in it.
    """
    slope = np.clip(gradient, -_RACE_STEEPEST, _RACE_STEEPEST)
    return _polynomial(_RACE_PACE, slope) / _RACE_PACE[-1]


def _polynomial(coefficients: tuple[float, ...], at: FloatArray) -> FloatArray:
    value = np.full_like(at, coefficients[0], dtype=np.float64)
    for coefficient in coefficients[1:]:
        value = value * at + coefficient
    return value


def _through_means(means: tuple[float, ...], gradient: npt.ArrayLike) -> FloatArray:
    x, y = np.array(MEASURED_GRADIENT), np.array(means)
    slope = _shape_preserving_slopes(x, y)
    at = np.clip(np.asarray(gradient, dtype=np.float64), x[0], x[-1])
    k = np.clip(np.searchsorted(x, at, side="right") - 1, 0, len(x) - 2)
    width = x[k + 1] - x[k]
    u = (at - x[k]) / width
    rise = y[k + 1] - y[k]
    bend = (slope[k] * width - rise) * (1.0 - u) - (slope[k + 1] * width - rise) * u
    return np.asarray(y[k] + u * rise + u * (1.0 - u) * bend, dtype=np.float64)


def _shape_preserving_slopes(x: FloatArray, y: FloatArray) -> FloatArray:
    """Return the slopes at the means that let a cubic keep their rises and falls.

    Fritsch & Butland 1984, SIAM J Sci Stat Comput 5:300-304.
    """
    width = np.diff(x)
    secant = np.diff(y) / width
    left, right = 2.0 * width[1:] + width[:-1], width[1:] + 2.0 * width[:-1]
    inner = np.zeros(len(x) - 2)
    agree = secant[:-1] * secant[1:] > 0.0
    harmonic = (left + right)[agree] / (
        left[agree] / secant[:-1][agree] + right[agree] / secant[1:][agree]
    )
    inner[agree] = harmonic
    first = _end_slope(width[0], width[1], secant[0], secant[1])
    last = _end_slope(width[-1], width[-2], secant[-1], secant[-2])
    return np.concatenate(([first], inner, [last]))


def _end_slope(near_width: float, far_width: float, near: float, far: float) -> float:
    slope = ((2.0 * near_width + far_width) * near - near_width * far) / (near_width + far_width)
    if slope * near <= 0.0:
        return 0.0
    if near * far < 0.0 and abs(slope) > 3.0 * abs(near):
        return 3.0 * near
    return float(slope)
