"""Files that the system hands to the running program, as macOS does at a double click."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QEvent, QObject
from PySide6.QtGui import QFileOpenEvent


class HandedOver(QObject):
    """An event filter that gives each file handed over to *taken*."""

    def __init__(self, taken: Callable[[Path], None], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._taken = taken

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if isinstance(event, QFileOpenEvent) and event.file():
            self._taken(Path(event.file()))
            return True
        return super().eventFilter(watched, event)
