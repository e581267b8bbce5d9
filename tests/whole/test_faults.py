"""Broken files, killed programs, half-typed notes: what was finished stays, trouble is said."""

import contextlib
import json
import os
import random
import signal
import subprocess
import sys
import time
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QPlainTextEdit

from tests.whole.conftest import PATIENCE_MS, close
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.store.project_file import ProjectFile, read_project
from ultraplanner_gui.window.plan_form import PlanForm

Key = Qt.Key
ROOT = Path(__file__).resolve().parents[2]
LONGEST_SENTENCE = 200


@pytest.fixture
def demo(tmp_path):
    """A project file with the demo in it."""
    path = tmp_path / "hundred.ultraplan"
    ProjectFile.create(path, demo_project(date.today())).close()
    return path


# ---------------------------------------------------------------- files that cannot be used

GPX = '<gpx version="1.1" xmlns="http://www.topografix.com/GPX/1/1">{}</gpx>'
BROKEN = {
    "cut.gpx": GPX.format("<trk><trkseg><trkpt lat='54.1' lon='-2.5'>")[:-6],
    "empty.gpx": "",
    "no points.gpx": GPX.format("<metadata><name>Nothing</name></metadata>"),
    "one point.gpx": GPX.format("<trk><trkseg><trkpt lat='54' lon='-2'/></trkseg></trk>"),
    "a text.gpx": "Dear runner, the course follows by post.",
    "a text.ultraplan": "This is a text file that somebody renamed.\n" * 40,
    "empty.ultraplan": "",
}


@pytest.mark.parametrize("name", [*BROKEN, "missing.gpx", "missing.ultraplan", "a folder.gpx"])
def test_a_file_that_cannot_be_used_is_one_sentence_and_changes_nothing(
    open_window, demo, tmp_path, home, name
):
    hand = open_window()
    hand.window.deeds.open_any(demo)
    hand.window.workplace.selection.choose("session", _first_open(hand).key)
    document, project = hand.window.document, hand.window.document.project
    path, on_disk = tmp_path / name, demo.read_bytes()
    if name in BROKEN:
        path.write_text(BROKEN[name], "utf-8")
    elif "folder" in name:
        path.mkdir()
    content = path.read_bytes() if path.is_file() else None
    hand.drop(path)
    hand.until(lambda: hand.window.ask.told)
    (sentence,) = hand.window.ask.told
    assert len(sentence) <= LONGEST_SENTENCE
    assert sentence.endswith((".", "?"))
    assert "Error" not in sentence
    assert hand.window.document is document
    assert document.project is project
    assert hand.window.workplace.selection.kind == "session"
    assert hand.window.findChildren(PlanForm) == []
    assert not hand.window._progress.isVisible()
    assert demo.read_bytes() == on_disk
    assert (path.read_bytes() if path.is_file() else None) == content
    assert list((home / "projects").glob("*")) == []
    hand.keys(Key.Key_D)
    assert document.project is not project


def _first_open(hand):
    document = hand.window.document
    return next(
        s
        for s in document.project.block.sessions
        if s.is_open and s.day > document.outlook.today and s.distance_m < 20_000.0
    )


def test_a_project_open_in_another_window_is_said_and_stays_whole(open_window, demo):
    first, second = open_window(), open_window()
    first.window.deeds.open_any(demo)
    second.window.deeds.open_any(demo)
    assert len(second.window.ask.told) == 1
    assert second.window.document is None
    assert first.window.document.undo_stack.count() == 0
    close(first)
    second.window.deeds.open_any(demo)
    assert second.window.document.path == demo


def test_a_plan_that_cannot_be_kept_stays_in_the_form(open_window, tmp_path):
    hand = open_window()
    hand.window.deeds.open_any(ROOT / "resources/demo/course.gpx")
    form = hand.dialog(PlanForm)
    hand.window.ask.answer = tmp_path / "no such folder" / "race.ultraplan"
    form._on_elsewhere()
    hand.keys(Key.Key_Return)
    assert form.isVisible()
    assert form._trouble.isVisible()
    assert 0 < len(form._trouble.text()) <= LONGEST_SENTENCE
    assert hand.window.document is None
    hand.window.ask.answer = tmp_path / "race.ultraplan"
    form._on_elsewhere()
    hand.keys(Key.Key_Return)
    hand.until(lambda: hand.window.document is not None)
    assert hand.window.document.path == tmp_path / "race.ultraplan"


def test_a_course_dropped_on_a_text_field_is_opened_not_written_into_it(open_window, demo):
    hand = open_window()
    hand.window.deeds.open_any(demo)
    document, place = hand.window.document, hand.window.workplace
    place.selection.choose("section", document.outlook.sections[2].key)
    note = place.ledger.findChild(QPlainTextEdit)
    hand.until(note.isVisible)
    hand.drop(
        ROOT / "resources/demo/course.gpx",
        note.mapTo(hand.window, note.rect().center()),
    )
    form = hand.dialog(PlanForm)
    assert note.toPlainText() == document.outlook.project.course.sections[2].hard_note
    form.reject()


# ---------------------------------------------------------------- typing


def test_notes_are_kept_when_the_typing_pauses(open_window, demo):
    hand = open_window()
    hand.window.deeds.open_any(demo)
    document = hand.window.document
    before = document.project.notes
    hand.shortcut("notes")
    hand.until(lambda: hand.window.findChildren(QPlainTextEdit))
    hand.until(lambda: _typing_field(hand) is not None)
    hand.type("Lamp, spare cell")
    assert document.project.notes == before
    hand.until(lambda: document.project.notes == "Lamp, spare cell")
    hand.keys(Key.Key_Escape)
    hand.in_front()
    assert document.undo_stack.count() == 1
    hand.keys(Key.Key_Z, modifier=Qt.KeyboardModifier.ControlModifier)
    assert document.project.notes == before


def _typing_field(hand):
    field = hand.focus
    return field if isinstance(field, QPlainTextEdit) else None


def test_words_typed_a_moment_before_closing_are_kept(open_window, demo):
    hand = open_window()
    hand.window.deeds.open_any(demo)
    place, document = hand.window.workplace, hand.window.document
    key = document.outlook.sections[0].key
    place.selection.choose("section", key)
    note = place.ledger.findChild(QPlainTextEdit)
    hand.until(note.isVisible)
    hand.click(note, QPoint(20, 20))
    hand.type("If the knee, then walk.")
    assert document.project.course.sections[0].hard_note == ""
    close(hand)
    assert read_project(demo).course.sections[0].hard_note == "If the knee, then walk."


# ---------------------------------------------------------------- kill -9

# Moves a session a day, speeds a section up by a minute and moves a token by one, in turn and
# all by keys through a real window; says after each how many are finished.
EDITS = """
import itertools, json, sys
from pathlib import Path
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.window.main_window import MainWindow

Key = Qt.Key
app = QApplication([])
theme().choose("light", 100)
window = MainWindow(Settings())
window.resize(1440, 900)
window.show()
window.activateWindow()
assert QTest.qWaitForWindowActive(window, 30_000)
window.deeds.open_any(Path(sys.argv[1]))
document, place = window.document, window.workplace
session, section, item = json.loads(sys.argv[2])

def press(widget, *keys):
    widget.setFocus()
    for key in keys:
        QTest.keyClick(window.windowHandle(), key)

print(document.outlook.sections[section].moving_s, flush=True)
for count in itertools.count(1):
    if count % 3 == 1:
        place.selection.choose("session", session)
        press(place.buildup.grid, Key.Key_Return, Key.Key_Down, Key.Key_Return)
    elif count % 3 == 2:
        place.raceday.target._choose(document.outlook.sections[section])
        press(place.raceday.target, Key.Key_Return, Key.Key_Up, Key.Key_Return)
    else:
        place.raceday.fuel._choose(item)
        press(place.raceday.fuel, Key.Key_Return, Key.Key_Right, Key.Key_Return)
    print(count, flush=True)
    QApplication.processEvents()
"""


def _done(before, after, keys, moving_s):
    """Return how many edits of each of the three kinds lie between two projects."""
    session, section, item = keys
    days = after.block.session(session).day - before.block.session(session).day
    target_s = after.course.sections[section].target_s
    at_s = [next(i.at_s for i in p.fuel.items if i.key == item) for p in (before, after)]
    faster_s = 0.0 if target_s is None else moving_s - target_s
    return days.days, round(faster_s / 60.0), round((at_s[1] - at_s[0]) / 60.0)


@pytest.mark.skipif(sys.platform == "win32", reason="no kill -9 there")
def test_a_killed_program_loses_no_finished_edit(demo, home):
    project = read_project(demo)
    ahead = [s for s in project.block.sessions if s.is_open and s.day > date.today()]
    keys = ahead[0].key, 1, project.fuel.items[4].key
    luck = random.Random()
    for _ in range(2):
        before = read_project(demo)
        run = subprocess.Popen(
            [sys.executable, "-c", EDITS, str(demo), json.dumps(keys)],
            stdout=subprocess.PIPE,
            text=True,
            cwd=ROOT,
            env={**os.environ, "ULTRAPLANNER_HOME": str(home)},
        )
        moving_s = float(run.stdout.readline())
        enough = luck.randrange(1, 9)
        finished = 0
        while finished < enough:
            finished = int(run.stdout.readline())
        time.sleep(luck.uniform(0.0, 0.12))
        run.send_signal(signal.SIGKILL)
        rest = run.stdout.read().splitlines(keepends=True)
        run.wait()
        run.stdout.close()
        finished = max(finished, *(int(n) for n in rest if n.endswith("\n")), 0)
        done = _done(before, read_project(demo), keys, moving_s)
        assert done in [((n + 2) // 3, (n + 1) // 3, n // 3) for n in (finished, finished + 1)]


class Program:
    """The program as a user starts it, with keys from outside."""

    def __init__(self, file, home):
        self._run = subprocess.Popen(
            [sys.executable, "-m", "ultraplanner_gui", str(file)],
            cwd=ROOT,
            env={**os.environ, "ULTRAPLANNER_HOME": str(home)},
        )
        self.file = file
        self.waits_for("Fellside Hundred – Ultraplanner")

    def __enter__(self):
        return self

    def __exit__(self, *error):
        self.kill()

    def waits_for(self, title):
        """Wait until the window *title* has the keyboard."""
        self._wait(lambda: self._ask("getactivewindow", "getwindowname") == title)

    def keys(self, *keys):
        self._ask("key", "--clearmodifiers", *keys)

    def type(self, text):
        self._ask("type", "--delay", "5", text)

    def waits_until_kept(self, deed):
        """Do *deed* and wait until the file is another one and no transaction is under way.

        A journal that begins with zeros is a finished one: SQLite file format, section 3.
        """
        before = self.file.stat().st_mtime_ns
        journal = self.file.with_name(f"{self.file.name}-journal")
        deed()
        self._wait(lambda: self.file.stat().st_mtime_ns != before)
        self._wait(lambda: not journal.exists() or not any(journal.read_bytes()[:8]))

    def kill(self):
        with contextlib.suppress(ProcessLookupError):
            self._run.send_signal(signal.SIGKILL)
        self._run.wait()

    def _ask(self, *command):
        done = subprocess.run(["xdotool", *command], capture_output=True, text=True, check=False)
        return done.stdout.strip()

    def _wait(self, there):
        end = time.monotonic() + PATIENCE_MS / 1000.0
        while time.monotonic() < end:
            if found := there():
                return found
            assert self._run.poll() is None, "the program ended by itself"
            time.sleep(0.02)
        raise TimeoutError


@pytest.mark.skipif(sys.platform != "linux", reason="keys from outside need an X server")
def test_the_program_itself_is_killed_and_opens_its_file_again(demo, home):
    before = read_project(demo)
    with Program(demo, home) as program:
        program.waits_until_kept(lambda: program.keys("n"))
    after = read_project(demo)
    assert len(after.block.sessions) == len(before.block.sessions) + 1
    assert set(before.block.sessions) < set(after.block.sessions)
    with Program(demo, home) as program:
        program.keys("ctrl+shift+n")
        program.waits_for("Notes")
        program.waits_until_kept(
            lambda: (program.keys("ctrl+a"), program.type("Ask for the late bag."))
        )
    again = read_project(demo)
    assert again.notes == "Ask for the late bag."
    assert again.block == after.block
