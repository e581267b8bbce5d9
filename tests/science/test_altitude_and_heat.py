import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.science.environment import (
    air_pressure_torr,
    altitude_power,
    altitude_power_peronnet,
    heat_power,
    temperature_at_height,
    temperature_of_day,
    vapour_pressure_hpa,
    wbgt_estimate_c,
)

# Height, pressure in Torr, percent by Peronnet et al. 1991 (J Appl Physiol 70:399), percent by
# the line of Wehrlin & Hallen 2006 (Eur J Appl Physiol 96:404).
HEIGHTS = [
    (0, 760.000, 100.000, 100.00),
    (500, 716.015, 97.967, 98.74),
    (1000, 674.115, 96.212, 95.59),
    (1500, 634.222, 94.409, 92.44),
    (2000, 596.263, 92.315, 89.29),
    (2500, 560.165, 89.761, 86.14),
    (3000, 525.857, 86.635, 82.99),
    (4000, 462.340, 78.446, 76.69),
]

# Air temperature, humidity, vapour pressure, WBGT by the rule of the Bureau of Meteorology.
WARMTHS = [
    (10, 50, 6.1299, 12.0190),
    (15, 60, 10.2104, 16.4577),
    (20, 50, 11.6613, 19.8629),
    (20, 80, 18.6581, 22.6127),
    (25, 40, 12.6332, 23.0798),
    (30, 30, 12.6861, 25.9357),
    (30, 70, 29.6010, 32.5832),
    (35, 50, 28.0083, 34.7922),
    (40, 20, 14.6912, 32.3936),
]


@pytest.mark.parametrize(("height_m", "torr", "peronnet", "line"), HEIGHTS)
def test_power_at_altitude_is_as_published(height_m, torr, peronnet, line):
    assert float(air_pressure_torr(height_m)) == pytest.approx(torr, abs=5e-3)
    assert float(altitude_power_peronnet(height_m)) * 100 == pytest.approx(peronnet, abs=5e-3)
    assert float(altitude_power(height_m)) * 100 == pytest.approx(line, abs=5e-3)


@pytest.mark.parametrize(("warmth_c", "humidity", "vapour_hpa", "wbgt_c"), WARMTHS)
def test_wbgt_is_that_of_the_published_rule(warmth_c, humidity, vapour_hpa, wbgt_c):
    vapour = vapour_pressure_hpa(warmth_c, humidity)
    assert float(vapour) == pytest.approx(vapour_hpa, abs=5e-4)
    assert float(wbgt_estimate_c(warmth_c, vapour)) == pytest.approx(wbgt_c, abs=5e-4)


def test_heat_takes_a_third_of_a_percent_for_each_degree():
    # Mantzios et al. 2022, Med Sci Sports Exerc 54:153: 0.3 to 0.4 % above 15; times 1 / power.
    assert 1.0 / heat_power([10, 15, 18, 20, 23, 25, 28, 30]) == pytest.approx(
        [1.0, 1.0, 1.0106, 1.0178, 1.0288, 1.0363, 1.0477, 1.0554], abs=5e-5
    )


def test_it_is_six_and_a_half_degrees_colder_a_kilometre_up():
    # ISO 2533:1975: 15 degrees at sea level, -17.5 at 5 km.
    assert float(temperature_at_height(15.0, 0.0, 5000.0)) == pytest.approx(-17.5)


def test_the_day_is_coldest_and_warmest_when_it_was_said_to_be():
    hours = np.linspace(0.0, 24.0, 1441)
    warmth = temperature_of_day(hours, 8.0, 6.0, 26.0, 15.0)
    assert hours[np.argmin(warmth)] == pytest.approx(6.0)
    assert hours[np.argmax(warmth)] == pytest.approx(15.0)
    assert (warmth.min(), warmth.max()) == (pytest.approx(8.0), pytest.approx(26.0))
    assert warmth[0] == pytest.approx(warmth[-1])


@given(st.floats(0.0, 23.9), st.floats(0.5, 23.5), st.floats(0.0, 24.0))
def test_the_day_stays_between_its_extremes(coldest_h, apart_h, hour):
    warmth = temperature_of_day(hour, -3.0, coldest_h, 12.0, (coldest_h + apart_h) % 24.0)
    assert -3.0 - 1e-9 <= float(warmth) <= 12.0 + 1e-9
