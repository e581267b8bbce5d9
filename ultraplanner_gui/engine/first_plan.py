"""A whole plan from a course and a few facts, and a block built anew in a running project."""

from __future__ import annotations

from datetime import date, datetime, timedelta, tzinfo
from typing import TYPE_CHECKING

from msgspec.structs import replace

from ultraplanner_gui.engine.block import BlockPlan, BlockRequest, build_block
from ultraplanner_gui.engine.fuelling import place_by_clock
from ultraplanner_gui.engine.match import last_ground, main_surface
from ultraplanner_gui.engine.outlook import Outlook, derive
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.engine.weeks import standing
from ultraplanner_gui.plan.block import Block, Kind, weeks_to_go
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.plan.fuel import Food, FuelPlan
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner

if TYPE_CHECKING:
    from ultraplanner_gui.engine.block_exact import ExactPlan

#: Share of easy speed on level ground that is kept through an ultramarathon. Own choice.
KEPT_SPEED = 0.80
#: Metres of level ground for a metre climbed: Scarf 2007, J Sports Sci 25:719, for men.
CLIMB_EQUIVALENCE = 8.0
#: A new race is proposed this far away, at this hour; the form asks for the real date.
WEEKS_AWAY = 20
START_HOUR = 6
RACES = (Kind.TUNE_UP, Kind.RACE)


def likely_finish_s(profile: Profile, runner: Runner) -> float:
    """Return a first guess of the finish to start from, rounded to five minutes.

    Flat-equivalent distance at a share of easy speed: a proposal, not a prediction.
    """
    flat_m = profile.length_m + CLIMB_EQUIVALENCE * profile.ascent_m
    return round(flat_m / (KEPT_SPEED * runner.easy_mps) / 300.0) * 300.0


def likely_start(today: date, zone: tzinfo) -> datetime:
    """Return a start to propose: a Saturday morning far enough away to get ready for."""
    day = today + timedelta(weeks=WEEKS_AWAY)
    day += timedelta(days=(5 - day.weekday()) % 7)
    return datetime(day.year, day.month, day.day, START_HOUR, tzinfo=zone)


def first_plan(
    course: Course,
    race: Race,
    runner: Runner,
    foods: tuple[Food, ...],
    first_weekday: int,
    today: date,
) -> tuple[Project, tuple[Message, ...]]:
    """Return a full project, and what the builder of its block could not give, in words.

    The block is counted back from the race, the fuel placed by the clock.
    """
    project = Project(
        race=race,
        course=course,
        runner=runner,
        fuel=FuelPlan(foods=foods),
        first_weekday=first_weekday,
    )
    return planned(project, today)


def planned(project: Project, today: date) -> tuple[Project, tuple[Message, ...]]:
    """Return *project* with its fuel placed by the clock and a block counted back from the race,
    and what the builder of the block could not give.
    """
    outlook = derive(project, None, today)
    foods = project.fuel.foods
    if outlook.target is not None and any(food.carb_g > 0.0 for food in foods):
        items = place_by_clock(project.fuel, outlook.target.finish_s)
        project = replace(project, fuel=project.fuel.with_items(items))
    plan = new_block(project, outlook, today)
    return replace(project, block=plan.block), plan.notes


def new_block(project: Project, outlook: Outlook, today: date) -> BlockPlan:
    """Return a block from *today* on; what lies before today stays as it was.

    Volume and longest run are what they are by now (`engine.weeks.standing`); tune-up races
    ahead stay. PlanError without a course or days to run on.
    """
    plan = build_block(request_of(project, outlook, today))
    return replace(plan, block=_joined(project, plan.block, today))


def request_of(project: Project, outlook: Outlook, today: date) -> BlockRequest:
    """Return what a block from *today* on is built from; PlanError like `new_block`."""
    if outlook.profile is None:
        raise PlanError(QT_TRANSLATE_NOOP("Plan", "There is no course yet. Open a GPX file first."))
    race = project.race
    weekly_m, longest_m = standing(project, outlook.weeks, today)
    return BlockRequest(
        first_day=today,
        race_day=race.day,
        race_m=outlook.profile.length_m,
        climb_m=outlook.profile.ascent_m,
        drop_m=outlook.profile.descent_m,
        race_s=race.goal_s,
        runner=replace(project.runner, weekly_m=weekly_m, longest_m=longest_m),
        first_weekday=project.first_weekday,
        dark_s=sum(s.end_s - s.start_s for s in outlook.light if s.kind == "dark"),
        cutback_every=project.runner.wishes.cutback_every,
        carb_target_g_per_h=project.fuel.carb_g_per_h,
        tune_ups=tuple(
            (s.day, s.distance_m)
            for s in project.block.sessions
            if s.kind is Kind.TUNE_UP and s.is_open and s.day >= today
        ),
        locked=tuple(
            s
            for s in project.block.sessions
            if s.locked and s.is_open and s.day >= today and s.kind not in RACES
        ),
        race_surface=main_surface(project.course),
        last_ground=last_ground(outlook.profile),
        race_start_s=race.start.hour * 3600.0 + race.start.minute * 60.0,
    )


def joined(project: Project, exact: ExactPlan, today: date) -> ExactPlan:
    """Return *exact* with what lies before *today* in *project* kept."""
    plan = replace(exact.plan, block=_joined(project, exact.plan.block, today))
    return replace(exact, plan=plan)


def _joined(project: Project, block: Block, today: date) -> Block:
    old = tuple(s for s in project.block.sessions if s.day < today or s.done is not None)
    if not old:
        return block
    busy = {s.day for s in old}
    taken = {s.key for s in old}
    fresh = tuple(
        replace(s, key=f"{s.key}-new") if s.key in taken else s
        for s in block.sessions
        if s.day not in busy
    )
    first = weeks_to_go(old[0].day, project.race.day, project.first_weekday)
    past = tuple(c for c in project.block.cutbacks if c > block.first_week)
    return Block(
        sessions=tuple(sorted((*old, *fresh), key=lambda s: s.day)),
        first_week=max(first, block.first_week),
        cutbacks=tuple(sorted({*past, *block.cutbacks}, reverse=True)),
        taper_weeks=block.taper_weeks,
    )
