"""Which of the recordings kept with the plan are meant, or files beside them."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
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
_SIZE_PX = (520.0, 420.0)


class RunChoice(QDialog):
    """Boxes to tick, the long runs ticked; *taken* gets those that are, *files* asks for files."""

    def __init__(
        self,
        recordings: Sequence[KeptRecording],
        words: Words,
        use: str,
        taken: Callable[[tuple[KeptRecording, ...]], None],
        files: Callable[[], None],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._recordings, self._taken, self._files = tuple(recordings), taken, files
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Which runs?"))
        set_topic(self, "fit from my runs")
        intro = QLabel(
            self.tr(
                "Long runs and races of the last months say most. Untick what was ill or lost."
            ),
            self,
        )
        intro.setWordWrap(True)
        dress(intro, Pt.TEXT, theme().colours.ink)
        self.list = QListWidget(self)
        self.list.setAccessibleName(self.tr("Recordings"))
        for recording in reversed(self._recordings):
            self.list.addItem(self._item(recording, words))
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel, self)
        self.use = buttons.addButton(use, QDialogButtonBox.ButtonRole.AcceptRole)
        other = buttons.addButton(self.tr("&Files…"), QDialogButtonBox.ButtonRole.ActionRole)
        other.clicked.connect(self._on_files)
        buttons.accepted.connect(self._on_used)
        buttons.rejected.connect(self.reject)
        self.list.itemChanged.connect(self._on_ticked)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.APART)
        for widget in (intro, self.list, buttons):
            box.addWidget(widget)
        width, height = (round(theme().px(size)) for size in _SIZE_PX)
        self.resize(width, height)
        self._on_ticked()

    def chosen(self) -> tuple[KeptRecording, ...]:
        """Return the recordings ticked, by their start."""
        items = (self.list.item(n) for n in range(self.list.count()))
        keys = {
            item.data(Qt.ItemDataRole.UserRole)
            for item in items
            if item.checkState() is Qt.CheckState.Checked
        }
        return tuple(r for r in self._recordings if r.key in keys)

    def _item(self, recording: KeptRecording, words: Words) -> QListWidgetItem:
        start = recording.start
        day = NONE if start is None else words.day_and_year(start.date())
        text = self.tr("{0}  {1}, {2}, {3}").format(
            day,
            recording.name or recording.file,
            words.distance(recording.distance_m, 1),
            words.duration(recording.moving_s),
        )
        item = QListWidgetItem(text)
        item.setData(Qt.ItemDataRole.UserRole, recording.key)
        is_long = recording.moving_s >= LONG_S
        item.setCheckState(Qt.CheckState.Checked if is_long else Qt.CheckState.Unchecked)
        return item

    @Slot()
    def _on_ticked(self) -> None:
        self.use.setEnabled(bool(self.chosen()))

    @Slot()
    def _on_used(self) -> None:
        chosen = self.chosen()
        self.accept()
        self._taken(chosen)

    @Slot()
    def _on_files(self) -> None:
        self.reject()
        self._files()
