import numpy as np
import pytest

from ultraplanner_gui.engine.compare import beside, split
from ultraplanner_gui.engine.pacing import Stop, pace_for_finish

HOUR_S = 3600.0


@pytest.fixture(scope="module")
def twenty_km(profile_of):
    """20 km with 1600 m up on its first half and as much down on the second."""
    return profile_of(np.arange(201) * 100.0, np.where(np.arange(201) < 100, 0.16, -0.16))


def test_rules_take_finish_and_stops_of_the_plan(twenty_km):
    stops = (Stop(5000.0, 600.0),)
    plan = pace_for_finish(twenty_km, 4 * HOUR_S, None, stops)
    rules = beside(twenty_km, plan, [5000.0, 10_000.0, 20_000.0])
    assert len(rules) == 6
    for rule in rules:
        assert rule.arrivals_s[-1] == pytest.approx(4 * HOUR_S)
        assert rule.arrivals_s[1] - rule.arrivals_s[0] > 600.0
    even = rules[0]
    assert even.arrivals_s[:2] == pytest.approx((13_800 / 4, 13_800 / 2 + 600))


def test_eight_metres_for_each_metre_of_climb(twenty_km):
    # Scarf 2007: 10 km with 1600 m up count as 22.8 km, the descent as its 10 km.
    plan = pace_for_finish(twenty_km, 4 * HOUR_S)
    assert split(twenty_km, plan, "climb")[100] == pytest.approx(4 * HOUR_S * 22.8 / 32.8)


def test_naismith_names_a_finish_of_his_own(twenty_km):
    # 20 km and 1600 m: 6.6667 h.
    plan = pace_for_finish(twenty_km, 4 * HOUR_S)
    own = {str(rule.name): rule.own_finish_s for rule in beside(twenty_km, plan, [20_000.0])}
    (naismith,) = (s for name, s in own.items() if "Naismith" in name)
    assert naismith == pytest.approx(6.6667 * HOUR_S, abs=0.2)
    assert own["Even pace"] is None


def test_tobler_shares_time_by_his_speeds(twenty_km):
    # Tobler 1993 at 16 % up and down: exp(-3.5 x 0.21) and exp(-3.5 x 0.11).
    plan = pace_for_finish(twenty_km, 4 * HOUR_S)
    at_top = split(twenty_km, plan, "tobler")[100]
    assert at_top / (4 * HOUR_S - at_top) == pytest.approx(np.exp(3.5 * 0.10), rel=1e-6)
