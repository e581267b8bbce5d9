import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtGui import QColor

from ultraplanner_gui.raceday.relief import FIRST_HACHURE, FULL_WASH, relief
from ultraplanner_gui.widgets.theme import theme

WIDTH, HEIGHT = 120, 80

pytestmark = pytest.mark.usefixtures("qapp")


def seen(picture):
    """Return red, green, blue and alpha of every pixel, as on a picture of that format."""
    rows = picture.height()
    pixels = np.frombuffer(picture.constBits(), np.uint32).reshape(rows, -1)
    return np.stack([pixels >> shift & 255 for shift in (16, 8, 0, 24)], axis=-1).astype(int)


def slope(rise_px, grade):
    ys = np.linspace(HEIGHT / 2 + rise_px / 2, HEIGHT / 2 - rise_px / 2, WIDTH + 1)
    return relief(ys, np.full(WIDTH, grade), HEIGHT, 1.0)


def strokes(picture):
    """Return how many pixels well below the edge have not the colour of most in their column."""
    lower = seen(picture)[HEIGHT // 2 + 6 : HEIGHT // 2 + 20, :, :3]
    return int((np.abs(lower - np.median(lower, axis=0)).max(axis=-1) > 24).sum())


@given(st.lists(st.floats(-40.0, HEIGHT + 40.0), min_size=WIDTH + 1, max_size=WIDTH + 1))
def test_ground_lies_below_the_edge_whatever_its_shape(edge):
    ys = np.array(edge)
    alpha = seen(relief(ys, np.zeros(WIDTH), HEIGHT, 1.0))[..., 3]
    low, high = np.maximum(ys[:-1], ys[1:]), np.minimum(ys[:-1], ys[1:])
    reach = 1.3 * np.hypot(1.0, low - high) + 2.0
    rows = np.arange(HEIGHT)[:, None] + 0.5
    assert (alpha[rows > low + reach] == 255).all()
    assert (alpha[rows < high - reach] == 0).all()


@pytest.mark.parametrize("ratio", [1.0, 2.0])
def test_edge_is_drawn_in_ink_where_the_heights_are(ratio):
    ys = ratio * (HEIGHT / 2 + 12.0 * np.sin(np.arange(WIDTH + 1) / 9.0))
    dark = seen(relief(ys, np.zeros(WIDTH), round(ratio * HEIGHT), ratio))
    ink = np.array(QColor(theme().colours.ink).getRgb())
    far = np.abs(dark - ink).sum(axis=-1)
    is_ink = far <= far.min(axis=0) + 8
    centre = (is_ink * (np.arange(len(dark))[:, None] + 0.5)).sum(axis=0) / is_ink.sum(axis=0)
    assert np.abs(centre - 0.5 * (ys[:-1] + ys[1:])).max() <= 0.75


def test_climb_and_descent_differ_in_hue_and_steepness_in_depth():
    def shade(grade):
        return seen(slope(0.0, grade))[-1, WIDTH // 2, :3]

    level, up, down = shade(0.0), shade(FULL_WASH), shade(-FULL_WASH)
    assert level.tolist() == list(QColor(theme().colours.stone).getRgb()[:3])
    assert up[0] - up[2] > level[0] - level[2] > down[0] - down[2]
    assert np.abs(shade(FULL_WASH / 2) - level).sum() < np.abs(up - level).sum()


def test_hachures_are_denser_where_it_is_steeper_and_none_on_the_level():
    counts = [strokes(slope(0.0, grade)) for grade in (0.0, 0.9 * FIRST_HACHURE, 0.05, FULL_WASH)]
    assert counts[:2] == [0, 0]
    assert 0 < counts[2] < counts[3]


def test_picture_in_used_memory_is_the_same():
    first = slope(30.0, 0.1)
    ys = np.linspace(10.0, 60.0, WIDTH + 1)
    fresh = seen(relief(ys, np.full(WIDTH, -0.1), HEIGHT, 1.0)).copy()
    again = relief(ys, np.full(WIDTH, -0.1), HEIGHT, 1.0, first)
    assert (seen(again) == fresh).all()
    assert relief(ys, np.full(WIDTH, -0.1), HEIGHT + 5, 1.0, first).height() == HEIGHT + 5
