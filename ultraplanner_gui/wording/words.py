"""How numbers read: durations, clock times, pace, distances, in the units and language chosen."""

from __future__ import annotations

import math
from collections.abc import Callable
from datetime import UTC, date, datetime, time, timedelta
from typing import Literal

from msgspec.structs import replace

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Argument, Message, Quantity
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.wording import locales, reading

NONE = "–"
MOST_STEPS_OF_EFFORT = 10
_OF = QT_TRANSLATE_NOOP("Session", "{0} of {1}")
_PER = QT_TRANSLATE_NOOP("Profile", "{0} per {1}")
_FEET_BELOW_M = 0.5 * reading.M_PER_MILE


def _as_written(text: str) -> str:
    return text


class Words(Value, frozen=True):
    """The user's units and locale. All numbers that people see are made here.

    Values come in SI units. A duration reads "19 h 42", a clock time "Sun 00:12"; never one
    in the other's dress. What is None or not finite reads "–". Methods without a unit in
    their text say so. `translate` gives a sentence in the user's language. Where that is written
    `leftward`, a number with its unit keeps its order in it (Unicode UAX 9, isolates).
    """

    units: Literal["metric", "imperial"] = "metric"
    locale: str = "en_GB"
    translate: Callable[[str], str] = _as_written
    leftward: bool = False

    def plain(self) -> Words:
        """Return the same for what is typed over: figures and units and nothing unseen."""
        return replace(self, leftward=False) if self.leftward else self

    # Plain numbers and distances

    def number(self, value: float | None, decimals: int = 0) -> str:
        """Return a plain number, "1,240" or "12.4"."""
        text = self._bare_number(value, decimals)
        return self._in_order(text) if text[0] == "-" else text

    def _bare_number(self, value: float | None, decimals: int = 0) -> str:
        if value is None or not math.isfinite(value):
            return NONE
        text = f"{value:,.{decimals}f}"
        if text[0] == "-" and not text.strip("-0.,"):
            text = text[1:]
        marks = locales.separators(self.locale)
        if not marks.by_three and abs(value) >= 1000.0:
            return locales.grouped(value, decimals, self.locale)
        return text if marks.swap is None else text.translate(marks.swap)

    def distance(self, m: float | None, decimals: int | None = None) -> str:
        """Return "12.4 km" or "7.7 mi" (one decimal below 100, none above, unless *decimals*)."""
        return self._with_unit(self.distance_bare(m, decimals), self.distance_unit)

    def distance_bare(self, m: float | None, decimals: int | None = None) -> str:
        """Return the distance without its unit, for a column whose head names it."""
        if m is None:
            return NONE
        value = m / self.unit_m
        if decimals is None:
            decimals = 1 if abs(value) < 99.95 else 0
        return self.number(value, decimals)

    @property
    def distance_unit(self) -> str:
        """Return "km" or "mi"."""
        return "km" if self.units == "metric" else "mi"

    @property
    def unit_m(self) -> float:
        """Return the metres of one `distance_unit`."""
        return reading.M_PER_KM if self.units == "metric" else reading.M_PER_MILE

    def height(self, m: float | None) -> str:
        """Return "410 m" or "1,345 ft"."""
        return self._with_unit(self.height_bare(m), self.height_unit)

    def height_bare(self, m: float | None) -> str:
        """Return the height without its unit."""
        return NONE if m is None else self.number(m / self.height_unit_m)

    def climb_and_drop(self, climb_m: float, drop_m: float) -> str:
        """Return both, told apart where a comma may stand in a number: "1,150 / 1,150 m"."""
        return f"{self.height_bare(climb_m)} / {self.height(drop_m)}"

    @property
    def height_unit(self) -> str:
        """Return "m" or "ft"."""
        return "m" if self.units == "metric" else "ft"

    @property
    def height_unit_m(self) -> float:
        """Return the metres of one `height_unit`."""
        return 1.0 if self.units == "metric" else reading.M_PER_FOOT

    @property
    def decimal(self) -> str:
        """Return the decimal sign."""
        return locales.separators(self.locale).decimal

    # Times

    def duration(self, s: float | None) -> str:
        """Return "19 h 42", "42 min" below one hour; rounded to the minute."""
        if s is None or not math.isfinite(s):
            return NONE
        hours, minutes = divmod(reading.minutes_of(abs(s)), 60)
        sign = "-" if s < 0.0 and (hours or minutes) else ""
        return self._in_order(f"{sign}{hours} h {minutes:02d}" if hours else f"{sign}{minutes} min")

    def clock(self, at: datetime, weekday: bool = True) -> str:
        """Return "Sun 00:12", or "00:12" without *weekday*; rounded to the minute, 24-hour."""
        if at.second >= 30:
            at = _half_a_minute_later(at)
        text = f"{at.hour:02d}:{at.minute:02d}"
        return self._apart(f"{self.weekday(at.weekday())} {text}") if weekday else text

    def day(self, day: date) -> str:
        """Return "Sat 19 Jun"."""
        return self._apart(locales.day_text(day, "MMMEd", self.locale))

    def short_day(self, day: date) -> str:
        """Return "14 Feb"."""
        return self._apart(locales.day_text(day, "MMMd", self.locale))

    def day_and_year(self, day: date) -> str:
        """Return "Sat 19 Jun 2027"."""
        return self._apart(locales.day_text(day, "yMMMEd", self.locale))

    def weekday(self, weekday: int) -> str:
        """Return "Mon" for 0."""
        return locales.weekdays(self.locale)[weekday]

    def pace(self, s_per_m: float | None) -> str:
        """Return "12:51" minutes per km or mile; the unit is `pace_unit`."""
        if s_per_m is None or not math.isfinite(s_per_m):
            return NONE
        minutes, seconds = divmod(math.floor(abs(s_per_m) * self.unit_m + 0.5), 60)
        sign = "-" if s_per_m < 0.0 and (minutes or seconds) else ""
        return self._in_order(f"-{minutes}:{seconds:02d}") if sign else f"{minutes}:{seconds:02d}"

    def pace_with_unit(self, s_per_m: float | None) -> str:
        """Return "12:51 min/km"."""
        return self._with_unit(self.pace(s_per_m), self.pace_unit)

    @property
    def pace_unit(self) -> str:
        """Return "min/km" or "min/mi"."""
        return f"min/{self.distance_unit}"

    # Amounts

    def percent(self, value: float | None, decimals: int = 0) -> str:
        """Return "86 %" for 86.0."""
        return self._with_unit(self.number(value, decimals), "%")

    @property
    def temperature_unit(self) -> str:
        """Return "°C" or "°F"."""
        return "°C" if self.units == "metric" else "°F"

    def temperature_bare(self, c: float | None) -> str:
        """Return the temperature without its unit."""
        if c is None or self.units == "metric":
            return self.number(c)
        return self.number(reading.fahrenheit(c))

    def temperature(self, c: float | None) -> str:
        """Return "24 °C" or "75 °F"."""
        return self._with_unit(self.temperature_bare(c), self.temperature_unit)

    def grams(self, g: float | None) -> str:
        """Return "60 g"."""
        return self._with_unit(self.number(g), "g")

    def grams_per_hour(self, g_per_h: float | None) -> str:
        """Return "60 g/h"."""
        return self._with_unit(self.number(g_per_h), "g/h")

    def millilitres(self, ml: float | None) -> str:
        """Return "500 mL"."""
        return self._with_unit(self.number(ml), "mL")

    def litres(self, ml: float | None) -> str:
        """Return "1.7 L" for 1656 mL."""
        return self._with_unit(self.number(None if ml is None else ml / 1000.0, 1), "L")

    def milligrams(self, mg: float | None) -> str:
        """Return "400 mg"."""
        return self._with_unit(self.number(mg), "mg")

    def kilocalories(self, kcal: float | None) -> str:
        """Return "5,800 kcal"."""
        return self._with_unit(self.number(kcal), "kcal")

    def kilograms(self, kg: float | None) -> str:
        """Return "70.5 kg"."""
        return self._with_unit(self.number(kg, 1), "kg")

    def servings(self, servings: float | None) -> str:
        """Return servings without needless decimals: "2", "1.5", "0.25"."""
        if servings is None or not math.isfinite(servings):
            return NONE
        hundredths = round(servings * 100)
        return self.number(servings, 0 if not hundredths % 100 else 1 if not hundredths % 10 else 2)

    def effort(self, effort: int) -> str:
        """Return "4 of 10"."""
        return self.translate(_OF).format(effort, MOST_STEPS_OF_EFFORT)

    def climb_per_distance(self, climb_per_m: float) -> str:
        """Return "38 m per km" or "201 ft per mi"."""
        climb = self.height(climb_per_m * self.unit_m)
        return self.translate(_PER).format(climb, self.distance_unit)

    def path(self, path: object) -> str:
        """Return where a file lies, for a sentence."""
        return self._in_order(str(path))

    # Differences

    def signed(self, text: str) -> str:
        """Return *text*, made by another method here, with "+" in front if it is above zero."""
        is_zero = not any(figure in text for figure in "123456789")
        plain = reading.without_isolates(text)
        return text if is_zero or plain[0] in "-+" else self._in_order(f"+{plain}")

    # Sentences

    def quantity(self, quantity: Quantity) -> str:
        """Return one quantity with its unit."""
        value = quantity.value
        match quantity.unit:
            case "m":
                return self._way(value)
            case "height_m":
                return self.height(value)
            case "climb_per_m":
                return self.climb_per_distance(value)
            case "s":
                return self.duration(value)
            case "pace_s_per_m":
                return self._with_unit(self.pace(value), f"/{self.distance_unit}")
            case "percent":
                return self.percent(value)
            case "celsius":
                return self.temperature(value)
            case "g":
                return self.grams(value)
            case "g_per_h":
                return self.grams_per_hour(value)
            case "ml":
                return self.millilitres(value)
            case "mg":
                return self.milligrams(value)
            case "count":
                return self.number(value)

    def say(self, message: Message) -> str:
        """Return the sentence with its quantities in the user's units."""
        return self.translate(message.template).format(*(self._argument(a) for a in message.args))

    # What was typed

    def parse_number(self, text: str) -> float | None:
        """Return the number typed; point and comma are both understood."""
        return reading.read_number(text, self.decimal)

    def parse_duration(self, text: str, bare_s: float = 60.0) -> float | None:
        """Return the seconds of "19 h 42", "19:42", "42 min", "1h30"; None if it is none.

        A number alone counts *bare_s* seconds each: minutes unless said.
        """
        return reading.read_duration(text, bare_s)

    def parse_distance(self, text: str) -> float | None:
        """Return the metres of "12.4", "12.4 km", "7.7 mi", "400 m"; None if it is none."""
        return reading.read_length(text, self.unit_m, self.decimal)

    def parse_height(self, text: str) -> float | None:
        """Return the metres of "410", "410 m", "1,345 ft"; None if it is none."""
        return reading.read_length(text, self.height_unit_m, self.decimal)

    def parse_pace(self, text: str) -> float | None:
        """Return the seconds per metre of "12:51" or "12:51 /km"; None if it is none."""
        return reading.read_pace(text, self.unit_m)

    def parse_clock(self, text: str) -> time | None:
        """Return the time of day of "00:12" or "Sun 00:12"; None if it is none."""
        return reading.read_clock(text)

    # Inside

    def _argument(self, argument: Argument) -> str:
        if isinstance(argument, Quantity):
            return self.quantity(argument)
        # A name someone typed may be of another script than the sentence.
        return self._apart(str(argument)) if argument != "" else ""

    def _way(self, m: float) -> str:
        short_m = reading.M_PER_KM if self.units == "metric" else _FEET_BELOW_M
        return self.height(m) if abs(m) < short_m else self.distance(m)

    def _with_unit(self, number: str, unit: str) -> str:
        if number == NONE:
            return number
        return self._in_order(f"{reading.without_isolates(number)} {unit}")

    def _in_order(self, text: str) -> str:
        """Return *text*, figures and units, so that it runs from left to right in any sentence."""
        return f"{reading.LEFT_TO_RIGHT}{text}{reading.END}" if self.leftward else text

    def _apart(self, text: str) -> str:
        """Return *text*, which has words in it, so that it runs as they do in any sentence."""
        return f"{reading.AS_IT_BEGINS}{text}{reading.END}" if self.leftward else text


def _half_a_minute_later(at: datetime) -> datetime:
    # Through UTC, because the minute after 01:59 may be 03:00 on the race's own clock.
    later = timedelta(seconds=30)
    return at + later if at.tzinfo is None else (at.astimezone(UTC) + later).astimezone(at.tzinfo)
