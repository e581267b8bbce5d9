"""Weeks from afar: each one strip of ground lines, one per run, in the order of days.

A line is the longer the longer the run, the heavier the harder; behind today what was done is
filled, what was missed is faint.
"""

from __future__ import annotations

import math

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from ultraplanner_gui.buildup.cells import Tile
from ultraplanner_gui.buildup.tile import Stage, ground_colour
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.plan.block import Kind, Session
from ultraplanner_gui.widgets.ground import ink_px, silhouette
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke

SIDE_PX = 1.5
INK_SHARE = 0.75
LEAST_LINE_PX = 4.0
HIGHEST_LINE_PX = 12.0
ROOMY_PX = 24.0
FAINT = 0.4


def paint_strip(painter: QPainter, week: QRectF, role: Role) -> None:
    """Draw the ground of one week in its column; weeks that do not load stay empty."""
    c = theme().colours
    strip = week.adjusted(1.0, 1.5, -1.0, -1.5)
    painter.setPen(QPen(c["strong_line" if role is Role.LOADING else "line"], Stroke.HAIR))
    painter.setBrush(c["tile"] if role is Role.LOADING else Qt.BrushStyle.NoBrush)
    painter.drawRoundedRect(strip, 2.5, 2.5)


def paint_line(painter: QPainter, tile: Tile, week: QRectF, longest_m: float, stage: Stage) -> None:
    """Draw one session across the strip of its *week*, *longest_m* as long as that is wide."""
    session, c = tile.session, theme().colours
    room = QRectF(week.left() + 1.5, tile.rect.top(), week.width() - 3.0, tile.rect.height())
    if session.kind is Kind.RACE:
        painter.setPen(QPen(c["clay"], Stroke.THIN))
        painter.setBrush(c["pale_clay"])
        painter.drawRect(room.adjusted(0.5, 0.0, -0.5, 0.0))
    elif session.done is not None:
        painter.fillRect(room, c["pale_teal"])
    if stage.is_landing:
        painter.setPen(QPen(c["teal"], Stroke.THIN, Qt.PenStyle.DashLine))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(room.adjusted(0.5, 0.5, -0.5, -0.5))
        return
    if stage.is_carried:
        painter.setPen(QPen(c["clay"], Stroke.LINE))
        painter.setBrush(c["tile"])
        painter.drawRect(room.adjusted(0.5, 0.5, -0.5, -0.5))
    _paint_ground_line(painter, session, room, longest_m)
    if stage.is_past and session.is_open and session.kind is not Kind.RACE:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(c["clay"])
        painter.drawEllipse(QRectF(room.right() - 3.5, room.top() + 1.5, 3.0, 3.0))


def _paint_ground_line(painter: QPainter, session: Session, room: QRectF, longest_m: float) -> None:
    width = room.width() - 2 * SIDE_PX
    height = max(1.0, min(HIGHEST_LINE_PX, room.height() * 0.45, width))
    actual = session.actual if session.done is not None else session
    colour = ground_colour(session)
    if session.missed:
        colour.setAlphaF(FAINT)
    length = max(LEAST_LINE_PX, width * line_share(session, longest_m))
    # A copy: shapes are shared.
    line = QPolygonF(silhouette(session.ground, round(length), round(height)))
    line.translate(room.left() + SIDE_PX, room.center().y() - height / 2)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    share = 1.0 if room.width() >= ROOMY_PX else INK_SHARE
    pen = QPen(colour, share * ink_px(actual.effort))
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    painter.setPen(pen)
    painter.drawPolyline(line)


def line_share(session: Session, longest_m: float) -> float:
    """Return how much of the strip the line of *session* takes, 0 to 1.

    As the square root of the distance, so that short runs can still be seen.
    """
    if not session.kind.is_run or longest_m <= 0.0:
        return 0.0
    distance_m = session.done.distance_m if session.done is not None else session.distance_m
    return min(1.0, math.sqrt(distance_m / longest_m))
