"""What stands on strips, on the wrist or folded by the leg, as finished text."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np

from ultraplanner_gui.cards.card_words import Turning, race_figures, turning
from ultraplanner_gui.cards.fuel_content import FuelCard
from ultraplanner_gui.cards.pace_content import Clock, PaceCard, Shade
from ultraplanner_gui.cards.station_words import DOT
from ultraplanner_gui.engine.fuelling import LegFuel
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.fuel import Shape
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.wording.words import NONE, Words

STEPS = 120


class StripRow(Value, frozen=True):
    """One line along the strip: its head, a cell to each place; `is_figure` is looked for first."""

    head: str
    cells: tuple[str, ...]
    is_figure: bool = False


class WristStrip(Value, frozen=True):
    """Places side by side, their figures under them."""

    title: str
    names: tuple[str, ...]
    rows: tuple[StripRow, ...]
    turning: Turning


class Bite(Value, frozen=True):
    """A food on the ground of a leg: where, as a share of it, and what it is to hold."""

    at: float
    shape: Shape


class Leg(Value, frozen=True):
    """One fold of a concertina: a leg with its ground, from 0 to 1 each way, and its foods."""

    name: str
    on_plan: str
    lines: tuple[str, ...]
    ground: tuple[tuple[float, float], ...]
    gradients: tuple[float, ...]
    bites: tuple[Bite, ...]
    foods: tuple[str, ...]
    shades: tuple[Shade, ...]


class Concertina(Value, frozen=True):
    """All legs in their order; `marks` say what the shapes on the ground are."""

    title: str
    legs: tuple[Leg, ...]
    turning: Turning
    marks: tuple[tuple[Shape, str], ...]


def wrist_strip(pace: PaceCard, fuel: FuelCard | None, outlook: Outlook) -> WristStrip:
    """Return the strip with the figures of *pace*, and what to carry where *fuel* says it."""
    heads, rows = pace.heads, pace.rows
    lines = [
        StripRow(heads.distance, tuple(r.distance for r in rows)),
        *_days(pace),
        StripRow(heads.on_plan, tuple(_time(r.on_plan) for r in rows), is_figure=True),
    ]
    if heads.late:
        lines.append(StripRow(heads.late, tuple(_clock(r.late) for r in rows)))
    if heads.last:
        lines.append(StripRow(heads.last, tuple(_clock(r.last) for r in rows)))
    if heads.cutoff:
        lines.append(StripRow(heads.cutoff, tuple(_cutoff(r.cutoff, r.cutoff_word) for r in rows)))
    if heads.in_hand:
        lines.append(StripRow(heads.in_hand, tuple(r.in_hand for r in rows)))
    if fuel is not None and outlook.fuel is not None:
        by_station = dict(zip((leg.station for leg in outlook.fuel.legs), fuel.rows, strict=True))
        found = [by_station.get(s.station) for s in outlook.sections]
        lines.append(StripRow(fuel.eat_head, tuple(r.carbs if r else NONE for r in found)))
    return WristStrip(pace.title, tuple(r.name for r in rows), tuple(lines), pace.turning)


def _time(on_plan: str) -> str:
    return on_plan.rpartition(" ")[2]


def _days(pace: PaceCard) -> Iterator[StripRow]:
    """Yield the days of the arrivals, each where it begins; none if all are of one day."""
    days = [row.on_plan.rpartition(" ")[0] for row in pace.rows]
    if len(set(days)) > 1:
        yield StripRow(
            "", tuple("" if k and day == days[k - 1] else day for k, day in enumerate(days))
        )


def _clock(clock: Clock) -> str:
    return f"{clock.day} {clock.time}" if clock.day else clock.time


def _cutoff(clock: Clock, word: str) -> str:
    return f"{word} {_clock(clock)}" if word else _clock(clock)


def concertina(pace: PaceCard, fuel: FuelCard | None, outlook: Outlook, words: Words) -> Concertina:
    """Return the legs with the figures of *pace* and the foods of *fuel*."""
    legs = _legs_by_section(outlook)
    folds = []
    taken = _taken(outlook)
    start_m = 0.0
    low, high = _reach(outlook)
    for number, (section, row) in enumerate(zip(outlook.sections, pace.rows, strict=True)):
        fuel_row = None
        if fuel is not None and section.station in legs:
            fuel_row = fuel.rows[legs[section.station][0]]
        ground, gradients = _ground(outlook, section, low, high)
        folds.append(
            Leg(
                name=row.name,
                on_plan=row.on_plan,
                lines=tuple(_figures(pace, number)),
                ground=ground,
                gradients=gradients,
                bites=tuple(_bites(taken, section)),
                foods=fuel_row.foods if fuel_row is not None else (),
                shades=_shades(pace, start_m, section, outlook),
            )
        )
        start_m = section.end_m
    used = {bite.shape for leg in folds for bite in leg.bites}
    names = {shape: words.translate(text) for shape, text in _SHAPES.items()}
    marks = tuple((shape, names[shape]) for shape in Shape if shape in used)
    return Concertina(pace.title, tuple(folds), turning(words), marks)


_SHAPES = {
    Shape.GEL: QT_TRANSLATE_NOOP("Cards", "gel"),
    Shape.DRINK: QT_TRANSLATE_NOOP("Cards", "drink"),
    Shape.SOLID: QT_TRANSLATE_NOOP("Cards", "food"),
    Shape.SALT: QT_TRANSLATE_NOOP("Cards", "salt"),
}


def _legs_by_section(outlook: Outlook) -> dict[str | None, tuple[int, LegFuel]]:
    if outlook.fuel is None:
        return {}
    return {leg.station: (k, leg) for k, leg in enumerate(outlook.fuel.legs)}


def _figures(pace: PaceCard, number: int) -> Iterator[str]:
    heads, row = pace.heads, pace.rows[number]
    yield f"{row.distance} {heads.distance}"
    if row.climb_drop:
        yield row.climb_drop
    if row.cutoff.time != NONE:
        yield f"{row.cutoff_word or heads.cutoff} {_clock(row.cutoff)}"
    if heads.last and row.last.time != NONE:
        yield f"{heads.last} {_clock(row.last)}"
    if row.stop_label:
        yield row.stop_label
    if row.there:
        yield from row.there.split(DOT)


def _reach(outlook: Outlook) -> tuple[float, float]:
    profile, _ = race_figures(outlook)
    low, high = float(profile.elevation_m.min()), float(profile.elevation_m.max())
    return low, max(high, low + 100.0)


def _ground(
    outlook: Outlook, section: SectionFigures, low_m: float, high_m: float
) -> tuple[tuple[tuple[float, float], ...], tuple[float, ...]]:
    """Return the ground of *section*, one height to all legs, and its gradient between points."""
    profile, _ = race_figures(outlook)
    if not profile.has_elevation:
        return (), ()
    at_m = np.linspace(section.start_m, section.end_m, STEPS + 1)
    height_m = np.interp(at_m, profile.distance_m, profile.elevation_m)
    gradients = np.diff(height_m) / np.diff(at_m)
    x = np.linspace(0.0, 1.0, STEPS + 1).tolist()
    y = ((height_m - low_m) / (high_m - low_m)).tolist()
    return tuple(zip(x, y, strict=True)), tuple(gradients.tolist())


def _taken(outlook: Outlook) -> list[tuple[float, Shape]]:
    """Return where on the course each food is taken."""
    _, target = race_figures(outlook)
    fuel = outlook.project.fuel
    return [
        (target.distance_at(i.at_s) if i.at_m is None else i.at_m, fuel.food(i.food).shape)
        for i in fuel.items
    ]


def _bites(taken: Sequence[tuple[float, Shape]], section: SectionFigures) -> Iterator[Bite]:
    for at_m, shape in taken:
        if section.start_m <= at_m < section.end_m:
            yield Bite((at_m - section.start_m) / section.length_m, shape)


def _shades(
    pace: PaceCard, start_m: float, section: SectionFigures, outlook: Outlook
) -> tuple[Shade, ...]:
    length_m = outlook.sections[-1].end_m
    start, end = start_m / length_m, section.end_m / length_m
    found = []
    for shade in pace.sketch.shades:
        a, b = max(shade.start, start), min(shade.end, end)
        if b > a:
            wide = end - start
            found.append(Shade((a - start) / wide, (b - start) / wide, shade.kind))
    return tuple(found)


def texts_of(strip: WristStrip | Concertina) -> Sequence[str]:
    """Return every text that stands on *strip*."""
    if isinstance(strip, WristStrip):
        return [*strip.names, *(cell for row in strip.rows for cell in (row.head, *row.cells))]
    return [text for leg in strip.legs for text in (leg.name, leg.on_plan, *leg.lines, *leg.foods)]
