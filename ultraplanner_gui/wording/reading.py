"""What people type into fields: durations, distances, heights, paces, times of day."""

from __future__ import annotations

import math
import re
import unicodedata
from datetime import time

M_PER_KM = 1000.0
M_PER_MILE = 1609.344
M_PER_FOOT = 0.3048

# Unicode UAX 9, 2.4: what stands between keeps its own order and lends none to what is around it.
LEFT_TO_RIGHT, RIGHT_TO_LEFT, AS_IT_BEGINS, END = "\u2066", "\u2067", "\u2068", "\u2069"
_ISOLATES = re.compile("[\u2066-\u2069]")
_MARKS = re.compile("[\u200e\u200f\u202a-\u202e\u2066-\u2069]")

_NUMBER = r"\d+(?:[.,]\d+)?"
_HOURS = r"(?:h|hrs?|hours?)"
_MINUTES = r"(?:m|mins?|minutes?|')"
_SECONDS = r"(?:s|secs?|seconds?|\"|'')"
_COLONS = re.compile(r"(\d+):([0-5]?\d)(?::([0-5]?\d))?")
_NAMED = re.compile(
    rf"(?:(?P<h>{_NUMBER})\s*{_HOURS})?\s*"
    rf"(?:(?P<m>{_NUMBER})(?:\s*{_MINUTES}|\Z))?\s*"
    rf"(?:(?P<s>{_NUMBER})\s*{_SECONDS})?",
    re.IGNORECASE,
)
_LENGTH = re.compile(r"(?P<value>.*?\d)\s*(?P<unit>[a-z]*)", re.IGNORECASE | re.DOTALL)
_PACE = re.compile(
    r"(?P<m>\d+)(?::|\s*min\s*|'|\s)(?P<s>[0-5]?\d)?\"?\s*(?:min)?\s*/?\s*(?P<unit>km|mi)?",
    re.IGNORECASE,
)
_CLOCK = re.compile(r"(?:\D+\s)?(\d{1,2})\s*[:.h]\s*([0-5]\d)")
_LENGTHS_M = {
    "km": M_PER_KM,
    "kilometre": M_PER_KM,
    "kilometres": M_PER_KM,
    "k": M_PER_KM,
    "mi": M_PER_MILE,
    "mile": M_PER_MILE,
    "miles": M_PER_MILE,
    "m": 1.0,
    "metre": 1.0,
    "metres": 1.0,
    "ft": M_PER_FOOT,
    "foot": M_PER_FOOT,
    "feet": M_PER_FOOT,
}


def fahrenheit(celsius: float) -> float:
    """Return a temperature in degrees Fahrenheit."""
    return celsius * 1.8 + 32.0


def celsius(fahrenheit: float) -> float:
    """Return a temperature in degrees Celsius."""
    return (fahrenheit - 32.0) / 1.8


def without_isolates(text: str) -> str:
    """Return *text* without what `Words` puts around numbers in a language written leftward."""
    return text if text.isascii() else _ISOLATES.sub("", text)


def from_the_right(text: str) -> str:
    """Return *text* so that its parts follow one another from right to left."""
    return f"{RIGHT_TO_LEFT}{text}{END}" if text.strip() else text


def read_number(text: str, decimal: str = ".") -> float | None:
    """Return the number in *text*, or None.

    Point and comma are both understood: the one that is not *decimal* parts thousands where
    it stands before groups of three figures, else it is taken as the decimal sign too.
    """
    plain = re.sub(r"[\s\u00a0\u202f'\u2019\u066c]", "", _in_plain_figures(text))
    plain = plain.replace("\u2212", "-").replace("\u066b", decimal)
    group = "," if decimal == "." else "."
    if re.fullmatch(rf"[-+]?\d{{1,3}}(?:\{group}\d{{3}})+(?:\{decimal}\d*)?", plain):
        plain = plain.replace(group, "")
    plain = plain.replace(",", ".")
    if not re.fullmatch(r"[-+]?(?:\d+\.?\d*|\.\d+)", plain):
        return None
    return float(plain)


def read_duration(text: str, bare_s: float = 60.0) -> float | None:
    """Return the seconds of "19 h 42", "19:42", "19:42:30", "42 min", "1h30", "1.5 h"; or None.

    Two figures with a colon are hours and minutes. A number alone counts *bare_s* seconds
    each, a number after hours minutes.
    """
    plain = _without_odd_spaces(text)
    sign = -1.0 if plain.startswith("-") else 1.0
    plain = plain.lstrip("+-").strip()
    if re.fullmatch(_NUMBER, plain):
        return sign * _figure(plain) * bare_s
    if found := _COLONS.fullmatch(plain):
        hours, minutes, seconds = (float(part or 0) for part in found.groups())
    elif plain and (found := _NAMED.fullmatch(plain)):
        hours, minutes, seconds = (_figure(found[name]) for name in "hms")
        if (found["h"] and minutes >= 60.0) or (found["m"] and seconds >= 60.0):
            return None
    else:
        return None
    return sign * (hours * 3600.0 + minutes * 60.0 + seconds)


def read_length(text: str, bare_m: float, decimal: str = ".") -> float | None:
    """Return the metres of "12.4 km", "7.7 mi", "410 m", "1,345 ft"; or None.

    A number alone counts *bare_m* metres each.
    """
    found = _LENGTH.fullmatch(_without_odd_spaces(text))
    if found is None:
        return None
    unit = found["unit"].lower()
    if unit and unit not in _LENGTHS_M:
        return None
    value = read_number(found["value"], decimal)
    return None if value is None else value * _LENGTHS_M.get(unit, bare_m)


def read_pace(text: str, bare_m: float) -> float | None:
    """Return the seconds per metre of "12:51", "12:51 /km", "20:41 min/mi"; or None.

    Without a unit it is per *bare_m* metres.
    """
    found = _PACE.fullmatch(_without_odd_spaces(text))
    if found is None:
        return None
    seconds = float(found["m"]) * 60.0 + float(found["s"] or 0)
    per_m = _LENGTHS_M[found["unit"].lower()] if found["unit"] else bare_m
    return seconds / per_m if seconds > 0.0 else None


def read_clock(text: str) -> time | None:
    """Return the time of day of "00:12" or "Sun 00:12", 24-hour; or None."""
    found = _CLOCK.fullmatch(_without_odd_spaces(text))
    if found is None or int(found[1]) > 23:
        return None
    return time(int(found[1]), int(found[2]))


def _figure(text: str | None) -> float:
    return float(text.replace(",", ".")) if text else 0.0


def _without_odd_spaces(text: str) -> str:
    plain = re.sub(r"[\s\u00a0\u202f]+", " ", _in_plain_figures(text)).strip()
    return plain.replace("\u2212", "-").replace("\u2032", "'").replace("\u2033", '"')


def _in_plain_figures(text: str) -> str:
    """Return *text* with 0 to 9 for the figures of any script (Unicode category Nd)."""
    if text.isascii():
        return text
    plain = _MARKS.sub("", text)
    return "".join(str(unicodedata.decimal(c)) if c.isdecimal() else c for c in plain)


def minutes_of(s: float) -> int:
    """Return *s* seconds rounded to whole minutes, halves up."""
    return math.floor(s / 60.0 + 0.5)
