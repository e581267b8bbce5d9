"""What lies over the day grid: where sessions came from, the cursor, what is chosen, the hand."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal, NamedTuple

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPixmap, QRegion

from ultraplanner_gui.buildup.tile import Stage, paint_tile
from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.widgets.lane import Align, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Stroke
from ultraplanner_gui.wording.words import Words

#: How far pens and the shade of the hand reach out of a mark.
REACH_PX = 5.0
LOW_PX = 18.0


class Mark(NamedTuple):
    """One mark and where it lies; *session* is the one in the hand."""

    kind: Literal["origin", "offer", "cursor", "chosen", "box", "hand"]
    rect: QRectF
    has_focus: bool = False
    is_empty: bool = False
    session: Session | None = None


def changed_region(before: Sequence[Mark], now: Sequence[Mark]) -> QRegion:
    """Return where *before* and *now* look different."""
    region = QRegion()
    for these, others in ((before, now), (now, before)):
        for mark in these:
            if mark not in others:
                reach = mark.rect.adjusted(-REACH_PX, -REACH_PX, REACH_PX, REACH_PX)
                region += reach.toAlignedRect()
    return region


def paint_origin(painter: QPainter, mark: Mark) -> None:
    """Draw the dashed place a session in the hand came from."""
    clay, style = theme().colours["clay"], Qt.PenStyle.DashLine
    outline(painter, mark.rect.adjusted(1, 1, -1, -1), clay, 1.3, style)


def paint_offer(painter: QPainter, mark: Mark) -> None:
    """Draw the day that would hold, with the key that puts what is in the hand there."""
    look, moss = theme(), theme().colours["moss"]
    outline(painter, mark.rect, moss, Stroke.HEAVY, Qt.PenStyle.DashLine)
    font, metrics = look.font(Pt.MARK, bold=True), look.metrics(Pt.MARK, bold=True)
    width, height = metrics.horizontalAdvance("H") + look.px(5.0), metrics.capHeight() + 4.0
    tag = QRectF(mark.rect.right() - width, mark.rect.top(), width, height)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(moss)
    painter.drawRoundedRect(tag, 2.0, 2.0)
    draw_text(painter, tag, "H", look.colours["tile"], font, Align.AlignCenter)


def paint_cursor(painter: QPainter, mark: Mark) -> None:
    """Draw where the selection is; ink with the keys here, teal without, dotted on an empty day."""
    c = theme().colours
    style = Qt.PenStyle.DotLine if mark.is_empty else Qt.PenStyle.SolidLine
    grown = mark.rect.adjusted(-0.5, -0.5, 0.5, 0.5)
    rect = grown if mark.is_empty else _clear_of_text(mark.rect)
    if mark.has_focus and not mark.is_empty and rect == mark.rect:
        outline(painter, mark.rect.adjusted(1.5, 1.5, -1.5, -1.5), c["tile"], 2.0)
    outline(painter, rect, c["ink" if mark.has_focus else "teal"], 2.0, style)


def paint_chosen(painter: QPainter, mark: Mark) -> None:
    """Draw that a session is selected beside the one at the cursor."""
    outline(painter, _clear_of_text(mark.rect), theme().colours["teal"], Stroke.HEAVY)


def _clear_of_text(rect: QRectF) -> QRectF:
    """Return where the outline of a tile runs: on the edge of a low one.

    Its text has no room to spare, nor has that of its neighbours.
    """
    is_low = rect.height() < theme().px(LOW_PX)
    return rect.adjusted(-0.25, -0.25, 0.25, 0.25) if is_low else rect


def paint_box(painter: QPainter, mark: Mark) -> None:
    """Draw the box that selects what it touches."""
    fill = QColor(theme().colours["teal"])
    fill.setAlphaF(0.10)
    painter.fillRect(mark.rect, fill)
    outline(painter, mark.rect, theme().colours["teal"], Stroke.HAIR)


class HandPicture:
    """The tile that follows the pointer, lifted off the paper; drawn once, moved often."""

    def __init__(self) -> None:
        self._picture = QPixmap()
        self._of: tuple[Session, QSize, float] | None = None

    def forget(self) -> None:
        """Draw it anew next time."""
        self._of = None

    def paint(self, painter: QPainter, mark: Mark, words: Words) -> None:
        """Draw the *mark* of what is in the hand."""
        assert mark.session is not None
        ratio = painter.device().devicePixelRatioF()
        wanted = (mark.session, mark.rect.size().toSize(), ratio)
        if wanted != self._of:
            self._of = wanted
            self._picture = _in_hand(mark.session, wanted[1], ratio, words)
        at = mark.rect.topLeft() - QPointF(REACH_PX, REACH_PX)
        painter.drawPixmap(at.toPoint(), self._picture)


def _in_hand(session: Session, size: QSize, ratio: float, words: Words) -> QPixmap:
    room = QSize(size.width() + 2 * int(REACH_PX), size.height() + 2 * int(REACH_PX))
    picture = QPixmap(room * ratio)
    picture.setDevicePixelRatio(ratio)
    picture.fill(Qt.GlobalColor.transparent)
    rect = QRectF(REACH_PX, REACH_PX, size.width(), size.height())
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(0, 0, 0, 60))
    painter.drawRoundedRect(rect.translated(2.0, 3.0), 3.0, 3.0)
    paint_tile(painter, rect, session, Stage(is_carried=True), words)
    painter.end()
    return picture


def outline(
    painter: QPainter,
    rect: QRectF,
    colour: QColor,
    width: float,
    style: Qt.PenStyle = Qt.PenStyle.SolidLine,
) -> None:
    """Draw a rounded outline."""
    painter.setPen(QPen(colour, width, style))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    radius = min(3.0, rect.height() / 4)
    painter.drawRoundedRect(rect, radius, radius)
