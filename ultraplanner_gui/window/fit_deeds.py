"""What the action that fits the runner to recordings does."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Slot

from ultraplanner_gui.desk import places
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.window.job_deeds import JobDeeds
from ultraplanner_gui.window.pace_deeds import PaceDeeds

if TYPE_CHECKING:
    from ultraplanner_gui.window.pace_fit import ReadFit


class FitDeeds(JobDeeds, PaceDeeds):
    """The slot behind Fit from my runs."""

    @Slot()
    def fit_runs(self) -> None:
        last = self._window.settings.last_folder
        folder = Path(last) if last else places.documents()
        self._window.ask.which_recordings(folder, self.fit_from)

    def fit_from(self, paths: tuple[Path, ...]) -> None:
        """Fit the recordings in *paths* off the GUI thread, then show what they say."""
        document = self._window.document
        if document is None or not paths:
            return
        from ultraplanner_gui.window.pace_fit import read_and_fit

        self._window.settings.last_folder = str(paths[0].parent)
        self._window.name_work(self.tr("Fitting from my runs"))
        shown = partial(self._show_fit, document)
        self._start(shown, read_and_fit, paths, document.project.runner)

    def _show_fit(self, document: Document, found: ReadFit) -> None:
        if document is not self._window.document:
            return
        from ultraplanner_gui.window.pace_fit import FitForm

        words = self._window.settings.words()
        FitForm(found, document.project.runner, words, self._take_pace, self._window).open()
