from datetime import UTC, datetime, timedelta

import numpy as np
import pytest
from astral import Observer
from astral.sun import elevation as reference_elevation
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.science.sun import (
    CIVIL_TWILIGHT_DEG,
    SUNRISE_DEG,
    crossings,
    elevation_deg,
)

DAY_S = 86_400.0

# Rise, set, dawn, dusk in UTC by the short equations of the NOAA (General Solar Position
# Calculations), good to about three minutes; dates of set and dusk may be the next.
NOAA = [
    ("2026-08-28", 45.9237, 6.8694, "04:47:16", "18:21:04", "04:15:58", "18:52:21"),
    ("2026-06-20", 54.6013, -3.1347, "03:35:13", "20:52:07", "02:38:29", "21:48:48"),
    ("2026-06-27", 39.1970, -120.2357, "12:36:01", "03:31:08", "12:03:46", "04:03:23"),
    ("2026-12-21", -33.9249, 18.4241, "03:31:47", "17:56:28", "03:02:37", "18:25:39"),
]


def midnight(day, longitude_deg):
    """Return the unix time of the mean midnight that begins *day* at a place."""
    return datetime.fromisoformat(day).replace(tzinfo=UTC).timestamp() - longitude_deg * 240.0


def seconds_apart(unix_s, clock):
    time = datetime.fromtimestamp(unix_s, UTC)
    hour, minute, second = (int(part) for part in clock.split(":"))
    there = time.replace(hour=hour, minute=minute, second=second, microsecond=0)
    apart = (time - there).total_seconds()
    return abs((apart + DAY_S / 2) % DAY_S - DAY_S / 2)


@pytest.mark.parametrize(("day", "lat", "lon", "rise", "set_", "dawn", "dusk"), NOAA)
def test_rise_set_dawn_and_dusk_agree_with_the_noaa_short_equations(
    day, lat, lon, rise, set_, dawn, dusk
):
    first = midnight(day, lon)
    for level, clocks in ((SUNRISE_DEG, (rise, set_)), (CIVIL_TWILIGHT_DEG, (dawn, dusk))):
        found = crossings(first, first + DAY_S, lat, lon, level)
        assert len(found) == 2
        for unix_s, clock in zip(found, clocks, strict=True):
            assert seconds_apart(unix_s, clock) < 200


def test_sunrise_of_the_almanac_for_computers():
    # U.S. Naval Observatory, Almanac for Computers 1990, worked example: 40.9 N 74.3 W,
    # 25 June 1990, zenith 90 deg 50 min: rise at 09.4414 h UTC.
    first = midnight("1990-06-25", -74.3)
    rise = crossings(first, first + DAY_S, 40.9, -74.3, -50 / 60)[0]
    assert seconds_apart(rise, "09:26:29") < 60


@given(
    st.datetimes(datetime(2000, 1, 1), datetime(2060, 1, 1)),
    st.floats(-85.0, 85.0),
    st.floats(-180.0, 180.0),
)
def test_height_of_the_sun_is_that_of_the_reference_library(when, lat, lon):
    when = when.replace(tzinfo=UTC)
    expected = reference_elevation(Observer(lat, lon), when, with_refraction=False)
    assert elevation_deg(when.timestamp(), lat, lon) == pytest.approx(expected, abs=0.02)


@given(st.integers(0, 3650), st.floats(-60.0, 60.0), st.floats(-180.0, 180.0))
def test_the_sun_stands_at_the_level_when_it_crosses_it(day, lat, lon):
    first = datetime(2026, 1, 1, tzinfo=UTC).timestamp() + day * DAY_S
    found = crossings(first, first + 3 * DAY_S, lat, lon, CIVIL_TWILIGHT_DEG)
    assert np.all(np.diff(found) > 0)
    assert elevation_deg(found, lat, lon) == pytest.approx(
        np.full(len(found), CIVIL_TWILIGHT_DEG), abs=0.01
    )


def test_no_sunset_in_the_polar_summer_and_no_sunrise_in_the_polar_winter():
    for day, is_up in (("2026-06-21", True), ("2026-12-21", False)):
        first = midnight(day, 18.9553)
        assert crossings(first, first + DAY_S, 69.6492, 18.9553, SUNRISE_DEG).size == 0
        assert (elevation_deg(first, 69.6492, 18.9553) > SUNRISE_DEG) is np.bool_(is_up)
    # The same NOAA equations give civil dawn at 08:30.66 and dusk at 12:53.35 in midwinter.
    dawn, dusk = crossings(first, first + DAY_S, 69.6492, 18.9553, CIVIL_TWILIGHT_DEG)
    assert seconds_apart(dawn, "08:30:40") < 200
    assert seconds_apart(dusk, "12:53:21") < 200


def test_midsummer_noon_stands_as_high_as_geometry_says():
    # 90 deg - latitude + declination; the June solstice has the obliquity, 23.44 deg.
    noon = datetime(2026, 6, 21, 12, tzinfo=UTC) + timedelta(minutes=2)
    assert elevation_deg(noon.timestamp(), 50.0, 0.0) == pytest.approx(63.44, abs=0.02)
