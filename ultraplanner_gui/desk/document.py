"""The open project: the one door through which it changes, with undo and keeping."""

from __future__ import annotations

import time
from collections.abc import Callable
from contextlib import suppress
from datetime import date, datetime
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QObject, Signal
from PySide6.QtGui import QUndoCommand, QUndoStack

from ultraplanner_gui.desk.points import label_before
from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.edits.project import GoBack
from ultraplanner_gui.engine import outlook as engine
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError, StoreError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.store.project_file import NEW_LABEL, Point, ProjectFile

Derive = Callable[[Project, Outlook | None, date], Outlook]

UNDO_LABEL = QT_TRANSLATE_NOOP("Edit", "Undo")
STEPS_HELD = 500
_GESTURE_ID = 1


class _Trial(Value, frozen=True):
    """An edit tried on *base* and the outlook it would lead to."""

    edit: Edit
    base: Project
    outlook: Outlook

    def is_of(self, edit: Edit, base: Project) -> bool:
        return base is self.base and type(edit) is type(self.edit) and edit == self.edit


class Document(QObject):
    """One project, its outlook, its undo list and the file it is kept in.

    `changed` carries the outlooks shown before and after, trials included; `kept` the aware
    time of keeping; `refused` and `keep_failed` the `Message` that says why; `stepped` the
    edit that undo or redo went over, so that a view can bring its place into sight.
    """

    changed = Signal(object, object)
    kept = Signal(object)
    refused = Signal(object)
    keep_failed = Signal(object)
    stepped = Signal(object)

    def __init__(
        self,
        file: ProjectFile | None = None,
        project: Project | None = None,
        today: Callable[[], date] = date.today,
        *,
        derive: Derive = engine.derive,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        if project is None:
            if file is None:
                raise ValueError("a document needs a file or a project")
            project = file.project
        self._file = file
        self._today = today
        self._derive = derive
        self._outlook = derive(project, None, today())
        self._trial: Outlook | None = None
        self._tried: _Trial | None = None
        #: When the last trial was begun, of `time.perf_counter`.
        self.tried_s = 0.0
        self._ready: Outlook | None = None
        self._last_gesture = 0
        self._is_kept = file is not None and file.project is project
        if file is not None:
            file.leave_note()
        self._label = NEW_LABEL
        # a child, so that it goes before the document does (pitfall 6)
        self.undo_stack = QUndoStack(self)
        self.undo_stack.setUndoLimit(STEPS_HELD)

    @property
    def project(self) -> Project:
        """The project as it stands, without any trial."""
        return self._outlook.project

    @property
    def outlook(self) -> Outlook:
        """Every derived figure of `project`."""
        return self._outlook

    @property
    def before(self) -> Outlook:
        """The outlook a trial is compared with: that of `project`."""
        return self._outlook

    @property
    def trial_outlook(self) -> Outlook | None:
        """The outlook of the trial, None while nothing is tried."""
        return self._trial

    @property
    def shown(self) -> Outlook:
        """What the views show: the trial if there is one."""
        return self._trial or self._outlook

    @property
    def path(self) -> Path | None:
        """Where the project is kept, None if nowhere."""
        return self._file.path if self._file is not None else None

    @property
    def kept_at(self) -> datetime | None:
        """When the project was last kept, aware; None if nowhere."""
        return self._file.kept_at if self._file is not None else None

    @property
    def is_kept(self) -> bool:
        """Whether the project as it stands is safe in its file."""
        return self._is_kept

    @property
    def is_read_only(self) -> bool:
        """Whether nothing can be kept in the file, which the user should hear at opening."""
        return self._file is not None and self._file.is_read_only

    def new_gesture(self) -> int:
        """Return a number for one drag or one spell of key presses: its edits are one step."""
        self._last_gesture += 1
        return self._last_gesture

    def perform(self, edit: Edit) -> bool:
        """Change the project; return False, having said why, if it cannot be done.

        A change that changes nothing makes no step. A trial ends either way.
        """
        try:
            after = self._tried_out(edit)
        except PlanError as error:
            self.drop_trial()
            self.refused.emit(error.message)
            return False
        if after is self._outlook:
            self.drop_trial()
            return True
        self._ready = after
        self._mark_before(edit)
        self.undo_stack.push(_Step(self, edit, self.project, after.project))
        return True

    def try_edit(self, edit: Edit) -> bool:
        """Show what *edit* would lead to and keep nothing; return False if it cannot be done."""
        self.tried_s = time.perf_counter()
        try:
            after = self._tried_out(edit)
        except PlanError as error:
            self.refused.emit(error.message)
            return False
        self._show_trial(after if after is not self._outlook else None)
        return True

    def drop_trial(self) -> None:
        """Show the project as it stands again."""
        self._show_trial(None)

    def refresh_today(self) -> None:
        """Part past from future anew, after midnight or a long sleep."""
        today, shown = self._today(), self.shown
        if today == self._outlook.today:
            return
        self._outlook = self._derive(self.project, self._outlook, today)
        self._trial = self._tried = None
        self.changed.emit(shown, self._outlook)

    def keep_again(self) -> None:
        """Try once more to keep what could not be kept."""
        if not self._is_kept:
            self._keep(self._label)

    def mark(self, name: str) -> None:
        """Make the project as it stands a point of the history; StoreError if that fails."""
        self.keep_again()
        if self._file is not None:
            self._file.mark(name)

    def history(self) -> list[Point]:
        """Return the earlier states in the file, the newest first."""
        return self._file.history() if self._file is not None else []

    def go_back(self, point: int) -> bool:
        """Make the project what it was at *point* of the history: one step, undone like any."""
        if self._file is None:
            return False
        try:
            earlier = self._file.at(point)
        except StoreError as error:
            self.refused.emit(error.message)
            return False
        return self.perform(GoBack(earlier))

    def save_copy(self, path: Path) -> None:
        """Write the project as it stands to *path*, its history with it; StoreError if not."""
        if self._file is not None:
            self._file.save_copy(path, self.project)
        else:
            ProjectFile.create(path, self.project, overwrite=True).close()

    def close(self) -> None:
        """Close the file; the document cannot be used any more."""
        self.keep_again()
        if self._file is not None:
            self._file.close()
        self._file = None
        self.deleteLater()

    def show_step(self, project: Project, edit: Edit, label: str) -> None:
        """Make *project* the present one: called by the undo list alone."""
        shown, ready = self.shown, self._ready
        is_new = ready is not None and ready.project is project
        after = (
            ready
            if ready is not None and is_new
            else self._derive(project, self._outlook, self._today())
        )
        self._outlook, self._trial, self._tried, self._ready = after, None, None, None
        self._label = label
        # before the views redraw: what the user did must survive a fault in painting
        self._keep(label)
        self.changed.emit(shown, after)
        if not is_new:
            self.stepped.emit(edit)

    def _mark_before(self, edit: Edit) -> None:
        label = label_before(edit)
        if label is None or self._file is None or not self._is_kept:
            return
        # undo has the state as well; what hinders keeping is said when the edit is kept
        with suppress(StoreError):
            self._file.mark(label, is_named=False)

    def _tried_out(self, edit: Edit) -> Outlook:
        """Return the outlook after *edit*, the present one if it changes nothing."""
        if self._tried is not None and self._tried.is_of(edit, self.project):
            return self._tried.outlook
        project = edit.apply(self.project)
        if project is self.project or project == self.project:
            after = self._outlook
        else:
            after = self._derive(project, self._outlook, self._outlook.today)
        self._tried = _Trial(edit, self.project, after)
        return after

    def _show_trial(self, trial: Outlook | None) -> None:
        shown = self.shown
        self._trial = trial
        if self.shown is not shown:
            self.changed.emit(shown, self.shown)

    def _keep(self, label: str) -> None:
        if self._file is None:
            return
        try:
            self._file.keep(self.project, label)
        except StoreError as error:
            self._is_kept = False
            self.keep_failed.emit(error.message)
        else:
            self._is_kept = True
            self.kept.emit(self._file.kept_at)


class _Step(QUndoCommand):
    """One step of the undo list: the whole project before and after, which share most parts."""

    def __init__(self, document: Document, edit: Edit, before: Project, after: Project) -> None:
        super().__init__(QCoreApplication.translate("Edit", edit.label))
        self._document = document
        self._before = before
        self.edit = edit
        self.after = after

    def id(self) -> int:
        return _GESTURE_ID if self.edit.gesture else -1

    def redo(self) -> None:
        self._document.show_step(self.after, self.edit, self.edit.label)

    def undo(self) -> None:
        self._document.show_step(self._before, self.edit, UNDO_LABEL)

    def mergeWith(self, later: QUndoCommand) -> bool:
        if not isinstance(later, _Step):
            return False
        mine, other = self.edit, later.edit
        if type(mine) is not type(other) or mine.gesture != other.gesture:
            return False
        self.edit, self.after = other, later.after
        self.setObsolete(self.after == self._before)
        return True
