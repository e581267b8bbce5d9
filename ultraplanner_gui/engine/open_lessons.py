"""Lessons of earlier races that wait for their answer."""

from __future__ import annotations

from collections.abc import Iterator

from ultraplanner_gui.engine.check import Check
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, PlanError, message
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.review import Lesson

RULE = "lessons"
_OWN = message(QT_TRANSLATE_NOOP("Checks", "Our own choice."))


def open_lessons(project: Project) -> tuple[Lesson, ...]:
    """Return the lessons of earlier races that are not answered."""
    return tuple(lesson for lesson in project.lessons if lesson.is_open)


def must_be_answered(project: Project) -> None:
    """Raise PlanError while a lesson of an earlier race waits for its answer."""
    waiting = open_lessons(project)
    if waiting:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Cards",
                "Lessons of an earlier race wait for an answer: {0}. Answer them under Tables, "
                "Lessons, then print.",
            ),
            len(waiting),
        )


def lesson_check(project: Project) -> Iterator[Check]:
    """Yield how the lessons of earlier races stand; nothing where there are none."""
    earlier = [lesson for lesson in project.lessons if lesson.learnt_at]
    if not earlier:
        return
    waiting = len(open_lessons(project))
    text: Message = message(
        QT_TRANSLATE_NOOP("Checks", "Every lesson of earlier races has its answer.")
    )
    if waiting:
        text = message(
            QT_TRANSLATE_NOOP("Checks", "Lessons of earlier races without an answer: {0}."), waiting
        )
    yield Check(RULE, State.STRAINS if waiting else State.HOLDS, text, _OWN)
