"""How much memory a process holds, and whether that grows.

Two figures: what is in use, to the byte, which grows with a leak and with nothing else; and what
lies in the machine's memory, which also has the gaps between what is in use and so goes up and down
by a tenth from one hour to the next. Python's own allocator keeps its gaps to itself: with
``PYTHONMALLOC=malloc`` the first figure has everything.
"""

from __future__ import annotations

import contextlib
import ctypes
import gc
import os
from dataclasses import dataclass
from pathlib import Path

MOST_GROWTH = 0.05


@dataclass(frozen=True, slots=True)
class Held:
    """Memory of this process, bytes; 0 where the system does not tell."""

    in_use: int
    resident: int

    def growth_to(self, later: Held) -> Growth:
        """Return by which share this grew until *later*."""
        return Growth(_share(self.in_use, later.in_use), _share(self.resident, later.resident))


@dataclass(frozen=True, slots=True)
class Growth:
    """Shares of the memory held before."""

    in_use: float
    resident: float

    def __str__(self) -> str:
        return f"memory in use {self.in_use:+.1%} ({self.resident:+.1%} resident)"

    @property
    def is_leak(self) -> bool:
        """Whether more is in use than comes and goes with what is open and planned."""
        return self.in_use > MOST_GROWTH


class _Heap(ctypes.Structure):
    """``struct mallinfo2`` of the GNU C library, see mallinfo(3)."""

    _fields_ = [
        (name, ctypes.c_size_t)
        for name in (
            *("arena", "ordblks", "smblks", "hblks", "hblkhd"),
            *("usmblks", "fsmblks", "uordblks", "fordblks", "keepcost"),
        )
    ]


def held() -> Held:
    """Collect garbage, give back what is free, and return what is held then."""
    gc.collect()
    resident = _resident()
    with contextlib.suppress(OSError, AttributeError, TypeError):  # glibc alone can do it
        library = ctypes.CDLL(None)
        library.malloc_trim(0)
        library.mallinfo2.restype = _Heap
        heap = library.mallinfo2()
        return Held(heap.uordblks + heap.hblkhd, _resident())
    return Held(resident, resident)


def _resident() -> int:
    try:
        pages = int(Path("/proc/self/statm").read_text("ascii").split()[1])
    except OSError:
        return 0
    return pages * os.sysconf("SC_PAGE_SIZE")


def _share(before: int, after: int) -> float:
    return after / before - 1.0 if before else 0.0
