"""All weeks in small: which stretch is in view, and a hand on it."""

from __future__ import annotations

from typing import Literal

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QMouseEvent, QPainter, QPaintEvent, QPen, QRegion
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.buildup.wheel import AxisLane
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.weeks import Role
from ultraplanner_gui.widgets.lane import UNIT_PT, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke
from ultraplanner_gui.widgets.week_axis import LEAST_WEEKS, WeekAxis

HEIGHT_PX = 17.0
HANDLE_PX = 6.0

Grip = Literal["", "left", "right", "middle"]


class Overview(AxisLane):
    """Bars of distance for every week, a frame round those in view.

    The frame is dragged to scroll, by its ends to zoom; a click beside it brings it there.
    """

    topic = "weeks in view"

    def __init__(self, axis: WeekAxis, parent: QWidget | None = None) -> None:
        super().__init__(axis, "", HEIGHT_PX, parent)
        self._distances_m: tuple[float, ...] = ()
        self._highest_m = 0.0
        self._today: int | None = None
        self._region = QRegion()
        self._grip: Grip = ""
        self._offset = 0.0
        self.setMouseTracking(True)
        self.setAccessibleName(self.tr("Weeks in view"))
        axis.changed.connect(self._on_axis_changed)

    def show_outlooks(self, before: Outlook, now: Outlook) -> None:
        """Show the distances of *now*, to the scale of *before*."""
        of = {week.start: week.distance_m for week in now.weeks}
        distances_m = tuple(of.get(week.start, 0.0) for week in self._axis.weeks)
        today = self._axis.index_of(now.today)
        highest_m = max((week.distance_m for week in before.weeks), default=0.0)
        were_m, self._distances_m = self._distances_m, distances_m
        seen = (len(were_m), self._highest_m, self._today)
        self._highest_m, self._today = highest_m, today
        if seen != (len(distances_m), highest_m, today):
            self.update()
            return
        track = self._track(self.body())
        for index, (was_m, is_m) in enumerate(zip(were_m, distances_m, strict=True)):
            if was_m != is_m:
                column = self._column(index, track).adjusted(-1.0, 0.0, 1.0, 0.0)
                self.update(column.toAlignedRect())

    def readout(self, at: QPointF) -> str:
        axis = self._axis
        if not axis.weeks:
            return ""
        if axis.is_whole:
            return self.tr("All {0} weeks are in view. Drag an end to see fewer.").format(
                len(axis.weeks)
            )
        return self.tr(
            "{0} of {1} weeks are in view. Drag to scroll, an end for more or fewer; "
            "a double click shows all."
        ).format(axis.count, len(axis.weeks))

    # Painting

    def paintEvent(self, event: QPaintEvent) -> None:
        self._region = event.region()
        super().paintEvent(event)

    def paint_ground(self, painter: QPainter, body: QRectF) -> None:
        pass

    def paint_head(self, painter: QPainter) -> None:
        axis, look = self._axis, theme()
        if not axis.weeks:
            return
        text = self.tr("{0} weeks").format(len(axis.weeks))
        if not axis.is_whole:
            text = self.tr("{0} of {1} weeks").format(axis.count, len(axis.weeks))
        rect = QRectF(look.px(12.0), 0.0, self.body().left() - look.px(20.0), self.height())
        draw_text(painter, rect, text, look.colours["soft"], look.font(UNIT_PT))

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        if not self._axis.weeks:
            return
        c = theme().colours
        track = self._track(body)
        painter.fillRect(track, c["lane"])
        for frame in self._frames(body):
            painter.fillRect(frame, c["tile"])
        self._paint_bars(painter, track)
        self._paint_today(painter, track)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(c["strong_line" if self._axis.is_whole else "ink"], Stroke.HAIR))
        for frame in self._frames(body):
            painter.drawRoundedRect(frame.adjusted(0.5, 0.5, -0.5, -0.5), 2.0, 2.0)
        if len(self._axis.weeks) > LEAST_WEEKS:
            self._paint_handles(painter, self._stretch(body))

    def _paint_bars(self, painter: QPainter, track: QRectF) -> None:
        c, highest_m = theme().colours, self._highest_m
        colours = {True: c["pale_teal"], False: c["line"]}
        for index, distance_m in enumerate(self._distances_m):
            column = self._column(index, track)
            if not self._region.intersects(column.toRect()):
                continue
            is_race = self._axis.weeks[index].role is Role.RACE
            colour = c["clay"] if is_race else colours[self._axis.is_shown(index)]
            share = 1.0 if is_race else min(1.0, distance_m / highest_m) if highest_m else 0.0
            height = round((track.height() - 4.0) * share)
            column.adjust(1.0, 0.0, 0.0, -2.0)
            column.setTop(column.bottom() - height)
            painter.fillRect(column, colour)

    def _paint_today(self, painter: QPainter, track: QRectF) -> None:
        if self._today is not None:
            x = round(self._x(self._today, track))
            painter.fillRect(QRectF(x - 1.0, 0.0, 2.0, self.height()), theme().colours["ink"])

    def _paint_handles(self, painter: QPainter, stretch: QRectF) -> None:
        c = theme().colours
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(c["strong_line" if self._axis.is_whole else "ink"])
        for x in (stretch.left(), stretch.right() - 3.0):
            painter.drawRoundedRect(QRectF(x, stretch.top(), 3.0, stretch.height()), 1.0, 1.0)

    def _track(self, body: QRectF) -> QRectF:
        return QRectF(round(body.left()), 2.0, round(body.width()), self.height() - 4.0)

    def _column(self, index: int, track: QRectF) -> QRectF:
        left, right = round(self._x(index, track)), round(self._x(index + 1, track))
        return QRectF(left, track.top(), right - left, track.height())

    def _x(self, index: float, track: QRectF) -> float:
        return track.left() + index * track.width() / max(1, len(self._axis.weeks))

    def _stretch(self, body: QRectF) -> QRectF:
        """Return the frame round the stretch, with the race week if that follows on."""
        track, axis = self._track(body), self._axis
        count = axis.count - (1 if axis.hidden_after else 0)
        left, right = self._x(axis.first, track), self._x(axis.first + count, track)
        return QRectF(round(left), track.top(), round(right) - round(left), track.height())

    def _frames(self, body: QRectF) -> list[QRectF]:
        frames, track = [self._stretch(body)], self._track(body)
        if self._axis.hidden_after:
            frames.append(self._column(len(self._axis.weeks) - 1, track))
        return frames

    # Mouse

    def mousePressEvent(self, event: QMouseEvent) -> None:
        x, body = event.position().x(), self.body()
        if event.button() is not Qt.MouseButton.LeftButton or not self._axis.weeks:
            return
        self._grip = self._grip_at(x)
        if not self._grip and body.left() <= x < body.right():
            middle = int(self._index(x)) - (self._axis.count - 1) // 2
            self._axis.scroll(middle - self._axis.first)
            self._grip = "middle"
        self._offset = self._index(x) - self._axis.first
        self._show_shape(x)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        x, axis = event.position().x(), self._axis
        end = axis.first + axis.count
        if self._grip == "middle":
            axis.scroll(round(self._index(x) - self._offset) - axis.first)
        elif self._grip == "left":
            first = min(max(0, round(self._index(x))), end - LEAST_WEEKS)
            axis.view(first, end - first)
        elif self._grip == "right":
            self._drag_right_end(round(self._index(x)))
        self._show_shape(x)

    def _drag_right_end(self, end: int) -> None:
        axis, count = self._axis, len(self._axis.weeks)
        # Short of the race the stretch ends before it, and the race week is one column more.
        columns = end - axis.first if end >= count else end - axis.first + 1
        axis.view(axis.first, min(columns, count - axis.first))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._grip = ""
        self._show_shape(event.position().x())

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        self._axis.show_all()

    def _index(self, x: float) -> float:
        track = self._track(self.body())
        return (x - track.left()) / max(1.0, track.width()) * len(self._axis.weeks)

    def _grip_at(self, x: float) -> Grip:
        stretch, reach = self._stretch(self.body()), theme().px(HANDLE_PX)
        if len(self._axis.weeks) <= LEAST_WEEKS:
            return ""
        if abs(x - stretch.left()) <= reach:
            return "left"
        if abs(x - stretch.right()) <= reach:
            return "right"
        is_inside = stretch.left() < x < stretch.right()
        return "middle" if is_inside and not self._axis.is_whole else ""

    def _show_shape(self, x: float) -> None:
        grip = self._grip or self._grip_at(x)
        shape = Qt.CursorShape.ArrowCursor
        if grip == "middle":
            is_held = bool(self._grip)
            shape = Qt.CursorShape.ClosedHandCursor if is_held else Qt.CursorShape.OpenHandCursor
        elif grip:
            shape = Qt.CursorShape.SizeHorCursor
        self.setCursor(shape)

    def _on_axis_changed(self) -> None:
        self.setAccessibleDescription(self.readout(QPointF()))
        self.update()
