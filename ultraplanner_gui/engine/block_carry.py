"""What sessions carry besides distance and climb: hours, surfaces, last parts, heat, the head."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from msgspec.structs import replace

from ultraplanner_gui.engine.block_request import BlockRequest
from ultraplanner_gui.plan.block import Kind, Mind, Session, weeks_to_go
from ultraplanner_gui.plan.runner import Health

LONG_KINDS = (Kind.LONG, Kind.SECOND_LONG, Kind.REHEARSAL)
EASY_KINDS = (Kind.EASY, Kind.RECOVERY)
LATE_WEEKS = 10
EVENING_S, LONG_NIGHT_S = 21 * 3600.0, 4 * 3600.0
# Heat: ten sessions in days 24 to 10 before the race, some more in days 6 to 3 (Racinais et al.
# 2015, Sports Med 45:925-938; Pryor et al. 2019, Temperature 6:37-49, pages from memory).
HEAT_DAYS = ((10, 24), (3, 6))
HEAT_LEAST_S = 2400.0
# Fasted: easy runs only, up to an hour in the first month and 90 minutes later (own limits within
# Van Proeyen et al. 2011, J Appl Physiol 110:236-245; Impey et al. 2018, Sports Med 48:1031-1048).
FASTED_S = (3600.0, 5400.0)
FASTED_AT_S = 6.5 * 3600.0
FIRST_MONTH = 4
# If-then plans in weeks 6 to 2 (Gollwitzer and Sheeran 2006, Adv Exp Soc Psychol 38:69-119),
# pictures of the race beside them (Holmes and Collins 2001, J Appl Sport Psychol 13:60-83).
IF_THEN_WEEKS = range(2, 7)
PICTURE_WEEKS = range(1, 6)
GOAL_WEEKS = range(2)


def carried(sessions: Sequence[Session], request: BlockRequest) -> list[Session]:
    """Return *sessions* with everything they carry by the race, the runner and the wishes."""
    changed = [_on_ground(s, request) for s in sessions]
    if _is_well(request) and request.runner.wishes.heat_days:
        changed = [_in_heat(s, request) for s in changed]
    if _is_well(request) and request.runner.wishes.fasted:
        changed = _fasted(changed, request)
    if request.runner.wishes.mind:
        changed = _with_mind(changed, request)
    return [replace(s, at_s=_start_s(s, request)) for s in changed]


def _is_well(request: BlockRequest) -> bool:
    return request.runner.health is Health.CLEAR


def _start_s(session: Session, request: BlockRequest) -> float:
    """Return the time of day: the usual hour, the race's for a rehearsal, dark for a night run."""
    if session.dark:
        return LONG_NIGHT_S if session.kind.is_long else EVENING_S
    if session.kind in (Kind.REHEARSAL, Kind.TUNE_UP) and request.race_start_s is not None:
        return request.race_start_s
    usual_s = request.runner.start_s[session.day.weekday()]
    return min(usual_s, FASTED_AT_S) if session.fasted else usual_s


def _on_ground(session: Session, request: BlockRequest) -> Session:
    """Return *session*, a long one on what is underfoot in the race, some ending as it ends."""
    if session.kind not in LONG_KINDS:
        return session
    session = replace(session, surface=request.race_surface)
    to_go = weeks_to_go(session.day, request.race_day, request.first_weekday)
    ends = session.kind is Kind.REHEARSAL or (session.kind is Kind.LONG and to_go % 2 == 0)
    last = request.last_ground
    if ends and to_go <= LATE_WEEKS and last is not None and last is not session.ground:
        return replace(session, ends_on=last)
    return session


def _in_heat(session: Session, request: BlockRequest) -> Session:
    left = (request.race_day - session.day).days
    if session.kind in EASY_KINDS and session.duration_s >= HEAT_LEAST_S and not session.dark:
        return replace(session, heat=any(low <= left <= high for low, high in HEAT_DAYS))
    return session


def _fasted(sessions: Sequence[Session], request: BlockRequest) -> list[Session]:
    """Return *sessions* with the easy runs wished for without breakfast.

    None in race week, on two days running, in the heat or the dark, nor over half of a week.
    """
    changed = list(sessions)
    first = weeks_to_go(sessions[0].day, request.race_day, request.first_weekday) if sessions else 0
    for to_go, places in by_week(changed, request):
        most_s = FASTED_S[0] if first - to_go < FIRST_MONTH else FASTED_S[1]
        left = min(request.runner.wishes.fasted, len(places) // 2)
        before = None
        for n in places:
            session = changed[n]
            beside = before is not None and (session.day - before).days < 2
            fits = session.kind in EASY_KINDS and 0 < session.duration_s <= most_s
            apart = not (session.heat or session.dark or session.carb_g_per_h)
            if to_go and left and fits and apart and not beside:
                changed[n] = replace(session, fasted=True)
                left, before = left - 1, session.day
    return changed


def _with_mind(sessions: Sequence[Session], request: BlockRequest) -> list[Session]:
    """Return *sessions* with ten minutes of mental rehearsal on some of the last weeks' runs."""
    changed = list(sessions)
    for to_go, places in by_week(changed, request):
        longs = [n for n in places if changed[n].kind in LONG_KINDS]
        easy = [n for n in places if changed[n].kind in EASY_KINDS and n not in longs]
        if to_go in IF_THEN_WEEKS and longs:
            changed[longs[0]] = replace(changed[longs[0]], mind=Mind.IF_THEN)
        if to_go in PICTURE_WEEKS and easy:
            changed[easy[0]] = replace(changed[easy[0]], mind=Mind.PICTURE)
        if to_go in GOAL_WEEKS and easy:
            changed[easy[-1]] = replace(changed[easy[-1]], mind=Mind.GOALS)
    return changed


def by_week(sessions: Sequence[Session], request: BlockRequest) -> Iterator[tuple[int, list[int]]]:
    """Yield the weeks to go with the places of their sessions."""
    weeks: dict[int, list[int]] = {}
    for n, session in enumerate(sessions):
        to_go = weeks_to_go(session.day, request.race_day, request.first_weekday)
        weeks.setdefault(to_go, []).append(n)
    yield from weeks.items()
