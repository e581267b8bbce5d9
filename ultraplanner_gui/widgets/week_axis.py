"""The axis of the build-up: weeks counted down to the race, all of them or a stretch.

The race week keeps the right edge. Where weeks between the stretch and the race are out of view
the axis is torn in front of it.
"""

from __future__ import annotations

from datetime import date, timedelta

from PySide6.QtCore import QObject, Signal

from ultraplanner_gui.engine.weeks import WeekFigures

LEAST_WEEKS = 8
WEEKS_BEHIND = 2
STEP = 1.25
TEAR_PX = 11.0


class WeekAxis(QObject):
    """Columns are weeks; x runs from 0 to the body's width.

    `first` is the first week in view, `count` the number of columns, the race week's included.
    """

    changed = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.weeks: tuple[WeekFigures, ...] = ()
        self.first = 0
        self.count = 0
        self._is_zoomed = False
        self._is_scrolled = False

    # What there is and what is in view

    def show(self, weeks: tuple[WeekFigures, ...]) -> None:
        """Take over the weeks there are, first to race week; the stretch in view is kept."""
        before, was_whole = self.weeks, self.is_whole
        self.weeks = weeks
        if [(w.start, w.role) for w in weeks] == [(w.start, w.role) for w in before]:
            return
        first, count = self.first, self.count
        if before and weeks:
            first += (before[0].start - weeks[0].start).days // 7
        if was_whole:
            first, count = 0, len(weeks)
        if not self._set(first, count):
            self.changed.emit()

    def fit(self, today: date, room: int) -> None:
        """Choose the stretch as far as the user has not.

        All weeks where there is *room* for as many columns, else from two weeks before *today*.
        """
        count = len(self.weeks)
        if self._is_zoomed or not count:
            return
        here = self.index_of(today)
        first = 0 if here is None or count <= room else max(0, here - WEEKS_BEHIND)
        first = min(first, count - min(LEAST_WEEKS, count))
        self._set(self.first if self._is_scrolled else first, count - first)

    def view(self, first: int, count: int) -> None:
        """Show *count* columns from the week *first* on; kept inside what there is."""
        self._is_zoomed = self._is_scrolled = True
        self._set(first, count)

    def zoom(self, turns: float, index: int) -> None:
        """Show fewer weeks, for negative *turns* more; the column *index* keeps its place."""
        wanted = round(self.count / STEP**turns)
        if wanted == self.count:
            wanted += -1 if turns > 0 else 1
        self.zoom_to(wanted, index)

    def zoom_to(self, count: int, index: int) -> None:
        """Show *count* columns, the column *index* at about the place it has."""
        count = self._kept_inside(count)
        if not self.is_shown(index):
            self.view(index - (count - 1) // 2, count)
        elif index == len(self.weeks) - 1:
            self.view(len(self.weeks) - count, count)
        else:
            share = (index - self.first + 0.5) / max(1, self.count)
            self.view(index - min(int(share * count), max(0, count - 2)), count)

    def scroll(self, weeks: int) -> bool:
        """Show the stretch so many *weeks* later; return whether there was any way to go."""
        if self.is_whole:
            return False
        self._is_scrolled = True
        return self._set(self.first + weeks, self.count)

    def reveal(self, index: int) -> None:
        """Scroll, as little as it takes, so that the week *index* is in view."""
        if not self.is_shown(index):
            last = self.first + max(1, self.count - 1) - 1
            self.scroll(index - self.first if index < self.first else index - last)

    def show_all(self) -> None:
        """Bring every week into view."""
        self.view(0, len(self.weeks))

    @property
    def is_whole(self) -> bool:
        """Whether every week is in view."""
        return self.count == len(self.weeks)

    @property
    def hidden_after(self) -> int:
        """The number of weeks out of view between the stretch and the race week."""
        return len(self.weeks) - self.count - self.first

    @property
    def shown(self) -> tuple[int, ...]:
        """The columns in view, left to right."""
        if not self.count:
            return ()
        return (*range(self.first, self.first + self.count - 1), len(self.weeks) - 1)

    def is_shown(self, index: int) -> bool:
        """Whether the week *index* is in view."""
        in_stretch = self.first <= index < self.first + self.count - 1
        return in_stretch or (self.count > 0 and index == len(self.weeks) - 1)

    # Where it lies

    def edges(self, index: int, width: float) -> tuple[float, float]:
        """Return left and right edge of a column in a body of *width*.

        Weeks before the stretch lie left of 0; those torn out before the race have no width.
        """
        each, last = self.each(width), self.first + self.count - 1
        if self.hidden_after and index == len(self.weeks) - 1:
            return width - each, width
        if self.hidden_after and index >= last:
            return (last - self.first) * each, (last - self.first) * each
        return (index - self.first) * each, (index + 1 - self.first) * each

    def each(self, width: float) -> float:
        """Return the width of a column."""
        tear = TEAR_PX if self.hidden_after else 0.0
        return max(0.0, width - tear) / max(1, self.count)

    def tear(self, width: float) -> tuple[float, float] | None:
        """Return left and right edge of the tear before the race week; None if there is none."""
        if not self.hidden_after:
            return None
        each = self.each(width)
        return (self.count - 1) * each, width - each

    def index_at(self, x: float, width: float) -> int | None:
        """Return the column at *x*; None outside. The tear belongs to the week before it."""
        if not self.weeks or not 0.0 <= x < width:
            return None
        column = min(int(x / self.each(width)), self.count - 1)
        if not self.hidden_after:
            return self.first + column
        if x >= width - self.each(width):
            return len(self.weeks) - 1
        return self.first + max(0, min(column, self.count - 2))

    def index_of(self, day: date) -> int | None:
        """Return the column that holds *day*, in view or not; None outside the block."""
        if not self.weeks:
            return None
        index = (day - self.weeks[0].start).days // 7
        return index if 0 <= index < len(self.weeks) else None

    def day(self, index: int, row: int) -> date:
        """Return the date in column *index*, row *row* of the day grid."""
        return self.weeks[index].start + timedelta(days=row)

    def _kept_inside(self, count: int) -> int:
        return min(max(count, LEAST_WEEKS), len(self.weeks))

    def _set(self, first: int, count: int) -> bool:
        count = self._kept_inside(count)
        first = min(max(first, 0), len(self.weeks) - count)
        if (first, count) == (self.first, self.count):
            return False
        self.first, self.count = first, count
        self.changed.emit()
        return True
