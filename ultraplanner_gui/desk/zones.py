"""The time zone to propose for a course."""

from __future__ import annotations

import math
import re
from functools import lru_cache
from importlib.resources import files
from zoneinfo import ZoneInfo, available_timezones

from PySide6.QtCore import QTimeZone

_PLACE = re.compile(r"([+-])(\d{2})(\d{2})(\d{2})?([+-])(\d{3})(\d{2})(\d{2})?$")


def nearest_zone(latitude_deg: float, longitude_deg: float) -> ZoneInfo:
    """Return the zone whose reference place lies nearest: a proposal, wrong near some borders.

    Places are those of `zone1970.tab` of the IANA time zone database.
    """
    here = math.radians(latitude_deg), math.radians(longitude_deg)
    name = max(_places(), key=lambda place: _closeness(here, place[0]))[1]
    return ZoneInfo(name)


def local_zone() -> ZoneInfo:
    """Return the time zone of the machine, UTC if it does not tell."""
    name = bytes(QTimeZone.systemTimeZoneId().data()).decode()
    return ZoneInfo(name if name in available_timezones() else "UTC")


def place_of(zone: str) -> tuple[float, float] | None:
    """Return latitude and longitude, degrees, of the reference place of *zone*, if it has one.

    Places are those of `zone.tab` of the IANA time zone database.
    """
    there = _named_places().get(zone)
    return None if there is None else (math.degrees(there[0]), math.degrees(there[1]))


def _closeness(a: tuple[float, float], b: tuple[float, float]) -> float:
    """Return the cosine of the angle between two places."""
    return math.sin(a[0]) * math.sin(b[0]) + math.cos(a[0]) * math.cos(b[0]) * math.cos(a[1] - b[1])


@lru_cache(maxsize=1)
def _places() -> tuple[tuple[tuple[float, float], str], ...]:
    return _read("zone1970.tab")


@lru_cache(maxsize=1)
def _named_places() -> dict[str, tuple[float, float]]:
    return {name: place for place, name in _read("zone.tab")}


def _read(table: str) -> tuple[tuple[tuple[float, float], str], ...]:
    text = files("tzdata").joinpath("zoneinfo", table).read_text(encoding="utf-8")
    rows = (line.split("\t") for line in text.splitlines() if line and not line.startswith("#"))
    return tuple((_radians(row[1]), row[2]) for row in rows)


def _radians(place: str) -> tuple[float, float]:
    found = _PLACE.match(place)
    if found is None:
        raise ValueError(f"not a place of the time zone table: {place}")
    parts = found.groups("0")

    def angle(sign: str, degrees: str, minutes: str, seconds: str) -> float:
        value = int(degrees) + int(minutes) / 60 + int(seconds) / 3600
        return math.radians(-value if sign == "-" else value)

    return angle(*parts[:4]), angle(*parts[4:])
