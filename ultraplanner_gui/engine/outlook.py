"""The outlook: every derived figure of a project, each renewed only when its parts changed."""

from __future__ import annotations

from datetime import date

from ultraplanner_gui.engine.checks import Check, block_checks
from ultraplanner_gui.engine.fuel_clock import on_clock
from ultraplanner_gui.engine.fuelling import FuelFigures, fuel_figures
from ultraplanner_gui.engine.gait import Stretch, stretches
from ultraplanner_gui.engine.kit_check import kit_check
from ultraplanner_gui.engine.light import LightSpan
from ultraplanner_gui.engine.open_lessons import lesson_check
from ultraplanner_gui.engine.outlook_race import RaceFigures, race_figures
from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.engine.runway import RaceAsks, Runway, growth_of, race_asks, runway
from ultraplanner_gui.engine.sections import SectionFigures, tightest
from ultraplanner_gui.engine.weeks import WeekFigures, standing, week_figures
from ultraplanner_gui.engine.worries import worry_check
from ultraplanner_gui.plan.fuel import FuelItem
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value


class Outlook(Value, frozen=True, eq=False):
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
    race: RaceFigures | None = None

    @property
    def race_checks(self) -> tuple[Check, ...]:
        """How lessons, worries, kit, cutoffs, odds, lamp and heat stand."""
        checks = self.race.checks if self.race is not None else ()
        project = self.project
        own = (
            *lesson_check(project),
            *worry_check(project.head),
            *kit_check(project, self.today),
        )
        return (*own, *checks)

    @property
    def walked(self) -> tuple[Stretch, ...]:
        """The course as run and walked stretches of the target; empty without one."""
        if self.profile is None or self.target is None:
            return ()
        return stretches(self.profile, self.target)

    @property
    def items(self) -> tuple[FuelItem, ...]:
        """Every fuel item by time, those that keep their place when the target gets there."""
        return self.project.fuel.items if self.fuel is None else self.fuel.plan.items

    @property
    def tightest(self) -> SectionFigures | None:
        """The section end with the least time to its cutoff."""
        return tightest(self.sections)


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
            on_clock(project.fuel, race.target),
            race.sections,
            finish_s,
            project.runner,
            previous.fuel if previous is not None else None,
        )
    asks = race_asks(
        race.profile.length_m,
        project.race.goal_s,
        project.runner.level,
        climb_m=race.profile.ascent_m,
        easy_mps=project.runner.easy_mps,
    )
    weeks, checks, way = _build_up(project, previous, asks, day, race.light)
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
        race=race,
    )


def _race(project: Project, previous: Outlook | None) -> RaceFigures | None:
    if project.course is None:
        return None
    before = previous.project if previous is not None else None
    if (
        previous is not None
        and before is not None
        and previous.race is not None
        and before.course is project.course
        and before.race is project.race
        and before.runner is project.runner
        and before.conditions is project.conditions
        and before.pacing is project.pacing
    ):
        return previous.race
    profile = previous.profile if previous is not None else None
    return race_figures(project, project.course, before, profile)


def _build_up(
    project: Project,
    previous: Outlook | None,
    asks: RaceAsks | None,
    day: date,
    light: tuple[LightSpan, ...] = (),
) -> tuple[tuple[WeekFigures, ...], tuple[Check, ...], Runway | None]:
    before = previous.project if previous is not None else None
    if (
        previous is not None
        and before is not None
        and before.block is project.block
        and before.runner is project.runner
        and before.race is project.race
        and before.first_weekday == project.first_weekday
        and _underfoot(before) is _underfoot(project)
        and before.fuel.carb_g_per_h == project.fuel.carb_g_per_h
        and previous.light == light
        and previous.asks == asks
        and previous.today == day
    ):
        return previous.weeks, previous.checks, previous.runway
    weeks = week_figures(project)
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
            cutback_every=project.runner.wishes.cutback_every,
            growth=growth_of(project.runner.wishes),
        )
    dark_s = sum(span.end_s - span.start_s for span in light if span.kind == "dark")
    return weeks, block_checks(project, weeks, asks, dark_s, way), way


def _underfoot(project: Project) -> object:
    return None if project.course is None else project.course.surfaces


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
