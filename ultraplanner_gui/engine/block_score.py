"""Which of two blocks for one request is the better, on whole metres and days."""

from __future__ import annotations

from ultraplanner_gui.engine.block_fill import Run
from ultraplanner_gui.engine.block_layout import Layout
from ultraplanner_gui.engine.block_task import HEAVY_KINDS, LONG_KINDS, SHARP_KINDS, Task
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.plan.value import Value

COARSE_M = 500


class Score(Value, frozen=True, order=True):
    """What a block falls short in, gravest first; the smaller the better.

    Rules broken, greatest week and longest run short in half kilometres, harder and second long
    runs missing, half kilometres off the curve of weeks.
    """

    broken: int
    short: int
    missing: int
    off_curve: int


def score_of(layout: Layout, task: Task) -> Score:
    """Return the score of the runs in *layout*."""
    runs = layout.filled.runs
    sums: dict[int, int] = {}
    longs: dict[int, int] = {}
    for run in runs:
        sums[run.to_go] = sums.get(run.to_go, 0) + run.distance_m
        longs[run.to_go] = max(longs.get(run.to_go, 0), run.distance_m)
    loads = [w for w in task.weeks if w.whole and w.role is Role.LOADING]
    peak = max((sums.get(w.to_go, 0) for w in loads), default=0)
    longest = max((longs.get(w.to_go, 0) for w in loads), default=0)
    # Within a hundredth of a goal it counts as reached: steps of time are not finer.
    short = max(0, 99 * task.goal_m // 100 - peak) + max(0, 99 * task.goal_long_m // 100 - longest)
    missing = sum(
        max(0, w.sharp - sum(r.to_go == w.to_go and r.kind in SHARP_KINDS for r in runs))
        for w in loads
    )
    seconds = sum(r.kind is Kind.SECOND_LONG for r in runs)
    missing = max(0, missing - seconds) + max(0, task.pairs - seconds)
    off_curve = sum(abs(sums.get(w.to_go, 0) - w.target_m) // COARSE_M for w in loads)
    return Score(_broken(runs, sums, task), short // COARSE_M, missing, off_curve)


def _broken(runs: tuple[Run, ...], sums: dict[int, int], task: Task) -> int:
    """Count the rules that the runs break: ramp, cutbacks, single runs, hard days, taper."""
    broken = 0
    reference = task.start_m
    for week in task.weeks:
        metres = sums.get(week.to_go, 0)
        if not week.whole:
            continue
        if week.role is Role.LOADING:
            broken += 100 * metres > week.ceiling * reference
            reference = metres or reference
        elif week.role is Role.CUTBACK:
            low = 0 if week.after_race else 6
            broken += not low * reference <= 10 * metres <= 8 * reference
    taper = [w for w in task.weeks if w.role in (Role.TAPER, Role.RACE)]
    if taper and task.taper_days and task.last_load is not None:
        total = 700 * sum(sums.get(w.to_go, 0) for w in taper)
        days = task.taper_days * reference
        broken += not 40 * days <= total <= 59 * days
    return broken + _broken_runs(runs, task)


def _broken_runs(runs: tuple[Run, ...], task: Task) -> int:
    broken = 0
    first = task.weeks[0].days[0].at if task.weeks else 0
    behind = [(first - 1, task.longest_m)]
    for n, run in enumerate(runs):
        at = run.day.toordinal()
        longest = max((m for day, m in behind if 1 <= at - day <= 30), default=0)
        broken += 10 * run.distance_m > 11 * longest
        behind.append((at, run.distance_m))
        if n and at - runs[n - 1].day.toordinal() == 1 and runs[n - 1].kind in HEAVY_KINDS:
            second = run.kind is Kind.SECOND_LONG and runs[n - 1].kind in LONG_KINDS
            broken += run.kind in HEAVY_KINDS and not second
    return broken
