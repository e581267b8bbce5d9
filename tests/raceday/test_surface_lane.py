"""A surface is painted by dragging, on trial until let go, and one step to undo."""

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu

from ultraplanner_gui.plan.course import Surface, SurfaceSpan


def at(stage, place_m):
    lane = stage.storey.surface
    return QPoint(round(lane.x_of(place_m, lane.body())), 8)


@pytest.fixture
def stage(stage_of):
    stage = stage_of(size=(1200, 640))
    QApplication.processEvents()
    assert stage.storey.surface.isVisible()
    return stage


def surfaces(stage):
    return stage.document.before.project.course.surfaces


def test_a_drag_paints_and_is_one_step(stage):
    lane = stage.storey.surface
    lane.take_brush(Surface.ROCK)
    stage.drag(lane, at(stage, 10_000.0), at(stage, 20_000.0))
    assert surfaces(stage) == ()
    assert stage.document.shown.project.course.surfaces[0].surface is Surface.ROCK
    stage.release(lane, at(stage, 20_000.0))
    (span,) = surfaces(stage)
    assert (span.start_m, span.end_m) == pytest.approx((10_000.0, 20_000.0), abs=80.0)
    assert stage.undo.count() == 1
    stage.undo.undo()
    assert surfaces(stage) == ()


def test_a_drag_to_the_left_paints_the_same_stretch(stage):
    lane = stage.storey.surface
    stage.drag(lane, at(stage, 20_000.0), at(stage, 10_000.0))
    stage.release(lane, at(stage, 10_000.0))
    (span,) = surfaces(stage)
    assert span.start_m == pytest.approx(10_000.0, abs=80.0)


def test_escape_takes_the_paint_back(stage):
    lane = stage.storey.surface
    stage.drag(lane, at(stage, 10_000.0), at(stage, 20_000.0))
    stage.keys(lane, Qt.Key.Key_Escape)
    stage.release(lane, at(stage, 20_000.0))
    assert surfaces(stage) == ()
    assert stage.document.shown is stage.document.before


def test_unknown_erases(stage_of, base):
    from msgspec.structs import replace

    course = replace(base.course, surfaces=(SurfaceSpan(10_000.0, 20_000.0, Surface.ROAD),))
    stage = stage_of(size=(1200, 640), course=course)
    lane = stage.storey.surface
    lane.take_brush(Surface.UNKNOWN)
    stage.drag(lane, at(stage, 5_000.0), at(stage, 30_000.0))
    stage.release(lane, at(stage, 30_000.0))
    assert surfaces(stage) == ()


def test_a_click_paints_nothing(stage):
    QTest.mouseClick(stage.storey.surface, Qt.MouseButton.LeftButton, pos=at(stage, 10_000.0))
    assert surfaces(stage) == ()
    assert stage.undo.count() == 0


def test_the_menu_paints_a_whole_section(stage):
    menu = QMenu()
    stage.storey.surface.add_deeds(menu, QPointF(at(stage, 20_000.0)))
    whole = next(a.menu() for a in menu.actions() if "section" in a.text())
    next(a for a in whole.actions() if a.text() == "technical trail").trigger()
    assert surfaces(stage) == (SurfaceSpan(14_000.0, 30_000.0, Surface.TECHNICAL_TRAIL),)


def test_costly_ground_changes_the_pace_at_once(stage):
    lane = stage.storey.surface
    before = stage.document.before.sections
    lane.take_brush(Surface.SAND)
    stage.drag(lane, at(stage, 15_000.0), at(stage, 29_000.0))
    assert stage.document.shown.sections[1].moving_s > before[1].moving_s * 1.05
