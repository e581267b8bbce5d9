"""Caffeine in the body and the limits on it."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.science.caffeine import (
    in_body_mg,
    limits_mg,
    lower_limits_mg,
    young_limits_mg,
)

H = 3600.0


# Half-life of 5 h: Institute of Medicine 2001, Caffeine for the Sustainment of Mental Task
# Performance; the sums are our own.
def test_two_doses_in_the_body():
    left = in_body_mg((0.0, 4 * H), (200.0, 100.0), (4 * H - 1e-6, 4 * H, 8 * H, 12 * H))
    assert left == pytest.approx([114.9, 214.9, 123.4, 70.9], abs=0.05)


def test_nothing_is_in_the_body_before_it_is_taken():
    assert in_body_mg((100.0,), (50.0,), (0.0, 99.0)).tolist() == [0.0, 0.0]
    assert in_body_mg((), (), (0.0,)).tolist() == [0.0]


@given(st.lists(st.tuples(st.floats(0, 90_000), st.floats(0, 200)), min_size=1, max_size=8))
def test_body_never_holds_more_than_was_taken(doses):
    at, mg = zip(*sorted(doses), strict=True)
    assert in_body_mg(at, mg, (90_000.0,))[0] <= sum(mg) * (1 + 1e-9)


# EFSA NDA Panel 2015, EFSA Journal 13(5):4102; taking the lower of mg and mg/kg is an own rule.
@pytest.mark.parametrize(("kg", "limits"), [(70, (200, 400)), (50, (150, 300))])
def test_limits_of_an_adult(kg, limits):
    assert limits_mg(kg) == limits


# Same opinion: 200 mg a day in pregnancy, 3 mg/kg a day for the young.
def test_lower_limits():
    assert lower_limits_mg(60)[1] == 200
    assert young_limits_mg(50) == (75, 150)
