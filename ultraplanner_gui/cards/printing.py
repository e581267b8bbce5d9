"""Cards on a printer: true to size, as many to a sheet as fit, with lines to cut along."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtGui import QPageLayout, QPageSize, QPainter
from PySide6.QtPrintSupport import QPrinter

from ultraplanner_gui.cards.page import Page
from ultraplanner_gui.cards.paint import MM_PER_INCH, paint_page
from ultraplanner_gui.cards.paper import Paper, sheets
from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP, PlanError


def card_printer(title: str) -> QPrinter:
    """Return a printer that prints to the edges of the paper as far as it can."""
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setDocName(title)
    printer.setCreator("Ultraplanner")
    return printer


def print_pages(printer: QPrinter, pages: Sequence[Page], both_sides: bool = False) -> int:
    """Print *pages* and return the number of sheets; PlanError if it cannot be done."""
    printer.setFullPage(True)
    if both_sides:
        printer.setDuplex(QPrinter.DuplexMode.DuplexLongSide)
    made = sheets(pages, _paper(printer, both_sides))
    painter = QPainter()
    if made:
        _turn(printer, made[0])
    if not painter.begin(printer):
        raise PlanError(
            QT_TRANSLATE_NOOP("Cards", "The printer takes no job. Choose another, or write a PDF.")
        )
    mm = printer.resolution() / MM_PER_INCH
    for number, sheet in enumerate(made):
        if number:
            _turn(printer, sheet)
            if not printer.newPage():
                painter.end()
                raise _vanished()
        paint_page(painter, sheet, mm)
    is_done = painter.end()
    if not is_done or printer.printerState() is QPrinter.PrinterState.Error:
        raise _vanished()
    return len(made)


def _turn(printer: QPrinter, sheet: Page) -> None:
    """Lay the paper as *sheet* lies."""
    size = printer.pageLayout().pageSize().size(QPageSize.Unit.Millimeter)
    lies = (sheet.width_mm > sheet.height_mm) != (size.width() > size.height())
    orientations = QPageLayout.Orientation
    printer.setPageOrientation(orientations.Landscape if lies else orientations.Portrait)


def _paper(printer: QPrinter, both_sides: bool) -> Paper:
    layout = printer.pageLayout()
    full = layout.fullRect(QPageLayout.Unit.Millimeter)
    layout.setUnits(QPageLayout.Unit.Millimeter)
    least = layout.minimumMargins()
    unprintable = max(least.left(), least.top(), least.right(), least.bottom())
    return Paper(full.width(), full.height(), unprintable, both_sides)


def _vanished() -> PlanError:
    return PlanError(
        QT_TRANSLATE_NOOP(
            "Cards", "The printer stopped taking the job. See that it is there, or write a PDF."
        )
    )
