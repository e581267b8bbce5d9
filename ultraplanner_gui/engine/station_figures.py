"""What there is to say of one aid station: arrival, cutoff, time in hand, checks and a mend."""

from __future__ import annotations

import math
from functools import lru_cache

from msgspec.structs import replace

from ultraplanner_gui.engine.check import Check
from ultraplanner_gui.engine.odds import IN_TWENTY, Chance
from ultraplanner_gui.engine.outlook import Outlook, derive
from ultraplanner_gui.engine.race_checks import (
    CUTOFF,
    LITTLE_S,
    ODDS,
    ODDS_SOURCE,
    OWN_CHOICE,
    margin_state,
    odds_state,
)
from ultraplanner_gui.engine.sections import SectionFigures, arrival_window
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, PlanError, Quantity, message
from ultraplanner_gui.plan.station import AidStation, CutoffKind
from ultraplanner_gui.plan.value import Value

#: OWN: a stop is shortened by whole steps, and where that gains at least so much.
STEP_S, LEAST_GAIN_S = 300.0, 60.0


class StationFigures(Value, frozen=True):
    """One aid station, times in seconds of race time on the target unless said.

    `window_s` is the arrival window, `to_cutoff_s` the time to its own cutoff, `in_hand_s` how
    much later one could arrive and still make it and every later one at planned speed.
    `walk_leave_by_s` is the latest leaving from which the rest can be walked in, None where it
    cannot, or where there is no cutoff from here on.
    """

    station: AidStation
    arrive_s: float
    leave_s: float
    window_s: tuple[float, float]
    to_cutoff_s: float | None
    in_hand_s: float | None
    chance: Chance | None
    walk_leave_by_s: float | None


class StopMend(Value, frozen=True):
    """A shorter stop that leaves more time to a cutoff; `text` says what it would come to."""

    text: Message
    station: str
    stop_s: float


def station_figures(outlook: Outlook, key: str) -> StationFigures | None:
    """Return the figures of the station *key*; None if there is none, or no course."""
    course, target, forecast = outlook.project.course, outlook.target, outlook.forecast
    station = next((s for s in course.stations if s.key == key), None) if course else None
    if station is None or target is None or forecast is None:
        return None
    at_m = station.at_m
    section = next((s for s in outlook.sections if s.end_m >= at_m), None)
    own = section if section is not None and section.end_m == at_m else None
    window_s = arrival_window(forecast.arrival_s(at_m), forecast.finish_s)
    arrive_s = target.arrival_s(at_m)
    return StationFigures(
        station=station,
        arrive_s=arrive_s,
        leave_s=arrive_s + station.stop_s,
        window_s=own.window_s if own is not None else window_s,
        to_cutoff_s=own.to_cutoff_s if own is not None else None,
        in_hand_s=section.in_hand_s if section is not None else None,
        chance=own.chance if own is not None else None,
        walk_leave_by_s=own.walk_leave_by_s if own is not None and own.can_walk_in else None,
    )


def end_checks(section: SectionFigures) -> tuple[Check, ...]:
    """Return how the cutoff at the end of *section* stands, and its odds; none without one."""
    if section.to_cutoff_s is None:
        return ()
    spare = Quantity(abs(section.to_cutoff_s), "s")
    missed, made = (
        QT_TRANSLATE_NOOP("Checks", "The cutoff here is missed by {0}."),
        QT_TRANSLATE_NOOP("Checks", "{0} to spare to the cutoff here."),
    )
    text = message(missed if section.to_cutoff_s < 0.0 else made, spare)
    found = [Check(CUTOFF, margin_state(section.to_cutoff_s), text, OWN_CHOICE)]
    if section.chance is not None:
        days = section.chance.twentieths
        said = QT_TRANSLATE_NOOP("Checks", "Made in time on about {0} of {1} days.")
        text = message(said, days, IN_TWENTY)
        found.append(Check(ODDS, odds_state(days), text, ODDS_SOURCE))
    return tuple(found)


def checks_at(outlook: Outlook, key: str) -> tuple[Check, ...]:
    """Return the checks of the station *key*."""
    section = next((s for s in outlook.sections if s.station == key), None)
    return end_checks(section) if section is not None else ()


# Reckons the race anew: only where a check that does not hold is looked at.
@lru_cache(maxsize=2)
def stop_mend(outlook: Outlook, key: str) -> StopMend | None:
    """Return the shorter stop that helps most to make the cutoff of the station *key*.

    Of the stops before it, and its own where leaving counts, the longest is shortened by as much
    as is missing to half an hour. None if the cutoff holds or nothing is gained.
    """
    course = outlook.project.course
    section = next((s for s in outlook.sections if s.station == key), None)
    if course is None or section is None or section.to_cutoff_s is None:
        return None
    missing_s = LITTLE_S - section.to_cutoff_s
    own = course.station(key)
    counts_own = own.cutoff_kind is CutoffKind.DEPARTURE
    stops = [s for s in course.stations if s.at_m < own.at_m or (counts_own and s.key == key)]
    longest = max(stops, key=lambda s: s.stop_s, default=None)
    if missing_s <= 0.0 or longest is None or longest.stop_s < STEP_S:
        return None
    cut_s = math.ceil(missing_s / STEP_S) * STEP_S
    stop_s = max(longest.stop_s - cut_s, 0.0)
    try:
        shorter = course.with_station(replace(longest, stop_s=stop_s))
        after = derive(replace(outlook.project, course=shorter), outlook, outlook.today)
    except PlanError:
        return None
    there = next((s for s in after.sections if s.station == key), None)
    if there is None or there.to_cutoff_s is None:
        return None
    if there.to_cutoff_s - section.to_cutoff_s < LEAST_GAIN_S:
        return None
    now, then = Quantity(stop_s, "s"), Quantity(abs(there.to_cutoff_s), "s")
    if margin_state(there.to_cutoff_s) is State.BREAKS:
        said = QT_TRANSLATE_NOOP("Checks", "Stop {0} at {1}: still {2} too late here.")
    else:
        said = QT_TRANSLATE_NOOP("Checks", "Stop {0} at {1}: {2} to spare here.")
    return StopMend(message(said, now, longest.name, then), longest.key, stop_s)
