from datetime import UTC, datetime, timedelta, timezone
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.plan.race import Race

LONDON = ZoneInfo("Europe/London")
HOUR_S = 3600.0
BST = timedelta(hours=1)


def race(start):
    return Race("", start, 20 * HOUR_S)


# The Summer Time Order 2002 (UK Statutory Instrument 2002/262): summer time begins at one in the
# morning, Greenwich mean time, on the last Sunday in March and ends at that hour on the last
# Sunday in October. In 2027 these are 28 March and 31 October.


def test_clock_skips_an_hour_when_summer_time_begins():
    over_night = race(datetime(2027, 3, 27, 23, 0, tzinfo=LONDON))

    before, after = over_night.clock(2 * HOUR_S - 1), over_night.clock(2 * HOUR_S)

    assert (before.day, before.hour, before.minute, before.second) == (28, 0, 59, 59)
    assert (after.day, after.hour, after.minute, after.utcoffset()) == (28, 2, 0, BST)


def test_clock_shows_one_hour_twice_when_summer_time_ends():
    over_night = race(datetime(2027, 10, 30, 22, 0, tzinfo=LONDON))

    first, second, later = (over_night.clock(h * HOUR_S) for h in (3.5, 4.5, 5.5))

    assert (first.hour, first.minute, first.utcoffset()) == (1, 30, BST)
    assert (second.hour, second.minute, second.utcoffset()) == (1, 30, timedelta(0))
    assert (later.hour, later.minute) == (2, 30)
    assert [over_night.elapsed(at) for at in (first, second)] == [3.5 * HOUR_S, 4.5 * HOUR_S]


def test_night_of_the_change_is_run_by_the_seconds_not_by_the_clock():
    over_night = race(datetime(2027, 10, 30, 22, 0, tzinfo=LONDON))
    breakfast = datetime(2027, 10, 31, 7, 0, tzinfo=LONDON)

    assert over_night.elapsed(breakfast) == 10 * HOUR_S


zones = st.sampled_from((LONDON, UTC, ZoneInfo("America/Lima"), timezone(timedelta(hours=5.75))))


@given(
    st.datetimes(datetime(2024, 1, 1), datetime(2030, 12, 31), timezones=zones),
    st.floats(0.0, 240 * HOUR_S),
)
def test_elapsed_takes_back_what_clock_gives(start, elapsed_s):
    there = race(start)

    assert there.elapsed(there.clock(elapsed_s)) == pytest.approx(elapsed_s, abs=2e-6)


@given(st.floats(0.0, 240 * HOUR_S), st.floats(0.0, 240 * HOUR_S))
def test_later_on_the_race_is_later_in_the_world(a, b):
    there = race(datetime(2027, 10, 30, 22, 0, tzinfo=LONDON))
    early, late = sorted((a, b))

    assert there.clock(early).astimezone(UTC) <= there.clock(late).astimezone(UTC)


def test_day_is_the_date_where_the_race_is():
    assert race(datetime(2027, 6, 19, 0, 30, tzinfo=LONDON)).day.isoformat() == "2027-06-19"


def test_start_without_a_zone_is_refused():
    with pytest.raises(ValueError, match="aware"):
        race(datetime(2027, 6, 19, 6))


def test_another_zone_is_another_start_at_the_same_instant():
    london = datetime(2027, 6, 19, 6, tzinfo=LONDON)

    assert race(london) != race(london.astimezone(ZoneInfo("Europe/Paris")))


def test_the_two_half_past_ones_are_different_starts():
    early = datetime(2027, 10, 31, 1, 30, tzinfo=LONDON)

    assert race(early) != race(early.replace(fold=1))


def test_equal_races_are_one_in_a_set():
    start = datetime(2027, 6, 19, 6, tzinfo=LONDON)

    assert len({race(start), race(start.replace(fold=1)), race(start)}) == 1
