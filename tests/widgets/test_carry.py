from datetime import UTC, datetime
from typing import ClassVar

import pytest

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.project import SetFirstWeekday, WriteNotes
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.carry import Carry


class Refused(Value, frozen=True):
    label: ClassVar[str] = "Refused"
    gesture: int = 0

    def apply(self, project):
        raise PlanError("No.")


@pytest.fixture
def document(qapp):
    project = Project(Race("", datetime(2027, 6, 19, 6, tzinfo=UTC), 36_000.0))
    return Document(project=project)


@pytest.fixture
def carry(document):
    return Carry(document)


def notes(carry, text):
    return WriteNotes(text, carry.gesture)


def test_what_is_carried_is_shown_and_not_kept(document, carry):
    carry.pick_up()
    carry.show(notes(carry, "poles"))

    assert carry.is_on
    assert document.shown.project.notes == "poles"
    assert document.project.notes == ""
    assert document.undo_stack.count() == 0


def test_put_down_performs_the_last_trial_as_one_step(document, carry):
    carry.pick_up()
    for text in ("a", "b", "c"):
        carry.show(notes(carry, text))

    assert carry.put_down()
    assert (document.project.notes, document.undo_stack.count()) == ("c", 1)
    assert not carry.is_on


def test_put_back_leaves_everything_as_it_was(document, carry):
    carry.pick_up()
    carry.show(notes(carry, "a"))
    carry.put_back()

    assert document.shown is document.before
    assert not carry.is_on
    assert not carry.put_down()
    assert document.undo_stack.count() == 0


def test_refused_move_leaves_the_last_good_one_standing(document, carry):
    carry.pick_up()
    carry.show(notes(carry, "a"))
    carry.show(Refused(carry.gesture))

    assert document.shown.project.notes == "a"
    assert carry.put_down()
    assert document.project.notes == "a"


def test_put_down_at_once_makes_no_step(document, carry):
    carry.pick_up()

    assert not carry.put_down()
    assert document.undo_stack.count() == 0


def test_carried_away_and_home_again_makes_no_step(document, carry):
    carry.pick_up()
    carry.show(notes(carry, "a"))
    carry.show(notes(carry, ""))
    carry.put_down()

    assert document.undo_stack.count() == 0


def test_two_carries_are_two_steps(document, carry):
    for text in ("a", "b"):
        carry.pick_up()
        carry.show(notes(carry, text))
        carry.put_down()

    assert document.undo_stack.count() == 2


def test_turning_to_another_kind_keeps_what_was_on_trial(document, carry):
    carry.pick_up()
    carry.turn_to(WriteNotes)
    carry.show(notes(carry, "a"))
    carry.turn_to(WriteNotes)
    assert document.undo_stack.count() == 0

    carry.turn_to(SetFirstWeekday)
    carry.show(SetFirstWeekday(6, carry.gesture))
    carry.put_down()

    assert (document.project.notes, document.project.first_weekday) == ("a", 6)
    assert document.undo_stack.count() == 2


def test_hand_is_empty_once_the_project_changes_otherwise(document, carry):
    document.perform(WriteNotes("kept"))
    carry.pick_up()
    carry.show(notes(carry, "a"))
    document.undo_stack.undo()

    assert not carry.is_on
    carry.show(notes(carry, "b"))
    assert document.shown is document.before
    assert not carry.put_down()
