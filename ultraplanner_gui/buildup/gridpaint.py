"""How the day grid is drawn: ground, tiles, today's edge, cursor, and what is in the hand."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from ultraplanner_gui.buildup.cells import ROWS, Cells
from ultraplanner_gui.buildup.tile import Stage, paint_tile
from ultraplanner_gui.buildup.weekhead import today_edge
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.widgets.axis import WeekAxis
from ultraplanner_gui.widgets.lane import Align, draw_level, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

DAY_PT = 7.5
EDGE_PX = 2.0


def paint_ground(painter: QPainter, cells: Cells, axis: WeekAxis, race_day: date) -> None:
    """Draw a ground under each loading week; cutback, taper and race weeks stay paler."""
    c, body = theme().colours, cells.body
    top, bottom = cells.row(0)[0], cells.row(ROWS - 1)[1]
    for index, week in enumerate(axis.weeks):
        left, right = cells.column(index)
        if week.role is Role.LOADING:
            painter.fillRect(QRectF(left + 1, top, right - left - 2, bottom - top), c["lane"])
    for row in range(1, ROWS):
        draw_level(painter, (body.left(), body.right()), cells.row(row)[0], c["line"])
    place = cells.place(race_day)
    if place is not None and place[1] < ROWS - 1:
        left, right = cells.column(place[0])
        after = cells.row(place[1] + 1)[0] + 1.0
        painter.fillRect(QRectF(left, after, right - left, bottom - after), c["paper"])


def paint_day_names(
    painter: QPainter, cells: Cells, first_weekday: int, today: date, words: Words
) -> None:
    """Name the rows; today's is bold."""
    look = theme()
    left = look.px(12.0)
    for row in range(ROWS):
        weekday = (first_weekday + row) % 7
        top, bottom = cells.row(row)
        is_today = weekday == today.weekday()
        rect = QRectF(left, top, cells.body.left() - left - look.px(8.0), bottom - top)
        draw_text(
            painter,
            rect,
            words.weekday(weekday),
            look.colours["ink" if is_today else "soft"],
            look.font(DAY_PT, bold=is_today),
            Align.AlignRight | Align.AlignVCenter,
        )


def paint_today(painter: QPainter, cells: Cells, axis: WeekAxis, today: date) -> None:
    """Draw the edge that steps through the grid: behind it done, ahead of it planned."""
    body = cells.body
    edge = today_edge(axis, today, body.width())
    if edge is None:
        return
    above, below, row = edge
    y = cells.row(row)[0]
    x_above, x_below = round(body.left()) + above, round(body.left()) + below
    points = [(x_above, 0.0), (x_above, y), (x_below, y), (x_below, cells.row(ROWS - 1)[1])]
    line = QPolygonF([QPointF(px, py) for px, py in points[(0 if row else 2) :]])
    if not row:
        line.prepend(QPointF(x_below, 0.0))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(
        QPen(
            theme().colours["ink"],
            EDGE_PX,
            Qt.PenStyle.SolidLine,
            Qt.PenCapStyle.FlatCap,
            Qt.PenJoinStyle.MiterJoin,
        )
    )
    painter.drawPolyline(line)


def paint_origin(painter: QPainter, rect: QRectF) -> None:
    """Draw the dashed place a session in the hand came from."""
    outline(
        painter, rect.adjusted(1, 1, -1, -1), theme().colours["clay"], 1.3, Qt.PenStyle.DashLine
    )


def paint_cursor(painter: QPainter, rect: QRectF, has_focus: bool, is_empty: bool) -> None:
    """Draw where the selection is; ink with the keys here, teal without, dotted on an empty day."""
    c = theme().colours
    style = Qt.PenStyle.DotLine if is_empty else Qt.PenStyle.SolidLine
    if has_focus and not is_empty:
        outline(painter, rect.adjusted(1.5, 1.5, -1.5, -1.5), c["tile"], 2.0)
    outline(painter, rect, c["ink" if has_focus else "teal"], 2.0, style)


def paint_in_hand(painter: QPainter, rect: QRectF, session: Session, words: Words) -> None:
    """Draw the tile that follows the pointer, lifted off the paper."""
    shade = QColor(0, 0, 0, 60)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(shade)
    painter.drawRoundedRect(rect.translated(2.0, 3.0), 3.0, 3.0)
    paint_tile(painter, rect, session, Stage(is_carried=True), words)


def paint_lines_of_text(painter: QPainter, rect: QRectF, texts: Iterable[str]) -> None:
    """Write *texts* one under the other in the middle of *rect*, the first in bold."""
    look = theme()
    lines = list(texts)
    height = look.metrics(8.5).height() + 2.0
    top = rect.center().y() - height * len(lines) / 2
    for k, text in enumerate(lines):
        line = QRectF(rect.left(), top + k * height, rect.width(), height)
        colour = look.colours["ink" if k == 0 else "soft"]
        draw_text(painter, line, text, colour, look.font(8.5, bold=k == 0), Align.AlignCenter)


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
