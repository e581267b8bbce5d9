"""A race as it was run beside the plan: section by section, and where the minutes went.

The difference of each piece of the course is shared out among causes by their average marginal
effect over all orders (Shapley 1953, A value for n-person games, Annals of Mathematics Studies
28:307-317): it adds up, and no cause gains by being named first.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from enum import StrEnum
from itertools import combinations, pairwise
from math import factorial

import numpy as np

from ultraplanner_gui.engine.effort_clock import SMALL_HOURS_EXTRA
from ultraplanner_gui.engine.environment import descent_weight
from ultraplanner_gui.engine.light import dark_share, small_hours
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.outlook_race import RaceFigures
from ultraplanner_gui.engine.recorded_pace import standing_until
from ultraplanner_gui.engine.recording_match import OnCourse, on_course
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.recording import Recording
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.gradient_cost import pace_cost

PIECE_M = 200.0
#: Less of the course than this is no race to look back on (own rule).
LEAST_M = 2_000.0
#: Where the recording has no point for so far, its times are a straight line (own rule).
HOLE_M = 1_000.0
#: A recording that begins no further from the start than this began with it (own rule).
_AT_START_M = 300.0
#: One who stands so near to an aid station has come to it (own rule).
_BEFORE_STOP_M = 25.0
#: How far fade, uphill share, speed downhill and night of one day may lie from the plan's (OWN).
_OF_A_DAY = np.array([0.10, 0.30, 0.30, 0.10])
_HUBER, _NORMAL_MAD, _ROUNDS = 1.345, 1.4826, 12
#: A piece that took longer or shorter by more than this factor had a reason of its own.
_FAR = 1.6


class Cause(StrEnum):
    """Why it took longer or shorter than planned."""

    SPEED = "speed"
    GROUND = "ground"
    FADE = "fade"
    DARK = "dark"
    STOPS = "stops"
    REST = "the rest"


class Minutes(Value, frozen=True):
    """Seconds more than planned by cause; they add up to the difference."""

    speed_s: float = 0.0
    ground_s: float = 0.0
    fade_s: float = 0.0
    dark_s: float = 0.0
    stops_s: float = 0.0
    rest_s: float = 0.0

    @property
    def total_s(self) -> float:
        """All of it."""
        return sum(map(self.of, Cause))

    def of(self, cause: Cause) -> float:
        """Return what *cause* took, seconds."""
        return float(getattr(self, _FIELDS[cause]))


_FIELDS = {
    Cause.SPEED: "speed_s",
    Cause.GROUND: "ground_s",
    Cause.FADE: "fade_s",
    Cause.DARK: "dark_s",
    Cause.STOPS: "stops_s",
    Cause.REST: "rest_s",
}


class SectionBack(Value, frozen=True):
    """One section, from the arrival before it to the arrival at its end, as far as it was recorded.

    `start_m` and `end_m` bound what is compared, `share` is how much of the section that is.
    Times of arrival are race time, the real one None where the end was not reached. Standing is
    in `planned_s` and `real_s`. `in_hand_s` is the time in hand there really was.
    """

    key: str
    start_m: float
    end_m: float
    share: float
    planned_arrive_s: float
    real_arrive_s: float | None
    planned_s: float
    real_s: float
    planned_stop_s: float
    real_stop_s: float
    in_hand_s: float | None
    to_cutoff_s: float | None
    minutes: Minutes

    @property
    def length_m(self) -> float:
        """Length of what is compared."""
        return self.end_m - self.start_m

    @property
    def planned_s_per_m(self) -> float:
        """Pace planned while moving."""
        return (self.planned_s - self.planned_stop_s) / self.length_m

    @property
    def real_s_per_m(self) -> float:
        """Pace run while moving."""
        return (self.real_s - self.real_stop_s) / self.length_m


class LookBack(Value, frozen=True, eq=False):
    """A race beside its plan.

    `edge_m` are the ends of pieces of the course, shape (n + 1,), `planned_s` and `real_s` race
    time at them, `by_cause` seconds more than planned per piece, each of shape (n,).
    `off_share` is how much of the run was off the line, `has_hole` whether part of it was not
    recorded.
    """

    sections: tuple[SectionBack, ...]
    minutes: Minutes
    edge_m: FloatArray
    planned_s: FloatArray
    real_s: FloatArray
    by_cause: Mapping[Cause, FloatArray]
    is_whole: bool
    off_share: float
    has_hole: bool

    @property
    def unexplained(self) -> float:
        """What no cause explains, over the time of what was recorded."""
        return abs(self.minutes.rest_s) / float(self.real_s[-1] - self.real_s[0])


def look_back(outlook: Outlook, recording: Recording) -> LookBack:
    """Return *recording* beside the target of *outlook*.

    What was recorded of the course is used: it may begin late, end early or have a hole. PlanError
    where less than 2 km of the course are in it.
    """
    race, course = outlook.race, outlook.project.course
    if race is None or course is None:
        raise PlanError(QT_TRANSLATE_NOOP("Plan", "There is no course yet. Open a GPX file first."))
    since_s = 0.0 if recording.start is None else outlook.project.race.elapsed(recording.start)
    laid = on_course(course, recording, race.target.distance_at(max(0.0, since_s)))
    if laid.to_m - laid.from_m < LEAST_M:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Plan",
                "This recording is not of this course. Choose another, or match it to a session.",
            )
        )
    return _compared(outlook.project, race, recording, laid)


def _compared(
    project: Project, race: RaceFigures, recording: Recording, laid: OnCourse
) -> LookBack:
    ends = [s.end_m for s in race.sections if laid.from_m < s.end_m < laid.to_m]
    edges = _edges(laid.from_m, laid.to_m, ends)
    clock_s = _race_clock(project, recording, laid)
    come_m = edges - np.isin(edges, [stop.at_m for stop in race.target.stops]) * _BEFORE_STOP_M
    real_s = _first_passing(come_m, laid.place_m, clock_s)
    still_s = np.interp(real_s - clock_s[0], *standing_until(recording))
    real_moving = np.diff(real_s - still_s)
    planned_s = np.asarray(race.target.arrivals_s(edges.tolist()))
    planned_moving = np.diff(np.interp(edges, race.target.distance_m, race.target.moving_s))
    planned_stop = np.diff(planned_s) - planned_moving
    both = _Both(edges, planned_s, real_s, planned_moving, real_moving)
    causes = _shared_out(planned_moving, _ratios(project, race, both))
    causes[Cause.STOPS] = np.diff(still_s) - planned_stop
    explained = planned_moving + sum(causes[c] for c in _MOVING)
    causes[Cause.REST] = real_moving - explained
    sections = tuple(
        _section(s, edges, planned_s, real_s, planned_stop, np.diff(still_s), causes)
        for s in race.sections
        if s.end_m > laid.from_m + 1.0 and s.start_m < laid.to_m - 1.0
    )
    return LookBack(
        sections=sections,
        minutes=_minutes(causes, slice(None)),
        edge_m=edges,
        planned_s=planned_s,
        real_s=real_s,
        by_cause=causes,
        is_whole=laid.share > 0.99,
        off_share=laid.off_share,
        has_hole=bool((np.diff(laid.place_m) > HOLE_M).any()),
    )


class _Both(Value, frozen=True, eq=False):
    """Planned and real at the ends of pieces, shape (n + 1,); moving within them, shape (n,)."""

    edge_m: FloatArray
    planned_s: FloatArray
    real_s: FloatArray
    planned_moving_s: FloatArray
    real_moving_s: FloatArray


_MOVING = (Cause.SPEED, Cause.GROUND, Cause.FADE, Cause.DARK)


def _shared_out(planned: FloatArray, ratios: Mapping[Cause, FloatArray]) -> dict[Cause, FloatArray]:
    """Return by cause what multiplying *planned* by all *ratios* adds to it, per piece.

    The Shapley value of each: exact, as there are few causes.
    """
    causes = tuple(ratios)
    time_of: dict[frozenset[Cause], FloatArray] = {}
    for count in range(len(causes) + 1):
        for some in combinations(causes, count):
            product = planned.copy()
            for cause in some:
                product = product * ratios[cause]
            time_of[frozenset(some)] = product
    shares: dict[Cause, FloatArray] = {}
    n = len(causes)
    for cause in causes:
        share = np.zeros(len(planned))
        for before, time in time_of.items():
            if cause not in before:
                weight = factorial(len(before)) * factorial(n - len(before) - 1) / factorial(n)
                share += weight * (time_of[before | {cause}] - time)
        shares[cause] = share
    return shares


def _ratios(project: Project, race: RaceFigures, both: _Both) -> dict[Cause, FloatArray]:
    """Return for each cause by what it multiplies the time of each piece."""
    runner = project.runner
    slope = np.interp(_middles(both.edge_m), race.profile.distance_m, race.profile.gradient)
    planned_clock = np.maximum(_middles(both.planned_s), 0.0)
    real_clock = np.maximum(_middles(both.real_s), 0.0)
    planned_dark = _dark(project, race, planned_clock)
    real_dark = _dark(project, race, real_clock)
    planned_fade = runner.fade * project.pacing.fade_share
    planned_night = -math.log(1.0 - runner.night_loss)
    by_plan = planned_fade * _hours(planned_clock, runner) + planned_night * planned_dark
    columns = np.array([_hours(real_clock, runner), *_ground(slope, runner), real_dark])
    usual = np.array([planned_fade, 0.0, 0.0, planned_night])
    fade, uphill, descent, night = _as_run(both, by_plan, columns, usual)
    ground = np.exp(uphill * columns[1] + descent * columns[2])
    tired = np.exp(fade * columns[0] - planned_fade * _hours(planned_clock, runner))
    dark = np.exp(night * real_dark - planned_night * planned_dark)
    known = both.planned_moving_s * ground * tired * dark
    return {
        Cause.SPEED: np.full(len(known), _slower(known, both.real_moving_s)),
        Cause.GROUND: ground,
        Cause.FADE: tired,
        Cause.DARK: dark,
    }


def _as_run(
    both: _Both, by_plan: FloatArray, columns: FloatArray, usual: FloatArray
) -> tuple[float, float, float, float]:
    """Return fade, what climbs and descents took more than usual, and the night, as on this day.

    By robust regression (Huber 1964, Ann Math Stat 35:73-101) of the log of the time each piece
    took, held to *usual* as far as a day may differ (OWN: `_OF_A_DAY`).
    """
    good = (both.planned_moving_s > 0.0) & (both.real_moving_s > 0.0)
    if good.sum() < len(usual) + 2:
        fade, uphill, descent, night = usual.tolist()
        return fade, uphill, descent, night
    took = np.log(both.real_moving_s[good] / both.planned_moving_s[good]) + by_plan[good]
    matrix = np.column_stack([np.ones(int(good.sum())), *columns[:, good]])
    took = took - matrix[:, 1:] @ usual
    held = np.diag([0.0, *(1.0 / np.square(_OF_A_DAY))])
    found: FloatArray = np.zeros(matrix.shape[1])
    for _ in range(_ROUNDS):
        residual = took - matrix @ found
        scale = max(_NORMAL_MAD * float(np.median(np.abs(residual))), 1e-4)
        weight: FloatArray = np.minimum(1.0, _HUBER * scale / np.maximum(np.abs(residual), 1e-12))
        normal = matrix.T @ (matrix * weight[:, None]) + scale**2 * held
        found = np.asarray(np.linalg.solve(normal, matrix.T @ (weight * took)), dtype=np.float64)
    fade, uphill, descent, night = (usual + found[1:]).tolist()
    return fade, uphill, descent, night


def _ground(slope: FloatArray, runner: Runner) -> tuple[FloatArray, FloatArray]:
    """Return how the log of the cost answers the uphill share, and speed lost downhill."""
    step = 1e-3
    cost = np.log(pace_cost(slope, runner.uphill_share))
    more = np.log(pace_cost(slope, runner.uphill_share + step))
    return np.asarray((more - cost) / step), descent_weight(slope)


def _hours(clock_s: FloatArray, runner: Runner) -> FloatArray:
    return np.log1p(clock_s / 3600.0 / runner.fade_onset_h)


def _slower(known_s: FloatArray, moving_s: FloatArray) -> float:
    """Return by how much all took longer; a piece far from the usual counts as not so far."""
    good = (known_s > 0.0) & (moving_s > 0.0)
    if not good.any():
        return 1.0
    usual = float(np.median((moving_s / known_s)[good]))
    likely = np.clip(moving_s[good], known_s[good] * usual / _FAR, known_s[good] * usual * _FAR)
    return float(likely.sum() / known_s[good].sum())


def _middles(edges: FloatArray) -> FloatArray:
    return (edges[1:] + edges[:-1]) / 2.0


def _dark(project: Project, race: RaceFigures, clock_s: FloatArray) -> FloatArray:
    start, place = project.race.start, race.profile
    dark = dark_share(start, clock_s, place.latitude_deg, place.longitude_deg)
    late = small_hours(start, clock_s, place.longitude_deg)
    return np.asarray(dark * (1.0 + SMALL_HOURS_EXTRA * late), dtype=np.float64)


def _section(
    section: SectionFigures,
    edges: FloatArray,
    planned_s: FloatArray,
    real_s: FloatArray,
    planned_stop: FloatArray,
    real_stop: FloatArray,
    causes: Mapping[Cause, FloatArray],
) -> SectionBack:
    first = int(np.argmin(np.abs(edges - max(section.start_m, edges[0]))))
    last = int(np.argmin(np.abs(edges - min(section.end_m, edges[-1]))))
    part = slice(first, last)
    is_reached = edges[-1] >= section.end_m - 1.0
    arrived_s = float(real_s[last]) if is_reached else None
    late_s = None if arrived_s is None else arrived_s - section.arrive_s
    return SectionBack(
        key=section.key,
        start_m=float(edges[first]),
        end_m=float(edges[last]),
        share=float(edges[last] - edges[first]) / section.length_m,
        planned_arrive_s=section.arrive_s,
        real_arrive_s=arrived_s,
        planned_s=float(planned_s[last] - planned_s[first]),
        real_s=float(real_s[last] - real_s[first]),
        planned_stop_s=float(planned_stop[part].sum()),
        real_stop_s=float(real_stop[part].sum()),
        in_hand_s=_less(section.in_hand_s, late_s),
        to_cutoff_s=_less(section.cutoff_s, arrived_s),
        minutes=_minutes(causes, part),
    )


def _less(value: float | None, other: float | None) -> float | None:
    return None if value is None or other is None else value - other


def _minutes(causes: Mapping[Cause, FloatArray], part: slice) -> Minutes:
    return Minutes(*(float(causes[cause][part].sum()) for cause in Cause))


def _edges(from_m: float, to_m: float, ends: Sequence[float]) -> FloatArray:
    """Return the ends of pieces of about 200 m, with those of sections among them."""
    knots = [from_m, *ends, to_m]
    pieces = [
        np.linspace(a, b, max(1, round((b - a) / PIECE_M)) + 1)[:-1] for a, b in pairwise(knots)
    ]
    return np.concatenate([*pieces, [to_m]])


def _race_clock(project: Project, recording: Recording, laid: OnCourse) -> FloatArray:
    """Return race time at each point.

    A recording from the start line begins at nought, whatever its clock says; one that begins
    later is set by the time of day, and by the target where it has none.
    """
    elapsed_s = recording.elapsed_s - recording.elapsed_s[0]
    if laid.from_m <= _AT_START_M or recording.start is None:
        first = int(np.flatnonzero(laid.is_on)[0])
        return np.asarray(elapsed_s - elapsed_s[first], dtype=np.float64)
    return np.asarray(elapsed_s + project.race.elapsed(recording.start), dtype=np.float64)


def _first_passing(edges: FloatArray, place_m: FloatArray, clock_s: FloatArray) -> FloatArray:
    """Return when each place was come to first, never falling."""
    places, first = np.unique(place_m, return_index=True)
    return np.maximum.accumulate(np.interp(edges, places, clock_s[first]))
