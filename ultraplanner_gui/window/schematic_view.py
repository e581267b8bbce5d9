"""A small picture of a schematic profile with its places, for forms."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

import numpy as np
from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.course import AidStation, FloatArray
from ultraplanner_gui.widgets.lane import Align, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Pt, Stroke
from ultraplanner_gui.wording.words import Words

NAME_PT = Pt.LABEL
LEFT_PX = 54.0
HEAD_PX = 20.0
FOOT_PX = 18.0
SIDE_PX = 12.0
LEVEL = 0.02


class SchematicView(QWidget):
    """Draws a profile: climbs ochre, descents sky, level ground stone; aid stations as lines."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._profile: Profile | None = None
        self._stations: tuple[AidStation, ...] = ()
        self._words = Words()
        self._empty_text = ""
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Profile"))
        theme().changed.connect(self.update)

    def show_profile(
        self, profile: Profile, stations: tuple[AidStation, ...], words: Words
    ) -> None:
        """Draw *profile* with *stations* on it."""
        self._profile, self._stations, self._words = profile, stations, words
        self.update()

    def show_nothing(self, text: str) -> None:
        """Say *text* instead of a profile."""
        self._profile, self._empty_text = None, text
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(600, round(theme().px(170)))

    def minimumSizeHint(self) -> QSize:
        return QSize(300, round(theme().px(110)))

    def paintEvent(self, event: QPaintEvent) -> None:
        look = theme()
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.fillRect(self.rect(), look.colours["panel"])
            body = QRectF(self.rect()).adjusted(
                look.px(LEFT_PX), look.px(HEAD_PX), -look.px(SIDE_PX), -look.px(FOOT_PX)
            )
            if self._profile is None:
                font, soft = look.font(Pt.STRONG), look.colours["soft"]
                draw_text(
                    painter, QRectF(self.rect()), self._empty_text, soft, font, Align.AlignCenter
                )
                return
            self._paint_ground(painter, body, self._profile)
            self._paint_scale(painter, body, self._profile)
            self._paint_stations(painter, body, self._profile)

    def _paint_ground(self, painter: QPainter, body: QRectF, profile: Profile) -> None:
        look, width = theme(), max(2, round(body.width()))
        at_m = np.linspace(0.0, profile.length_m, width + 1)
        heights = np.interp(at_m, profile.distance_m, profile.elevation_m)
        low, high = _range(profile)
        ys = body.bottom() - (heights - low) / (high - low) * body.height()
        xs = body.left() + np.arange(width + 1) * body.width() / width
        painter.setPen(Qt.PenStyle.NoPen)
        gradient = np.diff(heights) / np.diff(at_m)
        kinds = np.where(gradient > LEVEL, 1, np.where(gradient < -LEVEL, -1, 0))
        edges = [0, *(np.flatnonzero(np.diff(kinds)) + 1).tolist(), width]
        for first, last in pairwise(edges):
            hue = {1: "pale_ochre", -1: "pale_sky", 0: "stone"}[int(kinds[first])]
            painter.setBrush(look.colours[hue])
            top = _points(xs[first : last + 1], ys[first : last + 1])
            foot = [QPointF(xs[last], body.bottom()), QPointF(xs[first], body.bottom())]
            painter.drawPolygon(QPolygonF(top + foot))
        painter.setPen(QPen(look.colours["ink"], Stroke.THIN))
        painter.drawPolyline(QPolygonF(_points(xs, ys)))

    def _paint_scale(self, painter: QPainter, body: QRectF, profile: Profile) -> None:
        look, words = theme(), self._words
        soft, font = look.colours["soft"], look.font(NAME_PT)
        heights = (float(profile.elevation_m.max()), float(profile.elevation_m.min()))
        low, high = _range(profile)
        for height in heights if profile.has_elevation else ():
            y = body.bottom() - (height - low) / (high - low) * body.height()
            room = QRectF(0, y - 8, body.left() - look.px(6), 16)
            draw_text(
                painter,
                room,
                words.height(height),
                soft,
                font,
                Align.AlignRight | Align.AlignVCenter,
            )
        foot = QRectF(body.left(), body.bottom(), body.width(), self.height() - body.bottom())
        draw_text(painter, foot, words.distance_bare(0.0, 0), soft, font)
        end = words.distance(profile.length_m)
        draw_text(painter, foot, end, soft, font, Align.AlignRight | Align.AlignVCenter)

    def _paint_stations(self, painter: QPainter, body: QRectF, profile: Profile) -> None:
        """Draw each station as a line, its name over it where there is room for it."""
        look = theme()
        metrics, free_from = look.metrics(NAME_PT), body.left() - look.px(LEFT_PX)
        for station in self._stations:
            x = body.left() + station.at_m / profile.length_m * body.width()
            painter.setPen(QPen(look.colours["strong_line"], Stroke.HAIR))
            painter.drawLine(QLineF(x, body.top(), x, body.bottom()))
            width = metrics.horizontalAdvance(station.name)
            left = min(max(x - width / 2, free_from), self.width() - width - 2)
            if left >= free_from and left + width >= x - width / 2:
                room = QRectF(left, 0, width, body.top())
                draw_text(painter, room, station.name, look.colours["ink"], look.font(NAME_PT))
                free_from = left + width + look.px(8)


def _range(profile: Profile) -> tuple[float, float]:
    low, high = float(profile.elevation_m.min()), float(profile.elevation_m.max())
    room = max(0.08 * (high - low), 10.0)
    return low - 2.0 * room, high + room


def _points(xs: FloatArray, ys: FloatArray) -> list[QPointF]:
    pairs: Sequence[tuple[float, float]] = list(zip(xs.tolist(), ys.tolist(), strict=True))
    return [QPointF(x, y) for x, y in pairs]
