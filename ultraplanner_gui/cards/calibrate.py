"""Matching the screen to the millimetre: a bank card is laid on it and the frame made as large."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QRectF, QSize, Qt, Slot
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QLabel, QSlider, QVBoxLayout, QWidget

from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Space, Stroke

BANK_CARD_MM = (85.60, 53.98)
"""ISO/IEC 7810, format ID-1."""

CORNER_MM = 3.18
LEAST_PX_PER_MM, MOST_PX_PER_MM = 1.5, 16.0
STEPS_PER_PX = 400


class _BankCard(QWidget):
    """The outline of a bank card."""

    def __init__(self, px_per_mm: float, parent: QWidget) -> None:
        super().__init__(parent)
        self.px_per_mm = px_per_mm
        self.setAccessibleName(self.tr("Outline as large as a bank card should be"))

    def sizeHint(self) -> QSize:
        width, height = BANK_CARD_MM
        room = Space.EDGE
        return QSize(round(width * self.px_per_mm) + room, round(height * self.px_per_mm) + room)

    def set_scale(self, px_per_mm: float) -> None:
        """Draw the card at another scale."""
        self.px_per_mm = px_per_mm
        self.updateGeometry()
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        width, height = (mm * self.px_per_mm for mm in BANK_CARD_MM)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(theme().colours["ink"], Stroke.LINE))
        painter.setBrush(QColor(theme().colours["pale_teal"]))
        corner = CORNER_MM * self.px_per_mm
        left = 0.5 * (self.width() - width)
        painter.drawRoundedRect(QRectF(left, 2.0, width, height), corner, corner)
        painter.end()


class Calibration(QDialog):
    """Asks for a bank card; *taken* is given the pixels to a millimetre."""

    def __init__(
        self, px_per_mm: float, taken: Callable[[float], None], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._taken = taken
        self.setWindowTitle(self.tr("Match the screen"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        set_topic(self, "true size")
        say = QLabel(
            self.tr(
                "Lay a bank card on the outline and move the slider, or use the arrow keys, until "
                "both are the same size. Cards are then shown as large as they are printed."
            ),
            self,
        )
        say.setWordWrap(True)
        self.card = _BankCard(px_per_mm, self)
        self.slider = QSlider(Qt.Orientation.Horizontal, self)
        self.slider.setAccessibleName(self.tr("Size of the outline"))
        set_topic(self.slider, "true size")
        self.slider.setRange(
            round(LEAST_PX_PER_MM * STEPS_PER_PX), round(MOST_PX_PER_MM * STEPS_PER_PX)
        )
        self.slider.setValue(round(px_per_mm * STEPS_PER_PX))
        self.slider.setSingleStep(2)
        self.slider.valueChanged.connect(self._on_moved)
        buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel, self
        )
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.addWidget(say)
        box.addWidget(self.card, 1)
        box.addWidget(self.slider)
        box.addWidget(buttons)
        width = round(BANK_CARD_MM[0] * px_per_mm)
        self.resize(max(width + 3 * Space.EDGE, 480), round(BANK_CARD_MM[1] * px_per_mm) + 200)
        self.slider.setFocus()

    def accept(self) -> None:
        """Keep the scale and close."""
        self._taken(self.card.px_per_mm)
        super().accept()

    @Slot(int)
    def _on_moved(self, value: int) -> None:
        self.card.set_scale(value / STEPS_PER_PX)
