"""Further windows: the program started again beside this one, each window with its own project."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING

from ultraplanner_gui.desk.places import HOME_VARIABLE

if TYPE_CHECKING:
    from subprocess import Popen

#: Names the folder that is thrown away to the windows that were opened from one in it.
SHARED = "ULTRAPLANNER_THROWN_AWAY"
THROW_AWAY = "--throw-away"
#: Set for a window opened from another: what is open there is not gone on with here.
BESIDE = "ULTRAPLANNER_BESIDE"

_sharing: list[Popen[bytes]] = []
_handed_on: list[str] = []


def hand_on(*options: str) -> None:
    """Have every window that is opened from here on started with *options* too."""
    _handed_on[:] = options


def open_another() -> None:
    """Start the program once more, in the folder that is thrown away if this window is."""
    os.environ[BESIDE] = "1"
    if os.environ.get(SHARED):
        from subprocess import Popen

        # A child, so that it can be waited for.
        _sharing.append(Popen([*program(), THROW_AWAY, *_handed_on]))
        return
    from PySide6.QtCore import QProcess

    command, *own = program()
    QProcess.startDetached(command, [*own, *_handed_on])


def program() -> list[str]:
    """Return the command that starts the program, installed, in a bundle or from source."""
    own = [] if getattr(sys, "frozen", False) else ["-m", "ultraplanner_gui"]
    return [sys.executable, *own]


@contextmanager
def thrown_away() -> Iterator[Path]:
    """Give a folder in place of the user's own; gone once every window that shares it is closed.

    A window opened from another one shares its folder. Whoever opened one waits for it here, so
    that the first, whose folder it is, ends last.
    """
    from tempfile import TemporaryDirectory

    shared = os.environ.get(SHARED, "")
    if shared and shared == os.environ.get(HOME_VARIABLE) and Path(shared).is_dir():
        with _waiting_for_others():
            yield Path(shared)
        return
    with (
        TemporaryDirectory(prefix="ultraplanner-", ignore_cleanup_errors=True) as home,
        _waiting_for_others(),
    ):
        os.environ[HOME_VARIABLE] = os.environ[SHARED] = home
        yield Path(home)


@contextmanager
def _waiting_for_others() -> Iterator[None]:
    try:
        yield
    finally:
        # What is started from here on finds no folder to share.
        os.environ.pop(SHARED, None)
        while _sharing:
            _sharing.pop().wait()
