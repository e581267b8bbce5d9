from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.plan.course import Offer
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.plan.race import Race
from ultraplanner_gui.window import table_reading as reading
from ultraplanner_gui.wording.words import Words

LONDON, LIMA = ZoneInfo("Europe/London"), ZoneInfo("America/Lima")
METRIC, GERMAN, AMERICAN = Words(), Words(locale="de"), Words("imperial", "en_US")
RACE = Race("Round", datetime(2027, 6, 19, 6, 0, tzinfo=LONDON), 72_000.0)
H = 3600.0


def race_at(start):
    return Race("Round", start, 72_000.0)


races = st.builds(
    race_at,
    st.datetimes(
        datetime(2020, 1, 1),
        datetime(2035, 1, 1),
        timezones=st.sampled_from((UTC, LONDON, LIMA)),
    ).map(lambda d: d.replace(second=0, microsecond=0)),
)


# Cutoffs

# No outside source: the rule (first such time after the start) is our own.


@pytest.mark.parametrize(
    ("text", "hours"),
    [
        ("20:30", 14.5),
        ("Sat 20:30", 14.5),
        ("saturday 20:30", 14.5),
        ("Sat. 20.30", 14.5),
        ("20h30", 20.5),
        ("Sun 20h30", 38.5),
        ("8:30 pm", 14.5),
        ("8 p.m.", 14.0),
        ("Sun 00:12", 18.2),
        ("00:12", 18.2),
        ("06:00", 24.0),
        ("Mon 05:59", 48.0 - 1 / 60),
        ("Sat 05:00", 167.0),
        ("14 h 30", 14.5),
        ("14h", 14.0),
        ("36:00", 36.0),
        ("870 min", 14.5),
        ("870", 14.5),
    ],
)
def test_a_cutoff_is_a_clock_time_or_a_duration(text, hours):
    assert reading.read_race_time(text, RACE, METRIC) == pytest.approx(hours * H, abs=1.0)


@pytest.mark.parametrize(("text", "hours"), [("14:30", 14.5), ("Sat 14:30", 8.5), ("2:30 pm", 8.5)])
def test_where_a_duration_is_expected_a_colon_parts_hours_and_minutes(text, hours):
    read = reading.read_race_time(text, RACE, METRIC, duration_first=True)
    assert read == pytest.approx(hours * H)


@pytest.mark.parametrize(
    "text", ["soon", "25:00 o'clock", "Xyz 20:30", "20:75", "13 pm", "Sat", "Sat 14 h", "0 pm"]
)
def test_what_is_no_time_is_refused_in_one_sentence(text):
    with pytest.raises(PlanError, match="neither a clock time nor a duration") as refused:
        reading.read_race_time(text, RACE, METRIC)
    assert text in str(refused.value)


def test_a_long_text_is_cut_in_the_sentence():
    with pytest.raises(PlanError) as refused:
        reading.read_race_time("x" * 400, RACE, METRIC)
    assert len(METRIC.say(refused.value.message)) <= 200


@given(races, st.integers(1, 6 * 24 * 60 - 1), st.sampled_from((METRIC, GERMAN, AMERICAN)))
def test_a_clock_time_reads_back_as_the_first_such_time_after_the_start(race, minutes, words):
    at = race.clock(60.0 * minutes)
    read_s = reading.read_race_time(words.clock(at), race, words)
    assert 0.0 < read_s <= 60.0 * minutes
    assert words.clock(race.clock(read_s)) == words.clock(at)
    # Only where the clock is put back does one time of a day come twice.
    assert read_s == 60.0 * minutes or 60.0 * minutes - read_s == H


@given(races, st.times())
def test_without_a_weekday_the_time_comes_within_a_day(race, at):
    at = at.replace(second=0, microsecond=0)
    read_s = reading.first_after_start(race, at, None)
    # A day has 25 hours where the clock is put back, and a time left out comes an hour on.
    assert 0.0 < read_s <= 26 * H
    shown = race.clock(read_s).replace(tzinfo=None).time()
    if shown != at:
        day = race.clock(read_s).replace(tzinfo=None)
        left_out = day.replace(hour=at.hour, minute=at.minute).replace(tzinfo=race.start.tzinfo)
        assert left_out.astimezone(UTC).astimezone(race.start.tzinfo).time() != at


def test_a_time_the_clock_shows_twice_is_the_first_after_the_start():
    # The clocks in London went back on 29 October 2023 at 02:00 (tz database).
    race = race_at(datetime(2023, 10, 29, 1, 30, tzinfo=LONDON))
    assert reading.first_after_start(race, time(1, 45), None) == 900.0
    assert reading.first_after_start(race, time(1, 15), None) == 2700.0


# Dates


@pytest.mark.parametrize(
    ("text", "words", "day"),
    [
        ("2027-06-19", METRIC, date(2027, 6, 19)),
        ("2027-6-9", AMERICAN, date(2027, 6, 9)),
        ("19/6/2027", METRIC, date(2027, 6, 19)),
        ("6/19/2027", AMERICAN, date(2027, 6, 19)),
        ("19.06.27", GERMAN, date(2027, 6, 19)),
        ("19.6.", GERMAN, date(2027, 6, 19)),
        ("19 Jun", METRIC, date(2027, 6, 19)),
        ("Sat 19 June 2027", METRIC, date(2027, 6, 19)),
        ("June 19, 2027", AMERICAN, date(2027, 6, 19)),
        ("19. Dezember", GERMAN, date(2026, 12, 19)),
        ("29 Feb", METRIC, date(2028, 2, 29)),
    ],
)
def test_a_date_is_read_in_the_order_of_the_locale(text, words, day):
    near = date(2027, 4, 1) if day.month != 2 else date(2028, 1, 5)
    assert reading.read_date(text, near, words) == day


@pytest.mark.parametrize("text", ["", "soon", "31/2/2027", "2027-13-01", "19", "May", "1 2 3 4"])
def test_what_is_no_date_is_refused(text):
    with pytest.raises(PlanError, match="not a date"):
        reading.read_date(text, date(2027, 4, 1), METRIC)


@given(
    st.dates(date(2000, 1, 1), date(2100, 1, 1)),
    st.integers(-180, 180),
    st.sampled_from((METRIC, GERMAN, AMERICAN, Words(locale="fr"), Words(locale="es"))),
)
def test_every_date_as_written_reads_back(day, apart, words):
    near = day + timedelta(days=apart)
    for text in (day.isoformat(), words.day_and_year(day), words.short_day(day), words.day(day)):
        assert reading.read_date(text, near, words) == day


# What is there


def test_offers_are_read_in_any_order_and_case():
    assert reading.read_offers("Crew,  drop bags ; WATER") == (
        Offer.WATER,
        Offer.DROP_BAG,
        Offer.CREW,
    )
    assert reading.read_offers("") == ()


def test_an_offer_nobody_knows_is_named():
    with pytest.raises(PlanError, match="massage") as refused:
        reading.read_offers("water, massage")
    assert "drop bag" in str(refused.value)


@given(st.sets(st.sampled_from(Offer)))
def test_offers_read_back(offers):
    text = reading.offers_text(tuple(offers))
    assert set(reading.read_offers(text)) == offers


# Figures


def test_a_distance_is_read_in_the_unit_of_the_column():
    assert reading.read_distance("12.4", METRIC) == pytest.approx(12_400.0)
    # The international mile: 1,609.344 m (International Yard and Pound Agreement, 1959).
    assert reading.read_distance("10", AMERICAN) == pytest.approx(16_093.44)
    assert reading.read_distance("12,4 km", GERMAN) == pytest.approx(12_400.0)


@pytest.mark.parametrize(
    ("read", "text"),
    [
        (reading.read_distance, "far"),
        (reading.read_height, "high"),
        (reading.read_duration, "long"),
        (reading.read_minutes, "a while"),
        (reading.read_pace, "fast"),
        (reading.read_number, "many"),
        (reading.read_whole, "3.5"),
    ],
)
def test_a_figure_that_cannot_be_read_is_named_with_the_way_to_type_it(read, text):
    with pytest.raises(PlanError) as refused:
        read(text, AMERICAN)
    sentence = AMERICAN.say(refused.value.message)
    assert text in sentence
    assert len(sentence) <= 200


def test_minutes_are_meant_where_no_unit_is_typed():
    assert reading.read_minutes("2.5", METRIC) == 150.0
    assert reading.read_minutes("1 h 05", METRIC) == 3900.0
    assert reading.read_minutes("", METRIC) == 0.0


@given(st.integers(0, 14_400))
def test_a_duration_copied_for_a_spreadsheet_reads_back(minutes):
    text = reading.hours_and_minutes(60.0 * minutes)
    assert reading.read_duration(text, METRIC) == 60.0 * minutes
