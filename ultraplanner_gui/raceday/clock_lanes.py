"""Time in hand and light along the race."""

from __future__ import annotations

import math
from datetime import date
from itertools import pairwise

import numpy as np
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QPainter, QPen, QPolygonF

from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.raceday.clear_places import crossing, first_clear
from ultraplanner_gui.raceday.race_lane import RaceLane
from ultraplanner_gui.widgets.lane import (
    GUTTER_PX,
    HEAD_PX,
    LABEL_PT,
    UNIT_PT,
    Align,
    Scale,
    draw_level,
    draw_levels,
    draw_rects,
    draw_text,
    nice_ticks,
)
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke

HOUR_S = 3600.0
MARK_PX = 64.0
WALK_STEP_PX = 24.0
#: Between a figure and the step under it.
ABOVE_PX = 1.0
MOST_OF_LANE = 0.45
#: So many stations before the walk-in limit its name may stand.
NEARBY = 8
ROUND_MINUTES = (1, 2, 5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440)

#: Left and right end, height and seconds in hand of one step.
_Step = tuple[float, float, float, float]


class InHandLane(RaceLane):
    """How much later one could be and still make every later cutoff: a step line."""

    topic = "time in hand"

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        if self.shown.profile is None:
            self.paint_empty(painter, body, self.tr("Time in hand appears with a course."))
            return
        if not any(s.in_hand_s is not None for s in self.shown.sections):
            self.paint_empty(
                painter,
                body,
                self.tr("No cutoffs. Type them in the table of aid stations, or a time limit."),
            )
            return
        scale, words = self._scale(body), self.words()
        ticks = nice_ticks(scale.low / HOUR_S, scale.high / HOUR_S, 3)
        self.paint_ticks(
            painter,
            body,
            scale,
            [(t * HOUR_S, words.number(t, 0 if t == int(t) else 1)) for t in ticks],
        )
        painter.save()
        painter.setClipRect(body)
        steps = self._paint_steps(painter, body, scale)
        if self.document.before.sections is not self.shown.sections:
            self._paint_before(painter, body, scale)
        self._paint_walk_in(painter, body, scale)
        self._paint_figures(painter, body, steps)
        painter.restore()

    def readout(self, at: QPointF) -> str:
        said = self._in_hand_said(at)
        race, words = self.shown.race, self.words()
        if not said or race is None:
            return said
        spare_s = float(race.walk_spare_s([self.place_at(at.x())])[0])
        section = self._section_at(at)
        is_late = section is not None and (section.in_hand_s or 0.0) < 0.0
        if is_late or not math.isfinite(spare_s):
            return said
        if spare_s < 0.0:
            never = self.tr("From here the rest cannot be walked in.")
            return f"{said}\n{never}"
        walk = self.tr("{0} later the rest can still be walked in, only if well.").format(
            words.duration(spare_s)
        )
        return f"{said}\n{walk}"

    def _section_at(self, at: QPointF) -> SectionFigures | None:
        at_m = self.place_at(at.x())
        return next((s for s in self.shown.sections if at_m <= s.end_m), None)

    def _in_hand_said(self, at: QPointF) -> str:
        section, words = self._section_at(at), self.words()
        if section is None or section.in_hand_s is None:
            return ""
        if section.in_hand_s < 0.0:
            return self.tr("{0} too late for a cutoff from here on").format(
                words.duration(-section.in_hand_s)
            )
        return self.tr(
            "{0} in hand: later by this much, every later cutoff is still met at planned speed"
        ).format(words.duration(section.in_hand_s))

    def _scale(self, body: QRectF) -> Scale:
        # From the kept outlook, so that the scale stays still under a drag.
        values = [s.in_hand_s for s in self.document.before.sections if s.in_hand_s is not None]
        low, high = min(0.0, *values, 0.0), max(HOUR_S, *values, HOUR_S)
        # The figure of the highest step stands above it too, where the limit never runs.
        figure = theme().metrics(UNIT_PT, bold=True).height() + ABOVE_PX + 1.0
        top = body.top() + min(figure, MOST_OF_LANE * body.height())
        return Scale(low * 1.15, math.ceil(high / HOUR_S) * HOUR_S, top, body.bottom() - 1)

    def _steps(
        self, sections: tuple[SectionFigures, ...], body: QRectF
    ) -> list[tuple[float, float, float]]:
        """Return left, right and seconds of each step, equal neighbours as one."""
        steps: list[tuple[float, float, float]] = []
        for section in sections:
            if section.in_hand_s is None:
                break
            left, right = self.x_of(section.start_m, body), self.x_of(section.end_m, body)
            if steps and abs(steps[-1][2] - section.in_hand_s) < 1.0:
                left = steps.pop()[0]
            steps.append((left, right, section.in_hand_s))
        return steps

    def _paint_steps(self, painter: QPainter, body: QRectF, scale: Scale) -> list[_Step]:
        """Draw all steps and return them with their height and figure.

        Like with like: every change of pen and brush takes as long as a line.
        """
        c, zero = theme().colours, scale.y(0.0)
        steps = [
            (left, right, scale.y(seconds), seconds)
            for left, right, seconds in self._steps(self.shown.sections, body)
        ]
        rises = [
            (seconds < 0.0, QLineF(left, last_y, left, y))
            for (_, _, last_y, _), (left, _, y, seconds) in pairwise(steps)
        ]
        for late, fill, hue in ((True, "pale_clay", "clay"), (False, "pale_moss", "moss")):
            those = [step for step in steps if (step[3] < 0.0) is late]
            if not those:
                continue
            areas = [
                QRectF(left, min(y, zero), right - left, abs(zero - y))
                for left, right, y, _ in those
            ]
            draw_rects(painter, areas, c[fill])
            if late:
                draw_rects(painter, areas, QBrush(c[hue], Qt.BrushStyle.BDiagPattern))
            draw_levels(painter, [(left, right, y) for left, right, y, _ in those], c[hue], 2.0)
            painter.setPen(QPen(c[hue], Stroke.HEAVY))
            painter.drawLines([line for is_late, line in rises if is_late is late])
        draw_level(painter, (body.left(), body.right()), zero, c["strong_line"])
        return steps

    def _paint_figures(self, painter: QPainter, body: QRectF, steps: list[_Step]) -> None:
        """Write the time in hand at each step, above it where there is room, clear of lines."""
        look, words = theme(), self.words()
        height, font = look.metrics(UNIT_PT, bold=True).height(), look.font(UNIT_PT, bold=True)
        ink, clay = look.colours["ink"], look.colours["clay"]
        lines = self.station_xs(body)
        for left, right, y, seconds in steps:
            left, right = self.clear_from(max(left, body.left()), body), min(right, body.right())
            text = words.duration(seconds)
            width = look.width(text, UNIT_PT, bold=True)
            if width + 12 > right - left:
                continue
            above = y - height - ABOVE_PX if seconds >= 0.0 else body.center().y() - height / 2
            is_under = above < body.top() - ABOVE_PX
            x = first_clear(left, right, width, lines)
            place = QRectF(x, y + 2 if is_under else above, width, height)
            # A pattern, the limit or a line of the scale may run there.
            ground = "pale_moss" if is_under else "lane"
            painter.fillRect(place.adjusted(-2, 0, 2, -ABOVE_PX), look.colours[ground])
            draw_text(painter, place, text, clay if seconds < 0.0 else ink, font)

    def _paint_before(self, painter: QPainter, body: QRectF, scale: Scale) -> None:
        steps = self._steps(self.document.before.sections, body)
        levels = [(left, right, scale.y(seconds)) for left, right, seconds in steps]
        draw_levels(painter, levels, theme().colours["ink"], 1.0, Qt.PenStyle.DashLine)

    def _paint_walk_in(self, painter: QPainter, body: QRectF, scale: Scale) -> None:
        """Draw the walk-in limit: how late one could be and still walk the rest in, if well."""
        race, look = self.shown.race, theme()
        if race is None:
            return
        steps = max(2, int(body.width() / WALK_STEP_PX))
        offsets = np.linspace(0.0, body.width(), steps + 1)
        places_m = self.axis.distances_at(offsets, body.width())
        spare_s = race.walk_spare_s(np.clip(places_m, 0.0, race.profile.length_m).tolist())
        known = np.isfinite(spare_s)
        ys = [scale.y(s) for s in spare_s[known].tolist()]
        ys = [min(max(y, body.top() - 2.0), body.bottom() + 2.0) for y in ys]
        points = list(map(QPointF, (offsets[known] + body.left()).tolist(), ys))
        if not points:
            return
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        painter.setPen(QPen(look.colours["clay"], Stroke.HAIR, Qt.PenStyle.DashLine))
        painter.drawPolyline(QPolygonF(points))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
        self._name_walk_in(painter, body, points)

    def _name_walk_in(self, painter: QPainter, body: QRectF, points: list[QPointF]) -> None:
        """Name the limit at the foot of the lane, left of where it comes up."""
        look, text = theme(), self.tr("walk-in limit, only if well")
        metrics = look.metrics(UNIT_PT)
        width, height = metrics.horizontalAdvance(text), metrics.height()
        # Where the line comes up lies between the last point at the foot and the first above it.
        risen = next((a.x() for a, b in pairwise(points) if b.y() < body.bottom() - 1.0), None)
        if risen is None or risen - width - 6.0 < body.left() or body.height() < 3.0 * height:
            return
        # Left of the lines of stations that would run through it.
        lines = self.station_xs(body)
        ends = [risen, *(x for x in reversed(lines) if x < risen)]
        lefts = (end - width - 4.0 for end in ends[:NEARBY])
        left = next((x for x in lefts if not crossing(x, width, lines)), -math.inf)
        if left < body.left() + 2.0:
            return
        place = QRectF(left, body.bottom() - height, width, height)
        draw_text(painter, place, text, look.colours["clay"], look.font(UNIT_PT))


class FootLane(RaceLane):
    """The figures of the axis itself, at the foot of the storey."""

    topic = "race axis"
    lines_over = False

    def renew(self, before: Outlook, after: Outlook) -> None:
        is_same_race = before.project.race is after.project.race
        if before.profile is not after.profile or not is_same_race:
            self.update()

    def paint_ground(self, painter: QPainter, body: QRectF) -> None:
        pass

    def paint_head(self, painter: QPainter) -> None:
        look = theme()
        unit = self.words().distance_unit if self.axis.measure == "distance" else self.tr("clock")
        right = look.px(HEAD_PX - GUTTER_PX)
        draw_text(
            painter,
            QRectF(0.0, 0.0, right, self.height()),
            unit,
            look.colours["soft"],
            look.font(UNIT_PT),
            Align.AlignRight | Align.AlignVCenter,
        )

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        if self.shown.profile is None or self.shown.target is None:
            return
        look = theme()
        font, colour = look.font(LABEL_PT), look.colours["soft"]
        for x, text in self._marks(body):
            width = look.metrics(LABEL_PT).horizontalAdvance(text)
            left = min(x - width / 2, self.width() - width - 1)
            rect = QRectF(left, 0, width, self.height())
            draw_text(painter, rect, text, colour, font, Align.AlignCenter)

    def _marks(self, body: QRectF) -> list[tuple[float, str]]:
        room = max(2, int(body.width() / theme().px(MARK_PX)))
        if self.axis.measure == "clock":
            return self._clock_marks(body, room)
        words, axis = self.words(), self.axis
        per_unit = words.unit_m
        # As close as there is room outside the pleats, and none inside them.
        room = max(2, round(room * (axis.high - axis.low) / max(axis.open_in_view(), 1.0)))
        ticks = nice_ticks(axis.low / per_unit, axis.high / per_unit, room)
        step = ticks[1] - ticks[0] if len(ticks) > 1 else 1.0
        decimals = 0 if step > 0.99 else 1 if step > 0.099 else 2
        return [
            (self.x_of(t * per_unit, body), words.distance_bare(t * per_unit, decimals))
            for t in ticks
            if not axis.in_fold(t * per_unit)
        ]

    def _clock_marks(self, body: QRectF, room: int) -> list[tuple[float, str]]:
        """Return marks at round times of the clock, the weekday only where it changes."""
        words, axis, race = self.words(), self.axis, self.shown.project.race
        rough_min = axis.open_in_view() / 60.0 / room
        step_min = next((m for m in ROUND_MINUTES if m >= rough_min), ROUND_MINUTES[-1])
        start = race.clock(axis.low)
        # By steps of at most an hour, because over a change of clocks even hours are not evenly
        # apart; those that are not round on the clock are passed over.
        stride_min = min(step_min, 60)
        past_s = start.minute % stride_min * 60 + start.second + start.microsecond / 1e6
        at_s = axis.low + (stride_min * 60 - past_s if past_s else 0.0)
        marks: list[tuple[float, str]] = []
        said: date | None = None
        while at_s <= axis.high + 1.0:
            clock = race.clock(at_s)
            is_round = (clock.hour * 60 + clock.minute) % step_min == 0
            if is_round and not axis.in_fold(at_s):
                text = words.clock(clock, weekday=clock.date() != said)
                marks.append((self.x_of_time(at_s, body), text))
                said = clock.date()
            at_s += stride_min * 60.0
        return marks
