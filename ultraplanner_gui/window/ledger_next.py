"""What comes next in a young plan, and what was noticed while making it, or a part of it."""

from __future__ import annotations

from collections.abc import Iterator

from ultraplanner_gui.desk.language import tr
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.block import Block
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.rows import Heads, Link, Row, Rule, Sentence
from ultraplanner_gui.window.ledger_week import ACTION

# Target of a link that brings a table into view, by the kind of its rows and a column.
TABLE = "table"


class Begun(Value, frozen=True):
    """A plan as it was made in this sitting."""

    project: Project


class Noticed(Value, frozen=True):
    """What there was to say of a *part* of the plan as it was made: its block or its course."""

    part: Block | Course
    title: str
    notes: tuple[str, ...]

    def is_of(self, project: Project) -> bool:
        """Whether *project* still has the part as it was made."""
        return self.part is project.block or self.part is project.course


def next_rows(now: Outlook, begun: Begun | None) -> tuple[Row, ...]:
    """Return the steps that are open; those of a plan just made go as each is taken."""
    steps = (*_course_steps(now.project), *(() if begun is None else _first_steps(now, begun)))
    if not steps:
        return ()
    rows: list[Row] = [Heads(tr("What comes next"), topic="what comes next"), *steps, Rule()]
    return tuple(rows)


def noticed_rows(now: Outlook, noticed: tuple[Noticed, ...]) -> tuple[Row, ...]:
    """Return what was *noticed* of the parts that are as they were made; a change ends it."""
    rows: list[Row] = []
    for one in noticed:
        if one.is_of(now.project):
            rows += [Heads(one.title, topic="what comes next")]
            rows += [*(Sentence(note, "what comes next") for note in one.notes), Rule()]
    return tuple(rows)


def _course_steps(project: Project) -> Iterator[Row]:
    course = project.course
    if course is None:
        return
    table = f"{TABLE}:station"
    if not course.stations:
        yield Link(tr("Put in the aid stations"), table, "what comes next")
    elif project.race.limit_s is None and all(s.cutoff_s is None for s in course.stations):
        yield Link(tr("Put in the cutoffs"), f"{table}:Cutoff", "what comes next")


def _first_steps(now: Outlook, begun: Begun) -> Iterator[Row]:
    project, made = now.project, begun.project
    if (project.race, project.runner) == (made.race, made.runner):
        yield Link(tr("Look over race and runner"), f"{ACTION}:race_form", "what comes next")
    yield Link(tr("See the cards to print"), f"{ACTION}:cards", "what comes next")
    if project.block is made.block and project.block.sessions:
        yield Sentence(tr("Drag a run to another day, or its right edge to lengthen it."))
    if project.course is made.course and now.sections:
        yield Sentence(
            tr("Drag the top of a target: up is faster. Click anything for its figures.")
        )
