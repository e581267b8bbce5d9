"""The handbook on paper: the same text and pictures as in the window."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QBuffer, QCoreApplication, QIODevice, QMarginsF, QUrl
from PySide6.QtGui import QFont, QImage, QPageSize, QPdfWriter, QTextDocument

from ultraplanner_gui.desk import resources
from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.exchange.safe_write import write_bytes
from ultraplanner_gui.widgets.theme import FONT_FAMILY
from ultraplanner_gui.widgets.tokens import Pt
from ultraplanner_gui.window.handbook_html import PICTURE, handbook_html
from ultraplanner_gui.window.help_html import on_paper
from ultraplanner_gui.wording import handbook, locales

_DPI = 150
_PICTURE_MM = 150.0


def picture(name: str) -> QImage:
    """Return the picture *name* of the handbook, an empty one if it does not travel along."""
    try:
        return QImage(str(resources.path(f"handbook/{name}.png")))
    except FileNotFoundError:
        return QImage()


def usual_paper(locale: str) -> QPageSize:
    """Return A4, or Letter where that is the usual paper of *locale*."""
    is_letter = locales.uses_letter(locale)
    return QPageSize(QPageSize.PageSizeId.Letter if is_letter else QPageSize.PageSizeId.A4)


def write_handbook(token: Token, path: Path, paper: QPageSize) -> Path:
    """Write the handbook to *path* and return it; StoreError if that cannot be done.

    Page numbers stand at the foot. Takes about a second, so off the GUI thread.
    """
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(_DPI)
    writer.setPageSize(paper)
    writer.setPageMargins(QMarginsF())  # a document printed leaves two centimetres by itself
    document = _document()
    token.progress(0.3)
    writer.setTitle(QCoreApplication.translate(handbook.CONTEXT, handbook.TITLE))
    document.print_(writer)
    token.progress(0.9)
    write_bytes(path, bytes(buffer.data().data()))
    return path


def _document() -> QTextDocument:
    document = QTextDocument()
    font = QFont(FONT_FAMILY)
    font.setPointSizeF(Pt.STRONG)
    document.setDefaultFont(font)
    for step in handbook.STEPS:
        url = QUrl(f"{PICTURE}:{step.picture}")
        document.addResource(QTextDocument.ResourceType.ImageResource, url, picture(step.picture))
    # Qt prints a document of its own size as if for a screen of 96 dots to the inch.
    document.setHtml(handbook_html(on_paper(), round(_PICTURE_MM / 25.4 * 96), is_printed=True))
    return document
