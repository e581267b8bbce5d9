"""What people type into fields."""

from datetime import time

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.wording.words import Words

METRIC = Words()
IMPERIAL = Words(units="imperial")
LOCALES = st.sampled_from(["en_GB", "en_US", "de_DE", "fr_FR", "de_CH", "hi_IN", "sv_SE"])


@given(st.floats(min_value=-1e6, max_value=1e6))
def test_durations_read_back_to_the_minute(s):
    read = METRIC.parse_duration(METRIC.duration(s))
    assert read is not None
    assert read % 60 == 0
    assert abs(read - s) <= 30 + 1e-6


@pytest.mark.parametrize(
    ("text", "minutes"),
    [
        ("19 h 42", 1182),
        ("19:42", 1182),
        ("19h42m", 1182),
        ("42 min", 42),
        ("42'", 42),
        ("1h30", 90),
        ("1 hr 30 mins", 90),
        ("1.5 h", 90),
        ("1,5 hours", 90),
        ("2\u00a0h\u202f05", 125),
        ("90", 90),
        ("30 s", 0.5),
        ("1:30:30", 90.5),
        (" 6H ", 360),
        ("\u221212 min", -12),
    ],
)
def test_durations_typed_in_many_ways(text, minutes):
    assert METRIC.parse_duration(text) == minutes * 60


@pytest.mark.parametrize(
    "text", ["", " ", "-", "soon", "1:75", "1 h 75", "1 2", "5 m 70 s", "1::2"]
)
def test_what_is_no_duration(text):
    assert METRIC.parse_duration(text) is None


def test_a_bare_number_may_mean_hours():
    assert METRIC.parse_duration("24", bare_s=3600) == 86_400


@given(m=st.floats(min_value=0, max_value=9e5), locale=LOCALES)
def test_distances_read_back(m, locale):
    for units, tolerance in (("metric", 51), ("imperial", 81)):
        words = Words(units, locale)
        read = words.parse_distance(words.distance(m, 1))
        assert read == pytest.approx(m, abs=tolerance)
        assert words.parse_distance(words.distance_bare(m, 1)) == read


@given(m=st.integers(-400, 9000), locale=LOCALES)
def test_heights_read_back(m, locale):
    assert Words(locale=locale).parse_height(Words(locale=locale).height(m)) == m


@pytest.mark.parametrize(
    ("text", "m"),
    [("12.4", 12_400), ("12,4 km", 12_400), ("400 m", 400), ("1,250 m", 1250), ("0.5mi", 804.672)],
)
def test_distances_typed_in_many_ways(text, m):
    assert METRIC.parse_distance(text) == pytest.approx(m)


def test_bare_lengths_are_in_the_users_units():
    assert IMPERIAL.parse_distance("26.2") == pytest.approx(42_165, abs=1)
    assert IMPERIAL.parse_height("1,000") == pytest.approx(304.8)


@pytest.mark.parametrize("text", ["", "km", "far", "12 parsecs", "1.2.3"])
def test_what_is_no_length(text):
    assert METRIC.parse_distance(text) is None


@given(st.integers(120, 3599))
def test_paces_read_back_to_the_second(s_per_km):
    for words in (METRIC, IMPERIAL):
        text = f"{words.pace(s_per_km / 1000)} /{words.distance_unit}"
        assert words.parse_pace(text) == pytest.approx(s_per_km / 1000, abs=0.0006)
        assert words.pace(words.parse_pace(text)) == words.pace(s_per_km / 1000)


def test_paces_typed_in_many_ways():
    for text in ("12:51", "12:51 /km", "12:51 min/km", "12'51\""):
        assert METRIC.parse_pace(text) == pytest.approx(0.771)
    assert METRIC.parse_pace("0:00") is None
    assert METRIC.parse_pace("fast") is None


def test_clock_times():
    assert METRIC.parse_clock("Sun 00:12") == time(0, 12)
    assert METRIC.parse_clock("6:05") == time(6, 5)
    assert METRIC.parse_clock("24:00") is None
    assert METRIC.parse_clock("noon") is None


def test_numbers_take_point_and_comma():
    german = Words(locale="de_DE")
    assert METRIC.parse_number("1,240.5") == german.parse_number("1.240,5") == 1240.5
    assert METRIC.parse_number("12,4") == german.parse_number("12.4") == 12.4
    assert METRIC.parse_number("-3") == -3
    assert METRIC.parse_number("1e5") is None
