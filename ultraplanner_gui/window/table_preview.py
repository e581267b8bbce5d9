"""What a paste would change, line by line under the table, before anything happens."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.widgets.table import TableModel
from ultraplanner_gui.widgets.table_column import Column
from ultraplanner_gui.widgets.table_view import TableView
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window.table_paste import Finding, PastePlan
from ultraplanner_gui.wording.words import NONE, Words

HEAD_PT = Pt.LARGE
NOTE_PT = Pt.NOTE

COLUMNS: tuple[Column[Finding], ...] = (
    Column(QT_TRANSLATE_NOOP("Tables", "Row"), text=lambda found, words: found.where),
    Column(QT_TRANSLATE_NOOP("Tables", "Column"), text=lambda found, words: found.head or NONE),
    Column(QT_TRANSLATE_NOOP("Tables", "Now"), text=lambda found, words: found.now or NONE),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Becomes"),
        text=lambda found, words: found.becomes or NONE,
        warns=lambda found: found.reason is not None,
        is_main=True,
    ),
    Column(
        QT_TRANSLATE_NOOP("Tables", "Not taken, because"),
        text=lambda found, words: "" if found.reason is None else words.say(found.reason),
        is_wide=True,
    ),
)


class PastePreview(QFrame):
    """Lists what a paste would do; `agreed` says to do it, `dropped` not to.

    `pointed` carries row and column of the line the user went to.
    """

    agreed = Signal()
    dropped = Signal()
    pointed = Signal(str, int)

    def __init__(self, words: Callable[[], Words], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = words
        self.head = QLabel("", self)
        self.head.setWordWrap(True)
        self.note = QLabel("", self)
        self.note.setWordWrap(True)
        self.table = TableModel(COLUMNS, words, _nothing, parent=self)
        self.view = TableView(self.table, self.tr("What the paste changes"), self)
        self.change = QPushButton(self)
        self.cancel = QPushButton(self.tr("Cancel"), self)
        self.change.setDefault(True)
        self.change.clicked.connect(self.agreed)
        self.cancel.clicked.connect(self.dropped)
        self.view.escaped.connect(self.dropped)
        self.view.row_chosen.connect(self._on_chosen)
        self._lay_out()
        theme().changed.connect(self._dress)
        self._dress()

    def show_plan(self, plan: PastePlan) -> None:
        """List what *plan* would do."""
        self.head.setText(self._headline(plan))
        self.change.setText(self._deed(plan))
        self.change.setEnabled(bool(plan.edits))
        self.change.setAccessibleDescription(self.head.text())
        notes = " ".join(self._words().say(note) for note in plan.notes)
        self.note.setText(notes)
        self.note.setVisible(bool(notes))
        self.view.show_rows(plan.findings)
        self.view.setColumnHidden(len(COLUMNS) - 1, not plan.refused)
        self.view.fit_columns()
        self.view.scrollToTop()

    def start(self) -> None:
        """Come into sight with the keys on what is likely wanted."""
        self.show()
        (self.change if self.change.isEnabled() else self.cancel).setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.dropped.emit()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            (self.cancel if self.cancel.hasFocus() else self.change).click()
        else:
            super().keyPressEvent(event)

    def _headline(self, plan: PastePlan) -> str:
        parts = []
        if plan.cells:
            text = (
                self.tr("The paste would change 1 cell.")
                if plan.cells == 1
                else self.tr("The paste would change {0} cells.")
            )
            parts.append(text.format(self._words().number(plan.cells)))
        if plan.new_rows:
            text = (
                self.tr("It would add 1 row.")
                if plan.new_rows == 1
                else self.tr("It would add {0} rows.")
            )
            parts.append(text.format(self._words().number(plan.new_rows)))
        refused = len(plan.refused)
        if refused:
            text = (
                self.tr("1 entry cannot be taken and is left as it is.")
                if refused == 1
                else self.tr("{0} entries cannot be taken and are left as they are.")
            )
            parts.append(text.format(self._words().number(refused)))
        return " ".join(parts)

    def _deed(self, plan: PastePlan) -> str:
        cells, rows = self._words().number(plan.cells), self._words().number(plan.new_rows)
        change = self.tr("Change 1 cell") if plan.cells == 1 else self.tr("Change {0} cells")
        if not plan.new_rows:
            return change.format(cells)
        if not plan.cells:
            text = self.tr("Add 1 row") if plan.new_rows == 1 else self.tr("Add {0} rows")
            return text.format(rows)
        text = self.tr("{0}, add 1 row") if plan.new_rows == 1 else self.tr("{0}, add {1} rows")
        return text.format(change.format(cells), rows)

    def _lay_out(self) -> None:
        foot = QHBoxLayout()
        foot.setSpacing(Space.CLOSE)
        foot.addWidget(self.change)
        foot.addWidget(self.cancel)
        foot.addSpacing(10)
        foot.addWidget(self.note, 1)
        foot.addStretch()
        box = QVBoxLayout(self)
        box.setContentsMargins(0, Space.NEAR, 0, 0)
        box.setSpacing(Space.NEAR)
        box.addWidget(self.head)
        box.addWidget(self.view, 1)
        box.addLayout(foot)

    @Slot(str)
    def _on_chosen(self, key: str) -> None:
        row = self.table.row_of(key)
        found = self.table.thing(row) if row >= 0 else None
        if isinstance(found, Finding) and found.row:
            self.pointed.emit(found.row, found.column)

    @Slot()
    def _dress(self) -> None:
        look = theme()
        dress(self.head, HEAD_PT, look.colours.ink, bold=True)
        dress(self.note, NOTE_PT, look.colours.soft)


def _nothing(edit: Edit) -> bool:
    return False
