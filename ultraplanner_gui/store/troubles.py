"""Every sentence the store says when something cannot be read or kept."""

from __future__ import annotations

from pathlib import Path

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, StoreError

_WRONG = QT_TRANSLATE_NOOP(
    "Store",
    "The part {0} of this project is not as it should be. Open an earlier copy of the file.",
)
_UNFIT = QT_TRANSLATE_NOOP(
    "Store", "The part {0} cannot be kept: too long or no sensible figure. Undo the last change."
)


class LeftOpen(StoreError):
    """The file was being written when its program was stopped; it must be rolled back first."""

    def __init__(self, path: Path) -> None:
        super().__init__(
            QT_TRANSLATE_NOOP(
                "Store",
                "{0} was not closed properly. Copy it, and {0}-journal with it, to a folder you "
                "may write to, and open it there.",
            ),
            path.name,
        )


class Damaged(StoreError):
    """A file is hurt or no project at all; perhaps something of it can be rescued."""


class Elsewhere(StoreError):
    """A file cannot be taken, as it is open in another window; one may look at it."""


def damaged(place: str) -> StoreError:
    """Return the error that says that the part *place* of a file cannot be trusted."""
    return Damaged(_WRONG, place)


def unfit(place: str) -> StoreError:
    """Return the error that says that the part *place* of a project cannot be kept."""
    return StoreError(_UNFIT, place)


def is_strange(path: Path) -> StoreError:
    """Return the error that says that *path* is no project at all."""
    return Damaged(
        QT_TRANSLATE_NOOP(
            "Store", "{0} is not an Ultraplanner project. Choose a file that ends in .ultraplan."
        ),
        path.name,
    )


def is_broken(path: Path) -> StoreError:
    """Return the error that says that *path* is damaged."""
    return Damaged(
        QT_TRANSLATE_NOOP(
            "Store", "{0} is damaged and was left as it is. Open an earlier copy of it."
        ),
        path.name,
    )


def is_elsewhere(path: Path) -> StoreError:
    """Return the error that says that *path* is open in another window."""
    return Elsewhere(
        QT_TRANSLATE_NOOP(
            "Store", "{0} is already open in another window. Go on there, or close it there first."
        ),
        path.name,
    )


def is_open_since(path: Path, user: str, host: str, since: str) -> StoreError:
    """Return the error that says who has had *path* open since when."""
    return Elsewhere(
        QT_TRANSLATE_NOOP(
            "Store",
            "{0} is already open in another window: {1} on {2} since {3}. Go on there or close it.",
        ),
        _short(path.name),
        _short(user),
        _short(host),
        since,
    )


def _short(name: str) -> str:
    return name if len(name) <= 32 else f"{name[:31]}…"


def is_protected(path: Path) -> StoreError:
    """Return the error that says that *path* cannot be written."""
    return StoreError(
        QT_TRANSLATE_NOOP(
            "Store", "{0} is read-only, so changes are not kept. Save a copy in another folder."
        ),
        path.name,
    )


def is_gone(path: Path) -> StoreError:
    """Return the error that says that *path* is no longer where it was."""
    return StoreError(
        QT_TRANSLATE_NOOP(
            "Store", "{0} was moved or removed while open. Move it back, or save a copy."
        ),
        path.name,
    )


def disk_is_full(path: Path) -> StoreError:
    """Return the error that says that the disk of *path* is full."""
    return StoreError(
        QT_TRANSLATE_NOOP(
            "Store", "The disk is full: the last change of {0} is not kept. Make room on the disk."
        ),
        path.name,
    )


def cannot_write(path: Path) -> StoreError:
    """Return the error that says that writing *path* failed."""
    return StoreError(
        QT_TRANSLATE_NOOP(
            "Store", "{0} could not be written: the disk is full or away. Save a copy elsewhere."
        ),
        path.name,
    )


def is_unreadable(path: Path) -> StoreError:
    """Return the error that says that *path* cannot be read."""
    return StoreError(
        QT_TRANSLATE_NOOP("Store", "{0} could not be read. Check that you may open it."), path.name
    )


def made_by_newer(path: Path) -> StoreError:
    """Return the error for a file of a version that this program does not know yet."""
    return StoreError(
        QT_TRANSLATE_NOOP(
            "Store", "{0} was made by a newer Ultraplanner. Update this one to open it."
        ),
        path.name,
    )
