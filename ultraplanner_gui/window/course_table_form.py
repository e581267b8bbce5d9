"""The form for a course of which only figures are known: a table, typed or pasted, and its look."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

from PySide6.QtCore import QItemSelectionModel, QSize, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent, QKeySequence, QShortcut, QShowEvent
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.edits.edit import Edit
from ultraplanner_gui.engine.profile import Profile, build_profile
from ultraplanner_gui.exchange.course_rows import CourseTable
from ultraplanner_gui.exchange.course_table import course_of
from ultraplanner_gui.exchange.course_text import read_table
from ultraplanner_gui.exchange.table_heads import layout_of
from ultraplanner_gui.exchange.table_text import lines_of
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.plan.message import Message, PlanError
from ultraplanner_gui.widgets.help_topic import set_topics
from ultraplanner_gui.widgets.table import TableModel
from ultraplanner_gui.widgets.table_view import TableView
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window import course_form_rows as form_rows
from ultraplanner_gui.window.course_form_rows import AT, COLUMNS, CUTOFF, LEG, NAME, Rows
from ultraplanner_gui.window.schematic_view import SchematicView
from ultraplanner_gui.wording.words import Words

SIZE_PX = (980.0, 700.0)
STEPS_HELD = 100
#: What the help says of each column.
TOPICS = (
    *("aid station", "course table", "section", "climb and drop", "climb and drop", "profile"),
    *("cutoff", "planned stop", "what is there"),
)
LEAST_PX = {NAME: 190.0, AT: 72.0, LEG: 64.0, CUTOFF: 92.0}


class CourseTableForm(QDialog):
    """Holds the rows of a course that is not made yet.

    `start_of` proposes the start of a race on a table, by which its cutoffs are checked.
    `gone_on` carries the `CourseTable` with its course and profile once the user goes on.
    """

    gone_on = Signal(object, object, object)

    def __init__(
        self,
        words: Callable[[], Words],
        start_of: Callable[[CourseTable], datetime],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._words, self._start_of = words, start_of
        self._rows: Rows = ()
        self._earlier: list[Rows] = []
        self._notes: tuple[Message, ...] = ()
        self._trouble = self._refusal = ""
        self._result: tuple[CourseTable, Course, Profile] | None = None
        self.setWindowTitle(self.tr("Course from a table"))
        self.name = QLineEdit(self)
        self.name.setPlaceholderText(self.tr("What the race is called"))
        self.table = _FormModel(self)
        self.view = _Places(self.table, self.tr("Places of the course"), self)
        self.view.setSortingEnabled(False)
        self.view.topics = TOPICS
        set_topics({self: "course table", self.name: "race name", self.view: "course table"})
        self.view.verticalHeader().show()
        self.profile = SchematicView(self)
        self._hint, self._totals, self._note, self._complaint = (QLabel("", self) for _ in range(4))
        set_topics({self.profile: "profile", self._totals: "course table"})
        self.buttons: dict[str, QPushButton] = {}
        self._lay_out()
        self._connect()
        wanted = QSize(*(round(theme().px(side)) for side in SIZE_PX))
        self.resize(wanted if parent is None else wanted.boundedTo(parent.window().size()))
        self._dress()
        self.clear()

    # What is in it

    @property
    def rows(self) -> Rows:
        """The rows as they stand."""
        return self._rows

    def words(self) -> Words:
        """Return the units and language in use."""
        return self._words()

    def clear(self) -> None:
        """Begin with an empty table."""
        self.name.clear()
        self._earlier.clear()
        self._notes = ()
        self._show_rows(form_rows.first_rows(self.tr("Start"), self.tr("Finish")))

    def take_text(self, text: str) -> bool:
        """Fill the table from *text*; return whether it could be read, having said why if not."""
        try:
            table = read_table(text, self._words())
        except PlanError as error:
            self.refuse(error.message)
            return False
        if table.name and not self.name.text().strip():
            self.name.setText(table.name)
        self._notes = table.notes
        self._change(form_rows.rows_of(table.rows))
        self._go_to(1)
        return True

    def type_in(self, row: int, column: int, text: str) -> bool:
        """Take *text* as typed into a cell; return whether it was taken."""
        try:
            rows = form_rows.typed(self._rows, row, column, text, self._words())
        except PlanError as error:
            self.refuse(error.message)
            return False
        self._change(rows)
        return True

    @Slot(object)
    def refuse(self, message: Message) -> None:
        """Say why something cannot be done; it stays until something is."""
        self._refusal = self._words().say(message)
        self._say()

    # What the buttons and keys do

    @Slot()
    def add(self) -> None:
        """Add a row under the current one and go to it."""
        row = max(self.view.currentIndex().row(), 0)
        self._change(form_rows.with_new(self._rows, row))
        row = min(row + 1, len(self._rows) - 2)
        self._go_to(row)
        self.view.setFocus()

    @Slot()
    def remove(self) -> None:
        """Remove the selected rows; start and finish are emptied."""
        row = self.view.currentIndex().row()
        self._change(form_rows.without(self._rows, set(self.view.chosen_keys())))
        self._go_to(min(row, len(self._rows) - 1))

    @Slot()
    def undo(self) -> None:
        """Take back the last change of the table."""
        if self._earlier:
            self._refusal = ""
            self._show_rows(self._earlier.pop())

    @Slot(str)
    def paste(self, text: str) -> None:
        """Take a whole table where *text* is one, else type its cells in from the current one."""
        try:
            lines = lines_of(text)
        except PlanError as error:
            self.refuse(error.message)
            return
        is_block = len(lines) > 1 or len(lines[0].cells) > 1
        if layout_of(lines) is not None or (is_block and form_rows.is_untouched(self._rows)):
            self.take_text(text)
        else:
            self._paste_cells([line.cells for line in lines])

    @Slot()
    def go_on(self) -> None:
        """Go on with the course, or to what keeps it from being one."""
        if self._result is None:
            self._say()
            self.view.setFocus()
        else:
            self.gone_on.emit(*self._result)

    def showEvent(self, event: QShowEvent) -> None:
        # Units may have been changed since it was last seen.
        self._show_rows(self._rows)
        super().showEvent(event)
        self.view.setFocus()
        if not self.view.currentIndex().isValid():
            self._go_to(1)

    # Inside

    def _go_to(self, row: int) -> None:
        # Not by the view: while Ctrl is down it would add the cell to those selected.
        flag = QItemSelectionModel.SelectionFlag.ClearAndSelect
        self.view.selectionModel().setCurrentIndex(self.table.index(row, NAME), flag)

    def _paste_cells(self, lines: list[tuple[str, ...]]) -> None:
        """Type cells in from the current one on, adding rows for them; all of them or none."""
        current = self.view.currentIndex()
        first, left = max(current.row(), 0), max(current.column(), 0)
        rows = self._rows
        missing = first + len(lines) - len(rows)
        if missing > 0:
            rows = form_rows.with_new(rows, len(rows) - 2, missing)
        try:
            for row, cells in enumerate(lines, first):
                for column, text in enumerate(cells[: len(COLUMNS) - left], left):
                    if COLUMNS[column].can_edit(rows[row]):
                        rows = form_rows.typed(rows, row, column, text, self._words())
        except PlanError as error:
            self.refuse(error.message)
            return
        self._change(rows)

    def _change(self, rows: Rows) -> None:
        self._refusal = ""
        if rows != self._rows:
            self._earlier = [*self._earlier, self._rows][-STEPS_HELD:]
        self._show_rows(rows)

    def _show_rows(self, rows: Rows) -> None:
        self._rows = rows
        self.view.show_rows(rows)
        self._fit()
        self._renew()

    def _fit(self) -> None:
        """Give the columns the room their cells need, and names and cutoffs some to begin with."""
        self.view.fit_columns()
        for column, least_px in LEAST_PX.items():
            width = max(self.view.columnWidth(column), round(theme().px(least_px)))
            self.view.setColumnWidth(column, width)

    @Slot()
    def _renew(self) -> None:
        """Draw the course the rows make, or say what is in the way."""
        table = form_rows.table_of(self._rows, self.name.text().strip())
        table = CourseTable(table.rows, table.name, self._notes)
        self._result, self._trouble = None, ""
        if form_rows.is_untouched(self._rows):
            self.profile.show_nothing(self.tr("The profile appears here as you type."))
            self._say()
            return
        try:
            course = course_of(table, self._start_of(table))
        except PlanError as error:
            self._trouble = self._words().say(error.message)
            self.profile.show_nothing(self.tr("No course yet."))
        else:
            profile = build_profile(course)
            self._result = table, course, profile
            self.profile.show_profile(profile, course.stations, self._words())
        self._say()

    def _say(self) -> None:
        """Say the totals, what was made up, and what was refused or is in the way."""
        words, totals, notes = self._words(), "", ""
        if self._result is not None:
            _, course, profile = self._result
            parts = [words.distance(course.length_m, 1)]
            if profile.has_elevation:
                parts += [
                    self.tr("climb {0}").format(words.height(profile.ascent_m)),
                    self.tr("drop {0}").format(words.height(profile.descent_m)),
                ]
            count = len(course.stations)
            parts.append(
                self.tr("1 aid station")
                if count == 1
                else self.tr("{0} aid stations").format(words.number(count))
            )
            totals = "   ·   ".join(parts)
            # The last says that all is schematic, and of where light is: asked for only later.
            notes = " ".join(words.say(repair) for repair in course.repairs[:-1])
        self._totals.setText(totals)
        self._note.setText(
            notes or self.tr("Hills and line are schematic: as long and as high as typed.")
        )
        self._complaint.setText(self._refusal or self._trouble)
        self._complaint.setVisible(bool(self._refusal or self._trouble))
        self.view.setAccessibleDescription(self._complaint.text())
        self.profile.setAccessibleDescription(totals)
        self.buttons["undo"].setEnabled(bool(self._earlier))

    def _lay_out(self) -> None:
        name = QHBoxLayout()
        label = QLabel(self.tr("&Name"), self)
        label.setBuddy(self.name)
        name.addWidget(label)
        name.addWidget(self.name, 1)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.EDGE, Space.WIDE, Space.EDGE, Space.WIDE)
        box.setSpacing(Space.NEAR)
        self._hint.setText(
            self.tr(
                "One row to each place with its distance from the start; the last is the finish. "
                "Type it, or paste a table from a spreadsheet or a web page, heads and all."
            )
        )
        for text in (self._hint, self._note, self._complaint):
            text.setWordWrap(True)
        box.addWidget(self._hint)
        box.addLayout(name)
        box.addWidget(self.view, 3)
        box.addLayout(self._row_buttons())
        box.addWidget(self._complaint)
        box.addWidget(self.profile, 2)
        box.addWidget(self._totals)
        box.addWidget(self._note)
        box.addWidget(self._send_buttons())

    def _row_buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(Space.CLOSE)
        keys = self.tr("Ctrl+Enter"), self.tr("Delete"), self.tr("Ctrl+V"), self.tr("Ctrl+Z")
        for (key, text, tip, slot), shortcut in zip(
            (
                ("add", self.tr("&Add a row"), self.tr("Add a row under this one"), self.add),
                ("remove", self.tr("&Remove"), self.tr("Remove the selected rows"), self.remove),
                ("paste", self.tr("&Paste"), self.tr("Paste a table or cells"), self.view.paste),
                ("undo", self.tr("&Undo"), self.tr("Take back the last change"), self.undo),
            ),
            keys,
            strict=True,
        ):
            tip = f"{tip} ({shortcut})"
            button = QPushButton(text, self)
            button.setToolTip(tip)
            button.setAccessibleDescription(tip)
            button.setAutoDefault(False)
            button.clicked.connect(slot)
            self.buttons[key] = button
            row.addWidget(button)
        row.addStretch(1)
        return row

    def _send_buttons(self) -> QDialogButtonBox:
        buttons = QDialogButtonBox(self)
        send = buttons.addButton(self.tr("&Go on…"), QDialogButtonBox.ButtonRole.AcceptRole)
        send.setDefault(True)
        self.buttons["go on"] = send
        buttons.addButton(QDialogButtonBox.StandardButton.Close)
        buttons.accepted.connect(self.go_on)
        buttons.rejected.connect(self.reject)
        return buttons

    def _connect(self) -> None:
        self.view.pasted.connect(self.paste)
        self.view.removal_asked.connect(self.remove)
        self.view.escaped.connect(self.reject)
        self.name.editingFinished.connect(self._renew)
        self.view.row_wanted.connect(self.add)
        back = QShortcut(QKeySequence(QKeySequence.StandardKey.Undo), self.view)
        back.setContext(Qt.ShortcutContext.WidgetShortcut)
        back.activated.connect(self.undo)
        theme().changed.connect(self._dress)

    @Slot()
    def _dress(self) -> None:
        c = theme().colours
        self.view.verticalHeader().setStyleSheet(
            f"QHeaderView::section {{ background: {c.lane}; color: {c.soft}; border: 0; }}"
        )
        dress(self._hint, Pt.TEXT, c.soft)
        dress(self._note, Pt.LABEL, c.soft)
        dress(self._totals, Pt.LARGE, c.ink, bold=True)
        dress(self._complaint, Pt.TEXT, c.clay)


class _Places(TableView):
    """The table of the form; `row_wanted` says that Ctrl+Enter was pressed."""

    row_wanted = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        is_enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        if is_enter and event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.row_wanted.emit()
        else:
            super().keyPressEvent(event)


class _FormModel(TableModel):
    """A table of rows that are in no project yet: what is typed goes to the form."""

    def __init__(self, form: CourseTableForm) -> None:
        super().__init__(COLUMNS, form.words, _no_edit, parent=form)
        self._form = form

    def can_edit(self, row: int, column: int) -> bool:
        return COLUMNS[column].can_edit(self._form.rows[row])

    def type_in(self, row: int, column: int, text: str, gesture: int = 0) -> bool:
        self.was_refused = False
        if not self.can_edit(row, column):
            return False
        if text.strip() != self.text(row, column):
            self.was_refused = not self._form.type_in(row, column, text)
        return not self.was_refused


def _no_edit(edit: Edit) -> bool:
    raise AssertionError("the rows of this form are changed by no edit")
