"""What stands on the pace card, as finished text."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime
from itertools import pairwise
from typing import Literal

import numpy as np

from ultraplanner_gui.cards.card_words import Turning, race_figures, say, turning
from ultraplanner_gui.cards.station_words import (
    is_departure,
    latest_minute,
    nearest_minute,
    place_name,
    station_of,
    what_to_do,
)
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.cards import Card, CardKind, CardPart
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.wording.words import NONE, Words

LATE_S = 1800.0
LEAST_STOP_S = 30.0
WHOLE_CARD = Card(CardKind.PACE)
PROFILE_BINS = 160
LEAST_RELIEF_M = 100.0
"""A course with less relief than this is not drawn as if it were mountains."""

Point = tuple[float, float]


class Clock(Value, frozen=True):
    """A time of day; `day` is named only where it is not the day of the planned arrival."""

    time: str
    day: str = ""


class PaceRow(Value, frozen=True):
    """One place on the way. Empty `stop` means none is planned, `there` nothing to do there.

    `cutoff_word` says "leave by" where the cutoff is for leaving.
    """

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
    cutoff_word: str = ""
    there: str = ""


class PaceHeads(Value, frozen=True):
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
    there: str = ""


class Shade(Value, frozen=True):
    """A stretch without daylight, as shares of the distance."""

    start: float
    end: float
    kind: Literal["twilight", "dark"]


class Sketch(Value, frozen=True):
    """The small profile: distance and height from 0 to 1, stations and the dark along the way."""

    line: tuple[Point, ...]
    stations: tuple[float, ...]
    shades: tuple[Shade, ...]
    highest: str
    lowest: str
    dark: str
    leftward: bool = False
    """Whether the card around it is turned, and it is not."""


class PaceCard(Value, frozen=True):
    """When to be where."""

    title: str
    subtitle: str
    sketch: Sketch
    heads: PaceHeads
    rows: tuple[PaceRow, ...]
    warnings: tuple[str, ...]
    notes: tuple[str, ...]
    turning: Turning


def pace_card(outlook: Outlook, words: Words, card: Card = WHOLE_CARD) -> PaceCard:
    """Return the pace card; PlanError without a course."""
    profile, target = race_figures(outlook)
    race = outlook.project.race
    rows = tuple(_pace_row(outlook, section, words, card) for section in outlook.sections)
    has_last = _has_cutoffs(outlook) and card.has(CardPart.LAST)
    return PaceCard(
        title=race.name,
        subtitle=say(
            words,
            QT_TRANSLATE_NOOP("Cards", "start {0} · target {1}"),
            words.clock(race.start),
            words.duration(target.finish_s),
        ),
        sketch=_sketch(outlook, profile, target, words, card),
        heads=_pace_heads(outlook, rows, words, card),
        rows=rows,
        warnings=tuple(_pace_warnings(outlook, words)),
        notes=(say(words, _LAST_MEANS),) if has_last else (),
        turning=turning(words),
    )


def _pace_row(outlook: Outlook, section: SectionFigures, words: Words, card: Card) -> PaceRow:
    race, station = outlook.project.race, station_of(outlook, section)
    plan = nearest_minute(race, section.arrive_s)
    stop_s = section.leave_s - section.arrive_s
    profile = outlook.profile
    has_heights = profile is not None and profile.has_elevation and card.has(CardPart.CLIMB)
    last_s = None if section.in_hand_s is None else section.arrive_s + section.in_hand_s
    has_stop = stop_s >= LEAST_STOP_S and card.has(CardPart.STOP)
    stop = words.duration(stop_s) if has_stop else ""
    return PaceRow(
        name=place_name(outlook, section, words),
        distance=words.distance_bare(section.end_m, 1),
        climb_drop=_climb_drop(section, words) if has_heights else "",
        pace=words.pace(section.pace_s_per_m),
        on_plan=words.clock(plan),
        stop=stop,
        in_hand=words.duration(section.in_hand_s),
        late=_clock(nearest_minute(race, section.arrive_s + LATE_S), plan, words),
        last=_latest(race, last_s, plan, words),
        cutoff=_latest(race, section.cutoff_s, plan, words),
        stop_label=say(words, QT_TRANSLATE_NOOP("Cards", "stop {0}"), stop) if stop else "",
        cutoff_word=words.translate(_LEAVE_BY) if is_departure(station) else "",
        there=what_to_do(station, words) if station and card.has(CardPart.THERE) else "",
    )


_LEAVE_BY = QT_TRANSLATE_NOOP("Cards", "leave by")


def _climb_drop(section: SectionFigures, words: Words) -> str:
    return f"{words.height_bare(section.climb_m)} · {words.height_bare(section.drop_m)}"


def _clock(at: datetime, plan: datetime, words: Words) -> Clock:
    day = "" if at.date() == plan.date() else words.weekday(at.weekday())
    return Clock(words.clock(at, weekday=False), day)


def _latest(race: Race, elapsed_s: float | None, plan: datetime, words: Words) -> Clock:
    return Clock(NONE) if elapsed_s is None else _clock(latest_minute(race, elapsed_s), plan, words)


def _pace_heads(outlook: Outlook, rows: tuple[PaceRow, ...], words: Words, card: Card) -> PaceHeads:
    has_cutoffs = _has_cutoffs(outlook)
    has_heights = any(row.climb_drop for row in rows)
    heads = {
        "in_hand": QT_TRANSLATE_NOOP("Cards", "in hand"),
        "last": QT_TRANSLATE_NOOP("Cards", "last"),
        "cutoff": QT_TRANSLATE_NOOP("Cards", "cutoff"),
    }
    shown = {k: has_cutoffs and card.has(part) for k, part in _CUTOFF_PARTS.items()}
    with_cutoffs = {
        k: words.translate(v) if shown.get(k, has_cutoffs) else "" for k, v in heads.items()
    }
    late = words.translate(QT_TRANSLATE_NOOP("Cards", "30 late"))
    climb_drop = QT_TRANSLATE_NOOP("Cards", "climb · drop\u00a0{0}")
    stop = words.translate(QT_TRANSLATE_NOOP("Cards", "stop"))
    return PaceHeads(
        name=words.translate(QT_TRANSLATE_NOOP("Cards", "to")),
        distance=words.distance_unit,
        climb_drop=say(words, climb_drop, words.height_unit) if has_heights else "",
        pace=words.pace_unit if card.has(CardPart.PACE) else "",
        on_plan=words.translate(QT_TRANSLATE_NOOP("Cards", "on plan")),
        stop=stop if any(row.stop for row in rows) else "",
        late=late if card.has(CardPart.LATE) else "",
        there=words.translate(QT_TRANSLATE_NOOP("Cards", "there")),
        **with_cutoffs,
    )


_CUTOFF_PARTS = {"in_hand": CardPart.IN_HAND, "last": CardPart.LAST}


def _pace_warnings(outlook: Outlook, words: Words) -> Iterator[str]:
    if outlook.trouble is not None:
        yield words.say(outlook.trouble)
    missed = _first_missed(outlook, 0.0)
    missed_late = _first_missed(outlook, LATE_S)
    if missed is not None:
        yield say(
            words,
            QT_TRANSLATE_NOOP("Cards", "This plan misses the cutoff at {0}."),
            place_name(outlook, missed, words),
        )
    elif missed_late is not None:
        yield say(
            words,
            QT_TRANSLATE_NOOP("Cards", "30 min late misses the cutoff at {0}."),
            place_name(outlook, missed_late, words),
        )
    if outlook.profile is not None and not outlook.profile.has_elevation:
        yield say(words, _NO_HEIGHTS)


_NO_HEIGHTS = QT_TRANSLATE_NOOP("Cards", "The course has no heights: paced as level ground.")
_LAST_MEANS = QT_TRANSLATE_NOOP(
    "Cards", "last: every cutoff from here on is still met at planned speed"
)


def _has_cutoffs(outlook: Outlook) -> bool:
    return any(s.cutoff_s is not None for s in outlook.sections)


def _first_missed(outlook: Outlook, late_s: float) -> SectionFigures | None:
    return next(
        (s for s in outlook.sections if s.to_cutoff_s is not None and s.to_cutoff_s < late_s),
        None,
    )


def _sketch(
    outlook: Outlook, profile: Profile, target: PacePlan, words: Words, card: Card
) -> Sketch:
    if not card.has(CardPart.PROFILE):
        return Sketch((), (), (), "", "", "")
    has_heights = profile.has_elevation
    return Sketch(
        line=_profile_line(profile) if has_heights else (),
        stations=tuple(s.end_m / profile.length_m for s in outlook.sections[:-1]),
        shades=_shades(outlook, target, profile.length_m),
        highest=words.height(float(profile.elevation_m.max())) if has_heights else "",
        lowest=words.height(float(profile.elevation_m.min())) if has_heights else "",
        dark=words.translate(QT_TRANSLATE_NOOP("Cards", "dark")),
        leftward=words.leftward,
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
