"""Names that are cut short are still told apart."""

from hypothesis import given
from hypothesis import strategies as st

from ultraplanner_gui.raceday.station_head import shortened


def test_like_names_stay_apart():
    names = [f"Hollow Bridge {n}" for n in range(1, 26)]
    for width in (14, 12, 10, 8, 6, 5, 4, 3, 2):
        assert len({shortened(name, width, len) for name in names}) == 25, width


def test_what_fits_is_left_alone():
    assert shortened("Weir", 4, len) == "Weir"


@given(st.text("Abc 12", max_size=20), st.integers(1, 25))
def test_it_always_fits(name, width):
    assert len(shortened(name, width, len)) <= width
