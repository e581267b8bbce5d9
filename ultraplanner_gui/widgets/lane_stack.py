"""The lanes of a storey, one under the other: the user shows, hides, orders and sizes them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from itertools import pairwise
from math import ceil

from PySide6.QtCore import QEvent, QPointF, QSize, Qt, Signal, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QMenu, QWidget

from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.arrangement import Arrangement
from ultraplanner_gui.widgets.lane_cursor import LaneCursor, Spot
from ultraplanner_gui.widgets.lane_hand import LaneHand
from ultraplanner_gui.widgets.lane_menu import LaneMenus
from ultraplanner_gui.widgets.lane_overlays import Edge, OpenButton
from ultraplanner_gui.widgets.room import Wish, share_out
from ultraplanner_gui.widgets.theme import theme

STRETCH_PX = 8.0
OPEN_LEFT_PX = 64.0
#: A lane of a height the user chose stays in sight at least as long as one of this rank.
CHOSEN_RANK = 7


class Place(Value, frozen=True, eq=False):
    """A part of a stack and the room it wishes for, at the usual text size.

    A wish of no height leaves that to the part itself. A part with a *name* is a lane the user
    may hide, move and size; its *table* shows the same figures, *choose* selects the row of it
    for an x, *deeds* puts what can be done at a place into a menu. A strip keeps the parts with
    a *strip_rank*, the lowest longest; without the parts that are *core* nothing else is shown.
    """

    part: QWidget
    wish: Wish
    name: str = ""
    title: str = ""
    table: str = ""
    gap_px: float = 4.0
    strip_rank: int | None = None
    is_core: bool = False
    choose: Callable[[float | None], None] | None = None
    deeds: Callable[[QMenu, QPointF | None], None] | None = None


class LaneStack(QWidget):
    """Parts that stay in their place above and below, lanes of the user's choice between.

    Where there is too little room for all, the lanes of the highest rank are left out.
    """

    #: The user chose, moved or sized lanes.
    arranged = Signal()
    #: A lane's table is asked for, by its name.
    table_wanted = Signal(str)
    #: The storey is a strip and was clicked, or reached by keys.
    open_wanted = Signal()
    #: Every part has its room.
    laid_out = Signal()

    follows_drags = True

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._above: tuple[Place, ...] = ()
        self._below: tuple[Place, ...] = ()
        self._lanes: dict[str, Place] = {}
        self._edges: dict[str, Edge] = {}
        self._wishes: dict[QWidget, Wish] = {}
        self._names: dict[QWidget, str] = {}
        self._is_strip, self._is_focus_due = False, False
        self._cursor: LaneCursor | None = None
        self._hand = LaneHand(self)
        self.menus = LaneMenus(self)
        self.current = ""
        self.arrangement = Arrangement(())
        self._open = OpenButton(self)
        self._open.hide()
        self._open_middle: Callable[[], float] = float
        self._open.clicked.connect(self.open_wanted)
        theme().changed.connect(self.lay_out)

    def fill(self, above: Sequence[Place], lanes: Sequence[Place], below: Sequence[Place]) -> None:
        """Take over all parts; they are children of this widget already."""
        self._above, self._below = tuple(above), tuple(below)
        self._lanes = {lane.name: lane for lane in lanes}
        self._names = {lane.part: lane.name for lane in lanes}
        self.arrangement = self.usual
        self.current = next(iter(self._lanes))
        for place in (*above, *lanes, *below):
            self._hand.watch(place.part)
        for lane in lanes:
            if lane.part.focusPolicy() is Qt.FocusPolicy.NoFocus:
                lane.part.setFocusPolicy(Qt.FocusPolicy.TabFocus)
                self._hand.plain.add(lane.part)
            edge = Edge(self)
            edge.dragged.connect(partial(self._on_edge_dragged, lane.name))
            edge.released.connect(self.arranged)
            edge.reset.connect(partial(self.size_lane, lane.name, 0.0))
            self._edges[lane.name] = edge
        self.lay_out()

    def follow(
        self,
        host: QWidget,
        spot_at: Callable[[float], Spot | None],
        step_from: Callable[[float | None, int], float],
        free_left: Callable[[], int],
    ) -> LaneCursor:
        """Let a cursor run through all lanes; see `LaneCursor`."""
        self._cursor = LaneCursor(self, host, spot_at, step_from, free_left)
        return self._cursor

    def name_strip(self, text: str, middle: Callable[[], float]) -> None:
        """Say what opens the storey while it is a strip, and how high up its title stands."""
        self._open.setAccessibleName(text)
        self._open.setToolTip(text)
        self._open_middle = middle

    # What the user chooses

    def arrange(self, texts: Sequence[str]) -> None:
        """Take over an arrangement as it was written."""
        self.arrangement = Arrangement.read(texts, list(self._lanes))
        self._order_tabs()
        self.lay_out()

    def show_lane(self, name: str, is_shown: bool) -> None:
        """Show or hide a lane."""
        self._take(self.arrangement.with_shown(name, is_shown))

    def move_lane(self, name: str, by: int) -> None:
        """Move a lane one down, or for a negative *by* one up."""
        self._take(self.arrangement.moved(name, by))

    def place(self, name: str, beside: str, is_after: bool) -> None:
        """Put a lane right before or after another."""
        self._take(self.arrangement.placed(name, beside, is_after))

    def size_lane(self, name: str, height_px: float) -> None:
        """Give a lane a height at the usual text size, 0 for its usual one."""
        self._take(self.arrangement.sized(name, height_px))

    def make_room(self, name: str) -> None:
        """Give a lane that has no room its least height, at the cost of others that are spare."""
        lane = self._lanes[name]
        wanted = self.arrangement.sized(name, lane.wish.least)
        self._take(wanted)
        if not lane.part.isVisibleTo(self):
            for other in self._lanes.values():
                if other is not lane and other.wish.is_spare:
                    wanted = wanted.sized(other.name, 0.0)
            self._take(wanted)

    def stretch(self, name: str, by: int) -> None:
        """Make a lane a little higher, or for a negative *by* lower."""
        part = self._lanes[name].part
        if part.isVisible():
            self._size(name, part.height() + by * theme().px(STRETCH_PX))
            self.arranged.emit()

    def arrange_usually(self) -> None:
        """Show every lane in its usual place and height."""
        self._take(self.usual)

    def _take(self, arrangement: Arrangement) -> None:
        if arrangement != self.arrangement:
            self.arrangement = arrangement
            self._order_tabs()
            self.lay_out()
            self.arranged.emit()

    def _order_tabs(self) -> None:
        for above, below in pairwise(self.arrangement.lanes):
            self.setTabOrder(self._lanes[above.name].part, self._lanes[below.name].part)

    def _on_edge_dragged(self, name: str, y: float) -> None:
        self._size(name, y + 1.0 - self._lanes[name].part.y())

    def _size(self, name: str, height: float) -> None:
        """Size a lane, but push none out that is in sight."""
        part, look = self._lanes[name].part, theme()
        gap = round(look.px(self._lanes[name].gap_px))
        others = [w for p, w in self._wishes.items() if p.isVisibleTo(self) and p is not part]
        most = self.height() - sum(wish.least for wish in others) - gap
        height = max(min(height, most), self._wishes[part].least - gap)
        self.arrangement = self.arrangement.sized(name, max(height / look.scale, 1.0))
        self.lay_out()

    # Strip and height

    @property
    def is_strip(self) -> bool:
        """Whether no more is shown than what tells where one is."""
        return self._is_strip

    def set_strip(self, is_strip: bool) -> None:
        """Show no more than a strip, or what there is room for."""
        if is_strip == self._is_strip:
            return
        self._is_strip = is_strip
        for place in self._places():
            if is_strip:
                place.part.setCursor(Qt.CursorShape.PointingHandCursor)
            else:
                place.part.unsetCursor()
        self.leave()
        self.lay_out()

    def strip_height(self, at_most: float) -> int:
        """Return the height of a strip, *at_most* that much if it can be."""
        wishes = [self._wish(place) for place in self._strip_places()]
        while len(wishes) > 1 and sum(wish.least for wish in wishes) > at_most:
            wishes.remove(max(wishes, key=lambda wish: wish.rank))
        return ceil(sum(wish.least for wish in wishes))

    def least_height(self) -> int:
        """Return the least height at which it is more than a strip."""
        return ceil(sum(self._wish(place).least for place in self._places() if place.is_core))

    def sizeHint(self) -> QSize:
        return QSize(1100, round(sum(self._wish(place).usual for place in self._places())))

    def minimumSizeHint(self) -> QSize:
        return QSize(300, self.strip_height(0.0))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.lay_out()

    def event(self, event: QEvent) -> bool:
        if event.type() is QEvent.Type.LayoutRequest:
            self.lay_out()
        return super().event(event)

    @Slot()
    def lay_out(self) -> None:
        """Give every part its room."""
        is_low = self._is_strip or self.height() < self.least_height()
        places = self._strip_places() if is_low else self._places()
        wishes = [self._wish(place) for place in places]
        heights = dict(zip(places, share_out(self.height(), wishes), strict=True))
        self._wishes = {p.part: wish for p, wish in zip(places, wishes, strict=True)}
        top = 0
        for place in self._places(also_hidden=True):
            top += self._put(place, top, heights.get(place, 0), is_low)
        self._put_open_button()
        if self._cursor is not None:
            self._cursor.renew()
        self.laid_out.emit()
        if self._is_focus_due:
            self.focus_first()

    def _put(self, place: Place, top: int, height: int, is_low: bool) -> int:
        gap, edge = round(theme().px(place.gap_px)), self._edges.get(place.name)
        place.part.setVisible(height > 0)
        if height > 0:
            place.part.setGeometry(0, top, self.width(), height - gap)
        if edge is not None:
            edge.setVisible(height > 0 and not is_low)
            edge.setGeometry(0, top + height - gap - 1, self.width(), gap + 2)
        return height

    def _put_open_button(self) -> None:
        look = theme()
        self._open.resize(self._open.sizeHint())
        top = max(1, round(self._open_middle() - self._open.height() / 2))
        self._open.move(round(look.px(OPEN_LEFT_PX)), top)
        self._open.setVisible(self._is_strip)
        self._open.raise_()

    def _places(self, also_hidden: bool = False) -> list[Place]:
        names = [c.name for c in self.arrangement.lanes if c.is_shown or also_hidden]
        return [*self._above, *(self._lanes[name] for name in names), *self._below]

    def _strip_places(self) -> list[Place]:
        return [place for place in self._places() if place.strip_rank is not None]

    def _wish(self, place: Place) -> Wish:
        look, gap = theme(), round(theme().px(place.gap_px))
        least, usual, most, _, yields_last, fair, is_spare = place.wish
        if not most:
            part, width = place.part, self.width()
            has_own = part.hasHeightForWidth()
            own = part.heightForWidth(width) if has_own else part.sizeHint().height()
            return Wish(own + gap, own + gap, own + gap, self._rank(place))
        least = look.px(least) + gap
        wanted = self.arrangement.of(place.name).height_px if place.name else 0
        if wanted:
            own_px = max(least, look.px(wanted) + gap)
            rank = min(self._rank(place), CHOSEN_RANK)
            return Wish(least, own_px, own_px, rank, True)
        usual, most = look.px(usual) + gap, look.px(most) + gap
        fair = look.px(fair) + gap if fair else 0.0
        return Wish(least, usual, most, self._rank(place), yields_last, fair, is_spare)

    def _rank(self, place: Place) -> int:
        is_strip = self._is_strip and place.strip_rank is not None
        return place.strip_rank or 0 if is_strip else place.wish.rank

    # What the hand asks

    def name_of(self, part: QWidget) -> str:
        """Return the name of a lane the user may arrange, empty for any other part."""
        return self._names.get(part, "")

    def drop_at(self, y: float) -> tuple[str, bool, int]:
        """Return beside which lane one dropped at *y* comes, whether after it, and y of the gap."""
        seen = [self._lanes[name] for name in self.arrangement.shown]
        seen = [lane for lane in seen if lane.part.isVisible()]
        near = min(seen, key=lambda lane: abs(lane.part.geometry().center().y() - y))
        where, half = near.part.geometry(), round(theme().px(near.gap_px) / 2)
        is_after = y > where.center().y()
        return near.name, is_after, where.bottom() + half if is_after else where.top() - half

    def point(self, x: float, at_once: bool = True) -> None:
        """Let the cursor stand at *x*, at once or before the next painting."""
        if self._cursor is not None:
            self._cursor.point(x, at_once)

    def leave(self) -> None:
        """Take the cursor away."""
        if self._cursor is not None:
            self._cursor.leave()

    def put_under_cursor(self, part: QWidget) -> None:
        """Put *part*, which lies over the lanes, under the line of the cursor."""
        if self._cursor is not None:
            part.stackUnder(self._cursor.line)

    def step(self, by: int) -> str:
        """Step the cursor along the axis; return what is there."""
        return self._cursor.step(by) if self._cursor is not None else ""

    def lane(self, name: str) -> Place:
        """Return the place of a lane."""
        return self._lanes[name]

    @property
    def usual(self) -> Arrangement:
        """How the lanes are as long as the user has chosen nothing."""
        return Arrangement.usual(list(self._lanes))

    @property
    def crowded_out(self) -> dict[str, str]:
        """The lanes that are wanted but have no room, by their names with their titles."""
        if self._is_strip:
            return {}
        wanted = (self._lanes[name] for name in self.arrangement.shown)
        return {lane.name: lane.title for lane in wanted if not lane.part.isVisibleTo(self)}

    # Tables and focus

    def show_table(self, name: str, x: float | None = None) -> None:
        """Ask for the table of a lane, with the row of what is selected or at *x*."""
        lane = self._lanes[name]
        if lane.choose is not None:
            lane.choose(x)
        self.table_wanted.emit(lane.table)

    def focus_first(self) -> None:
        """Let the keys go to the first part in sight that takes them, once there is one."""
        parts = [place.part for place in self._places() if place.part.isVisible()]
        first = next((p for p in parts if p.focusPolicy() & Qt.FocusPolicy.TabFocus), None)
        self._is_focus_due = first is None
        if first is not None:
            first.setFocus(Qt.FocusReason.OtherFocusReason)
