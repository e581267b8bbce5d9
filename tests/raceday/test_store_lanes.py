"""The lanes of glycogen and of fluid and sodium; tokens copied, and kept at their place."""

import numpy as np
from msgspec.structs import replace
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtTest import QTest

from tests.raceday.conftest import rest
from ultraplanner_gui.edits.fuel import KeepItems
from ultraplanner_gui.edits.fuel_habits import SetTank
from ultraplanner_gui.engine.fuel_clock import kept
from ultraplanner_gui.engine.glycogen import ledger_of
from ultraplanner_gui.plan.fuel import Effort, Keep, Tank
from ultraplanner_gui.raceday import glycogen_lane
from ultraplanner_gui.widgets.theme import theme

TALL = (1200, 800)


def _token(stage):
    fuel = stage.document.project.fuel
    items = [i for i in fuel.items if 3 * 3600.0 < i.at_s < 5 * 3600.0]
    return next(i.key for i in items if fuel.food(i.food).carb_g > 0)


def _picture(lane):
    image = lane.grab().toImage()
    return bytes(image.constBits())


def test_stores_follow_a_token_while_it_moves(stage):
    key = _token(stage)
    before = ledger_of(stage.document.outlook).usual.reserve_g.copy()
    stage.drag(stage.fuel, stage.token(key), stage.token(key) + QPoint(200, 0))
    now = ledger_of(stage.document.shown)
    assert not np.array_equal(now.usual.reserve_g, before)
    assert np.array_equal(ledger_of(stage.document.before).usual.reserve_g, before)


def test_both_lanes_are_painted_anew_while_a_token_moves(stage_of):
    stage = stage_of(size=TALL)
    key = _token(stage)
    lanes = (stage.storey.glycogen, stage.storey.fluid)
    was = [_picture(lane) for lane in lanes]
    stage.drag(stage.fuel, stage.token(key), stage.token(key) + QPoint(200, 0))
    rest(stage.storey)
    assert all(_picture(lane) != old for lane, old in zip(lanes, was, strict=True))


def test_readouts_say_band_gut_fluid_and_sodium(stage):
    lanes = stage.storey.glycogen, stage.storey.fluid
    middle = [QPointF(lane.body().center()) for lane in lanes]
    said = [lane.readout(at) for lane, at in zip(lanes, middle, strict=True)]
    assert "waits in the gut" in said[0]
    assert "of fluid" in said[1]
    assert "of sodium" in said[1]


def test_the_limits_of_the_stores_are_named(stage_of, monkeypatch):
    stage = stage_of(size=TALL)
    written = []
    monkeypatch.setattr(
        glycogen_lane, "draw_text", lambda _p, _r, text, *more: written.append(text)
    )
    stage.storey.glycogen.update()
    stage.storey.glycogen.grab()
    assert written == ["low", "nearly gone"]


def test_the_units_of_fluid_and_sodium_show_their_lines(stage_of):
    lane = stage_of(size=TALL).storey.fluid
    image = lane.grab().toImage()
    head = range(round(lane.body().left()))
    hues = {image.pixelColor(x, y).name() for x in head for y in range(image.height())}
    assert {theme().colours.sky, theme().colours.plum} <= hues


def test_empty_legs_are_drawn_and_said(stage_of):
    stage = stage_of(size=TALL)
    stage.document.perform(SetTank(Tank(None, Effort.HARD, 0.14, 5.0, 0.0)))
    ledger = ledger_of(stage.document.outlook)
    assert ledger.empty_m is not None
    plain = _picture(stage.storey.glycogen)
    stage.document.perform(SetTank(Tank()))
    assert _picture(stage.storey.glycogen) != plain


def test_item_that_keeps_its_place_is_dragged_to_another_place(stage):
    items = kept(stage.document.outlook.items, Keep.PLACE, stage.document.outlook.target)
    stage.document.perform(KeepItems(items, keep=Keep.PLACE))
    key = _token(stage)
    was_m = stage.item(key).at_m
    end = stage.token(key) + QPoint(120, 0)
    stage.drag(stage.fuel, stage.token(key), end)
    stage.release(stage.fuel, end)
    assert stage.item(key).at_m > was_m


def test_copy_puts_the_same_one_interval_later(stage):
    key = _token(stage)
    was = stage.item(key)
    QTest.mouseClick(stage.fuel, Qt.MouseButton.LeftButton, pos=stage.token(key))
    count = len(stage.document.project.fuel.items)
    QTest.keyClick(stage.fuel, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    items = stage.document.project.fuel.items
    assert len(items) == count + 1
    new = stage.item(stage.selection.key)
    assert replace(new, key=key, at_s=was.at_s) == was
    assert new.at_s == was.at_s + stage.document.project.fuel.every_s
