"""Climbs and descents are named on the profile where there is room."""

import pytest
from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainter


@pytest.fixture
def texts(monkeypatch):
    seen, draw = [], QPainter.drawText

    def noted(painter, *args):
        seen.extend(a for a in args if isinstance(a, str))
        return draw(painter, *args)

    monkeypatch.setattr(QPainter, "drawText", noted)
    return seen


def test_a_climb_is_named_with_length_and_height(stage_of, texts):
    stage = stage_of(size=(1900, 900))
    stage.storey.profile.update()
    stage.storey.profile.grab()
    # Three hills of 500 m, each 10 km up and 10 km down; what is level at their ends is left out.
    named = [t for t in texts if t.startswith(("Climb ", "Descent "))]
    assert {t.split(":")[0] for t in named} == {
        f"{kind} {n}" for kind in ("Climb", "Descent") for n in (1, 2, 3)
    }
    assert all(470 <= float(t.split(", ")[1].split()[0]) <= 500 for t in named)


def test_with_less_room_the_height_alone_stands_with_its_sign(stage_of, texts):
    stage = stage_of(size=(620, 900))
    stage.storey.profile.update()
    stage.storey.profile.grab()
    assert not [t for t in texts if t.startswith(("Climb ", "Descent "))]
    assert [t for t in texts if t.startswith("+4")]
    assert [t for t in texts if t.startswith("-4")]


def test_the_pointer_says_which_climb_it_is(stage_of):
    stage = stage_of(size=(1900, 900))
    profile = stage.storey.profile
    at = QPointF(profile.x_of(5_000.0, profile.body()), profile.body().center().y())
    assert "Climb 1: " in profile.readout(at)
