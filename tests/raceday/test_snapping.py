"""What things in the hand snap to: climbs, stations, round figures, and where they were."""

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from tests.raceday.by_hand import grip_of, head, move_freely, name_of, shown_start, shown_station
from ultraplanner_gui.plan.course import Section
from ultraplanner_gui.raceday.head_hand import START

Key = Qt.Key


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
