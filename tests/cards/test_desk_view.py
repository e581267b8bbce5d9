import threading
from datetime import date
from pathlib import Path

import pytest
from msgspec.structs import replace
from pypdf import PdfReader
from PySide6.QtCore import QMarginsF, Qt
from PySide6.QtGui import QPageLayout, QPageSize
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import QComboBox, QDoubleSpinBox, QPushButton

from tests.cards import invented
from tests.cards.pdf_geometry import drawn
from ultraplanner_gui.cards import desk_view
from ultraplanner_gui.cards.calibrate import BANK_CARD_MM, Calibration
from ultraplanner_gui.cards.card_row import OWN, SIZES
from ultraplanner_gui.cards.desk_view import CardsDesk, measured, with_measured
from ultraplanner_gui.cards.phone_form import PhoneForm
from ultraplanner_gui.desk.document import Document
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.edits.cards import ChooseCards
from ultraplanner_gui.edits.race import ChangeRace
from ultraplanner_gui.plan.cards import (
    DEFAULT_CARDS,
    Card,
    CardForm,
    CardKind,
    CardPart,
    CardUnits,
)
from ultraplanner_gui.wording.words import Words

A4_CARD = Card(CardKind.PACE, 210.0, 297.0)


class Asked:
    """Answers the desk's questions and keeps what it was told."""

    def __init__(self, path):
        self.path, self.proposed, self.told = path, None, []

    def where_to_write_pdf(self, proposed, taken):
        self.proposed = proposed
        taken(self.path)

    where_to_write_picture = where_to_write_pdf

    def tell(self, title, sentence):
        self.told.append(sentence)


@pytest.fixture
def outlook():
    return invented.outlook()


@pytest.fixture
def document(qapp, outlook):
    def derive(project, previous, today):
        return replace(outlook, project=project)

    document = Document(project=outlook.project, today=lambda: date(2027, 4, 1), derive=derive)
    yield document
    document.close()


@pytest.fixture
def ask(tmp_path):
    return Asked(tmp_path / "out.pdf")


@pytest.fixture
def desk(qtbot, document, ask):
    desk = CardsDesk(document, Words, ask)
    qtbot.addWidget(desk)
    desk.resize(1100, 700)
    desk.show()
    return desk


def _renamed(document):
    return ChangeRace(replace(document.project.race, name="Weirside Fifty"))


def _buttons(desk):
    return {button.text(): button for button in desk.findChildren(QPushButton)}


def test_the_desk_shows_a_page_of_each_card(desk):
    assert [page.name for page in desk.preview.pages] == ["Fellside Hundred", "Fuel"]
    assert desk.choice.cards == DEFAULT_CARDS


def test_true_size_is_true(desk):
    desk.preview.choose_true_size(True)
    px_per_mm = desk.preview.true_px_per_mm
    for size in desk.preview.page_sizes_px:
        assert size == pytest.approx((105 * px_per_mm, 148 * px_per_mm))


def test_fit_shows_all_pages_without_scrolling(desk, document):
    document.perform(ChooseCards((*DEFAULT_CARDS, A4_CARD)))
    desk.resize(1400, 900)
    assert desk.preview.horizontalScrollBar().maximum() == 0
    assert desk.preview.verticalScrollBar().maximum() == 0


def test_choosing_a_size_is_one_undo_step(desk, document):
    sizes = desk.choice.rows[0].sizes
    index = next(k for k, size in enumerate(SIZES) if size.name == "A4")
    sizes.setCurrentIndex(index)
    sizes.activated.emit(index)
    assert document.project.cards == (A4_CARD, DEFAULT_CARDS[1])
    assert document.undo_stack.count() == 1
    document.undo_stack.undo()
    assert document.project.cards == DEFAULT_CARDS
    assert desk.choice.cards == DEFAULT_CARDS


def test_an_own_size_is_typed_in_millimetres(desk, document, qtbot):
    row = desk.choice.rows[1]
    sizes = row.sizes
    sizes.setCurrentIndex(OWN)
    sizes.activated.emit(OWN)
    width, _ = row.findChildren(QDoubleSpinBox)
    assert width.isVisible()
    width.selectAll()
    qtbot.keyClicks(width, "80")
    qtbot.keyClick(width, Qt.Key.Key_Return)
    assert document.project.cards[1] == Card(CardKind.FUEL, 80.0, 148.0)
    assert document.undo_stack.count() == 1
    assert desk.preview.pages[-1].width_mm == 80.0


def test_cards_are_added_and_left_out(desk, document):
    next(a for a in desk.choice.menu.actions() if a.text() == "Fuel card").trigger()
    assert [card.kind for card in document.project.cards] == ["pace card", "fuel card", "fuel card"]
    desk.choice.rows[0].remove.click()
    assert [card.kind for card in document.project.cards] == ["fuel card", "fuel card"]


def test_without_cards_there_is_nothing_to_write(desk, document):
    document.perform(ChooseCards(()))
    assert desk.sentence == "Add a card to print."
    assert not _buttons(desk)["Write PDF…"].isEnabled()
    assert not _buttons(desk)["Print…"].isEnabled()


def test_a_card_too_small_says_so_and_the_other_stays(desk, document):
    document.perform(ChooseCards((Card(CardKind.FUEL, 30.0, 30.0), DEFAULT_CARDS[0])))
    assert "too small to be legible" in desk.sentence
    assert [page.name for page in desk.preview.pages] == ["Fellside Hundred"]


def test_the_desk_follows_the_document_even_in_a_trial(desk, document):
    document.try_edit(_renamed(document))
    assert desk.preview.pages[0].name == "Weirside Fifty"
    document.drop_trial()
    assert desk.preview.pages[0].name == "Fellside Hundred"


def test_a_hidden_desk_is_up_to_date_when_it_comes_back(desk, document):
    desk.hide()
    document.perform(_renamed(document))
    desk.show()
    assert desk.preview.pages[0].name == "Weirside Fifty"


def test_write_pdf_writes_every_page(desk, ask, qtbot):
    _buttons(desk)["Write PDF…"].click()
    qtbot.waitUntil(lambda: desk.sentence == "Written: out.pdf")
    assert ask.proposed == Path.home() / "Fellside Hundred cards.pdf"
    assert len(PdfReader(ask.path).pages) == 2
    assert desk.sentence == "Written: out.pdf"
    assert ask.told == []


def test_a_pdf_that_cannot_be_written_is_said(desk, ask, tmp_path, qtbot):
    ask.path = tmp_path / "missing" / "out.pdf"
    desk.write_pdf()
    qtbot.waitUntil(lambda: len(ask.told) == 1)
    assert _buttons(desk)["Write PDF…"].isEnabled()
    assert "out.pdf" in ask.told[0]


def _file_printer(path, size=QPageSize.PageSizeId.A4):
    printer = QPrinter()
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(path))
    printer.setPageSize(QPageSize(size))
    printer.setPageMargins(QMarginsF(0, 0, 0, 0), QPageLayout.Unit.Millimeter)
    return printer


def test_printed_cards_lie_on_one_sheet_at_true_size(desk, tmp_path):
    desk.print_on(_file_printer(tmp_path / "sheet.pdf"))
    (sheet,) = drawn((tmp_path / "sheet.pdf").read_bytes())
    widths = [round(rect[2], 1) for rect in sheet.rects]
    # Bands run over both sides of the 95.55 mm between the margins by 1.89 mm.
    assert widths.count(99.3) == 8
    lefts = {round(rect[0], 1) for rect in sheet.rects if round(rect[2], 1) == 99.3}
    assert max(lefts) - min(lefts) == pytest.approx(105.0, abs=0.1)


def test_a_card_larger_than_the_paper_is_not_printed(desk, document, ask, tmp_path):
    document.perform(ChooseCards((A4_CARD,)))
    desk.print_on(_file_printer(tmp_path / "sheet.pdf", QPageSize.PageSizeId.A5))
    assert "larger than the paper" in ask.told[0]
    assert not (tmp_path / "sheet.pdf").exists()


def test_a_strip_is_printed_on_paper_that_lies(desk, document, tmp_path):
    strip = Card(CardKind.PACE, 280.0, 70.0, CardForm.CONCERTINA)
    document.perform(ChooseCards((DEFAULT_CARDS[0], strip)))
    desk.print_on(_file_printer(tmp_path / "sheet.pdf"))
    upright, lying = drawn((tmp_path / "sheet.pdf").read_bytes())
    assert (upright.width_mm, upright.height_mm) == pytest.approx((210.0, 297.0), abs=0.2)
    assert (lying.width_mm, lying.height_mm) == pytest.approx((297.0, 210.0), abs=0.2)


def test_print_asks_for_a_printer_without_blocking(desk):
    _buttons(desk)["Print…"].click()
    dialog = desk.findChild(QPrintDialog)
    assert dialog is not None
    dialog.reject()


def test_everything_with_focus_has_a_name(desk):
    for kind in (QPushButton, QComboBox, QDoubleSpinBox):
        assert all(w.accessibleName() or getattr(w, "text", str)() for w in desk.findChildren(kind))
    assert desk.preview.accessibleName() == "Preview of the cards"
    assert desk.preview.accessibleDescription() == "Fellside Hundred\nFuel"


# What is on a card, and how it is shown


def _choose(combo, data):
    combo.setCurrentIndex(combo.findData(data))
    combo.activated.emit(combo.currentIndex())


def test_what_stands_on_a_card_is_ticked_off(desk, document):
    row = desk.choice.rows[0]
    row.ticks[CardPart.PACE].click()
    assert document.project.cards[0].leaves_out == (CardPart.PACE,)
    assert document.undo_stack.count() == 1
    assert not any("min/km" in getattr(op, "text", "") for op in desk.preview.pages[0].ops)
    row.ticks[CardPart.PACE].click()
    assert document.project.cards == DEFAULT_CARDS


def test_units_language_and_copies_belong_to_one_card(desk, document, qtbot):
    row = desk.choice.rows[0]
    row.units.setCurrentIndex(2)
    row.units.activated.emit(2)
    _choose(row.locales, "de_DE")
    row.copies.setValue(3)
    card = document.project.cards[0]
    assert (card.units, card.locale, card.copies) == (CardUnits.IMPERIAL, "de_DE", 3)
    assert document.project.cards[1] == DEFAULT_CARDS[1]
    texts = {getattr(op, "text", "") for op in desk.preview.pages[0].ops}
    assert {"mi", "7,7"} <= texts


def test_another_form_comes_in_its_usual_size(desk, document):
    row = desk.choice.rows[0]
    row.forms.setCurrentIndex(1)
    row.forms.activated.emit(1)
    assert document.project.cards[0] == Card(CardKind.PACE, 200.0, 48.0, CardForm.WRIST)
    assert desk.preview.pages[0].width_mm == 200.0


def test_every_kind_can_be_added_and_says_what_it_lacks(desk, document):
    for action in desk.choice.menu.actions():
        action.trigger()
    assert [card.kind for card in document.project.cards[2:]] == list(CardKind)
    assert desk.sentence.endswith(".")
    assert {row.card.kind for row in desk.choice.rows} == set(CardKind)


def test_writing_can_be_left_and_nothing_is_written(desk, ask, qtbot, monkeypatch):
    begun, go_on = threading.Event(), threading.Event()

    def slow(outlook, words, path, paper, told):
        begun.set()
        go_on.wait(5.0)
        told(0.5)
        path.write_bytes(b"")

    monkeypatch.setattr(desk_view, "write_cards", slow)
    desk.write_pdf()
    assert begun.wait(5.0)
    _buttons(desk)["Cancel writing"].click()
    go_on.set()
    desk._jobs.close()
    assert desk.sentence == "Not written."
    assert not ask.path.exists()
    assert "Write PDF…" in _buttons(desk)


def test_several_lie_on_a_sheet_when_that_is_chosen(desk, ask, qtbot):
    _choose(desk.panel.paper, "A4")
    (sheet,) = desk.preview.pages
    assert (sheet.width_mm, sheet.height_mm) == (210.0, 297.0)
    desk.write_pdf()
    qtbot.waitUntil(lambda: desk.sentence == "Written: out.pdf")
    (page,) = PdfReader(ask.path).pages
    assert float(page.mediabox.width) == pytest.approx(210.0 / 25.4 * 72.0, abs=0.02)


def test_a_red_lamp_leaves_paper_red_and_letters_black(desk):
    _choose(desk.panel.light, "red")
    image = desk.preview.grab().toImage()
    inside = desk.preview.viewport().rect().adjusted(2, 2, -12, -12)
    seen = {
        image.pixelColor(x, y).getRgb()[:3]
        for x in range(inside.left(), inside.right(), 3)
        for y in range(inside.top(), inside.bottom(), 3)
    }
    assert all(red >= green and green <= 40 and blue <= 30 for red, green, blue in seen)
    assert max(seen)[0] - min(seen)[0] > 120


def test_what_is_chosen_comes_back_with_the_program(qtbot, document, ask, tmp_path):
    settings = Settings(tmp_path / "settings.ini")
    first = CardsDesk(document, Words, ask, None, settings)
    qtbot.addWidget(first)
    _choose(first.panel.paper, "Letter")
    _choose(first.panel.light, "red")
    first.panel.both_sides.setChecked(True)
    first._on_measured(5.0)
    later = CardsDesk(document, Words, ask, None, Settings(tmp_path / "settings.ini"))
    qtbot.addWidget(later)
    assert later.panel.paper_name == "Letter"
    assert later.panel.light_chosen == "red"
    assert later.panel.both_sides.isChecked()
    assert later.preview.true_px_per_mm == pytest.approx(5.0)


def test_a_screen_is_matched_to_a_bank_card(qtbot):
    found = []
    dialog = Calibration(4.0, found.append)
    qtbot.addWidget(dialog)
    dialog.show()
    assert BANK_CARD_MM == (85.60, 53.98)
    for _ in range(20):
        qtbot.keyClick(dialog.slider, Qt.Key.Key_Right)
    dialog.accept()
    assert found == [pytest.approx(4.0 + 20 * 2 / 400)]


@pytest.mark.parametrize("text", ["", "DP-1=", "DP-1=abc", "DP-1=0", "DP-1=1e9", "DP-2=4"])
def test_a_screen_that_was_never_measured_is_believed(text):
    assert measured((text,), "DP-1") == 0.0
    assert measured(with_measured((text,), "DP-1", 4.25), "DP-1") == 4.25


def test_a_printer_that_vanishes_is_said(desk, ask, monkeypatch, tmp_path):
    monkeypatch.setattr(QPrinter, "newPage", lambda self: False)
    printer = _file_printer(tmp_path / "sheet.pdf", QPageSize.PageSizeId.A6)
    desk.print_on(printer)
    assert "stopped taking the job" in ask.told[0]


def test_a_card_becomes_a_picture_for_a_telephone(desk, ask, tmp_path, qtbot):
    ask.path = tmp_path / "lock.png"
    desk.write_picture()
    form = desk.findChild(PhoneForm)
    form.width_px.setValue(750)
    form.height_px.setValue(1334)
    form.accept()
    assert ask.proposed.name == "Fellside Hundred lock screen.png"
    assert (tmp_path / "lock.png").exists()
    assert desk.sentence.startswith("Written: lock.png")
