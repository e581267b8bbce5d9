"""Edits of the race and the runner."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import ClassVar

from ultraplanner_gui.edits.course import LONGEST_RACE_S
from ultraplanner_gui.edits.project import SetFirstWeekday
from ultraplanner_gui.plan.block import Block, Kind
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner


@dataclass(frozen=True, slots=True)
class ChangeRace:
    """The user changed the name, the start, the finish aimed for or the limit."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change race")
    race: Race
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        race = self.race
        if not 600.0 <= race.goal_s <= LONGEST_RACE_S:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "The finish time lies between 10 minutes and 240 hours.")
            )
        if race.limit_s is not None and not 600.0 <= race.limit_s <= LONGEST_RACE_S:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "The time limit lies between 10 minutes and 240 hours.")
            )
        if race == project.race:
            return project
        return replace(project, race=race, block=_with_race_moved(project, race))


@dataclass(frozen=True, slots=True)
class ChangeSetup:
    """The user sent the form for race and runner."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change race and runner")
    race: Race
    runner: Runner
    first_weekday: int
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        check_runner(self.runner)
        changed = SetFirstWeekday(self.first_weekday).apply(ChangeRace(self.race).apply(project))
        runner = project.runner if project.runner == self.runner else self.runner
        return replace(changed, runner=runner)


RUNNER_RANGES: dict[str, tuple[float, float]] = {
    "body_kg": (30.0, 200.0),
    "weekly_m": (0.0, 400_000.0),
    "longest_m": (0.0, 200_000.0),
    "easy_mps": (1.0, 6.0),
    "carb_g_per_h": (0.0, 120.0),
    "fade": (0.0, 0.5),
}


def check_runner(runner: Runner) -> None:
    """Raise PlanError if a figure of *runner* is out of its range."""
    for field, (low, high) in RUNNER_RANGES.items():
        value = getattr(runner, field)
        if not (math.isfinite(value) and low <= value <= high):
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "The runner's {0} lies between {1} and {2}."),
                field,
                f"{low:g}",
                f"{high:g}",
            )
    if len(runner.available_s) != 7 or not all(0.0 <= s <= 86_400.0 for s in runner.available_s):
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Edit", "The time free for running lies between 0 and 24 hours a day."
            )
        )


def _with_race_moved(project: Project, race: Race) -> Block:
    """Return the block with the race's own session on its new day; the training stays put."""
    block = project.block
    for session in block.sessions:
        if session.kind is Kind.RACE and session.done is None:
            block = block.with_session(replace(session, day=race.day, duration_s=race.goal_s))
    return block
