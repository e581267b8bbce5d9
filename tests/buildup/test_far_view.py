from datetime import timedelta

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from tests.buildup.conftest import RACE_DAY, TODAY, make_block, run
from ultraplanner_gui.buildup.cells import TILE_PX
from ultraplanner_gui.buildup.strips import line_share
from ultraplanner_gui.edits.block import RemoveSession
from ultraplanner_gui.plan.block import Block, Kind

Key = Qt.Key
LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def far(stage_of):
    """A year of weeks, all in view."""
    stage = stage_of(block=make_block(52), size=(1000, 500))
    stage.grid.show_all()
    return stage


def week_spot(stage, index):
    return stage.grid.cells.week(index).center().toPoint()


def test_a_year_is_strips_and_a_season_is_tiles(far, stage_of):
    assert far.grid.is_far
    assert not stage_of(block=make_block(20), size=(1200, 500)).grid.is_far


def test_the_readout_is_of_the_week(far):
    week = far.document.shown.weeks[40]
    text = far.grid.readout(far.grid.cells.week(40).center())
    assert text.startswith(f"{week.to_go} to go")
    assert "3 sessions" in text
    assert far.words.distance(week.distance_m) in text


def test_a_click_selects_the_week_and_moves_nothing(far):
    at = week_spot(far, 45)
    far.press(at)
    far.move(at + QPoint(60, 0))
    far.release(at + QPoint(60, 0))
    start = far.document.shown.weeks[45].start
    assert (far.selection.kind, far.selection.key) == ("week", start.isoformat())
    assert far.document.tried == []


def test_arrows_go_from_week_to_week(far):
    far.press(week_spot(far, 45))
    far.release(week_spot(far, 45))
    far.keys(Key.Key_Left, Key.Key_Left)
    assert far.selection.key == far.document.shown.weeks[43].start.isoformat()
    assert far.grid.accessibleDescription().startswith("8 to go")


def test_keys_for_one_session_do_nothing_from_afar(far):
    far.choose("easy48")
    far.keys(Key.Key_Delete, Key.Key_D, Key.Key_M)
    assert far.document.performed == []
    far.keys(Key.Key_Plus, Key.Key_Delete)
    assert [type(e) for e in far.document.performed] == [RemoveSession]


@pytest.mark.parametrize("how", ["double click", "plus", "enter"])
def test_zooming_in_there_shows_tiles_round_that_week(far, how):
    at = week_spot(far, 20)
    QTest.mouseClick(far.grid, LEFT, pos=at)
    if how == "double click":
        QTest.mouseDClick(far.grid, LEFT, pos=at)
    else:
        far.keys(Key.Key_Plus if how == "plus" else Key.Key_Return)
    assert not far.grid.is_far
    assert far.grid._axis.is_shown(20)
    assert far.grid._axis.each(far.grid.body().width()) >= TILE_PX - 1.0


def test_what_is_carried_can_be_put_down_from_afar(far):
    far.choose("easy48")
    far.grid.zoom_in()
    home = far.session("easy48").day
    far.keys(Key.Key_Space, Key.Key_0)
    assert far.grid.is_far
    far.keys(*[Key.Key_Left] * 3, Key.Key_Space)
    assert far.session("easy48").day == home - timedelta(weeks=3)


@pytest.mark.parametrize("height", [380, 700])
def test_both_sessions_of_a_day_have_a_line(stage_of, height):
    block = make_block(52)
    twin = replace(block.session("hills48"), key="twin")
    stage = stage_of(block=block.with_new(twin), size=(1000, height))
    stage.grid.show_all()
    first, second = stage.grid.cells.tiles_on(block.session("hills48").day)
    assert first.rect.bottom() <= second.rect.top()
    assert _ink(stage, first.session.key) > 0
    assert _ink(stage, second.session.key) > 0


def test_longer_runs_are_longer_lines():
    shares = [line_share(run("a", TODAY, km=km), 40_000.0) for km in (5, 10, 20, 40)]
    assert shares == sorted(set(shares))
    assert shares[-1] == 1.0
    assert line_share(run("a", TODAY, Kind.STRENGTH, km=0), 40_000.0) == 0.0


def _ink(stage, key: str) -> int:
    """Count the points across the strip in which something of the session *key* is drawn."""
    rect = stage.grid.cells.tile(key).rect.adjusted(4, 2, -4, -2).toRect()
    image = stage.grid.grab(rect).toImage()
    ground = image.pixel(0, image.height() - 1)
    return sum(
        image.pixel(x, y) != ground for x in range(image.width()) for y in range(image.height())
    )


@pytest.mark.parametrize(
    ("less", "more"),
    [
        ({"effort": 2}, {"effort": 9}),
        ({"km": 6}, {"km": 36}),
    ],
)
def test_harder_and_longer_runs_have_more_ink(stage_of, less, more):
    monday = RACE_DAY - timedelta(days=5, weeks=10)
    plan = {"km": 20, "effort": 5}
    block = Block(
        (
            run("less", monday + timedelta(1), **(plan | less)),
            run("more", monday + timedelta(3), **(plan | more)),
            run("longest", monday + timedelta(5), km=40),
            run("race", RACE_DAY, Kind.RACE, 100),
        ),
        51,
    )
    stage = stage_of(block=block, size=(1500, 500))
    stage.grid.show_all()
    assert stage.grid.is_far
    assert 0 < _ink(stage, "less") < _ink(stage, "more")
