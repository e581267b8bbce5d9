"""Looking back on a race or a rehearsal, and the lessons of it."""

from __future__ import annotations

import math
from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.review import Lesson, PinnedTo, Review
from ultraplanner_gui.plan.value import Value

LONGEST_TEXT = 2_000
MOST_LESSONS = 200
MOST_TAKEN = 2_000
LAST_HOUR_S = 240.0 * 3600.0
MOST_CLIMB = 500


class ChangeReview(Value, frozen=True):
    """The user said how a race or rehearsal ended, what was eaten, or noted something."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Look back on a run")
    review: Review
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        review = self.review
        if all(recording.key != review.recording for recording in project.recordings):
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "That recording is no longer in the plan."))
        for text in (review.why, review.note, *(remark.text for remark in review.remarks)):
            _check_text(text)
        taken = review.taken or ()
        if len(taken) > MOST_TAKEN or not all(
            0.0 <= t.at_s <= LAST_HOUR_S and 0.0 < t.servings <= 100.0 for t in taken
        ):
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "What was taken lies within the race, 0 to 100 servings.")
            )
        if not all(0.0 <= r.at_m < 1e7 and math.isfinite(r.at_m) for r in review.remarks):
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "A remark lies on the course."))
        others = tuple(r for r in project.reviews if r.recording != review.recording)
        if review in project.reviews:
            return project
        return replace(project, reviews=(*others, review))


class NewLesson(Value, frozen=True):
    """The user wrote a lesson down; one of these words and this place that is there stays one."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Add a lesson")
    text: str
    pin: PinnedTo = PinnedTo.ALL
    hour_s: float = 0.0
    climb: int = 0
    food: str = ""
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        taken = {lesson.key for lesson in project.lessons}
        number = len(taken) + 1
        while f"lesson-{number}" in taken:
            number += 1
        place = self.pin, self.hour_s, self.climb, self.food
        lesson = Lesson(f"lesson-{number}", self.text.strip(), *place)
        _check(lesson)
        if any(replace(lesson, key=each.key) == each for each in project.lessons):
            return project
        if len(taken) >= MOST_LESSONS:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "A plan keeps up to {0} lessons; remove some."),
                MOST_LESSONS,
            )
        return replace(project, lessons=(*project.lessons, lesson))


class ChangeLesson(Value, frozen=True):
    """The user changed a lesson or answered it; what is None stays."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change a lesson")
    key: str
    text: str | None = None
    pin: PinnedTo | None = None
    hour_s: float | None = None
    climb: int | None = None
    food: str | None = None
    answer: str | None = None
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        before = _find(project, self.key)
        after = replace(
            before,
            text=before.text if self.text is None else self.text.strip(),
            pin=before.pin if self.pin is None else self.pin,
            hour_s=before.hour_s if self.hour_s is None else self.hour_s,
            climb=before.climb if self.climb is None else self.climb,
            food=before.food if self.food is None else self.food,
            answer=before.answer if self.answer is None else self.answer.strip(),
        )
        _check(after)
        if after == before:
            return project
        return replace(
            project, lessons=tuple(after if each is before else each for each in project.lessons)
        )


class RemoveLesson(Value, frozen=True):
    """The user threw a lesson away."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Remove a lesson")
    key: str
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        gone = _find(project, self.key)
        return replace(project, lessons=tuple(each for each in project.lessons if each is not gone))


def _find(project: Project, key: str) -> Lesson:
    for lesson in project.lessons:
        if lesson.key == key:
            return lesson
    raise PlanError(QT_TRANSLATE_NOOP("Edit", "That lesson is no longer in the plan."))


def _check(lesson: Lesson) -> None:
    if not lesson.text:
        raise PlanError(QT_TRANSLATE_NOOP("Edit", "A lesson needs its words."))
    for text in (lesson.text, lesson.answer, lesson.food):
        _check_text(text)
    if not 0.0 <= lesson.hour_s <= LAST_HOUR_S or not 0 <= lesson.climb <= MOST_CLIMB:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "A lesson is pinned to an hour up to 240 or a climb to 500.")
        )


def _check_text(text: str) -> None:
    if len(text) > LONGEST_TEXT:
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "A text has up to {0} letters; shorten it."), LONGEST_TEXT
        )
