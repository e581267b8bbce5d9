"""The rest of each session: climb and drop, ground, time, effort, practice carbs, dark."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date

from msgspec.structs import replace

from ultraplanner_gui.engine.block_carry import carried
from ultraplanner_gui.engine.block_fill import Run
from ultraplanner_gui.engine.block_ground import EFFORT, GroundRules
from ultraplanner_gui.engine.block_home import at_home
from ultraplanner_gui.engine.block_others import with_others
from ultraplanner_gui.engine.block_request import BlockRequest
from ultraplanner_gui.plan.block import Ground, Kind, Session, weeks_to_go
from ultraplanner_gui.science.training import WINDOW_DAYS, practice_rate

FIRST_DROP_M = 400.0
DROP_GROWTH = 1.2
PRACTICE_S = 3600.0
LONG_DARK_S = 2 * 3600.0
LONGEST_DARK_S = 5 * 3600.0
STEP_S = 300
SLUG = {
    Kind.RECOVERY: "recovery",
    Kind.EASY: "easy",
    Kind.LONG: "long",
    Kind.SECOND_LONG: "second",
    Kind.REHEARSAL: "rehearsal",
    Kind.HILLS: "hills",
    Kind.DOWNHILL: "downhill",
    Kind.TEMPO: "tempo",
    Kind.INTERVALS: "intervals",
    Kind.TUNE_UP: "tune-up",
    Kind.RACE: "race",
}
PRACTISED = (Kind.LONG, Kind.REHEARSAL, Kind.SECOND_LONG, Kind.TUNE_UP)


def dressed(runs: Iterable[Run], rules: GroundRules) -> tuple[Session, ...]:
    """Return the sessions of *runs* and the race, by day."""
    request = rules.request
    sessions = at_home(_with_climb(list(runs), rules), request)
    sessions = _with_carbs(sessions, request)
    if request.runner.wishes.night_runs:
        sessions = _with_dark(sessions, request)
    sessions = carried(sessions, request)
    if request.runner.wishes.strength or request.runner.wishes.cross:
        sessions = with_others(sessions, request)
    return (*sessions, race_session(request, rules))


def race_session(request: BlockRequest, rules: GroundRules) -> Session:
    """Return the race itself."""
    return Session(
        f"{request.race_day.isoformat()}-race",
        request.race_day,
        Kind.RACE,
        request.race_m,
        request.race_s,
        request.climb_m,
        request.drop_m,
        rules.ground(Kind.RACE, rules.race_per_m),
        EFFORT[Kind.RACE],
        request.carb_target_g_per_h,
        dark=request.dark_s > 0,
        at_s=request.race_start_s,
        surface=request.race_surface,
    )


def _with_climb(runs: Sequence[Run], rules: GroundRules) -> list[Session]:
    """Return the sessions with climb and drop; no drop is more than 1.2 times the greatest of
    the 30 days before (common practice, no source).
    """
    sessions: list[Session] = []
    drops: list[tuple[int, float]] = []
    for run in runs:
        at = run.day.toordinal()
        behind = max((m for day, m in drops if at - day <= WINDOW_DAYS), default=0.0)
        most = max(FIRST_DROP_M, DROP_GROWTH * behind)
        if run.kind is Kind.TUNE_UP:
            most = run.distance_m
        wish = rules.climb_per_m(run.kind, run.to_go) * run.distance_m
        climb_m = min(wish, most) // 10 * 10
        drops.append((at, climb_m))
        sessions.append(_session(run, climb_m, rules))
    return sessions


def _session(run: Run, climb_m: float, rules: GroundRules) -> Session:
    ground = rules.ground(run.kind, climb_m / run.distance_m)
    if run.kind is Kind.HILLS and climb_m <= 0:
        ground = Ground.ROLLING
    return Session(
        f"{run.day.isoformat()}-{SLUG[run.kind]}",
        run.day,
        run.kind,
        float(run.distance_m),
        _whole_time(run, rules.time_s(run.kind, run.distance_m, climb_m), rules.request),
        climb_m,
        climb_m,
        ground,
        EFFORT[run.kind],
    )


def _whole_time(run: Run, time_s: float, request: BlockRequest) -> float:
    """Return *time_s* to five minutes, within the day's free time."""
    rounded = max(STEP_S, round(time_s / STEP_S) * STEP_S)
    free_s = request.runner.available_s[run.day.weekday()]
    if run.kind is not Kind.TUNE_UP and rounded > free_s >= time_s:
        rounded -= STEP_S
    return float(rounded)


def _with_carbs(sessions: Sequence[Session], request: BlockRequest) -> list[Session]:
    """Return the sessions with practice carbs on the long ones and one more a week, none under
    an hour.
    """
    if not sessions:
        return []
    weeks = [weeks_to_go(s.day, request.race_day, request.first_weekday) for s in sessions]
    rates = {
        week: practice_rate(
            request.runner.carb_g_per_h, request.carb_target_g_per_h, weeks[0] - week, week
        )
        for week in set(weeks)
    }
    extra: dict[int, Session] = {}
    for week, session in zip(weeks, sessions, strict=True):
        ramping = week > 0 and rates[week] > request.runner.carb_g_per_h
        if ramping and session.kind not in PRACTISED and session.duration_s >= PRACTICE_S:
            best = extra.get(week)
            if best is None or session.duration_s > best.duration_s:
                extra[week] = session
    chosen = {s.key for s in extra.values()}
    return [
        replace(s, carb_g_per_h=rates[week])
        if s.duration_s >= PRACTICE_S and (s.kind in PRACTISED or s.key in chosen)
        else s
        for week, s in zip(weeks, sessions, strict=True)
    ]


def _with_dark(sessions: Sequence[Session], request: BlockRequest) -> list[Session]:
    """Return the sessions with two to four of the last ten weeks' runs in the dark."""
    if request.dark_s <= LONG_DARK_S:
        return list(sessions)
    count = 2 + (request.dark_s > 2 * LONG_DARK_S) + (request.dark_s > 4 * LONG_DARK_S)
    by_week: dict[int, Session] = {}
    last_long = date.min
    for session in sessions:
        left = (request.race_day - session.day).days
        tired = (session.day - last_long).days == 1
        if session.kind in PRACTISED:
            last_long = session.day
        fits = (session.kind is Kind.EASY and not tired) or (
            session.kind is Kind.LONG and session.duration_s <= LONGEST_DARK_S
        )
        if not (14 < left <= 70 and fits):
            continue
        week = left // 7
        wished = Kind.LONG if week % 4 == 0 else Kind.EASY
        best = by_week.get(week)
        if best is None or _dark_wish(session, wished) > _dark_wish(best, wished):
            by_week[week] = session
    weeks = sorted(by_week)
    picked = {by_week[weeks[n * len(weeks) // count]].key for n in range(min(count, len(weeks)))}
    return [replace(s, dark=True) if s.key in picked else s for s in sessions]


def _dark_wish(session: Session, wished: Kind) -> tuple[bool, float]:
    return session.kind is wished, session.duration_s
