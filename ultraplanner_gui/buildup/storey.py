"""The build-up storey: weeks over days, and the lanes they add up to, on one axis."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, QPoint, QSize, Signal
from PySide6.QtGui import QAction, QResizeEvent
from PySide6.QtWidgets import QApplication, QMenu, QSizePolicy, QWidget

from ultraplanner_gui.buildup import at_cursor
from ultraplanner_gui.buildup.cells import TILE_PX
from ultraplanner_gui.buildup.climb_lane import ClimbLane
from ultraplanner_gui.buildup.daygrid import DayGrid
from ultraplanner_gui.buildup.deeds import SessionDeeds
from ultraplanner_gui.buildup.distance_lane import DistanceLane
from ultraplanner_gui.buildup.gridpicture import WEEK
from ultraplanner_gui.buildup.longest_lane import LongestLane
from ultraplanner_gui.buildup.overview import Overview
from ultraplanner_gui.buildup.practice_lane import PracticeLane
from ultraplanner_gui.buildup.weekhead import WeekHead
from ultraplanner_gui.buildup.weeklane import WeekLane
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.widgets.lane_cursor import Spot
from ultraplanner_gui.widgets.lane_stack import LaneStack, Place
from ultraplanner_gui.widgets.room import Wish
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Space
from ultraplanner_gui.widgets.week_axis import WeekAxis
from ultraplanner_gui.wording.words import Words

if TYPE_CHECKING:
    from ultraplanner_gui.buildup.shelf import Shelf

GAP_PX = 5.0
SESSIONS = "Sessions"
# Overview, head, grid, distance, climb and drop, longest, practice.
WISHES = (
    Wish(17, 17, 17, 6),
    Wish(44, 44, 44, 0),
    Wish(133, 252, 476, 1, yields_last=True),
    Wish(44, 62, 150, 2),
    Wish(30, 46, 100, 5),
    Wish(40, 46, 100, 3),
    Wish(28, 40, 90, 4),
)


def _no_actions(name: str) -> list[QAction]:
    return []


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
        self.deeds = SessionDeeds(document, selection, self, words)
        self._selection = selection
        self.stack = stack = LaneStack(self)
        self.overview = Overview(self._axis, stack)
        self.head = WeekHead(self._axis, words, stack, document, selection)
        self.grid = DayGrid(self._axis, document, selection, self.deeds, words, stack)
        self.distance = DistanceLane(self._axis, words, stack)
        self.climb = ClimbLane(self._axis, words, stack)
        self.longest = LongestLane(self._axis, words, stack)
        self.practice = PracticeLane(self._axis, words, stack)
        self._fill_stack()
        self._cursor = stack.follow(self.overview, self._spot_at, self._step_from, self._free_left)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Build-up"))
        self._shelf: Shelf | None = None
        self.head.installEventFilter(self)
        self.deeds.editor_wanted.connect(self._on_editor_wanted)
        self.deeds.done_form_wanted.connect(self._on_done_form_wanted)
        self.grid.shelf_wanted.connect(self.open_shelf)
        self.grid.menu_wanted.connect(self._on_menu_wanted)
        document.changed.connect(self._on_document_changed)
        self._axis.changed.connect(self._on_axis_changed)
        theme().changed.connect(self.redraw)
        self._parts: object = None
        #: The actions a context menu offers, by its name: the window puts them in.
        self.actions_of: Callable[[str], list[QAction]] = _no_actions
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
        if now is before:
            self._fit()
        self.overview.show_outlooks(before, now)
        self.head.show_day(now.today)
        self.grid.show_outlook(now)
        for lane in self.lanes:
            lane.show_outlooks(before, now)
        self._cursor.renew_soon()

    def redraw(self) -> None:
        """Draw everything anew after a change of units, language, colours or text size."""
        self.overview.update()
        self.head.update()
        self.grid.redraw()
        for lane in self.lanes:
            lane.retitle()
            lane.update()
        self._fit()

    # What the main menu calls

    def add_session(self) -> None:
        """Add an easy run on the day of the cursor."""
        self.grid.add_here()

    def open_shelf(self) -> None:
        """Open the shelf of kinds beside the day grid."""
        from ultraplanner_gui.buildup.shelf import Shelf

        # Over the whole window: a storey may be lower than the shelf.
        owner = self.window()
        if self._shelf is None:
            self._shelf = Shelf(self._document, self.deeds, self.grid, owner)
            self.destroyed.connect(self._shelf.deleteLater)
        corner = self.grid.mapTo(owner, self.grid.rect().bottomLeft())
        self._shelf.open_at(corner.x() + Space.CLOSE, corner.y())

    def edit_session(self) -> None:
        """Open the editor of the selected session."""
        self.deeds.edit()

    def pick_up(self) -> None:
        """Take the selected session into the hand: the arrow keys move it."""
        self.grid.setFocus()
        self.grid.pick_up()

    def unmark(self) -> None:
        """Take back that the selected session was done or missed."""
        self.deeds.unmark()

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
        return self.stack.sizeHint()

    def minimumSizeHint(self) -> QSize:
        return self.stack.minimumSizeHint()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.stack.resize(self.size())

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        # The head is as wide as the axis only once the stack has laid it out.
        if event.type() is QEvent.Type.Resize and watched is self.head:
            self._fit()
        return super().eventFilter(watched, event)

    def set_strip(self, is_strip: bool) -> None:
        """Show no more than a strip, or what there is room for."""
        self.stack.set_strip(is_strip)

    def _fill_stack(self) -> None:
        overview, head, grid, *wishes = WISHES
        names = ("distance", "climb", "longest", "practice")
        self.stack.fill(
            above=(
                Place(self.overview, overview, gap_px=0.0),
                Place(self.head, head, gap_px=0.0, strip_rank=0, is_core=True),
                Place(self.grid, grid, gap_px=GAP_PX, is_core=True),
            ),
            lanes=[
                Place(
                    lane,
                    wish,
                    name,
                    lane.name,
                    SESSIONS,
                    gap_px=GAP_PX,
                    strip_rank=1 if lane is self.distance else None,
                    choose=self._choose_session,
                )
                for lane, wish, name in zip(self.lanes, wishes, names, strict=True)
            ],
            below=(),
        )
        self.stack.follows_drags = False
        self.stack.name_strip(self.tr("Open the build-up"), lambda: self.head.title_middle)

    # The week at the cursor

    def _week_at(self, x: float | None) -> int | None:
        body = self.head.body()
        return None if x is None else self._axis.index_at(x - body.left(), body.width())

    def _spot_at(self, x: float) -> Spot | None:
        index, body, words = self._week_at(x), self.head.body(), self._words()
        if index is None:
            return None
        start = self._axis.weeks[index].start
        weeks = self._document.shown.weeks
        week = next((week for week in weeks if week.start == start), self._axis.weeks[index])
        left, right = (round(body.left() + end) for end in self._axis.edges(index, body.width()))
        return Spot(left, right, at_cursor.figures(week, words))

    def _step_from(self, x: float | None, by: int) -> float:
        shown, body = self._axis.shown, self.head.body()
        here = self._week_at(x)
        if not shown:
            return body.left()
        today = self._axis.index_of(self._document.before.today)
        start = shown.index(here) + by if here in shown else 0
        if here is None and today in shown:
            start = shown.index(today)
        left, right = self._axis.edges(shown[min(max(start, 0), len(shown) - 1)], body.width())
        return body.left() + (left + right) / 2

    def _free_left(self) -> int:
        return round(self.head.body().left())

    def _choose_session(self, x: float | None) -> None:
        """Select the longest session of the week at *x*, or of the week selected."""
        index = self._week_at(x)
        start = str(self._axis.weeks[index].start) if index is not None else ""
        if not start and self._selection.kind == WEEK:
            start = self._selection.key
        week = next((w for w in self._document.outlook.weeks if str(w.start) == start), None)
        if week is None or self._selection.key in week.sessions or not week.sessions:
            return
        block = self._document.project.block
        longest = max(
            (s for s in block.sessions if s.key in week.sessions), key=lambda s: s.distance_m
        )
        self._selection.choose("session", longest.key)

    # The stretch in view

    def _fit(self) -> None:
        room = self.head.body().width() // theme().px(TILE_PX)
        self._axis.fit(self._document.before.today, int(room))

    def _on_axis_changed(self) -> None:
        # The week at the cursor is another now, or it lies elsewhere.
        self._cursor.renew_soon()

    # Editor and menu

    def _on_menu_wanted(self, at: QPoint) -> None:
        menu = QMenu(self)
        menu.addActions(self.actions_of("session" if self.deeds.chosen() else "weeks"))
        menu.aboutToHide.connect(menu.deleteLater)
        menu.popup(at)

    def _on_editor_wanted(self, key: str) -> None:
        from ultraplanner_gui.buildup.session_editor import SessionEditor

        editor = SessionEditor(self._document, key, self._words(), self)
        editor.finished.connect(editor.deleteLater)
        editor.open()
        self.editor_opened.emit(editor)

    def _on_done_form_wanted(self, key: str) -> None:
        from ultraplanner_gui.buildup.done_form import DoneForm

        form = DoneForm(self._document, key, self._words(), QApplication.activeWindow() or self)
        form.finished.connect(form.deleteLater)
        form.open()
        self.editor_opened.emit(form)

    def _on_document_changed(self, before: Outlook, after: Outlook) -> None:
        # A drag on race day leaves all of this alone; nothing is done about it then.
        parts = (_parts_shown(self._document.before), _parts_shown(self._document.shown))
        if parts != self._parts:
            self.show_outlooks(self._document.before, self._document.shown)
            self._parts = parts


def _parts_shown(outlook: Outlook) -> tuple[object, ...]:
    """Return what of *outlook* the build-up shows; parts that are the same compare at once."""
    project = outlook.project
    figures = (outlook.weeks, outlook.checks, outlook.today, outlook.asks)
    facts = (project.race.day, project.first_weekday, project.fuel.carb_g_per_h)
    return (*figures, project.block, *facts)
