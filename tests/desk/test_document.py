from datetime import date, timedelta

import pytest
from PySide6.QtCore import QCoreApplication, QEvent

from tests.desk.plans import MONDAY, derive, plan
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.block import MoveSession, RemoveSession
from ultraplanner_gui.edits.project import WriteNotes
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.store.project_file import ProjectFile


class Clock:
    day = date(2027, 3, 3)

    def __call__(self):
        return self.day


@pytest.fixture
def path(tmp_path):
    return tmp_path / "hill.ultraplan"


@pytest.fixture
def clock():
    return Clock()


@pytest.fixture
def document(qtbot, path, clock):
    document = Document(ProjectFile.create(path, plan()), None, clock, derive=derive)
    yield document
    document.close()


@pytest.fixture
def heard(document):
    """Every signal of the document, in order."""
    events = []
    document.changed.connect(lambda before, after: events.append(("changed", before, after)))
    for name in ("kept", "refused", "keep_failed", "stepped"):
        getattr(document, name).connect(lambda value, name=name: events.append((name, value)))
    return events


def names(heard):
    return [event[0] for event in heard]


def moved(days, gesture=0, key="easy"):
    return MoveSession(key, MONDAY + timedelta(days=days), gesture)


def day_of(project, key="easy"):
    return project.block.session(key).day


def kept_in(path):
    """What another program would find, were this one killed now."""
    copy = path.with_name("seen.ultraplan")
    copy.write_bytes(path.read_bytes())
    with ProjectFile.open(copy) as file:
        return file.project


def test_edit_is_kept_before_the_views_hear_of_it(document, heard, path):
    seen = []
    document.changed.connect(lambda before, after: seen.append(kept_in(path)))
    assert document.perform(moved(2))
    assert names(heard) == ["kept", "changed"]
    assert seen == [document.project]
    assert heard[0][1] == document.kept_at
    assert document.is_kept


def test_drag_is_one_undo_step(document):
    gesture = document.new_gesture()
    for days in (1, 2, 3):
        document.perform(moved(days, gesture))
    assert document.undo_stack.count() == 1
    document.undo_stack.undo()
    assert day_of(document.project) == MONDAY


def test_second_drag_is_a_second_step(document):
    for days in (1, 2):
        document.perform(moved(days, document.new_gesture()))
    assert document.undo_stack.count() == 2
    document.undo_stack.undo()
    assert day_of(document.project) == MONDAY + timedelta(days=1)


def test_other_edit_of_the_same_gesture_number_is_its_own_step(document):
    document.perform(moved(1, 7))
    document.perform(WriteNotes("x", 7))
    assert document.undo_stack.count() == 2


def test_drag_back_to_the_start_is_no_step(document, path):
    gesture = document.new_gesture()
    document.perform(moved(3, gesture))
    document.perform(moved(0, gesture))
    assert document.undo_stack.count() == 0
    assert kept_in(path) == plan()


def test_edit_that_changes_nothing_is_no_step(document, heard):
    assert document.perform(moved(0))
    assert document.perform(WriteNotes(""))
    assert (document.undo_stack.count(), heard) == (0, [])


def test_refused_edit_changes_nothing_and_says_why(document, heard):
    before = document.outlook
    assert not document.perform(moved(1, key="race"))
    assert document.outlook is before
    assert document.undo_stack.count() == 0
    assert names(heard) == ["refused"]
    assert isinstance(heard[0][1], Message)


def test_fault_in_an_edit_changes_nothing(document, heard):
    class Faulty(WriteNotes):
        def apply(self, project):
            raise ZeroDivisionError

    with pytest.raises(ZeroDivisionError):
        document.perform(Faulty("x"))
    assert (document.undo_stack.count(), heard) == (0, [])


def test_undo_and_redo_are_kept_and_name_their_deed(document, heard, path):
    document.perform(moved(2))
    assert document.undo_stack.undoText() == "Move session"
    after = document.project
    heard.clear()
    document.undo_stack.undo()
    assert names(heard) == ["kept", "changed", "stepped"]
    assert heard[-1][1] == moved(2)
    assert kept_in(path) == plan()
    document.undo_stack.redo()
    assert document.project == after == kept_in(path)


def test_trial_is_shown_and_never_kept(document, heard, path):
    raw, before = path.read_bytes(), document.outlook
    for days in (1, 2):
        assert document.try_edit(moved(days))
    assert day_of(document.shown.project) == MONDAY + timedelta(days=2)
    assert document.shown is document.trial_outlook
    assert document.before is before is document.outlook
    assert names(heard) == ["changed", "changed"]
    # each trial starts from the project, not from the trial before it
    assert document.shown.derived_from is before
    assert path.read_bytes() == raw
    document.drop_trial()
    assert document.shown is before
    assert heard[-1][2] is before
    assert document.undo_stack.count() == 0


def test_dropping_nothing_says_nothing(document, heard):
    document.drop_trial()
    assert document.try_edit(moved(0))
    assert heard == []


def test_refused_trial_leaves_the_last_one_shown(document, heard):
    document.try_edit(moved(1))
    shown = document.shown
    assert not document.try_edit(moved(1, key="race"))
    assert document.shown is shown
    assert names(heard) == ["changed", "refused"]


def test_performing_what_was_tried_derives_nothing_again(document):
    document.try_edit(moved(2))
    tried = document.shown
    document.drop_trial()
    document.perform(moved(2))
    assert document.outlook is tried
    assert document.trial_outlook is None


def test_refused_edit_ends_the_trial(document, heard):
    document.try_edit(moved(1))
    document.perform(moved(1, key="race"))
    assert document.shown is document.outlook
    assert names(heard) == ["changed", "changed", "refused"]


def test_edit_that_cannot_be_kept_stays_and_is_kept_with_the_next(document, heard, path):
    away = path.rename(path.with_name("away.ultraplan"))
    document.perform(WriteNotes("first"))
    assert (document.project.notes, document.is_kept) == ("first", False)
    assert names(heard) == ["keep_failed", "changed"]
    away.rename(path)
    document.perform(moved(1))
    assert document.is_kept
    assert kept_in(path) == document.project
    assert document.project.notes == "first"


def test_edit_that_could_not_be_kept_is_kept_when_asked_again(document, path):
    away = path.rename(path.with_name("away.ultraplan"))
    document.perform(WriteNotes("first"))
    away.rename(path)
    document.keep_again()
    assert document.is_kept
    assert kept_in(path).notes == "first"


def test_going_back_to_an_earlier_opening_is_one_step(document, path):
    document.perform(WriteNotes("later"))
    document.perform(RemoveSession("easy"))
    point = document.history()[0]
    assert document.go_back(point.id)
    assert document.project == plan() == kept_in(path)
    document.undo_stack.undo()
    assert document.project.notes == "later"


def test_point_that_is_gone_is_refused(document, heard):
    assert not document.go_back(99)
    assert names(heard) == ["refused"]


def test_copy_holds_what_the_document_holds(document, path, tmp_path):
    path.rename(path.with_name("away.ultraplan"))
    document.perform(WriteNotes("unkept"))
    document.save_copy(tmp_path / "copy.ultraplan")
    with ProjectFile.open(tmp_path / "copy.ultraplan") as copy:
        assert copy.project.notes == "unkept"
    path.with_name("away.ultraplan").rename(path)


def test_midnight_renews_the_outlook_and_ends_a_trial(document, heard, clock):
    document.refresh_today()
    assert heard == []
    document.try_edit(moved(1))
    clock.day += timedelta(days=1)
    document.refresh_today()
    assert document.shown.today == clock.day
    assert document.trial_outlook is None
    assert names(heard) == ["changed", "changed"]


def test_closed_document_lets_others_open_the_file(qtbot, path):
    document = Document(ProjectFile.create(path, plan()), derive=derive)
    document.perform(moved(1))
    document.close()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    with ProjectFile.open(path) as file:
        assert day_of(file.project) == MONDAY + timedelta(days=1)


def test_project_without_a_file_is_edited_and_copied(qtbot, tmp_path):
    document = Document(None, plan(), derive=derive)
    document.perform(moved(1))
    assert (document.path, document.kept_at, document.history()) == (None, None, [])
    document.save_copy(tmp_path / "new.ultraplan")
    with ProjectFile.open(tmp_path / "new.ultraplan") as file:
        assert file.project == document.project


def test_read_only_file_says_so_and_changes_stay_in_the_window(document, heard, monkeypatch):
    monkeypatch.setattr(document._file, "is_read_only", True)
    assert document.is_read_only
    document.perform(WriteNotes("x"))
    assert (document.project.notes, document.is_kept) == ("x", False)
    assert names(heard) == ["keep_failed", "changed"]


def test_document_needs_a_project(qtbot):
    with pytest.raises(ValueError):
        Document()
