"""Filling a race to its targets with the foods at hand: an exact choice, then a place for each.

The race is cut at its aid stations and further into pieces of about an hour. How many portions of
each food go into each piece is one programme in whole numbers: first the bands are kept, then the
texture changes with the hours, little is carried far, and nothing is eaten over and over. What goes
against a band is charged and said. Portions are then spread over the times to eat.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from time import monotonic

from msgspec.structs import replace

from ultraplanner_gui.engine.block_rows import Rows, Term
from ultraplanner_gui.engine.block_solver import End, Limits, solve
from ultraplanner_gui.engine.fuel_fill_cells import Cell
from ultraplanner_gui.engine.fuel_fill_place import placed
from ultraplanner_gui.engine.fuel_fill_why import reasons
from ultraplanner_gui.engine.fuel_kit import (
    FillFood,
    Taste,
    fill_foods,
    most_fluid_ml_per_h,
)
from ultraplanner_gui.plan.fuel import FuelItem, FuelPlan, Tolerance
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, Message, PlanError
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.fuelling import MOST_GLUCOSE_G_PER_H, S_PER_H

# OWN: how far from what is asked an hour may be.
CARB_BAND, FLUID_BAND, SODIUM_BAND = (0.9, 1.1), (0.75, 1.25), (2.0 / 3.0, 4.0 / 3.0)
# OWN: hours at which the taste changes (savoury food is liked more in long races: Tiller et al.
# 2019, J Int Soc Sports Nutr 16:50), and the share of carbohydrate that comes out of gels by then.
_TURNS_H = (4.0, 10.0)
_GEL_SHARE = (0.70, 0.50, 0.30)
_SAVOURY_SHARE = (0.0, 0.15, 0.35)

# What going against a wish costs, OWN: a gram outside the carbohydrate band 10.
_CARB_COST, _FLUID_COST, _SODIUM_COST, _CAFFEINE_COST = 10.0, 0.4, 0.2, 0.3
_OFF_TARGET, _TEXTURE_COST, _KIND_COST, _AGAIN_COST = 0.05, 0.10, 0.4, 1.0
_CARRY_COST_PER_G_H, _UNTRIED_COST, _SINGLE_COST = 0.0015, 0.25, 0.3
_TABLE_GAIN, _MOST_AT_TABLE_ML, _MOST_AT_TABLE_G = 0.4, 500.0, 60.0
_MOST_PIECES, _MOST_TABLE_SHARE = 2, 0.6
# What is wet and solid is carried for so long from the start, and never in a bag.
_FRESH_H, _PICKED_UP_H, _TURN_COST = 5.0, 1.0, 0.5
_MOST_OF_ONE, _AMPLE = 8, 1.3
#: Shorter pieces are looked at with their neighbours.
SHORT_H = 0.6
# The time is only a brake: with it the answer would hang on the machine.
_LIMITS = Limits(nodes=150, time_s=0.9, gap=0.01)
_LEAST_TIME_S = 0.02


class Fill(Value, frozen=True):
    """What filling came to: all items, why a band is not met (empty: all are), and whether no
    better choice exists.
    """

    items: tuple[FuelItem, ...]
    reasons: tuple[Message, ...]
    is_proven: bool


def fill_to_target(
    fuel: FuelPlan,
    cells: Sequence[Cell],
    foods: Sequence[str],
    check: Callable[[], object] = lambda: None,
) -> Fill:
    """Return items of *foods* (keys) that keep the bands of *fuel* in every cell.

    Cells that share nothing are chosen for apart, which is as exact. *check* is called between
    them and may raise to stop. PlanError if nothing of *foods* can be eaten.
    """
    kit = fill_foods(fuel, foods)
    if not cells:
        raise PlanError(
            QT_TRANSLATE_NOOP("Fuel", "The race is over before the first item would be taken.")
        )
    if not any(f.carb_g > 0.0 for f in kit) and fuel.carb_g_per_h > 0.0:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Fuel",
                "None of these foods has carbohydrate you can take; choose others or change marks.",
            )
        )
    counts: list[dict[int, int]] = []
    left_s, is_proven = _LIMITS.time_s, True
    for group in groups(cells):
        check()
        began = monotonic()
        programme = _Programme(fuel, tuple(cells[c] for c in group), kit)
        found = solve(programme.rows, replace(_LIMITS, time_s=max(left_s, _LEAST_TIME_S)))
        left_s -= monotonic() - began
        if found.end is End.NONE:
            raise PlanError(
                QT_TRANSLATE_NOOP("Fuel", "No filling was found in time; choose fewer foods.")
            )
        is_proven = is_proven and found.end is End.PROVEN
        counts += programme.counts(found.values)
    items = placed(cells, kit, counts)
    why = reasons(fuel, cells, kit, counts, (CARB_BAND, FLUID_BAND, SODIUM_BAND))
    return Fill(items, why, is_proven)


class _Programme:
    """The programme in whole numbers: column of each food in each cell where it can be had."""

    def __init__(self, fuel: FuelPlan, cells: tuple[Cell, ...], kit: tuple[FillFood, ...]) -> None:
        self.rows = Rows()
        self._fuel, self._cells, self._kit = fuel, cells, kit
        self._has_tolerated = any(f.tolerance is Tolerance.TOLERATED for f in kit)
        self._asks_for_a_mixture = fuel.carb_g_per_h > MOST_GLUCOSE_G_PER_H
        self._columns: list[dict[int, int]] = [self._foods_of(cell) for cell in cells]
        self._bands()
        self._caps()
        self._bottles()
        self._tables()
        self._textures()

    def counts(self, values: Sequence[float]) -> list[dict[int, int]]:
        """Return how many portions of each food, by its place in the kit, each cell holds."""
        return [
            {f: round(values[column]) for f, column in row.items() if round(values[column])}
            for row in self._columns
        ]

    def _foods_of(self, cell: Cell) -> dict[int, int]:
        rows, columns = self.rows, {}
        for f, food in enumerate(self._kit):
            if not self._can_be_had(food, cell):
                continue
            at_hand = food.key in cell.table or food.key in cell.behind
            hours = 0.0 if at_hand else cell.since_supply_h + _PICKED_UP_H
            cost = _CARRY_COST_PER_G_H * food.carried_g * hours
            cost += 0.0 if self._is_in_turn(f, cell) else _TURN_COST
            if self._has_tolerated and food.tolerance is Tolerance.NOT_TRIED and food.carb_g:
                cost += _UNTRIED_COST
            is_gel_or_drink = food.carb_g > 0.0 and food.taste in (Taste.GEL, Taste.DRINK)
            if is_gel_or_drink and not food.is_mixed and self._asks_for_a_mixture:
                cost += _SINGLE_COST
            most = float(self._most(food, cell))
            columns[f] = column = rows.column(0.0, most, cost, whole=True)
            age = _age(cell)
            if not food.is_carried and age:
                # At a table real food weighs nothing and is a change.
                rows.shortfall([(column, 1.0)], 1.0, _TABLE_GAIN * age)
            if food.carb_g <= 0.0:
                continue
            if food.taste is not Taste.DRINK:
                rows.excess([(column, 1.0)], 1.0, _AGAIN_COST)
            is_in = rows.choice(_KIND_COST)
            rows.row([(column, 1.0), (is_in, -most)], most=0.0)
        return columns

    def _can_be_had(self, food: FillFood, cell: Cell) -> bool:
        if food.key in cell.table:
            return True
        if not food.is_carried:
            return False
        is_fresh = cell.start_s <= _FRESH_H * S_PER_H or food.key in cell.behind
        return is_fresh or not food.is_perishable

    def _is_in_turn(self, f: int, cell: Cell) -> bool:
        """Whether the food is the one of its taste due in *cell*: none over and over."""
        alike = [
            k
            for k, food in enumerate(self._kit)
            if food.taste is self._kit[f].taste and food.carb_g
        ]
        return f not in alike or alike.index(f) == cell.turn % len(alike)

    def _most(self, food: FillFood, cell: Cell) -> int:
        """Return how many portions could be of any use in *cell*."""
        asked = self._fuel.carb_g_per_h * cell.hours
        by_carb = math.ceil(_AMPLE * asked / food.carb_g) if food.carb_g else _MOST_OF_ONE
        most = _MOST_OF_ONE if food.taste is Taste.DRINK or not food.carb_g else _MOST_PIECES
        return max(1, min(most, by_carb))

    def _terms(self, cells: Sequence[int], of: str) -> list[Term]:
        return [
            (column, amount)
            for c in cells
            for f, column in self._columns[c].items()
            if (amount := getattr(self._kit[f], of))
        ]

    def _bands(self) -> None:
        fuel = self._fuel
        wishes = (
            ("carb_g", fuel.carb_g_per_h, CARB_BAND, _CARB_COST, _OFF_TARGET),
            ("fluid_ml", fuel.fluid_ml_per_h, FLUID_BAND, _FLUID_COST, 0.002),
            ("sodium_mg", fuel.sodium_mg_per_h, SODIUM_BAND, _SODIUM_COST, 0.001),
        )
        for window in windows(self._cells):
            hours = sum(self._cells[c].hours for c in window)
            for of, per_h, band, cost, off in wishes:
                asked, terms = per_h * hours, self._terms(window, of)
                self.rows.shortfall(terms, band[0] * asked, cost)
                self.rows.excess(terms, band[1] * asked, cost)
                self.rows.distance_cost(terms, asked, off)

    def _caps(self) -> None:
        """Hold what may not be passed: fluid above the sweat, caffeine above the dose."""
        most_ml = most_fluid_ml_per_h(self._fuel)
        for c, cell in enumerate(self._cells):
            self.rows.row(self._terms([c], "fluid_ml"), most=most_ml * cell.hours)
            terms = self._terms([c], "caffeine_mg")
            self.rows.row(terms, most=cell.most_caffeine_mg)
            if terms and cell.most_caffeine_mg:
                self.rows.shortfall(terms, 0.5 * cell.most_caffeine_mg, _CAFFEINE_COST)

    def _tables(self) -> None:
        """Hold what is eaten and drunk at one table to what sits well."""
        for c, cell in enumerate(self._cells):
            row = self._columns[c].items()
            there = [(f, column) for f, column in row if not self._kit[f].is_carried]
            fluid = [(column, self._kit[f].fluid_ml) for f, column in there]
            self.rows.row(fluid, most=_MOST_AT_TABLE_ML)
            carb = [(column, self._kit[f].carb_g) for f, column in there]
            asked = self._fuel.carb_g_per_h * cell.hours
            self.rows.row(carb, most=min(_MOST_AT_TABLE_G, _MOST_TABLE_SHARE * asked))

    def _bottles(self) -> None:
        """Hold what is drunk between two taps to what the bottles take, shared out by the hour."""
        for c, cell in enumerate(self._cells):
            terms = [
                (column, self._kit[f].fluid_ml)
                for f, column in self._columns[c].items()
                if self._kit[f].is_bottled and self._kit[f].is_carried
            ]
            if cell.bottle_ml < math.inf:
                self.rows.row(terms, most=cell.bottle_ml)

    def _textures(self) -> None:
        for c, cell in enumerate(self._cells):
            age = _age(cell)
            asked = self._fuel.carb_g_per_h * cell.hours
            of_gel = self._of_taste(c, (Taste.GEL,))
            self.rows.excess(of_gel, _GEL_SHARE[age] * asked, _TEXTURE_COST)
            savoury = self._of_taste(c, (Taste.SAVOURY,))
            if _SAVOURY_SHARE[age]:
                self.rows.shortfall(savoury, _SAVOURY_SHARE[age] * asked, _TEXTURE_COST)
            else:
                self.rows.excess(savoury, 0.0, _TEXTURE_COST)

    def _of_taste(self, c: int, tastes: tuple[Taste, ...]) -> list[Term]:
        return [
            (column, self._kit[f].carb_g)
            for f, column in self._columns[c].items()
            if self._kit[f].taste in tastes and self._kit[f].carb_g
        ]


def _age(cell: Cell) -> int:
    """Return how many turns of taste lie behind."""
    return sum(cell.start_s / S_PER_H >= turn for turn in _TURNS_H)


def groups(cells: Sequence[Cell]) -> list[tuple[int, ...]]:
    """Return runs of cells that share a band, by their numbers."""
    last = list(range(len(cells)))
    for linked in windows(cells):
        for c in linked:
            last[c] = max(last[c], linked[-1])
    found: list[tuple[int, ...]] = []
    start = 0
    while start < len(cells):
        end = start
        k = start
        while k <= end:
            end = max(end, last[k])
            k += 1
        found.append(tuple(range(start, end + 1)))
        start = end + 1
    return found


def windows(cells: Sequence[Cell]) -> list[tuple[int, ...]]:
    """Return the cells whose bands are looked at together: a short one with each neighbour."""
    found: list[tuple[int, ...]] = []
    for c, cell in enumerate(cells):
        if cell.hours >= SHORT_H or len(cells) == 1:
            found.append((c,))
            continue
        if c > 0:
            found.append((c - 1, c))
        if c + 1 < len(cells):
            found.append((c, c + 1))
    return found
