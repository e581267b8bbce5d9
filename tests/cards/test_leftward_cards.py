"""Cards in a language written from right to left: turned, all but what runs along the course."""

import re
import sys
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtGui import QTextLayout

from ultraplanner_gui.cards.make import laid, pages_of
from ultraplanner_gui.cards.mirror import mirrored
from ultraplanner_gui.cards.page import Line, Polygon, Rect, Strokes, Text
from ultraplanner_gui.cards.paint import measure
from ultraplanner_gui.desk.demo import demo_project
from ultraplanner_gui.engine.outlook import derive
from ultraplanner_gui.plan.cards import Card, CardForm, CardKind
from ultraplanner_gui.wording.words import Words

sys.path.insert(0, str(Path(__file__).parents[2] / "packaging"))
from translate import leftward_text

pytestmark = pytest.mark.usefixtures("qapp")

LEFTWARD = Words(translate=leftward_text, leftward=True)
RIGHTWARD = Words(translate=leftward_text)
A6 = (105.0, 148.0)
RLI = "\u2067"


@pytest.fixture(scope="module")
def outlook():
    return derive(demo_project(date(2026, 11, 25)))


def _card(kind, form=CardForm.SHEET, size=A6):
    return Card(kind, *size, form)


def _dark(page):
    return sorted(op.x_mm for op in page.ops if isinstance(op, Rect) and op.grey == 0.0)


def _both(outlook, card):
    return (pages_of(card, outlook, words, measure) for words in (RIGHTWARD, LEFTWARD))


def _texts(page):
    return [op for op in page.ops if isinstance(op, Text)]


def _edges(op):
    wide = measure(op.text, op.size_pt, op.bold)
    left = op.x_mm - {"left": 0.0, "right": wide, "centre": 0.5 * wide}[op.align]
    return left, left + wide


@pytest.mark.parametrize("kind", [k for k in CardKind if k is not CardKind.BAGS])
def test_what_began_at_the_left_begins_at_the_right(outlook, kind):
    # Numbers have marks of no width in one of them; else the same type at the mirrored place.
    for was, now in zip(*_both(outlook, _card(kind, size=(210.0, 297.0))), strict=True):
        if kind is CardKind.PACE:
            continue
        for before, after in zip(_texts(was), _texts(now), strict=True):
            if before.align == after.align:
                continue  # figures, see below
            left, right = _edges(before)
            assert _edges(after) == pytest.approx((210.0 - right, 210.0 - left), abs=1e-6)


def test_figures_still_end_over_one_another(outlook):
    (page, *_) = pages_of(_card(CardKind.PACE), outlook, LEFTWARD, measure)
    figures = [op for op in _texts(page) if re.fullmatch(r"\u2067[\d.]+\u2069", op.text)]
    columns = {}
    for op in figures:
        columns.setdefault(round(op.x_mm, 3), []).append(op.text)
    (places,) = [texts for texts in columns.values() if len(texts) == len(outlook.sections)]
    # From 12.4 to 101.5 km: not all of one width.
    assert len({len(text) for text in places}) == 2
    assert {op.align for op in figures if round(op.x_mm, 3) in columns} == {"right"}


def test_boxes_to_tick_stand_at_the_right_of_what_they_tick(outlook):
    (page, *_) = pages_of(_card(CardKind.LISTS, size=(210.0, 297.0)), outlook, LEFTWARD, measure)
    boxes = [op for op in page.ops if isinstance(op, Rect) and op.outline_mm]
    assert len(boxes) > 5
    for box in boxes:
        near = [t for t in _texts(page) if abs(t.baseline_mm - box.y_mm - box.height_mm) < 1.5]
        beside = [t for t in near if _edges(t)[1] < box.x_mm]
        assert any(box.x_mm - _edges(text)[1] < 3.0 for text in beside)


def test_the_profile_on_a_pace_card_still_runs_to_the_right(outlook):
    was, now = (pages[0] for pages in _both(outlook, _card(CardKind.PACE)))

    def hill(page):
        return next(op for op in page.ops if isinstance(op, Polygon))

    for before, after in zip(hill(was).points, hill(now).points, strict=True):
        assert after == pytest.approx(before)
    assert _dark(now) == pytest.approx(_dark(was))


@pytest.mark.parametrize("form", [CardForm.WRIST, CardForm.CONCERTINA])
def test_a_strip_keeps_the_order_of_the_course(outlook, form):
    (was, *_), (now, *_) = _both(outlook, _card(CardKind.PACE, form, (280.0, 70.0)))
    places = [(op.x_mm, op.baseline_mm, op.align) for op in _texts(was)]
    assert [(op.x_mm, op.baseline_mm, op.align) for op in _texts(now)] == places


def _seen(text):
    """Return the signs of *text* as Qt paints them, from left to right."""
    layout = QTextLayout(text)
    layout.beginLayout()
    layout.createLine()
    layout.endLayout()
    ask, seen = QTextLayout.GlyphRunRetrievalFlag, []
    for run in layout.glyphRuns(
        0, len(text), ask.RetrieveStringIndexes | ask.DefaultRetrievalFlags
    ):
        places = zip(run.stringIndexes(), run.positions(), strict=True)
        seen += [(at.x(), text[n]) for n, at in places if text[n].isprintable()]
    return "".join(sign for _, sign in sorted(seen)).replace(" ", "")


def test_every_line_is_read_from_the_right(outlook):
    (page, *_) = pages_of(_card(CardKind.PACE), outlook, LEFTWARD, measure)
    section = outlook.sections[0]
    up, down = (LEFTWARD.height_bare(m) for m in (section.climb_m, section.drop_m))
    # Climb and drop, under a head that names the climb first.
    pair = next(op.text for op in _texts(page) if op.text.startswith(f"{RLI}{up} · "))
    assert _seen(pair) == f"{down}·{up}"


def test_the_number_of_a_telephone_keeps_its_order(outlook):
    pages = pages_of(_card(CardKind.CREW, size=(210.0, 297.0)), outlook, LEFTWARD, measure)
    said = [op.text for page in pages for op in _texts(page) if "01632" in op.text]
    assert said
    for text in said:
        assert "01632960" in _seen(text)


def test_a_folded_card_has_its_first_panel_at_the_right(outlook):
    (was, *_), (now, *_) = _both(outlook, _card(CardKind.PACE, CardForm.FOLDED, (148.0, 105.0)))
    title = outlook.project.race.name

    def middles(page):
        return [sum(_edges(op)) / 2 for op in _texts(page) if title in op.text and op.bold]

    (before, *_), (after, *_) = middles(was), middles(now)
    assert (before < 74.0) != (after < 74.0)


def test_nothing_leaves_the_page(outlook):
    for kind in CardKind:
        for page in pages_of(_card(kind, size=(210.0, 297.0)), outlook, LEFTWARD, measure):
            for op in _texts(page):
                left, right = _edges(op)
                assert left > -0.01, op
                assert right < page.width_mm + 0.01, op


def test_turned_twice_is_as_it_was():
    ops = (
        Text(3.0, 4.0, "a", 8.0),
        Text(9.0, 4.0, "b", 8.0, align="right"),
        Rect(2.0, 2.0, 5.0, 1.0),
        Line((1.0, 1.0), (4.0, 2.0)),
        Polygon(((0.0, 0.0), (2.0, 3.0), (5.0, 1.0))),
        Strokes((((1.0, 3.0), (8.0, 3.0)),)),
        Strokes((((1.0, 3.0), (2.0, 4.0)), ((2.0, 4.0), (4.0, 1.0)))),
    )
    assert tuple(mirrored(mirrored(ops, 50.0), 50.0)) == ops


def test_a_tick_keeps_its_shape():
    tick = Strokes((((1.0, 3.0), (2.0, 4.0)), ((2.0, 4.0), (4.0, 1.0))))
    (there,) = mirrored([tick], 50.0)
    assert there == tick.moved(45.0, 0.0)


def test_the_picture_for_a_telephone_is_turned_too(outlook):
    from ultraplanner_gui.cards.content import card_contents

    (content, *_) = card_contents(_card(CardKind.PACE), outlook, LEFTWARD)
    (page, *_) = laid(content, *A6, LEFTWARD, measure)
    title = next(op for op in _texts(page) if op.bold)
    assert title.align == "right"
