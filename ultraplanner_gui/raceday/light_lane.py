"""Light along the race: day, twilight and dark, and the start that it hangs on."""

from __future__ import annotations

from datetime import datetime

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPen

from ultraplanner_gui.edits.stations import MoveStart
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.raceday.clear_places import first_clear
from ultraplanner_gui.raceday.race_lane import RaceLane
from ultraplanner_gui.raceday.snap import SLACK_PX, is_free
from ultraplanner_gui.raceday.start_drag import started
from ultraplanner_gui.widgets.carry import Carry
from ultraplanner_gui.widgets.lane import LABEL_PT, Align, draw_text
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke


class LightLane(RaceLane):
    """Day, twilight and dark, said in words where there is room.

    Dragged it slides along the race: the start comes earlier or later by as much.
    """

    topic = "light"
    may_wait = True
    _hand: Carry | None = None
    _start: datetime | None = None
    _from_x = 0.0
    _is_dragging = False

    def paint_body(self, painter: QPainter, body: QRectF) -> None:
        look = theme()
        c = look.colours
        hues = {"day": "daylight", "twilight": "twilight", "dark": "night"}
        names = {"day": self.tr("day"), "twilight": self.tr("twilight"), "dark": self.tr("dark")}
        lines = self.station_xs(body)
        for span in self.shown.light:
            left = max(self.x_of_time(span.start_s, body), body.left())
            right = min(self.x_of_time(span.end_s, body), body.right())
            if right <= left:
                continue
            rect = QRectF(left, body.top(), right - left, body.height())
            painter.fillRect(rect, c[hues[span.kind]])
            text = names[span.kind]
            rect.setLeft(self.clear_from(left, body))
            width = look.width(text, LABEL_PT)
            if width + 10 < rect.width():
                rect.setLeft(first_clear(rect.left(), right, width, lines))
                ink = "on_night" if span.kind == "dark" else "ink"
                draw_text(
                    painter,
                    rect,
                    text,
                    c[ink],
                    look.font(LABEL_PT),
                    Align.AlignVCenter,
                )
        if self.is_carrying and self.document.before.light is not self.shown.light:
            self._paint_before(painter, body)

    def _paint_before(self, painter: QPainter, body: QRectF) -> None:
        """Draw where light changes as the plan is kept."""
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        for colour, style in (("paper", Qt.PenStyle.SolidLine), ("ink", Qt.PenStyle.DotLine)):
            painter.setPen(QPen(theme().colours[colour], Stroke.HAIR, style))
            for span in self.document.before.light[1:]:
                x = round(self.x_of_time(span.start_s, body))
                if body.left() <= x <= body.right():
                    painter.drawLine(QLineF(x, body.top(), x, body.bottom()))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)

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
                said = self.tr("{0} from {1} to {2}").format(
                    name, words.clock(race.clock(span.start_s)), words.clock(race.clock(span.end_s))
                )
                how = self.tr("Drag the light along the race to start earlier or later.")
                return f"{said}\n{how}"
        return ""

    def renew(self, before: Outlook, after: Outlook) -> None:
        if before.light is not after.light or before.target is not after.target:
            self.update()

    # The start, moved by its light

    @property
    def is_carrying(self) -> bool:
        return self._hand is not None and self._hand.is_on

    def mousePressEvent(self, event: QMouseEvent) -> None:
        is_body = self.body().contains(event.position())
        is_left = event.button() is Qt.MouseButton.LeftButton
        if not is_left or not is_body or not self.shown.light:
            return
        self.setFocus(Qt.FocusReason.MouseFocusReason)
        self._hand = self._hand or Carry(self.document)
        self._hand.pick_up()
        self._start, self._from_x = self.document.project.race.start, event.position().x()
        self._is_dragging = False

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        is_over = self.body().contains(event.position()) and bool(self.shown.light)
        shape = Qt.CursorShape.SizeHorCursor if is_over else Qt.CursorShape.ArrowCursor
        if self._hand is None or not self._hand.is_on or self._start is None:
            self.setCursor(shape)
            return
        by = self._from_x - event.position().x()
        if self._is_dragging or abs(by) >= theme().px(SLACK_PX):
            self._is_dragging = True
            start = started(self, self._start, by, is_free(event))
            self._hand.show(MoveStart(start, self._hand.gesture))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._hand is not None and event.button() is Qt.MouseButton.LeftButton:
            self._start = None
            self._hand.put_down()
            self.snap.let_go()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self._hand is not None and self._hand.is_on:
            self._start = None
            self._hand.put_back()
            self.snap.let_go()
        else:
            super().keyPressEvent(event)
