"""Which lanes are painted at once while something is in the hand, and which wait for a turn."""

from __future__ import annotations

import time
from collections.abc import Sequence

from PySide6.QtCore import QObject, QTimer, Slot

from ultraplanner_gui.raceday.race_lane import RaceLane

#: A screen shows a new picture every 16.7 ms; some of that is left to others.
FRAME_S = 0.013
#: What ledger, cursor and Qt itself take of it until that is known, and how fast it is learnt.
REST_S, LEARNT = 0.005, 0.2
#: What does not fit into a frame is painted all the same once it has waited for so long and its
#: turn has come.
LONGEST_WAIT_S = 0.4
#: The hand rests once it has not moved for so long: then everything is painted.
PAUSE_MS = 30


class Turns(QObject):
    """Lets lanes wait for a turn, so that what is in the hand follows the hand.

    The lane in the hand is always painted, and so is what one drags by, such as targets and time
    in hand; of those that `may_wait`, the ones that have waited longest first, as many as there is
    time for. On a fast machine none waits.
    """

    def __init__(self, lanes: Sequence[RaceLane], parent: QObject) -> None:
        super().__init__(parent)
        self._lanes = tuple(lanes)
        self._rest_s = REST_S
        self._shared_s = 0.0
        self._granted: list[RaceLane] = []
        self._pause, self._painted = QTimer(self), QTimer(self)
        for timer, then in ((self._pause, self.end), (self._painted, self._learn)):
            timer.setSingleShot(True)
            timer.timeout.connect(then)

    def share_out(self, since_s: float) -> None:
        """Share out what is left of the frame begun at *since_s*, of `time.perf_counter`."""
        self._shared_s = time.perf_counter()
        left_s = FRAME_S - self._rest_s - (self._shared_s - since_s)
        stale = [lane for lane in self._lanes if lane.is_stale and lane.isVisible()]
        stale.sort(key=lambda lane: (lane.may_wait and not lane.is_carrying, lane.waits_since_s))
        due_s = self._shared_s - LONGEST_WAIT_S
        self._granted, is_one_due = [], False
        for lane in stale:
            must = lane.is_carrying or not lane.may_wait
            # One a move: those that began to wait together would all be painted in one frame.
            if not must and lane.paint_s > left_s and lane.waits_since_s < due_s and not is_one_due:
                must = is_one_due = True
            if must or lane.paint_s <= left_s:
                left_s -= lane.paint_s
                lane.update()
                self._granted.append(lane)
            else:
                lane.wait()
        self._painted.start(0)
        if len(self._granted) < len(stale):
            self._pause.start(PAUSE_MS)
        else:
            self._pause.stop()

    @Slot()
    def end(self) -> None:
        """Let all that wait be painted."""
        self._pause.stop()
        for lane in self._lanes:
            if lane.waits:
                lane.update()

    @Slot()
    def _learn(self) -> None:
        """Learn what is not spent on lanes; timers are due once all is painted."""
        on_lanes_s = sum(lane.paint_s for lane in self._granted)
        rest_s = time.perf_counter() - self._shared_s - on_lanes_s
        self._rest_s += LEARNT * (min(max(rest_s, 0.0), FRAME_S) - self._rest_s)
