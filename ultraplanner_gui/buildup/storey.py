"""The build-up storey: weeks over days, and the lanes they add up to, on one axis."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QPoint, QSize, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QMenu, QSizePolicy, QWidget

from ultraplanner_gui.buildup.cells import TILE_PX
from ultraplanner_gui.buildup.climb_lane import ClimbLane
from ultraplanner_gui.buildup.daygrid import DayGrid
from ultraplanner_gui.buildup.deeds import SessionDeeds
from ultraplanner_gui.buildup.distance_lane import DistanceLane
from ultraplanner_gui.buildup.longest_lane import LongestLane
from ultraplanner_gui.buildup.overview import Overview
from ultraplanner_gui.buildup.practice_lane import PracticeLane
from ultraplanner_gui.buildup.session_editor import SessionEditor
from ultraplanner_gui.buildup.weekhead import WeekHead
from ultraplanner_gui.buildup.weeklane import WeekLane
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.widgets.room import Wish, share_out
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.week_axis import WeekAxis
from ultraplanner_gui.wording.words import Words

GAP_PX = 5.0
# Overview, head, grid, distance, climb and drop, longest, practice: in a strip distance stays.
WISHES = (
    Wish(17, 17, 17, 2),
    Wish(44, 44, 44, 0),
    Wish(133, 252, 476, 2, yields_last=True),
    Wish(44, 62, 150, 1),
    Wish(30, 46, 100, 5),
    Wish(40, 46, 100, 3),
    Wish(28, 40, 90, 4),
)


class BuildUp(QWidget):
    """The upper storey. It shows outlooks of *document* and turns gestures into edits."""

    editor_opened = Signal(object)

    def __init__(
        self,
        document: Document,
        selection: Selection,
        words: Callable[[], Words],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._words = words
        self._axis = WeekAxis(self)
        self.deeds = SessionDeeds(document, selection, self)
        self.overview = Overview(self._axis, self)
        self.head = WeekHead(self._axis, words, self)
        self.grid = DayGrid(self._axis, document, selection, self.deeds, words, self)
        self.distance = DistanceLane(self._axis, words, self)
        self.climb = ClimbLane(self._axis, words, self)
        self.longest = LongestLane(self._axis, words, self)
        self.practice = PracticeLane(self._axis, words, self)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Build-up"))
        self.setFocusProxy(self.grid)
        self.deeds.editor_wanted.connect(self._on_editor_wanted)
        self.grid.menu_wanted.connect(self._on_menu_wanted)
        document.changed.connect(self._on_document_changed)
        theme().changed.connect(self.redraw)
        self.show_outlooks(document.before, document.shown)

    @property
    def lanes(self) -> tuple[WeekLane, ...]:
        """The lanes under the day grid, top to bottom."""
        return (self.distance, self.climb, self.longest, self.practice)

    def show_outlooks(self, before: Outlook, now: Outlook) -> None:
        """Show *now*, against *before* where they differ."""
        # During a trial no column goes away under the pointer.
        longer = before.weeks if len(before.weeks) > len(now.weeks) else now.weeks
        self._axis.show(longer)
        self._fit()
        self.overview.show_outlooks(before, now)
        self.head.show_day(now.today)
        self.grid.show_outlook(now)
        for lane in self.lanes:
            lane.show_outlooks(before, now)

    def redraw(self) -> None:
        """Draw everything anew after a change of units, language, colours or text size."""
        self.overview.update()
        self.head.update()
        self.grid.redraw()
        for lane in self.lanes:
            lane.retitle()
            lane.update()
        self._lay_out()

    # What the main menu calls

    def add_session(self) -> None:
        """Add an easy run on the day of the cursor."""
        self.grid.add_here()

    def edit_session(self) -> None:
        """Open the editor of the selected session."""
        self.deeds.edit()

    def remove_session(self) -> None:
        """Remove the selected session."""
        self.deeds.remove()

    def mark_done(self) -> None:
        """Mark the selected session done as planned."""
        self.deeds.mark_done()

    def mark_missed(self) -> None:
        """Mark the selected session missed."""
        self.deeds.mark_missed()

    # Size

    def sizeHint(self) -> QSize:
        usual = sum(w.usual for w in WISHES) + GAP_PX * (len(self.lanes) + 1)
        return QSize(1100, round(theme().px(usual)))

    def minimumSizeHint(self) -> QSize:
        least = sum(w.least for w in WISHES if w.rank < 2) + GAP_PX
        return QSize(480, round(theme().px(least)))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._lay_out()

    def _lay_out(self) -> None:
        look, gap, top = theme(), round(theme().px(GAP_PX)), 0
        parts = (self.overview, self.head, self.grid, *self.lanes)
        below = [0 if part in (self.overview, self.head) else gap for part in parts]
        wishes = [
            Wish(look.px(w[0]) + free, look.px(w[1]) + free, look.px(w[2]) + free, *w[3:])
            for w, free in zip(WISHES, below, strict=True)
        ]
        heights = share_out(self.height(), wishes)
        for part, height, free in zip(parts, heights, below, strict=True):
            part.setVisible(height > 0)
            if height > 0:
                part.setGeometry(0, top, self.width(), height - free)
                top += height
        self._fit()

    # The stretch in view

    def _fit(self) -> None:
        room = self.head.body().width() // theme().px(TILE_PX)
        self._axis.fit(self._document.before.today, int(room))

    # Editor and menu

    def menu(self) -> QMenu:
        """Return a menu of what can be done here and now."""
        menu, session = QMenu(self), self.deeds.chosen()
        if session is not None:
            is_race = session.kind is Kind.RACE
            menu.addAction(self.tr("Change…"), self.deeds.edit)
            menu.addAction(self.tr("Move with the arrow keys"), self.grid.pick_up).setEnabled(
                session.done is None and not is_race
            )
            menu.addSeparator()
            menu.addAction(self.tr("Done as planned"), self.deeds.mark_done).setEnabled(
                session.done is None
            )
            menu.addAction(self.tr("Missed"), self.deeds.mark_missed).setEnabled(not session.missed)
            menu.addAction(self.tr("Neither done nor missed"), self.deeds.unmark).setEnabled(
                not session.is_open
            )
            menu.addSeparator()
        menu.addAction(self.tr("Add an easy run here"), self.grid.add_here)
        menu.addSeparator()
        menu.addAction(self.tr("Fewer weeks, larger") + "\t+", self.grid.zoom_in)
        menu.addAction(self.tr("More weeks, smaller") + "\t-", self.grid.zoom_out)
        menu.addAction(self.tr("All weeks") + "\t0", self.grid.show_all)
        menu.addSeparator()
        if session is not None:
            menu.addAction(self.tr("Remove"), self.deeds.remove).setEnabled(
                session.kind is not Kind.RACE
            )
        return menu

    def _on_menu_wanted(self, at: QPoint) -> None:
        menu = self.menu()
        menu.aboutToHide.connect(menu.deleteLater)
        menu.popup(at)

    def _on_editor_wanted(self, key: str) -> None:
        editor = SessionEditor(self._document, key, self._words(), self)
        editor.finished.connect(editor.deleteLater)
        editor.open()
        self.editor_opened.emit(editor)

    def _on_document_changed(self, before: Outlook, after: Outlook) -> None:
        self.show_outlooks(self._document.before, self._document.shown)
