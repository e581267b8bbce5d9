"""Which session a recording is of, whether it is the race, and how much of the course it is."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from datetime import date, timedelta

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.engine.course_scale import places_of_points
from ultraplanner_gui.engine.profile import line_distance
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.plan.course import Course, FloatArray, Line
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.recording import KeptRecording, Recording
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.geodesy import local_plane

#: A run begun before this hour may belong to the day before (own rule).
NIGHT_ENDS_H = 4
#: A recording of less or more than so much of a session is none of it (own rule).
LEAST_SHARE, MOST_SHARE = 0.4, 2.5
#: A run no further than this from the line is on the course (own rule: GPS and two sides of a
#: valley road); it is the race if it covers so much of the course.
OFF_LINE_M = 80.0
RACE_SHARE = 0.2
#: A run more than half of which is off the line is not the race (own rule).
MOST_OFF = 0.5
#: Files of one recording begin at one second and are of one length, but for rounding (own rule).
SAME_START_S = 2.0
SAME_LENGTH = 0.002
_STEP_M = 50.0
#: Points further apart are a hole; gaps so short close; what is shorter is a crossing (own rule).
_HOLE_M, _GAP_M, _CROSSING_M = 300.0, 300.0, 250.0
_AT_ONCE = 500
#: How far along the course one looks for the next place, so that laps and crossings keep order.
_AHEAD_M = 1_500.0
#: What is left of the course must hold the run, but for so much that devices measure too long.
_LONGER = 1.05
#: A metre along the course more or less than was run counts as so much beside the line.
_SURPRISE = 0.2


def local_day(recording: KeptRecording, project: Project) -> date | None:
    """Return the day *recording* began on where the race is, None without a time."""
    if recording.start is None:
        return None
    return recording.start.astimezone(project.race.start.tzinfo).date()


def is_same_run(one: KeptRecording, other: KeptRecording) -> bool:
    """Whether two files are of one recording: the same content, or the same start and length.

    Two devices on one run begin or measure apart and stay two recordings.
    """
    if one.key == other.key:
        return True
    if one.start is None or other.start is None:
        return False
    apart_s = abs((one.start - other.start).total_seconds())
    apart_m = abs(one.distance_m - other.distance_m)
    return apart_s <= SAME_START_S and apart_m <= SAME_LENGTH * max(one.distance_m, 1.0)


def matched(
    recording: KeptRecording,
    project: Project,
    taken: Iterable[str] = (),
    points: Recording | None = None,
) -> KeptRecording:
    """Return *recording* with the session it is of, or as the race, by its date and its line.

    Of several sessions of a day the one of the nearest distance counts; *taken* are keys of
    sessions that have a recording already. Without its *points* the line is not looked at.
    """
    day = local_day(recording, project)
    if day is None:
        return recording
    if _is_race(recording, project, points):
        races = [s.key for s in project.block.sessions if s.kind is Kind.RACE]
        return replace(recording, is_race=True, session=races[0] if races else "")
    found = _nearest(recording, project.block.sessions, _days(recording, project, day), set(taken))
    return recording if found is None else replace(recording, session=found.key)


def all_matched(
    recordings: Sequence[KeptRecording],
    project: Project,
    points: Callable[[KeptRecording], Recording] | None = None,
) -> tuple[KeptRecording, ...]:
    """Return *recordings* matched one after another, the longest first, so that none shares.

    *points* reads those of a recording; it is asked only where the date could be the race's.
    """
    taken = {r.session for r in project.recordings if r.session}
    found: dict[str, KeptRecording] = {}
    for recording in sorted(recordings, key=lambda r: -r.distance_m):
        known = points(recording) if points and is_race_time(recording, project) else None
        one = matched(recording, project, taken, known)
        found[one.key] = one
        if one.session:
            taken.add(one.session)
    return tuple(found[r.key] for r in recordings)


Span = tuple[float, float]


class OnCourse(Value, frozen=True, eq=False):
    """A recording laid on a course: the place of each of its points and whether it is on the line.

    `place_m` of shape (n,) never falls, metres from the start as the course counts them; `share`
    is how much of the course was run, `off_share` how much of the run was off it.
    """

    place_m: FloatArray
    is_on: np.typing.NDArray[np.bool_]
    from_m: float
    to_m: float
    share: float
    off_share: float


def on_course(course: Course, recording: Recording, likely_m: float = 0.0) -> OnCourse:
    """Lay *recording* on *course*.

    Each point takes the nearest place of the line ahead of the one before, so that laps and ways
    there and back keep their order; where the run leaves the line its place waits. Of several
    passes where it may begin, that nearest to *likely_m* counts.
    """
    along, grid, run = _on_one_plane(course, recording.line)
    run_m = line_distance(recording.line)
    place, is_on = np.empty(len(run_m)), np.zeros(len(run_m), dtype=bool)
    now, last_on = _first_place(run[:, 0], grid, float(run_m[-1]), likely_m), 0
    for i in range(len(run_m)):
        since_m = run_m[i] - run_m[last_on]
        # away from the line one may have skipped as much of it as one has run, and more
        part = slice(now, now + 1 + round((_AHEAD_M + 2.0 * since_m) / _STEP_M))
        apart = np.hypot(grid[0, part] - run[0, i], grid[1, part] - run[1, i])
        near = np.flatnonzero(apart <= OFF_LINE_M)
        if len(near):
            # of two arms of a bend the one where the way run leads
            surprise = np.abs(along[part][near] - along[now] - since_m)
            now += int(near[np.argmin(apart[near] + _SURPRISE * surprise)])
            is_on[i], last_on = True, i
            place[i] = along[now] + _beside(run[:, i], grid[:, max(0, now - 1) : now + 2], now > 0)
        else:
            place[i] = place[i - 1] if i else along[now]
    steps = np.diff(run_m)
    off = float(steps[~is_on[1:]].sum() / steps.sum()) if steps.sum() > 0.0 else 0.0
    on = np.flatnonzero(is_on)
    from_m, to_m = (float(place[on[0]]), float(place[on[-1]])) if len(on) else (0.0, 0.0)
    return OnCourse(place, is_on, from_m, to_m, (to_m - from_m) / course.length_m, off)


class Covered(Value, frozen=True):
    """Which stretches of a course a run covered, in whatever order and direction.

    `spans_m` are their starts and ends along the course, `share` what they make of it, and
    `off_share` how much of the run was off the line.
    """

    spans_m: tuple[Span, ...]
    share: float
    off_share: float


def covered(course: Course, recording: Recording) -> Covered:
    """Return which stretches of *course* lie within 80 m of the way of *recording*."""
    along, grid, run = _on_one_plane(course, recording.line)
    way = _thinned(run, line_distance(recording.line))
    is_off = np.ones(way.shape[1], dtype=bool)
    is_run = np.zeros(len(along), dtype=bool)
    for first in range(0, way.shape[1], _AT_ONCE):
        part = way[:, first : first + _AT_ONCE]
        apart = np.hypot(part[0][:, None] - grid[0], part[1][:, None] - grid[1])
        is_near = apart <= OFF_LINE_M
        is_off[first : first + _AT_ONCE] = ~is_near.any(axis=1)
        is_run |= is_near.any(axis=0)
    spans = _spans(along, is_run)
    share = sum(end - start for start, end in spans) / course.length_m
    return Covered(spans, min(1.0, share), float(is_off.mean()))


def _thinned(run: FloatArray, run_m: FloatArray) -> FloatArray:
    """Return places every 50 m of a way, without those nobody recorded, shape (2, n)."""
    places = np.linspace(0.0, run_m[-1], max(2, round(run_m[-1] / _STEP_M) + 1))
    after = np.clip(np.searchsorted(run_m, places), 1, len(run_m) - 1)
    is_known = run_m[after] - run_m[after - 1] <= _HOLE_M
    known = places[is_known] if is_known.any() else places
    return np.vstack([np.interp(known, run_m, axis) for axis in run])


def _spans(along: FloatArray, is_run: np.typing.NDArray[np.bool_]) -> tuple[Span, ...]:
    """Return the stretches of places that were run; short gaps close, crossings are left out."""
    spans: list[Span] = []
    for place in along[is_run].tolist():
        if spans and place - spans[-1][1] <= _GAP_M:
            spans[-1] = (spans[-1][0], place)
        else:
            spans.append((place, place))
    return tuple(span for span in spans if span[1] - span[0] >= _CROSSING_M)


def _on_one_plane(course: Course, line: Line) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Return places every 50 m of the course, and those and the points of *line* in metres east
    and north, each of shape (2, n).
    """
    along = places_of_points(course)
    grid = np.linspace(0.0, course.length_m, max(2, round(course.length_m / _STEP_M) + 1))
    latitude = np.interp(grid, along, course.line.latitude_deg)
    longitude = np.interp(grid, along, course.line.longitude_deg)
    both = local_plane(
        np.concatenate((latitude, line.latitude_deg)),
        np.concatenate((longitude, line.longitude_deg)),
    )
    plane = np.vstack(both)
    return grid, plane[:, : len(grid)], plane[:, len(grid) :]


def _first_place(start: FloatArray, grid: FloatArray, run_m: float, likely_m: float) -> int:
    """Return where on the grid the run begins: where a pass of its start begins.

    Of the passes with room for the run ahead, the one nearest to *likely_m*; else the first.
    """
    apart = np.hypot(grid[0] - start[0], grid[1] - start[1])
    near = np.flatnonzero(apart <= max(OFF_LINE_M, float(apart.min()) + _STEP_M))
    passes = near[np.diff(near, prepend=-2) > 1]
    left_m = _STEP_M * (grid.shape[1] - 1 - passes)
    fitting = passes[left_m * _LONGER + _STEP_M >= run_m]
    if not len(fitting):
        return int(near[0])
    return int(fitting[np.argmin(np.abs(fitting * _STEP_M - likely_m))])


def _beside(point: FloatArray, grid: FloatArray, has_before: bool) -> float:
    """Return how far along the line *point* lies from the middle place, or the first, of *grid*."""
    middle = grid[:, 1] if has_before else grid[:, 0]
    best, at_m = np.inf, 0.0
    for sign, end in ((-1.0, grid[:, 0]), (1.0, grid[:, -1])):
        way = end - middle
        length = float(np.hypot(*way))
        if length > 0.0:
            share = float(np.clip((point - middle) @ way / length**2, 0.0, 1.0))
            apart = float(np.hypot(*(point - middle - share * way)))
            if apart < best:
                best, at_m = apart, sign * share * min(length, _STEP_M)
    return at_m


def is_race_time(recording: KeptRecording, project: Project) -> bool:
    """Whether *recording* began within the race, or shortly before it."""
    start, race = recording.start, project.race
    if start is None or project.course is None:
        return False
    early, late = race.start - timedelta(hours=3), race.clock(max(race.goal_s, race.limit_s or 0.0))
    return early <= start <= late


def _is_race(recording: KeptRecording, project: Project, points: Recording | None) -> bool:
    course = project.course
    if course is None or not is_race_time(recording, project):
        return False
    if recording.distance_m < RACE_SHARE * course.length_m:
        return False
    if points is None:
        return True
    found = covered(course, points)
    return found.off_share <= MOST_OFF and found.share >= RACE_SHARE / 2.0


def _days(recording: KeptRecording, project: Project, day: date) -> tuple[date, ...]:
    start = recording.start
    hour = start.astimezone(project.race.start.tzinfo).hour if start is not None else 12
    return (day, day - timedelta(days=1)) if hour < NIGHT_ENDS_H else (day,)


def _nearest(
    recording: KeptRecording, sessions: Iterable[Session], days: Sequence[date], taken: set[str]
) -> Session | None:
    free = [s for s in sessions if s.day in days and s.key not in taken and _fits(s, recording)]
    return min(free, key=lambda s: abs(_planned_m(s) - recording.distance_m), default=None)


def _fits(session: Session, recording: KeptRecording) -> bool:
    if not session.kind.is_run or session.kind is Kind.RACE or session.missed:
        return False
    planned_m = _planned_m(session)
    if planned_m <= 0.0:
        return True
    return LEAST_SHARE <= recording.distance_m / planned_m <= MOST_SHARE


def _planned_m(session: Session) -> float:
    return session.done.distance_m if session.done is not None else session.distance_m
