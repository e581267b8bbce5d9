"""Which lanes are painted at once while something is in the hand, and which wait for a turn."""

from __future__ import annotations

import time
from collections.abc import Sequence

from PySide6.QtCore import QObject, QTimer, Slot

from ultraplanner_gui.raceday.race_lane import RaceLane

#: A screen shows a new picture that often.
FRAME_S = 0.016
#: What the ledger, the cursor and Qt itself take of it.
REST_S = 0.005
#: The hand rests once it has not moved for so long: then everything is painted.
PAUSE_MS = 30


class Turns(QObject):
    """Lets lanes wait for a turn, so that what is in the hand follows the hand.

    The lane in the hand is always painted, and of the others the one that has waited longest;
    then as many as there is time for. On a fast machine none waits.
    """

    def __init__(self, lanes: Sequence[RaceLane], parent: QObject) -> None:
        super().__init__(parent)
        self._lanes = tuple(lanes)
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(PAUSE_MS)
        self._pause.timeout.connect(self.end)

    def share_out(self, since_s: float) -> None:
        """Share out what is left of the frame begun at *since_s*, of `time.perf_counter`."""
        left_s = FRAME_S - REST_S - (time.perf_counter() - since_s)
        stale = [lane for lane in self._lanes if lane.is_stale and lane.isVisible()]
        stale.sort(key=lambda lane: (lane.is_carrying, lane.waited), reverse=True)
        must = 1 + any(lane.is_carrying for lane in stale)
        for n, lane in enumerate(stale):
            if n < must or lane.paint_s <= left_s:
                left_s -= lane.paint_s
                lane.update()
            else:
                lane.wait()
        if any(lane.waits for lane in stale):
            self._pause.start()
        else:
            self._pause.stop()

    @Slot()
    def end(self) -> None:
        """Let all that wait be painted."""
        self._pause.stop()
        for lane in self._lanes:
            if lane.waits:
                lane.update()
