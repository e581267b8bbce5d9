"""Heights of a line mended: missing, put in for want of one, jumping, in feet."""

from __future__ import annotations

from collections.abc import Collection

import numpy as np

from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, Quantity, message
from ultraplanner_gui.plan.reading import Repair, RepairKind
from ultraplanner_gui.science.elevation import M_PER_FOOT, is_in_feet, spikes, zero_fillers

# OWN limits of what is a height, in metres; and, not yet known to be in feet, in either unit.
LOWEST_M, HIGHEST_M = -1_000.0, 10_000.0
LOWEST, HIGHEST = LOWEST_M / M_PER_FOOT, HIGHEST_M / M_PER_FOOT


def mended_heights(
    distance: FloatArray, elevation: FloatArray, without: Collection[RepairKind] = ()
) -> tuple[FloatArray, list[Message]]:
    """Return the heights with what is none made NaN, in metres, and what is said about them."""
    heights = elevation.copy()
    with np.errstate(invalid="ignore"):
        heights[(heights <= LOWEST) | (heights >= HIGHEST)] = np.nan
    missing = int(np.isnan(heights).sum())
    if missing == len(heights):
        return heights, [message(_NONE)]
    repairs: list[Message] = []
    if RepairKind.FILLERS not in without:
        fillers = zero_fillers(distance, heights)
        if fillers.any() and not heights[np.isfinite(heights) & ~fillers].size:
            return np.full(len(heights), np.nan), [Repair(_ZERO, (), RepairKind.FILLERS)]
        heights[fillers] = np.nan
        repairs += _filled(int(fillers.sum()), len(heights))
    heights, said = _in_metres(distance, heights, without)
    repairs += said
    with np.errstate(invalid="ignore"):
        heights[(heights <= LOWEST_M) | (heights >= HIGHEST_M)] = np.nan
    missing = int(np.isnan(heights).sum()) - sum(_count(r) for r in repairs)
    if missing:
        repairs.insert(0, message(_MISSING, Quantity(missing, "count"), _of(heights)))
    if RepairKind.SPIKES not in without:
        spiky = spikes(distance, heights) & np.isfinite(heights)
        if RepairKind.FILLERS in without:
            spiky &= heights != 0.0
        heights[spiky] = np.nan
        if spiky.any():
            args = Quantity(int(spiky.sum()), "count"), _of(heights)
            repairs.append(Repair(_SPIKES, args, RepairKind.SPIKES))
    return heights, repairs


_NONE = QT_TRANSLATE_NOOP(
    "Course", "The file has no heights: climb and drop are unknown, all counts as level."
)
_ZERO = QT_TRANSLATE_NOOP(
    "Course", "The file has no heights but 0: climb and drop are unknown, all counts as level."
)
_MISSING = QT_TRANSLATE_NOOP(
    "Course", "Height missing at {0} of {1} points: taken from the points about them."
)
_FILLERS = QT_TRANSLATE_NOOP(
    "Course", "Height 0 put in for want of one at {0} of {1} points: taken from those about them."
)
_SPIKES = QT_TRANSLATE_NOOP(
    "Course", "Heights that jump up or down and back were left out, at {0} of {1} points."
)
_FEET = QT_TRANSLATE_NOOP(
    "Course", "The heights look like feet, up to {0}: they were taken as such and made metres."
)


def _in_metres(
    distance: FloatArray, heights: FloatArray, without: Collection[RepairKind]
) -> tuple[FloatArray, list[Message]]:
    if RepairKind.FEET in without or not is_in_feet(distance, heights):
        return heights, []
    highest = f"{float(np.nanmax(heights)):,.0f}"
    return heights * M_PER_FOOT, [Repair(_FEET, (highest,), RepairKind.FEET)]


def _filled(fillers: int, points: int) -> list[Message]:
    if not fillers:
        return []
    args = Quantity(fillers, "count"), Quantity(points, "count")
    return [Repair(_FILLERS, args, RepairKind.FILLERS)]


def _count(repair: Message) -> int:
    first = repair.args[0] if repair.template == _FILLERS else 0
    return int(first.value) if isinstance(first, Quantity) else 0


def _of(heights: FloatArray) -> Quantity:
    return Quantity(len(heights), "count")
