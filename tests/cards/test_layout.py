from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from tests.cards import invented
from tests.cards.font_widths import MM_PER_PT, heights_em, measure
from ultraplanner_gui.cards.fuel_content import fuel_card
from ultraplanner_gui.cards.layout import lay_out
from ultraplanner_gui.cards.pace_content import PaceCard, pace_card
from ultraplanner_gui.cards.page import (
    BAND,
    CAP_HEIGHT_EM,
    LEAST_X_HEIGHT_MM,
    X_HEIGHT_EM,
    Polygon,
    Rect,
    Text,
)
from ultraplanner_gui.plan.message import PlanError
from ultraplanner_gui.wording.words import Words

WORDS = Words()
SIZES = (
    (105.0, 148.0),
    (148.0, 105.0),
    (148.0, 210.0),
    (210.0, 297.0),
    (215.9, 279.4),
    (60.0, 180.0),
    (80.0, 105.0),
)
CARDS = {"pace": pace_card, "fuel": fuel_card}
RACES = {
    "usual": invented.outlook(),
    "30 sections": invented.outlook(invented.many(30)),
    "no cutoffs": invented.without_cutoffs(),
    "no heights": invented.outlook(has_elevation=False),
    "no food": invented.outlook(fuelled=False),
}
LONG_NAME = "Oberstdorfer-Hüttenwegkapelle am Großen Wiesenjöchl, Parkplatz Nord"


def _named(name):
    places = list(invented.PLACES)
    places[3] = (name, *places[3][1:])
    return invented.outlook(tuple(places))


def _texts(pages):
    return [op for page in pages for op in page.ops if isinstance(op, Text)]


def _flat(text):
    return "".join(text.split())


def _printed(pages):
    """Return everything printed, column by column and line by line, without spaces."""
    return _flat("".join(op.text for op in _texts(pages)))


def _box(op):
    width = measure(op.text, op.size_pt, op.bold)
    left = op.x_mm - {"left": 0.0, "right": width, "centre": 0.5 * width}[op.align]
    em = op.size_pt * MM_PER_PT
    return left, op.baseline_mm - CAP_HEIGHT_EM * em, left + width, op.baseline_mm + 0.2 * em


def _overlap(a, b):
    return min(a[2], b[2]) - max(a[0], b[0]) > 0.05 and min(a[3], b[3]) - max(a[1], b[1]) > 0.05


def _strings(card):
    """Return every text of a card that must be printed; lists of foods food by food."""
    yield card.title
    yield card.subtitle
    yield from card.notes
    yield from getattr(card, "warnings", ())
    for row in card.rows:
        yield row.name
        if isinstance(card, PaceCard):
            yield from (row.distance, row.climb_drop, row.pace, row.on_plan, row.stop)
            yield from (row.late.time, row.late.day, row.last.day)
            if card.heads.last:
                yield from (row.in_hand, row.last.time, row.cutoff.time.strip("–"))
        else:
            yield from (*row.marks, *row.foods, row.time, row.carbs, row.rate, row.fluid)


def _check(card, pages, width, height):
    least_pt = LEAST_X_HEIGHT_MM / X_HEIGHT_EM / MM_PER_PT
    assert min(op.size_pt for op in _texts(pages)) >= least_pt - 1e-9
    printed = _printed(pages)
    missing = [text for text in _strings(card) if _flat(text) not in printed]
    assert missing == []
    for page in pages:
        assert (page.width_mm, page.height_mm) == (width, height)
        boxes = [(_box(op), op.text) for op in page.ops if isinstance(op, Text)]
        assert [text for box, text in boxes if not _is_inside(box, width, height)] == []
        clash = [(s, t) for (a, s), (b, t) in combinations(boxes, 2) if _overlap(a, b)]
        assert clash == []


def _is_inside(box, width, height):
    left, top, right, bottom = box
    return min(left, top, width - right, height - bottom) >= 2.8


def test_letter_heights_are_those_of_the_font():
    for bold in (False, True):
        assert heights_em(bold) == (X_HEIGHT_EM, CAP_HEIGHT_EM)


@pytest.mark.parametrize("size", SIZES, ids=str)
@pytest.mark.parametrize("race", RACES)
@pytest.mark.parametrize("kind", CARDS)
def test_a_card_is_whole_legible_and_nothing_touches(kind, race, size):
    card = CARDS[kind](RACES[race], WORDS)
    _check(card, lay_out(card, *size, measure), *size)


@pytest.mark.parametrize("kind", CARDS)
def test_eight_sections_fit_one_pocket_card(kind):
    card = CARDS[kind](invented.outlook(), WORDS)
    for size in ((105.0, 148.0), (148.0, 105.0)):
        assert len(lay_out(card, *size, measure)) == 1


def test_twelve_sections_fit_one_pocket_pace_card():
    card = pace_card(invented.outlook(invented.many(12)), WORDS)
    assert len(lay_out(card, 105.0, 148.0, measure)) == 1


def test_a_warning_stands_on_the_first_page():
    card = replace(pace_card(RACES["30 sections"], WORDS), warnings=("Mind the gap.",))
    pages = lay_out(card, 105.0, 148.0, measure)
    at = [[op.text for op in _texts([page])].count("Mind the gap.") for page in pages]
    assert at == [1] + [0] * (len(pages) - 1)
    assert len(pages) > 1


@pytest.mark.parametrize("kind", CARDS)
def test_thirty_sections_go_on_and_say_so(kind):
    card = CARDS[kind](RACES["30 sections"], WORDS)
    pages = lay_out(card, 105.0, 148.0, measure)
    total = len(pages)
    assert total == {"pace": 2, "fuel": 3}[kind]
    for number, page in enumerate(pages, 1):
        texts = [op.text for op in page.ops if isinstance(op, Text)]
        assert f"{number} of {total}" in texts
        assert (f"continued on {number + 1} of {total}" in texts) == (number < total)


def test_continued_pages_are_filled_evenly():
    pages = lay_out(pace_card(RACES["30 sections"], WORDS), 105.0, 148.0, measure)
    rows = [sum(op.text.startswith(("Post", "Finish")) for op in _texts([p])) for p in pages]
    assert sum(rows) == 30
    assert max(rows) - min(rows) <= 3


@pytest.mark.parametrize("name", [LONG_NAME, "Donaudampfschifffahrtsgesellschaft" * 3, "Å" * 90])
@pytest.mark.parametrize("kind", CARDS)
def test_a_very_long_name_wraps_and_is_never_cut(kind, name):
    card = CARDS[kind](_named(name), WORDS)
    for size in ((105.0, 148.0), (148.0, 105.0), (60.0, 180.0)):
        _check(card, lay_out(card, *size, measure), *size)


def test_a_larger_card_has_larger_type():
    card = pace_card(invented.outlook(), WORDS)
    arrivals = [
        max(op.size_pt for op in _texts(lay_out(card, *size, measure)) if op.text == "Sat 08:00")
        for size in ((105.0, 148.0), (148.0, 210.0), (210.0, 297.0))
    ]
    assert arrivals == sorted(set(arrivals))


def test_the_planned_arrival_is_the_largest_figure():
    texts = _texts(lay_out(pace_card(invented.outlook(), WORDS), 105.0, 148.0, measure))
    figures = {op.text: op for op in texts if op.text[0].isdigit() or op.text.startswith("Sat")}
    largest = max(op.size_pt for op in figures.values())
    assert all(
        op.size_pt == largest and op.bold for t, op in figures.items() if t.startswith("Sat")
    )


def test_every_other_row_lies_on_a_light_band():
    (page,) = lay_out(pace_card(invented.outlook(), WORDS), 105.0, 148.0, measure)
    bands = [op for op in page.ops if isinstance(op, Rect) and op.grey == BAND]
    assert len(bands) == 4
    assert list(page.ops[:4]) == bands


def test_the_sketch_spans_the_course():
    card = pace_card(invented.outlook(), WORDS)
    (page,) = lay_out(card, 105.0, 148.0, measure)
    hill = next(op for op in page.ops if isinstance(op, Polygon))
    left, right = hill.points[0][0], hill.points[-1][0]
    dark = next(op for op in page.ops if isinstance(op, Rect) and op.grey < 0.2)
    share = (dark.x_mm - left) / (right - left)
    assert share == pytest.approx(card.sketch.shades[-1].start)
    assert dark.x_mm + dark.width_mm == pytest.approx(right)


def test_a_card_too_small_to_read_is_refused():
    card = pace_card(_named("Donaudampfschifffahrtsgesellschaft" * 3), WORDS)
    with pytest.raises(PlanError) as refused:
        lay_out(card, 30.0, 30.0, measure)
    assert WORDS.say(refused.value.message) == (
        "A card of 30 x 30 mm is too small to be legible. Choose a larger one."
    )


@settings(max_examples=40)
@given(
    kind=st.sampled_from(sorted(CARDS)),
    width=st.floats(50.0, 300.0),
    height=st.floats(100.0, 300.0),
    name=st.text("abc ÄÖ-WWi", min_size=1, max_size=60).filter(str.strip),
    units=st.sampled_from(["metric", "imperial"]),
)
def test_any_name_on_any_size_is_whole(kind, width, height, name, units):
    card = CARDS[kind](_named(name), Words(units))
    _check(card, lay_out(card, width, height, measure), width, height)
