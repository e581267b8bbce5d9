from datetime import date, timedelta

import pytest
from msgspec.structs import replace

from ultraplanner_gui.cards.make import all_pages
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.engine.climbs import hills_of
from ultraplanner_gui.engine.lessons import carried, lessons_of_food, lessons_of_section, place_of
from ultraplanner_gui.engine.next_plan import next_plan
from ultraplanner_gui.engine.open_lessons import open_lessons
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.course import Slope
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.plan.review import Ending, Lesson, PinnedTo, Review
from ultraplanner_gui.wording.words import Words

TODAY = date(2027, 4, 5)
HOUR = Lesson("a", "Walk", PinnedTo.HOUR, hour_s=7 * 3600.0)
CLIMB = Lesson("b", "Eat before it", PinnedTo.CLIMB, climb=2)
FOOD = Lesson("c", "Half of it", PinnedTo.FOOD, food="gel")


@pytest.fixture(scope="module")
def project():
    return replace(demo_project(TODAY), lessons=(HOUR, CLIMB, FOOD))


@pytest.fixture(scope="module")
def outlook(project):
    return derive(project, None, TODAY)


def test_an_hour_comes_back_where_one_is_then(outlook):
    at_m = place_of(outlook, HOUR)
    assert outlook.target.arrival_s(at_m) == pytest.approx(7 * 3600.0, abs=400.0)
    (section,) = (s for s in outlook.sections if HOUR in lessons_of_section(outlook, s))
    assert section.start_m <= at_m < section.end_m


def test_a_climb_comes_back_at_its_foot(outlook):
    climbs = [h for h in hills_of(outlook.profile) if h.slope is Slope.CLIMB]
    assert place_of(outlook, CLIMB) == climbs[1].start_m


def test_an_hour_or_climb_the_course_has_not_is_nowhere(outlook):
    assert place_of(outlook, replace(HOUR, hour_s=200 * 3600.0)) is None
    assert place_of(outlook, replace(CLIMB, climb=99)) is None


def test_a_food_is_found_by_part_of_its_name(project):
    foods = [f for f in project.fuel.foods if FOOD in lessons_of_food(project, f)]
    assert foods
    assert all("gel" in f.name.casefold() for f in foods)


def next_of(project, **changes):
    race = replace(project.race, name="Next", start=project.race.start + timedelta(weeks=30))
    old = replace(project, **changes)
    return next_plan(old, old.course, race, old.runner, old.first_weekday, TODAY)[0]


def test_the_next_project_keeps_the_runner_foods_and_lessons(project):
    new = next_of(project)
    assert replace(new.runner, past_runs=()) == replace(project.runner, past_runs=())
    assert new.fuel.foods == project.fuel.foods
    assert [replace(x, learnt_at="") for x in new.lessons] == list(project.lessons)
    assert {lesson.learnt_at for lesson in new.lessons} == {"Fellside Hundred 2027"}
    assert new.block.sessions
    assert new.fuel.items


def test_nothing_of_the_old_race_is_in_the_next(project):
    new = next_of(project)
    logistics = new.logistics
    assert (logistics.visits, logistics.bag_lines, logistics.packed) == ((), (), ())
    assert not any(line.station for line in logistics.if_then)
    assert (new.recordings, new.reviews, new.race.mandatory_kit) == ((), (), ())
    assert all(session.done is None for session in new.block.sessions)


def test_a_finished_race_is_a_run_to_predict_from(project):
    ran = KeptRecording("r", "a.gpx", b"x", distance_m=100_000.0, moving_s=60_000.0, is_race=True)
    finished = next_of(project, recordings=(ran,))
    assert finished.runner.past_runs[-1].time_s == 60_000.0
    stopped = next_of(project, recordings=(ran,), reviews=(Review("r", Ending.STOPPED),))
    assert stopped.runner.past_runs == project.runner.past_runs


def test_lessons_must_be_answered_before_printing(project):
    new = next_of(project)
    assert len(open_lessons(new)) == 3
    outlook = derive(new, None, TODAY)
    assert outlook.race_checks[0].state is State.STRAINS
    with pytest.raises(PlanError, match="wait for an answer"):
        all_pages(outlook, Words(), lambda *_: (10.0, 2.0))
    answers = tuple(replace(lesson, answer="yes") for lesson in new.lessons)
    answered = derive(replace(new, lessons=answers), None, TODAY)
    assert answered.race_checks[0].state is State.HOLDS


def test_lessons_of_this_race_do_not_stop_its_printing(project):
    assert open_lessons(project) == ()


def test_an_earlier_race_keeps_its_name(project):
    (lesson,) = carried(replace(project, lessons=(replace(HOUR, learnt_at="First 2025"),)))
    assert lesson.learnt_at == "First 2025"
    assert not lesson.answer
