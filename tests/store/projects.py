"""Projects to keep: a full one, and strategies that build any within its ranges."""

import gzip
from datetime import UTC, date, datetime, timedelta, timezone
from zoneinfo import ZoneInfo

import numpy as np
from hypothesis import strategies as st
from msgspec.structs import replace

from ultraplanner_gui.plan.block import Block, Done, Ground, Gut, Kind, Mind, Session
from ultraplanner_gui.plan.candidates import Candidate, CandidateStop
from ultraplanner_gui.plan.cards import Card, CardForm, CardKind, CardPart, CardUnits
from ultraplanner_gui.plan.conditions import Conditions, Effect, ValleyForecast
from ultraplanner_gui.plan.course import (
    AidStation,
    Course,
    CutoffKind,
    IfStop,
    Kit,
    Line,
    Offer,
    Pin,
    Reading,
    Repair,
    RepairKind,
    Section,
    Slope,
    StopKind,
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
    Shape,
    Sugars,
    SweatTest,
    Tank,
    Tolerance,
)
from ultraplanner_gui.plan.ground import GroundAtHand, GroundKind, Repeat
from ultraplanner_gui.plan.head import DayGoal, DayKind, Head, Worry
from ultraplanner_gui.plan.logistics import (
    BagLine,
    CrewMember,
    Identity,
    IfThen,
    KitPlace,
    Logistics,
    OwnDay,
    PackedKit,
    Visit,
)
from ultraplanner_gui.plan.message import Message, Quantity
from ultraplanner_gui.plan.pacing import Pacing, PastRun, ResultKind
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.plan.review import Ending, Lesson, PinnedTo, Remark, Review, Taken
from ultraplanner_gui.plan.runner import Health, Level, Runner
from ultraplanner_gui.plan.wishes import Ask, Away, Ramp, Wishes, Yardstick


def full_project(sessions=300, points=16_000):
    """A project with something in every field."""
    start = datetime(2027, 6, 19, 6, 0, tzinfo=ZoneInfo("Europe/London"))
    foods = tuple(full_food(f"f{i}") for i in range(12))
    items = tuple(
        FuelItem(f"i{i}", f"f{i % 12}", 1_800.0 + 1_200.0 * i, 1.5, 9_000.0 if i == 7 else None)
        for i in range(30)
    )
    return Project(
        Race("Hill round", start, 46_800.0, 54_000.0, ("foil blanket", "whistle"), "call 112"),
        full_course(points),
        full_runner(),
        Block(tuple(full_session(i) for i in range(sessions)), 24, (20, 16, 12), 3),
        FuelPlan(70.0, 600.0, 500.0, 1_500.0, 900.0, foods, items, *full_habits()),
        (
            Card(
                *(CardKind.FUEL, 70.0, 180.0, CardForm.SHEET, 2, (CardPart.SODIUM,)),
                *(CardUnits.IMPERIAL, "de_DE"),
            ),
        ),
        "Line one\nline two, with \ud800 a stray half and \N{RUNNER}",
        6,
        (full_candidate(),),
        Conditions(
            ValleyForecast(9.0, 28.0, 45.0, 340.0, 5.0, 16.0),
            (Effect.ALTITUDE, Effect.DESCENTS),
            32_400.0,
        ),
        Pacing(0.25, False),
        full_logistics(),
        Head(
            (Worry("The dark", "run twice with the lamp"),),
            (DayGoal(DayKind.FAIR, "run into the valley", 50_000.0),),
            ("the long ridge at dawn",),
        ),
        (full_recording(),),
        (
            Review(
                *("r1", Ending.STOPPED, "the knee", (Taken(5_400.0, "f1", 2.0),)),
                *((Remark(12_000.0, "hail"),), "cold from the start"),
            ),
        ),
        (
            Lesson(
                "l1",
                "eat before it",
                PinnedTo.CLIMB,
                7_200.0,
                2,
                "Gel",
                "Old race 2026",
                "two gels",
            ),
        ),
    )


def full_runner():
    free_s = (0.0, 1.0, 2.0, 3.0, 4.0, 5.0, 6.0)
    return Runner(
        "R.",
        61.5,
        52_000.0,
        24_000.0,
        2.75,
        free_s,
        6,
        Level.AMBITIOUS,
        fade=0.12,
        fade_onset_h=1.5,
        health=Health.CLEAR,
        weekly_s=25_200.0,
        longest_s=10_800.0,
        longest_drop_m=640.0,
        hill_m_per_h=650.0,
        start_s=(21_600.0,) * 7,
        wishes=full_wishes(),
        away=(Away(date(2027, 2, 1), date(2027, 2, 7), 1_800.0, "at sea"),),
        grounds=full_grounds(),
        descent_speed=0.9,
        finish_spread=0.07,
        tired_walk=0.8,
        past_runs=(
            PastRun(50_000.0, 1_900.0, 24_000.0, ResultKind.RACE, "Spring fifty"),
            PastRun(30_000.0, 900.0, 14_000.0, ResultKind.LONG_RUN, flat_m=33_000.0),
        ),
    )


def full_recording():
    start = datetime(2027, 5, 1, 5, 30, tzinfo=UTC)
    packed = gzip.compress(b"<gpx/>\n" * 20, mtime=0)
    figures = (20_000.0, 8_000.0, 7_700.0, 600.0, 590.0)
    named = ("r1", "may.gpx.gz", packed, True, "May", start)
    return KeptRecording(*named, *figures, "s3", True, 24_000.0, 0.07)


def full_logistics():
    return Logistics(
        Identity("R. Runner", "123", "1980", "A. 555", ("no penicillin",)),
        (CrewMember("A.", "555", "drives"),),
        (Visit("hut", "A.", ("dry socks",), ("Eaten?",)),),
        "A.",
        ("Warm?",),
        (BagLine("hut", "lamp"),),
        ("foil blanket",),
        ("salt",),
        (IfThen("it hurts", "walk", "hut", ("s4",)),),
        ("light feet",),
        (PackedKit("whistle", KitPlace.BAG, "hut"),),
        (OwnDay(3, 64_800.0, "collect the number"),),
    )


def full_habits():
    """What a fuel plan holds besides its rates, foods and items."""
    return (
        Keep.PLACE,
        Carrying(3, 600.0, 0.2),
        Caffeine(True, CaffeineLimit.LOWER),
        Tank(52.0, Effort.STEADY, 0.2, 27.5, 110.0),
        Before(3, 8.0, 3.5, 100.0),
        (Allergen.MILK, Allergen.NUTS),
        (SweatTest(date(2027, 5, 1), 70.0, 68.4, 0.8, 0.2, 1.5, "warm"),),
    )


def full_wishes():
    rules = (3, Ramp.BACK, Yardstick.TIME)
    return Wishes(*rules, 1, 2_400.0, 1, 3_000.0, False, Ask.YES, False, True, False, 2, (5, 6))


def full_grounds():
    tread = GroundAtHand("t", GroundKind.TREADMILL, "Mill", most_gradient=0.15)
    figures = (900.0, 40.0, 40.0, 0.0, 0.0, Surface.ROCK)
    points = ((0.0, 400.0, 900.0), (300.0, 340.0, 300.0))
    return tread, GroundAtHand("l", GroundKind.LOOP, "Loop", *figures, *points)


def full_candidate():
    stops = (CandidateStop(12_000.0, 9_000.0, 700.0),)
    figures = (60_000.0, 2_900.0, 2_800.0, 46_800.0, 18_000.0)
    place = (stops, 45.5, 7.25, "Europe/Rome", "by train")
    return Candidate("c1", "Other ridge", date(2027, 7, 3), *figures, *place)


def full_course(points):
    steps = np.arange(points, dtype=float)
    height = 400.0 + 300.0 * np.sin(steps / 900.0)
    height[5:9] = np.nan
    line = Line(45.0 + steps * 1e-5, 7.0 + steps * 2e-5, height, gaps=(3, points // 2))
    offers = (Offer.WATER, Offer.CREW)
    stations = (
        AidStation(
            *("hut", "Hut – «Höhe»", 12_000.0, 9_000.0, 300.0, offers, "socks"),
            *(CutoffKind.DEPARTURE, StopKind.SLEEP, (Kit.SHOES, Kit.LAMP), True),
            IfStop("down the lane", "bus of the race", "2 h", "555"),
            "no car beyond the bridge",
            ("f3", "f4"),
        ),
        AidStation("mill", "Mill", 31_000.5, stop_s=60.0),
    )
    first, *others = sections_between(stations)
    sections = (
        replace(first, target_s=7_200.0, hard_note="Eat. Walk."),
        Section("free", end_m=20_000.0, name="The edge", slope=Slope.CLIMB, number=1),
        *others,
    )
    surfaces = (
        SurfaceSpan(0.0, 4_000.0, Surface.ROAD),
        SurfaceSpan(4_000.0, 9_000.0, Surface.ROCK),
    )
    repairs = (
        Message("{0} of {1} points had no height.", (Quantity(4.0, "count"), "16,000")),
        Repair("{0} heights jumped.", (Quantity(3.0, "count"),), RepairKind.SPIKES),
    )
    return Course(
        *(line, 50_000.25, stations, sections, surfaces, "Round the hill", repairs),
        *(50_000.25, 2_400.0, 2_380.0, (Pin(12_000.0, 11_500.0), Pin(40_000.0, 38_000.0))),
        (SurfaceFactors(Surface.ROCK, 1.3, 0.6),),
        Reading("hill.gpx", "track-2", (RepairKind.FEET,)),
    )


def full_session(i):
    done = Done(8_900.0, 3_500.0, 118.0, 79.0, 4, 44.0, Gut.UNEASY, "windy", (Portion("f1", 2.0),))
    return Session(
        f"s{i}",
        date(2027, 1, 4) + timedelta(days=i // 2),
        list(Kind)[i % 11],
        9_000.0 + i,
        3_600.5,
        120.0,
        80.0,
        Ground.SAW,
        1 + i % 10,
        45.0,
        fasted=i % 7 == 0,
        dark=i % 5 == 0,
        note="by the river",
        done=done if i < 40 else None,
        missed=i == 41,
        at_s=64_800.0 if i % 3 else None,
        surface=Surface.GRAVEL,
        ends_on=Ground.FALLING if i % 4 == 0 else None,
        heat=i % 6 == 0,
        mind=Mind.IF_THEN if i % 5 == 1 else None,
        repeats=(Repeat("t", 4, 0.08, 300.0, 40.0),) if i % 4 == 1 else (),
        locked=i % 9 == 0,
        foods=(Portion("f2", 1.5), Portion("f3")) if i % 6 == 2 else (),
    )


def full_food(key):
    figures = (40.0, 25.0, 50.0, 0.0, 30.0, 100.0)
    own = (1.5, 10.0, Tolerance.TOLERATED, (Allergen.SOYA,), False, 6.0)
    return Food(key, "Gel", "1 packet", *figures, Sugars.MIXED, Shape.GEL, "label", "packet", *own)


def small_project(notes=""):
    """A project without course, block and fuel."""
    race = Race("Plain", datetime(2027, 6, 19, 6, 0, tzinfo=UTC), 36_000.0)
    return Project(race, runner=Runner(fade=0.12, fade_onset_h=1.5), notes=notes)


figures = st.floats(0.0, 400_000.0)
words = st.text(max_size=12)
zones = st.sampled_from(
    (
        UTC,
        timezone(timedelta(hours=5, minutes=45)),
        ZoneInfo("Europe/London"),
        ZoneInfo("America/Lima"),
    )
)
clocks = st.datetimes(datetime(2000, 1, 2), datetime(2100, 1, 1), timezones=zones)
dones = st.builds(
    Done,
    figures,
    figures,
    figures,
    figures,
    st.integers(0, 10),
    figures,
    st.sampled_from([*Gut, None]),
    words,
)
sessions = st.builds(
    Session,
    words,
    st.dates(date(2000, 1, 1), date(2100, 1, 1)),
    st.sampled_from(Kind),
    figures,
    figures,
    figures,
    figures,
    st.sampled_from(Ground),
    st.integers(0, 10),
    st.floats(0.0, 120.0),
    st.booleans(),
    st.booleans(),
    words,
    st.none() | dones,
    st.booleans(),
)
blocks = st.builds(
    Block,
    st.lists(sessions, max_size=30, unique_by=lambda s: s.key).map(tuple),
    st.integers(0, 60),
    st.lists(st.integers(0, 60), max_size=5).map(tuple),
    st.integers(0, 4),
)
foods = st.builds(
    Food,
    words,
    words,
    words,
    figures,
    figures,
    figures,
    figures,
    figures,
    figures,
    st.sampled_from(Sugars),
    st.sampled_from(Shape),
    words,
    words,
)


@st.composite
def fuel_plans(draw):
    table = tuple(draw(st.lists(foods, min_size=1, max_size=4, unique_by=lambda f: f.key)))
    item = st.builds(
        FuelItem, words, st.sampled_from([f.key for f in table]), figures, st.floats(0.1, 50.0)
    )
    items = draw(st.lists(item, max_size=12, unique_by=lambda i: i.key))
    return FuelPlan(draw(figures), foods=table, items=tuple(items))


@st.composite
def courses(draw):
    points = draw(st.integers(2, 20))
    degrees = st.lists(st.floats(-90.0, 90.0), min_size=points, max_size=points)
    heights = st.lists(
        st.floats(-400.0, 9_000.0) | st.just(float("nan")), min_size=points, max_size=points
    )
    line = Line(*(np.array(draw(column)) for column in (degrees, degrees, heights)))
    places = sorted(draw(st.sets(st.integers(1, 999), max_size=4)))
    stations = tuple(
        AidStation(
            f"k{at}",
            draw(words),
            at * 100.0,
            draw(st.none() | figures),
            draw(figures),
            tuple(draw(st.sets(st.sampled_from(Offer)))),
        )
        for at in places
    )
    return Course(line, 100_000.0, stations, sections_between(stations), name=draw(words))


races = st.builds(
    Race, words, clocks, st.floats(600.0, 864_000.0), st.none() | st.floats(600.0, 864_000.0)
)
runners = st.builds(
    Runner, words, st.floats(30.0, 200.0), figures, figures, level=st.sampled_from(Level)
)
projects = st.builds(
    Project,
    races,
    st.none() | courses(),
    runners,
    blocks,
    fuel_plans(),
    st.lists(st.builds(Card, st.sampled_from(CardKind)), max_size=3).map(tuple),
    st.text(),
    st.integers(0, 6),
)
