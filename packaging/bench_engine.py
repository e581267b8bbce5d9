"""Derived figures after one change, against the least that any program would have to compute."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from datetime import date, timedelta
from time import perf_counter

import numpy as np
from bench_measure import Goal, Row, by_turns
from bench_plans import GOAL_S, POINTS, STEP_M, TODAY, large_project
from msgspec.structs import replace

from ultraplanner_gui.edits.block import MoveSession
from ultraplanner_gui.edits.course import SetSectionTarget
from ultraplanner_gui.edits.fuel import MoveItem
from ultraplanner_gui.engine.fuel_fill import fill_to_target
from ultraplanner_gui.engine.fuel_fill_cells import fill_cells
from ultraplanner_gui.engine.glycogen import glycogen_ledger
from ultraplanner_gui.engine.odds import RACES, odds
from ultraplanner_gui.engine.outlook import Outlook, derive
from ultraplanner_gui.engine.pacing import PacePlan
from ultraplanner_gui.plan.block import Session
from ultraplanner_gui.plan.fuel import Carrying, FuelPlan
from ultraplanner_gui.plan.project import Project

PAIRS = 400
LEDGER_PAIRS, FILL_TIMES = 60, 5
TABLE = ("broth-chicken", "cola", "rice", "banana")
FILL_FOODS = (
    *("water", "drink-8", "gel-mixed", "salt-capsule", "banana", "gummies", "dates-medjool"),
    *("potato-salted", "jam-sandwich", "pretzels", "raisins", "rice", "broth-chicken", "cola"),
    "orange",
)
SECTIONS = 40
# Minetti et al. 2002, J Appl Physiol 93:1039, cost of running, J/(kg m), highest power first.
_COST = (155.4, -30.4, -43.3, 46.3, 19.5, 3.6)


def rows() -> Iterator[Row]:
    """Measure what is derived anew after one target, one session and one token was moved."""
    project = large_project()
    outlook = derive(project, None, TODAY)
    assert outlook.profile is not None
    assert outlook.target is not None
    section = outlook.sections[6]
    slower = SetSectionTarget(section.key, section.moving_s + 120.0).apply(project)
    gradient = outlook.profile.gradient.copy()
    yield Row(
        f"targets recomputed, {POINTS:,} points",
        "one vectorised evaluation of cost and pace",
        *by_turns(lambda: derive(slower, outlook, TODAY), lambda: _paced(gradient), PAIRS),
        (Goal("ratio", 25.0),),
    )
    later = [s for s in project.block.sessions if s.day > TODAY][40]
    moved = MoveSession(later.key, later.day + timedelta(days=9)).apply(project)
    yield Row(
        "whole outlook, one session moved",
        "totals in plain dicts",
        *by_turns(
            lambda: derive(moved, outlook, TODAY), lambda: _totals(moved.block.sessions), PAIRS
        ),
        (Goal("ratio", 10.0),),
        note=f"{len(project.block.sessions)} sessions, {len(outlook.weeks)} weeks",
    )
    item = project.fuel.items[90]
    eaten = MoveItem(item.key, item.at_s + 2400.0).apply(project)
    yield Row(
        "all fuel figures, one token moved",
        "one pass over the items",
        *by_turns(lambda: derive(eaten, outlook, TODAY), lambda: _eaten(eaten.fuel), PAIRS),
        (Goal("ratio", 10.0),),
        note=f"{GOAL_S / 3600:g} h, {len(project.fuel.items)} items, {len(outlook.sections)} legs",
    )
    yield _odds_row(outlook.forecast)
    ledger_floor = [0.0] * int(GOAL_S // 60.0)
    yield Row(
        "glycogen along the race, one token moved",
        "one pass over its minutes, three sums each",
        *by_turns(lambda: _ledger(eaten, outlook), lambda: _minutes(ledger_floor), LEDGER_PAIRS),
        (Goal("ratio", 25.0), Goal("p95", 16.0)),
        note=f"{len(ledger_floor)} minutes, both edges of the band",
    )
    yield from _fill_rows(project, outlook)


def _odds_row(forecast: PacePlan | None) -> Row:
    assert forecast is not None
    ends_m = tuple(float(m) for m in np.linspace(0.0, forecast.distance_m[-1], SECTIONS + 1)[1:])
    cutoffs = [(at_m, 1.2 * forecast.arrival_s(at_m)) for at_m in ends_m]
    random = np.random.Generator(np.random.SFC64(1))

    def summed() -> object:
        draws = random.standard_normal((SECTIONS, RACES), dtype=np.float32)
        return np.cumsum(draws, axis=0)

    return Row(
        f"{RACES:,} simulated races x {SECTIONS} sections",
        "as many normal numbers drawn and summed",
        *by_turns(lambda: odds(forecast, ends_m, cutoffs), summed, PAIRS // 4),
        (Goal("ratio", 2.0),),
    )


def _ledger(project: Project, outlook: Outlook) -> object:
    assert outlook.profile is not None
    assert outlook.target is not None
    return glycogen_ledger(
        project.fuel, outlook.profile, outlook.target, outlook.sections, project.runner.body_kg
    )


def _minutes(amounts: list[float]) -> list[tuple[float, float, float]]:
    liver = legs = gut = 0.0
    found = []
    for amount in amounts:
        liver += amount
        legs -= amount
        gut += amount
        found.append((liver, legs, gut))
    return found


def _fill_rows(project: Project, outlook: Outlook) -> Iterator[Row]:
    """Measure filling the race with 15 foods, tables at every station."""
    fuel = replace(project.fuel, carb_g_per_h=70.0, items=(), carrying=Carrying(3))
    assert project.course is not None
    stations = tuple(replace(s, foods=TABLE) for s in project.course.stations[:8])
    course = replace(project.course, stations=stations)
    known = {s.key for s in stations}
    sections = tuple(s for s in outlook.sections if s.station in known) + outlook.sections[-1:]
    cells = fill_cells(fuel, course, sections, GOAL_S, project.runner.body_kg)
    times: list[float] = []
    for _ in range(FILL_TIMES):
        began = perf_counter()
        fill = fill_to_target(fuel, cells, FILL_FOODS)
        times.append(1000.0 * (perf_counter() - began))
    yield Row(
        "fuel filled to target",
        "a millisecond",
        times,
        [1.0] * FILL_TIMES,
        (Goal("max", 1000.0),),
        note=f"{GOAL_S / 3600:g} h, {len(stations)} stations, {len(FILL_FOODS)} foods, "
        f"{len(fill.items)} items, {len(fill.reasons)} bands not met",
    )


def _paced(gradient: np.ndarray) -> float:
    """Return the seconds over all pieces at one power, summed once."""
    cost = np.zeros_like(gradient)
    for factor in _COST:
        cost = cost * gradient + factor
    return float(np.sum(cost * (STEP_M / 9.0)))


def _totals(sessions: tuple[Session, ...]) -> tuple[object, ...]:
    """Return sums by week and by kind and two running means, by dicts and loops alone."""
    first = sessions[0].day
    by_week: dict[int, list[float]] = defaultdict(lambda: [0.0, 0.0, 0.0])
    by_kind: dict[str, float] = defaultdict(float)
    by_day: dict[date, float] = defaultdict(float)
    for session in sessions:
        week = by_week[(session.day - first).days // 7]
        week[0] += session.distance_m
        week[1] += session.climb_m
        week[2] += session.duration_s * session.effort
        by_kind[session.kind] += session.distance_m
        by_day[session.day] += session.duration_s * session.effort
    short = long = 0.0
    means = []
    for ago in range((sessions[-1].day - first).days + 1):
        load = by_day.get(first + timedelta(days=ago), 0.0)
        short += (load - short) / 7.0
        long += (load - long) / 28.0
        means.append((short, long))
    return by_week, by_kind, means


def _eaten(fuel: FuelPlan) -> tuple[object, ...]:
    """Return sums by hour and in all, each item looked at once."""
    foods = {food.key: food for food in fuel.foods}
    hours: dict[int, list[float]] = defaultdict(lambda: [0.0, 0.0, 0.0])
    carb_g = fluid_ml = sodium_mg = 0.0
    for item in fuel.items:
        food, n = foods[item.food], item.servings
        hour = hours[int(item.at_s // 3600.0)]
        hour[0] += food.carb_g * n
        hour[1] += food.fluid_ml * n
        hour[2] += food.sodium_mg * n
        carb_g += food.carb_g * n
        fluid_ml += food.fluid_ml * n
        sodium_mg += food.sodium_mg * n
    return hours, carb_g, fluid_ml, sodium_mg
