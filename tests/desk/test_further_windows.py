"""Windows opened from one that throws its folder away share it, and the last one takes it along."""

import os
import sys
from pathlib import Path

import pytest
from PySide6.QtCore import QProcess

from ultraplanner_gui import app
from ultraplanner_gui.desk import further_windows, places
from ultraplanner_gui.desk.further_windows import BESIDE, SHARED, hand_on, open_another, thrown_away

# Stays for as long as a window might after the first is closed, then says what it found.
WINDOW = """
import os, pathlib, sys, time
first_is_closed, report = map(pathlib.Path, sys.argv[1:3])
end = time.monotonic() + 20.0
while not first_is_closed.exists() and time.monotonic() < end:
    time.sleep(0.01)
time.sleep(0.2)
home = pathlib.Path(os.environ["ULTRAPLANNER_HOME"])
(home / "second.ultraplan").write_text("tried")
there = sorted(path.name for path in home.iterdir())
report.write_text(repr((str(home), sys.argv[3:], there)))
"""


@pytest.fixture(autouse=True)
def surroundings(monkeypatch, tmp_path):
    monkeypatch.setenv(places.HOME_VARIABLE, str(tmp_path / "own"))
    for name in (SHARED, BESIDE):
        monkeypatch.setenv(name, "")
        monkeypatch.delenv(name)
    hand_on()
    yield
    hand_on()


def test_the_folder_stays_until_the_second_window_is_closed(monkeypatch, tmp_path):
    closed, report = tmp_path / "closed", tmp_path / "report"
    command = [sys.executable, "-c", WINDOW, str(closed), str(report)]
    monkeypatch.setattr(further_windows, "program", lambda: command)
    homes = []

    def first_window(*_):
        home = Path(os.environ[places.HOME_VARIABLE])
        homes.append(home)
        (home / "first.ultraplan").write_text("tried")
        open_another()
        closed.touch()
        return 0

    monkeypatch.setattr(app, "_run_window", first_window)
    assert app.main(["--throw-away"]) == 0
    (home,) = homes
    found = eval(report.read_text(), {"__builtins__": {}})
    assert found == (str(home), ["--throw-away"], ["first.ultraplan", "second.ultraplan"])
    assert not home.exists()
    assert not (tmp_path / "own").exists(), "something was left in the folder of the user's own"


def test_a_window_opened_from_one_leaves_the_folder_to_it(monkeypatch):
    with thrown_away() as home:
        # As the second process sees it.
        monkeypatch.setenv(SHARED, str(home))
        with thrown_away() as second:
            assert second == home
        assert home.is_dir()
    assert not home.exists()


def test_a_folder_of_ones_own_is_never_taken_for_one_to_throw_away(monkeypatch, tmp_path):
    own = tmp_path / "own"
    own.mkdir()
    # Left over from elsewhere: not the folder in force.
    monkeypatch.setenv(SHARED, str(tmp_path / "other"))
    with thrown_away() as home:
        assert home not in (own, tmp_path / "other")
    assert own.is_dir()


def test_usually_a_second_window_stands_by_itself(monkeypatch):
    started = []
    monkeypatch.setattr(QProcess, "startDetached", lambda *command: started.append(command))
    hand_on("--translation", "/a b/one.qm")
    open_another()
    ((program, options),) = started
    assert program == sys.executable
    assert options == ["-m", "ultraplanner_gui", "--translation", "/a b/one.qm"]
    assert os.environ[BESIDE]


def test_a_second_window_opens_nothing_by_itself(monkeypatch, tmp_path):
    class Kept:
        sitting = (str(tmp_path / "race.ultraplan"), "sheet", "", "")

    assert app._project_to_open(Kept, None, demo=False) == tmp_path / "race.ultraplan"
    monkeypatch.setenv(BESIDE, "1")
    assert app._project_to_open(Kept, None, demo=False) is None
