"""Time in hand and light along the race."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QPainter, QPen, QPolygonF

from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.raceday.race_lane import RaceLane
from ultraplanner_gui.widgets.lane import LABEL_PT, Align, Scale, draw_text, nice_ticks
from ultraplanner_gui.widgets.theme import theme


class InHandLane(RaceLane):
    """How much later one could be and still make every later cutoff: a step line."""

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        steps = [s for s in self.shown.sections if s.in_hand_s is not None]
        if not steps:
            self.paint_empty(
                painter,
                body,
                self.tr("No cutoffs. Type them in Tables, Aid stations, or a time limit."),
            )
            return
        scale = self._scale(body)
        ticks = nice_ticks(scale.low / 3600, scale.high / 3600, 3)
        words = self.words()
        self.paint_ticks(
            painter,
            body,
            scale,
            [(t * 3600, words.number(t, 0 if t == int(t) else 1)) for t in ticks],
        )
        painter.save()
        painter.setClipRect(body)
        self._paint_steps(painter, body, scale, self.shown.sections, is_before=False)
        if self.document.before.sections is not self.shown.sections:
            self._paint_steps(painter, body, scale, self.document.before.sections, is_before=True)
        painter.restore()

    def readout(self, at: QPointF) -> str:
        at_m, words = self.place_at(at.x()), self.words()
        section = next((s for s in self.shown.sections if at_m <= s.end_m), None)
        if section is None or section.in_hand_s is None:
            return ""
        return self.tr(
            "{0} in hand: later by this much, every later cutoff is still met at planned speed"
        ).format(words.duration(section.in_hand_s))

    def _scale(self, body: QRectF) -> Scale:
        values = [
            s.in_hand_s for s in self.document.before.sections if s.in_hand_s is not None
        ] or [3600.0]
        return Scale(
            min(0.0, *values), max(3600.0, *values) * 1.15, body.top() + 2, body.bottom() - 1
        )

    def _paint_steps(
        self,
        painter: QPainter,
        body: QRectF,
        scale: Scale,
        sections: tuple[SectionFigures, ...],
        is_before: bool,
    ) -> None:
        c = theme().colours
        points: list[QPointF] = []
        for section in sections:
            if section.in_hand_s is None:
                break
            y = scale.y(section.in_hand_s)
            points.append(QPointF(self.x_of(section.start_m, body), y))
            points.append(QPointF(self.x_of(section.end_m, body), y))
        if not points:
            return
        if is_before:
            painter.setPen(QPen(c["ink"], 1.0, Qt.PenStyle.DashLine))
            painter.drawPolyline(QPolygonF(points))
            return
        zero = scale.y(0.0)
        late = any(p.y() > zero + 0.5 for p in points)
        area = [QPointF(points[0].x(), zero), *points, QPointF(points[-1].x(), zero)]
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(c["pale_clay" if late else "pale_moss"])
        painter.drawPolygon(QPolygonF(area))
        if late:
            painter.setBrush(QBrush(c["clay"], Qt.BrushStyle.BDiagPattern))
            painter.drawPolygon(QPolygonF(area))
        painter.setPen(QPen(c["clay" if late else "moss"], 1.6))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolyline(QPolygonF(points))
        painter.setPen(QPen(c["strong_line"], 1.0))
        painter.drawLine(QPointF(body.left(), zero), QPointF(body.right(), zero))


class LightLane(RaceLane):
    """Day, twilight and dark, said in words where there is room."""

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        look = theme()
        c = look.colours
        hues = {"day": "daylight", "twilight": "twilight", "dark": "night"}
        names = {"day": self.tr("day"), "twilight": self.tr("twilight"), "dark": self.tr("dark")}
        for span in self.shown.light:
            left = max(self.x_of_time(span.start_s, body), body.left())
            right = min(self.x_of_time(span.end_s, body), body.right())
            if right <= left:
                continue
            rect = QRectF(left, body.top(), right - left, body.height())
            painter.fillRect(rect, c[hues[span.kind]])
            text = names[span.kind]
            if look.metrics(LABEL_PT).horizontalAdvance(text) + 10 < rect.width():
                ink = "on_night" if span.kind == "dark" else "ink"
                draw_text(
                    painter,
                    rect.adjusted(5, 0, 0, 0),
                    text,
                    c[ink],
                    look.font(LABEL_PT),
                    Align.AlignVCenter,
                )

    def readout(self, at: QPointF) -> str:
        words, race = self.words(), self.shown.project.race
        body = self.body()
        moment_s = self.axis.time_at(at.x() - body.left(), body.width())
        for span in self.shown.light:
            if span.start_s <= moment_s < span.end_s:
                name = {
                    "day": self.tr("Day"),
                    "twilight": self.tr("Twilight"),
                    "dark": self.tr("Dark"),
                }[span.kind]
                return self.tr("{0} from {1} to {2}").format(
                    name, words.clock(race.clock(span.start_s)), words.clock(race.clock(span.end_s))
                )
        return ""

    def renew(self, before: Outlook, after: Outlook) -> None:
        if before.light is not after.light or before.target is not after.target:
            self.update()


class FootLane(RaceLane):
    """The figures of the axis itself, at the foot of the storey."""

    def paint_ground(self, painter: QPainter, body: QRectF) -> None:
        pass

    def paint_station_lines(self, painter: QPainter, body: QRectF) -> None:
        pass

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        if self.shown.profile is None or self.shown.target is None:
            return
        look = theme()
        font, colour = look.font(LABEL_PT), look.colours["soft"]
        for x, text in self._marks(body):
            draw_text(
                painter,
                QRectF(x - 60, 0, 120, self.height()),
                text,
                colour,
                font,
                Align.AlignCenter,
            )

    def _marks(self, body: QRectF) -> list[tuple[float, str]]:
        words, axis = self.words(), self.axis
        room = max(2, int(body.width() / theme().px(90)))
        if axis.measure == "distance":
            per_unit = words.unit_m
            ticks = nice_ticks(axis.low / per_unit, axis.high / per_unit, room)
            return [
                (
                    self.x_of(t * per_unit, body),
                    words.distance_bare(t * per_unit, 0 if t == int(t) else 1),
                )
                for t in ticks
            ]
        race = self.shown.project.race
        start = race.clock(axis.low)
        first_s = (
            axis.low
            - (start.minute * 60 + start.second)
            + (3600 if start.minute or start.second else 0)
        )
        step_s = 3600.0 * max(1, math.ceil((axis.high - axis.low) / 3600 / room))
        marks = []
        at_s = first_s
        while at_s <= axis.high:
            marks.append((self.x_of_time(at_s, body), words.clock(race.clock(at_s))))
            at_s += step_s
        return marks
