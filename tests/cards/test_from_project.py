"""From a project through the engine to the cards: the figures agree with one another."""

from datetime import date, datetime
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from msgspec.structs import replace

from tests.cards.invented import FOODS
from ultraplanner_gui.cards.fuel_content import fuel_card
from ultraplanner_gui.cards.pace_content import pace_card
from ultraplanner_gui.cards.pdf import card_pages
from ultraplanner_gui.engine.fuel_placing import place_by_clock
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.plan.course import AidStation, Course, Line, Offer, sections_between
from ultraplanner_gui.plan.fuel import FuelPlan
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.science.geodesy import distance_along
from ultraplanner_gui.wording.words import Words

WORDS = Words()
H = 3600.0
START = datetime(2027, 6, 19, 14, 0, tzinfo=ZoneInfo("Europe/London"))


@pytest.fixture(scope="module")
def outlook():
    """A hilly course of about 67 km due north, three stations, two cutoffs, run into the night."""
    latitude = np.linspace(54.0, 54.6, 1500)
    height = 350.0 + 200.0 * np.sin(np.linspace(0.0, 20.0, 1500))
    line = Line(latitude, np.full(1500, -2.0), height)
    length_m = float(distance_along(line.latitude_deg, line.longitude_deg)[-1])
    stations = (
        AidStation("a", "Alder Bridge", 0.30 * length_m, 4.5 * H, 300.0),
        AidStation("b", "Birk Hall", 0.55 * length_m, None, 900.0, (Offer.DROP_BAG,)),
        AidStation("c", "Cold Cote", 0.80 * length_m, 10.5 * H),
    )
    course = Course(line, length_m, stations, sections_between(stations))
    fuel = FuelPlan(foods=FOODS)
    fuel = fuel.with_items(place_by_clock(fuel, 11.0 * H))
    race = Race("Alder to Fell", START, 11.0 * H, 14.0 * H)
    return derive(Project(race, course, fuel=fuel), today=date(2027, 3, 1))


def _hours(row, clock):
    """Return a clock time of a row as hours after the start; Saturday is the day of the start."""
    day, _, time = row.on_plan.partition(" ")
    day, time = (clock.day or day, clock.time) if clock is not None else (day, time)
    hour, minute = map(int, time.split(":"))
    return {"Sat": 0, "Sun": 24}[day] + hour + minute / 60 - 14


def _duration(text):
    *hours, minutes = text.removesuffix(" min").split(" h ")
    return (int(hours[0]) if hours else 0) + int(minutes) / 60


def test_the_finish_is_the_target(outlook):
    finish = pace_card(outlook, WORDS).rows[-1]
    assert (finish.name, finish.on_plan, finish.cutoff.time) == ("Finish", "Sun 01:00", "04:00")


def test_sections_and_stops_add_up_to_the_finish(outlook):
    card, total_h, start_km = pace_card(outlook, WORDS), 0.0, 0.0
    for row in card.rows:
        minutes, seconds = map(int, row.pace.split(":"))
        total_h += (float(row.distance) - start_km) * (60 * minutes + seconds) / H
        total_h += _duration(row.stop) if row.stop else 0.0
        start_km = float(row.distance)
    # Paces are rounded to the second, distances to 100 m.
    assert total_h == pytest.approx(11.0, abs=0.05)


def test_last_is_plan_plus_time_in_hand_and_within_every_later_cutoff(outlook):
    rows = pace_card(outlook, WORDS).rows
    for index, row in enumerate(rows):
        plan, last = _hours(row, None), _hours(row, row.last)
        assert last - plan == pytest.approx(_duration(row.in_hand), abs=1.5 / 60)
        for later in rows[index:]:
            if later.cutoff.time != "–":
                arrival = last + _hours(later, None) - plan
                assert arrival <= _hours(later, later.cutoff) + 1.5 / 60


def test_half_an_hour_late_is_half_an_hour(outlook):
    for row in pace_card(outlook, WORDS).rows:
        assert _hours(row, row.late) - _hours(row, None) == pytest.approx(0.5)


def test_it_gets_dark_on_the_card(outlook):
    sketch = pace_card(outlook, WORDS).sketch
    # Civil twilight lasts about 50 minutes at 54 degrees north in June (NOAA solar equations).
    assert [shade.kind for shade in sketch.shades] == ["twilight", "dark"]
    assert 0.6 < sketch.shades[0].start < sketch.shades[1].start < sketch.shades[1].end == 1.0


def test_legs_of_the_fuel_card_add_up(outlook):
    card = fuel_card(outlook, WORDS)
    assert [row.name for row in card.rows] == [
        "Start → Alder Bridge",
        "→ Birk Hall",
        "→ Cold Cote",
        "→ Finish",
    ]
    assert [row.marks for row in card.rows] == [(), ("BAG",), (), ()]
    grams = sum(int(row.carbs.removesuffix(" g")) for row in card.rows)
    assert grams == pytest.approx(int(card.total.carbs.removesuffix(" g")), abs=2)
    assert sum(_duration(row.time) for row in card.rows) == pytest.approx(11.0, abs=2 / 60)
    eaten = [food for row in card.rows for food in row.foods]
    servings = sum(float(food.split(" × ")[0]) for food in eaten)
    assert servings == pytest.approx(sum(i.servings for i in outlook.project.fuel.items))


def test_its_cards_can_be_laid_out(outlook, qapp):
    assert [page.name for page in card_pages(outlook, WORDS)] == ["Alder to Fell", "Fuel"]


def test_a_course_without_heights_still_has_its_card(outlook):
    course = outlook.project.course
    line = replace(course.line, elevation_m=np.full(len(course.line), np.nan))
    flat = derive(replace(outlook.project, course=replace(course, line=line)))
    card = pace_card(flat, WORDS)
    assert card.heads.climb_drop == ""
    assert card.rows[-1].on_plan == "Sun 01:00"
