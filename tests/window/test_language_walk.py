"""Nothing is cut off or painted over in any state: German, a longer language, one from the right.

The made-up languages are those of `packaging/translate.py`; CLDR has the like as en-XA and ar-XB.
"""

import sys
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QApplication, QDialog, QFileDialog, QLabel, QPushButton, QToolButton

from tests.window.test_every_window import VIEWS, _called, _is_whole, _needs_more, _scrolls, _seen
from tests.window.text_drawn import TextWatch, settle
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.window.main_window import MainWindow

sys.path.insert(0, str(Path(__file__).parents[2] / "packaging"))
from pictures_languages import LOCALES, spoken

LANGUAGES = tuple(LOCALES)
SIZES = ((1440, 900), (1920, 1080))
#: What ends the window or waits for a program beside it.
LEFT_OUT = {"quit", "close_project", "another_window"}


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    return tmp_path_factory.mktemp("languages")


@pytest.fixture(scope="module")
def demo(folder):
    ProjectFile.create(folder / "hundred.ultraplan", demo_project(date.today())).close()
    return folder / "hundred.ultraplan"


@pytest.fixture
def window_in(qtbot, qapp, folder, tmp_path):
    """Return what gives a window in a language; the language ends with the test."""
    speakers = []

    def given(language, size=SIZES[0]):
        qapp.setStyle("Fusion")
        theme().choose("light", 100)
        speaker = spoken(language, folder)
        speaker.__enter__()
        speakers.append(speaker)
        settings = Settings(tmp_path / "settings.ini")
        settings.units, settings.locale = "metric", LOCALES[language]
        window = MainWindow(settings)
        qtbot.addWidget(window)
        window.resize(*size)
        window.show()
        return window

    yield given
    for speaker in speakers:
        speaker.__exit__(None, None, None)


def _cut_in(top):
    for widget in _seen(top, QLabel, QPushButton, QToolButton):
        if needs := _needs_more(widget):
            yield f"{_called(widget)} is {widget.width()} x {widget.height()}, needs {needs}"
        elif not _scrolls(widget, top) and not _is_whole(widget, top):
            yield f"{_called(widget)} stands partly outside"


def _closed(top, window):
    if top is not window:
        top.close()
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


@pytest.mark.parametrize(
    ("language", "size"), [*((one, SIZES[0]) for one in LANGUAGES), ("long", SIZES[1])], ids=str
)
def test_every_view(window_in, demo, monkeypatch, language, size):
    window = window_in(language, size)
    watch = TextWatch(monkeypatch)
    faults = {}
    for name, show in VIEWS.items():
        window.deeds.open_project_file(demo)
        top = show(window)
        settle()
        watch.forget()
        theme().changed.emit()
        settle()
        if found := [*_cut_in(top), *watch.faults()]:
            faults[name] = found
        _closed(top, window)
    assert faults == {}


@pytest.mark.parametrize("language", ["de", "long"])
def test_every_dialog_an_action_opens(window_in, demo, language):
    window = window_in(language)
    window.deeds.open_project_file(demo)
    faults, seen = {}, set()
    for name in window.table.by_name:
        action = window.table.by_name[name]
        if name in LEFT_OUT or not action.isEnabled():
            continue
        if window.document is None or window.document.project.course is None:
            window.deeds.open_project_file(demo)
        known = set(window.findChildren(QDialog))
        action.trigger()
        settle()
        for dialog in set(window.findChildren(QDialog)) - known:
            if isinstance(dialog, QFileDialog):
                dialog.reject()
                continue
            seen.add(name)
            if found := list(_cut_in(dialog)):
                faults[name] = found
            _closed(dialog, window)
    assert len(seen) > 30
    assert faults == {}
