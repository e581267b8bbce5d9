"""Every text people see comes from a translation: none stays English in a made-up language."""

import re
import string
import sys
from datetime import date
from enum import Enum
from pathlib import Path
from zoneinfo import available_timezones

import pytest
from msgspec import Struct
from msgspec.structs import replace
from PySide6.QtCore import QCoreApplication, QTranslator
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QAbstractButton, QComboBox, QGroupBox, QLabel, QLineEdit, QWidget

from tests.window.test_every_window import COURSE_TABLE, MENDED, VIEWS
from tests.window.text_drawn import TextWatch, settle
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.language import translated
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.window.main_window import MainWindow

sys.path.insert(0, str(Path(__file__).parents[2] / "packaging"))
import translate

LETTERS = re.compile(r"\b[A-Za-z]{3,}\b")
DONE = re.compile(r"⟦[^⟦⟧]*⟧|⟦|⟧")
PAPER = re.compile(r"\b(19|20)\d\d\b.*[A-Z]\w+ |et al\.")
ZONES = available_timezones()
#: What the views are given to show, as a user would type it.
GIVEN = {cell for line in COURSE_TABLE.splitlines() for cell in re.split("[;,] ?", line)} - {""}
GIVEN |= {MENDED}
#: Names, units and signs that no language changes.
KEPT = {"min", "kcal", "mmol", "UTC", "GPX", "PDF", "CSV", "XLSX", "PNG", "SVG", "Ultraplanner"}
KEPT |= {"Esc", "Ctrl", "Shift", "Alt", "Del", "Tab", "Enter", "Home", "End", "Space"}
#: Buttons whose words Qt brings.
KEPT |= {"Cancel", "Close", "Save", "Yes", "Discard", "Apply"}
GREEK = {ord(a): chr(0x3B1 + n % 24) for n, a in enumerate(string.ascii_lowercase)}
GREEK |= {ord(a): chr(0x391 + n % 17) for n, a in enumerate(string.ascii_uppercase)}


@pytest.fixture(scope="session")
def pseudo_file(tmp_path_factory):
    return translate.pseudo(tmp_path_factory.mktemp("language"))


@pytest.fixture
def pseudo(qapp, pseudo_file):
    translator = QTranslator()
    assert translator.load(str(pseudo_file))
    QCoreApplication.installTranslator(translator)
    translated.cache_clear()
    yield
    QCoreApplication.removeTranslator(translator)
    translated.cache_clear()


@pytest.fixture
def window(pseudo, qtbot, qapp, tmp_path, monkeypatch):
    qapp.setStyle("Fusion")
    theme().choose("light", 100)
    settings = Settings(tmp_path / "settings.ini")
    settings.units, settings.locale = "metric", "ja_JP"  # days and months without letters
    window = MainWindow(settings)
    qtbot.addWidget(window)
    window.resize(1440, 900)
    window.show()
    yield window
    theme().choose("light", 100)


def _in_greek(value):
    """Return *value* with every text of the user in letters the search does not look for."""
    if isinstance(value, Enum):
        return value
    if isinstance(value, str):
        return value.translate(GREEK)
    if isinstance(value, tuple):
        return tuple(map(_in_greek, value))
    if isinstance(value, Struct):
        names = value.__struct_fields__
        return replace(value, **{name: _in_greek(getattr(value, name)) for name in names})
    return value


def _said_by_widgets(top):
    for widget in [top, *top.findChildren(QWidget)]:
        if not widget.isVisibleTo(top):
            continue
        yield widget.toolTip()
        yield widget.accessibleName()
        yield widget.accessibleDescription()
        if isinstance(widget, QLabel | QAbstractButton):
            yield widget.text()
        if isinstance(widget, QGroupBox):
            yield widget.title()
        if isinstance(widget, QLineEdit):
            yield widget.placeholderText()
        if isinstance(widget, QComboBox):
            yield from (widget.itemText(n) for n in range(widget.count()))
    for action in top.findChildren(QAction):
        yield action.text().partition("\t")[0]  # Qt says the keys after it in its own words
        yield action.toolTip()


def _english(text):
    """Return what of *text* is not translated; papers and zones keep their names."""
    if PAPER.search(text) or text in ZONES:
        return ""
    rest = re.sub(r"<[^>]*>", " ", text)
    for given in GIVEN:
        rest = rest.replace(given, " ")
    rest = DONE.sub(" ", rest)
    return " ".join(w for w in LETTERS.findall(rest) if w not in KEPT)


@pytest.mark.parametrize("name", VIEWS)
def test_no_text_is_left_in_english(window, tmp_path, monkeypatch, name):
    watch = TextWatch(monkeypatch)
    path = tmp_path / "1.ultraplan"
    ProjectFile.create(path, _in_greek(demo_project(date.today()))).close()
    window.deeds.open_project_file(path)
    top = VIEWS[name](window)
    watch.forget()
    theme().changed.emit()
    settle()
    texts = {*watch.texts, *_said_by_widgets(top)}
    assert sorted(t for t in texts if _english(t.replace(str(path), ""))) == []
