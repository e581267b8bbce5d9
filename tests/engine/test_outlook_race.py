from datetime import UTC, date, datetime

import numpy as np
import pytest
from msgspec.structs import replace

from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.conditions import Conditions, Effect, ValleyForecast
from ultraplanner_gui.plan.course import (
    AidStation,
    Course,
    CutoffKind,
    Line,
    sections_between,
)
from ultraplanner_gui.plan.pacing import Pacing
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.plan.runner import Runner

HOUR_S = 3600.0
TODAY = date(2027, 4, 1)
FORD = AidStation("ford", "Ford", 12_000.0, cutoff_s=3.0 * HOUR_S, stop_s=600.0)
BARN = AidStation("barn", "Barn", 30_000.0, cutoff_s=7.0 * HOUR_S, stop_s=1200.0)


def project(stations=(FORD, BARN), **changes):
    points = np.arange(401)
    line = Line(
        54.0 + points * 0.0011,
        np.full(401, -3.0),
        600.0 + 300.0 * np.sin(points / 30.0),
    )
    start = datetime(2027, 6, 19, 6, tzinfo=UTC)
    course = Course(line, 49_000.0, stations, sections_between(stations))
    plain = Project(Race("Round", start, 8 * HOUR_S, 11 * HOUR_S), course, Runner())
    return replace(plain, **changes)


def outlook(*args, **changes):
    return derive(project(*args, **changes), None, TODAY)


def check(look, rule):
    return next((c for c in look.race_checks if c.rule == rule), None)


def moved(plain, key, target_s):
    course = plain.course.with_section(replace(plain.course.section(key), target_s=target_s))
    return replace(plain, course=course)


def test_target_keeps_as_much_fade_as_is_asked():
    halfway = {
        share: outlook(pacing=Pacing(share)).target.arrival_s(24_500.0)
        for share in (0.0, 0.5, 1.0, 1.5)
    }

    assert list(halfway.values()) == sorted(halfway.values(), reverse=True)
    forecast = outlook(pacing=Pacing(1.0)).forecast
    assert halfway[1.0] == pytest.approx(forecast.arrival_s(24_500.0))
    assert halfway[0.5] == pytest.approx(outlook().target.arrival_s(24_500.0))


def test_finish_stays_or_moves_when_a_section_is_changed():
    plain = project()
    usual_s = outlook().sections[0].moving_s
    held = derive(moved(plain, "to-ford", usual_s + 900.0), None, TODAY)
    loose = replace(plain, pacing=Pacing(holds_finish=False))
    let_go = derive(moved(loose, "to-ford", usual_s + 900.0), None, TODAY)

    assert held.target.finish_s == pytest.approx(8 * HOUR_S)
    assert let_go.target.finish_s == pytest.approx(8 * HOUR_S + 900.0)
    assert let_go.sections[1].moving_s == pytest.approx(outlook().sections[1].moving_s)
    assert let_go.forecast.finish_s == pytest.approx(let_go.target.finish_s)


def test_cutoff_for_leaving_counts_the_stop():
    leaving = replace(FORD, cutoff_kind=CutoffKind.DEPARTURE)
    arriving, departing = outlook().sections[0], outlook((leaving, BARN)).sections[0]

    assert departing.cutoff_is_departure
    assert departing.to_cutoff_s == pytest.approx(arriving.to_cutoff_s - FORD.stop_s)
    assert departing.chance.share <= arriving.chance.share
    assert departing.chance.by_s == pytest.approx(FORD.cutoff_s - FORD.stop_s)
    # One may leave up to the cutoff itself, if no later one is tighter.
    assert departing.leave_by_s <= FORD.cutoff_s + 1e-6


def test_latest_leaving_still_makes_every_later_cutoff_at_planned_speed():
    look = outlook()
    ford, barn, finish = look.sections
    late_s = ford.leave_by_s - ford.leave_s

    assert late_s == pytest.approx(min(barn.to_cutoff_s, finish.to_cutoff_s))
    assert finish.leave_by_s is None


def test_walk_in_limit_lies_before_the_cutoff_and_earlier_for_a_tired_walker():
    usual, tired = outlook().sections[0], outlook(runner=Runner(tired_walk=0.5)).sections[0]

    assert usual.walk_arrive_by_s <= FORD.cutoff_s
    assert tired.walk_arrive_by_s < usual.walk_arrive_by_s
    assert usual.walk_leave_by_s is not None


def test_windows_come_from_the_simulated_races_and_widen_with_the_spread():
    look, unsure = outlook(), outlook(runner=Runner(finish_spread=0.1))
    low, high = look.sections[1].window_s

    assert (low, high) == look.race.odds.window_at(30_000.0)
    assert unsure.sections[1].window_s[1] - unsure.sections[1].window_s[0] > high - low
    assert all(1 <= s.chance.twentieths <= 19 for s in look.sections)


def test_dragging_a_target_leaves_odds_and_walk_in_as_they_are():
    plain = project()
    before = derive(plain, None, TODAY)
    after = derive(moved(plain, "to-ford", 6_000.0), before, TODAY)

    assert after.race.odds is before.race.odds
    assert after.race.walk is before.race.walk
    assert after.profile is before.profile


def test_another_session_leaves_the_race_untouched():
    plain = project()
    before = derive(plain, None, TODAY)

    assert derive(replace(plain, notes="Call home."), before, TODAY).race is before.race


@pytest.mark.parametrize(
    ("lamp_s", "state"),
    [(None, None), (0.5 * HOUR_S, State.BREAKS), (20 * HOUR_S, State.HOLDS)],
)
def test_dark_hours_are_held_against_the_lamp(lamp_s, state):
    evening = Race("Night", datetime(2027, 6, 19, 20, tzinfo=UTC), 8 * HOUR_S)
    found = check(outlook(race=evening, conditions=Conditions(lamp_s=lamp_s)), "lamp")

    assert (found and found.state) == state


@pytest.mark.parametrize(
    ("warmest_c", "state"), [(12.0, None), (24.0, State.STRAINS), (40.0, State.BREAKS)]
)
def test_heat_is_said_in_words(warmest_c, state):
    # Bands of the ACSM for distance races: 18, 23 and 28 degrees WBGT (secondary source).
    weather = ValleyForecast(8.0, warmest_c, 50.0, 600.0)
    found = check(outlook(conditions=Conditions(weather)), "heat")

    assert (found and found.state) == state


def test_switched_off_effect_leaves_the_forecast_alone():
    hot = ValleyForecast(18.0, 34.0, 50.0, 600.0)
    off = outlook(conditions=Conditions(hot, (Effect.HEAT,))).forecast
    plain = outlook(conditions=Conditions()).forecast
    warm = outlook(conditions=Conditions(hot)).forecast

    assert off.elapsed_s == pytest.approx(plain.elapsed_s)
    assert np.abs(warm.elapsed_s - plain.elapsed_s).max() > 30.0


def test_warmth_follows_height_and_hour_and_is_unsaid_in_the_dark():
    weather = ValleyForecast(10.0, 20.0, 50.0, 0.0, 5.0, 15.0)
    look = outlook(
        race=Race("Night", datetime(2027, 6, 19, 15, tzinfo=UTC), 9.5 * HOUR_S),
        conditions=Conditions(weather),
    )
    warm = look.race.warmth

    # ISO 2533: 6.5 K per km; at the start it is 15:00, the warmest hour, at about 600 m.
    height_m = look.profile.elevation_at(0.0)
    assert warm.temperature_c[0] == pytest.approx(20.0 - 6.5 * height_m / 1000.0, abs=0.05)
    assert np.isnan(warm.wbgt_c[-1])
    assert not np.isnan(warm.wbgt_c[0])
    assert warm.coldest[1] > warm.hottest[1]


def test_missed_cutoff_is_said_with_the_curve_that_misses_it():
    tight = replace(BARN, cutoff_s=outlook().sections[1].arrive_s - 600.0)
    look = outlook((FORD, tight))
    found = check(look, "least in hand")

    assert found.state is State.BREAKS
    assert "target" in str(found.text)
    assert look.race_checks[0].state is State.BREAKS
