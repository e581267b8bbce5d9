"""Where things lie in the day grid: columns of weeks, rows of days, tiles in cells."""

from __future__ import annotations

from collections import defaultdict
from datetime import date, timedelta
from functools import cached_property
from math import ceil

from PySide6.QtCore import QPointF, QRectF, QSizeF

from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.week_axis import WeekAxis

ROWS = 7
GAP_PX = 1.5
SIDE_BY_SIDE_PX = 88.0
#: Rows lower than this have no room for two tiles one above the other, each with its text.
LOW_ROW_PX = 23.0
#: Room for a letter and its figure side by side, and for one over the other.
HALF_PX, NARROW_PX = 25.0, 22.0
#: As high is a line of nothing but letters and figures, in a tile and in a strip.
LIST_PX, STRIP_LIST_PX = 7.0, 8.0
#: Columns as wide as this carry tiles with a figure; narrower than the second they are strips.
TILE_PX = 44.0
FAR_PX = 34.0


class Tile(Value, frozen=True):
    """One session and where it is drawn."""

    session: Session
    rect: QRectF


class Cells:
    """The grid laid out in *body*: every edge on a whole pixel, so that lines stay sharp.

    *scale* is that of the text.
    """

    def __init__(
        self,
        axis: WeekAxis,
        body: QRectF,
        sessions: tuple[Session, ...],
        last: Cells | None = None,
        scale: float = 1.0,
    ) -> None:
        self._axis = axis
        self._scale = scale
        self.body = body
        # Rows of one height, so that all tiles leave out the same.
        self.row_height = max(1, int(body.height() // ROWS))
        weeks = tuple((week.start, week.role) for week in axis.weeks)
        #: Equal for two layouts if every day lies at the same place in both.
        self.frame = (body, weeks, axis.first, axis.count, scale)
        self._by_day: dict[date, list[Session]] = defaultdict(list)
        for session in sessions:
            self._by_day[session.day].append(session)
        # A layout nobody asked for its tiles has none to keep: a window has several as it opens.
        self.before = last
        if last is not None and "by_day" not in vars(last):
            self.before = last.before

    @cached_property
    def by_day(self) -> dict[date, list[Tile]]:
        """The tiles; a day like in the layout before keeps its very list, so nobody redraws it."""
        last, self.before = self.before, None
        known = last.by_day if last is not None and last.frame == self.frame else {}
        laid_out: dict[date, list[Tile]] = {}
        for day, sessions in self._by_day.items():
            there = known.get(day)
            if there is None or [tile.session for tile in there] != sessions:
                there = self._laid_out(day, sessions)
            laid_out[day] = there
        return laid_out

    @property
    def tiles(self) -> list[Tile]:
        """Every tile, day by day."""
        return [tile for day in sorted(self.by_day) for tile in self.by_day[day]]

    @property
    def first_day(self) -> date | None:
        """The first day of the block, in view or not."""
        return self._axis.weeks[0].start if self._axis.weeks else None

    @property
    def last_day(self) -> date | None:
        """The last day of the race week."""
        return self._axis.weeks[-1].start + timedelta(days=6) if self._axis.weeks else None

    @property
    def columns(self) -> tuple[int, ...]:
        """The columns in view, left to right."""
        return self._axis.shown

    @property
    def cell_size(self) -> QSizeF:
        """About the size of every cell without the gaps."""
        width = max(1.0, self._axis.each(self.body.width()) - 2 * GAP_PX)
        return QSizeF(width, max(1.0, self.row_height - 2 * GAP_PX))

    def column(self, index: int) -> tuple[float, float]:
        """Return left and right edge of a column."""
        left, right = self._axis.edges(index, self.body.width())
        return round(self.body.left() + left), round(self.body.left() + right)

    def row(self, index: int) -> tuple[float, float]:
        """Return upper and lower edge of a row."""
        top = round(self.body.top()) + index * self.row_height
        return top, top + self.row_height

    def place(self, day: date) -> tuple[int, int] | None:
        """Return column and row of *day*, in view or not; None outside."""
        column = self._axis.index_of(day)
        return None if column is None else (column, (day - self._axis.weeks[column].start).days)

    def cell(self, day: date) -> QRectF | None:
        """Return the cell of *day* without the gaps; None outside or out of view."""
        outer = self.outer_cell(day)
        return None if outer is None else outer.adjusted(GAP_PX, GAP_PX, -GAP_PX, -GAP_PX)

    def outer_cell(self, day: date) -> QRectF | None:
        """Return the cell of *day* with the gaps round it; None outside or out of view."""
        place = self.place(day)
        if place is None or not self._axis.is_shown(place[0]):
            return None
        (left, right), (top, bottom) = self.column(place[0]), self.row(place[1])
        return QRectF(left, top, right - left, bottom - top)

    def week(self, index: int) -> QRectF:
        """Return the whole column of the week *index*, which is in view."""
        left, right = self.column(index)
        top, bottom = self.row(0)[0], self.row(ROWS - 1)[1]
        return QRectF(left, top, right - left, bottom - top)

    def on(self, day: date) -> list[Session]:
        """Return the sessions of *day*, in order."""
        return self._by_day.get(day, [])

    def tiles_on(self, day: date) -> list[Tile]:
        """Return the tiles of *day*: side by side where there is room, else in lines."""
        return self.by_day.get(day, [])

    def _laid_out(self, day: date, sessions: list[Session]) -> list[Tile]:
        cell = self.cell(day)
        if cell is None:
            return []
        if len(sessions) == 1:
            return [Tile(sessions[0], cell)]
        lines = 1 if self.is_crowded(day) else self._most_lines(len(sessions))
        rects = _shares(cell, _lines(sessions, lines))
        return [Tile(s, rect) for s, rect in zip(sessions, rects, strict=True)]

    def _most_lines(self, count: int) -> int:
        """Return in how many lines *count* tiles may stand so that each has room for its text."""
        # By what every column measures, so that all weeks are laid out alike.
        width, scale = self.cell_size.width() + 2 * GAP_PX, self._scale
        if self._is_far:
            return count
        lines = min(count, max(1, int(2 * self.row_height // (LOW_ROW_PX * scale))))
        if width >= SIDE_BY_SIDE_PX * scale and self._width_of(count) >= NARROW_PX * scale:
            return 1
        while lines < count and self._width_of(ceil(count / lines)) < HALF_PX * scale:
            if self._height_of(lines + 1) < LIST_PX * max(scale, 1.0):
                break
            lines += 1
        return lines

    def is_crowded(self, day: date) -> bool:
        """Whether *day* has more sessions than can be told one by one."""
        count = len(self._by_day.get(day, ()))
        if count < 2:
            return False
        lines = self._most_lines(count)
        if self._is_far:
            return self._height_of(count) < STRIP_LIST_PX * max(self._scale, 1.0)
        if lines == count:
            return self._height_of(count) < LIST_PX * max(self._scale, 1.0)
        least = NARROW_PX if lines == 1 else HALF_PX
        return self._width_of(ceil(count / lines)) < least * self._scale

    @property
    def _is_far(self) -> bool:
        return self.cell_size.width() + 2 * GAP_PX < FAR_PX * self._scale

    def _width_of(self, count: int) -> float:
        """Return the width of one of *count* tiles beside each other."""
        return (self.cell_size.width() - GAP_PX * (count - 1)) / count

    def _height_of(self, lines: int) -> float:
        """Return the height of one of *lines* lines of tiles."""
        return (self.cell_size.height() - (lines - 1)) / lines

    def tile(self, key: str) -> Tile | None:
        """Return the tile of the session *key*."""
        there = (tile for tiles in self.by_day.values() for tile in tiles)
        return next((tile for tile in there if tile.session.key == key), None)

    def tile_at(self, at: QPointF) -> Tile | None:
        """Return the tile under *at*."""
        day = self.day_at(at)
        if day is None:
            return None
        return next((t for t in self.tiles_on(day) if t.rect.contains(at)), None)

    def day_at(self, at: QPointF) -> date | None:
        """Return the day under *at*; None outside the grid."""
        column = self._axis.index_at(at.x() - self.body.left(), self.body.width())
        row = int((at.y() - round(self.body.top())) // self.row_height)
        return None if column is None or not 0 <= row < ROWS else self._axis.day(column, row)

    def clamped(self, day: date) -> date | None:
        """Return the day of the block that is nearest to *day*; None if there is none."""
        first, last = self.first_day, self.last_day
        return None if first is None or last is None else min(max(day, first), last)

    def step(self, day: date | None, key: str, days: int) -> tuple[date, Session | None] | None:
        """Return day and session *days* further on from *day*; None where the grid ends.

        One day up or down first visits the other sessions of the same day; *key* is the
        session one is on.
        """
        first = self.first_day
        here = day or first
        if first is None or here is None:
            return None
        keys = [session.key for session in self.on(here)]
        place = keys.index(key) + days if key in keys and abs(days) == 1 else -1
        if 0 <= place < len(keys):
            return here, self.on(here)[place]
        there = here + timedelta(days=days)
        return None if self.place(there) is None else (there, self._end_of(there, days == -1))

    def end(self, day: date | None, to_first: bool) -> tuple[date, Session | None] | None:
        """Return day and session of the same weekday in the first or last week."""
        first, last = self.first_day, self.last_day
        if first is None or last is None:
            return None
        row = ((day or first) - first).days % ROWS
        there = first + timedelta(days=row) if to_first else last - timedelta(days=6 - row)
        return there, self._end_of(there, False)

    def _end_of(self, day: date, is_last: bool) -> Session | None:
        sessions = self.on(day)
        return sessions[-1 if is_last else 0] if sessions else None


def _lines(sessions: list[Session], most: int) -> list[int]:
    """Return how many of *sessions* stand in each of at most *most* lines.

    Lines are as full as each other; where that leaves some with one fewer, the longest run has
    one of those.
    """
    each, more = divmod(len(sessions), most)
    if not more:
        return [each] * most
    longest = max(range(len(sessions)), key=lambda k: (sessions[k].distance_m, -k))
    first_full = 0 if longest >= more * (each + 1) else most - more
    return [each + (first_full <= k < first_full + more) for k in range(most)]


def _shares(cell: QRectF, lines: list[int]) -> list[QRectF]:
    """Return the parts of *cell*, line by line, in *lines* of so many each."""
    high = (cell.height() - (len(lines) - 1)) / len(lines)
    rects = []
    for line, count in enumerate(lines):
        wide = (cell.width() - GAP_PX * (count - 1)) / count
        top = cell.top() + line * (high + 1.0)
        rects += [QRectF(cell.left() + k * (wide + GAP_PX), top, wide, high) for k in range(count)]
    return rects
