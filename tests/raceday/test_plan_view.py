"""The course from above: true to the ground, one cursor with the lanes, by mouse and by keys."""

import numpy as np
import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from ultraplanner_gui.engine.course_scale import places_of_points
from ultraplanner_gui.plan.course import Course, Line, Surface, SurfaceSpan, sections_between
from ultraplanner_gui.raceday.plan_line import drawn_line, ground_plan
from ultraplanner_gui.science.geodesy import distance_along

KM_IN_DEG = 1.0 / 111.19


def course_on(east_km, north_km, heights=None):
    """A course through points on the ground about 46 degrees north."""
    east, north = np.asarray(east_km, dtype=float), np.asarray(north_km, dtype=float)
    latitude = 46.0 + north * KM_IN_DEG
    longitude = 7.0 + east * KM_IN_DEG / np.cos(np.radians(46.0))
    height = np.full(len(east), 500.0) if heights is None else np.asarray(heights, dtype=float)
    line = Line(latitude, longitude, height)
    return Course(line, float(distance_along(latitude, longitude)[-1]))


def circle(laps, points=2000):
    turn = np.linspace(0.0, 2.0 * np.pi * laps, points)
    return course_on(2.0 * np.sin(turn), 2.0 * np.cos(turn))


def drawn(course, side=300.0):
    return drawn_line(ground_plan(course), 0.0, 0.0, side, side)


@pytest.fixture
def stage(stage_of):
    stage = stage_of(size=(1200, 400))
    stage.storey.show_plan(True)
    QApplication.processEvents()
    QTest.mouseMove(stage.storey.plan, QPoint(2, 30))
    QTest.mouseMove(stage.storey.title, QPoint(700, 3))
    stage.storey.stack.leave()
    return stage


def at(stage, place_m):
    return stage.storey.plan.spot_of(place_m).toPoint()


# The line on the plane


def test_north_is_up_and_east_is_right():
    line = drawn(course_on([0, 0, 3], [0, 4, 4]))
    (x0, y0), (x1, y1), (x2, y2) = (line.place_of(m) for m in (0.0, 4000.0, 7000.0))
    assert x1 == pytest.approx(x0, abs=1.0)
    assert y1 < y0
    assert x2 > x1
    assert y2 == pytest.approx(y1, abs=1.0)


def test_the_scale_is_one_and_the_same_both_ways():
    line = drawn(course_on([0, 0, 3], [0, 4, 4]))
    (x0, y0), (x1, y1), (x2, y2) = (line.place_of(m) for m in (0.0, 4000.0, 7000.0))
    assert np.hypot(x1 - x0, y1 - y0) / 4000.0 == pytest.approx(line.px_per_m, rel=0.01)
    assert np.hypot(x2 - x1, y2 - y1) / 3000.0 == pytest.approx(line.px_per_m, rel=0.01)


def test_a_hundred_thousand_points_are_thinned_to_what_can_be_seen():
    turn = np.linspace(0.0, 2.0 * np.pi, 100_000)
    course = course_on(20.0 * np.sin(turn), 12.0 * np.sin(2.0 * turn))
    line = drawn(course)
    assert len(line.x) < 3000
    # And nothing of the way is lost: every tenth of a per cent lies where the ground is.
    along = places_of_points(course)
    whole = drawn_line(ground_plan(course), 0.0, 0.0, 300.0, 300.0)
    middle_e = 20.0 * np.sin(turn)
    for share in np.linspace(0.05, 0.95, 30):
        k = int(share * len(turn))
        x, _ = whole.place_of(along[k])
        assert x == pytest.approx(150.0 + middle_e[k] * 1000.0 * whole.px_per_m, abs=6.0)


def test_the_second_lap_lies_beside_the_first():
    course = circle(2)
    line = drawn(course)
    assert set(line.passes) == {0, 1}
    x0, y0 = line.place_of(0.3 * course.length_m)
    x1, y1 = line.place_of(0.8 * course.length_m)
    assert 3.0 < np.hypot(x1 - x0, y1 - y0) < 7.0


def test_the_way_back_lies_beside_the_way_out():
    out = np.linspace(0.0, 5.0, 500)
    course = course_on(np.concatenate((out, out[::-1])), np.zeros(1000))
    line = drawn(course)
    _, there = line.place_of(0.25 * course.length_m)
    _, back = line.place_of(0.75 * course.length_m)
    assert abs(back - there) > 3.0


def test_a_line_that_never_comes_back_is_one_pass():
    assert set(drawn(course_on([0, 1, 2, 5], [0, 3, 1, 4])).passes) == {0}


def test_nothing_is_drawn_or_found_across_a_gap():
    course = course_on([0, 1, 3, 4], [0, 0, 0, 0])
    course = replace(course, line=replace(course.line, gaps=(2,)))
    line = drawn(course)
    assert line.starts == (0, 2)
    middle = (line.x[1] + line.x[2]) / 2
    assert line.nearest(middle, line.y[1])[1] > 20.0


# The cursor it shares with the lanes


@pytest.mark.parametrize("measure", ["distance", "clock"])
def test_a_move_on_the_plan_moves_the_line_through_the_lanes(stage, measure):
    stage.storey.choose_measure(measure)
    QTest.mouseMove(stage.storey.plan, at(stage, 30_000.0))
    profile = stage.storey.profile
    assert stage.storey._cursor.line.isVisible()
    x = profile.x_of(30_000.0, profile.body())
    assert stage.storey._cursor.line.x() == pytest.approx(x, abs=4)
    assert stage.storey.plan.at_m == pytest.approx(30_000.0, abs=300.0)


def test_a_move_in_a_lane_marks_the_place_on_the_plan(stage):
    profile = stage.storey.profile
    QTest.mouseMove(profile, QPoint(round(profile.x_of(20_000.0, profile.body())), 10))
    QApplication.processEvents()
    assert stage.storey.plan.at_m == pytest.approx(20_000.0, abs=100.0)
    stage.storey.stack.leave()
    assert stage.storey.plan.at_m is None


@pytest.mark.parametrize("side", range(4, 140, 8))
def test_a_plan_with_next_to_no_room_stays_empty_or_whole(stage, side):
    plan = stage.storey.plan
    for size in ((side, 300), (300, side), (side, side)):
        plan.resize(*size)
        assert plan.grab().toImage().size() == plan.size()


def test_far_from_the_line_nothing_is_marked(stage):
    QTest.mouseMove(stage.storey.plan, at(stage, 30_000.0))
    QTest.mouseMove(stage.storey.plan, QPoint(3, 40))
    assert stage.storey.plan.at_m is None
    assert not stage.storey._cursor.line.isVisible()


def test_the_arrow_keys_walk_the_course(stage):
    stage.keys(stage.storey.plan, Qt.Key.Key_Right, Qt.Key.Key_Right, Qt.Key.Key_Right)
    length_m = stage.document.shown.profile.length_m
    assert stage.storey.plan.at_m == pytest.approx(0.02 * length_m)
    assert "km" in stage.storey.plan.accessibleDescription()
    stage.keys(stage.storey.plan, Qt.Key.Key_Left, modifier=Qt.KeyboardModifier.ShiftModifier)
    assert stage.storey.plan.at_m == 0.0


def test_the_figures_say_the_surface_where_it_is_known(stage_of, base):
    course = replace(base.course, surfaces=(SurfaceSpan(10_000.0, 20_000.0, Surface.ROCK),))
    stage = stage_of(course=course)
    stage.storey.show_plan(True)
    QApplication.processEvents()
    QTest.mouseMove(stage.storey.plan, at(stage, 15_000.0))
    assert "rock" in stage.storey.plan.accessibleDescription()
    QTest.mouseMove(stage.storey.plan, at(stage, 30_000.0))
    assert "unknown" not in stage.storey.plan.accessibleDescription()


# Choosing


def test_a_click_selects_the_section_there(stage):
    QTest.mouseClick(stage.storey.plan, Qt.MouseButton.LeftButton, pos=at(stage, 22_000.0))
    assert (stage.selection.kind, stage.selection.key) == ("section", "to-barn")


def test_a_click_on_a_station_selects_it(stage):
    QTest.mouseClick(stage.storey.plan, Qt.MouseButton.LeftButton, pos=at(stage, 14_000.0))
    assert (stage.selection.kind, stage.selection.key) == ("station", "ford")


def test_enter_selects_the_section_the_keys_are_at(stage):
    stage.keys(stage.storey.plan, Qt.Key.Key_Right, Qt.Key.Key_Right, Qt.Key.Key_Return)
    assert (stage.selection.kind, stage.selection.key) == ("section", "to-ford")


# What it looks like


def test_the_picture_is_kept_while_the_cursor_moves(stage, monkeypatch):
    plan, painted = stage.storey.plan, []
    plan.grab()
    monkeypatch.setattr(
        "ultraplanner_gui.raceday.line_view.paint_plan", lambda *_: painted.append(1)
    )
    for place_m in range(10_000, 50_000, 5_000):
        QTest.mouseMove(plan, at(stage, place_m))
        plan.grab()
    assert painted == []


def test_climbs_and_descents_have_the_colours_of_the_profile(stage):
    picture = stage.storey.plan.grab().toImage()
    # The first hill is climbed from 0 to 10 km, the descent goes on to 20 km.
    climb, descent = (picture.pixelColor(at(stage, m)) for m in (5_000.0, 15_000.0))
    assert climb.red() > climb.blue() + 20
    assert descent.blue() > descent.red() + 20


def test_a_strip_has_no_plan_and_it_comes_back(stage):
    stage.storey.set_strip(True)
    assert not stage.storey.plan.isVisible()
    stage.storey.set_strip(False)
    assert stage.storey.plan.isVisible()


def test_without_a_course_it_says_so_and_nothing_breaks(stage_of):
    stage = stage_of(course=None)
    stage.storey.show_plan(True)
    QTest.mouseMove(stage.storey.plan, QPoint(60, 60))
    stage.keys(stage.storey.plan, Qt.Key.Key_Right)
    stage.storey.plan.grab()
    assert stage.storey.plan.at_m is None


def test_a_course_of_many_laps_is_drawn(stage_of, base):
    course = circle(20, 20_000)
    course = replace(course, sections=sections_between(()))
    stage = stage_of(course=course)
    stage.storey.show_plan(True)
    QApplication.processEvents()
    picture = stage.storey.plan.grab().toImage()
    assert picture.width() > 100
    assert stage.storey.plan.place_at(QPointF(at(stage, 0.31 * course.length_m))) is not None
