"""How each surface is drawn: a tone and a pattern in its lane, a dash on the plan of the course.

Tones are those of the ground; the patterns tell surfaces apart in black and white.
"""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QRectF, Qt
from PySide6.QtGui import QBrush, QIcon, QPainter, QPen, QPixmap

from ultraplanner_gui.plan.course import Surface
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke
from ultraplanner_gui.wording import course_names

Brush = Qt.BrushStyle


class SurfaceLook(Value, frozen=True):
    """`tone` names a colour, `pattern` is drawn over it in ink, `dash` in widths of the line."""

    tone: str
    pattern: Brush = Brush.NoBrush
    dash: tuple[float, ...] = ()


LOOKS: dict[Surface, SurfaceLook] = {
    Surface.ROAD: SurfaceLook("soft"),
    Surface.GRAVEL: SurfaceLook("stone", Brush.Dense5Pattern, (1.0, 1.5)),
    Surface.SMOOTH_TRAIL: SurfaceLook("stone", Brush.NoBrush, (6.0, 3.0)),
    Surface.GRASS: SurfaceLook("pale_moss", Brush.VerPattern, (1.0, 4.0)),
    Surface.TECHNICAL_TRAIL: SurfaceLook("strong_line", Brush.BDiagPattern, (3.0, 2.0)),
    Surface.ROCK: SurfaceLook("strong_line", Brush.DiagCrossPattern, (3.0, 1.5, 1.0, 1.5)),
    Surface.SAND: SurfaceLook("daylight", Brush.Dense6Pattern, (1.0, 2.5)),
    Surface.SNOW: SurfaceLook("panel", Brush.HorPattern, (8.0, 2.0, 1.0, 2.0)),
}


def surface_name(surface: Surface) -> str:
    """Return what *surface* is called in the user's language."""
    return QCoreApplication.translate(course_names.CONTEXT, course_names.SURFACES[surface])


def paint_surface(painter: QPainter, place: QRectF, surface: Surface) -> None:
    """Fill *place* with the tone and pattern of *surface*; nothing for what is unknown."""
    look = LOOKS.get(surface)
    if look is None:
        return
    colours = theme().colours
    painter.fillRect(place, colours[look.tone])
    if look.pattern is not Brush.NoBrush:
        painter.fillRect(place, QBrush(colours["ink"], look.pattern))


def plan_pen(surface: Surface) -> QPen | None:
    """Return the pen that marks *surface* along a line; None for what is unknown."""
    look = LOOKS.get(surface)
    if look is None:
        return None
    pen = QPen(theme().colours["ink"], Stroke.THIN)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    if look.dash:
        pen.setDashPattern(look.dash)
    return pen


def surface_icon(surface: Surface) -> QIcon:
    """Return a small picture of *surface* for menus and lists."""
    side = round(theme().px(14.0))
    picture = QPixmap(2 * side, side)
    picture.fill(theme().colours["lane"])
    with QPainter(picture) as painter:
        paint_surface(painter, QRectF(picture.rect()), surface)
        painter.setPen(QPen(theme().colours["strong_line"], Stroke.HAIR))
        painter.drawRect(picture.rect().adjusted(0, 0, -1, -1))
    return QIcon(picture)
