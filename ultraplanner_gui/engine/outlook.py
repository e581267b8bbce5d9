"""The outlook: every derived figure of a project, each renewed only when its parts changed."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from ultraplanner_gui.engine.checks import Check, block_checks
from ultraplanner_gui.engine.fuel_clock import on_clock
from ultraplanner_gui.engine.fuelling import FuelFigures, fuel_figures
from ultraplanner_gui.engine.light import LightSpan, light_spans
from ultraplanner_gui.engine.pacing import PacePlan, Stop, pace_for_finish
from ultraplanner_gui.engine.profile import Profile, build_profile
from ultraplanner_gui.engine.runway import RaceAsks, Runway, race_asks, runway
from ultraplanner_gui.engine.sections import (
    SectionFigures,
    section_figures,
    shaped_target,
    tightest,
)
from ultraplanner_gui.engine.weeks import WeekFigures, standing, week_figures
from ultraplanner_gui.plan.fuel import FuelItem
from ultraplanner_gui.plan.message import Message, PlanError
from ultraplanner_gui.plan.project import Project


@dataclass(frozen=True, slots=True, eq=False)
class Outlook:
    """Every derived figure; the race parts are None or empty without a course.

    `trouble` is the sentence that says why race figures are missing or not as asked.
    """

    project: Project
    today: date
    profile: Profile | None
    forecast: PacePlan | None
    target: PacePlan | None
    sections: tuple[SectionFigures, ...]
    light: tuple[LightSpan, ...]
    fuel: FuelFigures | None
    weeks: tuple[WeekFigures, ...]
    asks: RaceAsks | None
    runway: Runway | None
    checks: tuple[Check, ...]
    trouble: Message | None = None

    @property
    def items(self) -> tuple[FuelItem, ...]:
        """Every fuel item by time, those that keep their place when the target gets there."""
        return self.project.fuel.items if self.fuel is None else self.fuel.plan.items

    @property
    def tightest(self) -> SectionFigures | None:
        """The section end with the least time to its cutoff."""
        return tightest(self.sections)


@dataclass(frozen=True, slots=True, eq=False)
class _Race:
    """The race parts of an outlook, renewed together."""

    profile: Profile
    forecast: PacePlan
    target: PacePlan
    sections: tuple[SectionFigures, ...]
    light: tuple[LightSpan, ...]
    trouble: Message | None


def derive(project: Project, previous: Outlook | None = None, today: date | None = None) -> Outlook:
    """Return the outlook of *project*; parts whose inputs are those of *previous* are taken over.

    *today* is the date that parts past from future (default: the date of the machine).
    """
    day = today or date.today()
    before = previous.project if previous is not None else None
    race = _race(project, previous)
    if race is None:
        return _without_course(project, previous, day)
    finish_s = race.target.finish_s
    same_race = previous is not None and previous.sections is race.sections
    if (
        previous is not None
        and before is not None
        and same_race
        and before.fuel is project.fuel
        and (before.runner is project.runner)
    ):
        fuel = previous.fuel
    else:
        fuel = fuel_figures(
            on_clock(project.fuel, race.target), race.sections, finish_s, project.runner
        )
    asks = race_asks(
        race.profile.length_m,
        project.race.goal_s,
        project.runner.level,
        climb_m=race.profile.ascent_m,
        easy_mps=project.runner.easy_mps,
    )
    weeks, checks, way = _build_up(project, previous, asks, day)
    return Outlook(
        project=project,
        today=day,
        profile=race.profile,
        forecast=race.forecast,
        target=race.target,
        sections=race.sections,
        light=race.light,
        fuel=fuel,
        weeks=weeks,
        asks=asks,
        runway=way,
        checks=checks,
        trouble=race.trouble,
    )


def _race(project: Project, previous: Outlook | None) -> _Race | None:
    course, race = project.course, project.race
    if course is None:
        return None
    if (
        previous is not None
        and previous.profile is not None
        and previous.forecast is not None
        and previous.target is not None
        and previous.project.course is course
        and previous.project.race is race
        and previous.project.runner is project.runner
    ):
        return _Race(
            previous.profile,
            previous.forecast,
            previous.target,
            previous.sections,
            previous.light,
            previous.trouble,
        )
    before = previous.project.course if previous is not None else None
    if (
        previous is not None
        and previous.profile is not None
        and before is not None
        and before.line is course.line
        and before.surfaces is course.surfaces
        and before.surface_factors is course.surface_factors
        and before.pins is course.pins
        and before.length_m == course.length_m
        and before.official_climb_m == course.official_climb_m
        and before.official_drop_m == course.official_drop_m
    ):
        profile = previous.profile
    else:
        profile = build_profile(course)
    stops = tuple(Stop(s.at_m, s.stop_s) for s in course.stations if s.stop_s > 0)
    trouble: Message | None = None
    try:
        forecast = pace_for_finish(
            profile, race.goal_s, project.runner, stops, "forecast", race.start
        )
        target = pace_for_finish(profile, race.goal_s, project.runner, stops, "target", race.start)
    except PlanError as error:
        trouble = error.message
        forecast = pace_for_finish(profile, race.goal_s, project.runner, (), "forecast", race.start)
        target = pace_for_finish(profile, race.goal_s, project.runner, (), "target", race.start)
    try:
        target = shaped_target(course, target, race.goal_s)
    except PlanError as error:
        trouble = error.message
    sections = section_figures(course, race, profile, forecast, target)
    light = light_spans(race, target.finish_s, profile.latitude_deg, profile.longitude_deg)
    return _Race(profile, forecast, target, sections, light, trouble)


def _build_up(
    project: Project, previous: Outlook | None, asks: RaceAsks | None, day: date
) -> tuple[tuple[WeekFigures, ...], tuple[Check, ...], Runway | None]:
    before = previous.project if previous is not None else None
    if (
        previous is not None
        and before is not None
        and before.block is project.block
        and before.runner is project.runner
        and before.race is project.race
        and before.first_weekday == project.first_weekday
        and previous.asks == asks
        and previous.today == day
    ):
        return previous.weeks, previous.checks, previous.runway
    weeks = week_figures(project)
    checks = block_checks(project, weeks, asks)
    way = None
    if asks is not None:
        weekly_m, longest_m = standing(project, weeks, day)
        way = runway(
            asks,
            project.runner,
            day,
            project.race.day,
            project.first_weekday,
            project.race.goal_s,
            weekly_m=weekly_m,
            longest_m=longest_m,
        )
    return weeks, checks, way


def _without_course(project: Project, previous: Outlook | None, day: date) -> Outlook:
    weeks, checks, way = _build_up(project, previous, None, day)
    return Outlook(
        project=project,
        today=day,
        profile=None,
        forecast=None,
        target=None,
        sections=(),
        light=(),
        fuel=None,
        weeks=weeks,
        asks=None,
        runway=way,
        checks=checks,
    )
