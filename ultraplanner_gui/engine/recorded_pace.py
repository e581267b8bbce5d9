"""A recorded run as pieces of equal length: how steep, how long it took, standing time apart."""

from __future__ import annotations

from itertools import pairwise

import numpy as np

from ultraplanner_gui.engine.profile import Profile, build_profile, line_distance
from ultraplanner_gui.plan.course import Course, FloatArray
from ultraplanner_gui.plan.recording import Recording
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.geodesy import distance_along

PIECE_M = 150.0

# OWN: who gets no further than 6 m in 20 s stands, if it lasts over half a minute.
_LOOK_S = 10.0
_STANDING_M = 6.0
_SHORTEST_STOP_S = 30.0
# OWN: a piece faster or slower than these is a fault of the recording.
_FASTEST_MPS = 8.0
_SLOWEST_MPS = 0.25


class RecordedPace(Value, frozen=True, eq=False):
    """A recording in pieces of about 150 m, arrays of shape (n,).

    `is_sound` are pieces without a stop, a gap or an impossible speed. `passed_s` is the race
    time at the middle of a piece, standing included; `moving_s` the running time in it.
    `stops_s` are the lengths of the stops.
    """

    profile: Profile
    gradient: FloatArray
    length_m: FloatArray
    moving_s: FloatArray
    passed_s: FloatArray
    is_sound: np.typing.NDArray[np.bool_]
    stops_s: tuple[float, ...]

    @property
    def standing_s(self) -> float:
        """All stops together."""
        return sum(self.stops_s)


def recorded_pace(recording: Recording) -> RecordedPace:
    """Return *recording* cut into pieces."""
    along_m = line_distance(recording.line)
    profile = build_profile(Course(recording.line, float(along_m[-1])))
    pieces = max(1, round(profile.length_m / PIECE_M))
    edges_m = np.linspace(0.0, profile.length_m, pieces + 1)
    stops = _stops(recording)
    clock_s = recording.elapsed_s - recording.elapsed_s[0]
    still_s = sum((_overlap(clock_s, *stop) for stop in stops), np.zeros(len(clock_s)))
    elapsed_s = _first_passing(edges_m, along_m, clock_s)
    moving_s = np.diff(_first_passing(edges_m, along_m, clock_s - still_s))
    length_m = np.diff(edges_m)
    is_sound = (length_m < _FASTEST_MPS * moving_s) & (length_m > _SLOWEST_MPS * moving_s)
    is_sound &= moving_s > np.diff(elapsed_s) - 1.0
    for gap in recording.line.gaps:
        at = int(np.clip(np.searchsorted(edges_m, along_m[gap]) - 1, 0, pieces - 1))
        is_sound[at] = False
    rise_m = np.diff(np.interp(edges_m, profile.distance_m, profile.elevation_m))
    return RecordedPace(
        profile=profile,
        gradient=rise_m / length_m,
        length_m=length_m,
        moving_s=moving_s,
        passed_s=(elapsed_s[:-1] + elapsed_s[1:]) / 2.0,
        is_sound=is_sound,
        stops_s=tuple(end_s - start_s for start_s, end_s in stops),
    )


def standing_until(recording: Recording) -> tuple[FloatArray, FloatArray]:
    """Return seconds from the first point and how much of them was stood until then, as the
    corners of a line, each of shape (n,).
    """
    corners = [corner for stop in _stops(recording) for corner in stop]
    lengths = [0.0, *(b - a for a, b in zip(corners[::2], corners[1::2], strict=True))]
    stood = np.repeat(np.cumsum(lengths), 2)[1:-1] if corners else np.zeros(0)
    last = float(recording.elapsed_s[-1] - recording.elapsed_s[0])
    total = float(sum(lengths))
    return (
        np.array([0.0, *corners, max(last, corners[-1] if corners else 0.0)]),
        np.concatenate(([0.0], stood, [total])),
    )


def _stops(recording: Recording) -> list[tuple[float, float]]:
    """Return start and end of every stop, seconds from the first point."""
    line = recording.line
    clock_s = recording.elapsed_s - recording.elapsed_s[0]
    times, first = np.unique(clock_s, return_index=True)
    if len(times) < 2:
        return []
    look = np.arange(0.0, times[-1] + 1.0, _LOOK_S / 2.0)
    ends = [np.clip(look + shift, 0.0, times[-1]) for shift in (-_LOOK_S, _LOOK_S)]
    latitude = [np.interp(end, times, line.latitude_deg[first]) for end in ends]
    longitude = [np.interp(end, times, line.longitude_deg[first]) for end in ends]
    apart_m = _apart(latitude, longitude)
    stands = apart_m <= _STANDING_M * (ends[1] - ends[0]) / (2.0 * _LOOK_S)
    turns = np.flatnonzero(np.diff(stands, prepend=False, append=False))
    # A look that sees no way reaches half its width beyond the standing it found, both ways.
    reach_s = _LOOK_S * 0.7
    found = []
    for start, end in pairwise(turns.tolist()):
        if not stands[start]:
            continue
        from_s = max(float(look[start]) - reach_s, 0.0)
        to_s = min(float(look[end - 1]) + reach_s, float(times[-1]))
        if to_s - from_s >= _SHORTEST_STOP_S:
            found.append((from_s, to_s))
    return found


def _apart(latitude: list[FloatArray], longitude: list[FloatArray]) -> FloatArray:
    """Return the distance between two places, many times."""
    both = np.column_stack(latitude).ravel(), np.column_stack(longitude).ravel()
    return np.diff(distance_along(*both))[::2]


def _overlap(clock_s: FloatArray, start_s: float, end_s: float) -> FloatArray:
    """Return how much of a stop is over at each time."""
    return np.clip(clock_s - start_s, 0.0, end_s - start_s)


def _first_passing(edges_m: FloatArray, along_m: FloatArray, clock_s: FloatArray) -> FloatArray:
    """Return when each place was come to."""
    places, first = np.unique(along_m, return_index=True)
    times = np.interp(edges_m, places, clock_s[first])
    times[-1] = clock_s[-1]
    return times
