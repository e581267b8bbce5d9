"""Fluid and sodium: what is drunk and salted in the hour around each moment of the race."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.fuelling import FuelFigures
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.raceday.race_lane import RaceLane, bends
from ultraplanner_gui.widgets.axis import RaceAxis
from ultraplanner_gui.widgets.lane import (
    GUTTER_PX,
    HEAD_PX,
    NAME_PT,
    UNIT_PT,
    Scale,
    draw_curve,
    nice_ticks,
)
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke
from ultraplanner_gui.wording.words import Words

BAND = (0.75, 1.25)
HEAD_ROOM = 1.1


class FluidLane(RaceLane):
    """Fluid as a line over its band, sodium as a dashed line on the same scale, mL and mg an
    hour: their figures happen to lie near each other.
    """

    topic = "fluid lane"
    may_wait = True

    def __init__(
        self,
        document: Document,
        selection: Selection,
        axis: RaceAxis,
        words: Callable[[], Words],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__("", "", 44.0, document, selection, axis, words, parent)
        self.rename(self.tr("Fluid, sodium"))
        self.set_unit(self.tr("mL/h, mg/h"))

    def paint_head(self, painter: QPainter) -> None:
        """Draw name and units, under each unit a piece of its line."""
        super().paint_head(painter)
        look, texts = theme(), self.tr("mL/h, mg/h").split(", ")
        line, small = look.metrics(NAME_PT, bold=True).height(), look.metrics(UNIT_PT).height()
        foot = 2.0 + line + small
        if foot > self.height() - 1 or len(texts) != 2:
            return
        right = look.px(HEAD_PX - GUTTER_PX)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        pens = (
            QPen(look.colours["plum"], Stroke.LINE, Qt.PenStyle.DashLine),
            QPen(look.colours["sky"], Stroke.LINE),
        )
        for text, pen in zip(reversed(texts), pens, strict=True):
            left = right - look.width(text, UNIT_PT)
            painter.setPen(pen)
            painter.drawLine(QPointF(left, round(foot)), QPointF(right, round(foot)))
            right = left - look.width(", ", UNIT_PT)

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        fuel, kept = self.shown.fuel, self.document.before.fuel
        if fuel is None:
            self.paint_empty(painter, body, self.tr("Fluid appears with a course."))
            return
        scale = self._scale(body, kept or fuel)
        labels = [(t, self.words().number(t)) for t in nice_ticks(0.0, scale.high, 3)]
        self.paint_ticks(painter, body, scale, labels)
        painter.save()
        painter.setClipRect(body)
        self._paint_band(painter, body, scale)
        self._paint_fluid(painter, body, scale, fuel)
        self._paint_sodium(painter, body, scale, fuel)
        if kept is not None and kept is not fuel:
            painter.setPen(QPen(theme().colours["ink"], Stroke.HAIR, Qt.PenStyle.DotLine))
            painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
            self._line(painter, body, scale, kept.rolling_s, kept.rolling_ml_per_h)
        painter.restore()

    def readout(self, at: QPointF) -> str:
        fuel, body, words = self.shown.fuel, self.body(), self.words()
        if fuel is None:
            return ""
        at_s = self.axis.time_at(at.x() - body.left(), body.width())
        fluid, sodium, caffeine = (
            float(np.interp(at_s, fuel.rolling_s, values))
            for values in (fuel.rolling_ml_per_h, fuel.rolling_mg_per_h, fuel.caffeine_mg)
        )
        said = self.tr("{0} of fluid and {1} of sodium in the hour around").format(
            words.millilitres(fluid), words.milligrams(sodium)
        )
        if caffeine >= 1.0:
            said += self.tr("; about {0} of caffeine in the body").format(
                words.milligrams(caffeine)
            )
        return said

    def renew(self, before: Outlook, after: Outlook) -> None:
        if before.fuel is not after.fuel or before.target is not after.target:
            self.update()

    def _scale(self, body: QRectF, kept: FuelFigures) -> Scale:
        # From the kept outlook, so that the scale stays still under a drag.
        high = max(
            BAND[1] * kept.plan.fluid_ml_per_h,
            float(kept.rolling_ml_per_h.max(initial=0.0)),
            float(kept.rolling_mg_per_h.max(initial=0.0)),
            200.0,
        )
        return Scale(0.0, high * HEAD_ROOM, body.top() + 2, body.bottom() - 1)

    def _paint_band(self, painter: QPainter, body: QRectF, scale: Scale) -> None:
        asked = self.shown.project.fuel.fluid_ml_per_h
        low, high = (scale.y(share * asked) for share in BAND)
        band = QRectF(body.left(), high, body.width(), low - high)
        painter.fillRect(band, theme().colours["pale_sky"])

    def _points(
        self, body: QRectF, scale: Scale, times_s: FloatArray, values: FloatArray
    ) -> tuple[list[float], list[float]]:
        picked = bends(values)
        xs = body.left() + self.axis.x_of_times(times_s[picked], body.width())
        shares = np.minimum(values[picked], scale.high) / scale.high
        ys = scale.bottom - shares * (scale.bottom - scale.top)
        return xs.tolist(), ys.tolist()

    def _line(
        self, painter: QPainter, body: QRectF, scale: Scale, times_s: FloatArray, values: FloatArray
    ) -> None:
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolyline(list(map(QPointF, *self._points(body, scale, times_s, values))))

    def _paint_fluid(
        self, painter: QPainter, body: QRectF, scale: Scale, fuel: FuelFigures
    ) -> None:
        painter.setPen(QPen(theme().colours["sky"], Stroke.LINE))
        draw_curve(painter, *self._points(body, scale, fuel.rolling_s, fuel.rolling_ml_per_h))

    def _paint_sodium(
        self, painter: QPainter, body: QRectF, scale: Scale, fuel: FuelFigures
    ) -> None:
        painter.setPen(QPen(theme().colours["plum"], Stroke.LINE, Qt.PenStyle.DashLine))
        # Smooth dashes are dear.
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        self._line(painter, body, scale, fuel.rolling_s, fuel.rolling_mg_per_h)
