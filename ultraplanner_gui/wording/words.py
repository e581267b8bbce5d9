"""How numbers read: durations, clock times, pace, distances, in the units and language chosen."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime
from typing import Literal

from ultraplanner_gui.plan.message import Message


@dataclass(frozen=True, slots=True)
class Words:
    """The user's units and locale. All numbers that people see are made here.

    Values come in SI units. A duration reads "19 h 42", a clock time "Sun 00:12"; never one
    in the other's dress. Methods without a unit in their text say so.
    """

    units: Literal["metric", "imperial"] = "metric"
    locale: str = "en_GB"

    def number(self, value: float, decimals: int = 0) -> str:
        """Return a plain number, "1,240" or "12.4"."""
        raise NotImplementedError

    def distance(self, m: float, decimals: int | None = None) -> str:
        """Return "12.4 km" or "7.7 mi" (one decimal below 100, none above, unless *decimals*)."""
        raise NotImplementedError

    def distance_bare(self, m: float, decimals: int | None = None) -> str:
        """Return the distance without its unit, for a column whose head names it."""
        raise NotImplementedError

    @property
    def distance_unit(self) -> str:
        """ "km" or "mi"."""
        raise NotImplementedError

    def height(self, m: float) -> str:
        """Return "410 m" or "1,345 ft"."""
        raise NotImplementedError

    def height_bare(self, m: float) -> str:
        """Return the height without its unit."""
        raise NotImplementedError

    @property
    def height_unit(self) -> str:
        """ "m" or "ft"."""
        raise NotImplementedError

    def duration(self, s: float) -> str:
        """Return "19 h 42", "42 min" below one hour; rounded to the minute; "-" in front if negative."""
        raise NotImplementedError

    def clock(self, at: datetime, weekday: bool = True) -> str:
        """Return "Sun 00:12", or "00:12" without *weekday*; rounded to the minute, 24-hour."""
        raise NotImplementedError

    def day(self, day: date) -> str:
        """Return "Sat 19 Jun"."""
        raise NotImplementedError

    def short_day(self, day: date) -> str:
        """Return "14 Feb"."""
        raise NotImplementedError

    def weekday(self, weekday: int) -> str:
        """Return "Mon" for 0."""
        raise NotImplementedError

    def pace(self, s_per_m: float) -> str:
        """Return "12:51" minutes per km or mile; the unit is `pace_unit`."""
        raise NotImplementedError

    @property
    def pace_unit(self) -> str:
        """ "min/km" or "min/mi"."""
        raise NotImplementedError

    def percent(self, value: float) -> str:
        """Return "86 %" for 86.0."""
        raise NotImplementedError

    def say(self, message: Message) -> str:
        """Return the sentence with its quantities in the user's units."""
        raise NotImplementedError

    def parse_duration(self, text: str) -> float | None:
        """Return the seconds of "19 h 42", "19:42", "42 min", "1h30"; None if it is none."""
        raise NotImplementedError
