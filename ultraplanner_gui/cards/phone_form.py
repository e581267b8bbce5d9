"""Asks how a card becomes a picture for a telephone's lock screen."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Slot
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QSpinBox,
    QWidget,
)

from ultraplanner_gui.cards import names
from ultraplanner_gui.cards.picture import Screen
from ultraplanner_gui.plan.cards import Card
from ultraplanner_gui.widgets.fields import align_text
from ultraplanner_gui.widgets.help_topic import set_topic

SCREENS = ((1080, 2340), (1080, 2400), (1170, 2532), (1179, 2556), (1440, 3120), (750, 1334))
LEAST_PX, MOST_PX = 320, 6000


class PhoneForm(QDialog):
    """Which card, for what screen; *taken* is given both."""

    def __init__(
        self,
        cards: Sequence[Card],
        taken: Callable[[Card, Screen], None],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._cards, self._taken = cards, taken
        self.setWindowTitle(self.tr("Picture for a lock screen"))
        self.setModal(True)
        set_topic(self, "phone picture")
        self.which, self.screen_size = QComboBox(self), QComboBox(self)
        self.width_px, self.height_px = (
            self._pixels(self.tr("Width")),
            self._pixels(self.tr("Height")),
        )
        self.dark = QCheckBox(self.tr("White on black"), self)
        self.clock = QCheckBox(self.tr("Leave room for the clock"), self)
        for card in cards:
            self.which.addItem(names.say(names.KINDS[card.kind]))
        for width, height in SCREENS:
            self.screen_size.addItem(f"{width} × {height}")
        self.screen_size.addItem(self.tr("Own size"))
        self.screen_size.activated.connect(self._on_screen)
        self.dark.setChecked(True)
        self.clock.setChecked(True)
        for field in (self.which, self.screen_size, self.width_px, self.height_px):
            set_topic(field, "phone picture")
        self._arrange()
        self._on_screen(0)

    def screen_chosen(self) -> Screen:
        """Return the screen as the fields have it."""
        return Screen(
            self.width_px.value(),
            self.height_px.value(),
            self.dark.isChecked(),
            self.clock.isChecked(),
        )

    def accept(self) -> None:
        """Hand over what was chosen and close."""
        self._taken(self._cards[self.which.currentIndex()], self.screen_chosen())
        super().accept()

    def _pixels(self, name: str) -> QSpinBox:
        spin = QSpinBox(self)
        spin.setRange(LEAST_PX, MOST_PX)
        spin.setSuffix(self.tr(" px"))
        spin.setAccessibleName(name)
        align_text(spin)
        return spin

    def _arrange(self) -> None:
        pixels = QHBoxLayout()
        pixels.addWidget(self.width_px)
        pixels.addWidget(QLabel("×", self))
        pixels.addWidget(self.height_px)
        buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel, self
        )
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        rows = QFormLayout(self)
        rows.addRow(self.tr("&Card"), self.which)
        rows.addRow(self.tr("&Screen"), self.screen_size)
        rows.addRow("", pixels)
        rows.addRow("", self.dark)
        rows.addRow("", self.clock)
        rows.addRow(buttons)

    @Slot(int)
    def _on_screen(self, index: int) -> None:
        is_own = index >= len(SCREENS)
        if not is_own:
            width, height = SCREENS[index]
            self.width_px.setValue(width)
            self.height_px.setValue(height)
        for spin in (self.width_px, self.height_px):
            spin.setEnabled(is_own)
