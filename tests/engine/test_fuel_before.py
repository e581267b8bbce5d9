"""The countdown to the gun, in the zone of the race."""

from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from msgspec.structs import replace

from ultraplanner_gui.engine.fuel_before import CountdownRow, fuel_countdown, merged
from ultraplanner_gui.plan.fuel import Before, FuelPlan
from ultraplanner_gui.plan.message import message
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.wording.words import Words

PARIS = ZoneInfo("Europe/Paris")
START = datetime(2027, 3, 28, 6, 0, tzinfo=PARIS)
PROJECT = Project(Race("R", START, 40_000.0), runner=Runner(body_kg=70.0))


def _said(project):
    words = Words()
    return [(row.at, words.say(row.text)) for row in fuel_countdown(project)]


def _find(project, part):
    return next((at, text) for at, text in _said(project) if part in text)


def test_rows_run_from_ten_days_before_to_the_gun():
    rows = _said(PROJECT)
    assert [at for at, _ in rows] == sorted(at for at, _ in rows)
    assert rows[0][0].date() == START.date() - timedelta(days=10)
    assert rows[-1][0] == START


# Thomas et al. 2016, from memory: 10 g/kg and day; 70 kg take 700 g.
def test_loading_by_body_mass():
    assert "700 g" in _find(PROJECT, "loading")[1]


# 1 g/kg for each hour before, own rule in the band of Wallis & Podlogar 2022.
def test_last_meal_is_hours_before_whatever_the_clocks_do_that_night():
    assert "210 g" in _find(PROJECT, "Last meal")[1]
    early = replace(PROJECT, fuel=FuelPlan(before=Before(meal_h=4.0)))
    at, text = _find(early, "Last meal")
    assert "280 g" in text
    assert START.timestamp() - at.timestamp() == 4 * 3600
    assert at.hour == 1


# Sawka et al. 2007, from memory: 5 to 7 mL/kg.
def test_drink_by_body_mass():
    text = _find(PROJECT, "in sips")[1]
    assert "350 mL" in text
    assert "490 mL" in text


def test_caffeine_stands_only_where_it_is_asked_for_and_never_above_the_limit():
    assert not [t for _, t in _said(PROJECT) if "Caffeine" in t]
    small = replace(
        PROJECT, runner=Runner(body_kg=50.0), fuel=FuelPlan(before=Before(caffeine_mg=200.0))
    )
    assert "150 mg" in _find(small, "Caffeine")[1]


def test_short_races_need_no_loading():
    short = replace(PROJECT, race=replace(PROJECT.race, goal_s=4000.0))
    assert not [t for _, t in _said(short) if "loading" in t]


def test_rows_of_other_parts_join_in_order_of_time():
    nap = CountdownRow(START - timedelta(days=2), message("Sleep."), message("x"))
    assert nap in merged(fuel_countdown(PROJECT), (nap,))
