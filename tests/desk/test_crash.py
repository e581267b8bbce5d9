import faulthandler
import subprocess
import sys
import threading

import pytest

from ultraplanner_gui.desk import crash


@pytest.fixture
def told(tmp_path):
    told = []
    was_on = faulthandler.is_enabled()
    restore = crash.install(told.append, tmp_path)
    yield told
    restore()
    if was_on:
        faulthandler.enable()


def escape(kind):
    try:
        raise kind("what happened")
    except kind:
        sys.excepthook(*sys.exc_info())


def test_escaped_fault_is_logged_in_full_and_said_in_one_sentence(told, tmp_path, capsys):
    escape(ZeroDivisionError)
    log = (tmp_path / "ultraplanner.log").read_text()
    assert "Traceback" in log
    assert "ZeroDivisionError: what happened" in log
    assert [str(tmp_path) in str(message) for message in told] == [True]
    assert len(told[0].template) <= 200
    assert "ZeroDivisionError" in capsys.readouterr().err


def test_fault_at_every_frame_is_said_once_and_logged_each_time(told, tmp_path):
    for _ in range(3):
        escape(ValueError)
    assert len(told) == 1
    assert (tmp_path / "ultraplanner.log").read_text().count("what happened") >= 3


def test_fault_on_another_thread_is_logged_and_touches_no_widget(told, tmp_path):
    thread = threading.Thread(target=escape, args=(KeyError,))
    thread.start()
    thread.join()
    assert told == []
    assert "KeyError" in (tmp_path / "ultraplanner.log").read_text()


def test_fault_while_telling_does_not_escape(tmp_path):
    was_on = faulthandler.is_enabled()
    restore = crash.install(lambda message: 1 // 0, tmp_path)
    escape(ValueError)
    restore()
    if was_on:
        faulthandler.enable()
    assert sys.excepthook is not crash


def test_hard_crash_leaves_its_stack_in_a_file(tmp_path):
    code = """
import faulthandler, sys
from pathlib import Path
from ultraplanner_gui.desk import crash
crash.install(print, Path(sys.argv[1]))
faulthandler._sigsegv()
"""
    run = subprocess.run([sys.executable, "-c", code, str(tmp_path)], check=False)
    assert run.returncode != 0
    assert "<module>" in (tmp_path / "faults.log").read_text()
