"""Moving the start of the race by hand: on its flag, or by the light it would be run in."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from ultraplanner_gui.raceday.race_lane import RaceLane

STEP_S = 300.0


def shifted(start: datetime, by_s: float) -> datetime:
    """Return *start* moved by the wall clock, as far as its day reaches."""
    clock = start.replace(tzinfo=None) + timedelta(seconds=by_s)
    first = start.replace(tzinfo=None, hour=0, minute=0, second=0, microsecond=0)
    last = first + timedelta(days=1, seconds=-STEP_S)
    return min(max(clock, first), last).replace(tzinfo=start.tzinfo)


def started(lane: RaceLane, start: datetime, by_px: float, free: bool) -> datetime:
    """Return where a start at *start* is put when it is dragged by *by_px*, snapped or *free*."""
    width, axis = lane.body().width(), lane.axis
    if axis.measure == "clock":
        px_per_s = axis.unit_px(width)
    else:
        px_per_s = width / max(axis.time_at(width, width) - axis.time_at(0.0, width), 1.0)
    clock = start.replace(tzinfo=None) + timedelta(seconds=by_px / px_per_s)
    return lane.snap.start(clock, px_per_s, free)
