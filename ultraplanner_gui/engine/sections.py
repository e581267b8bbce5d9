"""Section figures: targets, arrivals, cutoffs, time in hand, arrival windows."""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import lru_cache

import numpy as np

from ultraplanner_gui.engine.odds import FINISH_SPREAD, NORMAL_90, Chance, Odds
from ultraplanner_gui.engine.pacing import PacePlan, stopped_before
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.course import AidStation, Course, CutoffKind, FloatArray, Section
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError, Quantity
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.value import Value

# Own measurement: holds 80 % of real arrivals when the finish is met as planned.
WINDOW_AT_HALF = 0.09
WINDOW_POWER = 0.75

LEAST_FREE_SHARE = 0.5
MOST_FREE_SHARE = 2.0


class SectionFigures(Value, frozen=True):
    """One section, times in seconds of race time on the target curve unless said.

    `station` is the key of the aid station at its end, None at the finish or a free end.
    `arrive_s`, `leave_s` are at its end; `moving_s` is the running time in it (leave of the
    section before to arrival). `forecast_s` is the arrival on the forecast curve, `window_s`
    the 10th and 90th percentile of arrival about it. `cutoff_s` is None where there is none;
    `to_cutoff_s` cutoff minus the later of target and forecast arrival; `in_hand_s` how much
    later one could arrive at its end and still make this and every later cutoff at planned
    speed (None without one). `is_fixed` says that the runner fixed its target.

    `forecast_moving_s` is the running time on the forecast curve. With `cutoff_is_departure` the
    cutoff counts leaving. `leave_by_s` is the latest leaving from which this and every later
    cutoff is met at planned speed; `walk_arrive_by_s` and `walk_leave_by_s` are the latest arrival
    and leaving from which walking the rest would do; None without a cutoff from here on. `chance`
    is that of being in time here and at every cutoff before.
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
    forecast_moving_s: float = math.nan
    cutoff_is_departure: bool = False
    leave_by_s: float | None = None
    walk_arrive_by_s: float | None = None
    walk_leave_by_s: float | None = None
    chance: Chance | None = None

    @property
    def length_m(self) -> float:
        """Length of the section."""
        return self.end_m - self.start_m

    @property
    def can_walk_in(self) -> bool:
        """Whether, leaving its end as planned, the rest can be walked in."""
        return self.walk_leave_by_s is not None and self.walk_leave_by_s >= self.leave_s

    @property
    def pace_s_per_m(self) -> float:
        """Target pace while moving."""
        return self.moving_s / self.length_m


def shaped_target(
    course: Course, target: PacePlan, goal_s: float, holds_finish: bool = True
) -> PacePlan:
    """Return *target* with the sections the runner fixed at their times.

    The free sections share what is left so that the finish stays at *goal_s*; without
    *holds_finish*, or when all are fixed, they keep their times and the finish moves. PlanError,
    naming the section, if the free ones would have to be run in less than half or more than twice
    their time.
    """
    fixed = [section.target_s for section in course.sections]
    if all(target_s is None for target_s in fixed):
        return target
    distance_m, moving_s = _with_ends(target, course.section_ends())
    knots_s = np.interp((0.0, *course.section_ends()), distance_m, moving_s)
    usual_s = np.diff(knots_s)
    stopped_s = sum(stop.stop_s for stop in target.stops)
    share = _free_share(course, usual_s, goal_s - stopped_s) if holds_finish else 1.0
    wanted_s = [
        usual * share if target_s is None else target_s
        for usual, target_s in zip(usual_s, fixed, strict=True)
    ]
    moved_s = np.interp(moving_s, knots_s, np.concatenate(([0.0], np.cumsum(wanted_s))))
    elapsed_s = moved_s + stopped_before(target.stops, distance_m)
    if holds_finish and any(target_s is None for target_s in fixed):
        elapsed_s[-1] = goal_s
    return PacePlan(distance_m, elapsed_s, target.stops)


def section_figures(
    course: Course,
    race: Race,
    profile: Profile,
    forecast: PacePlan,
    target: PacePlan,
    odds: Odds | None = None,
    walk_by: Sequence[tuple[float | None, float | None]] = (),
) -> tuple[SectionFigures, ...]:
    """Return the figures of every section, in course order.

    Windows are those of the simulated races in *odds*, without it those of `arrival_window`;
    *walk_by* are the latest arrival and leaving of each end from which the rest can be walked in.
    """
    ends_m = course.section_ends()
    places_m = (0.0, *ends_m)
    arrive_s, forecast_s = target.arrivals_s(ends_m), list(_arrivals(forecast, ends_m))
    stop_s = {stop.at_m: stop.stop_s for stop in target.stops}
    climb_m = np.diff(np.interp(places_m, profile.distance_m, profile.climb_m)).tolist()
    drop_m = np.diff(np.interp(places_m, profile.distance_m, profile.drop_m)).tolist()
    moving_s = _moving(target, places_m, arrive_s)
    forecast_moving_s = _moving(forecast, places_m, forecast_s)
    at_station = {station.key: station for station in course.stations}
    margins = _margins(_latest_margins(course, race, forecast, target), ends_m)
    windows = dict(zip(odds.places_m, odds.windows_s, strict=True)) if odds is not None else {}
    chances = {c.at_m: c for c in odds.chances} if odds is not None else {}
    figures: list[SectionFigures] = []
    for n, section in enumerate(course.sections):
        end_m = ends_m[n]
        station = at_station.get(section.station or "")
        cutoff_s, is_departure = _limit(course, race, station, end_m)
        margin_s, in_hand_s, still_s = margins[n]
        leave_s = arrive_s[n] + stop_s.get(end_m, 0.0)
        figures.append(
            SectionFigures(
                key=section.key,
                station=section.station,
                name=station.name if station is not None else "",
                start_m=places_m[n],
                end_m=end_m,
                climb_m=climb_m[n],
                drop_m=drop_m[n],
                moving_s=moving_s[n],
                arrive_s=arrive_s[n],
                leave_s=leave_s,
                forecast_s=forecast_s[n],
                window_s=windows.get(end_m) or arrival_window(forecast_s[n], forecast.finish_s),
                cutoff_s=cutoff_s,
                to_cutoff_s=margin_s if cutoff_s is not None else None,
                in_hand_s=in_hand_s,
                is_fixed=section.target_s is not None,
                forecast_moving_s=forecast_moving_s[n],
                cutoff_is_departure=is_departure,
                leave_by_s=None if still_s is None else leave_s + still_s,
                walk_arrive_by_s=walk_by[n][0] if walk_by else None,
                walk_leave_by_s=walk_by[n][1] if walk_by else None,
                chance=chances.get(end_m),
            )
        )
    return tuple(figures)


# The forecast stays as it is while a target is dragged.
@lru_cache(maxsize=4)
def _arrivals(plan: PacePlan, places_m: tuple[float, ...]) -> tuple[float, ...]:
    return tuple(plan.arrivals_s(places_m))


def _moving(plan: PacePlan, places_m: Sequence[float], arrive_s: Sequence[float]) -> list[float]:
    """Return the running time between places, the first the start; arrivals at the others."""
    spent_s = np.array((0.0, *arrive_s)) - plan.stopped_s(np.array(places_m))
    moving_s: list[float] = np.diff(spent_s).tolist()
    return moving_s


def _margins(
    cutoffs: Sequence[tuple[float, float, bool]], ends_m: Sequence[float]
) -> list[tuple[float | None, float | None, float | None]]:
    """Return for each end the time to its cutoff, the least from there on, and once one leaves.

    An arrival in time is over once one leaves; a cutoff for leaving is not.
    """
    margins: list[tuple[float | None, float | None, float | None]] = []
    ahead = sorted(cutoffs)
    least_s: float | None = None
    for end_m in reversed(ends_m):
        own_s, leaving_s = None, least_s
        while ahead and ahead[-1][0] >= end_m:
            at_m, left_s, is_departure = ahead.pop()
            least_s = left_s if least_s is None else min(least_s, left_s)
            if at_m == end_m:
                own_s = left_s
            if at_m > end_m or is_departure:
                leaving_s = left_s if leaving_s is None else min(leaving_s, left_s)
        margins.append((own_s, least_s, leaving_s))
    return margins[::-1]


def _limit(
    course: Course, race: Race, station: AidStation | None, end_m: float
) -> tuple[float | None, bool]:
    """Return the cutoff where a section ends, and whether it counts leaving."""
    if end_m >= course.length_m:
        return race.limit_s, False
    if station is None:
        return None, False
    return station.cutoff_s, station.cutoff_kind is CutoffKind.DEPARTURE


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
) -> list[tuple[float, float, bool]]:
    """Return place and time to the cutoff of every cutoff, and whether it counts leaving.

    The later of the two arrivals counts, with the planned stop where leaving does.
    """
    cutoffs = [
        (s.at_m, s.latest_arrival_s, s.cutoff_kind is CutoffKind.DEPARTURE)
        for s in course.stations
        if s.latest_arrival_s is not None
    ]
    if race.limit_s is not None:
        cutoffs.append((course.length_m, race.limit_s, False))
    places_m = [at_m for at_m, _, _ in cutoffs]
    arrivals = zip(target.arrivals_s(places_m), _arrivals(forecast, tuple(places_m)), strict=True)
    return [
        (at_m, by_s - max(arrivals_s), out)
        for (at_m, by_s, out), arrivals_s in zip(cutoffs, arrivals, strict=True)
    ]
