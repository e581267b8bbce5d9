"""What things in the hand snap to: climbs, stations, whole kilometres, round times."""

from __future__ import annotations

import math
from bisect import bisect_left
from collections.abc import Callable, Collection, Sequence
from datetime import datetime, timedelta

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QMouseEvent

from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.engine.climbs import Hill, hills_of
from ultraplanner_gui.plan.course import Slope
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.widgets.axis import RaceAxis
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

#: How near a named place, and how near a round figure, takes hold.
NAMED_PX, ROUND_PX = 6.0, 3.5
#: A press that moves less than that is a click: nothing must snap away under it.
SLACK_PX = 4.0
#: What is put down where nothing takes hold, and freely, is still rounded to.
PLACE_M, FREE_PLACE_M = 10.0, 1.0
MOMENT_S, FREE_MOMENT_S = 60.0, 10.0
ROUND_S, HALF_HOUR_S = 300.0, 1800.0


class Caught(Value, frozen=True):
    """What something has snapped to: `text` names it; `at_s` is a moment of the race, `at_m` a
    place, both None where a figure and no place took hold.
    """

    text: str
    at_m: float | None = None
    at_s: float | None = None


class _Named(Value, frozen=True):
    at: float
    text: str


def is_free(event: QMouseEvent) -> bool:
    """Whether the key that lets nothing snap is held."""
    return bool(event.modifiers() & Qt.KeyboardModifier.AltModifier)


class Snap(QObject):
    """The one way things snap; `caught` is what holds the thing in the hand now.

    Named places first, where it *was* among them, then round figures; with *free* nothing takes
    hold.
    """

    changed = Signal()

    def __init__(
        self,
        document: Document,
        axis: RaceAxis,
        words: Callable[[], Words],
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._document, self._axis, self._words = document, axis, words
        self.caught: Caught | None = None
        #: Whether something that could snap is in the hand.
        self.is_on = False
        #: Whether it is held free of everything.
        self.is_free = False
        self._hills_for: object = None
        self._hills: tuple[_Named, ...] = ()
        self._moments_for: object = None
        self._moments: tuple[_Named, ...] = ()

    def let_go(self) -> None:
        """Nothing is in the hand any more."""
        if self.caught is not None or self.is_on:
            self.caught, self.is_on, self.is_free = None, False, False
            self.changed.emit()

    def place(
        self, at_m: float, width: float, free: bool, was_m: float, but: Collection[str] = ()
    ) -> float:
        """Return the place something at *at_m* is put to, metres.

        *but* are stations that take no hold: the one in the hand, those where a section ends.
        """
        if free:
            return self._loose(round(at_m / FREE_PLACE_M) * FREE_PLACE_M, is_free=True)
        course = self._document.before.project.course
        named = [_Named(was_m, self.tr("its old place")), *self._hill_places()]
        if course is not None:
            named += [_Named(s.at_m, s.name) for s in course.stations if s.key not in but]

        def x_of(place_m: float) -> float:
            return self._axis.x_of_distance(place_m, width)

        near = _nearest(named, at_m, x_of, theme().px(NAMED_PX))
        if near is not None:
            return self._held(near.at, Caught(near.text, at_m=near.at))
        words = self._words()
        whole_m = round(at_m / words.unit_m) * words.unit_m
        if whole_m > 0.0 and abs(x_of(whole_m) - x_of(at_m)) <= theme().px(ROUND_PX):
            return self._held(whole_m, Caught(words.distance(whole_m, 0), at_m=whole_m))
        return self._loose(round(at_m / PLACE_M) * PLACE_M)

    def moment(self, at_s: float, width: float, free: bool, was_s: float) -> float:
        """Return the moment of the race something at *at_s* is put to, seconds."""
        if free:
            return self._loose(round(at_s / FREE_MOMENT_S) * FREE_MOMENT_S, is_free=True)

        def x_of(moment_s: float) -> float:
            return self._axis.x_of_time(moment_s, width)

        named = (_Named(was_s, self.tr("its old time")), *self._moments_there())
        near = _nearest(named, at_s, x_of, theme().px(NAMED_PX))
        if near is not None:
            return self._held(near.at, Caught(near.text, at_s=near.at))
        return self._round(at_s, abs(x_of(at_s + ROUND_S) - x_of(at_s)) / ROUND_S, ROUND_S)

    def stop(self, stop_s: float, px_per_s: float, free: bool, was_s: float) -> float:
        """Return how long a stop is made that would take *stop_s*, never below zero."""
        if not free and abs(stop_s - was_s) * px_per_s <= theme().px(ROUND_PX):
            return self._held(was_s, Caught(self.tr("its old length")))
        stop_s = max(stop_s, 0.0)
        if free:
            return self._loose(round(stop_s / FREE_MOMENT_S) * FREE_MOMENT_S, is_free=True)
        return self._round(stop_s, px_per_s, ROUND_S, is_place=False)

    def start(self, clock: datetime, px_per_s: float, free: bool) -> datetime:
        """Return the start on its day that one at *clock* is moved to, by the wall clock."""
        race = self._document.before.project.race
        by_s = (clock.replace(tzinfo=None) - race.start.replace(tzinfo=None)).total_seconds()
        if not free and abs(by_s) * px_per_s <= theme().px(ROUND_PX):
            self._held(0.0, Caught(self.tr("its old time")))
            return race.start
        midnight = datetime.combine(race.day, datetime.min.time())
        into_s = (clock.replace(tzinfo=None) - midnight).total_seconds()
        into_s = min(max(into_s, 0.0), 24.0 * 3600.0 - MOMENT_S)
        if free:
            into_s = self._loose(round(into_s / MOMENT_S) * MOMENT_S, is_free=True)
        else:
            half_s = round(into_s / HALF_HOUR_S) * HALF_HOUR_S
            near = abs(half_s - into_s) * px_per_s <= theme().px(NAMED_PX)
            into_s = half_s if near else round(into_s / ROUND_S) * ROUND_S
            into_s = min(into_s, 24.0 * 3600.0 - ROUND_S)
        start = (midnight + timedelta(seconds=into_s)).replace(tzinfo=race.start.tzinfo)
        if not free:
            self._held(0.0, Caught(self._words().clock(start)))
        return start

    def _moments_there(self) -> tuple[_Named, ...]:
        before = self._document.before
        if self._moments_for is not before:
            self._moments_for = before
            self._moments = tuple(
                _Named(math.ceil(one.at / MOMENT_S) * MOMENT_S, one.text)
                for one in self._moments_anew()
            )
        return self._moments

    def _moments_anew(self) -> list[_Named]:
        """Return when the target passes climbs, and comes to and leaves stations."""
        target, course = self._document.before.target, self._document.before.project.course
        if target is None or course is None:
            return []
        hills = self._hill_places()
        times_s = target.arrivals_s([place.at for place in hills])
        named = [_Named(at_s, h.text) for at_s, h in zip(times_s, hills, strict=True)]
        for station in course.stations:
            named.append(_Named(target.arrival_s(station.at_m), station.name))
            if station.stop_s > 0.0:
                leaving = self.tr("leaving {0}").format(station.name)
                named.append(_Named(target.departure_s(station.at_m), leaving))
        return named

    def _hill_places(self) -> tuple[_Named, ...]:
        """Return feet and tops of climbs and descents."""
        profile = self._document.before.profile
        if profile is None or not profile.has_elevation:
            return ()
        if self._hills_for is not profile:
            self._hills_for = profile
            self._hills = tuple(n for hill in hills_of(profile) for n in self._ends(hill))
        return self._hills

    def _ends(self, hill: Hill) -> tuple[_Named, _Named]:
        if hill.slope is Slope.CLIMB:
            foot, top = self.tr("foot of climb {0}"), self.tr("top of climb {0}")
        else:
            top, foot = self.tr("top of descent {0}"), self.tr("foot of descent {0}")
        low, high = (hill.start_m, hill.end_m)[:: 1 if hill.slope is Slope.CLIMB else -1]
        return _Named(low, foot.format(hill.number)), _Named(high, top.format(hill.number))

    def _round(self, at_s: float, px_per_s: float, step_s: float, is_place: bool = True) -> float:
        round_s = round(at_s / step_s) * step_s
        if abs(round_s - at_s) * px_per_s <= theme().px(ROUND_PX):
            text = self._words().duration(round_s)
            return self._held(round_s, Caught(text, at_s=round_s if is_place else None))
        return self._loose(round(at_s / MOMENT_S) * MOMENT_S)

    def _held(self, at: float, caught: Caught) -> float:
        self._take(caught, is_free=False)
        return at

    def _loose(self, at: float, is_free: bool = False) -> float:
        self._take(None, is_free)
        return at

    def _take(self, caught: Caught | None, is_free: bool) -> None:
        if (caught, is_free, True) != (self.caught, self.is_free, self.is_on):
            self.caught, self.is_free, self.is_on = caught, is_free, True
            self.changed.emit()


def _nearest(
    named: Sequence[_Named], at: float, x_of: Callable[[float], float], reach: float
) -> _Named | None:
    """Return the nearest of *named* within *reach* of *at* along x."""
    ordered = sorted(named, key=lambda one: one.at)
    k = bisect_left([one.at for one in ordered], at)
    x = x_of(at)
    near = [(abs(x_of(one.at) - x), n, one) for n, one in enumerate(ordered[max(k - 1, 0) : k + 1])]
    gap, _, one = min(near, default=(reach + 1.0, 0, None))
    return one if gap <= reach else None
