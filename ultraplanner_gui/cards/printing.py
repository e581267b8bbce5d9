"""Cards on a printer: true to size, as many to a sheet as fit, with lines to cut along."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from PySide6.QtCore import QLineF, QPointF
from PySide6.QtGui import QColor, QPageLayout, QPainter, QPen
from PySide6.QtPrintSupport import QPrinter

from ultraplanner_gui.cards.impose import SLACK_MM, Placed, impose
from ultraplanner_gui.cards.page import Page
from ultraplanner_gui.cards.paint import MM_PER_INCH, paint_page
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError

CUT_MM = 0.1


def card_printer(title: str) -> QPrinter:
    """Return a printer that prints to the edges of the paper as far as it can."""
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setDocName(title)
    printer.setCreator("Ultraplanner")
    return printer


def print_pages(printer: QPrinter, pages: Sequence[Page]) -> int:
    """Print *pages* and return the number of sheets; PlanError if it cannot be done."""
    printer.setFullPage(True)
    paper = printer.pageLayout().fullRect(QPageLayout.Unit.Millimeter)
    edges = printer.pageLayout()
    edges.setUnits(QPageLayout.Unit.Millimeter)
    least = edges.minimumMargins()
    unprintable = max(least.left(), least.top(), least.right(), least.bottom())
    sheets = impose(pages, paper.width(), paper.height(), unprintable)
    painter = QPainter()
    if not painter.begin(printer):
        raise PlanError(
            QT_TRANSLATE_NOOP("Cards", "The printer takes no job. Choose another, or write a PDF.")
        )
    mm = printer.resolution() / MM_PER_INCH
    for number, sheet in enumerate(sheets):
        if number:
            printer.newPage()
        for placed in sheet:
            _paint_placed(painter, placed, mm)
        if not _is_whole_sheet(sheet, paper.width(), paper.height()):
            _paint_cuts(painter, sheet, mm)
    painter.end()
    return len(sheets)


def _paint_placed(painter: QPainter, placed: Placed, mm: float) -> None:
    painter.save()
    painter.translate(placed.x_mm * mm, placed.y_mm * mm)
    paint_page(painter, placed.page, mm)
    painter.restore()


def _is_whole_sheet(sheet: Sequence[Placed], width_mm: float, height_mm: float) -> bool:
    page = sheet[0].page
    across, down = abs(page.width_mm - width_mm), abs(page.height_mm - height_mm)
    return len(sheet) == 1 and max(across, down) <= SLACK_MM


def _paint_cuts(painter: QPainter, sheet: Sequence[Placed], mm: float) -> None:
    painter.setPen(QPen(QColor.fromRgbF(0.6, 0.6, 0.6), CUT_MM * mm))
    for placed in sheet:
        left, top = placed.x_mm * mm, placed.y_mm * mm
        right, bottom = left + placed.page.width_mm * mm, top + placed.page.height_mm * mm
        corners = [QPointF(x, y) for x, y in ((left, top), (right, top), (right, bottom))]
        corners += [QPointF(left, bottom), QPointF(left, top)]
        painter.drawLines([QLineF(a, b) for a, b in pairwise(corners)])
