"""Edits of the fuel plan."""

from __future__ import annotations

import math
from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.edits.course import LONGEST_RACE_S
from ultraplanner_gui.engine.fuel_kit import known_sweat_l_per_h
from ultraplanner_gui.plan.course import fresh_key
from ultraplanner_gui.plan.fuel import Food, FuelItem, FuelPlan, Keep
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value

HIGHEST_CARB_G_PER_H = 120.0
HIGHEST_FLUID_ML_PER_H = 1000.0
HIGHEST_SODIUM_MG_PER_H = 2000.0
MOST_PLACE_M = 1_000_000.0


class MoveItem(Value, frozen=True):
    """The user moved a fuel item along the race clock; one that keeps its place, to *at_m*."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Move fuel item")
    item: str
    at_s: float
    gesture: int = 0
    at_m: float | None = None

    def apply(self, project: Project) -> Project:
        item = project.fuel.item(self.item)
        at_m = _place(self.at_m)
        item = replace(item, at_s=_time(self.at_s), at_m=None if item.at_m is None else at_m)
        return replace(project, fuel=project.fuel.with_item(item))


class ChangeItem(Value, frozen=True):
    """The user changed what is taken, how much or when."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change fuel item")
    item: FuelItem
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        _check_item(project.fuel, self.item)
        return replace(project, fuel=project.fuel.with_item(self.item))


class AddItem(Value, frozen=True):
    """The user added a food to the race clock."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Add fuel item")
    food: str
    at_s: float
    servings: float = 1.0
    gesture: int = 0
    at_m: float | None = None

    def apply(self, project: Project) -> Project:
        fuel = project.fuel
        key = fresh_key("item", {i.key for i in fuel.items})
        item = FuelItem(key, self.food, _time(self.at_s), self.servings, _place(self.at_m))
        _check_item(fuel, item)
        return replace(project, fuel=fuel.with_items((*fuel.items, item)))


class RemoveItem(Value, frozen=True):
    """The user took an item out of the fuel plan."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Remove fuel item")
    item: str
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        fuel = project.fuel
        fuel.item(self.item)
        return replace(
            project, fuel=fuel.with_items(tuple(i for i in fuel.items if i.key != self.item))
        )


class CopyItem(AddItem, frozen=True):
    """The user copied a fuel item to another time."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Copy fuel item")


class PlaceItems(Value, frozen=True):
    """The user placed all items by the clock; *items* are all there are afterwards."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Place fuel by the clock")
    items: tuple[FuelItem, ...]
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        for item in self.items:
            _check_item(project.fuel, item)
        if len({item.key for item in self.items}) < len(self.items):
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "One item cannot stand at two times; place them anew.")
            )
        fuel = project.fuel.with_items(self.items)
        return project if fuel == project.fuel else replace(project, fuel=fuel)


class RepeatItem(PlaceItems, frozen=True):
    """The user placed a food by rule, beside what was there."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Repeat a food by rule")


class FillToTarget(PlaceItems, frozen=True):
    """The user had the race filled to its targets."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Fill fuel to target")


class KeepItems(PlaceItems, frozen=True):
    """The user chose what items keep when the pace changes, their clock or their place."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Keep clock or place of fuel")
    keep: Keep = Keep.CLOCK

    def apply(self, project: Project) -> Project:
        placed = PlaceItems.apply(self, project)
        if placed.fuel.keep is self.keep:
            return placed
        return replace(placed, fuel=replace(placed.fuel, keep=self.keep))


class ClearItems(Value, frozen=True):
    """The user took every item out of the fuel plan."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Remove all fuel items")
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        if not project.fuel.items:
            return project
        return replace(project, fuel=project.fuel.with_items(()))


class SetFuelRates(Value, frozen=True):
    """The user set what to take per hour and the rule for placing it."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set fuel per hour")
    carb_g_per_h: float
    fluid_ml_per_h: float
    sodium_mg_per_h: float
    first_s: float
    every_s: float
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        if not 0.0 <= self.carb_g_per_h <= HIGHEST_CARB_G_PER_H:
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "Edit",
                    "Carbohydrate lies between 0 and 120 g/h; more than that has not been studied.",
                )
            )
        _check_fluid(project.fuel, self.fluid_ml_per_h)
        if not 0.0 <= self.sodium_mg_per_h <= HIGHEST_SODIUM_MG_PER_H:
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "Sodium lies between 0 and 2000 mg/h."))
        if not 0.0 <= self.first_s <= 6 * 3600.0 or not 300.0 <= self.every_s <= 3 * 3600.0:
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "Edit",
                    "The first item comes within 6 hours, then one every 5 minutes to 3 hours.",
                )
            )
        fuel = replace(
            project.fuel,
            carb_g_per_h=self.carb_g_per_h,
            fluid_ml_per_h=self.fluid_ml_per_h,
            sodium_mg_per_h=self.sodium_mg_per_h,
            first_s=self.first_s,
            every_s=self.every_s,
        )
        return replace(project, fuel=fuel)


class ChangeFood(Value, frozen=True):
    """The user added a food or changed one of the same key."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Change food")
    food: Food
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        food, fuel = self.food, project.fuel
        figures = (
            food.weight_g,
            food.carb_g,
            food.sodium_mg,
            food.fluid_ml,
            food.caffeine_mg,
            food.energy_kcal,
            food.protein_g,
            food.per_pack,
            food.fructose_g or 0.0,
        )
        if not food.name.strip() or not all(
            math.isfinite(v) and 0.0 <= v <= 5000.0 for v in figures
        ):
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "A food needs a name and figures between 0 and 5000.")
            )
        if food.fructose_g is not None and food.fructose_g > food.carb_g:
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "There cannot be more fructose than carbohydrate in it.")
            )
        if food.per_pack <= 0.0:
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "A pack holds more than no servings."))
        known = any(f.key == food.key for f in fuel.foods)
        foods = (
            tuple(food if f.key == food.key else f for f in fuel.foods)
            if known
            else (*fuel.foods, food)
        )
        return replace(project, fuel=replace(fuel, foods=foods))


class RemoveFood(Value, frozen=True):
    """The user removed a food and every item of it."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Remove food")
    food: str
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        fuel = project.fuel
        fuel.food(self.food)
        fuel = replace(fuel, foods=tuple(f for f in fuel.foods if f.key != self.food))
        fuel = fuel.with_items(tuple(i for i in fuel.items if i.food != self.food))
        return replace(_off_the_tables(project, self.food), fuel=fuel)


def _check_fluid(fuel: FuelPlan, ml_per_h: float) -> None:
    """Refuse more than 1 L/h unless a test shows that as much is sweated (own rule)."""
    sweat_l = known_sweat_l_per_h(fuel)
    most = max(HIGHEST_FLUID_ML_PER_H, 1000.0 * sweat_l if sweat_l is not None else 0.0)
    if not 0.0 <= ml_per_h <= most:
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Edit",
                "Fluid lies between 0 and 1000 mL/h, more only after a sweat test that shows it; "
                "more than you sweat is dangerous.",
            )
        )


def _time(at_s: float) -> float:
    if not (math.isfinite(at_s) and 0.0 <= at_s <= LONGEST_RACE_S):
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "A fuel item lies between the start and 240 hours.")
        )
    return at_s


def _place(at_m: float | None) -> float | None:
    if at_m is not None and not (math.isfinite(at_m) and 0.0 <= at_m <= MOST_PLACE_M):
        raise PlanError(QT_TRANSLATE_NOOP("Edit", "A fuel item is taken on the course."))
    return at_m


def _off_the_tables(project: Project, food: str) -> Project:
    """Return *project* with *food* on no table."""
    course = project.course
    if course is None or not any(food in s.foods for s in course.stations):
        return project
    stations = tuple(
        replace(s, foods=tuple(f for f in s.foods if f != food)) if food in s.foods else s
        for s in course.stations
    )
    return replace(project, course=replace(course, stations=stations))


def _check_item(fuel: FuelPlan, item: FuelItem) -> None:
    fuel.food(item.food)
    _time(item.at_s)
    _place(item.at_m)
    if not (math.isfinite(item.servings) and 0.0 < item.servings <= 50.0):
        raise PlanError(QT_TRANSLATE_NOOP("Edit", "Servings lie above 0 and at most 50."))
