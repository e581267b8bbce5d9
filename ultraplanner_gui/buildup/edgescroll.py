"""Weeks out of view come into it while something is dragged to the edge of the stretch."""

from __future__ import annotations

from PySide6.QtCore import QObject, QPointF, QRectF, QTimer, Signal, Slot

from ultraplanner_gui.widgets.lane import GUTTER_PX
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.week_axis import WeekAxis

EDGE_PX = 16.0
EVERY_MS = 160


class EdgeScroll(QObject):
    """Scroll the axis week by week for as long as the pointer stays at an edge."""

    scrolled = Signal()

    def __init__(self, axis: WeekAxis, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._axis = axis
        self._weeks = 0
        self._timer = QTimer(self)
        self._timer.setInterval(EVERY_MS)
        self._timer.timeout.connect(self.step)

    def point(self, at: QPointF, body: QRectF) -> None:
        """Start or stop, as the pointer is at an edge of *body* or not."""
        self._weeks = self._way(at.x(), body)
        if not self._weeks:
            self.stop()
        elif not self._timer.isActive():
            self._timer.start()

    def stop(self) -> None:
        """Scroll no further."""
        self._timer.stop()

    @property
    def is_on(self) -> bool:
        """Whether it is scrolling."""
        return self._timer.isActive()

    @Slot()
    def step(self) -> None:
        """Scroll one week on; stop where there is no further to go."""
        if self._axis.scroll(self._weeks):
            self.scrolled.emit()
        else:
            self.stop()

    def held_in(self, at: QPointF, body: QRectF) -> QPointF:
        """Return *at*, from beyond an edge that scrolls brought back into the stretch."""
        if self._axis.is_whole or at.x() < body.left() - theme().px(GUTTER_PX):
            return at
        if self._axis.tear(body.width()) is None and at.x() > body.right() + theme().px(GUTTER_PX):
            # No week lies that way: it is outside, as it is on the other side.
            return at
        last = self._end(body) - 1.0 if at.x() >= body.right() else at.x()
        return QPointF(max(body.left() + 1.0, last), at.y())

    def _end(self, body: QRectF) -> float:
        tear = self._axis.tear(body.width())
        return body.right() if tear is None else body.left() + tear[0]

    def _way(self, x: float, body: QRectF) -> int:
        edge, tear = theme().px(EDGE_PX), self._axis.tear(body.width())
        if self._axis.first and body.left() - theme().px(GUTTER_PX) <= x < body.left() + edge:
            return -1
        if tear is None:
            return 0
        at_tear = body.left() + tear[0] - edge <= x < body.left() + tear[1]
        return 1 if at_tear or x >= body.right() else 0
