"""Whole files of unknown origin into memory, within a limit, packed or not."""

from __future__ import annotations

import errno
import os
import stat
import zlib
from pathlib import Path

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, CourseError

LARGEST_BYTES = 256 * 1024 * 1024
GZIP_MAGIC = b"\x1f\x8b"
MOST_MEMBERS = 100
_GZIP = 31
_LONGEST_NAME = 60


def shown_name(path: Path) -> str:
    """Return the name of the file as it fits into a sentence."""
    name = "".join(c if c.isprintable() else "?" for c in path.name) or str(path)
    return name if len(name) <= _LONGEST_NAME else f"{name[:40]}…{name[-19:]}"


def read_bytes(path: Path) -> bytes:
    """Return what the file holds, unpacked if it is gzip.

    Raises CourseError if it cannot be read, is empty or larger than 256 MB.
    """
    return unpacked(read_as_it_is(path), shown_name(path))


def read_as_it_is(path: Path) -> bytes:
    """Return the bytes of the file, at most one more than the limit; CourseError if it cannot be
    read.
    """
    name = shown_name(path)
    try:
        return _bounded(path)
    except OSError as error:
        raise _unreadable(name, error) from error
    except ValueError as error:  # a name with a NUL in it
        raise CourseError(
            QT_TRANSLATE_NOOP("Course", "{0} is not a name a file can have. Choose another."), name
        ) from error


def unpacked(data: bytes, name: str) -> bytes:
    """Return *data*, of the file called *name*, unpacked if it is gzip.

    Raises CourseError if it is empty, damaged or larger than 256 MB.
    """
    if data.startswith(GZIP_MAGIC):
        data = _unpacked(data, name)
    if len(data) > LARGEST_BYTES:
        raise CourseError(
            QT_TRANSLATE_NOOP(
                "Course", "{0} is larger than 256 MB. Export the course again with fewer points."
            ),
            name,
        )
    if not data.strip():
        raise CourseError(
            QT_TRANSLATE_NOOP("Course", "{0} is empty. Export or download it again."), name
        )
    return data


def _bounded(path: Path) -> bytes:
    # A pipe or device could block or never end; Windows and POSIX both say what a path is.
    if not stat.S_ISREG(path.stat().st_mode):
        raise OSError(errno.EISDIR, os.strerror(errno.EISDIR))
    with path.open("rb") as file:
        return file.read(LARGEST_BYTES + 1)


def _unreadable(name: str, error: OSError) -> CourseError:
    if error.errno in (errno.ENOENT, errno.ENOTDIR):
        return CourseError(
            QT_TRANSLATE_NOOP("Course", "{0} cannot be found. Look where it lies and try again."),
            name,
        )
    if error.errno == errno.EISDIR:
        return CourseError(
            QT_TRANSLATE_NOOP("Course", "{0} is not a file. Choose a GPX file."), name
        )
    if error.errno in (errno.EACCES, errno.EPERM):
        return CourseError(
            QT_TRANSLATE_NOOP(
                "Course", "You are not allowed to read {0}. Change its permissions or copy it."
            ),
            name,
        )
    return CourseError(
        QT_TRANSLATE_NOOP("Course", "{0} cannot be read ({1}). Copy it elsewhere and try again."),
        name,
        (error.strerror or "")[:60],
    )


def _unpacked(data: bytes, name: str) -> bytes:
    """Return what all members of a gzip file hold, at most one byte more than the limit."""
    parts: list[bytes] = []
    room = LARGEST_BYTES + 1
    for _ in range(MOST_MEMBERS):
        if not data.startswith(GZIP_MAGIC) or room <= 0:
            break
        member = zlib.decompressobj(wbits=_GZIP)
        try:
            part = member.decompress(data, room)
        except zlib.error as error:
            raise _damaged(name) from error
        room -= len(part)
        parts.append(part)
        if not member.eof and room > 0:
            raise _damaged(name)
        data = member.unused_data
    return b"".join(parts)


def _damaged(name: str) -> CourseError:
    return CourseError(
        QT_TRANSLATE_NOOP("Course", "{0} is packed and damaged. Export or download it again."), name
    )
