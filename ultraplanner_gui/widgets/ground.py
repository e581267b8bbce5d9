"""Ground lines: small silhouettes of the ground a session is run on."""

from __future__ import annotations

import math
from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from ultraplanner_gui.plan.block import Ground

_FAINT = 0.16


def ink_px(effort: int) -> float:
    """Return how heavy the line is for an *effort* on ten steps."""
    return 1.1 if effort <= 3 else 1.5 if effort <= 5 else 2.1 if effort <= 7 else 2.7


def draw_ground(
    painter: QPainter, rect: QRectF, ground: Ground, effort: int, colour: QColor
) -> None:
    """Draw the silhouette of *ground* along the foot of *rect*, heavier for harder *effort*."""
    if rect.width() < 3.0 or rect.height() < 1.0:
        return
    line = silhouette(ground, round(rect.width()), round(rect.height()))
    painter.save()
    painter.translate(rect.left(), rect.bottom() - round(rect.height()))
    if ground is not Ground.LEVEL:
        under = QPolygonF(line)
        under.append(QPointF(round(rect.width()), round(rect.height())))
        under.append(QPointF(0.0, round(rect.height())))
        faint = QColor(colour)
        faint.setAlphaF(_FAINT)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(faint)
        painter.drawPolygon(under)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(
        QPen(
            colour,
            ink_px(effort),
            Qt.PenStyle.SolidLine,
            Qt.PenCapStyle.RoundCap,
            Qt.PenJoinStyle.RoundJoin,
        )
    )
    painter.drawPolyline(line)
    painter.restore()


@lru_cache(maxsize=512)
def silhouette(ground: Ground, width: int, height: int) -> QPolygonF:
    """Return the line of *ground* from left to right in a box of *width* by *height* pixels."""
    repeats = max(1, round(width / 14.0))
    points = [QPointF(x * width, (1.0 - y) * height) for x, y in _shape(ground, repeats)]
    return QPolygonF(points)


def _shape(ground: Ground, repeats: int) -> list[tuple[float, float]]:
    """Return points from (0, 0) at the left foot to (1, 1) at the top right."""
    if ground is Ground.LEVEL:
        return [(0.0, 0.0), (1.0, 0.0)]
    if ground is Ground.ROLLING:
        waves = max(1.0, repeats / 2.5)
        steps = 12 * max(1, repeats)
        turn = 2.0 * math.pi * waves
        return [(k / steps, 0.45 - 0.38 * math.cos(turn * k / steps)) for k in range(steps + 1)]
    if ground is Ground.RISING:
        return _mirrored(_falling(max(1, repeats // 2)))
    if ground is Ground.FALLING:
        return _falling(max(1, repeats // 2))
    if ground is Ground.SAW:
        teeth = max(2, repeats)
        return [(k / (2 * teeth), float(k % 2)) for k in range(2 * teeth + 1)]
    return _stairs(max(3, repeats))


def _falling(descents: int) -> list[tuple[float, float]]:
    """Return long descents, each after a short way back up."""
    points = [(0.0, 0.95)]
    for k in range(descents):
        foot, top = (k + 0.82) / descents, (k + 1.0) / descents
        points.append((foot, 0.05))
        if k + 1 < descents:
            points.append((top, 0.95))
    points.append((1.0, 0.05))
    return points


def _mirrored(points: list[tuple[float, float]]) -> list[tuple[float, float]]:
    return [(1.0 - x, y) for x, y in reversed(points)]


def _stairs(steps: int) -> list[tuple[float, float]]:
    points: list[tuple[float, float]] = []
    for k in range(steps):
        points += [(k / steps, k / (steps - 1)), ((k + 1) / steps, k / (steps - 1))]
    return points
