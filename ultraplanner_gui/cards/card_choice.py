"""Which cards are printed: one row to a card, and a button that adds one."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QMenu, QPushButton, QVBoxLayout, QWidget

from ultraplanner_gui.cards import names
from ultraplanner_gui.cards.card_row import CardRow, usual_card
from ultraplanner_gui.plan.cards import Card, CardKind
from ultraplanner_gui.widgets.help_topic import set_topic


class CardChoice(QWidget):
    """All cards of the project, and a button to add one."""

    chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._rows: list[CardRow] = []
        self._box = QVBoxLayout()
        self._box.setSpacing(0)
        self._add = QPushButton(self.tr("Add a card"), self)
        set_topic(self._add, "cards")
        self.menu = QMenu(self._add)
        for kind in CardKind:
            action = self.menu.addAction(names.say(names.KINDS[kind]))
            action.triggered.connect(partial(self._on_add, kind))
        self._add.setMenu(self.menu)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addLayout(self._box)
        outer.addWidget(self._add)

    @property
    def rows(self) -> tuple[CardRow, ...]:
        """The rows, in the order of the cards."""
        return tuple(self._rows)

    @property
    def cards(self) -> tuple[Card, ...]:
        """The cards as the rows show them."""
        return tuple(row.card for row in self._rows)

    def show_cards(self, cards: tuple[Card, ...]) -> None:
        """Show *cards*; rows that are there stay, so that the focus does too."""
        while len(self._rows) > len(cards):
            row = self._rows.pop()
            self._box.removeWidget(row)
            row.hide()
            row.deleteLater()
        while len(self._rows) < len(cards):
            row = CardRow(self)
            row.changed.connect(self._on_row_changed)
            row.left_out.connect(self._on_row_left_out)
            self._rows.append(row)
            self._box.addWidget(row)
        for row, card in zip(self._rows, cards, strict=True):
            row.show_card(card)

    @Slot(object, object)
    def _on_row_changed(self, row: CardRow, card: Card) -> None:
        self.chosen.emit(tuple(card if other is row else other.card for other in self._rows))

    @Slot(object)
    def _on_row_left_out(self, row: CardRow) -> None:
        self.chosen.emit(tuple(other.card for other in self._rows if other is not row))

    def _on_add(self, kind: CardKind, checked: bool = False) -> None:
        self.chosen.emit((*self.cards, usual_card(kind)))
