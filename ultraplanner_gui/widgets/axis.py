"""The axis lanes of race day share: the race by distance or clock, with legs folded away."""

from __future__ import annotations

from bisect import bisect_right
from typing import Literal

import numpy as np
from PySide6.QtCore import QObject, Signal

from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.plan.course import AidStation, FloatArray
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.theme import theme

Measure = Literal["distance", "clock"]

#: How wide a folded leg stays, and no more than so much of what it took before.
PLEAT_PX, PLEAT_SHARE = 32.0, 0.8
#: All pleats in view together take at most so much of it.
MOST_PLEATED = 0.6
#: The view shows at least so much of the race.
LEAST_VIEW = 0.01
#: How wide a body is taken to be where that is not known.
NOMINAL_PX = 1000.0
_HAIR = 1e-9


class _Lay(Value, frozen=True):
    """How values of the axis lie along x: straight between knots, which both rise."""

    values: list[float]
    xs: list[float]

    def x(self, value: float) -> float:
        return _between(value, self.values, self.xs)

    def value(self, x: float) -> float:
        return _between(x, self.xs, self.values)

    def moved(self, by: float) -> _Lay:
        return _Lay(self.values, [x + by for x in self.xs])


class RaceAxis(QObject):
    """The race along x: metres from the start, or seconds of race time on the target curve.

    `low` and `high` are the visible ends in the chosen measure. A leg that is folded away takes a
    pleat as wide at every zoom; between pleats the measure runs evenly.
    """

    changed = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.measure: Measure = "distance"
        self.low = 0.0
        self.high = 1.0
        #: Start and end of every folded leg, metres from the start, in course order.
        self.folds: tuple[tuple[float, float], ...] = ()
        self._outlook: Outlook | None = None
        self._arrivals_of: PacePlan | None = None
        self._arrivals_s: dict[float, float] = {}
        self._knots_of: PacePlan | None = None
        self._knots_there = (np.zeros(0), np.zeros(0))
        self._lay_of: tuple[object, ...] = ()
        self._xs_of: tuple[object, ...] = ()
        # Held, so that no other stations have their identity.
        self._stations: tuple[AidStation, ...] = ()
        self._xs_there: list[float] = []
        self._lay_there = _Lay([0.0, 1.0], [0.0, 1.0])

    def show(self, outlook: Outlook, folds: tuple[tuple[float, float], ...] | None = None) -> None:
        """Follow *outlook*; the view is kept where the course and measure stay the same.

        *folds* are the stretches folded away, None if they are what they were.
        """
        before, view = self._outlook, (self.low, self.high, self.folds)
        is_whole = before is None or view[:2] == self._span(before)
        self._outlook = outlook
        self.folds = self.folds if folds is None else folds
        if is_whole or before is None or before.profile is not outlook.profile:
            self.low, self.high = self._span(outlook)
        self.low, self.high = self._unfolded(self.low, self.high)
        if (self.low, self.high, self.folds) != view:
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
        width = min(max(high - low, LEAST_VIEW * (last - first)), last - first)
        low = min(max(low, first), last - width)
        self._take(low, low + width)

    def zoom(self, factor: float, x: float, width: float) -> None:
        """Show things *factor* times as large; what is at *x* of a body of *width* stays there."""
        if not self.folds:
            share, span = x / max(width, 1.0), self.high - self.low
            low = self.low + share * (span - span / factor)
            self.view(low, low + span / factor)
            return
        lay = self._lay(width)
        anchor, unit = lay.value(x), self._unit(width) * factor
        first, last = self._race
        most = width / max(LEAST_VIEW * (last - first), _HAIR)
        self._show_laid(self._laid(min(unit, most), width), anchor, x, width)

    def pan(self, share: float, width: float) -> None:
        """Move the view along by a *share* of it."""
        if not self.folds:
            shift = share * (self.high - self.low)
            self.view(self.low + shift, self.high + shift)
            return
        lay = self._laid(self._unit(width), width)
        self._show_laid(lay, self.low, -share * width, width)

    def reveal(self, start_m: float, end_m: float) -> None:
        """Shift the view, as little as it takes, so that a stretch of the course is in it."""
        low, high = self._measured(start_m), self._measured(end_m)
        shift = min(low - self.low, 0.0) or max(high - self.high, 0.0)
        if shift:
            self.view(self.low + shift, self.high + shift)

    def x_of_distance(self, at_m: float, width: float) -> float:
        """Return x of a place on the course in a body of *width*."""
        if self.measure == "distance" and not self.folds:
            return (at_m - self.low) / (self.high - self.low) * width
        return self._x(self._measured(at_m), width)

    def x_of_distances(self, at_m: np.ndarray, width: float) -> np.ndarray:
        """Return x of many places on the course, shape as *at_m*."""
        target, values = self._target, at_m
        if self.measure == "clock" and target is not None:
            places_m, times_s = self._knots(target)
            values = np.interp(at_m, places_m, times_s)
        return self._xs(values, width)

    def xs_of_stations(self, stations: tuple[AidStation, ...], width: float) -> list[float]:
        """Return x of the stations, reckoned once for all lanes that ask for the same."""
        target = self._target if self.measure == "clock" else None
        # The same stations are the same tuple: their fields are not compared.
        of = (self.low, self.high, width, self.folds, target, theme().scale, id(stations))
        if of != self._xs_of:
            self._xs_of, self._stations = of, stations
            self._xs_there = [self.x_of_distance(station.at_m, width) for station in stations]
        return self._xs_there

    def share_of_race(self, at_m: float, width: float = 1.0) -> float:
        """Return which share of a body of *width* lies before a place, the whole race in view."""
        if self._outlook is None:
            return 0.0
        first, last = self._race
        if not self.folds:
            return (self._measured(at_m) - first) / (last - first)
        unit = self._unit_of(first, last, width)
        return self._laid(unit, width).x(self._measured(at_m)) / max(width, 1.0)

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
        return self._xs(values, width)

    def distance_at(self, x: float, width: float) -> float:
        """Return the place at *x*, metres from the start."""
        target, value = self._target, self._value(x, width)
        if self.measure == "clock" and target is not None:
            return target.distance_at(value)
        return value

    def distances_at(self, x: np.ndarray, width: float) -> np.ndarray:
        """Return the places at many *x*, metres from the start."""
        target = self._target
        if self.folds:
            lay = self._lay(width)
            values = np.interp(x, lay.xs, lay.values)
        else:
            values = self.low + x / max(width, 1.0) * (self.high - self.low)
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

    def unit_px(self, width: float) -> float:
        """Return how many pixels a metre or a second takes where nothing is folded."""
        return self._unit(width)

    def past_pleat(self, x: float, width: float) -> float:
        """Return *x*, or where a pleat ends that covers it: something is to be read from there."""
        if not self.folds:
            return x
        for low, high in self._folded():
            left, right = self._x(low, width), self._x(high, width)
            x = right if left - 1.0 <= x < right else x
        return x

    def in_fold(self, value: float) -> bool:
        """Whether a distance or a moment, as the axis measures, lies inside a folded leg."""
        return any(low < value < high for low, high in self._folded())

    def open_in_view(self) -> float:
        """Return how many metres or seconds of the view are not folded away."""
        return self._open(self.low, self.high)

    # The straight pieces of a folded axis

    @property
    def _race(self) -> tuple[float, float]:
        return self._span(self._outlook) if self._outlook is not None else (0.0, 1.0)

    def _folded(self) -> list[tuple[float, float]]:
        """Return the folded legs as the axis measures; a stop at their end stays open."""
        target = self._target
        if self.measure == "distance" or target is None:
            return list(self.folds)
        return [(target.departure_s(low), self._measured(high)) for low, high in self.folds]

    def _pleats(self, width: float) -> list[float]:
        """Return how wide each pleat is, px."""
        first, last = self._race
        px, whole = theme().px(PLEAT_PX), max(last - first, _HAIR)
        wide = [min(px, PLEAT_SHARE * (high - low) / whole * width) for low, high in self._folded()]
        total = sum(wide)
        if total > 0.0 and self._open(first, last) < LEAST_VIEW * whole:
            return [one * width / total for one in wide]
        most = MOST_PLEATED * width
        return wide if total <= most else [one * most / total for one in wide]

    def _open(self, low: float, high: float) -> float:
        """Return how much between two values is not folded away."""
        folded = (min(b, high) - max(a, low) for a, b in self._folded())
        return max(high - low - sum(part for part in folded if part > 0.0), 0.0)

    def _unit(self, width: float) -> float:
        """Return the pixels a metre or second takes in the view, outside pleats."""
        return self._unit_of(self.low, self.high, width)

    def _unit_of(self, low: float, high: float, width: float) -> float:
        if not self.folds:
            return width / max(high - low, _HAIR)
        pleated = sum(
            px * max(min(b, high) - max(a, low), 0.0) / max(b - a, _HAIR)
            for (a, b), px in zip(self._folded(), self._pleats(width), strict=True)
        )
        first, last = self._race
        least = 0.1 * LEAST_VIEW * (last - first)
        return max(width - pleated, 1.0) / max(self._open(low, high), least)

    def _laid(self, unit: float, width: float) -> _Lay:
        """Return how the whole race lies with *unit* pixels to a metre or second, from 0."""
        first, last = self._race
        values, xs = [first], [0.0]
        for (low, high), px in zip(self._folded(), self._pleats(width), strict=True):
            low, high = min(max(low, values[-1]), last), min(high, last)
            if high <= low:
                continue
            if low > values[-1]:
                xs.append(xs[-1] + unit * (low - values[-1]))
                values.append(low)
            values.append(high)
            xs.append(xs[-1] + px)
        if last > values[-1]:
            xs.append(xs[-1] + unit * (last - values[-1]))
            values.append(last)
        # Straight on past both ends, so that what lies outside stays outside.
        over = max(last - first, 1.0)
        return _Lay([first - over, *values, last + over], [-unit * over, *xs, xs[-1] + unit * over])

    def _lay(self, width: float) -> _Lay:
        """Return how the race lies along a body of *width* as it is viewed."""
        of = (self.low, self.high, width, self.folds, self.measure, self._target, theme().scale)
        if of != self._lay_of:
            laid = self._laid(self._unit(width), width)
            self._lay_of, self._lay_there = of, laid.moved(-laid.x(self.low))
        return self._lay_there

    def _show_laid(self, lay: _Lay, value: float, x: float, width: float) -> None:
        """Show of *lay* what has *value* at *x*, as far as the ends of the race allow."""
        first, last = self._race
        left = lay.x(value) - x
        left = min(max(left, lay.x(first)), max(lay.x(last) - width, lay.x(first)))
        self._take(max(lay.value(left), first), min(lay.value(left + width), last))

    def _unfolded(self, low: float, high: float) -> tuple[float, float]:
        """Return a stretch to view, wider if all but nothing of it is open."""
        first, last = self._race
        least = 0.5 * LEAST_VIEW * (last - first)
        if not self.folds or self._open(low, high) >= least:
            return low, high
        if self._open(first, last) < LEAST_VIEW * (last - first):
            return first, last
        unit = NOMINAL_PX / (LEAST_VIEW * (last - first))
        lay = self._laid(unit, NOMINAL_PX)
        middle = lay.x((low + high) / 2.0)
        ends = (lay.value(middle + way * NOMINAL_PX / 2.0) for way in (-1.0, 1.0))
        low, high = ends
        return max(low, first), min(high, last)

    def _take(self, low: float, high: float) -> None:
        low, high = self._unfolded(low, high)
        if (low, high) != (self.low, self.high):
            self.low, self.high = low, high
            self.changed.emit()

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
        if self.folds:
            return self._lay(width).x(value)
        return (value - self.low) / (self.high - self.low) * width

    def _xs(self, values: np.ndarray, width: float) -> FloatArray:
        if self.folds:
            lay = self._lay(width)
            return np.interp(values, lay.values, lay.xs)
        return np.asarray((values - self.low) / (self.high - self.low) * width)

    def _value(self, x: float, width: float) -> float:
        if self.folds:
            return self._lay(width).value(x)
        return self.low + x / max(width, 1.0) * (self.high - self.low)

    def _span(self, outlook: Outlook) -> tuple[float, float]:
        if outlook.profile is None or outlook.target is None:
            return 0.0, 1.0
        if self.measure == "distance":
            return 0.0, outlook.profile.length_m
        return 0.0, outlook.target.finish_s


def _between(value: float, knots: list[float], heights: list[float]) -> float:
    """Return where *value* lies on the line through knots, which rise."""
    k = min(max(bisect_right(knots, value), 1), len(knots) - 1)
    low, high = knots[k - 1], knots[k]
    share = (value - low) / (high - low) if high > low else 0.0
    return heights[k - 1] + share * (heights[k] - heights[k - 1])
