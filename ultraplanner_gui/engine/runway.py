"""Is the race far enough away: weeks there against weeks needed, and what the race asks."""

from __future__ import annotations

from datetime import date, timedelta
from itertools import pairwise

from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.block import week_start, weeks_to_go
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.plan.runner import Level, Runner
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.plan.wishes import Ramp, Wishes
from ultraplanner_gui.science.training import (
    CLIMB_EQUIVALENT,
    Growth,
    growth_steps,
    loading_weeks,
    steps_in,
    taper_shares,
    weeks_for_steps,
)

HOUR_S = 3600.0
LEAST_WEEK_M = 10_000.0
LEAST_RUN_M = 5_000.0
LONG_S = 36 * HOUR_S
STEEP = 0.050
REACHED = 0.98
NEARLY = 0.85
MOST_SLOWER = 0.25
CLIMB_SHARE = {Level.FLOOR: 0.7, Level.USUAL: 0.9, Level.AMBITIOUS: 1.0}


class RaceAsks(Value, frozen=True):
    """What the race asks of the build-up (trade ranges, no trial sets them)."""

    peak_week_m: float
    peak_week_s: float
    longest_m: float
    longest_s: float
    two_days_m: float | None


class Runway(Value, frozen=True):
    """Weeks until the race against the weeks the build-up needs, race week not counted.

    `reachable_week_m` and `reachable_longest_m` are what the rules allow by the race, no more
    than is asked or run already. `earliest` is the first day, of the race's weekday, that leaves
    the weeks needed; `means` says what to do about it where the race is nearer than that.
    """

    weeks_there: int
    weeks_needed: int
    asks: RaceAsks
    reachable_week_m: float
    reachable_longest_m: float
    state: State
    reason: Message
    earliest: date | None = None
    means: tuple[Message, ...] = ()

    @property
    def weeks_spare(self) -> int:
        """Weeks beyond those needed; below 0 where there are too few."""
        return self.weeks_there - self.weeks_needed


_Range = tuple[float, float, float]
_Wish = tuple[float | None, float, float]


class _Row(Value, frozen=True):
    """One race length: the hours it takes, and kilometres and hours of week, run and two days."""

    km: float
    low_h: float
    high_h: float
    week_km: float
    week_h: float
    longest_km: float
    longest_h: float
    two_days_km: float | None


# Ranges coaches use, floor to ambitious; common practice, no source.
_TABLE: tuple[tuple[_Range, tuple[_Range, _Range, _Range, _Range], _Wish], ...] = (
    ((50, 5, 9), ((45, 65, 95), (5, 7.5, 11), (26, 32, 40), (3.5, 4.5, 5.5)), (None, 45, 55)),
    ((80, 9, 14), ((55, 80, 115), (6.5, 9.5, 13), (32, 40, 50), (4.5, 5.5, 7)), (45, 58, 70)),
    ((100, 10, 20), ((60, 90, 130), (7, 11, 15), (35, 45, 55), (5, 6.5, 8)), (50, 65, 80)),
    ((160, 18, 36), ((70, 105, 150), (9, 13, 18), (42, 50, 65), (6, 7.5, 9)), (60, 75, 95)),
)


def _level(number: int) -> tuple[_Row, ...]:
    return tuple(
        _Row(*race, week_km[number], week_h[number], run_km[number], run_h[number], two_km[number])
        for race, (week_km, week_h, run_km, run_h), two_km in _TABLE
    )


_ROWS = {
    Level.FLOOR: _level(0),
    Level.USUAL: _level(1),
    Level.AMBITIOUS: _level(2),
}
# Week, longest run and two days in hours for races beyond 36 hours; common practice, no source.
_BEYOND = {
    Level.FLOOR: (10.0, 6.0, 10.0),
    Level.USUAL: (14.0, 8.0, 13.0),
    Level.AMBITIOUS: (20.0, 10.0, 16.0),
}


def race_asks(
    length_m: float,
    race_s: float,
    level: Level,
    *,
    climb_m: float = 0.0,
    easy_mps: float | None = None,
) -> RaceAsks:
    """Return what a race of *length_m* metres taking *race_s* seconds asks at *level*.

    Distances are interpolated on the length of the race. With *easy_mps*, the runner's easy
    speed on level ground, hours and kilometres are both limits and the sooner reached counts;
    in a race faster than its length usually takes, the hours count. Races over 36 hours and
    those that climb more than 50 m per km go by hours alone, read off the race time.
    """
    rows, hours = _ROWS[level], race_s / HOUR_S
    row = _between(rows, length_m / 1000.0)
    mps = _training_mps(row, hours, level, climb_m / length_m, easy_mps)
    steep = climb_m > STEEP * length_m
    if steep or race_s > LONG_S:
        week_s, longest_s, two_s = (h * HOUR_S for h in _by_hours(rows, hours, level))
        return RaceAsks(week_s * mps, week_s, longest_s * mps, longest_s, two_s * mps)
    week_s, longest_s = row.week_h * HOUR_S, row.longest_h * HOUR_S
    fast = hours < row.low_h
    week_m = _limit(row.week_km * 1000.0, week_s * mps, fast)
    longest_m = _limit(row.longest_km * 1000.0, longest_s * mps, fast)
    two_days_m = None
    if row.two_days_km is not None:
        two_days_m = row.two_days_km * longest_m / row.longest_km
    return RaceAsks(week_m, week_s, longest_m, longest_s, two_days_m)


def _limit(by_length_m: float, by_hours_m: float, fast: bool) -> float:
    return max(by_length_m, by_hours_m) if fast else min(by_length_m, by_hours_m)


def _training_mps(
    row: _Row, hours: float, level: Level, climb_per_m: float, easy_mps: float | None
) -> float:
    if easy_mps is not None:
        return easy_mps / (1.0 + CLIMB_EQUIVALENT * CLIMB_SHARE[level] * climb_per_m)
    usual = row.week_km * 1000.0 / (row.week_h * HOUR_S)
    return usual * min(max(hours, row.low_h), row.high_h) / hours


def _by_hours(rows: tuple[_Row, ...], hours: float, level: Level) -> tuple[float, float, float]:
    week, longest, two_days = _BEYOND[level]
    if hours >= LONG_S / HOUR_S:
        return week, longest, two_days
    points = [(0.5 * (r.low_h + r.high_h), r.week_h, r.longest_h) for r in rows]
    points.append((LONG_S / HOUR_S, week, longest))
    week = _interpolated(hours, [(p[0], p[1]) for p in points])
    longest = _interpolated(hours, [(p[0], p[2]) for p in points])
    return week, longest, two_days * longest / _BEYOND[level][1]


def _interpolated(x: float, points: list[tuple[float, float]]) -> float:
    if x <= points[0][0]:
        return points[0][1] * x / points[0][0]
    for (x0, y0), (x1, y1) in pairwise(points):
        if x <= x1:
            return y0 + (y1 - y0) * (x - x0) / (x1 - x0)
    return points[-1][1]


def _between(rows: tuple[_Row, ...], km: float) -> _Row:
    def at(field: str) -> float:
        return _interpolated(km, [(r.km, float(getattr(r, field))) for r in rows])

    pairs = [(r.km, r.two_days_km) for r in rows if r.two_days_km is not None]
    wished = len(pairs) == len(rows) or km >= pairs[0][0]
    two_days = _interpolated(km, pairs) if wished else None
    return _Row(
        km,
        at("low_h"),
        at("high_h"),
        at("week_km"),
        at("week_h"),
        at("longest_km"),
        at("longest_h"),
        two_days,
    )


def taper_weeks(race_s: float, race_day: date, first_weekday: int) -> int:
    """Return how many weeks are taper, race week included.

    A race in the first three days of its week leaves no week to taper in, so one more is added.
    """
    days = (race_day - week_start(race_day, first_weekday)).days
    return len(taper_shares(race_s)) + (1 if days < 3 else 0)


def whole_weeks(today: date, race_day: date, first_weekday: int) -> int:
    """Return how many whole weeks lie ahead of the race week, one that starts today included."""
    weeks = weeks_to_go(today, race_day, first_weekday)
    return max(0, weeks if today == week_start(today, first_weekday) else weeks - 1)


def runway(
    asks: RaceAsks,
    runner: Runner,
    today: date,
    race_day: date,
    first_weekday: int,
    race_s: float,
    *,
    weekly_m: float | None = None,
    longest_m: float | None = None,
    cutback_every: int = 4,
    growth: Growth = Growth.ON,
) -> Runway:
    """Return the runway from *today*.

    *weekly_m* and *longest_m* are what the runner runs by now (default: what `runner` says).
    The first week is run at that volume; then every loading week grows by 10 %, every
    *cutback_every*-th week counted back from the taper is a cutback, after which weeks grow on or
    come back first as *growth* says. The greatest week and the longest run, under the single-run
    rule, lie at least three weeks before the race.
    """
    week_m = max(LEAST_WEEK_M, runner.weekly_m if weekly_m is None else weekly_m)
    run_m = max(LEAST_RUN_M, runner.longest_m if longest_m is None else longest_m)
    taper = taper_weeks(race_s, race_day, first_weekday)
    there = whole_weeks(today, race_day, first_weekday)
    late = max(0, 3 - taper)
    steps = steps_in(max(0, there - taper + 1), cutback_every, growth)
    loads = loading_weeks(max(0, there - taper + 1), cutback_every)
    volume_m = _reached(week_m, asks.peak_week_m, steps - late)
    long_m = _reached(run_m, asks.longest_m, loads - late)
    volume_steps = growth_steps(week_m, asks.peak_week_m)
    volume_weeks = weeks_for_steps(volume_steps + late, cutback_every, growth)
    long_steps = growth_steps(run_m, asks.longest_m)
    long_weeks = weeks_for_steps(max(0, long_steps + late - 1), cutback_every)
    needed = max(volume_weeks, long_weeks) + taper - 1
    shares = volume_m / asks.peak_week_m, long_m / asks.longest_m
    return Runway(
        there,
        needed,
        asks,
        volume_m,
        long_m,
        _state(min(shares)),
        _reason(asks, week_m, run_m, (volume_m, long_m), (volume_weeks, long_weeks)),
        earliest_day(today, race_day, first_weekday, needed),
        _means(asks, (volume_m, long_m), race_s, needed - there),
    )


def growth_of(wishes: Wishes) -> Growth:
    """Return how weeks grow after a cutback by the runner's *wishes*."""
    return Growth.BACK if wishes.ramp is Ramp.BACK else Growth.ON


def earliest_day(today: date, race_day: date, first_weekday: int, needed: int) -> date:
    """Return the first day of *race_day*'s weekday that has *needed* whole weeks before its own."""
    days_in = (race_day - week_start(race_day, first_weekday)).days
    day = week_start(today, first_weekday) + timedelta(weeks=needed, days=days_in)
    while whole_weeks(today, day, first_weekday) < needed:
        day += timedelta(weeks=1)
    return day


def _means(
    asks: RaceAsks, reached: tuple[float, float], race_s: float, weeks_short: int
) -> tuple[Message, ...]:
    """Return what it means that only *reached* a week and in one run is possible by the race.

    The shares are those of the table, read backward; common practice, no source.
    """
    share = min(reached[0] / asks.peak_week_m, reached[1] / asks.longest_m)
    if share >= REACHED:
        return ()
    longest_s = asks.longest_s * reached[1] / asks.longest_m
    means = [
        message(LATER_RACE, max(1, weeks_short)),
        message(SHORTER_RACE, Quantity(100.0 * share, "percent")),
        message(
            WALK_MORE,
            Quantity(longest_s, "s"),
            Quantity(max(0.0, race_s - longest_s), "s"),
        ),
    ]
    slower = min(MOST_SLOWER, 1.0 - share)
    means.append(
        message(SLOWER_GOAL, Quantity(race_s * (1.0 + slower), "s"), Quantity(race_s, "s"))
    )
    return tuple(means)


def _reached(start_m: float, asked_m: float, steps: int) -> float:
    return max(start_m, min(asked_m, start_m * 1.1 ** max(0, steps)))


def _state(share: float) -> State:
    if share >= REACHED:
        return State.HOLDS
    return State.STRAINS if share >= NEARLY else State.BREAKS


def _reason(
    asks: RaceAsks,
    week_m: float,
    run_m: float,
    reached: tuple[float, float],
    needed: tuple[int, int],
) -> Message:
    volume_m, long_m = (Quantity(m, "m") for m in reached)
    week_asked, run_asked = Quantity(asks.peak_week_m, "m"), Quantity(asks.longest_m, "m")
    short_week = reached[0] < REACHED * asks.peak_week_m
    short_run = reached[1] < REACHED * asks.longest_m
    if short_week and short_run:
        return message(BOTH_SHORT, volume_m, week_asked, long_m, run_asked)
    if short_week:
        return message(VOLUME_SHORT, volume_m, week_asked)
    if short_run:
        return message(LONG_SHORT, long_m, run_asked)
    if week_m >= asks.peak_week_m and run_m >= asks.longest_m:
        return message(ALREADY_THERE, week_asked, run_asked)
    if needed[0] >= needed[1]:
        return message(VOLUME_BINDS, needed[0], Quantity(week_m, "m"), week_asked)
    return message(LONG_BINDS, needed[1], Quantity(run_m, "m"), run_asked)


LATER_RACE = QT_TRANSLATE_NOOP("Runway", "Weeks missing for all that the race asks: {0}.")
SHORTER_RACE = QT_TRANSLATE_NOOP(
    "Runway",
    "What can be reached is {0} of what this race asks: look for a race about as much shorter.",
)
WALK_MORE = QT_TRANSLATE_NOOP(
    "Runway",
    "The longest run comes to {0}, so {1} of the race lie beyond it: plan to walk early and hold "
    "against the cutoffs.",
)
SLOWER_GOAL = QT_TRANSLATE_NOOP(
    "Runway", "A target of {0} instead of {1} is more likely to hold, if the cutoffs allow it."
)
BOTH_SHORT = QT_TRANSLATE_NOOP(
    "Runway",
    "Volume reaches {0} a week of the {1} asked, the longest run {2} of the {3} asked.",
)
VOLUME_SHORT = QT_TRANSLATE_NOOP(
    "Runway", "Volume reaches {0} a week of the {1} asked; the longest run gets there."
)
LONG_SHORT = QT_TRANSLATE_NOOP(
    "Runway", "The longest run reaches {0} of the {1} asked; volume gets there."
)
ALREADY_THERE = QT_TRANSLATE_NOOP(
    "Runway", "The {0} a week and the longest run of {1} that the race asks are there already."
)
VOLUME_BINDS = QT_TRANSLATE_NOOP(
    "Runway", "Volume decides: {0} weeks from {1} to {2} a week, cutbacks included; then the taper."
)
LONG_BINDS = QT_TRANSLATE_NOOP(
    "Runway",
    "The long run decides: {0} weeks from {1} to {2}, cutbacks included; then the taper.",
)
