"""The name and the day of a race, read off a project file before anything else of it.

No more than a title for a window that is about to open the file, which then checks all of it.
"""

from __future__ import annotations

import json
import sqlite3
import time
from contextlib import closing
from datetime import date
from pathlib import Path
from typing import NamedTuple

from ultraplanner_gui.plan.message import StoreError
from ultraplanner_gui.store.header import check_header

_LARGEST_BODY_BYTES = 1 << 20
_LONGEST_NAME = 200
BUDGET_S = 0.05


class Glance(NamedTuple):
    """What a project is called by the race in it."""

    name: str
    day: date


def glance(path: Path) -> Glance | None:
    """Return the race in the project file at *path*, None where it cannot be told in a moment.

    Must not be called on a file this process has open: closing a second handle would give up
    the lock on it (POSIX advisory locks).
    """
    try:
        check_header(path)
        uri = f"{path.absolute().as_uri()}?mode=ro"
        with closing(sqlite3.connect(uri, uri=True, timeout=0.0)) as connection:
            return _read(connection)
    # A strange file: whoever opens it in earnest says what is wrong with it.
    except (StoreError, OSError, sqlite3.Error, ValueError, TypeError, LookupError, RecursionError):
        return None


def _read(connection: sqlite3.Connection) -> Glance | None:
    end = time.monotonic() + BUDGET_S
    connection.set_progress_handler(lambda: int(time.monotonic() > end), 1000)
    connection.setlimit(sqlite3.SQLITE_LIMIT_LENGTH, _LARGEST_BODY_BYTES)
    connection.execute("PRAGMA trusted_schema = OFF")
    kinds = connection.execute("SELECT type FROM sqlite_schema").fetchmany(4)
    if sorted(kind for (kind,) in kinds) != ["index", "table", "table"]:
        return None
    (state,) = connection.execute("SELECT body FROM state WHERE id = 0").fetchone()
    contents = _part(connection, json.loads(state)["root"])
    race = _part(connection, contents["race"][0])
    name, start = race["name"], race["start"]
    if not isinstance(name, str) or len(name) > _LONGEST_NAME:
        return None
    return Glance(name, date.fromisoformat(start[:10]))


def _part(connection: sqlite3.Connection, digest: str) -> dict[str, str]:
    row = connection.execute("SELECT body FROM part WHERE digest = ?", (bytes.fromhex(digest),))
    part = json.loads(row.fetchone()[0])
    if not isinstance(part, dict):
        raise ValueError("no part of ours")
    return part
