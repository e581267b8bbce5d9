"""The legs of the race: from one aid station, or the start, to the next, or the finish."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from ultraplanner_gui.engine.outlook import Outlook

#: The key of the leg that ends at the finish; no station has an empty key.
LAST_LEG = ""


@dataclass(frozen=True, slots=True)
class Leg:
    """One leg, named by the station at its end; `begins`, `ends` are None for start and finish.

    `running_s` is from leaving the station before to arriving at its end, on the target.
    """

    key: str
    begins: str | None
    ends: str | None
    start_m: float
    end_m: float
    running_s: float

    @property
    def length_m(self) -> float:
        """Length of the leg."""
        return self.end_m - self.start_m


def legs_of(outlook: Outlook) -> tuple[Leg, ...]:
    """Return the legs in course order; none without a course. Those of no length are left out."""
    course, target = outlook.project.course, outlook.target
    if course is None or target is None:
        return ()
    places: list[tuple[str, str | None, float]] = [("", None, 0.0)]
    places += [(s.key, s.name, s.at_m) for s in course.stations]
    places.append((LAST_LEG, None, course.length_m))
    return tuple(
        Leg(key, begins, ends, start_m, end_m, _running_s(outlook, start_m, end_m))
        for (_, begins, start_m), (key, ends, end_m) in pairwise(places)
        if end_m > start_m
    )


def leg_at(outlook: Outlook, at_m: float) -> Leg | None:
    """Return the leg a place lies in; an aid station belongs to the leg that begins there."""
    legs = legs_of(outlook)
    return next((leg for leg in legs if at_m < leg.end_m), legs[-1] if legs else None)


def _running_s(outlook: Outlook, start_m: float, end_m: float) -> float:
    target = outlook.target
    assert target is not None
    return target.arrival_s(end_m) - target.departure_s(start_m)
