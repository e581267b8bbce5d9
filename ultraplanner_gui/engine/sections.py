"""Section figures: targets, arrivals, cutoffs, time in hand, arrival windows."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from ultraplanner_gui.engine.pacing import PacePlan, stopped_before
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.course import Course, FloatArray, Section
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError, Quantity
from ultraplanner_gui.plan.race import Race

# Own measurement: holds 80 % of real arrivals when the finish is met as planned.
WINDOW_AT_HALF = 0.09
WINDOW_POWER = 0.75
# OWN: how surely a runner knows the finish time beforehand, standard deviation over finish time.
FINISH_SPREAD = 0.04
NORMAL_90 = 1.28

LEAST_FREE_SHARE = 0.5
MOST_FREE_SHARE = 2.0


@dataclass(frozen=True, slots=True)
class SectionFigures:
    """One section, times in seconds of race time on the target curve unless said.

    `station` is the key of the aid station at its end, None at the finish or a free end.
    `arrive_s`, `leave_s` are at its end; `moving_s` is the running time in it (leave of the
    section before to arrival). `forecast_s` is the arrival on the forecast curve, `window_s`
    the 10th and 90th percentile of arrival about it. `cutoff_s` is None where there is none;
    `to_cutoff_s` cutoff minus the later of target and forecast arrival; `in_hand_s` how much
    later one could arrive at its end and still make this and every later cutoff at planned
    speed (None without one). `is_fixed` says that the runner fixed its target.
    """

    key: str
    station: str | None
    name: str
    start_m: float
    end_m: float
    climb_m: float
    drop_m: float
    moving_s: float
    arrive_s: float
    leave_s: float
    forecast_s: float
    window_s: tuple[float, float]
    cutoff_s: float | None
    to_cutoff_s: float | None
    in_hand_s: float | None
    is_fixed: bool

    @property
    def length_m(self) -> float:
        """Length of the section."""
        return self.end_m - self.start_m

    @property
    def pace_s_per_m(self) -> float:
        """Target pace while moving."""
        return self.moving_s / self.length_m


def shaped_target(course: Course, target: PacePlan, goal_s: float) -> PacePlan:
    """Return *target* with the sections the runner fixed at their times.

    The free sections share what is left so that the finish stays at *goal_s*; when all are
    fixed the finish moves. PlanError, naming the section, if the free ones would have to be
    run in less than half or more than twice their time.
    """
    fixed = [section.target_s for section in course.sections]
    if all(target_s is None for target_s in fixed):
        return target
    distance_m, moving_s = _with_ends(target, course.section_ends())
    knots_s = np.interp((0.0, *course.section_ends()), distance_m, moving_s)
    usual_s = np.diff(knots_s)
    stopped_s = sum(stop.stop_s for stop in target.stops)
    share = _free_share(course, usual_s, goal_s - stopped_s)
    wanted_s = [
        usual * share if target_s is None else target_s
        for usual, target_s in zip(usual_s, fixed, strict=True)
    ]
    moved_s = np.interp(moving_s, knots_s, np.concatenate(([0.0], np.cumsum(wanted_s))))
    elapsed_s = moved_s + stopped_before(target.stops, distance_m)
    if any(target_s is None for target_s in fixed):
        elapsed_s[-1] = goal_s
    return PacePlan(distance_m, elapsed_s, target.stops)


def section_figures(
    course: Course, race: Race, profile: Profile, forecast: PacePlan, target: PacePlan
) -> tuple[SectionFigures, ...]:
    """Return the figures of every section, in course order."""
    cutoffs = _latest_margins(course, race, forecast, target)
    at_station = {station.key: station.cutoff_s for station in course.stations}
    ends_m = course.section_ends()
    figures: list[SectionFigures] = []
    for section, (start_m, end_m) in zip(course.sections, pairwise((0.0, *ends_m)), strict=True):
        is_finish = end_m >= course.length_m
        cutoff_s = race.limit_s if is_finish else at_station.get(section.station or "")
        arrive_s, forecast_s = target.arrival_s(end_m), forecast.arrival_s(end_m)
        climb_m, drop_m = profile.climb_drop(start_m, end_m)
        later = [margin_s for at_m, margin_s in cutoffs if at_m >= end_m]
        figures.append(
            SectionFigures(
                key=section.key,
                station=section.station,
                name=course.end_name(section),
                start_m=start_m,
                end_m=end_m,
                climb_m=climb_m,
                drop_m=drop_m,
                moving_s=_moving_s(target, start_m, end_m),
                arrive_s=arrive_s,
                leave_s=target.departure_s(end_m),
                forecast_s=forecast_s,
                window_s=arrival_window(forecast_s, forecast.finish_s),
                cutoff_s=cutoff_s,
                to_cutoff_s=None if cutoff_s is None else cutoff_s - max(arrive_s, forecast_s),
                in_hand_s=min(later, default=None),
                is_fixed=section.target_s is not None,
            )
        )
    return tuple(figures)


def arrival_window(
    arrive_s: float, finish_s: float, spread: float = FINISH_SPREAD
) -> tuple[float, float]:
    """Return the 10th and 90th percentile of an arrival planned at *arrive_s*.

    Half-width 0.09 T (s (1 - s))^0.75 at the share s of the finish time T (own measurement),
    joined with a finish that scatters by *spread* of T, the two taken as independent.
    """
    share = arrive_s / finish_s
    course_s = WINDOW_AT_HALF * finish_s * max(share * (1.0 - share), 0.0) ** WINDOW_POWER
    half_s = math.hypot(course_s, NORMAL_90 * share * spread * finish_s)
    return max(arrive_s - half_s, 0.0), arrive_s + half_s


def tightest(sections: Sequence[SectionFigures]) -> SectionFigures | None:
    """Return the section whose end's cutoff leaves the least time; None without cutoffs."""
    with_cutoff = [(s.to_cutoff_s, s) for s in sections if s.to_cutoff_s is not None]
    return min(with_cutoff, key=lambda pair: pair[0])[1] if with_cutoff else None


def _with_ends(plan: PacePlan, ends_m: Sequence[float]) -> tuple[FloatArray, FloatArray]:
    """Return places and moving times of *plan* with the ends of sections among the places.

    Without them the time at an end between two points would be a blend of both sections' paces.
    """
    distance_m = np.union1d(plan.distance_m, [m for m in ends_m if m < plan.distance_m[-1]])
    return distance_m, np.interp(distance_m, plan.distance_m, plan.moving_s)


def _free_share(course: Course, usual_s: FloatArray, running_s: float) -> float:
    """Return the factor on the times of the free sections that fills *running_s*."""
    is_free = np.array([section.target_s is None for section in course.sections])
    if not is_free.any():
        return 1.0
    fixed_s = sum(s.target_s for s in course.sections if s.target_s is not None)
    share = float((running_s - fixed_s) / usual_s[is_free].sum())
    if not LEAST_FREE_SHARE <= share <= MOST_FREE_SHARE:
        raise _no_room(course, usual_s, is_slow=share < LEAST_FREE_SHARE)
    return share


def _no_room(course: Course, usual_s: FloatArray, is_slow: bool) -> PlanError:
    """Return the error that names the fixed section furthest from its usual time."""
    excess_s = [
        -math.inf if s.target_s is None else (s.target_s - usual) * (1.0 if is_slow else -1.0)
        for s, usual in zip(course.sections, usual_s, strict=True)
    ]
    section = course.sections[int(np.argmax(excess_s))]
    place, target = _place(course, section), Quantity(section.target_s or 0.0, "s")
    if is_slow:
        return PlanError(
            QT_TRANSLATE_NOOP(
                "Plan",
                "The section to {0} takes {1}: the free sections would be run in less than half "
                "their time. Give it less, or move the finish.",
            ),
            place,
            target,
        )
    return PlanError(
        QT_TRANSLATE_NOOP(
            "Plan",
            "The section to {0} takes only {1}: the free sections would take more than twice "
            "their time. Give it more, or move the finish.",
        ),
        place,
        target,
    )


def _place(course: Course, section: Section) -> str | Quantity:
    return course.end_name(section) or Quantity(course.end_of(section), "m")


def _moving_s(plan: PacePlan, start_m: float, end_m: float) -> float:
    """Return the running time from leaving one place to arriving at another, stops left out."""
    stopped_s = sum(stop.stop_s for stop in plan.stops if start_m < stop.at_m < end_m)
    leave_s = plan.departure_s(start_m)
    return plan.arrival_s(end_m) - leave_s - stopped_s


def _latest_margins(
    course: Course, race: Race, forecast: PacePlan, target: PacePlan
) -> list[tuple[float, float]]:
    """Return place and time to the cutoff of every cutoff; the later of the two arrivals counts."""
    cutoffs = [(s.at_m, s.cutoff_s) for s in course.stations if s.cutoff_s is not None]
    if race.limit_s is not None:
        cutoffs.append((course.length_m, race.limit_s))
    return [
        (at_m, cutoff_s - max(target.arrival_s(at_m), forecast.arrival_s(at_m)))
        for at_m, cutoff_s in cutoffs
    ]
