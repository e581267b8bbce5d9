"""The runner: what they do now, when they can train, and how they tire."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Level(StrEnum):
    """How much the build-up asks: the floor for finishing inside the cutoffs, usual, ambitious."""

    FLOOR = "floor"
    USUAL = "usual"
    AMBITIOUS = "ambitious"


@dataclass(frozen=True, slots=True)
class Runner:
    """One runner.

    `weekly_m` is the distance of a usual recent week, `longest_m` the longest run of the last
    30 days, `easy_mps` easy speed on level ground. `available_s` are the seconds free for
    running on Monday to Sunday (0: no run), `long_day` the weekday of the long run, Monday 0.
    `carb_g_per_h` is the intake the gut is known to take while running.

    `fade`, `fade_onset_h`, `uphill_share` and `night_loss` are the parameters of the pacing
    model (`engine.pacing`): power after h hours is (1 + h / fade_onset_h) ** -fade, night
    takes away `night_loss` of it, and `uphill_share` of the published uphill surcharge counts.
    """

    name: str = ""
    body_kg: float = 70.0
    weekly_m: float = 40_000.0
    longest_m: float = 18_000.0
    easy_mps: float = 2.6
    available_s: tuple[float, ...] = (0.0, 3600.0, 5400.0, 3600.0, 3600.0, 18_000.0, 7200.0)
    long_day: int = 5
    level: Level = Level.USUAL
    carb_g_per_h: float = 40.0
    fade: float = 0.10
    fade_onset_h: float = 0.75
    uphill_share: float = 0.90
    night_loss: float = 0.10
