"""A block mended with the fewest changes, as a mixed-integer programme."""

from __future__ import annotations

from collections.abc import Container, Iterable, Sequence

from ultraplanner_gui.engine.repair_fates import (
    LONG_KINDS,
    MOST_GROWTH,
    Fate,
    Mend,
    RepairModel,
    fate_of,
    metres_of,
)
from ultraplanner_gui.engine.repair_weeks import keep_taper, keep_weeks
from ultraplanner_gui.plan.block import Block, Kind, Session
from ultraplanner_gui.science.training import WINDOW_DAYS

# Own choices.
#: What a metre costs that a race or locked run is too long for.
RACE_FAR = 0.1
#: What was run before the break counts as recent down to this share.
RECENT_SHARE = 0.9
#: So many earlier runs may be the longest that one is held against.
SOURCES = 4
EARLIER = 0.01
#: A shorter run of the week is left out of account below this share of the long run.
COMPARED_SHARE = 0.3


def repair_model(mend: Mend, watched: frozenset[str] = frozenset()) -> RepairModel:
    """Return the programme of *mend*.

    Long runs, and the sessions *watched*, are held against the runs of the 30 days before them.
    """
    model = RepairModel(mend)
    free = [s for s in mend.block.sessions if mend.is_free(s)]
    for number, session in enumerate(free):
        model.fates[session.key] = fate_of(model, session, EARLIER * (len(free) - number))
    _seconds(model)
    _longest_stay(model)
    volumes = keep_weeks(model)
    keep_taper(model, volumes)
    _single_runs(model, watched)
    _reach_for_races(model)
    return model


def too_long(mend: Mend, mended: Block) -> frozenset[str]:
    """Return the sessions of *mended* that may be changed and are longer than they may be."""
    keys = set()
    sessions = [s for s in mended.sessions if metres_of(s)]
    free = {s.key for s in mend.block.sessions if mend.is_free(s)}
    planned = {s.key: s for s in mend.planned.sessions}
    for session in sessions:
        if session.key not in free:
            continue
        at = session.day.toordinal()
        behind = fixed_longest(mend, free, at)
        limit = max(behind, _longest((s for s in sessions if s.key in free), at))
        excess = _excess(mend, planned[session.key], planned.values())
        if 10 * metres_of(session) > 11 * limit + excess:
            keys.add(session.key)
    return frozenset(keys)


def _excess(mend: Mend, session: Session, planned: Iterable[Session]) -> float:
    """Return by how many tenths of metres *session* was longer than it might be from the start."""
    if mend.to_go(session) == mend.released:
        return 0.0
    return max(0.0, 10.0 * metres_of(session) - 11.0 * _longest(planned, session.day.toordinal()))


def _seconds(model: RepairModel) -> None:
    """Keep a second long run only after the long one before it."""
    for fate in model.fates.values():
        if fate.session.kind is not Kind.SECOND_LONG:
            continue
        before = [
            f
            for f in model.fates.values()
            if (fate.session.day - f.session.day).days == 1 and f.session.kind.is_long
        ]
        if before:
            model.rows.row([(fate.keep, 1.0), (before[0].keep, -1.0)], most=0.0)


def _longest_stay(model: RepairModel) -> None:
    """Let a long run that is kept be no shorter than any other run of its week that was shorter."""
    mend, fates = model.mend, list(model.fates.values())
    for long in fates:
        if long.session.kind not in (Kind.LONG, Kind.REHEARSAL):
            continue
        for other in fates:
            same = mend.to_go(other.session) == mend.to_go(long.session)
            far = other.session.distance_m
            if same and COMPARED_SHARE * long.session.distance_m < far < long.session.distance_m:
                most = float(round(far))
                terms = [*other.metres, *((c, -f) for c, f in long.metres), (long.keep, most)]
                model.rows.row(terms, most=most)


def _single_runs(model: RepairModel, watched: frozenset[str]) -> None:
    """Let no run be more than 10 % longer than the longest of the 30 days before it."""
    mend = model.mend
    fates = list(model.fates.values())
    planned = {s.key: s for s in mend.planned.sessions}
    for n, fate in enumerate(fates):
        at = fate.session.day.toordinal()
        fixed = fixed_longest(mend, model.fates, at)
        excess = _excess(mend, planned[fate.session.key], planned.values())
        if not (fate.session.kind in LONG_KINDS or fate.session.key in watched):
            # While it is recent, shorter runs go by what was run before the break: no choices then.
            if fixed >= RECENT_SHARE * mend.long_m:
                own = [(c, 10.0 * f) for c, f in fate.metres]
                model.rows.row(own, most=11.0 * fixed + excess)
            continue
        sources = [f for f in fates[:n] if 1 <= at - f.session.day.toordinal() <= WINDOW_DAYS]
        sources.sort(key=lambda f: (-f.session.distance_m, -f.session.day.toordinal()))
        _within(model, fate, sources[:SOURCES], fixed, excess)


def _reach_for_races(model: RepairModel) -> None:
    """Charge what a race or locked run ahead is too long for, by the long runs before it."""
    mend, rows, fates = model.mend, model.rows, model.fates
    for session in mend.block.sessions:
        at, metres = session.day.toordinal(), metres_of(session)
        if session.key in fates or at < mend.free_from or not metres:
            continue
        fixed = fixed_longest(mend, fates, at)
        sources = [f for f in fates.values() if 1 <= at - f.session.day.toordinal() <= WINDOW_DAYS]
        sources.sort(key=lambda f: (-f.session.distance_m, -f.session.day.toordinal()))
        if 10 * metres <= 11 * fixed or not sources:
            continue
        over = rows.column(cost=RACE_FAR)
        choices = [rows.choice() for _ in sources[:SOURCES]]
        for choice, source in zip(choices, sources, strict=False):
            reach = [(c, 11.0 * f) for c, f in source.metres]
            rows.row([*reach, (over, 10.0), (choice, -10.0 * metres)], least=0.0)
        rows.equal([(choice, 1.0) for choice in choices], 1.0)


def _longest(sessions: Iterable[Session], at: int) -> float:
    return max(
        (metres_of(s) for s in sessions if 1 <= at - s.day.toordinal() <= WINDOW_DAYS),
        default=0.0,
    )


def fixed_longest(mend: Mend, fates: Container[str], at: int) -> float:
    """Return the longest run behind the day *at* that is not to be changed any more."""
    since = [s for s in mend.block.sessions if s.key not in fates]
    after = [s for s in since if s.day.toordinal() >= mend.returned]
    earlier = [s for s in since if s.day.toordinal() < mend.returned]
    behind = _longest(earlier, at)
    if mend.starts_anew and at - mend.returned < WINDOW_DAYS:
        behind = float(mend.long_m)
    else:
        behind = min(behind, float(mend.long_m))
    return max(behind, _longest(after, at))


def _within(
    model: RepairModel, fate: Fate, sources: Sequence[Fate], fixed: float, excess: float
) -> None:
    rows = model.rows
    own = [(c, 10.0 * f) for c, f in fate.metres]
    grown = model.mend.to_go(fate.session) == model.mend.released
    most = 10.0 * round(fate.session.distance_m) * (MOST_GROWTH if grown else 1.0)
    if most <= 11.0 * fixed:
        return
    choices = [rows.choice() for _ in sources]
    for choice, source in zip(choices, sources, strict=True):
        longer = [(c, -11.0 * f) for c, f in source.metres]
        rows.row([*own, *longer, (choice, most)], most=most + excess)
    rest = [*own, *((choice, -most) for choice in choices)]
    rows.row(rest, most=11.0 * fixed + excess)
    if len(choices) > 1:
        rows.row([(choice, 1.0) for choice in choices], most=1.0)
