"""A block mended with the fewest changes, as a mixed-integer programme.

What lies ahead may be kept, made shorter, made easy or dropped, never made longer: missed volume
is not made up for. Only a cutback that a missed week stands in for may grow to a loading week.
"""

from __future__ import annotations

from collections.abc import Container, Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date

from ultraplanner_gui.engine.block_rows import Rows, Term
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.plan.block import HARD_KINDS, Block, Kind, Session, weeks_to_go
from ultraplanner_gui.science.training import WINDOW_DAYS

STEP_S = 300
LEAST_STEPS = 4
ROUND_M = 10
MOST_GROWTH = 1.45
EASY_LIMIT_S = 130 * 60.0
EASY_SHARE = 0.8
# What a change costs (own choice): kind or day, minutes at all, each minute.
KIND_CHANGED = 1000.0
MINUTES_CHANGED = 60.0
MINUTE = 1.0
# Many small cuts rather than one that leaves nothing of a session (own choice).
LARGE_MINUTE = 3.0
LITTLE_CUT = 0.25
# Long runs are what the block is built on: other runs give way before them (own choice).
LONG_WEIGHT = 4.0
RACE_FAR = 0.1
RECENT_SHARE = 0.9
LEAST_SHARE = 0.5
EARLIER = 0.01
BREACH = 20.0
RELEASED_SHARE = 1.05
RELEASED_SHORT = 0.2
SOURCES = 4
LOW_SHARE = 0.8
SHARE, SHARE_OF_FEW, FEW_RUNS = 50, 60, 3
HEAVY = HARD_KINDS | {Kind.SECOND_LONG}
LONG_KINDS = (Kind.LONG, Kind.REHEARSAL, Kind.SECOND_LONG)


@dataclass(frozen=True, slots=True)
class Mend:
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


@dataclass(frozen=True, slots=True)
class Fate:
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


def repair_model(mend: Mend, watched: frozenset[str] = frozenset()) -> RepairModel:
    """Return the programme of *mend*.

    Long runs, and the sessions *watched*, are held against the runs of the 30 days before them.
    """
    model = RepairModel(mend)
    free = [s for s in mend.block.sessions if mend.is_free(s)]
    for number, session in enumerate(free):
        model.fates[session.key] = _fate(model, session, EARLIER * (len(free) - number))
    _seconds(model)
    _longest_stay(model)
    volumes = _weeks(model)
    _taper(model, volumes)
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


def _fate(model: RepairModel, session: Session, earlier: float) -> Fate:
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
            if same and 0.3 * long.session.distance_m < far < long.session.distance_m:
                most = float(round(far))
                terms = [*other.metres, *((c, -f) for c, f in long.metres), (long.keep, most)]
                model.rows.row(terms, most=most)


@dataclass(frozen=True, slots=True)
class _Volume:
    """The volume of a week as terms and a constant."""

    terms: tuple[Term, ...]
    fixed_m: float

    def times(self, factor: float) -> list[Term]:
        return [(c, factor * f) for c, f in self.terms]


def _volumes(model: RepairModel) -> dict[int, _Volume]:
    terms: dict[int, list[Term]] = {}
    fixed: dict[int, float] = {}
    for session in model.mend.block.sessions:
        to_go = model.mend.to_go(session)
        terms.setdefault(to_go, [])
        fate = model.fates.get(session.key)
        if fate is not None:
            terms[to_go].extend(fate.metres)
        else:
            fixed[to_go] = fixed.get(to_go, 0.0) + metres_of(session)
    return {n: _Volume(tuple(t), fixed.get(n, 0.0)) for n, t in terms.items()}


def planned_volumes(block: Block, mend: Mend) -> dict[int, int]:
    """Return the whole metres of every week of *block*."""
    sums: dict[int, int] = {}
    for session in block.sessions:
        to_go = mend.to_go(session)
        sums[to_go] = sums.get(to_go, 0) + metres_of(session)
    return sums


def _weeks(model: RepairModel) -> dict[int, _Volume]:
    """Keep ramp, cutbacks and the share of the long run; return the volume of every week."""
    mend = model.mend
    volumes = _volumes(model)
    before = planned_volumes(mend.planned, mend)
    references = _references(mend, before)
    reference = _Volume((), float(mend.yardstick_m))
    growth = mend.first_growth
    was = mend.yardstick_m
    returned = date.fromordinal(mend.returned)
    first = weeks_to_go(returned, mend.race.day, mend.first_weekday)
    for to_go in range(first, mend.block.taper_weeks - 1, -1):
        volume = volumes.get(to_go, _Volume((), 0.0))
        role = mend.roles.get(to_go, Role.LOADING)
        share = growth if role is Role.LOADING else 80
        usual = 1.1 if role is Role.LOADING else 0.8
        excess = max(0.0, float(before.get(to_go, 0)) - usual * references.get(to_go, 0.0))
        _under(model, volume, reference, share / 100.0, excess)
        if to_go == mend.released:
            least = [*volume.times(1.0), *reference.times(-RELEASED_SHARE)]
            target = RELEASED_SHARE * reference.fixed_m - volume.fixed_m
            model.rows.shortfall(least, target, RELEASED_SHORT)
        if role is Role.LOADING:
            _share(model, to_go)
            most = volume.fixed_m + most_m(model, to_go)
            if sets_yardstick(model, to_go, most, was):
                reference, growth, was = volume, 110, round(most)
            elif not _is_broken(mend, to_go):
                model.rests.append(to_go)
    return volumes | {-1: reference}


def sets_yardstick(model: RepairModel, to_go: int, most: float, before: float) -> bool:
    """Return whether the loading week, of *most* metres at most, measures those after it.

    Not if days were missed in it, or eased after them, and it comes to less than 80 % of *before*.
    """
    mend = model.mend
    if to_go == mend.released:
        return True
    eased = any(mend.to_go(s) == to_go for s in mend.block.sessions if s.key in mend.eased)
    return not (eased or _is_broken(mend, to_go)) or most >= LOW_SHARE * before


def _references(mend: Mend, before: Mapping[int, int]) -> dict[int, float]:
    """Return what each week was measured by before the days were missed."""
    broken = {mend.to_go(s) for s in mend.planned.sessions if s.missed}
    reference = float(mend.start_m)
    found: dict[int, float] = {}
    for to_go in range(mend.planned.first_week, -1, -1):
        found[to_go] = reference
        metres = float(before.get(to_go, 0))
        loads = to_go >= mend.planned.taper_weeks and to_go not in mend.planned.cutbacks
        if loads and metres and not (to_go in broken and metres < LOW_SHARE * reference):
            reference = metres
    return found


def _is_broken(mend: Mend, to_go: int) -> bool:
    return any(s.missed and mend.to_go(s) == to_go for s in mend.block.sessions)


def most_m(model: RepairModel, to_go: int) -> float:
    """Return the most that what may change of a week can come to, as planned at best."""
    most, total = model.rows.most, 0.0
    for fate in model.fates.values():
        if model.mend.to_go(fate.session) == to_go:
            kept = min(most[fate.kept], float(fate.steps)) * fate.step_m + fate.offset_m
            easy = 0.0 if fate.easy_steps is None else most[fate.easy_steps] * fate.easy_m
            total += max(kept * most[fate.keep], easy)
    return total


def _under(
    model: RepairModel, volume: _Volume, reference: _Volume, share: float, excess: float
) -> None:
    """Keep *volume* to *share* of *reference*, or as far above it as it was."""
    if not volume.terms and not volume.fixed_m:
        return
    terms = [*volume.times(10.0), *reference.times(-10.0 * share)]
    if volume.fixed_m:
        over = model.rows.column(cost=BREACH)
        model.breaches.append(over)
        terms.append((over, -10.0))
    most = 10.0 * (share * reference.fixed_m - volume.fixed_m + excess)
    model.rows.row(terms, most=most)


def _share(model: RepairModel, to_go: int) -> None:
    """Keep the long run to its share of a week that nothing was missed in."""
    mend = model.mend
    week = [s for s in mend.block.sessions if mend.to_go(s) == to_go and s.kind.is_run]
    fates = [model.fates[s.key] for s in week if s.key in model.fates]
    longs = [f for f in fates if f.session.kind is Kind.LONG]
    if not longs or len(fates) < len(week):
        return
    share = SHARE_OF_FEW if len(week) <= FEW_RUNS else SHARE
    total = sum(round(s.distance_m) for s in week)
    excess = max(0.0, 100.0 * longs[0].session.distance_m - share * total)
    long_terms = [(c, 100.0 * f) for c, f in longs[0].metres]
    others = [(c, -share * f) for fate in fates for c, f in fate.metres]
    model.rows.row([*long_terms, *others], most=excess)


def _taper(model: RepairModel, volumes: Mapping[int, _Volume]) -> None:
    """Cut the daily mean by 41 % of the last loading week or more."""
    mend = model.mend
    weeks = [volumes[n] for n in range(mend.block.taper_weeks) if n in volumes]
    last, days = volumes[-1], mend.taper_days
    if not weeks or not days:
        return
    before = planned_volumes(mend.planned, mend)
    total = sum(before.get(n, 0) for n in range(mend.block.taper_weeks))
    excess = max(0.0, 700.0 * total - 59.0 * days * _references(mend, before).get(0, 0.0))
    terms = [t for w in weeks for t in w.times(700.0)] + last.times(-59.0 * days)
    most = 59.0 * days * last.fixed_m - 700.0 * sum(w.fixed_m for w in weeks) + excess
    over = model.rows.column(cost=BREACH)
    model.breaches.append(over)
    model.rows.row([*terms, (over, -700.0)], most=most)


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
