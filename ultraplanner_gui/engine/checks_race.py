"""Rules that hold the build-up against the race itself: ground, surface, dark, spare weeks."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import timedelta
from functools import partial

from ultraplanner_gui.engine.check import CUSTOM, FASTED_SOURCE, Check
from ultraplanner_gui.engine.match import surface_likeness, surface_shares
from ultraplanner_gui.engine.mends import darkened, fed
from ultraplanner_gui.engine.runway import CLIMB_SHARE, Runway
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.engine.weeks import Role, WeekFigures
from ultraplanner_gui.plan.block import Kind, Session, weeks_to_go
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Quantity, message
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.runner import Health

CLIMB = QT_TRANSLATE_NOOP("Checks", "climb match")
SURFACE = QT_TRANSLATE_NOOP("Checks", "surface match")
DARK = QT_TRANSLATE_NOOP("Checks", "dark hours")
SPARE = QT_TRANSLATE_NOOP("Checks", "spare weeks")
FASTED = QT_TRANSLATE_NOOP("Checks", "fasted runs")

HILLY_PER_M = 0.010
LATE_LOADS = 4
CLIMB_BREAKS = 0.4
SURFACE_HOLDS = 0.6
SURFACE_WEEKS = 8
KNOWN_SHARE = 1.0 / 3.0
DARK_MATTERS_S = 2 * 3600.0
DARK_RUNS = 2
DARK_WEEKS = 10
WEEKS_A_SPARE = 16
FASTED_MOST_S = 5_400.0
FASTED_KINDS = (Kind.EASY, Kind.RECOVERY)


def race_checks(
    project: Project,
    weeks: Sequence[WeekFigures],
    sessions: Sequence[Session],
    dark_s: float,
    way: Runway | None,
) -> Iterator[Check]:
    """Yield the checks against the race's ground, surface and dark hours, spare weeks, fasting."""
    race = next((s for s in sessions if s.kind is Kind.RACE), None)
    if race is not None:
        yield from _climb(project, weeks, race)
        yield from _dark(project, sessions, race, dark_s)
    yield from _surface(project, sessions)
    if way is not None:
        yield _spare(way)
    yield from _fasted(project, sessions)


def _climb(project: Project, weeks: Sequence[WeekFigures], race: Session) -> Iterator[Check]:
    if race.distance_m <= 0.0 or race.climb_m < HILLY_PER_M * race.distance_m:
        return
    loads = [w for w in weeks if w.role is Role.LOADING and w.distance_m > 0][-LATE_LOADS:]
    metres = sum(w.distance_m for w in loads)
    if not metres:
        return
    share = sum(w.climb_m for w in loads) / metres / (race.climb_m / race.distance_m)
    asked = CLIMB_SHARE[project.runner.level]
    state = State.BREAKS if share < CLIMB_BREAKS else State.STRAINS
    if share >= asked - 0.1:
        state = State.HOLDS
    text = message(
        CLIMB_TEXT,
        len(loads),
        Quantity(sum(w.climb_m for w in loads) / metres, "climb_per_m"),
        Quantity(race.climb_m / race.distance_m, "climb_per_m"),
        Quantity(100.0 * asked, "percent"),
    )
    keys = tuple(key for w in loads for key in w.sessions)
    yield Check(CLIMB, state, text, CUSTOM, keys, tuple(w.to_go for w in loads))


def _surface(project: Project, sessions: Sequence[Session]) -> Iterator[Check]:
    race = surface_shares(project.course)
    if project.course is None or sum(race.values()) < KNOWN_SHARE * project.course.length_m:
        return
    since = project.race.day - timedelta(weeks=SURFACE_WEEKS)
    late = [s for s in sessions if s.day >= since and not s.missed]
    alike, known_m = surface_likeness(race, late)
    if not known_m:
        return
    state = State.HOLDS if alike >= SURFACE_HOLDS else State.STRAINS
    text = message(SURFACE_TEXT, SURFACE_WEEKS, Quantity(100.0 * alike, "percent"))
    yield Check(SURFACE, state, text, CUSTOM)


def _dark(
    project: Project, sessions: Sequence[Session], race: Session, dark_s: float
) -> Iterator[Check]:
    if dark_s <= DARK_MATTERS_S:
        return
    since = race.day - timedelta(weeks=DARK_WEEKS)
    late = [s for s in sessions if since <= s.day < race.day]
    runs = [s for s in late if s.dark and not s.missed and s.kind.is_run]
    ran_s = sum((s.done or s).duration_s for s in runs)
    state = State.HOLDS if len(runs) >= DARK_RUNS else State.STRAINS
    text = message(DARK_TEXT, len(runs), Quantity(ran_s, "s"), Quantity(dark_s, "s"), DARK_RUNS)
    count = DARK_RUNS - len(runs)
    mend = None if count <= 0 else partial(darkened, late, count)
    weeks = tuple({weeks_to_go(s.day, race.day, project.first_weekday): None for s in runs})
    yield Check(DARK, state, text, CUSTOM, tuple(s.key for s in runs), weeks, mend)


def _spare(way: Runway) -> Check:
    spare = way.weeks_there - way.weeks_needed
    wished = -(-way.weeks_needed // WEEKS_A_SPARE)
    state = State.HOLDS if spare >= wished else State.STRAINS
    if spare < 0:
        return Check(SPARE, state, message(SPARE_NONE, -spare), CUSTOM)
    return Check(SPARE, state, message(SPARE_TEXT, spare, wished), CUSTOM)


def _fasted(project: Project, sessions: Sequence[Session]) -> Iterator[Check]:
    runs = [s for s in sessions if s.fasted and s.is_open]
    if not runs:
        return
    keys = tuple(s.key for s in runs)
    if project.runner.health is not Health.CLEAR:
        text = message(FASTED_ASK)
        yield Check(FASTED, State.BREAKS, text, FASTED_SOURCE, keys, (), partial(fed, runs))
        return
    wrong = [
        s
        for n, s in enumerate(runs)
        if s.kind not in FASTED_KINDS
        or s.duration_s > FASTED_MOST_S
        or s.heat
        or (n and (s.day - runs[n - 1].day).days < 2)
        or weeks_to_go(s.day, project.race.day, project.first_weekday) < 1
    ]
    if wrong:
        text, keys = message(FASTED_WRONG, len(wrong)), tuple(s.key for s in wrong)
        yield Check(FASTED, State.BREAKS, text, FASTED_SOURCE, keys, (), partial(fed, wrong))
    else:
        yield Check(FASTED, State.HOLDS, message(FASTED_TEXT, len(runs)), FASTED_SOURCE, keys)


CLIMB_TEXT = QT_TRANSLATE_NOOP(
    "Checks",
    "The last {0} loading weeks climb {1}, the race {2}; aim for {3} of that.",
)
SURFACE_TEXT = QT_TRANSLATE_NOOP(
    "Checks",
    "Where it is known, the ground of the last {0} weeks matches the race's by {1}.",
)
DARK_TEXT = QT_TRANSLATE_NOOP(
    "Checks",
    "Runs in the dark: {0}, {1} in all, for {2} of dark in the race; aim for {3} or more. Take a "
    "spare lamp, tell someone.",
)
SPARE_TEXT = QT_TRANSLATE_NOOP(
    "Checks", "Weeks to spare for illness and life: {0}; keep {1} or more."
)
SPARE_NONE = QT_TRANSLATE_NOOP(
    "Checks", "No week to spare. Weeks missing for all that is asked: {0}."
)
FASTED_ASK = QT_TRANSLATE_NOOP(
    "Checks", "Fasted runs are only for those with nothing to ask a doctor about."
)
FASTED_WRONG = QT_TRANSLATE_NOOP(
    "Checks",
    "Fasted runs that are not easy, over 90 minutes, in the heat, in race week or on two days "
    "running: {0}.",
)
FASTED_TEXT = QT_TRANSLATE_NOOP(
    "Checks", "Fasted runs, all easy: {0}. Carry 25 g of sugar and eat within the hour after."
)
