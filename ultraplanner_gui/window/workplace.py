"""One open project: header, then the sheet, the tables or the cards."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QHBoxLayout, QSplitter, QStackedWidget, QVBoxLayout, QWidget

from ultraplanner_gui.buildup.storey import BuildUp
from ultraplanner_gui.cards.desk_view import CardsDesk
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.raceday.storey import RaceDay
from ultraplanner_gui.widgets.help_topic import set_topics
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.window.ask import Ask
from ultraplanner_gui.window.header import Header
from ultraplanner_gui.window.ledger import Ledger
from ultraplanner_gui.window.tables import Tables
from ultraplanner_gui.wording.words import Words

PLACES = ("sheet", "tables", "cards")
#: Below this height one storey is open and the other a strip.
LOW_WINDOW_PX = 800


class Workplace(QWidget):
    """Everything the window shows of one document."""

    def __init__(
        self,
        document: Document,
        settings: Settings,
        ask: Ask,
        switch: Sequence[QAction],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.document = document
        self.selection = Selection(self)
        self._settings = settings
        words: Callable[[], Words] = settings.words
        self.header = Header(words, switch, self)
        self.buildup = BuildUp(document, self.selection, words, self)
        self.raceday = RaceDay(document, self.selection, words, self)
        self.raceday.choose_measure(settings.race_axis)
        self.ledger = Ledger(document, self.selection, words, self)
        self.tables = Tables(document, self.selection, words, self)
        self.cards = CardsDesk(document, words, ask, self)
        set_topics({self.buildup: "build-up", self.raceday: "race day"})
        set_topics({self.tables: "tables", self.cards: "cards"})
        self._storeys = QSplitter(Qt.Orientation.Vertical, self)
        self._storeys.setHandleWidth(3)
        self._storeys.addWidget(self.buildup)
        self._storeys.addWidget(self.raceday)
        self._storeys.setStretchFactor(0, 5)
        self._storeys.setStretchFactor(1, 4)
        sheet = QWidget(self)
        row = QHBoxLayout(sheet)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self._storeys, 1)
        row.addWidget(self.ledger)
        self._places = QStackedWidget(self)
        for place in (sheet, self.tables, self.cards):
            self._places.addWidget(place)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(0)
        box.addWidget(self.header)
        box.addWidget(self._places, 1)
        document.changed.connect(self._on_changed)
        document.kept.connect(self._on_kept)
        document.keep_failed.connect(self._on_keep_failed)
        theme().changed.connect(self.refresh)
        self.refresh()

    @property
    def place(self) -> str:
        """Which of sheet, tables and cards is in view."""
        return PLACES[self._places.currentIndex()]

    def show_place(self, place: str) -> None:
        """Bring *place* into view."""
        self._places.setCurrentIndex(PLACES.index(place))
        if place == "sheet":
            self.buildup.setFocus()

    def show_storeys(self, buildup: bool, raceday: bool) -> None:
        """Open one storey over the whole window, or both."""
        self.show_place("sheet")
        self.buildup.setVisible(buildup)
        self.raceday.setVisible(raceday)

    def fit_height(self, height: int) -> None:
        """Give both storeys their share, the build-up first where the window is low."""
        if height < LOW_WINDOW_PX:
            self._storeys.setSizes([round(height * 0.62), round(height * 0.38)])
        else:
            self._storeys.setSizes([round(height * 0.56), round(height * 0.44)])

    @Slot()
    def refresh(self) -> None:
        """Show the header anew."""
        self.header.show_outlook(self.document.shown)
        self._on_kept(self.document.kept_at)

    def flush(self) -> None:
        """Keep what is still being typed."""
        self.ledger.flush()

    @Slot(object, object)
    def _on_changed(self, before: Outlook, after: Outlook) -> None:
        self.header.show_outlook(after)

    @Slot(object)
    def _on_kept(self, at: object) -> None:
        path = self.document.path
        self.header.show_kept(self.document.kept_at, str(path) if path is not None else "")

    @Slot(object)
    def _on_keep_failed(self, message: Message) -> None:
        self.header.show_kept(None, "", self._settings.words().say(message))
