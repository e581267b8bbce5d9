"""Invented plans and files of the sizes the measurements speak of."""

from __future__ import annotations

import math
from datetime import UTC, date, datetime, timedelta
from functools import cache
from pathlib import Path

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.desk import resources
from ultraplanner_gui.exchange.foods_in import read_foods
from ultraplanner_gui.plan.block import Block, Done, Ground, Kind, Session
from ultraplanner_gui.plan.course import AidStation, Course, Line, sections_between
from ultraplanner_gui.plan.fuel import FuelItem, FuelPlan
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.science.geodesy import distance_along

WEEKS = 24
SESSIONS = 300
POINTS = 16_000
STATIONS = 20
ITEMS = 200
CROWDED_STATIONS, CROWDED_ITEMS = 25, 300
GOAL_S = 30 * 3600.0
RACE_DAY = date(2027, 6, 19)
TODAY = RACE_DAY - timedelta(weeks=10)
STEP_M = 10.0
M_PER_DEGREE = 111_195.0

_KINDS = (Kind.EASY, Kind.HILLS, Kind.EASY, Kind.TEMPO, Kind.RECOVERY, Kind.LONG, Kind.SECOND_LONG)


@cache
def large_project() -> Project:
    """Return 24 weeks of 300 sessions, a course of 16,000 steps and 30 h with 200 items."""
    start = datetime(RACE_DAY.year, RACE_DAY.month, RACE_DAY.day, 6, tzinfo=UTC)
    return Project(
        race=Race("Long way round", start, GOAL_S, 36 * 3600.0),
        course=course(POINTS + 1, STEP_M),
        runner=Runner(weekly_m=60_000.0, longest_m=25_000.0),
        block=block(),
        fuel=fuel(),
    )


@cache
def crowded_project() -> Project:
    """Return the same with 25 aid stations and 300 items, for drags through the window."""
    ground = course(POINTS + 1, STEP_M, CROWDED_STATIONS)
    return replace(large_project(), course=ground, fuel=fuel(CROWDED_ITEMS))


def course(points: int, step_m: float, count: int = STATIONS) -> Course:
    """Return a course of *points*, *step_m* apart, with *count* aid stations, and cutoffs."""
    north, up = _ground(points, step_m)
    line = Line(50.0 + north, np.full(points, 8.0), up)
    length_m = float(distance_along(line.latitude_deg, line.longitude_deg)[-1])
    stations = tuple(
        AidStation(
            f"station-{k}",
            f"Station {k}",
            round(length_m * k / (count + 1)),
            cutoff_s=1.2 * GOAL_S * k / (count + 1) if k % 2 else None,
            stop_s=300.0,
        )
        for k in range(1, count + 1)
    )
    return Course(line, length_m, stations, sections_between(stations), name="Long way round")


def _ground(points: int, step_m: float) -> tuple[np.ndarray, np.ndarray]:
    at_m = np.arange(points) * step_m
    up_m = 900.0 + 350.0 * np.sin(at_m / 2300.0) + 25.0 * np.sin(at_m / 170.0)
    return at_m / M_PER_DEGREE, np.round(up_m, 1)


def block(weeks: int = WEEKS, count: int = SESSIONS) -> Block:
    """Return *count* sessions over *weeks* until the race, every fourth week easier."""
    last = RACE_DAY - timedelta(days=1)
    first = RACE_DAY - timedelta(days=RACE_DAY.weekday(), weeks=weeks - 1)
    days = (last - first).days + 1
    sessions = [
        _session(k, first + timedelta(days=k * days // (count - 1))) for k in range(count - 1)
    ]
    race = Session("race", RACE_DAY, Kind.RACE, POINTS * STEP_M, GOAL_S, 9000.0, 9000.0, effort=8)
    return Block((*sessions, race), weeks - 1, tuple(range(3, weeks, 4)), 2)


def _session(number: int, day: date) -> Session:
    kind = _KINDS[day.weekday()]
    distance_m = 6000.0 + 500.0 * (number % 9) + (12_000.0 if kind is Kind.LONG else 0.0)
    session = Session(
        f"session-{number}",
        day,
        kind,
        distance_m,
        distance_m * 0.39,
        20.0 * (number % 11),
        20.0 * (number % 11),
        tuple(Ground)[number % len(Ground)],
        3 + number % 4,
        50.0 if kind is Kind.LONG else 0.0,
    )
    if day >= TODAY:
        return session
    done = Done(distance_m * 0.98, session.duration_s, session.climb_m, session.drop_m)
    return replace(session, done=done)


def fuel(count: int = ITEMS) -> FuelPlan:
    """Return *count* items of what feeds, evenly over the race."""
    foods = read_foods(resources.path("foods.csv"))
    fed = [food for food in foods if food.carb_g > 0.0]
    items = tuple(
        FuelItem(f"item-{k}", fed[k % len(fed)].key, GOAL_S * (k + 0.5) / count)
        for k in range(count)
    )
    return FuelPlan(foods=foods, items=items)


def write_gpx(path: Path, points: int = 100_000) -> None:
    """Write a track of *points*, each with height and time, about 100 bytes a point."""
    north, up_m = _ground(points, 2.0)
    start = datetime(2026, 5, 1, 5, tzinfo=UTC)
    head = '<?xml version="1.0" encoding="UTF-8"?>\n'
    head += '<gpx version="1.1" creator="bench" xmlns="http://www.topografix.com/GPX/1/1">\n'
    with path.open("w", encoding="utf-8") as out:
        out.write(f"{head}<trk><name>Bench</name><trkseg>\n")
        for k in range(points):
            east = 8.0 + 0.01 * math.sin(k / 900.0)
            clock = (start + timedelta(seconds=k)).strftime("%Y-%m-%dT%H:%M:%SZ")
            out.write(
                f'<trkpt lat="{50.0 + north[k]:.7f}" lon="{east:.7f}">'
                f"<ele>{up_m[k]:.1f}</ele><time>{clock}</time></trkpt>\n"
            )
        out.write("</trkseg></trk></gpx>\n")
