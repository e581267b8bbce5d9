"""Solving a programme of rows with HiGHS: the same rows and limits give the same answer.

Q. Huangfu and J. A. J. Hall, "Parallelizing the dual revised simplex method", Mathematical
Programming Computation 10 (2018) 119-142.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from enum import StrEnum
from typing import Any, TypeAlias

from ultraplanner_gui.engine.block_rows import Rows
from ultraplanner_gui.plan.value import Value

Watch = Callable[[float, float], None]
Foreign: TypeAlias = Any


class End(StrEnum):
    """Why a search ended."""

    PROVEN = "proven"
    NODES = "node limit"
    TIME = "time limit"
    NONE = "no plan keeps the rules"


class Limits(Value, frozen=True):
    """How far a search goes; `gap` is relative, `slack` the same in units of cost, at `target`
    a cost is good enough. The time limit is only a brake.
    """

    nodes: int
    time_s: float
    gap: float = 0.0
    target: float | None = None
    slack: float = 1e-6


class Found(Value, frozen=True):
    """The best values found (empty if none), their cost, what no values can stay under, the end."""

    values: tuple[float, ...]
    cost: float
    bound: float
    end: End

    @property
    def gap(self) -> float:
        """How far the cost can lie above the least possible, as a share of it."""
        return max(0.0, self.cost - self.bound) / max(abs(self.cost), 1e-9)


def solve(
    rows: Rows,
    limits: Limits,
    start: Mapping[int, float] | None = None,
    watch: Watch | None = None,
) -> Found:
    """Return the best values for *rows*.

    *start* gives some columns of a plan to begin with; *watch* hears of cost and bound.
    """
    import highspy

    highs = _quiet(highspy, limits)
    highs.passModel(_passed(highspy, rows))
    if start:
        columns = sorted(start)
        highs.setSolution(len(columns), columns, [start[column] for column in columns])
    if watch is not None:
        _watched(highs, watch)
    highs.run()
    return _found(highspy, highs)


def _quiet(highspy: Foreign, limits: Limits) -> Foreign:
    class Quiet(highspy.Highs):  # type: ignore[misc]
        """HiGHS that says nothing when it begins."""

        def enableCallbacks(self) -> None:  # noqa: N802 - the name it has there
            self.setOptionValue("output_flag", False)
            super().enableCallbacks()

    highs = Quiet()
    for name, value in (
        ("threads", 1),
        ("parallel", "off"),
        ("random_seed", 1),
        ("mip_max_nodes", limits.nodes),
        ("time_limit", limits.time_s),
        ("mip_rel_gap", limits.gap),
        ("mip_abs_gap", limits.slack),
        ("mip_feasibility_tolerance", 1e-7),
    ):
        highs.setOptionValue(name, value)
    if limits.target is not None:
        highs.setOptionValue("objective_target", limits.target)
    return highs


def _passed(highspy: Foreign, rows: Rows) -> Foreign:
    lp = highspy.HighsLp()
    lp.num_col_, lp.num_row_ = len(rows.cost), len(rows.row_least)
    lp.col_cost_, lp.offset_ = rows.cost, rows.constant
    lp.col_lower_, lp.col_upper_ = rows.least, rows.most
    lp.row_lower_, lp.row_upper_ = rows.row_least, rows.row_most
    lp.a_matrix_.format_ = highspy.MatrixFormat.kRowwise
    lp.a_matrix_.num_col_, lp.a_matrix_.num_row_ = lp.num_col_, lp.num_row_
    lp.a_matrix_.start_ = [*rows.starts, len(rows.columns)]
    lp.a_matrix_.index_, lp.a_matrix_.value_ = rows.columns, rows.factors
    whole, any_value = highspy.HighsVarType.kInteger, highspy.HighsVarType.kContinuous
    lp.integrality_ = [whole if w else any_value for w in rows.is_whole]
    return lp


def _watched(highs: Foreign, watch: Watch) -> None:
    def hear(event: Foreign) -> None:
        out = event.data_out
        watch(float(out.mip_primal_bound), float(out.mip_dual_bound))

    highs.cbMipLogging.subscribe(hear)
    highs.cbMipImprovingSolution.subscribe(hear)


def _found(highspy: Foreign, highs: Foreign) -> Found:
    info, status = highs.getInfo(), highs.getModelStatus()
    model = highspy.HighsModelStatus
    end = {
        model.kOptimal: End.PROVEN,
        model.kTimeLimit: End.TIME,
        model.kInterrupt: End.TIME,
        model.kSolutionLimit: End.NODES,
        model.kObjectiveTarget: End.NODES,
        model.kIterationLimit: End.NODES,
    }.get(status, End.NONE)
    feasible = highspy.SolutionStatus.kSolutionStatusFeasible
    if end is End.NONE or info.primal_solution_status != feasible:
        return Found((), float("inf"), float(info.mip_dual_bound), End.NONE)
    bound = info.mip_dual_bound if _any_whole(highs, highspy) else info.objective_function_value
    values = tuple(highs.getSolution().col_value)
    return Found(values, float(info.objective_function_value), float(bound), end)


def _any_whole(highs: Foreign, highspy: Foreign) -> bool:
    return any(kind == highspy.HighsVarType.kInteger for kind in highs.getLp().integrality_)
