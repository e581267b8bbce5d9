"""Surfaces: what is underfoot where, and what the user thinks it costs."""

from __future__ import annotations

from enum import StrEnum

from ultraplanner_gui.plan.value import Kept, Number


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


class SurfaceSpan(Kept, frozen=True):
    """A stretch of known surface, metres from the start."""

    start_m: Number
    end_m: Number
    surface: Surface


class SurfaceFactors(Kept, frozen=True):
    """What the user has set for one surface instead of what is usual.

    `cost` is the energy on it over that on firm ground, `descent` the speed downhill on it over
    that on firm ground.
    """

    surface: Surface
    cost: Number
    descent: Number
