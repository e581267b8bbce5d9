"""The wheel over the build-up: turned it scrolls weeks, with Ctrl it zooms about the pointer."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.widgets.lane import Lane
from ultraplanner_gui.widgets.week_axis import WeekAxis

NOTCH = 120.0
WEEKS_PER_NOTCH = 2.0


class AxisLane(Lane):
    """A lane over the weeks over which the wheel turns."""

    def __init__(
        self, axis: WeekAxis, name: str, height_px: float, parent: QWidget | None = None
    ) -> None:
        super().__init__(name, "", height_px, parent)
        self._axis = axis
        self._wheel = Wheel(axis)

    def wheelEvent(self, event: QWheelEvent) -> None:
        self._wheel.turn(event, self.body())


class Wheel:
    """Turns of the wheel added up to whole steps, so that a touchpad works too."""

    def __init__(self, axis: WeekAxis) -> None:
        self._axis = axis
        self._turned = 0.0
        self._was_zoom = False

    def turn(self, event: QWheelEvent, body: QRectF) -> None:
        """Zoom or scroll; *event* is left alone where there is nothing to do."""
        is_zoom = bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier)
        if not self._axis.weeks or (self._axis.is_whole and not is_zoom):
            event.ignore()
            return
        if is_zoom is not self._was_zoom:
            self._turned, self._was_zoom = 0.0, is_zoom
        turns = (event.angleDelta().y() or event.angleDelta().x()) / NOTCH
        self._turned += turns if is_zoom else -turns * WEEKS_PER_NOTCH
        steps = int(self._turned)
        self._turned -= steps
        if steps and is_zoom:
            x = min(max(event.position().x() - body.left(), 0.0), body.width() - 1.0)
            self._axis.zoom(steps, self._axis.index_at(x, body.width()) or 0)
        elif steps:
            self._axis.scroll(steps)
        event.accept()
