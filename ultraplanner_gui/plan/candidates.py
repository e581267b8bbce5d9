"""Races one may pick from, side by side before there is a course."""

from __future__ import annotations

from datetime import date

from ultraplanner_gui.plan.value import Kept, Number


class CandidateStop(Kept, frozen=True):
    """A place with a cutoff: metres from the start, climb until there, race time in seconds."""

    at_m: Number
    cutoff_s: Number
    climb_m: Number = 0.0


class Candidate(Kept, frozen=True):
    """One race that might be run. `start_s` is the time of day of the start, in seconds.

    `limit_s` is the cutoff at the finish, `stops` those before it, in order. `zone` is the name of
    its time zone, empty for that of the project's race; without a place the latitude and longitude
    of the project's course count.
    """

    key: str
    name: str
    day: date
    distance_m: Number
    climb_m: Number = 0.0
    drop_m: Number = 0.0
    limit_s: Number | None = None
    start_s: Number = 6 * 3600.0
    stops: tuple[CandidateStop, ...] = ()
    latitude_deg: Number | None = None
    longitude_deg: Number | None = None
    zone: str = ""
    note: str = ""
