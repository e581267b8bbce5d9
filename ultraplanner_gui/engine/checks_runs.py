"""Rules single sessions are held against: single runs, hard days, downhill runs, tune-up races."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterator, Sequence
from datetime import date, timedelta
from functools import partial
from itertools import pairwise

from ultraplanner_gui.engine.check import (
    CUSTOM,
    DOWNHILL_SOURCE,
    SINGLE_SOURCE,
    Check,
    MakeMend,
    Mend,
    limit_state,
)
from ultraplanner_gui.engine.mends import moved_apart, shorter_run
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.block import HARD_KINDS, Kind, Session, weeks_to_go
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.science.training import (
    WINDOW_DAYS,
    easy_days_after,
    ten_percent_more,
    within_ten_percent,
)

SINGLE = QT_TRANSLATE_NOOP("Checks", "single run")
HARD = QT_TRANSLATE_NOOP("Checks", "hard days")
DOWNHILL = QT_TRANSLATE_NOOP("Checks", "downhill")
TUNE_UP = QT_TRANSLATE_NOOP("Checks", "tune-up race")
HOURS = QT_TRANSLATE_NOOP("Checks", "hours of one run")
DROP = QT_TRANSLATE_NOOP("Checks", "drop of one run")
LATE_DROP = QT_TRANSLATE_NOOP("Checks", "late descent")

SHOWN = frozenset((Kind.LONG, Kind.REHEARSAL, Kind.SECOND_LONG, Kind.TUNE_UP))
HEAVY_KINDS = HARD_KINDS | {Kind.SECOND_LONG}
NOT_RUN = (Kind.RACE, Kind.STRENGTH, Kind.CROSS)
DOWNHILL_RACE_M = 1000.0
DOWNHILL_GAP_DAYS = 21
DOWNHILL_LAST_DAYS = (10, 21)
LATE_DOSE, LATE_DOSE_DAYS = 0.25, (10, 56)
# Shorter runs than this, and smaller drops, are no yardstick and need none.
HOURS_MATTER_S, HOURS_GROWTH = 5_400.0, 1.20
DROP_MATTERS_M, DROP_GROWTH = 300.0, 1.25
LONGEST_STRENUOUS_H = 6.0
NEVER_HARD_DAYS = 4


def actual_m(session: Session) -> float:
    """Return the metres that count as run or planned; the race itself is none."""
    if session.missed or session.kind in NOT_RUN:
        return 0.0
    return session.distance_m if session.done is None else session.done.distance_m


def single_run_checks(project: Project, sessions: Sequence[Session]) -> Iterator[Check]:
    """Yield every long run against the longest of the 30 days before, and any run above it.

    Before the first 30 days are over the runner's own longest run counts as run the day before.
    """
    if not sessions:
        return
    # Longest first, each later than the one before it: the head is the longest of the window.
    window: deque[tuple[int, float]] = deque()
    if project.runner.longest_m > 0:
        window.append((sessions[0].day.toordinal() - 1, project.runner.longest_m))
    today: list[tuple[int, float]] = []
    for session in sessions:
        metres = actual_m(session)
        if metres <= 0:
            continue
        day = session.day.toordinal()
        if today and today[0][0] != day:
            _push(window, today)
            today = []
        while window and day - window[0][0] > WINDOW_DAYS:
            window.popleft()
        # Most runs are short of the limit and not shown: nothing more is made for them.
        near = window and (session.kind in SHOWN or metres > window[0][1])
        if near:
            yield from _single(project, session, metres, window[0][1])
        today.append((day, metres))


def _push(window: deque[tuple[int, float]], runs: list[tuple[int, float]]) -> None:
    for day, metres in runs:
        while window and window[-1][1] <= metres:
            window.pop()
        window.append((day, metres))


def _single(project: Project, session: Session, metres: float, longest_m: float) -> Iterator[Check]:
    holds = within_ten_percent(metres, longest_m)
    if holds and session.kind not in SHOWN:
        return
    now, longest = Quantity(metres, "m"), Quantity(longest_m, "m")
    if holds:
        yield _check(project, SINGLE, State.HOLDS, message(SINGLE_HOLDS, now, longest), session)
        return
    over = Quantity(100.0 * (metres / longest_m - 1.0), "percent")
    text = message(SINGLE_OVER, now, longest, over)
    mend = partial(shorter_run, session, ten_percent_more(longest_m))
    yield _check(project, SINGLE, State.BREAKS, text, session, mend=mend)


def _check(
    project: Project,
    rule: str,
    state: State,
    text: Message,
    *sessions: Session,
    source: Message | None = None,
    mend: MakeMend | None = None,
) -> Check:
    race_day, weekday = project.race.day, project.first_weekday
    first, *others = [weeks_to_go(s.day, race_day, weekday) for s in sessions]
    weeks = (first,) if not others or others == [first] else tuple(dict.fromkeys([first, *others]))
    if source is None:
        source = SINGLE_SOURCE if rule == SINGLE else CUSTOM
    return Check(rule, state, text, source, tuple([s.key for s in sessions]), weeks, mend)


def hard_day_checks(project: Project, sessions: Sequence[Session]) -> Iterator[Check]:
    """Yield every two hard sessions on one day or on days side by side; one check if none meet.

    A back-to-back after a long run is meant; a hard day after it is not.
    """
    heavy = [s for s in sessions if s.kind in HEAVY_KINDS and not s.missed]
    day_of = [s.day.toordinal() for s in heavy]
    met = False
    for n, later in enumerate(heavy):
        for k in range(n - 1, max(n - 5, -1), -1):
            earlier, days = heavy[k], day_of[n] - day_of[k]
            if days > 1:
                break
            meant = later.kind is Kind.SECOND_LONG and earlier.kind.is_long and days == 1
            if not meant:
                met = True
                text = SAME_DAY if days == 0 else NEXT_DAY
                mend = partial(_moved, later, sessions, project.first_weekday)
                yield _check(project, HARD, State.BREAKS, text, earlier, later, mend=mend)
    if heavy and not met:
        yield Check(HARD, State.HOLDS, message(HARD_APART), CUSTOM)


def _moved(session: Session, sessions: Sequence[Session], first_weekday: int) -> Mend | None:
    return moved_apart(session, _by_day(sessions), first_weekday)


def _by_day(sessions: Sequence[Session]) -> dict[date, list[Session]]:
    days: dict[date, list[Session]] = {}
    for session in sessions:
        days.setdefault(session.day, []).append(session)
    return days


def _is_heavy(session: Session) -> bool:
    return session.kind in HEAVY_KINDS


def long_hours_checks(project: Project, sessions: Sequence[Session]) -> Iterator[Check]:
    """Yield the long runs that outgrow the 30 days before in time on feet or in drop.

    The study behind the single-run rule looked at distance; the same for hours and drop is our
    own rule, so it strains and does not break.
    """
    if not sessions:
        return
    runner = project.runner
    first = sessions[0].day.toordinal() - 1
    hours: deque[tuple[int, float]] = deque(((first, runner.longest_s),))
    drops: deque[tuple[int, float]] = deque(((first, runner.longest_drop_m),))
    hours_from = first if runner.longest_s else first + WINDOW_DAYS
    drops_from = first if runner.longest_drop_m else first + WINDOW_DAYS
    for session in sessions:
        run = session.done or session
        if run.duration_s < HOURS_MATTER_S and run.drop_m < DROP_MATTERS_M:
            continue
        if session.missed or session.kind in NOT_RUN:
            continue
        day = session.day.toordinal()
        long_s, long_drop_m = _longest(hours, day), _longest(drops, day)
        if day > hours_from and 0.0 < HOURS_GROWTH * max(long_s, HOURS_MATTER_S) < run.duration_s:
            text = message(HOURS_OVER, Quantity(run.duration_s, "s"), Quantity(long_s, "s"))
            yield _check(project, HOURS, State.STRAINS, text, session)
        if day > drops_from and DROP_GROWTH * max(long_drop_m, DROP_MATTERS_M) < run.drop_m:
            text = message(
                DROP_OVER, Quantity(run.drop_m, "height_m"), Quantity(long_drop_m, "height_m")
            )
            yield _check(project, DROP, State.STRAINS, text, session, source=DOWNHILL_SOURCE)
        _push(hours, [(day, run.duration_s)])
        _push(drops, [(day, run.drop_m)])


def _longest(window: deque[tuple[int, float]], day: int) -> float:
    while window and day - window[0][0] > WINDOW_DAYS:
        window.popleft()
    return window[0][1] if window and window[0][0] < day else 0.0


def downhill_checks(project: Project, sessions: Sequence[Session]) -> Iterator[Check]:
    """Yield the spacing of downhill runs and the last one, for a race that drops over 1000 m.

    A tune-up race that drops as much as a downhill run counts as one.
    """
    race = next((s for s in sessions if s.kind is Kind.RACE), None)
    if race is None or race.drop_m <= DOWNHILL_RACE_M:
        return
    runs = [s for s in sessions if not s.missed and _is_downhill(s)]
    if not runs:
        text = message(DOWNHILL_NONE, Quantity(race.drop_m, "height_m"))
        yield _check(project, DOWNHILL, State.BREAKS, text, race, source=DOWNHILL_SOURCE)
        return
    for earlier, later in pairwise(runs):
        gap = (later.day - earlier.day).days
        state = limit_state(gap, DOWNHILL_GAP_DAYS, DOWNHILL_GAP_DAYS + 7)
        text = message(DOWNHILL_GAP, gap)
        yield _check(project, DOWNHILL, state, text, earlier, later, source=DOWNHILL_SOURCE)
    yield _late_dose(project, sessions, race)
    left = (race.day - runs[-1].day).days
    low, high = DOWNHILL_LAST_DAYS
    state = State.HOLDS if low <= left <= high else State.STRAINS
    if left < low - 3:
        state = State.BREAKS
    yield _check(
        project, DOWNHILL, state, message(DOWNHILL_LAST, left), runs[-1], source=DOWNHILL_SOURCE
    )


def _late_dose(project: Project, sessions: Sequence[Session], race: Session) -> Check:
    """Return whether one late session drops a fair part of what the race does (own rule)."""
    low, high = LATE_DOSE_DAYS
    late = [
        s
        for s in sessions
        if s.kind not in NOT_RUN and not s.missed and low <= (race.day - s.day).days <= high
    ]
    most = max(late, key=lambda s: (s.done or s).drop_m, default=None)
    drop_m = 0.0 if most is None else (most.done or most).drop_m
    share = drop_m / race.drop_m
    state = State.HOLDS if share >= LATE_DOSE else State.STRAINS
    text = message(
        DOSE_TEXT,
        Quantity(drop_m, "height_m"),
        Quantity(100.0 * share, "percent"),
        Quantity(race.drop_m, "height_m"),
        Quantity(100.0 * LATE_DOSE, "percent"),
    )
    about = race if most is None else most
    return _check(project, LATE_DROP, state, text, about, source=DOWNHILL_SOURCE)


def _is_downhill(session: Session) -> bool:
    return session.kind is Kind.DOWNHILL or (
        session.kind is Kind.TUNE_UP and session.drop_m >= 500.0
    )


def tune_up_checks(project: Project, sessions: Sequence[Session]) -> Iterator[Check]:
    """Yield, for every tune-up race, its distance in time from the race, its length and the days
    after it.
    """
    for n, session in enumerate(sessions):
        if session.kind is Kind.TUNE_UP and not session.missed:
            yield _spacing(project, session)
            yield _length(project, session)
            yield _after(project, session, sessions[n + 1 :])


def _spacing(project: Project, session: Session) -> Check:
    weeks = (project.race.day - session.day).days / 7.0
    least = 3 if session.duration_s <= LONGEST_STRENUOUS_H * 3600 else 4
    state = State.HOLDS if weeks >= least else State.STRAINS
    if weeks < least - 1:
        state = State.BREAKS
    text = message(TUNE_UP_SPACE, (project.race.day - session.day).days, 7 * least)
    return _check(project, TUNE_UP, state, text, session)


def _length(project: Project, session: Session) -> Check:
    share = 100.0 * session.duration_s / project.race.goal_s
    text = message(TUNE_UP_LENGTH, Quantity(session.duration_s, "s"), Quantity(share, "percent"))
    return _check(project, TUNE_UP, limit_state(share, 50.0, 60.0), text, session)


def _after(project: Project, session: Session, later: Sequence[Session]) -> Check:
    easy = easy_days_after(session.duration_s)
    until = session.day + timedelta(days=easy)
    hard = next((s for s in later if _is_heavy(s) and not s.missed and s.day <= until), None)
    if hard is None:
        return _check(project, TUNE_UP, State.HOLDS, message(TUNE_UP_EASY, easy), session)
    days = (hard.day - session.day).days
    state = State.BREAKS if days <= NEVER_HARD_DAYS else State.STRAINS
    return _check(project, TUNE_UP, state, message(TUNE_UP_HARD, days, easy), session, hard)


SINGLE_HOLDS = QT_TRANSLATE_NOOP(
    "Checks", "{0} is within 10 % of the longest run of the 30 days before, {1}."
)
SINGLE_OVER = QT_TRANSLATE_NOOP(
    "Checks", "{0} is {2} longer than any run of the 30 days before ({1}); the limit is 10 %."
)
HOURS_OVER = QT_TRANSLATE_NOOP(
    "Checks", "{0} on feet is over 20 % more than any long run of the 30 days before ({1})."
)
DROP_OVER = QT_TRANSLATE_NOOP(
    "Checks", "A drop of {0} is over a quarter more than any of the 30 days before ({1})."
)
DOSE_TEXT = QT_TRANSLATE_NOOP(
    "Checks",
    "The greatest late drop is {0}, {1} of the race's {2}; aim for one session of {3}.",
)
HARD_SAME = QT_TRANSLATE_NOOP("Checks", "Two hard sessions fall on one day.")
HARD_MEET = QT_TRANSLATE_NOOP("Checks", "Two hard days meet; put an easy day between them.")
SAME_DAY, NEXT_DAY = message(HARD_SAME), message(HARD_MEET)
HARD_APART = QT_TRANSLATE_NOOP("Checks", "No two hard days meet.")
DOWNHILL_NONE = QT_TRANSLATE_NOOP(
    "Checks", "The race drops {0} and there is no downhill run to harden the quads."
)
DOWNHILL_GAP = QT_TRANSLATE_NOOP(
    "Checks", "{0} days lie between two downhill runs; up to 21 keep the legs used to them."
)
DOWNHILL_LAST = QT_TRANSLATE_NOOP(
    "Checks", "The last downhill run is {0} days before the race; put it 10 to 21 days before."
)
TUNE_UP_SPACE = QT_TRANSLATE_NOOP(
    "Checks", "The tune-up race is {0} days before the race; leave at least {1}."
)
TUNE_UP_LENGTH = QT_TRANSLATE_NOOP(
    "Checks", "The tune-up race of {0} is {1} of the goal time; choose one of up to half."
)
TUNE_UP_EASY = QT_TRANSLATE_NOOP(
    "Checks", "Nothing hard comes in the {0} days after the tune-up race."
)
TUNE_UP_HARD = QT_TRANSLATE_NOOP(
    "Checks", "A hard day comes {0} days after the tune-up race; keep {1} days easy."
)
