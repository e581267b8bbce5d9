"""What the actions do that hand the plan over to other programs."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Slot

from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.exchange.safe_write import write_bytes
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.window.job_deeds import JobDeeds

if TYPE_CHECKING:
    from ultraplanner_gui.desk.document import Document
    from ultraplanner_gui.edits.edit import Edit
    from ultraplanner_gui.engine.outlook import Outlook
    from ultraplanner_gui.exchange.plan_changes import PlanChanges
    from ultraplanner_gui.wording.words import Words


def gpx_job(token: Token, outlook: Outlook, words: Words, path: Path) -> Path:
    """Write course and targets to *path*, off the GUI thread."""
    from ultraplanner_gui.exchange.gpx_out import race_marks, write_course

    assert outlook.project.course is not None
    write_course(outlook.project.course, path, race_marks(outlook, words))
    return path


def calendar_job(token: Token, outlook: Outlook, words: Words, path: Path) -> Path:
    """Write sessions and race to *path*, off the GUI thread."""
    from ultraplanner_gui.buildup import kinds
    from ultraplanner_gui.exchange.calendar_out import write_calendar

    names = {kind: kinds.say(name) for kind, name in kinds.FULL.items()}
    write_calendar(outlook.project, words, names.__getitem__, path, datetime.now(UTC))
    return path


def tables_job(token: Token, outlook: Outlook, words: Words, path: Path) -> Path:
    """Write an archive of all tables to *path*, off the GUI thread."""
    from ultraplanner_gui.window.table_export import tables_zip

    write_bytes(path, tables_zip(outlook, words))
    return path


def xlsx_job(token: Token, outlook: Outlook, words: Words, path: Path) -> Path:
    """Write a workbook of all tables to *path*, off the GUI thread."""
    from ultraplanner_gui.window.table_workbook import tables_xlsx

    write_bytes(path, tables_xlsx(outlook, words))
    return path


def import_job(token: Token, outlook: Outlook, words: Words, path: Path) -> PlanChanges:
    """Return what the calendar or CSV file at *path* would change, off the GUI thread."""
    if path.suffix.lower() == ".csv":
        from ultraplanner_gui.window.sessions_csv import read_sessions

        return read_sessions(outlook, words, path)
    from ultraplanner_gui.exchange.calendar_in import read_calendar

    return read_calendar(outlook.project, words, path)


class ExportDeeds(JobDeeds):
    """The slots of what is handed over."""

    @Slot()
    def export_gpx(self) -> None:
        self._ask_for(self.tr("{0} race.gpx"), partial(self._run, gpx_job))

    @Slot()
    def export_calendar(self) -> None:
        self._ask_for(self.tr("{0} sessions.ics"), partial(self._run, calendar_job))

    @Slot()
    def export_tables(self) -> None:
        self._ask_for(self.tr("{0} tables.zip"), partial(self._run, tables_job))

    @Slot()
    def export_xlsx(self) -> None:
        self._ask_for(self.tr("{0} tables.xlsx"), partial(self._run, xlsx_job))

    @Slot()
    def export_png(self) -> None:
        self._ask_for(self.tr("{0} profile.png"), self._write_profile)

    @Slot()
    def export_svg(self) -> None:
        self._ask_for(self.tr("{0} profile.svg"), self._write_profile)

    @Slot()
    def import_sessions(self) -> None:
        document = self._window.document
        if document is not None and document.path is not None:
            self._window.ask.which_sessions(document.path.parent, self._import)

    def _import(self, path: Path) -> None:
        document = self._window.document
        if document is not None:
            self._window.name_work(self.tr("Reading {0}").format(path.name))
            words = self._window.settings.words()
            shown = partial(self._show_import, document)
            self._start(shown, import_job, document.before, words, path)

    def _show_import(self, document: Document, plan: PlanChanges) -> None:
        if document is not self._window.document:
            return
        from ultraplanner_gui.window.import_form import ImportForm

        words = self._window.settings.words()
        ImportForm(plan, words, partial(self._take_import, document), self._window).open()

    def _take_import(self, document: Document, edits: tuple[Edit, ...]) -> None:
        from ultraplanner_gui.edits.compound import ImportSessions

        if document is self._window.document:
            document.perform(ImportSessions(edits))

    def _ask_for(self, name: str, taken: Callable[[Path], None]) -> None:
        document = self._window.document
        if document is not None and document.path is not None:
            proposed = document.path.with_name(name.format(document.path.stem))
            self._window.ask.where_to_export(proposed, taken)

    def _run(self, job: Callable[[Token, Outlook, Words, Path], Path], path: Path) -> None:
        document = self._window.document
        if document is not None:
            self._window.name_work(self.tr("Writing {0}").format(path.name))
            words = self._window.settings.words()
            self._start(self._on_exported, job, document.before, words, path)

    def _write_profile(self, path: Path) -> None:
        # Fonts and lanes belong to the GUI thread; it takes a few hundredths of a second.
        from ultraplanner_gui.raceday.profile_picture import write_profile

        document, words = self._window.document, self._window.settings.words
        if document is None:
            return
        try:
            write_profile(document, words, path)
        except PlanError as error:
            self._window.ask.tell(self.tr("That did not work"), words().say(error.message))
            return
        self._on_exported(path)

    def _on_exported(self, path: Path) -> None:
        self._window.inform(self.tr("Written: {0}").format(path.name))
