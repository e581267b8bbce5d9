"""One table with its buttons, and the line under it that says what was refused and why."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import Any

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.message import Message, PlanError
from ultraplanner_gui.widgets.table import Keyed, TableModel, in_gesture, say
from ultraplanner_gui.widgets.table_view import TableView
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.window.table_spec import RowDeed, TableSpec
from ultraplanner_gui.window.table_topics import column_tip, column_topics
from ultraplanner_gui.wording.words import Words

NOTE_PT = 8.0
SIDE_PX = 14


class TablePage(QWidget):
    """Shows the rows of one `TableSpec`; `chosen` carries the key of the row the user went to."""

    chosen = Signal(str)

    def __init__(
        self,
        spec: TableSpec[Any],
        words: Callable[[], Words],
        perform: Callable[[Edit], bool],
        new_gesture: Callable[[], int],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.spec = spec
        self._words, self._perform, self._new_gesture = words, perform, new_gesture
        self._outlook: Outlook | None = None
        self._refusal = ""
        self.table = TableModel(spec.columns, words, self._on_edit, spec.group, self)
        self.view = TableView(self.table, say(spec.name), new_gesture, self)
        self.note = QLabel(self)
        self.note.setWordWrap(True)
        self.buttons: dict[str, QPushButton] = {}
        box = QVBoxLayout(self)
        box.setContentsMargins(SIDE_PX, 10, SIDE_PX, 10)
        box.setSpacing(8)
        box.addWidget(self.view, 1)
        box.addLayout(self._foot())
        self.table.refused.connect(self.refuse)
        self.view.topics = column_topics(spec)
        self.table.tip_of = partial(column_tip, spec)
        self.view.row_chosen.connect(self.chosen)
        self.view.removal_asked.connect(self.remove)
        theme().changed.connect(self._dress)
        self._dress()

    def show_outlook(self, outlook: Outlook) -> None:
        """Show the rows of *outlook*."""
        is_first, self._outlook = self._outlook is None, outlook
        self.view.show_rows(self.spec.rows(outlook))
        if is_first and self.spec.opens_at is not None:
            self.view.open_at(self.spec.opens_at(outlook))
        self.view.set_empty_text(say(self.spec.empty(outlook)))
        self._enable()
        self._say()

    @Slot(object)
    def refuse(self, message: Message) -> None:
        """Say under the table why something cannot be done; it stays until something is."""
        self._refusal = self._words().say(message)
        self._say()

    @Slot()
    def add(self) -> None:
        """Add a row and go to it."""
        if self.spec.add is None or self._outlook is None:
            return
        known = {row.key for row in self.table.rows}
        try:
            edit = self.spec.add(self._outlook, self._current())
        except PlanError as error:
            self.refuse(error.message)
            return
        if edit is not None and self._on_edit(edit):
            new = next((row.key for row in self.table.rows if row.key not in known), "")
            self.view.show_row(new)
            self.view.setFocus()
            if new:
                self.chosen.emit(new)

    @Slot()
    def remove(self) -> None:
        """Remove what the selected rows show, as one step."""
        if self.spec.remove is None:
            return
        before = [row.key for row in self.table.rows]
        place = min((before.index(key) for key in self.view.chosen_keys()), default=0)
        self._do_to_chosen(self.spec.remove)
        left = self.table.rows
        if left and len(left) < len(before):
            self.view.show_row(left[min(place, len(left) - 1)].key)
            self.chosen.emit(left[min(place, len(left) - 1)].key)

    def _do_to_chosen(self, edit_of: Callable[[Any], Edit | None]) -> None:
        """Perform an edit for each selected row; all of them are one step of the undo list."""
        gesture, refusals = self._new_gesture(), ""
        for key in self.view.chosen_keys():
            row = self.table.row_of(key)
            edit = edit_of(self.table.thing(row)) if row >= 0 else None
            if edit is not None and not self._on_edit(in_gesture(edit, gesture)):
                refusals = self._refusal
        self._refusal = refusals
        self._say()

    @Slot()
    def _on_deed(self, deed: RowDeed[Any]) -> None:
        self._do_to_chosen(deed.edit)

    def _on_edit(self, edit: Edit) -> bool:
        self._refusal = ""
        was_taken = self._perform(edit)
        self._say()
        return was_taken

    def _current(self) -> Keyed | None:
        row = self.view.currentIndex().row()
        return self.table.thing(row) if row >= 0 else None

    def _foot(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(6)
        if self.spec.add is not None:
            self._button(row, "add", self.tr("Add"), say(self.spec.add_tip), self.add)
        if self.spec.remove is not None:
            tip = self.tr("Remove what the selected rows show (Delete)")
            self._button(row, "remove", self.tr("Remove"), tip, self.remove)
        for deed in self.spec.deeds:
            slot = partial(self._on_deed, deed)
            self._button(row, deed.text, say(deed.text), say(deed.tip), slot)
        row.addSpacing(10)
        row.addWidget(self.note, 1)
        return row

    def _button(
        self, row: QHBoxLayout, name: str, text: str, tip: str, slot: Callable[[], None]
    ) -> None:
        button = QPushButton(text, self)
        button.setToolTip(tip)
        button.setAccessibleDescription(tip)
        button.clicked.connect(slot)
        self.buttons[name] = button
        row.addWidget(button)

    def _enable(self) -> None:
        outlook = self._outlook
        has_rows = self.table.rowCount() > 0
        for name, button in self.buttons.items():
            button.setEnabled(has_rows if name != "add" else self._can_add(outlook))

    def _can_add(self, outlook: Outlook | None) -> bool:
        if outlook is None:
            return False
        return outlook.project.course is not None or not self.spec.needs_course

    def _say(self) -> None:
        """Say what was refused, else what is wrong with the plan, else how the table works."""
        trouble = self._outlook.trouble if self._outlook and self.spec.shows_trouble else None
        text = self._refusal or (self._words().say(trouble) if trouble is not None else "")
        colour = theme().colours.clay if text else theme().colours.soft
        self.note.setText(text or say(self.spec.hint))
        self.note.setStyleSheet(f"color: {colour}")
        self.note.setAccessibleName(self.note.text())

    @Slot()
    def _dress(self) -> None:
        self.note.setFont(theme().font(NOTE_PT))
        self._say()
