"""Glycogen: what liver and legs hold along the race, as a band, and where they run empty."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.glycogen import GlycogenLedger, ledger_of, left_g
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.plan.course import FloatArray
from ultraplanner_gui.raceday.race_lane import RaceLane
from ultraplanner_gui.science.glycogen import EMPTY_SHARE, FULL_GUT_G, LOW_SHARE
from ultraplanner_gui.widgets.axis import RaceAxis
from ultraplanner_gui.widgets.lane import (
    UNIT_PT,
    Align,
    Scale,
    draw_curve,
    draw_levels,
    draw_text,
    nice_ticks,
)
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke
from ultraplanner_gui.wording.words import Words

#: Points drawn at most: a band as smooth as the eye sees it.
MOST_POINTS = 120
HEAD_ROOM = 1.06
CENTRED = Align.AlignCenter


class GlycogenLane(RaceLane):
    """The band of the stores: its upper edge burns as most do, its lower one faster.

    Hatched where more lies in the gut than the body can use at that pace.
    """

    topic = "glycogen"
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
        self.rename(self.tr("Glycogen"))
        self.set_unit(self.tr("g, about"))

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        now, kept = ledger_of(self.shown), ledger_of(self.document.before)
        if now is None:
            self.paint_empty(painter, body, self.tr("Glycogen appears with a course."))
            return
        scale = self._scale(body, kept or now)
        labels = [(t, self.words().number(t)) for t in nice_ticks(0.0, scale.high, 3)]
        self.paint_ticks(painter, body, scale, labels)
        painter.save()
        painter.setClipRect(body)
        self._paint_limits(painter, body, scale, now)
        self._paint_gut(painter, body, now)
        if kept is not None and kept is not now:
            self._paint_before(painter, body, scale, kept)
        self._paint_band(painter, body, scale, now)
        self._paint_empty_point(painter, body, now)
        painter.restore()

    def readout(self, at: QPointF) -> str:
        ledger, body, words = ledger_of(self.shown), self.body(), self.words()
        if ledger is None:
            return ""
        at_s = self.axis.time_at(at.x() - body.left(), body.width())
        low, high = ledger.band_at(at_s)
        return self.tr("About {0} to {1} of glycogen left of {2}; {3} waits in the gut").format(
            words.grams(low),
            words.grams(high),
            words.grams(ledger.start_g),
            words.grams(ledger.gut_at(at_s)),
        )

    def renew(self, before: Outlook, after: Outlook) -> None:
        if before.fuel is not after.fuel or before.target is not after.target:
            self.update()

    def _scale(self, body: QRectF, kept: GlycogenLedger) -> Scale:
        # From the kept outlook, so that the scale stays still under a drag.
        return Scale(0.0, kept.start_g * HEAD_ROOM, body.top() + 2, body.bottom() - 1)

    def _points(
        self, body: QRectF, scale: Scale, ledger: GlycogenLedger, grams: FloatArray
    ) -> tuple[list[float], list[float]]:
        """Return x and y of the points drawn of *grams*."""
        step = max(1, len(ledger.time_s) // MOST_POINTS)
        picked = np.append(np.arange(0, len(ledger.time_s) - 1, step), len(ledger.time_s) - 1)
        xs = body.left() + self.axis.x_of_times(ledger.time_s[picked], body.width())
        ys = scale.bottom - grams[picked] / scale.high * (scale.bottom - scale.top)
        return xs.tolist(), ys.tolist()

    def _paint_band(
        self, painter: QPainter, body: QRectF, scale: Scale, ledger: GlycogenLedger
    ) -> None:
        c = theme().colours
        high = self._points(body, scale, ledger, left_g(ledger.usual))
        low = list(map(QPointF, *self._points(body, scale, ledger, left_g(ledger.fast))))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(c["pale_plum"])
        # Its edges are drawn over by the lines.
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        painter.drawPolygon(QPolygonF([*map(QPointF, *high), *reversed(low)]))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(c["plum"], Stroke.LINE))
        draw_curve(painter, *high)
        painter.setPen(QPen(c["plum"], Stroke.HAIR))
        painter.drawPolyline(QPolygonF(low))

    def _paint_before(
        self, painter: QPainter, body: QRectF, scale: Scale, ledger: GlycogenLedger
    ) -> None:
        painter.setPen(QPen(theme().colours["ink"], Stroke.HAIR, Qt.PenStyle.DotLine))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        points = self._points(body, scale, ledger, left_g(ledger.usual))
        painter.drawPolyline(list(map(QPointF, *points)))

    def _paint_limits(
        self, painter: QPainter, body: QRectF, scale: Scale, ledger: GlycogenLedger
    ) -> None:
        """Draw where the reserve is low and where it is nearly gone."""
        ys = [scale.y(share * ledger.start_g) for share in (LOW_SHARE, EMPTY_SHARE)]
        levels = [(body.left(), body.right(), y) for y in ys]
        look = theme()
        draw_levels(painter, levels, look.colours["clay"], Stroke.HAIR, Qt.PenStyle.DashLine)
        height, left = look.metrics(UNIT_PT).height(), body.left() + look.px(4.0)
        if ys[1] + height / 2 > body.bottom():
            return
        names = (self.tr("low"), self.tr("nearly gone"))
        # One beside the other, as the lines lie near each other; too near, one name does.
        has_both = ys[1] - ys[0] >= 0.75 * height
        for y, name in zip(ys, names if has_both else names[:1], strict=False):
            place = QRectF(left, y - height / 2, look.width(name, UNIT_PT) + 4.0, height)
            painter.fillRect(place, look.colours["lane"])
            draw_text(painter, place, name, look.colours["clay"], look.font(UNIT_PT), CENTRED)
            left = place.right() + look.px(4.0)

    def _paint_gut(self, painter: QPainter, body: QRectF, ledger: GlycogenLedger) -> None:
        """Hatch the foot where more waits in the gut than can be used."""
        full = ledger.usual.gut_g > FULL_GUT_G
        edges = np.flatnonzero(np.diff(full.astype(np.int8), prepend=0, append=0))
        times = ledger.time_s[np.minimum(edges, len(ledger.time_s) - 1)]
        xs = (body.left() + self.axis.x_of_times(times, body.width())).tolist()
        look = theme()
        high = look.px(5.0)
        spans = zip(xs[::2], xs[1::2], strict=True)
        feet = [QRectF(left, body.bottom() - high, right - left, high) for left, right in spans]
        painter.setPen(Qt.PenStyle.NoPen)
        hatch = QBrush(look.colours["clay"], Qt.BrushStyle.BDiagPattern)
        for brush in (QBrush(look.colours["pale_clay"]), hatch):
            painter.setBrush(brush)
            painter.drawRects(feet)

    def _paint_empty_point(self, painter: QPainter, body: QRectF, ledger: GlycogenLedger) -> None:
        at_m = ledger.empty_m if ledger.empty_m is not None else ledger.fast_empty_m
        if at_m is None:
            return
        look, words = theme(), self.words()
        x = self.x_of(at_m, body)
        painter.setPen(QPen(look.colours["clay"], Stroke.HEAVY))
        painter.drawLine(QLineF(x, body.top(), x, body.bottom()))
        said = (
            self.tr("legs empty from {0}")
            if ledger.empty_m is not None
            else self.tr("perhaps empty from {0}")
        ).format(words.distance(at_m, 0))
        metrics = look.metrics(UNIT_PT, bold=True)
        wide = metrics.horizontalAdvance(said) + 4
        left = x + 5 if x + 5 + wide < body.right() else x - 5 - wide
        place = QRectF(left, body.top() + 2, wide, metrics.height())
        painter.fillRect(place, look.colours["lane"])
        align = Align.AlignLeft | Align.AlignVCenter
        draw_text(painter, place, said, look.colours["clay"], look.font(UNIT_PT, bold=True), align)
