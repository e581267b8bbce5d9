"""What the lanes under the day grid share: columns of weeks, before and now."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date, timedelta
from typing import NamedTuple

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.buildup import kinds
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.weeks import Role, WeekFigures
from ultraplanner_gui.widgets.axis import WeekAxis
from ultraplanner_gui.widgets.lane import LABEL_PT, Align, Lane, Scale, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording import reading
from ultraplanner_gui.wording.words import Words

BAR_SHARE = 0.62
WIDEST_BAR_PX = 58.0
TICK_EVERY_PX = 24.0
SAME = 0.5


class Column(NamedTuple):
    """One week of a lane: where it lies, its figures as kept and as they would be."""

    rect: QRectF
    now: WeekFigures
    before: WeekFigures | None


class WeekLane(Lane):
    """A lane over the weeks of the build-up; a subclass paints its columns."""

    def __init__(
        self,
        axis: WeekAxis,
        words: Callable[[], Words],
        name: str,
        height_px: float,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(name, "", height_px, parent)
        self._axis = axis
        self._words = words
        self._now: dict[date, WeekFigures] = {}
        self._before: dict[date, WeekFigures] = {}
        self._outlook: Outlook | None = None
        self._drawn: object = None

    def show_outlooks(self, before: Outlook, now: Outlook) -> None:
        """Show the weeks of *now*, and those of *before* where they differ."""
        self._outlook = now
        self._now = {w.start: w for w in now.weeks}
        self._before = {w.start: w for w in before.weeks}
        self.retitle()
        drawn = (
            now.today,
            now.asks,
            now.project.fuel.carb_g_per_h,
            [self.figures(w) for w in now.weeks],
            [self.figures(w) for w in before.weeks],
        )
        # A drag that leaves this lane's figures alone costs it no repaint.
        if drawn != self._drawn:
            self._drawn = drawn
            self.update()

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
        """Yield the weeks shown, first to race week."""
        for index, shown in enumerate(self._axis.weeks):
            now = self._now.get(shown.start)
            if now is None:
                continue
            left, _ = self._axis.column(index, body.width())
            right, _ = self._axis.column(index + 1, body.width())
            left, right = round(body.left() + left), round(body.left() + right)
            rect = QRectF(left, body.top(), right - left, body.height())
            yield Column(rect, now, self._before.get(shown.start))

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
        painter.setPen(QPen(c[hue], 1.0))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(rect.adjusted(0.5, 0.5, -0.5, -0.5))
        return
    fill = c[hue]
    if not is_done:
        fill.setAlphaF(0.72)
    painter.fillRect(rect, fill)


def paint_before(painter: QPainter, rect: QRectF) -> None:
    """Draw the dashed outline of a bar as it was kept."""
    painter.setPen(QPen(theme().colours["ink"], 1.2, Qt.PenStyle.DashLine))
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
