from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.plan.block import week_start, weeks_to_go

days = st.dates(date(2020, 1, 1), date(2040, 12, 31))
weekdays = st.integers(0, 6)


@given(days, weekdays)
def test_week_begins_on_the_chosen_day_at_most_six_days_back(day, first):
    start = week_start(day, first)

    assert start.weekday() == first
    assert 0 <= (day - start).days <= 6


@given(days)
def test_week_from_monday_is_that_of_iso_8601(day):
    year, week, _ = day.isocalendar()

    assert week_start(day, 0) == date.fromisocalendar(year, week, 1)


@given(days, st.integers(0, 400), weekdays)
def test_weeks_to_go_counts_the_first_days_still_to_come(day, ahead, first):
    race = day + timedelta(days=ahead)
    to_come = [day + timedelta(days=k) for k in range(1, ahead + 1)]

    assert weeks_to_go(day, race, first) == sum(d.weekday() == first for d in to_come)


@given(days, st.integers(0, 400), weekdays)
def test_the_day_after_the_race_may_lie_in_week_minus_one(day, ahead, first):
    later = day + timedelta(days=ahead)

    assert weeks_to_go(later, day, first) == -weeks_to_go(day, later, first)


def test_race_on_saturday_seen_from_three_sides():
    # Calendar of June 2027: the 19th is a Saturday (from memory; any calendar shows it)
    race, sunday_before = date(2027, 6, 19), date(2027, 6, 13)

    assert race.weekday() == 5
    assert weeks_to_go(sunday_before, race, first_weekday=0) == 1
    assert weeks_to_go(sunday_before, race, first_weekday=6) == 0
    assert weeks_to_go(sunday_before, race, first_weekday=5) == 1
