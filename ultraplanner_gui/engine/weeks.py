"""What each week adds up to."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from enum import StrEnum

from ultraplanner_gui.plan.block import Kind, Session, week_start
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.plan.wishes import Yardstick
from ultraplanner_gui.science.training import (
    CLIMB_EQUIVALENT,
    CUTBACK_RANGE,
    WINDOW_DAYS,
    session_load,
    ten_percent_more,
)

STEEP_PER_M = 0.030
AFTER_MISSED = (1.0, 1.0, 0.8, 0.65, 0.5)


class Role(StrEnum):
    """What a week is for."""

    LOADING = "loading"
    CUTBACK = "cutback"
    TAPER = "taper"
    RACE = "race"


class WeekFigures(Value, frozen=True):
    """One week; distances without the race itself.

    Figures count what was done where a session is done, nothing where it was missed and the
    plan where it lies ahead; `planned_m` is the plan alone, `done_m` what was done alone.
    `last_loading_m` is the distance of the last loading week before this one, for the first
    the runner's usual week (None: neither), `ceiling_m` 1.10 times that. `carb_g` is practice
    carbohydrate, `carb_g_per_h` the highest practised rate; `load` is effort times minutes.
    Strength and cross-training count in `on_feet_s` and `load` only. `measure` is the week by the
    runner's yardstick, `last_measure` that of the last loading week, None where it is not known.
    """

    start: date
    to_go: int
    role: Role
    distance_m: float
    planned_m: float
    done_m: float
    climb_m: float
    drop_m: float
    on_feet_s: float
    longest_m: float
    carb_g: float
    carb_g_per_h: float
    load: float
    last_loading_m: float | None
    ceiling_m: float | None
    sessions: tuple[str, ...]
    measure: float = 0.0
    last_measure: float | None = None


# Every session of every move of a drag comes by here: names and calls looked up once.
_RACE, _STRENGTH, _CROSS = Kind.RACE, Kind.STRENGTH, Kind.CROSS


class _Sums:
    """Running sums of one week."""

    __slots__ = (
        "carb_g",
        "climb_m",
        "distance_m",
        "done_m",
        "drop_m",
        "keys",
        "load",
        "longest_m",
        "missed",
        "planned_m",
        "rate",
        "run_s",
        "time_s",
    )

    def __init__(self) -> None:
        self.distance_m = self.planned_m = self.done_m = self.climb_m = self.drop_m = 0.0
        self.time_s = self.longest_m = self.carb_g = self.rate = self.load = self.run_s = 0.0
        self.keys: list[str] = []
        self.missed = False

    def add(self, session: Session) -> None:
        kind = session.kind
        self.keys.append(session.key)
        if kind is _RACE:
            return
        runs = kind is not _STRENGTH and kind is not _CROSS
        if runs:
            self.planned_m += session.distance_m
        done = session.done
        if done is not None:
            distance_m, time_s, carb_g = done.distance_m, done.duration_s, done.carb_g
            rate = carb_g * 3600.0 / time_s if time_s > 0 else 0.0
            self.load += session_load(done.effort, time_s)
            climb_m, drop_m = done.climb_m, done.drop_m
            if runs:
                self.done_m += distance_m
        elif session.missed:
            self.missed = True
            return
        else:
            distance_m, time_s, rate = (
                session.distance_m,
                session.duration_s,
                session.carb_g_per_h,
            )
            carb_g = rate * time_s / 3600.0
            self.load += session_load(session.effort, time_s)
            climb_m, drop_m = session.climb_m, session.drop_m
        self.time_s += time_s
        self.carb_g += carb_g
        if rate > self.rate:
            self.rate = rate
        if runs:
            self.run_s += time_s
            self.distance_m += distance_m
            self.climb_m += climb_m
            self.drop_m += drop_m
            if distance_m > self.longest_m:
                self.longest_m = distance_m


def week_figures(project: Project) -> tuple[WeekFigures, ...]:
    """Return every week from the block's first to the race week, without gaps; none if empty.

    A loading week with missed sessions that came to less than 80 % of the last loading week
    sets no yardstick; two such weeks in a row lower it to 80 %, three to 65 %, four to 50 %
    (common practice, no source). Weeks before the block's first week set none either.
    """
    block = project.block
    if not block.sessions:
        return ()
    race_week = week_start(project.race.day, project.first_weekday).toordinal()
    sums: dict[int, _Sums] = {}
    for session in block.sessions:
        to_go = (race_week - session.day.toordinal() + 6) // 7
        if to_go >= 0:
            week = sums.get(to_go)
            if week is None:
                week = sums[to_go] = _Sums()
            week.add(session)
    first = max(block.first_week, max(sums, default=0))
    cutbacks = frozenset(block.cutbacks)
    loading_m = project.runner.weekly_m or None
    unit = yardstick_of(project)
    measured = _first_measure(project, unit)
    low = 0
    figures: list[WeekFigures] = []
    for to_go in range(first, -1, -1):
        week = sums.get(to_go) or _Sums()
        role = _role(to_go, cutbacks, block.taper_weeks)
        yardstick = None if loading_m is None else loading_m * AFTER_MISSED[min(low, 4)]
        measure = _measure(week, unit)
        last = None if measured is None else measured * AFTER_MISSED[min(low, 4)]
        figures.append(_figures(week, race_week, to_go, role, yardstick, (measure, last)))
        if role is not Role.LOADING or to_go > block.first_week:
            continue
        if _is_missed(week, yardstick):
            low += 1
        elif week.distance_m > 0:
            loading_m, measured, low = week.distance_m, measure, 0
    return tuple(figures)


def yardstick_of(project: Project) -> Yardstick:
    """Return what the ramp measures the weeks of *project* by, `Yardstick.BY_RACE` resolved."""
    wished = project.runner.wishes.yardstick
    if wished is not Yardstick.BY_RACE:
        return wished
    race = project.block.sessions[-1] if project.block.sessions else None
    steep = race is not None and race.climb_m > STEEP_PER_M * race.distance_m
    return Yardstick.TIME if steep and project.runner.weekly_s > 0 else Yardstick.DISTANCE


def _first_measure(project: Project, unit: Yardstick) -> float | None:
    if unit is Yardstick.DISTANCE:
        return project.runner.weekly_m or None
    return project.runner.weekly_s or None if unit is Yardstick.TIME else None


def _measure(week: _Sums, unit: Yardstick) -> float:
    if unit is Yardstick.TIME:
        return week.run_s
    if unit is Yardstick.FLAT:
        return week.distance_m + CLIMB_EQUIVALENT * week.climb_m
    return week.distance_m


def _role(to_go: int, cutbacks: frozenset[int], taper_weeks: int) -> Role:
    if to_go == 0:
        return Role.RACE
    if to_go < taper_weeks:
        return Role.TAPER
    return Role.CUTBACK if to_go in cutbacks else Role.LOADING


def _is_missed(week: _Sums, yardstick: float | None) -> bool:
    return week.missed and yardstick is not None and week.distance_m < CUTBACK_RANGE[1] * yardstick


def _figures(
    week: _Sums,
    race_week: int,
    to_go: int,
    role: Role,
    yardstick: float | None,
    measures: tuple[float, float | None],
) -> WeekFigures:
    return WeekFigures(
        date.fromordinal(race_week - 7 * to_go),
        to_go,
        role,
        week.distance_m,
        week.planned_m,
        week.done_m,
        week.climb_m,
        week.drop_m,
        week.time_s,
        week.longest_m,
        week.carb_g,
        week.rate,
        week.load,
        yardstick,
        None if yardstick is None else ten_percent_more(yardstick),
        tuple(week.keys),
        *measures,
    )


def standing(project: Project, weeks: Sequence[WeekFigures], today: date) -> tuple[float, float]:
    """Return the weekly distance and the longest run of the last 30 days as they stand *today*.

    Before anything was done these are the runner's own figures. A week counts once it is over.
    """
    runner = project.runner
    weekly_m, longest_m = runner.weekly_m, runner.longest_m
    over = [w for w in weeks if (today - w.start).days >= 7]
    if over and any(w.done_m > 0 for w in over):
        following = weeks[len(over)] if len(over) < len(weeks) else over[-1]
        weekly_m = following.last_loading_m or weekly_m
    runs = [
        (s.done.distance_m, (today - s.day).days)
        for s in project.block.sessions
        if s.done is not None and s.kind.is_run
    ]
    recent = [metres for metres, days in runs if 0 <= days <= WINDOW_DAYS]
    started = project.block.sessions[0].day if runs else today
    if recent and (today - started).days >= WINDOW_DAYS:
        longest_m = max(recent)
    elif recent:
        longest_m = max(longest_m, *recent)
    return weekly_m, longest_m
