"""A finished file put in the place of another, whole or not at all."""

from __future__ import annotations

import os
from contextlib import suppress
from pathlib import Path

from ultraplanner_gui.store.troubles import cannot_write


def part_beside(target: Path) -> Path:
    """Return a free name beside *target* for a file that is to take its place when finished."""
    part = target.with_name(f".{target.name}.{os.getpid()}.part")
    try:
        part.unlink(missing_ok=True)
    except OSError as error:
        raise cannot_write(target) from error
    return part


def put_in_place(part: Path, target: Path) -> None:
    """Give the finished file *part* the name *target*, safe against power loss."""
    try:
        with part.open("rb+") as file:
            os.fsync(file.fileno())
        part.replace(target)
        _sync_folder(target.parent)
    except OSError as error:
        raise cannot_write(target) from error


def _sync_folder(folder: Path) -> None:
    with suppress(OSError):  # Windows has no handle on a folder
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)
