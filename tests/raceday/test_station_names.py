"""Names that are cut short are still told apart."""

from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from ultraplanner_gui.raceday.head_names import shortened


def test_like_names_stay_apart():
    names = [f"Hollow Bridge {n}" for n in range(1, 26)]
    for width in (14, 12, 10, 8, 6, 5, 4, 3, 2):
        assert len({shortened(name, width, len) for name in names}) == 25, width


def test_what_fits_is_left_alone():
    assert shortened("Weir", 4, len) == "Weir"


@given(st.text("Abc 12", max_size=20), st.integers(1, 25))
def test_it_always_fits(name, width):
    assert len(shortened(name, width, len)) <= width


def test_a_click_on_a_name_selects_the_station(stage):
    head = stage.storey.head
    x = round(head.x_of(30_000.0, head.body()))
    QTest.mouseClick(head, Qt.MouseButton.LeftButton, pos=QPoint(x, 8))
    assert (stage.selection.kind, stage.selection.key) == ("station", "barn")


def test_a_click_far_from_every_station_selects_none(stage):
    head = stage.storey.head
    x = round(head.x_of(22_000.0, head.body()))
    QTest.mouseClick(head, Qt.MouseButton.LeftButton, pos=QPoint(x, 8))
    assert stage.selection.kind == ""
