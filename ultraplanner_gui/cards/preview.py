"""Cards lying on a desk: pages at true size or fitted to the window."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

from PySide6.QtCore import QPoint, QPointF, QRectF, QSize, Qt, Slot
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QScrollArea, QSizePolicy, QWidget

from ultraplanner_gui.cards.page import Page
from ultraplanner_gui.cards.paint import MM_PER_INCH, paint_page
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Stroke

Light = Literal["day", "grey", "red"]
RED_LIGHT = QColor(178, 24, 10)
"""What a red lamp leaves of white paper."""

GREY_PAPER = QColor(214, 214, 214)
GAP_PX = 20.0
LEAST_FIT_SHARE = 0.4
MOST_FIT_SHARE = 3.0
BELIEVED_DPI = (60.0, 400.0)


class _Pages(QWidget):
    """Paints the pages in rows, as many side by side as the width takes."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._pages: tuple[Page, ...] = ()
        self._places: tuple[QRectF, ...] = ()
        self._px_per_mm = 1.0
        self.light: Light = "day"
        self._extent = QSize()
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def show_pages(self, pages: tuple[Page, ...], px_per_mm: float, room: QSize) -> None:
        """Show *pages* at a scale, centred in *room* where that is larger."""
        self._pages, self._px_per_mm = pages, px_per_mm
        self._places, self._extent = placed(pages, px_per_mm, room)
        self.setFixedSize(self._extent.expandedTo(room))
        self.update()

    @property
    def places(self) -> tuple[QRectF, ...]:
        """Where each page lies."""
        return self._places

    def paintEvent(self, event: QPaintEvent) -> None:
        colours = theme().colours
        painter = QPainter(self)
        painter.fillRect(event.rect(), colours["stone"])
        for page, place in zip(self._pages, self._places, strict=True):
            if not place.toAlignedRect().intersects(event.rect()):
                continue
            painter.setPen(QPen(colours["strong_line"], Stroke.HAIR))
            painter.setBrush(GREY_PAPER if self.light == "grey" else QColor("white"))
            painter.drawRect(place.adjusted(-0.5, -0.5, 0.5, 0.5))
            painter.save()
            painter.translate(place.topLeft())
            paint_page(painter, page, self._px_per_mm)
            painter.restore()
        if self.light == "red":
            painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_Multiply)
            painter.fillRect(event.rect(), RED_LIGHT)
        painter.end()


class Preview(QScrollArea):
    """The desk the cards lie on."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._inside = _Pages(self)
        self._pages: tuple[Page, ...] = ()
        self._topics: tuple[str, ...] = ()
        self._is_true_size = False
        self._measured_px_per_mm = 0.0
        self.setWidget(self._inside)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(self.tr("Preview of the cards"))
        theme().changed.connect(self._on_theme_changed)

    @property
    def pages(self) -> tuple[Page, ...]:
        """The pages shown."""
        return self._pages

    @property
    def page_sizes_px(self) -> tuple[tuple[float, float], ...]:
        """Width and height of each page on the screen, device-independent pixels."""
        return tuple((place.width(), place.height()) for place in self._inside.places)

    @property
    def true_px_per_mm(self) -> float:
        """Device-independent pixels to a millimetre of this screen, as measured if it was."""
        if self._measured_px_per_mm:
            return self._measured_px_per_mm
        dpi = self.screen().physicalDotsPerInch()
        low, high = BELIEVED_DPI
        return (dpi if low <= dpi <= high else self.screen().logicalDotsPerInch()) / MM_PER_INCH

    def show_pages(self, pages: tuple[Page, ...], topics: tuple[str, ...] = ()) -> None:
        """Show *pages* instead of what is there; *topics* are what the help says of each."""
        self._pages, self._topics = pages, topics
        self.setAccessibleDescription("\n".join(page.name for page in pages))
        self._lay()

    def topic_at(self, at: QPoint | None) -> str:
        """Return what the help says of the page at a place."""
        if at is None:
            return ""
        spot = QPointF(self._inside.mapFrom(self, at))
        pages = zip(self._inside.places, self._topics, strict=False)
        return next((topic for place, topic in pages if place.contains(spot)), "")

    def choose_true_size(self, is_true_size: bool) -> None:
        """Show the cards as large as they are printed, or all of them as large as fits."""
        self._is_true_size = is_true_size
        self._lay()

    def choose_light(self, light: Light) -> None:
        """Show the cards by day, in grey or under a red lamp."""
        self._inside.light = light
        self._inside.update()

    def set_measured(self, px_per_mm: float) -> None:
        """Take *px_per_mm* as measured on this screen; 0 to believe what the screen says."""
        self._measured_px_per_mm = px_per_mm
        self._lay()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._lay()

    def _lay(self) -> None:
        true, room = self.true_px_per_mm, self.viewport().size()
        scale = true if self._is_true_size else true * _fitting(self._pages, true, room)
        self._inside.show_pages(self._pages, scale, room)

    @Slot()
    def _on_theme_changed(self) -> None:
        self._inside.update()


def placed(
    pages: Sequence[Page], px_per_mm: float, room: QSize
) -> tuple[tuple[QRectF, ...], QSize]:
    """Return where *pages* lie, in rows, and how much room they take."""
    rows: list[list[QRectF]] = [[]]
    x = y = GAP_PX
    tallest = widest = 0.0
    for page in pages:
        width, height = page.width_mm * px_per_mm, page.height_mm * px_per_mm
        if rows[-1] and x + width + GAP_PX > room.width():
            x, y, tallest = GAP_PX, y + tallest + GAP_PX, 0.0
            rows.append([])
        rows[-1].append(QRectF(x, y, width, height))
        x += width + GAP_PX
        tallest, widest = max(tallest, height), max(widest, x)
    bottom = y + tallest + GAP_PX
    down = max(0.0, 0.5 * (room.height() - bottom))
    placed_rows = [
        place.translated(QPointF(max(0.0, 0.5 * (room.width() - row[-1].right() - GAP_PX)), down))
        for row in rows
        if row
        for place in row
    ]
    return tuple(placed_rows), QSize(round(widest), round(bottom))


def _fitting(pages: Sequence[Page], true_px_per_mm: float, room: QSize) -> float:
    """Return the largest share of true size at which all *pages* fit in *room*."""
    low, high = LEAST_FIT_SHARE, MOST_FIT_SHARE
    for _ in range(12):
        middle = 0.5 * (low + high)
        extent = placed(pages, true_px_per_mm * middle, room)[1]
        fits = extent.width() <= room.width() and extent.height() <= room.height()
        low, high = (middle, high) if fits else (low, middle)
    return low
