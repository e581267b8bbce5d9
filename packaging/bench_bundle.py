"""The bundle against a bare one of the same tools: its size, and its start against the source's.

Both windows are started by turns on a virtual screen and waited for, from the start of the
process until the demo is shown. What others do on the machine tells on that, so that
the CPU time of both is taken too, until the window rests with everything in it.
"""

from __future__ import annotations

import contextlib
import os
import subprocess
import sys
import threading
import time
from collections.abc import Iterable, Iterator, Sequence
from pathlib import Path

from bench_measure import MIB, Goal, Row
from dev_bundle import BUILD, make_bundle, pyinstaller, size
from dev_screen import virtual_screen

PAIRS = 15
BARE = """
import sys
from PySide6.QtWidgets import QApplication, QMainWindow

app = QApplication(sys.argv)
window = QMainWindow()
window.show()
sys.exit(app.exec())
"""
LONGEST_S = 30.0
LINUX = sys.platform == "linux"
# A window rests when it has taken no CPU time for so long; before that it waits for nothing longer.
REST_S, LEAST_S, LOOK_S = 0.8, 1.6, 0.05


def rows(home: Path) -> Iterator[Row]:
    """Measure the bundle, made anew of the sources it is held against."""
    folder = make_bundle()
    yield Row(
        "size of the bundle",
        "a bare window of PySide6, bundled by the same tool",
        [size(folder) / MIB],
        [size(_bare()) / MIB],
        (Goal("ratio", 1.8),),
        unit="MiB",
    )
    ours = [str(folder / "ultraplanner"), "--demo"]
    source = [sys.executable, "-m", "ultraplanner_gui", "--demo"]
    with virtual_screen() as screen:
        env = {**os.environ, **screen, "ULTRAPLANNER_HOME": str(home)}
        # As installed: compiled once.
        env.pop("PYTHONDONTWRITEBYTECODE", None)
        env["PYTHONPYCACHEPREFIX"] = str(home)
        _shown_ms(source, env), _shown_ms(ours, env)
        pairs = [(_shown_ms(ours, env), _shown_ms(source, env)) for _ in range(PAIRS)]
        rested = [(_cpu_ms(ours, env), _cpu_ms(source, env)) for _ in range(PAIRS) if LINUX]
    yield Row(
        "start of the bundle, demo shown",
        "the same from source, on the same screen",
        [a for a, _ in pairs],
        [b for _, b in pairs],
        (Goal("ratio", 1.0),),
    )
    if rested:
        yield Row(
            "CPU of that start",
            "the same from source, on the same screen",
            [a for a, _ in rested],
            [b for _, b in rested],
            (Goal("ratio", 1.0),),
        )


def _bare() -> Path:
    script = BUILD / "bare" / "bare.py"
    script.parent.mkdir(exist_ok=True)
    script.write_text(BARE, "utf-8")
    pyinstaller(str(script), script.parent, f"--specpath={script.parent}")
    return script.parent / "bare"


def _shown_ms(command: Sequence[str], env: dict[str, str]) -> float:
    """Return how long *command* takes until its window with the demo is there.

    The window manager says so by itself: asking again and again would take the time of both.
    """
    quiet = subprocess.DEVNULL
    ask = ["xprop", "-root", "-spy", "_NET_CLIENT_LIST"]
    with subprocess.Popen(ask, env=env, stdout=subprocess.PIPE, text=True) as spy:
        assert spy.stdout is not None
        watchdog = threading.Timer(LONGEST_S, spy.kill)
        watchdog.start()
        try:
            _wait(spy.stdout, has_window=False)
            begin = time.perf_counter()
            with subprocess.Popen(command, env=env, stdout=quiet, stderr=quiet) as running:
                try:
                    _wait(spy.stdout, has_window=True)
                    return (time.perf_counter() - begin) * 1000.0
                finally:
                    running.terminate()
        finally:
            watchdog.cancel()
            spy.kill()


def _wait(told: Iterable[str], has_window: bool) -> None:
    """Read on until the list of windows that is *told* has one, or has none."""
    for line in told:
        if ("0x" in line) is has_window:
            return
    raise RuntimeError("no window came")


def _cpu_ms(command: Sequence[str], env: dict[str, str]) -> float:
    """Return the CPU time of all threads of *command* until its window rests."""
    quiet = subprocess.DEVNULL
    with subprocess.Popen(command, env=env, stdout=quiet, stderr=quiet) as running:
        begin = since = time.monotonic()
        taken = 0.0
        try:
            while time.monotonic() - since < REST_S or time.monotonic() - begin < LEAST_S:
                time.sleep(LOOK_S)
                now = _taken_ms(running.pid)
                if now > taken + 1.0:
                    taken, since = now, time.monotonic()
                if running.poll() is not None or time.monotonic() - begin > LONGEST_S:
                    raise RuntimeError(f"{command[0]} did not come to rest")
            return taken
        finally:
            running.terminate()


def _taken_ms(process: int) -> float:
    taken_ns = 0
    for thread in Path(f"/proc/{process}/task").iterdir():
        with contextlib.suppress(OSError):  # it has ended meanwhile
            taken_ns += int((thread / "schedstat").read_text("ascii").split()[0])
    return taken_ns / 1e6
