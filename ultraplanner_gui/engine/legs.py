"""The legs of the race: from one aid station, or the start, to the next, or the finish."""

from __future__ import annotations

from functools import lru_cache
from itertools import pairwise

from ultraplanner_gui.engine.light import Light
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.plan.course import Surface
from ultraplanner_gui.plan.value import Value

#: The key of the leg that ends at the finish; no station has an empty key.
LAST_LEG = ""


class Leg(Value, frozen=True):
    """One leg, named by the station at its end; `begins`, `ends` are None for start and finish.

    `leave_s` and `arrive_s` are in seconds of race time, on the target.
    """

    key: str
    begins: str | None
    ends: str | None
    start_m: float
    end_m: float
    leave_s: float
    arrive_s: float

    @property
    def length_m(self) -> float:
        """Length of the leg."""
        return self.end_m - self.start_m

    @property
    def running_s(self) -> float:
        """Time from leaving the station before to arriving at its end."""
        return self.arrive_s - self.leave_s


# Head, folds and pleats ask for those of the same outlook on every move of a drag.
@lru_cache(maxsize=2)
def legs_of(outlook: Outlook) -> tuple[Leg, ...]:
    """Return the legs in course order; none without a course. Those of no length are left out."""
    course, target = outlook.project.course, outlook.target
    if course is None or target is None:
        return ()
    places: list[tuple[str, str | None, float]] = [("", None, 0.0)]
    places += [(s.key, s.name, s.at_m) for s in course.stations]
    places.append((LAST_LEG, None, course.length_m))
    arrive_s = target.arrivals_s([at_m for _, _, at_m in places])
    leave_s = _departures(target, places, arrive_s)
    return tuple(
        Leg(key, begins, ends, start_m, end_m, leave_s[n], arrive_s[n + 1])
        for n, ((_, begins, start_m), (key, ends, end_m)) in enumerate(pairwise(places))
        if end_m > start_m
    )


def leg_at(outlook: Outlook, at_m: float) -> Leg | None:
    """Return the leg a place lies in; an aid station belongs to the leg that begins there."""
    legs = legs_of(outlook)
    return next((leg for leg in legs if at_m < leg.end_m), legs[-1] if legs else None)


def light_in(outlook: Outlook, leg: Leg) -> tuple[tuple[Light, float], ...]:
    """Return the light of *leg* in order, each with its seconds."""
    parts = [
        (span.kind, min(span.end_s, leg.arrive_s) - max(span.start_s, leg.leave_s))
        for span in outlook.light
    ]
    return tuple((kind, long_s) for kind, long_s in parts if long_s > 0.0)


def surfaces_in(outlook: Outlook, leg: Leg) -> tuple[tuple[Surface, float], ...]:
    """Return what is underfoot on *leg*, the most first, as shares of it; unknown ground last."""
    course = outlook.project.course
    shares: dict[Surface, float] = {}
    for span in course.surfaces if course is not None else ():
        far_m = min(span.end_m, leg.end_m) - max(span.start_m, leg.start_m)
        if far_m > 0.0:
            shares[span.surface] = shares.get(span.surface, 0.0) + far_m / leg.length_m
    shares.pop(Surface.UNKNOWN, None)
    known = sorted(shares.items(), key=lambda pair: -pair[1])
    left = 1.0 - sum(shares.values())
    return (*known, (Surface.UNKNOWN, left)) if left > 1e-6 else tuple(known)


def _departures(
    target: PacePlan, places: list[tuple[str, str | None, float]], arrive_s: list[float]
) -> list[float]:
    stop_s: dict[float, float] = {}
    for stop in target.stops:
        stop_s[stop.at_m] = stop_s.get(stop.at_m, 0.0) + stop.stop_s
    return [
        arrives_s + stop_s.get(at_m, 0.0)
        for (_, _, at_m), arrives_s in zip(places, arrive_s, strict=True)
    ]
