"""The cursor all lanes of a stack share: one line through them and what is there, in words."""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

from PySide6.QtCore import QObject, QRect, Qt, Signal, Slot
from PySide6.QtWidgets import QWidget

from ultraplanner_gui.widgets.lane_overlays import HairLine, Readout


class Spot(NamedTuple):
    """A place on the axis: left and right end in the stack, and the figures there."""

    left: float
    right: float
    texts: tuple[str, ...]


class LaneCursor(QObject):
    """Follows the pointer, or is stepped by keys.

    `spot_at` gives what is at an x of the stack, `step_from` the x so many steps from another,
    None standing for no x yet; `host` is the part over which the figures stand, from `free_left`
    on.
    """

    #: It stands at a `Spot`, or with None nowhere.
    moved = Signal(object)
    _fell_due = Signal()

    def __init__(
        self,
        stack: QWidget,
        host: QWidget,
        spot_at: Callable[[float], Spot | None],
        step_from: Callable[[float | None, int], float],
        free_left: Callable[[], int],
    ) -> None:
        super().__init__(stack)
        self._stack, self._host = stack, host
        self._spot_at, self._step_from = spot_at, step_from
        self._free_left = free_left
        self.line = HairLine(stack)
        self.readout = Readout(stack)
        self.x: float | None = None
        self._is_due = False
        self._fell_due.connect(self._catch_up, Qt.ConnectionType.QueuedConnection)

    def point(self, x: float, at_once: bool = True) -> None:
        """Stand at *x* of the stack, or nowhere if nothing is there; see `renew_soon`."""
        if x != self.x:
            self.x = x
            (self.renew if at_once else self.renew_soon)()

    def leave(self) -> None:
        """Stand nowhere."""
        if self.x is not None:
            self.x = None
            self.renew()

    def step(self, by: int) -> str:
        """Go *by* steps along the axis; return what is there, in words."""
        self.x = self._step_from(self.x, by)
        spot = self.renew()
        return ", ".join(spot.texts) if spot is not None else ""

    @Slot()
    def renew_soon(self) -> None:
        """Say anew what is at the cursor before the next painting: once, however often asked."""
        if not self._is_due:
            self._is_due = True
            self._fell_due.emit()

    @Slot()
    def _catch_up(self) -> None:
        if self._is_due:
            self.renew()

    def renew(self) -> Spot | None:
        """Say anew what is at the cursor; return it."""
        self._is_due = False
        spot = self._spot_at(self.x) if self.x is not None else None
        self.moved.emit(spot)
        if spot is None:
            self.line.hide()
            self.readout.hide()
            return None
        top = self._host.geometry().bottom() + 1 if self._host.isVisible() else 0
        left, right = round(spot.left), max(round(spot.right), round(spot.left) + 1)
        self.line.stand_at(QRect(left, top, right - left, self._stack.height() - top))
        if self._host.isVisible():
            room = self._host.geometry().adjusted(self._free_left(), 0, -2, 0)
            self.readout.say(spot.texts, (left + right) / 2, room)
        else:
            self.readout.hide()
        return spot
