"""The time zone to propose for a course."""

from __future__ import annotations

import math
import re
from functools import lru_cache
from importlib.resources import files
from zoneinfo import ZoneInfo

_PLACE = re.compile(r"([+-])(\d{2})(\d{2})(\d{2})?([+-])(\d{3})(\d{2})(\d{2})?$")


def nearest_zone(latitude_deg: float, longitude_deg: float) -> ZoneInfo:
    """Return the zone whose reference place lies nearest: a proposal, wrong near some borders.

    Places are those of `zone1970.tab` of the IANA time zone database.
    """
    here = math.radians(latitude_deg), math.radians(longitude_deg)
    name = max(_places(), key=lambda place: _closeness(here, place[0]))[1]
    return ZoneInfo(name)


def _closeness(a: tuple[float, float], b: tuple[float, float]) -> float:
    """Return the cosine of the angle between two places."""
    return math.sin(a[0]) * math.sin(b[0]) + math.cos(a[0]) * math.cos(b[0]) * math.cos(a[1] - b[1])


@lru_cache(maxsize=1)
def _places() -> tuple[tuple[tuple[float, float], str], ...]:
    text = files("tzdata").joinpath("zoneinfo", "zone1970.tab").read_text(encoding="utf-8")
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
