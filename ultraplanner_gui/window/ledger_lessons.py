"""Lessons in the ledger, where they belong."""

from __future__ import annotations

from collections.abc import Iterable

from ultraplanner_gui.desk.language import tr
from ultraplanner_gui.plan.review import Lesson
from ultraplanner_gui.widgets.rows import Heads, Link, Row, Rule, Sentence

#: What a click on an open lesson does: the name of its action.
ANSWER = "action:answer_lessons"


def lesson_rows(lessons: Iterable[Lesson]) -> list[Row]:
    """Return the rows of *lessons*, each with its answer or with the way to give one."""
    rows: list[Row] = []
    for lesson in lessons:
        if not rows:
            rows += [Rule(), Heads(tr("Learnt before"), topic="lessons")]
        said = f"{lesson.text} ({lesson.learnt_at})" if lesson.learnt_at else lesson.text
        said = f"{said} → {lesson.answer}" if lesson.answer else said
        rows.append(Sentence(said, "lessons"))
        if lesson.is_open:
            rows.append(Link(tr("Answer it"), ANSWER, "lessons"))
    return rows
