"""Altitude, heat, night and rough descents: what each takes of a runner's power, where and when.

Each can be switched off. How many minutes they come to is in `engine.conditions`.
"""

from __future__ import annotations

from datetime import datetime

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.engine.light import dark_share
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.conditions import Effect, ValleyForecast
from ultraplanner_gui.plan.course import FloatArray, SurfaceFactors, SurfaceSpan
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.environment import (
    HEAT_LOSS_PER_K,
    altitude_power,
    heat_power,
    temperature_at_height,
    temperature_of_day,
    vapour_pressure_hpa,
    wbgt_estimate_c,
)
from ultraplanner_gui.science.surface import DESCENT_FACTOR

EFFECTS: tuple[Effect, ...] = tuple(Effect)

# Own measurement on real runs: splits show a third of the loss the laboratory finds.
ALTITUDE_SHARE = 1.0 / 3.0
# OWN: twice the published loss per degree, for it was measured on the fast and slower runners
# lose more; over 161 km a hot year took 8 % (Parise & Hoffman 2011, IJSPP 6:243-251).
HEAT_LOSS = 2.0 * HEAT_LOSS_PER_K
# OWN: a descent counts in full from here on; between level and here it is blended in.
_DESCENT_FROM = -0.05
_WEATHER_STEP_S = 300.0

WBGT_CAVEAT = QT_TRANSLATE_NOOP(
    "Plan",
    "Estimated from temperature and humidity with sun and a light wind assumed: too high under "
    "cloud and in wind, too low in full sun without wind. Not counted in the dark.",
)


def valley_c(weather: ValleyForecast, hour: FloatArray) -> FloatArray:
    """Return the air temperature in the valley at clock hours."""
    return temperature_of_day(
        hour, weather.coldest_c, weather.coldest_h, weather.warmest_c, weather.warmest_h
    )


def vapour_hpa(weather: ValleyForecast, temperature_c: FloatArray) -> FloatArray:
    """Return the vapour pressure in air of *temperature_c*, hPa.

    The vapour of the warmest hour stays in the air through the day and up the slope, less where
    it would condense (OWN).
    """
    typed = vapour_pressure_hpa(weather.warmest_c, weather.humidity_percent)
    return np.minimum(typed, vapour_pressure_hpa(temperature_c, 100.0))


class Effects(Value, frozen=True):
    """What is reckoned with besides the ground and the hours; those in `off` are not.

    `altitude_share` of the published loss counts; `weather` None means no heat;
    `heat_loss_per_k` is the loss per degree of WBGT above 15; `surfaces` are those whose
    descents are rough. How much the night takes is the runner's `night_loss`. `descent_speed`
    is the runner's own speed downhill over that of the usual curve, which no switch turns off;
    `surface_factors` are what the user thinks of a surface instead of what is usual.
    """

    altitude_share: float = ALTITUDE_SHARE
    weather: ValleyForecast | None = None
    heat_loss_per_k: float = HEAT_LOSS
    surfaces: tuple[SurfaceSpan, ...] = ()
    off: tuple[Effect, ...] = ()
    descent_speed: float = 1.0
    surface_factors: tuple[SurfaceFactors, ...] = ()

    def has(self, effect: Effect) -> bool:
        """Whether *effect* is reckoned with."""
        return effect not in self.off and (effect != Effect.HEAT or self.weather is not None)

    def without(self, *effects: Effect) -> Effects:
        """Return a copy with *effects* switched off too."""
        off = tuple(e for e in EFFECTS if e in self.off or e in effects)
        return replace(self, off=off)


# What is reckoned with where nobody says: the night.
PLAIN = Effects(off=(Effect.ALTITUDE, Effect.HEAT, Effect.DESCENTS))


def place_power(profile: Profile, effects: Effects) -> FloatArray:
    """Return what altitude and rough descents leave of the power, per piece, shape (n - 1,)."""
    power = np.ones(len(profile.distance_m) - 1)
    if effects.has(Effect.ALTITUDE) and profile.has_elevation:
        loss = 1.0 - altitude_power(_middle_height(profile))
        power = power * (1.0 - effects.altitude_share * loss)
    if effects.has(Effect.DESCENTS) and effects.surfaces:
        power = power * _descent_share(profile, effects)
    if effects.descent_speed != 1.0:
        skill = 1.0 + (effects.descent_speed - 1.0) * descent_weight(profile.gradient[:-1])
        power = power * skill
    return power


def descent_weight(gradient: FloatArray) -> FloatArray:
    """Return how much a slope is a descent: 0 from level on up, 1 from 5 % down (OWN)."""
    return np.clip(gradient / _DESCENT_FROM, 0.0, 1.0)


def hour_power(
    profile: Profile, effects: Effects, start: datetime, elapsed_s: FloatArray
) -> FloatArray:
    """Return what heat leaves of the power at the hour of passing, per piece, shape (n - 1,).

    Only by day: the estimate behind it assumes sun. *elapsed_s* per point of the profile.
    """
    weather = effects.weather
    if weather is None or not effects.has(Effect.HEAT):
        return np.ones(len(profile.distance_m) - 1)
    passing_s = (elapsed_s[:-1] + elapsed_s[1:]) / 2.0
    height_m = _middle_height(profile) if profile.has_elevation else weather.valley_m
    along = _weather(profile, weather, start, passing_s, height_m)
    loss = 1.0 - heat_power(along.wbgt_c, effects.heat_loss_per_k)
    return np.asarray(1.0 - loss * (1.0 - along.dark), dtype=np.float64)


class Weather(Value, frozen=True, eq=False):
    """Air temperature, WBGT estimate and darkness (0 to 1) at each point, when it is passed.

    The estimate assumes sun (`WBGT_CAVEAT`): not to be shown where it is dark.
    """

    temperature_c: FloatArray
    wbgt_c: FloatArray
    dark: FloatArray


def weather_along(
    profile: Profile, weather: ValleyForecast, start: datetime, elapsed_s: FloatArray
) -> Weather:
    """Return the weather at each point of the profile at the race times *elapsed_s*."""
    height_m = profile.elevation_m if profile.has_elevation else weather.valley_m
    return _weather(profile, weather, start, elapsed_s, height_m)


def weather_at(
    profile: Profile,
    weather: ValleyForecast,
    start: datetime,
    at_m: FloatArray,
    elapsed_s: FloatArray,
) -> Weather:
    """Return the weather at places in course order at the race times *elapsed_s*."""
    height_m: FloatArray | float = weather.valley_m
    if profile.has_elevation:
        height_m = np.interp(at_m, profile.distance_m, profile.elevation_m)
    return _weather(profile, weather, start, elapsed_s, height_m)


def clock_hour(start: datetime, elapsed_s: FloatArray) -> FloatArray:
    """Return the hour of the clock at the race, 0 to 24, in the zone as it is at the start."""
    midnight = start.replace(hour=0, minute=0, second=0, microsecond=0, tzinfo=None)
    since_s = (start.replace(tzinfo=None) - midnight).total_seconds()
    return np.asarray((since_s + elapsed_s) / 3600.0 % 24.0, dtype=np.float64)


def _weather(
    profile: Profile,
    weather: ValleyForecast,
    start: datetime,
    elapsed_s: FloatArray,
    height_m: FloatArray | float,
) -> Weather:
    """Return the weather at heights and times, those in the order of the race.

    Valley and light change slowly, so both are reckoned each few minutes and drawn between.
    """
    steps = max(2, int((elapsed_s[-1] - elapsed_s[0]) / _WEATHER_STEP_S) + 1)
    times = np.linspace(elapsed_s[0], elapsed_s[-1], steps + 1)
    valley = valley_c(weather, clock_hour(start, times))
    dark = dark_share(start, times, profile.latitude_deg, profile.longitude_deg)
    warmth = temperature_at_height(np.interp(elapsed_s, times, valley), weather.valley_m, height_m)
    wbgt = wbgt_estimate_c(warmth, vapour_hpa(weather, warmth))
    return Weather(warmth, wbgt, np.interp(elapsed_s, times, dark))


def _middle_height(profile: Profile) -> FloatArray:
    return (profile.elevation_m[:-1] + profile.elevation_m[1:]) / 2.0


def _descent_share(profile: Profile, effects: Effects) -> FloatArray:
    """Return the speed on rough descents over that on firm ones; 1 on level ground and uphill."""
    middle_m = (profile.distance_m[:-1] + profile.distance_m[1:]) / 2.0
    factor = np.ones(len(middle_m))
    own = {factors.surface: factors.descent for factors in effects.surface_factors}
    for span in effects.surfaces:
        inside = (middle_m >= span.start_m) & (middle_m < span.end_m)
        factor[inside] = own.get(span.surface, DESCENT_FACTOR[span.surface])
    return np.asarray(
        1.0 - (1.0 - factor) * descent_weight(profile.gradient[:-1]), dtype=np.float64
    )
