"""Height along a line: holes filled, spikes found, noise smoothed away, climb and drop counted."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import numpy.typing as npt

FloatArray = npt.NDArray[np.float64]

SPIKE_HEIGHT_M = 30.0
SPIKE_SLOPE = 1.0
SPIKE_LENGTH_M = 500.0

M_PER_FOOT = 0.3048
# OWN limits of `is_in_feet`.
NO_RACE_ABOVE_M = 5_900.0
FEET_STEEP, FEET_STEEP_SHARE = 0.45, 0.08
FEET_GRID_M, FEET_LEAST_M = 100.0, 2_000.0
FEET_WHOLE, FEET_WHOLE_SHARE, FEET_LEAST_HEIGHTS = 0.02, 0.98, 20


def filled(distance_m: FloatArray, elevation_m: FloatArray) -> FloatArray:
    """Return the heights with NaN filled in along the line; level before the first and after the
    last that is known. At least one must be known.
    """
    known = np.isfinite(elevation_m)
    if known.all():
        return elevation_m
    return np.interp(distance_m, distance_m[known], elevation_m[known])


def spikes(distance_m: FloatArray, elevation_m: FloatArray) -> npt.NDArray[np.bool_]:
    """Return which heights are spikes: between a jump and a jump back, shape (n,).

    A jump is steeper than `SPIKE_SLOPE` and higher than `SPIKE_HEIGHT_M` within one step; the
    jump back comes within `SPIKE_LENGTH_M`. NaN counts as filled. (Limits: OWN.)
    """
    found = np.zeros(len(elevation_m), dtype=np.bool_)
    if not np.isfinite(elevation_m).any():
        return found
    heights = filled(distance_m, elevation_m)
    rise = np.diff(heights)
    opened: int | None = None
    for jump in np.flatnonzero(_jumps(distance_m, heights)).tolist():
        is_back = opened is not None and (
            rise[jump] * rise[opened] < 0.0
            and distance_m[jump] - distance_m[opened + 1] <= SPIKE_LENGTH_M
        )
        if opened is not None and is_back:
            found[opened + 1 : jump + 1] = True
        opened = None if is_back else jump
    return found


def zero_fillers(distance_m: FloatArray, elevation_m: FloatArray) -> npt.NDArray[np.bool_]:
    """Return which heights are zeros put in for want of a height, shape (n,).

    A run of zeros is filler if there is a jump (see `spikes`) wherever it begins or ends; the
    sea is come down to without one. (Rule: OWN.)
    """
    is_zero: npt.NDArray[np.bool_] = elevation_m == 0.0
    if is_zero.all():
        return is_zero
    is_jump = _jumps(distance_m, np.nan_to_num(elevation_m))
    found = np.zeros(len(elevation_m), dtype=np.bool_)
    edges = np.flatnonzero(np.diff(is_zero, prepend=False, append=False)).tolist()
    for first, end in zip(edges[::2], edges[1::2], strict=True):
        jumps_in = first == 0 or is_jump[first - 1]
        jumps_out = end == len(elevation_m) or is_jump[end - 1]
        found[first:end] = jumps_in and jumps_out
    return found


def is_in_feet(distance_m: FloatArray, elevation_m: FloatArray) -> bool:
    """Whether heights look like feet; NaN where unknown.

    One sign is enough: half the course higher than any is run in metres; whole metres once they
    are taken as feet, and not before; or so much of the way steeper than 45 % over 100 m as
    nobody runs, and hardly any of it once taken as feet. Gentle ground in feet looks like hilly
    ground in metres and is not noticed. (Rules: OWN.)
    """
    known = np.isfinite(elevation_m)
    heights = elevation_m[known]
    if len(heights) < 3:
        return False
    if float(np.median(heights)) > NO_RACE_ABOVE_M:
        return True
    return _are_whole_in_feet(heights) or _are_too_steep(distance_m[known], heights)


def _are_whole_in_feet(heights: FloatArray) -> bool:
    different = np.unique(heights)
    if len(different) < FEET_LEAST_HEIGHTS:
        return False

    def whole_share(values: FloatArray) -> float:
        return float((np.abs(values - np.round(values)) <= FEET_WHOLE).mean())

    as_feet = whole_share(different * M_PER_FOOT)
    return as_feet >= FEET_WHOLE_SHARE and whole_share(different) < 0.5


def _are_too_steep(distance: FloatArray, heights: FloatArray) -> bool:
    length = float(distance[-1] - distance[0])
    if length < FEET_LEAST_M:
        return False
    grid = np.linspace(distance[0], distance[-1], max(2, round(length / FEET_GRID_M)) + 1)
    smooth = moving_mean(distance, heights, grid, FEET_GRID_M)
    steep = np.abs(np.diff(smooth)) / (grid[1] - grid[0])
    too_steep = float((steep > FEET_STEEP).mean())
    return too_steep > FEET_STEEP_SHARE and bool(
        (steep * M_PER_FOOT > FEET_STEEP).mean() < FEET_STEEP_SHARE / 4.0
    )


def _jumps(distance_m: FloatArray, elevation_m: FloatArray) -> npt.NDArray[np.bool_]:
    rise = np.abs(np.diff(elevation_m))
    is_jump: npt.NDArray[np.bool_] = (rise > SPIKE_HEIGHT_M) & (
        rise > SPIKE_SLOPE * np.diff(distance_m)
    )
    return is_jump


def moving_mean(
    distance_m: FloatArray, elevation_m: FloatArray, at_m: FloatArray, window_m: float
) -> FloatArray:
    """Return the mean height over *window_m* about each place *at_m* of the line.

    The line is taken as straight between its points and mirrored through its two ends, so the
    heights there stay as they are, slopes are kept, and no convex cost of the gradient summed
    along the line can grow (Jensen's inequality: smoothed gradients are means of the given ones).
    """
    length = float(distance_m[-1] - distance_m[0])
    if length <= 0.0:
        return np.full(len(at_m), float(elevation_m.mean()))
    window = min(window_m, length)
    distance, elevation = _mirrored(distance_m, elevation_m, window / 2.0)
    step = np.diff(distance)
    area = np.concatenate(([0.0], np.cumsum(step * (elevation[1:] + elevation[:-1]) / 2.0)))

    def area_to(place: FloatArray) -> FloatArray:
        k = np.clip(np.searchsorted(distance, place, side="right") - 1, 0, len(step) - 1)
        into = place - distance[k]
        run = np.where(step[k] > 0.0, step[k], 1.0)
        slope = (elevation[k + 1] - elevation[k]) / run
        return np.asarray(area[k] + into * (elevation[k] + slope * into / 2.0), dtype=np.float64)

    return (area_to(at_m + window / 2.0) - area_to(at_m - window / 2.0)) / window


def _mirrored(
    distance_m: FloatArray, elevation_m: FloatArray, reach_m: float
) -> tuple[FloatArray, FloatArray]:
    head = int(np.searchsorted(distance_m, distance_m[0] + reach_m)) + 1
    tail = int(np.searchsorted(distance_m, distance_m[-1] - reach_m, side="right")) - 1

    def both_ways(values: FloatArray) -> FloatArray:
        before = 2.0 * values[0] - values[1:head][::-1]
        after = 2.0 * values[-1] - values[max(tail, 0) : -1][::-1]
        return np.concatenate((before, values, after))

    return both_ways(distance_m), both_ways(elevation_m)


def turning_points(elevation_m: FloatArray, threshold_m: float) -> list[int]:
    """Return the indices of the extremes between which climbs and drops are counted.

    A turn counts once the height has gone back by *threshold_m* from the extreme; the last leg
    runs to the last extreme. Empty if the height nowhere changes by the threshold.
    """
    heights = elevation_m.tolist()
    low = high = 0
    direction = 0
    turns: list[int] = []
    for i, height in enumerate(heights):
        if height > heights[high]:
            high = i
        if height < heights[low]:
            low = i
        if direction >= 0 and heights[high] - height >= threshold_m:
            turns.append(high)
            direction, low = -1, i
        elif direction <= 0 and height - heights[low] >= threshold_m:
            turns.append(low)
            direction, high = 1, i
    if direction:
        turns.append(high if direction > 0 else low)
    return turns


def climb_and_drop(elevation_m: FloatArray, threshold_m: float) -> tuple[FloatArray, FloatArray]:
    """Return climb and drop from the first point on, metres, both shape (n,) and not falling.

    Counted from extreme to extreme by `turning_points`, and within a leg where a new extreme is
    reached. A summing of every rise would grow with the number of points instead: noise of
    standard deviation s adds s / sqrt(pi) per step.
    """
    rise, fall = np.zeros(len(elevation_m)), np.zeros(len(elevation_m))
    turns = turning_points(elevation_m, threshold_m)
    for first, last in pairwise(turns):
        leg = elevation_m[first : last + 1]
        if leg[-1] > leg[0]:
            rise[first + 1 : last + 1] = np.diff(np.maximum.accumulate(leg))
        else:
            fall[first + 1 : last + 1] = -np.diff(np.minimum.accumulate(leg))
    return np.cumsum(rise), np.cumsum(fall)
