"""What is offered when a file cannot be opened as it is, and named states of the plan."""

from __future__ import annotations

from functools import partial
from pathlib import Path

from PySide6.QtCore import Slot

from ultraplanner_gui.desk import places
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.engine.mailing import LeftOut
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.store.project_file import ProjectFile
from ultraplanner_gui.store.troubles import Damaged, Elsewhere
from ultraplanner_gui.window.view_deeds import ViewDeeds


class TrustDeeds(ViewDeeds):
    """The slots that open, rescue and name; what was open stays open when they fail."""

    def open_project_file(self, path: Path) -> None:
        """Open a project; on failure what was open stays open."""
        window = self._window
        if window.document is not None and window.document.path == path:
            return
        try:
            file = ProjectFile.open(path)
        except PlanError as error:
            self._say_why_not(path, error)
            return
        self._show(file)
        if file.is_read_only:
            window.say(
                self.tr("{0} is read-only: changes are not kept. Save a copy to keep them.").format(
                    path.name
                )
            )

    @Slot()
    def name_state(self) -> None:
        document = self._window.document
        if document is not None:
            from ultraplanner_gui.window.name_form import NameForm

            NameForm(self._mark, self._window).open()

    def look_at(self, path: Path) -> None:
        """Show what was last kept in a file that is open elsewhere; nothing is kept there."""
        try:
            file = ProjectFile.look(path)
        except PlanError as error:
            self._say_why_not(path, error)
            return
        self._show(file)
        self._window.say(
            self.tr("This is only a look at {0}. Save a copy to keep changes.").format(path.name)
        )

    def rescue_into(self, path: Path, target: Path) -> None:
        """Put what can be read of the damaged file *path* into *target*, open it, say what is lost.

        *path* itself is left as it is.
        """
        from ultraplanner_gui.store.rescue import NAMES, rescue

        window, words = self._window, self._window.settings.words()
        try:
            lost = rescue(path, target).lost
        except PlanError as error:
            window.ask.tell(self.tr("Nothing was rescued"), words.say(error.message))
            return
        self.open_project_file(target)
        names = ", ".join(words.translate(NAMES[name]) for name in lost)
        window.ask.tell(
            self.tr("What was rescued"),
            self.tr("Not as it was kept, look at it before you go on: {0}.").format(names)
            if names
            else self.tr("Everything kept last could be read. Only the history may have gaps."),
        )

    @Slot()
    def mail_copy(self) -> None:
        document = self._window.document
        if document is not None and document.path is not None:
            from ultraplanner_gui.window.mailing_form import MailingForm

            MailingForm(self._ask_where_to_mail, self._window).open()

    def _ask_where_to_mail(self, left_out: LeftOut) -> None:
        document = self._window.document
        if document is not None and document.path is not None:
            proposed = document.path.with_name(f"{document.path.stem} to send.ultraplan")
            self._window.ask.where_to_keep(proposed, partial(self.write_mail_copy, left_out))

    def write_mail_copy(self, left_out: LeftOut, path: Path) -> None:
        """Write the plan without what is *left_out*, and without earlier states, to *path*."""
        from ultraplanner_gui.engine.mailing import for_mailing

        document = self._window.document
        if document is None:
            return
        try:
            ProjectFile.create(
                path, for_mailing(document.project, left_out), overwrite=True
            ).close()
        except PlanError as error:
            sentence = self._window.settings.words().say(error.message)
            self._window.ask.tell(self.tr("The copy was not written"), sentence)
            return
        self._window.inform(self.tr("Written: {0}").format(path.name))

    def go_on(self) -> None:
        """Go on where a program that ended by a fault was; say so, and where its report is."""
        if self._window.sitting.go_on():
            self._window.say(
                self.tr(
                    "Ultraplanner did not end by itself last time. This is the plan as it was "
                    "kept. A report, if there is one, is in {0} and stays on this computer."
                ).format(self._window.settings.words().path(places.logs()))
            )

    def show_file(self, file: ProjectFile) -> None:
        """Show the project in *file*, which is open."""
        self._show(file)

    def _show(self, file: ProjectFile) -> None:
        self._window.settings.remember_file(file.path)
        self._window.show_document(Document(file, parent=self._window))

    def _say_why_not(self, path: Path, error: PlanError) -> None:
        window = self._window
        title = self.tr("Cannot open the project")
        sentence = window.settings.words().say(error.message)
        if isinstance(error, Elsewhere):
            look = self.tr("&Look at it without changing it")
            window.ask.offer(title, sentence, look, partial(self.look_at, path))
        elif isinstance(error, Damaged) and _has_something_left(path):
            proposed = _free_name(path.with_name(f"{path.stem} rescued.ultraplan"))
            taken = partial(self.rescue_into, path)
            window.ask.offer(
                title,
                sentence,
                self.tr("&Rescue what can be read…"),
                partial(window.ask.where_to_keep, proposed, taken),
            )
        else:
            window.ask.tell(title, sentence)

    def _mark(self, label: str) -> str:
        """Name the state as it stands; return what is wrong, nothing if it was done."""
        document = self._window.document
        if document is None:
            return ""
        try:
            document.mark(label)
        except PlanError as error:
            return self._window.settings.words().say(error.message)
        self._window.inform(self.tr("This state is named “{0}”.").format(label))
        return ""


def _has_something_left(path: Path) -> bool:
    from ultraplanner_gui.store.rescue import has_something_left

    return has_something_left(path)


def _free_name(wish: Path) -> Path:
    free, number = wish, 2
    while free.exists():
        free = wish.with_name(f"{wish.stem} {number}{wish.suffix}")
        number += 1
    return free
