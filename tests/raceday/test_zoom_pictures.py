"""What zooming and panning leave on the screen is what a whole new painting gives."""

import pytest
from PySide6.QtWidgets import QApplication

from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.wording.words import Words

VIEWS = ((0.0, 0.2), (0.15, 0.4), (0.6, 0.65), (0.5, 1.0), (0.0, 1.0))


@pytest.fixture(params=[("light", 100), ("dark", 135)], ids=str)
def look(request, qapp):
    theme().choose(*request.param)
    yield
    theme().choose("light", 100)


def seen(lane):
    QApplication.processEvents()
    return lane.screen().grabWindow(lane.window().winId()).toImage()


@pytest.mark.usefixtures("look")
@pytest.mark.parametrize("measure", ["distance", "clock"])
def test_every_view_is_painted_whole(stage_of, measure):
    storey = stage_of(size=(1240, 640)).storey
    storey.choose_measure(measure)
    lane, before = storey.profile, None
    whole = lane.axis.high
    for low, high in VIEWS:
        lane.axis.view(low * whole, high * whole)
        left = seen(lane)
        for one in storey.lanes:
            one.update()
        assert left == seen(lane)
        assert left != before
        before = left


def test_heights_beside_it_follow_the_units_after_a_zoom(stage_of):
    stage = stage_of(size=(1240, 640))
    lane = stage.storey.profile

    def beside():
        QApplication.processEvents()
        return lane.grab().toImage().copy(0, 0, int(lane.body().left()) - 1, lane.height())

    in_metres = beside()
    lane.axis.view(0.0, 0.3 * lane.axis.high)
    assert beside() == in_metres
    stage.words = Words("imperial")
    lane.update()
    assert beside() != in_metres
