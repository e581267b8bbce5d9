"""One way to make a lane: head with name and unit, scale, body on a shared axis, readout."""

from __future__ import annotations

import math
from collections.abc import Sequence

from PySide6.QtCore import QEvent, QLineF, QPoint, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QHelpEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Stroke

HEAD_PX = 118.0
GUTTER_PX = 38.0
RIGHT_PX = 14.0
NAME_PT = Pt.TEXT
UNIT_PT = Pt.SMALL
LABEL_PT = Pt.LABEL

Align = Qt.AlignmentFlag
#: Joined once: flags are joined in Python, and a frame has a hundred texts.
ONE_LINE = int(Qt.TextFlag.TextSingleLine | Qt.TextFlag.TextDontClip) | int(Align.AlignAbsolute)
RIGHTWARD = Align.AlignRight | Align.AlignVCenter
#: A text runs as its first letter says (UAX 9, P2 and P3): "12.4 km" also among words of Hebrew.
BY_LETTERS = Qt.LayoutDirection.LayoutDirectionAuto
#: Looked up once: a name in an enumeration of Qt costs as much as a short line.
ANTIALIASING, FLAT = QPainter.RenderHint.Antialiasing, Qt.PenCapStyle.FlatCap


def draw_text(
    painter: QPainter,
    rect: QRectF,
    text: str,
    colour: QColor,
    font: QFont,
    align: Align = Align.AlignLeft | Align.AlignVCenter,
) -> None:
    """Draw one line of text in *rect*, unclipped; the caller has measured it."""
    painter.setFont(font)
    painter.setPen(colour)
    painter.setLayoutDirection(BY_LETTERS)
    painter.drawText(rect, int(align) | ONE_LINE, text)


def draw_texts(
    painter: QPainter,
    texts: Sequence[tuple[QRectF, str]],
    colour: QColor,
    font: QFont,
    align: Align = Align.AlignLeft | Align.AlignVCenter,
) -> None:
    """Draw many texts alike, each as `draw_text` does."""
    painter.setFont(font)
    painter.setPen(colour)
    painter.setLayoutDirection(BY_LETTERS)
    flags = int(align) | ONE_LINE
    for rect, text in texts:
        painter.drawText(rect, flags, text)


def draw_level(
    painter: QPainter,
    x_range: tuple[float, float],
    y: float,
    colour: QColor,
    width: float = 1.0,
    style: Qt.PenStyle = Qt.PenStyle.SolidLine,
) -> None:
    """Draw a level line on whole pixels, unsmoothed: long smooth dashes are dear."""
    draw_levels(painter, [(*x_range, y)], colour, width, style)


def draw_levels(
    painter: QPainter,
    levels: Sequence[tuple[float, float, float]],
    colour: QColor,
    width: float = 1.0,
    style: Qt.PenStyle = Qt.PenStyle.SolidLine,
) -> None:
    """Draw many of them, each from its left to its right end at its y."""
    lines = []
    for left, right, y in levels:
        whole = float(round(y))
        lines.append(QLineF(left, whole, right, whole))
    painter.setRenderHint(ANTIALIASING, False)
    painter.setPen(QPen(colour, width, style, FLAT))
    painter.drawLines(lines)
    painter.setRenderHint(ANTIALIASING, True)


def draw_rects(painter: QPainter, rects: Sequence[QRectF], brush: QColor | QBrush) -> None:
    """Fill many rectangles alike."""
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(brush)
    painter.drawRects(rects)


def draw_curve(painter: QPainter, xs: Sequence[float], ys: Sequence[float]) -> None:
    """Draw a smooth line through points, piece by piece: one wide smooth path is dear."""
    painter.drawLines(list(map(QLineF, xs, ys, xs[1:], ys[1:])))


def nice_ticks(low: float, high: float, at_most: int) -> list[float]:
    """Return round values between *low* and *high*, *at_most* of them, steps of 1, 2 or 5."""
    span = high - low
    if not math.isfinite(span) or span <= 0.0 or at_most < 1:
        return []
    rough = span / at_most
    power = 10.0 ** math.floor(math.log10(rough))
    step = next((m * power for m in (1.0, 2.0, 5.0, 10.0) if m * power >= rough), 10.0 * power)
    first = math.ceil(low / step - 1e-9)
    return [k * step for k in range(first, math.floor(high / step + 1e-9) + 1)]


def head_text(text: str, size_pt: float, bold: bool = False) -> str:
    """Return *text* as far as a lane's head has room for it; resting on the head shows it all."""
    look = theme()
    room = look.px(HEAD_PX - GUTTER_PX)
    return look.metrics(size_pt, bold).elidedText(text, Qt.TextElideMode.ElideRight, room)


class Scale(Value, frozen=True):
    """A linear scale from values to y inside a lane body; *low* lies at the bottom."""

    low: float
    high: float
    top: float
    bottom: float

    def y(self, value: float) -> float:
        """Return y of *value*."""
        span = self.high - self.low
        return (
            self.bottom
            if span <= 0
            else self.bottom - (value - self.low) / span * (self.bottom - self.top)
        )

    def value(self, y: float) -> float:
        """Return the value at *y*."""
        return self.low + (self.bottom - y) / max(self.bottom - self.top, 1.0) * (
            self.high - self.low
        )


class Lane(QWidget):
    """A lane: its head on the left, its body on the axis shared with its neighbours.

    A subclass paints `paint_body`; it may give a `readout` for the pointer and says by `topic`,
    or by `topic_at` if its parts differ, what the help tells of it.
    """

    topic = ""

    def __init__(
        self, name: str, unit: str = "", height_px: float = 56.0, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._name = name
        self._unit = unit
        self._height_px = height_px
        # A course is run from left to right in every language: DEVELOPERS.md says why.
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        self.setAccessibleName(f"{name}, {unit}" if unit else name)
        theme().changed.connect(self._on_theme_changed)

    def sizeHint(self) -> QSize:
        return QSize(400, round(theme().px(self._height_px)))

    def minimumSizeHint(self) -> QSize:
        return QSize(300, round(theme().px(min(self._height_px, 30.0))))

    @property
    def name(self) -> str:
        """What it is called in its head."""
        return self._name

    def rename(self, name: str) -> None:
        """Name the lane in its head; for a name that is translated where the lane is made."""
        self._name = name
        self.setAccessibleName(f"{name}, {self._unit}" if self._unit else name)
        self.update()

    def set_unit(self, unit: str) -> None:
        """Name the unit in the head."""
        if unit != self._unit:
            self._unit = unit
            self.setAccessibleName(f"{self._name}, {unit}" if unit else self._name)
            self.update()

    def body(self) -> QRectF:
        """Return where the axis runs: right of the head, left of the margin."""
        head, right = theme().px(HEAD_PX), theme().px(RIGHT_PX)
        return QRectF(
            head, 1.0, max(1.0, self.width() - head - right), max(1.0, self.height() - 2.0)
        )

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        """Draw the lane's figures into *body*."""
        raise NotImplementedError

    def readout(self, at: QPointF) -> str:
        """Return what the pointer is on, in words; empty for nothing."""
        return ""

    def topic_at(self, at: QPoint | None) -> str:
        """Return what the help tells of the place *at*, or of what the keys are on."""
        return self.topic

    def paintEvent(self, event: QPaintEvent) -> None:
        # With `with` a fault in painting stays a fault: a painter left open takes Qt down.
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            body = self.body()
            self.paint_ground(painter, body)
            self.paint_head(painter)
            self.paint_body(painter, body)
            if self.hasFocus():
                self.paint_focus(painter)

    def paint_ground(self, painter: QPainter, body: QRectF) -> None:
        """Draw the lane's own ground."""
        painter.fillRect(body, theme().colours["lane"])

    def paint_focus(self, painter: QPainter) -> None:
        """Draw that the keys go here; a lane with a cursor of its own shows that instead."""
        painter.setPen(QPen(theme().colours["teal"], Stroke.LINE, Qt.PenStyle.DotLine))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(QRectF(self.rect()).adjusted(1, 1, -1, -1))

    def paint_ticks(
        self, painter: QPainter, body: QRectF, scale: Scale, labels: list[tuple[float, str]]
    ) -> None:
        """Draw *labels* (value, text) of *scale* in the gutter, each with a hair line.

        A label that would run into one drawn before it is left out.
        """
        look = theme()
        font, height = look.font(UNIT_PT), look.metrics(UNIT_PT).height()
        gutter = look.px(GUTTER_PX) - 5.0
        tops: list[float] = []
        left, soft = body.left(), look.colours["soft"]
        ys = [scale.y(value) for value, _ in labels]
        self.paint_tick_lines(painter, body, ys)
        for y, (_, text) in zip(ys, labels, strict=True):
            top = min(max(y - height / 2, 0.0), self.height() - height)
            if any(abs(top - other) < 0.72 * height for other in tops):
                continue
            tops.append(top)
            rect = QRectF(left - gutter - 5.0, top, gutter, height)
            draw_text(painter, rect, text, soft, font, RIGHTWARD)

    def paint_tick_lines(self, painter: QPainter, body: QRectF, ys: Sequence[float]) -> None:
        """Draw a hair line through the body at each of *ys*."""
        left, right = body.left(), body.right()
        draw_levels(painter, [(left, right, y) for y in ys], theme().colours["line"])

    def event(self, event: QEvent) -> bool:
        if event.type() is QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            is_head = event.pos().x() < theme().px(HEAD_PX - GUTTER_PX)
            text = self._head_in_full() if is_head else self.readout(QPointF(event.pos()))
            if text:
                QToolTip.showText(event.globalPos(), text, self)
            else:
                QToolTip.hideText()
            return True
        return super().event(event)

    def _head_in_full(self) -> str:
        """Return name and unit if one of them does not fit the head."""
        units = self._unit.split("\n")
        is_whole = head_text(self._name, NAME_PT, bold=True) == self._name
        is_whole = is_whole and all(head_text(unit, UNIT_PT) == unit for unit in units)
        return "" if is_whole else self.accessibleName()

    def paint_head(self, painter: QPainter) -> None:
        """Draw the name and, as far as the height allows, the unit under it."""
        look = theme()
        right = look.px(HEAD_PX - GUTTER_PX)
        line, small = look.metrics(NAME_PT, bold=True).height(), look.metrics(UNIT_PT).height()
        unit_lines = self._unit.split("\n") if self._unit else []
        # A lane too low for both lines keeps its name.
        shown = [u for k, u in enumerate(unit_lines) if line + small * (k + 1) <= self.height() - 1]
        top = 2.0 if len(shown) > 0 else (self.height() - line) / 2
        draw_text(
            painter,
            QRectF(0.0, top, right, line),
            head_text(self._name, NAME_PT, bold=True),
            look.colours["ink"],
            look.font(NAME_PT, bold=True),
            Align.AlignRight | Align.AlignVCenter,
        )
        for k, text in enumerate(shown):
            draw_text(
                painter,
                QRectF(0.0, top + line + small * k, right, small),
                head_text(text, UNIT_PT),
                look.colours["soft"],
                look.font(UNIT_PT),
                Align.AlignRight | Align.AlignVCenter,
            )

    def _on_theme_changed(self) -> None:
        self.updateGeometry()
        self.update()
