"""The best block there is by the rules: an exact search in two stages.

First the kinds of the days with any number of minutes, then, the kinds kept, whole steps of five
minutes (of one for long runs). A node limit ends it, so the same request gives the same block; the
time limit is a brake, and said to be one where it ended the search.
"""

from __future__ import annotations

import time
from collections.abc import Callable, Sequence
from datetime import date

from msgspec.structs import replace

from ultraplanner_gui.engine.block import BlockPlan, finished
from ultraplanner_gui.engine.block_fill import Run
from ultraplanner_gui.engine.block_layout import Layout, laid_out
from ultraplanner_gui.engine.block_model import BlockModel, block_model
from ultraplanner_gui.engine.block_notes import DAYS_HOLD, LONG_DAY_HOLDS
from ultraplanner_gui.engine.block_options import task_of
from ultraplanner_gui.engine.block_request import BlockRequest
from ultraplanner_gui.engine.block_score import Score, score_of
from ultraplanner_gui.engine.block_solver import End, Found, Limits, solve
from ultraplanner_gui.engine.block_stretch import time_needed
from ultraplanner_gui.engine.block_task import Chosen
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.training import mean_cut

NODES = 400
TIME_S = 8.0
GAP = 0.002
MINUTES_SHARE = 0.4
HELD_BY_TIME = {DAYS_HOLD, LONG_DAY_HOLDS}
WEEKS_TOGETHER = 3
WEEKS_NODES = 20
WEEKS_GAP = 0.002


class Progress(Value, frozen=True):
    """How far a search is: the cost of the best plan so far, None if there is none, what no plan
    can stay under, and the share of the time that may be taken.
    """

    cost: float | None
    bound: float
    share: float

    @property
    def gap(self) -> float | None:
        """How far the best can lie above the least possible cost, as a share; None if unknown."""
        if self.cost is None or self.bound <= 0.0:
            return None
        return max(0.0, self.cost - self.bound) / self.cost


class Search(Value, frozen=True):
    """Limits of a search."""

    nodes: int = NODES
    time_s: float = TIME_S
    gap: float = GAP


USUAL_SEARCH = Search()


class ExactPlan(Value, frozen=True):
    """The better of the block by the rules and the one searched for.

    `gap` is how far its cost can lie above the least possible, as a share; `is_braked` says that
    the time limit ended the search, so that another run may end elsewhere. `is_better` says that
    the search beat the rules; where it did not, `plan` is the block by the rules. `peak_m` and
    `longest_m` are its greatest loading week and longest run.
    """

    plan: BlockPlan
    is_better: bool
    gap: float
    is_braked: bool
    took_s: float
    by_rules: Score
    searched: Score | None
    peak_m: float = 0.0
    longest_m: float = 0.0


def best_block(
    request: BlockRequest,
    search: Search = USUAL_SEARCH,
    watch: Callable[[Progress], None] | None = None,
) -> ExactPlan:
    """Return the best block for *request* that the search finds, never worse than by the rules."""
    begin = time.monotonic()
    layout = laid_out(request)
    task = task_of(layout)
    by_rules = score_of(layout, task)
    model = block_model(task)
    found, gap = searched(model, layout, search, watch)
    took_s = time.monotonic() - begin
    is_braked = found.end is End.TIME
    if not found.values:
        return ExactPlan(finished(layout), False, 1.0, is_braked, took_s, by_rules, None)
    better = with_chosen(layout, model.chosen(found.values))
    score = score_of(better, task)
    is_better = score < by_rules
    best = better if is_better else layout
    plan = finished(best)
    if HELD_BY_TIME & {note.template for note in plan.notes}:
        free_s = request.runner.available_s
        needed = time_needed(task, model.chosen(found.values), free_s)
        plan = replace(plan, notes=(*plan.notes, *needed))
    peaks = float(best.filled.peak_m), float(best.filled.longest_m)
    return ExactPlan(plan, is_better, gap, is_braked, took_s, by_rules, score, *peaks)


def searched(
    model: BlockModel,
    layout: Layout,
    search: Search,
    watch: Callable[[Progress], None] | None = None,
) -> tuple[Found, float]:
    """Return the best whole-step values of *model* and their gap to what is possible at all."""
    begin = time.monotonic()
    minutes = [p.steps for p in model.picks]
    rows = model.rows

    def hear(cost: float, bound: float) -> None:
        if watch is not None:
            share = min(1.0, (time.monotonic() - begin) / search.time_s)
            watch(Progress(cost if cost < 1e20 else None, bound, share))

    for column in minutes:
        rows.is_whole[column] = False
    kinds = {run.day.toordinal(): run.kind for run in layout.filled.runs}
    limits = Limits(search.nodes, search.time_s * (1.0 - MINUTES_SHARE), search.gap)
    first = solve(rows, limits, model.start(kinds), hear)
    if not first.values:
        return first, 1.0
    for pick in model.picks:
        value = round(first.values[pick.is_chosen])
        rows.least[pick.is_chosen] = rows.most[pick.is_chosen] = float(value)
    enough = first.bound + search.gap * abs(first.bound)
    start = _whole_by_weeks(model, first.values, search)
    left_s = max(0.5, search.time_s - (time.monotonic() - begin))
    second = solve(rows, Limits(search.nodes, left_s, search.gap, enough), start)
    for pick in model.picks:
        rows.least[pick.is_chosen], rows.most[pick.is_chosen] = 0.0, 1.0
    if not second.values:
        return second, 1.0
    end = End.TIME if End.TIME in (first.end, second.end) else second.end
    whole = replace(second, bound=first.bound, end=end)
    return whole, whole.gap


def _whole_by_weeks(model: BlockModel, values: Sequence[float], search: Search) -> dict[int, float]:
    """Return whole steps found a few weeks at a time, the later ones still free, all choices kept
    as in *values*: a plan to begin with; empty if none comes of it.
    """
    rows = model.rows
    kept = {c: (rows.least[c], rows.most[c]) for c, whole in enumerate(rows.is_whole) if whole}
    kept |= {p.steps: (rows.least[p.steps], rows.most[p.steps]) for p in model.picks}
    whole = list(rows.is_whole)
    for column, is_whole in enumerate(whole):
        if is_whole:
            rows.least[column] = rows.most[column] = float(round(values[column]))
    places = sorted({p.place for p in model.picks})
    found: dict[int, float] = {}
    for n in range(0, len(places), WEEKS_TOGETHER):
        now = set(places[n : n + WEEKS_TOGETHER])
        for pick in model.picks:
            rows.is_whole[pick.steps] = pick.place in now
        part = solve(rows, Limits(WEEKS_NODES, search.time_s, WEEKS_GAP))
        if not part.values:
            found = {}
            break
        for pick in model.picks:
            if pick.place in now:
                value = float(round(part.values[pick.steps]))
                rows.least[pick.steps] = rows.most[pick.steps] = value
                found[pick.steps] = value
    for pick in model.picks:
        rows.is_whole[pick.steps] = True
    for column, (least, most) in kept.items():
        rows.least[column], rows.most[column] = least, most
    return found


def with_chosen(layout: Layout, chosen: tuple[Chosen, ...]) -> Layout:
    """Return *layout* with the runs *chosen* instead of its own."""
    numbers = {day.toordinal(): frame.to_go for frame in layout.weeks.frames for day in frame.days}
    runs = tuple(
        Run(date.fromordinal(c.at), c.kind, c.metres, numbers[c.at]) for c in chosen if c.metres
    )
    sums: dict[int, int] = {}
    for run in runs:
        sums[run.to_go] = sums.get(run.to_go, 0) + run.distance_m
    loads = [f.to_go for f in layout.weeks.loading]
    volumes = [sums.get(n, 0) for n in loads]
    taper = [f for f in layout.weeks.frames if f.whole and f.role in (Role.TAPER, Role.RACE)]
    days = sum(len(f.days) for f in taper)
    last_m = volumes[-1] if volumes else 0
    cut = None
    if days and last_m:
        cut = mean_cut(sum(sums.get(f.to_go, 0) for f in taper), days, last_m)
    built = {f.to_go for f in layout.weeks.frames if f.role in (Role.LOADING, Role.CUTBACK)}
    filled = replace(
        layout.filled,
        runs=runs,
        first_m=volumes[0] if volumes else 0,
        peak_m=max(volumes, default=0),
        longest_m=max((r.distance_m for r in runs if r.to_go in built), default=0),
        taper_cut=cut,
    )
    kinds = {(r.to_go, r.kind) for r in runs}
    falls = frozenset(n for n, kind in kinds if kind is Kind.DOWNHILL)
    plan = replace(layout.plan, downhill=falls)
    return replace(layout, plan=plan, filled=filled)
