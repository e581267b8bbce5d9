"""A sentence beside the pointer: why what the hand just tried cannot be done."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QSize, Qt, QTimer
from PySide6.QtWidgets import QLabel, QWidget

from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Space

STAYS_MS = 4_000
MOST_PX = 300.0
#: Right of the pointer and under it, where the hand hides nothing.
AWAY = QPoint(16, 20)


class Beside(QLabel):
    """Lies over the window, lets the mouse through, and goes by itself.

    The line at the foot says the same for longer, and to who hears the screen.
    """

    def __init__(self, window: QWidget) -> None:
        super().__init__("", window)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(True)
        self._going = QTimer(self)
        self._going.setSingleShot(True)
        self._going.setInterval(STAYS_MS)
        self._going.timeout.connect(self.hide)
        self.hide()

    def say(self, text: str, at: QPoint) -> None:
        """Say *text* beside *at*, a place on the screen."""
        window = self.parentWidget()
        assert window is not None
        if text != self.text():
            self._dress()
            self.setText(text)
            self.resize(self._size_of(text))
        place = window.mapFromGlobal(at) + AWAY
        right, foot = window.width() - self.width(), window.height() - self.height()
        self.move(max(0, min(place.x(), right)), max(0, min(place.y(), foot)))
        self.raise_()
        self.show()
        self._going.start()

    def _size_of(self, text: str) -> QSize:
        metrics, pad = theme().metrics(Pt.TEXT), 2 * (Space.NEAR + 1)
        width = min(metrics.horizontalAdvance(text) + 2.0, theme().px(MOST_PX))
        return QSize(round(width) + pad, self.heightForWidth(round(width) + pad))

    def _dress(self) -> None:
        look = theme()
        c = look.colours
        self.setStyleSheet(
            f"color: {c.clay}; background: {c.panel}; border: 1px solid {c.clay};"
            f"border-radius: 3px; padding: {Space.TIGHT}px {Space.NEAR}px;"
            f"font-size: {Pt.TEXT * look.scale:.2f}pt;"
        )
        self.ensurePolished()
