"""Measure speed and memory, each against a floor taken in the same run.

python packaging/bench.py [WORD ...]     the rows whose group is named, all without a word
python packaging/bench.py --keep [WORD ...]  the same, kept in packaging/bench.json
python packaging/bench.py pace [FOLDER]  the pace model against recorded runs
python packaging/bench.py growth         how time grows with the work, at 1x, 4x and 16x
python packaging/bench.py block [COUNT]  random blocks and repairs against a referee

Prints one table and what got slower than the ratios kept in packaging/bench.json by more than
20 %; without a word it writes build/bench.json as well. A row holds if its ratio to
the floor, or its own figure, is within the goal. Exit code 0 whether goals are met or missed: this
is a measurement.
"""

from __future__ import annotations

import json
import os
import platform
import sys
import tempfile
import time
from collections.abc import Iterator, Sequence
from datetime import UTC, datetime
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
BUILD = ROOT / "build"
REPORT = BUILD / "bench.json"
NOT_THERE_YET: tuple[str, ...] = ()
GROUPS = ("start", "import", "engine", "store", "window", "cards", "idle")
# Only where they are named: they take minutes.
APART = ("bundle",)

# For the processes that are measured as well; before anything imports Qt.
os.environ["QT_QPA_PLATFORM"] = "offscreen"
os.environ["PYTHONPATH"] = str(ROOT)
os.environ.setdefault("LC_ALL", "C.UTF-8")
# As the program has it: threads for matrices of 26 rows cost more than they save.
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
sys.path.insert(0, str(ROOT))

from bench_kept import compared, keep, read_kept, slower  # noqa: E402
from bench_measure import Row, table  # noqa: E402


def measured(groups: Sequence[str], home: Path) -> Iterator[Row]:
    """Yield the rows of *groups*; what is measured as a whole process comes first."""
    import bench_engine
    import bench_files
    import bench_start
    import bench_window
    from PySide6.QtWidgets import QApplication

    from ultraplanner_gui.widgets.theme import register_fonts

    if "bundle" in groups:
        import bench_bundle

        yield from bench_bundle.rows(home)
    if "start" in groups:
        yield from bench_start.rows(home)
    if "import" in groups:
        yield from bench_files.import_rows(home)
    if "engine" in groups:
        yield from bench_engine.rows()
    if "store" in groups:
        yield from bench_files.keep_rows(home)
    app = QApplication([])
    app.setStyle("Fusion")
    register_fonts()
    if "cards" in groups:
        yield from bench_files.card_rows()
    if "window" in groups:
        yield from bench_window.rows(home)
    if "idle" in groups:
        yield bench_start.idle_row(home)


def report(rows: Sequence[Row], seconds: float) -> dict[str, object]:
    """Return what goes into the file beside the table."""
    import numpy as np
    import PySide6

    return {
        "measured_at": datetime.now(UTC).isoformat(timespec="seconds"),
        "took_s": round(seconds, 1),
        "load": _load(),
        "not_there_yet": NOT_THERE_YET,
        "machine": f"{platform.machine()}, {os.cpu_count()} cores, {platform.system()}",
        "python": platform.python_version(),
        "qt": PySide6.__version__,
        "numpy": np.__version__,
        "rows": [row.as_json() for row in rows],
        "slower": slower(rows, read_kept()),
    }


def _load() -> float | None:
    return round(os.getloadavg()[0], 2) if hasattr(os, "getloadavg") else None


def main(words: Sequence[str]) -> int:
    """Measure, print the table, write the file."""
    if words and words[0] == "pace":
        import bench_pace

        return bench_pace.main(list(words[1:]))
    if words and words[0] == "growth":
        import bench_growth

        return bench_growth.main()
    if words and words[0] == "block":
        import bench_block

        return bench_block.main(list(words[1:]))
    is_kept, words = "--keep" in words, [word for word in words if word != "--keep"]
    unknown = set(words) - set(GROUPS) - set(APART)
    if unknown:
        known = ", ".join(GROUPS + APART)
        print(f"bench knows {known} pace, growth and block, not {' '.join(sorted(unknown))}.")
        return 2
    BUILD.mkdir(exist_ok=True)
    begin = time.monotonic()
    rows: list[Row] = []
    # On the disk of the checkout: a folder in memory would flatter every commit.
    with tempfile.TemporaryDirectory(prefix="bench-", dir=BUILD) as folder:
        os.environ["ULTRAPLANNER_HOME"] = folder
        for row in measured(words or GROUPS, Path(folder)):
            print(f"measured: {row.name}", file=sys.stderr, flush=True)
            rows.append(row)
    seconds = time.monotonic() - begin
    print(table(rows))
    missed = [row.name for row in rows if not all(map(row.holds, row.goals))]
    print(f"\n{len(rows) - len(missed)} rows hold, {len(missed)} miss a goal; {seconds:.0f} s")
    print(f"Load of the machine {_load()}; others at work make p95 and max worse, ratios little.")
    print(compared(rows))
    told = report(rows, seconds)
    if is_kept:
        keep(rows)
    if NOT_THERE_YET:
        print(f"Not there to be measured yet: {', '.join(NOT_THERE_YET)}.")
    if words:
        return 0
    REPORT.write_text(json.dumps(told, indent=1) + "\n", encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
