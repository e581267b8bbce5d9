"""Edits of one thing about an aid station or the start, as a hand on the sheet makes them."""

from __future__ import annotations

from datetime import datetime
from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.edits.course import ChangeStation, course_of
from ultraplanner_gui.edits.race import ChangeRace
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value


class MoveStation(Value, frozen=True):
    """The user moved an aid station along the course; what ends there goes with it.

    Its cutoff stays with it. Other stations and section ends stay where they are.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Move aid station")
    station: str
    at_m: float
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        station = course_of(project).station(self.station)
        return ChangeStation(replace(station, at_m=self.at_m)).apply(project)


class SetStop(Value, frozen=True):
    """The user made the stop at an aid station longer or shorter."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change stop")
    station: str
    stop_s: float
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        station = course_of(project).station(self.station)
        return ChangeStation(replace(station, stop_s=self.stop_s)).apply(project)


class MoveStart(Value, frozen=True):
    """The user moved the start on its day: every clock time of the race goes with it."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Move start")
    start: datetime
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        if self.start.tzinfo is None or self.start.date() != project.race.day:
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "Edit", "The start moves within its day; set another day in Race and runner."
                )
            )
        return ChangeRace(replace(project.race, start=self.start)).apply(project)
