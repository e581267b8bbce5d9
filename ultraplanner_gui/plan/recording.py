"""Recorded runs: points with the seconds at which they were passed, and the files kept of them."""

from __future__ import annotations

from datetime import datetime

from ultraplanner_gui.plan.course import FloatArray, Line
from ultraplanner_gui.plan.value import Kept, Number, Value

#: Recordings one project holds, and bytes of one as it is kept.
MOST_RECORDINGS = 500
MOST_PACKED_BYTES = 16 * 1024 * 1024


class Recording(Value, frozen=True, eq=False):
    """`line` with `elapsed_s` per point, shape (n,), never falling; `start` is aware or None."""

    line: Line
    elapsed_s: FloatArray
    start: datetime | None = None
    name: str = ""


class KeptRecording(Kept, frozen=True):
    """The file of a recording as it came, and the figures that lists show of it.

    `packed` is the file compressed by gzip; `came_packed` says that it was so when it came.
    `start` is aware, None where the file has no times of day. `elapsed_s` has standing time in it,
    `moving_s` has not. `session` is the key of the session it is of, `is_race` that it is of the
    race of the plan. `flat_m` is the flat-equivalent distance and `drift` how much slower the
    second half was than the first over equal effort, as a share; both by the usual pace curve.
    """

    key: str
    file: str
    packed: bytes
    came_packed: bool = False
    name: str = ""
    start: datetime | None = None
    distance_m: Number = 0.0
    elapsed_s: Number = 0.0
    moving_s: Number = 0.0
    climb_m: Number = 0.0
    drop_m: Number = 0.0
    session: str = ""
    is_race: bool = False
    flat_m: Number = 0.0
    drift: Number | None = None
