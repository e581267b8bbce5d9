"""A small project with one of everything, and every edit with figures it takes."""

from datetime import UTC, date, datetime, timedelta

import numpy as np
from msgspec.structs import replace

from ultraplanner_gui.edits import (
    better_block,
    block,
    block_moves,
    cards,
    compound,
    course,
    course_shape,
    fuel,
    fuel_habits,
    head,
    logistics,
    pace,
    project,
    race,
    recordings,
    review,
    sections,
    stations,
    surfaces,
    template,
    training,
)
from ultraplanner_gui.engine.check import Mend
from ultraplanner_gui.engine.section_cuts import CutBy
from ultraplanner_gui.plan.block import Block, Done, Kind, Session
from ultraplanner_gui.plan.candidates import Candidate, CandidateStop
from ultraplanner_gui.plan.cards import Card, CardKind
from ultraplanner_gui.plan.conditions import Conditions, Effect, ValleyForecast
from ultraplanner_gui.plan.course import (
    AidStation,
    Course,
    IfStop,
    Line,
    Pin,
    Reading,
    Section,
    Surface,
    SurfaceFactors,
    SurfaceSpan,
    sections_between,
)
from ultraplanner_gui.plan.fuel import (
    Allergen,
    Before,
    Caffeine,
    CaffeineLimit,
    Carrying,
    Effort,
    Food,
    FuelItem,
    FuelPlan,
    Keep,
    Portion,
    SweatTest,
    Tank,
)
from ultraplanner_gui.plan.ground import GroundAtHand, GroundKind, Repeat
from ultraplanner_gui.plan.head import DayGoal, DayKind, Head, Worry
from ultraplanner_gui.plan.logistics import (
    IfThen,
    KitPlace,
    Logistics,
    OwnDay,
    PlaceNotes,
    Visit,
)
from ultraplanner_gui.plan.message import message
from ultraplanner_gui.plan.pacing import Pacing, PastRun, ResultKind
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.plan.review import Lesson, PinnedTo, Review, Taken
from ultraplanner_gui.plan.runner import Health, Runner
from ultraplanner_gui.plan.wishes import Away, Wishes

RACE_DAY = date(2027, 6, 19)
RUN_DAY = RACE_DAY - timedelta(days=30)
STATIONS = (
    AidStation("ford", "Ford", 12_000.0, cutoff_s=9_000.0, stop_s=120.0),
    AidStation("barn", "Barn", 30_000.0, stop_s=300.0),
)
FORD, FINISH = sections_between(STATIONS)[0], sections_between(STATIONS)[-1]
COURSE = Course(
    Line(
        np.array([54.0, 54.15, 54.0]),
        np.array([-3.0, -3.0, -3.0]),
        np.array([100.0, 300.0, 100.0]),
    ),
    50_000.0,
    STATIONS,
    (
        replace(FORD, target_s=5_000.0),
        Section("free", end_m=20_000.0),
        *sections_between(STATIONS)[1:],
    ),
    (SurfaceSpan(0.0, 4_000.0, Surface.ROAD),),
)
#: Another leg that starts where the course does, so that they can be run behind one another.
LEG = Course(
    Line(np.array([54.0, 54.1]), np.array([-3.0, -3.0]), np.array([100.0, 180.0])),
    12_000.0,
    (AidStation("gate", "Gate", 6_000.0, cutoff_s=4_000.0),),
    sections_between((AidStation("gate", "Gate", 6_000.0),)),
    (SurfaceSpan(0.0, 2_000.0, Surface.GRAVEL),),
    official_m=12_000.0,
    official_climb_m=90.0,
    official_drop_m=5.0,
    pins=(Pin(6_500.0, 6_000.0),),
    surface_factors=(SurfaceFactors(Surface.SAND, 1.5, 0.8),),
)
PLANNED = Session("easy", RUN_DAY, Kind.EASY, 8_000.0, 3_000.0, 100.0, 90.0, carb_g_per_h=30.0)
DONE = Done(7_900.0, 3_100.0, 95.0, 90.0, 4, 25.0)
RUN = replace(PLANNED, key="run", kind=Kind.LONG, day=RUN_DAY - timedelta(days=7), done=DONE)
HILLS = Session("hills", RUN_DAY + timedelta(days=9), Kind.HILLS, 9_000.0, 3_600.0, 250.0, 250.0)
RACE = Session("race", RACE_DAY, Kind.RACE, 50_000.0, 8 * 3600.0, effort=8)
BLOCK = Block((RUN, PLANNED, HILLS, RACE), first_week=6)
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
HILL = GroundAtHand("hill", GroundKind.HILL, "Hill", 600.0, 60.0)
LOOP = GroundAtHand(
    *("loop", GroundKind.LOOP, "Loop", 800.0, 20.0, 20.0),
    distance_m=(0.0, 400.0, 800.0),
    elevation_m=(100.0, 120.0, 100.0),
)
OTHER = Candidate(
    *("other", "Other", date(2027, 7, 3), 60_000.0, 2_000.0, 1_900.0, 43_200.0),
    stops=(CandidateStop(20_000.0, 12_000.0, 600.0), CandidateStop(40_000.0, 27_000.0, 1_500.0)),
    latitude_deg=46.0,
    longitude_deg=8.0,
)
RECORDED = KeptRecording(
    *("rec", "may.gpx", b"packed", False, "May", datetime(2027, 5, 1, 8, tzinfo=UTC)),
    *(12_000.0, 4_000.0, 3_900.0, 200.0, 190.0, "easy"),
)
PROJECT = Project(
    race=Race(
        *("Round", datetime(2027, 6, 19, 6, tzinfo=UTC), 8 * 3600.0, 12 * 3600.0),
        mandatory_kit=("whistle", "foil blanket"),
    ),
    course=COURSE,
    runner=Runner("Someone", health=Health.CLEAR, grounds=(HILL, LOOP)),
    block=BLOCK,
    fuel=FUEL,
    candidates=(OTHER,),
    recordings=(RECORDED,),
    lessons=(Lesson("lesson", "Walk the first climb"),),
)

WEATHER = ValleyForecast(9.0, 26.0, 45.0, 300.0)
PAST_RUNS = (PastRun(50_000.0, 1_900.0, 24_000.0, ResultKind.RACE, "Spring fifty"),)

#: Every edit, with the parts of the project it may touch.
EDITS = (
    (course.MoveSectionEnd("free", 22_000.0), {"course"}),
    (course.MoveSectionEnd(FORD.key, 11_000.0), {"course"}),
    (course.SetSectionTarget("free", 4_000.0), {"course"}),
    (course.SetSectionTarget(FORD.key, None), {"course"}),
    (course.FreeAllTargets(), {"course"}),
    (course.NoteHardStretch("free", "Eat."), {"course"}),
    (course.ChangeStation(replace(STATIONS[1], cutoff_s=20_000.0, stop_s=60.0)), {"course"}),
    (stations.MoveStation("barn", 32_000.0), {"course"}),
    (stations.SetStop("ford", 240.0), {"course"}),
    (stations.MoveStart(PROJECT.race.start + timedelta(minutes=30)), {"race", "block"}),
    (course.AddStation("Spring", 40_000.0, 25_000.0, 60.0), {"course"}),
    (course.RemoveStation("ford"), {"course"}),
    (course.ReplaceCourse(replace(COURSE, name="Other way")), {"course"}),
    (course_shape.TrimCourse(0.0, 45_000.0), {"course"}),
    (course_shape.ReverseCourse(), {"course"}),
    (course_shape.RunLaps(3, "Base"), {"course"}),
    (course_shape.GoOutAndBack("Turn"), {"course"}),
    (course_shape.JoinCourse(LEG), {"course"}),
    (course_shape.SetOfficialDistance(52_000.0), {"course"}),
    (course_shape.SetOfficialHeights(250.0, 260.0), {"course"}),
    (course_shape.TakeHeightsAsFeet(), {"course"}),
    (course_shape.PinStation("ford", 12_500.0), {"course"}),
    (course_shape.ReadAgain(replace(LEG, reading=Reading("leg.gpx"))), {"course"}),
    (recordings.AddRecordings((replace(RECORDED, key="new"),)), {"recordings"}),
    (recordings.RemoveRecording("rec"), {"recordings", "reviews"}),
    (recordings.MatchRecording("rec", "", True), {"recordings"}),
    (recordings.RenameRecording("rec", "Along the dyke"), {"recordings"}),
    (review.ChangeReview(Review("rec", note="Cold.", taken=(Taken(3_600.0, "gel"),))), {"reviews"}),
    (review.NewLesson("Eat early", PinnedTo.HOUR, 7_200.0), {"lessons"}),
    (review.ChangeLesson("lesson", answer="Two gels."), {"lessons"}),
    (review.RemoveLesson("lesson"), {"lessons"}),
    (
        head.ChangeHead(
            Head((Worry("The dark", "two night runs"),), (DayGoal(DayKind.HARD, "Arrive", 4e4),)),
            (IfThen("sick", "walk"),),
        ),
        {"head", "logistics"},
    ),
    (head.TickKit("whistle", True, KitPlace.BAG, "ford"), {"logistics"}),
    (head.SetOwnDays((OwnDay(3, 64_800.0, "Collect the number"),)), {"logistics"}),
    (sections.CutSections(CutBy.DISTANCE, 10_000.0), {"course"}),
    (sections.CutSections(CutBy.STATIONS), {"course"}),
    (sections.CutSections(CutBy.CLIMBS, with_stations=False), {"course"}),
    (sections.SplitSection(25_000.0), {"course"}),
    (sections.MergeSections("free"), {"course"}),
    (sections.RenameSection("free", "Over the moor"), {"course"}),
    (surfaces.PaintSurface(3_000.0, 9_000.0, Surface.ROCK), {"course"}),
    (surfaces.SetSurfaceFactors(Surface.ROAD, 1.1, 0.9), {"course"}),
    (block.MoveSession("easy", RUN_DAY + timedelta(days=2)), {"block"}),
    (block.ChangeSession(replace(PLANNED, distance_m=9_000.0, done=DONE)), {"block"}),
    (
        block.ChangeSession(
            replace(PLANNED, at_s=25_200.0, repeats=(Repeat("hill", 6, 0.1, 300.0, 60.0),))
        ),
        {"block"},
    ),
    (block.AddSession(replace(PLANNED, key="")), {"block"}),
    (block.RemoveSession("easy"), {"block"}),
    (block.MarkDone("easy", DONE), {"block"}),
    (block.MarkMissed("easy"), {"block"}),
    (block.ReplaceBlock(replace(BLOCK, first_week=5)), {"block"}),
    (better_block.TakeBetterBlock(BLOCK, replace(BLOCK, first_week=7)), {"block"}),
    (template.ApplyTemplate(replace(BLOCK, first_week=8)), {"block"}),
    (block_moves.MoveSessions(("easy", "hills"), 3), {"block"}),
    (block_moves.CopySessions(("easy", "run"), 14), {"block"}),
    (block_moves.PasteSessions((PLANNED, HILLS), RUN_DAY), {"block"}),
    (block_moves.RepeatWeekly(("easy",), 2), {"block"}),
    (block_moves.LengthenSession("easy", 9_500.0), {"block"}),
    (block_moves.SwapSessions("easy", "hills"), {"block"}),
    (block_moves.SwapWeeks(RUN_DAY, RUN_DAY + timedelta(days=7)), {"block"}),
    (block_moves.LockSessions(("easy",), True), {"block"}),
    (block_moves.TakeRepair(replace(BLOCK, first_week=4)), {"block"}),
    (block_moves.RemoveSessions(("easy", "run")), {"block"}),
    (
        block_moves.ShiftWithRace(
            race.ChangeRace(replace(PROJECT.race, start=PROJECT.race.start + timedelta(weeks=2))),
            RUN_DAY,
        ),
        {"race", "block"},
    ),
    (fuel.MoveItem("item", 4_000.0), {"fuel"}),
    (fuel.ChangeItem(FuelItem("item", "drink", 900.0, 0.25)), {"fuel"}),
    (fuel.AddItem("gel", 7_200.0, 1.5), {"fuel"}),
    (fuel.RemoveItem("item"), {"fuel"}),
    (fuel.PlaceItems((FuelItem("a", "gel", 900.0, 2.0), FuelItem("b", "drink", 0.0))), {"fuel"}),
    (fuel.SetFuelRates(70.0, 600.0, 500.0, 900.0, 1_500.0), {"fuel"}),
    (fuel.ChangeFood(replace(GEL, carb_g=30.0)), {"fuel"}),
    (fuel.RemoveFood("gel"), {"fuel"}),
    (fuel.CopyItem("gel", 7_200.0, 1.5, at_m=9_000.0), {"fuel"}),
    (fuel.RepeatItem((FuelItem("a", "gel", 900.0, at_m=2_000.0),)), {"fuel"}),
    (fuel.FillToTarget((FuelItem("a", "gel", 900.0, 2.0),)), {"fuel"}),
    (fuel.KeepItems((FuelItem("item", "gel", 900.0, 2.0, 2_000.0),), keep=Keep.PLACE), {"fuel"}),
    (fuel.ClearItems(), {"fuel"}),
    (fuel_habits.SetStationFoods("ford", ("gel",)), {"course"}),
    (fuel_habits.SetCarrying(Carrying(3, 600.0, 0.2)), {"fuel"}),
    (fuel_habits.SetCaffeine(Caffeine(True, CaffeineLimit.LOWER)), {"fuel"}),
    (fuel_habits.SetTank(Tank(52.0, Effort.HARD)), {"fuel"}),
    (fuel_habits.SetBefore(Before(3, 8.0, 2.0, 100.0)), {"fuel"}),
    (fuel_habits.SetAllergens((Allergen.NUTS, Allergen.MILK)), {"fuel"}),
    (fuel_habits.SetFuelHabits((fuel_habits.SetCarrying(Carrying(3, 600.0)),)), {"fuel"}),
    (fuel_habits.SetTables((fuel_habits.SetStationFoods("ford", ("gel",)),)), {"course"}),
    (
        fuel_habits.PutPracticeFood(
            (block.ChangeSession(replace(PLANNED, foods=(Portion("gel", 2.0),))),)
        ),
        {"block"},
    ),
    (
        fuel_habits.SetSweatTests((SweatTest(RUN_DAY, 70.0, 68.4, 0.8, 0.2, 1.5),)),
        {"fuel"},
    ),
    (race.ChangeRace(replace(PROJECT.race, name="Other")), {"race", "block"}),
    (pace.ShapeTarget(Pacing(0.25, False)), {"pacing"}),
    (
        pace.SetConditions(Conditions(WEATHER, (Effect.ALTITUDE,), 32_400.0), 0.15),
        {"conditions", "runner"},
    ),
    (pace.SetPastRuns(PAST_RUNS), {"runner"}),
    (pace.UseAsGoal(27_000.0, 0.08, PAST_RUNS), {"race", "block", "runner"}),
    (pace.TakeFit(0.14, 0.95, 0.9), {"runner"}),
    (pace.SetPace(Pacing(0.3), 0.12, 0.85, 1.1, 0.8), {"pacing", "runner"}),
    (
        race.ChangeSetup(replace(PROJECT.race, goal_s=30_000.0), Runner("Other"), 6),
        {"race", "block", "runner", "first_weekday"},
    ),
    (
        compound.ImportSessions((block.ChangeSession(replace(PLANNED, distance_m=9_500.0)),)),
        {"block"},
    ),
    (compound.Together((sections.RenameSection("free", "Moor"),)), {"course"}),
    (compound.SetOfficialFigures((course_shape.SetOfficialHeights(255.0, 245.0),)), {"course"}),
    (compound.DescribeSection((sections.RenameSection("free", "Ridge"),)), {"course"}),
    (compound.SetSurfaceCosts((surfaces.SetSurfaceFactors(Surface.ROCK, 1.3, 0.6),)), {"course"}),
    (compound.MoveSurface((surfaces.PaintSurface(0.0, 500.0, Surface.SAND),)), {"course"}),
    (compound.ChangePinnedStation((course_shape.PinStation("ford", 12_400.0),)), {"course"}),
    (
        compound.PasteCells(
            (
                block.ChangeSession(replace(PLANNED, distance_m=9_000.0)),
                course.SetSectionTarget("free", 4_000.0),
            )
        ),
        {"block", "course"},
    ),
    (training.SetHealth(Health.ASK_FIRST), {"runner"}),
    (training.SetWishes(Wishes(cutback_every=3, strength=1)), {"runner"}),
    (
        training.SetAway((Away(date(2027, 5, 1), date(2027, 5, 8), 1_800.0, "at sea"),)),
        {"runner"},
    ),
    (
        training.AddGround(GroundAtHand("", GroundKind.TREADMILL, "Mill", most_gradient=0.15)),
        {"runner"},
    ),
    (training.ChangeGround(replace(LOOP, name="Park")), {"runner"}),
    (training.RemoveGround("hill"), {"runner"}),
    (training.AddCandidate(replace(OTHER, key="", name="Third")), {"candidates"}),
    (training.ChangeCandidate(replace(OTHER, climb_m=2_500.0)), {"candidates"}),
    (training.RemoveCandidate("other"), {"candidates"}),
    (
        training.MendBlock(
            Mend(message("Shorter."), (replace(PLANNED, distance_m=7_000.0),), (4,))
        ),
        {"block"},
    ),
    (project.WriteNotes("Poles?"), {"notes"}),
    (project.SetFirstWeekday(6), {"first_weekday"}),
    (cards.ChooseCards((Card(CardKind.PACE, 90.0, 130.0),)), {"cards"}),
    (
        logistics.ChangeLogistics(Logistics(visits=(Visit("barn", "A."),), cues=("Eat.",))),
        {"logistics"},
    ),
    (
        logistics.ChangeLogistics(
            Logistics(drives_home="A."),
            ("whistle",),
            "112",
            (PlaceNotes("barn", "By the lane.", IfStop("bus", "A.", "1 h", "555")),),
        ),
        {"logistics", "race", "course"},
    ),
    (logistics.TypeWeekBack((("easy", DONE), ("run", None))), {"block"}),
    (
        project.GoBack(replace(PROJECT, notes="As it was.")),
        {"race", "course", "runner", "block", "fuel", "cards", "notes", "first_weekday"},
    ),
)


def edit_id(pair):
    """Return the name of an edit for a parametrised test."""
    return type(pair[0] if isinstance(pair, tuple) else pair).__name__
