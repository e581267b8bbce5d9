"""Is the race far enough away: weeks there against weeks needed, and what the race asks."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.plan.runner import Level, Runner


@dataclass(frozen=True, slots=True)
class RaceAsks:
    """What the race asks of the build-up (trade ranges, no trial sets them)."""

    peak_week_m: float
    peak_week_s: float
    longest_m: float
    longest_s: float
    two_days_m: float | None


@dataclass(frozen=True, slots=True)
class Runway:
    """Weeks until the race against the weeks the build-up needs, race week not counted.

    `reachable_week_m` and `reachable_longest_m` are what the rules allow by the race.
    """

    weeks_there: int
    weeks_needed: int
    asks: RaceAsks
    reachable_week_m: float
    reachable_longest_m: float
    state: State
    reason: Message


def race_asks(length_m: float, race_s: float, level: Level) -> RaceAsks:
    """Return what a race of *length_m* metres taking *race_s* seconds asks at *level*."""
    raise NotImplementedError


def runway(
    asks: RaceAsks, runner: Runner, today: date, race_day: date, first_weekday: int, race_s: float
) -> Runway:
    """Return the runway from *today*."""
    raise NotImplementedError
