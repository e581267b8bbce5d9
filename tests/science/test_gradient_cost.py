import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.science.gradient_cost import (
    DOWNHILL_GRADIENT,
    DOWNHILL_PACE,
    MEASURED_GRADIENT,
    MEASURED_RUNNING_J_PER_KG_M,
    MEASURED_WALKING_J_PER_KG_M,
    measured_running_cost,
    measured_walking_cost,
    pace_cost,
    running_cost,
    walking_cost,
)

# The polynomials of Minetti et al. 2002, J Appl Physiol 93:1039 at each slope, in double precision.
POLYNOMIALS = [
    (-0.45, 4.0323, 3.6051),
    (-0.40, 3.6097, 3.5042),
    (-0.35, 3.0309, 2.9364),
    (-0.30, 2.4622, 2.2075),
    (-0.25, 2.0248, 1.5405),
    (-0.20, 1.8000, 1.0867),
    (-0.15, 1.8357, 0.9359),
    (-0.10, 2.1517, 1.1271),
    (-0.05, 2.7459, 1.6589),
    (0.00, 3.6000, 2.5000),
    (0.05, 4.6852, 3.5999),
    (0.10, 5.9682, 4.8991),
    (0.15, 7.4170, 6.3401),
    (0.20, 9.0067, 7.8774),
    (0.25, 10.7252, 9.4884),
    (0.30, 12.5793, 11.1835),
    (0.35, 14.6003, 13.0173),
    (0.40, 16.8499, 15.0984),
    (0.45, 19.4260, 17.6003),
]


@pytest.mark.parametrize(("gradient", "running", "walking"), POLYNOMIALS)
def test_polynomials_give_their_published_values(gradient, running, walking):
    assert running_cost(gradient) == pytest.approx(running, abs=5e-5)
    assert walking_cost(gradient) == pytest.approx(walking, abs=5e-5)


def test_polynomials_are_exact_between_round_slopes():
    assert running_cost([0.02, -0.02, 0.123, -0.123]) == pytest.approx(
        [4.008169, 3.228861, 6.615814, 1.971215], abs=5e-7
    )
    assert walking_cost([0.02, -0.02, 0.123, -0.123]) == pytest.approx(
        [2.912137, 2.129364, 5.547542, 0.995977], abs=5e-7
    )


def test_cheapest_slopes_lie_where_the_polynomials_have_their_minima():
    slope = np.linspace(-0.45, 0.45, 90_001)
    assert slope[np.argmin(running_cost(slope))] == pytest.approx(-0.181355, abs=1e-5)
    assert running_cost(slope).min() == pytest.approx(1.781269, abs=1e-6)
    assert slope[np.argmin(walking_cost(slope))] == pytest.approx(-0.152526, abs=1e-5)
    assert walking_cost(slope).min() == pytest.approx(0.935493, abs=1e-6)


def test_height_is_cheapest_on_slopes_of_twenty_to_thirty_percent():
    # Minetti et al. 2002: the best mountain paths rise 0.20 to 0.30.
    slope = np.linspace(0.05, 0.45, 40_001)
    for cost, least in ((running_cost, 43.777), (walking_cost, 38.905)):
        per_metre_up = cost(slope) / np.sin(np.arctan(slope))
        assert 0.20 <= slope[np.argmin(per_metre_up)] <= 0.30
        assert per_metre_up.min() == pytest.approx(least, abs=5e-4)


@pytest.mark.parametrize(
    ("gradient", "mean", "deviation"),
    [(-0.45, 3.92, 0.81), (-0.20, 1.73, 0.36), (0.0, 3.40, 0.24), (0.45, 18.93, 1.74)],
)
def test_running_polynomial_lies_within_the_measured_spread(gradient, mean, deviation):
    # Abstract of Minetti et al. 2002: mean and standard deviation of ten runners.
    assert running_cost(gradient) == pytest.approx(mean, abs=deviation)
    assert measured_running_cost(gradient) == pytest.approx(mean, abs=1e-12)


@pytest.mark.parametrize(
    ("gradient", "mean"), [(-0.45, 3.46), (-0.1, 0.81), (0, 1.64), (0.45, 17.33)]
)
def test_measured_walking_costs_are_those_of_the_abstract(gradient, mean):
    assert measured_walking_cost(gradient) == pytest.approx(mean, abs=1e-12)


def test_measured_costs_are_drawn_as_the_reference_library_draws_them():
    # PchipInterpolator of scipy through the same means.
    slope = [-0.25, -0.15, -0.125, -0.05, -0.02, 0.02, 0.05, 0.15, 0.25, 0.33]
    assert measured_running_cost(slope) == pytest.approx(
        [1.9885, 1.7860, 1.8492, 2.4822, 3.0261, 3.7922, 4.4737, 7.2631, 10.6751, 13.6299], abs=5e-5
    )
    assert measured_walking_cost(slope) == pytest.approx(
        [1.7046, 0.9763, 0.8571, 1.0620, 1.3868, 2.0205, 2.9223, 6.3628, 9.7167, 12.1195], abs=5e-5
    )


@given(st.floats(-0.45, 0.45))
def test_measured_costs_stay_between_their_neighbours(gradient):
    k = int(np.clip(np.searchsorted(MEASURED_GRADIENT, gradient), 1, 12))
    for cost, means in (
        (measured_running_cost, MEASURED_RUNNING_J_PER_KG_M),
        (measured_walking_cost, MEASURED_WALKING_J_PER_KG_M),
    ):
        low, high = sorted(means[k - 1 : k + 1])
        assert low - 1e-12 <= float(cost(gradient)) <= high + 1e-12


@pytest.mark.parametrize(
    "cost", [running_cost, walking_cost, measured_running_cost, measured_walking_cost, pace_cost]
)
def test_slopes_beyond_the_measurements_count_as_the_steepest_measured(cost):
    assert cost([-0.9, 0.9]) == pytest.approx(cost([-0.45, 0.45]), abs=0)
    assert cost([-0.9, 0.9]).min() > 0.0


def test_level_speed_ratio_on_a_gentle_climb_is_the_one_measured():
    # Breiner, Ortiz & Kram 2019, Eur J Appl Physiol 119:257: at equal effort 167 m/min up 7.5 %
    # and 238 m/min on the level, corrected for the oxygen uptakes 48.0 and 46.8.
    measured = 167 / 238 * 46.8 / 48.0
    assert running_cost(0.0) / running_cost(0.075) == pytest.approx(measured, abs=0.01)


def test_pace_uphill_is_the_running_polynomial_when_all_of_it_counts():
    slope = np.linspace(0.0, 0.45, 46)
    assert pace_cost(slope, uphill_share=1.0) == pytest.approx(running_cost(slope) / 3.6)


def test_nine_tenths_of_the_climbing_surcharge_count_by_default():
    # 1 + 0.90 (5.9682 / 3.6 - 1) at 10 %, with the published 5.9682.
    assert pace_cost(0.10) == pytest.approx(1.59205, abs=2e-5)


def test_pace_downhill_runs_through_the_points_of_the_fit():
    # Own measurement, not published.
    assert pace_cost(DOWNHILL_GRADIENT) == pytest.approx(DOWNHILL_PACE)
    assert pace_cost(-0.25) == pytest.approx((1.46 + 1.22) / 2)


def test_runners_take_less_downhill_than_the_laboratory_promises():
    # Minetti et al. 2002: predicted downhill speeds lie far above those of races.
    slope = np.linspace(-0.45, -0.01, 45)
    assert (pace_cost(slope) > running_cost(slope) / 3.6).all()


@given(st.floats(0.0, 0.44), st.floats(0.001, 0.01))
def test_steeper_up_is_slower(gradient, more):
    assert pace_cost(gradient + more) > pace_cost(gradient)
