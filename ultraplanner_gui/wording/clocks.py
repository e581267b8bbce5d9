"""Times of day as people and handbooks write them, with or without a weekday."""

from __future__ import annotations

import re
from datetime import time
from functools import lru_cache
from typing import Literal

from ultraplanner_gui.wording import locales

_AFTERNOON = re.compile(r"(.*\d)\s*([ap])\.?m\.?", re.IGNORECASE)
_FIGURES = re.compile(r"(\d{1,2})\s*[:.h]\s*([0-5]\d)")


def clock_time(text: str) -> time | None:
    """Return the time of day of "00:12", "0.12", "14h30" or "2:30 pm"; or None."""
    if found := _AFTERNOON.fullmatch(text):
        at, half = clock_time(found[1]) or _full_hour(found[1]), found[2].lower()
        if at is None or not 1 <= at.hour <= 12:
            return None
        return at.replace(hour=at.hour % 12 + (12 if half == "p" else 0))
    found = _FIGURES.fullmatch(text)
    if found is None or int(found[1]) > 23:
        return None
    return time(int(found[1]), int(found[2]))


def is_afternoon_clock(text: str) -> bool:
    """Whether *text* ends in am or pm, so that it can be nothing but a clock time."""
    return _AFTERNOON.fullmatch(text) is not None


def split_weekday(text: str, *names: str) -> tuple[int | None, str]:
    """Return the weekday in front of *text*, Monday 0, and what comes after it.

    Read in English and in the locales *names*.
    """
    plain = " ".join(text.split())
    found = re.match(r"(\D+?)[.,]?\s+(?=\d)", plain)
    if found is None:
        return None, plain
    weekday = weekday_numbers(*names).get(found[1].casefold())
    return (None, plain) if weekday is None else (weekday, plain[found.end() :])


@lru_cache(maxsize=8)
def weekday_numbers(*names: str) -> dict[str, int]:
    """Return names of weekdays, long and short, in English and the locales *names*, against
    their numbers, Monday 0; the last locale wins.
    """
    found: dict[str, int] = {}
    for name in (locales.FALLBACK, *names):
        found |= names_of(name, "days", 0)
    return found


def names_of(locale: str, of: Literal["days", "months"], first: int) -> dict[str, int]:
    """Return the names of days or months in *locale*, long and short, against their numbers."""
    found: dict[str, int] = {}
    for context in ("format", "stand-alone"):
        for width in ("wide", "abbreviated"):
            names = getattr(locales.known_locale(locale), of)[context][width]
            numbers = range(first, len(names) + first)
            found |= {names[n].rstrip(".").casefold(): n for n in numbers}
    return found


def _full_hour(text: str) -> time | None:
    return time(int(text)) if text.isdigit() and int(text) < 24 else None
