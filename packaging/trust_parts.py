"""What every part of `dev.py trust` counts with, and a time limit that ends what hangs."""

from __future__ import annotations

import signal
import sys
import time
import traceback
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from types import FrameType

from ultraplanner_gui.plan.message import PlanError

LIMIT_S = 10.0
#: Others at work on the machine stretch what takes a second to several.
STILL = 6
LONGEST_SENTENCE = 200


class Hung(Exception):
    """Something took longer than it may."""


@dataclass(slots=True)
class Part:
    """One row of the table: how much was tried, how it ended, and every fault found."""

    name: str
    tried: int = 0
    opened: int = 0
    refused: int = 0
    slowest_s: float = 0.0
    limit_s: float = LIMIT_S
    faults: list[str] = field(default_factory=list)

    def attempt(self, what: str, deed: Callable[[], bool]) -> None:
        """Do *deed*: true is right, a sentence of our own is a refusal, all else a fault."""
        self.tried += 1
        begin = time.monotonic()
        try:
            with limit(self.limit_s):
                is_right = deed()
        except PlanError as error:
            self.refused += 1
            if not 0 < len(str(error)) <= LONGEST_SENTENCE:
                self.faults.append(f"{what}: a sentence of {len(str(error))} letters")
        except Hung:
            self.faults.append(f"{what}: took longer than {self.limit_s:.0f} s")
        except Exception as error:  # any other error is what is looked for
            last = traceback.extract_tb(error.__traceback__)[-1]
            where = f"{Path(last.filename).name}:{last.lineno}"
            self.faults.append(f"{what}: {type(error).__name__} at {where}: {error}"[:300])
        else:
            self.opened += 1
            if not is_right:
                self.faults.append(f"{what}: not what was kept")
        self.slowest_s = max(self.slowest_s, time.monotonic() - begin)

    def cells(self) -> tuple[str, ...]:
        """Return the row as text."""
        lost = "nothing" if not self.faults else f"{len(self.faults)} FAULTS"
        figures = (f"{self.tried:,}", f"{self.opened:,}", f"{self.refused:,}")
        return (self.name, *figures, f"{self.slowest_s:.2f}", lost)


HEADS = ("what", "tried", "whole", "refused", "slowest s", "lost or wrong")


def table(parts: list[Part]) -> str:
    """Return *parts* as lines of text, faults below."""
    rows = [HEADS, *(part.cells() for part in parts)]
    widths = [max(len(row[i]) for row in rows) for i in range(len(HEADS))]
    lines = []
    for row in rows:
        middle = [c.rjust(w) for c, w in zip(row[1:-1], widths[1:-1], strict=True)]
        lines.append("  ".join((row[0].ljust(widths[0]), *middle, row[-1])))
    faults = [f"  {part.name}: {fault}" for part in parts for fault in part.faults[:20]]
    return "\n".join((*lines, *faults))


@contextmanager
def limit(seconds: float = LIMIT_S) -> Iterator[None]:
    """Raise Hung in what works for *seconds* or stands still for `STILL` times as long.

    Nothing where there are no alarms.
    """
    if sys.platform == "win32":
        yield
        return

    def ring(number: int, frame: FrameType | None) -> None:
        raise Hung

    alarms = (
        (signal.SIGPROF, signal.ITIMER_PROF, seconds),
        (signal.SIGALRM, signal.ITIMER_REAL, seconds * STILL),
    )
    before = [signal.signal(alarm, ring) for alarm, _, _ in alarms]
    for _, clock, after_s in alarms:
        signal.setitimer(clock, after_s)
    try:
        yield
    finally:
        for (alarm, clock, _), handler in zip(alarms, before, strict=True):
            signal.setitimer(clock, 0.0)
            signal.signal(alarm, handler)


def write(path: Path, content: bytes) -> Path:
    """Put *content* into *path* and return it."""
    path.write_bytes(content)
    return path
