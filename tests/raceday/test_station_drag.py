"""Stations, stops and the start in the hand: one step each, seen on every move, Esc puts back."""

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QEvent, QObject, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent, QRegion
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from tests.raceday.conftest import rest
from ultraplanner_gui.edits.course import AddStation
from ultraplanner_gui.plan.course import Section, Surface, SurfaceSpan
from ultraplanner_gui.raceday.head_hand import START
from ultraplanner_gui.widgets.lane import UNIT_PT
from ultraplanner_gui.widgets.theme import theme

Key, Mod = Qt.Key, Qt.KeyboardModifier
LONDON = ZoneInfo("Europe/London")


def head(stage):
    return stage.storey.head


def name_of(stage, key):
    """Where the name of a station, or of the start, can be taken hold of."""
    lane = head(stage)
    rect = next(rect for label, rect in lane.placed(lane.body()) if label.key == key)
    return rect.center().toPoint()


def grip_of(stage, key):
    """Where the stop at a station can be taken hold of."""
    lane = head(stage)
    spot = next(s for s in lane.stop_spots(lane.body()) if s.station.key == key)
    return QPoint(round(spot.right), round(lane.bar_top) + 6)


def shown_station(stage, key):
    return stage.document.shown.project.course.station(key)


def kept_station(stage, key):
    return stage.document.project.course.station(key)


def shown_start(stage):
    return stage.document.shown.project.race.start


def move_freely(lane, at):
    """Move the pressed mouse with Alt held."""
    QApplication.sendEvent(
        lane,
        QMouseEvent(
            QEvent.Type.MouseMove,
            QPointF(at),
            QPointF(lane.mapToGlobal(at)),
            Qt.MouseButton.NoButton,
            Qt.MouseButton.LeftButton,
            Mod.AltModifier,
        ),
    )


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


# Snapping


def test_station_snaps_to_a_whole_kilometre_and_alt_frees_it(stage):
    lane, start = head(stage), name_of(stage, "barn")
    px_a_km = lane.axis.unit_px(lane.body().width()) * 1_000.0
    two_km = round(2 * px_a_km) + 1
    stage.press(lane, start)
    stage.move(lane, start + QPoint(10, 0))

    stage.move(lane, start + QPoint(two_km, 0))
    assert shown_station(stage, "barn").at_m == 32_000.0
    assert stage.storey.snap.caught.text == "32 km"
    move_freely(lane, start + QPoint(two_km, 0))

    assert shown_station(stage, "barn").at_m != 32_000.0
    assert stage.storey.snap.caught is None


def test_tops_and_feet_of_climbs_take_hold_and_are_named(stage):
    lane, start = head(stage), name_of(stage, "barn")
    places = {n.text: n.at for n in stage.storey.snap._hill_places()}
    name, top_m = next((t, at) for t, at in places.items() if 31_000.0 < at < 42_000.0)
    by = round(lane.x_of(top_m, lane.body()) - lane.x_of(30_000.0, lane.body())) + 2
    stage.press(lane, start)
    stage.move(lane, start + QPoint(10, 0))

    stage.move(lane, start + QPoint(by, 0))

    assert shown_station(stage, "barn").at_m == top_m
    assert stage.storey._snap_mark.text == name
    assert any(name in text for text in stage.storey._snap_said())
    stage.release(lane, start + QPoint(by, 0))
    assert stage.storey._snap_mark.text == ""
    assert stage.storey._snap_said() == ()


def test_section_end_that_is_no_station_snaps_to_a_station_where_none_ends(stage_of, base):
    ends = (Section("to-ford", station="ford"), Section("to-barn", station="barn"))
    sections = (*ends, Section("free", end_m=41_000.0), Section("finish"))
    stage = stage_of(course=replace(base.course, sections=sections))
    lane = stage.target
    end = stage.edge("free")
    by = round(lane.x_of(45_000.0, lane.body()) - lane.x_of(41_000.0, lane.body())) + 3

    stage.drag(lane, end, end + QPoint(by, 0))

    assert stage.shown("free").end_m == 45_000.0
    assert stage.storey.snap.caught.text == "Ridge"


def test_token_snaps_to_the_arrival_at_a_station(stage):
    items = stage.document.project.fuel.items
    arrive_s = stage.kept("to-barn").arrive_s
    item = max((i for i in items if i.at_s < arrive_s - 1_200.0), key=lambda i: i.at_s)
    lane, start = stage.fuel, stage.token(item.key)
    by = round(lane.x_of_time(arrive_s, lane.body()) - lane.x_of_time(item.at_s, lane.body()))

    stage.drag(lane, start, start + QPoint(by - 2, 0))

    assert stage.item(item.key).at_s == pytest.approx(arrive_s, abs=60.0)
    assert "Barn" in stage.storey.snap.caught.text


def test_stop_snaps_to_five_minutes_and_a_half_hour_takes_the_start(stage):
    start = grip_of(stage, "barn")
    px_a_minute = 1.6
    stage.press(head(stage), start)
    stage.move(head(stage), start + QPoint(6, 0))
    stage.move(head(stage), start + QPoint(round(5 * px_a_minute) + 1, 0))
    assert shown_station(stage, "barn").stop_s == 900.0
    QTest.keyClick(head(stage), Key.Key_Escape)
    flag = name_of(stage, START)
    wide = head(stage).axis.time_at(1.0, 1.0) / head(stage).body().width()
    stage.press(head(stage), flag)
    stage.move(head(stage), flag + QPoint(8, 0))

    stage.move(head(stage), flag + QPoint(round(3_600.0 / wide) + 2, 0))

    assert (shown_start(stage).hour, shown_start(stage).minute) == (19, 0)


@pytest.mark.parametrize("what", ["station", "stop", "start", "light", "edge", "token"])
def test_what_is_brought_back_is_as_it_was(stage_of, base, what):
    """However near a climb, a station or a round figure is."""
    barn = replace(base.course.station("barn"), at_m=30_013.0, stop_s=594.0)
    start = base.race.start.replace(minute=7)
    items = tuple(replace(item, at_s=item.at_s + 7.0) for item in base.fuel.items)
    stage = stage_of(
        course=base.course.with_station(barn),
        race=replace(base.race, start=start),
        fuel=replace(base.fuel, items=items),
    )
    before, key = stage.document.project, items[5].key
    lane, at = {
        "station": lambda: (head(stage), name_of(stage, "barn")),
        "stop": lambda: (head(stage), grip_of(stage, "barn")),
        "start": lambda: (head(stage), name_of(stage, START)),
        "light": lambda: (stage.storey.light, stage.storey.light.body().center().toPoint()),
        "edge": lambda: (stage.target, stage.edge("to-barn")),
        "token": lambda: (stage.fuel, stage.token(key)),
    }[what]()
    stage.press(lane, at)
    for by in (40, 25, 0):
        stage.move(lane, at + QPoint(by, 0))
        assert (stage.document.shown.project == before) is (by == 0)
    assert stage.storey.snap.caught.text.startswith("its old ")
    stage.release(lane, at)

    assert stage.document.project == before
    assert stage.undo.count() == 0


def test_a_click_that_slips_a_little_snaps_nothing_away(stage):
    edge = stage.edge("to-ford")
    item = stage.document.project.fuel.items[5]
    for lane, at in ((stage.target, edge), (stage.fuel, stage.token(item.key))):
        stage.press(lane, at)
        stage.move(lane, at + QPoint(3, 0))
        stage.release(lane, at + QPoint(3, 0))

    assert stage.undo.count() == 0


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
