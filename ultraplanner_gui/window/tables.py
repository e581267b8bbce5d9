"""The tables: the typed twin of the sheet, for whoever would rather type than drag."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Slot
from PySide6.QtGui import QKeySequence, QShortcut, QShowEvent
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QSizePolicy,
    QStackedWidget,
    QWidget,
)

from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message
from ultraplanner_gui.widgets.table_column import say
from ultraplanner_gui.widgets.tokens import Space
from ultraplanner_gui.window.table_after import AFTER
from ultraplanner_gui.window.table_bags import BAGS, BEFORE, CARRY, SHOPPING, TABLE_FOODS
from ultraplanner_gui.window.table_cutoffs import CUTOFFS
from ultraplanner_gui.window.table_foods import FOODS
from ultraplanner_gui.window.table_fuel import FUEL
from ultraplanner_gui.window.table_intake import HOURS, LEGS
from ultraplanner_gui.window.table_kit import KIT
from ultraplanner_gui.window.table_lessons import LESSONS
from ultraplanner_gui.window.table_list import TableList
from ultraplanner_gui.window.table_page import SIDE_PX, TablePage
from ultraplanner_gui.window.table_practice import PRACTICE
from ultraplanner_gui.window.table_recordings import RECORDINGS
from ultraplanner_gui.window.table_sections import SECTIONS
from ultraplanner_gui.window.table_sessions import SESSIONS
from ultraplanner_gui.window.table_spec import TableSpec
from ultraplanner_gui.window.table_stations import STATIONS
from ultraplanner_gui.window.table_surfaces import SURFACES
from ultraplanner_gui.window.table_weeks import WEEKS
from ultraplanner_gui.wording.words import Words

if TYPE_CHECKING:
    from ultraplanner_gui.desk.document import Document
    from ultraplanner_gui.desk.selection import Selection

BUILDUP = QT_TRANSLATE_NOOP("Tables", "Build-up")
RACE_DAY = QT_TRANSLATE_NOOP("Tables", "Race day")
FUELLING = QT_TRANSLATE_NOOP("Tables", "Fuel")
BEHIND = QT_TRANSLATE_NOOP("Tables", "Looking back")
GROUPS: tuple[tuple[str, tuple[TableSpec, ...]], ...] = (
    (BUILDUP, (SESSIONS, WEEKS)),
    (RACE_DAY, (SECTIONS, CUTOFFS, STATIONS, SURFACES, KIT)),
    (FUELLING, (FUEL, HOURS, LEGS, FOODS, TABLE_FOODS, BAGS, CARRY, SHOPPING, BEFORE, PRACTICE)),
    (BEHIND, (RECORDINGS, LESSONS, AFTER)),
)
SPECS = tuple(spec for _, specs in GROUPS for spec in specs)


class Tables(QWidget):
    """The list of tables and the one in view; it alone is kept up to date, the rest when shown."""

    def __init__(
        self,
        document: Document,
        selection: Selection,
        words: Callable[[], Words],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._selection = document, selection
        self.list = TableList([(say(g), [say(s.name) for s in specs]) for g, specs in GROUPS], self)
        self.pages: list[TablePage] = []
        self._stack = QStackedWidget(self)
        self._filters = QStackedWidget(self)
        for spec in SPECS:
            page = TablePage(spec, words, document.perform, document.new_gesture, self)
            page.chosen.connect(partial(self._on_chosen, spec.kind))
            self.pages.append(page)
            self._stack.addWidget(page)
            self._filters.addWidget(page.filter)
        find = QShortcut(QKeySequence.StandardKey.Find, self)
        find.activated.connect(self._on_find)
        self._shown: list[Outlook | None] = [None] * len(SPECS)
        self._lay_out()
        self.setFocusProxy(self.list)
        self.list.chosen.connect(self._on_list_chosen)
        document.changed.connect(self._on_changed)
        document.refused.connect(self._on_refused)
        selection.changed.connect(self._on_selected)
        self._refresh()

    def _lay_out(self) -> None:
        self._filters.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        box = QGridLayout(self)
        box.setContentsMargins(Space.CLOSE, Space.CLOSE, 0, 0)
        box.setSpacing(0)
        box.setColumnStretch(1, 1)
        box.setRowStretch(1, 1)
        box.addWidget(self.list, 0, 0, 2, 1)
        row = QHBoxLayout()
        row.setContentsMargins(SIDE_PX, 0, SIDE_PX, 0)
        row.addStretch(1)
        row.addWidget(self._filters)
        box.addLayout(row, 0, 1)
        box.addWidget(self._stack, 1, 1)

    @property
    def page(self) -> TablePage:
        """The table in view."""
        return self.pages[self.list.number]

    def show_table(self, name: str) -> None:
        """Bring the table *name*, as in its `TableSpec`, into view."""
        self.list.choose([spec.name for spec in SPECS].index(name))

    def show_kind(self, kind: str) -> None:
        """Bring the table of rows of *kind* into view."""
        self.list.choose([spec.kind for spec in SPECS].index(kind))

    def showEvent(self, event: QShowEvent) -> None:
        kinds = [spec.kind for spec in SPECS]
        if self._selection.kind in kinds and self._selection.kind:
            self.list.choose(kinds.index(self._selection.kind))
        self._refresh()
        self._on_selected()
        super().showEvent(event)

    def _refresh(self) -> None:
        number = self.list.number
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
    def _on_list_chosen(self, number: int) -> None:
        self._stack.setCurrentIndex(number)
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
