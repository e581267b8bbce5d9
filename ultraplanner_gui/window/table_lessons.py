"""The table of lessons: what was learnt, where it belongs, and the answer to it."""

from __future__ import annotations

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.review import ChangeLesson, NewLesson, RemoveLesson
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.review import Lesson, PinnedTo
from ultraplanner_gui.widgets.table_column import Column, say
from ultraplanner_gui.window.table_spec import CellOf, TableSpec, one_line
from ultraplanner_gui.wording.words import NONE, Words

PINS = {
    PinnedTo.ALL: QT_TRANSLATE_NOOP("Tables", "the whole race"),
    PinnedTo.HOUR: QT_TRANSLATE_NOOP("Tables", "an hour"),
    PinnedTo.CLIMB: QT_TRANSLATE_NOOP("Tables", "a climb"),
    PinnedTo.FOOD: QT_TRANSLATE_NOOP("Tables", "a food"),
}


def where_text(lesson: Lesson, words: Words) -> str:
    """Return what exactly a lesson is pinned to, "–" for the whole race."""
    if lesson.pin is PinnedTo.HOUR:
        return words.duration(lesson.hour_s)
    if lesson.pin is PinnedTo.CLIMB:
        return words.number(lesson.climb)
    return lesson.food or NONE if lesson.pin is PinnedTo.FOOD else NONE


def _pinned(lesson: Lesson, text: str, words: Words) -> Edit:
    for pin, name in PINS.items():
        if say(name).casefold() == text.strip().casefold():
            return ChangeLesson(lesson.key, pin=pin)
    raise PlanError(
        QT_TRANSLATE_NOOP("Plan", "A lesson is pinned to an hour, a climb, a food or the race.")
    )


def _where(lesson: Lesson, text: str, words: Words) -> Edit | None:
    if lesson.pin is PinnedTo.HOUR:
        hour_s = words.parse_duration(text, 3600.0)
        if hour_s is None:
            raise PlanError(QT_TRANSLATE_NOOP("Plan", "Type the time in the race, as 7 h 30."))
        return ChangeLesson(lesson.key, hour_s=hour_s)
    if lesson.pin is PinnedTo.CLIMB:
        number = words.parse_number(text)
        if number is None or number != round(number):
            raise PlanError(QT_TRANSLATE_NOOP("Plan", "Type the number of the climb, as 3."))
        return ChangeLesson(lesson.key, climb=int(number))
    return ChangeLesson(lesson.key, food=text.strip())


def _line(outlook: Outlook, cell: CellOf, words: Words) -> Edit:
    text = cell(QT_TRANSLATE_NOOP("Tables", "Lesson")).strip()
    if not text:
        raise PlanError(QT_TRANSLATE_NOOP("Plan", "A lesson needs its words."))
    return NewLesson(text)


LESSONS: TableSpec[Lesson] = TableSpec(
    name=QT_TRANSLATE_NOOP("Tables", "Lessons"),
    kind="",
    columns=(
        Column(
            QT_TRANSLATE_NOOP("Tables", "Lesson"),
            text=lambda lesson, words: one_line(lesson.text),
            parse=lambda lesson, text, words: ChangeLesson(lesson.key, text=text),
            is_wide=True,
            is_main=True,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Pinned to"),
            text=lambda lesson, words: say(PINS[lesson.pin]),
            parse=_pinned,
            choices=lambda lesson, words: tuple(map(say, PINS.values())),
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Which"),
            text=where_text,
            parse=_where,
            can_edit=lambda lesson: lesson.pin is not PinnedTo.ALL,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Learnt at"),
            text=lambda lesson, words: lesson.learnt_at or NONE,
        ),
        Column(
            QT_TRANSLATE_NOOP("Tables", "Answer"),
            text=lambda lesson, words: one_line(lesson.answer) or NONE,
            parse=lambda lesson, text, words: ChangeLesson(lesson.key, answer=text),
            warns=lambda lesson: lesson.is_open,
            is_wide=True,
        ),
    ),
    rows=lambda outlook: outlook.project.lessons,
    empty=lambda outlook: QT_TRANSLATE_NOOP(
        "Tables", "No lessons yet. Add one, or look back on a race and write it down there."
    ),
    hint=QT_TRANSLATE_NOOP(
        "Tables",
        "Lessons of an earlier race come back where they belong and ask for an answer before the "
        "cards are printed: what do you do about it this time?",
    ),
    title=lambda lesson, words: one_line(lesson.text),
    add=lambda outlook, lesson: NewLesson(say(QT_TRANSLATE_NOOP("Tables", "What was learnt"))),
    add_tip=QT_TRANSLATE_NOOP("Tables", "Write a lesson down"),
    add_line=_line,
    remove=lambda lesson: RemoveLesson(lesson.key),
)
