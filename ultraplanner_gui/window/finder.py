"""One list of everything, searched by words: what can be done and what there is to go to."""

from __future__ import annotations

from collections.abc import Sequence

import shiboken6
from PySide6.QtCore import (
    QAbstractListModel,
    QEvent,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QRectF,
    QSize,
    Qt,
    Slot,
)
from PySide6.QtGui import QKeyEvent, QPainter
from PySide6.QtWidgets import (
    QApplication,
    QFrame,
    QLabel,
    QLineEdit,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.lane import Align, draw_text
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window.finder_index import Entry, EntryIndex, Source

TEXT_PT = Pt.STRONG
SMALL_PT = Pt.LABEL
WIDTH_PX = 660.0
ROW_PX = 24.0
MOST_ROWS = 14
KIND_PX = 78.0
PAD_PX = 10.0
TOP_PX = 46.0

Index = QModelIndex | QPersistentModelIndex
Role = Qt.ItemDataRole


class Finder(QFrame):
    """A panel over the window. `add_source` gives it more to find.

    Keys: the arrows choose, Enter does it or goes there, Esc closes and gives the keys back.
    """

    def __init__(self, parent: QWidget, sources: Sequence[Source] = ()) -> None:
        super().__init__(parent)
        self._window = parent
        self._sources = list(sources)
        self._index = EntryIndex(())
        self._return_to: QWidget | None = None
        self.setObjectName("finder")
        set_topic(self, "finder")
        self.setAccessibleName(self.tr("Find anything"))
        self.field = QLineEdit(self)
        self.field.setPlaceholderText(self.tr("Find anything: type words of it in any order"))
        self.field.setAccessibleName(self.tr("Find anything"))
        self.found = _Entries(self)
        self.list = QListView(self)
        self.list.setModel(self.found)
        self.list.setItemDelegate(_Row(self.list))
        self.list.setUniformItemSizes(True)
        self.list.setFrameShape(QFrame.Shape.NoFrame)
        self.list.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setAccessibleName(self.tr("Found"))
        self._foot = QLabel("", self)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.APART, Space.APART, Space.APART, Space.NEAR)
        box.setSpacing(Space.CLOSE)
        for widget in (self.field, self.list, self._foot):
            box.addWidget(widget)
        self.field.textEdited.connect(self.search)
        self.field.installEventFilter(self)
        self.list.clicked.connect(self._on_clicked)
        parent.installEventFilter(self)
        theme().changed.connect(self._dress)
        self._dress()
        self.hide()

    def add_source(self, source: Source) -> None:
        """Let the entries of *source* be found too; it is asked each time the panel opens."""
        self._sources.append(source)

    @Slot()
    def start(self) -> None:
        """Open the panel, or take the keys to its field if it is open."""
        if not self.isVisible():
            self._return_to = QApplication.focusWidget()
            self._index = EntryIndex(entry for source in self._sources for entry in source())
            self.field.clear()
            self.search("")
            self._put_in_place()
            self.show()
            self.raise_()
        self.field.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.field.selectAll()

    @Slot(str)
    def search(self, query: str) -> None:
        """List what holds every word of *query*."""
        found = self._index.found(query)
        self.found.show_entries(found)
        first = next((n for n, entry in enumerate(found) if entry.is_enabled), 0)
        self._choose(first)
        if found:
            how = self.tr("%n found. Enter does it or goes there, Esc closes.", "", len(found))
        else:
            how = self.tr("Nothing holds all these words. Take one away.")
        self._foot.setText(how)

    @Slot()
    def dismiss(self) -> None:
        """Close the panel and give the keys back to what had them."""
        target, self._return_to = self._return_to, None
        self.hide()
        if target is not None and shiboken6.isValid(target) and target.isVisible():
            target.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot()
    def take(self) -> None:
        """Do the chosen entry or go there; one that cannot be done now says why and stays."""
        entry = self.found.entry(self.list.currentIndex().row())
        if entry is None:
            return
        if not entry.is_enabled:
            self._foot.setText(self.tr("Not now: {0}.").format(entry.aside))
            return
        self.dismiss()
        entry.go()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        # Not `_window`: a window collected as garbage loses its attributes before its events end.
        if watched is self.parent():
            if event.type() is QEvent.Type.Resize and self.isVisible():
                self._put_in_place()
        elif isinstance(event, QKeyEvent):
            return self._on_key(event)
        elif event.type() is QEvent.Type.FocusOut:
            self._on_focus_lost()
        return False

    def _on_key(self, event: QKeyEvent) -> bool:
        key, is_press = event.key(), event.type() is QEvent.Type.KeyPress
        step = {
            Qt.Key.Key_Down: 1,
            Qt.Key.Key_Tab: 1,
            Qt.Key.Key_Up: -1,
            Qt.Key.Key_Backtab: -1,
            Qt.Key.Key_PageDown: MOST_ROWS - 1,
            Qt.Key.Key_PageUp: 1 - MOST_ROWS,
        }.get(Qt.Key(key), 0)
        if event.type() is QEvent.Type.ShortcutOverride and key == Qt.Key.Key_Escape:
            event.accept()
            return True
        if not is_press:
            return False
        if step:
            self._choose(self.list.currentIndex().row() + step)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.take()
        elif key == Qt.Key.Key_Escape:
            self.dismiss()
        else:
            return False
        return True

    def _on_focus_lost(self) -> None:
        focus = QApplication.focusWidget()
        if self.isVisible() and focus is not None and not self.isAncestorOf(focus):
            self._return_to = None
            self.hide()

    def _choose(self, row: int) -> None:
        last = self.found.rowCount() - 1
        index = self.found.index(max(0, min(row, last)))
        self.list.setCurrentIndex(index)
        spoken = index.data(Role.AccessibleTextRole) if index.isValid() else ""
        self.field.setAccessibleDescription(spoken or "")

    @Slot(QModelIndex)
    def _on_clicked(self, index: QModelIndex) -> None:
        self.list.setCurrentIndex(index)
        self.take()

    def _put_in_place(self) -> None:
        look, room = theme(), self._window
        width = min(round(look.px(WIDTH_PX)), room.width() - 40)
        rows = round(look.px(ROW_PX)) * MOST_ROWS
        around = self.sizeHint().height() - self.list.sizeHint().height()
        top = min(round(look.px(TOP_PX)), room.height() // 10)
        height = min(rows + around, room.height() - top - 20)
        self.setGeometry((room.width() - width) // 2, top, width, height)

    @Slot()
    def _dress(self) -> None:
        look, c = theme(), theme().colours
        self.setStyleSheet(
            f"QFrame#finder {{ background: {c.panel}; border: 1px solid {c.strong_line};"
            " border-radius: 6px; }"
            "QListView { background: transparent; border: 0; outline: 0; }"
        )
        self.field.setFont(look.font(Pt.HEAD))
        dress(self._foot, SMALL_PT, c.soft)
        self._put_in_place()


class _Entries(QAbstractListModel):
    """What was found."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._entries: list[Entry] = []

    def show_entries(self, entries: list[Entry]) -> None:
        """Hold *entries* instead."""
        self.beginResetModel()
        self._entries = entries
        self.endResetModel()

    def entry(self, row: int) -> Entry | None:
        """Return the entry in *row*, None if there is none."""
        return self._entries[row] if 0 <= row < len(self._entries) else None

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own default
        return 0 if parent.isValid() else len(self._entries)

    def data(self, index: Index, role: int = Role.DisplayRole) -> object:
        entry = self.entry(index.row())
        if entry is None:
            return None
        if role == Role.DisplayRole:
            return entry.text
        if role == Role.AccessibleTextRole:
            return ", ".join(filter(None, (entry.kind, entry.text, entry.aside)))
        if role == Role.ToolTipRole:
            return entry.text
        return None


class _Row(QStyledItemDelegate):
    """Draws an entry: what kind of thing it is, its text, and at the right what goes with it."""

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        return QSize(0, round(theme().px(ROW_PX)))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        model = index.model()
        entry = model.entry(index.row()) if isinstance(model, _Entries) else None
        if entry is None:
            return
        look, c, box = theme(), theme().colours, QRectF(option.rect)
        painter.save()
        if option.state & QStyle.StateFlag.State_Selected:
            painter.fillRect(box, c["pale_teal"])
            edge = QRectF(box.left(), box.top(), look.px(3), box.height())
            painter.fillRect(_across(edge, option), c["teal"])
        inner = box.adjusted(look.px(PAD_PX), 0, -look.px(PAD_PX), 0)
        small, text = look.font(SMALL_PT), look.font(TEXT_PT)
        kind = QRectF(inner.left(), inner.top(), look.px(KIND_PX), inner.height())
        sides = (Align.AlignLeft, Align.AlignRight)
        if option.direction is Qt.LayoutDirection.RightToLeft:
            sides = (Align.AlignRight, Align.AlignLeft)
        near, far = (side | Align.AlignVCenter for side in sides)
        soft = c["ink" if option.state & QStyle.StateFlag.State_Selected else "soft"]
        draw_text(painter, _across(kind, option), entry.kind, soft, small, near)
        room = _across(inner.adjusted(kind.width(), 0, 0, 0), option)
        metrics = look.metrics(SMALL_PT)
        aside = metrics.elidedText(entry.aside, Qt.TextElideMode.ElideRight, 0.45 * room.width())
        draw_text(painter, room, aside, soft, small, far)
        width = room.width() - metrics.horizontalAdvance(aside) - look.px(PAD_PX)
        shown = look.metrics(TEXT_PT).elidedText(entry.text, Qt.TextElideMode.ElideRight, width)
        ink = c["ink" if entry.is_enabled else "soft"]
        draw_text(painter, room, shown, ink, text, near)
        painter.restore()


def _across(rect: QRectF, option: QStyleOptionViewItem) -> QRectF:
    """Return *rect*, or its mirror image in the row where that is read from right to left."""
    if option.direction is not Qt.LayoutDirection.RightToLeft:
        return rect
    row = QRectF(option.rect)
    return QRectF(row.left() + row.right() - rect.right(), rect.top(), rect.width(), rect.height())
