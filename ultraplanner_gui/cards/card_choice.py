"""Which cards are printed and how large: one row to a card."""

from __future__ import annotations

from dataclasses import dataclass, replace

from PySide6.QtCore import QSignalBlocker, Signal, Slot
from PySide6.QtWidgets import (
    QComboBox,
    QDoubleSpinBox,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.edits.cards import LARGEST_CARD_MM, SMALLEST_CARD_MM
from ultraplanner_gui.plan.cards import Card, CardKind
from ultraplanner_gui.widgets.fields import align_text
from ultraplanner_gui.widgets.help_topic import set_topic, set_topics
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt


@dataclass(frozen=True, slots=True)
class PaperSize:
    """A size offered by name."""

    name: str
    width_mm: float
    height_mm: float


SIZES = (
    PaperSize("A6", 105.0, 148.0),
    PaperSize("A6", 148.0, 105.0),
    PaperSize("A5", 148.0, 210.0),
    PaperSize("A4", 210.0, 297.0),
    PaperSize("Letter", 215.9, 279.4),
)
OWN = len(SIZES)


class CardRow(QWidget):
    """One card: its kind, its size, and a way to leave it out."""

    changed = Signal(object, object)
    left_out = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._card = Card(CardKind.PACE)
        self._is_own = False
        self._title = QLabel(self)
        self._title.setFont(theme().font(Pt.LARGE, bold=True))
        self._sizes = QComboBox(self)
        for size in SIZES:
            self._sizes.addItem(self._size_text(size))
        self._sizes.addItem(self.tr("Own size"))
        self._sizes.setAccessibleName(self.tr("Size of the card"))
        self._width, self._height = self._spin(self.tr("Width")), self._spin(self.tr("Height"))
        self._times = QLabel("×", self)
        self._remove = QPushButton(self.tr("Leave out"), self)
        set_topics(dict.fromkeys((self._sizes, self._width, self._height), "card size"))
        self._arrange()
        self._sizes.activated.connect(self._on_size_chosen)
        self._width.valueChanged.connect(self._on_own_size)
        self._height.valueChanged.connect(self._on_own_size)
        self._remove.clicked.connect(self._on_remove)

    @property
    def card(self) -> Card:
        """The card of this row."""
        return self._card

    def show_card(self, card: Card) -> None:
        """Show *card*."""
        if card.kind is not self._card.kind:
            self._is_own = False
        self._card = card
        set_topic(self, card.kind.value)
        self._title.setText(
            self.tr("Pace card") if card.kind is CardKind.PACE else self.tr("Fuel card")
        )
        names = {(size.width_mm, size.height_mm): k for k, size in enumerate(SIZES)}
        index = OWN if self._is_own else names.get((card.width_mm, card.height_mm), OWN)
        self._sizes.setCurrentIndex(index)
        for spin, value in ((self._width, card.width_mm), (self._height, card.height_mm)):
            with QSignalBlocker(spin):
                spin.setValue(value)
        for part in (self._width, self._times, self._height):
            part.setVisible(index == OWN)

    def _size_text(self, size: PaperSize) -> str:
        template = (
            self.tr("{0} upright, {1} × {2} mm")
            if size.width_mm < size.height_mm
            else self.tr("{0} lying, {1} × {2} mm")
        )
        return template.format(size.name, f"{size.width_mm:g}", f"{size.height_mm:g}")

    def _spin(self, name: str) -> QDoubleSpinBox:
        spin = QDoubleSpinBox(self)
        spin.setKeyboardTracking(False)
        spin.setRange(SMALLEST_CARD_MM, LARGEST_CARD_MM)
        spin.setDecimals(1)
        spin.setSuffix(self.tr(" mm"))
        align_text(spin)
        spin.setAccessibleName(name)
        return spin

    def _arrange(self) -> None:
        own = QHBoxLayout()
        own.addWidget(self._width, 1)
        own.addWidget(self._times)
        own.addWidget(self._height, 1)
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, round(theme().px(10)))
        grid.addWidget(self._title, 0, 0)
        grid.addWidget(self._remove, 0, 1)
        grid.addWidget(self._sizes, 1, 0, 1, 2)
        grid.addLayout(own, 2, 0, 1, 2)
        grid.setColumnStretch(0, 1)

    @Slot(int)
    def _on_size_chosen(self, index: int) -> None:
        self._is_own = index == OWN
        if self._is_own:
            self.show_card(self._card)
            self._width.setFocus()
            return
        size = SIZES[index]
        card = replace(self._card, width_mm=size.width_mm, height_mm=size.height_mm)
        self.changed.emit(self, card)

    @Slot()
    def _on_own_size(self) -> None:
        self._is_own = True
        width, height = self._width.value(), self._height.value()
        self.changed.emit(self, replace(self._card, width_mm=width, height_mm=height))

    @Slot()
    def _on_remove(self) -> None:
        self.left_out.emit(self)


class CardChoice(QWidget):
    """All cards of the project, and buttons to add one."""

    chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._rows: list[CardRow] = []
        self._box = QVBoxLayout()
        self._box.setSpacing(0)
        self._add_pace = QPushButton(self.tr("Add a pace card"), self)
        self._add_fuel = QPushButton(self.tr("Add a fuel card"), self)
        self._add_pace.clicked.connect(self._on_add_pace)
        self._add_fuel.clicked.connect(self._on_add_fuel)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addLayout(self._box)
        outer.addWidget(self._add_pace)
        outer.addWidget(self._add_fuel)

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

    @Slot()
    def _on_add_pace(self) -> None:
        self.chosen.emit((*self.cards, Card(CardKind.PACE)))

    @Slot()
    def _on_add_fuel(self) -> None:
        self.chosen.emit((*self.cards, Card(CardKind.FUEL)))
