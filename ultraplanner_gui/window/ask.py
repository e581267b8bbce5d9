"""Every question to the user, in one class that tests replace."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

# Qt makes a class when it is first named: those of dialogs where the first one opens.
from PySide6 import QtWidgets
from PySide6.QtCore import QObject
from PySide6.QtWidgets import QWidget

if TYPE_CHECKING:
    from ultraplanner_gui.exchange.gpx_in import CourseChoice
    from ultraplanner_gui.wording.words import Words

PathTaken = Callable[[Path], None]
PathsTaken = Callable[[tuple[Path, ...]], None]


class Ask(QObject):
    """Asks through dialogs that do not block; the answer goes to the callable given."""

    def __init__(self, window: QWidget) -> None:
        super().__init__(window)
        self._window = window

    def which_course(self, folder: Path, taken: PathTaken) -> None:
        """Ask for a GPX file."""
        self._file(
            self.tr("Open a course"),
            folder,
            self.tr("GPX courses (*.gpx *.gpx.gz);;All files (*)"),
            taken,
        )

    def which_recordings(self, folder: Path, taken: PathsTaken) -> None:
        """Ask for one recorded run or several."""
        kinds = self.tr("GPX recordings (*.gpx *.gpx.gz);;All files (*)")
        dialog = QtWidgets.QFileDialog(
            self._window, self.tr("Choose recordings"), str(folder), kinds
        )
        dialog.setFileMode(QtWidgets.QFileDialog.FileMode.ExistingFiles)
        dialog.filesSelected.connect(lambda names: taken(tuple(map(Path, names))))
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

    def which_folder(self, folder: Path, taken: PathTaken) -> None:
        """Ask for a folder with recordings in it, or in folders in it."""
        dialog = QtWidgets.QFileDialog(self._window, self.tr("A folder of recordings"), str(folder))
        dialog.setFileMode(QtWidgets.QFileDialog.FileMode.Directory)
        dialog.setOption(QtWidgets.QFileDialog.Option.ShowDirsOnly)
        self._open(dialog, taken)

    def which_project(self, folder: Path, taken: PathTaken) -> None:
        """Ask for a project file."""
        self._file(
            self.tr("Open a project"),
            folder,
            self.tr("Ultraplanner projects (*.ultraplan);;All files (*)"),
            taken,
        )

    def where_to_keep(self, proposed: Path, taken: PathTaken) -> None:
        """Ask where a project is to be kept."""
        self._save(self.tr("Keep the project in"), proposed, "ultraplan", taken)

    def where_to_write_pdf(self, proposed: Path, taken: PathTaken) -> None:
        """Ask where a PDF is to be written."""
        self._save(self.tr("Write the cards to"), proposed, "pdf", taken)

    def where_to_write_picture(self, proposed: Path, taken: PathTaken) -> None:
        """Ask where a picture is to be written."""
        self._save(self.tr("Write the picture to"), proposed, "png", taken)

    def which_line(
        self,
        file: str,
        choices: Sequence[CourseChoice],
        words: Words,
        taken: Callable[[str], None],
    ) -> None:
        """Ask which of several lines in a file is the course; the first stands chosen."""
        from ultraplanner_gui.window.line_choice import LineChoice

        LineChoice(file, choices, words, taken, self._window).open()

    def which_sessions(self, folder: Path, taken: PathTaken) -> None:
        """Ask for an iCalendar or CSV file."""
        kinds = self.tr("Calendars and tables (*.ics *.csv);;All files (*)")
        self._file(self.tr("Import sessions"), folder, kinds, taken)

    def which_template(self, folder: Path, taken: PathTaken) -> None:
        """Ask for a template block."""
        kinds = self.tr("Template blocks (*.ultrablock);;All files (*)")
        self._file(self.tr("Choose a template"), folder, kinds, taken)

    def where_to_keep_template(self, proposed: Path, taken: PathTaken) -> None:
        """Ask where a block is to be kept as a template."""
        kinds = self.tr("Template blocks (*.ultrablock)")
        self._save(self.tr("Keep the template in"), proposed, "ultrablock", taken, kinds)

    def where_to_export(self, proposed: Path, taken: PathTaken) -> None:
        """Ask where a file for another program is to be written."""
        self._save(self.tr("Export to"), proposed, proposed.suffix.removeprefix("."), taken)

    def tell(self, title: str, sentence: str) -> None:
        """Say one sentence that must be read."""
        box = QtWidgets.QMessageBox(
            QtWidgets.QMessageBox.Icon.NoIcon,
            title,
            sentence,
            QtWidgets.QMessageBox.StandardButton.Ok,
            self._window,
        )
        box.open()

    def offer(self, title: str, sentence: str, deed: str, taken: Callable[[], None]) -> None:
        """Say one sentence that must be read, and offer the *deed* that may help."""
        box = QtWidgets.QMessageBox(
            QtWidgets.QMessageBox.Icon.NoIcon,
            title,
            sentence,
            QtWidgets.QMessageBox.StandardButton.Close,
            self._window,
        )
        button = box.addButton(deed, QtWidgets.QMessageBox.ButtonRole.ActionRole)
        button.clicked.connect(taken)
        box.setDefaultButton(QtWidgets.QMessageBox.StandardButton.Close)
        box.open()

    def _file(self, title: str, folder: Path, kinds: str, taken: PathTaken) -> None:
        dialog = QtWidgets.QFileDialog(self._window, title, str(folder), kinds)
        dialog.setFileMode(QtWidgets.QFileDialog.FileMode.ExistingFile)
        self._open(dialog, taken)

    def _save(
        self, title: str, proposed: Path, suffix: str, taken: PathTaken, kinds: str = ""
    ) -> None:
        dialog = QtWidgets.QFileDialog(
            self._window, title, str(proposed.parent), kinds or f"*.{suffix}"
        )
        dialog.setAcceptMode(QtWidgets.QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix(suffix)
        dialog.selectFile(proposed.name)
        self._open(dialog, taken)

    def _open(self, dialog: QtWidgets.QFileDialog, taken: PathTaken) -> None:
        dialog.fileSelected.connect(lambda name: taken(Path(name)))
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()
