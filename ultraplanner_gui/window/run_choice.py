"""Which recordings are meant: of those kept with the plan, and of files beside them."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QDialogButtonBox,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording.words import NONE, Words

#: Runs shorter than this say little of a long race; they are not ticked at first (own rule).
LONG_S = 2.0 * 3600.0
_SIZE_PX = (560.0, 440.0)

Recordings = tuple[KeptRecording, ...]


class RunChoice(QDialog):
    """Boxes to tick, the long runs ticked; files come in ticked when they are read.

    *taken* gets the recordings ticked, and those of them that are to be kept with the plan;
    who asks for files when `files` is clicked gives what is in them to `add`.
    """

    def __init__(
        self,
        recordings: Sequence[KeptRecording],
        words: Words,
        use: str,
        taken: Callable[[Recordings, Recordings], None],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._recordings, self._words, self._taken = list(recordings), words, taken
        self._kept = frozenset(r.key for r in recordings)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Which runs?"))
        set_topic(self, "fit from my runs")
        intro = self._label(
            self.tr("Long runs and races of the last months say most. Untick what was ill or lost.")
        )
        self.list = QListWidget(self)
        self.list.setAccessibleName(self.tr("Recordings"))
        set_topic(self.list, "recordings")
        for recording in reversed(self._recordings):
            self.list.addItem(self._item(recording, recording.moving_s >= LONG_S))
        self.read = self._label("")
        self.read.hide()
        self.keep = QCheckBox(self.tr("&Keep the files added with the plan"), self)
        self.keep.hide()
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        for widget in (intro, self.list, self.read, self.keep, self._buttons(use)):
            box.addWidget(widget)
        width, height = (round(theme().px(size)) for size in _SIZE_PX)
        self.resize(width, height)
        self.list.itemChanged.connect(self._on_ticked)
        self._on_ticked()

    def chosen(self) -> Recordings:
        """Return the recordings ticked, those kept first."""
        items = (self.list.item(n) for n in range(self.list.count()))
        keys = {
            item.data(Qt.ItemDataRole.UserRole)
            for item in items
            if item.checkState() is Qt.CheckState.Checked
        }
        return tuple(r for r in self._recordings if r.key in keys)

    def add(self, recordings: Sequence[KeptRecording], said: str) -> None:
        """Put *recordings* of files at the top, ticked, and show what is *said* of the files."""
        there = {r.key for r in self._recordings}
        for recording in recordings:
            if recording.key not in there:
                self._recordings.append(recording)
                self.list.insertItem(0, self._item(recording, True))
        self.read.setText(said)
        self.read.show()
        self.keep.setVisible(len(self._recordings) > len(self._kept))
        self._on_ticked()

    def _buttons(self, use: str) -> QDialogButtonBox:
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        self.use = buttons.addButton(use, QDialogButtonBox.ButtonRole.AcceptRole)
        self.files = buttons.addButton(
            self.tr("Add f&iles…"), QDialogButtonBox.ButtonRole.ActionRole
        )
        self.files.setAutoDefault(False)
        buttons.accepted.connect(self._on_used)
        buttons.rejected.connect(self.reject)
        return buttons

    def _label(self, text: str) -> QLabel:
        label = QLabel(text, self)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setWordWrap(True)
        dress(label, Pt.TEXT, theme().colours.ink)
        return label

    def _item(self, recording: KeptRecording, is_ticked: bool) -> QListWidgetItem:
        start, words = recording.start, self._words
        day = NONE if start is None else words.day_and_year(start.date())
        text = self.tr("{0}  {1}, {2}, {3}").format(
            day,
            recording.name or recording.file,
            words.distance(recording.distance_m, 1),
            words.duration(recording.moving_s),
        )
        if recording.key not in self._kept:
            text = self.tr("{0} (file)").format(text)
        item = QListWidgetItem(text)
        item.setData(Qt.ItemDataRole.UserRole, recording.key)
        item.setCheckState(Qt.CheckState.Checked if is_ticked else Qt.CheckState.Unchecked)
        return item

    @Slot()
    def _on_ticked(self) -> None:
        self.use.setEnabled(bool(self.chosen()))

    @Slot()
    def _on_used(self) -> None:
        chosen = self.chosen()
        to_keep = [r for r in chosen if r.key not in self._kept] if self.keep.isChecked() else []
        self.accept()
        self._taken(chosen, tuple(to_keep))
