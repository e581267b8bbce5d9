"""The demo: an invented runner eighteen weeks from an invented race, seven of them behind."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from msgspec.structs import replace

from ultraplanner_gui.desk import demo_crew, demo_recordings, resources
from ultraplanner_gui.desk.shipped_foods import shipped_foods
from ultraplanner_gui.engine.block import build_block
from ultraplanner_gui.engine.first_plan import request_of
from ultraplanner_gui.engine.fuelling import place_by_clock
from ultraplanner_gui.engine.outlook import Outlook, derive
from ultraplanner_gui.exchange.gpx_in import read_course
from ultraplanner_gui.plan.block import Block, Done, Gut, Session, week_start
from ultraplanner_gui.plan.candidates import Candidate, CandidateStop
from ultraplanner_gui.plan.conditions import Conditions, ValleyForecast
from ultraplanner_gui.plan.course import Course, Offer
from ultraplanner_gui.plan.fuel import Carrying, FuelPlan
from ultraplanner_gui.plan.ground import GroundAtHand, GroundKind
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner

WEEKS_TO_GO = 11
WEEKS_IN_ALL = 18
TUNE_UP_WEEK = 5
TUNE_UP_M = 40_000.0
MONDAY = 0
SATURDAY = 5
ZONE = ZoneInfo("Europe/London")

#: Cutoff (hours of race time), planned stop (minutes) and what there is, by station.
STATIONS: dict[str, tuple[float | None, float, tuple[Offer, ...]]] = {
    "Mill Ford": (None, 2, (Offer.WATER, Offer.FOOD)),
    "Col Hut": (None, 4, (Offer.WATER, Offer.FOOD)),
    "Ash Green": (8.5, 5, (Offer.WATER, Offer.FOOD, Offer.CREW)),
    "Halfway Barn": (
        11.25,
        15,
        (Offer.WATER, Offer.FOOD, Offer.DROP_BAG, Offer.CREW, Offer.MEDICAL),
    ),
    "Long Ridge": (15.0, 6, (Offer.WATER, Offer.FOOD)),
    "Old Quarry": (None, 8, (Offer.WATER, Offer.FOOD, Offer.CREW, Offer.MEDICAL)),
    "Weir": (21.5, 4, (Offer.WATER, Offer.FOOD)),
}
#: What stands on every table, and what from the evening on besides.
TABLE = ("cola", "banana", "orange")
WARM = ("broth-chicken", "rice")
WARM_FROM_M = 50_000.0
HARD_NOTES = {
    "Long Ridge": "If the legs turn to wood, then shorten the stride, eat, count 200 steps.",
    "Old Quarry": "If the lamp makes everything far, then look at the next ten metres only.",
    "Weir": "If it feels over, then walk to the next gate and ask again there.",
}
GOAL_S = 20.25 * 3600
LIMIT_S = 24 * 3600.0
#: A mild day, whatever the season the demo is opened in.
CONDITIONS = Conditions(ValleyForecast(7.0, 16.0, 60.0, 200.0), lamp_s=14 * 3600.0)
RUNNER = Runner(
    name="Demo runner",
    body_kg=68.0,
    weekly_m=46_000.0,
    longest_m=20_000.0,
    easy_mps=2.55,
    available_s=(0.0, 5400.0, 6300.0, 4500.0, 3600.0, 28_800.0, 10_800.0),
    long_day=SATURDAY,
    carb_g_per_h=40.0,
    grounds=(
        GroundAtHand("quarry", GroundKind.HILL, "Quarry lane", 900.0, 92.0),
        GroundAtHand("steps", GroundKind.STAIRS, "Church steps", 45.0, 18.0),
        GroundAtHand("mill", GroundKind.TREADMILL, "Treadmill at work", most_gradient=0.12),
        GroundAtHand("canal", GroundKind.PATH, "Canal path"),
    ),
)


def demo_project(today: date) -> Project:
    """Return the demo as it stands on *today*: the race lies eleven weeks ahead of it."""
    race_day = week_start(today, MONDAY) + timedelta(weeks=WEEKS_TO_GO, days=SATURDAY)
    start = datetime(race_day.year, race_day.month, race_day.day, 6, tzinfo=ZONE)
    course = _course()
    project = Project(
        race=Race(
            *("Fellside Hundred", start, GOAL_S, LIMIT_S),
            *(demo_crew.MANDATORY_KIT, demo_crew.EMERGENCY),
        ),
        course=course,
        cards=demo_crew.CARDS,
        logistics=demo_crew.logistics(course.stations),
        runner=RUNNER,
        fuel=FuelPlan(
            carb_g_per_h=70.0,
            fluid_ml_per_h=480.0,
            sodium_mg_per_h=400.0,
            foods=shipped_foods(),
            carrying=Carrying(bottles=3),
        ),
        notes="Ask the organisers about poles. Book the room for two nights.",
        first_weekday=MONDAY,
        conditions=CONDITIONS,
        candidates=_candidates(race_day),
    )
    outlook = derive(project, None, today)
    assert outlook.target is not None
    items = place_by_clock(project.fuel, outlook.target.finish_s)
    project = replace(project, fuel=project.fuel.with_items(items))
    project = replace(project, block=_lived(_block(project, outlook), today))
    return replace(
        project,
        recordings=demo_recordings.recordings(project),
        lessons=demo_recordings.LESSONS,
    )


def _course() -> Course:
    course = read_course(resources.path("demo/course.gpx"))
    stations = []
    for station in course.stations:
        cutoff_h, stop_min, offers = STATIONS[station.name]
        cutoff_s = cutoff_h * 3600 if cutoff_h is not None else None
        station = demo_crew.with_errands(station)
        foods = (*TABLE, *WARM) if station.at_m >= WARM_FROM_M else TABLE
        station = replace(station, foods=foods)
        stations.append(replace(station, cutoff_s=cutoff_s, stop_s=stop_min * 60, offers=offers))
    course = replace(course, stations=tuple(stations))
    sections = tuple(
        replace(s, hard_note=HARD_NOTES.get(course.end_name(s), "")) for s in course.sections
    )
    return replace(course, sections=sections)


def _candidates(race_day: date) -> tuple[Candidate, ...]:
    """Return two other races the runner thought of."""
    stops = (
        CandidateStop(24_000.0, 5.0 * 3600, 900.0),
        CandidateStop(41_000.0, 9.5 * 3600, 1_700.0),
    )
    near = race_day - timedelta(weeks=4)
    return (
        Candidate(
            *("moor", "Moor Sixty", near, 60_000.0, 2_200.0, 2_200.0, 14 * 3600.0, 7 * 3600.0),
            stops,
            note="A day out; the train goes there.",
        ),
        Candidate(
            *("coast", "Coast Hundred Miles", race_day + timedelta(weeks=16)),
            *(161_000.0, 4_600.0, 4_600.0, 36 * 3600.0, 12 * 3600.0),
        ),
    )


def _block(project: Project, outlook: Outlook) -> Block:
    race_week = week_start(project.race.day, MONDAY)
    first_day = race_week - timedelta(weeks=WEEKS_IN_ALL - 1)
    tune_up = race_week - timedelta(weeks=TUNE_UP_WEEK) + timedelta(days=SATURDAY)
    request = request_of(project, outlook, first_day)
    return build_block(replace(request, tune_ups=((tune_up, TUNE_UP_M),))).block


def _lived(block: Block, today: date) -> Block:
    """Return *block* with what lies before *today* done much as planned, one short run missed."""
    past = [s for s in block.sessions if s.day < today]
    easy = [s for s in past if s.day < today - timedelta(days=14) and s.distance_m < 8_000.0]
    missed = easy[len(easy) // 2].key if easy else ""
    sessions = tuple(
        s if s.day >= today else replace(s, missed=True) if s.key == missed else _done(s, number)
        for number, s in enumerate(block.sessions)
    )
    return replace(block, sessions=sessions)


def _done(session: Session, number: int) -> Session:
    """Return *session* run a little differently each time, long runs as planned."""
    less = 1.0 if session.kind.is_long else 1.0 - 0.002 * (number * 7 % 5)
    slower = 1.0 + 0.01 * (number * 5 % 7 - 3)
    eaten = session.carb_g_per_h * session.duration_s / 3600.0 * (0.9 + 0.02 * (number % 5))
    done = Done(
        distance_m=round(session.distance_m * less, -2),
        duration_s=round(session.duration_s * slower / 60.0) * 60.0,
        climb_m=round(session.climb_m * less, -1),
        drop_m=round(session.drop_m * less, -1),
        effort=session.effort,
        carb_g=round(eaten),
        gut=Gut.FINE if session.carb_g_per_h else None,
    )
    return replace(session, done=done)
