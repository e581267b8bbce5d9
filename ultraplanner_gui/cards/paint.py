"""Painting pages, in millimetres, on whatever a QPainter paints on."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen, QPolygonF

from ultraplanner_gui.cards.page import Line, Page, Polygon, Rect, Strokes, Text
from ultraplanner_gui.widgets.theme import FONT_FAMILY

UNITS_PER_MM = 64.0
"""Text is set in 64ths of a millimetre and scaled: so fine that no rounding shows, and so
coarse that Qt still keeps the glyphs it drew, which it does up to 256 pixels."""

POINTS_PER_INCH, MM_PER_INCH = 72.0, 25.4
MEASURED_PT = 1000.0


def measure(text: str, size_pt: float, bold: bool) -> float:
    """Return the width of *text* in millimetres as it is painted, whatever the device."""
    return _width_mm(text, bold) * size_pt


@lru_cache(maxsize=8_000)
def _width_mm(text: str, bold: bool) -> float:
    # In the font's own proportions, because metrics at 96 dpi rescaled mislead (pitfall 29).
    metrics = QFontMetricsF(_font(MEASURED_PT, bold))
    dpi = metrics.fontDpi()
    return metrics.horizontalAdvance(text) * MM_PER_INCH / dpi / MEASURED_PT


def paint_page(painter: QPainter, page: Page, mm: float) -> None:
    """Paint *page* with its top left corner at the painter's origin, *mm* device units to a mm."""
    painter.save()
    painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing)
    painter.scale(mm / UNITS_PER_MM, mm / UNITS_PER_MM)
    units_per_pt = UNITS_PER_MM * MM_PER_INCH / painter.device().logicalDpiY()
    font: tuple[float, bool] | None = None
    ink: float | None = None
    for op in page.ops:
        if not isinstance(op, Text):
            _paint(painter, op)
            ink = None
            continue
        # Texts of one look follow one another: what is set already is not set again.
        if font != (op.size_pt, op.bold):
            font = (op.size_pt, op.bold)
            painter.setFont(_font(op.size_pt * units_per_pt, op.bold))
        if ink != op.grey:
            ink = op.grey
            painter.setPen(_grey(ink))
        painter.drawText(QPointF(_left(op), op.baseline_mm * UNITS_PER_MM), op.text)
    painter.restore()


def _paint(painter: QPainter, op: Line | Rect | Polygon | Strokes) -> None:
    if isinstance(op, Line):
        pen = _pen(op.width_mm, op.grey)
        if op.dashes_mm:
            pen = QPen(pen)
            pen.setDashPattern([dash / op.width_mm for dash in op.dashes_mm])
        painter.setPen(pen)
        painter.drawLine(QLineF(_point(op.start), _point(op.end)))
    elif isinstance(op, Rect):
        _ink(painter, op.grey, op.outline_mm)
        scaled = (UNITS_PER_MM * v for v in (op.x_mm, op.y_mm, op.width_mm, op.height_mm))
        painter.drawRect(QRectF(*scaled))
    elif isinstance(op, Strokes):
        painter.setPen(_pen(op.width_mm, op.grey))
        unit = UNITS_PER_MM
        painter.drawLines(
            [QLineF(a * unit, b * unit, c * unit, d * unit) for (a, b), (c, d) in op.lines]
        )
    else:
        _paint_polygon(painter, op)


def _paint_polygon(painter: QPainter, op: Polygon) -> None:
    _ink(painter, op.grey, op.outline_mm)
    points = QPolygonF([_point(p) for p in op.points])
    if op.outline_mm:
        painter.drawPolyline(points)
    else:
        painter.drawPolygon(points)


def _left(op: Text) -> float:
    """Return where *op* begins."""
    if op.align == "left":
        return op.x_mm * UNITS_PER_MM
    width_mm = _width_mm(op.text, op.bold) * op.size_pt
    return (op.x_mm - (width_mm if op.align == "right" else 0.5 * width_mm)) * UNITS_PER_MM


def _ink(painter: QPainter, grey: float, outline_mm: float) -> None:
    if outline_mm:
        painter.setPen(_pen(outline_mm, grey))
        painter.setBrush(Qt.BrushStyle.NoBrush)
    else:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(_grey(grey))


@lru_cache(maxsize=50)
def _pen(width_mm: float, grey: float) -> QPen:
    pen = QPen(_grey(grey), width_mm * UNITS_PER_MM)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    return pen


@lru_cache(maxsize=200)
def _font(size_pt: float, bold: bool) -> QFont:
    font = QFont(FONT_FAMILY)
    font.setPointSizeF(size_pt)
    font.setBold(bold)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    return font


@lru_cache(maxsize=50)
def _grey(share: float) -> QColor:
    return QColor.fromRgbF(share, share, share)


def _point(point: tuple[float, float]) -> QPointF:
    return QPointF(UNITS_PER_MM * point[0], UNITS_PER_MM * point[1])
