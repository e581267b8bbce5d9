"""The build-up: training sessions, each with what was planned and what was done."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date, timedelta
from enum import StrEnum

from msgspec.structs import replace

from ultraplanner_gui.plan.fuel import Portion
from ultraplanner_gui.plan.ground import Repeat
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.surface import Surface
from ultraplanner_gui.plan.value import Kept, Number, Whole


class Kind(StrEnum):
    """Kinds of session, in the words of the trade."""

    RECOVERY = "recovery run"
    EASY = "easy run"
    LONG = "long run"
    SECOND_LONG = "back-to-back"
    REHEARSAL = "rehearsal run"
    HILLS = "hill run"
    DOWNHILL = "downhill run"
    TEMPO = "tempo run"
    INTERVALS = "interval session"
    TUNE_UP = "tune-up race"
    STRENGTH = "strength"
    CROSS = "cross-training"
    RACE = "race"

    @property
    def is_run(self) -> bool:
        """Whether its distance counts as running."""
        return self not in (Kind.STRENGTH, Kind.CROSS)

    @property
    def is_hard(self) -> bool:
        """Whether it asks for easy days around it (training reference: own default per kind)."""
        return self in HARD_KINDS

    @property
    def is_long(self) -> bool:
        """Whether it counts as a long run."""
        return self in (Kind.LONG, Kind.REHEARSAL, Kind.TUNE_UP, Kind.RACE)


HARD_KINDS = frozenset(
    (
        Kind.LONG,
        Kind.REHEARSAL,
        Kind.HILLS,
        Kind.DOWNHILL,
        Kind.TEMPO,
        Kind.INTERVALS,
        Kind.TUNE_UP,
        Kind.RACE,
    )
)


class Ground(StrEnum):
    """The shape of the ground a session is run on."""

    LEVEL = "level"
    ROLLING = "rolling"
    RISING = "rising"
    FALLING = "falling"
    SAW = "up and down"
    STAIRS = "stairs"


class Gut(StrEnum):
    """How the stomach took it."""

    FINE = "fine"
    UNEASY = "uneasy"
    BAD = "bad"


class Mind(StrEnum):
    """What a session also rehearses in the head."""

    IF_THEN = "if-then plans"
    PICTURE = "picture the race"
    GOALS = "goals and cutoffs"


class Done(Kept, frozen=True):
    """What was really done; effort on ten steps, `carb_g` what was eaten in all, in grams,
    `foods` of what.
    """

    distance_m: Number
    duration_s: Number
    climb_m: Number = 0.0
    drop_m: Number = 0.0
    effort: Whole = 3
    carb_g: Number = 0.0
    gut: Gut | None = None
    note: str = ""
    foods: tuple[Portion, ...] = ()


class Session(Kept, frozen=True):
    """One session on one day. `effort` is on ten steps; `carb_g_per_h` the carbohydrate to
    practise with (0: none). `done` is set once it was run; `missed` when it was not.

    `at_s` is the time of day, in seconds, None for any; `ends_on` the ground of its last part where
    that differs; `repeats` what it is made of where it stands in for the race's ground. A `locked`
    session is left alone when the block is built anew or mended.
    """

    key: str
    day: date
    kind: Kind
    distance_m: Number
    duration_s: Number
    climb_m: Number = 0.0
    drop_m: Number = 0.0
    ground: Ground = Ground.LEVEL
    effort: Whole = 3
    carb_g_per_h: Number = 0.0
    fasted: bool = False
    dark: bool = False
    note: str = ""
    done: Done | None = None
    missed: bool = False
    at_s: Number | None = None
    surface: Surface = Surface.UNKNOWN
    ends_on: Ground | None = None
    heat: bool = False
    mind: Mind | None = None
    repeats: tuple[Repeat, ...] = ()
    locked: bool = False
    foods: tuple[Portion, ...] = ()

    @property
    def is_open(self) -> bool:
        """Whether it still lies ahead: neither done nor missed."""
        return self.done is None and not self.missed

    @property
    def actual(self) -> Done:
        """What counts: the done record, nothing if missed, else what is planned."""
        if self.done is not None:
            return self.done
        if self.missed:
            return Done(0.0, 0.0, effort=0)
        return Done(
            self.distance_m,
            self.duration_s,
            self.climb_m,
            self.drop_m,
            self.effort,
            self.carb_g_per_h * self.duration_s / 3600.0,
        )


class Block(Kept, frozen=True):
    """All sessions, by day, and the plan's weeks by their number to go (race week 0).

    `cutbacks` are the planned cutback weeks, `taper_weeks` how many weeks before the race
    week's end are taper (race week included). `first_week` is the number to go of the first
    week of the block; the race week is 0.
    """

    sessions: tuple[Session, ...] = ()
    first_week: Whole = 0
    cutbacks: tuple[Whole, ...] = ()
    taper_weeks: Whole = 2

    def session(self, key: str) -> Session:
        """Return the session *key*; PlanError if there is none."""
        for session in self.sessions:
            if session.key == key:
                return session
        raise PlanError(QT_TRANSLATE_NOOP("Plan", "That session is no longer in the build-up."))

    def on(self, day: date) -> tuple[Session, ...]:
        """Return the sessions of one day, in order."""
        return tuple(s for s in self.sessions if s.day == day)

    def with_session(self, changed: Session) -> Block:
        """Return a copy with the session of the same key replaced, kept in order of days."""
        self.session(changed.key)
        return replace(
            self, sessions=_by_day(changed if s.key == changed.key else s for s in self.sessions)
        )

    def with_new(self, session: Session) -> Block:
        """Return a copy with *session* added."""
        return replace(self, sessions=_by_day((*self.sessions, session)))

    def without(self, key: str) -> Block:
        """Return a copy without the session *key*."""
        self.session(key)
        return replace(self, sessions=tuple(s for s in self.sessions if s.key != key))


def _by_day(sessions: Iterable[Session]) -> tuple[Session, ...]:
    return tuple(sorted(sessions, key=lambda s: s.day))


def week_start(day: date, first_weekday: int) -> date:
    """Return the first day of the week that holds *day*; *first_weekday* is 0 for Monday."""
    return day - timedelta(days=(day.weekday() - first_weekday) % 7)


def weeks_to_go(day: date, race_day: date, first_weekday: int) -> int:
    """Return how many weeks lie between the week of *day* and the race week (0)."""
    return _week_number(race_day, first_weekday) - _week_number(day, first_weekday)


def _week_number(day: date, first_weekday: int) -> int:
    # Day 1 of the calendar is a Monday.
    return (day.toordinal() - 1 - first_weekday) // 7
