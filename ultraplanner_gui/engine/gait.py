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
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.walking import gait_change_speed

# OWN: a shorter stretch is no change of gait one plans for.
SHORTEST_M = 200.0


class Stretch(Value, frozen=True):
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
    ends, gaits = _joined(place, np.diff(moving_s) > _change_s(profile))
    edges = np.array([0, *ends])
    edges_m = place[edges]
    speeds = np.diff(edges_m) / np.diff(moving_s[edges])
    climbs_m, drops_m = np.diff(profile.climb_m[edges]), np.diff(profile.drop_m[edges])
    starts_m, ends_m = edges_m[:-1].tolist(), edges_m[1:].tolist()
    columns = (starts_m, ends_m, gaits, speeds.tolist(), climbs_m.tolist(), drops_m.tolist())
    return tuple(map(Stretch, *columns))


@lru_cache(maxsize=4)
def _change_s(profile: Profile) -> FloatArray:
    """Return how long each piece takes at the change of gait, shape (n - 1,)."""
    slope = slope_felt(profile)
    ground_m = np.diff(profile.distance_m) * np.hypot(1.0, slope)
    return np.asarray(ground_m / gait_change_speed(slope), dtype=np.float64)


def _joined(place_m: FloatArray, is_walked: npt.NDArray[np.bool_]) -> tuple[list[int], list[bool]]:
    """Return the end, a number of a point, and the gait of each stretch that is long enough."""
    turns = np.flatnonzero(is_walked[1:] != is_walked[:-1]) + 1
    turns_m = place_m[turns].tolist()
    ends: list[int] = []
    gaits: list[bool] = []
    start_m, walks = 0.0, bool(is_walked[0])
    last = len(place_m) - 1
    for end, end_m in zip([*turns.tolist(), last], [*turns_m, float(place_m[-1])], strict=True):
        if ends and (gaits[-1] == walks or end_m - start_m < SHORTEST_M):
            ends[-1] = end
        else:
            ends.append(end)
            gaits.append(walks)
        start_m, walks = end_m, not walks
    return ends, gaits


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
