import io
import re
import shutil
import subprocess

import pytest
from pypdf import PdfReader
from pypdf.generic import ContentStream

from tests.cards import invented
from tests.cards.font_widths import measure as font_measure
from tests.cards.pdf_geometry import drawn
from ultraplanner_gui.cards.fuel_content import fuel_card
from ultraplanner_gui.cards.layout import lay_out
from ultraplanner_gui.cards.pace_content import PaceCard, pace_card
from ultraplanner_gui.cards.page import MM_PER_PT, Page, Rect, Text
from ultraplanner_gui.cards.paint import measure
from ultraplanner_gui.cards.pdf import card_pages, cards_pdf, write_cards
from ultraplanner_gui.plan.cards import Card, CardKind
from ultraplanner_gui.plan.message import PlanError, StoreError
from ultraplanner_gui.wording.words import NONE, Words

WORDS = Words()
SIZES = (
    (105.0, 148.0),
    (148.0, 105.0),
    (148.0, 210.0),
    (210.0, 297.0),
    (215.9, 279.4),
    (70.0, 180.0),
)
CARDS = {"pace": pace_card, "fuel": fuel_card}
TRUE_MM = 0.02

pytestmark = pytest.mark.usefixtures("qapp")


def _made(kind, size, outlook=None):
    card = CARDS[kind](outlook or invented.outlook(), WORDS)
    pages = lay_out(card, *size, measure)
    return card, pages, cards_pdf(pages, card.title)


def _figures(card):
    for row in card.rows:
        yield row.name
        if isinstance(card, PaceCard):
            yield from (row.distance, row.climb_drop, row.pace, row.on_plan, row.in_hand)
            yield from (row.late.time, row.last.time, row.cutoff.time.strip(NONE))
        else:
            yield from (*row.foods, row.time, row.carbs, row.rate, row.fluid)
    yield from card.notes


def _flat(text):
    return "".join(text.split())


def _read_back(pdf):
    """Return the text of *pdf* in the order it was drawn, without spaces."""
    if shutil.which("pdftotext"):
        text = subprocess.run(
            ["pdftotext", "-raw", "-enc", "UTF-8", "-", "-"],
            input=pdf,
            capture_output=True,
            check=True,
        ).stdout.decode()
    else:
        text = "".join(page.extract_text() for page in PdfReader(io.BytesIO(pdf)).pages)
    return _flat(text)


def _fonts(pdf):
    for page in PdfReader(io.BytesIO(pdf)).pages:
        for font in page["/Resources"]["/Font"].values():
            yield (
                font.get_object()["/DescendantFonts"][0]
                .get_object()["/FontDescriptor"]
                .get_object()
            )


@pytest.mark.parametrize("size", SIZES, ids=str)
@pytest.mark.parametrize("kind", CARDS)
def test_the_pdf_reads_back_as_the_card_says(kind, size):
    card, pages, pdf = _made(kind, size)
    text = _read_back(pdf)
    assert [figure for figure in _figures(card) if _flat(figure) not in text] == []
    assert sorted(text) == sorted(
        _flat("".join(op.text for p in pages for op in p.ops if isinstance(op, Text)))
    )


@pytest.mark.parametrize("size", SIZES, ids=str)
@pytest.mark.parametrize("kind", CARDS)
def test_the_pdf_is_true_to_the_millimetre(kind, size):
    _, pages, pdf = _made(kind, size)
    for page, found in zip(pages, drawn(pdf), strict=True):
        assert (found.width_mm, found.height_mm) == pytest.approx(size, abs=TRUE_MM)
        rects = [
            (op.x_mm, op.y_mm, op.width_mm, op.height_mm) for op in page.ops if isinstance(op, Rect)
        ]
        assert len(found.rects) == len(rects)
        for rect, wanted in zip(found.rects, rects, strict=True):
            assert rect == pytest.approx(wanted, abs=TRUE_MM)
        texts = [op for op in page.ops if isinstance(op, Text)]
        assert len(found.texts) == len(texts)
        for (x, y, em), op in zip(found.texts, texts, strict=True):
            assert y == pytest.approx(op.baseline_mm, abs=TRUE_MM)
            assert em == pytest.approx(op.size_pt * MM_PER_PT, rel=0.003)
            width = {"left": 0.0, "right": 1.0, "centre": 0.5}[op.align] * measure(
                op.text, op.size_pt, op.bold
            )
            assert x == pytest.approx(op.x_mm - width, abs=0.1)


def test_poppler_sees_the_same_page_sizes():
    if not shutil.which("pdfinfo"):
        pytest.skip("pdfinfo is not installed")
    pdf = cards_pdf([Page(w, h, ()) for w, h in SIZES])
    listing = subprocess.run(
        ["pdfinfo", "-l", str(len(SIZES)), "-"], input=pdf, capture_output=True, check=True
    ).stdout.decode()
    sizes = re.findall(r"Page +\d+ size: +([\d.]+) x ([\d.]+) pts", listing)
    assert len(sizes) == len(SIZES)
    for points, size in zip(sizes, SIZES, strict=True):
        assert [float(p) * MM_PER_PT for p in points] == pytest.approx(size, abs=TRUE_MM)


@pytest.mark.parametrize("kind", CARDS)
def test_all_fonts_are_in_the_pdf(kind):
    _, _, pdf = _made(kind, (105.0, 148.0))
    fonts = list(_fonts(pdf))
    names = {str(font["/FontName"]).strip("/").split("+")[-1] for font in fonts}
    assert names == {"B612-Regular", "B612-Bold"}
    assert all(len(font["/FontFile2"].get_object().get_data()) > 1000 for font in fonts)


def test_a_name_in_letters_the_font_lacks_is_printed_and_embedded():
    places = list(invented.PLACES)
    places[0] = ("Łódź \u0401\u043b\u043a\u0430", *places[0][1:])
    _, _, pdf = _made("pace", (105.0, 148.0), invented.outlook(tuple(places)))
    assert "Łódź\u0401\u043b\u043a\u0430" in _read_back(pdf)
    assert all("/FontFile2" in font for font in _fonts(pdf))


def test_copied_text_has_spaces():
    _, _, pdf = _made("pace", (105.0, 148.0))
    text = PdfReader(io.BytesIO(pdf)).pages[0].extract_text()
    assert "Halfway Barn" in text
    assert "\t" not in text


@pytest.mark.parametrize("kind", CARDS)
def test_a_card_needs_no_colour(kind):
    reader = PdfReader(io.BytesIO(_made(kind, (105.0, 148.0))[2]))
    operations = ContentStream(reader.pages[0].get_contents(), reader).operations
    inks = {tuple(map(float, v)) for v, operator in operations if operator.lower() == b"scn"}
    assert len(inks) > 1
    assert all(red == green == blue for red, green, blue in inks)


def test_two_runs_differ_only_by_the_date():
    runs = [_made("pace", (105.0, 148.0))[2] for _ in range(2)]
    (first, dates), (second, _) = (re.subn(rb"/CreationDate \([^)]*\)", b"", r) for r in runs)
    assert dates == 1
    assert first == second


def test_another_card_has_another_identity():
    identities = {
        str(PdfReader(io.BytesIO(_made(kind, size)[2])).trailer["/ID"][0])
        for kind in CARDS
        for size in SIZES
    }
    assert len(identities) == len(CARDS) * len(SIZES)


def test_any_title_and_whose_work_it_is_are_said():
    title = "Føll (r) \\ /Producer (x) 100"
    found = PdfReader(io.BytesIO(cards_pdf([Page(105.0, 148.0, ())], title))).metadata
    assert (found.title, found.producer) == (title, "Ultraplanner")
    assert "/ModDate" not in found


def test_nine_letters_keep_their_numbers_though_nine_is_also_the_tab():
    pdf = cards_pdf([Page(105.0, 148.0, (Text(10.0, 20.0, "abcdefg h", 9.0),))])
    assert b"<0001> <0009> [" in pdf
    assert PdfReader(io.BytesIO(pdf)).pages[0].extract_text().strip() == "abcdefg h"


def test_the_measure_is_that_of_the_font():
    for text in ("Sat 08:00", "410 · 220", "12.4", "1 h 23"):
        for bold in (False, True):
            assert measure(text, 9.0, bold) == pytest.approx(
                font_measure(text, 9.0, bold), rel=0.02
            )
    assert measure("08:30", 18.0, True) == pytest.approx(2.0 * measure("08:30", 9.0, True))


def test_figures_line_up():
    assert len({round(measure(digit, 9.0, bold=False), 6) for digit in "0123456789"}) == 1
    assert len({round(measure(digit, 9.0, bold=True), 6) for digit in "0123456789"}) == 1


def test_every_card_of_the_project_is_written(tmp_path):
    outlook = invented.outlook(
        cards=(Card(CardKind.PACE), Card(CardKind.FUEL), Card(CardKind.PACE, 210.0, 297.0))
    )
    path = tmp_path / "cards.pdf"
    write_cards(outlook, WORDS, path)
    reader = PdfReader(path)
    assert [round(float(page.mediabox.width) * MM_PER_PT) for page in reader.pages] == [
        105,
        105,
        210,
    ]
    assert reader.metadata.title == "Fellside Hundred"
    assert [p.name for p in tmp_path.iterdir()] == ["cards.pdf"]


def test_no_card_chosen_is_said():
    with pytest.raises(PlanError, match="No card is chosen"):
        card_pages(invented.outlook(cards=()), WORDS)


def test_a_place_that_cannot_be_written_is_said(tmp_path):
    with pytest.raises(StoreError):
        write_cards(invented.outlook(), WORDS, tmp_path / "missing" / "cards.pdf")
