"""Cards as a PDF, each page at its true size."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from hashlib import blake2b
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF, QSizeF, QUuid
from PySide6.QtGui import QPageLayout, QPageSize, QPainter, QPdfWriter

from ultraplanner_gui.cards.make import all_pages
from ultraplanner_gui.cards.page import MM_PER_PT, Page, Text
from ultraplanner_gui.cards.paint import MM_PER_INCH, measure, paint_page
from ultraplanner_gui.cards.paper import Paper, sheets
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.exchange.safe_write import write_bytes
from ultraplanner_gui.wording.words import Words

RESOLUTION_DPI = 1200
POINTS_PER_INCH = 72.0
PRODUCER = "Ultraplanner"

_BOX = re.compile(rb"/(Media|Trim)Box \[0 0 ([\d.]+) ([\d.]+)\]")
_INFO = re.compile(rb"/Producer \(.*?\)(\n/CreationDate \([^)]*\))\n/ModDate \([^)]*\)", re.DOTALL)
_GLYPH_NAMES = re.compile(rb"begincmap.*?endcmap", re.DOTALL)
_NO_METADATA = QByteArray(
    b'<?xpacket begin="" id="W5M0MpCehiHzreSzNTczkc9d"?><x:xmpmeta xmlns:x="adobe:ns:meta/">'
    b'</x:xmpmeta><?xpacket end="r"?>'
)


def _untold(share: float) -> None:
    """Let nobody know."""


def card_pages(outlook: Outlook, words: Words) -> tuple[Page, ...]:
    """Return the pages of every card of the project; PlanError if there is none to make."""
    return all_pages(outlook, words, measure)


def write_cards(
    outlook: Outlook,
    words: Words,
    path: Path,
    paper: Paper | None = None,
    told: Callable[[float], None] = _untold,
) -> None:
    """Write every card of the project to *path*, several on a sheet if *paper* is given.

    PlanError or StoreError if that fails; *told* is given the share done, and what it raises
    leaves the file as it was.
    """
    pages = card_pages(outlook, words)
    if paper is not None:
        pages = sheets(pages, paper)
    write_bytes(path, cards_pdf(pages, outlook.project.race.name, told))


def cards_pdf(
    pages: Sequence[Page], title: str = "", told: Callable[[float], None] = _untold
) -> bytes:
    """Return *pages* as a PDF with exact page boxes and the fonts in it."""
    return _exact(_painted(pages, title, told), pages)


def _painted(pages: Sequence[Page], title: str, told: Callable[[float], None] = _untold) -> bytes:
    # In memory, because the writer reports success on a full disk.
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(RESOLUTION_DPI)
    writer.setTitle(title)
    writer.setDocumentId(_identity(pages, title))
    writer.setDocumentXmpMetadata(_NO_METADATA)
    painter = QPainter()
    for number, page in enumerate(pages):
        _tell(told, number / len(pages), painter)
        layout = _layout(page)
        writer.setPageLayout(layout)
        if number == 0:
            painter.begin(writer)
        else:
            writer.newPage()
        painter.save()
        # The origin of a page is its lower left corner, so that the true height counts from there.
        rise_pt = layout.fullRectPoints().height() - page.height_mm / MM_PER_PT
        painter.translate(0.0, rise_pt * RESOLUTION_DPI / POINTS_PER_INCH)
        paint_page(painter, page, RESOLUTION_DPI / MM_PER_INCH)
        painter.restore()
    painter.end()
    return bytes(buffer.data().data())


def _tell(told: Callable[[float], None], share: float, painter: QPainter) -> None:
    """Say how far it is; a painter must not outlive what it paints on, even if that is enough."""
    try:
        told(share)
    except BaseException:
        if painter.isActive():
            painter.end()
        raise


def _identity(pages: Sequence[Page], title: str) -> QUuid:
    """Return the identity of the document, the same for the same cards."""
    shapes = [f"{page.width_mm} {page.height_mm} {len(page.ops)}" for page in pages]
    texts = [op.text for page in pages for op in page.ops if isinstance(op, Text)]
    digest = blake2b("\n".join((title, *shapes, *texts)).encode(), digest_size=16).digest()
    return QUuid.fromRfc4122(QByteArray(digest))


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


def _exact(pdf: bytes, pages: Sequence[Page]) -> bytes:
    """Return *pdf* with what the writer has no word for, put in place so that nothing moves.

    The true page sizes, which it rounds to whole points; whose work it is; and the space, whose
    glyph it names by the first character that has it, the tab.
    """
    sizes = iter([page for page in pages for _ in ("Media", "Trim")])
    pdf, boxes = _BOX.subn(lambda found: _box(found, next(sizes)), pdf)
    pdf, infos = _INFO.subn(_info, pdf)
    if boxes != 2 * len(pages) or infos != 1:
        raise RuntimeError("this version of Qt writes another kind of PDF")
    return _GLYPH_NAMES.sub(_with_spaces, pdf)


def _box(found: re.Match[bytes], page: Page) -> bytes:
    width, height = (
        _digits(mm / MM_PER_PT, len(rounded))
        for mm, rounded in zip((page.width_mm, page.height_mm), found.group(2, 3), strict=True)
    )
    return b"/%bBox [0 0 %b %b]" % (found[1], width, height)


def _digits(value: float, count: int) -> bytes:
    whole = len(str(int(value)))
    return f"{value:.{count - whole - 1}f}".encode()


def _info(found: re.Match[bytes]) -> bytes:
    return (b"/Producer (%b)%b" % (PRODUCER.encode(), found[1])).ljust(len(found[0]))


def _with_spaces(found: re.Match[bytes]) -> bytes:
    # Within brackets only: outside stand the numbers of glyphs.
    return re.sub(rb"\[[^]]*\]", lambda names: names[0].replace(b"<0009>", b"<0020>"), found[0])
