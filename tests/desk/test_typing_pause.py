import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit, QVBoxLayout, QWidget

from ultraplanner_gui.desk.typing_pause import PAUSE_MS, TypingPause
from ultraplanner_gui.edits.project import WriteNotes


@pytest.fixture(params=[QPlainTextEdit, QLineEdit])
def form(qtbot, request):
    """A text field, another one to go to, and what is performed meanwhile."""
    window = QWidget()
    qtbot.addWidget(window)
    box = QVBoxLayout(window)
    window.text, window.other = request.param(window), QLineEdit(window)
    box.addWidget(window.text)
    box.addWidget(window.other)
    window.performed = []

    def perform(edit):
        assert not window.pause.is_pending
        window.performed.append(edit)
        return True

    window.pause = TypingPause(window.text, WriteNotes, perform, window, pause_ms=60)
    window.show()
    window.text.setFocus()
    return window


def test_typing_is_kept_once_after_a_pause(qtbot, form):
    qtbot.keyClicks(form.text, "long hill")
    assert form.performed == []
    assert form.pause.is_pending
    qtbot.waitUntil(lambda: form.performed == [WriteNotes("long hill")])
    qtbot.wait(90)
    assert len(form.performed) == 1


def test_leaving_the_field_keeps_at_once(qtbot, form):
    qtbot.keyClicks(form.text, "a")
    form.other.setFocus()
    assert form.performed == [WriteNotes("a")]


def test_flush_keeps_at_once_and_only_what_was_typed(qtbot, form):
    form.pause.flush()
    assert form.performed == []
    qtbot.keyClick(form.text, Qt.Key.Key_A)
    form.pause.flush()
    form.pause.flush()
    assert form.performed == [WriteNotes("a")]


def test_dropped_typing_is_not_kept(qtbot, form):
    qtbot.keyClicks(form.text, "a")
    form.pause.drop()
    qtbot.wait(90)
    assert form.performed == []


def test_field_of_nothing_makes_no_edit(qtbot):
    field = QLineEdit()
    qtbot.addWidget(field)
    performed = []
    pause = TypingPause(field, lambda text, gesture: None, performed.append, field)
    qtbot.keyClicks(field, "a")
    pause.flush()
    assert performed == []


def test_pause_is_two_seconds():
    assert PAUSE_MS == 2000
