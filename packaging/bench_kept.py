"""The ratios kept in git, and what got slower since."""

from __future__ import annotations

import json
from collections.abc import Sequence
from pathlib import Path
from statistics import median

from bench_measure import Row

KEPT = Path(__file__).with_name("bench.json")
# By how much a row may be worse than it was before it is shown.
SLOWER = 1.2

Figures = dict[str, dict[str, float]]


def figures(row: Row) -> dict[str, float]:
    """Return what is kept of *row*: its ratio, and the figures its goals speak of.

    Milliseconds stand for themselves only where a goal does; all else is held to its floor.
    """
    kept = {str(goal.of): round(row.measure(goal.of), 3) for goal in row.goals}
    if row.floor:
        kept["ratio"] = round(row.ratio, 3)
        kept["floor"] = round(median(row.floor), 4)
    return kept


def read_kept(path: Path = KEPT) -> Figures:
    """Return the figures kept last by row; nothing where none are kept yet."""
    if not path.exists():
        return {}
    kept: Figures = json.loads(path.read_text(encoding="utf-8"))
    return kept


def keep(rows: Sequence[Row], path: Path = KEPT) -> None:
    """Keep the figures of *rows*; what was not measured now stays as it was."""
    kept = {**read_kept(path), **{row.name: figures(row) for row in rows}}
    path.write_text(json.dumps(kept, indent=1, sort_keys=True) + "\n", encoding="utf-8")


def slower(rows: Sequence[Row], kept: Figures) -> list[str]:
    """Return a sentence for each row whose figure is worse than the kept one by over 20 %.

    A longest time is that of one event, and luck: its goal alone speaks of it.
    """
    said = []
    for row in rows:
        was, now = kept.get(row.name, {}), figures(row)
        worse = [
            f"{of} {was[of]:.3g} -> {now[of]:.3g} (+{100.0 * (now[of] / was[of] - 1.0):.0f} %)"
            for of in now
            if of not in ("floor", "max") and was.get(of, 0.0) > 0.0 and now[of] > SLOWER * was[of]
        ]
        if worse:
            said.append(f"{row.name}: {', '.join(worse)}")
    return said


def compared(rows: Sequence[Row], path: Path = KEPT) -> str:
    """Return what is to be read under the table."""
    kept = read_kept(path)
    known = [row for row in rows if row.name in kept]
    new = [row.name for row in rows if row.name not in kept]
    said = slower(known, kept)
    lines = [f"Slower than kept in {path.name} by more than 20 %:", *said] if said else []
    if known and not said:
        lines.append(f"None of {len(known)} rows is slower than kept by more than 20 %.")
    if new:
        lines.append(f"Not kept yet: {', '.join(new)}. bench --keep keeps them.")
    return "\n".join(lines)
