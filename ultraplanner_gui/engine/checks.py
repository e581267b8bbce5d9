"""The rules the build-up is held against, each with its figure and its source."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from ultraplanner_gui.engine.runway import RaceAsks
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.engine.weeks import WeekFigures
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.plan.project import Project


@dataclass(frozen=True, slots=True)
class Check:
    """One rule at one place: how it stands, in one sentence, and where the rule is from.

    `sessions` are the keys of the sessions concerned, `weeks` the numbers to go.
    """

    rule: str
    state: State
    text: Message
    source: Message
    sessions: tuple[str, ...] = ()
    weeks: tuple[int, ...] = ()


def block_checks(
    project: Project, weeks: Sequence[WeekFigures], asks: RaceAsks | None
) -> tuple[Check, ...]:
    """Return every check of the build-up, by time; those that hold as well."""
    raise NotImplementedError
