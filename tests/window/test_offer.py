"""What a job makes goes in as one step, or is offered over newer changes."""

from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel

from ultraplanner_gui.desk import resources
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.edits.project import WriteNotes
from ultraplanner_gui.window.ask import Ask
from ultraplanner_gui.window.main_window import MainWindow

TODAY = date(2026, 11, 25)


class Answers(Ask):
    """Answers with the demo's own course."""

    def __init__(self):
        pass

    def which_course(self, folder, taken):
        taken(resources.path("demo/course.gpx"))


@pytest.fixture
def window(qtbot, tmp_path):
    window = MainWindow(Settings(tmp_path / "settings.ini"), Answers())
    qtbot.addWidget(window)
    window.show()
    window.show_document(Document(None, demo_project(TODAY), lambda: TODAY))
    return window


JOBS = pytest.mark.parametrize("job", ["build_block", "open_course"])


@JOBS
def test_a_result_goes_in_as_one_step(window, qtbot, job):
    document = window.document
    before = document.project
    with qtbot.waitSignal(window.jobs.done, timeout=20_000):
        getattr(window.deeds, job)()
    assert document.project != before
    assert document.undo_stack.count() == 1
    assert not window.offer.isVisible()
    document.undo_stack.undo()
    assert document.project == before


@JOBS
def test_over_newer_changes_it_is_offered_and_taken_only_if_wished(window, qtbot, job):
    document = window.document
    with qtbot.waitSignal(window.jobs.done, timeout=20_000):
        getattr(window.deeds, job)()
        document.perform(WriteNotes("newer"))
    newer = document.project
    assert newer.notes == "newer"
    assert document.undo_stack.count() == 1
    assert window.offer.isVisible()
    assert window.offer.text

    qtbot.mouseClick(window.offer.leave, Qt.MouseButton.LeftButton)
    assert not window.offer.isVisible()
    assert document.project is newer


@JOBS
def test_an_offer_taken_keeps_the_newer_change(window, qtbot, job):
    document = window.document
    with qtbot.waitSignal(window.jobs.done, timeout=20_000):
        getattr(window.deeds, job)()
        document.perform(WriteNotes("newer"))
    newer = document.project
    qtbot.keyClick(window.offer.put_in, Qt.Key.Key_Space)
    assert document.project.notes == "newer"
    assert document.project != newer
    assert document.undo_stack.count() == 2
    document.undo_stack.undo()
    assert document.project == newer


def test_closing_the_project_withdraws_the_offer(window, qtbot):
    with qtbot.waitSignal(window.jobs.done, timeout=20_000):
        window.deeds.build_block()
        window.document.perform(WriteNotes("newer"))
    assert window.offer.isVisible()
    window.close_document()
    assert not window.offer.isVisible()


def test_a_result_for_a_project_that_is_closed_changes_nothing(window, qtbot):
    with qtbot.waitSignal(window.jobs.done, timeout=20_000):
        window.deeds.build_block()
        window.show_document(Document(None, demo_project(TODAY), lambda: TODAY))
    assert window.document.undo_stack.count() == 0
    assert not window.offer.isVisible()


@pytest.mark.parametrize(
    ("job", "said"),
    [("build_block", "Building the block"), ("open_course", "Reading course.gpx")],
)
def test_the_work_is_named_beside_its_progress_and_gone_when_done(window, qtbot, job, said):
    def seen():
        labels = window.statusBar().findChildren(QLabel)
        return [label.text() for label in labels if label.isVisible() and label.text()]

    assert said not in seen()
    with qtbot.waitSignal(window.jobs.done, timeout=20_000):
        getattr(window.deeds, job)()
        assert said in seen()
    assert said not in seen()


def test_nothing_moves_when_something_is_offered_at_the_foot(window):
    window.resize(1280, 800)
    QApplication.processEvents()
    places = window._middle.geometry(), window.workplace.raceday.profile.geometry()
    window.offer.propose(window.document, WriteNotes("better"), "A better block is there.")
    QApplication.processEvents()
    assert window.offer.isVisible()
    assert (window._middle.geometry(), window.workplace.raceday.profile.geometry()) == places


def test_a_long_offer_has_room_for_every_line(window):
    window.resize(900, 700)
    text = "By what the search counts, none is better by more than this. " * 6
    window.offer.propose(window.document, WriteNotes("better"), text)
    for _ in range(3):
        QApplication.processEvents()
    label = window.offer._text
    assert label.heightForWidth(label.width()) <= label.height() <= window.offer.height()


def test_no_sentence_at_the_foot_makes_the_window_wider(window):
    least = window.minimumSizeHint().width()
    window.say("There is no end to what can be said. " * 20)
    QApplication.processEvents()
    assert window.minimumSizeHint().width() == least
