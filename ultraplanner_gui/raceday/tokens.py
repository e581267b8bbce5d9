"""Fuel tokens: the shape says what it is to hold, so that colour need not."""

from __future__ import annotations

from collections.abc import Sequence
from math import ceil

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPen, QPolygonF

from ultraplanner_gui.plan.fuel import Food, Shape
from ultraplanner_gui.widgets.lane import draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Stroke

TOKEN_PX = 9.0
HUES = {Shape.GEL: "plum", Shape.DRINK: "sky", Shape.SOLID: "ochre", Shape.SALT: "soft"}


class Tokens:
    """Draws tokens from pictures of them, each made once for a look."""

    def __init__(self) -> None:
        self._of: object = None
        self._made: dict[tuple[Shape, bool, bool], QImage] = {}
        self.middle, self._ratio = 0.0, 1.0

    def prepare(self, ratio: float) -> None:
        """Be ready for the look in force and a device of *ratio* pixels a pixel."""
        look = theme()
        of = (look.colours, look.scale, ratio)
        if of != self._of:
            self._of, self._made, self._ratio = of, {}, ratio
            self.middle = ceil(look.px(TOKEN_PX) / 2 * 1.1) + 2.0

    def draw(self, painter: QPainter, x: float, y: float, food: Food, is_chosen: bool) -> None:
        """Draw the token of *food* about a place."""
        at = QPointF(x - self.middle, y - self.middle)
        painter.drawImage(at, self.picture(food, is_chosen))

    def picture(self, food: Food, is_chosen: bool = False) -> QImage:
        """Return the token of *food*, its middle `middle` from its left and its top."""
        key = (food.shape, food.caffeine_mg > 0.0, is_chosen)
        picture = self._made.get(key)
        if picture is None:
            picture = self._made[key] = self._picture(food, is_chosen)
        return picture

    def _picture(self, food: Food, is_chosen: bool) -> QImage:
        ratio = self._ratio
        side = round(2 * self.middle * ratio)
        picture = QImage(side, side, QImage.Format.Format_ARGB32_Premultiplied)
        picture.setDevicePixelRatio(ratio)
        picture.fill(QColor(0, 0, 0, 0))
        with QPainter(picture) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            draw_token(painter, QPointF(self.middle, self.middle), food, is_chosen)
        return picture


def draw_token(painter: QPainter, at: QPointF, food: Food, is_chosen: bool) -> None:
    """Draw the token of *food* about *at*: sachet, disc, square or lozenge; a dot says caffeine."""
    look = theme()
    c, r = look.colours, look.px(TOKEN_PX) / 2
    painter.setPen(QPen(c["ink"], Stroke.HEAVY) if is_chosen else QPen(c["lane"], Stroke.HAIR))
    _draw_shape(painter, at, food.shape, r)
    if food.caffeine_mg > 0.0:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(c["on_colour"])
        painter.drawEllipse(at, 0.35 * r, 0.35 * r)


def _draw_shape(painter: QPainter, at: QPointF, shape: Shape, r: float) -> None:
    painter.setBrush(theme().colours[HUES[shape]])
    if shape is Shape.GEL:
        sachet = QRectF(at.x() - 0.7 * r, at.y() - 1.1 * r, 1.4 * r, 2.2 * r)
        painter.drawRoundedRect(sachet, 1.5, 1.5)
    elif shape is Shape.DRINK:
        painter.drawEllipse(at, r, r)
    elif shape is Shape.SOLID:
        painter.drawRect(QRectF(at.x() - 0.9 * r, at.y() - 0.9 * r, 1.8 * r, 1.8 * r))
    else:
        tips = (QPointF(0, -r), QPointF(r, 0), QPointF(0, r), QPointF(-r, 0))
        painter.drawPolygon(QPolygonF([at + tip for tip in tips]))


def paint_key(
    painter: QPainter, right: float, rows: Sequence[tuple[float, Sequence[tuple[Shape, str]]]]
) -> None:
    """Say what tokens are, right-aligned to *right*: for each row its y, its shapes, their names.

    A row that has no room for all of its names has none.
    """
    look = theme()
    r, gap, height = look.px(0.7 * TOKEN_PX) / 2, look.px(3.0), look.metrics(Pt.MARK).height()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for y, entries in rows:
        widths = [look.width(name, Pt.MARK) for _, name in entries]
        if sum(widths) + len(widths) * (2 * r + 3 * gap) - 2 * gap > right:
            continue
        edge = right
        for (shape, name), width in zip(reversed(entries), reversed(widths), strict=True):
            place = QRectF(edge - width, y - height / 2, width, height)
            draw_text(painter, place, name, look.colours["soft"], look.font(Pt.MARK))
            painter.setPen(Qt.PenStyle.NoPen)
            _draw_shape(painter, QPointF(place.left() - gap - r, y), shape, r)
            edge = place.left() - 2 * r - 3 * gap
