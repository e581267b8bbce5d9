"""What the head over race day draws, part by part: a drag paints only what it has changed."""

from __future__ import annotations

import math
from collections.abc import Iterator

from PySide6.QtCore import QRectF

from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.raceday.head_names import Label
from ultraplanner_gui.raceday.leg_bar import LegSpot, StopSpot
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke

Stretch = tuple[float, float]
NOWHERE: Stretch = (math.inf, -math.inf)
#: The box round a name keeps so far from it, and as far from that of its neighbour.
MARK_PAD_PX = 4.0


class HeadScene(Value, frozen=True, eq=False):
    """Names and where they are written, legs and stops and where they lie, in order.

    *ground* is all that everything hangs on; *was* how wide some stops were before.
    """

    ground: tuple[object, ...]
    placed: tuple[tuple[Label, QRectF], ...]
    legs: tuple[LegSpot, ...]
    stops: tuple[StopSpot, ...]
    was: dict[str, float]

    def changed_since(self, drawn: HeadScene) -> Stretch | None:
        """Return the stretch outside which both look the same, None if there may be none."""
        if drawn.ground != self.ground:
            return None
        low, high = NOWHERE
        ours, theirs = list(self._parts()), list(drawn._parts())
        if len(ours) != len(theirs):
            return None
        for now, before in zip(ours, theirs, strict=True):
            if now != before:
                low, high = min(low, now[0], before[0]), max(high, now[1], before[1])
        return low, high

    def within(self, stretch: Stretch) -> HeadScene:
        """Return what of it reaches into *stretch*."""
        low, high = stretch
        return HeadScene(
            self.ground,
            tuple(p for p in self.placed if _reaches(_of_label(p), low, high)),
            tuple(s for s in self.legs if _reaches((s.left, s.right), low, high)),
            tuple(s for s in self.stops if _reaches(self._of_stop(s), low, high)),
            self.was,
        )

    def _parts(self) -> Iterator[tuple[float, float, object]]:
        """Yield the ends of each part and all it looks like."""
        for label, rect in self.placed:
            yield *_of_label((label, rect)), (label, rect)
        for leg in self.legs:
            yield leg.left, leg.right, (leg.leg.key, leg.box)
        for stop in self.stops:
            now = (stop.station.key, stop.station.stop_s > 0.0, stop.right)
            yield *self._of_stop(stop), (now, self.was.get(stop.station.key))

    def _of_stop(self, spot: StopSpot) -> Stretch:
        was_right = spot.left + self.was.get(spot.station.key, 0.0)
        return spot.left, max(spot.right, was_right)


def _of_label(placed: tuple[Label, QRectF]) -> Stretch:
    pad, rect = theme().px(MARK_PAD_PX) + Stroke.HEAVY, placed[1]
    return rect.left() - pad, rect.right() + pad


def _reaches(part: Stretch, low: float, high: float) -> bool:
    return part[0] <= high and part[1] >= low
