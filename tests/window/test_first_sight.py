"""The window is painted with its race in it before the rest is imported, and loses nothing."""

import subprocess
import sys
from datetime import date

import pytest
from PySide6.QtCore import Qt

from tests.rules import source
from ultraplanner_gui import app
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.store.glance import Glance, glance
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.window.ask import Ask
from ultraplanner_gui.window.first_sight import FirstSight
from ultraplanner_gui.window.main_window import MainWindow

TODAY = date(2026, 3, 2)
HEAVY = ("numpy", "ultraplanner_gui.engine", "ultraplanner_gui.plan.project")

STARTED = """
import sys
from PySide6.QtCore import QCoreApplication, QTimer
from ultraplanner_gui import app
from ultraplanner_gui.window import first_sight

paint = first_sight.FirstSight.paintEvent
def paint_and_tell(sight, event):
    paint(sight, event)
    print("MODULES", *sys.modules)
    print("TITLE", sight.window().windowTitle())
    QTimer.singleShot(0, lambda: QTimer.singleShot(0, QCoreApplication.quit))
first_sight.FirstSight.paintEvent = paint_and_tell
app.main([sys.argv[1]])
"""


class Told(Ask):
    """Keeps what the user is told."""

    def __init__(self):
        self.sentences = []

    def tell(self, title, sentence):
        self.sentences.append(sentence)


@pytest.fixture
def kept(tmp_path):
    path = tmp_path / "fell.ultraplan"
    ProjectFile.create(path, demo_project(TODAY)).close()
    return path


@pytest.fixture
def bare(qtbot, tmp_path, kept):
    settings = Settings(tmp_path / "settings.ini")
    sight = FirstSight(settings, glance(kept))
    window = MainWindow(settings, Told(), sight=sight)
    qtbot.addWidget(window)
    with qtbot.waitSignal(sight.seen):
        window.show()
    return window


def test_nothing_heavy_is_imported_before_the_first_paint(kept, tmp_path, monkeypatch):
    monkeypatch.setenv("ULTRAPLANNER_HOME", str(tmp_path / "home"))
    done = subprocess.run(
        [sys.executable, "-c", STARTED, str(kept)],
        cwd=source.ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    told = dict(line.split(" ", 1) for line in done.stdout.splitlines())
    names = told["MODULES"].split()
    assert [name for name in names if name.startswith(HEAVY)] == []
    assert "ultraplanner_gui.widgets.lane" not in names
    assert told["TITLE"].startswith(demo_project(TODAY).race.name)


def test_the_first_paint_names_the_race_and_comes_before_the_lanes(bare):
    assert bare.workplace is None
    assert bare.windowTitle() == f"{demo_project(TODAY).race.name} – Ultraplanner"


def test_the_name_stays_where_it_is_when_the_sheet_comes(bare, kept, qtbot):
    def place(text):
        return next(
            label.mapTo(bare, label.rect().topLeft())
            for label in bare.findChildren(type(bare._message))
            if label.isVisible() and label.text() == text
        )

    name = demo_project(TODAY).race.name
    before = place(name)
    app._fill(bare, kept, False)
    qtbot.waitUntil(lambda: bare.workplace.header.isVisible())
    assert place(name) == before


def test_a_key_pressed_before_the_sheet_is_there_acts_afterwards(bare, kept, qtbot):
    qtbot.keyClick(bare, Qt.Key.Key_2, Qt.KeyboardModifier.ControlModifier)
    keys = "Ctrl+2"
    app._fill(bare, kept, False)
    wanted = next(a.objectName() for a in bare.actions() if a.shortcut().toString() == keys)
    assert wanted == "tables"
    assert bare.workplace.place == "tables"


def test_the_days_have_the_keyboard_once_the_sheet_is_there(bare, kept, qtbot):
    bare.activateWindow()
    qtbot.waitUntil(bare.isActiveWindow)
    assert bare.focusWidget() is None
    app._fill(bare, kept, False)
    assert bare.focusWidget() is bare.workplace.buildup.grid


def test_a_file_that_cannot_be_opened_gives_its_sentence(bare, tmp_path):
    app._fill(bare, tmp_path / "gone.ultraplan", False)
    assert bare.workplace is None
    (sentence,) = bare.ask.sentences
    assert "gone.ultraplan" in sentence
    assert bare.windowTitle() == "Ultraplanner"


def test_a_window_closed_at_first_sight_closes(bare):
    assert bare.close()


def test_filling_twice_opens_once(bare, kept):
    app._fill(bare, kept, False)
    place = bare.workplace
    app._fill(bare, kept, False)
    assert bare.workplace is place


def test_a_glance_tells_the_race_that_is_in_the_file(kept):
    race = demo_project(TODAY).race
    assert glance(kept) == Glance(race.name, race.start.date())


@pytest.mark.parametrize("hurt", [b"", b"nothing of ours", b"SQLite format 3\x00" + bytes(200)])
def test_a_glance_at_a_strange_file_tells_nothing(tmp_path, hurt):
    path = tmp_path / "strange.ultraplan"
    path.write_bytes(hurt)
    assert glance(path) is None
    assert glance(tmp_path / "gone.ultraplan") is None


def test_a_glance_at_a_hurt_file_raises_nothing(kept):
    whole = kept.read_bytes()
    for at in range(0, len(whole), len(whole) // 60):
        kept.write_bytes(whole[:at] + bytes(64) + whole[at + 64 :])
        glance(kept)
        kept.write_bytes(whole[:at])
        glance(kept)
