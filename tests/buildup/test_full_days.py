"""Days of three sessions and more say each of them, or how much it is in all."""

from collections import Counter
from itertools import pairwise

import pytest
from msgspec.structs import replace

from tests.buildup.conftest import TODAY, make_block, run
from ultraplanner_gui.buildup import crowd, kinds, strips, tile, tilelayer
from ultraplanner_gui.edits.block_moves import PasteSessions
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.widgets.theme import theme

#: The build-up of a window of 1440 x 900 and of one of 1920 x 1080, beside the ledger.
SMALL, LARGE = (1144, 446), (1624, 489)
STRENGTH = replace(run("strength", TODAY, Kind.STRENGTH, 0), duration_s=4_200.0)
JOG = run("jog", TODAY, Kind.RECOVERY, 6.5)
CROSS = replace(run("cross", TODAY, Kind.CROSS, 0), duration_s=3_600.0)


@pytest.fixture
def full_day(stage_of, monkeypatch):
    """Return what gives the new texts and the stage of a day with *others* beside its long run."""

    def make(weeks, size, *others):
        stage = stage_of(block=make_block(weeks), size=size)
        stage.grid.show_all()
        texts = []
        for module in (tile, strips, crowd):
            monkeypatch.setattr(
                module, "draw_text", lambda _p, rect, text, *more: texts.append(text)
            )

        def written():
            texts.clear()
            stage.grid.redraw()
            stage.grid.grab()
            return Counter(text.replace("\N{HAIR SPACE}", "") for text in texts)

        before, day = written(), stage.session("long5").day
        stage.document.perform(PasteSessions(tuple(replace(s, day=day) for s in others), day))
        return written() - before, stage, day

    return make


@pytest.mark.parametrize("size", [SMALL, LARGE])
@pytest.mark.parametrize("weeks", [8, 12, 16, 20, 24])
def test_each_of_three_keeps_kind_and_figure(full_day, weeks, size):
    new, stage, day = full_day(weeks, size, JOG, STRENGTH)
    assert not stage.grid.cells.is_crowded(day)
    names = {kind: set(kinds.names(kind)) for kind in (Kind.STRENGTH, Kind.RECOVERY)}
    assert all(set(new) & name for name in names.values())
    assert "6.5" in new or "6.5\N{NO-BREAK SPACE}km" in new
    assert {"70\N{PRIME}", "1 h 10"} & set(new)


def test_each_of_three_is_told_from_afar(full_day):
    new, stage, _ = full_day(36, SMALL, JOG, STRENGTH)
    assert stage.grid.is_far
    assert {"R6", "S"} <= set(new)


@pytest.mark.parametrize("weeks", [24, 36, 52])
def test_four_in_a_narrow_week_come_to_a_sum(full_day, weeks):
    new, stage, day = full_day(weeks, SMALL, JOG, STRENGTH, CROSS)
    there = stage.grid.cells.on(day)
    metres = sum(s.distance_m for s in there)
    assert stage.grid.cells.is_crowded(day)
    assert {stage.words.distance(metres, 0), stage.words.distance_bare(metres, 0)} & set(new)
    assert {"R", "S", "C"} <= set(new) or stage.grid.is_far


def test_the_pointer_on_a_crowded_day_is_told_every_session(full_day):
    _, stage, day = full_day(24, SMALL, JOG, STRENGTH, CROSS)
    said = stage.grid.readout(stage.grid.cells.tiles_on(day)[1].rect.center())
    head, *lines = said.split("\n")
    assert "4 sessions" in head
    for line, session in zip(lines, stage.grid.cells.on(day), strict=True):
        assert line.startswith(kinds.FULL[session.kind])


def test_the_pointer_is_told_the_day_from_afar_and_one_session_near_by(full_day):
    for weeks, lines in ((52, 4), (24, 1)):
        _, stage, day = full_day(weeks, SMALL, JOG, STRENGTH)
        said = stage.grid.readout(stage.grid.cells.tiles_on(day)[1].rect.center())
        assert len(said.split("\n")) == lines


def test_a_day_of_strength_alone_comes_to_a_time(full_day):
    _, stage, _ = full_day(24, SMALL)
    assert crowd._totals([STRENGTH, CROSS], stage.words)[0] == "2 h 10"
    assert crowd._totals([CROSS], stage.words)[-1] == "60\N{PRIME}"


@pytest.mark.parametrize("height", range(420, 462, 5))
@pytest.mark.parametrize("others", [(), (STRENGTH,), (STRENGTH, JOG)])
def test_tiles_that_share_a_day_alike_are_painted_at_one_height(
    full_day, monkeypatch, height, others
):
    _, stage, day = full_day(24, (1144, height), *others)
    heights, paint = [], tilelayer.paint_tile

    def painted(painter, box, session, *more):
        heights.extend([box.height()] if session.day == day else [])
        paint(painter, box, session, *more)

    monkeypatch.setattr(tilelayer, "paint_tile", painted)
    stage.grid.redraw()
    stage.grid.grab()
    assert len(heights) == len(others) + 1
    assert len(set(heights)) == 1


@pytest.mark.parametrize("height", range(380, 462, 9))
@pytest.mark.parametrize("weeks", [20, 24, 36, 52])
def test_no_full_day_is_left_without_a_word(full_day, weeks, height):
    new, stage, day = full_day(weeks, (1144, height), JOG, STRENGTH)
    metres = sum(s.distance_m for s in stage.grid.cells.on(day))
    sums = {stage.words.distance(metres, 0), stage.words.distance_bare(metres, 0)}
    assert sums & set(new) or {"S", *kinds.names(Kind.STRENGTH)} & set(new)


@pytest.mark.parametrize("height", [425, 432, 439, 446])
def test_a_little_lower_window_keeps_the_words_of_single_tiles(full_day, height, monkeypatch):
    _, stage, _ = full_day(24, (1144, height))
    texts = []
    monkeypatch.setattr(tile, "draw_text", lambda _p, rect, text, *more: texts.append(text))
    stage.grid.redraw()
    stage.grid.grab()
    runs = [s for s in stage.document.project.block.sessions if s.kind is Kind.EASY]
    assert 27 <= stage.grid.cells.row_height <= 30
    assert texts.count(kinds.SHORT[Kind.EASY]) == len(runs)


@pytest.mark.parametrize("weeks", [24, 52])
def test_the_outline_of_a_choice_leaves_the_sum_of_a_full_day_readable(full_day, weeks):
    _, stage, day = full_day(weeks, SMALL, JOG, STRENGTH, CROSS)
    cell, there = stage.grid.cells.cell(day), stage.grid.cells.tiles_on(day)
    marks = []
    for one in there:
        stage.choose(one.session.key)
        marks.append(stage.grid._chosen_tile())
    assert all(cell.adjusted(-1, -1, 1, 1).contains(mark) for mark in marks)
    assert all(a.right() <= b.left() + 0.01 for a, b in pairwise(marks))
    sum_top = cell.bottom() - theme().metrics(tile.KIND_PT, bold=True).capHeight()
    assert all(mark.bottom() < sum_top for mark in marks)
