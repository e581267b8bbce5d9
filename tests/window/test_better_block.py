"""The block by the rules stands at once; a better one found later is offered, never put in."""

from datetime import date

import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.edits.block import RemoveSession
from ultraplanner_gui.engine.block_exact import ExactPlan
from ultraplanner_gui.engine.block_score import Score
from ultraplanner_gui.engine.first_plan import new_block
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.window import block_deeds
from ultraplanner_gui.window.ask import Ask
from ultraplanner_gui.window.main_window import MainWindow

TODAY = date(2026, 11, 25)
WORSE, BETTER = Score(0, 9, 0, 0), Score(0, 0, 0, 0)


class NoQuestions(Ask):
    def __init__(self):
        pass


def found(token, project, outlook, today):
    plan = new_block(project, outlook, today)
    block = replace(plan.block, first_week=plan.block.first_week + 1)
    plan = replace(plan, block=block)
    return ExactPlan(plan, True, 0.012, False, 1.0, WORSE, BETTER, 81_000.0, 40_000.0)


@pytest.fixture
def window(qtbot, tmp_path, monkeypatch):
    monkeypatch.setattr(block_deeds, "search_for_plan", found)
    window = MainWindow(Settings(tmp_path / "settings.ini"), NoQuestions())
    qtbot.addWidget(window)
    window.show()
    window.show_document(Document(None, demo_project(TODAY), lambda: TODAY))
    return window


def noticed(window):
    """Return what the ledger says of the making of the block."""
    rows = [getattr(row, "text", getattr(row, "title", "")) for row in upper(window)]
    if "Noticed while building it" not in rows:
        return ()
    notes = rows[rows.index("Noticed while building it") + 1 :]
    return tuple(note for note in notes if note in SAID)


def upper(window):
    return window.workplace.ledger._upper._rows


def noted(token, project, outlook, today):
    plan = build(token, project, outlook, today)
    return replace(plan, notes=NOTES)


build = block_deeds.build_for_plan
NOTES = (Message("There is no rehearsal run."), Message("The taper is too short."))
SAID = tuple(note.template for note in NOTES)


def built(window, qtbot):
    window.deeds.build_block()
    qtbot.waitUntil(lambda: window.document.undo_stack.count() == 1, timeout=20_000)
    return window.document.project


def test_a_better_block_is_offered_with_its_figures_and_its_gap(window, qtbot):
    project = built(window, qtbot)
    qtbot.waitUntil(window.offer.isVisible, timeout=20_000)
    assert window.document.project is project
    assert "81" in window.offer.text
    assert "1.2" in window.offer.text
    qtbot.mouseClick(window.offer.put_in, Qt.MouseButton.LeftButton)
    assert window.document.project.block.first_week == project.block.first_week + 1
    assert window.document.undo_stack.count() == 2


def test_a_block_changed_meanwhile_is_left_alone(window, qtbot):
    window.deeds.build_block()
    with qtbot.waitSignal(window.jobs.done, timeout=20_000):
        pass
    document = window.document
    ahead = next(s for s in document.project.block.sessions if s.is_open)
    with qtbot.waitSignal(window.jobs.done, timeout=20_000):
        document.perform(RemoveSession(ahead.key))
    assert not window.offer.isVisible()


def test_what_a_block_gives_way_in_stands_in_the_ledger_as_long_as_it_does(
    window, qtbot, monkeypatch
):
    monkeypatch.setattr(block_deeds, "build_for_plan", noted)
    built(window, qtbot)
    assert noticed(window) == SAID
    window.document.undo_stack.undo()
    assert noticed(window) == ()
    window.document.undo_stack.redo()
    assert noticed(window) == SAID
    ahead = next(s for s in window.document.project.block.sessions if s.is_open)
    window.workplace.selection.choose("session", ahead.key)
    assert noticed(window) == SAID
    window.document.perform(RemoveSession(ahead.key))
    assert noticed(window) == ()


def test_the_foot_says_in_short_and_plain_ink_that_a_block_is_built(window, qtbot, monkeypatch):
    monkeypatch.setattr(block_deeds, "build_for_plan", noted)
    built(window, qtbot)
    assert len(window._message.text()) <= 80
    assert f"color: {theme().colours.ink}" in window._message.styleSheet()


def test_the_next_edit_takes_the_message_at_the_foot_away(window, qtbot):
    built(window, qtbot)
    document = window.document
    ahead = next(s for s in document.project.block.sessions if s.is_open)
    window.inform("Something is done.")
    document.try_edit(RemoveSession(ahead.key))
    document.drop_trial()
    assert window._message.text() == "Something is done."
    document.perform(RemoveSession(ahead.key))
    assert window._message.text() == ""
