"""The course as arrays to compute with: distance, smoothed height, gradient, climb and drop."""

from __future__ import annotations

from dataclasses import dataclass

from ultraplanner_gui.plan.course import Course, FloatArray
from ultraplanner_gui.plan.message import Message


@dataclass(frozen=True, slots=True, eq=False)
class Profile:
    """The course on an even grid; arrays of shape (n,), read-only.

    `gradient[k]` is rise over run of the piece from point k to k + 1 (the last repeats);
    `climb_m` and `drop_m` are cumulative from the start by the same turning-point rule as the
    totals `ascent_m` and `descent_m`; `surface_cost[k]` is the cost factor of the piece.
    `latitude_deg`, `longitude_deg` are those of the start. `method` says how height was treated.
    """

    distance_m: FloatArray
    elevation_m: FloatArray
    gradient: FloatArray
    climb_m: FloatArray
    drop_m: FloatArray
    surface_cost: FloatArray
    ascent_m: float
    descent_m: float
    has_elevation: bool
    latitude_deg: float
    longitude_deg: float
    method: Message

    @property
    def length_m(self) -> float:
        """Length of the course."""
        return float(self.distance_m[-1])

    def climb_drop(self, start_m: float, end_m: float) -> tuple[float, float]:
        """Return climb and drop between two places, metres."""
        raise NotImplementedError

    def elevation_at(self, at_m: float) -> float:
        """Return the height at a place, metres."""
        raise NotImplementedError


def build_profile(course: Course) -> Profile:
    """Return the profile of *course*."""
    raise NotImplementedError
