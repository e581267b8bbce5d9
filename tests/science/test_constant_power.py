"""Reference cases of the constant-power model, in double precision from its equations."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from ultraplanner_gui.science.constant_power import Pieces, Ways, power_for_time, times_at_power
from ultraplanner_gui.science.gradient_cost import race_pace

# Map distance, rise, cost of the ground, height: seven pieces.
SEVEN = np.array(
    [
        (8000, 80, 1.00, 600),
        (6000, 900, 1.05, 1000),
        (4000, -700, 1.10, 1100),
        (7000, -70, 1.05, 750),
        (5000, 1000, 1.10, 1200),
        (6000, -900, 1.10, 1250),
        (9000, -310, 1.00, 700),
    ],
    dtype=float,
)
TIRED = Ways(drift=0.15, descent_drift=0.10, descent_skill=0.90, least_run_mps=1.9)


def pieces(rows, altitude=False):
    distance, rise, surface, height = np.array(rows, dtype=float).T
    share = 1.0 - 0.063 * np.maximum(0.0, height - 300.0) / 1000.0
    return Pieces(distance, rise, surface, share if altitude else np.ones(len(distance)))


PLAIN = Ways()


def solved(course, moving_s, ways=PLAIN):
    power = power_for_time(course, moving_s, ways)
    return power, *times_at_power(course, power, ways)


LEVEL = pieces([(10_000, 0, 1, 0)] * 5)
HILL = pieces([(10_000, 1000, 1, 0), (10_000, -1000, 1, 0)])


def test_level_ground_is_run_at_one_speed():
    power, times, _ = solved(LEVEL, 21_600.0)
    assert power == pytest.approx(8.333333, abs=1e-5)
    assert times == pytest.approx([4320.0] * 5, abs=1e-3)


def test_drift_lengthens_piece_after_piece():
    # Six hours less two stops of 300 s.
    power, times, _ = solved(LEVEL, 21_000.0, Ways(drift=0.20))
    assert power == pytest.approx(9.42857, abs=1e-5)
    assert times == pytest.approx([3894.55, 4047.27, 4200.0, 4352.73, 4505.45], abs=0.01)


def test_up_and_down_a_tenth_on_energy_alone():
    power, times, _ = solved(HILL, 10_800.0)
    assert power == pytest.approx(7.55594, abs=1e-5)
    assert HILL.level_equivalent_m.sum() == pytest.approx(22_667.829, abs=1e-3)
    assert times == pytest.approx([7938.10, 2861.90], abs=0.01)
    assert HILL.slope_length_m / times == pytest.approx([1.26603, 3.51161], abs=1e-5)


def test_race_pace_caps_the_descent():
    power, times, gaits = solved(HILL, 10_800.0, Ways(descent_skill=1.0))
    assert power == pytest.approx(8.42350, abs=1e-5)
    assert times == pytest.approx([7120.53, 3679.47], abs=0.01)
    assert gaits == ["run", "cap"]


def test_seven_pieces_run_throughout():
    course = pieces(SEVEN)
    power, times, _ = solved(course, 22_500.0)
    assert power == pytest.approx(8.90342, abs=1e-5)
    assert course.level_equivalent_m.sum() == pytest.approx(55_646.352, abs=1e-3)
    assert times == pytest.approx(
        [3414.22, 5306.95, 894.78, 2814.91, 5673.98, 1376.0, 3019.15], abs=0.01
    )


def test_seven_pieces_with_walking_drift_and_cap():
    power, times, gaits = solved(pieces(SEVEN), 22_500.0, TIRED)
    assert power == pytest.approx(10.83082, abs=1e-5)
    assert times == pytest.approx(
        [2838.58, 3880.0, 1792.92, 2961.36, 4494.7, 2767.63, 3764.81], abs=0.01
    )
    assert gaits == ["run", "walk", "cap", "cap", "walk", "cap", "cap"]


def test_seven_pieces_at_altitude():
    power, times, gaits = solved(pieces(SEVEN, altitude=True), 22_500.0, TIRED)
    assert power == pytest.approx(11.29242, abs=1e-5)
    assert times == pytest.approx(
        [2775.0, 3893.08, 1810.9, 2923.18, 4570.09, 2823.48, 3704.27], abs=0.01
    )
    assert gaits == ["run", "walk", "cap", "cap", "walk", "cap", "cap"]


@given(st.floats(4.0, 20.0), st.floats(0.1, 5.0))
def test_more_power_never_takes_longer(power, more):
    # Who walks at 2.0 m/s at most and runs from 2.0 m/s up never loses by running.
    course, ways = pieces(SEVEN), replace(TIRED, least_run_mps=2.0)
    slow, fast = (times_at_power(course, p, ways)[0].sum() for p in (power, power + more))
    assert fast < slow


def test_ground_that_is_dearer_everywhere_asks_for_as_much_more_power():
    rough = pieces(SEVEN * (1.0, 1.0, 1.1, 1.0))
    plain = power_for_time(pieces(SEVEN), 22_500.0, Ways())
    assert power_for_time(rough, 22_500.0, Ways()) == pytest.approx(1.1 * plain)


def test_splitting_a_piece_changes_the_time_by_less_than_a_thousandth():
    halves = np.repeat(SEVEN * (0.5, 0.5, 1.0, 1.0), 2, axis=0)
    whole = times_at_power(pieces(SEVEN), 9.0, Ways(drift=0.05))[0].sum()
    assert times_at_power(pieces(halves), 9.0, Ways(drift=0.05))[0].sum() == pytest.approx(
        whole, rel=1e-3
    )


def test_race_pace_is_the_quoted_quartic():
    # Kay 2012, J Quant Anal Sports 8(4), as quoted by others.
    slope = [-0.4, -0.3, -0.2, -0.15, -0.1, -0.05, 0, 0.05, 0.1, 0.2, 0.3, 0.4]
    assert race_pace(slope) == pytest.approx(
        [2.1596, 1.5479, 1.0662, 0.9209, 0.8567, 0.8816, 1, 1.2124, 1.5156, 2.3615, 3.4344, 4.5696],
        abs=5e-5,
    )
