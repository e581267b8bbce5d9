"""A column of labelled fields in a form, some with a guess for who does not know."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, TypeVar

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCheckBox, QGridLayout, QHBoxLayout, QLabel, QWidget

from ultraplanner_gui.widgets.guess import Guess, GuessField, stops_of
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space

HEAD_PT = Pt.HEAD
SMALL_PT = Pt.LABEL

V = TypeVar("V")


class FormColumn(QWidget):
    """Fields under a head; `changed` says that one of those with a guess holds another value.

    `order` is the way of the Tab key through it.
    """

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.order: list[QWidget] = []
        self.guesses: dict[QWidget, GuessField[Any]] = {}
        look = theme()
        self._rows = QGridLayout(self)
        self._rows.setContentsMargins(0, 0, 0, 0)
        self._rows.setVerticalSpacing(round(look.px(Space.NEAR)))
        self._rows.setHorizontalSpacing(round(look.px(Space.APART)))
        self._rows.setColumnStretch(1, 1)

    def add_head(self, text: str) -> None:
        """Add the head of the column."""
        head = QLabel(text, self)
        dress(head, HEAD_PT, theme().colours.ink, bold=True)
        self._rows.addWidget(head, self._rows.rowCount(), 0, 1, 2)

    def add(self, label: str, field: QWidget, topic: str) -> None:
        """Add *field* behind its label."""
        field.setAccessibleName(label.replace("&", ""))
        self._row(label, field, field, topic)
        self.order.append(field)

    def add_guess(
        self,
        label: str,
        field: QWidget,
        read: Callable[[], V],
        write: Callable[[V], None],
        guess: Callable[[], Guess[V]],
        topic: str,
        is_below: bool = False,
    ) -> None:
        """Add *field* with a button for who does not know its value, below a label if wide."""
        row = GuessField(field, label.replace("&", ""), read, write, guess, self)
        row.changed.connect(self.changed)
        self.guesses[field] = row
        self._row(label, row, field, topic, is_below)
        self.order += [*stops_of(field), row.button]

    def add_ticks(self, *ticks: QCheckBox) -> None:
        """Add boxes to tick, beside each other under the fields."""
        row = QHBoxLayout()
        row.setSpacing(round(theme().px(Space.WIDE)))
        for tick in ticks:
            row.addWidget(tick)
        row.addStretch(1)
        self._rows.addLayout(row, self._rows.rowCount(), 1)
        self.order += ticks

    def add_note(self, text: str) -> QLabel:
        """Add a line of small print and return it."""
        note = QLabel(text, self)
        note.setWordWrap(True)
        dress(note, SMALL_PT, theme().colours.soft)
        self._rows.addWidget(note, self._rows.rowCount(), 0, 1, 2)
        return note

    def add_under(self, text: str) -> QLabel:
        """Add a line of small print under the field before and return it."""
        note = QLabel(text, self)
        note.setWordWrap(True)
        dress(note, SMALL_PT, theme().colours.soft)
        self._rows.addWidget(note, self._rows.rowCount(), 1)
        return note

    def end(self) -> None:
        """Keep the rows together at the top."""
        self._rows.setRowStretch(self._rows.rowCount(), 1)

    def _row(
        self, label: str, row: QWidget, field: QWidget, topic: str, is_below: bool = False
    ) -> None:
        name = QLabel(label, self)
        name.setBuddy(stops_of(field)[0])
        for widget in (row, *stops_of(field)):
            set_topic(widget, topic)
        number, top = self._rows.rowCount(), Qt.AlignmentFlag.AlignTop
        self._rows.addWidget(name, number, 0, top)
        if is_below:
            self._rows.addWidget(row, number + 1, 0, 1, 2, top)
            return
        # As high as the field, so that it stays beside it when a line comes in under it.
        name.setMinimumHeight(field.sizeHint().height())
        self._rows.addWidget(row, number, 1, top)
