"""Edits of what goes with the fuel plan: tables, bottles, caffeine, stores, the days before."""

from __future__ import annotations

import math
from typing import ClassVar

from msgspec.structs import replace

from ultraplanner_gui.edits.compound import Together
from ultraplanner_gui.plan.fuel import (
    Allergen,
    Before,
    Caffeine,
    Carrying,
    FuelPlan,
    SweatTest,
    Tank,
)
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.value import Value

LEAST_SWEAT_L_PER_H, MOST_SWEAT_L_PER_H = 0.1, 3.5
MOST_SWEAT_TESTS = 100


class SetStationFoods(Value, frozen=True):
    """The user said which foods stand on the table of an aid station."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set foods at a station")
    station: str
    foods: tuple[str, ...]
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        course = project.course
        if course is None:
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "There is no course and so no aid station."))
        for food in self.foods:
            project.fuel.food(food)
        station = course.station(self.station)
        foods = tuple(dict.fromkeys(self.foods))
        if station.foods == foods:
            return project
        stations = tuple(
            replace(s, foods=foods) if s.key == self.station else s for s in course.stations
        )
        return replace(project, course=replace(course, stations=stations))


class SetCarrying(Value, frozen=True):
    """The user set the bottles and what is packed to spare."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set bottles and spare")
    carrying: Carrying
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        c = self.carrying
        if not (0 <= c.bottles <= 8 and _within(c.bottle_ml, 100.0, 3000.0)):
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "Edit", "Up to 8 bottles, each of 100 to 3000 mL, can be carried."
                )
            )
        if not _within(c.spare, 0.0, 1.0):
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "What is spare lies between 0 and 100 %."))
        return _with(project, replace(project.fuel, carrying=c))


class SetCaffeine(Value, frozen=True):
    """The user turned caffeine on or off, or chose the limit that counts."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set caffeine")
    caffeine: Caffeine
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        return _with(project, replace(project.fuel, caffeine=self.caffeine))


class SetTank(Value, frozen=True):
    """The user set what the glycogen ledger starts from."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set glycogen at the start")
    tank: Tank
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        tank = self.tank
        if tank.vo2max is not None and not _within(tank.vo2max, 20.0, 95.0):
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "VO2max lies between 20 and 95 mL/kg/min."))
        if not (_within(tank.leg_share, 0.14, 0.27) and _within(tank.legs_g_per_kg, 5.0, 36.0)):
            raise PlanError(
                QT_TRANSLATE_NOOP(
                    "Edit",
                    "Leg muscle is 14 to 27 % of the body and holds 5 to 36 g of glycogen per kg.",
                )
            )
        if not _within(tank.liver_g, 0.0, 160.0):
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "The liver holds up to 160 g of glycogen."))
        return _with(project, replace(project.fuel, tank=tank))


class SetBefore(Value, frozen=True):
    """The user set how the last days before the race are eaten."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set the days before")
    before: Before
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        before = self.before
        if not (0 <= before.loading_days <= 4 and _within(before.loading_g_per_kg, 5.0, 12.0)):
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "Loading takes up to 4 days of 5 to 12 g/kg each.")
            )
        if not _within(before.meal_h, 1.0, 4.0):
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "The last meal is one to four hours before the start.")
            )
        if not _within(before.caffeine_mg, 0.0, 200.0):
            raise PlanError(
                QT_TRANSLATE_NOOP("Edit", "More than 200 mg of caffeine at once is not safe.")
            )
        return _with(project, replace(project.fuel, before=before))


class SetAllergens(Value, frozen=True):
    """The user said what they must not eat."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set allergies")
    allergens: tuple[Allergen, ...]
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        chosen = tuple(a for a in Allergen if a in self.allergens)
        return _with(project, replace(project.fuel, allergens=chosen))


class SetSweatTests(Value, frozen=True):
    """The user noted, changed or removed runs weighed before and after."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set sweat tests")
    tests: tuple[SweatTest, ...]
    gesture: int = 0

    def apply(self, project: Project) -> Project:
        if len(self.tests) > MOST_SWEAT_TESTS:
            raise PlanError(QT_TRANSLATE_NOOP("Edit", "A hundred sweat tests are enough."))
        for test in self.tests:
            _check_test(test)
        tests = tuple(sorted(self.tests, key=lambda t: t.day))
        return _with(project, replace(project.fuel, sweat_tests=tests))


class SetFuelHabits(Together, frozen=True):
    """The user answered the form of bottles, caffeine, stores and the days before."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set fuel habits")


class SetTables(Together, frozen=True):
    """The user ticked what stands on the tables of the stations."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Set food at stations")


class PutPracticeFood(Together, frozen=True):
    """The user put the food to practise with on the sessions to come."""

    label: ClassVar[str] = QT_TRANSLATE_NOOP("Edit", "Put practice food on sessions")


def _check_test(test: SweatTest) -> None:
    if not (_within(test.before_kg, 30.0, 250.0) and _within(test.after_kg, 30.0, 250.0)):
        raise PlanError(QT_TRANSLATE_NOOP("Edit", "Body mass lies between 30 and 250 kg."))
    if not (_within(test.drunk_l, 0.0, 10.0) and _within(test.passed_l, 0.0, 5.0)):
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "Up to 10 L are drunk and up to 5 L passed on one run.")
        )
    if not _within(test.hours, 0.25, 6.0):
        raise PlanError(
            QT_TRANSLATE_NOOP("Edit", "A sweat test lasts a quarter of an hour to six hours.")
        )
    lost_l = test.before_kg - test.after_kg + test.drunk_l - test.passed_l
    if not _within(lost_l / test.hours, LEAST_SWEAT_L_PER_H, MOST_SWEAT_L_PER_H):
        raise PlanError(
            QT_TRANSLATE_NOOP(
                "Edit", "That would be a sweat rate outside 0.1 to 3.5 L/h; check the figures."
            )
        )


def _with(project: Project, fuel: FuelPlan) -> Project:
    return project if fuel == project.fuel else replace(project, fuel=fuel)


def _within(value: float, low: float, high: float) -> bool:
    return math.isfinite(value) and low <= value <= high
