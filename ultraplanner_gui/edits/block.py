"""Edits of the build-up: sessions moved, changed, added, removed, marked."""

from __future__ import annotations

import math
from datetime import date
from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.edits.course import LONGEST_RACE_S
from ultraplanner_gui.plan.block import Block, Done, Kind, Session
from ultraplanner_gui.plan.course import fresh_key
from ultraplanner_gui.plan.ground import Repeat
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import FIRST_YEAR, LAST_YEAR
from ultraplanner_gui.plan.value import Value

# The race is a session too, so these hold whatever `edits.race` allows a race.
LONGEST_SESSION_M = 1_000_000.0
LONGEST_SESSION_S = LONGEST_RACE_S
STEEPEST_M = 50_000.0
MOST_CARB_G = 20_000.0
MOST_REPEATS = 500
STEEPEST_GRADIENT = 1.0
DAY_S = 86_400.0


class MoveSession(Value, frozen=True):
    """The user moved a session to another day."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Move session")
    session: str
    day: date
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        session = project.block.session(self.session)
        if session.kind is Kind.RACE:
            raise race_stays()
        if session.done is not None:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "This session is done; it stays on the day it was run.")
            )
        if session.locked:
            raise locked_stays()
        if session.day == self.day:
            return project
        check_day(self.day)
        return replace(project, block=project.block.with_session(replace(session, day=self.day)))


class ChangeSession(Value, frozen=True):
    """The user changed a session's figures."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change session")
    session: Session
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        check_session(self.session)
        before = project.block.session(self.session.key)
        if (before.kind is Kind.RACE) != (self.session.kind is Kind.RACE):
            raise one_race()
        if before.kind is Kind.RACE and before.day != self.session.day:
            raise race_stays()
        return replace(project, block=project.block.with_session(self.session))


class AddSession(Value, frozen=True):
    """The user added a session; its key is made here."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Add session")
    session: Session
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        check_session(self.session)
        if self.session.kind is Kind.RACE:
            raise one_race()
        key = fresh_key(self.session.key or "session", {s.key for s in project.block.sessions})
        return replace(project, block=project.block.with_new(replace(self.session, key=key)))


class RemoveSession(Value, frozen=True):
    """The user removed a session."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Remove session")
    session: str
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        if project.block.session(self.session).kind is Kind.RACE:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "The race itself cannot be removed from the build-up.")
            )
        return replace(project, block=project.block.without(self.session))


class MarkDone(Value, frozen=True):
    """The user said what was really run (None: nothing recorded after all)."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Mark session done")
    session: str
    done: Done | None
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        session = replace(project.block.session(self.session), done=self.done, missed=False)
        check_session(session)
        return replace(project, block=project.block.with_session(session))


class MarkMissed(Value, frozen=True):
    """The user said that a session was not run."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Mark session missed")
    session: str
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        session = replace(project.block.session(self.session), done=None, missed=True)
        return replace(project, block=project.block.with_session(session))


class ReplaceBlock(Value, frozen=True):
    """The user took over a newly built block."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Build the block")
    block: Block
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        for session in self.block.sessions:
            check_session(session)
        return replace(project, block=self.block)


def check_session(session: Session) -> None:
    """Raise PlanError if a figure of *session* is out of its range."""
    check_day(session.day)
    figures: list[Session | Done] = [session] if session.done is None else [session, session.done]
    for part in figures:
        if not (math.isfinite(part.distance_m) and 0.0 <= part.distance_m <= LONGEST_SESSION_M):
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "A session's distance lies between 0 and 1,000 km.")
            )
        if not (math.isfinite(part.duration_s) and 0.0 <= part.duration_s <= LONGEST_SESSION_S):
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "A session's time lies between 0 and 240 hours.")
            )
        if not all(
            math.isfinite(h) and 0.0 <= h <= STEEPEST_M for h in (part.climb_m, part.drop_m)
        ):
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "A session's climb and drop lie between 0 and 50,000 m.")
            )
        if not 0 <= part.effort <= 10:
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "Effort lies between 0 and 10."))
    if not 0.0 <= session.carb_g_per_h <= 120.0:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "Practice carbohydrate lies between 0 and 120 g/h.")
        )
    if session.at_s is not None and not 0.0 <= session.at_s < DAY_S:
        raise PlanError(QT_TRANSLATE_NOOP("Edit", "A session starts between 00:00 and 23:59."))
    for repeat in session.repeats:
        _check_repeat(repeat)
    eaten = session.done.foods if session.done is not None else ()
    for portion in (*session.foods, *eaten):
        if not (math.isfinite(portion.servings) and 0.0 < portion.servings <= 50.0):
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "Servings lie above 0 and at most 50."))
    if session.done is not None and not 0.0 <= session.done.carb_g <= MOST_CARB_G:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "Carbohydrate eaten lies between 0 and 20,000 g.")
        )


def _check_repeat(repeat: Repeat) -> None:
    if not (
        1 <= repeat.count <= MOST_REPEATS
        and abs(repeat.gradient) <= STEEPEST_GRADIENT
        and 0.0 <= repeat.each_s <= LONGEST_SESSION_S
        and all(0.0 <= metres <= STEEPEST_M for metres in (repeat.climb_m, repeat.drop_m))
    ):
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Edit", "A part is run 1 to 500 times, its gradient lies within 100 %."
            )
        )


def check_day(day: date) -> None:
    """Raise PlanError if *day* lies outside the years dates can be trusted in."""
    if not FIRST_YEAR <= day.year <= LAST_YEAR:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "A session lies between the years {0} and {1}."),
            FIRST_YEAR,
            LAST_YEAR,
        )


def race_stays() -> PlanError:
    """Return the refusal to move the race by its session."""
    return PlanError(
        QT_TRANSLATE_NOOP("Edit", "The race stays on its day; change the race date instead.")
    )


def one_race() -> PlanError:
    """Return the refusal of a second race."""
    return PlanError(
        QT_TRANSLATE_NOOP("Edit", "A project has one race; others in it are tune-up races.")
    )


def locked_stays() -> PlanError:
    """Return the refusal to move what is locked."""
    return PlanError(
        QT_TRANSLATE_NOOP("Edit", "This session is locked; unlock it first to move it.")
    )
