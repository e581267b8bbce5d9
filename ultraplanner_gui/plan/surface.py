"""Surfaces: what is underfoot where, and what the user thinks it costs."""

from __future__ import annotations

from enum import StrEnum

from ultraplanner_gui.plan.value import dataclass


class Surface(StrEnum):
    """What is underfoot; unknown stays unknown."""

    UNKNOWN = "unknown"
    ROAD = "road"
    GRAVEL = "gravel"
    SMOOTH_TRAIL = "smooth trail"
    GRASS = "grass"
    TECHNICAL_TRAIL = "technical trail"
    ROCK = "rock"
    SAND = "sand"
    SNOW = "snow"


@dataclass(frozen=True, slots=True)
class SurfaceSpan:
    """A stretch of known surface, metres from the start."""

    start_m: float
    end_m: float
    surface: Surface


@dataclass(frozen=True, slots=True)
class SurfaceFactors:
    """What the user has set for one surface instead of what is usual.

    `cost` is the energy on it over that on firm ground, `descent` the speed downhill on it over
    that on firm ground.
    """

    surface: Surface
    cost: float
    descent: float
