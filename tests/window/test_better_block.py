"""The block by the rules stands at once; a better one found later is offered, never put in."""

from dataclasses import replace
from datetime import date

import pytest
from PySide6.QtCore import Qt

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.edits.block import RemoveSession
from ultraplanner_gui.engine.block_exact import ExactPlan
from ultraplanner_gui.engine.block_score import Score
from ultraplanner_gui.engine.first_plan import new_block
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
