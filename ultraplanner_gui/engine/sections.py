"""Section figures: targets, arrivals, cutoffs, time in hand, arrival windows."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

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
    ends_m = course.section_ends()
    arrive_s, forecast_s = target.arrivals_s(ends_m), forecast.arrivals_s(ends_m)
    stop_s = {stop.at_m: stop.stop_s for stop in target.stops}
    leave_s = [a + stop_s.get(end_m, 0.0) for a, end_m in zip(arrive_s, ends_m, strict=True)]
    places_m = (0.0, *ends_m)
    climb_m = np.diff(np.interp(places_m, profile.distance_m, profile.climb_m)).tolist()
    drop_m = np.diff(np.interp(places_m, profile.distance_m, profile.drop_m)).tolist()
    at_station = {station.key: station for station in course.stations}
    cutoffs = _latest_margins(course, race, forecast, target)
    figures: list[SectionFigures] = []
    for n, section in enumerate(course.sections):
        start_m, end_m = places_m[n : n + 2]
        station = at_station.get(section.station or "")
        cutoff_s = station.cutoff_s if station is not None else None
        if end_m >= course.length_m:
            cutoff_s = race.limit_s
        later_s = max(arrive_s[n], forecast_s[n])
        figures.append(
            SectionFigures(
                key=section.key,
                station=section.station,
                name=station.name if station is not None else "",
                start_m=start_m,
                end_m=end_m,
                climb_m=climb_m[n],
                drop_m=drop_m[n],
                moving_s=arrive_s[n]
                - (leave_s[n - 1] if n else stop_s.get(0.0, 0.0))
                - sum(s for at_m, s in stop_s.items() if start_m < at_m < end_m),
                arrive_s=arrive_s[n],
                leave_s=leave_s[n],
                forecast_s=forecast_s[n],
                window_s=arrival_window(forecast_s[n], forecast.finish_s),
                cutoff_s=cutoff_s,
                to_cutoff_s=None if cutoff_s is None else cutoff_s - later_s,
                in_hand_s=min((s for at_m, s in cutoffs if at_m >= end_m), default=None),
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
    ends = np.array([m for m in ends_m if m < plan.distance_m[-1]])
    before = plan.distance_m.searchsorted(ends)
    is_new = plan.distance_m[before] != ends
    usual_s = plan.moving_s
    new_s = np.interp(ends[is_new], plan.distance_m, usual_s)
    return (
        np.insert(plan.distance_m, before[is_new], ends[is_new]),
        np.insert(usual_s, before[is_new], new_s),
    )


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


def _latest_margins(
    course: Course, race: Race, forecast: PacePlan, target: PacePlan
) -> list[tuple[float, float]]:
    """Return place and time to the cutoff of every cutoff; the later of the two arrivals counts."""
    cutoffs = [(s.at_m, s.cutoff_s) for s in course.stations if s.cutoff_s is not None]
    if race.limit_s is not None:
        cutoffs.append((course.length_m, race.limit_s))
    places_m = [at_m for at_m, _ in cutoffs]
    arrivals = zip(target.arrivals_s(places_m), forecast.arrivals_s(places_m), strict=True)
    return [
        (at_m, cutoff_s - max(arrivals_s))
        for (at_m, cutoff_s), arrivals_s in zip(cutoffs, arrivals, strict=True)
    ]
