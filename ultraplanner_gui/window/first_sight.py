"""What the window shows of a project in its first moment: its race, and the places of the sheet.

It imports next to nothing, so that it is painted before everything else is even imported. What
it shows stays where it is when the sheet itself comes.
"""

from __future__ import annotations

from PySide6.QtCore import QRect, Signal
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QLabel, QSizePolicy, QVBoxLayout, QWidget

from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.store.glance import Glance
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space

#: How wide the ledger is at the usual text size.
LEDGER_PX = 296


class FirstSight(QWidget):
    """The head of the sheet with the race in it, over empty paper and the ledger's panel."""

    #: It was painted for the first time.
    seen = Signal()

    def __init__(self, settings: Settings, race: Glance | None) -> None:
        super().__init__()
        look, words = theme(), settings.words()
        self._is_seen = False
        self._name = QLabel((race.name if race else "") or " ", self)
        self._facts = QLabel(words.day_and_year(race.day) if race else " ", self)
        for label in (self._name, self._facts):
            label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        dress(self._name, Pt.TITLE, look.colours.ink, bold=True)
        dress(self._facts, Pt.NOTE, look.colours.soft)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.WIDE, Space.CLOSE, Space.WIDE, Space.CLOSE)
        box.setSpacing(Space.HAIR)
        box.addWidget(self._name)
        box.addWidget(self._facts)
        box.addStretch(1)

    @property
    def race_name(self) -> str:
        """What the race is called, empty where that cannot be told yet."""
        return self._name.text().strip()

    def paintEvent(self, event: QPaintEvent) -> None:
        look = theme()
        wide = round(look.px(LEDGER_PX))
        top = self._facts.geometry().bottom() + Space.CLOSE + 1
        panel = QRect(self.width() - wide, top, wide, self.height() - top)
        with QPainter(self) as painter:
            painter.fillRect(panel, look.colours["panel"])
            painter.fillRect(QRect(panel.left(), top, 1, panel.height()), look.colours["line"])
        if not self._is_seen:
            self._is_seen = True
            self.seen.emit()
