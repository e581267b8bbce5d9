"""What the race asks and whether it is far enough away."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.engine.runway import (
    RaceAsks,
    race_asks,
    runway,
    taper_weeks,
    whole_weeks,
)
from ultraplanner_gui.engine.state import State
from ultraplanner_gui.plan.runner import Level, Runner
from ultraplanner_gui.science.training import Growth

HOUR = 3600.0
SUNDAY = date(2027, 5, 23)
# Ranges coaches use, floor / usual / ambitious: common practice, no source.
TABLE = [
    (50, 7, (45, 65, 95), (5, 7.5, 11), (26, 32, 40), (3.5, 4.5, 5.5), (None, 45, 55)),
    (80, 11, (55, 80, 115), (6.5, 9.5, 13), (32, 40, 50), (4.5, 5.5, 7), (45, 58, 70)),
    (100, 15, (60, 90, 130), (7, 11, 15), (35, 45, 55), (5, 6.5, 8), (50, 65, 80)),
    (160, 27, (70, 105, 150), (9, 13, 18), (42, 50, 65), (6, 7.5, 9), (60, 75, 95)),
]


@pytest.mark.parametrize("row", TABLE, ids=lambda row: f"{row[0]} km")
@pytest.mark.parametrize("number", range(3))
def test_each_race_of_the_table_asks_its_figures(row, number):
    km, hours, *columns = row
    asks = race_asks(km * 1000.0, hours * HOUR, list(Level)[number])
    week_km, week_h, run_km, run_h, two_days_km = (column[number] for column in columns)
    assert asks.peak_week_m == pytest.approx(week_km * 1000)
    assert asks.peak_week_s == pytest.approx(week_h * HOUR)
    assert asks.longest_m == pytest.approx(run_km * 1000)
    assert asks.longest_s == pytest.approx(run_h * HOUR)
    assert asks.two_days_m == (None if two_days_km is None else pytest.approx(two_days_km * 1000))


def test_between_two_races_what_is_asked_is_interpolated():
    asks = race_asks(90_000.0, 13 * HOUR, Level.USUAL)
    assert asks.peak_week_m == pytest.approx(85_000)
    assert asks.longest_s == pytest.approx(6 * HOUR)


@pytest.mark.parametrize(
    ("level", "hours"),
    [(Level.FLOOR, (10, 6)), (Level.USUAL, (14, 8)), (Level.AMBITIOUS, (20, 10))],
)
def test_beyond_thirty_six_hours_the_hours_of_the_last_row_are_asked(level, hours):
    asks = race_asks(170_000.0, 40 * HOUR, level, climb_m=10_000.0, easy_mps=2.5)
    assert (asks.peak_week_s / HOUR, asks.longest_s / HOUR) == hours
    assert asks.peak_week_m < asks.peak_week_s * 2.5


def test_a_steep_race_goes_by_hours():
    steep = race_asks(100_000.0, 27 * HOUR, Level.USUAL, climb_m=6_000.0, easy_mps=2.6)
    assert steep.peak_week_s == pytest.approx(13 * HOUR)
    assert steep.peak_week_m == pytest.approx(13 * HOUR * 2.6 / (1 + 8 * 0.9 * 0.06))


def test_a_slow_runner_is_asked_no_more_hours_than_the_table():
    asks = race_asks(100_000.0, 18 * HOUR, Level.USUAL, climb_m=4_000.0, easy_mps=2.2)
    assert asks.peak_week_m == pytest.approx(11 * HOUR * 2.2 / (1 + 8 * 0.9 * 0.04))
    assert asks.longest_m < 45_000.0


def test_a_race_faster_than_usual_asks_the_hours():
    asks = race_asks(100_000.0, 8 * HOUR, Level.USUAL, easy_mps=3.4)
    assert asks.peak_week_m == pytest.approx(11 * HOUR * 3.4)


@given(
    st.floats(20e3, 170e3),
    st.floats(3, 50),
    st.sampled_from(list(Level)),
    st.floats(0, 90),
    st.floats(1.8, 4),
)
def test_what_is_asked_is_positive_and_grows_with_the_level(
    length_m, hours, level, climb_per_km, easy_mps
):
    climb_m = climb_per_km * length_m / 1000
    asks = race_asks(length_m, hours * HOUR, level, climb_m=climb_m, easy_mps=easy_mps)
    assert 0 < asks.longest_m < asks.peak_week_m
    assert 0 < asks.longest_s < asks.peak_week_s
    floor = race_asks(length_m, hours * HOUR, Level.FLOOR, climb_m=climb_m, easy_mps=easy_mps)
    assert asks.longest_s >= floor.longest_s


def test_twelve_hours_and_the_weekday_decide_the_taper():
    saturday, tuesday = date(2027, 5, 22), date(2027, 5, 18)
    assert taper_weeks(10 * HOUR, saturday, 0) == 2
    assert taper_weeks(12 * HOUR, saturday, 0) == 3
    assert taper_weeks(10 * HOUR, tuesday, 0) == 3


def test_a_week_that_has_begun_is_no_whole_week():
    assert whole_weeks(date(2027, 4, 26), SUNDAY, 0) == 3
    assert whole_weeks(date(2027, 4, 27), SUNDAY, 0) == 2
    assert whole_weeks(SUNDAY, SUNDAY, 0) == 0


def there(weeks, asks, weekly_m, longest_m, race_s=10 * HOUR):
    monday = SUNDAY - timedelta(days=6, weeks=weeks)
    runner = Runner(weekly_m=weekly_m, longest_m=longest_m)
    return runway(asks, runner, monday, SUNDAY, 0, race_s)


def asking(week_m, longest_m):
    return RaceAsks(week_m, 10 * HOUR, longest_m, 5 * HOUR, None)


@pytest.mark.parametrize(
    ("start", "target", "week"), [(30, 80, 15), (40, 100, 14), (50, 120, 14), (50, 80, 7)]
)
def test_weeks_needed_are_those_of_the_ramp_and_the_taper(start, target, week):
    # The table of the ramp, worked by hand; three weeks of taper, race week not counted.
    way = there(30, asking(target * 1e3, 20e3), start * 1e3, 20e3, race_s=14 * HOUR)
    assert way.weeks_needed == week + 2


@given(st.integers(20, 100), st.integers(40, 160), st.integers(10, 40), st.integers(20, 60))
def test_with_the_weeks_needed_it_holds_and_with_one_less_it_falls_short(
    weekly, week_asked, longest, run_asked
):
    asks = asking(week_asked * 1e3, run_asked * 1e3)
    needed = there(9, asks, weekly * 1e3, longest * 1e3).weeks_needed
    enough = there(needed, asks, weekly * 1e3, longest * 1e3)
    assert enough.state is State.HOLDS
    assert enough.reachable_week_m >= week_asked * 1e3 * (1 - 1e-9)
    assert enough.reachable_longest_m >= run_asked * 1e3 * (1 - 1e-9)
    if weekly < week_asked or longest < run_asked:
        short = there(needed - 1, asks, weekly * 1e3, longest * 1e3)
        assert (
            short.reachable_week_m < week_asked * 1e3 or short.reachable_longest_m < run_asked * 1e3
        )


def test_too_short_a_runway_says_what_is_reached():
    way = there(8, asking(90e3, 45e3), 40e3, 18e3)
    assert way.state is State.BREAKS
    assert [round(argument.value / 1000) for argument in way.reason.args] == [59, 90, 29, 45]
    # Seven weeks before the taper: one a cutback, one too near the race, the first at 40 km.
    assert way.reachable_week_m == pytest.approx(40e3 * 1.1**4)
    assert way.reachable_longest_m == pytest.approx(18e3 * 1.1**5)


def test_a_long_runway_says_which_of_the_two_binds():
    by_volume = there(24, asking(90e3, 30e3), 40e3, 28e3)
    by_run = there(24, asking(50e3, 45e3), 45e3, 18e3)
    assert by_volume.state is by_run.state is State.HOLDS
    assert "Volume decides" in str(by_volume.reason)
    assert "The long run decides" in str(by_run.reason)


def test_who_is_there_already_needs_the_taper_only():
    way = there(5, asking(60e3, 30e3), 70e3, 35e3)
    assert way.state is State.HOLDS
    assert way.reachable_week_m == 70e3
    assert "already" in str(way.reason)


def test_what_is_run_by_now_goes_before_the_runners_first_figures():
    asks, runner = asking(60e3, 30e3), Runner(weekly_m=30e3, longest_m=15e3)
    today = SUNDAY - timedelta(weeks=8)
    first = runway(asks, runner, today, SUNDAY, 0, 10 * HOUR)
    now = runway(asks, runner, today, SUNDAY, 0, 10 * HOUR, weekly_m=60e3, longest_m=30e3)
    assert (first.state, now.state) == (State.BREAKS, State.HOLDS)


@given(st.integers(0, 40), st.integers(20, 100), st.integers(40, 160))
def test_the_earliest_day_leaves_the_weeks_needed_and_a_week_sooner_does_not(days, weekly, asked):
    today = SUNDAY - timedelta(days=days)
    asks, runner = asking(asked * 1e3, 30e3), Runner(weekly_m=weekly * 1e3, longest_m=20e3)
    way = runway(asks, runner, today, SUNDAY, 0, 10 * HOUR)
    assert way.earliest.weekday() == SUNDAY.weekday()
    assert whole_weeks(today, way.earliest, 0) >= way.weeks_needed
    sooner = whole_weeks(today, way.earliest - timedelta(weeks=1), 0)
    assert sooner < way.weeks_needed or way.weeks_needed == 0
    again = runway(asks, runner, today, way.earliest, 0, 10 * HOUR)
    assert again.state is State.HOLDS


def test_a_race_too_near_says_what_that_means_in_figures():
    way = there(8, asking(90e3, 45e3), 40e3, 18e3)
    later, shorter, walk, slower = way.means
    assert later.args == (-way.weeks_spare,)
    assert shorter.args[0].value == pytest.approx(100 * 18e3 * 1.1**5 / 45e3)
    # Five hours ask 45 km; ten hours of race less what the reachable run takes.
    longest_s = 5 * HOUR * 18 * 1.1**5 / 45
    assert [a.value for a in walk.args] == pytest.approx([longest_s, 10 * HOUR - longest_s])
    assert [a.value for a in slower.args] == pytest.approx([12.5 * HOUR, 10 * HOUR])
    assert there(30, asking(90e3, 45e3), 40e3, 18e3).means == ()


def test_the_gentler_ramp_needs_more_weeks():
    asks, runner = asking(80e3, 15e3), Runner(weekly_m=30e3, longest_m=15e3)
    weeks = [
        runway(asks, runner, SUNDAY - timedelta(weeks=40), SUNDAY, 0, 14 * HOUR, growth=growth)
        for growth in (Growth.ON, Growth.BACK)
    ]
    # Weeks 15 and 22 of the tables, two more of taper.
    assert [way.weeks_needed for way in weeks] == [17, 24]
