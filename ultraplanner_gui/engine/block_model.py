"""A block as a mixed-integer programme: which kind on which day, and how many steps of time."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import pairwise

from ultraplanner_gui.engine.block_rows import Rows, Term
from ultraplanner_gui.engine.block_task import (
    HEAVY_KINDS,
    LONG_KINDS,
    SHARP_KINDS,
    Chosen,
    Day,
    Option,
    Task,
    Week,
)
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.training import WINDOW_DAYS

# What a metre, a session or a rule missed costs; each rank outweighs the ones after it.
BREACH = 1.0
FAR_BREACH = 0.2
PEAK = 0.1
LONG = 0.1
DOWNHILL_MISSING = 120.0
LONG_MISSING = 400.0
SHARP_MISSING = 150.0
PAIR_MISSING = 20.0
CUTBACK_LOW = 0.3
LOW = 0.04
OFF_TARGET = 0.01
OFF_LONG = 0.01
SHARE = 0.008
UNEVEN = 0.001
EARLIER = 1e-4
CONSTANT = 1000.0
# About one step of time: nearer to a target nobody can come in whole steps.
BAND_M = 500.0
WEEK_BAND_M = 1000.0

DOWNHILL_GAP_DAYS = 21
CUTBACK_LONG_SHARE = 0.75
LAST_LONG_SHARE = 0.55
SECOND_SHARE = 0.70
TWO_DAYS_SHARE = 0.68
MOST_TAPER_SHARE = 0.80
LOOK_BACK = 3
FAR_M = 200_000.0


class Pick(Value, frozen=True):
    """The columns of one option: whether it is chosen, and its steps of time."""

    place: int
    day: Day
    option: Option
    is_chosen: int
    steps: int

    @property
    def metres(self) -> Term:
        """The metres of the session as a term."""
        return self.steps, float(self.option.step_m)


@dataclass(slots=True)
class BlockModel:
    """The programme of a task and where to find its sessions in it.

    `breaches` are columns that hold by how many metres a fixed session makes a rule give way,
    `goals` those that hold what greatest week and longest run fall short of what is asked.
    """

    task: Task
    rows: Rows = field(default_factory=Rows)
    picks: list[Pick] = field(default_factory=list)
    volume: list[int] = field(default_factory=list)
    long: list[int] = field(default_factory=list)
    breaches: dict[tuple[str, int], int] = field(default_factory=dict)
    by_place: dict[int, list[Pick]] = field(default_factory=dict)
    goals: set[int] = field(default_factory=set)

    def chosen(self, values: Sequence[float]) -> tuple[Chosen, ...]:
        """Return the sessions in *values*, by day."""
        found = [
            Chosen(day.at, day.fixed[0], 0, day.fixed[1])
            for week in self.task.weeks
            for day in week.days
            if day.fixed is not None
        ]
        for pick in self.picks:
            if values[pick.is_chosen] > 0.5:
                steps = round(values[pick.steps])
                metres = steps * pick.option.step_m
                found.append(Chosen(pick.day.at, pick.option.kind, steps, metres))
        return tuple(sorted(found, key=lambda c: c.at))

    def start(self, kinds: Mapping[int, Kind]) -> dict[int, float]:
        """Return the choices that a plan of *kinds* by day makes, to start the search from."""
        return {
            pick.is_chosen: float(kinds.get(pick.day.at) is pick.option.kind) for pick in self.picks
        }

    def of(self, place: int, kinds: Iterable[Kind] | None = None) -> list[Pick]:
        """Return the picks of the week at *place*, only those of *kinds* if given."""
        wanted = None if kinds is None else tuple(kinds)
        return [
            p for p in self.by_place.get(place, ()) if wanted is None or p.option.kind in wanted
        ]


def block_model(task: Task) -> BlockModel:
    """Return the programme of *task*; whole steps of time."""
    model = BlockModel(task)
    model.rows.constant = CONSTANT
    _add_days(model)
    _add_weeks(model)
    for place, week in enumerate(task.weeks):
        _count(model, place, week)
        _long_run(model, place, week)
        _harder(model, place, week)
        _pair(model, place, week)
        if week.whole:
            _volume(model, place, week)
    _apart(model)
    _single_runs(model)
    _pairs(model)
    _downhill(model)
    _taper(model)
    _goals(model)
    return model


def _add_days(model: BlockModel) -> None:
    rows = model.rows
    for place, week in enumerate(model.task.weeks):
        for day in week.days:
            today = []
            for option in day.options:
                # Ties go to the earlier day, so that one plan is the best.
                chosen = rows.choice(option.cost + EARLIER * len(model.picks))
                steps = rows.column(0.0, float(option.most), whole=True)
                rows.row([(steps, 1.0), (chosen, -float(option.least))], least=0.0)
                rows.row([(steps, 1.0), (chosen, -float(option.most))], most=0.0)
                today.append(Pick(place, day, option, chosen, steps))
            if len(today) > 1:
                rows.row([(p.is_chosen, 1.0) for p in today], most=1.0)
            model.picks.extend(today)
            model.by_place.setdefault(place, []).extend(today)


def _add_weeks(model: BlockModel) -> None:
    """Give every week a column for its volume and one for its long run."""
    rows = model.rows
    for place, week in enumerate(model.task.weeks):
        volume = rows.column()
        rows.equal([(volume, -1.0), *(p.metres for p in model.of(place))], -float(week.fixed_m))
        model.volume.append(volume)
        long = rows.column()
        stands = max(
            (d.fixed[1] for d in week.days if d.fixed is not None and d.fixed[0].is_long), default=0
        )
        longs = model.of(place, LONG_KINDS)
        if not longs and not stands:
            longs = _longest_day(model.of(place, (Kind.EASY,)))
            stands = max((d.fixed[1] for d in week.days if d.fixed is not None), default=0)
            longs = [] if stands else longs
        rows.row(
            [(long, 1.0), *((c, -m) for c, m in (p.metres for p in longs))], most=float(stands)
        )
        model.long.append(long)


def _longest_day(easy: list[Pick]) -> list[Pick]:
    return [max(easy, key=lambda p: (p.option.most, -p.day.at))] if easy else []


def _count(model: BlockModel, place: int, week: Week) -> None:
    stand = sum(d.fixed is not None for d in week.days)
    chosen = [(p.is_chosen, 1.0) for p in model.of(place)]
    if chosen:
        model.rows.row(chosen, most=float(max(0, week.most - stand)))
        short = model.rows.shortfall(chosen, float(week.fewest - stand), SHARP_MISSING)
        model.rows.most[short] = float(max(0, week.fewest))


def _long_run(model: BlockModel, place: int, week: Week) -> None:
    rows, longs = model.rows, model.of(place, LONG_KINDS)
    if not longs:
        return
    chosen = [(p.is_chosen, 1.0) for p in longs]
    if len(chosen) > 1:
        rows.row(chosen, most=1.0)
    rows.shortfall(chosen, 1.0, LONG_MISSING)
    metres = [p.metres for p in longs]
    if week.role is Role.LOADING:
        rows.distance_cost(metres, float(week.long_m), OFF_LONG, BAND_M)
    volume = model.volume[place]
    if week.role is not Role.LOADING or any(p.option.kind is Kind.REHEARSAL for p in longs):
        return
    rows.row([*((c, 100.0 * m) for c, m in metres), (volume, -float(week.most_share))], most=0.0)
    share = -week.usual_share / 100.0
    rows.excess([*metres, (volume, share)], 0.0, SHARE)


def _harder(model: BlockModel, place: int, week: Week) -> None:
    """Allow one of each harder kind a week; a downhill run takes the place of one of them."""
    rows = model.rows
    for kind in SHARP_KINDS:
        picks = model.of(place, (kind,))
        if len(picks) > 1:
            rows.row([(p.is_chosen, 1.0) for p in picks], most=1.0)
    harder = [(p.is_chosen, 1.0) for p in model.of(place, SHARP_KINDS)]
    if harder:
        rows.row(harder, most=float(max(1, week.sharp)))
    if week.sharp and harder:
        seconds = model.of(place, (Kind.SECOND_LONG,)) if week.sharp > 1 else []
        wanted = [*harder, *((p.is_chosen, 1.0) for p in seconds)]
        rows.row(wanted, most=float(week.sharp))
        short = rows.shortfall(wanted, float(week.sharp), SHARP_MISSING)
        rows.most[short] = float(week.sharp)


def _pair(model: BlockModel, place: int, week: Week) -> None:
    rows, seconds = model.rows, model.of(place, (Kind.SECOND_LONG,))
    if not seconds:
        return
    rows.row([(p.is_chosen, 1.0) for p in seconds], most=1.0)
    metres = [p.metres for p in seconds]
    longs = [p.metres for p in model.of(place, LONG_KINDS)]
    rows.row([*metres, *((c, -SECOND_SHARE * m) for c, m in longs)], most=0.0)
    rows.row([*metres, *longs, (model.volume[place], -TWO_DAYS_SHARE)], most=0.0)
    room = [*metres, *longs, *((p.is_chosen, FAR_M) for p in seconds)]
    rows.row(room, most=float(model.task.two_days_m) + FAR_M)
    for second in seconds:
        before = [
            (p.is_chosen, -1.0)
            for p in model.of(place, (Kind.LONG,))
            if p.day.at == second.day.at - 1
        ]
        rows.row([(second.is_chosen, 1.0), *before], most=0.0)


def _reference(model: BlockModel, place: int) -> tuple[list[Term], float]:
    """Return the yardstick of the week at *place* as terms and a constant."""
    yardstick = model.task.yardstick(place)
    if yardstick is None:
        return [], float(model.task.start_m)
    return [(model.volume[yardstick], 1.0)], 0.0


def _volume(model: BlockModel, place: int, week: Week) -> None:
    rows, volume = model.rows, model.volume[place]
    reference, start = _reference(model, place)
    if week.role is Role.LOADING:
        _ceiling(model, "ramp", place, week, week.ceiling / 100.0)
        rows.shortfall([(volume, 1.0), *((c, -0.85 * f) for c, f in reference)], 0.85 * start, LOW)
        rows.distance_cost([(volume, 1.0)], float(week.target_m), OFF_TARGET, WEEK_BAND_M)
    elif week.role is Role.CUTBACK:
        _ceiling(model, "cutback", place, week, 0.8)
        if not week.after_race:
            least = [(volume, 1.0), *((c, -0.6 * f) for c, f in reference)]
            rows.shortfall(least, 0.6 * start, CUTBACK_LOW)
        middle = [(volume, 1.0), *((c, -0.75 * f) for c, f in reference)]
        rows.distance_cost(middle, 0.75 * start, OFF_TARGET, WEEK_BAND_M)
    else:
        _ceiling(model, "taper week", place, week, MOST_TAPER_SHARE)
        share = week.target_m / 1000.0
        middle = [(volume, 1.0), *((c, -share * f) for c, f in reference)]
        rows.distance_cost(middle, share * start, OFF_TARGET, WEEK_BAND_M)
    longs = [p for p in model.of(place) if p.option.kind not in LONG_KINDS]
    easy = [p for p in longs if p.option.kind in (Kind.EASY, Kind.RECOVERY)]
    if len(easy) > 1:
        longest = rows.column(cost=UNEVEN)
        for pick in easy:
            rows.row([pick.metres, (longest, -1.0)], most=0.0)


def _ceiling(model: BlockModel, rule: str, place: int, week: Week, share: float) -> None:
    """Keep the week to *share* of its yardstick; what is fixed in it may pass, at a price."""
    reference, start = _reference(model, place)
    terms = [(model.volume[place], 10.0), *((c, -10.0 * share * f) for c, f in reference)]
    if week.fixed_m:
        over = model.rows.column(most=float(week.fixed_m), cost=BREACH)
        model.breaches[rule, place] = over
        terms.append((over, -10.0))
    model.rows.row(terms, most=10.0 * share * start)


def _apart(model: BlockModel) -> None:
    """Let no heavy day follow another, but a second long run after a long one."""
    by_day: dict[int, list[Pick]] = {}
    for pick in model.picks:
        by_day.setdefault(pick.day.at, []).append(pick)
    fixed = {d.at: d.fixed[0] for w in model.task.weeks for d in w.days if d.fixed is not None}
    days = sorted({*by_day, *fixed})
    for first, second in pairwise(days):
        if second - first != 1:
            continue
        before = [p for p in by_day.get(first, ()) if p.option.kind in HEAVY_KINDS]
        after = [
            p for p in by_day.get(second, ()) if p.option.kind in HEAVY_KINDS - {Kind.SECOND_LONG}
        ]
        stands = (fixed.get(first) in HEAVY_KINDS) + (fixed.get(second) in HEAVY_KINDS)
        if before or after:
            terms = [(p.is_chosen, 1.0) for p in (*before, *after)]
            if len(terms) > 1 or stands:
                model.rows.row(terms, most=max(0.0, 1.0 - stands))


def _single_runs(model: BlockModel) -> None:
    """Let no run be more than 10 % longer than the longest of the 30 days before it."""
    rows, task = model.rows, model.task
    before = task.weeks[0].days[0].at - 1 if task.weeks and task.weeks[0].days else 0
    for place in range(len(task.weeks)):
        picks = model.of(place)
        if not picks:
            continue
        reference = rows.column()
        sources: list[tuple[list[Term], float]] = []
        last = picks[-1].day.at
        if last - before <= WINDOW_DAYS:
            sources.append(([], float(task.longest_m)))
        sources += [
            ([(model.long[n], 1.0)], 0.0)
            for n in range(max(0, place - LOOK_BACK), place)
            if task.weeks[n].days
        ]
        _at_most_one_of(rows, reference, sources)
        stands = max((d.fixed[1] for d in task.weeks[place].days if d.fixed is not None), default=0)
        if stands and task.weeks[place].whole:
            over = rows.column(cost=FAR_BREACH, most=float(stands))
            model.breaches["single run", place] = over
            rows.row([(reference, 11.0), (over, 10.0)], least=10.0 * stands)
        for group in _groups(picks):
            metres = [(c, 10.0 * m) for c, m in (p.metres for p in group)]
            rows.row([*metres, (reference, -11.0)], most=0.0)


def _at_most_one_of(rows: Rows, column: int, sources: Sequence[tuple[list[Term], float]]) -> None:
    """Ask that *column* is at most one of *sources*, whichever is chosen."""
    if len(sources) == 1:
        terms, constant = sources[0]
        rows.row([(column, 1.0), *((c, -f) for c, f in terms)], most=constant)
        return
    choices = [rows.choice() for _ in sources]
    for choice, (terms, constant) in zip(choices, sources, strict=True):
        slack = (choice, FAR_M)
        rows.row([(column, 1.0), *((c, -f) for c, f in terms), slack], most=constant + FAR_M)
    rows.equal([(choice, 1.0) for choice in choices], 1.0)


def _groups(picks: Iterable[Pick]) -> Iterator[list[Pick]]:
    """Yield picks of which at most one is chosen: long runs, each harder kind, each easy day."""
    kinds: dict[Kind, list[Pick]] = {}
    easy: dict[int, list[Pick]] = {}
    for pick in picks:
        kind = pick.option.kind
        if kind in (Kind.EASY, Kind.RECOVERY):
            easy.setdefault(pick.day.at, []).append(pick)
        else:
            kinds.setdefault(Kind.LONG if kind in LONG_KINDS else kind, []).append(pick)
    yield from kinds.values()
    yield from easy.values()


def _pairs(model: BlockModel) -> None:
    """Ask for as many back-to-backs as wished, never in weeks side by side."""
    rows, task = model.rows, model.task
    by_place = {n: model.of(n, (Kind.SECOND_LONG,)) for n in range(len(task.weeks))}
    for n, picks in by_place.items():
        both = [(p.is_chosen, 1.0) for p in (*picks, *by_place.get(n + 1, ()))]
        if picks and by_place.get(n + 1):
            rows.row(both, most=1.0)
    seconds = [(p.is_chosen, 1.0) for picks in by_place.values() for p in picks]
    if task.pairs and seconds:
        rows.shortfall(seconds, float(task.pairs), PAIR_MISSING)


def _downhill(model: BlockModel) -> None:
    """Ask for a downhill run in every three weeks of the range in which they are wanted."""
    rows, task = model.rows, model.task
    if task.downhill is None:
        return
    picks = [p for p in model.picks if p.option.kind is Kind.DOWNHILL]
    first, last = task.downhill
    for day in sorted({p.day.at for p in picks}):
        if first <= day <= last - DOWNHILL_GAP_DAYS:
            within = [
                (p.is_chosen, 1.0) for p in picks if day < p.day.at <= day + DOWNHILL_GAP_DAYS
            ]
            rows.shortfall(within, 1.0, DOWNHILL_MISSING)
    for window in ((first, first + 13), (last - 11, last)):
        within = [(p.is_chosen, 1.0) for p in picks if window[0] <= p.day.at <= window[1]]
        if within:
            rows.shortfall(within, 1.0, DOWNHILL_MISSING)


def _taper(model: BlockModel) -> None:
    """Cut the daily mean by 41 to 60 % in the taper, and keep its long runs short."""
    rows, task = model.rows, model.task
    places = [n for n, w in enumerate(task.weeks) if w.role in (Role.TAPER, Role.RACE)]
    last = task.last_load
    if last is None or not places or not task.taper_days:
        return
    total = [(model.volume[n], 7.0) for n in places]
    days, reference = float(task.taper_days), model.volume[last]
    over = rows.column(cost=BREACH, most=7.0 * sum(task.weeks[n].fixed_m for n in places))
    rows.row([*total, (reference, -0.59 * days), (over, -1.0)], most=0.0)
    rows.shortfall([*total, (reference, -0.40 * days)], 0.0, BREACH)
    for place in places:
        longs = [p.metres for p in model.of(place, LONG_KINDS)]
        if longs:
            longest = (model.long[task.longest], -LAST_LONG_SHARE)
            rows.row([*longs, longest], most=0.0)


def _goals(model: BlockModel) -> None:
    rows, task = model.rows, model.task
    if task.last_load is None:
        return
    peak, longest = (model.volume[task.peak], 1.0), (model.long[task.longest], 1.0)
    model.goals.add(rows.shortfall([peak], float(task.goal_m), PEAK))
    model.goals.add(rows.shortfall([longest], float(task.goal_long_m), LONG))
    for place, week in enumerate(task.weeks):
        longs = [p.metres for p in model.of(place, LONG_KINDS)]
        if longs and week.role is Role.CUTBACK:
            usual = _last_long(model, place)
            rows.row([*longs, *((c, -CUTBACK_LONG_SHARE * f) for c, f in usual[0])], most=usual[1])


def _last_long(model: BlockModel, place: int) -> tuple[list[Term], float]:
    for n in range(place - 1, -1, -1):
        if model.task.weeks[n].role is Role.LOADING and model.of(n, LONG_KINDS):
            return [(model.long[n], 1.0)], 0.0
    return [], CUTBACK_LONG_SHARE * model.task.longest_m
