"""What stands on each card, as finished text: no figure is worked out or worded after this."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import pairwise
from typing import Literal

import numpy as np

from ultraplanner_gui.engine.fuelling import FuelFigures, LegFuel
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.cards import CardKind
from ultraplanner_gui.plan.course import Offer
from ultraplanner_gui.plan.fuel import Shape
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Argument, PlanError, message
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.wording.cautions import STANDING
from ultraplanner_gui.wording.words import NONE, Words

LATE_S = 1800.0
LEAST_STOP_S = 30.0
PROFILE_BINS = 160
LEAST_RELIEF_M = 100.0
"""A course with less relief than this is not drawn as if it were mountains."""

LOOSE = (Shape.DRINK, Shape.SOLID)
"""Foods of which one is not what a packet holds."""

Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Clock:
    """A time of day; `day` is named only where it is not the day of the planned arrival."""

    time: str
    day: str = ""


@dataclass(frozen=True, slots=True)
class PaceRow:
    """One place on the way. Empty `stop` means none is planned."""

    name: str
    distance: str
    climb_drop: str
    pace: str
    on_plan: str
    stop: str
    in_hand: str
    late: Clock
    last: Clock
    cutoff: Clock
    stop_label: str = ""


@dataclass(frozen=True, slots=True)
class PaceHeads:
    """The heads of the columns; an empty one means that the card has no such column."""

    name: str
    distance: str
    climb_drop: str
    pace: str
    on_plan: str
    stop: str
    in_hand: str
    late: str
    last: str
    cutoff: str


@dataclass(frozen=True, slots=True)
class Shade:
    """A stretch without daylight, as shares of the distance."""

    start: float
    end: float
    kind: Literal["twilight", "dark"]


@dataclass(frozen=True, slots=True)
class Sketch:
    """The small profile: distance and height from 0 to 1, stations and the dark along the way."""

    line: tuple[Point, ...]
    stations: tuple[float, ...]
    shades: tuple[Shade, ...]
    highest: str
    lowest: str
    dark: str


@dataclass(frozen=True, slots=True)
class Turning:
    """What says that a card goes on: "1 of 2" and "continued on 2 of 2"."""

    page: str
    goes_on: str


@dataclass(frozen=True, slots=True)
class PaceCard:
    """When to be where."""

    title: str
    subtitle: str
    sketch: Sketch
    heads: PaceHeads
    rows: tuple[PaceRow, ...]
    notes: tuple[str, ...]
    turning: Turning


@dataclass(frozen=True, slots=True)
class FuelRow:
    """What to eat and drink from one aid station to the next; `marks` is what waits there."""

    name: str
    marks: tuple[str, ...]
    time: str
    foods: tuple[str, ...]
    carbs: str
    rate: str
    fluid: str


@dataclass(frozen=True, slots=True)
class FuelCard:
    """What to take on each leg."""

    title: str
    subtitle: str
    rows: tuple[FuelRow, ...]
    total: FuelRow | None
    notes: tuple[str, ...]
    turning: Turning


CardContent = PaceCard | FuelCard


def card_content(kind: CardKind, outlook: Outlook, words: Words) -> CardContent:
    """Return the content of the card *kind*; PlanError without a course."""
    return pace_card(outlook, words) if kind is CardKind.PACE else fuel_card(outlook, words)


def pace_card(outlook: Outlook, words: Words) -> PaceCard:
    """Return the pace card; PlanError without a course."""
    profile, target = _race_figures(outlook)
    race = outlook.project.race
    rows = tuple(_pace_row(outlook, section, words) for section in outlook.sections)
    return PaceCard(
        title=race.name,
        subtitle=_say(
            words,
            QT_TRANSLATE_NOOP("Cards", "start {0} · target {1}"),
            words.clock(race.start),
            words.duration(target.finish_s),
        ),
        sketch=_sketch(outlook, profile, target, words),
        heads=_pace_heads(outlook, rows, words),
        rows=rows,
        notes=tuple(_pace_notes(outlook, words)),
        turning=_turning(words),
    )


def fuel_card(outlook: Outlook, words: Words) -> FuelCard:
    """Return the fuel card; PlanError without a course."""
    _, target = _race_figures(outlook)
    fuel = outlook.fuel
    if fuel is None:
        raise _no_course()
    name = outlook.project.race.name
    said = _servings(outlook, fuel, words) if outlook.project.fuel.items else _say(words, _NO_FOOD)
    return FuelCard(
        title=_say(words, QT_TRANSLATE_NOOP("Cards", "Fuel")),
        subtitle=name,
        rows=tuple(_fuel_rows(outlook, fuel, words)),
        total=_fuel_total(fuel, target.finish_s, words),
        notes=tuple(note for note in (said, _say(words, STANDING)) if note),
        turning=_turning(words),
    )


_NO_FOOD = QT_TRANSLATE_NOOP("Cards", "No food is placed yet. Place some on the race day lanes.")


def _say(words: Words, template: str, *args: Argument) -> str:
    return words.say(message(template, *args))


def _no_course() -> PlanError:
    return PlanError(
        QT_TRANSLATE_NOOP("Cards", "There is no course yet. Open a GPX file, then make the cards.")
    )


def _race_figures(outlook: Outlook) -> tuple[Profile, PacePlan]:
    if outlook.profile is None or outlook.target is None or not outlook.sections:
        raise _no_course()
    return outlook.profile, outlook.target


def _turning(words: Words) -> Turning:
    return Turning(
        page=words.translate(QT_TRANSLATE_NOOP("Cards", "{0} of {1}")),
        goes_on=words.translate(QT_TRANSLATE_NOOP("Cards", "continued on {0} of {1}")),
    )


# The pace card


def _pace_row(outlook: Outlook, section: SectionFigures, words: Words) -> PaceRow:
    race = outlook.project.race
    plan = _nearest_minute(race, section.arrive_s)
    stop_s = section.leave_s - section.arrive_s
    has_heights = outlook.profile is not None and outlook.profile.has_elevation
    last_s = None if section.in_hand_s is None else section.arrive_s + section.in_hand_s
    stop = words.duration(stop_s) if stop_s >= LEAST_STOP_S else ""
    return PaceRow(
        name=_end_name(section, words),
        distance=words.distance_bare(section.end_m, 1),
        climb_drop=_climb_drop(section, words) if has_heights else "",
        pace=words.pace(section.pace_s_per_m),
        on_plan=words.clock(plan),
        stop=stop,
        in_hand=words.duration(section.in_hand_s),
        late=_clock(_nearest_minute(race, section.arrive_s + LATE_S), plan, words),
        last=_latest(race, last_s, plan, words),
        cutoff=_latest(race, section.cutoff_s, plan, words),
        stop_label=_say(words, QT_TRANSLATE_NOOP("Cards", "stop {0}"), stop) if stop else "",
    )


def _end_name(section: SectionFigures, words: Words) -> str:
    return section.name or _say(words, QT_TRANSLATE_NOOP("Cards", "Finish"))


def _climb_drop(section: SectionFigures, words: Words) -> str:
    return f"{words.height_bare(section.climb_m)} · {words.height_bare(section.drop_m)}"


def _nearest_minute(race: Race, elapsed_s: float) -> datetime:
    return _whole_minute(race.clock(elapsed_s + 30.0))


def _whole_minute(at: datetime) -> datetime:
    return at - timedelta(seconds=at.second, microseconds=at.microsecond)


def _clock(at: datetime, plan: datetime, words: Words) -> Clock:
    day = "" if at.date() == plan.date() else words.weekday(at.weekday())
    return Clock(words.clock(at, weekday=False), day)


def _latest(race: Race, elapsed_s: float | None, plan: datetime, words: Words) -> Clock:
    # Rounded down: a latest time must not be read as half a minute later than it is. The
    # thousandth keeps a whole minute whole when a sum of floats falls just short of it.
    if elapsed_s is None:
        return Clock(NONE)
    return _clock(_whole_minute(race.clock(elapsed_s + 1e-3)), plan, words)


def _pace_heads(outlook: Outlook, rows: tuple[PaceRow, ...], words: Words) -> PaceHeads:
    has_cutoffs = any(s.cutoff_s is not None for s in outlook.sections)
    has_heights = any(row.climb_drop for row in rows)
    heads = {
        "in_hand": QT_TRANSLATE_NOOP("Cards", "in hand"),
        "last": QT_TRANSLATE_NOOP("Cards", "last"),
        "cutoff": QT_TRANSLATE_NOOP("Cards", "cutoff"),
    }
    with_cutoffs = {k: words.translate(v) if has_cutoffs else "" for k, v in heads.items()}
    climb_drop = QT_TRANSLATE_NOOP("Cards", "climb · drop\u00a0{0}")
    stop = words.translate(QT_TRANSLATE_NOOP("Cards", "stop"))
    return PaceHeads(
        name=words.translate(QT_TRANSLATE_NOOP("Cards", "to")),
        distance=words.distance_unit,
        climb_drop=_say(words, climb_drop, words.height_unit) if has_heights else "",
        pace=words.pace_unit,
        on_plan=words.translate(QT_TRANSLATE_NOOP("Cards", "on plan")),
        stop=stop if any(row.stop for row in rows) else "",
        late=words.translate(QT_TRANSLATE_NOOP("Cards", "30 late")),
        **with_cutoffs,
    )


def _pace_notes(outlook: Outlook, words: Words) -> Iterator[str]:
    if outlook.trouble is not None:
        yield words.say(outlook.trouble)
    missed = _first_missed(outlook, 0.0)
    missed_late = _first_missed(outlook, LATE_S)
    if missed is not None:
        yield _say(
            words,
            QT_TRANSLATE_NOOP("Cards", "This plan misses the cutoff at {0}."),
            _end_name(missed, words),
        )
    elif missed_late is not None:
        yield _say(
            words,
            QT_TRANSLATE_NOOP("Cards", "30 min late misses the cutoff at {0}."),
            _end_name(missed_late, words),
        )
    if outlook.profile is not None and not outlook.profile.has_elevation:
        yield _say(words, _NO_HEIGHTS)
    if any(s.in_hand_s is not None for s in outlook.sections):
        yield _say(words, _LAST_MEANS)


_NO_HEIGHTS = QT_TRANSLATE_NOOP("Cards", "The course has no heights: paced as level ground.")
_LAST_MEANS = QT_TRANSLATE_NOOP(
    "Cards", "last: every cutoff from here on is still met at planned speed"
)


def _first_missed(outlook: Outlook, late_s: float) -> SectionFigures | None:
    return next(
        (s for s in outlook.sections if s.to_cutoff_s is not None and s.to_cutoff_s < late_s),
        None,
    )


def _sketch(outlook: Outlook, profile: Profile, target: PacePlan, words: Words) -> Sketch:
    has_heights = profile.has_elevation
    return Sketch(
        line=_profile_line(profile) if has_heights else (),
        stations=tuple(s.end_m / profile.length_m for s in outlook.sections[:-1]),
        shades=_shades(outlook, target, profile.length_m),
        highest=words.height(float(profile.elevation_m.max())) if has_heights else "",
        lowest=words.height(float(profile.elevation_m.min())) if has_heights else "",
        dark=words.translate(QT_TRANSLATE_NOOP("Cards", "dark")),
    )


def _shades(outlook: Outlook, target: PacePlan, length_m: float) -> tuple[Shade, ...]:
    return tuple(
        Shade(
            target.distance_at(span.start_s) / length_m,
            target.distance_at(span.end_s) / length_m,
            span.kind,
        )
        for span in outlook.light
        if span.kind != "day"
    )


def _profile_line(profile: Profile) -> tuple[Point, ...]:
    """Return the profile with the lowest and the highest point of each bin kept."""
    x = profile.distance_m / profile.length_m
    low = float(profile.elevation_m.min())
    relief = max(float(profile.elevation_m.max()) - low, LEAST_RELIEF_M)
    y = (profile.elevation_m - low) / relief
    edges = np.linspace(0, len(x) - 1, min(PROFILE_BINS, len(x) - 1) + 1).astype(int)
    kept = {0, len(x) - 1}
    for start, end in pairwise(edges.tolist()):
        part = y[start : end + 1]
        kept.update((start + int(part.argmin()), start + int(part.argmax())))
    return tuple((float(x[k]), float(y[k])) for k in sorted(kept))


# The fuel card


def _fuel_rows(outlook: Outlook, fuel: FuelFigures, words: Words) -> Iterator[FuelRow]:
    nothing = words.translate(QT_TRANSLATE_NOOP("Cards", "nothing planned"))
    for number, leg in enumerate(fuel.legs):
        name = leg.name or _say(words, QT_TRANSLATE_NOOP("Cards", "Finish"))
        way = (
            QT_TRANSLATE_NOOP("Cards", "Start → {0}")
            if number == 0
            else QT_TRANSLATE_NOOP("Cards", "→ {0}")
        )
        yield FuelRow(
            name=_say(words, way, name),
            marks=tuple(_marks(outlook, leg, words)),
            time=words.duration(leg.end_s - leg.start_s),
            foods=tuple(_foods(outlook, leg, words)) or (nothing,),
            carbs=words.grams(leg.intake.carb_g),
            rate=words.grams_per_hour(leg.carb_g_per_h),
            fluid=words.litres(leg.intake.fluid_ml),
        )


def _marks(outlook: Outlook, leg: LegFuel, words: Words) -> Iterator[str]:
    course = outlook.project.course
    if course is None or leg.station is None:
        return
    offers = course.station(leg.station).offers
    if Offer.DROP_BAG in offers:
        yield words.translate(QT_TRANSLATE_NOOP("Cards", "BAG"))
    if Offer.CREW in offers:
        yield words.translate(QT_TRANSLATE_NOOP("Cards", "CREW"))


def _foods(outlook: Outlook, leg: LegFuel, words: Words) -> Iterator[str]:
    for key, servings in leg.counts:
        food = outlook.project.fuel.food(key)
        text = f"{words.servings(servings)} × {food.name}"
        clocks = _clocks(outlook, leg, key, words) if food.caffeine_mg else ""
        yield (
            _say(words, QT_TRANSLATE_NOOP("Cards", "{0} at {1}"), text, clocks) if clocks else text
        )


def _clocks(outlook: Outlook, leg: LegFuel, food: str, words: Words) -> str:
    items = (outlook.project.fuel.item(key) for key in leg.items)
    race = outlook.project.race
    return ", ".join(words.clock(race.clock(i.at_s)) for i in items if i.food == food)


def _servings(outlook: Outlook, fuel: FuelFigures, words: Words) -> str:
    """Return what one of each food is, for those that do not come in packets."""
    keys = dict.fromkeys(key for leg in fuel.legs for key, _ in leg.counts)
    foods = [outlook.project.fuel.food(key) for key in keys]
    texts = [f"{f.name}: {f.serving}" for f in foods if f.serving and f.shape in LOOSE]
    return _say(words, QT_TRANSLATE_NOOP("Cards", "1 × {0}"), "; ".join(texts)) if texts else ""


def _fuel_total(fuel: FuelFigures, finish_s: float, words: Words) -> FuelRow | None:
    if len(fuel.legs) < 2:
        return None
    return FuelRow(
        name=_say(words, QT_TRANSLATE_NOOP("Cards", "Whole race")),
        marks=(),
        time=words.duration(finish_s),
        foods=(),
        carbs=words.grams(fuel.total.carb_g),
        rate=words.grams_per_hour(fuel.total.carb_g * 3600.0 / finish_s),
        fluid=words.litres(fuel.total.fluid_ml),
    )
