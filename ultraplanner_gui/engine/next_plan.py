"""A new plan for the same runner: what stays from one race to the next."""

from __future__ import annotations

from datetime import date

from msgspec.structs import replace

from ultraplanner_gui.engine.first_plan import planned
from ultraplanner_gui.engine.lessons import carried
from ultraplanner_gui.plan.conditions import Conditions
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.plan.head import Head
from ultraplanner_gui.plan.logistics import Logistics
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.plan.pacing import PastRun, ResultKind
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.review import Ending
from ultraplanner_gui.plan.runner import Runner

MOST_PAST_RUNS = 20


def next_plan(
    old: Project, course: Course, race: Race, runner: Runner, first_weekday: int, today: date
) -> tuple[Project, tuple[Message, ...]]:
    """Return a full project for *race* on *course*, and what its block could not give, in words.

    From *old* it keeps foods and habits of fuelling, shape of the target, crew, lists, lines for
    hard hours that are tied to no place, worries, cards and units, and every lesson, to be
    answered anew. *runner* is the one of the form. What belongs to the old race stays there.
    """
    project = Project(
        race=replace(race, mandatory_kit=(), emergency=""),
        course=course,
        runner=replace(runner, past_runs=past_runs(old)),
        fuel=replace(old.fuel, items=()),
        cards=old.cards,
        first_weekday=first_weekday,
        conditions=Conditions(off=old.conditions.off, lamp_s=old.conditions.lamp_s),
        pacing=old.pacing,
        logistics=_logistics(old.logistics),
        head=Head(worries=old.head.worries, pictures=old.head.pictures),
        lessons=carried(old),
    )
    return planned(project, today)


def past_runs(old: Project) -> tuple[PastRun, ...]:
    """Return what a finish can be predicted from, the race of *old* among it if it was finished."""
    runs = old.runner.past_runs
    ended = {review.recording: review.ending for review in old.reviews}
    for recording in old.recordings:
        is_finished = ended.get(recording.key, Ending.FINISHED) is Ending.FINISHED
        if recording.is_race and is_finished and recording.moving_s > 0.0:
            run = PastRun(
                recording.distance_m,
                recording.climb_m,
                recording.moving_s,
                ResultKind.RACE,
                f"{old.race.name} {old.race.day.year}",
            )
            runs = (*(r for r in runs if r.name != run.name), run)
    return runs[-MOST_PAST_RUNS:]


def _logistics(old: Logistics) -> Logistics:
    """Return what is not tied to the places of the old race."""
    return replace(
        old,
        who=replace(old.who, number=""),
        visits=(),
        bag_lines=(),
        if_then=tuple(replace(line, tried=()) for line in old.if_then if not line.station),
        packed=(),
    )
