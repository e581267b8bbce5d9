"""Mending a block after missed days: fewest changes, nothing made up for."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta

from msgspec.structs import replace

from ultraplanner_gui.engine.block_request import BlockRequest
from ultraplanner_gui.engine.block_solver import End, Limits, solve
from ultraplanner_gui.engine.repair_fates import STEP_S, Mend, RepairModel, metres_of
from ultraplanner_gui.engine.repair_model import repair_model, too_long
from ultraplanner_gui.engine.repair_request import (
    Absence,
    Cause,
    Change,
    Choice,
    Cost,
    Repair,
    RepairRequest,
)
from ultraplanner_gui.engine.repair_rules import (
    AS_NEW_DAYS,
    LATE_DAYS,
    LATE_WEEKS,
    Resumption,
    resumption,
)
from ultraplanner_gui.engine.repair_weeks import LOW_SHARE, planned_volumes
from ultraplanner_gui.engine.runway import LEAST_RUN_M, LEAST_WEEK_M
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.plan.block import Block, Kind, week_start, weeks_to_go
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, PlanError, Quantity, message
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.training import WINDOW_DAYS, longest_before, within_ten_percent

NODES = 5000
TIME_S = 1.1
CUT_S = 0.2
GAP = 0.01
#: Less than five minutes of one run: no change more or less can hide in it.
SLACK = 4.9
MOST_LOADS = 4
ANEW_DAYS = 22
#: The last long run is the longest of these days: every other one is a shorter one (own choice).
LAST_LONG_DAYS = 21
BREACH_M = 10.0

__all__ = ["Absence", "Cause", "Choice", "Repair", "RepairRequest", "repair_block"]


def repair_block(block: Block, request: RepairRequest, time_s: float = TIME_S) -> Repair:
    """Return ways to mend *block* after the absence; takes seconds, so call it off the GUI thread.

    Each way is searched for *time_s* at most; what was not proven by then says so.

    Refuses with a sentence where running must not be planned: fever, an injury not cleared.
    Raises PlanError if the days missed are not within the block.
    """
    _check(block, request)
    absence = request.absence
    if absence.has_red_flag:
        return Repair(refusal=message(REST_AND_ASK))
    if absence.cause is Cause.INJURY and not absence.is_cleared:
        return Repair(refusal=message(NOT_CLEARED))
    return Repair(_choices(_unmarked(block, absence), request, time_s), tuple(_advice(request)))


def _check(block: Block, request: RepairRequest) -> None:
    absence = request.absence
    if absence.last_day < absence.first_day:
        raise PlanError(
            QT_TRANSLATE_NOOP("Repair", "The last day missed lies before the first; swap them.")
        )
    if not block.sessions or not any(s.kind is Kind.RACE for s in block.sessions):
        raise PlanError(QT_TRANSLATE_NOOP("Repair", "There is no build-up yet; build one first."))
    first, last = block.sessions[0].day, request.built.race_day
    if absence.first_day < first or absence.last_day >= last:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Repair", "The days missed must lie in the build-up, before the race."
            )
        )


def _advice(request: RepairRequest) -> Iterator[Message]:
    absence, row = request.absence, resumption(request.absence)
    yield message(NO_MAKING_UP)
    if row.easy_days[0]:
        low, high = row.easy_share[1], row.easy_share[0]
        yield message(
            EASY_FIRST, row.easy_days[0], Quantity(low, "percent"), Quantity(high, "percent")
        )
    if row.yardstick < 100:
        yield message(YARDSTICK, Quantity(row.yardstick, "percent"))
    if absence.cause is Cause.ILLNESS:
        yield message(AFTER_ILLNESS)
    if absence.cause is Cause.INJURY:
        yield message(AFTER_INJURY)
    left = (request.built.race_day - absence.last_day).days // 7
    if absence.days > AS_NEW_DAYS or (absence.days >= LATE_DAYS and left < LATE_WEEKS):
        yield message(LATER_RACE, absence.days, left)


def _unmarked(block: Block, absence: Absence) -> Block:
    """Return *block* as it was planned on the days of *absence*, whatever is marked by now."""
    sessions = tuple(
        replace(s, missed=False) if absence.first_day <= s.day <= absence.last_day else s
        for s in block.sessions
    )
    return replace(block, sessions=sessions)


def with_missed(block: Block, absence: Absence) -> Block:
    """Return *block* with the open sessions on the days of *absence* marked missed."""
    sessions = tuple(
        replace(s, missed=True)
        if s.is_open and absence.first_day <= s.day <= absence.last_day and s.kind is not Kind.RACE
        else s
        for s in block.sessions
    )
    return replace(block, sessions=sessions)


class _Way(Value, frozen=True):
    """One way to mend: its words, whether gentler, the cutback released, notes it needs."""

    name: str
    why: str
    is_gentle: bool = False
    released: int | None = None
    notes: tuple[Message, ...] = ()


def _choices(block: Block, request: RepairRequest, time_s: float) -> tuple[Choice, ...]:
    marked = with_missed(block, request.absence)
    ways = [_Way(KEEP, KEEP_WHY)]
    released = _releasable(marked, block, request)
    if released is not None:
        to_go, loads = released
        notes = (message(MANY_LOADS, loads),) if loads >= MOST_LOADS else ()
        ways.append(_Way(RELEASE, RELEASE_WHY, False, to_go, notes))
    ways.append(_Way(GENTLE, GENTLE_WHY, is_gentle=True))
    choices: list[Choice] = []
    for way in ways:
        choice = _choice(way, _mend(marked, block, request, way), request, time_s)
        if choice is not None and all(_is_worth(way, choice, c) for c in choices):
            choices.append(choice)
    choices.sort(key=lambda c: (c.kinds_changed, len(c.changes)))
    return tuple(choices)


def _is_worth(way: _Way, choice: Choice, other: Choice) -> bool:
    """Return whether *choice* gives something that *other* does not."""
    if way.released is None:
        return choice.block.sessions != other.block.sessions
    mine, theirs = choice.cost, other.cost
    return (
        len(choice.changes) < len(other.changes)
        or mine.peak_m < theirs.peak_m
        or mine.longest_m < theirs.longest_m
        or mine.total_m < theirs.total_m
    )


def _choice(way: _Way, mend: Mend, request: RepairRequest, time_s: float) -> Choice | None:
    model = repair_model(mend)
    found = solve(model.rows, Limits(NODES, time_s, slack=SLACK))
    if not found.values:
        return None
    mended = model.mended(found.values)
    # Few of the shorter runs ever come near the rule; those that do are cut to it afterwards.
    watched: frozenset[str] = frozenset()
    while new := too_long(mend, mended) - watched:
        watched |= new
        model = repair_model(mend, watched)
        _no_more_than(model, mended)
        found = replace(solve(model.rows, Limits(NODES, CUT_S, GAP)), end=End.NODES)
        if not found.values:
            return None
        mended = model.mended(found.values)
    over = max((found.values[c] for c in model.breaches), default=0.0)
    notes = list(way.notes)
    if over > BREACH_M:
        notes.append(message(STILL_OVER, Quantity(over, "m")))
    notes.extend(_stays_far(mend, mended))
    if mend.starts_anew:
        notes.append(message(STARTS_ANEW, Quantity(mend.long_m, "m")))
    return Choice(
        message(way.name),
        message(way.why),
        mended,
        _changes(mend.block, mended),
        _cost(mend, mended, request.built),
        found.end is End.PROVEN,
        tuple(notes),
    )


def _no_more_than(model: RepairModel, mended: Block) -> None:
    """Let nothing in *model* be more than it is in *mended*."""
    rows, there = model.rows, {s.key: s for s in mended.sessions}
    for key, fate in model.fates.items():
        after = there.get(key)
        steps = 0.0 if after is None else float(round(after.duration_s / STEP_S))
        keeps = after is not None and after.kind is fate.session.kind
        rows.most[fate.keep] = min(rows.most[fate.keep], float(keeps))
        if keeps:
            rows.most[fate.kept] = min(rows.most[fate.kept], steps)
        elif fate.easy is not None and fate.easy_steps is not None and after is not None:
            rows.most[fate.easy_steps] = min(rows.most[fate.easy_steps], steps)


def _stays_far(mend: Mend, mended: Block) -> Iterator[Message]:
    """Yield the races and locked runs ahead that the single-run rule would not allow."""
    runs = [(s.day.toordinal(), float(metres_of(s))) for s in mended.sessions if metres_of(s)]
    for session in mended.sessions:
        at, metres = session.day.toordinal(), metres_of(session)
        stays = at >= mend.free_from and not mend.is_free(session)
        behind = longest_before(runs, at)
        if metres and stays and not within_ten_percent(metres, behind):
            yield message(STAYS_FAR, Quantity(metres, "m"), Quantity(behind, "m"))


def _changes(before: Block, after: Block) -> tuple[Change, ...]:
    there = {s.key: s for s in after.sessions}
    return tuple(
        Change(s.key, s, there.get(s.key)) for s in before.sessions if there.get(s.key) != s
    )


def _cost(mend: Mend, mended: Block, built: BlockRequest) -> Cost:
    was, now = planned_volumes(mend.planned, mend), planned_volumes(mended, mend)
    loads = [
        n for n in was if n >= mend.block.taper_weeks and n not in mend.planned.cutbacks and was[n]
    ]
    longest = (
        max((metres_of(s) for s in b.sessions if s.day < built.race_day), default=0)
        for b in (mend.planned, mended)
    )
    longest_was, longest_now = longest
    return Cost(
        float(max(was.values(), default=0) - max(now.values(), default=0)),
        float(longest_was - longest_now),
        float(sum(was.values()) - sum(now.values())),
        sum(now.get(n, 0) < LOW_SHARE * was[n] for n in loads),
    )


def _mend(marked: Block, planned: Block, request: RepairRequest, way: _Way) -> Mend:
    built, absence = request.built, request.absence
    row = resumption(absence)
    gentle = int(way.is_gentle)
    returned = absence.last_day.toordinal() + 1
    free_from = max(returned, request.today.toordinal())
    roles = _roles(marked)
    if way.released is not None:
        roles[way.released] = Role.LOADING
    race_week = week_start(built.race_day, built.first_weekday)
    mend = Mend(
        marked,
        planned,
        built.first_weekday,
        built.runner.easy_mps,
        roles,
        way.released,
        returned,
        free_from,
        returned + row.hard_after[gentle],
        frozenset(),
        row.easy_share[gentle],
        _yardstick(marked, request, row),
        100 if way.is_gentle else 110,
        _long(marked, request, row),
        (built.race_day - race_week).days + 7 * (marked.taper_weeks - 1),
        round(max(LEAST_WEEK_M, built.runner.weekly_m)),
        row.least_days >= ANEW_DAYS,
    )
    free = [s for s in marked.sessions if mend.is_free(s)]
    days = sorted({s.day for s in free})[: row.easy_days[gentle]]
    return replace(mend, eased=frozenset(s.key for s in free if s.day in days))


def _roles(block: Block) -> dict[int, Role]:
    roles: dict[int, Role] = {}
    for to_go in range(block.first_week + 2):
        role = Role.CUTBACK if to_go in block.cutbacks else Role.LOADING
        if to_go < block.taper_weeks:
            role = Role.TAPER if to_go else Role.RACE
        roles[to_go] = role
    return roles


def _yardstick(marked: Block, request: RepairRequest, row: Resumption) -> int:
    """Return what the first week after the return is measured by."""
    reference = _loaded(marked, request)[0]
    return reference * row.yardstick // 100


def _loaded(marked: Block, request: RepairRequest) -> tuple[int, int | None]:
    """Return the last loading week's metres before the return, and the week left low by the
    absence, by its number to go; None if there is none.
    """
    built = request.built
    volumes: dict[int, int] = {}
    broken: set[int] = set()
    for session in marked.sessions:
        to_go = weeks_to_go(session.day, built.race_day, built.first_weekday)
        volumes[to_go] = volumes.get(to_go, 0) + metres_of(session)
        if session.missed and request.absence.first_day <= session.day:
            broken.add(to_go)
    back = weeks_to_go(
        request.absence.last_day + timedelta(days=1), built.race_day, built.first_weekday
    )
    reference = round(max(LEAST_WEEK_M, built.runner.weekly_m))
    low: int | None = None
    for to_go in range(marked.first_week, marked.taper_weeks - 1, -1):
        if to_go in marked.cutbacks:
            continue
        metres = volumes.get(to_go, 0)
        if to_go in broken and metres < LOW_SHARE * reference:
            low = to_go
        elif metres and to_go > back:
            reference = metres
    return reference, low


def _long(marked: Block, request: RepairRequest, row: Resumption) -> int:
    """Return the run that the long runs after the return grow from."""
    last_day = request.absence.last_day.toordinal() + 1
    behind = [
        (s.day.toordinal(), metres_of(s), s.kind)
        for s in marked.sessions
        if s.day.toordinal() < last_day and metres_of(s)
    ]
    usual = max(round(LEAST_RUN_M), round(request.built.runner.longest_m))
    recent = [metres for at, metres, _ in behind if last_day - at <= WINDOW_DAYS]
    if last_day - marked.sessions[0].day.toordinal() <= WINDOW_DAYS:
        recent.append(usual)
    if row.long == 100 and recent:
        return max(recent)
    away = request.absence.first_day.toordinal()
    longs = [metres for at, metres, kind in behind if kind.is_long and away - at <= LAST_LONG_DAYS]
    last = max(longs, default=max(recent, default=usual))
    kept = last * row.long // 100
    return max(round(LEAST_RUN_M), min([kept, *([max(recent)] if recent else [])]))


def _releasable(marked: Block, planned: Block, request: RepairRequest) -> tuple[int, int] | None:
    """Return the next cutback if the low week may stand in for it, and how many loading weeks in
    a row there are then.
    """
    _, low = _loaded(marked, request)
    later = [c for c in planned.cutbacks if low is not None and c < low]
    if low is None or not later:
        return None
    released = max(later)
    then = max((c for c in later if c < released), default=planned.taper_weeks - 1)
    loads = low - then - 1
    back = weeks_to_go(
        request.absence.last_day + timedelta(days=1),
        request.built.race_day,
        request.built.first_weekday,
    )
    if loads > MOST_LOADS or released > back:
        return None
    return released, loads


KEEP = QT_TRANSLATE_NOOP("Repair", "Keep the plan")
KEEP_WHY = QT_TRANSLATE_NOOP(
    "Repair", "Cutbacks stay where they are; what the missed days no longer carry gets shorter."
)
RELEASE = QT_TRANSLATE_NOOP("Repair", "The missed week is the cutback")
RELEASE_WHY = QT_TRANSLATE_NOOP(
    "Repair", "The next cutback becomes a loading week, since the missed days were rest enough."
)
GENTLE = QT_TRANSLATE_NOOP("Repair", "Come back gently")
GENTLE_WHY = QT_TRANSLATE_NOOP(
    "Repair", "More easy days at first, and no growth in the first loading week after them."
)
REST_AND_ASK = QT_TRANSLATE_NOOP(
    "Repair",
    "With fever, chest symptoms or aches all over: rest, and ask a doctor. Plan on once you have "
    "been free of them for one to three days.",
)
NOT_CLEARED = QT_TRANSLATE_NOOP(
    "Repair",
    "No return from an injury is worked out here. Ask whoever treats it whether you may run; with "
    "their clearance the block is mended.",
)
NO_MAKING_UP = QT_TRANSLATE_NOOP(
    "Repair", "What was missed is not made up for: later weeks get no longer by it."
)
EASY_FIRST = QT_TRANSLATE_NOOP(
    "Repair", "The first {0} runs are easy, {1} to {2} of what was planned (common practice)."
)
YARDSTICK = QT_TRANSLATE_NOOP(
    "Repair", "Volume grows on from {0} of the last loading week (common practice, no source)."
)
AFTER_ILLNESS = QT_TRANSLATE_NOOP(
    "Repair",
    "After an illness, start once you have been free of fever, chest symptoms and aches for one to "
    "three days; stop and ask if they come back.",
)
AFTER_INJURY = QT_TRANSLATE_NOOP(
    "Repair", "Pain that grows while running, or is worse next morning: stop, and ask again."
)
LATER_RACE = QT_TRANSLATE_NOOP(
    "Repair",
    "{0} days off with {1} weeks left is a lot: think of a later race, a shorter one or a slower "
    "goal.",
)
MANY_LOADS = QT_TRANSLATE_NOOP("Repair", "There are then {0} loading weeks in a row.")
STILL_OVER = QT_TRANSLATE_NOOP(
    "Repair", "A week stays {0} over its limit: what is locked or done already holds that much."
)
STAYS_FAR = QT_TRANSLATE_NOOP(
    "Repair",
    "A race or locked run of {0} stays over 10 % longer than any run of the 30 days before ({1}).",
)
STARTS_ANEW = QT_TRANSLATE_NOOP(
    "Repair",
    "After so long a break no run of the last 30 days counts: long runs grow from {0}, a share of "
    "the last ones (own rule).",
)
