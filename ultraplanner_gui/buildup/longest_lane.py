"""The longest run of each week against what the race asks."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.buildup.weeklane import NARROW_OVERHANG_PX, Column, WeekLane, differs
from ultraplanner_gui.engine.weeks import Role, WeekFigures
from ultraplanner_gui.widgets.lane import LABEL_PT, Align, Scale, draw_level, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke
from ultraplanner_gui.widgets.week_axis import WeekAxis
from ultraplanner_gui.wording.words import Words

HEIGHT_PX = 44.0
DOT_PX = 3.0


class LongestLane(WeekLane):
    """Dots joined by a line: filled for weeks behind, hollow ahead."""

    topic = "longest run"

    def __init__(
        self, axis: WeekAxis, words: Callable[[], Words], parent: QWidget | None = None
    ) -> None:
        super().__init__(axis, words, "", HEIGHT_PX, parent)
        self.rename(self.tr("Longest"))

    def retitle(self) -> None:
        words, asked = self._words(), self._asked_m()
        if asked is None:
            self.set_unit(words.distance_unit)
        else:
            self.set_unit(
                self.tr("{0}, asked {1}").format(words.distance_unit, words.distance_bare(asked, 0))
            )

    def figures(self, week: WeekFigures) -> tuple[object, ...]:
        return (*super().figures(week), week.longest_m)

    def sentence(self, week: WeekFigures) -> str:
        words, before, asked = self._words(), self.before_of(week), self._asked_m()
        text = self.tr("longest run {0}").format(words.distance(week.longest_m))
        if before is not None and differs(week.longest_m, before.longest_m):
            text = self.tr("{0}, before {1}").format(text, words.distance(before.longest_m))
        if asked is not None:
            text = self.tr("{0}; the race asks {1}").format(text, words.distance(asked))
        return text

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        if not self.has_sessions:
            return
        columns = [c for c in self._columns_and_next(body) if c.now.role is not Role.RACE]
        scale = self._scale(body)
        self._paint_scale(painter, body, scale)
        painter.save()
        painter.setClipRect(body.adjusted(0.0, -1.0, 0.0, 1.0), Qt.ClipOperation.IntersectClip)
        self._paint_before(painter, columns, scale)
        dots = [(c, self._point(c, c.now, scale)) for c in columns if c.now.longest_m > 0.0]
        painter.setPen(QPen(theme().colours["ink"], Stroke.THIN))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolyline([at for _, at in dots])
        is_dirty = {column.now.start for column in self.dirty_columns(body)}
        for column, at in dots:
            if column.now.start in is_dirty:
                self._paint_dot(painter, column, at)
        painter.restore()
        for place, (column, _) in enumerate(dots):
            if column.now.start in is_dirty:
                self._paint_number(painter, dots, place, scale)

    def _columns_and_next(self, body: QRectF) -> list[Column]:
        """Return the columns in view and one beyond each end, so that the line runs on."""
        axis = self._axis
        before = range(max(0, axis.first - 1), axis.first)
        end = axis.first + axis.count - 1
        after = range(end, end + 1) if axis.hidden_after else range(0)
        return list(self._columns((*before, *axis.shown[:-1], *after), body))

    def _asked_m(self) -> float | None:
        asks = self._outlook.asks if self._outlook is not None else None
        return None if asks is None else asks.longest_m

    def reach_px(self) -> float:
        # The line runs on to both neighbours, and makes way for their figures.
        return self._axis.each(self.body().width()) + theme().px(NARROW_OVERHANG_PX)

    def extent(self, weeks: Iterable[WeekFigures]) -> tuple[float, float]:
        return 0.0, max([1.0, self._asked_m() or 0.0, *(week.longest_m for week in weeks)])

    def _scale(self, body: QRectF) -> Scale:
        room = theme().metrics(LABEL_PT).ascent() + 3.0
        return Scale(*self.ends, body.top() + room, body.bottom() - DOT_PX - 2.0)

    def _paint_scale(self, painter: QPainter, body: QRectF, scale: Scale) -> None:
        words, asked = self._words(), self._asked_m()
        labels = [(0.0, "0")]
        if asked is None:
            labels.append((scale.high, words.distance_bare(scale.high, 0)))
        else:
            labels.append((asked, words.distance_bare(asked, 0)))
        self.paint_ticks(painter, body, scale, labels)
        if asked is not None:
            ends, clay = (body.left(), body.right()), theme().colours["clay"]
            draw_level(painter, ends, scale.y(asked), clay, 1.0, Qt.PenStyle.DashLine)

    @staticmethod
    def _point(column: Column, week: WeekFigures, scale: Scale) -> QPointF:
        return QPointF(column.rect.center().x(), scale.y(week.longest_m))

    def _paint_before(self, painter: QPainter, columns: list[Column], scale: Scale) -> None:
        """Draw the line as kept where it ran otherwise, from neighbour to neighbour."""
        painter.setPen(QPen(theme().colours["soft"], Stroke.THIN, Qt.PenStyle.DashLine))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for one, other in pairwise(columns):
            if one.before is None or other.before is None:
                continue
            if any(c.before and differs(c.now.longest_m, c.before.longest_m) for c in (one, other)):
                ends = self._point(one, one.before, scale), self._point(other, other.before, scale)
                painter.drawLine(*ends)

    def _paint_dot(self, painter: QPainter, column: Column, at: QPointF) -> None:
        c = theme().colours
        painter.setPen(QPen(c["ink"], Stroke.THIN))
        painter.setBrush(c["ink"] if self.is_done(column.now) else c["lane"])
        painter.drawEllipse(at, DOT_PX, DOT_PX)

    def _paint_number(
        self, painter: QPainter, dots: list[tuple[Column, QPointF]], place: int, scale: Scale
    ) -> None:
        """Write a figure clear of the line: above its dot, in a valley below it."""
        look, words = theme(), self._words()
        font, metrics = look.font(LABEL_PT), look.metrics(LABEL_PT)
        height = metrics.ascent() + 1.0
        asked = self._asked_m()
        dashed = None if asked is None else scale.y(asked)
        column, at = dots[place]
        neighbours = [d[1].y() for d in dots[max(0, place - 1) : place + 2]]
        is_valley = at.y() >= max(neighbours) - 0.5 and at.y() > min(neighbours) + 1.0
        above = QRectF(at.x() - 20.0, at.y() - DOT_PX - 1.0 - height, 40.0, height)
        below = above.translated(0.0, height + 2 * DOT_PX + 3.0)
        fits_below = below.bottom() <= self.height() - 1.0
        crossed = dashed is not None and above.top() - 1.0 < dashed < above.bottom() + 1.0
        is_narrow = self.is_narrow
        to_below = (is_valley or crossed) and fits_below and not is_narrow
        rect = below if to_below else above
        text = words.distance_bare(column.now.longest_m, 0)
        # Where columns are narrow only peaks are named.
        peak = min(n.y() for n in _beside(dots, place))
        if not is_narrow or at.y() < peak:
            _clear(painter, rect, metrics.horizontalAdvance(text))
            draw_text(painter, rect, text, look.colours["ink"], font, Align.AlignCenter)


def _beside(dots: list[tuple[Column, QPointF]], place: int) -> list[QPointF]:
    """Return the neighbours of a dot; one far below stands in for none."""
    near = [dots[k][1] for k in (place - 1, place + 1) if 0 <= k < len(dots)]
    return near or [QPointF(0.0, 1e6)]


def _clear(painter: QPainter, rect: QRectF, width: float) -> None:
    """Lay ground under a figure, so that no line runs through it."""
    ground = QRectF(rect.center().x() - width / 2 - 1.5, rect.top(), width + 3.0, rect.height())
    painter.fillRect(ground, theme().colours["lane"])
