"""Day, twilight and dark along the race clock."""

from __future__ import annotations

from datetime import datetime
from functools import lru_cache
from typing import Literal

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.sun import (
    CIVIL_TWILIGHT_DEG,
    SUNRISE_DEG,
    crossings,
    elevation_deg,
)

Light = Literal["day", "twilight", "dark"]

HALF_FLANK_S = 1800.0
SMALL_HOURS_AT_H = 3.0
SMALL_HOURS_SPREAD_H = 2.0


class LightSpan(Value, frozen=True):
    """A stretch of one kind of light, seconds of race time."""

    start_s: float
    end_s: float
    kind: Light


def light_spans(
    race: Race, finish_s: float, latitude_deg: float, longitude_deg: float
) -> tuple[LightSpan, ...]:
    """Return the light from the start to *finish_s*, in order and without gaps.

    Twilight is civil twilight (sun between the horizon and 6 degrees below it).
    """
    return _spans(race.start.timestamp(), finish_s, (latitude_deg, longitude_deg))


@lru_cache(maxsize=2)
def _spans(start: float, finish_s: float, place: tuple[float, float]) -> tuple[LightSpan, ...]:
    edges = [start, start + finish_s]
    for level_deg in (SUNRISE_DEG, CIVIL_TWILIGHT_DEG):
        edges.extend(crossings(start, start + finish_s, *place, level_deg))
    at = np.array(sorted(set(edges)))  # unique() would import numpy.ma before the first paint
    heights_deg = elevation_deg((at[:-1] + at[1:]) / 2.0, *place)
    spans: list[LightSpan] = []
    for begin, end, height_deg in zip(at[:-1] - start, at[1:] - start, heights_deg, strict=True):
        kind = _light(float(height_deg))
        if spans and spans[-1].kind == kind:
            spans[-1] = replace(spans[-1], end_s=float(end))
        else:
            spans.append(LightSpan(float(begin), float(end), kind))
    return tuple(spans)


def dark_share(
    start: datetime, elapsed_s: FloatArray, latitude_deg: float, longitude_deg: float
) -> FloatArray:
    """Return how dark it is after *elapsed_s* seconds: 0 by day, 1 by night.

    Between them it runs over the hour about civil dusk or dawn. *elapsed_s* must ascend.
    """
    first = start.timestamp() + float(elapsed_s[0]) - HALF_FLANK_S
    last = start.timestamp() + float(elapsed_s[-1]) + HALF_FLANK_S
    turns = crossings(first, last, latitude_deg, longitude_deg, CIVIL_TWILIGHT_DEG)
    edges = np.concatenate(([first], turns, [last]))
    middles = (edges[:-1] + edges[1:]) / 2.0
    is_dark = elevation_deg(middles, latitude_deg, longitude_deg) < CIVIL_TWILIGHT_DEG
    dark_s = np.concatenate(([0.0], np.cumsum(np.diff(edges) * is_dark)))
    clock = start.timestamp() + elapsed_s
    later = np.interp(clock + HALF_FLANK_S, edges, dark_s)
    return (later - np.interp(clock - HALF_FLANK_S, edges, dark_s)) / (2.0 * HALF_FLANK_S)


def small_hours(start: datetime, elapsed_s: FloatArray, longitude_deg: float) -> FloatArray:
    """Return how near it is to three at night by the sun after *elapsed_s* seconds, 0 to 1.

    Bell of two hours' standard deviation (OWN fit); that performance is lowest in the early
    morning: Drust et al. 2005, Chronobiol Int 22:21-44 (from memory).
    """
    hour = (start.timestamp() + elapsed_s) / 3600.0 + longitude_deg / 15.0
    apart_h = (hour - SMALL_HOURS_AT_H + 12.0) % 24.0 - 12.0
    return np.asarray(np.exp(-0.5 * (apart_h / SMALL_HOURS_SPREAD_H) ** 2), dtype=np.float64)


def _light(height_deg: float) -> Light:
    if height_deg >= SUNRISE_DEG:
        return "day"
    return "twilight" if height_deg >= CIVIL_TWILIGHT_DEG else "dark"
