import json
import sys
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QComboBox, QFileDialog, QLabel, QLineEdit

from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.window.main_window import MainWindow
from ultraplanner_gui.window.settings_form import SettingsForm

sys.path.insert(0, str(Path(__file__).parents[2] / "packaging"))
from pictures_languages import spoken

TODAY = date(2027, 4, 1)


@pytest.fixture
def window(qtbot, tmp_path):
    window = MainWindow(Settings(tmp_path / "settings.ini"))
    qtbot.addWidget(window)
    window.show()
    window.show_document(Document(None, demo_project(TODAY), lambda: TODAY))
    return window


def row_of(form, key):
    return next(row for row in form.rows if row._setting.key == key)


def opened(window):
    window.deeds.settings()
    return window.findChild(SettingsForm)


def choose(box, value):
    assert isinstance(box, QComboBox)
    box.setCurrentIndex(box.findData(value))


def test_units_change_the_sheet_at_once(window):
    form = opened(window)
    choose(row_of(form, "units").field, "imperial")
    assert window.settings.units == "imperial"
    assert window.workplace.header._words().units == "imperial"


def test_search_leaves_what_it_is_about(window):
    form = opened(window)
    QTest.keyClicks(form.search, "miles")
    assert [row._setting.key for row in form.rows if not row.isHidden()] == ["units"]
    QTest.keyClick(form.search, Qt.Key.Key_Return)
    assert form.isVisible()
    form.search.setText("zzz")
    assert form.said.text()


def picked(form, name):
    """Choose the file *name* in the dialog that is open over *form*."""
    dialog = next(d for d in form.findChildren(QFileDialog) if d.isVisible())
    dialog.setDirectory(str(Path(name).parent))
    dialog.findChild(QLineEdit, "fileNameEdit").setText(name)
    dialog.accept()


def test_choices_are_exported_and_come_back(window, tmp_path):
    form = opened(window)
    choose(row_of(form, "cards/paper").field, "A4")
    form._on_export()
    picked(form, str(tmp_path / "mine"))
    assert form.said.text() == "Written: mine.json"
    form._on_reset()
    assert window.settings.card_paper == "card"
    form._on_import()
    picked(form, str(tmp_path / "mine.json"))
    assert window.settings.card_paper == "A4"
    assert row_of(form, "cards/paper").field.currentData() == "A4"
    assert form.said.text() == "Taken from mine.json."


def test_usual_values_and_an_import_can_be_taken_back(window, tmp_path):
    form = opened(window)
    choose(row_of(form, "units").field, "imperial")
    choose(row_of(form, "cards/paper").field, "A3")
    assert not form.take_back.isEnabled()
    form._on_reset()
    assert (window.settings.units, window.settings.card_paper) == ("system", "card")
    form.take_back.click()
    assert (window.settings.units, window.settings.card_paper) == ("imperial", "A3")
    assert row_of(form, "units").field.currentData() == "imperial"
    assert window.workplace.header._words().units == "imperial"
    assert not form.take_back.isEnabled()
    file = tmp_path / "theirs.json"
    file.write_text(json.dumps({"units": "metric", "shoe": 44}), "utf-8")
    form.import_from(str(file))
    assert form.said.text() == "Taken from theirs.json. Passed over, unknown here: shoe"
    form.take_back.click()
    assert window.settings.units == "imperial"


def test_a_file_that_is_none_is_said_so(window, tmp_path):
    form, file = opened(window), tmp_path / "bad.json"
    file.write_text(json.dumps([1]), "utf-8")
    form.import_from(str(file))
    assert "holds no settings" in form.said.text()
    assert not form.take_back.isEnabled()


def test_where_nothing_can_be_written_is_said(window, tmp_path):
    form = opened(window)
    form.export_to(str(tmp_path / "no such folder" / "mine.json"))
    assert "mine.json" in form.said.text()
    assert not form.said.text().startswith("Written")


def test_ticks_say_an_in_german(qapp, window, tmp_path):
    with spoken("de", tmp_path):
        form = opened(window)
        assert row_of(form, "motion").field.text() == "an"
        form.reject()


def test_it_says_where_it_is_kept(window, tmp_path):
    texts = [label.text() for label in opened(window).findChildren(QLabel)]
    assert f"Kept in {tmp_path / 'settings.ini'}" in texts
