import pytest
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from tests.widgets.hut_table import Owner
from ultraplanner_gui.widgets.table_view import TableView


@pytest.fixture
def owner(qapp):
    return Owner()


@pytest.fixture
def view(owner, qtbot):
    window = QWidget()
    table = TableView(owner.model, "Huts", window)
    owner.button = QPushButton("Next", window)
    box = QVBoxLayout(window)
    box.addWidget(table)
    box.addWidget(owner.button)
    table.show_rows(owner.huts)
    qtbot.addWidget(window)
    window.resize(700, 300)
    window.show()
    table.setFocus()
    owner.window = window
    return table
