"""Heads stand over what their columns hold."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QTableWidget

from ultraplanner_gui.widgets.table_heads import align_heads


def test_heads_of_numbers_end_where_the_numbers_end(qtbot):
    table = QTableWidget(0, 3)
    qtbot.addWidget(table)
    table.setHorizontalHeaderLabels(["Name", "Load", "Note"])
    align_heads(table, (1,))
    sides = [table.horizontalHeaderItem(k).textAlignment() for k in range(3)]
    right = [bool(Qt.AlignmentFlag(side) & Qt.AlignmentFlag.AlignRight) for side in sides]
    assert right == [False, True, False]
    assert not any(Qt.AlignmentFlag(side) & Qt.AlignmentFlag.AlignHCenter for side in sides)
