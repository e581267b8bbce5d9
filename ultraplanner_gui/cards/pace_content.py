"""What stands on the pace card, as finished text."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import pairwise
from typing import Literal

import numpy as np

from ultraplanner_gui.cards.card_words import Turning, end_name, race_figures, say, turning
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.engine.profile import Profile
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.wording.words import NONE, Words

LATE_S = 1800.0
LEAST_STOP_S = 30.0
PROFILE_BINS = 160
LEAST_RELIEF_M = 100.0
"""A course with less relief than this is not drawn as if it were mountains."""

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
class PaceCard:
    """When to be where."""

    title: str
    subtitle: str
    sketch: Sketch
    heads: PaceHeads
    rows: tuple[PaceRow, ...]
    warnings: tuple[str, ...]
    notes: tuple[str, ...]
    turning: Turning


def pace_card(outlook: Outlook, words: Words) -> PaceCard:
    """Return the pace card; PlanError without a course."""
    profile, target = race_figures(outlook)
    race = outlook.project.race
    rows = tuple(_pace_row(outlook, section, words) for section in outlook.sections)
    return PaceCard(
        title=race.name,
        subtitle=say(
            words,
            QT_TRANSLATE_NOOP("Cards", "start {0} · target {1}"),
            words.clock(race.start),
            words.duration(target.finish_s),
        ),
        sketch=_sketch(outlook, profile, target, words),
        heads=_pace_heads(outlook, rows, words),
        rows=rows,
        warnings=tuple(_pace_warnings(outlook, words)),
        notes=(say(words, _LAST_MEANS),) if _has_cutoffs(outlook) else (),
        turning=turning(words),
    )


def _pace_row(outlook: Outlook, section: SectionFigures, words: Words) -> PaceRow:
    race = outlook.project.race
    plan = _nearest_minute(race, section.arrive_s)
    stop_s = section.leave_s - section.arrive_s
    has_heights = outlook.profile is not None and outlook.profile.has_elevation
    last_s = None if section.in_hand_s is None else section.arrive_s + section.in_hand_s
    stop = words.duration(stop_s) if stop_s >= LEAST_STOP_S else ""
    return PaceRow(
        name=_place(outlook, section, words),
        distance=words.distance_bare(section.end_m, 1),
        climb_drop=_climb_drop(section, words) if has_heights else "",
        pace=words.pace(section.pace_s_per_m),
        on_plan=words.clock(plan),
        stop=stop,
        in_hand=words.duration(section.in_hand_s),
        late=_clock(_nearest_minute(race, section.arrive_s + LATE_S), plan, words),
        last=_latest(race, last_s, plan, words),
        cutoff=_latest(race, section.cutoff_s, plan, words),
        stop_label=say(words, QT_TRANSLATE_NOOP("Cards", "stop {0}"), stop) if stop else "",
    )


def _place(outlook: Outlook, section: SectionFigures, words: Words) -> str:
    """Return the name of where *section* ends: a free end goes by its distance."""
    if section.station is None and section is not outlook.sections[-1]:
        return words.distance(section.end_m, 1)
    return end_name(section.name, words)


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
    has_cutoffs = _has_cutoffs(outlook)
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
        climb_drop=say(words, climb_drop, words.height_unit) if has_heights else "",
        pace=words.pace_unit,
        on_plan=words.translate(QT_TRANSLATE_NOOP("Cards", "on plan")),
        stop=stop if any(row.stop for row in rows) else "",
        late=words.translate(QT_TRANSLATE_NOOP("Cards", "30 late")),
        **with_cutoffs,
    )


def _pace_warnings(outlook: Outlook, words: Words) -> Iterator[str]:
    if outlook.trouble is not None:
        yield words.say(outlook.trouble)
    missed = _first_missed(outlook, 0.0)
    missed_late = _first_missed(outlook, LATE_S)
    if missed is not None:
        yield say(
            words,
            QT_TRANSLATE_NOOP("Cards", "This plan misses the cutoff at {0}."),
            _place(outlook, missed, words),
        )
    elif missed_late is not None:
        yield say(
            words,
            QT_TRANSLATE_NOOP("Cards", "30 min late misses the cutoff at {0}."),
            _place(outlook, missed_late, words),
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
