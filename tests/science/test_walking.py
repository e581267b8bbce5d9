import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.science.walking import (
    flat_equivalent,
    gait_change_speed,
    hiking_speed,
    naismith_s,
    tobler_speed,
    walking_power,
    walking_speed,
)

HOUR_S = 3600.0


def test_median_hikers_go_as_fast_as_published():
    # Campbell et al. 2022, Computers, Environment and Urban Systems 97:101866, by degrees.
    degrees = np.array([-30, -20, -15, -10, -5, 0, 5, 10, 15, 20, 30])
    assert hiking_speed(np.tan(np.radians(degrees))) == pytest.approx(
        [0.4741, 0.7042, 0.8569, 1.0128, 1.1269, 1.1481, 1.0646, 0.9162, 0.7551, 0.6120, 0.4061],
        abs=5e-5,
    )


def test_median_hikers_in_kilometres_an_hour_by_slope():
    slope = [-0.4, -0.3, -0.2, -0.1, -0.05, 0, 0.05, 0.1, 0.2, 0.3, 0.4]
    assert hiking_speed(slope) * 3.6 == pytest.approx(
        [2.3566, 2.8912, 3.5057, 4.0153, 4.1378, 4.1333, 4.0011, 3.7661, 3.1447, 2.5330, 2.0415],
        abs=5e-5,
    )


def test_tobler_walks_six_kilometres_an_hour_a_little_downhill():
    # Tobler 1993, NCGIA Technical Report 93-1.
    slope = [-0.5, -0.3, -0.2, -0.1, -0.05, 0, 0.05, 0.1, 0.2, 0.3, 0.5]
    assert tobler_speed(slope) * 3.6 == pytest.approx(
        [1.2420, 2.5012, 3.5493, 5.0367, 6.0, 5.0367, 4.2281, 3.5493, 2.5012, 1.7625, 0.8753],
        abs=5e-5,
    )


@pytest.mark.parametrize(
    ("km", "climb_m", "hours"),
    [(10, 0, 2.0), (10, 600, 3.0), (20, 1600, 6.6667), (42.195, 2500, 12.6057), (100, 6000, 30.0)],
)
def test_naismith_takes_an_hour_for_five_kilometres_and_for_600_m(km, climb_m, hours):
    # Naismith 1892, Scottish Mountaineering Club Journal 2:136, metric form.
    assert naismith_s(km * 1000.0, climb_m) / HOUR_S == pytest.approx(hours, abs=5e-5)


def test_twenty_kilometres_with_1600_m_are_worth_33():
    # Scarf 2007, J Sports Sci 25:719: 32.8 km, 6 h 34 at 5 km/h.
    flat_m = float(flat_equivalent(20_000.0, 1600.0))
    assert flat_m == pytest.approx(32_800.0)
    assert flat_m / (5.0 / 3.6) == pytest.approx(6 * HOUR_S + 34 * 60, abs=30.0)


def test_walking_rates_are_those_of_the_load_carriage_rule():
    # Looney et al. 2019, Med Sci Sports Exerc 51:1954: the equation in double precision.
    slope = [-0.3, -0.2, -0.1, -0.05, 0, 0.05, 0.1, 0.2, 0.3]
    assert walking_power(1.0, slope) == pytest.approx(
        [3.5160, 2.9463, 2.6198, 2.8616, 3.6200, 4.9803, 6.7732, 10.4130, 13.8200], abs=5e-5
    )
    assert walking_power(1.8, slope) == pytest.approx(
        [6.2701, 5.2446, 4.6570, 5.0921, 6.4573, 8.9058, 12.1331, 18.6847, 24.8173], abs=5e-5
    )


def test_speeds_at_seven_watts_a_kilogram():
    assert walking_speed(7.0, [0.0, 0.1, 0.2, 0.3]) == pytest.approx(
        [1.8824, 1.0453, 0.5871, 0.4142], abs=5e-5
    )


@given(st.floats(2.0, 12.0), st.floats(-0.4, 0.45))
def test_walking_speed_and_power_are_inverse_within_the_range_of_the_rule(power, slope):
    speed = float(walking_speed(power, slope))
    assert 0.0 <= speed <= 1.96
    if 0.0 < speed < 1.96:
        assert float(walking_power(speed, slope)) == pytest.approx(power, rel=1e-6)


def test_standing_takes_all_of_a_rate_below_it():
    assert float(walking_speed(1.0, 0.1)) == pytest.approx(0.0, abs=1e-9)


def test_level_change_of_gait_is_near_the_cheapest():
    # Abe et al. 2015, PLoS ONE 10:e0138154: 7.49 km/h on the level; OWN below that.
    assert float(gait_change_speed(0.0)) * 3.6 == pytest.approx(7.49, abs=0.35)
    assert float(gait_change_speed(0.3)) < float(gait_change_speed(0.1)) < 2.0
