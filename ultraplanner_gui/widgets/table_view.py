"""The view of a plain table: typing down a column, copying, pasting, sorting, by mouse and keys."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import (
    QEvent,
    QModelIndex,
    QPoint,
    QRectF,
    Qt,
    QTimer,
    Signal,
    Slot,
)
from PySide6.QtGui import (
    QContextMenuEvent,
    QGuiApplication,
    QKeyEvent,
    QKeySequence,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QShowEvent,
)
from PySide6.QtWidgets import (
    QAbstractItemDelegate,
    QAbstractItemView,
    QComboBox,
    QHeaderView,
    QMenu,
    QTableView,
    QWidget,
)

from ultraplanner_gui.widgets.table import Index, TableModel
from ultraplanner_gui.widgets.table_column import Aim, Keyed
from ultraplanner_gui.widgets.table_look import ROW_PX, TICK_PX, TableCells, TableHead
from ultraplanner_gui.widgets.table_text import written
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt

SAMPLE_ROWS = 60
WIDEST_PX = 230.0
LEAST_WIDE_PX = 130.0

Hint = QAbstractItemDelegate.EndEditHint
Standard = QKeySequence.StandardKey
Trigger = QAbstractItemView.EditTrigger


class TableView(QTableView):
    """Shows a `TableModel`.

    `row_chosen` carries the key of the row the user went to, `removal_asked` says that Delete
    was pressed, `escaped` that Esc was, and `pasted` carries what is to be pasted.
    `empty_text` is said where there are no rows.
    """

    #: What the help says of each column.
    topics: tuple[str, ...] = ()

    row_chosen = Signal(str)
    removal_asked = Signal()
    pasted = Signal(str)
    escaped = Signal()

    def __init__(
        self,
        model: TableModel,
        name: str,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._table = model
        self._empty_text = self._opens_at = ""
        self._is_fitted = self._is_showing = self._opens_list = False
        self._head = TableHead(model, self)
        self._cells = TableCells(model, self)
        # Runs out once the layout has given the view its size: before that nothing scrolls.
        self._laid_out = QTimer(self)
        self._laid_out.setSingleShot(True)
        self._laid_out.timeout.connect(self._open)
        self.setHorizontalHeader(self._head)
        self.setItemDelegate(self._cells)
        self.setModel(model)
        self.setAccessibleName(name)
        self.setAlternatingRowColors(True)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.setCornerButtonEnabled(False)
        # Tab goes on to the next widget, as everywhere else (pitfall 33).
        self.setTabKeyNavigation(False)
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectItems)
        self.setEditTriggers(Trigger.DoubleClicked | Trigger.EditKeyPressed | Trigger.AnyKeyPressed)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.verticalHeader().hide()
        self.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self._head.setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
        self.setSortingEnabled(True)
        self.selectionModel().currentRowChanged.connect(self._on_row_changed)
        model.dataChanged.connect(self._widen)
        theme().changed.connect(self._dress)
        self._dress()

    @property
    def empty_text(self) -> str:
        """What is said where there are no rows."""
        return self._empty_text

    def topic_at(self, at: QPoint | None) -> str:
        """Return what the help says of the column at a place, or of the current one."""
        x = 0 if at is None else self.viewport().mapFrom(self, at).x()
        column = self.currentIndex().column() if at is None else self.columnAt(x)
        return self.topics[column] if 0 <= column < len(self.topics) else ""

    def set_empty_text(self, text: str) -> None:
        """Say *text* where there are no rows."""
        self._empty_text = text
        self.setAccessibleDescription("" if self._table.rowCount() else text)
        self.viewport().update()

    def show_rows(self, rows: tuple[Keyed, ...]) -> None:
        """Show *rows*; that the current row moves away is not taken for a choice of the user."""
        self._is_showing = True
        try:
            self._table.show_rows(rows)
        finally:
            self._is_showing = False
        # Where groups begin may have changed beside the cells that did.
        self.viewport().update()
        if rows and not self._is_fitted:
            self.fit_columns()

    def show_row(self, key: str) -> None:
        """Make the row *key* the current one and bring it into sight, if it is there."""
        row = self._table.row_of(key)
        if row < 0 or row == self.currentIndex().row():
            return
        index = self._table.index(row, max(self.currentIndex().column(), 0))
        self._is_showing = True
        try:
            self.setCurrentIndex(index)
            self.scrollTo(index)
        finally:
            self._is_showing = False

    def open_at(self, key: str) -> None:
        """Bring the row *key* into the middle when the table is first seen, without choosing it."""
        self._opens_at = key

    def chosen_keys(self) -> tuple[str, ...]:
        """Return the keys of the rows with a selected cell, from top to bottom."""
        selection = self.selectionModel().selection()
        ranges = [selection.at(number) for number in range(selection.count())]
        rows = {row for chosen in ranges for row in range(chosen.top(), chosen.bottom() + 1)}
        if not rows and self.currentIndex().isValid():
            rows = {self.currentIndex().row()}
        return tuple(self._table.thing(row).key for row in sorted(rows))

    def fit_columns(self) -> None:
        """Give each column the width its head and a sample of its cells need."""
        self._is_fitted = True
        count = self._table.rowCount()
        sample = range(0, count, max(count // SAMPLE_ROWS, 1))
        for column, spec in enumerate(self._table.columns):
            width = self._head.wanted_width(column)
            if spec.is_checked is not None:
                width = max(width, 3 * theme().px(TICK_PX))
            else:
                texts = {self._table.text(row, column) for row in sample}
                width = max(width, *(self._cells.wanted_width(column, t) for t in texts), 0.0)
            width = min(width, theme().px(WIDEST_PX))
            if spec.is_wide:
                width = max(width, theme().px(LEAST_WIDE_PX))
            self.setColumnWidth(column, round(width))
        for column, spec in enumerate(self._table.columns):
            if spec.is_wide:
                self._head.setSectionResizeMode(column, QHeaderView.ResizeMode.Stretch)

    @Slot(QModelIndex, QModelIndex)
    def _widen(self, first: QModelIndex, last: QModelIndex) -> None:
        """Widen columns for what came into their cells from *first* to *last*."""
        if not self._is_fitted:
            return
        most = theme().px(WIDEST_PX)
        rows = range(first.row(), min(last.row(), first.row() + SAMPLE_ROWS) + 1)
        for column in range(first.column(), last.column() + 1):
            spec = self._table.columns[column]
            if spec.is_checked is not None or spec.is_wide:
                continue
            texts = {self._table.text(row, column) for row in rows}
            width = min(max(self._cells.wanted_width(column, t) for t in texts), most)
            if width > self.columnWidth(column):
                self.setColumnWidth(column, round(width))

    # Copying and pasting

    def copied(self) -> str:
        """Return the selected cells as lines of cells parted by tabs, heads first.

        A cell alone comes without its head.
        """
        cells = {(i.row(), i.column()) for i in self.selectedIndexes()}
        if len(cells) < 2:
            return "".join(self._table.copied_text(*cell) for cell in cells)
        rows = sorted({row for row, _ in cells})
        columns = sorted({column for _, column in cells}, key=self._head.visualIndex)
        lines = [[self._table.copied_head(column) for column in columns]]
        for row in rows:
            lines.append(
                [self._table.copied_text(row, c) if (row, c) in cells else "" for c in columns]
            )
        return written(lines)

    @Slot()
    def copy(self) -> None:
        """Put the selected cells on the clipboard."""
        text = self.copied()
        if text:
            QGuiApplication.clipboard().setText(text)

    @Slot()
    def paste(self) -> None:
        """Tell what is on the clipboard, to be pasted from the first selected cell on."""
        if self._paste_start().isValid() or not self._table.rowCount():
            self.pasted.emit(QGuiApplication.clipboard().text())

    def paste_aim(self) -> Aim:
        """Return where a paste goes: the rows and columns in view, from the first selected on."""
        start, order = self._paste_start(), [self._head.logicalIndex(n) for n in self._places()]
        first = self._head.visualIndex(start.column()) if start.isValid() else 0
        rows = self._table.rows[max(start.row(), 0) :]
        return Aim(tuple(row.key for row in rows), first, tuple(order), self._block())

    def _places(self) -> range:
        return range(self._head.count())

    def _block(self) -> tuple[int, int]:
        """Return how many rows and columns are selected, if all cells between them are."""
        chosen = self.selectedIndexes()
        rows = {i.row() for i in chosen}
        columns = {self._head.visualIndex(i.column()) for i in chosen}
        is_whole = chosen and len(chosen) == (max(rows) - min(rows) + 1) * (
            max(columns) - min(columns) + 1
        )
        return (len(rows), len(columns)) if is_whole else (1, 1)

    def _paste_start(self) -> QModelIndex:
        chosen = self.selectedIndexes()
        if not chosen:
            return self.currentIndex()
        column = min((i.column() for i in chosen), key=self._head.visualIndex)
        return self._table.index(min(i.row() for i in chosen), column)

    # Keys, menu, editing

    def event(self, event: QEvent) -> bool:
        is_key = isinstance(event, QKeyEvent) and self._is_own_key(event)
        if is_key and event.type() is QEvent.Type.ShortcutOverride:
            # Keys that mean something else in the main menu belong to the table here.
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        current = self.currentIndex()
        if self.state() is QAbstractItemView.State.EditingState:
            # The field being typed in passes on what it has no use for, Enter among it.
            super().keyPressEvent(event)
        elif event.matches(Standard.Copy):
            self.copy()
        elif event.matches(Standard.Paste):
            self.paste()
        elif event.matches(Standard.Delete):
            self.removal_asked.emit()
        elif event.key() == Qt.Key.Key_Escape:
            self.escaped.emit()
        elif (
            (event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and current.isValid())
            or (event.key() == Qt.Key.Key_F2 and current.isValid())
            or (event.key() == Qt.Key.Key_Space and _is_tick(self._table, current))
        ):
            self._edit_or_toggle(current)
        else:
            super().keyPressEvent(event)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        current = self.currentIndex()
        if not current.isValid():
            return
        at = event.globalPos()
        if event.reason() is QContextMenuEvent.Reason.Keyboard:
            at = self.viewport().mapToGlobal(self.visualRect(current).bottomLeft())
        self._menu(current.column()).popup(at)

    def closeEditor(self, editor: QWidget, hint: Hint) -> None:
        key = self._current_key()
        super().closeEditor(editor, Hint.NoHint)
        if self._table.was_refused or hint in (Hint.NoHint, Hint.RevertModelCache):
            return
        if hint is Hint.SubmitModelCache:
            self._go_down(key)
        else:
            self._edit_beside(1 if hint is Hint.EditNextItem else -1)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._laid_out.start()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        super().mouseDoubleClickEvent(event)
        self._opens_list = True

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        super().mouseReleaseEvent(event)
        # Opened before the release, the list would take it for a choice.
        if self._opens_list:
            self._opens_list = False
            self._open_list(self.currentIndex())

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if self._table.rowCount() or not self._empty_text:
            return
        painter, look = QPainter(self.viewport()), theme()
        painter.setFont(look.font(Pt.LARGE))
        painter.setPen(look.colours["soft"])
        flags = int(Qt.AlignmentFlag.AlignCenter) | int(Qt.TextFlag.TextWordWrap)
        room = QRectF(self.viewport().rect().adjusted(40, 0, -40, 0))
        painter.drawText(room, flags, self._empty_text)
        painter.end()

    def _is_own_key(self, event: QKeyEvent) -> bool:
        is_standard = any(
            event.matches(key) for key in (Standard.Copy, Standard.Paste, Standard.Delete)
        )
        return is_standard or event.key() in (Qt.Key.Key_F2, Qt.Key.Key_Return, Qt.Key.Key_Enter)

    def _edit_or_toggle(self, index: QModelIndex) -> None:
        if not self._table.can_edit(index.row(), index.column()):
            return
        if _is_tick(self._table, index):
            role = Qt.ItemDataRole.CheckStateRole
            is_on = Qt.CheckState(index.data(role)) is Qt.CheckState.Checked
            state = Qt.CheckState.Unchecked if is_on else Qt.CheckState.Checked
            self._table.setData(index, state, role)
        else:
            self.edit(index)
            self._open_list(index)

    def _open_list(self, index: QModelIndex) -> None:
        editor = self.indexWidget(index)
        if isinstance(editor, QComboBox):
            editor.showPopup()

    def _go_down(self, key: str) -> None:
        """Go to the cell below, as in a spreadsheet, unless sorting has carried the row away."""
        current = self.currentIndex()
        row = current.row()
        if row + 1 < self._table.rowCount() and self._current_key() == key:
            self.setCurrentIndex(self._table.index(row + 1, current.column()))

    def _edit_beside(self, step: int) -> None:
        """Edit the next cell of the row that can be typed over, or the one before."""
        current = self.currentIndex()
        place = self._head.visualIndex(current.column()) + step
        while 0 <= place < self._head.count():
            column = self._head.logicalIndex(place)
            if self._table.can_edit(current.row(), column):
                index = self._table.index(current.row(), column)
                self.setCurrentIndex(index)
                if not _is_tick(self._table, index):
                    self.edit(index)
                return
            place += step

    def _menu(self, column: int) -> QMenu:
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        menu.addAction(self.tr("Copy"), self.copy)
        menu.addAction(self.tr("Paste…"), self.paste)
        menu.addSeparator()
        name = self._table.head_parts(column)[0]
        for text, order in (
            (self.tr("Sort by {0}, rising").format(name), Qt.SortOrder.AscendingOrder),
            (self.tr("Sort by {0}, falling").format(name), Qt.SortOrder.DescendingOrder),
        ):
            menu.addAction(text, partial(self.sortByColumn, column, order))
        rising = Qt.SortOrder.AscendingOrder
        menu.addAction(self.tr("Do not sort"), partial(self.sortByColumn, -1, rising))
        return menu

    def _current_key(self) -> str:
        row = self.currentIndex().row()
        return self._table.thing(row).key if row >= 0 else ""

    @Slot()
    def _open(self) -> None:
        row = self._table.row_of(self._opens_at) if self._opens_at else -1
        self._opens_at = ""
        if row >= 0 and not self.currentIndex().isValid():
            middle = QAbstractItemView.ScrollHint.PositionAtCenter
            self.scrollTo(self._table.index(row, 0), middle)

    @Slot(QModelIndex, QModelIndex)
    def _on_row_changed(self, current: QModelIndex, previous: QModelIndex) -> None:
        self.viewport().update()
        if current.isValid() and not self._is_showing:
            self.row_chosen.emit(self._table.thing(current.row()).key)

    @Slot()
    def _dress(self) -> None:
        self.verticalHeader().setDefaultSectionSize(round(theme().px(ROW_PX)))
        if self._is_fitted:
            self.fit_columns()
        self._head.updateGeometry()
        self.viewport().update()


def _is_tick(model: TableModel, index: Index) -> bool:
    return index.isValid() and model.columns[index.column()].is_checked is not None
