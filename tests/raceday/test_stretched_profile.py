"""During a drag by clock the profile is stretched, not drawn: the two must look alike."""

import numpy as np
import pytest
from PySide6.QtCore import QPoint
from PySide6.QtGui import QImage


def pixels(lane):
    image = lane.grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
    raw = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1, 4)
    body = lane.body().toAlignedRect()
    return raw[body.top() : body.bottom(), body.left() : body.right(), :3].astype(int)


def heights(picture):
    """Return the row of the first pixel of the ground in each column."""
    ground = np.abs(picture - picture[0, 0]).sum(axis=2) > 40
    return ground.argmax(axis=0)


@pytest.fixture
def by_clock(stage):
    stage.storey.resize(1200, 500)
    stage.storey.choose_measure("clock")
    stage.storey.grab()
    return stage


@pytest.mark.parametrize("grip", ["top", "edge"])
def test_stretched_and_drawn_profile_lie_on_each_other(by_clock, monkeypatch, grip):
    stage, lane = by_clock, by_clock.storey.profile
    start = stage.top("to-barn") if grip == "top" else stage.edge("to-ford")
    drawn = []
    plain = type(lane)._drawn
    monkeypatch.setattr(type(lane), "_drawn", lambda *a: drawn.append(1) or plain(*a))

    before = pixels(lane)
    stage.drag(stage.target, start, start + (QPoint(0, 6) if grip == "top" else QPoint(60, 0)))
    stretched = pixels(lane)
    assert drawn == []
    lane._picture = None
    lane.update()
    anew = pixels(lane)
    assert drawn == [1]

    stage.release(stage.target, start)
    off = np.abs(heights(stretched) - heights(anew))
    was_off = np.abs(heights(before) - heights(anew))
    assert was_off.max() > 8
    # A column of difference is a few rows on a steep slope.
    assert np.median(off) <= 1
    assert np.quantile(off, 0.98) <= 4


def test_the_profile_is_drawn_again_when_the_drag_ends(by_clock, monkeypatch):
    stage, lane = by_clock, by_clock.storey.profile
    start = stage.top("to-barn")
    stage.drag(stage.target, start, start + QPoint(0, 6))
    lane.grab()
    stage.release(stage.target, start + QPoint(0, 6))
    ended = pixels(lane)
    lane._picture = None
    lane.update()
    assert (pixels(lane) == ended).all()


def test_zoomed_in_the_profile_of_a_drag_has_no_gap(by_clock):
    stage, lane = by_clock, by_clock.storey.profile
    stage.wheel(lane, QPoint(700, 20), 6)
    start = stage.top("to-barn")
    stage.drag(stage.target, start, start + QPoint(0, 5))
    # but for the lines of the stations
    assert np.mean(heights(pixels(lane)) > 0) > 0.99
