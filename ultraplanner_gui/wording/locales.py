"""What a locale says about numbers and names of days, looked up once and kept."""

from __future__ import annotations

import re
from datetime import date
from functools import lru_cache

from babel import Locale, UnknownLocaleError
from babel.dates import format_date, format_skeleton
from babel.numbers import format_decimal, parse_pattern

from ultraplanner_gui.plan.value import Value

FALLBACK = "en_GB"
LETTER_TERRITORIES = frozenset(
    ("BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE")
)
NO_BREAK = "\u00a0"


class Separators(Value, frozen=True):
    """How a locale writes numbers; `swap` turns "1,240.5" into its own form."""

    decimal: str
    group: str
    swap: dict[int, str] | None
    by_three: bool


@lru_cache(maxsize=32)
def known_locale(name: str) -> Locale:
    """Return the locale *name*, or British English if nothing is known about it."""
    try:
        return Locale.parse(name.replace("-", "_"))
    except (UnknownLocaleError, ValueError):
        return Locale.parse(FALLBACK)


@lru_cache(maxsize=32)
def separators(name: str) -> Separators:
    """Return the separators of the locale *name*, always with the figures 0 to 9."""
    locale = known_locale(name)
    symbols = locale.number_symbols["latn"]
    decimal, group = symbols["decimal"], _drawable(symbols["group"])
    plain = (decimal, group) == (".", ",")
    grouping = parse_pattern(locale.decimal_formats[None]).grouping
    swap = None if plain else {ord("."): decimal, ord(","): group}
    return Separators(decimal, group, swap, grouping == (3, 3))


def grouped(value: float, decimals: int, name: str) -> str:
    """Return *value* as a locale writes it that does not group by thousands alone."""
    pattern = known_locale(name).decimal_formats[None].pattern.split(".")[0]
    pattern += "." + "0" * decimals if decimals else ""
    # Rounded first, half away from zero or to even alike, so that every locale says the same.
    rounded = float(f"{value:.{decimals}f}")
    text = format_decimal(rounded, pattern, known_locale(name), numbering_system="latn")
    return _drawable(re.sub(r"^[^\d]+", "-", text))


@lru_cache(maxsize=32)
def weekdays(name: str) -> tuple[str, ...]:
    """Return the short names of Monday to Sunday."""
    names = known_locale(name).days["stand-alone"]["abbreviated"]
    return tuple(names[day] for day in range(7))


@lru_cache(maxsize=4096)
def day_text(day: date, skeleton: str, name: str) -> str:
    """Return *day* with the fields of *skeleton* in the order of the locale."""
    locale = known_locale(name)
    if skeleton in locale.datetime_skeletons:
        return _drawable(format_skeleton(skeleton, day, locale=locale))
    return _drawable(format_date(day, "E d MMM y", locale=locale))


def uses_letter(name: str) -> bool:
    """Whether the everyday paper where *name* is spoken is Letter; A4 where it is not.

    Territories: CLDR, supplemental measurement data, paperSize US-Letter.
    """
    return known_locale(name).territory in LETTER_TERRITORIES


def _drawable(text: str) -> str:
    # The fonts the program brings have the no-break space but not the narrow one.
    return text.replace("\u202f", NO_BREAK).replace("\u2009", NO_BREAK)
