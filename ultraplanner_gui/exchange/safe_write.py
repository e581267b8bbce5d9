"""Files written whole or not at all."""

from __future__ import annotations

import contextlib
import errno
import os
import secrets
from pathlib import Path

from ultraplanner_gui.exchange.safe_read import shown_name
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, StoreError

_FULL = (errno.ENOSPC, errno.EFBIG, *((errno.EDQUOT,) if hasattr(errno, "EDQUOT") else ()))
_FORBIDDEN = (errno.EACCES, errno.EPERM, errno.EROFS)


def write_bytes(path: Path | str, data: bytes) -> None:
    """Write *data* to *path* so that there is either the old file or the whole new one.

    Permissions of an existing file stay, and a link is written through. Raises StoreError if
    it cannot be done; what was there before is then untouched.
    """
    target = Path(os.path.realpath(path))
    beside = target.with_name(f".{secrets.token_hex(8)}.part")
    try:
        _write_new(beside, data, _mode(target))
        os.replace(beside, target)
    except OSError as error:
        raise _refusal(target, error) from error
    finally:
        with contextlib.suppress(OSError):
            beside.unlink()
    _settle(target.parent)


def _mode(target: Path) -> int | None:
    """Return the permissions to keep, None for a new file; PermissionError if write-protected."""
    try:
        mode = target.stat().st_mode
    except FileNotFoundError:
        return None
    if not os.access(target, os.W_OK):
        raise PermissionError(errno.EACCES, os.strerror(errno.EACCES))
    return mode & 0o7777


def _write_new(path: Path, data: bytes, mode: int | None) -> None:
    flags = os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0)
    with open(os.open(path, flags, 0o666), "wb") as file:
        if mode is not None:
            path.chmod(mode)
        file.write(data)
        file.flush()
        os.fsync(file.fileno())


def _settle(folder: Path) -> None:
    """Make the new name last through a power cut, where the system can."""
    if os.name != "posix":
        return
    # The file is in place by now: a file system that cannot do this is no reason to complain.
    with contextlib.suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def _refusal(target: Path, error: OSError) -> StoreError:
    name = shown_name(target)
    if error.errno in _FULL:
        return StoreError(
            QT_TRANSLATE_NOOP(
                "Store",
                "There is no room to write {0}; what was there before is untouched. "
                "Free some space or choose another place.",
            ),
            name,
        )
    if error.errno in _FORBIDDEN:
        return StoreError(
            QT_TRANSLATE_NOOP(
                "Store", "You are not allowed to write {0} there. Choose another place or name."
            ),
            name,
        )
    if error.errno in (errno.ENOENT, errno.ENOTDIR):
        return StoreError(
            QT_TRANSLATE_NOOP("Store", "The folder for {0} does not exist. Choose another place."),
            name,
        )
    return StoreError(
        QT_TRANSLATE_NOOP(
            "Store",
            "{0} could not be written ({1}); what was there before is untouched. "
            "Choose another place.",
        ),
        name,
        (error.strerror or "")[:50],
    )
