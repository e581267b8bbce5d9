"""How the day grid is drawn under and beside its tiles: ground, day names, today's edge, tear."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from ultraplanner_gui.buildup.cells import ROWS, Cells
from ultraplanner_gui.buildup.weekhead import today_edge
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.widgets.lane import Align, draw_level, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Stroke
from ultraplanner_gui.widgets.week_axis import WeekAxis
from ultraplanner_gui.wording.words import Words

DAY_PT = Pt.LABEL
EDGE_PX = 2.0


def paint_ground(
    painter: QPainter, cells: Cells, axis: WeekAxis, race_day: date, columns: Iterable[int]
) -> None:
    """Draw a ground under each loading week; cutback, taper and race weeks stay paler."""
    c = theme().colours
    for index in columns:
        week = cells.week(index)
        painter.fillRect(week, c["paper"])
        if axis.weeks[index].role is Role.LOADING:
            painter.fillRect(week.adjusted(1, 0, -1, 0), c["lane"])
        for row in range(1, ROWS):
            draw_level(painter, (week.left(), week.right()), cells.row(row)[0], c["line"])
        place = cells.place(race_day)
        if place is not None and place[0] == index and place[1] < ROWS - 1:
            week.setTop(cells.row(place[1] + 1)[0] + 1.0)
            painter.fillRect(week, c["paper"])


def paint_tear(painter: QPainter, body: QRectF, axis: WeekAxis) -> None:
    """Draw the torn edges where weeks before the race are out of view."""
    tear = axis.tear(body.width())
    if tear is None:
        return
    c, tooth = theme().colours, 3.0
    left, right = round(body.left() + tear[0]), round(body.left() + tear[1])
    steps = int(body.height() / tooth) + 2
    one = [QPointF(left + 1 + tooth * (k % 2), body.top() + k * tooth) for k in range(steps)]
    other = [at + QPointF(right - left - 2 - tooth, 0.0) for at in one]
    painter.save()
    painter.setClipRect(body, Qt.ClipOperation.IntersectClip)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(c["paper"])
    painter.drawPolygon(QPolygonF([*one, *reversed(other)]))
    painter.setPen(QPen(c["strong_line"], Stroke.HAIR))
    painter.drawPolyline(one)
    painter.drawPolyline(other)
    painter.restore()


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


def paint_lines_of_text(painter: QPainter, rect: QRectF, texts: Iterable[str]) -> None:
    """Write *texts* one under the other in the middle of *rect*, the first in bold."""
    look = theme()
    lines = list(texts)
    height = look.metrics(Pt.TEXT).height() + 2.0
    top = rect.center().y() - height * len(lines) / 2
    for k, text in enumerate(lines):
        line = QRectF(rect.left(), top + k * height, rect.width(), height)
        colour = look.colours["ink" if k == 0 else "soft"]
        draw_text(painter, line, text, colour, look.font(Pt.TEXT, bold=k == 0), Align.AlignCenter)
