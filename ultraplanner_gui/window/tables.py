"""The tables: the typed twin of the sheet, for whoever would rather type than drag."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Slot
from PySide6.QtGui import QKeySequence, QShortcut, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QStackedWidget, QTabWidget, QVBoxLayout, QWidget

from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.widgets.table_column import say
from ultraplanner_gui.widgets.tokens import Space
from ultraplanner_gui.window.table_fuel import FOODS, FUEL
from ultraplanner_gui.window.table_intake import HOURS, LEGS
from ultraplanner_gui.window.table_page import SIDE_PX, TablePage
from ultraplanner_gui.window.table_sections import SECTIONS
from ultraplanner_gui.window.table_sessions import SESSIONS
from ultraplanner_gui.window.table_stations import STATIONS
from ultraplanner_gui.wording.words import Words

if TYPE_CHECKING:
    from ultraplanner_gui.desk.document import Document
    from ultraplanner_gui.desk.selection import Selection

SPECS = (SESSIONS, SECTIONS, STATIONS, FUEL, HOURS, LEGS, FOODS)


class Tables(QWidget):
    """The tables behind tabs; only the one in view is kept up to date, the rest when shown."""

    def __init__(
        self,
        document: Document,
        selection: Selection,
        words: Callable[[], Words],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._selection = document, selection
        self.tabs = QTabWidget(self)
        self.tabs.setDocumentMode(True)
        self.tabs.tabBar().setDrawBase(False)
        self.tabs.setStyleSheet(f"QTabWidget::tab-bar {{ left: {SIDE_PX}px; }}")
        self.tabs.tabBar().setAccessibleName(self.tr("Tables"))
        self.pages: list[TablePage] = []
        self._filters = QStackedWidget(self.tabs)
        for spec in SPECS:
            page = TablePage(spec, words, document.perform, document.new_gesture, self)
            page.chosen.connect(partial(self._on_chosen, spec.kind))
            self.pages.append(page)
            self.tabs.addTab(page, say(spec.name))
            self._filters.addWidget(page.filter)
        self._corner = QWidget(self.tabs)
        corner = QHBoxLayout(self._corner)
        corner.setContentsMargins(0, 0, SIDE_PX, Space.TIGHT)
        corner.addWidget(self._filters)
        self.tabs.setCornerWidget(self._corner)
        find = QShortcut(QKeySequence.StandardKey.Find, self)
        find.activated.connect(self._on_find)
        self._shown: list[Outlook | None] = [None] * len(SPECS)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, Space.CLOSE, 0, 0)
        box.addWidget(self.tabs)
        self.setFocusProxy(self.tabs)
        self.tabs.currentChanged.connect(self._on_tab_changed)
        document.changed.connect(self._on_changed)
        document.refused.connect(self._on_refused)
        selection.changed.connect(self._on_selected)
        self._refresh()

    @property
    def page(self) -> TablePage:
        """The table in view."""
        return self.pages[self.tabs.currentIndex()]

    def show_table(self, name: str) -> None:
        """Bring the table *name*, as in its `TableSpec`, into view."""
        self.tabs.setCurrentIndex([spec.name for spec in SPECS].index(name))

    def showEvent(self, event: QShowEvent) -> None:
        kinds = [spec.kind for spec in SPECS]
        if self._selection.kind in kinds and self._selection.kind:
            self.tabs.setCurrentIndex(kinds.index(self._selection.kind))
        self._refresh()
        self._on_selected()
        super().showEvent(event)

    def _refresh(self) -> None:
        number = self.tabs.currentIndex()
        outlook = self._document.shown
        if self._shown[number] is not outlook:
            self._shown[number] = outlook
            self.pages[number].show_outlook(outlook)

    @Slot(object, object)
    def _on_changed(self, before: Outlook, after: Outlook) -> None:
        # During a drag on the sheet the tables are out of sight: they wait until they are shown.
        if self.isVisible():
            self._refresh()

    @Slot(object)
    def _on_refused(self, message: Message) -> None:
        if self.isVisible():
            self.page.refuse(message)

    @Slot()
    def _on_find(self) -> None:
        self.page.filter.start()

    @Slot(int)
    def _on_tab_changed(self, number: int) -> None:
        self._filters.setCurrentIndex(number)
        self._refresh()
        self._on_selected()

    @Slot()
    def _on_selected(self) -> None:
        if self.isVisible() and self._selection.kind == self.page.spec.kind:
            self.page.view.show_row(self._selection.key)

    @Slot(str)
    def _on_chosen(self, kind: str, key: str) -> None:
        if kind and key:
            self._selection.choose(kind, key)
