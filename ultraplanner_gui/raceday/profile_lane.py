"""The profile: the ground with its wash of gradient and its hachures."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QPointF, QRectF, QSize
from PySide6.QtGui import QColor, QImage, QPainter, QPen, QPixmap, QPolygonF

from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.raceday.race_lane import RaceLane
from ultraplanner_gui.widgets.lane import Scale, nice_ticks
from ultraplanner_gui.widgets.theme import theme

#: Gradients at which the wash is full, and from which hachures are drawn.
FULL_WASH = 0.20
FIRST_HACHURE = 0.03
WASH_STRENGTH = 0.85


class ProfileLane(RaceLane):
    """Height along the race. The picture is kept until size, view, course or theme change."""

    _picture: QPixmap | None = None
    _picture_of: object = None

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        profile = self.shown.profile
        if profile is None:
            self.paint_empty(
                painter, body, self.tr("No course yet. Drop a GPX file on the window.")
            )
            return
        scale = self._scale(profile, body)
        words = self.words()
        ticks = nice_ticks(scale.low, scale.high, max(2, int(body.height() / 26)))
        self.paint_ticks(painter, body, scale, [(t, words.height_bare(t)) for t in ticks])
        if not profile.has_elevation:
            self.paint_empty(painter, body, self.tr("The course has no heights: paced as flat."))
        target = self.shown.target if self.axis.measure == "clock" else None
        key = (
            profile,
            body.size().toTuple(),
            self.axis.low,
            self.axis.high,
            self.axis.measure,
            target,
            theme().colours,
        )
        if self._picture is None or self._picture_of != key:
            self._picture, self._picture_of = self._drawn(profile, body, scale), key
        painter.drawPixmap(body.topLeft(), self._picture)

    def readout(self, at: QPointF) -> str:
        profile, target, words = self.shown.profile, self.shown.target, self.words()
        if profile is None or target is None or not self.body().contains(at):
            return ""
        at_m = self.place_at(at.x())
        k = int(np.searchsorted(profile.distance_m, at_m, side="right")) - 1
        gradient = float(profile.gradient[min(max(k, 0), len(profile.gradient) - 1)])
        clock = words.clock(self.shown.project.race.clock(target.arrival_s(at_m)))
        return self.tr("{0}, {1}, gradient {2}, {3}").format(
            words.distance(at_m, 1),
            words.height(profile.elevation_at(at_m)),
            words.percent(100 * gradient),
            clock,
        )

    def _scale(self, profile: Profile, body: QRectF) -> Scale:
        low, high = float(profile.elevation_m.min()), float(profile.elevation_m.max())
        room = max(0.06 * (high - low), 10.0)
        return Scale(low - 2.2 * room, high + room, body.top(), body.bottom())

    def _drawn(self, profile: Profile, body: QRectF, scale: Scale) -> QPixmap:
        ratio = self.devicePixelRatioF()
        width, height = max(1, round(body.width())), max(1, round(body.height()))
        picture = QPixmap(QSize(round(width * ratio), round(height * ratio)))
        picture.setDevicePixelRatio(ratio)
        picture.fill(QColor(0, 0, 0, 0))
        xs = np.arange(width + 1, dtype=float)
        at_m = np.array([self.axis.distance_at(x, width) for x in xs[:: max(1, width // 400)]])
        at_m = np.interp(xs, xs[:: max(1, width // 400)], at_m)
        heights = np.interp(at_m, profile.distance_m, profile.elevation_m)
        rise = np.diff(np.interp(at_m, profile.distance_m, profile.elevation_m))
        gradient = rise / np.maximum(np.diff(at_m), 1e-6)
        ys = (
            scale.bottom
            - (heights - scale.low) / (scale.high - scale.low) * (scale.bottom - scale.top)
            - body.top()
        )
        painter = QPainter(picture)
        painter.drawImage(QRectF(0, 0, width, height), _wash(gradient, ys[:-1], width, height))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        _hachures(painter, gradient, ys, height)
        painter.setPen(QPen(theme().colours["ink"], 1.3))
        painter.drawPolyline(
            QPolygonF([QPointF(float(x), float(y)) for x, y in zip(xs, ys, strict=True)])
        )
        painter.end()
        return picture


def _wash(gradient: FloatArray, ys: FloatArray, width: int, height: int) -> QImage:
    """Return the ground under the line, each column tinted by its gradient.

    Diverging: descent sky, level stone, climb ochre; depth of the hue is steepness.
    """
    c = theme().colours
    level = _rgb(c.stone)
    tint = np.clip(np.abs(gradient) / FULL_WASH, 0.0, 1.0)[:, None] * WASH_STRENGTH
    hue = np.where((gradient > 0.0)[:, None], _rgb(c.pale_ochre), _rgb(c.pale_sky))
    columns = (1.0 - tint) * level + tint * hue
    rows = np.arange(height, dtype=float)[:, None] + 0.5
    pixels = np.zeros((height, width, 4), dtype=np.uint8)
    pixels[..., 2], pixels[..., 1], pixels[..., 0] = (
        columns[:, k].astype(np.uint8) for k in range(3)
    )
    pixels[..., 3] = np.where(rows >= ys[None, :], 255, 0)
    pixels[..., :3] = np.where(pixels[..., 3:] > 0, pixels[..., :3], 0)
    return QImage(pixels.tobytes(), width, height, width * 4, QImage.Format.Format_ARGB32).copy()


def _hachures(painter: QPainter, gradient: FloatArray, ys: FloatArray, height: int) -> None:
    """Draw strokes down the slope, steeper = denser: they survive print in black."""
    c = theme().colours
    smooth = np.convolve(gradient, np.ones(5) / 5.0, mode="same")
    x, width = 4.0, len(gradient)
    while x < width - 4:
        slope = float(smooth[int(x)])
        steep = abs(slope)
        if steep >= FIRST_HACHURE:
            length = min(7.0 + 60.0 * steep, 20.0)
            lean = 3.0 if slope > 0 else -3.0
            top = float(ys[int(x)]) + 3.0
            bottom = min(top + length, height - 1.0)
            painter.setPen(QPen(c["ochre" if slope > 0 else "sky"], 1.0))
            painter.drawLine(QPointF(x, top), QPointF(x - lean, bottom))
        x += 11.0 - 8.0 * min(steep / FULL_WASH, 1.0)


def _rgb(colour: str) -> FloatArray:
    c = QColor(colour)
    return np.array([c.red(), c.green(), c.blue()], dtype=float)
