"""How warm it is along the race at the hour of passing."""

from __future__ import annotations

import math

from PySide6.QtCore import QCoreApplication, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from ultraplanner_gui.engine.environment import WBGT_CAVEAT
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.race_checks import HOT_C, TOO_HOT_C, WARM_C
from ultraplanner_gui.engine.warmth import Warmth
from ultraplanner_gui.raceday.clear_places import CLEAR_PX, crossing
from ultraplanner_gui.raceday.race_lane import RaceLane
from ultraplanner_gui.widgets.lane import UNIT_PT, Scale, draw_text, nice_ticks
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke

LEAST_SPAN_C = 10.0


class WarmthLane(RaceLane):
    """Air temperature as a line, the WBGT estimate dashed over it where the sun is up."""

    topic = "warmth"

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        warm = self._warmth
        if warm is None:
            text = self.tr("No weather yet: Race day, Weather and conditions.")
            self.paint_empty(painter, body, text)
            return
        scale, words = self._scale(warm, body), self.words()
        ticks = nice_ticks(scale.low, scale.high, 2)
        self.paint_ticks(painter, body, scale, [(t, words.temperature_bare(t)) for t in ticks])
        painter.save()
        painter.setClipRect(body)
        self._paint_bands(painter, body, warm)
        xs = [self.x_of(float(at_m), body) for at_m in warm.distance_m]
        ink = theme().colours["ink"]
        self._paint_line(painter, xs, warm.temperature_c.tolist(), scale, QPen(ink, Stroke.LINE))
        pen = QPen(theme().colours["clay"], Stroke.LINE, Qt.PenStyle.DashLine)
        self._paint_line(painter, xs, warm.wbgt_c.tolist(), scale, pen)
        self._name_lines(painter, body, warm, scale, xs)
        painter.restore()

    def readout(self, at: QPointF) -> str:
        warm, words = self._warmth, self.words()
        if warm is None:
            return ""
        temperature_c, wbgt_c = warm.at(self.place_at(at.x()))
        if math.isnan(wbgt_c):
            return self.tr("{0} when you pass, in the dark").format(
                words.temperature(temperature_c)
            )
        said = self.tr("{0} when you pass; WBGT about {1}, {2}.").format(
            words.temperature(temperature_c), words.temperature(wbgt_c), self._heat(wbgt_c)
        )
        caveat = QCoreApplication.translate("Plan", WBGT_CAVEAT)
        return f"{said}\n{caveat}"

    def renew(self, before: Outlook, after: Outlook) -> None:
        was, now = (look.race.warmth if look.race else None for look in (before, after))
        if was is not now or self.has_ground_changed(before, after):
            self.update()

    @property
    def _warmth(self) -> Warmth | None:
        race = self.shown.race
        return race.warmth if race is not None else None

    def _scale(self, warm: Warmth, body: QRectF) -> Scale:
        wbgt = [float(c) for c in warm.wbgt_c if not math.isnan(c)]
        low = min([float(warm.temperature_c.min()), *wbgt])
        high = max([float(warm.temperature_c.max()), *wbgt])
        room = max(LEAST_SPAN_C - (high - low), 0.15 * LEAST_SPAN_C) / 2.0
        return Scale(low - room, high + room, body.top() + 2, body.bottom() - 2)

    def _paint_bands(self, painter: QPainter, body: QRectF, warm: Warmth) -> None:
        """Shade where the estimate is high."""
        places, estimate = warm.distance_m.tolist(), warm.wbgt_c.tolist()
        start_m: float | None = None
        for at_m, wbgt_c in zip([*places, places[-1]], [*estimate, math.nan], strict=True):
            if wbgt_c >= HOT_C:
                start_m = at_m if start_m is None else start_m
            elif start_m is not None:
                left, right = self.x_of(start_m, body), self.x_of(at_m, body)
                band = QRectF(left, body.top(), right - left, body.height())
                painter.fillRect(band, theme().colours["pale_clay"])
                start_m = None

    def _paint_line(
        self, painter: QPainter, xs: list[float], values: list[float], scale: Scale, pen: QPen
    ) -> None:
        painter.setPen(pen)
        part: list[QPointF] = []
        for x, value in zip([*xs, 0.0], [*values, math.nan], strict=True):
            if not math.isnan(value):
                part.append(QPointF(x, scale.y(value)))
                continue
            if len(part) > 1:
                painter.drawPolyline(QPolygonF(part))
            part = []

    def _name_lines(
        self, painter: QPainter, body: QRectF, warm: Warmth, scale: Scale, xs: list[float]
    ) -> None:
        """Name both lines where they begin in sight: the air below its line, WBGT above its own."""
        look, lines = theme(), self.station_xs(body)
        height = look.metrics(UNIT_PT).height()
        for text, values, hue, is_above in (
            (self.tr("air"), warm.temperature_c, "ink", False),
            (self.tr("heat (WBGT), estimate"), warm.wbgt_c, "clay", True),
        ):
            seen = (
                (x, float(c)) for x, c in zip(xs, values, strict=True) if x >= body.left() + 4.0
            )
            named = [(x, c) for x, c in seen if not math.isnan(c)]
            width = look.width(text, UNIT_PT)
            starts = [x for x, _ in named[:1]]
            starts += [line + CLEAR_PX for line in lines if starts and line > starts[0]]
            for x in starts:
                # Clear of the line as far as the name goes, not only where it begins.
                ys = [scale.y(c) for at, c in named if x - 4.0 <= at <= x + width + 4.0]
                y = (min(ys) if is_above else max(ys)) if ys else 0.0
                top = y - height - 1.0 if is_above else y + 2.0
                top = min(max(top, body.top()), body.bottom() - height)
                is_clear = bool(ys) and (top + height <= y if is_above else top >= y)
                is_clear = is_clear and not crossing(x + 2.0, width, lines)
                if x + width < body.right() and is_clear:
                    place = QRectF(x + 2.0, top, width, height)
                    draw_text(painter, place, text, look.colours[hue], look.font(UNIT_PT))
                    break

    def _heat(self, wbgt_c: float) -> str:
        if wbgt_c < WARM_C:
            return self.tr("low heat")
        if wbgt_c < HOT_C:
            return self.tr("moderate heat")
        return self.tr("high heat") if wbgt_c < TOO_HOT_C else self.tr("very high heat")
