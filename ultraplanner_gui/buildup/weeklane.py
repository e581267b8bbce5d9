"""What the lanes under the day grid share: columns of weeks, before and now."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from datetime import date, timedelta
from math import ceil
from typing import NamedTuple, cast

from PySide6.QtCore import QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QRegion
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.buildup import gridpaint, kinds
from ultraplanner_gui.buildup.wheel import AxisLane
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.weeks import Role, WeekFigures
from ultraplanner_gui.widgets.lane import LABEL_PT, Align, Scale, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke
from ultraplanner_gui.widgets.week_axis import TEAR_PX, WeekAxis
from ultraplanner_gui.wording import reading
from ultraplanner_gui.wording.words import Words

BAR_SHARE = 0.62
WIDEST_BAR_PX = 58.0
TICK_EVERY_PX = 24.0
SAME = 0.5
#: In columns narrower than this only some figures are written.
NARROW_PX = 34.0
SCALE_STEP = 0.125
OVERHANG_PX = 6.0
NARROW_OVERHANG_PX = 14.0


class Column(NamedTuple):
    """One week of a lane: where it lies, its figures as kept and as they would be."""

    rect: QRectF
    now: WeekFigures
    before: WeekFigures | None


class WeekLane(AxisLane):
    """A lane over the weeks of the build-up; a subclass paints its columns.

    Only the columns whose figures changed are painted again, unless the scale changed with them.
    """

    def __init__(
        self,
        axis: WeekAxis,
        words: Callable[[], Words],
        name: str,
        height_px: float,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(axis, name, height_px, parent)
        self._words = words
        self._now: dict[date, WeekFigures] = {}
        self._before: dict[date, WeekFigures] = {}
        self._outlook: Outlook | None = None
        self.ends = (0.0, 1.0)
        self._of_all: object = None
        self._of_week: dict[date, object] = {}
        self._region = QRegion()
        axis.changed.connect(self.update)

    def show_outlooks(self, before: Outlook, now: Outlook) -> None:
        """Show the weeks of *now*, and those of *before* where they differ."""
        self._outlook = now
        self._now = {w.start: w for w in now.weeks}
        self._before = {w.start: w for w in before.weeks}
        self.retitle()
        of_week: dict[date, object] = {
            w.start: (self.figures(w), self._figures_before(w.start)) for w in now.weeks
        }
        self.ends = self._steady_ends(before.weeks, now.weeks)
        of_all = (now.today, now.asks, now.project.fuel.carb_g_per_h, self.ends)
        days = of_week.keys() | self._of_week.keys()
        changed = [day for day in days if of_week.get(day) != self._of_week.get(day)]
        if of_all != self._of_all:
            self.update()
        elif changed:
            self.update(self._around(changed))
        self._of_all, self._of_week = of_all, of_week

    def _figures_before(self, start: date) -> tuple[object, ...] | None:
        week = self._before.get(start)
        return None if week is None else self.figures(week)

    def _around(self, days: list[date]) -> QRegion:
        """Return where what is drawn depends on the weeks that begin on *days*."""
        region, body, reach = QRegion(), self.body(), self.reach_px()
        for day in days:
            index = self._axis.index_of(day)
            if index is not None and self._axis.is_shown(index):
                column = self._rect(index, body).adjusted(-reach, -2.0, reach, 2.0)
                region += column.toAlignedRect()
        return region

    def extent(self, weeks: Iterable[WeekFigures]) -> tuple[float, float]:
        """Return the lowest and highest value drawn over *weeks*."""
        return 0.0, 1.0

    def _steady_ends(
        self, before: Iterable[WeekFigures], now: Iterable[WeekFigures]
    ) -> tuple[float, float]:
        """Return the ends of the scale: those of the weeks as kept, so that it stays still.

        What would go beyond them moves them by whole steps.
        """
        (low, high), (least, most) = self.extent(before), self.extent(now)
        step = (high - low) * SCALE_STEP
        if most > high:
            high += ceil((most - high) / step) * step
        if least < low:
            low -= ceil((low - least) / step) * step
        return low, high

    def figures(self, week: WeekFigures) -> tuple[object, ...]:
        """Return what of *week* is drawn here."""
        return (week.start, week.to_go, week.role)

    def retitle(self) -> None:
        """Name the unit in the user's words."""

    def minimumSizeHint(self) -> QSize:
        return QSize(300, round(theme().px(self._height_px * 0.7)))

    def readout(self, at: QPointF) -> str:
        body = self.body()
        index = self._axis.index_at(at.x() - body.left(), body.width())
        week = None if index is None else self._now.get(self._axis.weeks[index].start)
        if week is None or not self.has_sessions:
            return ""
        return f"{kinds.week_name(week, self._words())}: {self.sentence(week)}"

    def sentence(self, week: WeekFigures) -> str:
        """Return the figures of *week* in words."""
        raise NotImplementedError

    @property
    def has_sessions(self) -> bool:
        """Whether there is anything to show."""
        return self._outlook is not None and bool(self._outlook.project.block.sessions)

    def columns(self, body: QRectF) -> Iterator[Column]:
        """Yield the weeks in view, first to race week."""
        yield from self._columns(self._axis.shown, body)

    def dirty_columns(self, body: QRectF) -> Iterator[Column]:
        """Yield those of `columns` that are to be painted."""
        shown, each = self._axis.shown, self._axis.each(body.width())
        over, places = self._overhang(), set[int]()
        for rect in cast("Iterable[QRect]", self._region):
            first = int((rect.left() - over - TEAR_PX - body.left()) // each)
            last = int((rect.right() + over - body.left()) // each)
            places.update(range(max(0, first), min(last + 1, len(shown))))
        yield from self._columns([shown[place] for place in sorted(places)], body)

    @property
    def is_narrow(self) -> bool:
        """Whether columns have no room for a figure each."""
        return self._axis.each(self.body().width()) < theme().px(NARROW_PX)

    def reach_px(self) -> float:
        """Return how far beside a week what is drawn depends on it."""
        each = self._axis.each(self.body().width())
        return self._overhang() + (each if self.is_narrow else 0.0)

    def _overhang(self) -> float:
        """Return how far what is written over a week hangs out of its column."""
        return theme().px(NARROW_OVERHANG_PX if self.is_narrow else OVERHANG_PX)

    def _columns(self, indices: Iterable[int], body: QRectF) -> Iterator[Column]:
        for index in indices:
            start = self._axis.weeks[index].start
            now = self._now.get(start)
            if now is not None:
                yield Column(self._rect(index, body), now, self._before.get(start))

    def _rect(self, index: int, body: QRectF) -> QRectF:
        left, right = self._axis.edges(index, body.width())
        left, right = round(body.left() + left), round(body.left() + right)
        return QRectF(left, body.top(), right - left, body.height())

    def paintEvent(self, event: QPaintEvent) -> None:
        self._region = event.region()
        super().paintEvent(event)
        if self._axis.hidden_after:
            painter = QPainter(self)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            gridpaint.paint_tear(painter, self.body(), self._axis)
            painter.end()

    def paint_head(self, painter: QPainter) -> None:
        if self._region.intersects(QRectF(0, 0, self.body().left(), self.height()).toRect()):
            super().paint_head(painter)

    def is_done(self, week: WeekFigures) -> bool:
        """Whether the whole week lies behind today."""
        return self._outlook is not None and week.start + timedelta(days=6) < self._outlook.today

    def before_of(self, week: WeekFigures) -> WeekFigures | None:
        """Return the week as kept."""
        return self._before.get(week.start)

    def height_m_per_unit(self) -> float:
        """Return the metres of the user's unit of height."""
        return reading.M_PER_FOOT if self._words().units == "imperial" else 1.0


def bar_rect(
    column: QRectF, scale: Scale, low: float, high: float, share: float = BAR_SHARE
) -> QRectF:
    """Return a bar in the middle of *column* from value *low* to *high*, edges on whole pixels."""
    width = min(column.width() * share, theme().px(WIDEST_BAR_PX))
    left = round(column.center().x() - width / 2)
    top, bottom = round(scale.y(high)), round(scale.y(low))
    return QRectF(left, top, max(2, round(width)), bottom - top)


def paint_bar(painter: QPainter, rect: QRectF, hue: str, role: Role, is_done: bool) -> None:
    """Fill a bar: full ink behind today, less ahead; cutback weeks paler with an outline."""
    if rect.height() < 1.0:
        return
    c = theme().colours
    if role is Role.CUTBACK:
        painter.fillRect(rect, c[f"pale_{hue}"])
        painter.setPen(QPen(c[hue], Stroke.HAIR))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(rect.adjusted(0.5, 0.5, -0.5, -0.5))
        return
    fill = c[hue]
    if not is_done:
        fill.setAlphaF(0.72)
    painter.fillRect(rect, fill)


def paint_before(painter: QPainter, rect: QRectF) -> None:
    """Draw the dashed outline of a bar as it was kept."""
    painter.setPen(QPen(theme().colours["ink"], Stroke.THIN, Qt.PenStyle.DashLine))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(rect.adjusted(-0.5, -0.5, 0.5, 0.5))


def paint_label(
    painter: QPainter,
    at: QPointF,
    text: str,
    colour: QColor,
    bold: bool = False,
    size: float = LABEL_PT,
) -> None:
    """Write *text* centred on *at.x()*, its foot at *at.y()*."""
    look = theme()
    height = look.metrics(size, bold).ascent() + 1.0
    rect = QRectF(at.x() - 60.0, at.y() - height, 120.0, height)
    draw_text(painter, rect, text, colour, look.font(size, bold), Align.AlignCenter)


def differs(one: float, other: float | None) -> bool:
    """Whether two figures differ by more than rounding."""
    return other is not None and abs(one - other) > SAME
