"""Which stretches of a plan are walked, and how fast."""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

import numpy as np
import numpy.typing as npt

from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.engine.slope import slope_felt
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.value import dataclass
from ultraplanner_gui.science.walking import gait_change_speed

# OWN: a shorter stretch is no change of gait one plans for.
SHORTEST_M = 200.0


@dataclass(frozen=True, slots=True)
class Stretch:
    """A stretch that is walked, or run, all along; `speed_mps` over the ground, stops left out."""

    start_m: float
    end_m: float
    is_walked: bool
    speed_mps: float
    climb_m: float
    drop_m: float

    @property
    def length_m(self) -> float:
        """Length of the stretch."""
        return self.end_m - self.start_m


@lru_cache(maxsize=4)
def stretches(profile: Profile, plan: PacePlan) -> tuple[Stretch, ...]:
    """Return the course as run and walked stretches, in order and without gaps.

    A piece is walked where *plan* goes slower than the change of gait for its slope
    (`science.walking.gait_change_speed`, OWN); a stretch under 200 m joins the one before it.
    The clock of the plan is not changed by it.
    """
    place = profile.distance_m
    moving_s = plan.moving_s
    if plan.distance_m is not place:
        moving_s = np.interp(place, plan.distance_m, moving_s)
    ends = _joined(place, np.diff(moving_s) > _change_s(profile))
    edges_m = [0.0, *(end_m for end_m, _ in ends)]
    speeds = (np.diff(edges_m) / np.diff(np.interp(edges_m, place, moving_s))).tolist()
    climbs_m = np.diff(np.interp(edges_m, place, profile.climb_m)).tolist()
    drops_m = np.diff(np.interp(edges_m, place, profile.drop_m)).tolist()
    gaits = [is_walked for _, is_walked in ends]
    # In the order of the fields: naming them takes as long again, on every move of a drag.
    return tuple(map(Stretch, edges_m, edges_m[1:], gaits, speeds, climbs_m, drops_m))


@lru_cache(maxsize=4)
def _change_s(profile: Profile) -> FloatArray:
    """Return how long each piece takes at the change of gait, shape (n - 1,)."""
    slope = slope_felt(profile)
    ground_m = np.diff(profile.distance_m) * np.hypot(1.0, slope)
    return np.asarray(ground_m / gait_change_speed(slope), dtype=np.float64)


def _joined(place_m: FloatArray, is_walked: npt.NDArray[np.bool_]) -> list[tuple[float, bool]]:
    """Return the end and the gait of each stretch that is long enough."""
    turns = np.flatnonzero(is_walked[1:] != is_walked[:-1]) + 1
    gaits = is_walked[np.concatenate(([0], turns))].tolist()
    ends: list[tuple[float, bool]] = []
    start_m = 0.0
    for end_m, walks in zip([*place_m[turns].tolist(), float(place_m[-1])], gaits, strict=True):
        if ends and (ends[-1][1] == walks or end_m - start_m < SHORTEST_M):
            ends[-1] = (end_m, ends[-1][1])
        else:
            ends.append((end_m, walks))
        start_m = end_m
    return ends


def walked_m(parts: Sequence[Stretch]) -> float:
    """Return how far is walked in all."""
    return sum(part.length_m for part in parts if part.is_walked)


def walked_between(parts: Sequence[Stretch], start_m: float, end_m: float) -> tuple[float, float]:
    """Return how far and how long is walked between two places."""
    inside = [
        (min(part.end_m, end_m) - max(part.start_m, start_m), part.speed_mps)
        for part in parts
        if part.is_walked and part.start_m < end_m and part.end_m > start_m
    ]
    return sum(m for m, _ in inside), sum(m / mps for m, mps in inside)
