"""Fresh processes up to their first paint: the program with its demo, and an empty window."""

from __future__ import annotations

import os
import subprocess
import sys
import threading
import time
from collections.abc import Iterator
from pathlib import Path

from bench_measure import Goal, Row

MEASURED = str(Path(__file__).with_name("bench_started.py"))
IDLE_S = 10.0
MOST_S = 30.0
Marks = dict[str, float]


def rows(home: Path) -> Iterator[Row]:
    """Measure start-up with the demo made already, then with a new home for each start."""
    _start("demo", home), _start("empty", home)
    kept = [(_start("demo", home), _start("empty", home)) for _ in range(9)]
    fresh = [(_start("demo", home / str(k)), _start("empty", home)) for k in range(4)]
    floor_name = "an empty QMainWindow process"
    for name, mark, pairs, limit in (
        # The window itself, its race named; then the days of the build-up; then all there is.
        ("first paint, demo project", "painted", kept, 2.5),
        ("days of the build-up painted", "build-up", kept, 5.0),
        ("every lane usable", "usable", kept, 5.0),
        ("first paint, demo still to be made", "painted", fresh, 2.5),
    ):
        yield Row(
            name,
            floor_name,
            [ours[mark] for ours, _ in pairs],
            [floor["painted"] for _, floor in pairs],
            (Goal("ratio", limit),),
        )
    yield Row(
        "peak memory, demo project open",
        floor_name,
        [ours["peak"] for ours, _ in kept],
        [floor["peak"] for _, floor in kept],
        (Goal("ratio", 3.5),),
        unit="MiB",
    )


def idle_row(home: Path) -> Row:
    """Measure the CPU time an idle window takes, both at once since neither should take any."""
    both = [_launch(how, home, idle_s=IDLE_S) for how in ("demo", "empty")]
    ours, floor = (_marks(process, 0.0)["idle"] for process in both)
    return Row(
        f"CPU of an idle window in {IDLE_S:g} s",
        "an empty QMainWindow process",
        [ours],
        [floor],
        (Goal("max", 10.0),),
    )


def _start(how: str, home: Path) -> Marks:
    begin = time.perf_counter()
    return _marks(_launch(how, home), begin)


def _launch(how: str, home: Path, idle_s: float = 0.0) -> subprocess.Popen[str]:
    env = {**os.environ, "ULTRAPLANNER_HOME": str(home), "QT_QPA_PLATFORM": "offscreen"}
    # As installed: compiled once, whatever the shell of the measurement asks for.
    env.pop("PYTHONDONTWRITEBYTECODE", None)
    env["PYTHONPYCACHEPREFIX"] = os.environ["ULTRAPLANNER_HOME"]
    command = [sys.executable, MEASURED, how, str(idle_s)]
    return subprocess.Popen(command, env=env, stdout=subprocess.PIPE, text=True)


def _marks(process: subprocess.Popen[str], begin: float) -> Marks:
    """Return when each mark was reached, in milliseconds from *begin*, or the figure it gives."""
    marks: Marks = {}
    # A window that fails while it is made never gets as far as quitting.
    watchdog = threading.Timer(MOST_S, process.kill)
    watchdog.daemon = True
    watchdog.start()
    with process:
        assert process.stdout is not None
        for line in process.stdout:
            name, _, figure = line.strip().partition(" ")
            marks[name] = float(figure) if figure else (time.perf_counter() - begin) * 1000.0
    watchdog.cancel()
    if process.returncode or "usable" not in marks:
        raise RuntimeError(f"the measured window ended with {process.returncode}")
    return marks
