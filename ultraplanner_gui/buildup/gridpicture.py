"""What the day grid looks like, near by and from afar, and which parts of it to repaint."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PySide6.QtCore import QPointF, QRectF, QSize
from PySide6.QtGui import QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.buildup import gridpaint, kinds
from ultraplanner_gui.buildup.carry import LengthCarry, SessionCarry
from ultraplanner_gui.buildup.cells import FAR_PX, Cells, Tile
from ultraplanner_gui.buildup.crowd import parts_of
from ultraplanner_gui.buildup.gridmarks import (
    HandPicture,
    Mark,
    changed_region,
    paint_box,
    paint_chosen,
    paint_cursor,
    paint_offer,
    paint_origin,
)
from ultraplanner_gui.buildup.settle import Settling
from ultraplanner_gui.buildup.tile import Stage
from ultraplanner_gui.buildup.tilelayer import NOTHING_CARRIED, Scene, TileLayer
from ultraplanner_gui.buildup.wheel import AxisLane
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.week_axis import WeekAxis
from ultraplanner_gui.wording.words import Words

HEIGHT_PX = 252.0
LEAST_PX = 126.0
#: The kind of selection that is a week; its key is the first day.
WEEK = "week"


class GridPicture(AxisLane):
    """Sessions as tiles, what is in the hand over them; nothing happens to them here.

    Where columns are too narrow for tiles a week is one strip.
    """

    def __init__(
        self,
        axis: WeekAxis,
        selection: Selection,
        words: Callable[[], Words],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(axis, "", HEIGHT_PX, parent)
        self._selection = selection
        self._words = words
        self._outlook: Outlook | None = None
        self._cells = Cells(axis, self.body(), ())
        self._layer = TileLayer()
        self._marked: list[Mark] = []
        self._hand = HandPicture()
        self._carry: SessionCarry | None = None
        self._length: LengthCarry | None = None
        self._box: QRectF | None = None
        self._settling = Settling(self._refresh, self)
        self._by_mouse = False
        self._grab = QPointF()
        self._pointer = QPointF()
        self.day: date | None = None

    @property
    def cells(self) -> Cells:
        """Where the tiles lie."""
        return self._cells

    @property
    def is_far(self) -> bool:
        """Whether weeks are drawn as strips."""
        return self._axis.each(self.body().width()) < theme().px(FAR_PX)

    @property
    def is_carrying(self) -> bool:
        """Whether a session, or the edge of one, is in the hand."""
        return self._carry is not None or self._length is not None

    def minimumSizeHint(self) -> QSize:
        return QSize(300, round(theme().px(LEAST_PX)))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._lay_out()

    def readout(self, at: QPointF) -> str:
        day = self._cells.day_at(at)
        if day is None:
            return ""
        tile = self._cells.tile_at(at)
        if self.is_far and tile is None:
            return self._week_sentence(day)
        if tile is None:
            return self._words().day(day)
        there = self._cells.on(day)
        if len(there) > 1 and (self.is_far or self._cells.is_crowded(day)):
            return kinds.day_sentences(there, self._words(), self._is_past(day))
        return self._sentence(tile.session)

    def paintEvent(self, event: QPaintEvent) -> None:
        scene = self._scene()
        if scene is None:
            super().paintEvent(event)
            return
        late = self._layer.renew(scene)
        self._marked = self._marks()
        painter = QPainter(self)
        painter.drawPixmap(QPointF(), self._layer.picture)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for mark in self._marked:
            if mark.kind == "origin":
                paint_origin(painter, mark)
            elif mark.kind == "offer":
                paint_offer(painter, mark)
        gridpaint.paint_today(painter, self._cells, self._axis, scene.today)
        for mark in self._marked:
            if mark.kind == "cursor":
                paint_cursor(painter, mark)
            elif mark.kind == "chosen":
                paint_chosen(painter, mark)
            elif mark.kind == "box":
                paint_box(painter, mark)
            elif mark.kind == "hand":
                self._hand.paint(painter, mark, scene.words)
        painter.end()
        if not late.subtracted(event.region()).isEmpty():
            self.update(late)

    def paint_head(self, painter: QPainter) -> None:
        pass

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        texts = (
            self.tr("No sessions yet."),
            self.tr("Build the block from the Build-up menu, or press N to add a run."),
        )
        gridpaint.paint_lines_of_text(painter, body, texts)

    def _draw_anew(self) -> None:
        self._layer.clear()
        self._hand.forget()
        self._lay_out()
        self.update()

    def _refresh(self) -> None:
        """Repaint what looks different now and nothing else."""
        scene = self._scene()
        if scene is None or not self.isVisible():
            self.update()
            return
        self.update(self._layer.renew(scene) + changed_region(self._marked, self._marks()))

    def _scene(self) -> Scene | None:
        """Return what to draw; None as long as there are no sessions."""
        now = self._outlook
        if now is None or not self._has_sessions():
            return None
        return Scene(
            self.size(),
            self.devicePixelRatioF(),
            self._cells,
            self._axis,
            self._words(),
            now.today,
            now.project.race.day,
            now.project.first_weekday,
            longest_run_m(now.project.block.sessions) if self.is_far else None,
            self._in_hand(),
        )

    def _marks(self) -> list[Mark]:
        marks, carry = [], self._carry
        if self._length is not None:
            return [Mark("hand", self._drawn_out(self._length), session=self._length_shown())]
        if carry is not None and (not carry.is_home or self._by_mouse):
            cells = (self._cells.cell(day) for day in carry.origins)
            marks += [Mark("origin", cell) for cell in cells if cell is not None]
        offered = self._offered_day()
        cell = None if offered is None else self._cells.cell(offered)
        if cell is not None:
            marks.append(Mark("offer", cell))
        if carry is not None and self._by_mouse:
            return [*marks, Mark("hand", self._hand_rect(carry.session), session=carry.session)]
        settling = self._settling.mark()
        cursor = self._cursor() if settling is None else settling
        marks += self._chosen_marks()
        if self._box is not None:
            marks.append(Mark("box", self._box))
        return marks if cursor is None else [*marks, cursor]

    def _offered_day(self) -> date | None:
        """Return the day that was found to hold what is in the hand."""
        return None

    def _chosen_marks(self) -> list[Mark]:
        keys = self._selection.keys if self._selection.kind == "session" else ()
        if len(keys) < 2 or self.is_far:
            return []
        tiles = (self._cells.tile(key) for key in keys if key != self._selection.key)
        return [Mark("chosen", self._drawn_at(tile)) for tile in tiles if tile is not None]

    def _cursor(self) -> Mark | None:
        has_focus, tile = self.hasFocus(), self._chosen_tile()
        if tile is not None:
            return Mark("cursor", tile, has_focus)
        if self.day is None or not (has_focus or self._selection.kind == WEEK):
            return None
        if self.is_far:
            index = self._axis.index_of(self.day)
            if index is None or not self._axis.is_shown(index):
                return None
            return Mark("cursor", self._cells.week(index), has_focus)
        cell = self._cells.cell(self.day)
        return Mark("cursor", cell, True, True) if has_focus and cell is not None else None

    def _in_hand(self) -> tuple[frozenset[str], Stage]:
        if self._length is not None:
            return frozenset((self._length.session.key,)), Stage(is_landing=True)
        if self._carry is not None:
            stage = Stage(is_carried=not self._by_mouse, is_landing=self._by_mouse)
            return self._carry.landing_keys, stage
        if self._settling.key:
            return frozenset((self._settling.key,)), Stage(is_landing=True)
        return NOTHING_CARRIED

    def _length_shown(self) -> Session | None:
        """Return the session whose edge is in the hand, as long as it would be."""
        assert self._outlook is not None
        assert self._length is not None
        key = self._length.session.key
        sessions = self._outlook.project.block.sessions
        return next((s for s in sessions if s.key == key), self._length.session)

    def _drawn_out(self, length: LengthCarry) -> QRectF:
        """Return the tile drawn out to where its edge is held."""
        tile = self._cells.tile(length.session.key)
        rect = QRectF(self._cells.body.topLeft(), self._cells.cell_size)
        rect = rect if tile is None else QRectF(tile.rect)
        width = self._pointer.x() + self._grab.x() - rect.left()
        rect.setWidth(min(max(rect.height(), width), self._cells.body.right() - rect.left()))
        return rect

    def _hand_rect(self, session: Session) -> QRectF:
        """Return where the carried tile hangs: under the pointer, never out of the grid."""
        cell, body, size = self._cells.cell(session.day), self._cells.body, self._cells.cell_size
        rect = QRectF(self._pointer - self._grab, size if cell is None else cell.size())
        if not rect.contains(self._pointer):
            rect.moveCenter(self._pointer)
        rect.moveLeft(min(max(rect.left(), body.left()), body.right() - rect.width()))
        rect.moveTop(min(max(rect.top(), 0.0), self.height() - rect.height() - 4.0))
        return rect

    def _chosen_tile(self) -> QRectF | None:
        if self._selection.kind != "session":
            return None
        tile = self._cells.tile(self._selection.key)
        return None if tile is None else self._drawn_at(tile)

    def _drawn_at(self, tile: Tile) -> QRectF:
        """Return where *tile* is drawn: on a full day only over what the day comes to."""
        day = tile.session.day
        cell = self._cells.cell(day) if self._cells.is_crowded(day) else None
        if cell is None:
            return tile.rect
        there = self._cells.tiles_on(day)
        return parts_of(cell, len(there))[there.index(tile)]

    def _sentence(self, session: Session) -> str:
        return kinds.sentence(session, self._words(), self._is_past(session.day))

    def _is_past(self, day: date) -> bool:
        return self._outlook is not None and day < self._outlook.today

    def _week_sentence(self, day: date) -> str:
        index = self._axis.index_of(day)
        if index is None or self._outlook is None:
            return ""
        start = self._axis.weeks[index].start
        week = next((w for w in self._outlook.weeks if w.start == start), None)
        return "" if week is None else kinds.week_sentence(week, self._words())

    def _has_sessions(self) -> bool:
        return bool(self._cells.by_day)

    def _lay_out(self) -> None:
        sessions = self._outlook.project.block.sessions if self._outlook is not None else ()
        self._cells = Cells(self._axis, self.body(), sessions, self._cells, theme().scale)


def longest_run_m(sessions: tuple[Session, ...]) -> float:
    """Return the longest distance planned or done, the race apart."""
    runs = [s for s in sessions if s.kind is not Kind.RACE]
    done = [s.done.distance_m for s in runs if s.done is not None]
    return max([0.0, *(s.distance_m for s in runs), *done])
