"""The rules the build-up is held against, each with its figure and its source."""

from __future__ import annotations

from collections.abc import Sequence

from ultraplanner_gui.engine.check import Check
from ultraplanner_gui.engine.checks_race import race_checks
from ultraplanner_gui.engine.checks_runs import (
    downhill_checks,
    hard_day_checks,
    long_hours_checks,
    single_run_checks,
    tune_up_checks,
)
from ultraplanner_gui.engine.checks_weeks import (
    asked_checks,
    carb_checks,
    taper_check,
    week_checks,
)
from ultraplanner_gui.engine.runway import RaceAsks, Runway
from ultraplanner_gui.engine.weeks import WeekFigures
from ultraplanner_gui.plan.project import Project

__all__ = ["Check", "block_checks"]


def block_checks(
    project: Project,
    weeks: Sequence[WeekFigures],
    asks: RaceAsks | None,
    dark_s: float = 0.0,
    way: Runway | None = None,
) -> tuple[Check, ...]:
    """Return every check of the build-up, by time; those that hold as well.

    Checks that concern no week in particular come last. *asks* is None without a course; *dark_s*
    is the dark part of the race, *way* the runway as it stands.
    """
    sessions = project.block.sessions
    if not sessions or not weeks:
        return ()
    by_key = {s.key: s for s in sessions}
    taper = taper_check(project, weeks)
    checks = [
        *week_checks(project, weeks, by_key),
        *single_run_checks(project, sessions),
        *long_hours_checks(project, sessions),
        *hard_day_checks(project, sessions),
        *downhill_checks(project, sessions),
        *tune_up_checks(project, sessions),
        *carb_checks(project, weeks, by_key),
        *([] if taper is None else [taper]),
        *asked_checks(weeks, asks, project.block),
        *race_checks(project, weeks, sessions, dark_s, way),
    ]
    checks.sort(key=lambda check: -check.weeks[0] if check.weeks else 1)
    return tuple(checks)
