"""What the actions do that take recordings: the fit of the runner, the predicted finish."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Slot

from ultraplanner_gui.desk import places
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.window.job_deeds import JobDeeds
from ultraplanner_gui.window.pace_deeds import PaceDeeds

if TYPE_CHECKING:
    from ultraplanner_gui.window.pace_fit import ReadFit
    from ultraplanner_gui.window.recordings_read import ReadRuns


class FitDeeds(JobDeeds, PaceDeeds):
    """The slots behind Predict the finish and Fit from my runs."""

    @Slot()
    def predict_form(self) -> None:
        document = self._window.document
        if document is None or document.outlook.race is None:
            return
        from ultraplanner_gui.window.pace_predict import PredictForm

        words = self._window.settings.words()
        form = PredictForm(document.outlook, words, self._take_pace, self._pick_runs, self._window)
        # What is still being read then has nowhere to go.
        form.finished.connect(self.cancel_job)
        form.open()

    def _pick_runs(self, taken: Callable[[ReadRuns], None]) -> None:
        files = partial(self._which_recordings, partial(self.read_runs_from, taken))
        self._which_runs(self.tr("&Add"), partial(self._take_kept_runs, taken), files)

    def _take_kept_runs(
        self, taken: Callable[[ReadRuns], None], kept: tuple[KeptRecording, ...]
    ) -> None:
        document = self._window.document
        if document is None:
            return
        from ultraplanner_gui.window.recordings_read import kept_runs

        self._window.name_work(self.tr("Reading recordings"))
        self._start(taken, kept_runs, kept, document.project.runner)

    def read_runs_from(self, taken: Callable[[ReadRuns], None], paths: tuple[Path, ...]) -> None:
        """Read the recordings in *paths* off the GUI thread and hand them to *taken*."""
        document = self._window.document
        if document is None or not paths:
            return
        from ultraplanner_gui.window.recordings_read import read_runs

        self._window.settings.last_folder = str(paths[0].parent)
        self._window.name_work(self.tr("Reading recordings"))
        self._start(taken, read_runs, paths, document.project.runner)

    @Slot()
    def fit_runs(self) -> None:
        files = partial(self._which_recordings, self.fit_from)
        self._which_runs(self.tr("&Fit"), self._fit_kept, files)

    def _which_runs(
        self,
        use: str,
        taken: Callable[[tuple[KeptRecording, ...]], None],
        files: Callable[[], None],
    ) -> None:
        """Ask which recordings are meant: of those kept where there are any, else files."""
        document = self._window.document
        if document is None:
            return
        if not document.project.recordings:
            files()
            return
        from ultraplanner_gui.window.run_choice import RunChoice

        words = self._window.settings.words()
        kept = document.project.recordings
        RunChoice(kept, words, use, taken, files, self._window).open()

    def _fit_kept(self, kept: tuple[KeptRecording, ...]) -> None:
        document = self._window.document
        if document is None:
            return
        from ultraplanner_gui.window.pace_fit import fit_kept

        self._window.name_work(self.tr("Fitting from my runs"))
        shown = partial(self._show_fit, document)
        self._start(shown, fit_kept, kept, document.project.runner)

    def _which_recordings(self, taken: Callable[[tuple[Path, ...]], None]) -> None:
        last = self._window.settings.last_folder
        folder = Path(last) if last else places.documents()
        self._window.ask.which_recordings(folder, taken)

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
