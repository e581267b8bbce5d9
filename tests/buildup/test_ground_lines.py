from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter

from ultraplanner_gui.plan.block import Ground
from ultraplanner_gui.widgets.ground import draw_ground, ink_px, silhouette


@given(st.sampled_from(Ground), st.integers(3, 400), st.integers(1, 40))
def test_a_silhouette_runs_from_left_to_right_inside_its_box(ground, width, height):
    line = silhouette(ground, width, height)
    points = [line.at(k) for k in range(line.size())]
    xs = [point.x() for point in points]
    assert xs == sorted(xs)
    assert (xs[0], xs[-1]) == (pytest.approx(0), pytest.approx(width))
    assert all(-1e-6 <= point.y() <= height + 1e-6 for point in points)


@given(st.integers(0, 9))
def test_harder_is_never_thinner(effort):
    assert ink_px(effort) <= ink_px(effort + 1)


def _drawn(ground, width=48, effort=3):
    image = QImage(width, 8, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    draw_ground(painter, QRectF(0, 0, width, 7), ground, effort, QColor("black"))
    painter.end()
    return image


@pytest.mark.parametrize("width", [18, 48, 120])
def test_grounds_differ_by_shape_alone(qapp, width):
    pictures = {ground: _drawn(ground, width) for ground in Ground}
    assert all(pictures[one] != pictures[other] for one, other in combinations(Ground, 2))


def test_rising_is_falling_seen_from_the_other_end(qapp):
    rising, falling = silhouette(Ground.RISING, 60, 8), silhouette(Ground.FALLING, 60, 8)
    mirrored = [(60 - falling.at(k).x(), falling.at(k).y()) for k in range(falling.size())]
    found = [(rising.at(k).x(), rising.at(k).y()) for k in range(rising.size())]
    assert found == [pytest.approx(point) for point in reversed(mirrored)]
