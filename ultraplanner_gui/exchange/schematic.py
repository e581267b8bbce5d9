"""A line made up for a course of which only figures are known: its hills and its way are invented.

Each leg goes up and down in equal hills, up first, so that its end lies in a hollow where it has
both climb and drop. One hill to each started 5 km, and none lower than 60 m if there is a choice;
climbs and drops of a leg have one mean gradient. A slope is half a wave of the cosine, level at
both ends. The way runs due north or south towards the equator. (All of it: OWN.)
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

import numpy as np
import numpy.typing as npt

from ultraplanner_gui.engine.profile import GRID_M, MOST_PIECES, THRESHOLD_M, WINDOW_M
from ultraplanner_gui.plan.course import FloatArray, Line
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.elevation import moving_mean
from ultraplanner_gui.science.geodesy import distance_along

IndexArray = npt.NDArray[np.intp]

HILL_EVERY_M = 5_000.0
LOWEST_HILL_M = 60.0
SHORTEST_SLOPE_M = 200.0
POINT_EVERY_M = 20.0
LEAST_POINTS = 8
MOST_POINTS = 100_000
#: Just over the least rise or drop the profile counts, so that rounding cannot lose it.
COUNTED_M = THRESHOLD_M + 0.02
ROUNDS = 12
EXACT_M = 0.002
M_PER_DEGREE = 111_195.0


class Leg(Value, frozen=True):
    """One leg: where it ends, metres from the start, and its climb and drop, metres."""

    end_m: float
    climb_m: float = 0.0
    drop_m: float = 0.0


class _Turn(Value, frozen=True):
    """A top or hollow: which knots make it, and where on the grid nothing is higher or lower."""

    knots: slice
    is_top: bool
    near: slice


class _Slope(Value, frozen=True):
    """A stretch that goes one way: its length and how much higher its end lies."""

    length_m: float
    rise_m: float


def schematic_line(
    legs: Sequence[Leg], latitude_deg: float = 0.0, longitude_deg: float = 0.0
) -> tuple[Line, FloatArray]:
    """Return a line with the lengths, climbs and drops of *legs*, and how far each of its points
    lies from the start, metres.

    Climb and drop are those `engine.profile` counts. What a leg has of them below the least it
    counts is carried over to the legs after it. The start is at height 0.
    """
    slopes = [slope for leg in _counted(legs) for slope in _slopes(*leg)]
    turns_m = np.concatenate(([0.0], np.cumsum([slope.length_m for slope in slopes])))
    wanted_m = np.concatenate(([0.0], np.cumsum([slope.rise_m for slope in slopes])))
    turns_m *= legs[-1].end_m / turns_m[-1]
    along, slope_of, share = _points(turns_m)
    heights_m = _fitted(along, slope_of, share, turns_m, wanted_m)
    latitude = _latitudes(along, latitude_deg)
    return Line(latitude, np.full(len(along), longitude_deg), heights_m), along


def _counted(legs: Sequence[Leg]) -> list[tuple[float, float, float]]:
    """Return length, climb and drop of each leg with what is too little to count carried over."""
    counted: list[tuple[float, float, float]] = []
    start_m = up_m = down_m = 0.0
    for leg in legs:
        climb_m, up_m = _carried(leg.climb_m, up_m)
        drop_m, down_m = _carried(leg.drop_m, down_m)
        counted.append((leg.end_m - start_m, climb_m, drop_m))
        start_m = leg.end_m
    return counted


def _carried(amount_m: float, carried_m: float) -> tuple[float, float]:
    """Return what is laid out of *amount_m* and *carried_m*, and what is left to carry on."""
    there_m = amount_m + carried_m
    if amount_m <= 0.0 or there_m < COUNTED_M / 2.0:
        return 0.0, there_m
    laid_m = max(there_m, COUNTED_M)
    return laid_m, there_m - laid_m


def _slopes(length_m: float, climb_m: float, drop_m: float) -> list[_Slope]:
    rises = [rise for rise in (climb_m, -drop_m) if rise]
    if not rises:
        return [_Slope(length_m, 0.0)]
    hills = 1
    if len(rises) == 2:
        room = max(1, int(min(climb_m, drop_m) / LOWEST_HILL_M))
        hills = min(math.ceil(length_m / HILL_EVERY_M), room)
    # Even a small rise gets some length, or smoothing would wipe it out.
    least_m = min(SHORTEST_SLOPE_M, length_m / (2 * hills * len(rises)))
    free_m = length_m / hills - least_m * len(rises)
    lengths = [least_m + free_m * abs(rise) / (climb_m + drop_m) for rise in rises]
    hill = [_Slope(m, rise / hills) for m, rise in zip(lengths, rises, strict=True)]
    return hill * hills


def _points(turns_m: FloatArray) -> tuple[FloatArray, IndexArray, FloatArray]:
    """Return places along the line, the number of the slope each lies on, and its share of it."""
    lengths = np.diff(turns_m)
    every_m = max(POINT_EVERY_M, float(turns_m[-1]) / MOST_POINTS)
    counts = np.maximum(np.ceil(lengths / every_m), LEAST_POINTS).astype(np.intp)
    slope_of = np.repeat(np.arange(len(lengths)), counts)
    first = np.repeat(np.cumsum(counts) - counts, counts)
    share = (np.arange(len(slope_of)) - first) / counts[slope_of]
    along = turns_m[slope_of] + share * lengths[slope_of]
    return (
        np.append(along, turns_m[-1]),
        np.append(slope_of, len(lengths) - 1),
        np.append(share, 1.0),
    )


def _fitted(
    along: FloatArray,
    slope_of: IndexArray,
    share: FloatArray,
    turns_m: FloatArray,
    wanted_m: FloatArray,
) -> FloatArray:
    """Return heights that turn where *wanted_m* does once the profile has averaged them."""
    length_m = float(turns_m[-1])
    grid = np.linspace(0.0, length_m, max(1, min(MOST_PIECES, round(length_m / GRID_M))) + 1)
    window_m = max(WINDOW_M, float(grid[1]))
    # Level ground as wide as the window leaves a turn as high as it is; where there is no room
    # for that, the turn is laid higher or lower than it is to come out.
    level = np.minimum((window_m / 2.0 + float(grid[1])) / np.diff(turns_m), 0.2)[slope_of]
    middle = np.clip((share - level) / (1.0 - 2.0 * level), 0.0, 1.0)
    wave = (1.0 - np.cos(np.pi * middle)) / 2.0
    turns = _turns(turns_m, wanted_m, grid)
    laid_m = wanted_m.copy()
    for _ in range(ROUNDS):
        heights = laid_m[slope_of] + wave * np.diff(laid_m)[slope_of]
        smooth = moving_mean(along, heights, grid, window_m)
        off_m = 0.0
        for turn in turns:
            reached = smooth[turn.near].max() if turn.is_top else smooth[turn.near].min()
            miss = wanted_m[turn.knots.start] - float(reached)
            laid_m[turn.knots] += miss
            off_m = max(off_m, abs(miss))
        if off_m < EXACT_M:
            break
    return heights


def _turns(turns_m: FloatArray, wanted_m: FloatArray, grid: FloatArray) -> list[_Turn]:
    """Return where the heights turn between start and finish."""
    slopes = np.flatnonzero(np.diff(wanted_m)).tolist()
    signs = np.sign(np.diff(wanted_m))
    pairs = [(a, b) for a, b in pairwise(slopes) if signs[a] != signs[b]]
    found: list[_Turn] = []
    for number, (a, b) in enumerate(pairs):
        low_m = turns_m[pairs[number - 1][1]] if number else 0.0
        high_m = turns_m[pairs[number + 1][0] + 1] if number + 1 < len(pairs) else turns_m[-1]
        near = slice(
            int(np.searchsorted(grid, low_m)), int(np.searchsorted(grid, high_m, side="right"))
        )
        if near.stop > near.start:
            found.append(_Turn(slice(a + 1, b + 1), bool(signs[a] > 0.0), near))
    return found


def _latitudes(along: FloatArray, latitude_deg: float) -> FloatArray:
    """Return latitudes towards the equator at which the points lie *along* from the first."""
    way = -1.0 if latitude_deg > 0.0 else 1.0
    latitude = latitude_deg + way * along / M_PER_DEGREE
    for _ in range(ROUNDS):
        measured = distance_along(latitude, np.zeros(len(latitude)))
        miss = along - measured
        if np.abs(miss).max() < EXACT_M:
            break
        latitude = latitude + way * miss / M_PER_DEGREE
    return latitude
