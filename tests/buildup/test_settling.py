"""A tile put down settles for a moment, or not at all where motion is stopped."""

from datetime import timedelta

import pytest

from ultraplanner_gui.widgets import motion
from ultraplanner_gui.widgets.motion import Motion


@pytest.fixture
def target(stage):
    return stage.session("easy5").day + timedelta(days=9)


@pytest.fixture(autouse=True)
def wished_again():
    yield
    Motion.wished, Motion.is_stilled = True, False


def test_a_tile_let_go_settles_into_its_cell(stage, target, qtbot):
    stage.drag("easy5", target)
    stage.release(stage.spot_of(target))
    settling = stage.grid._settling
    assert stage.session("easy5").day == target
    assert settling.key == "easy5"
    qtbot.waitUntil(lambda: not settling.key, timeout=2000)
    assert settling.mark() is None


def test_settling_takes_no_longer_than_120_ms():
    assert motion.SETTLE_MS <= 120


def test_where_motion_is_stopped_the_tile_is_there_at_once(stage, target):
    Motion.wished = False
    stage.drag("easy5", target)
    stage.release(stage.spot_of(target))
    assert stage.grid._settling.key == ""


def test_where_the_system_asks_to_keep_still_the_tile_is_there_at_once(stage, target):
    Motion.still(True)
    stage.drag("easy5", target)
    stage.release(stage.spot_of(target))
    assert stage.session("easy5").day == target
    assert stage.grid._settling.key == ""


def test_a_tile_can_be_lifted_again_before_it_has_settled(stage, target):
    stage.drag("easy5", target)
    stage.release(stage.spot_of(target))
    stage.drag("easy5", target - timedelta(days=2))
    assert stage.grid.is_carrying
    assert stage.grid._settling.key == ""


def test_put_down_by_keys_nothing_moves(stage):
    stage.choose("easy5")
    stage.grid.pick_up()
    stage.grid._step(1)
    stage.grid._confirm()
    assert stage.grid._settling.key == ""
