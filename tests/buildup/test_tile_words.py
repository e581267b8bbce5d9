"""Words on tiles are whole: where none fits there are letters."""

from collections import Counter

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter, QPixmap

from tests.buildup.conftest import TODAY, make_block, run
from ultraplanner_gui.buildup import kinds, strips, tile
from ultraplanner_gui.edits.block import ChangeSession
from ultraplanner_gui.edits.block_moves import PasteSessions
from ultraplanner_gui.plan.block import Ground, Kind
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


def _written(stage, monkeypatch, module=tile):
    texts = []
    monkeypatch.setattr(module, "draw_text", lambda _p, _r, text, *more: texts.append(text))
    stage.grid.redraw()
    stage.grid.grab()
    return texts


def test_no_two_kinds_share_a_letter():
    assert len(set(kinds.LETTERS.values())) == len(kinds.LETTERS) == len(Kind) - 1


@pytest.mark.parametrize("kind", [k for k in Kind if k is not Kind.RACE])
def test_half_a_tile_tells_kind_and_length_where_24_weeks_fill_a_window_of_1440(
    stage_of, monkeypatch, kind
):
    stage = stage_of(block=make_block(24), size=(1144, 446))
    stage.grid.show_all()
    assert not stage.grid.is_far
    before = Counter(_written(stage, monkeypatch))
    twin = run("twin", stage.session("long20").day, kind, 17.0 if kind.is_run else 0)
    twin = replace(twin, duration_s=2_100.0)
    stage.document.try_edit(PasteSessions((twin,), twin.day))
    assert len(stage.grid.cells.tiles_on(twin.day)) == 2
    new = Counter(_written(stage, monkeypatch)) - before
    assert set(new) & set(kinds.names(kind))
    assert set(new) & ({"17"} if kind.is_run else {"35\N{PRIME}", "35 min"})


def _with_others(stage, *others):
    """Put *others* on the day of the tenth long run; return its tiles."""
    day = stage.session("long10").day
    others = tuple(replace(other, day=day) for other in others)
    stage.document.perform(PasteSessions(others, day))
    return stage.grid.cells.tiles_on(day)


STRENGTH = replace(run("strength", TODAY, Kind.STRENGTH, 0), duration_s=2_400.0)


def test_three_on_a_day_are_all_named_where_18_weeks_fill_a_window_of_1440(stage_of, monkeypatch):
    stage = stage_of(block=make_block(18), size=(1144, 446))
    before = Counter(_written(stage, monkeypatch))
    tiles = _with_others(stage, run("jog", TODAY, Kind.RECOVERY, 6), STRENGTH)
    new = Counter(_written(stage, monkeypatch)) - before
    assert len(tiles) == 3
    assert new["6"] == new["S"] == new["40\N{PRIME}"] == 1
    assert new["R"] + new["Rec"] == 1


def test_the_longest_of_three_has_a_line_to_itself(stage_of):
    stage = stage_of(block=make_block(18), size=(1144, 446))
    tiles = _with_others(stage, run("jog", TODAY, Kind.RECOVERY, 6), STRENGTH)
    long = next(t for t in tiles if t.session.kind is Kind.LONG)
    others = [t.rect for t in tiles if t is not long]
    assert all(long.rect.width() > 1.9 * rect.width() for rect in others)
    assert others[0].top() == others[1].top() != long.rect.top()


@pytest.mark.parametrize("ground", [g for g in Ground if g is not Ground.LEVEL])
def test_no_ground_line_runs_through_the_figure_of_a_low_tile(stage_of, monkeypatch, ground):
    stage = stage_of(block=make_block(18), size=(1144, 446))
    tiles = _with_others(stage, run("jog", TODAY, Kind.EASY, 6, ground=ground))
    low = next(one for one in tiles if one.session.key.startswith("jog"))
    lines, rects = [], []
    monkeypatch.setattr(tile, "draw_ground", lambda painter, rect, *more: lines.append(rect))
    monkeypatch.setattr(tile, "draw_text", lambda painter, rect, *more: rects.append(rect))
    picture = QPixmap(low.rect.size().toSize())
    with QPainter(picture) as painter:
        tile.paint_tile(painter, QRectF(picture.rect()), low.session, tile.Stage(), stage.words)
    metrics = theme().metrics(tile.KIND_PT, bold=True)
    baselines = [r.center().y() + (metrics.ascent() - metrics.descent()) / 2 for r in rects]
    assert len(lines) == 1
    assert max(baselines) <= lines[0].top()


@pytest.mark.parametrize("count", [1, 2, 3, 4, 5, 7])
@pytest.mark.parametrize("size", [(1144, 446), (1144, 380), (700, 900), (2400, 700)])
def test_tiles_of_a_day_fill_it_and_never_overlap(stage_of, size, count):
    stage = stage_of(block=make_block(18), size=size)
    tiles = _with_others(stage, *(run(f"jog{n}", TODAY, km=5 + n) for n in range(count - 1)))
    cell = stage.grid.cells.cell(stage.session("long10").day)
    assert len(tiles) == count
    for one in tiles:
        assert cell.adjusted(-0.01, -0.01, 0.01, 0.01).contains(one.rect)
        assert not any(one.rect.intersects(t.rect) for t in tiles if t is not one)
        assert stage.grid.cells.tile_at(one.rect.center()) is one
    right, foot = max(t.rect.right() for t in tiles), max(t.rect.bottom() for t in tiles)
    assert (right, foot) == pytest.approx((cell.right(), cell.bottom()))


def test_every_week_is_written_alike_whatever_pixel_its_column_ends_on(stage_of, monkeypatch):
    stage = stage_of(block=make_block(18), size=(1144, 446))
    longest = [s for s in stage.document.project.block.sessions if s.kind is Kind.LONG]
    twins = [run(f"twin{n}", s.day, Kind.STRENGTH, 0) for n, s in enumerate(longest)]
    twins = tuple(replace(twin, duration_s=1_800.0) for twin in twins)
    stage.document.try_edit(PasteSessions(twins, twins[0].day))
    for width in range(1000, 1200, 7):
        stage.grid.resize(width, stage.grid.height())
        texts = Counter(_written(stage, monkeypatch))
        told = {text: texts[text] for text in ("30\N{PRIME}", "30 min") if texts[text]}
        assert list(told.values()) == [len(twins)]


@pytest.mark.parametrize("width", range(700, 1200, 50))
def test_runs_of_a_kind_are_called_alike_however_long_they_are(stage_of, monkeypatch, width):
    block = make_block(14)
    short = [replace(s, distance_m=s.distance_m / 4) for s in block.sessions if s.key == "easy9"]
    stage = stage_of(block=block.with_session(short[0]), size=(width, 330))
    texts = set(_written(stage, monkeypatch))
    assert len(texts & set(kinds.names(Kind.EASY))) <= 1
    assert len(texts & set(kinds.names(Kind.LONG))) <= 1


def test_eight_weeks_leave_room_for_unit_time_and_climb(stage_of, monkeypatch):
    block = make_block(8)
    hills = replace(block.session("hills6"), duration_s=4_500.0, climb_m=340.0)
    stage = stage_of(block=block.with_session(hills), size=(1144, 446))
    texts = [t.replace("\N{NO-BREAK SPACE}", " ") for t in _written(stage, monkeypatch)]
    assert {"10 km", "1 h 15", "climb 340 m"} <= set(texts)


def test_what_a_year_of_weeks_says_from_afar(stage_of, monkeypatch):
    stage = stage_of(block=make_block(52), size=(1144, 446))
    stage.grid.show_all()
    assert stage.grid.is_far
    texts = _written(stage, monkeypatch, strips)
    # A hundred kilometres and more may find no room.
    runs = [s for s in stage.document.project.block.sessions if s.distance_m < 99_500.0]
    figures = [kinds.amount(s.distance_m, 0.0, s.kind, stage.words) for s in runs]
    told = [text.lstrip("EHL\N{HAIR SPACE}") for text in texts]
    told = [figure for figure in told if 0 < len(figure) < 3]
    assert sorted(told) == sorted(figures)
    # Columns may differ by a pixel; what is said in them does not.
    hills = {text for text in texts if text.endswith("10") and text[0] in "H1"}
    assert len(hills) == 1


def test_runs_of_two_digits_keep_their_letter_where_52_weeks_fill_1440(stage_of, monkeypatch):
    stage = stage_of(block=make_block(52), size=(1144, 446))
    stage.grid.show_all()
    texts = Counter(_written(stage, monkeypatch, strips))
    runs = Counter(kinds.letters(s.kind) for s in stage.document.project.block.sessions)
    assert {letter: texts[letter] for letter in "EHL"} == {letter: runs[letter] for letter in "EHL"}


def test_where_two_digits_have_no_room_the_lines_speak_alone(stage_of, monkeypatch):
    stage = stage_of(block=make_block(52), size=(640, 446))
    stage.grid.show_all()
    assert _written(stage, monkeypatch, strips) == []
