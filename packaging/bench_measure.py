"""Samples in pairs, what they come to, and the table they are printed in."""

from __future__ import annotations

import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from statistics import median
from typing import Literal

Of = Literal["ratio", "median", "p95", "max"]
Work = Callable[[], object]

MIB = 1024.0 * 1024.0


@dataclass(frozen=True, slots=True)
class Goal:
    """The most that a measure of a row may come to."""

    of: Of
    limit: float


@dataclass(frozen=True, slots=True)
class Row:
    """One line of the table: samples of ours and of the floor, taken by turns."""

    name: str
    floor_name: str
    ours: Sequence[float]
    floor: Sequence[float]
    goals: tuple[Goal, ...]
    unit: str = "ms"
    note: str = ""
    more: dict[str, float] = field(default_factory=dict)

    @property
    def ratio(self) -> float:
        """The median of ours over floor, pair by pair."""
        if not self.ours or not self.floor:
            return float("nan")
        if len(self.ours) == len(self.floor):
            return median(a / b for a, b in zip(self.ours, self.floor, strict=True) if b > 0)
        return median(self.ours) / median(self.floor)

    def measure(self, of: Of) -> float:
        """Return what the samples come to, in the unit of the row."""
        if of == "ratio":
            return self.ratio
        if of == "median":
            return median(self.ours)
        return max(self.ours) if of == "max" else percentile(self.ours, 0.95)

    def holds(self, goal: Goal) -> bool:
        """Whether *goal* is met."""
        return self.measure(goal.of) <= goal.limit

    def as_json(self) -> dict[str, object]:
        """Return the row as plain values."""
        return {
            "what": self.name,
            "floor": self.floor_name,
            "unit": self.unit,
            "pairs": min(len(self.ours), len(self.floor)),
            "ours": _summary(self.ours),
            "floor_figures": _summary(self.floor),
            "ratio": round(self.ratio, 3),
            "goals": [
                {
                    "of": goal.of,
                    "limit": goal.limit,
                    "is": round(self.measure(goal.of), 3),
                    "holds": self.holds(goal),
                }
                for goal in self.goals
            ],
            "note": self.note,
            **self.more,
        }


def percentile(samples: Sequence[float], share: float) -> float:
    """Return the sample below which *share* of them lie."""
    ordered = sorted(samples)
    return ordered[min(len(ordered) - 1, round(share * (len(ordered) - 1)))]


def timed(work: Work) -> float:
    """Return how long *work* takes, milliseconds."""
    begin = time.perf_counter()
    work()
    return (time.perf_counter() - begin) * 1000.0


def by_turns(ours: Work, floor: Work, pairs: int, warm: int = 3) -> tuple[list[float], list[float]]:
    """Time *ours* and *floor* by turns, milliseconds, so that both meet the same machine."""
    for _ in range(warm):
        ours(), floor()
    times = [(timed(ours), timed(floor)) for _ in range(pairs)]
    return [a for a, _ in times], [b for _, b in times]


def memory(what: Literal["VmHWM", "VmRSS"]) -> float:
    """Return the peak or present memory of this process, MiB; NaN where Linux does not say."""
    # Not getrusage: a child there starts with the peak of the process it was forked from.
    try:
        lines = Path("/proc/self/status").read_text("ascii").splitlines()
    except OSError:
        return float("nan")
    return next(int(line.split()[1]) / 1024.0 for line in lines if line.startswith(what))


def table(rows: Sequence[Row]) -> str:
    """Return all rows as one table, goals that are missed said in so many words."""
    heads = ("what", "median", "p95", "floor", "ratio", "goal", "")
    lines = [heads, *(_cells(row) for row in rows)]
    widths = [max(len(line[k]) for line in lines) for k in range(len(heads))]
    text = []
    for line in lines:
        cells = [c.ljust(w) if k in (0, 5, 6) else c.rjust(w) for k, (c, w) in _each(line, widths)]
        text.append("  ".join(cells).rstrip())
    notes = [f"{row.name}: {row.note}" for row in rows if row.note]
    floors = [f"{row.name} / {row.floor_name}" for row in rows]
    return "\n".join([*text, "", "against", *floors, "", *notes])


def _each(line: Sequence[str], widths: Sequence[int]) -> list[tuple[int, tuple[str, int]]]:
    return list(enumerate(zip(line, widths, strict=True)))


def _cells(row: Row) -> tuple[str, ...]:
    missed = [goal for goal in row.goals if not row.holds(goal)]
    verdict = ", ".join(f"{goal.of} {_short(row.measure(goal.of))}" for goal in missed)
    return (
        row.name,
        f"{_short(row.measure('median'))} {row.unit}",
        _short(row.measure("p95")),
        _short(median(row.floor)) if row.floor else "",
        f"{row.ratio:.2f}x" if row.floor else "",
        ", ".join(_goal(goal, row.unit) for goal in row.goals),
        f"MISSED: {verdict}" if missed else "ok",
    )


def _goal(goal: Goal, unit: str) -> str:
    if goal.of == "ratio":
        return f"≤ {goal.limit:g}x"
    return f"{goal.of} ≤ {goal.limit:g} {unit}"


def _short(value: float) -> str:
    return f"{value:.3g}" if abs(value) < 100 else f"{value:.0f}"


def _summary(samples: Sequence[float]) -> dict[str, float]:
    if not samples:
        return {}
    return {
        "median": round(median(samples), 4),
        "p95": round(percentile(samples, 0.95), 4),
        "max": round(max(samples), 4),
    }
