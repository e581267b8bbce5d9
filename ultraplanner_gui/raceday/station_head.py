"""The names of aid stations and their cutoffs, over their lines."""

from __future__ import annotations

from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter

from ultraplanner_gui.raceday.race_lane import RaceLane
from ultraplanner_gui.widgets.lane import LABEL_PT, UNIT_PT, Align, draw_text
from ultraplanner_gui.widgets.theme import theme

GAP_PX = 8.0


class StationHead(RaceLane):
    """Names over their lines; where they would meet, every other one stands a row lower, and
    what still does not fit is shortened and said in full under the pointer.
    """

    def paint_ground(self, painter: QPainter, body: QRectF) -> None:
        pass

    def readout(self, at: QPointF) -> str:
        near = [
            (abs(x - at.x()), f"{name}  {under}".strip())
            for x, name, under in self._labels(self.body())
            if abs(x - at.x()) < 60
        ]
        return min(near)[1] if near else ""

    def paint_station_lines(self, painter: QPainter, body: QRectF) -> None:
        pass

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        look = theme()
        name_font, small = look.font(LABEL_PT, bold=True), look.font(UNIT_PT)
        labels = self._labels(body)
        row_h = look.metrics(LABEL_PT, bold=True).height() + look.metrics(UNIT_PT).height()
        rows = 2 if self._is_crowded(labels) else 1
        free = [body.left() - 4.0] * rows
        for index, (x, name, under) in enumerate(labels):
            row = index % rows
            ahead = [labels[k][0] for k in range(index + rows, len(labels), rows)]
            wish = max(
                look.metrics(LABEL_PT, bold=True).horizontalAdvance(name),
                look.metrics(UNIT_PT).horizontalAdvance(under),
            )
            half = wish / 2
            left = min(max(x - half, free[row]), self.width() - wish - 2)
            room = (ahead[0] - look.px(GAP_PX) if ahead else float(self.width())) - left
            left = max(left, free[row])
            width = min(wish, max(room, look.px(26)), self.width() - left)
            rect = QRectF(left, row * row_h, width, look.metrics(LABEL_PT, bold=True).height())
            text = look.metrics(LABEL_PT, bold=True).elidedText(
                name, Qt.TextElideMode.ElideRight, width + 1
            )
            draw_text(painter, rect, text, look.colours["ink"], name_font, Align.AlignHCenter)
            if under:
                foot = QRectF(left, rect.bottom(), width, look.metrics(UNIT_PT).height())
                text = look.metrics(UNIT_PT).elidedText(
                    under, Qt.TextElideMode.ElideRight, width + 1
                )
                draw_text(painter, foot, text, look.colours["clay"], small, Align.AlignHCenter)
            free[row] = left + width + look.px(GAP_PX)

    def _labels(self, body: QRectF) -> list[tuple[float, str, str]]:
        shown, words = self.shown, self.words()
        course = shown.project.course
        if course is None or shown.profile is None:
            return []
        race = shown.project.race

        def cutoff(seconds: float | None) -> str:
            return (
                self.tr("by {0}").format(words.clock(race.clock(seconds)))
                if seconds is not None
                else ""
            )

        spots = [(0.0, self.tr("Start"), words.clock(race.start))]
        spots += [(s.at_m, s.name, cutoff(s.cutoff_s)) for s in course.stations]
        spots.append((shown.profile.length_m, self.tr("Finish"), cutoff(race.limit_s)))
        placed = [(self.x_of(at_m, body), name, under) for at_m, name, under in spots]
        return [p for p in placed if body.left() - 1 <= p[0] <= body.right() + 1]

    def _is_crowded(self, labels: list[tuple[float, str, str]]) -> bool:
        metrics = theme().metrics(LABEL_PT, bold=True)
        ends = [
            (x, metrics.horizontalAdvance(max(name, under, key=len))) for x, name, under in labels
        ]
        return any(b[0] - a[0] < (a[1] + b[1]) / 2 + theme().px(GAP_PX) for a, b in pairwise(ends))
