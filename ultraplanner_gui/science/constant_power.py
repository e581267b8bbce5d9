"""A course run at constant power on laboratory cost: what physiology alone would have one do.

Speed is power over the energy cost of the slope and the ground; on descents a pace curve of
hill races caps it, and where running falls below the walking limit one walks. The model keeps
to published curves and knows nothing of how runners really pace; `engine.pacing` does.
"""

from __future__ import annotations

from typing import Literal

import numpy as np
import numpy.typing as npt
from msgspec import Struct

from ultraplanner_gui.science.gradient_cost import (
    LEVEL_RUNNING_J_PER_KG_M,
    race_pace,
    running_cost,
    walking_cost,
)

FloatArray = npt.NDArray[np.float64]
Gait = Literal["run", "walk", "cap"]

LEAST_W_PER_KG, MOST_W_PER_KG = 0.1, 60.0
FASTEST_WALK_MPS = 2.0


class Pieces(Struct, frozen=True, eq=False):
    """Pieces of a course, arrays of shape (n,): map distance, rise, cost of the ground, and the
    power there over that at sea level.
    """

    distance_m: FloatArray
    rise_m: FloatArray
    surface_cost: FloatArray
    power_share: FloatArray

    @property
    def gradient(self) -> FloatArray:
        """Rise over run."""
        return self.rise_m / self.distance_m

    @property
    def slope_length_m(self) -> FloatArray:
        """Length along the slope."""
        return np.hypot(self.distance_m, self.rise_m)

    @property
    def level_equivalent_m(self) -> FloatArray:
        """Metres of firm level ground that cost as much."""
        cost = running_cost(self.gradient) / LEVEL_RUNNING_J_PER_KG_M
        return self.slope_length_m * cost * self.surface_cost


class Ways(Struct, frozen=True):
    """How it is run: `drift` is the rise of cost over the whole course, `descent_drift` that of
    descents besides; `descent_skill` over race pace downhill caps the speed there (None: no cap);
    below `least_run_mps` one walks if that is faster (0: never).
    """

    drift: float = 0.0
    descent_drift: float = 0.0
    descent_skill: float | None = None
    least_run_mps: float = 0.0


def times_at_power(
    pieces: Pieces, power_w_per_kg: float, ways: Ways
) -> tuple[FloatArray, list[Gait]]:
    """Return seconds and gait of each piece at the level power *power_w_per_kg* (net of standing).

    Minetti et al. 2002 for both costs, Kay 2012 for the cap (J Quant Anal Sports 8(4), as
    quoted by others); the way they are joined is OWN.
    """
    gradient = pieces.gradient
    level_m = pieces.level_equivalent_m
    through = (np.cumsum(level_m) - level_m / 2.0) / level_m.sum()
    is_down = gradient < 0.0
    tired = 1.0 + ways.drift * through
    tired = tired * np.where(is_down, 1.0 + ways.descent_drift * through, 1.0)
    power = power_w_per_kg * pieces.power_share / tired
    run = power / (running_cost(gradient) * pieces.surface_cost)
    speed = run
    if ways.descent_skill is not None:
        level_speed = power / (LEVEL_RUNNING_J_PER_KG_M * pieces.surface_cost)
        cap = ways.descent_skill * level_speed / race_pace(gradient)
        speed = np.where(is_down, np.minimum(run, cap), run)
    is_capped = speed < run
    walk = np.minimum(power / (walking_cost(gradient) * pieces.surface_cost), FASTEST_WALK_MPS)
    is_walked = (speed < ways.least_run_mps) & (walk > speed)
    speed = np.where(is_walked, walk, speed)
    gaits: list[Gait] = [
        "walk" if walks else "cap" if capped else "run"
        for walks, capped in zip(is_walked.tolist(), is_capped.tolist(), strict=True)
    ]
    return np.asarray(pieces.slope_length_m / speed, dtype=np.float64), gaits


def power_for_time(pieces: Pieces, moving_s: float, ways: Ways) -> float:
    """Return the power in W/kg at which *pieces* take *moving_s* seconds, by bisection.

    More power takes less time if one runs from `FASTEST_WALK_MPS` up. The nearest end of the
    range where no power fits.
    """
    low, high = LEAST_W_PER_KG, MOST_W_PER_KG
    for _ in range(40):
        middle = (low + high) / 2.0
        too_slow = float(times_at_power(pieces, middle, ways)[0].sum()) > moving_s
        low, high = (middle, high) if too_slow else (low, middle)
    return (low + high) / 2.0
