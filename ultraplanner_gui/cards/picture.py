"""A card as pictures for the lock screen of a telephone."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice
from PySide6.QtGui import QColor, QImage, QImageWriter, QPainter

from ultraplanner_gui.cards.content import card_contents
from ultraplanner_gui.cards.make import laid
from ultraplanner_gui.cards.page import Page
from ultraplanner_gui.cards.paint import measure, paint_page
from ultraplanner_gui.engine.outlook import Outlook
from ultraplanner_gui.exchange.safe_write import write_bytes
from ultraplanner_gui.plan.cards import Card
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.wording.words import Words

SCREEN_MM = 66.0
"""Width of a usual telephone's screen (own choice), which sets how large the type is."""

CLOCK_SHARE = 0.26
"""Share of the height a lock screen keeps for its clock (own choice)."""


class Screen(Value, frozen=True):
    """A screen in pixels; `is_dark` has white type on black, `has_clock` white above the card."""

    width_px: int = 1080
    height_px: int = 2340
    is_dark: bool = True
    has_clock: bool = True


def pictures(card: Card, outlook: Outlook, words: Words, screen: Screen) -> tuple[QImage, ...]:
    """Return the card as pictures of exactly the size of *screen*; PlanError as for the card."""
    clock = CLOCK_SHARE if screen.has_clock else 0.0
    height_mm = SCREEN_MM * screen.height_px / screen.width_px
    pages = [
        page
        for content in card_contents(card, outlook, words)
        for page in laid(content, SCREEN_MM, height_mm * (1.0 - clock), words, measure)
    ]
    return tuple(_painted(page, screen, clock * screen.height_px) for page in pages)


def write_pictures(
    card: Card, outlook: Outlook, words: Words, screen: Screen, path: Path
) -> tuple[Path, ...]:
    """Write the pictures to *path* and, if there are more, to names with a number behind it."""
    made = pictures(card, outlook, words, screen)
    paths = tuple(_names(path, len(made)))
    for image, name in zip(made, paths, strict=True):
        write_bytes(name, _png(image))
    return paths


def _painted(page: Page, screen: Screen, top_px: float) -> QImage:
    image = QImage(screen.width_px, screen.height_px, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    painter = QPainter(image)
    painter.translate(0.0, top_px)
    paint_page(painter, page, screen.width_px / SCREEN_MM)
    painter.end()
    if screen.is_dark:
        image.invertPixels()
    return image


def _png(image: QImage) -> bytes:
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    QImageWriter(buffer, QByteArray(b"PNG")).write(image)
    return bytes(buffer.data().data())


def _names(path: Path, count: int) -> Iterator[Path]:
    yield path
    for number in range(2, count + 1):
        yield path.with_name(f"{path.stem} {number}{path.suffix}")
