"""Numbers as people read them."""

import math
from datetime import date, datetime
from zoneinfo import ZoneInfo

import pytest
from babel.numbers import format_decimal
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.plan.message import Message, PlanError, Quantity, message
from ultraplanner_gui.wording import reading
from ultraplanner_gui.wording.words import NONE, Words

METRIC = Words()
IMPERIAL = Words(units="imperial")
finite = st.floats(min_value=-1e9, max_value=1e9)


@pytest.mark.parametrize(
    ("m", "text"),
    [
        (12_400, "12.4 km"),
        (0, "0.0 km"),
        (99_940, "99.9 km"),
        (99_960, "100 km"),
        (160_934.4, "161 km"),
        (1_234_567, "1,235 km"),
        (-350, "-0.3 km"),
        (-40, "0.0 km"),
    ],
)
def test_distance_has_one_decimal_below_a_hundred(m, text):
    assert METRIC.distance(m) == text


def test_decimals_asked_for_are_given():
    assert METRIC.distance(160_934.4, 2) == "160.93 km"
    assert METRIC.distance_bare(5_000, 0) == "5"


# International mile 1609.344 m and foot 0.3048 m exactly (NIST Special Publication 811, app. B).
def test_marathon_is_26_2_miles():
    assert IMPERIAL.distance(42_195) == "26.2 mi"


def test_a_thousand_metres_are_3281_feet():
    assert IMPERIAL.height(1000) == "3,281 ft"


def test_a_hundred_miles_is_the_edge_of_the_decimal():
    assert IMPERIAL.distance(100 * 1609.344) == "100 mi"
    assert IMPERIAL.distance(99.94 * 1609.344) == "99.9 mi"


def test_climb_is_said_per_unit_of_distance():
    # 1 in 100 is 52.8 ft in a mile of 5,280 ft.
    assert METRIC.climb_per_distance(0.01) == "10 m per km"
    assert IMPERIAL.climb_per_distance(0.01) == "53 ft per mi"


def test_height_has_no_decimals():
    assert METRIC.height(1344.6) == "1,345 m"
    assert METRIC.height_bare(-0.4) == "0"


@pytest.mark.parametrize(
    ("s", "text"),
    [
        (0, "0 min"),
        (29, "0 min"),
        (-29, "0 min"),
        (30, "1 min"),
        (42 * 60, "42 min"),
        (3569, "59 min"),
        (3570, "1 h 00"),
        (7500, "2 h 05"),
        (19 * 3600 + 42 * 60, "19 h 42"),
        (-7500, "-2 h 05"),
        (100 * 3600, "100 h 00"),
    ],
)
def test_duration(s, text):
    assert METRIC.duration(s) == text


# 12:51 /km is 771 s/km; times 1.609344 that is 1240.8 s a mile.
def test_pace_in_both_units():
    assert METRIC.pace(0.771) == "12:51"
    assert IMPERIAL.pace(0.771) == "20:41"
    assert (METRIC.pace_unit, IMPERIAL.pace_unit) == ("min/km", "min/mi")
    assert (METRIC.unit_m, IMPERIAL.unit_m) == (1000, 1609.344)


def test_pace_rounds_up_into_the_next_minute():
    assert METRIC.pace(0.7796) == "13:00"


@given(st.floats(min_value=-10, max_value=10))
def test_pace_never_shows_sixty_seconds(s_per_m):
    assert int(METRIC.pace(s_per_m).split(":")[1]) < 60


@given(st.floats(min_value=-1e7, max_value=1e7))
def test_duration_never_shows_sixty_minutes(s):
    words = METRIC.duration(s).split(" h ")
    assert len(words) == 1 or int(words[1]) < 60


def test_clock_rounds_over_midnight():
    at = datetime(2027, 6, 19, 23, 59, 40)
    assert METRIC.clock(at) == "Sun 00:00"
    assert METRIC.clock(at, weekday=False) == "00:00"


# In 2027 Paris goes from 02:00 to 03:00 on 28 March (IANA time zone database).
def test_clock_rounds_over_the_missing_hour():
    at = datetime(2027, 3, 28, 1, 59, 45, tzinfo=ZoneInfo("Europe/Paris"))
    assert METRIC.clock(at) == "Sun 03:00"


def test_days():
    day = date(2027, 6, 19)
    assert METRIC.day(day) == "Sat 19 Jun"
    assert METRIC.short_day(date(2027, 2, 14)) == "14 Feb"
    assert "2027" in METRIC.day_and_year(day)
    assert [METRIC.weekday(i) for i in (0, 6)] == ["Mon", "Sun"]
    assert Words(locale="en_US").day(day) == "Sat, Jun 19"


@pytest.mark.parametrize("value", [None, math.nan, math.inf, -math.inf])
def test_nothing_reads_as_a_dash(value):
    readings = (
        METRIC.number(value),
        METRIC.distance(value),
        METRIC.height(value),
        METRIC.duration(value),
        METRIC.pace(value),
        METRIC.percent(value),
        METRIC.litres(value),
        METRIC.servings(value),
        METRIC.signed(METRIC.duration(value)),
    )
    assert set(readings) == {NONE}


@pytest.mark.parametrize("locale", ["en_GB", "de_DE", "fr_FR", "sv_SE", "de_CH", "hi_IN", "cs"])
@given(value=finite, decimals=st.integers(0, 2))
def test_numbers_read_as_the_locale_data_say(locale, value, decimals):
    # CLDR through babel, with the minus sign and the spaces the fonts can draw.
    rounded = float(f"{value:.{decimals}f}") + 0.0
    pattern = "#,##,##0" if locale == "hi_IN" else "#,##0"
    pattern += f".{'0' * decimals}" if decimals else ""
    expected = format_decimal(rounded, pattern, locale, numbering_system="latn")
    expected = expected.replace("\u202f", "\u00a0").replace("\u2212", "-")
    assert Words(locale=locale).number(value, decimals) == (
        expected if rounded else expected.lstrip("-")
    )


def test_unknown_locale_reads_as_british_english():
    assert Words(locale="C").number(1240.5, 1) == "1,240.5"
    assert Words(locale="xx_YY").day(date(2027, 6, 19)) == "Sat 19 Jun"


def test_amounts():
    assert METRIC.percent(86.0) == "86 %"
    assert METRIC.grams(60.4) == "60 g"
    assert METRIC.grams_per_hour(60) == "60 g/h"
    assert METRIC.millilitres(500) == "500 mL"
    assert METRIC.litres(1656) == "1.7 L"
    assert METRIC.milligrams(1400) == "1,400 mg"
    assert METRIC.kilograms(70.5) == "70.5 kg"
    assert METRIC.effort(4) == "4 of 10"
    assert [METRIC.servings(v) for v in (2, 1.5, 0.25)] == ["2", "1.5", "0.25"]


def test_differences_carry_their_sign():
    assert METRIC.signed(METRIC.duration(720)) == "+12 min"
    assert METRIC.signed(METRIC.duration(-720)) == "-12 min"
    assert METRIC.signed(METRIC.duration(0)) == "0 min"
    assert METRIC.signed(METRIC.distance(0.0)) == "0.0 km"
    assert METRIC.signed(METRIC.pace(0.01)) == "+0:10"
    assert METRIC.signed(METRIC.duration(None)) == NONE


@pytest.mark.parametrize(
    ("quantity", "text"),
    [
        (Quantity(12_400, "m"), "12.4 km"),
        (Quantity(350, "m"), "350 m"),
        (Quantity(410, "height_m"), "410 m"),
        (Quantity(7500, "s"), "2 h 05"),
        (Quantity(0.771, "pace_s_per_m"), "12:51 /km"),
        (Quantity(86, "percent"), "86 %"),
        (Quantity(24, "celsius"), "24 °C"),
        (Quantity(60, "g"), "60 g"),
        (Quantity(60, "g_per_h"), "60 g/h"),
        (Quantity(500, "ml"), "500 mL"),
        (Quantity(400, "mg"), "400 mg"),
        (Quantity(3, "count"), "3"),
    ],
)
def test_sentences_carry_units(quantity, text):
    assert METRIC.say(message("It is {0}.", quantity)) == f"It is {text}."


@pytest.mark.parametrize(("c", "text"), [(0.0, "32 °F"), (37.0, "99 °F"), (-40.0, "-40 °F")])
def test_temperature_follows_the_units_chosen(c, text):
    # Fixed points of the scales, by definition: water freezes at 32 °F, both are equal at -40.
    assert IMPERIAL.temperature(c) == text
    assert reading.celsius(reading.fahrenheit(c)) == pytest.approx(c)


def test_sentences_follow_the_units_chosen():
    error = PlanError("{0} lies at {1}, {2} up, {3} on.", "Col", *_places())
    assert IMPERIAL.say(error.message) == "Col lies at 7.7 mi, 1,345 ft up, 492 ft on."


def _places():
    return Quantity(12_400, "m"), Quantity(410, "height_m"), Quantity(150, "m")


def test_sentences_are_translated_before_their_numbers_go_in():
    german = Words(locale="de_DE", translate={"{0} of {1}": "{0} von {1}"}.get)
    assert german.say(Message("{0} of {1}", (Quantity(12_400, "m"), 3))) == "12,4 km von 3"
    assert german.effort(4) == "4 von 10"
