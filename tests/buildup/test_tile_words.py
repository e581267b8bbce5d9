"""Words on tiles are whole: where none fits there is none."""

from dataclasses import replace

import pytest

from tests.buildup.conftest import TODAY, make_block, run
from ultraplanner_gui.buildup import kinds, tile
from ultraplanner_gui.edits.block import ChangeSession
from ultraplanner_gui.plan.block import Kind
from ultraplanner_gui.widgets.theme import theme


@pytest.mark.parametrize("kind", Kind)
def test_no_word_for_a_kind_has_fewer_than_four_letters(kind):
    words = (kinds.SHORT[kind], kinds.SHORTER.get(kind, "none"))
    assert all(len(word) >= 4 for word in words)


@pytest.mark.parametrize("kind", [k for k in Kind if k is not Kind.RACE])
def test_words_are_whole_where_twenty_weeks_fill_a_window_of_1440(stage_of, monkeypatch, kind):
    # The build-up of a window 1440 wide and 900 high, beside the ledger.
    stage = stage_of(block=make_block(20), size=(1144, 446))
    written = []
    monkeypatch.setattr(
        tile, "draw_text", lambda painter, rect, text, *more: written.append((rect, text, more))
    )
    session = run("long18", stage.session("long18").day, kind, 21)
    stage.document.try_edit(ChangeSession(session))
    stage.grid.redraw()
    stage.grid.grab()
    word = kinds.SHORT[kind]
    found = [(rect, more[1]) for rect, text, more in written if text == word]
    assert found
    width = theme().metrics(tile.KIND_PT).horizontalAdvance(word)
    assert all(width <= rect.width() + 1.0 for rect, _ in found)


@pytest.mark.parametrize("kind", [k for k in Kind if k is not Kind.RACE])
def test_every_kind_is_named_where_21_weeks_fill_a_window_of_1440(stage_of, monkeypatch, kind):
    stage = stage_of(block=make_block(21), size=(1144, 446))
    session = run("long19", stage.session("long19").day, kind, 30)
    stage.document.try_edit(ChangeSession(session))
    written = []
    monkeypatch.setattr(tile, "draw_text", lambda painter, rect, text, *more: written.append(text))
    stage.grid.redraw()
    stage.grid.grab()
    assert {kinds.SHORT[kind], kinds.SHORTER.get(kind)} & set(written)


def test_a_past_session_not_marked_yet_asks(stage_of, monkeypatch):
    block = make_block()
    session = block.session("easy1")
    stage = stage_of(block=block.with_session(replace(session, done=None)))
    assert session.day < TODAY
    written = []
    monkeypatch.setattr(tile, "draw_text", lambda _p, _r, text, *more: written.append(text))
    stage.grid.redraw()
    stage.grid.grab()
    assert written.count("?") == 1
