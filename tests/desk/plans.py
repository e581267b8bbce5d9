"""A small project and an outlook without engine, for tests of the desk alone."""

from dataclasses import dataclass
from datetime import UTC, date, datetime

from ultraplanner_gui.plan.block import Block, Kind, Session
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race

MONDAY = date(2027, 3, 1)


@dataclass(frozen=True, eq=False)
class PlainOutlook:
    """Stands in for the derived figures: the project and the day are all the desk looks at."""

    project: Project
    today: date
    derived_from: object = None


def derive(project, previous, today):
    return PlainOutlook(project, today, previous)


def plan(notes=""):
    sessions = (
        Session("easy", MONDAY, Kind.EASY, 8_000.0, 3_000.0),
        Session("long", date(2027, 3, 6), Kind.LONG, 24_000.0, 10_000.0),
        Session("race", date(2027, 6, 19), Kind.RACE, 50_000.0, 30_000.0),
    )
    return Project(
        Race("Hill round", datetime(2027, 6, 19, 6, tzinfo=UTC), 36_000.0),
        block=Block(sessions),
        notes=notes,
    )
