"""A small project with one of everything, and every edit with figures it takes."""

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta

import numpy as np

from ultraplanner_gui.edits import block, compound, course, fuel, project, race
from ultraplanner_gui.plan.block import Block, Done, Kind, Session
from ultraplanner_gui.plan.cards import Card, CardKind
from ultraplanner_gui.plan.course import (
    AidStation,
    Course,
    Line,
    Section,
    Surface,
    SurfaceSpan,
    sections_between,
)
from ultraplanner_gui.plan.fuel import Food, FuelItem, FuelPlan
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner

RACE_DAY = date(2027, 6, 19)
RUN_DAY = RACE_DAY - timedelta(days=30)
STATIONS = (
    AidStation("ford", "Ford", 12_000.0, cutoff_s=9_000.0, stop_s=120.0),
    AidStation("barn", "Barn", 30_000.0, stop_s=300.0),
)
FORD, FINISH = sections_between(STATIONS)[0], sections_between(STATIONS)[-1]
COURSE = Course(
    Line(np.array([54.0, 54.3]), np.array([-3.0, -3.0]), np.array([100.0, 300.0])),
    50_000.0,
    STATIONS,
    (
        replace(FORD, target_s=5_000.0),
        Section("free", end_m=20_000.0),
        *sections_between(STATIONS)[1:],
    ),
    (SurfaceSpan(0.0, 4_000.0, Surface.ROAD),),
)
PLANNED = Session("easy", RUN_DAY, Kind.EASY, 8_000.0, 3_000.0, 100.0, 90.0, carb_g_per_h=30.0)
DONE = Done(7_900.0, 3_100.0, 95.0, 90.0, 4, 25.0)
RUN = replace(PLANNED, key="run", kind=Kind.LONG, day=RUN_DAY - timedelta(days=7), done=DONE)
RACE = Session("race", RACE_DAY, Kind.RACE, 50_000.0, 8 * 3600.0, effort=8)
BLOCK = Block((RUN, PLANNED, RACE), first_week=6)
GEL = Food("gel", "Gel", "1 packet", 40.0, 25.0, 60.0, 0.0, 30.0, 100.0)
DRINK = Food("drink", "Drink", "500 mL", 540.0, 36.0, 300.0, 500.0)
FUEL = FuelPlan(
    foods=(GEL, DRINK),
    items=(
        FuelItem("item", "gel", 1_800.0),
        FuelItem("item-2", "drink", 3_600.0, 0.5),
        FuelItem("item-3", "gel", 5_400.0, 2.0),
    ),
)
PROJECT = Project(
    race=Race("Round", datetime(2027, 6, 19, 6, tzinfo=UTC), 8 * 3600.0, 12 * 3600.0),
    course=COURSE,
    runner=Runner("Someone"),
    block=BLOCK,
    fuel=FUEL,
)

#: Every edit, with the parts of the project it may touch.
EDITS = (
    (course.MoveSectionEnd("free", 22_000.0), {"course"}),
    (course.MoveSectionEnd(FORD.key, 11_000.0), {"course"}),
    (course.SetSectionTarget("free", 4_000.0), {"course"}),
    (course.SetSectionTarget(FORD.key, None), {"course"}),
    (course.FreeAllTargets(), {"course"}),
    (course.NoteHardStretch("free", "Eat."), {"course"}),
    (course.ChangeStation(replace(STATIONS[1], cutoff_s=20_000.0, stop_s=60.0)), {"course"}),
    (course.AddStation("Spring", 40_000.0, 25_000.0, 60.0), {"course"}),
    (course.RemoveStation("ford"), {"course"}),
    (course.ReplaceCourse(replace(COURSE, name="Other way")), {"course"}),
    (block.MoveSession("easy", RUN_DAY + timedelta(days=2)), {"block"}),
    (block.ChangeSession(replace(PLANNED, distance_m=9_000.0, done=DONE)), {"block"}),
    (block.AddSession(replace(PLANNED, key="")), {"block"}),
    (block.RemoveSession("easy"), {"block"}),
    (block.MarkDone("easy", DONE), {"block"}),
    (block.MarkMissed("easy"), {"block"}),
    (block.ReplaceBlock(replace(BLOCK, first_week=5)), {"block"}),
    (fuel.MoveItem("item", 4_000.0), {"fuel"}),
    (fuel.ChangeItem(FuelItem("item", "drink", 900.0, 0.25)), {"fuel"}),
    (fuel.AddItem("gel", 7_200.0, 1.5), {"fuel"}),
    (fuel.RemoveItem("item"), {"fuel"}),
    (fuel.PlaceItems((FuelItem("a", "gel", 900.0, 2.0), FuelItem("b", "drink", 0.0))), {"fuel"}),
    (fuel.SetFuelRates(70.0, 600.0, 500.0, 900.0, 1_500.0), {"fuel"}),
    (fuel.ChangeFood(replace(GEL, carb_g=30.0)), {"fuel"}),
    (fuel.RemoveFood("gel"), {"fuel"}),
    (race.ChangeRace(replace(PROJECT.race, name="Other")), {"race", "block"}),
    (
        race.ChangeSetup(replace(PROJECT.race, goal_s=30_000.0), Runner("Other"), 6),
        {"race", "block", "runner", "first_weekday"},
    ),
    (
        compound.PasteCells(
            (
                block.ChangeSession(replace(PLANNED, distance_m=9_000.0)),
                course.SetSectionTarget("free", 4_000.0),
            )
        ),
        {"block", "course"},
    ),
    (project.WriteNotes("Poles?"), {"notes"}),
    (project.SetFirstWeekday(6), {"first_weekday"}),
    (project.ChooseCards((Card(CardKind.PACE, 90.0, 130.0),)), {"cards"}),
    (
        project.GoBack(replace(PROJECT, notes="As it was.")),
        {"race", "course", "runner", "block", "fuel", "cards", "notes", "first_weekday"},
    ),
)


def edit_id(pair):
    """Return the name of an edit for a parametrised test."""
    return type(pair[0] if isinstance(pair, tuple) else pair).__name__
