"""Why a drag cannot be done is said beside the pointer, and at the foot for longer."""

from contextlib import contextmanager
from datetime import date, timedelta

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QCursor
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.block import MoveSession
from ultraplanner_gui.edits.stations import SetStop
from ultraplanner_gui.window.beside import Beside

TODAY = date(2026, 11, 25)
LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def window(bare_window):
    bare_window.resize(1440, 900)
    bare_window.show_document(Document(None, demo_project(TODAY), lambda: TODAY))
    QApplication.processEvents()
    return bare_window


def shown(window):
    return [b.text() for b in window.findChildren(Beside) if b.isVisible()]


@contextmanager
def held(window):
    """A session that is done, in the hand of somebody who would move it."""
    grid = window.workplace.buildup.grid
    done = next(s for s in window.document.project.block.sessions if s.done is not None)
    start = grid.cells.tile(done.key).rect.center().toPoint()
    QTest.mousePress(grid, LEFT, pos=start)
    for part in range(1, 7):
        QTest.mouseMove(grid, start + QPoint(10 * part, 0))
    yield
    QTest.mouseRelease(grid, LEFT, pos=start)


def test_a_done_session_says_beside_the_hand_why_it_stays(window):
    with held(window):
        (text,) = shown(window)
        assert "done" in text
        assert window._message.text() == text


def test_it_goes_when_something_can_be_done(window):
    ahead = next(s for s in window.document.project.block.sessions if s.is_open)
    with held(window):
        window.document.try_edit(MoveSession(ahead.key, ahead.day + timedelta(days=1)))
        assert shown(window) == []
    window.document.drop_trial()


def test_refused_by_keys_it_stands_at_the_foot_alone(window):
    window.document.perform(SetStop(window.document.project.course.stations[0].key, -60.0))
    assert window._message.text()
    assert shown(window) == []


@pytest.mark.parametrize("corner", [(0, 0), (1440, 0), (0, 900), (1440, 900)])
def test_it_never_leaves_the_window(window, corner):
    beside = Beside(window)
    beside.say("There is no room for it here, however long one looks. " * 3, QCursor.pos())
    beside.say("There is room.", window.mapToGlobal(QPoint(*corner)))
    assert window.rect().contains(beside.geometry())
    beside.say("A sentence so long that it needs several lines. " * 4, QCursor.pos())
    assert beside.heightForWidth(beside.width()) <= beside.height()
