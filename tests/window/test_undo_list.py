from datetime import date, datetime
from zoneinfo import ZoneInfo

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtWidgets import QApplication, QDialog, QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.edits.project import WriteNotes
from ultraplanner_gui.edits.race import ChangeSetup
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.window.undo_list import UndoList

START = datetime(2027, 6, 19, 6, 0, tzinfo=ZoneInfo("Europe/London"))
LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def document(qapp):
    project = Project(Race("Round", START, 7 * 3600.0))
    return Document(project=project, today=lambda: date(2027, 5, 12))


@pytest.fixture
def window(qtbot):
    window = QWidget()
    qtbot.addWidget(window)
    window.show()
    return window


@pytest.fixture
def panel(qtbot, window, document):
    for text in ("a", "b", "c"):
        document.perform(WriteNotes(text))
    panel = UndoList.show_beside(window, document)
    qtbot.waitExposed(panel)
    return panel


def texts(panel):
    return [panel.steps.item(n).text() for n in range(panel.steps.count())]


def spoken(panel, row):
    return panel.steps.item(row).data(Qt.ItemDataRole.AccessibleTextRole)


def click(qtbot, panel, row):
    at = panel.steps.visualItemRect(panel.steps.item(row)).center()
    qtbot.mouseClick(panel.steps.viewport(), LEFT, pos=at)


def test_steps_stand_in_order_by_name_after_the_state_at_opening(panel):
    assert texts(panel) == ["As it was opened", *["Write notes"] * 3]
    assert panel.steps.currentRow() == 3
    assert "here the plan stands" in spoken(panel, 3)


def test_a_click_goes_back_to_a_step_and_forth_again(qtbot, panel, document):
    click(qtbot, panel, 1)
    assert document.project.notes == "a"
    assert texts(panel)[1:] == ["Write notes"] * 3
    assert "taken back" in spoken(panel, 2)
    click(qtbot, panel, 3)
    assert document.project.notes == "c"


def test_enter_goes_to_the_step_the_arrows_chose(qtbot, panel, document):
    for key in (Qt.Key.Key_Up, Qt.Key.Key_Up, Qt.Key.Key_Up):
        qtbot.keyClick(panel.steps, key)
    assert document.project.notes == "c"
    qtbot.keyClick(panel.steps, Qt.Key.Key_Return)
    assert document.project.notes == ""


def test_the_list_follows_what_is_done_elsewhere(panel, document):
    document.perform(ChangeSetup(document.project.race, document.project.runner, 6))
    assert len(texts(panel)) == 5
    document.undo_stack.undo()
    assert panel.steps.currentRow() == 3
    document.perform(WriteNotes("d"))
    assert texts(panel)[-1] == "Write notes"
    assert len(texts(panel)) == 5


def test_a_jump_over_many_steps_is_kept_as_the_state_it_leads_to(panel, document):
    before = document.outlook
    panel.go_to(0)
    assert document.project.notes == ""
    panel.go_to(3)
    assert document.project == before.project


def test_the_panel_opens_once_and_comes_forward(window, panel, document):
    assert UndoList.show_beside(window, document) is panel
    assert window.findChildren(QDialog) == [panel]


def test_the_panel_goes_with_the_project(window, panel, document):
    document.close()
    for _ in range(2):
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    assert window.findChildren(QDialog) == []
