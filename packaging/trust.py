"""Try to lose something: `dev.py trust` for all of it, `dev.py trust --short` for a minute.

A number after it is the seed: the same one tries the same.

Prints one table; the exit code is 1 if anything was lost, hung, or failed in other than our words.
"""

from __future__ import annotations

import os
import random
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import trust_courses  # noqa: E402
import trust_files  # noqa: E402
from trust_faults import faults  # noqa: E402
from trust_parts import Part, table  # noqa: E402
from trust_soak import soak  # noqa: E402
from trust_tables import tables  # noqa: E402
from trust_window import window_soak  # noqa: E402

FUZZING_S = 600.0
SHORT_FUZZING_S = 3.0


def parts(folder: Path, is_short: bool, seed: int) -> list[Callable[[], Part]]:
    """Return every part, each to be called in turn."""
    fuzzing_s = SHORT_FUZZING_S if is_short else FUZZING_S / 2.0
    steps = 6 if is_short else 1
    # one for each part: how far the one before got depends on the machine
    lucks = [random.Random(f"{seed} {number}") for number in range(7)]
    return [
        lambda: trust_files.kills(folder, 4 if is_short else 200, lucks[0]),
        lambda: trust_files.byte_changes(folder, 120 if is_short else 1_500, lucks[1]),
        lambda: trust_files.zeroed_pages(folder, steps),
        lambda: trust_files.cuts(folder, steps),
        lambda: trust_files.hostile_files(folder),
        lambda: trust_courses.hostile_courses(folder),
        lambda: trust_courses.bounds(folder, 400_000 if is_short else 8_000_000),
        lambda: tables(folder, 60 if is_short else 3_000, lucks[5]),
        lambda: faults(folder),
        lambda: trust_files.fuzz(folder, fuzzing_s, lucks[2]),
        lambda: trust_courses.fuzz(folder, fuzzing_s, lucks[3]),
        lambda: soak(folder, 200 if is_short else 10_000, lucks[4]),
        lambda: window_soak(folder, 150 if is_short else 10_000, lucks[6]),
    ]


def main(arguments: list[str]) -> int:
    """Run all parts and print the table; what this is, where *arguments* are none of its own."""
    if any(a != "--short" and not a.isdigit() for a in arguments):
        print(__doc__)
        return 2
    is_short = "--short" in arguments
    numbers = [int(a) for a in arguments if a.isdigit()]
    seed = numbers[0] if numbers else random.SystemRandom().randrange(10**6)
    begin = time.monotonic()
    done = []
    with tempfile.TemporaryDirectory(prefix="ultraplanner-trust-") as name:
        os.environ["ULTRAPLANNER_HOME"] = name
        for run in parts(Path(name), is_short, seed):
            done.append(run())
            print(f"  {done[-1].name}: {done[-1].tried:,} done", file=sys.stderr, flush=True)
    print(table(done))
    minutes = (time.monotonic() - begin) / 60.0
    print(f"seed {seed}, {minutes:.1f} min; to repeat: dev.py trust {seed}")
    return 1 if any(part.faults for part in done) else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
