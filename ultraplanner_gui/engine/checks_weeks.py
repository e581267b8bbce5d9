"""Rules a whole week is held against: ramp, cutbacks, long-run share, taper, practice carbs."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import partial
from itertools import pairwise

from ultraplanner_gui.engine.check import (
    CARB_SOURCE,
    CUSTOM,
    RAMP_SOURCE,
    TAPER_SOURCE,
    Check,
    MakeMend,
    band_state,
    limit_state,
)
from ultraplanner_gui.engine.mends import cut_back, practised_at, smaller_week
from ultraplanner_gui.engine.runway import RaceAsks
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.engine.weeks import Role, WeekFigures, yardstick_of
from ultraplanner_gui.plan.block import Block, Kind, Session
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Quantity, Unit, message
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.runner import Level
from ultraplanner_gui.plan.wishes import Ramp, Yardstick
from ultraplanner_gui.science.training import (
    CUTBACK_RANGE,
    LONG_SHARE_SLACK,
    TAPER_CUT_RANGE,
    long_share,
    mean_cut,
    rest_days_after,
    ten_percent_more,
    within_ten_percent,
)

RAMP = QT_TRANSLATE_NOOP("Checks", "ramp")
CUTBACK = QT_TRANSLATE_NOOP("Checks", "cutback")
LONG_SHARE = QT_TRANSLATE_NOOP("Checks", "long-run share")
TAPER = QT_TRANSLATE_NOOP("Checks", "taper")
CARBS = QT_TRANSLATE_NOOP("Checks", "practice carbs")
ASKED = QT_TRANSLATE_NOOP("Checks", "what the race asks")

RAMP_STRAINS, RAMP_GROWTH = 1.20, 1.10
# Longest run over greatest week of what races ask at each level (the table of `engine.runway`).
LEVEL_SHARE = {Level.FLOOR: 0.58, Level.USUAL: 0.50, Level.AMBITIOUS: 0.43}
CUTBACK_STRAINS = (0.50, 0.88)
TAPER_STRAINS = (0.30, 0.70)
PRACTICE_WEEKS = 3
PRACTICE_SLACK_G_PER_H = 10.0
ASKED_HOLDS, ASKED_STRAINS = 0.97, 0.80


def week_checks(
    project: Project, weeks: Sequence[WeekFigures], by_key: dict[str, Session]
) -> Iterator[Check]:
    """Yield the checks of single weeks, by time."""
    block = project.block
    most = project.runner.wishes.cutback_every - 1
    unit = yardstick_of(project)
    loads = 0
    for n, week in enumerate(weeks):
        before = weeks[n - 1] if n else None
        if week.to_go > block.first_week or not week.last_loading_m:
            continue
        if week.role is Role.LOADING:
            rests = any(by_key[key].missed for key in week.sessions)
            loads = 0 if rests and week.distance_m < 0.8 * week.last_loading_m else loads + 1
            held = project.runner.wishes.ramp is Ramp.BACK
            after = before is not None and before.role is Role.CUTBACK
            if unit is Yardstick.DISTANCE:
                yield _ramp(week, week.last_loading_m, by_key, held=held and after)
            elif week.last_measure:
                yield _ramp_by(week, week.last_measure, unit, held=held and after)
            if loads > most:
                runs = [by_key[key] for key in week.sessions]
                yield _overdue(week, loads, most, partial(cut_back, block, week.to_go, runs))
        elif week.role is Role.CUTBACK:
            loads = 0
            yield _cutback(week, week.last_loading_m, _after_race(before, by_key))
        if week.role in (Role.LOADING, Role.CUTBACK) and week.distance_m > 0:
            yield from _share(week, by_key, project.runner.level)


def _ramp(week: WeekFigures, before_m: float, by_key: dict[str, Session], *, held: bool) -> Check:
    now, before = Quantity(week.distance_m, "m"), Quantity(before_m, "m")
    most_m = before_m if held else ten_percent_more(before_m)
    if within_ten_percent(week.distance_m, most_m / RAMP_GROWTH):
        text = message(RAMP_HOLDS, now, before)
        return Check(RAMP, State.HOLDS, text, RAMP_SOURCE, week.sessions, (week.to_go,))
    over = Quantity(100.0 * (week.distance_m / before_m - 1.0), "percent")
    state = State.STRAINS if week.distance_m <= RAMP_STRAINS * before_m else State.BREAKS
    text = message(RAMP_BACK if held else RAMP_OVER, now, over, before)
    runs = [by_key[key] for key in week.sessions]
    mend = partial(smaller_week, runs, week.distance_m - most_m)
    return Check(RAMP, state, text, RAMP_SOURCE, week.sessions, (week.to_go,), mend)


def _ramp_by(week: WeekFigures, before: float, unit: Yardstick, *, held: bool) -> Check:
    """Return the ramp by hours on feet or by flat-equivalent distance."""
    most = before if held else ten_percent_more(before)
    state = limit_state(week.measure, most * (1.0 + 1e-9), RAMP_STRAINS * before)
    kind: Unit = "s" if unit is Yardstick.TIME else "m"
    text = message(
        RAMP_TIME if unit is Yardstick.TIME else RAMP_FLAT,
        Quantity(week.measure, kind),
        Quantity(100.0 * (week.measure / before - 1.0), "percent"),
        Quantity(before, kind),
    )
    return Check(RAMP, state, text, RAMP_SOURCE, week.sessions, (week.to_go,))


def _overdue(week: WeekFigures, loads: int, most: int, mend: MakeMend) -> Check:
    state = State.STRAINS if loads == most + 1 else State.BREAKS
    text = message(CUTBACK_OVERDUE, loads, most + 1)
    return Check(CUTBACK, state, text, CUSTOM, week.sessions, (week.to_go,), mend)


def _after_race(before: WeekFigures | None, by_key: dict[str, Session]) -> bool:
    return before is not None and any(
        by_key[key].kind is Kind.TUNE_UP and rest_days_after(by_key[key].duration_s) > 1
        for key in before.sessions
    )


def _cutback(week: WeekFigures, before_m: float, after_race: bool) -> Check:
    share = week.distance_m / before_m
    low, high = CUTBACK_RANGE
    least, most = CUTBACK_STRAINS
    if after_race:
        low = least = 0.0
    state = band_state(share, (low, high), (least, most))
    template = CUTBACK_OF if state is State.HOLDS else CUTBACK_OFF
    text = message(
        template,
        Quantity(week.distance_m, "m"),
        Quantity(100.0 * share, "percent"),
        Quantity(before_m, "m"),
    )
    return Check(CUTBACK, state, text, CUSTOM, week.sessions, (week.to_go,))


def _share(week: WeekFigures, by_key: dict[str, Session], level: Level) -> Iterator[Check]:
    longest: Session | None = None
    longest_m, runs = 0.0, 0
    for key in week.sessions:
        metres = _run_m(by_key[key])
        runs += metres > 0.0
        if metres > longest_m:
            longest, longest_m = by_key[key], metres
    if longest is None or not longest.kind.is_long:
        return
    share = 100.0 * longest_m / week.distance_m
    # With three runs a week none of them can be much less than half.
    usual = max(long_share(runs), LEVEL_SHARE[level])
    state = limit_state(share, 100.0 * usual, 100.0 * (usual + LONG_SHARE_SLACK))
    if state is State.BREAKS and longest.kind is not Kind.LONG:
        state = State.STRAINS
    text = message(
        SHARE_TEXT,
        Quantity(longest_m, "m"),
        Quantity(share, "percent"),
        Quantity(week.distance_m, "m"),
        Quantity(100.0 * usual, "percent"),
        runs,
    )
    yield Check(LONG_SHARE, state, text, CUSTOM, (longest.key,), (week.to_go,))


def _run_m(session: Session) -> float:
    if session.kind in (Kind.RACE, Kind.STRENGTH, Kind.CROSS) or session.missed:
        return 0.0
    return session.distance_m if session.done is None else session.done.distance_m


def taper_check(project: Project, weeks: Sequence[WeekFigures]) -> Check | None:
    """Return how deep the taper cuts the daily mean; None without a week to compare with."""
    taper = [w for w in weeks if w.role in (Role.TAPER, Role.RACE)]
    if not taper or len(taper) == len(weeks) or not taper[0].last_loading_m:
        return None
    days = (project.race.day - taper[0].start).days
    if days < 1:
        return None
    cut = mean_cut(sum(w.distance_m for w in taper), days, taper[0].last_loading_m)
    state = band_state(round(cut, 3), TAPER_CUT_RANGE, TAPER_STRAINS)
    text = message(
        TAPER_TEXT,
        days,
        Quantity(100.0 * cut, "percent"),
        Quantity(taper[0].last_loading_m, "m"),
    )
    keys = tuple(key for w in taper for key in w.sessions)
    return Check(TAPER, state, text, TAPER_SOURCE, keys, tuple(w.to_go for w in taper))


def carb_checks(
    project: Project, weeks: Sequence[WeekFigures], by_key: dict[str, Session]
) -> Iterator[Check]:
    """Yield whether practice reaches the race rate in the last weeks, and where it jumps."""
    target = project.fuel.carb_g_per_h
    practised = [w for w in weeks if w.carb_g_per_h > 0]
    first = project.runner.carb_g_per_h
    rates = [first, *(w.carb_g_per_h for w in practised)]
    for (before, now), week in zip(pairwise(rates), practised, strict=True):
        if now > before + 1.5 * PRACTICE_SLACK_G_PER_H and now > first:
            text = message(CARBS_JUMP, Quantity(now, "g_per_h"), Quantity(before, "g_per_h"))
            runs = [by_key[key] for key in week.sessions if by_key[key].carb_g_per_h > 0]
            mend = partial(practised_at, runs, before + PRACTICE_SLACK_G_PER_H)
            yield Check(CARBS, State.STRAINS, text, CARB_SOURCE, week.sessions, (week.to_go,), mend)
    if target <= 0 or not weeks or weeks[0].to_go < 1:
        return
    late = [w for w in weeks if 1 <= w.to_go <= PRACTICE_WEEKS]
    best = max((w.carb_g_per_h for w in late), default=0.0)
    state = State.HOLDS
    if best < target - 0.5:
        state = State.STRAINS if best >= target - PRACTICE_SLACK_G_PER_H else State.BREAKS
    text = message(CARBS_TEXT, Quantity(best, "g_per_h"), Quantity(target, "g_per_h"))
    keys = tuple(key for w in late for key in w.sessions)
    late_mend: MakeMend | None = None
    if state is not State.HOLDS and best >= target - 2.0 * PRACTICE_SLACK_G_PER_H:
        late_mend = partial(practised_at, [by_key[key] for key in keys], target)
    yield Check(CARBS, state, text, CARB_SOURCE, keys, tuple(w.to_go for w in late), late_mend)


def asked_checks(
    weeks: Sequence[WeekFigures], asks: RaceAsks | None, block: Block
) -> Iterator[Check]:
    """Yield how the greatest week and the longest run stand against what the race asks."""
    built = [w for w in weeks if w.to_go >= block.taper_weeks]
    if asks is None or not built:
        return
    peak = max(built, key=lambda w: w.distance_m)
    longest = max(built, key=lambda w: w.longest_m)
    for week, has_m, asked_m, template in (
        (peak, peak.distance_m, asks.peak_week_m, PEAK_TEXT),
        (longest, longest.longest_m, asks.longest_m, LONGEST_TEXT),
    ):
        state = State.BREAKS
        if has_m >= ASKED_STRAINS * asked_m:
            state = State.HOLDS if has_m >= ASKED_HOLDS * asked_m else State.STRAINS
        text = message(template, Quantity(has_m, "m"), Quantity(asked_m, "m"))
        yield Check(ASKED, state, text, CUSTOM, week.sessions, (week.to_go,))


RAMP_HOLDS = QT_TRANSLATE_NOOP("Checks", "{0} is within 10 % of the last loading week's {1}.")
RAMP_OVER = QT_TRANSLATE_NOOP(
    "Checks", "{0} is {1} above the last loading week's {2}; up to 10 % holds."
)
RAMP_TIME = QT_TRANSLATE_NOOP(
    "Checks", "{0} on feet against the last loading week's {2}: {1}; up to 10 % holds."
)
RAMP_FLAT = QT_TRANSLATE_NOOP(
    "Checks", "{0} flat-equivalent against the last loading week's {2}: {1}; up to 10 % holds."
)
RAMP_BACK = QT_TRANSLATE_NOOP(
    "Checks",
    "{0} is {1} above the last loading week's {2}; you wished for no growth right after a cutback.",
)
CUTBACK_OF = QT_TRANSLATE_NOOP("Checks", "{0} is {1} of the last loading week's {2}.")
CUTBACK_OFF = QT_TRANSLATE_NOOP(
    "Checks", "{0} is {1} of the last loading week's {2}; a cutback takes 60 to 80 %."
)
CUTBACK_OVERDUE = QT_TRANSLATE_NOOP(
    "Checks", "{0} loading weeks in a row: a cutback is due every {1} weeks."
)
SHARE_TEXT = QT_TRANSLATE_NOOP(
    "Checks",
    "The longest run of {0} is {1} of the week's {2}; with {4} runs at this level keep to {3}.",
)
TAPER_TEXT = QT_TRANSLATE_NOOP(
    "Checks", "The {0} days before the race hold {1} less a day than a week of {2}."
)
CARBS_JUMP = QT_TRANSLATE_NOOP(
    "Checks", "Practice goes up to {0} from {1}; raise it by 10 g/h a week at most."
)
CARBS_TEXT = QT_TRANSLATE_NOOP(
    "Checks", "The last weeks practise up to {0}; the race plan takes {1}."
)
PEAK_TEXT = QT_TRANSLATE_NOOP("Checks", "The greatest week is {0}; the race asks for {1}.")
LONGEST_TEXT = QT_TRANSLATE_NOOP("Checks", "The longest run is {0}; the race asks for {1}.")
