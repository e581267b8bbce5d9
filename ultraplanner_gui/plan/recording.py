"""A recorded run: points with the seconds at which they were passed."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from ultraplanner_gui.plan.course import FloatArray, Line


@dataclass(frozen=True, slots=True, eq=False)
class Recording:
    """`line` with `elapsed_s` per point, shape (n,), never falling; `start` is aware or None."""

    line: Line
    elapsed_s: FloatArray
    start: datetime | None = None
    name: str = ""
