"""One open project: header, then the sheet, the tables or the cards."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cached_property, partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QHBoxLayout, QMenu, QSplitter, QStackedWidget, QVBoxLayout, QWidget

from ultraplanner_gui.buildup.storey import BuildUp
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.raceday.storey import RaceDay
from ultraplanner_gui.widgets.axis import Measure
from ultraplanner_gui.widgets.help_topic import set_topics
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.window.ask import Ask
from ultraplanner_gui.window.header import Header
from ultraplanner_gui.window.ledger import Ledger
from ultraplanner_gui.wording.words import Words

if TYPE_CHECKING:
    from ultraplanner_gui.cards.desk_view import CardsDesk
    from ultraplanner_gui.window.tables import Tables

PLACES = ("sheet", "tables", "cards")
#: Below this height, at the usual text size, one storey is open and the other a strip.
LOW_WINDOW_PX = 820
#: A strip takes no more than this share of the window.
STRIP_SHARE = 0.24
#: In which storey each kind of thing that can be selected lies.
STOREY_OF = {
    "session": "buildup",
    "week": "buildup",
    "section": "raceday",
    "station": "raceday",
    "item": "raceday",
}
QWIDGETSIZE_MAX = (1 << 24) - 1
#: What race day has of a window of these heights, at the usual text size, and between them.
RACE_SHARES = ((900.0, 0.44), (1080.0, 0.5))


class Workplace(QWidget):
    """Everything the window shows of one document."""

    #: The sheet, the tables or the cards are asked for.
    place_wanted = Signal(str)

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
        self._before_step = document.project
        self._settings = settings
        self._ask = ask
        words: Callable[[], Words] = settings.words
        self.header = Header(words, switch, self)
        self.buildup = BuildUp(document, self.selection, words, self)
        self.raceday = RaceDay(document, self.selection, words, self)
        self.raceday.choose_measure(settings.race_axis)
        self.raceday.measure_chosen.connect(self._on_measure_chosen)
        self._arrange()
        for storey, name in ((self.buildup, "buildup"), (self.raceday, "raceday")):
            storey.stack.arranged.connect(self._on_arranged)
            storey.stack.table_wanted.connect(self._on_table_wanted)
            storey.stack.open_wanted.connect(partial(self._on_open_wanted, name))
        self._opened = settings.open_storey
        self._is_low, self._is_fitting, self._height = False, False, 0
        self._split, self._is_split = settings.storey_split, False
        self.ledger = Ledger(document, self.selection, words, self)
        set_topics({self.buildup: "build-up", self.raceday: "race day"})
        self._storeys = QSplitter(Qt.Orientation.Vertical, self)
        self._storeys.setHandleWidth(3)
        self._storeys.addWidget(self.buildup)
        self._storeys.addWidget(self.raceday)
        self._storeys.setStretchFactor(0, 5)
        self._storeys.setStretchFactor(1, 4)
        self._storeys.setChildrenCollapsible(False)
        self._storeys.splitterMoved.connect(self._on_split)
        self._sheet = QWidget(self)
        row = QHBoxLayout(self._sheet)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self._storeys, 1)
        row.addWidget(self.ledger)
        self._places = QStackedWidget(self)
        self._places.addWidget(self._sheet)
        self._place = "sheet"
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(0)
        box.addWidget(self.header)
        box.addWidget(self._places, 1)
        document.changed.connect(self._on_changed)
        document.stepped.connect(self._on_stepped)
        document.kept.connect(self._on_kept)
        document.keep_failed.connect(self._on_keep_failed)
        self.selection.changed.connect(self._on_selected)
        theme().changed.connect(self.refresh)
        theme().changed.connect(self._on_text_sized)
        self.refresh()

    def _arrange(self) -> None:
        """Lay the storeys out as they were last."""
        settings = self._settings
        self.raceday.show_plan(settings.plan_view)
        self.raceday.plan_chosen.connect(self._on_plan_chosen)
        self.raceday.alone_wanted.connect(partial(self.show_storeys, False, True))
        self.buildup.stack.arrange(settings.buildup_lanes)
        self.raceday.stack.arrange(settings.raceday_lanes)

    @cached_property
    def tables(self) -> Tables:
        """The tables, made when they are first asked for: the sheet opens sooner without."""
        from ultraplanner_gui.window.tables import Tables

        tables = Tables(self.document, self.selection, self._settings.words, self)
        set_topics({tables: "tables"})
        self._places.addWidget(tables)
        return tables

    @cached_property
    def cards(self) -> CardsDesk:
        """The cards' desk, made when it is first asked for."""
        from ultraplanner_gui.cards.desk_view import CardsDesk

        cards = CardsDesk(self.document, self._settings.words, self._ask, self, self._settings)
        set_topics({cards: "cards"})
        self._places.addWidget(cards)
        return cards

    @property
    def place(self) -> str:
        """Which of sheet, tables and cards is in view."""
        return self._place

    def show_place(self, place: str) -> None:
        """Bring *place* into view."""
        self._place = place
        if place == "tables":
            self._places.setCurrentWidget(self.tables)
        elif place == "cards":
            self._places.setCurrentWidget(self.cards)
        else:
            self._places.setCurrentWidget(self._sheet)
            self._focus_storey(self._opened if self._is_low else "buildup")

    def show_storeys(self, buildup: bool, raceday: bool) -> None:
        """Open one storey over the whole window, or both; a low window opens one of them."""
        self.show_place("sheet")
        if self._is_low and buildup != raceday:
            self.open_storey("buildup" if buildup else "raceday")
            return
        self.buildup.setVisible(buildup)
        self.raceday.setVisible(raceday)
        self._focus_storey("buildup" if buildup else "raceday")

    def open_storey(self, name: str) -> None:
        """Open the storey *name* in a low window; the other becomes the strip."""
        if name != self._opened:
            self._opened = self._settings.open_storey = name
            self.fit_height(self._height)
        self._focus_storey(name)

    def fit_height(self, height: int) -> None:
        """Open both storeys in a window of *height*, or one of them where it is low."""
        was_low = self._is_low
        self._height = height
        self._is_low = height < LOW_WINDOW_PX * max(1.0, theme().scale)
        # Focus leaves what is hidden and may come upon a strip: that is no wish to open it.
        self._is_fitting = True
        for name, storey in self._storeys_by_name().items():
            is_strip = self._is_low and self._opened != name
            storey.set_strip(is_strip)
            least = storey.stack.strip_height(STRIP_SHARE * height)
            if not is_strip:
                least = storey.stack.least_height() if not self._is_low else 0
            storey.setMinimumHeight(least)
            storey.setMaximumHeight(least if is_strip else QWIDGETSIZE_MAX)
            if self._is_low:
                storey.show()
        self._is_fitting = False
        self._storeys.handle(1).setEnabled(not self._is_low)
        if not self._is_low and (was_low or not self._is_split):
            self._restore_split(height)

    def _restore_split(self, height: int) -> None:
        self._is_split = True
        if not (self._split and self._storeys.restoreState(self._split)):
            share = race_share(height)
            self._storeys.setSizes([round(height * (1.0 - share)), round(height * share)])

    def _storeys_by_name(self) -> dict[str, BuildUp | RaceDay]:
        return {"buildup": self.buildup, "raceday": self.raceday}

    def _focus_storey(self, name: str) -> None:
        self._storeys_by_name()[name].stack.focus_first()

    def offer_actions(self, of: Callable[[str], list[QAction]]) -> None:
        """Let the context menus offer the actions that *of* gives for their names."""
        self.buildup.actions_of = of
        self.raceday.stack.menus.actions_of = of

    def fill_lane_menus(self, buildup: QMenu, raceday: QMenu) -> None:
        """Put into two menus what can be done with the lanes."""
        self.buildup.stack.menus.fill(buildup)
        self.raceday.stack.menus.fill(raceday)

    def _on_open_wanted(self, name: str) -> None:
        if not self._is_fitting:
            self.open_storey(name)

    @Slot()
    def _on_split(self) -> None:
        if not self._is_low and self.buildup.isVisible() and self.raceday.isVisible():
            self._split = bytes(self._storeys.saveState().data())

    @Slot()
    def _on_text_sized(self) -> None:
        self.fit_height(self._height)

    @Slot()
    def _on_selected(self) -> None:
        """Open the storey in which what is selected can be seen."""
        name = STOREY_OF.get(self.selection.kind)
        if self._is_low and name is not None and name != self._opened:
            self._opened = self._settings.open_storey = name
            self.fit_height(self._height)

    @Slot()
    def _on_arranged(self) -> None:
        self._settings.buildup_lanes = self.buildup.stack.arrangement.written()
        self._settings.raceday_lanes = self.raceday.stack.arrangement.written()

    @Slot(str)
    def _on_table_wanted(self, name: str) -> None:
        self.place_wanted.emit("tables")
        self.tables.show_table(name)

    @Slot(str)
    def _on_measure_chosen(self, measure: Measure) -> None:
        self._settings.race_axis = measure

    @Slot(bool)
    def _on_plan_chosen(self, is_shown: bool) -> None:
        self._settings.plan_view = is_shown

    @Slot()
    def refresh(self) -> None:
        """Show the header anew."""
        self.header.show_outlook(self.document.shown)
        self._on_kept(self.document.kept_at)

    def flush(self) -> None:
        """Keep what is still being typed, and how the storeys share the window."""
        self.ledger.flush()
        if self._split != self._settings.storey_split:
            self._settings.storey_split = self._split

    @Slot(object, object)
    def _on_changed(self, before: Outlook, after: Outlook) -> None:
        self.header.show_outlook(after, self.document.before)
        if after is self.document.before:  # what a drag makes and takes away is another matter
            self._before_step = before.project
            self.selection.forget_missing(after.project)

    @Slot(object)
    def _on_stepped(self, edit: object) -> None:
        """Select what an undo or redo brought back."""
        self.selection.choose_returned(self._before_step, self.document.project)

    @Slot(object)
    def _on_kept(self, at: object) -> None:
        path = self.document.path
        self.header.show_kept(self.document.kept_at, str(path) if path is not None else "")

    @Slot(object)
    def _on_keep_failed(self, message: Message) -> None:
        self.header.show_kept(None, "", self._settings.words().say(message))


def race_share(height: float) -> float:
    """Return what share of a window of *height* race day has, as long as the user chose none.

    Seven rows of days need about the same height in any window; what a higher one has to spare
    goes to the many lanes of the race.
    """
    (low, least), (high, most) = RACE_SHARES
    part = (height / max(1.0, theme().scale) - low) / (high - low)
    return least + (most - least) * min(max(part, 0.0), 1.0)
