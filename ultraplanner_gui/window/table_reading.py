"""What is typed into table cells, read into SI values, or refused with one sentence."""

from __future__ import annotations

import re
from datetime import date, datetime, time, timedelta
from functools import lru_cache

from ultraplanner_gui.plan.course import Offer
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError, Quantity
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.widgets.table_column import is_yes, say
from ultraplanner_gui.wording import locales
from ultraplanner_gui.wording.clocks import clock_time, names_of, split_weekday, weekday_numbers
from ultraplanner_gui.wording.words import Words

LONGEST_QUOTE = 30
FEWEST_LETTERS = 3
S_PER_MIN = 60.0

OFFERS: dict[Offer, str] = {
    Offer.WATER: QT_TRANSLATE_NOOP("Tables", "water"),
    Offer.FOOD: QT_TRANSLATE_NOOP("Tables", "food"),
    Offer.DROP_BAG: QT_TRANSLATE_NOOP("Tables", "drop bag"),
    Offer.CREW: QT_TRANSLATE_NOOP("Tables", "crew"),
    Offer.MEDICAL: QT_TRANSLATE_NOOP("Tables", "medical"),
}

_ISO = re.compile(r"(\d{4})-(\d{1,2})-(\d{1,2})")
_FIGURES = re.compile(r"(\d{1,4})[./ -]+(\d{1,2})(?:[./ -]+(\d{2,4}))?\.?")


def read_distance(text: str, words: Words) -> float:
    """Return the metres typed as a distance."""
    value = words.parse_distance(text)
    if value is None:
        raise PlanError(
            QT_TRANSLATE_NOOP("Tables", "“{0}” is not a distance. Type it as {1} or {2}."),
            _quoted(text),
            words.distance_bare(12_400.0, 1),
            words.distance(12_400.0, 1),
        )
    return value


def read_height(text: str, words: Words) -> float:
    """Return the metres typed as a climb or drop; 0 for nothing."""
    value = words.parse_height(text) if text else 0.0
    if value is None:
        raise PlanError(
            QT_TRANSLATE_NOOP("Tables", "“{0}” is not a height. Type it as {1} or {2}."),
            _quoted(text),
            words.height_bare(410.0),
            words.height(410.0),
        )
    return value


def read_duration(text: str, words: Words) -> float:
    """Return the seconds typed as a duration; a number alone is minutes."""
    value = words.parse_duration(text)
    if value is None:
        raise PlanError(
            QT_TRANSLATE_NOOP("Tables", "“{0}” is not a duration. Type 1 h 30, 1:30 or 90 min."),
            _quoted(text),
        )
    return value


def read_minutes(text: str, words: Words) -> float:
    """Return the seconds typed as minutes or a duration; 0 for nothing."""
    number = words.parse_number(text)
    if number is not None:
        return number * S_PER_MIN
    return read_duration(text, words) if text else 0.0


def read_pace(text: str, words: Words) -> float:
    """Return the seconds per metre typed as a pace."""
    value = words.parse_pace(text)
    if value is None:
        raise PlanError(
            QT_TRANSLATE_NOOP("Tables", "“{0}” is not a pace. Type it as 12:51, in {1}."),
            _quoted(text),
            words.pace_unit,
        )
    return value


def read_number(text: str, words: Words) -> float:
    """Return the number typed; 0 for nothing."""
    value = words.parse_number(text) if text else 0.0
    if value is None:
        raise PlanError(
            QT_TRANSLATE_NOOP("Tables", "“{0}” is not a number. Type figures only."), _quoted(text)
        )
    return value


def read_whole(text: str, words: Words) -> int:
    """Return the whole number typed."""
    value = read_number(text, words)
    if value != round(value):
        raise PlanError(
            QT_TRANSLATE_NOOP("Tables", "“{0}” is not a whole number. Type one without decimals."),
            _quoted(text),
        )
    return round(value)


def read_tick(text: str) -> bool:
    """Return whether yes was typed."""
    value = is_yes(text)
    if value is None:
        raise PlanError(QT_TRANSLATE_NOOP("Tables", "“{0}” is neither yes nor no."), _quoted(text))
    return value


def read_choice(text: str, choices: dict[str, str]) -> str:
    """Return the key in *choices* of the text typed, whatever its case.

    The beginning of a name will do where no other begins so.
    """
    wanted = " ".join(text.casefold().split())
    for key, name in choices.items():
        if wanted in (name.casefold(), key.casefold()):
            return key
    begun = [key for key, name in choices.items() if name.casefold().startswith(wanted)]
    if len(begun) == 1 and len(wanted) >= FEWEST_LETTERS:
        return begun[0]
    raise PlanError(
        QT_TRANSLATE_NOOP("Tables", "“{0}” is none of the choices here: {1}."),
        _quoted(text),
        _listed(tuple(choices.values())),
    )


def read_date(text: str, near: date, words: Words) -> date:
    """Return the date typed: ISO, figures in the order of the locale, or with the month's name.

    Without a year it is the one nearest to *near*. A weekday in front is passed over.
    """
    plain = _without_weekday(text, words.locale)
    found = _iso_date(plain) or _figure_date(plain, near, words) or _named_date(plain, near, words)
    if found is None:
        raise PlanError(
            QT_TRANSLATE_NOOP("Tables", "“{0}” is not a date. Type it as {1} or {2}."),
            _quoted(text),
            near.isoformat(),
            words.short_day(near),
        )
    return found


def read_race_time(text: str, race: Race, words: Words, duration_first: bool = False) -> float:
    """Return the seconds of race time typed as a clock time or a duration.

    A clock time is the first such time after the start, of the weekday named if one is.
    Figures with a colon are a clock time, with *duration_first* hours and minutes.
    """
    weekday, plain = split_weekday(text, words.locale)
    clock = clock_time(plain)
    duration = words.parse_duration(plain) if weekday is None else None
    if re.search(r"[a-z]", plain, re.IGNORECASE) and duration is not None:
        # "14 h 30" is a duration, though it could be read as a clock time.
        duration_first = True
    if duration is not None and (duration_first or clock is None):
        return duration
    if clock is None:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Tables",
                "“{0}” is neither a clock time nor a duration. Type it as {1}, {2} or 14 h 30.",
            ),
            _quoted(text),
            words.clock(race.clock(14.5 * 3600.0)),
            words.clock(race.clock(14.5 * 3600.0), weekday=False),
        )
    return first_after_start(race, clock, weekday)


def first_after_start(race: Race, at: time, weekday: int | None) -> float:
    """Return the race time at which the clock first shows *at*, on *weekday* if not None."""
    for days in range(9):
        day = race.day + timedelta(days=days)
        if weekday is not None and day.weekday() != weekday:
            continue
        for fold in (0, 1):
            moment = datetime.combine(day, at.replace(fold=fold), tzinfo=race.start.tzinfo)
            elapsed_s = race.elapsed(moment)
            if elapsed_s > 0.0:
                return elapsed_s
    raise AssertionError("every weekday comes within nine days")


def read_offers(text: str) -> tuple[Offer, ...]:
    """Return what there is at a station, typed with commas between."""
    known = {name: offer for offer in Offer for name in (offer.value, say(OFFERS[offer]))}
    found: set[Offer] = set()
    for part in re.split(r"[,;/+]", text):
        word = " ".join(part.split()).casefold()
        if not word:
            continue
        offer = known.get(word) or known.get(word.removesuffix("s"))
        if offer is None:
            raise PlanError(
                QT_TRANSLATE_NOOP("Tables", "“{0}” is not known. There can be {1}."),
                _quoted(part.strip()),
                _listed(tuple(say(name) for name in OFFERS.values())),
            )
        found.add(offer)
    return tuple(offer for offer in Offer if offer in found)


def offers_text(offers: tuple[Offer, ...]) -> str:
    """Return what there is, in one order and with commas between."""
    return ", ".join(say(OFFERS[offer]) for offer in Offer if offer in offers)


def hours_and_minutes(s: float | None) -> str:
    """Return seconds as a spreadsheet takes a duration, "19:42"; nothing for none."""
    if s is None:
        return ""
    hours, minutes = divmod(round(abs(s) / S_PER_MIN), 60)
    return f"{'-' if s < 0 and (hours or minutes) else ''}{hours}:{minutes:02d}"


def check_within(at_m: float, length_m: float) -> float:
    """Return *at_m*; PlanError if it does not lie between start and finish."""
    if not 0.0 < at_m < length_m:
        raise PlanError(
            QT_TRANSLATE_NOOP("Tables", "That is off the course, which is {0} long."),
            Quantity(length_m, "m"),
        )
    return at_m


def _quoted(text: str) -> str:
    plain = " ".join(text.split())
    return plain if len(plain) <= LONGEST_QUOTE else plain[: LONGEST_QUOTE - 1] + "…"


def _listed(names: tuple[str, ...]) -> str:
    text = ", ".join(names)
    return text if len(text) <= 90 else text[:89].rsplit(",", 1)[0] + ", …"


def _iso_date(text: str) -> date | None:
    found = _ISO.fullmatch(text)
    return _date(*(int(part) for part in found.groups())) if found else None


def _figure_date(text: str, near: date, words: Words) -> date | None:
    found = _FIGURES.fullmatch(text)
    if found is None:
        return None
    first, second, year = found.groups()
    day, month = (second, first) if _is_month_first(words.locale) else (first, second)
    return _with_year(int(day), int(month), year, near)


def _named_date(text: str, near: date, words: Words) -> date | None:
    parts = [part for part in re.split(r"[\s.,/-]+", text.casefold()) if part]
    months, names = _months(words.locale), [p for p in parts if not p.isdigit()]
    figures = [part for part in parts if part.isdigit()]
    known = [months[name] for name in names if name in months]
    if len(known) != 1 or len(names) > 2 or not 1 <= len(figures) <= 2:
        return None
    day = next((f for f in figures if len(f) <= 2), "0")
    rest = [f for f in figures if f is not day]
    return _with_year(int(day), known[0], rest[0] if rest else None, near)


def _with_year(day: int, month: int, year: str | None, near: date) -> date | None:
    if year is not None:
        return _date(int(year) + (2000 if len(year) == 2 else 0), month, day)
    dates = (_date(near.year + step, month, day) for step in (-1, 0, 1))
    known = [d for d in dates if d is not None]
    return min(known, key=lambda d: abs(d - near)) if known else None


def _date(year: int, month: int, day: int) -> date | None:
    try:
        return date(year, month, day)
    except ValueError:
        return None


def _without_weekday(text: str, locale: str) -> str:
    plain = " ".join(text.split())
    first, _, rest = plain.partition(" ")
    is_weekday = first.rstrip(".,").casefold() in weekday_numbers(locale)
    return rest if rest and is_weekday else plain


@lru_cache(maxsize=8)
def _months(name: str) -> dict[str, int]:
    return names_of(locales.FALLBACK, "months", 1) | names_of(name, "months", 1)


@lru_cache(maxsize=8)
def _is_month_first(name: str) -> bool:
    pattern = locales.known_locale(name).date_formats["short"].pattern
    return pattern.find("M") < pattern.find("d")
