"""Edits of how the race is paced and of what it is reckoned with."""

from __future__ import annotations

from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.edits.course import LONGEST_RACE_S
from ultraplanner_gui.edits.race import ChangeRace, check_past_runs, check_runner
from ultraplanner_gui.plan.conditions import Conditions, Effect, ValleyForecast
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError, Quantity
from ultraplanner_gui.plan.pacing import Pacing, PastRun
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value

MOST_FADE_SHARE = 2.0
COLDEST_C, WARMEST_C = -60.0, 60.0
LOWEST_VALLEY_M, HIGHEST_VALLEY_M = -450.0, 6_000.0


class ShapeTarget(Value, frozen=True):
    """The user shaped the target: how much of the fade it keeps, and whether the finish stays."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Shape the target")
    pacing: Pacing
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        if not 0.0 <= self.pacing.fade_share <= MOST_FADE_SHARE:
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "Edit", "The target keeps between {0} and {1} of the forecast's fade."
                ),
                Quantity(0.0, "percent"),
                Quantity(100.0 * MOST_FADE_SHARE, "percent"),
            )
        return project if self.pacing == project.pacing else replace(project, pacing=self.pacing)


class SetConditions(Value, frozen=True):
    """The user said what the day will be like, and what it takes of a runner like them.

    `night_loss` is the share of speed the dark takes.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set conditions")
    conditions: Conditions
    night_loss: float
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        check_conditions(self.conditions)
        runner = replace(project.runner, night_loss=self.night_loss)
        check_runner(runner)
        return _with(project, runner, self.conditions)


class SetPastRuns(Value, frozen=True):
    """The user typed in what the runner has run before."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Type in past runs")
    runs: tuple[PastRun, ...]
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        check_past_runs(self.runs)
        return _with(project, replace(project.runner, past_runs=self.runs), project.conditions)


class UseAsGoal(Value, frozen=True):
    """The user took a predicted finish as the one aimed for, with how surely it is known.

    `spread` is the standard deviation over the finish time. The runs it was predicted from are
    kept with it.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Use predicted finish as goal")
    goal_s: float
    spread: float
    runs: tuple[PastRun, ...]
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        check_past_runs(self.runs)
        runner = replace(project.runner, past_runs=self.runs, finish_spread=self.spread)
        check_runner(runner)
        changed = ChangeRace(replace(project.race, goal_s=self.goal_s)).apply(project)
        return _with(changed, runner, changed.conditions)


class TakeFit(Value, frozen=True):
    """The user took what recordings say of the runner: fade, climbing, descending."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Take fitted pace")
    fade: float
    uphill_share: float
    descent_speed: float
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        runner = replace(
            project.runner,
            fade=self.fade,
            uphill_share=self.uphill_share,
            descent_speed=self.descent_speed,
        )
        check_runner(runner)
        return _with(project, runner, project.conditions)


class SetPace(Value, frozen=True):
    """The user sent the form for the target's shape and for how the runner fades and walks."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set pace")
    pacing: Pacing
    fade: float
    uphill_share: float
    descent_speed: float
    tired_walk: float
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        fitted = TakeFit(self.fade, self.uphill_share, self.descent_speed)
        changed = fitted.apply(ShapeTarget(self.pacing).apply(project))
        runner = replace(changed.runner, tired_walk=self.tired_walk)
        check_runner(runner)
        return _with(changed, runner, changed.conditions)


def check_conditions(conditions: Conditions) -> None:
    """Raise PlanError if a figure of *conditions* is out of its range."""
    lamp_s = conditions.lamp_s
    if lamp_s is not None and not 0.0 <= lamp_s <= LONGEST_RACE_S:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "A lamp burns between 0 and {0}."),
            Quantity(LONGEST_RACE_S, "s"),
        )
    if conditions.weather is not None:
        check_weather(conditions.weather)


def check_weather(weather: ValleyForecast) -> None:
    """Raise PlanError if a figure of *weather* is out of its range."""
    if not COLDEST_C <= weather.coldest_c <= weather.warmest_c <= WARMEST_C:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Edit",
                "The coldest hour cannot be warmer than the warmest; give both between {0} and "
                "{1}.",
            ),
            Quantity(COLDEST_C, "celsius"),
            Quantity(WARMEST_C, "celsius"),
        )
    if not 0.0 <= weather.humidity_percent <= 100.0:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "Humidity lies between {0} and {1}."),
            Quantity(0.0, "percent"),
            Quantity(100.0, "percent"),
        )
    if not LOWEST_VALLEY_M <= weather.valley_m <= HIGHEST_VALLEY_M:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "The place of the forecast lies between {0} and {1}."),
            Quantity(LOWEST_VALLEY_M, "height_m"),
            Quantity(HIGHEST_VALLEY_M, "height_m"),
        )
    hours = (weather.coldest_h, weather.warmest_h)
    if not all(0.0 <= hour <= 24.0 for hour in hours) or hours[0] % 24.0 == hours[1] % 24.0:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Edit",
                "The coldest and the warmest hour are hours of one day, 0 to 24, and lie apart.",
            )
        )


def without(conditions: Conditions, effect: Effect, is_on: bool) -> Conditions:
    """Return *conditions* with *effect* reckoned with or not."""
    off = {*conditions.off} - {effect} if is_on else {*conditions.off, effect}
    return replace(conditions, off=tuple(e for e in Effect if e in off))


def _with(project: Project, runner: Runner, conditions: Conditions) -> Project:
    """Return *project* with runner and conditions; those that are the same are shared."""
    changes: dict[str, Runner | Conditions] = {}
    if runner != project.runner:
        changes["runner"] = runner
    if conditions != project.conditions:
        changes["conditions"] = conditions
    return replace(project, **changes) if changes else project
