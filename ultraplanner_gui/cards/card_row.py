"""One card on the desk: its form, its size, how many, in what units, and what stands on it."""

from __future__ import annotations

from functools import partial

from msgspec.structs import replace
from PySide6.QtCore import QLocale, QSignalBlocker, Signal, Slot
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDoubleSpinBox,
    QFormLayout,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.cards import names
from ultraplanner_gui.cards.make import USUAL_SIZES
from ultraplanner_gui.edits.cards import LARGEST_CARD_MM, MOST_COPIES, SMALLEST_CARD_MM
from ultraplanner_gui.plan.cards import PARTS_OF, Card, CardForm, CardKind, CardUnits
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.fields import align_text, describe
from ultraplanner_gui.widgets.help_topic import set_topic, set_topics
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.wording import locales


class PaperSize(Value, frozen=True):
    """A size offered by name."""

    name: str
    width_mm: float
    height_mm: float


SIZES = (
    PaperSize("A6", 105.0, 148.0),
    PaperSize("A6", 148.0, 105.0),
    PaperSize("A5", 148.0, 210.0),
    PaperSize("A5", 210.0, 148.0),
    PaperSize("A4", 210.0, 297.0),
    PaperSize("A4", 297.0, 210.0),
    PaperSize("Letter", 215.9, 279.4),
    PaperSize("A3", 297.0, 420.0),
    PaperSize("A3", 420.0, 297.0),
    PaperSize("A2", 420.0, 594.0),
    PaperSize("A2", 594.0, 420.0),
)
OWN = len(SIZES)
USUAL_MM, A4_MM, LETTER_MM = (105.0, 148.0), (210.0, 297.0), (215.9, 279.4)
LOCALES = (
    *("cs_CZ", "da_DK", "de_DE", "de_CH", "en_GB", "en_US", "es_ES", "fi_FI", "fr_FR", "it_IT"),
    *("ja_JP", "nb_NO", "nl_NL", "pl_PL", "pt_PT", "sv_SE"),
)
"""Languages of numbers and days offered; any other a project has is kept."""


def usual_card(kind: CardKind, form: CardForm = CardForm.SHEET) -> Card:
    """Return a new card of *kind*, as large as it usually is."""
    width, height = _usual_mm(kind, form)
    return Card(kind, width, height, form)


def _usual_mm(kind: CardKind, form: CardForm) -> tuple[float, float]:
    """Return width and height a card usually has; what is a whole A4 is Letter where that is."""
    usual = USUAL_SIZES.get((kind, form), USUAL_MM)
    return LETTER_MM if usual == A4_MM and locales.uses_letter(QLocale().name()) else usual


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
        self.forms, self.sizes = QComboBox(self), QComboBox(self)
        self._width, self._height = self._spin(self.tr("Width")), self._spin(self.tr("Height"))
        self._times = QLabel("×", self)
        self.more = QPushButton(self.tr("More"), self)
        self.remove = QPushButton(self.tr("Leave out"), self)
        self._details = QWidget(self)
        self.copies = QSpinBox(self._details)
        self.units, self.locales = QComboBox(self._details), QComboBox(self._details)
        self._parts = QWidget(self._details)
        self._ticks_box = QVBoxLayout(self._parts)
        self.ticks: dict[str, QCheckBox] = {}
        self._fill()
        self._arrange()
        self._connect()

    @property
    def card(self) -> Card:
        """The card of this row."""
        return self._card

    def show_card(self, card: Card) -> None:
        """Show *card*."""
        is_other = card.kind is not self._card.kind or not self.ticks
        if is_other or card.form is not self._card.form:
            self._is_own = False
        self._card = card
        set_topic(self, card.kind.value)
        self._title.setText(names.say(names.KINDS[card.kind]))
        if is_other:
            self._make_ticks()
        self._show_size()
        fields = (
            (self.forms, list(CardForm).index(card.form)),
            (self.units, list(CardUnits).index(card.units)),
            (self.locales, self._locale_index(card.locale)),
        )
        for field, index in fields:
            with QSignalBlocker(field):
                field.setCurrentIndex(index)
        with QSignalBlocker(self.copies):
            self.copies.setValue(card.copies)
        for part, tick in self.ticks.items():
            with QSignalBlocker(tick):
                tick.setChecked(part not in card.leaves_out)
        self.forms.setVisible(card.kind is CardKind.PACE)

    def _show_size(self) -> None:
        card = self._card
        known = {(size.width_mm, size.height_mm): k for k, size in enumerate(SIZES)}
        index = OWN if self._is_own else known.get((card.width_mm, card.height_mm), OWN)
        self.sizes.setCurrentIndex(index)
        for spin, value in ((self._width, card.width_mm), (self._height, card.height_mm)):
            with QSignalBlocker(spin):
                spin.setValue(value)
        for part in (self._width, self._times, self._height):
            part.setVisible(index == OWN)

    def _fill(self) -> None:
        for form in CardForm:
            self.forms.addItem(names.say(names.FORMS[form]))
        for size in SIZES:
            self.sizes.addItem(self._size_text(size))
        self.sizes.addItem(self.tr("Own size"))
        for unit in CardUnits:
            self.units.addItem(names.say(names.UNITS[unit]))
        self.locales.addItem(self.tr("As in the window"), "")
        for locale in LOCALES:
            self.locales.addItem(names.language(locale), locale)
        self.copies.setRange(1, MOST_COPIES)
        self.copies.setKeyboardTracking(False)
        align_text(self.copies)
        describe(self.copies, self.tr("How often it is printed"))
        self.copies.setAccessibleName(self.tr("Copies"))
        self.units.setAccessibleName(self.tr("Units of the card"))
        self.locales.setAccessibleName(self.tr("Language of its numbers"))
        self.forms.setAccessibleName(self.tr("Form of the card"))
        self.sizes.setAccessibleName(self.tr("Size of the card"))
        self.more.setCheckable(True)
        self.more.setAccessibleDescription(self.tr("Copies, units, language, what is on it"))
        for wide in (self.forms, self.sizes, self.units, self.locales):
            wide.setSizeAdjustPolicy(
                QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
            )
            wide.setMinimumContentsLength(8)
        sized = (self.forms, self.sizes, self._width, self._height)
        set_topics(dict.fromkeys(sized, "card size"))
        set_topics(dict.fromkeys((self.copies, self.units, self.locales), "card contents"))
        set_topics({self._parts: "card contents"})

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

    def _locale_index(self, locale: str) -> int:
        if self.locales.findData(locale) < 0:
            self.locales.addItem(names.language(locale), locale)
        return self.locales.findData(locale)

    def _make_ticks(self) -> None:
        box = self._ticks_box
        for tick in self.ticks.values():
            tick.hide()
            box.removeWidget(tick)
            tick.deleteLater()
        self.ticks = {}
        for part in PARTS_OF[self._card.kind]:
            tick = QCheckBox(names.say(names.PARTS[part]), self._parts)
            tick.toggled.connect(partial(self._on_part, part))
            box.addWidget(tick)
            self.ticks[part] = tick

    def _arrange(self) -> None:
        near = round(theme().px(Space.CLOSE))
        own = QHBoxLayout()
        own.addWidget(self._width, 1)
        own.addWidget(self._times)
        own.addWidget(self._height, 1)
        self._ticks_box.setContentsMargins(0, 0, 0, 0)
        self._ticks_box.setSpacing(round(theme().px(Space.HAIR)))
        rows = QFormLayout(self._details)
        rows.setContentsMargins(0, 0, 0, 0)
        rows.addRow(self.tr("Copies"), self.copies)
        rows.addRow(self.tr("Units"), self.units)
        rows.addRow(self.tr("Numbers"), self.locales)
        rows.addRow(self.tr("On it"), self._parts)
        self._details.setVisible(False)
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, near, round(theme().px(Space.APART)))
        grid.setVerticalSpacing(near)
        grid.addWidget(self._title, 0, 0)
        grid.addWidget(self.more, 0, 1)
        grid.addWidget(self.remove, 0, 2)
        grid.addWidget(self.forms, 1, 0, 1, 3)
        grid.addWidget(self.sizes, 2, 0, 1, 3)
        grid.addLayout(own, 3, 0, 1, 3)
        grid.addWidget(self._details, 4, 0, 1, 3)
        grid.setColumnStretch(0, 1)

    def _connect(self) -> None:
        self.forms.activated.connect(self._on_form)
        self.sizes.activated.connect(self._on_size_chosen)
        self._width.valueChanged.connect(self._on_own_size)
        self._height.valueChanged.connect(self._on_own_size)
        self.more.toggled.connect(self._details.setVisible)
        self.remove.clicked.connect(self._on_remove)
        self.copies.valueChanged.connect(self._on_copies)
        self.units.activated.connect(self._on_units)
        self.locales.activated.connect(self._on_locale)

    def _change(self, card: Card) -> None:
        self.changed.emit(self, card)

    @Slot(int)
    def _on_form(self, index: int) -> None:
        form = list(CardForm)[index]
        width, height = _usual_mm(self._card.kind, form)
        self._change(replace(self._card, form=form, width_mm=width, height_mm=height))

    @Slot(int)
    def _on_size_chosen(self, index: int) -> None:
        self._is_own = index == OWN
        if self._is_own:
            self.show_card(self._card)
            self._width.setFocus()
            return
        size = SIZES[index]
        self._change(replace(self._card, width_mm=size.width_mm, height_mm=size.height_mm))

    @Slot()
    def _on_own_size(self) -> None:
        self._is_own = True
        width, height = self._width.value(), self._height.value()
        self._change(replace(self._card, width_mm=width, height_mm=height))

    @Slot(int)
    def _on_copies(self, copies: int) -> None:
        self._change(replace(self._card, copies=copies))

    @Slot(int)
    def _on_units(self, index: int) -> None:
        self._change(replace(self._card, units=list(CardUnits)[index]))

    @Slot(int)
    def _on_locale(self, index: int) -> None:
        self._change(replace(self._card, locale=str(self.locales.itemData(index))))

    def _on_part(self, part: str, is_on: bool) -> None:
        left_out = tuple(
            p
            for p in PARTS_OF[self._card.kind]
            if (p in self._card.leaves_out if p != part else not is_on)
        )
        self._change(replace(self._card, leaves_out=left_out))

    @Slot()
    def _on_remove(self) -> None:
        self.left_out.emit(self)
