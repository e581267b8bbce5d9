"""The pieces of a race that filling works on: cut at the aid stations, about an hour each."""

from __future__ import annotations

import math
from collections.abc import Sequence

from msgspec.structs import replace

from ultraplanner_gui.engine.fuel_kit import caffeine_caps_mg
from ultraplanner_gui.engine.fuel_placing import slot_times
from ultraplanner_gui.engine.sections import SectionFigures
from ultraplanner_gui.plan.course import Course
from ultraplanner_gui.plan.fuel import FuelPlan
from ultraplanner_gui.plan.station import AidStation, Offer
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.fuelling import S_PER_H

DAY_S = 24.0 * S_PER_H
MOST_DOSE_MG = 100.0
DOSE_EVERY_S = 3.0 * S_PER_H
_SIPS, _HAIR = 4, 1e-9


class Cell(Value, frozen=True):
    """A piece of the race: `slots` are the times to eat in it, seconds of race time, each standing
    for `every_s`.

    `table` are the foods that stand at its end, at `place_m` and reached at `arrive_s`;
    `has_tap` whether its end has water, `name` where it ends. `since_supply_h` is how long what
    is eaten in it has been carried from the start or the last bag or crew. `most_caffeine_mg` is
    what caffeine it may hold, `bottle_ml` its part of what the bottles take between two taps.
    `behind` are the foods of the table passed last, `turn` its number in the race.
    """

    slots: tuple[float, ...]
    every_s: float
    arrive_s: float
    place_m: float | None
    name: str
    table: tuple[str, ...]
    has_tap: bool
    since_supply_h: float
    most_caffeine_mg: float = 0.0
    bottle_ml: float = math.inf
    behind: tuple[str, ...] = ()
    turn: int = 0

    @property
    def hours(self) -> float:
        """How many hours of eating it stands for."""
        return len(self.slots) * self.every_s / S_PER_H

    @property
    def start_s(self) -> float:
        """The first time to eat."""
        return self.slots[0]


def fill_cells(
    fuel: FuelPlan,
    course: Course,
    sections: Sequence[SectionFigures],
    finish_s: float,
    body_kg: float,
) -> tuple[Cell, ...]:
    """Return the cells of a race, in its order; empty if it is too short to eat in."""
    slots = slot_times(fuel.first_s, fuel.every_s, finish_s)
    cells: list[Cell] = []
    start_s = supplied_s = 0.0
    behind: tuple[str, ...] = ()
    for section in sections:
        is_last = section is sections[-1]
        station = course.station(section.station) if section.station and not is_last else None
        if station is None and not is_last:
            continue
        end_s = math.inf if is_last else section.leave_s
        inside = [at_s for at_s in slots if start_s <= at_s < end_s]
        leg = _cut(fuel, inside, section.arrive_s, station, supplied_s)
        cells += [replace(cell, behind=behind) for cell in leg]
        start_s, behind = end_s, station.foods if station is not None else ()
        if station is not None and {Offer.DROP_BAG, Offer.CREW} & set(station.offers):
            supplied_s = start_s
    cells = [replace(cell, turn=n) for n, cell in enumerate(_with_bottles(fuel, cells))]
    return _with_caffeine(fuel, cells, body_kg)


def has_tap(station: AidStation) -> bool:
    """Whether there is water: said so, or nothing said of what there is."""
    return Offer.WATER in station.offers or not station.offers


def _with_bottles(fuel: FuelPlan, cells: Sequence[Cell]) -> list[Cell]:
    if not any(cell.has_tap for cell in cells):
        # Nobody knows where water is; the bottles cannot be held against that.
        return list(cells)
    c = fuel.carrying
    room_ml = c.bottles * c.bottle_ml / (1.0 + c.spare)
    found: list[Cell] = []
    step_ml = c.bottle_ml / _SIPS
    for stretch in dry_stretches(cells):
        hours = sum(cells[n].hours for n in stretch)
        so_far = given = 0.0
        for n in stretch:
            # In whole sips: what one cell cannot use of its part is there for the next.
            so_far += room_ml * cells[n].hours / hours
            part = math.floor((so_far - given) / step_ml + _HAIR) * step_ml
            given += part
            found.append(replace(cells[n], bottle_ml=part))
    return found


def _cut(
    fuel: FuelPlan,
    slots: Sequence[float],
    arrive_s: float,
    station: AidStation | None,
    supplied_s: float,
) -> list[Cell]:
    """Return one leg in cells of about an hour."""
    pieces = max(1, round(len(slots) * fuel.every_s / S_PER_H)) if slots else 0
    pieces = min(pieces, len(slots))
    cells = []
    for n in range(pieces):
        inside = tuple(slots[n * len(slots) // pieces : (n + 1) * len(slots) // pieces])
        end = station if n == pieces - 1 else None
        cells.append(
            Cell(
                slots=inside,
                every_s=fuel.every_s,
                arrive_s=arrive_s,
                place_m=end.at_m if end is not None else None,
                name=station.name if station is not None else "",
                table=end.foods if end is not None else (),
                has_tap=end is not None and has_tap(end),
                since_supply_h=max(inside[0] - supplied_s, 0.0) / S_PER_H,
            )
        )
    return cells


def _with_caffeine(fuel: FuelPlan, cells: Sequence[Cell], body_kg: float) -> tuple[Cell, ...]:
    """Return *cells*, every third of the second half allowed a dose while the day's cap lasts.

    OWN: up to 100 mg every few hours late in the race rather than one large dose.
    """
    if not fuel.caffeine.is_used or not cells:
        return tuple(cells)
    at_once, a_day = caffeine_caps_mg(fuel, body_kg)
    dose = min(at_once, MOST_DOSE_MG)
    given = [(-fuel.before.caffeine_mg / 1e9, fuel.before.caffeine_mg)]
    late_s = cells[-1].start_s / 2.0
    found: list[Cell] = []
    for cell in cells:
        within = sum(mg for at_s, mg in given if cell.start_s - at_s < DAY_S)
        is_due = cell.start_s >= late_s and cell.start_s - given[-1][0] >= DOSE_EVERY_S
        most = min(dose, a_day - within) if is_due or len(given) == 1 else 0.0
        if cell.start_s < late_s or most <= 0.0:
            found.append(cell)
            continue
        given.append((cell.start_s, most))
        found.append(replace(cell, most_caffeine_mg=most))
    return tuple(found)


def dry_stretches(cells: Sequence[Cell]) -> list[tuple[int, ...]]:
    """Return the cells between one tap and the next, by their numbers."""
    stretches: list[tuple[int, ...]] = []
    open_cells: list[int] = []
    for c, cell in enumerate(cells):
        open_cells.append(c)
        if cell.has_tap:
            stretches.append(tuple(open_cells))
            open_cells = []
    return [*stretches, tuple(open_cells)] if open_cells else stretches
