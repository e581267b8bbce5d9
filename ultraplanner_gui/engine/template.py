"""A block taken out of one plan and laid into another, its distances scaled if wished."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta

from msgspec.structs import replace

from ultraplanner_gui.engine.block_dress import race_session
from ultraplanner_gui.engine.block_ground import GroundRules
from ultraplanner_gui.engine.check import Check
from ultraplanner_gui.engine.first_plan import request_of
from ultraplanner_gui.engine.outlook import Outlook, derive
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.block import Block, Kind, Session, week_start, weeks_to_go
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.template import Template
from ultraplanner_gui.plan.value import Value

#: A template is scaled no further than this, up or down (own choice: beyond it is another plan).
LEAST_SCALE, MOST_SCALE = 0.4, 1.5


class Laid(Value, frozen=True):
    """A template in a plan: the block it gives, how the rules stand, and what was left out."""

    block: Block
    outlook: Outlook
    left_out: int

    @property
    def loose(self) -> tuple[Check, ...]:
        """The rules that do not hold, the broken ones first."""
        checks = [c for c in self.outlook.checks if c.state is not State.HOLDS]
        return tuple(sorted(checks, key=lambda c: c.state is not State.BREAKS))


def template_of(project: Project, name: str) -> Template:
    """Return the block of *project* as a template; PlanError if there is nothing to keep."""
    sessions = tuple(_bare(s) for s in project.block.sessions if s.kind is not Kind.RACE)
    if not sessions:
        raise PlanError(
            QT_TRANSLATE_NOOP("Plan", "There is no build-up to keep. Build the block first.")
        )
    runner = project.runner
    return Template(
        name=name,
        race_day=project.race.day,
        first_weekday=project.first_weekday,
        weekly_m=runner.weekly_m,
        easy_mps=runner.easy_mps,
        block=replace(project.block, sessions=sessions),
    )


def fitting_scale(template: Template, project: Project) -> float:
    """Return by what the distances are multiplied so that the block begins where the runner is."""
    if template.weekly_m <= 0.0:
        return 1.0
    return min(MOST_SCALE, max(LEAST_SCALE, project.runner.weekly_m / template.weekly_m))


def laid_in(template: Template, project: Project, today: date, scale: float = 1.0) -> Laid:
    """Return *template* laid into *project* from *today* on, and how the rules stand then.

    Weeks to go and weekdays stay; what would lie before today or on the race is left out. What
    was done or is locked stays, and so do tune-up races and the race. Times follow the easy
    speeds of the two runners. PlanError if nothing of it is left, or there is no course.
    """
    kept = tuple(s for s in project.block.sessions if _stays(s, today))
    fresh = tuple(_fresh(template, project, today, scale, kept))
    left_out = len(template.block.sessions) - len(fresh)
    if not fresh:
        raise PlanError(
            QT_TRANSLATE_NOOP("Plan", "Nothing of this template fits between today and the race.")
        )
    if not any(s.kind is Kind.RACE for s in kept):
        request = request_of(project, derive(project, None, today), today)
        rules = GroundRules(request, template.block.first_week, template.block.taper_weeks)
        kept = (*kept, race_session(request, rules))
    sessions = tuple(sorted((*kept, *fresh), key=lambda s: s.day))
    first = weeks_to_go(sessions[0].day, project.race.day, project.first_weekday)
    block = Block(
        sessions=sessions,
        first_week=first,
        cutbacks=tuple(c for c in template.block.cutbacks if c <= first),
        taper_weeks=template.block.taper_weeks,
    )
    outlook = derive(replace(project, block=block), None, today)
    return Laid(block, outlook, left_out)


def _fresh(
    template: Template, project: Project, today: date, scale: float, kept: tuple[Session, ...]
) -> Iterator[Session]:
    busy = {s.day for s in kept}
    taken = {s.key for s in kept}
    slower = template.easy_mps / project.runner.easy_mps
    for number, session in enumerate(template.block.sessions):
        day = _day(session.day, template, project)
        if not today <= day < project.race.day or day in busy:
            continue
        key = session.key
        while key in taken:
            key = f"{key}-t{number}"
        taken.add(key)
        yield replace(_scaled(session, scale, slower), key=key, day=day)


def _scaled(session: Session, scale: float, slower: float) -> Session:
    if not session.kind.is_run:
        return session
    return replace(
        session,
        distance_m=round(session.distance_m * scale, -2),
        duration_s=round(session.duration_s * scale * slower / 60.0) * 60.0,
        climb_m=round(session.climb_m * scale, -1),
        drop_m=round(session.drop_m * scale, -1),
    )


def _day(day: date, template: Template, project: Project) -> date:
    """Return the same weekday with as many weeks to go."""
    weeks = weeks_to_go(day, template.race_day, template.first_weekday)
    race_week = week_start(project.race.day, project.first_weekday)
    weekday = (day.weekday() - project.first_weekday) % 7
    return race_week - timedelta(weeks=weeks) + timedelta(days=weekday)


def _stays(session: Session, today: date) -> bool:
    is_past = session.day < today or not session.is_open
    return is_past or session.locked or session.kind in (Kind.RACE, Kind.TUNE_UP)


def _bare(session: Session) -> Session:
    """Return *session* without what was made of it, its notes and its ties to this runner."""
    return replace(session, done=None, missed=False, locked=False, note="", repeats=(), foods=())
