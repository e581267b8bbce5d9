"""Cards as a PDF, each page at its true size."""

from __future__ import annotations

import io
from collections.abc import Sequence
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, cast

from PySide6.QtCore import QBuffer, QIODevice, QMarginsF, QSizeF
from PySide6.QtGui import QPageLayout, QPageSize, QPainter, QPdfWriter

from ultraplanner_gui.cards.content import card_content
from ultraplanner_gui.cards.layout import lay_out
from ultraplanner_gui.cards.page import MM_PER_PT, Page
from ultraplanner_gui.cards.paint import MM_PER_INCH, measure, paint_page
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.exchange.safe_write import write_bytes
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError
from ultraplanner_gui.wording.words import Words

if TYPE_CHECKING:
    from pypdf import PageObject

RESOLUTION_DPI = 1200
PRODUCER = "Ultraplanner"


def card_pages(outlook: Outlook, words: Words) -> tuple[Page, ...]:
    """Return the pages of every card of the project; PlanError if there is none to make."""
    cards = outlook.project.cards
    if not cards:
        raise PlanError(QT_TRANSLATE_NOOP("Cards", "No card is chosen. Add a card, then print."))
    return tuple(
        page
        for card in cards
        for page in lay_out(
            card_content(card.kind, outlook, words), card.width_mm, card.height_mm, measure
        )
    )


def write_cards(outlook: Outlook, words: Words, path: Path) -> None:
    """Write every card of the project to *path*; PlanError or StoreError if that fails."""
    write_bytes(path, cards_pdf(card_pages(outlook, words), outlook.project.race.name))


def cards_pdf(pages: Sequence[Page], title: str = "") -> bytes:
    """Return *pages* as a PDF with exact page boxes and the fonts in it."""
    return _exact(_painted(pages), pages, title)


def _painted(pages: Sequence[Page]) -> bytes:
    # In memory, because the writer reports success on a full disk.
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(RESOLUTION_DPI)
    painter = QPainter()
    for number, page in enumerate(pages):
        writer.setPageLayout(_layout(page))
        if number == 0:
            painter.begin(writer)
        else:
            writer.newPage()
        paint_page(painter, page, RESOLUTION_DPI / MM_PER_INCH)
    painter.end()
    return bytes(buffer.data().data())


def _layout(page: Page) -> QPageLayout:
    size = QPageSize(
        QSizeF(page.width_mm, page.height_mm),
        QPageSize.Unit.Millimeter,
        "",
        QPageSize.SizeMatchPolicy.ExactMatch,
    )
    layout = QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF(0.0, 0.0, 0.0, 0.0))
    layout.setMode(QPageLayout.Mode.FullPageMode)
    return layout


def _exact(pdf: bytes, pages: Sequence[Page], title: str) -> bytes:
    """Return *pdf* with true page sizes: the writer rounds them to whole points."""
    from pypdf import PdfReader, PdfWriter, Transformation
    from pypdf.generic import RectangleObject

    writer = PdfWriter()
    for made, page in zip(PdfReader(io.BytesIO(pdf)).pages, pages, strict=True):
        width, height = page.width_mm / MM_PER_PT, page.height_mm / MM_PER_PT
        added = writer.add_page(made)
        # The origin is the lower left corner; what was drawn hangs from the upper one.
        rise = height - float(made.mediabox.height)
        added.add_transformation(Transformation().translate(0.0, rise))
        added.mediabox = RectangleObject((0.0, 0.0, width, height))
        for box in ("/CropBox", "/TrimBox", "/BleedBox", "/ArtBox"):
            added.pop(box, None)
        added.compress_content_streams()
        _name_spaces(added)
    now = datetime.now().astimezone()
    stamp = now.strftime("D:%Y%m%d%H%M%S%z")
    writer.metadata = None
    writer.add_metadata(
        {
            "/Title": title,
            "/Producer": PRODUCER,
            "/CreationDate": f"{stamp[:-2]}'{stamp[-2:]}'",
        }
    )
    out = io.BytesIO()
    writer.write(out)
    return out.getvalue()


def _name_spaces(page: PageObject) -> None:
    """Let the space read as a space: the writer names the glyph by the first character it has."""
    from pypdf.generic import DictionaryObject, StreamObject

    resources = cast(DictionaryObject, page["/Resources"])
    for font in cast(DictionaryObject, resources.get("/Font", {})).values():
        stream = cast(StreamObject, cast(DictionaryObject, font.get_object())["/ToUnicode"])
        stream.set_data(stream.get_data().replace(b"<0009>", b"<0020>"))
