"""The first hundred bytes of a project file, looked at before SQLite sees any of it.

Source: SQLite, Database File Format, section 1.3.
"""

from __future__ import annotations

import stat
import struct
from pathlib import Path

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, StoreError
from ultraplanner_gui.store.troubles import is_broken, is_strange, is_unreadable

APPLICATION_ID = 0x556C7472
LARGEST_FILE_BYTES = 512 * 1024 * 1024

_HEADER_BYTES = 100
_SQLITE_MAGIC = b"SQLite format 3\x00"
_ROLLBACK_JOURNAL = b"\x01\x01"
# Size in pages, the count of changes, and the count for which that size is valid.
_SIZE_PAGES, _CHANGES, _CHANGES_OF_SIZE = slice(28, 32), slice(24, 28), slice(92, 96)


def check_header(path: Path) -> int:
    """Return the version in the header of *path* before SQLite sees the file.

    Must not be called on a file this process has open: closing a second handle would give up
    the lock on it (POSIX advisory locks). Raises StoreError if it is not a project of ours.
    """
    try:
        found = path.stat()  # first, for opening a pipe would wait
        if not stat.S_ISREG(found.st_mode):
            raise is_strange(path)
        if found.st_size > LARGEST_FILE_BYTES:
            raise StoreError(
                QT_TRANSLATE_NOOP("Store", "{0} is too large for a project, so it was left alone."),
                path.name,
            )
        with path.open("rb", buffering=0) as file:
            head = file.read(_HEADER_BYTES)
    except FileNotFoundError as error:
        raise StoreError(
            QT_TRANSLATE_NOOP("Store", "There is no file {0} any more. Was it moved or renamed?"),
            path.name,
        ) from error
    except OSError as error:
        raise is_unreadable(path) from error
    if len(head) < _HEADER_BYTES or not head.startswith(_SQLITE_MAGIC):
        raise is_strange(path)
    version, application_id = struct.unpack(">60xi4xi28x", head)
    if application_id != APPLICATION_ID or head[18:20] != _ROLLBACK_JOURNAL:
        raise is_strange(path)
    if head[_CHANGES] != head[_CHANGES_OF_SIZE] or head[_SIZE_PAGES] == bytes(4):
        raise is_broken(path)  # SQLite would put the size right, before any check
    return int(version)
