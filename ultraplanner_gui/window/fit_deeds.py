"""What the actions do that take recordings: the fit of the runner, the predicted finish."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Slot

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.window.pace_deeds import PaceDeeds
from ultraplanner_gui.window.recording_deeds import RecordingDeeds
from ultraplanner_gui.window.recording_files import Kept, keep_all

if TYPE_CHECKING:
    from ultraplanner_gui.window.pace_fit import ReadFit
    from ultraplanner_gui.window.recordings_read import ReadRuns
    from ultraplanner_gui.window.run_choice import RunChoice


class FitDeeds(RecordingDeeds, PaceDeeds):
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

    @Slot()
    def fit_runs(self) -> None:
        self._which_runs(self.tr("&Fit"), self._fit_chosen)

    def _pick_runs(self, taken: Callable[[ReadRuns], None]) -> None:
        self._which_runs(self.tr("&Add"), partial(self._take_runs, taken))

    def _which_runs(self, use: str, taken: Callable[[tuple[KeptRecording, ...]], None]) -> None:
        """Ask which recordings are meant, at once for files where none is kept."""
        document = self._window.document
        if document is None:
            return
        from ultraplanner_gui.window.run_choice import RunChoice

        kept, words = document.project.recordings, self._window.settings.words()
        form = RunChoice(kept, words, use, partial(self._on_chosen, document, taken), self._window)
        ask = partial(self._ask_files_for, form)
        form.files.clicked.connect(ask)
        form.rejected.connect(self.cancel_job)
        form.open()
        if not kept:
            ask()

    def _ask_files_for(self, form: RunChoice) -> None:
        folder = self._last_folder()
        self._window.ask.which_recordings(folder, partial(self._read_files_for, form))

    def _read_files_for(self, form: RunChoice, paths: tuple[Path, ...]) -> None:
        document = self._window.document
        if document is None or not paths:
            return
        self._window.settings.last_folder = str(paths[0].parent)
        self._window.name_work(self.tr("Reading recordings"))
        self._start(partial(self._add_files_to, form), keep_all, paths, document.project)

    def _add_files_to(self, form: RunChoice, kept: Kept) -> None:
        words = self._window.settings.words()
        lines = [self._said(kept, len(kept.recordings), kept.known)]
        lines += [f"{name}: {words.say(why)}" for name, why in kept.left_out]
        form.add(kept.recordings, "\n".join(lines))

    def _on_chosen(
        self,
        document: Document,
        taken: Callable[[tuple[KeptRecording, ...]], None],
        chosen: tuple[KeptRecording, ...],
        to_keep: tuple[KeptRecording, ...],
    ) -> None:
        if document is not self._window.document:
            return
        if to_keep:
            from ultraplanner_gui.edits.recordings import AddRecordings

            document.perform(AddRecordings(to_keep))
        taken(chosen)

    def _take_runs(
        self, taken: Callable[[ReadRuns], None], chosen: tuple[KeptRecording, ...]
    ) -> None:
        document = self._window.document
        if document is None:
            return
        from ultraplanner_gui.window.recordings_read import kept_runs

        self._window.name_work(self.tr("Reading recordings"))
        self._start(taken, kept_runs, chosen, document.project.runner)

    def _fit_chosen(self, chosen: tuple[KeptRecording, ...]) -> None:
        document = self._window.document
        if document is None:
            return
        from ultraplanner_gui.window.pace_fit import fit_kept

        self._window.name_work(self.tr("Fitting from my runs"))
        shown = partial(self._show_fit, document)
        self._start(shown, fit_kept, chosen, document.project.runner)

    def _show_fit(self, document: Document, found: ReadFit) -> None:
        if document is not self._window.document:
            return
        from ultraplanner_gui.window.pace_fit import FitForm

        words = self._window.settings.words()
        FitForm(found, document.project.runner, words, self._take_pace, self._window).open()
