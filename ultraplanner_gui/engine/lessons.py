"""Lessons where they belong: at an hour, on a climb, with a food; and taken to the next race."""

from __future__ import annotations

from msgspec.structs import replace

from ultraplanner_gui.engine.climbs import hills_of
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.course import Slope
from ultraplanner_gui.plan.fuel import Food
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.review import Lesson, PinnedTo


def lessons_of_section(outlook: Outlook, section: SectionFigures) -> tuple[Lesson, ...]:
    """Return the lessons whose hour or climb falls into *section* at the target."""
    return tuple(
        lesson
        for lesson in outlook.project.lessons
        if (at_m := place_of(outlook, lesson)) is not None
        and section.start_m <= at_m < section.end_m
    )


def lessons_of_food(project: Project, food: Food) -> tuple[Lesson, ...]:
    """Return the lessons pinned to *food*, by its name."""
    name = food.name.casefold()
    return tuple(
        lesson
        for lesson in project.lessons
        if lesson.pin is PinnedTo.FOOD and lesson.food and lesson.food.casefold() in name
    )


def place_of(outlook: Outlook, lesson: Lesson) -> float | None:
    """Return where on the course a lesson belongs, metres; None if nowhere on this one."""
    if outlook.target is None or outlook.profile is None:
        return None
    if lesson.pin is PinnedTo.HOUR:
        if lesson.hour_s >= outlook.target.finish_s:
            return None
        return outlook.target.distance_at(lesson.hour_s)
    if lesson.pin is PinnedTo.CLIMB:
        climbs = (hill for hill in hills_of(outlook.profile) if hill.slope is Slope.CLIMB)
        return next((hill.start_m for hill in climbs if hill.number == lesson.climb), None)
    return None


def carried(project: Project) -> tuple[Lesson, ...]:
    """Return the lessons of *project* as an answer is asked for in the next one.

    What was answered already is asked again: another race may want another answer.
    """
    name = f"{project.race.name} {project.race.day.year}"
    return tuple(
        replace(lesson, learnt_at=lesson.learnt_at or name, answer="") for lesson in project.lessons
    )
