"""The axis lanes of race day share: the race by distance or clock."""

from __future__ import annotations

from typing import Literal

import numpy as np
from PySide6.QtCore import QObject, Signal

from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.pacing import PacePlan

Measure = Literal["distance", "clock"]


class RaceAxis(QObject):
    """The race along x: metres from the start, or seconds of race time on the target curve.

    `low` and `high` are the visible ends in the chosen measure.
    """

    changed = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.measure: Measure = "distance"
        self.low = 0.0
        self.high = 1.0
        self._outlook: Outlook | None = None
        self._arrivals_of: PacePlan | None = None
        self._arrivals_s: dict[float, float] = {}
        self._knots_of: PacePlan | None = None
        self._knots_there = (np.zeros(0), np.zeros(0))

    def show(self, outlook: Outlook) -> None:
        """Follow *outlook*; the view is kept where the course and measure stay the same."""
        before, view = self._outlook, (self.low, self.high)
        self._outlook = outlook
        is_whole = before is None or view == self._span(before)
        if is_whole or before is None or before.profile is not outlook.profile:
            self.low, self.high = self._span(outlook)
        if (self.low, self.high) != view:
            self.changed.emit()

    def choose(self, measure: Measure) -> None:
        """Lay the axis out by distance or by clock, whole race in view."""
        if measure != self.measure:
            self.measure = measure
            if self._outlook is not None:
                self.low, self.high = self._span(self._outlook)
            self.changed.emit()

    def view(self, low: float, high: float) -> None:
        """Show the stretch from *low* to *high*, kept inside the race and no narrower than 1 %."""
        if self._outlook is None:
            return
        first, last = self._span(self._outlook)
        width = min(max(high - low, 0.01 * (last - first)), last - first)
        low = min(max(low, first), last - width)
        if (low, low + width) != (self.low, self.high):
            self.low, self.high = low, low + width
            self.changed.emit()

    def reveal(self, start_m: float, end_m: float) -> None:
        """Shift the view, as little as it takes, so that a stretch of the course is in it."""
        low, high = self._measured(start_m), self._measured(end_m)
        shift = min(low - self.low, 0.0) or max(high - self.high, 0.0)
        if shift:
            self.view(self.low + shift, self.high + shift)

    def x_of_distance(self, at_m: float, width: float) -> float:
        """Return x of a place on the course in a body of *width*."""
        return self._x(self._measured(at_m), width)

    def x_of_distances(self, at_m: np.ndarray, width: float) -> np.ndarray:
        """Return x of many places on the course, shape as *at_m*."""
        target, values = self._target, at_m
        if self.measure == "clock" and target is not None:
            places_m, times_s = self._knots(target)
            values = np.interp(at_m, places_m, times_s)
        return (values - self.low) / (self.high - self.low) * width

    def share_of_race(self, at_m: float) -> float:
        """Return which share of the whole race, not of the view, lies before a place."""
        if self._outlook is None:
            return 0.0
        first, last = self._span(self._outlook)
        return (self._measured(at_m) - first) / (last - first)

    def x_of_time(self, elapsed_s: float, width: float) -> float:
        """Return x of a moment of the race."""
        target, value = self._target, elapsed_s
        if self.measure == "distance" and target is not None:
            value = target.distance_at(elapsed_s)
        return self._x(value, width)

    def x_of_times(self, elapsed_s: np.ndarray, width: float) -> np.ndarray:
        """Return x of many moments of the race, shape as *elapsed_s*."""
        target, values = self._target, elapsed_s
        if self.measure == "distance" and target is not None:
            places_m, times_s = self._knots(target)
            values = np.interp(elapsed_s, times_s, places_m)
        return (values - self.low) / (self.high - self.low) * width

    def distance_at(self, x: float, width: float) -> float:
        """Return the place at *x*, metres from the start."""
        target, value = self._target, self._value(x, width)
        if self.measure == "clock" and target is not None:
            return target.distance_at(value)
        return value

    def distances_at(self, x: np.ndarray, width: float) -> np.ndarray:
        """Return the places at many *x*, metres from the start."""
        target, values = self._target, self.low + x / max(width, 1.0) * (self.high - self.low)
        if self.measure == "clock" and target is not None:
            places_m, times_s = self._knots(target)
            return np.interp(values, times_s, places_m)
        return values

    def time_at(self, x: float, width: float) -> float:
        """Return the moment at *x*, seconds of race time."""
        target, value = self._target, self._value(x, width)
        if self.measure == "distance" and target is not None:
            return target.arrival_s(value)
        return value

    @property
    def _target(self) -> PacePlan | None:
        return self._outlook.target if self._outlook is not None else None

    def _measured(self, at_m: float) -> float:
        target = self._target
        if self.measure == "distance" or target is None:
            return at_m
        # Every lane asks for the same few places, on every move of a drag.
        if self._arrivals_of is not target:
            self._arrivals_of, self._arrivals_s = target, {}
        arrival_s = self._arrivals_s.get(at_m)
        if arrival_s is None:
            arrival_s = self._arrivals_s[at_m] = target.arrival_s(at_m)
        return arrival_s

    def _knots(self, target: PacePlan) -> tuple[np.ndarray, np.ndarray]:
        """Return places and times between which *target* runs straight, both ends of stops too."""
        if self._knots_of is not target:
            stops_m = [s.at_m for s in target.stops]
            arrive_s = [target.arrival_s(at_m) for at_m in stops_m]
            leave_s = [target.departure_s(at_m) for at_m in stops_m]
            places_m = np.concatenate((target.distance_m, stops_m, stops_m))
            times_s = np.concatenate((target.elapsed_s, arrive_s, leave_s))
            order = np.lexsort((places_m, times_s))
            self._knots_of, self._knots_there = target, (places_m[order], times_s[order])
        return self._knots_there

    def _x(self, value: float, width: float) -> float:
        return (value - self.low) / (self.high - self.low) * width

    def _value(self, x: float, width: float) -> float:
        return self.low + x / max(width, 1.0) * (self.high - self.low)

    def _span(self, outlook: Outlook) -> tuple[float, float]:
        if outlook.profile is None or outlook.target is None:
            return 0.0, 1.0
        if self.measure == "distance":
            return 0.0, outlook.profile.length_m
        return 0.0, outlook.target.finish_s
