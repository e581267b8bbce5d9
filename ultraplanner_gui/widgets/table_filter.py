"""Filtering a table: which rows hold the words typed, and the field they are typed into."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Protocol, TypeVar

from PySide6.QtCore import QPointF, QRectF, Qt, Signal, Slot
from PySide6.QtGui import QAction, QColor, QIcon, QKeyEvent, QPainter, QPaintEvent, QPen, QPixmap
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QWidget

from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.table_text import folded
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording.words import Words

FIELD_PX = 210.0
COUNT_PT = Pt.NOTE
GLASS_PX = 11.0
CROSS_PX = 64

Key = Qt.Key


class _Keyed(Protocol):
    @property
    def key(self) -> str: ...


K = TypeVar("K", bound=_Keyed)


class RowFilter:
    """Rows by their keys: those that hold every word, and those that came after it was typed.

    What held the words stays in sight when it is changed, so that nobody loses the row they
    type in. `text_of` gives all a row says.
    """

    def __init__(self, text_of: Callable[[_Keyed], str]) -> None:
        self._text_of = text_of
        self._words: tuple[str, ...] = ()
        self._hidden: frozenset[str] = frozenset()

    @property
    def is_on(self) -> bool:
        """Whether there are words to look for."""
        return bool(self._words)

    def choose(self, text: str, rows: Iterable[_Keyed]) -> None:
        """Look for the words of *text* in *rows* from now on."""
        self._words = tuple(folded(text).split())
        self._hidden = frozenset(row.key for row in rows if not self._holds(row))

    def let_through(self, rows: tuple[K, ...]) -> tuple[K, ...]:
        """Return those of *rows* that are to be seen."""
        if not self._hidden:
            return rows
        hidden = [row for row in rows if row.key in self._hidden and not self._holds(row)]
        self._hidden = frozenset(row.key for row in hidden)
        return tuple(row for row in rows if row.key not in self._hidden)

    def _holds(self, row: _Keyed) -> bool:
        if not self._words:
            return True
        text = folded(self._text_of(row))
        return all(word in text for word in self._words)


class FilterField(QWidget):
    """A field over a table with the count of rows that hold its words, "12 of 96".

    `words_changed` carries the text; `left` says that the keys go back to the table.
    """

    words_changed = Signal(str)
    left = Signal()

    def __init__(
        self, name: str, words: Callable[[], Words], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._words = words
        self._counted = (0, 0)
        self.field = _Field(self)
        self.field.setAccessibleName(name)
        set_topic(self, "filter")
        self.field.setPlaceholderText(self.tr("Filter rows (Ctrl+F)"))
        self._clear = QAction(self.tr("Show all rows"), self)
        self._clear.setVisible(False)
        self.field.addAction(self._clear, QLineEdit.ActionPosition.TrailingPosition)
        tip = self.tr("Show the rows that hold these words in any cell; Esc shows all again")
        self.field.setToolTip(tip)
        self.field.setAccessibleDescription(tip)
        self.count = QLabel("", self)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(Space.APART)
        row.addWidget(self.count)
        row.addWidget(self.field)
        self.setFocusProxy(self.field)
        self.field.textChanged.connect(self._on_changed)
        self._clear.triggered.connect(self.clear)
        self.field.escaped.connect(self._on_escaped)
        self.field.down.connect(self.left)
        theme().changed.connect(self._dress)
        self._dress()

    def show_count(self, seen: int, of: int) -> None:
        """Say how many of the rows are in sight while there is something to look for."""
        self._counted = (seen, of)
        words, is_on = self._words(), bool(self.field.text().strip())
        text = self.tr("{0} of {1}").format(words.number(seen), words.number(of))
        self.count.setText(text if is_on else "")
        self.count.setAccessibleName(self.tr("{0} rows are shown").format(text) if is_on else "")

    @Slot()
    def clear(self) -> None:
        """Show every row again."""
        self.field.clear()

    @Slot()
    def start(self) -> None:
        """Take the keys, with what is typed selected."""
        self.field.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.field.selectAll()

    @Slot(str)
    def _on_changed(self, text: str) -> None:
        self._clear.setVisible(bool(text))
        self.words_changed.emit(text)

    @Slot()
    def _on_escaped(self) -> None:
        self.clear()
        self.left.emit()

    @Slot()
    def _dress(self) -> None:
        look = theme()
        self.field.setFixedWidth(round(look.px(FIELD_PX)))
        self.field.setTextMargins(round(look.px(GLASS_PX + 8)), 0, 0, 0)
        dress(self.count, COUNT_PT, look.colours.soft)
        self._clear.setIcon(_cross(look.colours["soft"]))


def _cross(colour: QColor) -> QIcon:
    """Return a cross in *colour*: the one of the style is too pale on a dark ground."""
    picture = QPixmap(CROSS_PX, CROSS_PX)
    picture.fill(Qt.GlobalColor.transparent)
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(colour, CROSS_PX / 10))
    low, high = 0.28 * CROSS_PX, 0.72 * CROSS_PX
    painter.drawLine(QPointF(low, low), QPointF(high, high))
    painter.drawLine(QPointF(low, high), QPointF(high, low))
    painter.end()
    return QIcon(picture)


class _Field(QLineEdit):
    """A line with a magnifying glass in front; Esc and the arrow down are told."""

    escaped = Signal()
    down = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Key.Key_Escape:
            self.escaped.emit()
        elif event.key() in (Key.Key_Down, Key.Key_Return, Key.Key_Enter):
            self.down.emit()
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        look = theme()
        size = look.px(GLASS_PX)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(look.colours["soft"], look.px(1.3)))
        left, top = look.px(8), (self.height() - size) / 2
        ring = size * 0.7
        painter.drawEllipse(QRectF(left, top, ring, ring))
        edge = QPointF(left + ring * 0.86, top + ring * 0.86)
        painter.drawLine(edge, QPointF(left + size, top + size))
        painter.end()
