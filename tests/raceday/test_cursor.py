"""The line at the pointer: the same place in every lane, said in words, painted for nothing."""

import pytest
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from ultraplanner_gui.raceday import at_cursor
from ultraplanner_gui.wording.words import Words

HOUR_S = 3600.0


def point(stage, lane, place_m):
    x = round(lane.x_of(place_m, lane.body()))
    QTest.mouseMove(lane, QPoint(x, 8))
    return x


def said(stage):
    return stage.storey._cursor.readout.text


def test_the_figures_are_those_of_the_place(stage):
    outlook, words = stage.document.shown, Words()
    place_m = 20_000.0
    moment_s = outlook.target.arrival_s(place_m)
    texts = at_cursor.figures(outlook, place_m, moment_s, words)

    assert texts[0] == "20.0 km"
    assert texts[2] == words.duration(moment_s)
    # 300 m less 250 m times the cosine of a third of three whole waves: the foot of a valley.
    assert texts[3] == "50 m"
    assert texts[4] in ("0 %", "+1 %", "-1 %")
    # Sunset in Cumbria in June is at about 21:50, the start at 18:00.
    assert texts[5] == ("day" if moment_s < 3.8 * HOUR_S else "twilight")
    assert texts[6].endswith(" g/h")


@pytest.mark.parametrize("measure", ["distance", "clock"])
def test_the_pointer_over_any_lane_is_at_the_same_place(stage, measure):
    stage.storey.choose_measure(measure)
    for lane in (stage.storey.profile, stage.target, stage.storey.in_hand, stage.storey.light):
        x = point(stage, lane, 30_000.0)
        assert stage.storey._cursor.line.x() == x
        assert said(stage).split()[0] in ("29.9", "30.0", "30.1")


def test_a_move_of_the_pointer_paints_no_lane_anew(stage, monkeypatch):
    stage.storey.grab()
    painted = []
    for lane in stage.storey.lanes:
        monkeypatch.setattr(lane, "paint_body", lambda *_, of=lane: painted.append(of))
    for place_m in range(10_000, 50_000, 5_000):
        point(stage, stage.storey.profile, place_m)
        QApplication.processEvents()

    assert said(stage).startswith("45.0 km")
    assert painted == []


def test_only_the_strips_of_the_old_and_the_new_place_are_asked_for(stage, qtbot):
    point(stage, stage.target, 20_000.0)
    QApplication.processEvents()
    regions = []

    class Spy(type(stage.storey.profile)):
        def paintEvent(self, event):
            regions.append(event.region())
            super().paintEvent(event)

    stage.storey.profile.__class__ = Spy
    old = stage.storey._cursor.line.x()
    point(stage, stage.target, 21_000.0)
    new = stage.storey._cursor.line.x()
    QApplication.processEvents()

    area = QRect()
    pixels = 0
    for region in regions:
        for rect in region:
            area = area.united(rect)
            pixels += rect.width()
    assert (area.left(), area.right()) == (old, new)
    assert pixels <= 4


def test_the_readout_follows_a_drag(stage):
    key = stage.document.project.fuel.items[4].key
    start = stage.token(key)
    stage.drag(stage.fuel, start, start + QPoint(120, 0))
    QApplication.processEvents()

    assert stage.storey._cursor.line.x() == start.x() + 120
    assert said(stage)
    QTest.keyClick(stage.fuel, Qt.Key.Key_Escape)


def test_the_readout_stands_clear_of_the_buttons(stage):
    point(stage, stage.target, 100.0)
    QApplication.processEvents()
    readout = stage.storey._cursor.readout
    assert readout.geometry().left() > stage.storey.title.buttons["clock"].geometry().right()
    assert stage.storey.title.geometry().contains(readout.geometry())


def test_enter_on_the_profile_leads_to_the_section_of_what_is_chosen(stage):
    stage.selection.choose("station", "barn")
    stage.storey.stack.show_table("profile")
    assert (stage.selection.kind, stage.selection.key) == ("section", "to-barn")


def test_the_table_of_the_fuel_lane_keeps_the_item_chosen(stage):
    key = stage.document.project.fuel.items[3].key
    stage.selection.choose("item", key)
    stage.storey.stack.show_table("fuel")
    assert stage.selection.key == key


def test_line_of_fuel_ends_clear_of_the_tokens_however_low_the_lane(stage):
    for height in (160, 220, 300, 420):
        stage.storey.resize(1200, height)
        if stage.fuel.isVisible():
            _, ys = stage.fuel._spots(stage.fuel.body())
            graph = stage.fuel._graph(stage.fuel.body())
            assert graph.height() >= 24
            assert graph.bottom() + 3.0 <= ys.min() - 4.5


@pytest.mark.parametrize("height", [120, 160, 200, 240, 280, 320, 360])
def test_profile_and_targets_stay_longest(stage, height):
    stage.storey.resize(1200, height)
    lanes = stage.storey.lanes
    assert stage.storey.profile.isVisible()
    if any(lane.isVisible() for lane in (stage.storey.in_hand, stage.fuel)):
        assert stage.target.isVisible()
    seen = [lane for lane in lanes if lane.isVisible()]
    assert max(lane.geometry().bottom() for lane in seen) < height
