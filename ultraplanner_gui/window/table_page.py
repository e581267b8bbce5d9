"""One table with its buttons, and the line under it that says what was refused and why."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import Any

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import (
    QAbstractItemView,
    QApplication,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.message import Message, PlanError
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.table import TableModel
from ultraplanner_gui.widgets.table_column import Aim, Keyed, in_gesture, say
from ultraplanner_gui.widgets.table_filter import FilterField
from ultraplanner_gui.widgets.table_view import TableView
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window.table_paste import NOTHING_NEW, PastePlan, plan_paste
from ultraplanner_gui.window.table_preview import PastePreview
from ultraplanner_gui.window.table_spec import RowDeed, TableSpec
from ultraplanner_gui.window.table_topics import column_tip, column_topics
from ultraplanner_gui.wording.words import Words

NOTE_PT = Pt.NOTE
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
        self.view = TableView(self.table, say(spec.name), self)
        self.filter = FilterField(self.tr("Filter {0}").format(say(spec.name)), words, self)
        self._preview: PastePreview | None = None
        self._pasted: tuple[str, Aim] | None = None
        self._plan: PastePlan | None = None
        self.note = QLabel(self)
        self.note.setWordWrap(True)
        set_topic(self.note, "typing in a table")
        self.buttons: dict[str, QPushButton] = {}
        box = QVBoxLayout(self)
        box.setContentsMargins(SIDE_PX, Space.APART, SIDE_PX, Space.APART)
        box.setSpacing(Space.NEAR)
        box.addWidget(self.view, 2)
        box.addWidget(self._foot())
        self.table.refused.connect(self.refuse)
        self.view.topics = column_topics(spec)
        self.table.tip_of = partial(column_tip, spec)
        self.view.row_chosen.connect(self.chosen)
        self.view.removal_asked.connect(self.remove)
        self.view.pasted.connect(self.paste)
        self.view.escaped.connect(self._on_escaped)
        self.filter.words_changed.connect(self._on_filtered)
        self.filter.left.connect(self._on_filter_left)
        theme().changed.connect(self._dress)
        self._dress()

    @property
    def preview(self) -> PastePreview:
        """Where a paste is shown first; made with the first, as most tables never see one."""
        if self._preview is None:
            self._preview = preview = PastePreview(self._words, self)
            preview.hide()
            preview.agreed.connect(self._on_agreed)
            preview.dropped.connect(self.drop_paste)
            preview.pointed.connect(self._on_pointed)
            box = self.layout()
            assert isinstance(box, QVBoxLayout)
            box.addWidget(preview, 1)
        return self._preview

    def show_outlook(self, outlook: Outlook) -> None:
        """Show the rows of *outlook*."""
        is_first, self._outlook = self._outlook is None, outlook
        self.view.show_rows(self.spec.rows(outlook))
        if is_first and self.spec.opens_at is not None:
            self.view.open_at(self.spec.opens_at(outlook))
        self._say_empty()
        self.filter.show_count(self.table.rowCount(), len(self.table.given))
        self._enable()
        self._say()
        self._plan_again()

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
        known = {row.key for row in self.table.given}
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

    @Slot(str)
    def paste(self, text: str) -> None:
        """Show what pasting *text* would do; a cell alone is taken as if it were typed."""
        if self._outlook is None:
            return
        self._pasted = (text, self.view.paste_aim())
        try:
            plan = self._paste_plan()
        except PlanError as error:
            self.drop_paste()
            self.refuse(error.message)
            return
        if plan.is_one_cell and not plan.new_rows:
            self._paste_one(plan)
        elif plan.findings:
            self._show_plan(plan)
            self.preview.start()
            self._go_to_paste()
        else:
            self.drop_paste()
            self.refuse(plan.notes[0] if plan.notes else Message(NOTHING_NEW))

    @Slot()
    def drop_paste(self) -> None:
        """Forget what was to be pasted."""
        self._pasted = self._plan = None
        self.table.show_marks({})
        if self._preview is None:
            return
        had_keys = self._preview.isAncestorOf(QApplication.focusWidget() or self)
        self._preview.hide()
        self._foot_row.show()
        if had_keys:
            self.view.setFocus()

    def _paste_plan(self) -> PastePlan:
        assert self._outlook is not None
        assert self._pasted is not None
        text, aim = self._pasted
        is_filtered = self.table.is_filtered
        return plan_paste(self.spec, self._outlook, aim, text, self._words(), is_filtered)

    def _paste_one(self, plan: PastePlan) -> None:
        self._pasted = None
        if plan.refused and plan.refused[0].reason is not None:
            self.refuse(plan.refused[0].reason)
        elif plan.edits:
            self._on_edit(plan.edit)

    def _show_plan(self, plan: PastePlan) -> None:
        self._plan = plan
        self.table.show_marks(plan.marks(self._words()))
        self.preview.show_plan(plan)
        self._foot_row.hide()

    def _go_to_paste(self) -> None:
        """Bring the row the paste begins at into sight, once the preview has taken its room."""
        keys = self._pasted[1].keys if self._pasted is not None else ()
        box = self.layout()
        if keys and box is not None:
            box.activate()
            row = self.table.row_of(keys[0])
            self.view.scrollTo(self.table.index(row, 0), QAbstractItemView.ScrollHint.PositionAtTop)

    def _plan_again(self) -> None:
        """Look anew at what is to be pasted, over what the table shows by now."""
        if self._plan is None or self._pasted is None:
            return
        there = {row.key for row in self.table.given}
        if not there.issuperset(self._pasted[1].keys):
            self.drop_paste()
            return
        try:
            self._show_plan(self._paste_plan())
        except PlanError:
            self.drop_paste()

    @Slot()
    def _on_agreed(self) -> None:
        plan = self._plan
        self.drop_paste()
        if plan is not None and plan.edits and self._on_edit(plan.edit):
            self.view.setFocus()

    @Slot(str, int)
    def _on_pointed(self, key: str, column: int) -> None:
        index = self.table.index(self.table.row_of(key), max(column, 0))
        if index.isValid():
            self.view.scrollTo(index)
            self.view.setCurrentIndex(index)

    @Slot(str)
    def _on_filtered(self, text: str) -> None:
        self.table.filter(text)
        self.filter.show_count(self.table.rowCount(), len(self.table.given))
        self._say_empty()
        self._enable()

    @Slot()
    def _on_filter_left(self) -> None:
        self.view.setFocus()
        if not self.view.currentIndex().isValid() and self.table.rowCount():
            self.view.setCurrentIndex(self.table.index(0, 0))

    @Slot()
    def _on_escaped(self) -> None:
        if self._plan is not None:
            self.drop_paste()
        else:
            self.filter.clear()

    def _say_empty(self) -> None:
        if self._outlook is None:
            return
        text = say(self.spec.empty(self._outlook))
        self.view.set_empty_text(
            self.tr("No row holds these words. Esc shows all.") if self.table.given else text
        )

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

    def _foot(self) -> QWidget:
        self._foot_row = QWidget(self)
        row = QHBoxLayout(self._foot_row)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(Space.CLOSE)
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
        return self._foot_row

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
