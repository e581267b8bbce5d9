"""The names of aid stations and their cutoffs, over their lines."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF, Qt, Slot
from PySide6.QtGui import QPainter, QResizeEvent
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.selection import Selection
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.raceday.race_lane import RaceLane
from ultraplanner_gui.widgets.axis import RaceAxis
from ultraplanner_gui.widgets.lane import LABEL_PT, UNIT_PT, Align, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

GAP_PX = 8.0
LEAST_NAME_PX = 26.0
REACH_PX = 60.0


@dataclass(frozen=True, slots=True)
class _Label:
    """A name at *x* and the clock under it, a cutoff or not."""

    x: float
    name: str
    under: str
    is_cutoff: bool

    @property
    def wish(self) -> float:
        """The width it would like to have."""
        look = theme()
        return max(
            look.metrics(LABEL_PT, bold=True).horizontalAdvance(self.name),
            look.metrics(UNIT_PT).horizontalAdvance(self.under),
        )


class StationHead(RaceLane):
    """Names over their lines; where they would meet, every other one stands a row lower, and
    what still does not fit is shortened and said in full under the pointer.
    """

    def __init__(
        self,
        document: Document,
        selection: Selection,
        axis: RaceAxis,
        words: Callable[[], Words],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__("", "", 28.0, document, selection, axis, words, parent)
        self.setAccessibleName(self.tr("Aid stations"))
        self._rows = 1
        axis.changed.connect(self.fit)
        theme().changed.connect(self.fit)

    @Slot()
    def fit(self) -> None:
        """Take the height of one row of names, or of two where one is too crowded."""
        self._rows = 2 if _is_crowded(self._labels(self.body())) else 1
        self.setFixedHeight(round(self._rows * _row_height() + 2))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.fit()

    def renew(self, before: Outlook, after: Outlook) -> None:
        super().renew(before, after)
        # Under a drag the rows stay as they are, else everything below would jump.
        if after is self.document.before:
            self.fit()

    def paint_ground(self, painter: QPainter, body: QRectF) -> None:
        pass

    def paint_station_lines(self, painter: QPainter, body: QRectF) -> None:
        pass

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        look = theme()
        c, bold, small = look.colours, look.metrics(LABEL_PT, bold=True), look.metrics(UNIT_PT)
        for label, rect in self._places(self._labels(body), body):
            name = bold.elidedText(label.name, Qt.TextElideMode.ElideRight, rect.width() + 1)
            top = QRectF(rect.left(), rect.top(), rect.width(), bold.height())
            draw_text(
                painter, top, name, c["ink"], look.font(LABEL_PT, bold=True), Align.AlignHCenter
            )
            under = small.elidedText(label.under, Qt.TextElideMode.ElideRight, rect.width() + 1)
            foot = QRectF(rect.left(), top.bottom(), rect.width(), small.height())
            colour = c["clay" if label.is_cutoff else "soft"]
            draw_text(painter, foot, under, colour, look.font(UNIT_PT), Align.AlignHCenter)

    def readout(self, at: QPointF) -> str:
        near = [
            (abs(label.x - at.x()), f"{label.name}  {label.under}".strip())
            for label in self._labels(self.body())
            if abs(label.x - at.x()) < theme().px(REACH_PX)
        ]
        return min(near)[1] if near else ""

    def _places(self, labels: list[_Label], body: QRectF) -> list[tuple[_Label, QRectF]]:
        """Return where each label goes: over its line as far as its neighbours let it."""
        gap, least = theme().px(GAP_PX), theme().px(LEAST_NAME_PX)
        free = [body.left() - least] * self._rows
        placed = []
        for index, label in enumerate(labels):
            row = index % self._rows
            wish = label.wish
            left = min(label.x - wish / 2, self.width() - wish - 2.0)
            left = max(left, free[row])
            ahead = labels[index + self._rows] if index + self._rows < len(labels) else None
            room = (ahead.x - ahead.wish / 2 - gap if ahead else float(self.width())) - left
            width = min(wish, max(room, least), self.width() - left)
            placed.append((label, QRectF(left, row * _row_height(), width, _row_height())))
            free[row] = left + width + gap
        return placed

    def _labels(self, body: QRectF) -> list[_Label]:
        shown, words = self.shown, self.words()
        course = shown.project.course
        if course is None or shown.profile is None:
            return []
        race = shown.project.race
        labels = [_Label(self.x_of(0.0, body), self.tr("Start"), words.clock(race.start), False)]
        ends = [(s.at_m, s.name, s.cutoff_s) for s in course.stations]
        for at_m, name, cutoff_s in (*ends, (course.length_m, self.tr("Finish"), race.limit_s)):
            by = (
                self.tr("by {0}").format(words.clock(race.clock(cutoff_s)))
                if cutoff_s is not None
                else ""
            )
            labels.append(_Label(self.x_of(at_m, body), name, by, True))
        return [one for one in labels if body.left() - 1 <= one.x <= body.right() + 1]


def _row_height() -> float:
    look = theme()
    return look.metrics(LABEL_PT, bold=True).height() + look.metrics(UNIT_PT).height()


def _is_crowded(labels: list[_Label]) -> bool:
    gap = theme().px(GAP_PX)
    return any(b.x - a.x < (a.wish + b.wish) / 2 + gap for a, b in pairwise(labels))
