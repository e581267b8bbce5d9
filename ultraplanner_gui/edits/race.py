"""Edits of the race and the runner."""

from __future__ import annotations

from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.edits.course import LONGEST_RACE_S
from ultraplanner_gui.edits.project import SetFirstWeekday
from ultraplanner_gui.plan.block import Block, Kind
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Argument, PlanError, Quantity, Unit
from ultraplanner_gui.plan.pacing import PastRun
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import FIRST_YEAR, LAST_YEAR, Race
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value

SHORTEST_RACE_S = 600.0


class ChangeRace(Value, frozen=True):
    """The user changed the name, the start, the finish aimed for or the limit."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change race")
    race: Race
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        race = self.race
        check_race(race)
        if race == project.race:
            return project
        return replace(project, race=race, block=_with_race_moved(project, race))


class ChangeSetup(Value, frozen=True):
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


#: Lowest and highest value of each figure of a runner; those of the pacing model as wide as it
#: can be computed.
RUNNER_RANGES: dict[str, tuple[float, float]] = {
    "body_kg": (30.0, 200.0),
    "weekly_m": (0.0, 400_000.0),
    "longest_m": (0.0, 200_000.0),
    "easy_mps": (1.0, 6.0),
    "carb_g_per_h": (0.0, 120.0),
    "fade": (0.0, 0.5),
    "fade_onset_h": (0.1, 24.0),
    "uphill_share": (0.0, 2.0),
    "night_loss": (0.0, 0.5),
    "weekly_s": (0.0, 604_800.0),
    "longest_s": (0.0, LONGEST_RACE_S),
    "longest_drop_m": (0.0, 20_000.0),
    "hill_m_per_h": (0.0, 2_000.0),
    "descent_speed": (0.3, 2.0),
    "finish_spread": (0.0, 0.5),
    "tired_walk": (0.3, 1.2),
}
_SENTENCES = {
    "body_kg": QT_TRANSLATE_NOOP("Edit", "Body weight lies between {0} and {1} kg."),
    "weekly_m": QT_TRANSLATE_NOOP("Edit", "A usual week lies between {0} and {1}."),
    "longest_m": QT_TRANSLATE_NOOP("Edit", "The longest recent run lies between {0} and {1}."),
    "easy_mps": QT_TRANSLATE_NOOP("Edit", "Easy pace lies between {1} and {0}."),
    "carb_g_per_h": QT_TRANSLATE_NOOP("Edit", "What the gut takes lies between {0} and {1}."),
    "fade": QT_TRANSLATE_NOOP("Edit", "The fade lies between {0} and {1}."),
    "fade_onset_h": QT_TRANSLATE_NOOP("Edit", "The fade sets in between {0} and {1} hours."),
    "uphill_share": QT_TRANSLATE_NOOP(
        "Edit", "The cost of uphill lies between {0} and {1} of the usual."
    ),
    "night_loss": QT_TRANSLATE_NOOP("Edit", "What the dark takes lies between {0} and {1}."),
    "weekly_s": QT_TRANSLATE_NOOP("Edit", "The hours of a usual week lie between {0} and {1}."),
    "longest_s": QT_TRANSLATE_NOOP("Edit", "The longest run takes between {0} and {1}."),
    "longest_drop_m": QT_TRANSLATE_NOOP("Edit", "The longest run drops between {0} and {1}."),
    "hill_m_per_h": QT_TRANSLATE_NOOP("Edit", "Easy climbing lies between {0} and {1} an hour."),
    "descent_speed": QT_TRANSLATE_NOOP(
        "Edit", "Speed downhill lies between {0} and {1} of the usual."
    ),
    "finish_spread": QT_TRANSLATE_NOOP("Edit", "The finish scatters by {0} to {1} of its time."),
    "tired_walk": QT_TRANSLATE_NOOP(
        "Edit", "Walking tired is done at {0} to {1} of the speed of a fresh hiker."
    ),
}
MOST_PAST_RUNS = 40
LONGEST_PAST_RUN_M = 1_000_000.0
HIGHEST_PAST_CLIMB_M = 60_000.0
SHORTEST_PAST_RUN_S = 60.0


def check_race(race: Race) -> None:
    """Raise PlanError if a figure of *race* is out of its range."""
    if not FIRST_YEAR <= race.start.year <= LAST_YEAR:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "The race lies between the years {0} and {1}."),
            FIRST_YEAR,
            LAST_YEAR,
        )
    if not SHORTEST_RACE_S <= race.goal_s <= LONGEST_RACE_S:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "The finish time lies between 10 minutes and 240 hours.")
        )
    if race.limit_s is not None and not SHORTEST_RACE_S <= race.limit_s <= LONGEST_RACE_S:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "The time limit lies between 10 minutes and 240 hours.")
        )


def check_runner(runner: Runner) -> None:
    """Raise PlanError if a figure of *runner* is out of its range."""
    for field, (low, high) in RUNNER_RANGES.items():
        if not low <= getattr(runner, field) <= high:
            raise PlanError(_SENTENCES[field], _said(field, low), _said(field, high))
    if runner.long_day not in range(7):
        raise PlanError(QT_TRANSLATE_NOOP("Edit", "The long run lies on one of seven days."))
    if len(runner.available_s) != 7 or not all(0.0 <= s <= 86_400.0 for s in runner.available_s):
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Edit", "The time free for running lies between 0 and 24 hours a day."
            )
        )
    # It brings a dozen values along that no start needs.
    from ultraplanner_gui.edits.training import check_training

    check_training(runner)
    check_past_runs(runner.past_runs)


def check_past_runs(runs: tuple[PastRun, ...]) -> None:
    """Raise PlanError if a figure of *runs* is out of its range."""
    if len(runs) > MOST_PAST_RUNS:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "At most {0} past runs are kept; take the latest."),
            MOST_PAST_RUNS,
        )
    for run in runs:
        if not (
            0.0 < run.distance_m <= LONGEST_PAST_RUN_M
            and 0.0 <= run.climb_m <= HIGHEST_PAST_CLIMB_M
            and SHORTEST_PAST_RUN_S <= run.time_s <= LONGEST_RACE_S
            and (run.flat_m is None or 0.0 < run.flat_m <= LONGEST_PAST_RUN_M)
        ):
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "Edit",
                    "A past run needs a distance above zero, a climb from 0 up and a time of a "
                    "minute or more.",
                )
            )


def _with_race_moved(project: Project, race: Race) -> Block:
    """Return the block with the race's own session on its new day; the training stays put."""
    block = project.block
    for session in block.sessions:
        if session.kind is Kind.RACE and session.done is None:
            moved = replace(session, day=race.day, duration_s=race.goal_s)
            block = block if moved == session else block.with_session(moved)
    return block


def _said(field: str, value: float) -> Argument:
    if field == "easy_mps":
        return Quantity(1.0 / value, "pace_s_per_m")
    return Quantity(value, _UNITS[field]) if field in _UNITS else f"{value:g}"


_UNITS: dict[str, Unit] = {
    "weekly_m": "m",
    "longest_m": "m",
    "carb_g_per_h": "g_per_h",
    "weekly_s": "s",
    "longest_s": "s",
    "longest_drop_m": "height_m",
    "hill_m_per_h": "height_m",
}
