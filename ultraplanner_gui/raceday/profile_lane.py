"""The profile: the ground with its wash of gradient and its hachures."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QImage, QPainter, QPen, QPixmap, QPolygonF

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

    topic = "profile"
    _picture: QPixmap | None = None
    _picture_of: object = None

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        profile = self.shown.profile
        if profile is None:
            self.paint_empty(
                painter, body, self.tr("No course yet. Drop a GPX file on the window.")
            )
            return
        if not profile.has_elevation:
            self.paint_empty(painter, body, self.tr("The course has no heights: paced as flat."))
            return
        scale = self._scale(profile, body)
        words = self.words()
        ticks = nice_ticks(scale.low, scale.high, max(2, int(body.height() / 26)))
        self.paint_ticks(painter, body, scale, [(t, words.height_bare(t)) for t in ticks])
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
        xs = np.arange(width + 1, dtype=np.float64)
        at_m = self.axis.distances_at(xs, width)
        heights = np.interp(at_m, profile.distance_m, profile.elevation_m)
        gradient = np.diff(heights) / np.maximum(np.diff(at_m), 1e-6)
        ys = scale.bottom - (heights - scale.low) / (scale.high - scale.low) * (
            scale.bottom - scale.top
        )
        ys -= body.top()
        # A point every other pixel: the eye sees no difference, the stroke costs half.
        pairs = zip(xs[::2].tolist(), ys[::2].tolist(), strict=True)
        line = [QPointF(x, y) for x, y in pairs]
        line.append(QPointF(width, float(ys[-1])))
        with QPainter(picture) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QBrush(_wash(gradient)))
            painter.drawPolygon(QPolygonF([QPointF(0, height), *line, QPointF(width, height)]))
            _hachures(painter, gradient, ys, height)
            painter.setPen(QPen(theme().colours["ink"], 1.3))
            painter.drawPolyline(QPolygonF(line))
        return picture


def _wash(gradient: FloatArray) -> QImage:
    """Return a strip one pixel high, each column tinted by its gradient.

    Diverging: descent sky, level stone, climb ochre; depth of the hue is steepness.
    """
    c = theme().colours
    tint = np.clip(np.abs(gradient) / FULL_WASH, 0.0, 1.0)[:, None] * WASH_STRENGTH
    hue = np.where((gradient > 0.0)[:, None], _rgb(c.pale_ochre), _rgb(c.pale_sky))
    columns = (1.0 - tint) * _rgb(c.stone) + tint * hue
    pixels = np.full((len(gradient), 4), 255, dtype=np.uint8)
    pixels[:, :3] = columns
    width = len(gradient)
    return QImage(pixels.tobytes(), width, 1, width * 4, QImage.Format.Format_RGBA8888).copy()


def _hachures(painter: QPainter, gradient: FloatArray, ys: FloatArray, height: int) -> None:
    """Draw strokes down the slope, steeper = denser: they survive print in black."""
    smooth = np.convolve(gradient, np.ones(5) / 5.0, mode="same").tolist()
    climbs: list[QLineF] = []
    descents: list[QLineF] = []
    x, width = 4.0, len(gradient)
    while x < width - 4:
        slope = smooth[int(x)]
        steep = abs(slope)
        if steep >= FIRST_HACHURE:
            top = float(ys[int(x)]) + 3.0
            bottom = min(top + min(7.0 + 60.0 * steep, 20.0), height - 1.0)
            strokes, lean = (climbs, -3.0) if slope > 0 else (descents, 3.0)
            strokes.append(QLineF(x, top, x + lean, bottom))
        x += 11.0 - 8.0 * min(steep / FULL_WASH, 1.0)
    for strokes, hue in ((climbs, "ochre"), (descents, "sky")):
        painter.setPen(QPen(theme().colours[hue], 1.0))
        painter.drawLines(strokes)


def _rgb(colour: str) -> FloatArray:
    c = QColor(colour)
    return np.array([c.red(), c.green(), c.blue()], dtype=float)
