from datetime import UTC, datetime, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from astral import Observer
from astral.sun import dawn, dusk, sunrise, sunset

from ultraplanner_gui.engine.light import dark_share, light_spans, small_hours
from ultraplanner_gui.plan.race import Race

ALPS = (45.9237, 6.8694)
HOUR_S = 3600.0


def race_at(start):
    return Race("Test race", start, goal_s=20 * HOUR_S)


def kinds(spans):
    return [span.kind for span in spans]


def test_light_covers_the_race_without_gaps():
    spans = light_spans(race_at(datetime(2026, 8, 28, 16, tzinfo=UTC)), 30 * HOUR_S, *ALPS)
    assert spans[0].start_s == 0.0
    assert spans[-1].end_s == 30 * HOUR_S
    assert all(a.end_s == b.start_s and a.kind != b.kind for a, b in pairwise(spans))


def test_one_night_goes_through_both_twilights_at_the_reference_times():
    start = datetime(2026, 8, 28, 18, tzinfo=ZoneInfo("Europe/Paris"))
    race = race_at(start)
    spans = light_spans(race, 20 * HOUR_S, *ALPS)
    assert kinds(spans) == ["day", "twilight", "dark", "twilight", "day"]
    # astral, with the depression of the sun's upper edge and refraction it takes.
    observer, morning = Observer(*ALPS), start.date() + timedelta(days=1)
    expected = (
        sunset(observer, start.date()),
        dusk(observer, start.date()),
        dawn(observer, morning),
        sunrise(observer, morning),
    )
    for span, clock in zip(spans[1:], expected, strict=True):
        assert span.start_s == pytest.approx(race.elapsed(clock), abs=90)


def test_every_night_of_a_long_race_is_dark():
    spans = light_spans(race_at(datetime(2026, 8, 28, 10, tzinfo=UTC)), 80 * HOUR_S, *ALPS)
    assert kinds(spans).count("dark") == 3
    starts = [span.start_s for span in spans if span.kind == "dark"]
    # Night falls a little earlier each day at the end of August.
    assert all(23.9 * HOUR_S < b - a < 24 * HOUR_S for a, b in pairwise(starts))


def test_the_race_clock_runs_through_the_end_of_summer_time():
    # Clocks in Berlin go back from 03:00 to 02:00 on 25 October 2026 (Directive 2000/84/EC).
    zone = ZoneInfo("Europe/Berlin")
    start = datetime(2026, 10, 24, 20, tzinfo=zone)
    same = start.astimezone(UTC)
    spans = light_spans(race_at(start), 16 * HOUR_S, 52.5, 13.4)
    assert spans == light_spans(race_at(same), 16 * HOUR_S, 52.5, 13.4)
    race = race_at(start)
    first_light = spans[1].start_s
    expected = dawn(Observer(52.5, 13.4), start.date() + timedelta(days=1), tzinfo=zone)
    assert abs((race.clock(first_light) - expected).total_seconds()) < 90


def test_light_does_not_jump_at_the_date_line():
    start = datetime(2026, 3, 1, 4, tzinfo=ZoneInfo("Pacific/Auckland"))
    west = light_spans(race_at(start), 40 * HOUR_S, -17.0, -179.999)
    east = light_spans(race_at(start), 40 * HOUR_S, -17.0, 179.999)
    assert kinds(west) == kinds(east)
    for a, b in zip(west, east, strict=True):
        assert a.start_s == pytest.approx(b.start_s, abs=1.0)


def test_polar_summer_is_one_day_and_polar_winter_has_no_day():
    north = (69.6492, 18.9553)
    summer = light_spans(race_at(datetime(2026, 6, 21, 12, tzinfo=UTC)), 48 * HOUR_S, *north)
    assert kinds(summer) == ["day"]
    winter = light_spans(race_at(datetime(2026, 12, 21, 0, tzinfo=UTC)), 24 * HOUR_S, *north)
    assert kinds(winter) == ["dark", "twilight", "dark"]


def test_dark_comes_on_over_the_hour_about_dusk():
    start = datetime(2026, 8, 28, 12, tzinfo=UTC)
    dusk_s = (dusk(Observer(*ALPS), start.date()) - start).total_seconds()
    at = dusk_s + np.array([-HOUR_S, -1800.0, -900.0, 0.0, 900.0, 1800.0, HOUR_S])
    share = dark_share(start, at, *ALPS)
    assert share == pytest.approx([0.0, 0.0, 0.25, 0.5, 0.75, 1.0, 1.0], abs=0.03)


def test_dark_is_none_by_day_and_full_by_night():
    start = datetime(2026, 8, 28, 8, tzinfo=UTC)
    assert dark_share(start, np.linspace(0, 8 * HOUR_S, 50), *ALPS).max() == 0.0
    night = dark_share(start + timedelta(hours=12), np.linspace(0, 6 * HOUR_S, 50), *ALPS)
    assert night == pytest.approx(np.ones(50))


def test_a_night_shorter_than_its_flanks_is_never_quite_dark():
    # Just south of where civil twilight lasts all night (latitude 60.6) at midsummer.
    start = datetime(2026, 6, 21, 18, tzinfo=UTC)
    share = dark_share(start, np.linspace(0, 12 * HOUR_S, 721), 60.4, 0.0)
    assert 0.0 < share.max() < 1.0
    assert share[0] == share[-1] == 0.0


def test_small_hours_are_about_three_by_the_sun():
    # Three by the sun at 15 E is two in universal time.
    start = datetime(2026, 8, 28, 20, tzinfo=UTC)
    share = small_hours(start, np.array([0.0, 4.0, 6.0, 8.0, 30.0]) * HOUR_S, 15.0)
    assert share[2] == share[4] == pytest.approx(1.0)
    assert share[1] == pytest.approx(share[3]) == pytest.approx(np.exp(-0.5))
    assert share[0] < 0.02
