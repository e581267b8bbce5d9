"""What each week adds up to."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from ultraplanner_gui.plan.project import Project


class Role(StrEnum):
    """What a week is for."""

    LOADING = "loading"
    CUTBACK = "cutback"
    TAPER = "taper"
    RACE = "race"


@dataclass(frozen=True, slots=True)
class WeekFigures:
    """One week; distances without the race itself.

    Figures count what was done where a session is done, nothing where it was missed and the
    plan where it lies ahead; `planned_m` is the plan alone, `done_m` what was done alone.
    `last_loading_m` is the distance of the last loading week before this one (None: none),
    `ceiling_m` 1.10 times that. `carb_g` is practice carbohydrate, `carb_g_per_h` the highest
    practised rate; `load` is effort times minutes.
    """

    start: date
    to_go: int
    role: Role
    distance_m: float
    planned_m: float
    done_m: float
    climb_m: float
    drop_m: float
    on_feet_s: float
    longest_m: float
    carb_g: float
    carb_g_per_h: float
    load: float
    last_loading_m: float | None
    ceiling_m: float | None
    sessions: tuple[str, ...]


def week_figures(project: Project) -> tuple[WeekFigures, ...]:
    """Return every week from the block's first to the race week, without gaps."""
    raise NotImplementedError
