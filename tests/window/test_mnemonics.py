"""One letter opens one entry of a menu."""

import re

from PySide6.QtGui import QKeySequence

from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.window.action_table import TABLE
from ultraplanner_gui.window.main_window import MainWindow


def test_no_letter_stands_twice_in_a_menu(qtbot, tmp_path):
    window = MainWindow(Settings(tmp_path / "settings.ini"))
    qtbot.addWidget(window)
    for actions in (window.menuBar().actions(), *(m.actions() for m in window._menus.values())):
        texts = [action.text() for action in actions if not action.isSeparator()]
        letters = [re.search("&(.)", text)[1].casefold() for text in texts if "&" in text]
        assert len(letters) == len(set(letters)), texts
        assert len(letters) == len(texts), texts


def test_no_key_starts_two_actions():
    keys = [QKeySequence(row.shortcut).toString() for row in TABLE if row.shortcut]
    assert sorted(keys) == sorted(set(keys))
