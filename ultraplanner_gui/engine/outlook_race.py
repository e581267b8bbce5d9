"""The race part of the outlook: profile, curves, sections, odds, light and their checks."""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import lru_cache

import numpy as np

from ultraplanner_gui.engine.check import Check
from ultraplanner_gui.engine.environment import Effects
from ultraplanner_gui.engine.light import LightSpan, light_spans
from ultraplanner_gui.engine.odds import Odds, Scatter, odds
from ultraplanner_gui.engine.pacing import PacePlan, Stop, pace_for_finish
from ultraplanner_gui.engine.profile import Profile, build_profile
from ultraplanner_gui.engine.race_checks import race_checks
from ultraplanner_gui.engine.sections import SectionFigures, section_figures, shaped_target
from ultraplanner_gui.engine.walk_in import Cutoff, Walker, WalkIn, course_cutoffs, walk_in
from ultraplanner_gui.engine.warmth import Warmth, warmth
from ultraplanner_gui.plan.course import Course, FloatArray
from ultraplanner_gui.plan.message import Message, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value

_MOVED_S = 1.0


class RaceFigures(Value, frozen=True, eq=False):
    """The race parts of an outlook, renewed together; see `engine.outlook.Outlook`."""

    profile: Profile
    forecast: PacePlan
    target: PacePlan
    sections: tuple[SectionFigures, ...]
    light: tuple[LightSpan, ...]
    odds: Odds
    walk: WalkIn
    warmth: Warmth | None
    checks: tuple[Check, ...]
    trouble: Message | None

    def walk_spare_s(self, places_m: Sequence[float]) -> FloatArray:
        """Return how much later than the target one could be at places and still walk the rest in.

        Below zero the rest cannot be walked in; infinite beyond the last cutoff.
        """
        latest_s = np.interp(places_m, self.walk.distance_m, self.walk.latest_s)
        return np.asarray(latest_s - self.target.arrivals_s(places_m), dtype=np.float64)

    @property
    def walk_in_from_m(self) -> float | None:
        """The first place from which the target is never too late to walk the rest in."""
        return self.walk.first_point_m(self.target)


def race_figures(
    project: Project, course: Course, before: Project | None, profile_before: Profile | None
) -> RaceFigures:
    """Return the race figures of *project*; its profile is that *before* on the same ground."""
    was = before.course if before is not None else None
    has_ground = profile_before is not None and was is not None and _is_same_ground(was, course)
    profile = profile_before if has_ground and profile_before else build_profile(course)
    forecast, target, trouble = _curves(project, course, profile)
    limits = course_cutoffs(course, project.race)
    walk = _walk(profile, limits, target.stops, project.runner.tired_walk)
    walk_by = _walk_by(walk, course.section_ends())
    chances = _odds(
        forecast,
        course.section_ends(),
        tuple((c.at_m, _arrive_by(c, target.stops)) for c in limits),
        project.runner.finish_spread,
    )
    sections = section_figures(course, project.race, profile, forecast, target, chances, walk_by)
    light = light_spans(project.race, target.finish_s, profile.latitude_deg, profile.longitude_deg)
    weather = project.conditions.weather
    warm = None if weather is None else warmth(profile, weather, project.race, target)
    checks = race_checks(sections, light, warm, project.conditions)
    return RaceFigures(
        profile, forecast, target, sections, light, chances, walk, warm, checks, trouble
    )


def race_effects(project: Project, course: Course) -> Effects:
    """Return what is reckoned with in the race of *project*."""
    return Effects(
        weather=project.conditions.weather,
        surfaces=course.surfaces,
        off=project.conditions.off,
        descent_speed=project.runner.descent_speed,
        surface_factors=course.surface_factors,
    )


def planned_stops(course: Course) -> tuple[Stop, ...]:
    """Return the stops that take time, in course order."""
    return tuple(Stop(s.at_m, s.stop_s) for s in course.stations if s.stop_s > 0)


def _is_same_ground(was: Course, course: Course) -> bool:
    return (
        was.line is course.line
        and was.surfaces is course.surfaces
        and was.surface_factors is course.surface_factors
        and was.pins is course.pins
        and was.length_m == course.length_m
        and was.official_climb_m == course.official_climb_m
        and was.official_drop_m == course.official_drop_m
    )


def _curves(
    project: Project, course: Course, profile: Profile
) -> tuple[PacePlan, PacePlan, Message | None]:
    """Return forecast and target, and why they are not as asked.

    Where the finish moves with a section, the forecast is that of the finish it has come to.
    """
    race, pacing = project.race, project.pacing
    effects = race_effects(project, course)
    stops, trouble = planned_stops(course), None

    def paced(goal_s: float, is_target: bool, stops: Sequence[Stop]) -> PacePlan:
        return pace_for_finish(
            profile,
            goal_s,
            project.runner,
            stops,
            "target" if is_target else "forecast",
            race.start,
            effects=effects,
            fade_share=pacing.fade_share if is_target else None,
        )

    try:
        target = paced(race.goal_s, True, stops)
    except PlanError as error:
        trouble, stops = error.message, ()
        target = paced(race.goal_s, True, stops)
    try:
        target = shaped_target(course, target, race.goal_s, pacing.holds_finish)
    except PlanError as error:
        trouble = error.message
    has_moved = abs(target.finish_s - race.goal_s) > _MOVED_S
    forecast = paced(target.finish_s if has_moved else race.goal_s, False, stops)
    return forecast, target, trouble


def _arrive_by(cutoff: Cutoff, stops: Sequence[Stop]) -> float:
    """Return the latest arrival for *cutoff*, the planned stop taken off where leaving counts."""
    if not cutoff.is_departure:
        return cutoff.by_s
    return cutoff.by_s - sum(stop.stop_s for stop in stops if stop.at_m == cutoff.at_m)


# A drag of a target leaves all these as they were.
@lru_cache(maxsize=4)
def _walk(
    profile: Profile, cutoffs: tuple[Cutoff, ...], stops: tuple[Stop, ...], tired_walk: float
) -> WalkIn:
    return walk_in(profile, cutoffs, stops, Walker(tired_walk))


@lru_cache(maxsize=4)
def _walk_by(
    walk: WalkIn, ends_m: tuple[float, ...]
) -> tuple[tuple[float | None, float | None], ...]:
    """Return the latest arrival and leaving for walking the rest in, None beyond every cutoff."""
    arrive_s, leave_s = walk.latest_at(ends_m)
    both = zip(arrive_s.tolist(), leave_s.tolist(), strict=True)
    return tuple((_finite(arrive), _finite(leave)) for arrive, leave in both)


def _finite(seconds: float) -> float | None:
    return seconds if math.isfinite(seconds) else None


@lru_cache(maxsize=4)
def _odds(
    forecast: PacePlan,
    ends_m: tuple[float, ...],
    cutoffs: tuple[tuple[float, float], ...],
    spread: float,
) -> Odds:
    return odds(forecast, ends_m, cutoffs, scatter=Scatter(ability=spread))
