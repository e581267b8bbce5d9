"""The note beside a project file that says who has it open: help for a message, never a lock.

The lock is SQLite's own. A note may be missing (read-only folder) or left over (a program that was
stopped); nothing is refused because of one.
"""

from __future__ import annotations

import getpass
import json
import os
import sys
from contextlib import suppress
from datetime import UTC, datetime
from functools import cache
from io import FileIO
from pathlib import Path
from typing import NamedTuple

from ultraplanner_gui.plan.value import Value

_MOST_BYTES = 4096
_MOST_LETTERS = 40


class Holder(Value, frozen=True):
    """Who has a file open, on which machine and since when (aware)."""

    user: str
    host: str
    pid: int
    since: datetime

    @property
    def is_gone(self) -> bool:
        """Whether the program that left the note surely runs no more."""
        # on Windows the signal 0 is not a question but the end of the process
        if self.host != _host() or sys.platform == "win32":
            return False
        try:
            os.kill(self.pid, 0)
        except ProcessLookupError:
            return True
        except OSError:
            return False
        return False


def note_beside(path: Path) -> Path:
    """Return where the note of the project file *path* lies."""
    return path.with_name(f".{path.name}.open")


class Mark(NamedTuple):
    """What tells the note this program wrote from another one in its place."""

    inode: int
    written_ns: int


def leave_note(path: Path) -> Mark | None:
    """Write beside *path* that this program has it open; None where that cannot be written."""
    content = {
        "user": _user(),
        "host": _host(),
        "pid": os.getpid(),
        "since": datetime.now(UTC).isoformat(timespec="seconds"),
    }
    try:
        with FileIO(note_beside(path), "w") as file:
            file.write(json.dumps(content).encode("ascii"))
            return _mark(os.fstat(file.fileno()))
    except OSError:
        return None


def take_note_away(path: Path, mark: Mark) -> None:
    """Remove the note beside *path* if it still is the one with that *mark*."""
    note = note_beside(path)
    with suppress(OSError):
        if _mark(note.stat()) == mark:
            note.unlink()


def _mark(found: os.stat_result) -> Mark:
    return Mark(found.st_ino, found.st_mtime_ns)


def read_note(path: Path) -> Holder | None:
    """Return who the note beside *path* names; None if there is none or it makes no sense."""
    try:
        note = note_beside(path)
        if not note.is_file():
            return None
        with note.open("rb") as file:
            content = json.loads(file.read(_MOST_BYTES))
        since = datetime.fromisoformat(content["since"])
        pid = content["pid"]
        if since.tzinfo is None or type(pid) is not int or not 0 < pid < 2**31:
            return None
        return Holder(_word(content["user"]), _word(content["host"]), pid, since)
    except (OSError, ValueError, KeyError, TypeError, RecursionError):
        return None


def _word(text: object) -> str:
    """Return *text* as it may stand in a sentence, whoever wrote it."""
    kept = "".join(c for c in str(text) if c.isprintable())
    return kept[:_MOST_LETTERS] or "?"


@cache
def _user() -> str:
    try:
        return getpass.getuser()
    except (OSError, KeyError, ImportError):
        return "?"


def _host() -> str:
    if sys.platform != "win32":
        return os.uname().nodename
    # Sockets take longer to import than the note to write.
    import socket

    return socket.gethostname()
