"""Small charts for looking back: bars and lines over a scale of their own, with a twin in text."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.lane import Align, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Space, Stroke

_HEAD_PX, _FOOT_PX, _LEFT_PX = 28.0, 18.0, 46.0
_UNDER_HEAD_PX = 6.0
_DOT_PX = 1.8


class Scale(Value, frozen=True):
    """Values from `low` to `high` over a length, and the ticks on it with their words."""

    low: float
    high: float
    ticks: tuple[tuple[float, str], ...] = ()

    def share(self, value: float) -> float:
        """Return where *value* lies, 0 to 1 within the scale."""
        width = self.high - self.low
        return (value - self.low) / width if width else 0.5


class SmallChart(QWidget):
    """A chart with a title; a subclass paints into the body between its two scales."""

    def __init__(self, title: str, topic: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.title = title
        self.across, self.up = Scale(0.0, 1.0), Scale(0.0, 1.0)
        self.setAccessibleName(title)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        set_topic(self, topic)
        theme().changed.connect(self.update)

    def sizeHint(self) -> QSize:
        return QSize(round(theme().px(420)), round(theme().px(170)))

    def minimumSizeHint(self) -> QSize:
        return QSize(round(theme().px(260)), round(theme().px(110)))

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        """Paint what the chart is about."""

    def x_of(self, value: float, body: QRectF) -> float:
        """Return where *value* lies across."""
        return body.left() + self.across.share(value) * body.width()

    def y_of(self, value: float, body: QRectF) -> float:
        """Return where *value* lies, up."""
        return body.bottom() - self.up.share(value) * body.height()

    def paintEvent(self, event: QPaintEvent) -> None:
        look, c = theme(), theme().colours
        painter = QPainter(self)
        painter.fillRect(self.rect(), c["panel"])
        head, foot, left = (look.px(size) for size in (_HEAD_PX, _FOOT_PX, _LEFT_PX))
        body = QRectF(left, head, self.width() - left - Space.APART, self.height() - head - foot)
        room = QRectF(Space.NEAR, 0.0, self.width() - Space.WIDE, head - look.px(_UNDER_HEAD_PX))
        draw_text(painter, room, self.title, c["ink"], look.font(Pt.TEXT, bold=True))
        self._paint_scales(painter, body)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.save()
        painter.setClipRect(body.adjusted(-1, -1, 1, 1))
        self.paint_body(painter, body)
        painter.restore()

    def _paint_scales(self, painter: QPainter, body: QRectF) -> None:
        look, c = theme(), theme().colours
        font = look.font(Pt.SMALL)
        for value, text in self.up.ticks:
            y = self.y_of(value, body)
            painter.setPen(QPen(c["line"], Stroke.HAIR))
            painter.drawLine(QPointF(body.left(), y), QPointF(body.right(), y))
            room = QRectF(0.0, y - 8.0, body.left() - Space.CLOSE, 16.0)
            draw_text(painter, room, text, c["soft"], font, Align.AlignRight | Align.AlignVCenter)
        for value, text in self.across.ticks:
            x = self.x_of(value, body)
            width = look.metrics(Pt.SMALL).horizontalAdvance(text) + 2.0
            start = min(max(x - width / 2, 0.0), self.width() - width)
            room = QRectF(start, body.bottom(), width, self.height() - body.bottom())
            draw_text(painter, room, text, c["soft"], font, Align.AlignCenter)


class Bar(Value, frozen=True):
    """One bar: its words at the foot, its height, and the height of the mark beside it, if any."""

    name: str
    value: float
    mark: float = math.nan
    colour: str = "teal"


class BarChart(SmallChart):
    """Bars beside each other, each with a mark where the other figure would be."""

    def __init__(self, title: str, topic: str, parent: QWidget | None = None) -> None:
        super().__init__(title, topic, parent)
        self._bars: tuple[Bar, ...] = ()

    def show_bars(self, bars: Sequence[Bar], up: Scale) -> None:
        """Show *bars* over the scale *up*."""
        self._bars, self.up = tuple(bars), up
        ticks = tuple((n + 0.5, bar.name) for n, bar in enumerate(bars))
        self.across = Scale(0.0, float(max(1, len(bars))), ticks)
        self.update()

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        c = theme().colours
        ground = self.y_of(max(self.up.low, 0.0), body)
        for number, bar in enumerate(self._bars):
            left, right = (self.x_of(number + share, body) for share in (0.16, 0.84))
            if math.isfinite(bar.value):
                top = self.y_of(bar.value, body)
                room = QRectF(QPointF(left, top), QPointF(right, ground)).normalized()
                painter.fillRect(room, c[bar.colour])
            if math.isfinite(bar.mark):
                y = self.y_of(bar.mark, body)
                painter.setPen(QPen(c["ink"], Stroke.HEAVY))
                painter.drawLine(QPointF(left - 2.0, y), QPointF(right + 2.0, y))


class DotChart(SmallChart):
    """Points, and a line through what they are held against."""

    def __init__(self, title: str, topic: str, parent: QWidget | None = None) -> None:
        super().__init__(title, topic, parent)
        self._dots: tuple[tuple[float, float], ...] = ()
        self._line: tuple[tuple[float, float], ...] = ()

    def show_dots(
        self,
        dots: Sequence[tuple[float, float]],
        line: Sequence[tuple[float, float]],
        across: Scale,
        up: Scale,
    ) -> None:
        """Show *dots* and *line* over the two scales."""
        self._dots, self._line, self.across, self.up = tuple(dots), tuple(line), across, up
        self.update()

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        c = theme().colours
        faint = QColor(c["teal"])
        faint.setAlphaF(0.5)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(faint)
        for x, y in self._dots:
            painter.drawEllipse(QPointF(self.x_of(x, body), self.y_of(y, body)), _DOT_PX, _DOT_PX)
        painter.setPen(QPen(c["ink"], Stroke.LINE))
        for (x0, y0), (x1, y1) in pairwise(self._line):
            painter.drawLine(
                QPointF(self.x_of(x0, body), self.y_of(y0, body)),
                QPointF(self.x_of(x1, body), self.y_of(y1, body)),
            )


#: How each part of a pile is filled: a colour of the theme and a hatch, so that print keeps them
#: apart.
Fill = tuple[str, Qt.BrushStyle]


class PileChart(SmallChart):
    """Bars along the course made of parts, what was lost above the line, what was won below."""

    def __init__(self, title: str, topic: str, parent: QWidget | None = None) -> None:
        super().__init__(title, topic, parent)
        self._piles: tuple[tuple[float, float, tuple[float, ...]], ...] = ()
        self._fills: tuple[Fill, ...] = ()
        self._chosen = -1

    def show_piles(
        self,
        piles: Sequence[tuple[float, float, tuple[float, ...]]],
        fills: Sequence[Fill],
        across: Scale,
        up: Scale,
    ) -> None:
        """Show *piles*, each from and to somewhere across with the heights of its parts."""
        self._piles, self._fills = tuple(piles), tuple(fills)
        self.across, self.up = across, up
        self.update()

    def choose(self, number: int) -> None:
        """Frame one of the piles, none below nought."""
        self._chosen = number
        self.update()

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        c = theme().colours
        ground = self.y_of(0.0, body)
        for number, (start, end, parts) in enumerate(self._piles):
            left, right = self.x_of(start, body) + 1.0, self.x_of(end, body) - 1.0
            if number == self._chosen:
                painter.fillRect(QRectF(left, body.top(), right - left, body.height()), c["lane"])
            above = below = 0.0
            for part, (colour, hatch) in zip(parts, self._fills, strict=True):
                base = above if part > 0.0 else below
                top, bottom = self.y_of(base + part, body), self.y_of(base, body)
                room = QRectF(QPointF(left, top), QPointF(right, bottom)).normalized()
                if hatch is not Qt.BrushStyle.SolidPattern:
                    painter.fillRect(room, c["panel"])
                painter.fillRect(room, QBrush(c[colour], hatch))
                if part > 0.0:
                    above += part
                else:
                    below += part
        painter.setPen(QPen(c["ink"], Stroke.HAIR))
        painter.drawLine(QPointF(body.left(), ground), QPointF(body.right(), ground))


def ticks_between(low: float, high: float, step: float) -> tuple[float, ...]:
    """Return the multiples of *step* from *low* to *high*."""
    first = math.ceil(low / step - 1e-9)
    return tuple(n * step for n in range(first, math.floor(high / step + 1e-9) + 1))
