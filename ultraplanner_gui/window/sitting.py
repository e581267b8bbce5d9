"""Where one was, kept while a project is open: after a crash the next start goes on there."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Slot

from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.store.project_file import ProjectFile

if TYPE_CHECKING:
    from ultraplanner_gui.window.main_window import MainWindow

#: What is selected is written down once the hand rests for so long.
REST_MS = 1500


class Sitting(QObject):
    """Writes down which project is open, the place, and what is selected; nothing when it closes.

    What is left of it at a start was left by a program that did not end by itself.
    """

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._own = ""
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(REST_MS)
        self._rest.timeout.connect(self._note)

    @Slot()
    def moved(self) -> None:
        """Write down soon where one is now."""
        self._rest.start()

    def ended(self) -> None:
        """Forget where one was: the project is closed. What another window notes stays."""
        self._rest.stop()
        settings = self._window.settings
        settings.store.sync()
        if settings.sitting and settings.sitting[0] == self._own:
            settings.sitting = ()

    def go_on(self) -> bool:
        """Open what was open when the program last ended by a fault; return whether it was."""
        left = self._window.settings.sitting
        if len(left) != 4 or not Path(left[0]).exists():
            return False
        path, place, kind, key = left
        try:
            file = ProjectFile.open(path)
        except PlanError:  # another window has it, or it cannot be opened: nothing to go on with
            return False
        self._own = path
        self._window.deeds.show_file(file)
        self._window.go(place if place in ("sheet", "tables", "cards") else "sheet")
        if kind and self._window.workplace is not None:
            self._window.workplace.selection.choose(kind, key)
            self._window.workplace.selection.forget_missing(file.project)
        return True

    @Slot()
    def _note(self) -> None:
        place = self._window.workplace
        if place is None or place.document.path is None:
            return
        chosen = place.selection
        self._own = str(place.document.path)
        now = (self._own, place.place, chosen.kind, chosen.key)
        if self._window.settings.sitting != now:
            self._window.settings.sitting = now
