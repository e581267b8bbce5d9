"""Edits of what a build-up rests on: health, wishes, days away, grounds, candidates, mends."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise
from typing import ClassVar
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from msgspec.structs import replace

from ultraplanner_gui.edits.block import check_session
from ultraplanner_gui.edits.course import LONGEST_RACE_S
from ultraplanner_gui.engine.check import Mend
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.candidates import Candidate
from ultraplanner_gui.plan.course import fresh_key
from ultraplanner_gui.plan.ground import GroundAtHand, GroundKind
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import FIRST_YEAR, LAST_YEAR
from ultraplanner_gui.plan.runner import Health, Runner
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.plan.wishes import Away, Wishes

DAY_S = 86_400.0
MOST_ROWS = 60
MOST_POINTS = 2_000
LEAST_CLIMBING_M_PER_H = 100.0
SHORTEST_RACE_S = 600.0


class SetHealth(Value, frozen=True):
    """The user answered the private questions on health; only what came of them is kept.

    Fasted runs and heat days are switched off where a doctor is to be asked first.
    """

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Answer on health")
    health: Health
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        runner = replace(project.runner, health=self.health)
        if self.health is not Health.CLEAR:
            runner = replace(runner, wishes=replace(runner.wishes, fasted=0, heat_days=False))
        return _with_runner(project, runner)


class SetWishes(Value, frozen=True):
    """The user chose the rules of the build-up and what it is to hold."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change wishes")
    wishes: Wishes
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        runner = replace(project.runner, wishes=self.wishes)
        check_training(runner)
        return _with_runner(project, runner)


class SetAway(Value, frozen=True):
    """The user said on which days things are otherwise."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change days away")
    away: tuple[Away, ...]
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        away = tuple(sorted(self.away, key=lambda a: (a.first, a.last)))
        runner = replace(project.runner, away=away)
        check_training(runner)
        return _with_runner(project, runner)


class AddGround(Value, frozen=True):
    """The user added a place to train; its key is made here."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Add ground at hand")
    ground: GroundAtHand
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        grounds = project.runner.grounds
        key = fresh_key(self.ground.key or "ground", {g.key for g in grounds})
        return _with_grounds(project, (*grounds, replace(self.ground, key=key)))


class ChangeGround(Value, frozen=True):
    """The user changed a place to train."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change ground at hand")
    ground: GroundAtHand
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        grounds = project.runner.grounds
        _find(self.ground.key, (g.key for g in grounds), NO_GROUND)
        changed = tuple(self.ground if g.key == self.ground.key else g for g in grounds)
        return _with_grounds(project, changed)


class RemoveGround(Value, frozen=True):
    """The user removed a place to train."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Remove ground at hand")
    ground: str
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        grounds = project.runner.grounds
        _find(self.ground, (g.key for g in grounds), NO_GROUND)
        return _with_grounds(project, tuple(g for g in grounds if g.key != self.ground))


class AddCandidate(Value, frozen=True):
    """The user added a race that might be run; its key is made here."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Add candidate race")
    candidate: Candidate
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        rows = project.candidates
        key = fresh_key(self.candidate.key or "candidate", {c.key for c in rows})
        return _with_candidates(project, (*rows, replace(self.candidate, key=key)))


class ChangeCandidate(Value, frozen=True):
    """The user changed a race that might be run."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change candidate race")
    candidate: Candidate
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        rows, key = project.candidates, self.candidate.key
        _find(key, (c.key for c in rows), NO_CANDIDATE)
        return _with_candidates(project, tuple(self.candidate if c.key == key else c for c in rows))


class RemoveCandidate(Value, frozen=True):
    """The user removed a race that might be run."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Remove candidate race")
    candidate: str
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        rows = project.candidates
        _find(self.candidate, (c.key for c in rows), NO_CANDIDATE)
        return _with_candidates(project, tuple(c for c in rows if c.key != self.candidate))


class MendBlock(Value, frozen=True):
    """The user took up what a check proposes."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Mend the build-up")
    mend: Mend
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        block = project.block
        for session in self.mend.changed:
            check_session(session)
            before = block.session(session.key)
            if Kind.RACE in (before.kind, session.kind) or not before.is_open:
                raise PlanError(QT_TRANSLATE_NOOP("Edit", "A mend changes open sessions only."))
            if before != session:
                block = block.with_session(session)
        cutbacks = self.mend.cutbacks
        if cutbacks is not None and cutbacks != block.cutbacks:
            block = replace(block, cutbacks=cutbacks)
        return project if block is project.block else replace(project, block=block)


def check_training(runner: Runner) -> None:
    """Raise PlanError if what *runner* has at hand and wants is out of range."""
    if 0.0 < runner.hill_m_per_h < LEAST_CLIMBING_M_PER_H:
        raise PlanError(CLIMBING_OUT)
    if len(runner.start_s) != 7 or not all(0.0 <= s < DAY_S for s in runner.start_s):
        raise PlanError(HOUR_OUT)
    _check_wishes(runner)
    if len(runner.away) > MOST_ROWS or len(runner.grounds) > MOST_ROWS:
        raise PlanError(TOO_MANY, MOST_ROWS)
    for away in runner.away:
        if not 0.0 <= away.free_s <= DAY_S or away.first > away.last or not _is_year(away):
            raise PlanError(AWAY_OUT)
    for ground in runner.grounds:
        check_ground(ground)


def _is_year(away: Away) -> bool:
    return away.first.year >= FIRST_YEAR and away.last.year <= LAST_YEAR


def _check_wishes(runner: Runner) -> None:
    wishes = runner.wishes
    if wishes.cutback_every not in (3, 4):
        raise PlanError(QT_TRANSLATE_NOOP("Edit", "A cutback comes every 3rd or every 4th week."))
    if not (0 <= wishes.strength <= 4 and 0 <= wishes.cross <= 5):
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Edit", "Strength comes up to 4 times a week, cross-training up to 5 times."
            )
        )
    if not (600.0 <= wishes.strength_s <= 7_200.0 and 600.0 <= wishes.cross_s <= 14_400.0):
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Edit", "Strength takes 10 minutes to 2 hours, cross-training up to 4 hours."
            )
        )
    if not 0 <= wishes.fasted <= 2:
        raise PlanError(QT_TRANSLATE_NOOP("Edit", "There are two fasted runs a week at most."))
    if (wishes.fasted or wishes.heat_days) and runner.health is not Health.CLEAR:
        raise PlanError(ASK_FIRST)


def check_ground(ground: GroundAtHand) -> None:
    """Raise PlanError if a figure of *ground* is out of its range."""
    if not -0.3 <= ground.least_gradient <= ground.most_gradient <= 0.6:
        raise PlanError(GRADIENT_OUT)
    if not (0.0 <= ground.climb_m <= 5_000.0 and 0.0 <= ground.drop_m <= 5_000.0):
        raise PlanError(HEIGHT_OUT)
    if not 0.0 <= ground.length_m <= 100_000.0:
        raise PlanError(LENGTH_OUT)
    slopes = (GroundKind.HILL, GroundKind.STAIRS, GroundKind.RAMP)
    if ground.kind in slopes and not 0.0 < ground.climb_m <= ground.length_m:
        raise PlanError(SLOPE_NEEDS)
    points = ground.distance_m, ground.elevation_m
    if len(points[0]) != len(points[1]) or len(points[0]) > MOST_POINTS:
        raise PlanError(POINTS_OUT)
    heights_fit = all(-500.0 <= h <= 9_000.0 for h in ground.elevation_m)
    lengths_fit = all(0.0 <= d <= 100_000.0 for d in ground.distance_m)
    if not (heights_fit and lengths_fit and _is_rising(ground.distance_m)):
        raise PlanError(POINTS_OUT)


def check_candidate(candidate: Candidate) -> None:
    """Raise PlanError if a figure of *candidate* is out of its range."""
    if not FIRST_YEAR <= candidate.day.year <= LAST_YEAR:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "A candidate race lies between the years {0} and {1}."),
            FIRST_YEAR,
            LAST_YEAR,
        )
    if not 1_000.0 <= candidate.distance_m <= 1_000_000.0:
        raise PlanError(QT_TRANSLATE_NOOP("Edit", "A race is between 1 and 1,000 km long."))
    if not all(0.0 <= h <= 50_000.0 for h in (candidate.climb_m, candidate.drop_m)):
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "A race's climb and drop lie between 0 and 50,000 m.")
        )
    limit_s = LONGEST_RACE_S if candidate.limit_s is None else candidate.limit_s
    if not SHORTEST_RACE_S <= limit_s <= LONGEST_RACE_S:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "A race's limit lies between 10 minutes and 240 hours.")
        )
    if not 0.0 <= candidate.start_s < DAY_S:
        raise PlanError(HOUR_OUT)
    _check_stops(candidate, limit_s)
    _check_place(candidate)


def _check_stops(candidate: Candidate, limit_s: float) -> None:
    stops = candidate.stops
    places_fit = all(0.0 < s.at_m < candidate.distance_m for s in stops)
    climbs_fit = all(0.0 <= s.climb_m <= candidate.climb_m for s in stops)
    times_fit = all(0.0 < s.cutoff_s <= limit_s for s in stops)
    rising = _is_rising([s.at_m for s in stops]) and _is_rising([s.cutoff_s for s in stops])
    if len(stops) > MOST_ROWS or not (places_fit and climbs_fit and times_fit and rising):
        raise PlanError(STOPS_OUT)


def _check_place(candidate: Candidate) -> None:
    latitude, longitude = candidate.latitude_deg, candidate.longitude_deg
    if not (latitude is None or -90.0 <= latitude <= 90.0) or not (
        longitude is None or -180.0 <= longitude <= 180.0
    ):
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Edit", "A place lies within 90 degrees of latitude and 180 of longitude."
            )
        )
    if candidate.zone:
        try:
            ZoneInfo(candidate.zone)
        except (ZoneInfoNotFoundError, ValueError, OSError) as error:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "There is no time zone {0}; choose one from the list."),
                candidate.zone[:60],
            ) from error


def _is_rising(values: Sequence[float]) -> bool:
    return all(a < b for a, b in pairwise(values))


def _find(key: str, keys: Iterable[str], sentence: str) -> None:
    if key not in keys:
        raise PlanError(sentence)


def _with_runner(project: Project, runner: Runner) -> Project:
    return project if runner == project.runner else replace(project, runner=runner)


def _with_grounds(project: Project, grounds: tuple[GroundAtHand, ...]) -> Project:
    runner = replace(project.runner, grounds=grounds)
    check_training(runner)
    return _with_runner(project, runner)


def _with_candidates(project: Project, candidates: tuple[Candidate, ...]) -> Project:
    if len(candidates) > MOST_ROWS:
        raise PlanError(TOO_MANY, MOST_ROWS)
    for candidate in candidates:
        check_candidate(candidate)
    if candidates == project.candidates:
        return project
    return replace(project, candidates=candidates)


NO_GROUND = QT_TRANSLATE_NOOP("Edit", "That ground is no longer in this project.")
NO_CANDIDATE = QT_TRANSLATE_NOOP("Edit", "That candidate race is no longer in this project.")
CLIMBING_OUT = QT_TRANSLATE_NOOP("Edit", "Easy climbing is at least 100 m an hour; 0 if unknown.")
HOUR_OUT = QT_TRANSLATE_NOOP("Edit", "A time of day lies between 00:00 and 23:59.")
TOO_MANY = QT_TRANSLATE_NOOP("Edit", "There is room for {0} of these; remove one first.")
AWAY_OUT = QT_TRANSLATE_NOOP(
    "Edit", "Days away end on or after their first day and leave 0 to 24 hours a day."
)
ASK_FIRST = QT_TRANSLATE_NOOP(
    "Edit",
    "Fasted runs and heat days are for those with nothing to ask a doctor about; answer the "
    "questions on health first.",
)
GRADIENT_OUT = QT_TRANSLATE_NOOP(
    "Edit", "A treadmill's gradients lie between -30 and 60 %, the least one first."
)
HEIGHT_OUT = QT_TRANSLATE_NOOP("Edit", "Climb and drop of a place lie between 0 and 5,000 m.")
LENGTH_OUT = QT_TRANSLATE_NOOP("Edit", "A place to train is up to 100 km long.")
SLOPE_NEEDS = QT_TRANSLATE_NOOP(
    "Edit", "A hill, stairs or a ramp needs a length and a height, the height the smaller one."
)
POINTS_OUT = QT_TRANSLATE_NOOP(
    "Edit", "A recorded loop needs as many heights as distances, the distances rising."
)
STOPS_OUT = QT_TRANSLATE_NOOP(
    "Edit",
    "Cutoffs rise with their places, which lie between start and finish, and end by the limit.",
)
