"""What may become of the sessions of a block that is mended: kept, shorter, easy or gone.

Never longer: missed volume is not made up for. Only a cutback that a missed week stands in for may
grow to a loading week.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from msgspec.structs import replace

from ultraplanner_gui.engine.block_rows import Rows, Term
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.plan.block import HARD_KINDS, Block, Kind, Session, weeks_to_go
from ultraplanner_gui.plan.value import Value

STEP_S = 300
LEAST_STEPS = 4
ROUND_M = 10
# All that follow are own choices.
#: How far a released cutback may grow, and how long and how far a run made easy may be.
MOST_GROWTH = 1.45
EASY_LIMIT_S = 130 * 60.0
EASY_SHARE = 0.8
#: What a change costs: kind or day, minutes at all, each minute.
KIND_CHANGED = 1000.0
MINUTES_CHANGED = 60.0
MINUTE = 1.0
#: Many small cuts rather than one that leaves nothing of a session.
LARGE_MINUTE = 3.0
LITTLE_CUT = 0.25
#: Long runs are what the block is built on: other runs give way before them.
LONG_WEIGHT = 4.0
#: A run cut to less than half is no longer what it was.
LEAST_SHARE = 0.5
HEAVY = HARD_KINDS | {Kind.SECOND_LONG}
LONG_KINDS = (Kind.LONG, Kind.REHEARSAL, Kind.SECOND_LONG)


class Mend(Value, frozen=True):
    """What a repair starts from and keeps to.

    `block` has the missed days marked, `planned` is the block before; `start_m` the usual week
    from which it was built. `roles` are the roles of the
    weeks by number to go, `released` a cutback that may grow. From `free_from` (a day's number) on
    sessions may change. Nothing heavy comes before `hard_from`; sessions in `eased` are easy and
    at most `eased_share` hundredths long. `yardstick_m` is what the first weeks after the return
    are measured by, `first_growth` their ceiling in hundredths, `long_m` what long runs grow from;
    where the block `starts_anew`, as if it had been run the day before the return.
    """

    block: Block
    planned: Block
    first_weekday: int
    easy_mps: float
    roles: Mapping[int, Role]
    released: int | None
    returned: int
    free_from: int
    hard_from: int
    eased: frozenset[str]
    eased_share: int
    yardstick_m: int
    first_growth: int
    long_m: int
    taper_days: int
    start_m: int
    starts_anew: bool = False

    @property
    def race(self) -> Session:
        """The race."""
        return next(s for s in self.block.sessions if s.kind is Kind.RACE)

    def to_go(self, session: Session) -> int:
        """Return the number to go of the week of *session*."""
        return weeks_to_go(session.day, self.race.day, self.first_weekday)

    def is_free(self, session: Session) -> bool:
        """Return whether *session* may be changed."""
        ahead = session.day.toordinal() >= self.free_from and session.is_open
        races = session.kind in (Kind.RACE, Kind.TUNE_UP)
        return ahead and session.kind.is_run and not session.locked and not races

    def is_too_soon(self, session: Session) -> bool:
        """Return whether *session* is strength work before anything hard may come again."""
        at = session.day.toordinal()
        early = self.free_from <= at < self.hard_from
        return early and session.kind is Kind.STRENGTH and session.is_open and not session.locked


class Fate(Value, frozen=True):
    """What may become of a session: the columns of keeping it, of its steps, of running easy."""

    session: Session
    step_m: int
    offset_m: int
    steps: int
    keep: int
    kept: int
    easy: int | None
    easy_steps: int | None
    easy_m: int

    @property
    def metres(self) -> list[Term]:
        """The metres that are run, as terms."""
        terms = [(self.kept, float(self.step_m)), (self.keep, float(self.offset_m))]
        if self.easy_steps is not None:
            terms.append((self.easy_steps, float(self.easy_m)))
        return terms


@dataclass(slots=True)
class RepairModel:
    """The programme of a repair and where to find its sessions in it.

    `breaches` hold by how much a rule gives way, `rests` are loading weeks that the return makes
    so easy that they count as cutbacks.
    """

    mend: Mend
    rows: Rows = field(default_factory=Rows)
    fates: dict[str, Fate] = field(default_factory=dict)
    breaches: list[int] = field(default_factory=list)
    rests: list[int] = field(default_factory=list)

    def mended(self, values: Sequence[float]) -> Block:
        """Return the block in *values*."""
        sessions = []
        for session in self.mend.block.sessions:
            fate = self.fates.get(session.key)
            if self.mend.is_too_soon(session):
                continue
            after = session if fate is None else _after(fate, values)
            if after is not None:
                sessions.append(after)
        cutbacks = {c for c in self.mend.block.cutbacks if c != self.mend.released}
        in_order = tuple(sorted(cutbacks.union(self.rests), reverse=True))
        return replace(self.mend.block, sessions=tuple(sessions), cutbacks=in_order)


def _after(fate: Fate, values: Sequence[float]) -> Session | None:
    session = fate.session
    if values[fate.keep] > 0.5:
        steps = round(values[fate.kept])
        if steps == fate.steps:
            return session
        metres = steps * fate.step_m + fate.offset_m
        return _resized(session, session.kind, metres, steps, 1.0)
    if fate.easy_steps is not None and fate.easy is not None and values[fate.easy] > 0.5:
        steps = round(values[fate.easy_steps])
        return _resized(session, Kind.EASY, steps * fate.easy_m, steps, 0.5)
    return None


def _resized(session: Session, kind: Kind, metres: int, steps: int, climb: float) -> Session:
    share = climb * metres / session.distance_m if session.distance_m else 0.0
    time_s = float(steps * STEP_S)
    return replace(
        session,
        kind=kind,
        distance_m=float(metres),
        duration_s=time_s,
        climb_m=session.climb_m * share // 10 * 10,
        drop_m=session.drop_m * share // 10 * 10,
        effort=session.effort if kind is session.kind else min(session.effort, 3),
        carb_g_per_h=session.carb_g_per_h if time_s >= 3600.0 else 0.0,
        repeats=(),
    )


def metres_of(session: Session) -> int:
    """Return the whole metres that count as run or planned; the race itself is none."""
    if session.kind is Kind.RACE or not session.kind.is_run:
        return 0
    return round(session.actual.distance_m)


def fate_of(model: RepairModel, session: Session, earlier: float) -> Fate:
    """Return what may become of *session*; *earlier* is what its coming early adds to the cost."""
    mend, rows = model.mend, model.rows
    steps = max(1, round(session.duration_s / STEP_S))
    step_m = int(session.distance_m / steps / ROUND_M) * ROUND_M
    offset_m = round(session.distance_m) - steps * step_m
    heavy = session.kind in HEAVY
    eased = session.key in mend.eased
    barred = heavy and (eased or session.day.toordinal() < mend.hard_from)
    most = steps * mend.eased_share // 100 if eased else steps
    grows = mend.to_go(session) == mend.released and not eased
    if grows:
        most = int(steps * MOST_GROWTH)
    keep = rows.column(0.0, 0.0 if barred else 1.0, -KIND_CHANGED - earlier, whole=True)
    kept = rows.column(0.0, float(max(most, 1)), whole=True)
    least = _least(session, steps, most)
    rows.row([(kept, 1.0), (keep, -float(least))], least=0.0)
    rows.row([(kept, 1.0), (keep, -float(max(most, 1)))], most=0.0)
    rows.constant += KIND_CHANGED
    terms = [(kept, 1.0), (keep, -float(steps))]
    changed = rows.choice(MINUTES_CHANGED + earlier)
    rows.row([*terms, (changed, float(steps - least))], least=0.0)
    rows.row([*terms, (changed, -float(max(most - steps, 0)))], most=0.0)
    minutes = STEP_S / 60.0
    weight = LONG_WEIGHT * minutes if session.kind in LONG_KINDS else minutes
    size = rows.column(0.0, LITTLE_CUT * steps, MINUTE * weight)
    large = rows.column(cost=LARGE_MINUTE * weight)
    rows.row([*terms, (size, 1.0), (large, 1.0)], least=0.0)
    rows.row([*terms, (size, -1.0), (large, -1.0)], most=0.0)
    if not heavy:
        return Fate(session, step_m, offset_m, steps, keep, kept, None, None, 0)
    return _easy_too(
        model, Fate(session, step_m, offset_m, steps, keep, kept, None, None, 0), eased
    )


def _least(session: Session, steps: int, most: int) -> int:
    """Return the fewest steps a session may be cut to and still be what it is."""
    share = 0.0 if session.kind in LONG_KINDS else LEAST_SHARE
    return max(1, min(max(LEAST_STEPS, round(share * steps)), steps, most))


def _easy_too(model: RepairModel, fate: Fate, eased: bool) -> Fate:
    """Add running easy instead: no further and no longer than was planned."""
    mend, rows = model.mend, model.rows
    per_step = int(mend.easy_mps * STEP_S / ROUND_M) * ROUND_M
    most_m = fate.session.distance_m
    if fate.session.kind in LONG_KINDS:
        most_m *= EASY_SHARE
    most = min(int(most_m // per_step), fate.steps, int(EASY_LIMIT_S // STEP_S))
    if eased:
        most = most * mend.eased_share // 100
    if most < LEAST_STEPS:
        return fate
    # An easy run is dropped last: it saves nothing but minutes, and those count.
    easy = rows.choice(-MINUTES_CHANGED)
    steps = rows.column(0.0, float(most), -MINUTE * STEP_S / 60.0, whole=True)
    rows.row([(steps, 1.0), (easy, -float(LEAST_STEPS))], least=0.0)
    rows.row([(steps, 1.0), (easy, -float(most))], most=0.0)
    rows.row([(fate.keep, 1.0), (easy, 1.0)], most=1.0)
    return replace(fate, easy=easy, easy_steps=steps, easy_m=per_step)
