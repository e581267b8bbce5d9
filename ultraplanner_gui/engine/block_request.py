"""What a block is built from."""

from __future__ import annotations

import math
from datetime import date

from ultraplanner_gui.plan.block import Ground, Session
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.surface import Surface
from ultraplanner_gui.plan.value import Value

LEAST_FREE_S = 20 * 60.0


class BlockRequest(Value, frozen=True):
    """What a block is built from. `first_day` is the first day that may hold a session;
    `race_s` the predicted finish; `dark_s` the dark part of it; `cutback_every` 3 or 4;
    `tune_ups` are dates and distances of races on the way, `locked` the sessions that stay as
    they are. Days away and wishes are the runner's. `race_surface` is what is mostly underfoot in
    the race, `last_ground` the ground of its last third, `race_start_s` the time of day it starts.
    """

    first_day: date
    race_day: date
    race_m: float
    climb_m: float
    drop_m: float
    race_s: float
    runner: Runner
    first_weekday: int = 0
    dark_s: float = 0.0
    cutback_every: int = 4
    carb_target_g_per_h: float = 60.0
    tune_ups: tuple[tuple[date, float], ...] = ()
    locked: tuple[Session, ...] = ()
    race_surface: Surface = Surface.UNKNOWN
    last_ground: Ground | None = None
    race_start_s: float | None = None

    def free_s(self, day: date) -> float:
        """Return the time free for running on *day*, days away taken into account."""
        free_s = self.runner.available_s[day.weekday()]
        for away in self.runner.away:
            if away.first <= day <= away.last:
                free_s = min(free_s, away.free_s)
        return free_s


def check_request(request: BlockRequest) -> None:
    """Raise PlanError if no block can be built from *request*."""
    figures = (request.race_m, request.race_s, request.climb_m, request.drop_m)
    if not all(math.isfinite(f) for f in figures) or min(figures) < 0 or 0 in figures[:2]:
        raise PlanError(
            QT_TRANSLATE_NOOP("Block", "The race needs a distance and a finish time above zero.")
        )
    if request.first_day > request.race_day:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Block",
                "The race lies before the first day of the build-up; set a later race date.",
            )
        )
    if request.runner.easy_mps <= 0 or not math.isfinite(request.runner.easy_mps):
        raise PlanError(
            QT_TRANSLATE_NOOP("Block", "The runner needs an easy pace before a build-up is made.")
        )
    if not any(free_s >= LEAST_FREE_S for free_s in request.runner.available_s):
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Block", "No day has 20 minutes free for running; give the runner at least one."
            )
        )
    if request.cutback_every not in (3, 4):
        raise PlanError(QT_TRANSLATE_NOOP("Block", "A cutback comes every 3rd or every 4th week."))
