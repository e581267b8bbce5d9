"""Every card of every kind of plan: whole, legible, exact, and read back as it was set."""

import io
import re
import shutil
import subprocess
from itertools import combinations

import pytest
from msgspec.structs import replace
from pypdf import PdfReader
from pypdf.generic import ContentStream

from tests.cards.big_plans import SHAPES, plan
from tests.cards.pdf_geometry import drawn
from ultraplanner_gui.cards.content import card_contents
from ultraplanner_gui.cards.fuel_content import FuelCard
from ultraplanner_gui.cards.list_content import ListCard
from ultraplanner_gui.cards.make import USUAL_SIZES, all_pages, pages_of
from ultraplanner_gui.cards.pace_content import PaceCard
from ultraplanner_gui.cards.page import (
    CAP_HEIGHT_EM,
    LEAST_WRIST_X_HEIGHT_MM,
    LEAST_X_HEIGHT_MM,
    MM_PER_PT,
    X_HEIGHT_EM,
    Line,
    Polygon,
    Rect,
    Strokes,
    Text,
)
from ultraplanner_gui.cards.paint import measure
from ultraplanner_gui.cards.pdf import cards_pdf
from ultraplanner_gui.cards.strip_content import texts_of
from ultraplanner_gui.cards.week_content import WallCard
from ultraplanner_gui.plan.cards import PARTS_OF, Card, CardForm, CardKind, CardUnits
from ultraplanner_gui.wording.words import NONE, Words

pytestmark = pytest.mark.usefixtures("qapp")

WORDS = Words()
TRUE_MM = 0.02
SMALL, A4 = (105.0, 148.0), (210.0, 297.0)
OTHER_SIZES = {
    CardKind.CREW: (SMALL, (148.0, 210.0)),
    CardKind.BAGS: (SMALL, A4),
    CardKind.LISTS: (SMALL, (148.0, 210.0)),
    CardKind.WALL: (A4, (420.0, 594.0)),
    CardKind.WEEKS: (SMALL, A4),
}


def _cards():
    for kind in CardKind:
        usual = USUAL_SIZES.get((kind, CardForm.SHEET), SMALL)
        for size in {usual, *OTHER_SIZES.get(kind, (A4, (215.9, 279.4), (80.0, 130.0)))}:
            yield Card(kind, *size)
    for form in (CardForm.WRIST, CardForm.FOLDED, CardForm.CONCERTINA):
        yield Card(CardKind.PACE, *USUAL_SIZES[CardKind.PACE, form], form)
    yield Card(CardKind.PACE, 45.0, 210.0, CardForm.WRIST)
    yield Card(CardKind.PACE, 210.0, 148.0, CardForm.FOLDED)
    yield Card(CardKind.PACE, 420.0, 90.0, CardForm.CONCERTINA)


def _id(card):
    return f"{card.kind.value}, {card.form.value}, {card.width_mm:g} x {card.height_mm:g}"


CARDS = sorted(_cards(), key=_id)
EVERY = pytest.mark.parametrize("card", CARDS, ids=_id)
PLANS = pytest.mark.parametrize("name", SHAPES)


def _texts(pages):
    return [op for page in pages for op in page.ops if isinstance(op, Text)]


def _flat(text):
    return "".join(text.split())


def _wanted(content):
    """Return every text of *content* that must be found again, row by row."""
    if isinstance(content, ListCard):
        yield from (content.title, content.subtitle, *content.warnings, *content.notes)
        for entry in content.entries:
            yield from (entry.head, entry.right, *entry.marks[:0])
            for item in entry.items:
                yield from (item.label, item.text, *(blank.label for blank in item.blanks))
    elif isinstance(content, WallCard):
        for row in content.rows:
            yield from (row.number, row.starts, row.role, *row.sums)
            for tile in (tile for tiles in row.days for tile in tiles):
                yield from (tile.kind, tile.figure, *tile.more)
    elif isinstance(content, PaceCard):
        for row in content.rows:
            yield from (row.name, row.distance, row.pace, row.climb_drop, row.there)
            yield from (row.late.time, row.last.time, row.cutoff.time.strip(NONE), row.cutoff_word)
    elif isinstance(content, FuelCard):
        for row in content.rows:
            yield from (row.name, *row.foods, row.carbs, row.rate, row.fluid, *row.sums, row.carry)
    else:
        yield from (text for text in texts_of(content) if text != NONE)


def _box(op):
    width = measure(op.text, op.size_pt, op.bold)
    left = op.x_mm - {"left": 0.0, "right": width, "centre": 0.5 * width}[op.align]
    em = op.size_pt * MM_PER_PT
    return left, op.baseline_mm - CAP_HEIGHT_EM * em, left + width, op.baseline_mm + 0.2 * em


def _overlap(a, b):
    return min(a[2], b[2]) - max(a[0], b[0]) > 0.05 and min(a[3], b[3]) - max(a[1], b[1]) > 0.05


@PLANS
@EVERY
def test_a_card_is_whole_legible_and_nothing_touches(card, name):
    pages = pages_of(card, plan(name), WORDS, measure)
    least = LEAST_WRIST_X_HEIGHT_MM if card.form is CardForm.WRIST else LEAST_X_HEIGHT_MM
    printed = _flat("".join(op.text for op in _texts(pages)))
    for content in card_contents(card, plan(name), WORDS):
        for text in _wanted(content):
            # A text that wraps is found word by word.
            missing = [word for word in text.split() if _flat(word) not in printed]
            assert _flat(text) in printed or missing == [], text
    for page in pages:
        boxes = [_box(op) for op in _texts([page])]
        assert all(b[0] >= -0.01 and b[1] >= -0.01 for b in boxes)
        assert all(b[2] <= page.width_mm + 0.01 and b[3] <= page.height_mm for b in boxes)
        assert not any(_overlap(a, b) for a, b in combinations(boxes, 2))
        for op in _texts([page]):
            assert op.size_pt * MM_PER_PT * X_HEIGHT_EM >= least - 1e-6


@PLANS
@EVERY
def test_what_says_something_is_black(card, name):
    for page in pages_of(card, plan(name), WORDS, measure):
        for op in page.ops:
            if isinstance(op, Text | Strokes):
                assert op.grey == 0.0
            elif isinstance(op, Rect | Polygon) and not op.outline_mm:
                assert op.grey == 0.0 or op.grey >= 0.8
            elif isinstance(op, Line):
                # Lines of another grey only repeat what their black ends or a figure say.
                assert op.grey == 0.0 or op.grey > 0.5


def _lines(op):
    if isinstance(op, Line):
        return [(op.start, op.end)]
    return op.lines if isinstance(op, Strokes) else ()


def _ends(line):
    return (*line[0], *line[1])


def _read_back(pdf):
    return subprocess.run(
        ["pdftotext", "-raw", "-enc", "UTF-8", "-", "-"], input=pdf, capture_output=True, check=True
    ).stdout.decode()


@PLANS
@EVERY
def test_the_pdf_is_true_and_reads_back_as_it_was_set(card, name):
    pages = pages_of(card, plan(name), WORDS, measure)[:4]
    pdf = cards_pdf(pages, "x")
    for page, found in zip(pages, drawn(pdf), strict=True):
        assert (found.width_mm, found.height_mm) == pytest.approx(
            (page.width_mm, page.height_mm), abs=TRUE_MM
        )
        rects = [(o.x_mm, o.y_mm, o.width_mm, o.height_mm) for o in page.ops if isinstance(o, Rect)]
        assert len(found.rects) == len(rects)
        for rect, wanted in zip(found.rects, rects, strict=True):
            assert rect == pytest.approx(wanted, abs=TRUE_MM)
        texts = _texts([page])
        assert len(found.texts) == len(texts)
        for (x, y, _), op in zip(found.texts, texts, strict=True):
            assert y == pytest.approx(op.baseline_mm, abs=TRUE_MM)
            if op.align == "left":
                assert x == pytest.approx(op.x_mm, abs=TRUE_MM)
        straight = [_ends(line) for op in page.ops for line in _lines(op)]
        for line in straight[:40]:
            gaps = (max(abs(a - b) for a, b in zip(line, o, strict=True)) for o in found.lines)
            assert min(gaps) <= TRUE_MM
    if shutil.which("pdftotext"):
        wanted = _flat("".join(op.text for op in _texts(pages)))
        assert sorted(_flat(_read_back(pdf))) == sorted(wanted)


def test_all_cards_together_have_their_fonts_and_no_colour():
    outlook = plan("demo")
    pages = all_pages(outlook, WORDS, measure)
    reader = PdfReader(io.BytesIO(cards_pdf(pages, "x")))
    assert len(reader.pages) == len(pages) > 15
    names = set()
    for page in reader.pages:
        for font in page["/Resources"]["/Font"].values():
            one = font.get_object()["/DescendantFonts"][0].get_object()["/FontDescriptor"]
            names.add(str(one["/FontName"]).split("+")[-1])
            assert "/FontFile2" in one or "/FontFile3" in one
        operations = ContentStream(page.get_contents(), reader).operations
        inks = [tuple(map(float, v)) for v, operator in operations if operator.lower() == b"scn"]
        assert all(red == green == blue for red, green, blue in inks)
    assert names == {"B612-Regular", "B612-Bold"}


def test_two_runs_are_equal_but_for_the_date():
    outlook = plan("demo")
    runs = [cards_pdf(all_pages(outlook, WORDS, measure), "x") for _ in range(2)]
    first, second = (re.sub(rb"/CreationDate \([^)]*\)", b"", run) for run in runs)
    assert first == second


# What is chosen


def _letters(pages):
    joints = sum(op.text.count("·") for op in _texts(pages))
    return sum(len(_flat(op.text)) for op in _texts(pages)) - joints


@pytest.mark.parametrize("kind", CardKind)
def test_what_is_left_out_is_gone_and_the_rest_stays(kind):
    outlook = plan("demo")
    card = Card(kind, *A4)
    before = _letters(pages_of(card, outlook, WORDS, measure))
    for part in PARTS_OF[kind]:
        bare = replace(card, leaves_out=(part,))
        assert _letters(pages_of(bare, outlook, WORDS, measure)) <= before
    bare = replace(card, leaves_out=PARTS_OF[kind])
    after = _letters(pages_of(bare, outlook, WORDS, measure))
    assert after < before or not PARTS_OF[kind]


def test_a_card_has_its_own_units_and_language_of_numbers():
    card = Card(CardKind.PACE, units=CardUnits.IMPERIAL, locale="de_DE")
    (content,) = card_contents(card, plan("demo"), WORDS)
    assert content.heads.distance == "mi"
    assert content.rows[0].distance == "7,7"
    assert content.rows[0].on_plan.startswith("Sa ")


def test_copies_are_printed_and_belong_apart():
    outlook = plan("50 km")
    cards = (Card(CardKind.BAGS, 148.0, 105.0, copies=2), Card(CardKind.HARD))
    project = replace(outlook.project, cards=cards)
    pages = all_pages(replace(outlook, project=project), WORDS, measure)
    bags = pages_of(cards[0], outlook, WORDS, measure)
    assert len(pages) == 2 * len(bags) + 1
    assert len({page.card for page in pages}) == 2 * len({page.card for page in bags}) + 1


def test_folds_lie_at_the_stations_and_every_leg_has_one():
    card = Card(CardKind.PACE, 280.0, 70.0, CardForm.CONCERTINA)
    outlook = plan("demo")
    (page,) = pages_of(card, outlook, WORDS, measure)
    folds = sorted({op.start[0] for op in page.ops if isinstance(op, Line) and op.start[1] == 0.0})
    legs = len(outlook.sections)
    assert folds == pytest.approx([280.0 * k / legs for k in range(1, legs)])


def test_hachures_are_denser_where_it_is_steeper():
    from ultraplanner_gui.cards.strip_layout import hachures

    line = [(float(x), -20.0) for x in range(41)]
    gentle = list(hachures(line, [0.05] * 40, 40.0))
    steep = list(hachures(line, [0.25] * 40, 40.0))
    assert 2 * len(gentle) < len(steep)
    assert list(hachures(line, [0.0] * 40, 40.0)) == []


def test_a_folded_card_reads_in_order():
    card = Card(CardKind.PACE, 148.0, 105.0, CardForm.FOLDED)
    outside, inside, *_ = pages_of(card, plan("170 km"), WORDS, measure)
    titles = [op for op in _texts([outside]) if op.text.startswith("1 of")]
    assert titles[0].x_mm > 74.0
    (second,) = [op for op in _texts([inside]) if op.text.startswith("2 of")]
    assert second.x_mm <= 74.0
