"""What the actions on recordings do: keep, match, look at, look back on, mark from, export."""

from __future__ import annotations

from collections.abc import Iterable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from msgspec.structs import replace
from PySide6.QtCore import Slot

from ultraplanner_gui.desk import places
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.plan.block import Done, Kind
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.window.job_deeds import JobDeeds
from ultraplanner_gui.window.recording_files import Kept, keep_all

if TYPE_CHECKING:
    from ultraplanner_gui.window.look_back_view import Looked
    from ultraplanner_gui.window.recording_view import Analysed


class RecordingDeeds(JobDeeds):
    """The slots of the Recordings menu."""

    @Slot()
    def add_recordings(self) -> None:
        if self._window.document is not None:
            self._window.ask.which_recordings(self._last_folder(), self.keep_recordings)

    @Slot()
    def add_recording_folder(self) -> None:
        if self._window.document is not None:
            self._window.ask.which_folder(self._last_folder(), self._keep_folder)

    def keep_recordings(self, paths: Iterable[Path]) -> None:
        """Read the recordings in *paths* off the GUI thread and keep them in the project."""
        files, document = tuple(paths), self._window.document
        if document is None or not files:
            return
        self._window.settings.last_folder = str(files[0].parent)
        self._window.name_work(self.tr("Reading recordings"))
        self._start(partial(self._add_kept, document), keep_all, files, document.project)

    @Slot()
    def look_at_recording(self) -> None:
        document, kept = self._window.document, self._chosen()
        if document is None or kept is None:
            return
        from ultraplanner_gui.window.recording_view import analysed

        self._window.name_work(self.tr("Reading {0}").format(kept.file))
        shown = partial(self._show_recording, document, kept)
        self._start(shown, analysed, kept, document.project)

    @Slot()
    def look_back(self) -> None:
        document, kept = self._window.document, self._chosen(race_first=True)
        if document is None or kept is None:
            return
        from ultraplanner_gui.window.look_back_view import looked_back

        self._window.name_work(self.tr("Reading {0}").format(kept.file))
        self._start(partial(self._show_back, document), looked_back, kept, document.before)

    @Slot()
    def answer_lessons(self) -> None:
        self._window.go("tables")
        if self._window.workplace is not None:
            self._window.workplace.tables.show_table("Lessons")

    @Slot()
    def mark_from_recording(self) -> None:
        document, kept = self._window.document, self._chosen()
        if document is None or kept is None:
            return
        sessions = {s.key: s for s in document.project.block.sessions}
        session = sessions.get(kept.session)
        if session is None or session.kind is Kind.RACE:
            self._window.say(
                self.tr("This recording is of no session; choose one for it in its table.")
            )
            return
        from ultraplanner_gui.buildup.done_form import DoneForm

        before = session.done or session.actual
        recorded = Done(
            kept.distance_m,
            kept.moving_s,
            kept.climb_m,
            kept.drop_m,
            effort=before.effort,
            carb_g=before.carb_g,
            gut=before.gut,
            note=before.note,
            foods=before.foods,
        )
        words = self._window.settings.words()
        DoneForm(document, session.key, words, self._window, recorded).open()

    @Slot()
    def export_recording(self) -> None:
        document, kept = self._window.document, self._chosen()
        if document is not None and kept is not None:
            folder = document.path.parent if document.path is not None else self._last_folder()
            write = partial(self._write_recording, kept)
            self._window.ask.where_to_export(folder / Path(kept.file).name, write)

    @Slot()
    def remove_recording(self) -> None:
        document, kept = self._window.document, self._chosen()
        if document is not None and kept is not None:
            from ultraplanner_gui.edits.recordings import RemoveRecording

            document.perform(RemoveRecording(kept.key))

    def ask_what_dropped(self, path: Path) -> None:
        """Ask at the foot whether a file with times is a recording or a course."""
        document = self._window.document
        if document is not None:
            self._window.offer.ask(
                self.tr(
                    "{0} has times: keep it as a recording of a run, or open it as the course of "
                    "a new plan?"
                ).format(path.name),
                (self.tr("&Keep as a recording"), partial(self.keep_recordings, (path,))),
                (self.tr("&Open as a course"), partial(self._open_course_file, path)),
            )

    def _open_course_file(self, path: Path) -> None:
        """Open *path* as the course of a new plan; the whole of the deeds does it."""

    def _keep_folder(self, folder: Path) -> None:
        self.keep_recordings((folder,))

    def _add_kept(self, document: Document, kept: Kept) -> None:
        if document is not self._window.document:
            return
        from ultraplanner_gui.edits.recordings import AddRecordings
        from ultraplanner_gui.engine.recording_match import all_matched, is_same_run

        added, known = kept.recordings, kept.known
        if document.project is not kept.project:
            there = document.project.recordings
            fresh = [r for r in added if not any(is_same_run(r, other) for other in there)]
            known += len(added) - len(fresh)
            bare = [replace(r, session="", is_race=False) for r in fresh]
            added = all_matched(bare, document.project)
        if added and not document.perform(AddRecordings(added)):
            return
        self._window.go("tables")
        if self._window.workplace is not None:
            self._window.workplace.tables.show_table("Recordings")
            if added:
                self._window.workplace.selection.choose("recording", added[-1].key)
        said = self._said(kept, len(added), known)
        self._window.say(said)
        if kept.left_out:
            from ultraplanner_gui.window.left_out import LeftOutView

            words = self._window.settings.words()
            LeftOutView(kept.left_out, said, words, self._window).open()

    def _said(self, kept: Kept, added: int, known: int) -> str:
        parts = [self.tr("Recordings added: {0}.").format(added)]
        if known:
            parts.append(self.tr("There already: {0}.").format(known))
        if kept.left_out:
            parts.append(self.tr("Files left out: {0}.").format(len(kept.left_out)))
        if kept.is_cut:
            parts.append(self.tr("A project keeps no more; the other files were left out."))
        return " ".join(parts)

    def _chosen(self, race_first: bool = False) -> KeptRecording | None:
        """Return the recording selected, the only one, or that of the race; say so if none."""
        document, place = self._window.document, self._window.workplace
        if document is None or place is None:
            return None
        recordings = {r.key: r for r in document.project.recordings}
        if place.selection.kind == "recording" and place.selection.key in recordings:
            return recordings[place.selection.key]
        races = [r for r in recordings.values() if r.is_race]
        if race_first and len(races) == 1:
            return races[0]
        of = place.selection.key if place.selection.kind == "session" else ""
        of_session = [r for r in recordings.values() if of and r.session == of]
        if of_session:
            return of_session[-1]
        if len(recordings) == 1:
            return next(iter(recordings.values()))
        self._window.go("tables")
        place.tables.show_table("Recordings")
        self._window.say(self.tr("Choose a recording in its table first."))
        return None

    def _show_recording(self, document: Document, kept: KeptRecording, found: Analysed) -> None:
        if document is not self._window.document:
            return
        from ultraplanner_gui.window.recording_view import RecordingView
        from ultraplanner_gui.window.table_recordings import RecordingRow, match_text

        words = self._window.settings.words()
        of = match_text(RecordingRow(kept, document.project), words)
        RecordingView(kept, found, document.project.runner, words, of, self._window).open()

    def _show_back(self, document: Document, looked: Looked) -> None:
        if document is not self._window.document:
            return
        from ultraplanner_gui.window.look_back_view import LookBackView

        LookBackView(looked, document, self._window.settings.words(), self._window).show()

    def _write_recording(self, kept: KeptRecording, path: Path) -> None:
        from ultraplanner_gui.exchange.kept_recording import file_of
        from ultraplanner_gui.exchange.safe_write import write_bytes

        try:
            write_bytes(path, file_of(kept))
        except PlanError as error:
            sentence = self._window.settings.words().say(error.message)
            self._window.ask.tell(self.tr("That did not work"), sentence)
            return
        self._window.inform(self.tr("Written: {0}").format(path.name))

    def _last_folder(self) -> Path:
        last = self._window.settings.last_folder
        return Path(last) if last else places.documents()
