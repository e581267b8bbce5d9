"""Stations, stops and the start in the hand: one step each, seen on every move, Esc puts back."""

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QEvent, QObject, QPoint, Qt
from PySide6.QtGui import QRegion
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from tests.raceday.by_hand import (
    grip_of,
    head,
    kept_station,
    move_freely,
    name_of,
    shown_start,
    shown_station,
)
from tests.raceday.conftest import rest
from ultraplanner_gui.edits.course import AddStation
from ultraplanner_gui.plan.course import Surface, SurfaceSpan
from ultraplanner_gui.raceday.head_hand import START
from ultraplanner_gui.widgets.lane import UNIT_PT
from ultraplanner_gui.widgets.theme import theme

Key, Mod = Qt.Key, Qt.KeyboardModifier
LONDON = ZoneInfo("Europe/London")


# Stations


@pytest.mark.parametrize("measure", ["distance", "clock"])
def test_station_follows_its_name_on_every_move(stage, measure):
    stage.storey.choose_measure(measure)
    lane, start = head(stage), name_of(stage, "barn")
    from_x = lane.x_of(30_000.0, lane.body())
    seen = []
    stage.document.changed.connect(lambda *_: seen.append(shown_station(stage, "barn").at_m))

    stage.drag(lane, start, start + QPoint(90, 0))

    assert seen == sorted(seen)
    assert len(seen) >= 6
    assert kept_station(stage, "barn").at_m == 30_000.0
    now_x = lane.x_of(shown_station(stage, "barn").at_m, lane.body())
    assert now_x == pytest.approx(from_x + 90.0, abs=7.0)


@pytest.mark.parametrize("measure", ["distance", "clock"])
def test_station_drag_is_one_step_with_its_section_end_and_cutoff(stage, measure):
    stage.storey.choose_measure(measure)
    start = name_of(stage, "barn")
    end = start + QPoint(80, 0)

    stage.drag(head(stage), start, end)
    there = shown_station(stage, "barn").at_m
    stage.release(head(stage), end)

    assert stage.undo.count() == 1
    assert kept_station(stage, "barn").at_m == there > 30_000.0
    assert stage.kept("to-barn").end_m == there
    assert kept_station(stage, "barn").cutoff_s == 6.0 * 3600.0
    stage.undo.undo()
    assert kept_station(stage, "barn").at_m == 30_000.0


def test_by_the_clock_a_station_moves_at_once_and_not_after_its_stop(stage):
    # Ten minutes at the barn are some twenty pixels in which the place would not change.
    stage.storey.choose_measure("clock")
    start = name_of(stage, "barn")

    stage.press(head(stage), start)
    for by in range(5, 13):
        move_freely(head(stage), start + QPoint(by, 0))

    assert shown_station(stage, "barn").at_m > 30_300.0


def test_click_on_a_name_moves_nothing(stage):
    at = name_of(stage, "ford")

    stage.press(head(stage), at)
    stage.move(head(stage), at + QPoint(2, 1))
    stage.release(head(stage), at + QPoint(2, 1))

    assert stage.undo.count() == 0
    assert (stage.selection.kind, stage.selection.key) == ("station", "ford")


def test_escape_puts_a_station_back(stage):
    start = name_of(stage, "barn")
    stage.drag(head(stage), start, start + QPoint(60, 0))

    QTest.keyClick(head(stage), Key.Key_Escape)
    assert stage.document.shown is stage.document.before
    stage.move(head(stage), start + QPoint(90, 0))
    stage.release(head(stage), start + QPoint(90, 0))

    assert stage.undo.count() == 0


def test_station_cannot_be_dragged_over_its_neighbour(stage):
    start = name_of(stage, "ford")
    end = name_of(stage, "barn") + QPoint(40, 0)

    stage.drag(head(stage), start, end)
    stage.release(head(stage), end)

    assert kept_station(stage, "ford").at_m < kept_station(stage, "barn").at_m - 99.0
    assert any("no length" in why for why in stage.refused)


def test_name_says_place_now_and_before_while_held(stage):
    start = name_of(stage, "barn")
    assert head(stage).hand.said_in_hand() == (None, ())

    stage.drag(head(stage), start, start + QPoint(50, 0))

    key, (said, short) = head(stage).hand.said_in_hand()
    assert key == "barn"
    assert said.endswith("was 30.0 km")
    assert said.startswith(short)


@pytest.mark.parametrize("width", range(500, 1300, 50))
def test_what_a_held_stop_says_stays_inside_its_box(stage, width):
    lane = head(stage)
    for near_m in (29_000.0, 32_000.0):
        stage.document.perform(AddStation(f"Hut {near_m:.0f}", near_m))
    stage.storey.resize(width, stage.storey.height())
    QApplication.processEvents()
    stage.selection.choose("station", "barn")
    stage.keys(lane, Key.Key_Return, Key.Key_Up, Key.Key_Up)
    places = lane.placed(lane.body())
    label, rect = next((label, rect) for label, rect in places if label.key == "barn")
    said, box = label.clock_in(rect.width()), lane.box_round(label, rect)
    full, *_ = lane.hand.said_in_hand()[1]
    assert said in full
    assert theme().width(said, UNIT_PT) + 6.0 <= box.width()
    assert all(not box.intersects(r) for one, r in places if one is not label)
    # In fewer words where stations crowd it, but with the minutes before.
    assert "was 10 min" in said or width < 700


def test_keys_choose_pick_up_and_move_a_station(stage):
    lane = head(stage)
    stage.selection.choose("station", "ford")

    stage.keys(lane, Key.Key_Right, Key.Key_Return)
    assert stage.selection.key == "barn"
    assert lane.is_carrying
    stage.keys(lane, Key.Key_Right, Key.Key_Right)
    assert shown_station(stage, "barn").at_m == 30_200.0
    stage.keys(lane, Key.Key_Right, modifier=Mod.ShiftModifier)
    assert shown_station(stage, "barn").at_m == 31_000.0
    assert stage.undo.count() == 0
    stage.keys(lane, Key.Key_Return)

    assert stage.undo.count() == 1
    assert kept_station(stage, "barn").at_m == 31_000.0


def test_keys_put_back_with_escape_and_when_they_go_elsewhere(stage):
    lane = head(stage)
    stage.selection.choose("station", "ford")
    stage.keys(lane, Key.Key_Return, Key.Key_Right, Key.Key_Escape)
    assert not lane.is_carrying
    stage.keys(lane, Key.Key_Return, Key.Key_Right)
    lane.hand.forsake()

    assert stage.undo.count() == 0
    assert stage.document.shown is stage.document.before


# Stops


@pytest.mark.parametrize("measure", ["distance", "clock"])
def test_stop_is_dragged_longer_in_one_step(stage, measure):
    stage.storey.choose_measure(measure)
    start = grip_of(stage, "barn")
    end = start + QPoint(40, 0)

    stage.drag(head(stage), start, end)
    shown_s = shown_station(stage, "barn").stop_s
    assert shown_s > 600.0
    assert shown_s % 60.0 == 0.0
    assert kept_station(stage, "barn").stop_s == 600.0
    stage.release(head(stage), end)

    assert kept_station(stage, "barn").stop_s == shown_s
    assert stage.undo.count() == 1


def test_by_the_clock_the_end_of_a_stop_follows_the_pointer(stage):
    stage.storey.choose_measure("clock")
    start = grip_of(stage, "barn")
    wide = head(stage).axis.unit_px(head(stage).body().width())

    stage.drag(head(stage), start, start + QPoint(40, 0))

    longer_s = shown_station(stage, "barn").stop_s - 600.0
    assert longer_s == pytest.approx(40.0 / wide, abs=4.0 / wide)


def test_stop_is_never_below_nothing(stage):
    start = grip_of(stage, "ford")
    end = start - QPoint(200, 0)

    stage.drag(head(stage), start, end)
    stage.release(head(stage), end)

    assert kept_station(stage, "ford").stop_s == 0.0


def test_keys_change_a_stop_by_minutes_and_by_fives(stage):
    lane = head(stage)
    stage.selection.choose("station", "ridge")

    stage.keys(lane, Key.Key_Return, Key.Key_Up, Key.Key_Up)
    assert shown_station(stage, "ridge").stop_s == 300.0
    stage.keys(lane, Key.Key_Up, modifier=Mod.ShiftModifier)
    assert shown_station(stage, "ridge").stop_s == 600.0
    stage.keys(lane, Key.Key_Return)

    assert stage.undo.count() == 1


def test_place_and_stop_changed_in_turn_are_two_steps(stage):
    lane = head(stage)
    stage.selection.choose("station", "ridge")

    stage.keys(lane, Key.Key_Return, Key.Key_Right, Key.Key_Up, Key.Key_Return)

    assert stage.undo.count() == 2
    assert kept_station(stage, "ridge").at_m == 45_100.0
    assert kept_station(stage, "ridge").stop_s == 240.0


# The start


def test_start_flag_moves_every_clock_of_the_race(stage):
    stage.storey.choose_measure("clock")
    start = name_of(stage, START)
    arrive_s = stage.kept("to-ford").arrive_s

    stage.drag(head(stage), start, start + QPoint(60, 0))

    later = shown_start(stage)
    assert later > datetime(2027, 6, 19, 18, tzinfo=LONDON)
    assert later.minute % 5 == 0
    assert stage.document.before.project.race.start.hour == 18
    was_dark = [s.start_s for s in stage.document.before.light if s.kind == "dark"]
    now_dark = [s.start_s for s in stage.document.shown.light if s.kind == "dark"]
    assert now_dark[0] < was_dark[0]
    assert abs(stage.shown("to-ford").arrive_s - arrive_s) < 1_800.0


def test_start_dragged_is_one_step_and_escape_puts_it_back(stage):
    start = name_of(stage, START)
    stage.drag(head(stage), start, start + QPoint(50, 0))
    QTest.keyClick(head(stage), Key.Key_Escape)
    assert stage.undo.count() == 0

    stage.drag(head(stage), start, start + QPoint(50, 0))
    shown = shown_start(stage)
    stage.release(head(stage), start + QPoint(50, 0))

    assert stage.undo.count() == 1
    assert stage.document.project.race.start == shown


def test_light_follows_the_hand_so_that_the_start_comes_earlier(stage):
    stage.storey.choose_measure("clock")
    lane = stage.storey.light
    at = lane.body().center().toPoint()
    dusk_s = next(s.start_s for s in stage.document.before.light if s.kind == "dark")
    was_x = lane.x_of_time(dusk_s, lane.body())

    stage.drag(lane, at, at + QPoint(60, 0))

    assert shown_start(stage) < stage.document.project.race.start
    now_s = next(s.start_s for s in stage.document.shown.light if s.kind == "dark")
    assert lane.x_of_time(now_s, lane.body()) - was_x == pytest.approx(60.0, abs=8.0)
    stage.release(lane, at + QPoint(60, 0))
    assert stage.undo.count() == 1


def test_escape_puts_the_light_back(stage):
    lane = stage.storey.light
    at = lane.body().center().toPoint()
    stage.drag(lane, at, at + QPoint(60, 0))

    QTest.keyClick(lane, Key.Key_Escape)
    stage.release(lane, at)

    assert stage.undo.count() == 0


def test_start_stays_on_its_day_however_far_it_is_dragged(stage):
    start = name_of(stage, START)
    for by in (-5_000, 5_000):
        stage.drag(head(stage), start, start + QPoint(by, 0))
        assert shown_start(stage).date() == stage.document.project.race.day
        QTest.keyClick(head(stage), Key.Key_Escape)


def test_keys_move_the_start_by_five_minutes_and_by_half_hours(stage):
    lane = head(stage)
    lane.hand.choose(START)

    stage.keys(lane, Key.Key_Return, Key.Key_Right, Key.Key_Right, Key.Key_Left)
    assert (shown_start(stage).hour, shown_start(stage).minute) == (18, 5)
    stage.keys(lane, Key.Key_Right, modifier=Mod.ShiftModifier)
    assert (shown_start(stage).hour, shown_start(stage).minute) == (18, 35)
    stage.keys(lane, Key.Key_Return)

    assert stage.undo.count() == 1


# What else changes meanwhile


def test_undo_in_the_middle_of_a_drag_empties_the_hand(stage):
    lane = head(stage)
    stage.selection.choose("station", "ridge")
    stage.keys(lane, Key.Key_Return, Key.Key_Right, Key.Key_Return)
    start = name_of(stage, "barn")
    stage.drag(lane, start, start + QPoint(60, 0))

    stage.undo.undo()
    stage.move(lane, start + QPoint(80, 0))
    stage.release(lane, start + QPoint(80, 0))

    assert stage.undo.count() == 1
    assert kept_station(stage, "barn").at_m == 30_000.0
    assert kept_station(stage, "ridge").at_m == 45_000.0
    assert not stage.storey.snap.is_on
    assert stage.document.shown is stage.document.before


class Asked(QObject):
    """What of a widget was asked to be painted, one region for each painting."""

    def __init__(self, widget):
        super().__init__(widget)
        self.regions = []
        widget.installEventFilter(self)

    def eventFilter(self, _watched, event):
        if event.type() is QEvent.Type.Paint:
            self.regions.append(QRegion(event.region()))
        return False


def test_lanes_that_only_its_line_crosses_are_painted_where_it_was_and_is(stage_of, base):
    spans = (SurfaceSpan(10_000.0, 20_000.0, Surface.ROCK),)
    project = replace(base, course=replace(base.course, surfaces=spans))
    stage = stage_of(project=project, size=(1200, 800))
    lane, start, other = head(stage), name_of(stage, "barn"), stage.storey.surface
    stage.press(lane, start)
    stage.move(lane, start + QPoint(40, 0))
    rest(stage.storey)
    places = [shown_station(stage, "barn").at_m]
    asked = Asked(other)

    stage.move(lane, start + QPoint(90, 0))
    QApplication.processEvents()

    places.append(shown_station(stage, "barn").at_m)
    assert places[0] != places[1]
    (region,) = asked.regions[:1]
    xs = [round(other.x_of(at_m, other.body())) for at_m in places]
    assert all(region.contains(QPoint(x, y)) for x in xs for y in (1, other.height() - 2))
    assert not region.contains(QPoint(sum(xs) // 2, other.height() // 2))
    stage.release(lane, start + QPoint(90, 0))


@pytest.mark.parametrize("measure", ["distance", "clock"])
@pytest.mark.parametrize("grip", [name_of, grip_of])
def test_head_painted_in_parts_looks_as_if_painted_whole(stage, measure, grip):
    stage.storey.choose_measure(measure)
    lane, start = head(stage), grip(stage, "barn")
    stage.press(lane, start)
    for by in (30, 31, -70, 140, 4):
        stage.move(lane, start + QPoint(by, 0))
        rest(stage.storey)
        in_parts = lane._painted.toImage()

        lane._drawn = None
        lane.update()
        rest(stage.storey)

        assert lane._painted.toImage() == in_parts
    stage.release(lane, start + QPoint(4, 0))


def test_head_paints_anew_where_the_hand_is_alone(stage):
    lane, start = head(stage), name_of(stage, "barn")
    stage.press(lane, start)
    stage.move(lane, start + QPoint(20, 0))
    rest(stage.storey)
    before = lane._drawn[1]

    stage.move(lane, start + QPoint(40, 0))
    rest(stage.storey)

    low, high = lane._drawn[1].changed_since(before)
    assert low < lane.x_of(shown_station(stage, "barn").at_m, lane.body()) < high
    assert high - low < lane.width() / 2
    stage.release(lane, start + QPoint(40, 0))
