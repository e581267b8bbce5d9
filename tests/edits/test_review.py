import pytest
from msgspec.structs import replace

from tests.edits.made import PROJECT
from ultraplanner_gui.edits.review import ChangeLesson, ChangeReview, NewLesson, RemoveLesson
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.review import Ending, PinnedTo, Remark, Review, Taken

SAID = Review(
    "rec", Ending.STOPPED, "the knee", (Taken(3_600.0, "gel"),), (Remark(9_000.0, "hail"),)
)


def test_what_is_said_of_a_run_is_kept_once():
    said = ChangeReview(SAID).apply(PROJECT)
    assert said.reviews == (SAID,)
    changed = ChangeReview(replace(SAID, why="both knees")).apply(said)
    assert [r.why for r in changed.reviews] == ["both knees"]


def test_a_lesson_is_written_changed_answered_and_thrown_away():
    learnt = NewLesson("Eat before it", PinnedTo.CLIMB, climb=2).apply(PROJECT)
    lesson = learnt.lessons[-1]
    assert (lesson.pin, lesson.climb) == (PinnedTo.CLIMB, 2)
    answered = ChangeLesson(lesson.key, answer="two gels").apply(learnt)
    assert answered.lessons[-1].answer == "two gels"
    assert RemoveLesson(lesson.key).apply(answered) == PROJECT


def test_the_same_lesson_is_written_once():
    once = NewLesson("Walk early").apply(PROJECT)
    assert NewLesson("Walk early").apply(once) is once


def test_a_lesson_of_an_earlier_race_is_open_until_it_is_answered():
    learnt = NewLesson("Walk early").apply(PROJECT)
    earlier = replace(learnt.lessons[-1], learnt_at="Round 2026")
    assert earlier.is_open
    assert not replace(earlier, answer="  ").answer.strip()
    assert not replace(earlier, answer="from the first climb").is_open
    assert not learnt.lessons[-1].is_open


@pytest.mark.parametrize(
    "edit",
    [
        ChangeReview(replace(SAID, recording="gone")),
        ChangeReview(replace(SAID, taken=(Taken(float("nan"), "gel"),))),
        ChangeReview(replace(SAID, taken=(Taken(0.0, "gel", -1.0),))),
        ChangeReview(replace(SAID, note="x" * 5_000)),
        ChangeReview(replace(SAID, remarks=(Remark(-5.0, "x"),))),
        NewLesson("  "),
        NewLesson("late", PinnedTo.HOUR, hour_s=float("inf")),
        NewLesson("up", PinnedTo.CLIMB, climb=-1),
        ChangeLesson("gone", text="x"),
        RemoveLesson("gone"),
    ],
    ids=repr,
)
def test_what_cannot_be_is_refused(edit):
    with pytest.raises(PlanError):
        edit.apply(PROJECT)
